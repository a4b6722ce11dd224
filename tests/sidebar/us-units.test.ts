// What the sidebar works out itself, in °F, ounces and inches: a factor is a difference, a temperature is not.
import { describe, expect, test } from "vitest";
import { celsius, minutes } from "../../shared/base/units.ts";
import { changeUnits } from "../../sidebar/new-formula/draft.ts";
import { assess } from "../../sidebar/new-formula/order.ts";
import type { Quantity } from "../../sidebar/new-formula/quantity.ts";
import { inOtherUnits } from "../../sidebar/new-formula/unit-change.ts";
import { waterSays } from "../../sidebar/new-formula/water.ts";
import { methodRows } from "../../sidebar/paste-recipe/method.ts";
import { GRAMS, model, OUNCES, sampleDraft } from "./drafts.ts";

describe("typed figures in the other units (NIST SP 811: 28.349523125 g, 2.54 cm, 32 °F and 9/5)", () => {
  test.each<[string, Quantity, string]>([
    ["8", "factor", "14.4"],
    ["-5", "factor", "-9"],
    ["0", "factor", "0"],
    ["26", "temperature", "78.8"],
    ["0", "temperature", "32"],
    ["-5", "temperature", "23"],
    ["453.59237", "weight", "16"],
    ["700", "weight", "24.69"],
    ["22.86", "length", "9"],
  ])("%s as %s", (text, quantity, other) => {
    expect(inOtherUnits(text, quantity, GRAMS, OUNCES)).toBe(other);
  });

  test.each<[string, Quantity, string]>([
    ["18", "factor", "10"],
    ["75.2", "temperature", "24"],
    ["1", "weight", "28.35"],
    ["13", "length", "33.02"],
  ])("%s as %s, back", (text, quantity, other) => {
    expect(inOtherUnits(text, quantity, OUNCES, GRAMS)).toBe(other);
  });
});

describe("the water's temperature in °F", () => {
  const says = (values: Readonly<Record<string, number>>, mixing = "") => {
    const draft = sampleDraft();
    changeUnits(draft, OUNCES, new Map());
    draft.choices.mixing = mixing;
    return waterSays(draft, { order: { ...assess(draft, model).order, values }, faults: [] });
  };
  const target = { dough_target: 78, flour_temp: 70, room_temp: 72 };

  test.each([
    ["3 × 78 − 70 − 72 − 20", { ...target, friction_own: 20, tap_temp: 60 }, "", "Warm the water to 72 °F."],
    ["no tap", { ...target, friction_own: 20 }, "", "Water at 72 °F."],
    [
      "T. Lehmann, Pizza Today, June 2018: 65 °F",
      { dough_target: 80, flour_temp: 65, room_temp: 75, friction_own: 35, tap_temp: 65 },
      "",
      "Use tap water as it is (65 °F).",
    ],
    [
      "4 × 76 − 68 − 70 − 72 − 24",
      { dough_target: 76, flour_temp: 68, room_temp: 70, preferment_temp: 72, friction_own: 24, tap_temp: 70 },
      "",
      "Use tap water as it is (70 °F).",
    ],
    // duretz.net: 1 °C a minute of second speed, so 8 °C or 14.4 °F on three temperatures, a third more on four.
    ["3 × 78 − 142 − 14.4", { ...target, minutes: 8 }, "spiral", "Water at 77.6 °F."],
    ["4 × 78 − 214 − 19.2", { ...target, preferment_temp: 72, minutes: 8 }, "spiral", "Water at 78.8 °F."],
    [
      "3 × 78 − 110, beyond 38 °C",
      { dough_target: 78, flour_temp: 60, room_temp: 50, friction_own: 0, tap_temp: 60 },
      "",
      "Water of 124 °F is too hot for fresh yeast (100.4 °F at most). Warm the flour or the room, or accept a cooler dough and a longer rise. Water this hot scalds: pour and carry it with care.",
    ],
  ])("%s", (_, values, mixing, sentence) => {
    expect(says(values, mixing)).toBe(sentence);
  });
});

test("the temperatures of a pasted method are in the sheet's unit", () => {
  const steps = [
    { line: 1, text: "Proof at 27 °C", minutes: minutes(60), temperature: celsius(27) },
    { line: 2, text: "Bake at 230 °C", minutes: minutes(30), temperature: celsius(230) },
  ];
  // 27 × 9/5 + 32 and 230 × 9/5 + 32.
  expect(methodRows(steps, "F").map(({ temperature }) => temperature)).toEqual([80.6, 446]);
  expect(methodRows(steps, "C").map(({ temperature }) => temperature)).toEqual([27, 230]);
});
