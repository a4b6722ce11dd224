// The question that writes a planned sheet: it is taken only if its grids are whole, its formulas ask nothing outside the file and cover
// nothing typed, and no text in it would become a formula.
import * as v from "valibot";
import { badFormula } from "../sheet/make-formulas.ts";
import type { FormulaRectangle } from "../sheet/rectangles.ts";
import { lotRows } from "./lots.ts";
import { id, integer, list, matching, messageReader, type Read, rowsOf, text } from "./message.ts";
import { gridOf, MAX_TITLE_LENGTH, type Writable } from "./plan-message.ts";

// A file holds ten million cells; a sheet of ours has a few thousand.
const MAX_ROWS = 20_000;
const MAX_COLUMNS = 140;
const MAX_CELLS = 500_000;
const MIN_PIXELS = 2;
const MAX_PIXELS = 2000;
const MAX_TABS = 300;
/** What a cell takes. */
const MAX_TEXT_LENGTH = 50_000;
const MAX_CHOICES = 500;
const MAX_DEFINES = 5;
const MAX_FORMATS = 100;
const FORMAT = /^(?:@|General|yyyy-mm-dd|hh:mm|(?:\[>=\d{2,4}\][#,]*0(?:\.0)?;){0,2}[#,]*0(?:\.[0#]{1,6})?%?)$/;

const words = () => text(MAX_TEXT_LENGTH);
const row = () => integer(0, MAX_ROWS - 1);
const column = () => integer(0, MAX_COLUMNS - 1);
const pixels = () => integer(MIN_PIXELS, MAX_PIXELS);
const format = () => matching(FORMAT);
const range = () => matching(/^[A-Z]{1,3}[1-9]\d{0,4}(?::[A-Z]{1,3}[1-9]\d{0,4})?$/);
const ranges = () => list(range(), MAX_CELLS);

const isWords = (raw: unknown): boolean => typeof raw === "string" && raw.length <= MAX_TEXT_LENGTH;
const isCell = (raw: unknown): boolean => isWords(raw) || (typeof raw === "number" && Number.isFinite(raw));
const cellRows = () => rowsOf<string | number>(isCell);
const textRows = () => rowsOf<string>(isWords);

/** In a cell that is not one of text. */
const turnsIntoFormula = (value: string | number, format: string | undefined): boolean =>
  typeof value === "string" && format !== "@" && /^\s*[=+\-@]/.test(value);

const palette = <S extends v.GenericSchema>(kind: S) =>
  v.pipe(
    v.object({ kinds: list(kind, MAX_CELLS), cells: rowsOf<number>(Number.isInteger) }),
    v.check(({ kinds, cells }) => cells.every((line) => line.every((at) => at >= 0 && at < kinds.length))),
    v.transform((packed) => gridOf<v.InferOutput<S>>(packed)),
  );

const appearance = () => {
  const colour = matching(/^#[0-9a-f]{6}$/);
  return v.object({
    ground: colour,
    ink: colour,
    weight: v.picklist(["bold", "normal"]),
    style: v.picklist(["italic", "normal"]),
    size: integer(6, 72),
    border: v.exactOptional(v.picklist(["box", "under", "rule", "over"])),
  });
};

const validation = () => {
  const help = words();
  const isStrict = v.exactOptional(v.literal(true));
  const finite = v.pipe(v.number(), v.finite());
  return v.nullable(
    v.variant("is", [
      v.object({ is: v.literal("nothing"), help }),
      v.object({ is: v.literal("list"), values: list(words(), MAX_CHOICES, 1), help, isStrict }),
      v.object({ is: v.literal("between"), least: finite, most: finite, help, isStrict }),
    ]),
  );
};

/** Words beside the page become no formula, and its formats are those that a page has. */
const aside = () =>
  v.object({
    words: list(
      v.object({
        row: row(),
        column: column(),
        cells: v.pipe(
          v.custom<(string | number)[]>((raw) => Array.isArray(raw) && raw.length > 0 && raw.every(isCell)),
          v.check((cells) => !cells.some((cell) => turnsIntoFormula(cell, undefined))),
        ),
      }),
      MAX_CELLS,
    ),
    formats: list(v.object({ format: format(), ranges: list(range(), MAX_CELLS, 1) }), MAX_FORMATS),
  });

const plan = () =>
  v.object({
    title: text(MAX_TITLE_LENGTH),
    tabs: list(v.object({ name: words(), id: id() }), MAX_TABS),
    row: v.optional(
      list(
        v.pipe(
          words(),
          v.check((formula) => !badFormula(formula)),
        ),
        MAX_COLUMNS,
      ),
      [],
    ),
    behind: v.optional(v.boolean(), false),
    renews: v.optional(
      v.nullable(
        v.object({
          cell: v.picklist(["A1", "A2"]),
          begins: v.pipe(
            words(),
            v.check((begins) => begins.trim() !== ""),
          ),
          ends: v.exactOptional(words()),
          known: v.exactOptional(id()),
        }),
      ),
      null,
    ),
    // Most sheets have none.
    lots: v.optional(v.lazy(() => lotRows(0))),
    rows: integer(1, MAX_ROWS),
    columns: integer(1, MAX_COLUMNS),
    page: integer(1, MAX_COLUMNS),
    aside: aside(),
    widths: list(pixels(), MAX_COLUMNS),
    heights: list(
      v.object({
        row: row(),
        rows: v.optional(integer(1, MAX_ROWS), 1),
        height: pixels(),
        grows: v.optional(v.boolean(), false),
      }),
      MAX_ROWS,
    ),
    values: cellRows(),
    formats: palette(format()),
    appearances: palette(appearance()),
    aligned: palette(v.picklist(["left", "right", "center"])),
    validations: palette(validation()),
    formulas: list(v.object({ row: row(), column: column(), cells: textRows() }), MAX_CELLS),
    wrapped: ranges(),
    hidden: list(row(), MAX_ROWS),
    frozen: row(),
    start: v.union([v.literal(""), range()]),
    borders: v.object({ box: ranges(), under: ranges(), rule: ranges(), over: ranges() }),
    unprotected: ranges(),
    defines: list(v.object({ name: matching(/^gramwright_[a-z]{1,20}$/), range: range() }), MAX_DEFINES),
  });
type Plan = v.InferOutput<ReturnType<typeof plan>>;

/** Every part of a plan lies within its sheet, and no formula is hidden or lost in it. */
function fitsTogether({ rows, columns, page, values, formats, ...plan }: Plan): boolean {
  const isGrid = (cells: readonly (readonly unknown[])[]) =>
    cells.length === rows && cells.every((line) => line.length === page);
  const { aside, widths, heights, hidden, frozen, formulas } = plan;
  return (
    page <= columns &&
    rows * columns <= MAX_CELLS &&
    [values, formats, plan.appearances, plan.aligned, plan.validations].every(isGrid) &&
    widths.length === columns &&
    [frozen, ...hidden, ...heights.map((height) => height.row)].every((row) => row < rows) &&
    heights.every((height) => height.rows <= rows) &&
    aside.words.every((run) => run.row < rows && run.column + run.cells.length <= columns) &&
    !values.some((line, down) => line.some((value, across) => turnsIntoFormula(value, formats[down]?.[across]))) &&
    formulas.every((rectangle) => isFree(rectangle, values, { page, columns }))
  );
}

/** A rectangle within the sheet, of formulas and blanks, over nothing that is typed. */
function isFree(
  { row: top, column: left, cells }: FormulaRectangle,
  values: readonly (readonly unknown[])[],
  { page, columns }: { readonly page: number; readonly columns: number },
): boolean {
  const width = cells[0]?.length ?? 0;
  const isBeside = (row: number, column: number) => row < values.length && column >= page && column < columns;
  const isOpen = (row: number, column: number) => isBeside(row, column) || values[row]?.[column] === "";
  return (
    width > 0 &&
    cells.every(
      (line, down) =>
        line.length === width &&
        line.every((text, across) => isOpen(top + down, left + across) && (text === "" || !badFormula(text))),
    )
  );
}

/** A plan as it arrived at the add-on, every part of it checked; refuses what is none. */
export const readMakeAsk = messageReader("The plan of the sheet", () =>
  v.pipe(
    plan(),
    v.check(fitsTogether),
    v.transform(({ title, tabs, row, behind, renews, lots = [], ...written }) => ({
      title,
      tabs,
      row,
      behind,
      renews,
      lots,
      plan: written as Writable,
    })),
  ),
);
export type MakeOrder = Read<typeof readMakeAsk>;
