import { type Fault, fault, refuse, refuseAll } from "../base/refusal.ts";
import { atMost } from "../base/scaling.ts";
import { rowsNamed } from "../base/show.ts";
import { type Celsius, type CelsiusDegrees, celsius, type Weight } from "../base/units.ts";
import type { KindWord } from "../larder/kind-words.ts";
import type { Kind } from "../larder/kinds.ts";
import { ICE_HEAT, MELTING } from "./ice.ts";

/**
 * Heat capacities, kJ/kg·K. Flour: Çengel & Boles, Thermodynamics, problem 5-157. Water: tables print 4.182 at 20 °C. Dairy:
 * milk, 3.942 by isoperibol calorimetry. The others: common practice, no source. Ice counts as the water it becomes.
 */
const HEAT_CAPACITY: Readonly<Record<KindWord, number>> = {
  flour: 1.76,
  water: 4.18,
  dairy: 3.94,
  egg: 3.3,
  fat: 2.1,
  sugar: 1.25,
  salt: 0.88,
  yeast: 3.2,
  grain: 1.6,
  fruit: 3.0,
  ice: 4.18,
  other: 2.0,
};
/** What dry flour gives off as it takes up water, kJ/kg: 6.5 BTU per lb (Baker's Dictionary, bakingbusiness.com). */
const HYDRATION_HEAT = 15.1;
/** A row below this part of the dough may be left at the flour's temperature: common practice, no source. */
const SMALL_PART = 0.06;
const BOILING = 100;
/** Colder than any ice could stand for: all the water as ice from a deep freezer is about −100 °C. */
const COLDEST = -200;

function heatCapacity({ word, flour, water }: Kind): number {
  if (word === "preferment") return flour * HEAT_CAPACITY.flour + water * HEAT_CAPACITY.water;
  return HEAT_CAPACITY[word];
}

/** A row that weighs something; `row` counts from 1. */
type Part = { readonly row: number; readonly weight: number; readonly temp: Celsius | null; readonly kind: Kind };

/**
 * The temperature that the one blank row needs, so that everything mixed, and warmed by `rise`, has the target temperature:
 * Σ m·c·(target − rise) = Σ m·c·t, ice taking up its heat of melting. Without a rise the heat of hydration of the flour rows
 * counts alone.
 */
export function balancedTemperature(
  target: Celsius,
  weights: readonly (Weight | null)[],
  temps: readonly (Celsius | null)[],
  kinds: readonly (Kind | null)[],
  rise: CelsiusDegrees | null,
): Celsius {
  const parts = weights.flatMap((weight, index): Part[] => {
    const kind = kinds[index] ?? null;
    if (weight === null || weight <= 0 || kind === null) return [];
    return [{ row: index + 1, weight, temp: temps[index] ?? null, kind }];
  });
  const solved = rowToSolve(parts);
  const capacity = total(parts, (part) => part.weight * heatCapacity(part.kind));
  const warming = rise ?? (HYDRATION_HEAT * total(parts, flourOf)) / capacity;
  const flourTemp = meanOfFlour(parts);
  const heat = total(parts, (part) => (part === solved ? 0 : heatOf(part, flourTemp)));
  const wanted = (capacity * (target - warming) - heat) / (solved.weight * heatCapacity(solved.kind));
  refuseBeyond(wanted, solved);
  return celsius(wanted);
}

const total = (parts: readonly Part[], of: (part: Part) => number): number =>
  parts.reduce((sum, part) => sum + of(part), 0);
const flourOf = ({ kind, weight }: Part): number => (kind.word === "flour" ? weight : 0);

/** Heat that a row brings, counted from water at 0 °C. */
function heatOf({ row, weight, temp, kind }: Part, flourTemp: number | null): number {
  if (kind.word === "ice") return weight * (ICE_HEAT * (temp ?? 0) - MELTING);
  const value =
    temp ?? flourTemp ?? refuse("is blank, and no flour row has a temperature to take for it; enter it", "temps", row);
  return weight * heatCapacity(kind) * value;
}

function meanOfFlour(parts: readonly Part[]): number | null {
  const flours = parts.filter(({ kind, temp }) => kind.word === "flour" && temp !== null);
  return flours.length === 0
    ? null
    : total(flours, ({ weight, temp }) => weight * (temp ?? 0)) / total(flours, flourOf);
}

/** The blank water row, else the only blank row of some size, else the only blank one. A blank ice row is at 0 °C. */
function rowToSolve(parts: readonly Part[]): Part {
  if (parts.length === 0) refuse("hold no weight above 0", "weights");
  refuseAll(
    parts.flatMap(({ row, temp, kind }): Fault[] =>
      kind.word === "ice" && temp !== null && temp > 0
        ? [fault("is above freezing, and its type is ice; enter 0 °C or less, or the type water", "temps", row)]
        : [],
    ),
  );
  const blank = parts.filter(({ temp, kind }) => temp === null && kind.word !== "ice");
  const limit = SMALL_PART * total(parts, ({ weight }) => weight);
  const large = blank.filter(({ weight }) => atMost(limit, weight));
  const water = blank.filter(({ kind }) => kind.word === "water");
  if (blank.length === 0) {
    refuse(
      "leave no row to be worked out; clear the temperature of one that has a weight, usually the water's",
      "temps",
    );
  }
  if (water.length > 1) refuseSeveral(water);
  const [only] = water;
  const others = large.filter((part) => part !== only);
  if (only && others.length > 0) refuseSeveral([only, ...others]);
  const solved = only ?? (blank.length === 1 ? blank[0] : large.length === 1 ? large[0] : undefined);
  return solved ?? refuseSeveral(large.length > 1 ? large : blank);
}

function refuseSeveral(parts: readonly Part[]): never {
  const rows = parts.map(({ row }) => row).sort((a, b) => a - b);
  refuse(`${rowsNamed(rows)} are blank; leave blank only the one to be worked out and enter the others`, "temps");
}

function refuseBeyond(wanted: number, { row, kind }: Part): void {
  const what = `row ${row} (${kind.word})`;
  if (!atMost(wanted, BOILING)) {
    refuse(
      `cannot be reached: ${what} would have to be hotter than boiling water; warm the other rows, or accept a cooler dough`,
      "dough_target",
    );
  }
  if (wanted < COLDEST) {
    refuse(
      `cannot be reached: ${what} would have to be colder than any ice makes it; cool the other rows, or accept a warmer dough`,
      "dough_target",
    );
  }
}
