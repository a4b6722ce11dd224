// What a finished product holds, as a law has it declared: an estimate from the figures of its ingredients.
import { quote } from "../base/show.ts";
import type { Weight } from "../base/units.ts";
import { isUnweighed } from "../enrichment/enrichment.ts";
import type { LabelLaw } from "../enrichment/protein.ts";
import type { Kind } from "../larder/kinds.ts";
import { eachRow } from "../larder/larder.ts";
import { type Figures, figureSearch, figuresOfRow, NOTHING, sumOf } from "./composition.ts";
import { type Declared, type DeclaredFigure, declaredFigure } from "./declared-figures.ts";
import { addedUp, nearSum } from "./label.ts";
import type { Sources } from "./own-formulas.ts";

/** Energy of a gram (Regulation (EU) 1169/2011, annex XIV). Polyols, alcohol and organic acids have no figure here. */
const KILOJOULES = { carbohydrate: 17, protein: 17, fat: 37, fibre: 8 } as const;
const KILOCALORIES = { carbohydrate: 4, protein: 4, fat: 9, fibre: 2 } as const;
/** 21 CFR 101.9(c)(1)(i)(B), from memory: general factors, the fibre within the carbohydrate. */
const CALORIES = { carbohydrate: 4, protein: 4, fat: 9, fibre: 0 } as const;
type EnergyFactors = Readonly<Record<keyof typeof KILOJOULES, number>>;

/** Salt is sodium × 2.5 (Regulation (EU) 1169/2011, annex I). */
const SALT_PER_SODIUM = 2.5;
const MILLIGRAMS = 1000;

type Known = (of: Declared) => number | string;

/** Carbohydrate as a label counts it: without fibre in the EU and the UK, what is counted as protein taken off. */
function declaredFigures(held: Figures, law: LabelLaw): Known {
  const isUS = law === "US";
  const protein = isUS ? held.protein : held["label protein"];
  const carbohydrate = (): number | string => {
    if (isUS || typeof held.carbohydrate === "string") return held.carbohydrate;
    for (const one of [held.fibre, protein, held.protein]) if (typeof one === "string") return one;
    const more = (protein as number) - (held.protein as number);
    return Math.max(0, held.carbohydrate - (held.fibre as number) - more);
  };
  const energy = (factors: EnergyFactors): number | string => {
    const parts = { carbohydrate: carbohydrate(), protein, fat: held.fat, fibre: factors.fibre === 0 ? 0 : held.fibre };
    let sum = 0;
    for (const [part, grams] of Object.entries(parts)) {
      if (typeof grams === "string") return grams;
      sum += grams * factors[part as keyof EnergyFactors];
    }
    return sum;
  };
  return (of) => {
    if (of === "kilojoules") return energy(KILOJOULES);
    if (of === "kilocalories") return energy(isUS ? CALORIES : KILOCALORIES);
    if (of === "sodium") return typeof held.salt === "string" ? held.salt : (held.salt / SALT_PER_SODIUM) * MILLIGRAMS;
    if (of === "carbohydrate") return carbohydrate();
    return of === "protein" ? protein : held[of];
  };
}

/** In the order of Regulation (EU) 1169/2011, annex XV, and of 21 CFR 101.9(c). */
const LINES: Readonly<Record<"EU" | "US", readonly (readonly [Declared, string])[]>> = {
  EU: [
    ["kilojoules", "Energy (kJ)"],
    ["kilocalories", "Energy (kcal)"],
    ["fat", "Fat (g)"],
    ["saturates", "of which saturates (g)"],
    ["carbohydrate", "Carbohydrate (g)"],
    ["sugar", "of which sugars (g)"],
    ["fibre", "Fibre (g)"],
    ["protein", "Protein (g)"],
    ["salt", "Salt (g)"],
  ],
  US: [
    ["kilocalories", "Calories"],
    ["fat", "Total fat (g)"],
    ["saturates", "Saturated fat (g)"],
    ["sodium", "Sodium (mg)"],
    ["carbohydrate", "Total carbohydrate (g)"],
    ["fibre", "Dietary fiber (g)"],
    ["sugar", "Total sugars (g)"],
    ["protein", "Protein (g)"],
  ],
};
/** What a US panel needs and no figure here tells (21 CFR 101.9(c), from memory). */
const NOT_HERE = "trans fat, cholesterol, added sugars, vitamin D, calcium, iron, potassium";

export type NutritionLine = {
  readonly name: string;
  readonly per100: DeclaredFigure | null;
  readonly portion: DeclaredFigure | null;
  readonly note: string | null;
};

/** What a product is made of, what it weighs when it is finished, and how much of it is a portion, in grams. */
export type Product = {
  readonly names: readonly (string | null)[];
  readonly weights: readonly (Weight | null)[];
  readonly kinds: readonly (Kind | null)[];
  readonly finished: Weight;
  readonly portion: number | null;
};

/** The lines of a declaration; none while nothing is weighed. */
export function nutrition(product: Product, sources: Sources, law: LabelLaw, isRounded: boolean): NutritionLine[] {
  const { names, weights, kinds, finished, portion } = product;
  if (isUnweighed(weights)) return [];
  nearSum(finished, addedUp(weights));
  const search = figureSearch(sources);
  const rows = eachRow(weights, (row, index) => {
    if (row === null || row === 0) return { figures: NOTHING, times: 0 };
    return { figures: figuresOfRow(names[index] ?? null, kinds[index] ?? null, index, sources, search), times: row };
  });
  const known = declaredFigures(sumOf(rows), law);
  const lines = LINES[law === "US" ? "US" : "EU"].map(([of, name]): NutritionLine => {
    const held = known(of);
    if (typeof held === "string") return { name, per100: null, portion: null, note: `not known of ${quote(held)}` };
    const shown = (grams: number): DeclaredFigure => {
      const value = (held / finished) * grams;
      return isRounded ? declaredFigure(value, of, law) : value;
    };
    return { name, per100: shown(100), portion: portion === null ? null : shown(portion), note: null };
  });
  const missing = { name: "Not known here", per100: null, portion: null, note: NOT_HERE };
  return law === "US" ? [...lines, missing] : lines;
}
