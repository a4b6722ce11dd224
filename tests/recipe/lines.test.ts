import { describe, expect, test } from "vitest";
import { builtInRows } from "../../shared/larder/built-in-larder.ts";
import { refusal, run } from "../functions/support.ts";
import { householdGrams, outcomeOf, recipeLines } from "./lines-support.ts";

describe("the recipe lines of tests/data/recipe-lines.txt", () => {
  const lines = recipeLines();
  const readable = lines.filter(({ answer }) => typeof answer === "number");

  test("are more than 400, and their sums use grams that USDA SR28 prints for that food", () => {
    expect(readable.length).toBeGreaterThan(400);
    const printed = householdGrams();
    for (const { line, measures } of lines) {
      for (const [ndb, factors] of measures) {
        const isPrinted = factors.some((one) => printed.get(ndb)?.includes(one));
        expect(isPrinted, `${line}: SR28 ${ndb} has none of ${factors.join(", ")}`).toBe(true);
      }
    }
  });

  test("none is wrong in silence, and at most 2 % of the readable ones are refused", () => {
    const outcomes = lines.map((one) => ({ one, ...outcomeOf(one) }));
    const told = (is: string) =>
      outcomes.filter((each) => each.is === is).map(({ one, said }) => `${one.line}: ${one.answer}, not ${said}`);
    expect(told("wrong in silence")).toEqual([]);
    const refused = [...told("refused though readable"), ...told("blank though readable")];
    expect(refused.length, refused.join("\n")).toBeLessThanOrEqual(0.02 * readable.length);
  });
});

describe("volumes of every built-in ingredient that has one", () => {
  const measured = builtInRows().filter(({ measures }) =>
    [...(measures ?? [])].some(([word, { least, most }]) => /^(?:cup|tbsp|tsp)$/.test(word) && least === most),
  );
  test("are most of the table", () => expect(measured.length).toBeGreaterThan(100));
  // US measures: a cup is 236.588 ml and a fluid ounce 29.5735 ml (NIST SP 811, appendix B).
  test.each(measured.map(({ name }) => name))(
    "1 l, 10 dl, 100 cl, 1000 ml, 4.2268 cups and 33.814 fl oz of %s agree",
    (name) => {
      const said = ["1 l", "10 dl", "100 cl", "1000 ml", "4.2268 cups", "33.814 fl oz"].map(
        (amount) => run("BAKE_GRAMS", amount, name) as number,
      );
      for (const one of said) expect(Math.abs(one / (said[0] ?? 0) - 1), said.join(", ")).toBeLessThan(0.01);
    },
  );
});

describe("brackets behind a number of things", () => {
  // Pieces by SR28: an egg 50 g, a white 33 g, a banana 118 g; 25 % either way is alike.
  test.each([
    ["3 (62.5 g) eggs", 187.5],
    ["3 (187.5 g) eggs", 187.5],
    ["3 eggs (50 g)", 150],
    ["3 eggs (50 g each)", 150],
    ["3 eggs (140 g in total)", 140],
    ["2 large egg whites (66 g)", 66],
    ["2 (100 ml) cartons cream", (200 / 236.588) * 238],
    ["6 large (1 cup) egg whites", 6 * 33],
  ])("%s", (line, grams) => expect(run("BAKE_GRAMS", line)).toBeCloseTo(grams, 1));
  test.each(["3 (63 g) eggs", "3 (112 g) eggs", "4 (100 g) raisins"])("%s is asked about", (line) => {
    const said = refusal("BAKE_GRAMS", line);
    expect(said).toMatch(/the weight of each, or of all/);
    // The advice, followed to the letter, gives the one and the other.
    const advice = [...said.matchAll(/“(\d[^”]*)”|"(\d[^"]* g)"/g)].map(([, one, other]) => one ?? other ?? "");
    const [each = "", all = ""] = advice.filter((one) => one !== line).slice(-2);
    const name = line.replace(/^.*\) /, "");
    const [, count = "", weight = ""] = /^(\d+) \((\d+) g\)/.exec(line) ?? [];
    expect(run("BAKE_GRAMS", `${each} ${name}`)).toBeCloseTo(Number(count) * Number(weight), 6);
    expect(run("BAKE_GRAMS", `${all} ${name}`)).toBeCloseTo(Number(weight), 6);
  });
});

describe("what no number can mean is refused, with every unit and place", () => {
  const wrong = ["1 to 3/4", "3-2", "1 1/2 – 1", "1/0", "1//2", "10 00", "1_000"];
  const lines = wrong.flatMap((amount) =>
    ["cup", "g", "tsp", "lb", "ml"].flatMap((unit) => [
      `${amount} ${unit} sugar`,
      `sugar ${amount} ${unit}`,
      `sugar, ${amount} ${unit}`,
    ]),
  );
  test.each(lines)("%s", (line) => expect(refusal("BAKE_GRAMS", line)).toMatch(/^BAKE_GRAMS: /));
  test.each(["twice 100 g butter", "500 g - 400 g flour", "double 2 cups flour"])("%s", (line) =>
    expect(refusal("BAKE_GRAMS", line)).toMatch(/^BAKE_GRAMS: /),
  );
  test.each([
    ["3 times 100 g sugar", 300],
    ["100 g × 3 sugar", 300],
    ["100g x3 sugar", 300],
    ["3 @ 100 g sugar", 300],
  ])("but %s is told clearly", (line, grams) => expect(run("BAKE_GRAMS", line)).toBe(grams));
});

test("signs of no width never matter, wherever they stand", () => {
  const line = "2 cups sugar";
  for (const sign of ["\u200b", "\u200c", "\u200d", "\u2060", "\ufeff", "\u00ad"]) {
    for (let at = 0; at <= line.length; at++) {
      expect(run("BAKE_GRAMS", line.slice(0, at) + sign + line.slice(at)), `${at}`).toBe(400);
    }
  }
});

test("a form that the larder has no measure of is remarked", () => {
  const span = run("BAKE_GRAMSPAN", "3 cups sifted all-purpose flour") as unknown[][];
  expect(span[0]?.slice(0, 2)).toEqual([375, 375]);
  expect(span[0]?.[2]).toMatch(/no measure of it sifted/);
  const known = run("BAKE_GRAMSPAN", "1 cup sifted powdered sugar") as unknown[][];
  expect(known[0]?.[2] ?? "").toBe("");
});
