// Writes a sheet that the sidebar planned, if the workbook still is what it was planned for.

import { attempt, becauseOf, refuse } from "../../shared/base/refusal.ts";
import { quote } from "../../shared/base/show.ts";
import { emptySheets } from "../../shared/protocol/left-over.ts";
import type { MakeOrder } from "../../shared/protocol/make.ts";
import { type NewSheet, numbered, type Renews, sheetName } from "../../shared/protocol/plan-message.ts";
import { neededBy } from "../../shared/sheet/make-formulas.ts";
import { aboutTab, type Tab, tabsOf } from "../../shared/sheet/tab.ts";
import {
  CUSTOMERS_NAME,
  LABEL_TEXT_NAME,
  LIST_NAME,
  LOTS_NAME,
  PRICE_LISTS_NAME,
  PRINTED_NAME,
} from "../../shared/sheet/workbook-names.ts";
import { addLots } from "./lots.ts";
import { activeWorkbook, listIn, namedRanges } from "./workbook.ts";
import { writeSheet } from "./write.ts";

type Workbook = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
type Range = GoogleAppsScript.Spreadsheet.Range;

/** A new list takes the place of an older one, and so do sheets that take along what was typed on the one before. */
const RENEWED: ReadonlySet<string> = new Set([
  LIST_NAME,
  LABEL_TEXT_NAME,
  PRINTED_NAME,
  PRICE_LISTS_NAME,
  CUSTOMERS_NAME,
]);

export function make({ title, tabs, plan, row, behind, renews, lots }: MakeOrder): NewSheet {
  const workbook = activeWorkbook();
  const { sheets, names } = neededBy(plan.formulas.flatMap(({ cells }) => cells.flat()));
  const definedNames = plan.defines.map(({ name }) => name);
  // A sheet that reads nothing else, such as a card, needs none of them.
  const isAlone = sheets.length + names.length + definedNames.length + row.length + lots.length === 0;
  const known = isAlone ? new Map<string, Range>() : namedRanges(workbook);
  const list = listIn(known);
  const tabsOfList = list && sheets.length > 0 ? tabsOf(list.getFormulas()) : [];
  mustStillBe(workbook, sheets, tabs, tabsOfList);
  const lost = names.find((name) => !definedNames.includes(name) && !known.has(name));
  if (lost !== undefined) refuse(`The name ${lost} was taken out of the workbook meanwhile${AGAIN}`);
  const taken = definedNames.find((name) => known.has(name) && !RENEWED.has(name));
  if (taken !== undefined) refuse(`Another sheet took the name ${taken} meanwhile${AGAIN}`);
  const before = workbook.getActiveSheet();
  const { old, wanted, taken: namesTaken } = renews === null ? NO_OLDER : olderSheet(workbook, title, renews);
  const added = lots.length === 0 ? 0 : addLots(known.get(LOTS_NAME), lots);
  const { sheet, tab, unsure } = writeSheet(workbook, plan, title, known, namesTaken);
  const rowless = row.length === 0 || list === undefined ? "" : unlisted(list, row, tab);
  const { name, left } =
    old === null ? { name: tab.name, left: "" } : takePlace(workbook, old, sheet, tab.name, wanted);
  const empty = unsure.length === 0 ? "" : emptySheets(unsure);
  const note = [keptSays(added), empty, rowless, left].filter((one) => one !== "").join(" ");
  // The sheet is built; which one is in front is not worth a failure.
  if (behind) attempt(() => workbook.setActiveSheet(before));
  return note === "" ? { sheet: name } : { sheet: name, note };
}

/** What a sheet takes the place of: that one, its name, and whether a sheet is called as the title and as the names after it. */
type Older = { readonly old: Sheet | null; readonly wanted: string; readonly taken: readonly boolean[] };
const NO_OLDER: Older = { old: null, wanted: "", taken: [] };

/** Among the sheets of its title, the second and so on too: another production may have one of the same title. */
function olderSheet(workbook: Workbook, title: string, renews: Renews): Older {
  const taken: boolean[] = [];
  for (;;) {
    const wanted = numbered(sheetName(title), taken.length + 1);
    const like = workbook.getSheetByName(wanted);
    taken.push(like !== null);
    if (like === null) return { old: null, wanted, taken };
    // The name after it is supposed to be free, for to look is a call.
    if (isOlder(like, renews)) return { old: like, wanted, taken: [...taken, false] };
  }
}

/** Whether a new sheet of its title takes its place; one that somebody made of it by hand is left alone. */
function isOlder(sheet: Sheet, { cell, begins, ends = "", known }: Renews): boolean {
  if (sheet.getSheetId() === known) return true;
  const words = String(sheet.getRange(cell).getValue());
  return words.startsWith(begins) && words.endsWith(ends);
}

const keptSays = (added: number): string =>
  added === 0 ? "" : `${added === 1 ? "One row" : `${added} rows`} of lots went into the lot log.`;

/** The new sheet is whole: from here on only the old one is in the way. */
function takePlace(
  workbook: Workbook,
  old: Sheet,
  sheet: Sheet,
  name: string,
  wanted: string,
): { name: string; left: string } {
  if (!attempt(() => workbook.deleteSheet(old)))
    return { name, left: `The older sheet ${quote(wanted)} could not be deleted: delete it, and use ${quote(name)}.` };
  return { name: attempt(() => sheet.setName(wanted)) ? wanted : name, left: "" };
}

/** Adds the row of a new sheet to the list of formula sheets; the sentence for where that cannot be done, as in a list that its owner locked. */
function unlisted(list: GoogleAppsScript.Spreadsheet.Range, row: readonly string[], tab: Tab): string {
  try {
    list.getSheet().appendRow(row.map((formula) => aboutTab(formula, tab)));
    return "";
  } catch (error) {
    return `It may have no row in the formula list, which could not be written (${becauseOf(error)}). If the list is protected, ask its owner to let you edit it. Price and production sheets find the new sheet all the same.`;
  }
}

/** Between the look and the making somebody may have renamed or deleted what the formulas read. */
function mustStillBe(
  workbook: Workbook,
  names: readonly string[],
  tabs: readonly Tab[],
  tabsOfList: readonly Tab[],
): void {
  const gone = names.find((name) => {
    const is = (id: number) => tabs.every((tab) => tab.name !== name || tab.id === id);
    // The list follows the names; a sheet that it has not is looked up, which is a call of the service.
    if (tabsOfList.some((tab) => tab.name === name && is(tab.id))) return false;
    const sheet = workbook.getSheetByName(name);
    return sheet === null || !is(sheet.getSheetId());
  });
  if (gone !== undefined) refuse(`The sheet ${quote(gone)} was renamed or deleted meanwhile${AGAIN}`);
}

const AGAIN = ", and nothing was built. Press the button again.";
