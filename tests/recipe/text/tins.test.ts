// Tins as recipes name them: sizes in either unit, with a depth and without, and what is no tin.
import { describe, expect, test } from "vitest";
import { describeRecipe } from "../../../shared/recipe/text/reader.ts";
import { tinIn } from "../../../shared/recipe/text/tins.ts";
import { builtInKitchen } from "./corpus-support.ts";

const sizes = (text: string) => {
  const tin = tinIn(text);
  return tin === undefined
    ? null
    : [tin.shape, ...[...tin.across, tin.depth].map((size) => (size === null ? null : Math.round(size * 100) / 100))];
};

// An inch is 2.54 cm.
describe("a tin with its sizes", () => {
  test.each([
    ["Makes two 9 x 5 x 3 inch loaf pans", ["box", 22.86, 12.7, 7.62]],
    ["Grease a 9x5-inch loaf pan.", ["box", 22.86, 12.7, null]],
    ['13" x 9" x 2" pan', ["box", 33.02, 22.86, 5.08]],
    ["8½ x 4½ x 2¾ in. loaf tin", ["box", 21.59, 11.43, 6.99]],
    ["8 1/2 by 4 1/2 inch loaf pan", ["box", 21.59, 11.43, null]],
    ["1 loaf tin, 23 x 13 x 7 cm", ["box", 23, 13, 7]],
    ["Kastenform / loaf tin 30cm × 11cm, 7,5 cm deep", ["box", 30, 11, 7.5]],
    ["Tin 230 x 130 x 70 mm", ["box", 23, 13, 7]],
    ["a 23 x 13 cm (9 x 5 in) loaf tin", ["box", 23, 13, null]],
    ["Line a 20 cm square tin", ["box", 20, 20, null]],
    ["an 8-inch square pan, 2 inches deep", ["box", 20.32, 20.32, 5.08]],
    ["Grease a 20cm/8in round cake tin, 7 cm deep", ["round", 20, 7]],
    ["two 8-inch round cake pans", ["round", 20.32, null]],
    ["24 cm springform", ["round", 24, null]],
    ["tin (diameter 18 cm, height 8 cm)", ["round", 18, 8]],
  ])("%s", (text, expected) => expect(sizes(text)).toEqual(expected));
});

test.each([
  "2 lb loaf tin",
  "a 9-inch loaf pan",
  "half sheet pan 18 x 13 inch",
  "12-cup muffin tin, 7 cm",
  "Roll out to 30 x 40 cm",
  "23 cm tart tin",
  "pan of 900 x 400 cm",
  "400 g tin chopped tomatoes",
])("no baking tin with sizes: %s", (text) => expect(tinIn(text)).toBeUndefined());

test("a line that is nothing but a tin is no ingredient", () => {
  const { rows, ignored, questions } = describeRecipe(
    "Plum cake\n20 cm round tin\n500 g flour\n300 g sugar",
    builtInKitchen,
  );
  expect(rows.map(({ name }) => name)).toEqual(["flour", "sugar"]);
  expect(ignored.map(({ reason }) => reason)).toEqual(["title", "tin"]);
  expect(questions).toEqual([]);
});

test("a text has one tin, however often it names it, and none where there are two", () => {
  const tinOf = (text: string) => describeRecipe(text, builtInKitchen).tin;
  const loaf = "Loaf\nMakes 2 loaves\nFlour 1000 g\nWater 620 g\n";
  expect(tinOf(`${loaf}Grease two 9x5 inch loaf pans.\nBake in the 9 x 5 x 3 inch loaf pans.`)).toMatchObject({
    shape: "box",
    depth: 7.62,
    isLoaf: true,
  });
  expect(tinOf(`${loaf}Use a 20 cm round tin or a 9x5 inch loaf pan.\nOr a 24 cm round tin.`)).toBeNull();
  expect(tinOf(loaf)).toBeNull();
});
