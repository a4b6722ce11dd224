// Which parts a formula sheet was built with, told by the words that only they bring.
import { labelText, layOut } from "../../shared/sheet/layout.ts";
import type { Options, SheetModel } from "../../shared/sheet/model.ts";

type Grid = readonly (readonly unknown[])[];

/** Some of a part's words stand there only beside another part. */
const ENOUGH = 0.4;

export function partsOn(grid: Grid, model: SheetModel, options: Options): string[] {
  const there = new Set(grid.flatMap((line) => line.map((cell) => (typeof cell === "string" ? cell.trim() : ""))));
  const all = wordsOf(model, { ...options, parts: model.parts });
  return model.parts.filter((part) => {
    const others = wordsOf(model, { ...options, parts: model.parts.filter((one) => one !== part) });
    const own = [...all].filter((word) => !others.has(word));
    return own.filter((word) => there.has(word)).length >= ENOUGH * own.length;
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
