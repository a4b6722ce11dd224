import { describe, expect, test } from "vitest";
import type { Options, SheetModel } from "../../shared/sheet/model.ts";
import { lint } from "../../src/build/lint.ts";
import { formulaList } from "../../templates/formula-list.ts";
import { SHEETS } from "../../templates/index.ts";
import { optionsOf } from "../functions/support.ts";
import { someOf } from "../kit/scale.ts";
import { METRIC_UNITS } from "../kit/units.ts";

const PLAIN: Options = { ...METRIC_UNITS, parts: [] };

/** Calls of sheet functions that a sheet may have: fewer where its own formulas add up. */
function mostCalls({ name }: SheetModel, { parts }: Options): number {
  if (name === "pan-loaf" || name === "hearth-loaf") return parts.includes("label") ? 12 : 5;
  return 18;
}

describe.each([...SHEETS, formulaList])("$title", (model) => {
  test.each(someOf(optionsOf(model), 4))("has no formula that means different things: %j", (options) => {
    expect(lint(model, options, mostCalls(model, options))).toEqual([]);
  });
});

/** A template with two typed cells, a typed column, a filled block, a filled column, and one formula under test. */
function withFormula(formula: string): SheetModel {
  return {
    name: "trial",
    title: "Trial",
    says: "For the lint.",
    widths: [100, 100, 100, 100, 100, 100],
    parts: [],
    sample: {},
    expects: {},
    bands: [
      [
        {
          block: "top",
          left: 0,
          lines: [
            {
              cells: [
                { at: 0, role: "input", name: "one", unit: "weight" },
                { at: 1, role: "input", name: "two", unit: "weight" },
              ],
            },
            {
              cells: [
                {
                  at: 0,
                  role: "computed",
                  name: "mixes",
                  unit: "count",
                  formula: "=BAKE_MIXES(@one;@two)",
                  spills: ["each"],
                },
              ],
            },
            { cells: [{ at: 0, role: "computed", name: "tried", unit: "weight", formula }] },
          ],
        },
      ],
      [
        {
          table: "rows",
          left: 0,
          rows: 3,
          columns: [
            { name: "typed", head: "Typed", unit: "weight", role: "input" },
            { name: "filled", head: "Filled", unit: "share", role: "computed", formula: "=BAKE_TRUEPCT(@typed)" },
          ],
        },
      ],
    ],
  };
}

test.each([
  ["=IF(@one>0;@two;0)"],
  ["=SUM(@filled)"],
  ["=IF(LEN(@each)=0;0;@each*2)"],
  ['=ARRAYFORMULA(IF(LEN(@filled)=0;"";@filled*@one))'],
  ["=BAKE_DOUGHFOR(@one;@two)"],
  ['=IF(@one=0;"write 1.5, say";"")'],
  ["=SUM({1;2})"],
])("passes %s", (formula) => {
  expect(lint(withFormula(formula), PLAIN)).toEqual([]);
});

test.each([
  ["a comma as separator", "=IF(@one>0,@two;0)", /comma/],
  ["a decimal literal", "=@one*0.5", /decimal literal/],
  ["a horizontal array", "=SUM({1\\2})", /horizontal array/],
  ["a locale-bound pattern", '=TEXT(@one;"0")', /TEXT/],
  ["a volatile argument", "=BAKE_DOUGHFOR(NOW();@two)", /NOW/],
  ["an indirection", '=INDIRECT("A1")', /INDIRECT/],
  ["ISBLANK", "=IF(ISBLANK(@each);0;1)", /ISBLANK/],
  ["COUNTA", "=COUNTA(@filled)", /COUNTA/],
  ["LET", "=LET(x;@one;x)", /LET/],
  ["LAMBDA", "=MAP(@filled;LAMBDA(x;x))", /MAP/],
  ["QUERY", '=QUERY(@filled;"select A")', /QUERY/],
  ["arithmetic on a filled cell", "=@each*2", /@each is filled/],
  ["a comparison of a filled cell", "=IF(@each>2;1;0)", /@each is filled/],
  ["a filled cell inside ROUND", "=ROUND(@each;1)", /@each is filled/],
  ["arithmetic on a filled column", "=ARRAYFORMULA(@filled*2)", /@filled is filled/],
  ["a range outside ARRAYFORMULA", "=@typed*2", /outside ARRAYFORMULA/],
  ["a range tested by IF", "=IF(@typed>0;1;0)", /outside ARRAYFORMULA/],
  ["a quote doubled inside a text", '=IF(@one>0;"a ""b"" c";"")', /CHAR\(34\)/],
  ["a bare TRUE", "=IF(@one>0;TRUE;FALSE)", /TRUE\(\)/],
  ["a minus before a power", "=-@one^2", /bracket/],
  ["an address", "=A1*2", /address/],
  ["an unknown sheet function", "=BAKE_NOSUCH(@one)", /no function/],
  ["too many arguments", "=BAKE_TRUEPCT(@typed;@one)", /takes 1 to 1/],
  ["a circle", "=@tried+1", /circle/],
  [
    "a chain of four calls",
    "=BAKE_MIXES(BAKE_DOUGHFOR(1;BAKE_DOUGHFOR(1;INDEX(BAKE_MIXES(@one;@two);1;2)));@two)",
    /chain of 4/,
  ],
  ["a formula that cannot be read", "=IF(@one>0;1", /ends too early|expects/],
])("fails %s", (_, formula, sentence) => {
  expect(lint(withFormula(formula), PLAIN).join("\n")).toMatch(sentence);
});

test("fails more calls than allowed", () => {
  expect(lint(withFormula("=BAKE_DOUGHFOR(@one;@two)"), PLAIN, 2).join("\n")).toMatch(/3 calls/);
});

test("fails a name that no cell has", () => {
  expect(lint(withFormula("=@nobody"), PLAIN).join("\n")).toMatch(/no cell is called @nobody/);
});

test("fails two parts that claim one cell", () => {
  const model = withFormula("=@one");
  const [top] = model.bands;
  expect(
    lint(
      {
        ...model,
        bands: [
          [...(top ?? []), { block: "again", left: 1, lines: [{ cells: [{ at: 0, role: "label", text: "Again" }] }] }],
        ],
      },
      PLAIN,
    ).join("\n"),
  ).toMatch(/B1: both two and Again stand there/);
});

/** The trial as a sheet whose page only shows what is worked out beside it. */
function addingUp(formula: string): SheetModel {
  const model = withFormula(formula);
  const [top] = model.bands;
  const columns = [
    { name: "typed", head: "Typed", unit: "weight", role: "input" },
    {
      name: "shown",
      head: "Shown",
      unit: "weight",
      role: "computed",
      formula: '=ARRAYFORMULA(IF(@exact>0;@exact;""))',
    },
    { name: "exact", head: "Exact", unit: "plain", role: "helper", numbers: true, formula: "=ARRAYFORMULA(@typed*1)" },
    { name: "word", head: "Word", unit: "plain", role: "helper", formula: "=ARRAYFORMULA(LOWER(@typed))" },
  ] as const;
  return { ...model, foldedFrom: 3, bands: [top ?? [], [{ table: "rows", left: 0, rows: 3, hidden: true, columns }]] };
}

test.each([
  ['=SUMPRODUCT((@word="flour")*1;@exact)'],
  ["=ARRAYFORMULA(@exact*2)"],
  ["=COUNTA(@typed)"],
  ["=ISERROR(@shown_top)"],
  ["=ROWS(@rows_table)-ROWS(@exact)"],
  ["=MATCH(MAX(@exact);@exact;0)"],
])("passes %s on a sheet that adds up by itself", (formula) => {
  expect(lint(addingUp(formula), PLAIN)).toEqual([]);
});

test.each([
  ["a sum of what is shown", "=SUM(@shown)", /reads @shown, which is only shown/],
  ["the hidden row of what is shown", "=@shown_top", /reads @shown_top/],
  ["a name looked up", "=MATCH(@one;@typed;0)", /MATCH looks for @one/],
  ["a name that is counted", "=COUNTIF(@typed;@one)", /COUNTIF looks for @one/],
  ["a name whose amounts are added", "=SUMIF(@typed;@one;@exact)", /SUMIF looks for @one/],
  ["a name looked up in a table", "=VLOOKUP(@one;@rows_table;2;FALSE())", /VLOOKUP looks for @one/],
  ["COUNTA of what is filled", "=COUNTA(@exact;@shown)", /COUNTA/],
  ["arithmetic on a column of texts", "=ARRAYFORMULA(@word*2)", /@word is filled/],
  ["a call that reads a call", "=BAKE_DOUGHFOR(1;INDEX(BAKE_MIXES(@one;@two);1;2))", /chain of 2/],
  ["a formula above 200 characters", `=${Array(60).fill("@one").join("+")}`, /characters, above 200/],
])("fails %s on a sheet that adds up by itself", (_, formula, sentence) => {
  expect(lint(addingUp(formula), PLAIN).join("\n")).toMatch(sentence);
});
