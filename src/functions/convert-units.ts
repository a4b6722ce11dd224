// Amounts that carry their unit in the cell, in the unit that their function works in.
import { type Fault, refuseAll } from "../../shared/base/refusal.ts";
import { MAX_AMOUNT_LENGTH } from "../../shared/cells/carried-units.ts";
import { toGrid } from "../../shared/cells/decoder.ts";
import { isBlank, type Measure } from "../../shared/cells/hint.ts";
import { withoutUnits } from "../../shared/cells/one-unit.ts";
import type { SheetFunction } from "./define.ts";

/** Amounts that carry their unit, as numbers of the unit the function works in. */
export function convertUnits(sheetFunction: SheetFunction, raw: ArrayLike<unknown>): ArrayLike<unknown> {
  const entries = Object.entries(sheetFunction.args);
  const measured = entries.flatMap(([name, { is }], index) => {
    const hint = is.hint;
    if (!("measure" in hint) || hint.measure === undefined || raw[index] === undefined) return [];
    return [
      { name, hint, index, measure: isOfWater(raw[0], hint.measure) ? ("grams of water" as const) : hint.measure },
    ];
  });
  if (!measured.some(({ index }) => toGrid(raw[index]).some((row) => row.some(mayCarry)))) return raw;
  const at = entries.findIndex(([name, { is }]) => name === "unit" && is.hint.of === "word");
  const units = entries[at]?.[1].is;
  const unitCell = units?.decode(raw[at], "unit", []) as string | undefined;
  const words: readonly string[] = units?.hint.of === "word" ? units.hint.words : [];
  const fits = { weight: "kg", size: "mm", degrees: "F" } as Readonly<Record<string, string>>;
  const cells = Array.from({ length: raw.length }, (_, index) => raw[index]);
  const faults: Fault[] = [];
  // What is compared with an argument that is left out is compared with the rest.
  const isGiven = (name: string) =>
    entries.some(([known], index) => known === name && !toGrid(raw[index]).flat().every(isBlank));
  const groupOf = ({ measure, hint: { group = "" } }: (typeof measured)[number]): string =>
    `${measure} ${isGiven(group) ? group : ""}`;
  for (const key of new Set(measured.map(groupOf))) {
    const group = measured.filter((one) => groupOf(one) === key);
    const grids = withoutUnits(
      group.map(({ index, ...argument }) => ({
        argument: {
          ...argument,
          unit: words.includes(fits[argument.measure] ?? "") ? (unitCell ?? words[0]) : undefined,
        },
        grid: toGrid(raw[index]),
      })),
      faults,
    );
    group.forEach(({ index }, place) => {
      cells[index] = Array.isArray(raw[index]) ? grids[place] : grids[place]?.[0]?.[0];
    });
  }
  refuseAll(faults);
  return cells;
}

const mayCarry = (cell: unknown): boolean =>
  typeof cell === "string" && cell.length <= MAX_AMOUNT_LENGTH && /[\d¼-¾⅐-⅞].*[a-z"]/i.test(cell);
/** A tin filled with water has a weight for its size. */
const isOfWater = (shape: unknown, measure: Measure): boolean =>
  measure === "size" && typeof shape === "string" && /water|brim/i.test(shape);
