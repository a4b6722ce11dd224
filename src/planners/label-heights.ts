// Rows of label texts as high as the texts that are known when the sheet is built: not every program makes rows that high itself.
import { wrapText } from "../../shared/card/type-size.ts";
import type { CellValue } from "../../shared/protocol/look.ts";
import type { SheetPlan } from "../../shared/sheet/sheet-plan.ts";
import { labelText, NO_LIST } from "../../templates/label-text.ts";
import { textAt } from "./list-row.ts";

/** Pixels of a letter and of a line in the size of a sheet's text. */
const LETTER = 6.4;
const LINE = 18;
/** A height of its own is a call of the service. */
const MOST = 6;

/** What the formula list says, by the column that shows it. */
const SHOWN: readonly (readonly [column: string, of: string])[] = [
  ["product", "title"],
  ["label_name", "label_title"],
  ["label_list", "list"],
  ["label_allergens", "allergens"],
  ["storage_words", "storage"],
];

export function labelHeights({ names }: SheetPlan, products: readonly (readonly CellValue[])[]): SheetPlan["heights"] {
  const top = names.get("product")?.row;
  if (top === undefined) return [];
  const linesOf = (column: string, text: string) => {
    const width = labelText.widths[names.get(column)?.column ?? 0] ?? 0;
    return wrapText(text, Math.floor(width / LETTER)).length;
  };
  const lines = products.map((row) =>
    Math.max(
      1,
      ...SHOWN.map(([column, of]) => linesOf(column, textAt(row, of))),
      textAt(row, "list") === "" ? linesOf("label_remark", NO_LIST) : 1,
    ),
  );
  const runs: { row: number; rows: number; lines: number }[] = [];
  lines.forEach((many, at) => {
    const last = runs[runs.length - 1];
    if (last?.lines === many) last.rows += 1;
    else runs.push({ row: top + 1 + at, rows: 1, lines: many });
  });
  const high = runs.filter((run) => run.lines > 1);
  const few = high.length <= MOST ? high : [{ row: top + 1, rows: lines.length, lines: Math.max(...lines) }];
  return few.map(({ row, rows, lines: many }) => ({ row, rows, height: many * LINE + 4, grows: true }));
}
