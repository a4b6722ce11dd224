import { describe, expect, test } from "vitest";
import { readCarried } from "../../shared/cells/carried-units.ts";
import { FUNCTIONS } from "../../src/functions/index.ts";
import { down, expectCells, refusal, run } from "../functions/support.ts";

// NIST SP 811, appendix B: the pound 453.59237 g, the inch 2.54 cm, the US gallon 3785.411784 mL, all exact.
const OUNCE = 453.59237 / 16;
const CUP = 3785.411784 / 16;

describe("an amount with its unit", () => {
  test.each([
    ["20 oz", 20 * OUNCE],
    ["1 lb 6 oz", 22 * OUNCE],
    ["1 lb, 6 oz", 22 * OUNCE],
    ["1lb 6oz", 22 * OUNCE],
    ["1,2 kg", 1200],
    ["1.250 kg", 1250],
    ["1 1/2 LB", 24 * OUNCE],
    ["½ kg", 500],
    ["500\u00a0g", 500],
    ["\u2009500\u202fGrams\u200b", 500],
    ["2 kg 50 g", 2050],
    ["9 in", 22.86],
    ['9"', 22.86],
    ["9 inches", 22.86],
    ["230 mm", 23],
    ["10 cups", 10 * CUP],
    ["8 fl oz", CUP],
    ["1 l", 1000],
    ["75 cl", 750],
    ["1 h 30 min", 90],
    ["72 °F", 200 / 9],
    ["-5 °C", -5],
  ])("%s", (text, value) => expectCells(readCarried(text)?.value, value));

  test.each([
    "1,250 g",
    "1 250 000 loaves",
    "g",
    "6 oz 1 lb",
    "1 kg 5 cm",
    "12",
    "a cup",
    "1 kg -50 g",
    "7oo",
    "5 g or so",
  ])("%s is none", (text) => expect(readCarried(text)).toBeUndefined());
});

describe("weights that are only compared", () => {
  test("all carry a unit: answers are in grams", () => {
    expectCells(run("BAKE_TRUEPCT", down("1 lb", "16 oz", "907.18474 g")), down(0.25, 0.25, 0.5));
    expectCells(run("BAKE_SCALEROUND", down("1.002 kg"), "5 g"), 1000);
    expectCells(run("BAKE_DOUGHFOR", 10, "1 lb"), 4535.9237);
    expectCells(run("BAKE_STOCKLIMIT", down("500 g", "10 oz"), down("1 kg", "1 lb")), [[1.6, 2]]);
  });
  test("some do: refused by row, and the number to enter is said", () => {
    expect(refusal("BAKE_TRUEPCT", down(500, 300, "20 oz"))).toBe(
      'BAKE_TRUEPCT: weights row 3 is "20 oz" beside weights without a unit; enter 566.9905 if those are grams, or each one with its unit.',
    );
    expectCells(
      run("BAKE_TRUEPCT", down(500, 300, 566.9905)),
      down(500, 300, 566.9905).map(([one]) => [Number(one) / 1366.9905]),
    );
    expect(refusal("BAKE_MIXES", "95 kg", 40)).toMatch(/dough is "95 kg" beside weights without a unit; enter 95000/);
    expect(refusal("BAKE_TRUEPCT", down("1 kg", "500 g", 20))).toMatch(/weights row 3 is 20 without a unit.*"20 g"/);
  });
  test("nothing weighs nothing in any unit, blanks in the middle stay blank", () =>
    expectCells(run("BAKE_TRUEPCT", down("1 kg", 0, "", "1 kg")), down(0.5, 0, "", 0.5)));
  test("scaling compares its target with its from alone", () => {
    expectCells(run("BAKE_RESCALE", down(10, 20), "2 lb", "1 lb"), down(20, 40));
    expectCells(run("BAKE_RESCALE", down("10 g", "20 g"), "0.06 kg"), down(20, 40));
    expect(refusal("BAKE_RESCALE", down(10, 20), "2 lb", 1)).toMatch(/target is "2 lb" beside/);
    expect(refusal("BAKE_RESCALE", down("10 g", "20 g"), 60)).toMatch(/target is 60 without a unit/);
  });
  test("a day's formulas are each in their own unit, its orders and stock in one", () => {
    const formulas = [
      ["roll", "flour", "2 lb"],
      ["", "water", "1 lb"],
    ];
    expectCells(run("BAKE_RAWNEEDS", [["roll", 300]], formulas, [["water", 20]]), [
      ["flour", 200],
      ["water", 80],
    ]);
    expect(refusal("BAKE_RAWNEEDS", [["roll", "3 kg"]], formulas, [["water", 20]])).toMatch(/20 without|3 kg.*beside/);
  });
});

describe("where the function's unit is known", () => {
  test("cells with a unit are converted, the others are in that unit", () => {
    expectCells(run("BAKE_TINCAPACITY", "box", down("10 in", 10, "100 mm")), 25.4 * 10 * 10);
    expectCells(run("BAKE_TINCAPACITY", "box", down("25.4 cm", 10, 10), "in"), 1000 * 2.54 ** 3);
    expectCells(run("BAKE_TINDOUGH", "10 cups", 0.5), 5 * CUP);
    expectCells((run("BAKE_TINNOTE", "1 lb", "1 l", "white", "kg") as number[][])[0]?.slice(1), [0.34, 0.43, 0.59]);
    expectCells(run("BAKE_WEIGHTLIMITS", "1 kg"), run("BAKE_WEIGHTLIMITS", 1000));
    expectCells(run("BAKE_YEASTTIME", 10, "90 min", 3), run("BAKE_YEASTTIME", 10, 1.5, 3));
    expectCells(run("BAKE_ICE", 1000, "68 °F", 5), run("BAKE_ICE", 1000, 20, 5));
    expectCells(
      run("BAKE_COSTS", down("sugar"), down("1 lb"), [
        ["ingredient", "price", "pack"],
        ["sugar", 2, "5 lb"],
      ]),
      [[0.4, ""]],
    );
  });
  test("temperatures of no known unit: both numbers are said", () =>
    expect(refusal("BAKE_WATERTEMP", 24, down("72 °F", 22), 10)).toBe(
      'BAKE_WATERTEMP: temps row 1 is "72 °F"; enter 22.22 if the other temperatures are in °C, 72 if they are in °F.',
    ));
});

describe("every function and every argument that is an amount", () => {
  const UNIT = {
    weight: ["lb", "kg"],
    grams: ["lb", "kg"],
    size: ["in", "mm"],
    capacity: ["cups", "l"],
    minutes: ["h", "min"],
    hours: ["h", "min"],
    degrees: ["F", "C"],
  } as Record<string, string[]>;
  const cases = FUNCTIONS.flatMap((made) =>
    Object.entries(made.args).flatMap(([name, { is }], index) =>
      "measure" in is.hint && is.hint.measure !== undefined
        ? [{ made, name, index, measure: is.hint.measure as string }]
        : [],
    ),
  );
  test("there are amounts in more than half of the functions", () =>
    expect(new Set(cases.map(({ made }) => made)).size).toBeGreaterThan(FUNCTIONS.length / 2));

  const answer = (name: string, args: unknown[]): { cells?: unknown; says?: string } => {
    try {
      return { cells: run(name, ...args) };
    } catch (error) {
      return { says: (error as Error).message };
    }
  };
  /** Bare numbers of an argument with the unit behind them. */
  const withUnit = (arg: unknown, unit: string): unknown =>
    Array.isArray(arg) ? arg.map((one) => withUnit(one, unit)) : typeof arg === "number" ? `${arg} ${unit}` : arg;

  test.each(cases)("$made.name $name: a unit never passes as a bare number of another", ({ made, index, measure }) => {
    for (const { call } of made.examples) {
      if (call[index] === undefined || call[index] === "" || call.flat(3).includes("water")) continue;
      const bare = answer(made.name, [...call]);
      for (const unit of UNIT[measure] ?? []) {
        const args = [...call] as unknown[];
        args[index] = withUnit(args[index], unit);
        const got = answer(made.name, args);
        // Ratios are as they were where all share one unit; else it is refused or converted. Only "is not a number" is no answer.
        if (got.says !== undefined) expect(got.says).not.toMatch(/enter it without|TypeError|undefined/);
        else expect(JSON.stringify(got.cells)).not.toMatch(/NaN|null/);
        if (measure === "weight" || measure === "grams" || measure === "capacity")
          if (got.says === undefined && unit === "lb" && /unit of measure/.test(bare.says ?? ""))
            expect(got.cells).not.toEqual(bare.cells);
      }
    }
  });
  test.each(cases)(
    "$made.name $name: grams in the cell are the number itself where the unit is grams",
    ({ made, index, measure }) => {
      const own =
        (
          { weight: "g", grams: "g", size: "cm", capacity: "ml", minutes: "min", hours: "h", degrees: "C" } as Record<
            string,
            string
          >
        )[measure] ?? "";
      const inGroup = cases.filter((one) => one.made === made && one.measure === measure);
      for (const { call } of made.examples) {
        if (call.some((one) => /^(?:kg|oz|lb|in|mm|F|water)$/.test(String(one)))) continue;
        const args = [...call] as unknown[];
        for (const { index: at } of inGroup) {
          const hint = Object.values(made.args)[at]?.is.hint;
          if (hint && "at" in hint && hint.at !== undefined)
            args[at] = (args[at] as unknown[][] | undefined)?.map((row) =>
              row.map((cell, column) => (column === hint.at ? withUnit(cell, own) : cell)),
            );
          else args[at] = withUnit(args[at], own);
        }
        const bare = answer(made.name, [...call]);
        const got = answer(made.name, args);
        if (measure === "degrees" && got.says !== undefined) expect(got.says).toMatch(/if the other temperatures|is "/);
        else if (args[index] !== undefined) expectCells(got.cells, bare.cells);
      }
    },
  );
});
