// The recipe lines of tests/data/recipe-lines.txt with the answers worked out there, and SR28's household measures beside them.

import { readFileSync } from "node:fs";
import { Refusal } from "../../shared/base/refusal.ts";
import { run } from "../functions/support.ts";

/** What a line weighs, "refused" where nobody can tell, "blank" where it names no amount. */
export type Answer = number | "refused" | "blank";
export type RecipeLineCase = {
  readonly cups: string;
  readonly line: string;
  readonly answer: Answer;
  /** The household measures that the sum uses, each with the food's number. */
  readonly measures: readonly (readonly [ndb: string, grams: readonly number[]])[];
};

const US_CUP = 236.588;
const US_TBSP = 14.7868;
const US_TSP = 4.92892;
/** Volumes as so many US cups, spoons as so many US ones, ounces and pounds in grams (NIST SP 811, appendix B; imperial: UK Weights and Measures Act 1985). */
const NAMED: Readonly<Record<string, number>> = {
  mcup: 250 / US_CUP,
  mtbsp: 15 / US_TBSP,
  mtsp: 5 / US_TSP,
  autbsp: 20 / US_TBSP,
  ml: 1 / US_CUP,
  ukfloz: 28.4131 / US_CUP,
  ukfloztbsp: 28.4131 / US_TBSP,
  ukpint: 568.261 / US_CUP,
  oz: 28.3495,
  lb: 453.592,
};

function factor(text: string): number {
  const value = NAMED[text] ?? Number(text);
  if (!Number.isFinite(value)) throw new Error(`no factor: ${text}`);
  return value;
}

/** "1 × 125 + 2 × 14.2", and what each of its products multiplies. */
function sumOf(text: string): { readonly sum: number; readonly products: readonly number[][] } {
  const parts = text.split(/ (?=[+-] )/);
  const products = parts.map((part) =>
    part
      .replace(/^[+-] /, "")
      .split(" × ")
      .map(factor),
  );
  const sum = products.reduce((all, one, at) => {
    const product = one.reduce((before, next) => before * next, 1);
    return parts[at]?.startsWith("-") ? all - product : all + product;
  }, 0);
  return { sum, products };
}

const read = (name: string) => readFileSync(new URL(`../data/${name}`, import.meta.url), "utf8");

export function recipeLines(): RecipeLineCase[] {
  let cups = "";
  return read("recipe-lines.txt")
    .split("\n")
    .flatMap((row): RecipeLineCase[] => {
      if (row === "" || row.startsWith("# ")) return [];
      if (row.startsWith("== ")) {
        cups = row.slice(3, 5);
        return [];
      }
      const [, line = "", told = "", numbers = ""] = /^(.*) \| (.*?) \|(?: (.*))?$/.exec(row) ?? [];
      if (line === "") throw new Error(`no line and answer: ${row}`);
      if (told === "?" || told === "-")
        return [{ cups, line, answer: told === "?" ? "refused" : "blank", measures: [] }];
      const { sum, products } = sumOf(told);
      const foods = numbers.split(" ").filter((one) => /^\d{5}$/.test(one));
      const measures = products.flatMap((one, at): [string, number[]][] => {
        const food = foods[at] ?? foods[0];
        return food === undefined ? [] : [[food, one]];
      });
      return [{ cups, line, answer: sum, measures }];
    });
}

/** The grams that SR28 prints for one household measure of a food, by its number. */
export function householdGrams(): ReadonlyMap<string, readonly number[]> {
  return new Map(
    read("usda-sr28-bakery.csv")
      .split("\n")
      .slice(1)
      .map((row) => {
        const printed = [...row.matchAll(/(?:^|[";,] ?)([\d.]+) [^;=]*= ([\d.]+) g/g)];
        return [
          row.slice(0, 5),
          printed
            .map(([, many, grams]) => Number(grams) / Number(many))
            .concat(printed.map(([, , grams]) => Number(grams))),
        ] as const;
      }),
  );
}

export type Outcome = "right" | "wrong in silence" | "refused though readable" | "blank though readable";

/** What BAKE_GRAMS makes of a line, beside its answer. */
export function outcomeOf({ line, cups, answer }: RecipeLineCase): { readonly is: Outcome; readonly said: string } {
  let cell: unknown;
  try {
    cell = run("BAKE_GRAMS", line, "", cups);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return {
      is: answer === "refused" || answer === "blank" ? "right" : "refused though readable",
      said: error.message,
    };
  }
  const said = String(cell);
  if (cell === "")
    return {
      is: typeof answer === "number" ? "blank though readable" : answer === "blank" ? "right" : "wrong in silence",
      said,
    };
  if (typeof answer !== "number" || typeof cell !== "number") return { is: "wrong in silence", said };
  // SR28 rounds its grams: a teaspoon of sugar is 4.2 g, a forty-eighth of a cup 4.17 g.
  return { is: Math.abs(cell - answer) <= 0.012 * answer ? "right" : "wrong in silence", said };
}
