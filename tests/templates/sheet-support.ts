import { a1, type Zone } from "../../shared/sheet/a1.ts";
import { layOut } from "../../shared/sheet/layout.ts";
import type { Options, SheetModel, Values } from "../../shared/sheet/model.ts";
import { longEnough } from "../../shared/sheet/table-lengths.ts";
import type { CellName } from "../../src/workbook/engine/cell-names.ts";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { builtFiles, openBook } from "../../src/workbook/scripted.ts";
import { panLoaf } from "../../templates/pan-loaf.ts";
import { METRIC_UNITS } from "../kit/units.ts";

export const files = builtFiles;

/** An empty local workbook with the built add-on in it. */
export const workbook = (): Promise<WorkbookHost> => openBook();

const METRIC: Options = { ...METRIC_UNITS, parts: ["tin", "water"] };

/** A built sheet, its cells by the names of its template. */
export type Built = {
  readonly book: WorkbookHost;
  readonly sheet: string;
  /** Address of a cell, or of row `row` of a table's column (1 is the first row after the edge). */
  readonly at: (name: string, row?: number) => string;
  readonly value: (name: string, row?: number) => unknown;
  readonly message: (name: string, row?: number) => string | undefined;
  readonly type: (name: string, text: string, row?: number) => void;
};

/** Where cells stood when the sheet was built: as the add-on built it, or by its model where it was told nothing of it. */
function namesOn(book: WorkbookHost, sheet: string, planned: ReadonlyMap<string, Zone>): ReadonlyMap<string, Zone> {
  const known = book.session.get<readonly CellName[]>("getCellNames", book.sheetId(sheet));
  if (known.length === 0) return planned;
  return new Map(
    known.map(({ name, zone: { top, left, bottom, right } }) => [
      name,
      { row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 },
    ]),
  );
}

/** Builds a sheet through the bench's own question and gives its cells by name. */
export async function buildSheet(
  values: Values,
  { options = METRIC, model = panLoaf, book }: { options?: Options; model?: SheetModel; book?: WorkbookHost } = {},
): Promise<Built> {
  const open = book ?? (await workbook());
  const { sheet } = open.answer({ ask: "build", template: model.name, options, values }) as { sheet: string };
  const names = namesOn(open, sheet, layOut(longEnough(model, values, {}), options).names);
  const at = (name: string, row?: number) => {
    const zone = names.get(name);
    if (zone === undefined) throw new Error(`no cell is called ${name}`);
    return a1({ row: zone.row + (row ?? 0), column: zone.column });
  };
  return {
    book: open,
    sheet,
    at,
    value: (name, row) => open.values(sheet, at(name, row))[0]?.[0],
    message: (name, row) => open.cell(sheet, at(name, row)).message,
    type: (name, text, row) => open.type(sheet, at(name, row), text),
  };
}

/** The school hand-out's formula: 100/67/2/1. */
export const HANDOUT: Values = {
  title: "Hand-out",
  by: "pieces",
  step_coarse: 5,
  step_fine: 1,
  mixer_limit: 40000,
  size_name: ["loaf"],
  size_pieces: [73],
  size_weight: [390],
  ingredient: ["Flour", "Water", "Salt", "Yeast"],
  kind: ["flour", "water", "salt", "yeast"],
  percent: [1, 0.67, 0.02, 0.01],
};
