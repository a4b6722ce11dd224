import { refuse } from "../base/refusal.ts";
import { atMost } from "../base/scaling.ts";
import { shownWeight } from "../base/show.ts";
import { type Celsius, celsius, type Ratio, ratio, type Weight, weight } from "../base/units.ts";

/** Latent heat of melting 333.55 kJ/kg (CRC Handbook, from memory); water 4.186 kJ/kg·K (the 15 °C calorie); ice 2.1 kJ/kg·K (FAO T0713E). */
export const MELTING = 333.55;
export const WATER_HEAT = 4.186;
export const ICE_HEAT = 2.1;

/**
 * Ice as a share of all the water, so that ice and tap water mixed land on the wanted temperature.
 * (tap − wanted) over what a gram of ice takes up on its way to the tap's temperature, in degrees of water.
 */
export function iceShare(tap: Celsius, wanted: Celsius, ice: Celsius): Ratio {
  return ratio(Math.max(0, tap - wanted) / (tap + MELTING / WATER_HEAT - (ICE_HEAT / WATER_HEAT) * ice));
}

/** Ice and tap water that together weigh `water`; ice at its melting point unless told. */
export function iceFor(
  water: Weight,
  tap: Celsius,
  wanted: Celsius,
  iceTemp: Celsius | null,
): { ice: Weight; tapWater: Weight } {
  const frozen = iceTemp ?? celsius(0);
  if (frozen > 0) refuse("is above freezing, and ice is not; leave it out or enter 0 or less", "ice_temp");
  if (tap < 0) refuse("is below freezing; water from a tap is not", "tap");
  const share = iceShare(tap, wanted, frozen);
  if (!atMost(share, 1)) {
    const w = shownWeight(water);
    refuse(
      `is too cold: ${w} of water at the tap's temperature would need more than ${w} of ice. Cool the flour, mix for less time, or accept a warmer dough`,
      "wanted",
    );
  }
  return { ice: weight(water * share), tapWater: weight(water * Math.max(0, 1 - share)) };
}
