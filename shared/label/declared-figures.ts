// How a law rounds the figures of a nutrition declaration.
import type { LabelLaw } from "../enrichment/protein.ts";

/** A number as it is declared, or "<0.5" where a law lets that stand for little. */
export type DeclaredFigure = number | string;

export const NUTRIENTS = ["fat", "saturates", "carbohydrate", "sugar", "fibre", "protein", "salt"] as const;
export type Nutrient = (typeof NUTRIENTS)[number];
/** A declared line: energy in one of its units, a nutrient in grams, or sodium in milligrams. */
export type Declared = Nutrient | "kilojoules" | "kilocalories" | "sodium";

/** Halves go up, and the dust of binary arithmetic does not count. */
function toStep(value: number, step: number): number {
  const steps = Math.floor(value / step + 0.5 + 1e-9);
  return Number((steps * step).toPrecision(12));
}

/** A step by how much there is: the first whose bound the figure lies below, or else the last. */
type Steps = readonly (readonly [below: number, step: number])[];
const stepFor = (value: number, steps: Steps): number =>
  (steps.find(([below]) => value < below) ?? steps[steps.length - 1] ?? [0, 1])[1];

const MACRO: Steps = [
  [10, 0.1],
  [Number.POSITIVE_INFINITY, 1],
];
const SALT: Steps = [
  [1, 0.01],
  [Number.POSITIVE_INFINITY, 0.1],
];

/**
 * The European Commission's guidance on tolerances for nutrition labelling, December 2012, table 4 (from memory): energy to
 * 1; fat, carbohydrate, sugars, fibre and protein to 1 g from 10 g, to 0.1 g below, up to 0.5 g as "<0.5"; saturates up to
 * 0.1 g as "<0.1"; salt to 0.1 g from 1 g, to 0.01 g below, up to 0.0125 g as "<0.01".
 */
function europeanFigure(value: number, of: Declared): DeclaredFigure {
  if (of === "kilojoules" || of === "kilocalories") return toStep(value, 1);
  const [little, least] = of === "salt" ? [0.0125, 0.01] : of === "saturates" ? [0.1, 0.1] : [0.5, 0.5];
  if (value <= 0) return 0;
  if (value <= little) return `<${least}`;
  return toStep(value, stepFor(value, of === "salt" ? SALT : MACRO));
}

/**
 * 21 CFR 101.9(c), from memory: calories to 5 up to 50 and to 10 above, below 5 as 0; fats to 0.5 g below 5 g and to 1 g
 * above, below 0.5 g as 0; sodium to 5 mg up to 140 mg and to 10 mg above, below 5 mg as 0; carbohydrate, fibre, sugars and
 * protein to 1 g, below 1 g as "<1", below 0.5 g as 0.
 */
function americanFigure(value: number, of: Declared): DeclaredFigure {
  if (of === "kilojoules") return toStep(value, 1);
  if (of === "kilocalories") return value < 5 ? 0 : toStep(value, value <= 50 ? 5 : 10);
  if (of === "sodium") return value < 5 ? 0 : toStep(value, value <= 140 ? 5 : 10);
  if (value < 0.5) return 0;
  if (of === "fat" || of === "saturates") return toStep(value, value < 5 ? 0.5 : 1);
  return value < 1 ? "<1" : toStep(value, 1);
}

export const declaredFigure = (value: number, of: Declared, law: LabelLaw): DeclaredFigure =>
  law === "US" ? americanFigure(value, of) : europeanFigure(value, of);
