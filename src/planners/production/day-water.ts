// Water and ice for a day's temperatures, as the weigh-up's own formulas have them.
import { refuse } from "../../../shared/base/refusal.ts";
import { MELTING, WATER_HEAT } from "../../../shared/water/ice.ts";
import type { Overview } from "../overview.ts";

/** Whether a sheet has a dough temperature to work towards. */
export const hasWater = (sheet: Overview): boolean =>
  sheet.zone("friction_own") !== undefined && sheet.number("dough_target") !== null;

/** No dough is wanted at 45 °C, and none at 45 °F. */
const BETWEEN = 45;

const isHot = (sheet: Overview): boolean => (sheet.number("dough_target") ?? 0) > BETWEEN;

/** What the first of the sheets counts temperatures in, told by what its dough is wanted at; in ounces without one it is °F. */
export function temperatureIn(sheets: readonly Overview[]): "C" | "F" {
  const first = sheets.find(hasWater);
  if (first === undefined) return sheets.some(({ unit }) => unit === "oz") ? "F" : "C";
  return isHot(first) ? "F" : "C";
}

/** Temperatures are entered once for all doughs of a shift. */
export function mustCountAlike(sheets: readonly Overview[]): void {
  const [first, ...others] = sheets.filter(hasWater);
  const other = others.find((sheet) => first !== undefined && isHot(sheet) !== isHot(first));
  if (first !== undefined && other !== undefined)
    refuse(`One of “${first.name}” and “${other.name}” counts in °C, the other in °F. Build both in one unit.`);
}

export type DayTemperatures = {
  readonly room: number | null;
  readonly flour: number | null;
  readonly tap: number | null;
};

/** Temperatures as they were entered for the shift, or else of the first formula that has them. */
export function dayTemperatures(
  sheets: readonly Overview[],
  [room = null, flour = null, tap = null]: readonly (number | null)[] = [],
): DayTemperatures {
  const first = (name: string) => sheets.filter(hasWater).flatMap((sheet) => sheet.number(name) ?? [])[0] ?? null;
  return {
    room: room ?? first("room_temp"),
    flour: flour ?? first("flour_temp"),
    tap: tap ?? first("tap_temp"),
  };
}

/** The temperature of the water, and which part of it is ice; null where something is not known. */
export function waterFor(
  sheet: Overview,
  { room, flour, tap }: DayTemperatures,
  unit: "C" | "F",
): { readonly at: number; readonly ice: number } | null {
  const [target, friction] = [sheet.number("dough_target"), sheet.number("friction_own")];
  if (!hasWater(sheet) || target === null || friction === null || room === null || flour === null) return null;
  const warmth = sheet.number("preferment_temp");
  const at = (warmth === null ? 3 : 4) * target - room - flour - (warmth ?? 0) - friction;
  const [zero, degrees] = unit === "F" ? [32, (MELTING / WATER_HEAT) * 1.8] : [0, MELTING / WATER_HEAT];
  const part = tap === null || tap < zero || at >= tap ? 0 : (tap - at) / (tap - zero + degrees);
  return { at, ice: part > 1 ? 0 : part };
}
