import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { down, refusal, run } from "../functions/support.ts";
import { seedOf, tries } from "../kit/scale.ts";

// The ways people call a function wrongly: a percent typed plain, arguments swapped or left out, a unit in the cell, a column one
// row short, a date, a table in a column's place. Each sentence names the argument, the row, what stands there and what to write.

const FOUR = down("flour", "water", "salt", "yeast");
const LEAN = down(1000, 650, 20, 10);

describe("a unit in the cell", () => {
  test.each([
    [
      "BAKE_FLOURPCT",
      [down("1000 g", 650), down("flour", "water")],
      'weights row 1 is "1000 g" beside weights without a unit; enter 1000 if those are grams, or each one with its unit.',
    ],
    ["BAKE_DOUGHFOR", ["17 loaves", 500], 'pieces is "17 loaves", which is not a number; enter it without "loaves".'],
    [
      "BAKE_WATERTEMP",
      [25, down(20, "22°C"), 14],
      'temps row 2 is "22°C"; enter 22 if the other temperatures are in °C, 71.6 if they are in °F.',
    ],
    // Another unit than the argument is of is never taken off.
    ["BAKE_FRICTIONGUIDE", ["spiral", "8 kg"], 'minutes is "8 kg", which is not a number; enter minutes such as 8.'],
    [
      "BAKE_TINCAPACITY",
      ["round", down("9 kg", 2)],
      'sizes row 1 is "9 kg", which is not a number; enter a size such as 23.',
    ],
    // A name that begins like a number is a name.
    [
      "BAKE_TRUEPCT",
      [down("T55 flour")],
      'weights row 1 is "T55 flour", which is not a number; enter a weight such as 350.',
    ],
    ["BAKE_TRUEPCT", [down("1e2 g")], 'weights row 1 is "1e2 g", which is not a number; enter a weight such as 350.'],
  ])("%s %j", (name, args, says) => expect(refusal(name, ...args)).toBe(`${name}: ${says}`));
});

describe("an argument left out without its place, so that the next one slips forward", () => {
  test.each([
    [
      "BAKE_HEATBALANCE",
      [78, down(1000, 650), down(72, ""), down("flour", "water"), "F"],
      'rise is "F", which is meant for unit; leave rise blank before it.',
    ],
    [
      "BAKE_GLUTENADD",
      [1000, 0.12, 0.14, "replace"],
      'gluten_protein is "replace", which is meant for mode; leave gluten_protein blank before it.',
    ],
    [
      "BAKE_YEASTTIME",
      [10, 3, 4, "Fahrenheit"],
      'temp_now is "Fahrenheit", which is meant for unit; leave temp_now and temp_wanted blank before it.',
    ],
    [
      "BAKE_GRAMS",
      [down("2 cups flour"), "AU"],
      'ingredients is "AU", which is meant for cups; leave ingredients blank before it.',
    ],
    ["BAKE_TINDOUGH", [3400, "white", "kg"], 'tins is "kg", which is meant for unit; leave tins blank before it.'],
    ["BAKE_FRICTIONGUIDE", ["hand", "F"], 'minutes is "F", which is meant for unit; leave minutes blank before it.'],
  ])("%s %j", (name, args, says) => expect(refusal(name, ...args)).toBe(`${name}: ${says}`));
  test("in its own place the word is read", () => {
    expect(run("BAKE_FRICTIONGUIDE", "hand", "", "F")).toEqual([[0, 2.7, 5.4]]);
    expect(run("BAKE_GRAMS", "1 cup water", "", "AU")).toBe(250);
  });
});

describe("a share typed plain, a weight where a share is meant, and the other way round", () => {
  test.each([
    ["BAKE_DOUGHFOR", [17, 500, 12], "bake_loss is 12, which is 1200 %; enter 12% or 0.12."],
    ["BAKE_PREFERMENT", [1000, 20, 1], "share is 20, which is 2000 %; enter 20% or 0.2."],
    [
      "BAKE_STAGES",
      [down(1000, 700), down("flour", "water"), 0.2, 1, 0.05],
      "seed is 0.05, below 0.5 % of the preferment's 400; was it typed as a share? Enter its weight.",
    ],
    [
      "BAKE_LABELPROTEIN",
      [0.12, 100, "EU"],
      "protein is 0.12 g in 100 g; was it typed as a share? Enter the grams the label prints.",
    ],
    ["BAKE_FLOURBLEND", [13, 0.08, 0.11, 1000], "protein_a is 13, which is 1300 %; enter 13% or 0.13."],
    ["BAKE_TINDOUGH", [3400, 34], "fill is 34; it lies between 0.05 and 2 g of dough per cm³ of tin: enter 0.34, say."],
    [
      "BAKE_WEIGHTS",
      [LEAN, FOUR, 3000],
      "percents have flour rows that add up to 1000; all flours together make 100 (or 100%); if these are weights, BAKE_FLOURPCT makes shares of them.",
    ],
    [
      "BAKE_WEIGHTS",
      [down("", 0.65, 0.02, 0.01), FOUR, 3000],
      "percents have no flour row; every percentage refers to the flour, so a row of the type flour needs its percentage.",
    ],
  ])("%s %j", (name, args, says) => expect(refusal(name, ...args)).toBe(`${name}: ${says}`));
});

describe("arguments swapped, left out, too many, or of the wrong shape", () => {
  test.each([
    [
      "BAKE_FLOURPCT",
      [FOUR, LEAN],
      /weights row 1 is "flour", which is not a number.*and 1 more of the kind \(row 4\)/,
    ],
    ["BAKE_FLOURPCT", [LEAN], /kinds is missing; give a range/],
    [
      "BAKE_FLOURPCT",
      [
        [
          ["flour", 1000],
          ["water", 650],
        ],
        FOUR,
      ],
      /weights is a block of 2 rows and 2 columns; give one column/,
    ],
    ["BAKE_FLOURPCT", [LEAN, down("flour", "water", "salt")], /kinds row 4 is blank though the row has an amount/],
    [
      "BAKE_FLOURPCT",
      [LEAN, down("flour", "water", "salt", "fresh yeast")],
      /kinds row 4 is "fresh yeast"; perhaps "yeast"\? Choose one of/,
    ],
    [
      "BAKE_FLOURPCT",
      [LEAN, down("flour", "water", "salt", "butter")],
      /kinds row 4 is "butter"; perhaps "fat"\? Choose/,
    ],
    ["BAKE_FLOURPCT", [LEAN, down("flour", "water", "salt", "soap")], /kinds row 4 is "soap"; .*choose one of/i],
    ["BAKE_TRUEPCT", [LEAN, LEAN], /takes 1 argument \(weights\), and 2 are given/],
    ["BAKE_RESCALE", [5, down(10, 6)], /target is a range; give one cell/],
    ["BAKE_RESCALE", [down(0, 0), 5], /weights add up to 0, and nothing can be scaled from 0/],
    ["BAKE_SCALEROUND", [LEAN], /step is missing; give a cell or a range/],
    ["BAKE_TINCAPACITY", [down(23, 13, 7), "loaf"], /shape is a range; give one cell; sizes row 1 is "loaf"/],
    [
      "BAKE_TINNOTE",
      [1155, "white", 3408],
      /capacity is "white", which is not a number.*dough_kind is 3408; choose "lidded white"/,
    ],
    ["BAKE_PREFERMENT", ["20%", 1000, 1], /flour is "20%", which has a % sign.*share is 1000/],
    ["BAKE_CONTENT", [LEAN, FOUR, "water"], /weights row 1 is "flour"/],
    ["BAKE_MIXES", [40, 20, 30], /mixer_least is 30, above the limit of 20; enter the least dough/],
    ["BAKE_YEASTTIME", [10, 3, 3, 75, 80], /temp_now is 75 °C.*; for °F choose "F" as the unit/],
  ])("%s %j", (name, args, says) => expect(refusal(name, ...args)).toMatch(says));
});

test("a time of day where hours are meant, as a sheet hands over 1:30", () => {
  expect(refusal("BAKE_YEASTTIME", 10, new Date(1899, 11, 30, 1, 30), 3)).toBe(
    "BAKE_YEASTTIME: hours_now is a time of day; enter a number, such as 1.5 for 1:30.",
  );
  expect(refusal("BAKE_YEASTTIME", 10, new Date(2026, 0, 2), 3)).toMatch(/is a date; if a fraction was typed/);
});

test("weights in kilograms are told to the gram", () => {
  expect(refusal("BAKE_STARTERFEED", 0.167, 1, 0.5, 0.15)).toBe(
    "BAKE_STARTERFEED: starter is 0.15, which brings 0.1 of flour where 0.0835 is wanted; at most 0.1252 fits.",
  );
});

test("a limit told in a sentence can be typed: it is rounded to the side on which it holds", () => {
  const weight = fc.double({ min: 0.01, max: 3000, noNaN: true });
  const told = (said: string, words: RegExp) => Number(words.exec(said)?.[1]);
  fc.assert(
    fc.property(weight, fc.double({ min: 0.3, max: 0.9, noNaN: true }), (wanted, firm) => {
      const most = told(refusal("BAKE_STARTERFEED", wanted, 1, firm, wanted), /at most ([\d.]+) fits/);
      expect(run("BAKE_STARTERFEED", wanted, 1, firm, most)).toHaveLength(1);
      // Two equal mixes below the least: both amounts told do fit.
      const said = refusal("BAKE_MIXES", wanted * 1.05, wanted, wanted * 0.9);
      for (const words of [/; ([\d.]+) or/, /or ([\d.]+) would fit/])
        expect(run("BAKE_MIXES", told(said, words), wanted, wanted * 0.9)).toHaveLength(1);
    }),
    { seed: seedOf(20_261_125), numRuns: tries(300) },
  );
});
