import fc from "fast-check";
import Qty from "js-quantities";
import { numericQuantity } from "numeric-quantity";
import { parseIngredient } from "parse-ingredient";
// @ts-expect-error the package has no types for its entry
import unitMath from "unitmath";
import { describe, expect, test } from "vitest";
import { Refusal } from "../../shared/base/refusal.ts";
import { gramsIn } from "../../shared/base/units.ts";
import { CUP_SYSTEMS, type CupSystem, volumeOf } from "../../shared/base/volumes.ts";
import { tokensOf } from "../../shared/recipe/tokens.ts";
import { down, expectCells, run } from "../functions/support.ts";
import { seedOf, tries } from "../kit/scale.ts";

const SEED = seedOf(20_261_125);
const RUNS = { numRuns: tries(400), seed: SEED };
const grams = (line: string, ...rest: unknown[]) => run("BAKE_GRAMS", line, ...rest) as number;
const answerOf = (line: string): unknown => {
  try {
    return grams(line);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return undefined;
  }
};
const span = (line: string, ...rest: unknown[]) =>
  (run("BAKE_GRAMSPAN", line, ...rest) as [number, number, string][])[0];

describe("units against js-quantities and unitmath", () => {
  // Both libraries print the US measures from NIST's inch; js-quantities carries nine figures.
  test.each([
    ["cup", "cup", "cup"],
    ["tbsp", "tablespoon", "tablespoon"],
    ["tsp", "teaspoon", "teaspoon"],
    ["fl oz", "fluid-ounce", "fluidounce"],
    ["pint", "pint", "pint"],
    ["quart", "quart", "quart"],
    ["gallon", "gallon", "gallon"],
  ] as const)("US %s", (unit, qty, math) => {
    const held = volumeOf(unit, "US") ?? 0;
    expectCells(held, Qty(1, qty).to("ml").scalar, held * 1e-7);
    expectCells(held, unitMath(1, math).to("mL").getValue(), held * 1e-9);
  });
  test.each(["oz", "lb"] as const)("%s", (unit) => {
    expectCells(gramsIn(unit), Qty(1, unit).to("g").scalar, 1e-5);
    expectCells(gramsIn(unit), unitMath(1, unit).to("g").getValue(), 1e-9);
  });
  test("imperial: a gallon of 4.54609 L has 8 pints, 160 fluid ounces (UK Weights and Measures Act 1985)", () => {
    expectCells([volumeOf("pint", "UK"), volumeOf("fl oz", "UK")], [568.26125, 28.4130625]);
    expect(volumeOf("fl oz", "AU")).toBe(volumeOf("fl oz", "UK"));
  });
});

const FRACTIONS = fc.constantFrom("", "1/2", "1/3", "2/3", "1/4", "3/4", "1/8", "3/8", "½", "⅓", "¾", "⅞");
const NUMBERS = fc
  .tuple(fc.integer({ min: 0, max: 40 }), FRACTIONS, fc.constantFrom(" ", "-", ""))
  .filter(([whole, fraction]) => whole > 0 || fraction !== "")
  .map(([whole, fraction, joint]) => {
    if (whole === 0) return fraction;
    if (fraction === "") return String(whole);
    return `${whole}${fraction.includes("/") && joint === "" ? " " : joint}${fraction}`;
  });

describe("numbers against numeric-quantity, lines against parse-ingredient", () => {
  test("mixed numbers", () => {
    fc.assert(
      fc.property(NUMBERS, (number) => {
        const read = numericQuantity(number.replace("-", " "), { round: false });
        expectCells(grams(`${number} oz flour`), read * gramsIn("oz"), 1e-9 * (1 + read * 28.4));
      }),
      RUNS,
    );
  });
  test("lines of one amount", () => {
    const UNITS = {
      cup: "cup",
      cups: "cup",
      tbsp: "tbsp",
      Tbsp: "tbsp",
      tablespoons: "tbsp",
      tsp: "tsp",
      teaspoon: "tsp",
    };
    const HELD: Readonly<Record<string, string>> = { cup: "cup", tablespoon: "tablespoon", teaspoon: "teaspoon" };
    fc.assert(
      fc.property(
        NUMBERS,
        fc.option(NUMBERS),
        fc.constantFrom(...Object.keys(UNITS)),
        fc.constantFrom("water", "warm water", "cold water, divided"),
        (one, other, unit, name) => {
          const line = `${one}${other === null ? "" : ` to ${other}`} ${unit} ${name}`;
          const [parsed] = parseIngredient(line.replace(/(\d)-/g, "$1 "), { normalizeUOM: true, round: false });
          const held = HELD[parsed?.unitOfMeasure ?? ""];
          if (parsed?.quantity == null || held === undefined) throw new Error(`the oracle cannot read ${line}`);
          const most = parsed.quantity2 ?? parsed.quantity;
          // A range that runs backwards is no range; ours refuses it.
          fc.pre(most >= parsed.quantity);
          const millilitres = Qty(1, held).to("ml").scalar;
          const [least, up] = span(line) ?? [];
          expectCells([least, up], [parsed.quantity * millilitres, most * millilitres], 1e-6 * most * millilitres);
        },
      ),
      RUNS,
    );
  });
});

const NAMES = [
  "flour",
  "sugar",
  "butter",
  "milk",
  "honey",
  "salt",
  "instant yeast",
  "cocoa",
  "olive oil",
  "baking soda",
];
const SYSTEM = fc.constantFrom(...(Object.keys(CUP_SYSTEMS) as CupSystem[]));

describe("laws", () => {
  test("spoons read back come within 2 %, or the spoons say how far off they are", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.02, max: 20_000, noNaN: true }),
        fc.constantFrom(...NAMES),
        fc.oneof(SYSTEM, fc.constant("lb oz")),
        (weight, name, system) => {
          const said = run("BAKE_SPOONS", weight, name, system) as string;
          const error = /^(.*) \(([+-][\d.]+) %\)$/.exec(said);
          const back = grams(error?.[1] ?? said, name, system === "lb oz" ? "US" : system);
          const missed = (back / weight - 1) * 100;
          if (error === null) expect(Math.abs(missed), said).toBeLessThanOrEqual(2 + 1e-9);
          else
            expect(Math.abs(missed - Number(error[2])), said).toBeLessThanOrEqual(Math.abs(missed) < 10 ? 0.051 : 0.51);
          expect(said).not.toMatch(/(?:^|\+ )(?:[4-9]|\d\d)(?: \S+)? tsp/);
        },
      ),
      RUNS,
    );
  });
  test("a tablespoon is three teaspoons, in Australia four", () => {
    expect(run("BAKE_SPOONS", down(12.25, 21), "honey", "US")).toEqual([["1 3/4 tsp"], ["1 tbsp"]]);
    // 15 mL of honey are 21.3 g: in Australia three teaspoons, its tablespoon is 20 mL.
    expect(run("BAKE_SPOONS", 21.3, "honey", "AU")).toBe("3 tsp");
    expect(run("BAKE_SPOONS", 28.4, "honey", "AU")).toBe("1 tbsp");
  });
  test("more lines never weigh less, and a line weighs the same among others", () => {
    const line = fc
      .tuple(NUMBERS, fc.constantFrom("cups", "tbsp", "g", "oz"), fc.constantFrom(...NAMES))
      .map((parts) => parts.join(" "));
    fc.assert(
      fc.property(fc.array(line, { minLength: 1, maxLength: 8 }), (lines) => {
        const column =
          lines.length === 1 ? [[grams(lines[0] ?? "")]] : (run("BAKE_GRAMS", down(...lines)) as number[][]);
        let sum = 0;
        column.forEach(([weight = Number.NaN], row) => {
          expect(weight).toBe(grams(lines[row] ?? ""));
          expect(sum + weight).toBeGreaterThan(sum);
          sum += weight;
        });
      }),
      RUNS,
    );
  });
  test("neither odd spaces nor a second time in the list change a line", () => {
    const piece = fc.oneof(
      NUMBERS,
      fc.constantFrom(...NAMES, "cups", "g", "x", "half", "'", "*", "(", ")", "1,250", "-"),
    );
    fc.assert(
      fc.property(fc.array(piece, { minLength: 1, maxLength: 8 }), (pieces) => {
        const line = pieces.join(" ");
        expect(tokensOf(line)).toEqual(tokensOf(pieces.join("\u2003")));
        const once = answerOf(line);
        if (once !== undefined) expect(run("BAKE_GRAMS", down(line, "1 g salt", line))).toEqual(down(once, 1, once));
      }),
      RUNS,
    );
  });
  test("the middle lies between the ends", () => {
    fc.assert(
      fc.property(NUMBERS, NUMBERS, fc.constantFrom("cups", "tbsp", "g", "lb"), SYSTEM, (one, other, unit, system) => {
        const line = `${one} ${unit} plus 1 tsp to ${other} ${unit} water`;
        fc.pre(numericQuantity(other.replace("-", " ")) > numericQuantity(one.replace("-", " ")) + 1);
        fc.pre(unit !== "g" && unit !== "lb");
        const [least = 0, most = 0] = span(line, "", system) ?? [];
        expect(least).toBeLessThan(most);
        expectCells(grams(line, "", system), (least + most) / 2);
      }),
      RUNS,
    );
  });
});
