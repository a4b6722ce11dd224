// A finished product out of a pasted text: what goes on and into one piece, and what that costs on the sheet.
import { describe, expect, test } from "vitest";
import { assess } from "../../sidebar/paste-recipe/order.ts";
import { productOrder, productParts } from "../../sidebar/paste-recipe/product-order.ts";
import { describedNow, emptyState, ownOf, type PasteState, takeText } from "../../sidebar/paste-recipe/state.ts";
import { openBook } from "../../src/workbook/scripted.ts";

const BUNS =
  "Sweet buns\nMakes 20\nFlour 1000 g\nMilk 500 g\nYeast 40 g\nFilling:\nButter 200 g\nSugar 100 g\nEgg wash: 2 eggs\n20 g flour for dusting";

const stateOf = (text: string): PasteState => {
  const state = emptyState();
  takeText(state, text);
  return state;
};
const partsOf = (text: string) => {
  const state = stateOf(text);
  return productParts(describedNow(state), assess(state)).map(({ name, type, each }) => [name, type, each]);
};
const faultsOf = (state: PasteState) => productOrder(state, assess(state)).faults.map(({ says }) => says);

describe("what goes with one piece", () => {
  test("is a share of each part, and nothing of the flour on the bench", () => {
    expect(partsOf(BUNS)).toEqual([
      ["Butter", "filling", 10],
      ["Sugar", "filling", 5],
      ["eggs", "topping", 5],
    ]);
  });
  test("goes by the dough of a piece where the text does not say how many", () => {
    const state = stateOf("Buns\nFlour 1000 g\nMilk 500 g\nYeast 40 g\nFilling:\nButter 154 g");
    Object.assign(ownOf(state), { pieces: "10", weight: "80" });
    // 154 g for 1540 g of dough
    expect(productParts(describedNow(state), assess(state))).toEqual([{ name: "Butter", type: "filling", each: 8 }]);
  });
  test("goes by percentages where there is nothing else", () => {
    const state = stateOf("Buns\n10 pcs @ 80 g\nFlour 100%\nMilk 56%\nYeast 4%\nTopping:\nSugar 20%");
    // 20 of 160
    expect(productParts(describedNow(state), assess(state))).toEqual([{ name: "Sugar", type: "topping", each: 10 }]);
  });
  test("no bath, no butter that a sheet rolls in, and nothing where nothing is kept apart", () => {
    expect(partsOf("Bagels (8)\n500 g flour\n290 g water\n10 g salt\n\nFor boiling\n2 l water\n30 g honey")).toEqual(
      [],
    );
    expect(partsOf("Croissant\nMakes 20\nFlour 1000 g\nMilk 520 g\nYeast 60 g\nRoll-in butter 480 g")).toEqual([]);
    expect(partsOf("Loaf\nFlour 1000 g\nWater 600 g")).toEqual([]);
  });
});

test("it needs pieces, and a name beside that of the formula", () => {
  const state = stateOf("Buns\nFlour 1000 g\nMilk 500 g\nYeast 40 g\nFilling:\nButter 154 g");
  expect(faultsOf(state)).toEqual(["Enter how many pieces are made."]);
  ownOf(state).product = "Buns";
  expect(faultsOf(state)[0]).toBe("The formula has this name. Enter another one for the finished product.");
});

test("on its sheet a bun costs its dough and its parts", async () => {
  const state = stateOf(BUNS);
  const assessed = assess(state);
  expect(assessed.faults).toEqual([]);
  const book = await openBook();
  const prices = { Flour: 1, Milk: 1, Yeast: 4, Butter: 8, Sugar: 1.5, eggs: 4 };
  book.build("larder", {
    ingredient: Object.keys(prices),
    price: Object.values(prices),
    pack: Object.keys(prices).map(() => "1 kg"),
  });
  book.build(assessed.order.template, assessed.order.values, assessed.order.options);
  const { order } = productOrder(state, assessed);
  const sheet = book.build(order.template, order.values, order.options);
  book.ask({ ask: "link" });
  expect(sheet.shown("check")).toBe("");
  expect(sheet.value("pieces")).toBe(20);
  // Dough (1000 × 1 + 500 × 1 + 40 × 4) ÷ 1540 g × 77 g = 0.083; butter 0.08, sugar 0.0075, eggs 0.02
  expect(Number(sheet.value("size_ingredients"))).toBeCloseTo(0.1905, 6);
});

describe("the tin that a text names", () => {
  const LOAVES = "Tin loaf\nMakes 2 loaves\nFlour 1000 g\nWater 620 g\nSalt 20 g\nYeast 20 g\n\nBake in two ";
  const tinOf = (text: string, own = {}) => {
    const state = stateOf(text);
    Object.assign(ownOf(state), own);
    const { order } = assess(state);
    const { tin_shape, tin_size_1, tin_size_2, tin_size_3 } = order.values;
    return { has: order.options.parts.includes("tin"), sizes: [tin_shape, tin_size_1, tin_size_2, tin_size_3] };
  };
  const NONE = { has: false, sizes: [undefined, undefined, undefined, undefined] };

  test("is built with its sizes in the sheet's unit", () => {
    expect(tinOf(`${LOAVES}9 x 5 x 3 inch loaf pans.`)).toEqual({ has: true, sizes: ["box", 22.86, 12.7, 7.62] });
  });
  test("waits for its depth", () => {
    expect(tinOf(`${LOAVES}23 x 13 cm loaf tins.`)).toEqual(NONE);
    expect(tinOf(`${LOAVES}23 x 13 cm loaf tins.`, { depth: "7" })).toEqual({ has: true, sizes: ["box", 23, 13, 7] });
  });
  test("is none where many pieces come out of one", () => {
    expect(tinOf("Buns\nMakes 16\nFlour 1000 g\nWater 620 g\nBake in a 30 x 20 x 5 cm tin.")).toEqual(NONE);
  });
  test("holds on its sheet what its sizes say, and nothing is wrong there", async () => {
    const { order } = assess(stateOf(`${LOAVES}23 x 13 x 10 cm loaf tins.`));
    const sheet = (await openBook()).build(order.template, order.values, order.options);
    expect(sheet.shown("check")).toBe("");
    // 23 × 13 × 10
    expect(sheet.value("capacity")).toBeCloseTo(2990, 6);
  });
});

test("the dough at the foot is what pieces need with the bakery's handling loss, and what is told by its weight", () => {
  const state = stateOf("Quay rolls\nMakes 12\n500 g flour\n325 g water\n10 g salt\n5 g yeast");
  const shop = { name: "", units: state.units, law: "", fields: { handling_loss: "2" } };
  state.shop = shop;
  // 840 g of pieces ÷ 0.98, of which 500 parts of 840 are flour
  expect(assess(state).dough).toBeCloseTo(840 / 0.98, 9);
  expect(assess(state).flour).toBeCloseTo(500 / 0.98, 9);
  ownOf(state).dough = "2000";
  expect(assess(state).dough).toBe(2000);
});
