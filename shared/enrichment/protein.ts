import { isFault, refuse } from "../base/refusal.ts";
import { atMost } from "../base/scaling.ts";
import { showNumber, shownApart, shownShare } from "../base/show.ts";
import { type Grams, type Ratio, ratio, type Weight, weight } from "../base/units.ts";
import { number, type Reader } from "../cells/cell.ts";

export type GlutenMode = "on top" | "replace";
export const GLUTEN_MODES = {
  "on top": ["add", "added", "top"],
  replace: ["replacing", "replacement", "blend", "instead"],
} as const satisfies Readonly<Record<GlutenMode, readonly string[]>>;

/** Protein of vital wheat gluten (USDA SR28 48052). */
export const GLUTEN_PROTEIN = ratio(0.7516);
/** Gluten takes one and a half times its weight of water (Baker's Dictionary, vital wheat gluten). */
const WATER_OF_GLUTEN = 1.5;
/** What the flour taken out would have taken (common practice, no source: a bread flour of 60 % absorption). */
const WATER_OF_FLOUR = 0.6;

/** Shares that were worked out in cells differ by the dust of binary arithmetic. */
const same = (a: number, b: number) => Math.abs(a - b) <= 1e-9 * Math.max(a, b);

/** Gluten that brings flour from one protein to another by mass balance, the flour left, and the extra water. */
export function glutenFor(
  flour: Weight,
  now: Ratio,
  wanted: Ratio,
  gluten: Ratio,
  mode: GlutenMode,
): { gluten: Weight; flour: Weight; water: Weight } {
  if (same(wanted, now)) return { gluten: weight(0), flour, water: weight(0) };
  if (wanted < now || wanted >= gluten || same(wanted, gluten)) {
    refuse(
      `is ${shownShare(wanted)}; gluten can bring this flour to more than its ${shownShare(now)} and less than the gluten's own ${shownShare(gluten)}`,
      "protein_wanted",
    );
  }
  const added = (flour * (wanted - now)) / (gluten - (mode === "on top" ? wanted : now));
  const takenOut = mode === "on top" ? 0 : added;
  return {
    gluten: weight(added),
    flour: weight(flour - takenOut),
    water: weight(WATER_OF_GLUTEN * added - WATER_OF_FLOUR * takenOut),
  };
}

/** Two flours that together weigh the total and have the protein wanted. */
export function flourBlend(a: Ratio, b: Ratio, wanted: Ratio, total: Weight): { a: Weight; b: Weight } {
  if (same(a, b))
    refuse(`is ${shownShare(b)}, the same as the other flour; two flours of different protein are needed`, "protein_b");
  const nearest = same(wanted, a) ? a : same(wanted, b) ? b : wanted;
  const partA = (nearest - b) / (a - b);
  if (partA < 0 || partA > 1) {
    refuse(
      `is ${shownShare(wanted)}; a blend lies between its flours, ${shownShare(Math.min(a, b))} and ${shownShare(Math.max(a, b))}`,
      "wanted",
    );
  }
  return { a: weight(total * partA), b: weight(total * (1 - partA)) };
}

/** Protein as a label prints it: its digits after the point tell how it was rounded. */
export type LabelFigure = { readonly grams: Grams; readonly decimals: number };

export const labelFigure = (): Reader<LabelFigure> => {
  const plain = number<Grams>("the label's grams of protein such as 3", { min: 0, max: 1000 });
  return {
    hint: plain.hint,
    read: (raw) => {
      const value = plain.read(raw);
      if (isFault(value)) return value;
      const digits = /[.,](\d+)$/.exec(typeof raw === "string" ? raw.trim() : String(value));
      return { grams: value, decimals: digits?.[1]?.length ?? 0 };
    },
  };
};

export type LabelLaw = "US" | "EU" | "UK";
export const LABEL_LAWS = { US: ["USA", "United States"], EU: [], UK: ["GB"] } as const satisfies Readonly<
  Record<LabelLaw, readonly string[]>
>;

/**
 * Below 10 g the EU's and the UK's labels give tenths, so that a bare 9 is 9.0 there; from 10 g whole grams (European
 * Commission guidance on tolerances, December 2012, from memory).
 */
const WHOLE_GRAMS_FROM = 10;
/** What either law lets a label round down to nothing (21 CFR 101.9; the same guidance). */
const MAY_BE_NOTHING = 0.5;
/** Gluten proteins make 80 to 85 % of a wheat flour's protein (from memory: Shewry; Wieser). */
const GLUTEN_FORMING = { least: 0.8, most: 0.85 };
const HUNDRED_GRAMS = 100;
/** A flour with less protein than this makes no dough: common practice, no source. */
const MIN_OF_FLOUR = 0.0099;

export type LabelProtein = {
  readonly low: Ratio;
  readonly high: Ratio;
  readonly glutenLow: Ratio;
  readonly glutenHigh: Ratio;
};

/** The protein shares that would be printed as this figure. US figures are per serving, the EU's and the UK's per 100 g. */
export function labelProtein({ grams, decimals }: LabelFigure, serving: Grams | null, law: LabelLaw): LabelProtein {
  const per = servingOf(serving, law);
  if (!atMost(grams, per))
    refuse(`is ${shownApart(grams, per, 2)} g, more than the ${showNumber(per)} g it is said to be in`, "protein");
  if (grams > 0 && grams < MIN_OF_FLOUR * per && decimals > 0) {
    refuse(
      `is ${showNumber(grams, 4)} g in ${showNumber(per)} g; was it typed as a share? Enter the grams the label prints`,
      "protein",
    );
  }
  const shownTo = law !== "US" && grams < WHOLE_GRAMS_FROM ? Math.max(1, decimals) : decimals;
  const half = 0.5 * 10 ** -shownTo;
  const low = Math.max(0, grams - half) / per;
  const high = Math.min(per, grams === 0 ? MAY_BE_NOTHING : grams + half) / per;
  return {
    low: ratio(low),
    high: ratio(high),
    glutenLow: ratio(low * GLUTEN_FORMING.least),
    glutenHigh: ratio(high * GLUTEN_FORMING.most),
  };
}

function servingOf(serving: Grams | null, law: LabelLaw): number {
  if (law === "US") {
    return (
      serving ??
      refuse("is blank; a US label gives protein per serving, so enter the serving's grams, such as 30", "serving")
    );
  }
  if (serving !== null && serving !== HUNDRED_GRAMS) {
    refuse(
      `is ${showNumber(serving)}; ${law} labels give protein per 100 g, so leave it blank or enter 100`,
      "serving",
    );
  }
  return HUNDRED_GRAMS;
}
