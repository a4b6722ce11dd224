// Kitchen volumes by country. One millilitre is one cubic centimetre.
import { type CubicCentimetres, cubicCentimetres } from "./units.ts";

export type CupSystem = "US" | "AU" | "UK" | "EU";
export type VolumeUnit =
  | "ml"
  | "cl"
  | "dl"
  | "l"
  | "cup"
  | "tbsp"
  | "dessertspoon"
  | "tsp"
  | "dash"
  | "pinch"
  | "fl oz"
  | "gill"
  | "pint"
  | "quart"
  | "gallon";

/** The words people write for the systems. */
export const CUP_SYSTEMS = {
  US: ["usa", "american", "america", "us customary"],
  AU: ["australia", "australian"],
  UK: ["united kingdom", "british", "gb", "imperial", "england"],
  EU: ["europe", "european", "metric", "de", "fr"],
} as const satisfies Readonly<Record<CupSystem, readonly string[]>>;

/** US gallon 231 in³ = 3785.411784 mL, a cup its sixteenth, a fluid ounce its 128th (NIST SP 811, appendix B). */
const US_GALLON = 3785.411784;
/** Imperial gallon 4.54609 L exactly, a pint its eighth, a fluid ounce its 160th (UK Weights and Measures Act 1985). */
const IMPERIAL_GALLON = 4546.09;

const METRIC = { ml: 1, cl: 10, dl: 100, l: 1000 } as const;
const imperial = { "fl oz": IMPERIAL_GALLON / 160, gill: IMPERIAL_GALLON / 32, pint: IMPERIAL_GALLON / 8 } as const;
const imperialMore = { quart: IMPERIAL_GALLON / 4, gallon: IMPERIAL_GALLON } as const;
/** A dash is an eighth of a teaspoon, a pinch a sixteenth (common practice, no source). */
const withPinches = <T extends { tsp: number }>(spoons: T) => ({
  ...spoons,
  dash: spoons.tsp / 8,
  pinch: spoons.tsp / 16,
});

/**
 * Metric cup 250 mL, spoons 15 and 5 mL (UK, EU); the Australian tablespoon is 20 mL (Australian published conversion list,
 * donnahay.com.au). Dessertspoon two teaspoons (common practice, no source). The EU has no ounce or pint of its own.
 */
const MILLILITRES: Readonly<Record<CupSystem, Readonly<Partial<Record<VolumeUnit, number>>>>> = {
  US: {
    ...METRIC,
    ...withPinches({ cup: US_GALLON / 16, tbsp: US_GALLON / 256, dessertspoon: US_GALLON / 384, tsp: US_GALLON / 768 }),
    "fl oz": US_GALLON / 128,
    gill: US_GALLON / 32,
    pint: US_GALLON / 8,
    quart: US_GALLON / 4,
    gallon: US_GALLON,
  },
  AU: { ...METRIC, ...withPinches({ cup: 250, tbsp: 20, dessertspoon: 10, tsp: 5 }), ...imperial, ...imperialMore },
  UK: { ...METRIC, ...withPinches({ cup: 250, tbsp: 15, dessertspoon: 10, tsp: 5 }), ...imperial, ...imperialMore },
  EU: { ...METRIC, ...withPinches({ cup: 250, tbsp: 15, dessertspoon: 10, tsp: 5 }) },
};

/** What a unit holds in a system; undefined where the system has no such unit. */
export function volumeOf(unit: VolumeUnit, system: CupSystem): CubicCentimetres | undefined {
  const held = MILLILITRES[system][unit];
  return held === undefined ? undefined : cubicCentimetres(held);
}

export type EggSize = "small" | "medium" | "large" | "extra large" | "jumbo";
/**
 * Shelled whole eggs in grams by size; without a size a large one is meant. US sizes are the larder's (USDA SR28). UK and EU:
 * grade weights of Regulation (EC) 589/2008, AU: the egg industry's guide, less 12 % shell, middle of the band rounded.
 */
export const SHELLED_EGGS: Readonly<Record<"UK" | "EU" | "AU", Readonly<Partial<Record<EggSize, number>>>>> = {
  UK: { medium: 51, large: 60, "extra large": 67 },
  EU: { medium: 51, large: 60, "extra large": 67 },
  AU: { medium: 40, large: 48, "extra large": 55 },
};
