import { sum } from "./formula.ts";
import { refuse } from "./refusal.ts";
import { shown, shownWeight } from "./show.ts";
import {
  type AnyDegrees,
  anyDegrees,
  type Celsius,
  type CelsiusDegrees,
  celsius,
  celsiusDegrees,
  fromCelsius,
  type Minutes,
  type Ratio,
  ratio,
  type TemperatureUnit,
  type Weight,
  weight,
} from "./units.ts";

/**
 * The other temperatures of the factor method (flour, room, and a preferment or soaker where there is one), blanks skipped.
 * The dough temperature is multiplied by one more than their number.
 */
function others(temps: readonly (AnyDegrees | null)[]): { total: number; multiplier: number } {
  const read = temps.filter((temp) => temp !== null);
  if (read.length < 2 || read.length > 3) {
    const said = read.length === 1 ? "hold one temperature alone" : `hold ${read.length} temperatures`;
    refuse(`${said}; give two (flour, room) or three (flour, room, preferment)`, "temps");
  }
  return { total: sum(read), multiplier: read.length + 1 };
}

/** Water temperature by the factor method. The friction factor belongs to the number of temperatures. */
export function waterTemperature(
  dough: AnyDegrees,
  temps: readonly (AnyDegrees | null)[],
  friction: AnyDegrees,
): AnyDegrees {
  const { total, multiplier } = others(temps);
  return anyDegrees(multiplier * dough - total - friction);
}

/** The friction factor a real mix had, on the same number of temperatures. */
export function frictionOf(reached: AnyDegrees, temps: readonly (AnyDegrees | null)[], water: AnyDegrees): AnyDegrees {
  const { total, multiplier } = others(temps);
  return anyDegrees(multiplier * reached - total - water);
}

export const MIXINGS = {
  hand: ["by hand", "hand mixing", "hand kneaded"],
  folds: ["fold", "stretch and fold", "no knead"],
  stand: ["stand mixer", "home stand mixer", "tabletop"],
  planetary: ["planetary mixer", "vertical"],
  spiral: ["spiral mixer"],
  processor: ["food processor"],
} as const;
export type Mixing = keyof typeof MIXINGS;

/**
 * Friction factors on the base of three temperatures, °C. Flat: hand and processor from Cook's Illustrated how-to 5818 (5 °F,
 * 25 °F). Per minute: duretz.net (1 °C of factor per minute of second speed), The Fresh Loaf node/7145 (stand mixer);
 * planetary from memory: handbooks' 8 to 19 °C for a mix of ten minutes. Everyone's mixer differs: measure.
 */
const FRICTION: Readonly<
  Record<Mixing, { readonly perMinute: boolean; readonly factors: readonly [number, number, number] }>
> = {
  hand: { perMinute: false, factors: [0, 1.5, 3] },
  folds: { perMinute: false, factors: [0, 1.5, 3] },
  stand: { perMinute: true, factors: [0.4, 1.1, 1.7] },
  planetary: { perMinute: true, factors: [0.8, 1.4, 1.9] },
  spiral: { perMinute: true, factors: [0.6, 1, 1.5] },
  processor: { perMinute: false, factors: [11, 14, 20] },
};

/** Low, usual and high friction factor of a way of mixing; minutes count where friction grows with them. */
export function frictionGuide(mixing: Mixing, minutes: Minutes | null): CelsiusDegrees[] {
  const { perMinute, factors } = FRICTION[mixing];
  if (perMinute && minutes === null)
    refuse(`is blank; friction in a ${mixing} mixer grows with the minutes, so write them, such as 8`, "minutes");
  return factors.map((one) => celsiusDegrees(perMinute ? one * (minutes ?? 0) : one));
}

/** Latent heat of melting 333.55 kJ/kg (CRC Handbook, from memory); water 4.186 kJ/kg·K (the 15 °C calorie); ice 2.1 kJ/kg·K (FAO T0713E). */
export const MELTING = 333.55;
export const WATER_HEAT = 4.186;
export const ICE_HEAT = 2.1;

/**
 * Ice as a share of all the water, so that ice and tap water mixed land on the wanted temperature.
 * (tap − wanted) over what a gram of ice takes up on its way to the tap's temperature, in degrees of water.
 */
export function iceShare(tap: Celsius, wanted: Celsius, ice: Celsius): Ratio {
  if (wanted >= tap) return ratio(0);
  return ratio((tap - wanted) / (tap + MELTING / WATER_HEAT - (ICE_HEAT / WATER_HEAT) * ice));
}

/** Ice and tap water that together weigh `water`; ice at its melting point unless told. */
export function iceFor(
  water: Weight,
  tap: Celsius,
  wanted: Celsius,
  iceTemp: Celsius | null,
): { ice: Weight; tapWater: Weight } {
  if (iceTemp !== null && iceTemp > 0)
    refuse("is above freezing, and ice is not; leave it out or write 0 or less", "ice_temp");
  if (tap < 0) refuse("is below freezing; water from a tap is not", "tap");
  const share = iceShare(tap, wanted, iceTemp ?? celsius(0));
  if (share > 1) {
    const w = shownWeight(water);
    refuse(
      `is too cold: ${w} of water at the tap's temperature would need more than ${w} of ice. Cool the flour, mix for less time, or accept a warmer dough`,
      "wanted",
    );
  }
  return { ice: weight(water * share), tapWater: weight(water * (1 - share)) };
}

/** Where water begins to hurt yeast it touches, °C: fresh and instant from trade practice (from memory), active dry its rehydration limit. */
export const YEAST_LIMITS = { fresh: 38, instant: 40, "active dry": 43, none: 55 } as const;
export type WaterYeast = keyof typeof YEAST_LIMITS;
/** Water from here on scalds with time of contact, °C (from memory: burn-prevention leaflets, 120 °F). */
const SCALDS = 49;
/** Nearer to the tap than this, the tap's water is used as it is, K. */
const AS_IT_IS = 0.5;
const MUCH_ICE = 0.5;

/** What to do for water of this temperature, from this tap, beside this yeast. */
export function waterNote(water: Celsius, tap: Celsius, yeast: WaterYeast, unit: TemperatureUnit): string {
  const at = (temp: number) => `${shown(fromCelsius(temp as Celsius, unit), 1)} °${unit}`;
  const scald = water >= SCALDS ? " Water this hot scalds: pour and carry it with care." : "";
  if (water > YEAST_LIMITS[yeast]) {
    const who =
      yeast === "none"
        ? "hotter than a dough should meet"
        : `too hot for ${yeast} yeast (${at(YEAST_LIMITS[yeast])} at most)`;
    return `Water of ${at(water)} is ${who}: warm the flour or the room, or accept a cooler dough and a longer rise.${scald}`;
  }
  if (Math.abs(water - tap) <= AS_IT_IS) return `Use the tap's water as it is (${at(tap)}).${scald}`;
  if (water > tap) return `Warm the water to ${at(water)}.${scald}`;
  const share = iceShare(tap, water, 0 as Celsius);
  if (share > 1)
    return `Water of ${at(water)} is colder than ice alone can make it: cool the flour, mix for less time, or accept a warmer dough.`;
  const ice = `Cool the tap's water to ${at(water)}: about ${shown(share * 100, 0)} % of it as ice`;
  return share > MUCH_ICE
    ? `${ice}. That is more than half: chill flour and water beforehand, use flake ice, and see that it melts before mixing ends.`
    : `${ice}, weighed as part of the water. Ice is food: clean water, clean scoop.`;
}
