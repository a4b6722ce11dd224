// Takes a half-made sheet out of the workbook again, and tells what is left where that fails as well.
import { attempt, becauseOf } from "../../shared/base/refusal.ts";
import { emptySheets, halfMade, refuseWithLeftOver } from "../../shared/protocol/left-over.ts";

type Workbook = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
type Range = GoogleAppsScript.Spreadsheet.Range;

/** What a build did so far: its sheet, and the names of ranges that it gave, with what they meant before. */
type HalfBuilt = {
  readonly sheet: Sheet;
  readonly name: string;
  /** Under which an empty sheet may be there besides. */
  readonly unsure: readonly string[];
  readonly names: readonly { readonly name: string; readonly before: Range | undefined }[];
  readonly front: Sheet;
};

/** Throws the failure of the build where the workbook is as before, and else a sentence of what is left in it. */
export function undo(workbook: Workbook, { sheet, name, unsure, names, front }: HalfBuilt, error: unknown): never {
  const lost = names.filter(
    ({ name: rangeName, before }) => before !== undefined && !attempt(() => workbook.setNamedRange(rangeName, before)),
  );
  // A name that was not given yet cannot be taken back; one that stays goes with its sheet.
  for (const one of names) if (one.before === undefined) attempt(() => workbook.removeNamedRange(one.name));
  const left = attempt(() => workbook.deleteSheet(sheet)) ? null : nameNow(workbook, sheet, name);
  attempt(() => workbook.setActiveSheet(front));
  if (left === null && lost.length === 0 && unsure.length === 0) throw error;
  const sentences = [
    `The sheet could not be finished: ${becauseOf(error)}.`,
    ...(left === null ? [] : [halfMade(left)]),
    ...(unsure.length === 0 ? [] : [emptySheets(unsure)]),
    ...(lost.length === 0 ? [] : ["The older formula list may not be in use any more: build the list again."]),
  ];
  return refuseWithLeftOver(sentences.join(" "));
}

/** What the sheet is called now, as somebody may have renamed it; null where it is gone, also where the service removed it and failed to say so. */
function nameNow(workbook: Workbook, sheet: Sheet, name: string): string | null {
  try {
    const id = sheet.getSheetId();
    return (
      workbook
        .getSheets()
        .find((one) => one.getSheetId() === id)
        ?.getName() ?? null
    );
  } catch {
    return name;
  }
}
