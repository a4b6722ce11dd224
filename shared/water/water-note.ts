import { atMost } from "../base/scaling.ts";
import { showNumber, shownApart } from "../base/show.ts";
import { type Celsius, fromCelsius, type TemperatureUnit } from "../base/units.ts";
import { iceShare } from "./ice.ts";

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
  const at = (temp: number) => `${showNumber(fromCelsius(temp as Celsius, unit), 1)} °${unit}`;
  const scald = atMost(SCALDS, water) ? " Water this hot scalds: pour and carry it with care." : "";
  if (!atMost(water, YEAST_LIMITS[yeast])) {
    const who =
      yeast === "none" ? "too hot for dough" : `too hot for ${yeast} yeast (${at(YEAST_LIMITS[yeast])} at most)`;
    const hot = shownApart(fromCelsius(water, unit), fromCelsius(YEAST_LIMITS[yeast] as Celsius, unit), 1);
    return `Water of ${hot} °${unit} is ${who}. Warm the flour or the room, or accept a cooler dough and a longer rise.${scald}`;
  }
  if (atMost(Math.abs(water - tap), AS_IT_IS)) return `Use tap water as it is (${at(tap)}).${scald}`;
  if (water > tap) return `Warm the water to ${at(water)}.${scald}`;
  const share = iceShare(tap, water, 0 as Celsius);
  if (!atMost(share, 1))
    return `Water of ${at(water)} is colder than ice alone can make it. Cool the flour, mix for less time, or accept a warmer dough.`;
  const ice = `Cool the tap's water to ${at(water)}: about ${showNumber(share * 100, 0)} % of it as ice`;
  return !atMost(share, MUCH_ICE)
    ? `${ice}. That is more than half: chill flour and water beforehand, use flake ice, and see that it melts before mixing ends.`
    : `${ice}, weighed as part of the water. Ice is food: drinking water, clean scoop.`;
}
