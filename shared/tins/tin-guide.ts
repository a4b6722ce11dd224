import { isFault, refuse } from "../base/refusal.ts";
import { atMost } from "../base/scaling.ts";
import { showNumber, shownApart } from "../base/show.ts";
import type { CubicCentimetres, Grams } from "../base/units.ts";
import { fromGrams, grams, type WeightUnit } from "../base/units.ts";
import { number, type Reader, word } from "../cells/cell.ts";

/** Dough weight over true capacity, g/cm³: low, usual, high. */
export type Guide = readonly [low: number, usual: number, high: number];

type DoughKind = { readonly guide: Guide; readonly also: readonly string[]; readonly batter?: true };

/** Batter at half, seven twelfths and two thirds of the brim, at about 1 g/cm³ (common practice, no source). */
const RING_OR_TUBE: Guide = [0.5, 0.58, 0.67];

/**
 * Bread: the inverse of cm³ per gram from published tins and doughs (US Army master recipe cards D00900 and D01000, AACC
 * methods 10-10.03 and 10-11.01, tutti-sandwiches.fr for the lidded tin, The Fresh Loaf node/22023 for dense rye, baking
 * teachers' tins for wholemeal); half wholemeal and mixed rye lie between their neighbours. Batter: fill of the tin times
 * specific gravity (American Society of Baking; USDA quantity recipes 1988; US Army cards G007, G012, G025).
 */
const GUIDE = {
  "lidded white": { guide: [0.3, 0.34, 0.37], also: ["white lidded", "sandwich", "lidded", "pain de mie"] },
  white: { guide: [0.34, 0.43, 0.59], also: ["white open", "tin white", "white bread", "white loaf", "pan bread"] },
  "white wholesale": { guide: [0.26, 0.29, 0.32], also: ["wholesale white", "white plant"] },
  "half wholemeal": { guide: [0.37, 0.48, 0.59], also: ["half whole wheat", "half wholewheat"] },
  wholemeal: {
    guide: [0.38, 0.56, 0.67],
    also: ["whole wheat", "wholewheat", "whole grain", "wholemeal bread", "whole wheat bread"],
  },
  "rye and wheat": { guide: [0.37, 0.48, 0.59], also: ["wheat and rye", "mixed rye", "rye wheat"] },
  rye: { guide: [0.5, 0.57, 0.67], also: ["dense rye", "whole rye"] },
  enriched: { guide: [0.33, 0.4, 0.45], also: ["brioche", "sweet", "sweet loaf", "rich"] },
  "layer cake": { guide: [0.36, 0.44, 0.54], also: ["layer", "cupcake"], batter: true },
  "pound cake": { guide: [0.47, 0.55, 0.6], also: ["pound", "quick bread"], batter: true },
  muffin: { guide: [0.47, 0.55, 0.6], also: [], batter: true },
  sponge: { guide: [0.22, 0.26, 0.31], also: ["foam cake", "genoise", "sponge cake"], batter: true },
  "ring cake": { guide: RING_OR_TUBE, also: ["ring", "tube", "ring tin", "tube tin", "tube cake"], batter: true },
  brownie: { guide: [0.53, 0.61, 0.68], also: [], batter: true },
} as const satisfies Readonly<Record<string, DoughKind>>;

export type TinDoughKind = keyof typeof GUIDE;

/** The kinds of dough with a guide, and what else they are called. */
export const TIN_DOUGH_KINDS = Object.fromEntries(
  Object.entries(GUIDE).map(([kind, { also }]) => [kind, also]),
) as unknown as Readonly<Record<TinDoughKind, readonly string[]>>;

export const tinGuide = (kind: TinDoughKind): Guide => GUIDE[kind].guide;

/** Fills beyond these are slips of unit: g per ml is meant, and dough is not denser than brine. */
const FILL_BOUNDS = { min: 0.05, max: 2 };
const isFill = (value: number) => atMost(FILL_BOUNDS.min, value) && atMost(value, FILL_BOUNDS.max);

/** A fill as a number of g/cm³, or the usual one of a kind of dough. */
export const fillCell = (): Reader<number> => {
  const kinds = word(TIN_DOUGH_KINDS);
  return {
    hint: { of: "number", what: "a fill in g/cm³ such as 0.34, or a kind of dough", ...FILL_BOUNDS },
    read: (raw) => {
      const named = typeof raw === "string" && !/\d/.test(raw) ? kinds.read(raw) : undefined;
      if (named !== undefined) return isFault(named) ? named : tinGuide(named)[1];
      const fill = number<number>("a fill in g/cm³ such as 0.34, or a kind of dough such as lidded white").read(raw);
      if (isFault(fill) || isFill(fill)) return fill;
      const meant = isFill(fill / 100) ? `: enter ${showNumber(fill / 100, 4)}, say` : "";
      return { says: `is ${showNumber(fill, 4)}; it lies between 0.05 and 2 g of dough per cm³ of tin${meant}` };
    },
  };
};

/** Dough for tins of a capacity at a fill in g/cm³. */
export function tinDough(capacity: CubicCentimetres, fill: number, tins: number, unit: WeightUnit): number {
  refuseSmall(capacity);
  return fromGrams(grams(capacity * fill * tins), unit);
}

/** The smallest tins hold some 20 ml; less is most likely litres. */
const MIN_CAPACITY = 20;

export function refuseSmall(capacity: number, argument = "capacity"): void {
  if (!atMost(MIN_CAPACITY, capacity))
    refuse(
      `is ${shownApart(capacity, MIN_CAPACITY)} cm³, less than any tin holds; for litres enter "${showNumber(capacity, 4)} l"`,
      argument,
    );
}

export type TinNote = {
  readonly sentence: string;
  /** Where the fill lies against the usual range. */
  readonly fits: "above" | "within" | "below";
  readonly low: number;
  readonly usual: number;
  readonly high: number;
};

/** How a dough fits a tin, and the doughs the guide gives for it, in the dough's unit. */
export function tinNote(dough: Grams, capacity: CubicCentimetres, kind: TinDoughKind, unit: WeightUnit): TinNote {
  refuseSmall(capacity);
  const [low, usual, high] = tinGuide(kind);
  const fill = dough / capacity;
  if (!isFill(fill)) {
    refuse(
      `makes a fill of ${showNumber(fill)} g/cm³; it lies between 0.05 and 2. Is the capacity in cm³ and the dough in ${unit}?`,
      "dough",
    );
  }
  const inUnit = (guide: number) => fromGrams(grams(guide * capacity), unit);
  const usualWeight = `usual here is ${weighed(inUnit(usual), unit)} (${weighed(inUnit(low), unit)} to ${weighed(inUnit(high), unit)})`;
  const place = `Fill ${shownFill(fill, [low, usual, high])} g/cm³`;
  const range = `${showNumber(low, 2)} to ${showNumber(high, 2)}`;
  return {
    // One text, not a tree of its parts: a column of them is held until the last row is done.
    sentence: [place, judged(fill, [low, usual, high], kind, range), "; ", usualWeight, "."].join(""),
    fits: !atMost(fill, high) ? "above" : !atMost(low, fill) ? "below" : "within",
    low: inUnit(low),
    usual: inUnit(usual),
    high: inUnit(high),
  };
}

function shownFill(fill: number, [low, , high]: Guide): string {
  if (atMost(fill, high) && atMost(low, fill)) return showNumber(fill, 2);
  return shownApart(fill, fill > high ? high : low, 2);
}

/** A fill is told to a hundredth of g/cm³, and so near the usual one it is called usual. */
const NEAR_USUAL = 0.005;

function judged(fill: number, [low, usual, high]: Guide, kind: TinDoughKind, range: string): string {
  const batter = "batter" in GUIDE[kind];
  if (!atMost(fill, high)) {
    const risk = batter ? "it may run over the rim and sink" : "expect dough over the rim, or a dense loaf";
    return `, above the usual range for ${kind} (${range}): ${risk}`;
  }
  if (!atMost(low, fill))
    return `, below the usual range for ${kind} (${range}): expect a low ${batter ? "cake that dries out" : "loaf that does not fill the tin"}`;
  if (atMost(Math.abs(fill - usual), NEAR_USUAL)) return `, the usual one for ${kind} (${range})`;
  return `, within the usual range for ${kind} (${range}), ${fill > usual ? "on the full side" : "on the light side"}`;
}

/** A weight as it is said in a sentence: whole grams, hundredths of anything larger. */
const weighed = (value: number, unit: WeightUnit) => `${showNumber(value, unit === "g" ? 0 : 2)} ${unit}`;
