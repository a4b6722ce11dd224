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
const rowsOf = (values: Values[string] | undefined) => (Array.isArray(values) ? values.length : 0);
const near = (actual: unknown, expected: number, within: number) => {
  expect(typeof actual, String(actual)).toBe("number");
  expect(Math.abs((actual as number) - expected), `${actual} against ${expected}`).toBeLessThanOrEqual(within);
};

// A step of a thousandth leaves the stages as they are.
const EXACT = { step_coarse: 0.001, step_fine: 0.001 };

describe("stages of one mix", () => {
  test("a levain, its seed and the final mix make up every row", async () => {
    const { number } = await built(levainLoaf, EXACT);
    const seedFlour = number("seed_dough") / 2 / number("mixes");
    const shares = [0.7, 0.2, 0.1];
    for (let row = 1; row <= rowsOf(levainLoaf.sample.percent); row++) {
      const seed = row === 4 ? seedFlour : seedFlour * (shares[row - 1] ?? 0);
      near(number("pre", row) + number("final", row) + seed, number("grams", row) / number("mixes"), 1.1e-3);
    }
    near(number("pre_mix") + number("final_total"), number("mix_dough"), 5e-3);
  });

  test("one flour alone may be prefermented, and a name that no row has is told", async () => {
    const made = await built(levainLoaf, { ...EXACT, pre_share: 0.1, pre_from: "Rye flour" });
    const { number, type, value } = made;
    near(number("pre", 1), 0, 0);
    near(number("pre", 3), (0.1 * number("flour") - number("seed_dough") / 2) / number("mixes"), 2e-3);
    near(number("final", 3), 0, 2e-3);
    type("pre_from", "Rice flour");
    expect(value("pre_from_note")).toBe("no row of this name");
  });

  test("a preferment that takes more than the dough has is refused, and both places say so", async () => {
    const { message, value, type } = await built(levainLoaf);
    type("pre_hydration", "450%");
    expect(message("pre", 0)).toMatch(
      /BAKE_STAGES: hydration is 450 %, which takes .* of water where the water rows hold/,
    );
    expect(value("pre_from_note")).toBe("does not fit: see its red cell");
  });

  test("without a preferment everything goes into the final mix", async () => {
    const { number, value } = await built(levainLoaf, { ...EXACT, pre_share: null });
    near(number("final_total"), number("mix_dough"), 5e-3);
    expect(value("pre", 1)).toBe("");
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
    const { number } = await built(softBun);
    const water = WATER.reduce((total, share, row) => total + share * number("grams", row + 1), 0);
    near(water / number("flour"), 0.62, 1e-9);
    near(number("effective"), 0.62, 1e-9);
  });

  test("water that is typed counts as typed", async () => {
    const { number, type } = await built(softBun);
    type("percent", "20%", 3);
    near(number("used", 3), 0.2, 1e-12);
    const water = WATER.reduce((total, share, row) => total + share * number("grams", row + 1), 0);
    near(number("effective"), water / number("flour"), 1e-9);
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
    expect(message("plain_water")).toMatch(/too much; enter a higher one/);
  });
});

describe("laminated dough", () => {
  test("the fat is a share of the base dough, stays out of the mix, and counts in the pieces", async () => {
    const { number } = await built(laminated);
    near(number("roll_in") / number("dough"), 0.28, 1e-12);
    near(number("grams_total"), number("dough"), 1e-6);
    near(number("dough") + number("roll_in"), number("size_dough", 1) + number("size_dough", 2), 1e-6);
    near(number("mix_total"), number("mix_dough"), 20);
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

  test("by flour, the fat follows from the dough that the flour makes; a double fold makes four layers", async () => {
    const { number, type } = await built(laminated, { by: "flour", flour_wanted: 1000, fold_3: null });
    near(number("roll_in"), 1722 * 0.28, 1e-6);
    expect(number("layers")).toBe(9);
    type("fold_1", "4");
    expect(number("layers")).toBe(12);
  });
});
