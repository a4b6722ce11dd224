import { Refusal } from "../../shared/base/refusal.ts";
import { showNumber } from "../../shared/base/show.ts";
import { type AnyDegrees, anyDegrees, fromCelsiusDegrees, minutes, toCelsius } from "../../shared/base/units.ts";
import { frictionGuide, type Mixing, waterTemperature } from "../../shared/water/temperature.ts";
import { type WaterYeast, waterNote } from "../../shared/water/water-note.ts";
import { type FieldFault, fieldFault } from "../kit/field-fault.ts";
import type { Draft } from "./draft.ts";
import type { ReadField } from "./field.ts";

type Values = Map<string, string | number | null | readonly (string | number | null)[]>;

/** The water's temperatures; all may stay blank until the day. Returns what can be said about the water already. */
export function readWater(draft: Draft, take: ReadField, values: Values, faults: FieldFault[]): string {
  const before = faults.length;
  const target = take("dough_target");
  const temps = [take("flour_temp"), take("room_temp"), take("preferment_temp")];
  const tap = take("tap_temp");
  const ownFriction = take("friction_own");
  const mixed = take("minutes");
  values.set("mixing", draft.choices.mixing || null);
  values.set("yeast", draft.choices.yeast);
  const guide = guideFor(draft, mixed, faults);
  const [flour, room, preferment] = temps;
  // Four temperatures instead of three: the factor grows with their number.
  const friction = ownFriction ?? (guide === null ? null : guide * (preferment === null ? 1 : 4 / 3));
  if (faults.length > before || target === null || flour === null || room === null || friction === null) return "";
  const unit = draft.units.temperature;
  const degrees = temps.map((temp): AnyDegrees | null => (temp == null ? null : anyDegrees(temp)));
  const water = waterTemperature(anyDegrees(target), degrees, anyDegrees(friction));
  if (tap === null) return `Water at ${showNumber(water, 1)} °${unit}.`;
  return waterNote(toCelsius(water, unit), toCelsius(tap, unit), draft.choices.yeast as WaterYeast, unit);
}

/** The usual factor of the way of mixing on three temperatures, in the panel's degrees. */
function guideFor(draft: Draft, mixed: number | null, faults: FieldFault[]): number | null {
  const { mixing } = draft.choices;
  if (mixing === "" || faults.some(({ at }) => at === "minutes")) return null;
  try {
    const usual = frictionGuide(mixing as Mixing, mixed === null ? null : minutes(mixed))[1];
    return usual === undefined ? null : fromCelsiusDegrees(usual, draft.units.temperature);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    const says = `Enter the minutes of mixing: friction in a ${mixing} mixer grows with them. Or choose the mixing later.`;
    faults.push(fieldFault("minutes", says, true));
    return null;
  }
}
