// What a formula sheet itself says is wrong with what was typed, and where: what its check line is made of.

import { trimmedText } from "../../shared/base/words.ts";
import type { SheetReview } from "../../shared/protocol/sheet-review.ts";
import { a1 } from "../../shared/sheet/a1.ts";
import type { SheetModel } from "../../shared/sheet/model.ts";
import { MESSAGE } from "../../shared/typing/words.ts";
import type { FormulaSheet } from "./formula-sheet.ts";

type Grid = readonly (readonly unknown[])[];
type SheetRemark = SheetReview["remarks"][number];

/** Single messages about the sheet as a whole, and the cell to look at. */
const LOOK_AT: Readonly<Record<string, string>> = {
  sizes_say: "size_pieces",
  steps_say: "step",
  oven_says: "oven_takes",
  friction_says: "friction_own",
  fill_says: "tin_fill",
  pre_says: "pre_share",
};
/** Of the messages by row, which are told row by row here. */
const BY_ROW: ReadonlySet<string> = new Set(["first_says", "second_says", "third_says", "more_says"]);

/** `typed` are rows whose weight was typed, which is told apart. */
export function sheetFaults(sheet: FormulaSheet, grid: Grid, typed: ReadonlySet<number>): SheetRemark[] {
  return [...byRow(sheet, grid, typed), ...aboutAll(sheet)];
}

/** Beside every row stands what is wrong in it; beside that the row's number, or half a row more for a block at the right. */
function byRow(sheet: FormulaSheet, grid: Grid, typed: ReadonlySet<number>): SheetRemark[] {
  const column = Math.max(...grid.map((line) => line.findIndex((cell) => trimmedText(cell) === MESSAGE)));
  if (column < 0) return [];
  const names = new Map(sheet.rows.map(({ row, name }) => [row - 1, name]));
  const overs = new Map(sheet.rows.map(({ row, index }) => [row - 1, sheet.text("over_says", index)]));
  return grid.flatMap((line, row) =>
    [column, column + 2].flatMap((at): SheetRemark[] => {
      const name = names.get(row) ?? "";
      const says = withoutName(trimmedText(line[at]), name);
      if (says === "" || typeof line[at + 1] !== "number") return [];
      if (typed.has(row) && says === overs.get(row)) return [];
      const cell = /\b[A-Z]{1,2}[1-9]\d*\b/.exec(says)?.[0] ?? a1({ row, column: 0 });
      const rest = says.startsWith(cell) ? says.slice(cell.length).replace(/^:? */, "") : says;
      return [{ cell, name: name || trimmedText(line[0]) || `Row ${row + 1}`, says: capital(rest) }];
    }),
  );
}

/** The message of a row begins with its ingredient, which is told beside it, as its cell is. */
const withoutName = (says: string, name: string): string =>
  name !== "" && says.startsWith(`${name} `) ? says.slice(name.length + 1) : says;
const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

function aboutAll(sheet: FormulaSheet): SheetRemark[] {
  return partsOfCheck(sheet.model).flatMap((part): SheetRemark[] => {
    const says = sheet.text(part);
    if (BY_ROW.has(part) || says === "" || says.startsWith("#")) return [];
    const flour = sheet.rows.find(({ kind }) => /^flour/i.test(kind));
    const [name, at] = part === "flour_says" && flour !== undefined ? ["percent", flour.index] : [LOOK_AT[part], 0];
    const cell = name === undefined ? undefined : sheet.at(name, at);
    return [{ cell: cell ?? sheet.at("check") ?? "A3", name: "Sheet", says }];
  });
}

/** What the check line's formula joins. */
function partsOfCheck({ bands }: SheetModel): string[] {
  const cells = bands.flat().flatMap((item) => ("lines" in item ? item.lines.flatMap((line) => line.cells) : []));
  const formula = cells.find(({ name }) => name === "check")?.formula;
  return typeof formula === "string" ? [...formula.matchAll(/@(\w+)/g)].flatMap(([, name]) => name ?? []) : [];
}
