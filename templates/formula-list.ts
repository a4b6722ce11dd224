import { BUILT_CELL } from "../shared/sheet/built-by.ts";
import { type ColumnModel, type SheetModel, type Unit, WORKED_OUT } from "../shared/sheet/model.ts";
import { LIST_NAME } from "../shared/sheet/workbook-names.ts";

/** How a row of the list tells a cell or a column of its formula sheet: what stands there, or only where it is. */
export type ListColumn = "cell" | "texts" | "numbers" | "figures" | "place";

type Listed = { readonly of: string; readonly is: ListColumn; readonly head: string; readonly unit: Unit };

const seen = (of: string, head: string, unit: Unit): Listed => ({ of, is: "cell", head, unit });
const aside = (is: ListColumn, ...names: readonly string[]): Listed[] =>
  names.map((of) => ({
    of,
    is,
    head: of.replace(/_/g, " "),
    unit: is === "cell" || is === "place" ? "plain" : "text",
  }));

/** What sheets over all formula sheets use of each; `of` is its name in the templates. */
export const LISTED: readonly Listed[] = [
  seen("title", "Formula", "text"),
  seen("dough", "Makes", "weight"),
  seen("pieces", "Pieces", "count"),
  seen("mixes", "Mixes", "count"),
  seen("cost_ingredients", "Ingredients cost", "money"),
  ...aside("texts", "ingredient", "kind"),
  ...aside("figures", "grams"),
  ...aside("numbers", "size_cost"),
  ...aside("place", "cost_of", "size_ingredients", "size_margin", "step_start", "step_day"),
  ...aside("texts", "step"),
  ...aside("cell", "unpriced", "dough_in_all", "mixer_limit", "mixer_least", "roll_in_name", "roll_in", "pre_step"),
  ...aside("texts", "own_name"),
  ...aside("place", "as_price", "as_minutes"),
  ...aside("cell", "as_parts"),
  ...aside("cell", "yield_part", "tax", "margin_part", "cost_words"),
  ...aside("cell", "pre_weight", "pre_hydration", "pre_hours", "levain", "keep", "seed_hydration", "seed_share"),
  ...aside("cell", "law", "label_title", "list", "allergens", "piece", "shelf_days", "date_kind", "storage"),
  ...aside(
    "cell",
    "handling",
    "coarse",
    "fine",
    "ready_minutes",
    "oven_step",
    "oven_takes",
    "oven_reload",
    "tray_pieces",
  ),
  ...aside(
    "cell",
    "pre_kind",
    "dough_target",
    "room_temp",
    "flour_temp",
    "tap_temp",
    "friction_own",
    "preferment_temp",
    "held_share",
  ),
  ...aside("texts", "size_name"),
  ...aside("figures", "size_scaled", "size_price", "step_minutes", "step_temp", "whole_part"),
  ...aside("place", "pre_part"),
  // Of finished products alone.
  ...aside("figures", "part_each"),
  ...aside("texts", "count_name"),
  ...aside("cell", "as_counted"),
  ...aside("place", "gross"),
  ...aside("cell", BUILT_CELL),
];

/**
 * What a table of all products and sizes shows of each size. A row tells all sizes of a formula in one text, each in so many
 * letters, so that there may be as many as a formula has.
 */
export const SIZED: readonly string[] =
  "size_scaled cost_of pieces_now size_cost size_ingredients size_labour price_number price_wanted size_sold size_contribution".split(
    " ",
  );
const isWords = (of: string): boolean => of === "cost_of";
export const lettersOf = (of: string): number => (isWords(of) ? 60 : 24);
export const sizedColumn = (of: string): string => `list_sized_${of}`;

/** Numbers in billionths, so that no locale's decimals stand in a text. */
const BILLIONTH = "10^9";
const blanks = (letters: number): string => `"${" ".repeat(letters)}"`;

/** The text of a column whose first row, above all sizes, counts as one; or of a single cell. */
export function sizesText(of: string, at: string, isColumn: boolean): string {
  const letters = lettersOf(of);
  const one = isWords(of)
    ? `LEFT(IFERROR(${at}&"";"")&${blanks(letters)};${letters})`
    : `RIGHT(${blanks(letters)}&IF(ISNUMBER(${at});ROUND(${at}*${BILLIONTH};0);"");${letters})`;
  return isColumn ? `=ARRAYFORMULA(TEXTJOIN("";FALSE();${one}))` : `=${blanks(letters)}&${one}`;
}

/** A size out of such a text, the first one being 1: its words, or its number or "". */
export function sizeIn(of: string, text: string, size: string): string {
  const letters = lettersOf(of);
  const words = `TRIM(MID(${text};${letters}*(${size})+1;${letters}))`;
  return isWords(of) ? words : `IFERROR(VALUE(${words})/${BILLIONTH};"")`;
}

/** A row's own unit, and the formula that says which tab it is about. */
export const LIST_UNIT = "list_unit";
export const LIST_TAB = "list_tab";
export const listColumn = (of: string): string => `list_${of}`;

const column = (name: string, head: string, unit: Unit): ColumnModel => ({
  name,
  head,
  unit,
  role: "linked",
  formula: `=[${name}]`,
});
const [title, makes, ...others] = LISTED.map(({ of, head, unit }) => column(listColumn(of), head, unit));

/** The columns of a row, in their order. */
export const LIST_COLUMNS: readonly ColumnModel[] = [
  title as ColumnModel,
  makes as ColumnModel,
  { ...column(LIST_UNIT, "in", "text"), align: "center" },
  ...others.slice(0, 3),
  column(LIST_TAB, `${WORKED_OUT}: tab`, "plain"),
  ...others.slice(3),
  ...SIZED.map((of) => column(sizedColumn(of), `${of.replace(/_/g, " ")}, all sizes`, "text")),
];

/** As many as the sidebar reads. */
export const LIST_ROWS = 300;

/** One row for each formula sheet, so that sheets over all of them read one sheet instead of each. */
export const formulaList: SheetModel = {
  name: "formulas",
  title: "Formula list",
  says: "Every formula sheet of the workbook in one table, with what it makes now.",
  widths: [230, 92, 48, 84, 84, 110, 92, ...Array<number>(LIST_COLUMNS.length - 7).fill(70)],
  parts: [],
  defines: { name: LIST_NAME, from: "list_table", to: "list_table" },
  bands: [
    [
      {
        block: "name",
        left: 0,
        lines: [
          { cells: [{ at: 0, role: "title", name: "title", text: "Formula list" }] },
          {
            cells: [
              {
                at: 0,
                role: "remark",
                text: "One row per formula sheet, always current. Change the formula sheet, not this list.",
              },
            ],
          },
          {
            cells: [
              {
                at: 0,
                role: "remark",
                text: "Gramwright adds a row with each sheet it builds; the columns from G on are for it. Hide the sheet if it is in the way.",
              },
            ],
          },
        ],
      },
    ],
    [{ table: "list", left: 0, rows: LIST_ROWS, list: true, columns: LIST_COLUMNS }],
  ],
  sample: { title: "Formula list" },
  expects: { title: "Formula list" },
};
