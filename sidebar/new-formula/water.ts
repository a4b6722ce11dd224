// What the water's temperature will be, as far as the panel can tell it.

import { Refusal } from "../../shared/base/refusal.ts";
import { showNumber } from "../../shared/base/show.ts";
import { anyDegrees, fromCelsiusDegrees, minutes, toCelsius } from "../../shared/base/units.ts";
import type { Order } from "../../shared/protocol/order.ts";
import type { Values } from "../../shared/sheet/model.ts";
import { frictionGuide, type Mixing, waterTemperature } from "../../shared/water/temperature.ts";
import { type WaterYeast, waterNote } from "../../shared/water/water-note.ts";
import { type FieldFault, fieldFault } from "../kit/field-fault.ts";
import type { Draft } from "./draft.ts";

/** In the order in which they are read. */
export const WATER_FIELDS = [
  "dough_target",
  "flour_temp",
  "room_temp",
  "preferment_temp",
  "tap_temp",
  "friction_own",
  "minutes",
] as const;
type WaterField = (typeof WATER_FIELDS)[number];
type Read = { readonly order: Order; readonly faults: readonly FieldFault[] };
type Mixed = Values[string] | undefined;

/** What can be said about the water already; "" while its temperature cannot be told. */
export function waterSays({ choices, units }: Draft, { order: { values }, faults }: Read): string {
  if (faults.some(({ at }) => WATER_FIELDS.some((name) => name === at))) return "";
  const degrees = (name: WaterField) => {
    const value = values[name];
    return typeof value === "number" ? anyDegrees(value) : null;
  };
  const [flour, room, preferment] = [degrees("flour_temp"), degrees("room_temp"), degrees("preferment_temp")];
  const [target, tap] = [degrees("dough_target"), degrees("tap_temp")];
  const guide = usualFriction(choices.mixing, values.minutes);
  // Four temperatures instead of three: the factor grows with their number.
  const usual =
    guide === null ? null : fromCelsiusDegrees(guide, units.temperature) * (preferment === null ? 1 : 4 / 3);
  const friction = degrees("friction_own") ?? (usual === null ? null : anyDegrees(usual));
  if (target === null || flour === null || room === null || friction === null) return "";
  const unit = units.temperature;
  const water = waterTemperature(target, [flour, room, preferment], friction);
  if (tap === null) return `Water at ${showNumber(water, 1)} °${unit}.`;
  return waterNote(toCelsius(water, unit), toCelsius(tap, unit), choices.yeast as WaterYeast, unit);
}

/** The usual factor of the way of mixing on three temperatures. */
function usualFriction(mixing: string, mixed: Mixed) {
  if (mixing === "") return null;
  return frictionGuide(mixing as Mixing, typeof mixed === "number" ? minutes(mixed) : null)[1] ?? null;
}

/** Asks for the minutes, where friction grows with them. */
export function askMinutes(mixing: string, mixed: Mixed, faults: FieldFault[]): void {
  if (faults.some(({ at }) => at === "minutes")) return;
  try {
    usualFriction(mixing, mixed);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    const says = `Enter the minutes of mixing: friction in a ${mixing} mixer grows with them. Or choose the mixing later.`;
    faults.push(fieldFault("minutes", says, true));
  }
}
