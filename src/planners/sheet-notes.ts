// The notes beside a formula's rows as BAKE_REVIEW says them, and how much each matters; worked out from the sheet's own cells.

import { isFault, Refusal } from "../../shared/base/refusal.ts";
import type { Weight } from "../../shared/base/units.ts";
import { type Reader, text } from "../../shared/cells/cell.ts";
import { isBlank } from "../../shared/cells/hint.ts";
import { someWeight } from "../../shared/cells/readers.ts";
import { percent } from "../../shared/formula/percents.ts";
import { kind } from "../../shared/larder/kinds.ts";
import { type Larder, NO_LARDER, readTable } from "../../shared/larder/larder.ts";
import type { StyleName } from "../../shared/review/bands.ts";
import { allSaid, leniently } from "../../shared/review/note.ts";
import type { RowNote } from "../../shared/review/remark.ts";
import type { FormulaRow, FormulaSheet } from "./formula-sheet.ts";

export type NotedCell = {
  readonly cell: string;
  readonly name: string;
  readonly says: string;
  readonly matters: number;
};

/** `fault` says why there are no notes; "" where there are. `table` are the cells of the workbook's own ingredient sheet. */
export function sheetNotes(
  sheet: FormulaSheet,
  style: StyleName,
  table: readonly (readonly unknown[])[] | undefined,
): { readonly notes: readonly NotedCell[]; readonly fault: string } {
  const columns = columnsOf(sheet);
  const rows = sheet.zone(columns.share)?.rows ?? 0;
  // What such a row holds is not known, so that nothing is missed that may be in it.
  const isOpen = ({ share, index }: FormulaRow) => share === null || sheet.text("type_says", index) !== "";
  const open = new Set(sheet.rows.filter(isOpen).map(({ index }) => index));
  const read = <T>(name: string, reader: Reader<T>, typed = name) =>
    Array.from({ length: rows }, (_, row): T | null => {
      const raw = sheet.cell(open.has(row) ? typed : name, row);
      const cell = isBlank(raw) || raw === null ? null : reader.read(raw);
      return isFault(cell) ? null : (cell as T | null);
    });
  const cells = {
    names: read(columns.name, leniently(text()), "ingredient"),
    kinds: read(columns.kind, kind(), "kind"),
    percents: read(columns.share, leniently(percent())).map((cell, row) => (open.has(row) ? NOT_READ : cell)),
    perMix: read("mix_exact", leniently(someWeight<Weight>())),
  };
  const steps = [sheet.number("coarse"), sheet.number("fine")].filter((step) => step !== null);
  try {
    const notes = allSaid(cells, style, larderOf(table), { steps, unit: sheet.options.weight });
    const known = notes.filter(({ row }) => !open.has(row));
    return {
      notes: known.map((one) => ({ ...placeOf(sheet, one, rows), says: one.says, matters: one.matters })),
      fault: "",
    };
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return { notes: [], fault: error.message };
  }
}

/** The sheet itself says what is wrong with it. */
const NOT_READ = { unread: "" } as const;

/** A levain, or fat that is rolled in, stands beside the table, and the notes see it in the table's last row. */
function columnsOf(sheet: FormulaSheet): { readonly name: string; readonly kind: string; readonly share: string } {
  return sheet.zone("noted_share") === undefined
    ? { name: "name_counted", kind: "kind_counted", share: "share" }
    : { name: "noted_name", kind: "noted_kind", share: "noted_share" };
}

function placeOf(
  sheet: FormulaSheet,
  { row, of }: RowNote,
  rows: number,
): { readonly cell: string; readonly name: string } {
  const last = row === rows - 1 ? (sheet.at("roll_in_share") ?? sheet.at("pre_share")) : undefined;
  const name = last === undefined ? "" : sheet.text("noted_name", row);
  const sheetRow = sheet.rows.find(({ index }) => index === row);
  return {
    cell: last ?? sheet.at("percent", row) ?? sheet.at("ingredient", row) ?? "",
    name: (of && capital(of)) || name || sheetRow?.name || sheetRow?.kind || "Formula",
  };
}

const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

function larderOf(table: readonly (readonly unknown[])[] | undefined): Larder {
  if (table === undefined) return NO_LARDER;
  return readTable(table);
}
