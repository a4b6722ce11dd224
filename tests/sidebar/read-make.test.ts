import { describe, expect, test } from "vitest";
import { readRecipe } from "../../shared/recipe/read.ts";
import { recipeYield } from "../../shared/recipe/yield.ts";
import type { ReadDraft } from "../../sidebar/paste-recipe/draft.ts";
import { partedHead } from "../../sidebar/paste-recipe/head.ts";
import { lineOf } from "../../sidebar/paste-recipe/lines.ts";
import { assessLines } from "../../sidebar/paste-recipe/order.ts";
import { GRAMS, model } from "./drafts.ts";

const line = (name: string, kind: string, grams: number) =>
  lineOf({ from: 0, is: "ingredient", text: `${grams} g ${name}`, name, kind, grams, says: "", asks: "" });

/** 500 + 325 + 10 + 5 = 840 g of dough. */
const draftOf = (make: Partial<ReadDraft["make"]>): ReadDraft => ({
  title: "Quay rolls",
  template: "pan-loaf",
  columns: "weighed",
  units: GRAMS,
  cups: "US",
  shop: null,
  make: { recipe: "", pieces: "", weight: "", loss: "", ...make },
  lines: [
    line("Flour", "flour", 500),
    line("Water", "water", 325),
    line("Salt", "salt", 10),
    line("Yeast", "yeast", 5),
  ],
});
const sizes = (make: Partial<ReadDraft["make"]>) => {
  const { order, troubles } = assessLines(draftOf(make), model);
  const { by, size_pieces, size_weight, size_loss } = order.values;
  return { by, size_pieces, size_weight, size_loss, says: troubles.map(({ says }) => says) };
};

test("a recipe for 12 makes 12, each a twelfth of its dough", () => {
  expect(sizes({ recipe: "12" })).toMatchObject({ by: "pieces", size_pieces: [12], size_weight: [70], says: [] });
});

test("60 of a recipe for 12 are as large as its own, and lose in the oven what is said", () => {
  expect(sizes({ recipe: "12", pieces: "60", loss: "10" })).toMatchObject({
    size_pieces: [60],
    // 840 ÷ 12 is scaled; a tenth of it is lost
    size_weight: [63],
    size_loss: [0.1],
    says: [],
  });
});

test("a weight that is typed wins over the recipe's own", () => {
  expect(sizes({ recipe: "12", pieces: "60", weight: "80" })).toMatchObject({ size_pieces: [60], size_weight: [80] });
  expect(sizes({ pieces: "60", weight: "80 g" })).toMatchObject({ size_pieces: [60], size_weight: [80], says: [] });
});

test("what is missing is said once, and nothing typed makes the recipe as a whole", () => {
  expect(sizes({ pieces: "60" }).says).toEqual([
    "Enter what one piece weighs when it is sold, or how many pieces the recipe makes.",
  ]);
  expect(sizes({ weight: "80" }).says).toEqual(["Enter how many pieces."]);
  expect(sizes({ recipe: "dozens" }).says).toEqual([
    'What the recipe makes is "dozens", which is not a number; enter a number such as 24.',
  ]);
  expect(sizes({})).toEqual({
    by: undefined,
    size_pieces: undefined,
    size_weight: undefined,
    size_loss: undefined,
    says: [],
  });
});

test("a recipe with more ingredients than a sheet begins with is taken whole", () => {
  const draft = draftOf({});
  draft.lines.push(...Array.from({ length: 20 }, () => line("Sugar", "sugar", 5)));
  const { order, troubles } = assessLines(draft, model);
  expect(troubles).toEqual([]);
  expect(order.values.ingredient).toHaveLength(24);
});

describe("the first line of a recipe", () => {
  test.each([
    ["* Quay rye * (makes 2)", ["Quay rye", "makes 2"]],
    ["Harbour rolls – yields about 12 rolls", ["Harbour rolls", "yields about 12 rolls"]],
    ["## Lantern loaf, Makes: two loaves.", ["Lantern loaf", "Makes: two loaves."]],
    ["**Rye 80 % [serves 8]**", ["Rye 80 %", "serves 8"]],
    ["** Harbour rolls **", ["Harbour rolls"]],
    ["# Harbour rolls", ["Harbour rolls"]],
    ["Quay rolls", ["Quay rolls"]],
    ["* 500 g flour", ["* 500 g flour"]],
    ["500 g high yield flour", ["500 g high yield flour"]],
    ["2 eggs (makes 100 g)", ["2 eggs (makes 100 g)"]],
    ["Makes 24", ["Makes 24"]],
    ["Bread that makes a good toast", ["Bread that makes a good toast"]],
  ])("%s", (first, parts) => {
    expect(partedHead([first, "500 g flour"])).toEqual([...parts, "500 g flour"]);
  });
  test("its name and what it makes are told by the reading", () => {
    const lines = partedHead(["* Quay rye * (makes 2)", "500 g flour", "300 g water"]);
    expect(recipeYield(lines)).toBe(2);
    const answer = readRecipe({ cups: "US", lines: lines.map((text) => ({ text, name: "" })) }, []);
    expect(answer.title).toBe("Quay rye");
    expect(answer.lines.map(({ is, asks }) => [is, asks])).toEqual([
      ["aside", ""],
      ["aside", ""],
      ["ingredient", ""],
      ["ingredient", ""],
    ]);
  });
});
