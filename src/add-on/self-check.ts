import { refuse } from "../../shared/base/refusal.ts";
import type { CheckAnswer, CheckStep } from "../../shared/protocol/check.ts";
import { type CheckCells, CHECK_MARK as MARK } from "../../shared/protocol/self-check.ts";
import { serviceLines } from "./service-probes.ts";
import { undo } from "./undo.ts";
import { activeWorkbook } from "./workbook.ts";
import { newSheet } from "./write.ts";

const NAME = "Gramwright check";

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** One step of the check. */
export function check(step: CheckStep): CheckAnswer {
  const workbook = activeWorkbook();
  const { sheet: name } = step;
  const sheet = step.step === "write" && name === "" ? null : ownSheet(name);
  const answer = { sheet: name, locale: workbook.getSpreadsheetLocale(), values: [], formulas: [] };
  switch (step.step) {
    case "write": {
      const before = workbook.getActiveSheet();
      const target = sheet === null ? newSheet(workbook, NAME) : { sheet, name, unsure: [] };
      try {
        if (target.unsure.length > 0) throw new Error("the service did not say whether it added one");
        write(target.sheet, step);
      } catch (error) {
        undo(workbook, { ...target, names: [], front: before }, error);
      }
      return { ...answer, sheet: target.name };
    }
    case "read": {
      const all = (sheet as Sheet).getDataRange();
      return { ...answer, values: all.getValues(), formulas: all.getFormulas() };
    }
    case "insert":
      (sheet as Sheet).insertRowsBefore(step.row, 1);
      return answer;
    case "type":
      (sheet as Sheet).getRange(step.row + 1, step.column + 1).setValue(step.value);
      SpreadsheetApp.flush();
      return answer;
    case "service":
      return { ...answer, values: serviceLines(sheet as Sheet).map((line) => [line]) };
    case "remove":
      workbook.deleteSheet(sheet as Sheet);
      return answer;
  }
}

function ownSheet(name: string): Sheet {
  const checkTab = name.startsWith(NAME) ? activeWorkbook().getSheetByName(name) : null;
  if (checkTab === null || checkTab.getRange(1, 1).getValue() !== MARK) {
    return refuse("The sheet of the check is gone; start the check again.");
  }
  return checkTab;
}

function write(sheet: Sheet, { cells, formats, formulas }: CheckCells): void {
  sheet.getRange(1, 1, sheet.getMaxRows(), sheet.getMaxColumns()).clear();
  // What the cells held before must be gone before new answers need their room.
  SpreadsheetApp.flush();
  sheet.getRange(1, 1).setNumberFormat("@").setValue(MARK);
  // Text first becomes a cell of text, so that nothing of it is read as a formula, a number or a date.
  sheet
    .getRange(2, 1, cells.length, cells[0]?.length ?? 1)
    .setNumberFormats(cells.map((row, down) => row.map((cell, across) => formatOf(cell, formats[down]?.[across]))))
    .setValues(cells.map((row) => row.map((cell) => (typeof cell === "string" ? cell.replace(/^'+/, "") : cell))));
  for (const { row, column, formula } of formulas) sheet.getRange(row + 1, column + 1).setFormula(formula);
  SpreadsheetApp.flush();
}

function formatOf(cell: unknown, format: unknown): string {
  if (typeof cell === "string" && cell !== "") return "@";
  return typeof format === "string" && /^[0#,.%$hms:ymd-]{1,12}$/.test(format) ? format : "General";
}

/** What reached a custom function, as text. */
export const probe = (args: ArrayLike<unknown>): string => `${args.length}: ${Array.from(args, cellText).join(" ; ")}`;

function cellText(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(cellText).join(", ")}]`;
  if (Object.prototype.toString.call(value) === "[object Date]") return `date ${(value as Date).toISOString()}`;
  return typeof value === "string" ? JSON.stringify(value) : String(value);
}

/** What a custom function may give back that is no number and no text, counted from 1. */
export const give = (which: unknown): unknown =>
  [null, undefined, Number.POSITIVE_INFINITY, new Date(2026, 0, 31), [[1], [2, 3]], [], [[]], true][Number(which) - 1];
