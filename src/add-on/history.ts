// The formula history: read whole, and added to below everything. Nothing in it is ever written over or deleted.

import {
  asTyped,
  latest,
  nextNumber,
  rowOf,
  type Version,
  versionIn,
  versionsOf,
} from "../../shared/adjust/versions.ts";
import { attempt, becauseOf, refuse } from "../../shared/base/refusal.ts";
import { quote } from "../../shared/base/show.ts";
import type { HistoryAnswer, HistoryAsk, ReviseAnswer, ReviseAsk } from "../../shared/protocol/history.ts";
import { inShort } from "../../shared/protocol/remake.ts";
import { HISTORY_NAME } from "../../shared/sheet/workbook-names.ts";
import { look } from "./look.ts";
import { activeWorkbook } from "./workbook.ts";

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
type Range = GoogleAppsScript.Spreadsheet.Range;

/** Down to the end of its sheet: rows that are added last may stand below its name's range. */
function historyRange(): Range | null {
  const named = activeWorkbook().getRangeByName(HISTORY_NAME);
  if (named === null) return null;
  return named.offset(0, 0, named.getSheet().getMaxRows() - named.getRow() + 1);
}

export function history({ id = null }: HistoryAsk): HistoryAnswer {
  const range = historyRange();
  if (range === null) return { isThere: false, versions: [] };
  const rows = range.getValues();
  if (id !== null) return { isThere: true, versions: versionsOf(rows, id) };
  const all = rows.map(versionIn).filter((one) => one !== null);
  return { isThere: true, versions: all.map((one) => ({ ...one, content: "" })) };
}

/** Keeps what is there, then what it becomes, and only then writes the sheet: a version is never lost. Runs under the lock of the document. */
export function revise(ask: ReviseAsk): ReviseAnswer {
  const sheet = activeWorkbook().getSheetByName(ask.sheet);
  const [seen] = sheet === null ? [] : look({ sheet: ask.sheet, formulas: true }).sheets;
  if (sheet === null || seen === undefined || sheet.getSheetId() !== ask.id)
    return refuse(
      `The sheet ${quote(ask.sheet)} was renamed or deleted meanwhile, and nothing was changed. Open it again.`,
    );
  if (inShort(seen) !== ask.seen)
    return refuse(
      `The sheet ${quote(ask.sheet)} was changed meanwhile, and nothing was written. Look at it, then press the button again.`,
    );
  const range = historyRange();
  if (range === null)
    return refuse("The formula history was deleted meanwhile, and nothing was changed. Press the button again.");
  const versions = versionsOf(range.getValues(), ask.id);
  const log = range.getSheet();
  const last = latest(versions);
  const wasEdited = last === undefined || last.content !== ask.before;
  const version = (number: number, line: string, content: string): Version => ({
    when: ask.when,
    sheet: ask.id,
    title: ask.title,
    number,
    line,
    content,
  });
  let number = nextNumber(versions);
  if (wasEdited) {
    append(log, version(number, ask.after === null ? ask.line : ask.beforeLine, ask.before));
    number += 1;
  }
  if (ask.after === null || (ask.after === ask.before && ask.writes.length === 0))
    return { number: wasEdited ? number - 1 : (last?.number ?? 0), wasEdited };
  append(log, version(number, ask.line, ask.after));
  write(sheet, ask, number);
  return { number, wasEdited };
}

/** Refuses before the sheet is touched: an owner may have locked the history. */
function append(sheet: Sheet, version: Version): void {
  try {
    sheet.appendRow(rowOf(version).map(asTyped));
    // What the service only noted down is written now, or fails now.
    SpreadsheetApp.flush();
  } catch (error) {
    refuse(
      `The formula history could not be written (${becauseOf(error)}), and the formula sheet stands as it was. If the history is protected, ask its owner to let you edit it.`,
    );
  }
}

/** A name such as "=Rye", "1/2" or "007" is none of a formula, a day or a number. */
const mustStayText = (value: string | number): boolean => typeof value === "string" && /^[=+\-@\d.]/.test(value);

function write(sheet: Sheet, { inserts, writes, stamps, line, day }: ReviseAsk, number: number): void {
  try {
    for (const { after, many } of inserts) sheet.insertRowsAfter(after + 1, many);
    for (const { row, column, cells } of writes) {
      for (const [down, line] of cells.entries())
        for (const [across, value] of line.entries())
          if (mustStayText(value)) sheet.getRange(row + down + 1, column + across + 1).setNumberFormat("@");
      sheet
        .getRange(row + 1, column + 1, cells.length, cells[0]?.length ?? 1)
        .setValues(cells as (string | number)[][]);
    }
    const stamped = { number: String(number), day, line };
    for (const { row, column, is } of stamps) sheet.getRange(row + 1, column + 1).setValue(stamped[is]);
    SpreadsheetApp.flush();
  } catch (error) {
    // What was written so far is undone by hand: both versions are in the history.
    attempt(() => SpreadsheetApp.flush());
    refuse(
      `The sheet could not be written whole: ${becauseOf(error)}. It is kept as version ${number - 1}, and what it was to become as version ${number}. Bring one of them back.`,
    );
  }
}
