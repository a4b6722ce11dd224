// What a person typed into a field, as a number in the unit the sheet will have.

import { MINUTES_A_DAY, readDuration, readTime } from "../../shared/base/clock.ts";
import { readNumber, tidy } from "../../shared/base/number.ts";
import { type Fault, isFault } from "../../shared/base/refusal.ts";
import { quote, showNumber } from "../../shared/base/show.ts";
import {
  fromCelsius,
  fromCelsiusDegrees,
  fromCentimetres,
  fromGrams,
  LENGTH_UNITS,
  type LengthUnit,
  splitUnit,
  TEMPERATURE_UNITS,
  type TemperatureUnit,
  toCelsius,
  toCelsiusDegrees,
  toCentimetres,
  toGrams,
  WEIGHT_UNITS,
  type WeightUnit,
} from "../../shared/base/units.ts";
import { number, type Reader } from "../../shared/cells/cell.ts";
import type { Unit } from "../../shared/sheet/model.ts";
import { readPerArea } from "./per-area.ts";

export type Units = {
  readonly weight: "g" | "oz";
  readonly temperature: TemperatureUnit;
  readonly length: "cm" | "in";
};

export type Quantity =
  | "weight"
  | "grams"
  | "length"
  | "temperature"
  | "factor"
  | "share"
  | "percent"
  | "count"
  | "minutes"
  | "fill"
  /** Of the flour, and often more than all of it: a hydration. */
  | "proportion"
  | "per area"
  | "duration"
  | "time"
  | "number";

/** How a cell of a template is typed into a form. */
const OF_UNIT: Readonly<Partial<Record<Unit, Quantity>>> = {
  weight: "weight",
  share: "share",
  "short rate": "share",
  graded: "weight",
  percent: "proportion",
  temperature: "temperature",
  factor: "factor",
  length: "length",
  count: "count",
  minutes: "duration",
  fill: "fill",
  "per area": "per area",
  time: "time",
};
export const quantityOfUnit = (unit: Unit): Quantity => OF_UNIT[unit] ?? "number";

/** What a tin's size holds: grams for "water", a number of sides for a polygon, a length otherwise. */
export function sizeQuantity(shape: string, place: number): Quantity {
  if (shape === "water") return "grams";
  return shape === "polygon" && place === 0 ? "count" : "length";
}

type Plain = "weight" | "grams" | "length" | "temperature" | "factor" | "count" | "minutes" | "fill" | "number";
const READERS: Readonly<Record<Plain, Reader<number>>> = {
  weight: number("a weight such as 700", { above: 0, max: 1e9 }),
  grams: number("a weight in grams such as 1520", { above: 0, max: 1e9 }),
  length: number("a size such as 21", { above: 0, max: 1e5 }),
  temperature: number("a temperature such as 24", { min: -40, max: 250 }),
  factor: number("a friction factor such as 14", { min: -150, max: 150 }),
  count: number("a number such as 24", { above: 0, max: 1e6 }),
  minutes: number("minutes such as 8", { above: 0, max: 120 }),
  fill: number("a fill in g/cm³ such as 0.43", { min: 0.05, max: 2 }),
  number: number("a number such as 14", { min: 0, max: 1e6 }),
};
const THREE_DECIMALS = number("a weight such as 1.250 kg", { above: 0, max: 1e9 }, { threeDecimals: true });

/** Nobody bakes a part of a piece; a sheet would show the next whole one and reckon with the part. */
function wholeCount(text: string): number | Fault {
  const count = READERS.count.read(text);
  if (isFault(count) || Number.isInteger(count)) return count;
  return { says: `is ${showNumber(count, 3)}; enter a whole number such as ${Math.max(1, Math.round(count))}` };
}

/** A number, null for a blank field, or what is wrong as a predicate: `is "abc", which …`. */
export function readQuantity(text: string, quantity: Quantity, units: Units): number | null | Fault {
  if (text.trim() === "") return null;
  switch (quantity) {
    case "share":
      return readShare(text);
    case "percent":
      return number("a percentage such as 65", { min: 0, max: 1e6 }, { percent: true, threeDecimals: true }).read(text);
    case "weight": {
      const { bare, unit } = splitUnit(text, WEIGHT_UNITS);
      const reader = unit === "kg" || unit === "lb" ? THREE_DECIMALS : READERS.weight;
      return converted(reader.read(bare), unit, (value, from: WeightUnit) =>
        fromGrams(toGrams(value, from), units.weight),
      );
    }
    case "length": {
      const { bare, unit } = splitUnit(text, LENGTH_UNITS);
      return converted(READERS.length.read(bare), unit, (value, from: LengthUnit) =>
        fromCentimetres(toCentimetres(value, from), units.length),
      );
    }
    case "temperature":
    case "factor": {
      const { bare, unit } = splitUnit(text.replace(/degrees?|(?:^|\s)°(?=\s*$)/i, ""), TEMPERATURE_UNITS);
      const degrees = READERS[quantity].read(bare.replace(/°$/, ""));
      return converted(degrees, unit, (value, from: TemperatureUnit) =>
        quantity === "temperature"
          ? fromCelsius(toCelsius(value, from), units.temperature)
          : fromCelsiusDegrees(toCelsiusDegrees(value, from), units.temperature),
      );
    }
    case "grams":
      return READERS.grams.read(text.replace(/\s*(g|grams?|ml)$/i, ""));
    case "minutes":
      return READERS.minutes.read(text.replace(/\s*(min|mins|minutes?)\.?$/i, ""));
    case "fill":
      return READERS.fill.read(text.replace(/\s*g\s*\/\s*(cm³|cm3|ml)$/i, ""));
    case "count":
      return wholeCount(text.replace(/\s*(pcs|pieces?|tins?|trays?|mixes)\.?$/i, ""));
    case "proportion":
      return readProportion(text);
    case "per area":
      return readPerArea(text, units);
    case "duration":
      return readDuration(text);
    case "time": {
      const time = readTime(text);
      return isFault(time) ? time : time / MINUTES_A_DAY;
    }
    case "number":
      return READERS.number.read(text.replace(/\s*h(ours?)?\.?$/i, ""));
  }
}

function converted<U extends string>(
  reading: number | Fault,
  unit: U | undefined,
  convert: (value: number, from: U) => number,
): number | Fault {
  return isFault(reading) || unit === undefined ? reading : tidy(convert(reading, unit));
}

const MAX_SHARE = 0.5;

/** Under a heading with a % sign a bare 11 is 11 %; a bare 0.11 could be either, and is asked about. */
function readShare(text: string): number | Fault {
  const reading = readNumber(text, { percent: true, threeDecimals: true });
  if ("says" in reading) return { says: `is ${quote(text)}, which ${reading.says}; enter a share such as 11 %` };
  if (!reading.marked && reading.value > 0 && reading.value < 1) {
    return {
      says: `is ${showNumber(reading.value, 4)}, which could be ${showNumber(reading.value, 4)} % or ${showNumber(reading.value * 100, 2)} %; enter it with its % sign`,
    };
  }
  const share = reading.marked ? reading.value : tidy(reading.value / 100);
  if (share >= 0 && share <= MAX_SHARE) return tidy(share);
  return { says: `is ${showNumber(share * 100)} %; it lies between 0 % and ${MAX_SHARE * 100} %` };
}

/** Hydrations and the like: a bare number up to this could be a share of 1 or a percentage. */
export const UNCLEAR_UP_TO = 5;
const MAX_PROPORTION = 10;

function readProportion(text: string): number | Fault {
  const reading = readNumber(text, { percent: true, threeDecimals: true });
  if ("says" in reading) return { says: `is ${quote(text)}, which ${reading.says}; enter a percentage such as 65 %` };
  if (!reading.marked && reading.value > 0 && reading.value <= UNCLEAR_UP_TO) {
    return {
      says: `is ${showNumber(reading.value, 4)}, which could be ${showNumber(reading.value, 4)} % or ${showNumber(reading.value * 100, 2)} %; enter it with its % sign`,
    };
  }
  const share = reading.marked ? reading.value : reading.value / 100;
  if (share >= 0 && share <= MAX_PROPORTION) return tidy(share);
  return { says: `is ${showNumber(share * 100)} %; it lies between 0 % and ${MAX_PROPORTION * 100} %` };
}
