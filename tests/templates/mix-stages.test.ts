import { describe, expect, test } from "vitest";
import type { Options, SheetModel, Values } from "../../shared/sheet/model.ts";
import { laminated } from "../../templates/laminated.ts";
import { levainLoaf } from "../../templates/levain-loaf.ts";
import { softBun } from "../../templates/soft-bun.ts";
import { METRIC_UNITS } from "../kit/units.ts";
import { buildSheet } from "./sheet-support.ts";

// Every test builds whole sheets.

/** A sheet with all its parts; the values named replace the sample's. */
async function built(model: SheetModel, values: Values = {}, units: Omit<Options, "parts"> = METRIC_UNITS) {
  const made = await buildSheet({ ...model.sample, ...values }, { model, options: { ...units, parts: model.parts } });
  const shown = (name: string, row?: number) => made.book.cell(made.sheet, made.at(name, row)).shown;
  return { ...made, shown, number: (name: string, row?: number) => Number(made.value(name, row)) };
}
const near = (actual: unknown, expected: number, within: number) => {
  expect(typeof actual, String(actual)).toBe("number");
  expect(Math.abs((actual as number) - expected), `${actual} against ${expected}`).toBeLessThanOrEqual(within);
};

// A step of a thousandth leaves the stages as they are.
const EXACT = { step_coarse: 0.001, step_fine: 0.001 };

describe("stages of one mix", () => {
  test("a levain and the final mix make up every row; the levain has its share of the flour, and water by its hydration", async () => {
    const { number } = await built(levainLoaf, EXACT);
    const rows = [1, 2, 3, 4, 5];
    for (const row of rows) near(number("pre_scale", row) + number("final", row), number("mix_scale", row), 1e-9);
    const flour = [1, 2, 3].reduce((sum, row) => sum + number("grams", row), 0) / number("mixes");
    const inLevain = [1, 2, 3].reduce((sum, row) => sum + number("pre_scale", row), 0);
    near(inLevain, 0.2 * flour, 2e-3);
    near(number("pre_scale", 4), 0.2 * flour, 1e-3);
    near(number("pre_scale", 5), 0, 0);
    near(number("pre_mix"), 0.4 * flour, 1e-6);
  });

  test("one flour alone may be prefermented, and a name that no row has is told", async () => {
    const { number, type, value } = await built(levainLoaf, { ...EXACT, pre_share: 0.1, pre_from: "Rye flour" });
    const flour = [1, 2, 3].reduce((sum, row) => sum + number("grams", row), 0);
    near(number("pre_scale", 1), 0, 0);
    near(number("pre_scale", 3), (0.1 * flour) / number("mixes"), 2e-3);
    near(number("final", 3), 0, 2e-3);
    type("pre_from", "Rice flour");
    expect(value("pre_note")).toBe("The preferment takes more flour than the chosen flour has. ");
    expect(value("check")).toContain("more flour than the chosen flour has");
  });

  test("a levain that takes more water than the dough has is told, and so is a seed that is more than the levain", async () => {
    const { value, type } = await built(levainLoaf, { pre_share: 0.5 });
    type("pre_hydration", "190%");
    expect(value("pre_note")).toContain("takes more water than the dough has");
    type("pre_hydration", "100%");
    type("seed_weight", "60000");
    expect(value("pre_note")).toContain("The seed has a share and a weight: clear one of the two.");
    type("seed_share", "");
    expect(value("pre_note")).toBe("The seed is more than the levain takes. ");
    expect(value("check")).toContain("The seed is more than the levain takes.");
  });

  test("without a levain everything goes into the final mix", async () => {
    const { number, value } = await built(levainLoaf, { ...EXACT, pre_share: null });
    for (const row of [1, 2, 3, 4, 5]) near(number("final", row), number("mix_scale", row), 1e-9);
    expect(value("pre_shown", 1)).toBe("");
  });

  test("the notes see the levain: nothing says that yeast is missing", async () => {
    const { book, sheet } = await built(levainLoaf);
    expect(book.shownTexts(sheet, book.usedRange(sheet)).flat().join("\n")).not.toContain("Yeast is missing");
  });
});

test("550 g of levain at 1 : 5 : 5 take 50 of seed, 250 of flour and of water; 300 kept back come on top — derived", async () => {
  const plain = { by: "flour", flour_wanted: 1375, seed_share: 0.2 };
  const { number } = await built(levainLoaf, { ...plain, keep: null });
  ["feed_seed", "feed_flour", "feed_water"].forEach((name, place) => {
    near(number(name), [50, 250, 250][place] ?? 0, 1e-6);
  });
  near(number("seed_dough"), 50, 1e-6);
  const kept = await built(levainLoaf, { ...plain, keep: 550 });
  near(kept.number("feed_seed"), 100, 1e-6);
  near(kept.number("seed_dough"), 50, 1e-6);
});

describe("soft bun", () => {
  // USDA SR28, water in 100 g: whole milk 88.13, whole egg 76.15, unsalted butter 17.94, granulated sugar 0.02, compressed yeast 69.0.
  const WATER = [0, 0.8813, 1, 0.7615, 0.1794, 0.0002, 0.69, 0];

  test("the water row takes what is left to the effective hydration wanted, told from the grams again", async () => {
    const { number } = await built(softBun, { percent: [1, 0.25, null, 0.1, 0.12, 0.1, 0.04, 0.018] });
    const water = WATER.reduce((total, share, row) => total + share * number("grams", row + 1), 0);
    near(water / number("grams", 1), 0.64, 1e-9);
    near(number("effective"), 0.64, 1e-9);
  });

  test("water that is typed counts as typed", async () => {
    const { number, type } = await built(softBun);
    type("percent", "20%", 3);
    const water = WATER.reduce((total, share, row) => total + share * number("grams", row + 1), 0);
    near(number("effective"), water / number("grams", 1), 1e-9);
  });

  test("flour 1000, egg 500, milk 100, butter 500: 55.858 % from everything — derived on USDA SR28", async () => {
    const { number } = await built(softBun, {
      by: "flour",
      flour_wanted: 1000,
      effective_wanted: null,
      ingredient: ["Flour", "Whole egg", "Whole milk", "Unsalted butter"],
      kind: ["flour", "egg", "dairy", "fat"],
      percent: [1, 0.5, 0.1, 0.5],
    });
    near(number("effective"), 0.55858, 5e-6);
  });

  test("more from milk and egg than is wanted is told, with how much", async () => {
    const { message, type } = await built(softBun);
    type("effective_wanted", "20%");
    expect(message("plain_water")).toMatch(/too much\. Enter a higher one/);
  });
});

describe("laminated dough", () => {
  test("the fat is a share of the base dough, stays out of the mix, and counts in the pieces", async () => {
    const { number } = await built(laminated);
    near(number("roll_in") / number("dough"), 0.28, 1e-12);
    near(
      [1, 2, 3, 4, 5, 6, 7].reduce((sum, row) => sum + number("grams", row), 0),
      number("dough"),
      1e-6,
    );
    near(number("dough") + number("roll_in"), number("size_dough", 1) + number("size_dough", 2), 1e-6);
    near(3 * (number("block_dough") + number("block_fat")), number("dough_in_all"), 1e-6);
  });

  test("a Danish whose fat is 32.8 % of the base dough has 57.7 % of the flour in it — eoibakery.com.au", async () => {
    const { number } = await built(laminated, {
      ingredient: ["Flour", "Water", "Salt", "Instant yeast", "Sugar", "Whole egg"],
      kind: ["flour", "water", "salt", "yeast", "sugar", "egg"],
      percent: [1, 0.496, 0.023, 0.015, 0.073, 0.15],
      roll_in_share: 0.328,
    });
    near(number("roll_in_of_flour"), 0.577, 1e-3);
  });

  test("21.875 % of the finished dough is 28 % of the base dough; so is 48.216 % of the flour — 28 ÷ 128, 28 × 1.722", async () => {
    const { number, type } = await built(laminated, { roll_in_of: "finished", roll_in_share: 0.28 / 1.28 });
    near(number("roll_in"), 2283.832261, 1e-5);
    type("roll_in_of", "flour");
    type("roll_in_share", String(0.28 * 1.722));
    near(number("roll_in"), 2283.832261, 1e-5);
    near(number("dough"), 8156.54379, 1e-4);
  });

  test("scaled to dough, the amount is the dough with its fat", async () => {
    const { number } = await built(laminated, { by: "dough", dough_wanted: 1280 });
    near(number("dough"), 1000, 1e-9);
    near(number("roll_in"), 280, 1e-9);
  });

  test("by flour, the fat follows from the dough that the flour makes; a double fold makes four layers", async () => {
    const { number, type } = await built(laminated, { by: "flour", flour_wanted: 1000, fold_3: null });
    near(number("roll_in"), 1722 * 0.28, 1e-6);
    expect(number("layers")).toBe(9);
    type("fold_1", "4");
    expect(number("layers")).toBe(12);
  });
});
