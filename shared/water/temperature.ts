import { refuse } from "../base/refusal.ts";
import { showNumber } from "../base/show.ts";
import { type AnyDegrees, anyDegrees, type CelsiusDegrees, celsiusDegrees, type Minutes } from "../base/units.ts";
import { sum } from "../formula/formula.ts";

/**
 * The other temperatures of the factor method (flour, room, and a preferment or soaker where there is one), blanks skipped.
 * The dough temperature is multiplied by one more than their number.
 */
function others(temps: readonly (AnyDegrees | null)[]): { total: number; multiplier: number } {
  const degrees = temps.filter((temp) => temp !== null);
  if (degrees.length < 2 || degrees.length > 3) {
    const count = degrees.length === 1 ? "hold one temperature alone" : `hold ${degrees.length} temperatures`;
    refuse(`${count}; give two (flour, room) or three (flour, room, preferment) together, such as {20; 22}`, "temps");
  }
  return { total: sum(degrees), multiplier: degrees.length + 1 };
}

/** No dough is wanted above 50 °C or below 35 °F, and what stands around it lies on its side of 35 °F and of 55 °C. */
export function refuseTwoUnits(dough: AnyDegrees, temps: readonly (AnyDegrees | null)[]): void {
  const degrees = temps.filter((temp) => temp !== null);
  const isBesideF = dough < 35 && degrees.every((temp) => temp > 55);
  const isBesideC = dough > 50 && degrees.every((temp) => temp < 35);
  if (isBesideF || isBesideC)
    refuse(
      `are ${degrees.map((temp) => showNumber(temp)).join(" and ")} beside a dough of ${showNumber(dough)}; enter every temperature in °C, or every one in °F`,
      "temps",
    );
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

/** The dough temperature that a water gives, by the factor method: what waterTemperature answers, asked the other way round. */
export function doughTemperature(
  water: AnyDegrees,
  temps: readonly (AnyDegrees | null)[],
  friction: AnyDegrees,
): AnyDegrees {
  const { total, multiplier } = others(temps);
  return anyDegrees((water + total + friction) / multiplier);
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
    refuse(`is blank; friction in a ${mixing} mixer grows with the minutes, so enter them, such as 8`, "minutes");
  return factors.map((one) => celsiusDegrees(perMinute ? one * (minutes ?? 0) : one));
}
