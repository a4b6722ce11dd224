import { describe, expect, test } from "vitest";
import { changeUnits, type Typed } from "../../sidebar/new-formula/draft.ts";
import { splitPercents, splitSizes } from "../../sidebar/new-formula/pasted-figures.ts";
import { readQuantity } from "../../sidebar/new-formula/quantity.ts";
import { GRAMS, OUNCES, sampleDraft } from "./drafts.ts";

describe("numbers as people type them", () => {
  test.each([
    ["12,5", "weight", GRAMS, 12.5],
    ["2 1/2", "weight", OUNCES, 2.5],
    ["½", "length", OUNCES, 0.5],
    ["2¾ in", "length", OUNCES, 2.75],
    ["9 in", "length", GRAMS, 22.86],
    ['9"', "length", GRAMS, 22.86],
    ["1.250 kg", "weight", GRAMS, 1250],
    ["1 lb", "weight", OUNCES, 16],
    ["1 lb", "weight", GRAMS, 453.59237],
    ["2 pounds", "weight", OUNCES, 32],
    ["75 °F", "temperature", GRAMS, 23.8888888889],
    ["-5 °C", "temperature", OUNCES, 23],
    ["24°", "temperature", GRAMS, 24],
    ["18 F", "factor", GRAMS, 10],
    ["8 min", "minutes", GRAMS, 8],
    ["11", "share", GRAMS, 0.11],
    ["0,5 %", "share", GRAMS, 0.005],
    ["1 250", "count", GRAMS, 1250],
    ["", "weight", GRAMS, null],
  ] as const)("%s as %s", (text, quantity, units, expected) => {
    const read = readQuantity(text, quantity, units);
    if (expected === null) expect(read).toBeNull();
    else expect(read).toBeCloseTo(expected, 9);
  });

  test.each([
    ["12,5", "is 12.5; enter a whole number such as 13"],
    ["2 1/2 tins", "is 2.5; enter a whole number such as 3"],
    ["0.2", "is 0.2; enter a whole number such as 1"],
  ])("%s is no count", (text, problem) => expect(readQuantity(text, "count", GRAMS)).toEqual({ says: problem }));

  test.each([
    ["9x5x2.75", ["9", "5", "2.75"]],
    ["9 × 5 × 2 3/4 in", ["9 in", "5 in", "2 3/4 in"]],
    ["21 by 11 by 9 cm", ["21 cm", "11 cm", "9 cm"]],
    ['9" x 5"', ['9"', '5"']],
    ["21", null],
    ["box", null],
  ])("sizes %s", (text, parts) => expect(splitSizes(text)).toEqual(parts));

  test.each([
    ["100/67/2/1", ["100", "67", "2", "1"]],
    ["100 / 67,5 / 2 %", ["100", "67,5", "2 %"]],
    ["2/3", null],
    ["67", null],
  ])("percentages %s", (text, parts) => expect(splitPercents(text)).toEqual(parts));
});

describe("a change of units", () => {
  test("converts what was typed, and back to the letter", () => {
    const draft = sampleDraft();
    const memory: Typed = new Map();
    const before = JSON.stringify(draft);
    changeUnits(draft, OUNCES, memory);
    // 700 ÷ 28.349523125; 21 ÷ 2.54; 26 × 9/5 + 32
    expect([draft.sizes[0]?.weight, draft.fields.tin_size_1, draft.fields.dough_target]).toEqual([
      "24.69",
      "8.27",
      "78.8",
    ]);
    expect([draft.fields.step_coarse, draft.fields.minutes, draft.fields.handling_loss]).toEqual(["0.1", "8", "2"]);
    changeUnits(draft, GRAMS, memory);
    expect(JSON.stringify(draft)).toBe(before);
  });

  test("one unit at a time, and typing in between", () => {
    const draft = sampleDraft();
    const memory: Typed = new Map();
    changeUnits(draft, { ...GRAMS, length: "in" }, memory);
    draft.fields.tin_size_1 = "9";
    changeUnits(draft, { ...OUNCES, temperature: "C" }, memory);
    expect([draft.fields.tin_size_1, draft.fields.dough_target]).toEqual(["9", "26"]);
    changeUnits(draft, GRAMS, memory);
    expect([draft.fields.tin_size_1, draft.fields.tin_size_2, draft.sizes[0]?.weight]).toEqual(["22.86", "11", "700"]);
  });

  test("grams of water and what cannot be read stay as they are", () => {
    const draft = sampleDraft();
    draft.choices.tin_shape = "water";
    draft.fields.tin_size_1 = "1520";
    draft.fields.mixer_limit = "a lot";
    changeUnits(draft, OUNCES, new Map());
    expect([draft.fields.tin_size_1, draft.fields.mixer_limit]).toEqual(["1520", "a lot"]);
  });
});
