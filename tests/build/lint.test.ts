import { describe, expect, test } from "vitest";
import type { Options, SheetModel } from "../../shared/sheet/model.ts";
import { lint } from "../../src/build/lint.ts";
import { formulaList } from "../../templates/formula-list.ts";
import { SHEETS } from "../../templates/index.ts";
import { optionsOf } from "../functions/support.ts";
import { METRIC_UNITS } from "../kit/units.ts";

const PLAIN: Options = { ...METRIC_UNITS, parts: [] };

describe.each([...SHEETS, formulaList])("$title", (model) => {
  test.each(optionsOf(model))("has no formula that means different things: %j", (options) => {
    expect(
      lint(
        model,
        options,
        model.name === "pan-loaf" && !options.parts.some((part) => part === "cost" || part === "label") ? 12 : 18,
      ),
    ).toEqual([]);
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
