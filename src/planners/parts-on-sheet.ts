// Which parts a formula sheet was built with, told by the words that only they bring, and what was typed in them.
import type { SheetReview } from "../../shared/protocol/sheet-review.ts";
import type { Zone } from "../../shared/sheet/a1.ts";
import { type Layout, labelText, layOut } from "../../shared/sheet/layout.ts";
import { locate } from "../../shared/sheet/locate.ts";
import type { Options, SheetModel } from "../../shared/sheet/model.ts";
import type { FormulaSheet } from "./formula-sheet.ts";

type Grid = readonly (readonly unknown[])[];

/** Some of a part's words stand there only beside another part. */
const ENOUGH = 0.4;

export function partsOn(grid: Grid, model: SheetModel, options: Options): string[] {
  const there = new Set(grid.flatMap((line) => line.map((cell) => (typeof cell === "string" ? cell.trim() : ""))));
  const all = wordsOf(model, { ...options, parts: model.parts });
  return model.parts.filter((part) => {
    const others = wordsOf(model, { ...options, parts: model.parts.filter((one) => one !== part) });
    const ownWords = [...all].filter((word) => !others.has(word));
    return ownWords.filter((word) => there.has(word)).length >= ENOUGH * ownWords.length;
  });
}

/** All words that stand on a sheet as they are. */
export function wordsOf(model: SheetModel, options: Options): ReadonlySet<string> {
  const { cells, tables } = layOut(model, options);
  const heads = tables.flatMap(({ table }) => table.columns.map(({ head }) => labelText(head, options)));
  const texts = cells.flatMap(({ cell }) =>
    cell.name === undefined && cell.formula === undefined ? [labelText(cell.text ?? "", options)] : [],
  );
  return new Set([...heads, ...texts].filter((text) => text !== ""));
}

/** Each part that the sheet may have, and how many typed cells go where it is put in or taken out. */
export function changeableParts(sheet: FormulaSheet, grid: Grid): SheetReview["parts"] {
  const { model, options } = sheet;
  const there = partsOn(grid, model, options);
  const typedIn = (parts: readonly string[]) => inputsIn(layOut(model, { ...options, parts }));
  const now = typedIn(there);
  // Columns of one heading differ by the parts that the sheet has.
  const zones = locate(grid, [{ ...model, parts: there }])?.zones;
  return model.parts.map((part) => {
    const isThere = there.includes(part);
    const next = typedIn(model.parts.filter((one) => (one === part ? !isThere : there.includes(one))));
    const going = [...now].filter(([name]) => !next.has(name));
    return {
      part,
      isThere,
      clears: going.reduce((sum, [name, usual]) => sum + typedCells(grid, zones?.get(name), usual), 0),
    };
  });
}

/** Cells and columns that are typed, with what stands there from the start. */
function inputsIn({ cells, tables }: Layout): ReadonlyMap<string, unknown> {
  const columns = tables.flatMap(({ table }) => table.columns.filter(({ role }) => role === "input"));
  const single = cells.flatMap(({ cell }) => (cell.role === "input" && cell.formula === undefined ? [cell] : []));
  return new Map([
    ...columns.map(({ name }): [string, unknown] => [name, undefined]),
    ...single.map(({ name = "", value }): [string, unknown] => [name, value]),
  ]);
}

function typedCells(grid: Grid, zone: Zone | undefined, usual: unknown): number {
  const cells = Array.from(
    { length: zone?.rows ?? 0 },
    (_, down) => grid[(zone?.row ?? 0) + down]?.[zone?.column ?? 0],
  );
  return cells.filter((cell) => cell !== "" && cell !== undefined && cell !== usual).length;
}
