// What a pasted text orders: the template, the amounts, the preferment and the method; and what corrections outlive.
import { describe, expect, test } from "vitest";
import { lackingIn, namesOn } from "../../sidebar/paste-recipe/missing-ingredients.ts";
import { assess } from "../../sidebar/paste-recipe/order.ts";
import {
  answerQuestion,
  correctLine,
  describedNow,
  emptyState,
  ownOf,
  type PasteState,
  takeText,
  teachName,
} from "../../sidebar/paste-recipe/state.ts";

const stateOf = (text: string): PasteState => {
  const state = emptyState();
  takeText(state, text);
  return state;
};
const order = (text: string, own: Parameters<typeof Object.assign>[1] = {}) => {
  const state = stateOf(text);
  Object.assign(ownOf(state), own);
  return assess(state);
};

const ROLLS = "Quay rolls\nMakes 12\n500 g flour\n325 g water\n10 g salt\n5 g yeast";
const POOLISH =
  "Pier loaf\nPoolish (12 h)\n300 g flour\n300 g water\n0.6 g yeast\nDough\n700 g flour\n370 g water\n20 g salt\n5.4 g yeast\nall of the poolish\n\nMix 8 min\nBulk 2 h at 24 °C\nBake 35 min at 230 °C";

describe("how much the sheet makes", () => {
  test("a recipe for 12 makes 12, each a twelfth of its dough", () => {
    // 840 ÷ 12
    expect(order(ROLLS).order.values).toMatchObject({ by: "pieces", size_pieces: [12], size_weight: [70] });
  });
  test("60 of a recipe for 12 are as large as its own, and lose in the oven what is entered", () => {
    const { values } = order(ROLLS, { pieces: "60", loss: "10" }).order;
    expect(values).toMatchObject({ size_pieces: [60], size_weight: [63], size_loss: [0.1] });
  });
  test("pieces of a weight as the text gives them", () => {
    const { values } = order("Rolls\n24 pcs @ 0.055 kg\nFlour 100%\nWater 65%\nSalt 2%").order;
    expect(values).toMatchObject({ by: "pieces", size_pieces: [24], size_weight: [55], percent: [1, 0.65, 0.02] });
  });
  test("balls of a weight for a sheet that goes by diameters: the dough of all of them, whatever the recipe makes", () => {
    const {
      order: built,
      dough,
      pieces,
      flour,
    } = order(
      "Margherita, 60 balls at 250 g\nTipo 00 flour 10 kg\nWater 6.2 kg\nSalt 280 g\nFresh yeast 15 g\nOlive oil 200 g\n\nTemper 2 h\nBake 2 min at 430 C",
    );
    expect(built.template).toBe("flat-round");
    // 60 × 250 g, of which 10 000 parts of 16 695 are flour
    expect([dough, pieces, built.values.by, built.values.dough_wanted]).toEqual([15_000, 60, "dough", 15_000]);
    expect(flour).toBeCloseTo((15_000 * 10_000) / 16_695, 6);
    expect(built.values.step).toEqual(expect.arrayContaining([expect.stringMatching(/temper/i)]));
  });
  test("without a yield the recipe is made as a whole", () => {
    const { values } = order("Loaf\n500 g flour\n325 g water\n10 g salt").order;
    expect(values).toMatchObject({ by: "dough", dough_wanted: 835, percent: [1, 0.65, 0.02] });
  });
  test("pieces that nobody weighs are asked about", () => {
    const { faults } = order("Loaf\n500 g flour\n325 g water\n10 g salt", { pieces: "60" });
    expect(faults.map(({ says }) => says)).toEqual(["Enter the scaling weight of a piece."]);
  });
  test("in ounces the sheet gets ounces", () => {
    const state = stateOf("Loaf\n2 lb flour\n1 lb 4 oz water");
    state.units = { ...state.units, weight: "oz" };
    // 52 oz in all
    expect(assess(state).order.values).toMatchObject({ dough_wanted: 52, percent: [1, 0.625] });
  });
});

describe("the template", () => {
  test.each([
    ["a poolish", POOLISH, "hearth-loaf"],
    ["roll-in butter", "Flour 1000 g\nMilk 500 g\nSalt 20 g\nYeast 40 g\nRoll-in butter 500 g", "laminated"],
    ["its name", "Pizza dough\nFlour 100%\nWater 62%\nSalt 2%\nYeast 0.3%", "flat-round"],
    ["a rich dough", "Flour 100%\nMilk 50%\nButter 15%\nSugar 10%\nSalt 2%\nYeast 3%", "soft-bun"],
    [
      "a levain",
      "Levain\n100 g flour\n100 g water\n20 g starter\nDough\n400 g flour\n260 g water\n10 g salt\n200 g levain",
      "levain-loaf",
    ],
    ["nothing else", "Flour 100%\nWater 62%\nSalt 2%\nYeast 1%", "pan-loaf"],
  ])("%s tells the likeliest", (_, text, name) => {
    const { model, models } = order(text);
    expect(model.name).toBe(name);
    expect(models.length).toBeGreaterThanOrEqual(8);
  });
  test("a chosen one stays while the text is edited, and goes with the text", () => {
    const state = stateOf(ROLLS);
    ownOf(state).template = "hearth-loaf";
    ownOf(state).pieces = "60";
    takeText(state, `${ROLLS}\n20 g butter`);
    expect(assess(state).model.name).toBe("hearth-loaf");
    takeText(state, "Rye tin\n1 kg rye flour\n800 g water\n20 g salt");
    expect(assess(state).model.name).not.toBe("hearth-loaf");
    expect(assess(state).order.values.size_pieces).toBeUndefined();
  });
});

describe("the preferment and the method", () => {
  test("a poolish is tied by share, hydration, yeast and hours", () => {
    const { values } = order(POOLISH).order;
    expect(values).toMatchObject({
      pre_kind: "poolish",
      pre_share: 0.3,
      pre_hydration: 1,
      pre_yeast: 0.002,
      pre_hours: 12,
      pre_step: "Mix",
      ingredient: ["flour", "water", "yeast", "salt"],
      percent: [1, 0.67, 0.006, 0.02],
    });
  });
  test("the method is filled with names, minutes and temperatures", () => {
    expect(order(POOLISH).order.values).toMatchObject({
      step: ["Mix", "Bulk fermentation", "Bake"],
      step_minutes: [8, 120, 35],
      step_temp: [null, 24, 230],
      step_how: ["Mix 8 min", "Bulk 2 h at 24 °C", "Bake 35 min at 230 °C"],
    });
  });
  test("a levain's seed is flour and water of the levain, and a share of the flour that is fed", () => {
    const { values } = order(
      "Levain\n100 g flour\n100 g water\n20 g starter\nDough\n390 g flour\n240 g water\n10 g salt\n220 g levain",
    ).order;
    // the seed's 10 g of flour go with the fed 100: 110 of 500
    expect(values).toMatchObject({
      pre_share: 0.22,
      pre_hydration: 1,
      seed_share: 0.2,
      seed_hydration: 1,
      percent: [1, 0.7, 0.02],
    });
  });
});

describe("corrections", () => {
  test("one teaches its name for every other line, and outlives edits", () => {
    const state = stateOf("Loaf\n500 g flour\n20 g moon dust\n325 g water\n5 g moon dust");
    expect(describedNow(state).questions).toHaveLength(2);
    teachName(state, "moon dust", { type: "other" });
    expect(describedNow(state).questions).toEqual([]);
    takeText(state, `${state.text}\n10 g salt\n7 g moon dust`);
    expect(describedNow(state).questions).toEqual([]);
    expect(describedNow(state).rows.filter(({ type }) => type === "other")).toHaveLength(3);
  });
  test("an amount that was entered stays with its line wherever the line goes", () => {
    const state = stateOf("Loaf\n500 g flour\na handful of raisins\n325 g water");
    correctLine(state, "a handful of raisins", { grams: 60 });
    takeText(state, "Loaf\n10 g salt\n500 g flour\n325 g water\na handful of raisins");
    expect(describedNow(state).rows.map(({ grams }) => grams)).toEqual([10, 500, 325, 60]);
    expect(describedNow(state).questions).toEqual([]);
  });
  test("what was chosen for a recipe outlives its name, its place and its other lines", () => {
    const state = stateOf("Quay rols\n500 g flour\n325 g water\n10 g salt");
    ownOf(state).pieces = "60";
    ownOf(state).template = "hearth-loaf";
    takeText(state, "Quay rolls\n500 g flour\n325 g water\n10 g salt");
    expect(ownOf(state)).toMatchObject({ pieces: "60", template: "hearth-loaf" });
    const rye = "Rye one\nMakes 3\n1 kg rye flour\n800 g water\n20 g salt";
    takeText(state, `${rye}\n\n${state.text}`);
    expect(state.parts.map(({ described }) => described.title)).toEqual(["Rye one", "Quay rolls"]);
    expect(state.shown).toBe(1);
    expect(ownOf(state, 0)).toEqual({});
    expect(ownOf(state, 1)).toMatchObject({ pieces: "60" });
  });
  test("another recipe has none of it, though it shares lines", () => {
    const state = stateOf("White loaf\n1 kg flour\n620 g water\n20 g salt\n10 g yeast");
    ownOf(state).pieces = "60";
    takeText(state, "Milk loaf\n1 kg flour\n600 g milk\n20 g salt\n10 g yeast\n50 g butter");
    expect(ownOf(state)).toEqual({});
  });
  test("a misspelt name that is kept is asked no more", () => {
    const state = stateOf("Loaf\n500 g flour\n325 g watter");
    expect(describedNow(state).questions.map(({ reason }) => reason)).toEqual(["misspelt"]);
    teachName(state, "watter", { name: "water" });
    expect(describedNow(state).rows[1]).toMatchObject({ name: "water", type: "water", grams: 325 });
    expect(describedNow(state).questions).toEqual([]);
  });
  test("what is no ingredient is left out", () => {
    const state = stateOf("Loaf\n500 g flour\n325 g water\n3 wise men");
    correctLine(state, "3 wise men", { is: "not an ingredient" });
    expect(describedNow(state).rows).toHaveLength(2);
    expect(assess(state).faults).toEqual([]);
  });
  test("the unit is answered once for all", () => {
    const state = stateOf("Loaf\nFlour 1000\nWater 650\nSalt 20");
    expect(assess(state).faults.map(({ says }) => says)).toEqual(["Which unit are the numbers without a unit in?"]);
    answerQuestion(state, "which unit", "kg");
    const { faults, dough, flour } = assess(state);
    expect(faults).toEqual([]);
    expect(dough).toBeCloseTo(1_670_000, 3);
    expect(flour).toBeCloseTo(1_000_000, 3);
  });
  test("an open question keeps the sheet from being built", () => {
    expect(order("Loaf\n500 g flour\na handful of raisins").faults).toHaveLength(1);
  });
});

test("several recipes are read apart, each with its own yield and template", () => {
  const state = stateOf(
    "White loaf\nMakes 2\nFlour 1000 g\nWater 620 g\nSalt 20 g\n\nCinnamon buns\nMakes 30\nFlour 1000 g\nMilk 500 g\nButter 150 g\nSugar 150 g\nSalt 18 g\nYeast 40 g",
  );
  expect(state.parts.map(({ described }) => described.title)).toEqual(["White loaf", "Cinnamon buns"]);
  expect(state.parts.map((_, at) => assess(state, at).order.values.size_pieces)).toEqual([[2], [30]]);
  expect(state.parts.map((_, at) => assess(state, at).model.name)).toEqual(["pan-loaf", "soft-bun"]);
});

describe("what a template has no cells for stands in the method", () => {
  const steps = (values: Readonly<Record<string, unknown>>) => [values.step, values.step_how];

  test("a sponge on a sheet for buns, as shares of all flour", () => {
    const text =
      "Buns\nSponge (1 h)\n400 g flour\n240 g milk\n20 g yeast\nDough\nsponge\n600 g flour\n200 g milk\n100 g butter";
    const state = stateOf(text);
    ownOf(state).template = "soft-bun";
    const { order: built, untied } = assess(state);
    expect(untied).toEqual(["Sponge (1 h)"]);
    expect(built.values.step_minutes).toEqual([60]);
    // 240 of 1000 g of flour, 20 of it
    expect(steps(built.values)).toEqual([
      ["Sponge (1 h)"],
      ["Mix this first, of all flour: flour 40 %, milk 24 %, yeast 2 %. It is part of the weights above."],
    ]);
  });
  test("a filling and a wash, for each piece", () => {
    const { values } = order(
      "Sweet buns\nMakes 20\nFlour 1000 g\nMilk 500 g\nYeast 40 g\nFilling:\nButter 200 g\nSugar 100 g\nEgg wash: 2 eggs",
    ).order;
    expect(steps(values)).toEqual([
      ["Filling", "Egg wash"],
      ["Beside the dough, for each piece: Butter 10 g, Sugar 5 g.", "Beside the dough, for each piece: eggs 5 g."],
    ]);
    // 1540 ÷ 20
    expect(values).toMatchObject({ size_pieces: [20], size_weight: [77] });
  });
  test("roll-in fat has cells, and is part of the pieces", () => {
    const { values } = order(
      "Croissant\nMakes 20\nFlour 1000 g\nMilk 520 g\nSalt 20 g\nYeast 60 g\nRoll-in butter 480 g",
    ).order;
    // 480 of a base dough of 1600; 2080 ÷ 20
    expect(values).toMatchObject({
      roll_in_name: "butter",
      roll_in_share: 0.3,
      roll_in_of: "base",
      size_weight: [104],
    });
    expect(values.step).toBeUndefined();
  });
  test("a levain keeps back what is left over, and its seed is as wet as it is", () => {
    const { values } = order(
      "Loaf\nLevain\n30 g stiff starter (50%)\n100 g flour\n110 g water\nDough\n480 g flour\n300 g water\n12 g salt\n200 g levain",
    ).order;
    expect(values).toMatchObject({ seed_share: 0.3, seed_hydration: 0.5, keep: 40 });
  });
});

describe("several recipes", () => {
  const titles = (text: string) => stateOf(text).parts.map(({ described }) => described.title);

  test("in a table that names them in a column", () => {
    const text =
      "Formula,Ingredient,Grams\nWhite tin,Flour,1000\n,Water,620\n,Salt,20\nRye,Rye flour,1000\nRye,Water,800\nRye,Salt,20";
    expect(titles(text)).toEqual(["White tin", "Rye"]);
    const state = stateOf(text);
    expect(state.parts.map((_, at) => assess(state, at).order.values.percent)).toEqual([
      [1, 0.62, 0.02],
      [1, 0.8, 0.02],
    ]);
  });
  test("one table after the other, each under its name", () => {
    expect(
      titles(
        "White loaf,,\nIngredient,%,g\nFlour,100,1000\nWater,62,620\nSalt,2,20\n,,\nRye loaf,,\nIngredient,%,g\nRye flour,100,1000\nWater,80,800\nSalt,2,20\n",
      ),
    ).toEqual(["White loaf", "Rye loaf"]);
  });
  test("numbered, and headed by their doughs", () => {
    expect(
      titles(
        "1. White loaf\nFlour 1000 g\nWater 620 g\nSalt 20 g\n2. Rye loaf\nRye flour 1000 g\nWater 620 g\nSalt 20 g\n\nSweet dough:\nFlour 1 kg\nMilk 500 g\nsalt 10 g",
      ),
    ).toEqual(["White loaf", "Rye loaf", "Sweet dough"]);
  });
  test("stages are no recipes", () => {
    expect(
      titles("Loaf\n1. Poolish\nFlour 500 g\nWater 500 g\n2. Dough\nFlour 500 g\nWater 150 g\nSalt 20 g\nPoolish"),
    ).toEqual(["Loaf"]);
  });
});

test("weights beside percentages are asked for by the weight of the flour", () => {
  const state = stateOf("Loaf\nFlour 100%\nWater 65%\nSalt 20 g\nButter 3%\nSugar 2%");
  expect(describedNow(state).questions.map(({ reason }) => reason)).toEqual(["mixed amounts"]);
});

describe("what the ingredient sheet lacks", () => {
  const text = "Loaf\n500 g bread flour\n300 g water\n10 g salt\n20 g moon dust\n5 g moon dust";
  test("without a sheet all but water, each once, with the type where it is one", () => {
    expect(lackingIn(describedNow(stateOf(text)), stateOf(text))).toEqual([
      { name: "bread flour", kind: "flour" },
      { name: "salt", kind: "salt" },
      { name: "moon dust", kind: "" },
    ]);
  });
  test("with one what it has under no name", () => {
    const state = stateOf(text);
    state.stocked = namesOn([
      ["Ingredient", "Kind", "Also called"],
      ["Strong white flour", "flour", "Bread flour; baker's flour"],
      ["Salt", "salt", ""],
    ]);
    expect(lackingIn(describedNow(state), state)).toEqual([{ name: "moon dust", kind: "" }]);
    // The sheet's own formulas find no price of bread flour in a row that does not say that it is also called so.
    state.stocked = namesOn([
      ["Ingredient", "Also called"],
      ["Strong white flour", ""],
      ["Salt", ""],
    ]);
    expect(lackingIn(describedNow(state), state).map(({ name }) => name)).toEqual(["bread flour", "moon dust"]);
  });
});

test("what is said of one ingredient of a line leaves the others of that line as they are", () => {
  const state = stateOf("Loaf\nflour 1000 g, water 650 g, zorp 15 g, salt 20");
  const asked = () =>
    describedNow(state).questions.map(({ reason, part }) => [reason, part] as [string, string | undefined]);
  expect(asked()).toEqual([
    ["which type", "zorp 15 g"],
    ["unclear amount", "salt 20"],
  ]);
  correctLine(state, "salt 20", { grams: 20 });
  teachName(state, "zorp", { type: "sugar" });
  expect(asked()).toEqual([]);
  expect(describedNow(state).rows.map(({ name, type, grams }) => [name, type, grams])).toEqual([
    ["flour", "flour", 1000],
    ["water", "water", 650],
    ["zorp", "sugar", 15],
    ["salt", "salt", 20],
  ]);
});
