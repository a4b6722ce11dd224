// Arguments whose amounts carry their unit in the cell, brought to the one unit that their function works in.

import { readNumber } from "../base/number.ts";
import { type Fault, fault } from "../base/refusal.ts";
import { quote, showNumber } from "../base/show.ts";
import {
  fromCelsius,
  fromCentimetres,
  gramsIn,
  type LengthUnit,
  type TemperatureUnit,
  toCelsius,
  toCentimetres,
  type WeightUnit,
} from "../base/units.ts";
import { type Carried, type Dimension, isCounted, MAX_AMOUNT_LENGTH, readCarried } from "./carried-units.ts";
import { describeCell } from "./cell.ts";
import { type Hint, isBlank, type Measure } from "./hint.ts";

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
  if (typeof raw !== "string" || raw.length > MAX_AMOUNT_LENGTH) return false;
  const reading = readNumber(raw, { threeDecimals: true });
  return "value" in reading && reading.value !== 0;
}

type Place = { readonly argument: Wanted; readonly row: number | undefined; readonly raw: unknown };
type Grid = readonly (readonly unknown[])[];

/**
 * The cells of arguments that share one unit, each amount that carries its own as a number. Where the function's unit is known
 * amounts are converted; where weights are only compared every one carries a unit, and grams count, or none does.
 */
export function withoutUnits(group: readonly { argument: Wanted; grid: Grid }[], faults: Fault[]): Grid[] {
  /** A count or a cup is a weight in grams, too, which only its ingredient tells. */
  const carriers: (Place & { carried: Carried | undefined })[] = [];
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
        if (typeof raw === "string" && "counted" in hint && hint.counted && isCounted(raw)) {
          carriers.push({ argument, row, raw, carried: undefined });
          return raw;
        }
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
      ...carriers.flatMap(({ argument, row, raw, carried }) =>
        carried === undefined ? [] : [fault(bothDegrees(raw, carried), argument.name, row)],
      ),
    );
  else if (bare.length >= carriers.length)
    faults.push(
      ...carriers.map(({ argument, row, raw, carried }) =>
        fault(
          `is ${quote(String(raw))} beside weights without a unit; enter ${carried === undefined ? "each" : `${showNumber(carried.value, 4)} if those are grams, or each`} one with its unit`,
          argument.name,
          row,
        ),
      ),
    );
  else
    faults.push(
      ...bare.map(({ argument, row, raw }) =>
        fault(
          `is ${describeCell(raw)} without a unit beside weights that carry theirs. Enter its unit too, such as "${describeCell(raw).replace(/"/g, "")} g" if it is grams`,
          argument.name,
          row,
        ),
      ),
    );
  return grids;
}

const bothDegrees = (raw: unknown, { value }: Carried): string => {
  const [c, f] = (["C", "F"] as const).map((unit) => showNumber(fromCelsius(toCelsius(value, "C"), unit), 2));
  return `is ${quote(String(raw))}; enter ${c} if the other temperatures are in °C, ${f} if they are in °F`;
};
