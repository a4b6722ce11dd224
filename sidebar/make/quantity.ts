// What a person typed into a field, as a number in the unit the sheet will have.
import { isProblem, number, type Problem, type Reader } from "../../shared/cell.ts";
import { readNumber } from "../../shared/number.ts";
import { quoted, shown } from "../../shared/show.ts";
import {
  fromCelsius,
  fromCelsiusDegrees,
  fromCentimetres,
  fromGrams,
  LENGTH_UNITS,
  type LengthUnit,
  TEMPERATURE_UNITS,
  type TemperatureUnit,
  toCelsius,
  toCelsiusDegrees,
  toCentimetres,
  toGrams,
  WEIGHT_UNITS,
  type WeightUnit,
} from "../../shared/units.ts";

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
  | "fill";

const READERS: Readonly<Record<Exclude<Quantity, "share" | "percent">, Reader<number>>> = {
  weight: number("a weight such as 700", { above: 0, max: 1e9 }),
  grams: number("a weight in grams such as 1520", { above: 0, max: 1e9 }),
  length: number("a size such as 21", { above: 0, max: 1e5 }),
  temperature: number("a temperature such as 24", { min: -40, max: 250 }),
  factor: number("a friction factor such as 14", { min: -150, max: 150 }),
  count: number("a number such as 24", { above: 0, max: 1e6 }),
  minutes: number("minutes such as 8", { above: 0, max: 120 }),
  fill: number("a fill in g/cm³ such as 0.43", { min: 0.05, max: 2 }),
};
const MOST_SHARE = 0.5;
const THREE_DECIMALS = number("a weight such as 1.250 kg", { above: 0, max: 1e9 }, { threeDecimals: true });

/** A number, null for a blank field, or what is wrong as a predicate: `is "abc", which …`. */
export function readQuantity(text: string, quantity: Quantity, units: Units): number | null | Problem {
  if (text.trim() === "") return null;
  switch (quantity) {
    case "share":
      return readShare(text);
    case "percent":
      return number("a percentage such as 65", { min: 0, max: 1e6 }, { percent: true, threeDecimals: true }).read(text);
    case "weight": {
      const { bare, unit } = parted(text, WEIGHT_UNITS);
      const reader = unit === "kg" || unit === "lb" ? THREE_DECIMALS : READERS.weight;
      return converted(reader.read(bare), unit, (value, from: WeightUnit) =>
        fromGrams(toGrams(value, from), units.weight),
      );
    }
    case "length": {
      const { bare, unit } = parted(text, LENGTH_UNITS);
      return converted(READERS.length.read(bare), unit, (value, from: LengthUnit) =>
        fromCentimetres(toCentimetres(value, from), units.length),
      );
    }
    case "temperature":
    case "factor": {
      const { bare, unit } = parted(text.replace(/degrees?|(?:^|\s)°(?=\s*$)/i, ""), TEMPERATURE_UNITS);
      const read = READERS[quantity].read(bare.replace(/°$/, ""));
      return converted(read, unit, (value, from: TemperatureUnit) =>
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
      return READERS.count.read(text.replace(/\s*(pcs|pieces?|tins?)\.?$/i, ""));
  }
}

/** Under a heading with a % sign a bare 11 is 11 %; a bare 0.11 could be either, and is asked about. */
function readShare(text: string): number | Problem {
  const read = readNumber(text, { percent: true, threeDecimals: true });
  if ("problem" in read) return { problem: `is ${quoted(text)}, which ${read.problem}; write a share such as 11 %` };
  if (!read.marked && read.value > 0 && read.value < 1) {
    return {
      problem: `is ${shown(read.value, 4)}, which could be ${shown(read.value, 4)} % or ${shown(read.value * 100, 2)} %; write it with its % sign`,
    };
  }
  const share = read.marked ? read.value : tidy(read.value / 100);
  if (share >= 0 && share <= MOST_SHARE) return tidy(share);
  return { problem: `is ${shown(share * 100)} %; it lies between 0 % and ${MOST_SHARE * 100} %` };
}

/** 2.1 ÷ 100 is 0.021, whatever binary arithmetic adds. */
export const tidy = (value: number): number => Number(value.toPrecision(12));

/** "1.5 kg" is "1.5" and "kg"; a text without a unit stays whole. */
function parted<U extends string>(
  text: string,
  known: Readonly<Record<U, readonly string[]>>,
): { bare: string; unit: U | undefined } {
  const end = /^(.*?[\d½⅓⅔¼¾⅛⅜⅝⅞])\s*([°\p{L}"″]+)\.?$/u.exec(text.trim());
  const word = (end?.[2] ?? "").toLowerCase().replace("″", '"');
  const unit = (Object.keys(known) as U[]).find((one) =>
    [one.toLowerCase(), ...known[one], ...known[one].map((name) => `${name}s`)].includes(word),
  );
  return unit === undefined ? { bare: text, unit } : { bare: end?.[1] ?? "", unit };
}

function converted<U extends string>(
  read: number | Problem,
  unit: U | undefined,
  convert: (value: number, from: U) => number,
): number | Problem {
  return isProblem(read) || unit === undefined ? read : tidy(convert(read, unit));
}

const DIGITS: Readonly<Record<"weight" | "length" | "temperature" | "factor", number>> = {
  weight: 2,
  length: 2,
  temperature: 1,
  factor: 1,
};

/** A typed text in other units; null where it does not depend on them or cannot be read. */
export function inOtherUnits(text: string, quantity: Quantity, from: Units, to: Units): string | null {
  const read = readQuantity(text, quantity, from);
  if (read === null || isProblem(read)) return null;
  switch (quantity) {
    case "weight":
      return from.weight === to.weight ? null : shown(fromGrams(toGrams(read, from.weight), to.weight), DIGITS.weight);
    case "length":
      return from.length === to.length
        ? null
        : shown(fromCentimetres(toCentimetres(read, from.length), to.length), DIGITS.length);
    case "temperature":
      return from.temperature === to.temperature
        ? null
        : shown(fromCelsius(toCelsius(read, from.temperature), to.temperature), DIGITS.temperature);
    case "factor":
      return from.temperature === to.temperature
        ? null
        : shown(fromCelsiusDegrees(toCelsiusDegrees(read, from.temperature), to.temperature), DIGITS.factor);
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
      return "%";
    case "minutes":
      return "min";
    case "fill":
      return "g/cm³";
    default:
      return "";
  }
};
