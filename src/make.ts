// Writes a sheet that the bench planned, if the workbook still is what it was planned for.
import { readMake, type Tab, type Writable } from "../shared/make.ts";
import { neededBy } from "../shared/make-formulas.ts";
import { refuse } from "../shared/refusal.ts";
import { quoted } from "../shared/show.ts";
import { writeSheet } from "./write.ts";

type Workbook = GoogleAppsScript.Spreadsheet.Spreadsheet;

export function make(asked: Readonly<Record<string, unknown>>): { sheet: string } {
  const { title, tabs, plan } = readMake(asked);
  const workbook = SpreadsheetApp.getActiveSpreadsheet();
  mustStillBe(workbook, tabs, plan);
  return { sheet: writeSheet(workbook, plan, title) };
}

/** Between the look and the making somebody may have renamed or deleted what the formulas read. */
function mustStillBe(workbook: Workbook, tabs: readonly Tab[], { formulas, defines }: Writable): void {
  const { sheets, names } = neededBy(formulas.flatMap(({ cells }) => cells.flat()));
  const gone = sheets.find((name) => {
    const sheet = workbook.getSheetByName(name);
    return sheet === null || tabs.some((tab) => tab.name === name && tab.id !== sheet.getSheetId());
  });
  if (gone !== undefined) refuse(`The sheet ${quoted(gone)} was renamed or deleted meanwhile${AGAIN}`);
  const own = defines.map(({ name }) => name);
  const there = names.length + own.length === 0 ? [] : workbook.getNamedRanges().map((one) => one.getName());
  const lost = names.find((name) => !own.includes(name) && !there.includes(name));
  if (lost !== undefined) refuse(`The name ${lost} was taken out of the workbook meanwhile${AGAIN}`);
  const taken = own.find((name) => there.includes(name));
  if (taken !== undefined) refuse(`Another sheet took the name ${taken} meanwhile${AGAIN}`);
}

const AGAIN = ", and nothing was built. Press the button again.";
