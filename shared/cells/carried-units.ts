// Amounts that carry their unit in the cell: "20 oz", "1 lb 6 oz", "1,2 kg", "9 in", "10 cups", "1 h 30 min".

import { type Fault, fault } from "../base/refusal.ts";
import { quoted, shown } from "../base/show.ts";
import {
  fromCelsius,
  fromCentimetres,
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
import { folded, singularName } from "../base/words.ts";
import { found } from "./cell.ts";
import { type Hint, isBlank, type Measure } from "./hint.ts";
import { readNumber } from "./number.ts";

type Dimension = "weight" | "length" | "volume" | "time" | "temperature";
/** `size` in grams, centimetres, cubic centimetres or minutes; 1 for a temperature. */
type Unit = { readonly of: Dimension; readonly size: number; readonly temperature?: TemperatureUnit };

/** An amount and its unit as read from a cell, in grams, centimetres, cubic centimetres, minutes or °C. */
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
  add({ of: "time", size: 1 }, ["min", "minute"]);
  add({ of: "time", size: 60 }, ["h", "hr", "hour"]);
  units.set('"', { of: "length", size: toCentimetres(1, "in") });
  return units;
}

/** No amount with its unit is written longer. */
const MAX_LENGTH = 60;
const PART =
  /^ ?([-+−–]?[\d.,/⁄½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞ ]*[\d½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]) ?(fl\.? oz|fluid ounces?|cm[³3]|°? ?[a-z]+|")\.?(?:,? ?(?:and )?)/;

/** Reads an amount with its unit; undefined where the text is something else, or may mean two things. */
export function readCarried(raw: unknown): Carried | undefined {
  if (typeof raw !== "string" || raw.length > MAX_LENGTH) return undefined;
  let rest = folded(raw);
  let sum: Carried | undefined;
  let last = Number.POSITIVE_INFINITY;
  while (rest !== "") {
    const [whole = "", amount = "", name = ""] = PART.exec(rest) ?? [];
    const unit = unitNamed(name.replace(/ (?=[cf]$)/, "").replace("fl.", "fl"));
    if (whole === "" || unit === undefined || (sum !== undefined && (sum.of !== unit.of || unit.size >= last)))
      return undefined;
    const isSmall = unit.of === "weight" ? unit.size === 1 : unit.of === "volume" && unit.size === 1;
    const read = readNumber(amount, { threeDecimals: !isSmall });
    if ("problem" in read || (sum !== undefined && read.value < 0)) return undefined;
    const value = unit.temperature === undefined ? read.value * unit.size : toCelsius(read.value, unit.temperature);
    sum = { of: unit.of, value: (sum?.value ?? 0) + value };
    last = unit.size;
    rest = rest.slice(whole.length);
  }
  return sum;
}

/** The measure an argument is of, and the unit its function works in where that is known. */
export type Wanted = {
  readonly name: string;
  readonly hint: Hint;
  readonly measure: Measure;
  readonly unit: string | undefined;
};

const DIMENSIONS: Readonly<Record<Measure, readonly Dimension[]>> = {
  weight: ["weight"],
  grams: ["weight"],
  size: ["length"],
  "grams of water": ["weight"],
  capacity: ["volume"],
  minutes: ["time"],
  hours: ["time"],
  degrees: ["temperature"],
};

/** What a carried amount is in the unit that the function works in. */
function inUnit({ value }: Carried, measure: Measure, unit: string | undefined): number {
  switch (measure) {
    case "weight":
      return unit === undefined ? value : value / gramsIn(unit as WeightUnit);
    case "size":
      return fromCentimetres(toCentimetres(value, "cm"), (unit ?? "cm") as LengthUnit);
    case "hours":
      return value / 60;
    case "degrees":
      return fromCelsius(toCelsius(value, "C"), (unit ?? "C") as TemperatureUnit);
    default:
      return value;
  }
}

/** Whether a cell holds an amount other than 0 that carries no unit. A long text is looked at no further. */
function isBareAmount(raw: unknown): boolean {
  if (typeof raw === "number") return raw !== 0;
  if (typeof raw !== "string" || raw.length > MAX_LENGTH) return false;
  const read = readNumber(raw, { threeDecimals: true });
  return "value" in read && read.value !== 0;
}

type Place = { readonly argument: Wanted; readonly row: number | undefined; readonly raw: unknown };
type Grid = readonly (readonly unknown[])[];

/**
 * The cells of arguments that share one unit, each amount that carries its own as a number. Where the function's unit is known
 * amounts are converted; where weights are only compared every one carries a unit, and grams count, or none does.
 */
export function withoutUnits(group: readonly { argument: Wanted; grid: Grid }[], faults: Fault[]): Grid[] {
  const carriers: (Place & { carried: Carried })[] = [];
  const bare: Place[] = [];
  const grids = group.map(({ argument, grid }) => {
    const { hint, measure, unit } = argument;
    const at = "at" in hint ? hint.at : undefined;
    const many = grid.length > 1 || (grid[0]?.length ?? 0) > 1;
    return grid.map((cells, line) =>
      cells.map((raw, column) => {
        if (isBlank(raw) || (at !== undefined && column !== at)) return raw;
        const row = many ? (grid.length > 1 ? line : column) + 1 : undefined;
        const carried = typeof raw === "string" ? readCarried(raw) : undefined;
        if (carried === undefined || !DIMENSIONS[measure].includes(carried.of)) {
          if (isBareAmount(raw)) bare.push({ argument, row, raw });
          return raw;
        }
        carriers.push({ argument, row, raw, carried });
        return inUnit(carried, measure, unit);
      }),
    );
  });
  const isKnown = group.every(
    ({ argument: { measure, unit } }) => unit !== undefined || !/^(?:weight|degrees)$/.test(measure),
  );
  if (isKnown || carriers.length === 0) return grids;
  const isTemperature = group[0]?.argument.measure === "degrees";
  if (isTemperature)
    faults.push(
      ...carriers.map(({ argument, row, raw, carried }) => fault(bothDegrees(raw, carried), argument.name, row)),
    );
  else if (bare.length >= carriers.length)
    faults.push(
      ...carriers.map(({ argument, row, raw, carried }) =>
        fault(
          `is ${quoted(String(raw))} beside weights without a unit; enter ${shown(carried.value, 4)} if those are grams, or each one with its unit`,
          argument.name,
          row,
        ),
      ),
    );
  else
    faults.push(
      ...bare.map(({ argument, row, raw }) =>
        fault(
          `is ${found(raw)} without a unit beside weights that carry theirs; enter its unit too, such as "${found(raw).replace(/"/g, "")} g" if it is grams`,
          argument.name,
          row,
        ),
      ),
    );
  return grids;
}

const bothDegrees = (raw: unknown, { value }: Carried): string => {
  const [c, f] = (["C", "F"] as const).map((unit) => shown(fromCelsius(toCelsius(value, "C"), unit), 2));
  return `is ${quoted(String(raw))}; enter ${c} if the other temperatures are in °C, ${f} if they are in °F`;
};
