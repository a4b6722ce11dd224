import { BATTERS } from "./batters.ts";
import { DOUGHS } from "./doughs.ts";
import type { Printed, Style } from "./style.ts";

// Guide bands for a formula, percent of all flour. Each comes from the published formulas named at its end; where those are few,
// from textbooks as remembered.

export type Band = { readonly low: number; readonly usual: number; readonly high: number };

const STYLES = { ...DOUGHS, ...BATTERS };
export type StyleName = keyof typeof STYLES;

/** The styles by name, with what else they are called. */
export const STYLE_NAMES = Object.fromEntries(
  Object.entries(STYLES).map(([name, { also }]) => [name, also]),
) as unknown as Readonly<Record<StyleName, readonly string[]>>;

export const styleNamed = (name: StyleName): Style => STYLES[name];

const ABOUT = 0.1;

/** A printed band as ratios. */
export function bandOf(printed: Printed): Band {
  const [low, usual, high] =
    typeof printed === "number" ? [printed * (1 - ABOUT), printed, printed * (1 + ABOUT)] : printed;
  return { low: low / 100, usual: usual / 100, high: high / 100 };
}

/** Water in a gram of egg and of fat, as these bands count them (USDA SR28 01123 and 01145, rounded). */
const WATER_OF_EGG = 0.76;
const WATER_OF_FAT = 0.18;

/** The band of effective hydration that follows from a style's water, egg and fat. */
export function hydrationBand({ water, egg, fat }: Style): Band {
  const [w, e, f] = [bandOf(water), bandOf(egg), bandOf(fat)];
  const at = (edge: keyof Band) => w[edge] + WATER_OF_EGG * e[edge] + WATER_OF_FAT * f[edge];
  return { low: at("low"), usual: at("usual"), high: at("high") };
}
