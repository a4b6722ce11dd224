// Amounts that carry their unit in the cell: "20 oz", "1 lb 6 oz", "1,2 kg", "9 in", "10 cups", "1 h 30 min".

import { readNumber } from "../base/number.ts";
import {
  gramsIn,
  LENGTH_UNITS,
  type LengthUnit,
  TEMPERATURE_UNITS,
  type TemperatureUnit,
  toCelsius,
  toCentimetres,
  WEIGHT_UNITS,
  type WeightUnit,
} from "../base/units.ts";
import { volumeOf } from "../base/volumes.ts";
import { foldText, singularName } from "../base/words.ts";

export type Dimension = "weight" | "length" | "area" | "volume" | "time" | "temperature";
/** `size` in grams, centimetres, square or cubic centimetres, or minutes; 1 for a temperature. */
type Unit = { readonly of: Dimension; readonly size: number; readonly temperature?: TemperatureUnit };

/** An amount and its unit as read from a cell, in grams, centimetres, square or cubic centimetres, minutes or °C. */
export type Carried = { readonly of: Dimension; readonly value: number };

let known: Map<string, Unit> | undefined;

function unitNamed(name: string): Unit | undefined {
  known ??= unitsByName();
  return known.get(name) ?? known.get(singularName(name));
}

function unitsByName(): Map<string, Unit> {
  const units = new Map<string, Unit>();
  const add = (unit: Unit, names: readonly string[]) => {
    for (const name of names) units.set(singularName(name), unit);
  };
  for (const [unit, also] of Object.entries(WEIGHT_UNITS))
    add({ of: "weight", size: gramsIn(unit as WeightUnit) }, [unit, ...also]);
  for (const [unit, also] of Object.entries(LENGTH_UNITS))
    add({ of: "length", size: toCentimetres(1, unit as LengthUnit) }, [unit, ...also, ...also.map((one) => `${one}s`)]);
  for (const [unit, also] of Object.entries(TEMPERATURE_UNITS))
    add({ of: "temperature", size: 1, temperature: unit as TemperatureUnit }, [unit, ...also]);
  // Cups and fluid ounces without a country are those of the US, as in BAKE_GRAMS.
  const litres = { ml: ["millilitre", "milliliter", "cc", "cm³", "cm3"], cl: [], dl: [], l: ["litre", "liter"] };
  for (const [unit, also] of Object.entries({ ...litres, cup: [], "fl oz": ["fluid ounce"] }))
    add({ of: "volume", size: volumeOf(unit as "ml" | "cup", "US") ?? 0 }, [unit, ...also]);
  const inch = toCentimetres(1, "in");
  add({ of: "area", size: 1 }, ["cm²", "cm2", "sq cm", "square centimetre", "square centimeter"]);
  add({ of: "area", size: inch * inch }, [
    "in²",
    "in2",
    "sq in",
    "sq inch",
    "sq inches",
    "square inch",
    "square inches",
  ]);
  add({ of: "time", size: 1 }, ["min", "minute"]);
  add({ of: "time", size: 60 }, ["h", "hr", "hour"]);
  units.set('"', { of: "length", size: toCentimetres(1, "in") });
  return units;
}

/** No amount with its unit is written longer. */
export const MAX_AMOUNT_LENGTH = 60;
const PART =
  /^ ?([-+−–]?[\d.,/⁄½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞ ]*[\d½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]) ?(fl\.? oz|fluid ounces?|cm[³3²2]|in[²2]|sq(?:uare|\.)? [a-z]+|°? ?[a-z]+|")\.?(?:,? ?(?:and )?)/;

/** Reads an amount with its unit; undefined where the text is something else, or may mean two things. */
export function readCarried(raw: unknown): Carried | undefined {
  if (typeof raw !== "string" || raw.length > MAX_AMOUNT_LENGTH) return undefined;
  let rest = foldText(raw);
  let sum: Carried | undefined;
  let last = Number.POSITIVE_INFINITY;
  while (rest !== "") {
    const [whole = "", amount = "", name = ""] = PART.exec(rest) ?? [];
    const unit = unitNamed(name.replace(/ (?=[cf]$)/, "").replace(/^(fl|sq)\./, "$1"));
    if (whole === "" || unit === undefined || (sum !== undefined && (sum.of !== unit.of || unit.size >= last)))
      return undefined;
    const isSmall = unit.of === "weight" ? unit.size === 1 : unit.of === "volume" && unit.size === 1;
    const reading = readNumber(amount, { threeDecimals: !isSmall });
    if ("says" in reading || (sum !== undefined && reading.value < 0)) return undefined;
    const value =
      unit.temperature === undefined ? reading.value * unit.size : toCelsius(reading.value, unit.temperature);
    sum = { of: unit.of, value: (sum?.value ?? 0) + value };
    last = unit.size;
    rest = rest.slice(whole.length);
  }
  return sum;
}

/** Whether a text is an amount of something that is measured or counted, "3 large" or "2 cups", and no plain weight. */
export const isCounted = (raw: string): boolean =>
  raw.length <= MAX_AMOUNT_LENGTH &&
  /^[\s]*(?:[\d½⅓⅔¼¾⅛⅜⅝⅞]|half |a )[^%]*\p{L}{1,}/u.test(raw) &&
  "says" in readNumber(raw) &&
  readCarried(raw)?.of !== "weight";
