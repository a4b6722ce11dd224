// What was typed, in other units; and the sign that stands beside a field.

import { MINUTES_A_DAY, shownTime } from "../../shared/base/clock.ts";
import { isFault } from "../../shared/base/refusal.ts";
import { showNumber } from "../../shared/base/show.ts";
import {
  fromCelsius,
  fromCelsiusDegrees,
  fromCentimetres,
  fromGrams,
  minutes,
  toCelsius,
  toCelsiusDegrees,
  toCentimetres,
  toGrams,
} from "../../shared/base/units.ts";
import { perAreaIn } from "./per-area.ts";
import { type Quantity, readQuantity, UNCLEAR_UP_TO, type Units } from "./quantity.ts";

const DIGITS: Readonly<Record<"weight" | "length" | "temperature" | "factor", number>> = {
  weight: 2,
  length: 2,
  temperature: 1,
  factor: 1,
};

/** A typed text in other units; null where it does not depend on them or cannot be read. */
export function inOtherUnits(text: string, quantity: Quantity, from: Units, to: Units): string | null {
  const quantityOrFault = readQuantity(text, quantity, from);
  if (quantityOrFault === null || isFault(quantityOrFault)) return null;
  switch (quantity) {
    case "weight":
      return from.weight === to.weight
        ? null
        : showNumber(fromGrams(toGrams(quantityOrFault, from.weight), to.weight), DIGITS.weight);
    case "length":
      return from.length === to.length
        ? null
        : showNumber(fromCentimetres(toCentimetres(quantityOrFault, from.length), to.length), DIGITS.length);
    case "temperature":
      return from.temperature === to.temperature
        ? null
        : showNumber(fromCelsius(toCelsius(quantityOrFault, from.temperature), to.temperature), DIGITS.temperature);
    case "factor":
      return from.temperature === to.temperature
        ? null
        : showNumber(
            fromCelsiusDegrees(toCelsiusDegrees(quantityOrFault, from.temperature), to.temperature),
            DIGITS.factor,
          );
    case "per area":
      return from.weight === to.weight && from.length === to.length
        ? null
        : showNumber(perAreaIn(quantityOrFault, from, to), 4);
    default:
      return null;
  }
}

export const unitSign = (quantity: Quantity, units: Units): string => {
  switch (quantity) {
    case "weight":
      return units.weight;
    case "grams":
      return "g";
    case "length":
      return units.length;
    case "temperature":
      return `°${units.temperature}`;
    case "share":
    case "percent":
    case "proportion":
      return "%";
    case "minutes":
    case "duration":
      return "min";
    case "per area":
      return `${units.weight}/${units.length}²`;
    case "fill":
      return "g/cm³";
    default:
      return "";
  }
};

/** A number from the sheet's own sample, as somebody types it under this field's sign. */
export function asTyped(value: number, quantity: Quantity): string {
  switch (quantity) {
    case "share":
      return `${showNumber(value * 100, 4)}${value > 0 && value < 0.01 ? " %" : ""}`;
    case "proportion":
      return `${showNumber(value * 100, 4)}${value > 0 && value * 100 <= UNCLEAR_UP_TO ? " %" : ""}`;
    case "percent":
      return showNumber(value * 100, 4);
    case "time":
      return shownTime(minutes(value * MINUTES_A_DAY));
    default:
      return showNumber(value, 6);
  }
}
