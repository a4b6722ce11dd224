import { engineName } from "./engine/places.ts";
import { rangeActions, rowActions, select, type Workbook } from "./user-row-actions.ts";

/** What a person does to a workbook by hand. */
export function makeUserActions(workbook: Workbook) {
  return {
    ...typing(workbook),
    ...rowActions(workbook),
    ...rangeActions(workbook),
    ...sheetActions(workbook),
    /** Selects a range, so that the script's getActiveRange finds it. */
    select: (sheet: string, a1: string): void => select(workbook, sheet, a1),
  };
}

function typing(workbook: Workbook) {
  const { engine, session, edits, checked } = workbook;
  const { sheetId, zone, position } = workbook.finder;
  return {
    /** Types into a cell as a person does: "65%", "12,5", "=SUM(A1:A3)". Refused input throws as a sheet's notice says. */
    type(sheet: string, a1: string, text: string): void {
      const at = position(sheet, a1);
      const before = session.get<string>("getCellText", at, { showFormula: true });
      edits.attempt(() => {
        engine.type(at, text);
        const rule = session.get<{ isBlocking?: boolean } | undefined>("getValidationRuleForCell", at);
        if (!rule?.isBlocking || !session.get<boolean>("isDataValidationInvalid", at)) return;
        engine.run("UPDATE_CELL", { ...at, content: before });
        throw new Error(
          `There was a problem: the data you entered in cell ${a1} violates the data validation rules set on this cell.`,
        );
      });
      checked(undefined);
    },
    /** Pastes text from another program: tabs between cells, line feeds between rows. */
    paste(sheet: string, a1: string, text: string): void {
      const { left, top } = zone(sheetId(sheet), a1);
      select(workbook, sheet, a1);
      engine.run("PASTE_FROM_OS_CLIPBOARD", {
        target: [{ left, top, right: left, bottom: top }],
        clipboardContent: { text },
      });
      checked(undefined);
    },
    /** Empties cells with the Delete key. */
    clear(sheet: string, a1: string): void {
      const id = sheetId(sheet);
      engine.run("DELETE_CONTENT", { sheetId: id, target: [zone(id, a1)] });
      checked(undefined);
    },
    /** Takes the last change back, or makes it again, as Ctrl+Z and Ctrl+Y do. */
    undo(): void {
      engine.run("REQUEST_UNDO");
      checked(undefined);
    },
    redo(): void {
      engine.run("REQUEST_REDO");
      checked(undefined);
    },
  };
}

function sheetActions(workbook: Workbook) {
  const { engine, checked } = workbook;
  const { sheetId, sheetNames } = workbook.finder;
  return {
    /** Copies a sheet as the tab's menu does ("Copy of …"); named ranges stay with the first. */
    duplicateSheet(sheet: string, name = `Copy of ${sheet}`): string {
      const id = sheetId(sheet);
      engine.run("DUPLICATE_SHEET", {
        sheetId: id,
        sheetIdTo: `copy-${id}-${sheetNames().length}`,
        sheetNameTo: engineName(name),
      });
      return checked(name);
    },
    renameSheet(sheet: string, newName: string): void {
      engine.run("RENAME_SHEET", { sheetId: sheetId(sheet), oldName: engineName(sheet), newName: engineName(newName) });
      checked(undefined);
    },
    deleteSheet(sheet: string): void {
      engine.run("DELETE_SHEET", { sheetId: sheetId(sheet), sheetName: engineName(sheet) });
      checked(undefined);
    },
  };
}
