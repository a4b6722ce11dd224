import { describe, expect, test } from "vitest";
import { assess } from "../../sidebar/new-formula/order.ts";
import { unusual } from "../../sidebar/new-formula/review.ts";
import { startFrom } from "../../sidebar/new-formula/start.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { workbook } from "../templates/sheet-support.ts";
import { skipWithoutChromium } from "./browser.ts";
import { benchPages } from "./page.ts";
import { templateOf } from "./samples.ts";

type Typed = readonly (readonly [ingredient: string, kind: string, percent: string])[];

function told(template: string, typed: Typed): readonly string[] {
  const model = templateOf(template);
  const draft = startFrom(model);
  const rows = typed.map(([ingredient, kind, percent]) => ({ ingredient, kind, percent, weighed: "" }));
  draft.rows.splice(0, draft.rows.length, ...rows);
  return unusual(assess(draft, model).rows, model);
}

const LEAN: Typed = [
  ["Flour", "flour", "100"],
  ["Water", "water", "63"],
  ["Salt", "salt", "2"],
  ["Fresh yeast", "yeast", "2"],
];
const withWater = (percent: string): Typed => LEAN.map((row) => (row[1] === "water" ? [row[0], row[1], percent] : row));

describe("what is unusual is said while it is typed", () => {
  test("200 % of water and 20 % of salt", async () => {
    const salty = withWater("200").map((row) => (row[1] === "salt" ? ([row[0], row[1], "20"] as const) : row));
    const says = told("pan-loaf", salty);
    expect(says).toEqual([
      expect.stringMatching(
        /^Water is 200 % of all flour, above the usual range for pan bread \(.* %\), from published formulas\.$/,
      ),
      expect.stringMatching(/^Salt is 20 % of all flour, above the usual range for pan bread/),
    ]);
    // To the letter what the add-on's own function answers.
    const book = await workbook();
    book.type(
      "Sheet1",
      "A1",
      '=BAKE_REVIEW({"Flour";"Water";"Salt";"Fresh yeast"};{"flour";"water";"salt";"yeast"};{100;200;20;2};"pan bread")',
    );
    const answers = book.values("Sheet1", "A1:A4").flat();
    expect(answers.filter((answer) => answer !== "").map((answer) => `${answer}.`)).toEqual(says);
  });

  test("the usual is nothing, and neither is what cannot be told", () => {
    expect(told("pan-loaf", LEAN)).toEqual([]);
    expect(told("pan-loaf", withWater(""))).toEqual([]);
    expect(
      told("pan-loaf", [
        ["Flour", "flour", "100"],
        ["Water", "water", "much"],
      ]),
    ).toEqual([]);
  });

  test("with milk and butter, whose water only the larder knows, it is at least so much, and never too little", () => {
    const rich: Typed = [...LEAN, ["Milk", "dairy", "20"], ["Butter", "fat", "10"]];
    const more = rich.map((row) => (row[1] === "water" ? ([row[0], row[1], "150"] as const) : row));
    expect(told("pan-loaf", more)[0]).toMatch(/^Water, dairy included, is at least 150 % of all flour, above/);
    const less = rich.map((row) => (row[1] === "water" ? ([row[0], row[1], "30"] as const) : row));
    expect(told("pan-loaf", less)).toEqual([]);
  });

  test.each(TEMPLATES)("the $title as it begins is nothing unusual", (model) => {
    expect(unusual(assess(startFrom(model), model).rows, model)).toEqual([]);
  });
});

describe.skipIf(skipWithoutChromium("what is unusual, in a browser"))("in the panel New formula", () => {
  const bench = benchPages();

  test("it stands below the formula and is pointed to from the figures", async () => {
    await bench.open();
    await bench.fill();
    const note = bench.page.getByText(/^Water is 200 % of all flour/);
    expect(await note.count()).toBe(0);
    await bench.field("Baker's %, ingredient 2").fill("200");
    expect(await note.isVisible()).toBe(true);
    expect(await bench.page.locator(".figures:visible").textContent()).toContain("Unusual: see below the ingredients.");
    await bench.checked("unusual");
    if (process.env.PICTURES !== undefined)
      await bench.page.screenshot({ path: `${process.env.PICTURES}/unusual.png`, fullPage: true });
    await bench.field("Baker's %, ingredient 2").fill("63");
    expect(await note.count()).toBe(0);
  });
});
