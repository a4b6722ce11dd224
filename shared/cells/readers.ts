// The readers most arguments share. Bounds are those of the trade's largest sheets, so that no answer overflows.

import { type CubicCentimetres, LENGTH_UNITS, type Ratio, TEMPERATURE_UNITS, WEIGHT_UNITS } from "../base/units.ts";
import { number, word } from "./cell.ts";

const MAX_NUMBER = 1e9;

/** Weights of one question share one unit, so that only their proportion matters. */
export const someWeight = <T extends number>(group = "") =>
  number<T>("a weight such as 350", { min: 0, max: MAX_NUMBER }, {}, { measure: "weight", group });
export const weightAboveZero = <T extends number>() =>
  number<T>("a weight such as 350", { above: 0, max: MAX_NUMBER }, {}, { measure: "weight" });
export const count = <T extends number>(what = "a number of pieces such as 48") =>
  number<T>(what, { min: 0, max: MAX_NUMBER });

/** A share: 65 % arrives as 0.65; a bare 65 is refused where it is out of bounds. */
export const share = (max: number, min = 0) =>
  number<Ratio>(`a share such as ${max >= 0.05 ? "5% (0.05)" : "1% (0.01)"}`, { min, max }, { percent: true });
export const shareAboveZero = (max: number) =>
  number<Ratio>("a share such as 85% (0.85)", { above: 0, max }, { percent: true });
/** Money, in whatever currency the sheet uses. */
export const priceCell = () => number<number>("a price such as 4.90", { min: 0, max: MAX_NUMBER });
/** Water over flour: 65 % is 0.65. */
export const hydration = () => number<Ratio>("a hydration such as 65% (0.65)", { min: 0, max: 5 }, { percent: true });

/** −40 to 250 covers what a bakery measures in either unit. */
export const degrees = <T extends number>() =>
  number<T>("a temperature such as 24", { min: -40, max: 250 }, {}, { measure: "degrees" });
/** A water temperature that was worked out: far below freezing it stands for ice, far above boiling for a mistake. */
export const workedOutDegrees = <T extends number>() =>
  number<T>("a temperature such as 24", { min: -200, max: 500 }, {}, { measure: "degrees" });
/** A friction factor is a difference, at times below 0. */
export const factor = <T extends number>() => number<T>("a friction factor such as 14", { min: -150, max: 150 });
export const minutesOf = <T extends number>() =>
  number<T>("minutes such as 8", { min: 0, max: 120 }, {}, { measure: "minutes" });

export const weightUnit = () => word(WEIGHT_UNITS);
export const lengthUnit = () => word(LENGTH_UNITS);
export const temperatureUnit = () => word(TEMPERATURE_UNITS);
/** What a tin holds. */
export const capacityCell = () =>
  number<CubicCentimetres>("a capacity in cm³ such as 1900", { above: 0, max: 1e9 }, {}, { measure: "capacity" });
