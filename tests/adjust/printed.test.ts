import { describe, expect, test } from "vitest";
import type { Formula } from "../../shared/adjust/formula.ts";
import { NO_FACTS, printedList, printedSays } from "../../shared/adjust/printed.ts";
import { formulaOf, larderOf } from "./support.ts";

const larder = larderOf(
  ["ingredient", "allergens", "label name"],
  ["Flour", "wheat", "wheat flour"],
  ["Butter", "milk", "butter"],
  ["Sheet butter", "milk", "butter"],
  ["Salt", "none", "salt"],
);
const loaf = (water: number, more: Partial<Formula> = {}): Formula =>
  formulaOf(
    [
      ["Flour", "flour", 100],
      ["Water", "water", water],
      ["Butter", "fat", 12],
      ["Salt", "salt", 2],
    ],
    { sizes: [{ name: "loaf", pieces: 10, baked: 400, loss: 0.12, price: null }], by: "pieces", ...more },
  );
const facts = { ...NO_FACTS, law: "EU" as const };

describe("the list of a label", () => {
  test("water counts as what the oven leaves of it (by hand: 0.88 × 174 − 114 is 39.1, more than the butter)", () => {
    expect(printedList(loaf(60), facts, larder)).toEqual({
      list: "WHEAT flour, water, butter (MILK), salt",
    });
  });

  test("it goes by the label's own size, and by what that loses", () => {
    const size = (name: string, loss: number) => ({ name, pieces: 10, baked: 400, loss, price: null });
    const sizes = [size("loaf", 0.12), size("roll", 0.3)];
    const of = (name: string | null) => printedList(loaf(60, { sizes }), { ...facts, size: name }, larder);
    expect(of("loaf")).toEqual({ list: "WHEAT flour, water, butter (MILK), salt" });
    // 0.7 × 174 − 114 is 7.8, less than 12 of butter.
    expect(of("roll")).toEqual({ list: "WHEAT flour, butter (MILK), water, salt" });
  });

  test("there is none, and why is said: no law, no baked weight, allergens that nobody entered", () => {
    expect(printedList(loaf(60), NO_FACTS, larder)).toEqual({
      missing: "No labelling rules are chosen. Choose EU, UK or US in Bakery settings to see the ingredient list.",
    });
    expect(printedList(loaf(60, { sizes: [] }), facts, larder)).toEqual({
      missing: "The ingredient list is not known. Enter the bake loss of a size, or of the label, on the sheet.",
    });
    const unknown = printedList(
      loaf(60),
      facts,
      larderOf(["ingredient", "allergens"], ["Flour", "wheat"], ["Butter", ""]),
    );
    expect(unknown).toMatchObject({
      missing: expect.stringMatching(/^The ingredient list is not known because of "Butter", whose allergens/),
    });
    // Where no size says what the oven takes, the label's own figure does; US lists need none.
    expect(printedList(loaf(60, { sizes: [] }), { ...facts, loss: 0.12 }, larder)).toEqual(
      printedList(loaf(60), facts, larder),
    );
    expect(printedList(loaf(60, { sizes: [] }), { ...facts, law: "US" }, larder)).toHaveProperty("list");
  });
});

test("two lists side by side, or once where they are the same", () => {
  const [wet, dry] = [printedList(loaf(60), facts, larder), printedList(loaf(30), facts, larder)];
  // 0.88 × 144 − 114 is 12.7 of water, and 12 of butter; 0.88 × 139 − 114 is 8.3, less than the butter.
  expect(printedSays([wet, printedList(loaf(25), facts, larder)], ["Version 1", "Now"])).toEqual([
    "Ingredient list, Version 1: WHEAT flour, water, butter (MILK), salt",
    "Ingredient list, Now: WHEAT flour, butter (MILK), water, salt",
    "Check every list against your suppliers' specifications before it is printed.",
  ]);
  expect(printedSays([wet, dry], ["Version 1", "Now"])[0]).toMatch(/^The ingredient list is the same: /);
  const none = printedList(loaf(60), NO_FACTS, larder);
  expect(printedSays([none, none], ["Version 1", "Now"])).toHaveLength(1);
});
