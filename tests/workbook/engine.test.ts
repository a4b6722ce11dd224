import { describe, expect, test } from "vitest";
import { formulaValue, openProbes } from "./support.ts";

const close = (actual: unknown, expected: number) => {
  expect(typeof actual).toBe("number");
  expect(Math.abs((actual as number) - expected)).toBeLessThan(1e-9 * Math.max(1, Math.abs(expected)));
};

// From memory: the worked examples in the function reference that Microsoft prints for its spreadsheet, whose functions of
// these names Sheets follows.
const PRINTED: readonly (readonly [formula: string, value: number | string])[] = [
  ["=ROUND(2.15;1)", 2.2],
  ["=ROUND(2.149;1)", 2.1],
  ["=ROUND(-1.475;2)", -1.48],
  ["=ROUND(21.5;-1)", 20],
  ["=ROUND(626.3;-3)", 1000],
  ["=ROUND(1.98;-1)", 0],
  ["=ROUND(-50.55;-2)", -100],
  ["=ROUNDUP(3.2;0)", 4],
  ["=ROUNDUP(-3.14159;1)", -3.2],
  ["=ROUNDUP(31415.92654;-2)", 31500],
  ["=ROUNDDOWN(76.9;0)", 76],
  ["=ROUNDDOWN(-3.14159;1)", -3.1],
  ["=ROUNDDOWN(31415.92654;-2)", 31400],
  ["=MROUND(10;3)", 9],
  ["=MROUND(-10;-3)", -9],
  ["=MROUND(1.3;0.2)", 1.4],
  ["=MROUND(5;-2)", "#NUM!"],
  ["=CEILING(2.5;1)", 3],
  ["=CEILING(-2.5;-2)", -4],
  ["=CEILING(-2.5;2)", -2],
  ["=CEILING(1.5;0.1)", 1.5],
  ["=CEILING(0.234;0.01)", 0.24],
  ["=FLOOR(3.7;2)", 2],
  ["=FLOOR(-2.5;-2)", -2],
  ["=FLOOR(2.5;-2)", "#NUM!"],
  ["=FLOOR(1.58;0.1)", 1.5],
  ["=FLOOR(0.234;0.01)", 0.23],
  ["=INT(8.9)", 8],
  ["=INT(-8.9)", -9],
  ["=TRUNC(8.9)", 8],
  ["=TRUNC(-8.9)", -8],
  ["=TRUNC(0.45)", 0],
  ["=QUOTIENT(5;2)", 2],
  ["=QUOTIENT(4.5;3.1)", 1],
  ["=QUOTIENT(-10;3)", -3],
  ["=GCD(24;36)", 12],
  ["=GCD(7;1)", 1],
  ["=LCM(24;36)", 72],
  ["=SUMSQ(3;4)", 25],
  ["=EVEN(1.5)", 2],
  ["=EVEN(3)", 4],
  ["=EVEN(-1)", -2],
  ["=SIGN(-0.00001)", -1],
  ['=REPT("*-";3)', "*-*-*-"],
];

describe("built-in functions", () => {
  test.each(PRINTED)("%s is %s", (formula, expected) => {
    const value = formulaValue(formula);
    if (typeof expected === "number") close(value, expected);
    else expect(value).toBe(expected);
  });

  // Derived: the decimal numbers as written, rounded by hand; the binary numbers behind them lie on the other side.
  test.each([
    ["=ROUND(1.005;2)", 1.01],
    ["=FLOOR(0.7;0.1)", 0.7],
    ["=INT(0.3/0.1)", 3],
    ["=ROUNDUP(0.1+0.2;1)", 0.3],
    ["=ROUND(-2.5;0)", -3],
    ["=TRUNC(0.29*100)", 29],
  ] as const)("%s rounds the number as it is read", (formula, expected) => close(formulaValue(formula), expected));

  test("rounding works through ranges", () => {
    close(formulaValue("=SUMPRODUCT(ROUND(A1:A2;2))", { A1: "1.005", A2: "2.675" }), 1.01 + 2.68);
  });

  test.each([
    ["=N(TRUE())", 1],
    ["=N(A1)", 0],
    ["=T(A1)", "abc"],
    ["=T(5)", ""],
    ["=TYPE(A1)", 2],
    ["=TYPE(1)", 1],
    ["=TYPE(1/0)", 16],
    ['=REGEXMATCH(A1;"b.$")', true],
    ['=REGEXMATCH(A1;"^b")', false],
    ["=XMATCH(3;B1:B4)", 3],
    ["=XMATCH(9;B1:B4)", "#N/A"],
    ["=XMATCH(5/2;B1:B4;-1)", 2],
    ["=XMATCH(5/2;B1:B4;1)", 3],
    ["=XMATCH(2;B1:B4;0;-1)", 4],
    ["=SUM(ARRAY_CONSTRAIN(B1:B4;2;1))", 3],
    ["=SUM(ARRAYFORMULA(B1:B4*10))", 80],
    ["=TO_PERCENT(1/4)", 0.25],
    ["=UNICHAR(65)", "A"],
    ['=CODE("A")', 65],
  ] as const)("%s is %s", (formula, expected) => {
    expect(formulaValue(formula, { A1: "abc", B1: "1", B2: "2", B3: "3", B4: "2" })).toBe(expected);
  });
});

describe("errors read as in a sheet", () => {
  test.each([
    ['=""*2', "#VALUE!"],
    ['=-""', "#VALUE!"],
    ['=ROUND("";1)', "#VALUE!"],
    ['=IF("";1;2)', "#VALUE!"],
    ["=A1*2", "#VALUE!"],
    ["=B1*2", "#VALUE!"],
    ["=1/0", "#DIV/0!"],
    ["=NOSUCH(1)", "#NAME?"],
    ["=SUM(", "#ERROR!"],
    ["=Z99+1", "#REF!"],
    ['=VLOOKUP("q";A1:B2;2;FALSE())', "#N/A"],
  ] as const)("%s is %s", (formula, expected) => {
    expect(formulaValue(formula, { A1: "abc", B1: '=IF(1=1;"";1)' })).toBe(expected);
  });

  test("a blank cell counts as 0 and a number written as text as its number", () => {
    expect(formulaValue("=A1*2+A2*2", { A2: "'12" })).toBe(24);
    expect(formulaValue("=SUM(A1:A2)", { A2: "'12" })).toBe(0);
    expect(formulaValue("=IF(A1;1;2)")).toBe(2);
  });

  test("a spill over something is refused and recovers", () => {
    const book = openProbes();
    book.type("Sheet1", "A2", "in the way");
    book.type("Sheet1", "A1", '=PROBE_RETURN("block")');
    expect(book.cell("Sheet1", "A1").value).toBe("#REF!");
    book.type("Sheet1", "A2", "");
    expect(book.values("Sheet1", "A1:B2")).toEqual([
      [1, "a"],
      [true, ""],
    ]);
  });
});

test("columns that read each other in a circle show an error, never the numbers that stood there last", () => {
  const book = openProbes();
  const column = (a1: string, from: string) => book.type("Sheet1", a1, `=ARRAYFORMULA(${from}+1)`);
  for (const [row, number] of ["1", "2", "3"].entries()) book.type("Sheet1", `A${row + 1}`, number);
  column("C1", "A1:A3");
  column("E1", "C1:C3");
  column("G1", "E1:E3");
  expect(book.values("Sheet1", "G1:G3")).toEqual([[4], [5], [6]]);
  column("A1", "G1:G3");
  book.type("Sheet1", "A2", "");
  book.type("Sheet1", "A3", "");
  const shown = ["A1:A3", "C1:C3", "E1:E3", "G1:G3"].flatMap((range) => book.values("Sheet1", range).flat());
  expect(shown.filter((value) => typeof value === "number")).toEqual([]);
});

describe("arguments reach a custom function as Sheets passes them", () => {
  const shown = (formula: string) => {
    const book = openProbes();
    const cells = { A1: "65%", A2: "500", A4: "flour", A5: "=1/0", A6: "TRUE", B1: "2026-11-25", B2: "'12,5" };
    for (const [a1, text] of Object.entries(cells)) book.type("Sheet1", a1, text);
    book.type("Sheet1", "Z99", formula);
    return JSON.parse(String(book.cell("Sheet1", "Z99").value));
  };
  test.each([
    ["=PROBE_SHOW()", []],
    ["=PROBE_SHOW(A1)", [0.65]],
    ["=PROBE_SHOW(A3)", [""]],
    ["=PROBE_SHOW(A1:A4)", [[[0.65], [500], [""], ["flour"]]]],
    [
      "=PROBE_SHOW(A1:B2)",
      [
        [
          [0.65, "Date 2026-11-25"],
          [500, "12,5"],
        ],
      ],
    ],
    ["=PROBE_SHOW(A1:A1)", [0.65]],
    ["=PROBE_SHOW(A5)", ["#DIV/0!"]],
    ["=PROBE_SHOW(A6)", [true]],
    ["=PROBE_SHOW(B1)", ["Date 2026-11-25"]],
    ["=PROBE_SHOW(A2;)", [500, "undefined"]],
    ["=PROBE_SHOW(;A2)", ["undefined", 500]],
    ["=PROBE_SHOW({1;2})", [[[1], [2]]]],
    ["=PROBE_SHOW(65%)", [0.65]],
    ['=probe_show("a")', ["a"]],
  ] as const)("%s", (formula, expected) => {
    expect(shown(formula)).toEqual(expected);
  });
});

describe("results of a custom function", () => {
  test("a thrown sentence stays readable", () => {
    const book = openProbes();
    book.type("Sheet1", "A1", '=PROBE_THROW("weights row 2 is a word; write grams.")');
    expect(book.cell("Sheet1", "A1")).toMatchObject({
      value: "#ERROR!",
      message: "weights row 2 is a word; write grams.",
    });
  });

  test.each(["nan", "infinity", "nul", "undef", "date", "ragged", "flat", "empty", "inside", "long"])(
    "%s is a defect that no test can miss",
    (what) => {
      const book = openProbes();
      expect(() => book.type("Sheet1", "A1", `=PROBE_RETURN("${what}")`)).toThrow(
        /Defects in custom functions: PROBE_RETURN returned/,
      );
    },
  );

  test("an error of the language is a defect, a thrown Error is not", () => {
    expect(() => openProbes().type("Sheet1", "A1", "=PROBE_SLIP()")).toThrow(/ReferenceError: missing is not defined/);
  });

  test("writing from a formula is forbidden", () => {
    const book = openProbes();
    book.type("Sheet1", "B1", "=PROBE_WRITE()");
    expect(book.cell("Sheet1", "B1")).toMatchObject({
      value: "#ERROR!",
      message: "You do not have permission to call setValue",
    });
  });

  test("two open workbooks keep their own functions", () => {
    const [one, other] = [openProbes(), openProbes()];
    one.type("Sheet1", "A1", "7");
    one.type("Sheet1", "B1", "=PROBE_SHOW(A1)");
    other.type("Sheet1", "B1", "=PROBE_SHOW(A1)");
    expect([one.cell("Sheet1", "B1").value, other.cell("Sheet1", "B1").value]).toEqual(["[7]", '[""]']);
  });

  test("the engine's helper knows summary and arguments", () => {
    const { library } = openProbes().engine;
    const described = library.registries.functionRegistry.get("PROBE_SHOW") as unknown as {
      description: string;
      args: { name: string; description: string; optional?: boolean }[];
    };
    expect(described.description).toBe("Shows its arguments as JSON.");
    expect(described.args.map(({ name, description, optional }) => [name, description, optional])).toEqual([
      ["first", "The first one.", undefined],
      ["second", "The second one (optional).", true],
      ["third", "The third one (optional).", true],
    ]);
  });
});

describe("typing", () => {
  test("percent, decimals and formulas as the locale reads them", () => {
    const book = openProbes("de_DE");
    book.type("Sheet1", "A1", "65%");
    book.type("Sheet1", "A2", "12,5");
    book.type("Sheet1", "A3", "=A2*1,5");
    expect([book.cell("Sheet1", "A1").value, book.cell("Sheet1", "A2").value, book.cell("Sheet1", "A3").value]).toEqual(
      [0.65, 12.5, 18.75],
    );
    const english = openProbes();
    english.type("Sheet1", "A2", "12,5");
    expect(english.cell("Sheet1", "A2").value).toBe("12,5");
  });

  test("a percent typed into a percent cell is one percent sign", () => {
    const book = openProbes();
    book.type("Sheet1", "A1", "80%%");
    expect(book.cell("Sheet1", "A1").value).toBe(0.8);
  });
});

test("& joins a range cell by cell, and an error only where it stands", () => {
  const book = openProbes();
  for (const [at, text] of [
    ["A1", "1"],
    ["A2", "=1/0"],
    ["A3", "rye"],
  ] as const)
    book.type("Sheet1", at, text);
  book.type("Sheet1", "C1", '=ARRAYFORMULA(A1:A3&" %")');
  expect(book.values("Sheet1", "C1:C3")).toEqual([["1 %"], ["#DIV/0!"], ["rye %"]]);
});
