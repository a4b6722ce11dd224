// What the mix log and the bake log say of the formula sheet in front.

import type { CellValue, SeenName } from "../../shared/protocol/look.ts";
import type { SheetReview } from "../../shared/protocol/sheet-review.ts";
import { frictionSays, type Loss, lossSays } from "../../shared/review/log-notes.ts";
import { BAKELOG_NAME, MIXLOG_NAME } from "../../shared/sheet/workbook-names.ts";
import type { FormulaSheet } from "./formula-sheet.ts";

/** Columns of the bake log's range, counted from the product. */
const LOSSES = [
  { label: "Handling loss, logged", before: 1, after: 2 },
  { label: "Bake loss, logged", before: 3, after: 4 },
  { label: "Unsold, logged", before: 5, after: 6 },
] as const;

export function learnedFacts(sheet: FormulaSheet, names: readonly SeenName[]): SheetReview["facts"] {
  const rows = (name: string) => names.find((one) => one.name === name)?.values ?? [];
  return [...frictionFact(sheet, rows(MIXLOG_NAME)[0] ?? []), ...lossFacts(sheet, rows(BAKELOG_NAME))];
}

function frictionFact(
  sheet: FormulaSheet,
  [zero, perMinute, miss, mixes, unit]: readonly CellValue[],
): SheetReview["facts"] {
  const isRead = [zero, perMinute, miss, mixes].every((one) => typeof one === "number");
  // A log in the other degrees has another line.
  if (!isRead || sheet.zone("dough_target") === undefined || unit !== sheet.options.temperature) return [];
  const line = { zero, perMinute, miss, mixes, unit } as Parameters<typeof frictionSays>[0];
  const temperatures = sheet.number("preferment_temp") === null ? 3 : 4;
  return [{ label: "Friction, logged", says: frictionSays(line, sheet.number("minutes"), temperatures) }];
}

/** Those of the product that is called as the sheet. */
function lossFacts(sheet: FormulaSheet, rows: readonly (readonly CellValue[])[]): SheetReview["facts"] {
  const plain = (text: unknown) =>
    String(text ?? "")
      .trim()
      .toLowerCase();
  const mixes = rows.filter(([product]) => [plain(sheet.title), plain(sheet.name)].includes(plain(product)));
  return LOSSES.flatMap(({ label, before, after }) => {
    const losses = mixes.flatMap((row): Loss[] => {
      const [whole, left] = [row[before], row[after]];
      return typeof whole === "number" && typeof left === "number" ? [{ before: whole, after: left }] : [];
    });
    const says = lossSays(losses);
    return says === null ? [] : [{ label, says }];
  });
}
