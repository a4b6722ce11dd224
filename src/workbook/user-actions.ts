import type { Engine } from "./engine/engine.ts";
import type { Position, Zone } from "./engine/library.ts";
import { engineName, zoneOf } from "./engine/places.ts";
import type { Edits } from "./service/edits.ts";
import type { Session } from "./service/session.ts";

/** Finds sheets by their names and cells by A1 notation. */
export type Finder = ReturnType<typeof makeFinder>;

export function makeFinder(session: Session) {
  const sheetId = (name: string): string => {
    const id = session
      .get<readonly string[]>("getSheetIds")
      .find((one) => session.get<string>("getSheetName", one) === engineName(name));
    if (id === undefined) throw new Error(`There is no sheet "${name}"; there are ${sheetNames().join(", ")}`);
    return id;
  };
  const sheetNames = () =>
    session.get<readonly string[]>("getSheetIds").map((id) => session.get<string>("getSheetName", id));
  const zone = (id: string, a1: string): Zone =>
    zoneOf(a1, session.get("getNumberRows", id), session.get("getNumberCols", id));
  const position = (sheet: string, a1: string): Position => {
    const id = sheetId(sheet);
    const { left, top } = zone(id, a1);
    return { sheetId: id, col: left, row: top };
  };
  return { sheetId, sheetNames, zone, position };
}

type Workbook = {
  readonly engine: Engine;
  readonly session: Session;
  readonly finder: Finder;
  readonly edits: Edits;
  /** Throws when a custom function did what it never may. */
  readonly checked: <T>(result: T) => T;
};

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

function rowActions(workbook: Workbook) {
  const { engine, checked } = workbook;
  const { sheetId } = workbook.finder;
  return {
    /** Puts empty rows in front of a row (counted from 1), as a person does. */
    insertRows(sheet: string, beforeRow: number, many = 1): void {
      engine.run("ADD_COLUMNS_ROWS", {
        sheetId: sheetId(sheet),
        sheetName: engineName(sheet),
        dimension: "ROW",
        position: "before",
        base: beforeRow - 1,
        quantity: many,
      });
      checked(undefined);
    },
    deleteRows(sheet: string, fromRow: number, many = 1): void {
      const elements = Array.from({ length: many }, (_, index) => fromRow - 1 + index);
      engine.run("REMOVE_COLUMNS_ROWS", {
        sheetId: sheetId(sheet),
        sheetName: engineName(sheet),
        dimension: "ROW",
        elements,
      });
      checked(undefined);
    },
    /** Drags rows by their numbers to stand in front of another row; one below the last row is the end of the sheet. */
    moveRows(sheet: string, fromRow: number, many: number, beforeRow: number): void {
      const isDown = beforeRow > fromRow;
      // The grid moves the rows of the sheet in front.
      select(workbook, sheet, "A1");
      engine.run("MOVE_COLUMNS_ROWS", {
        sheetId: sheetId(sheet),
        sheetName: engineName(sheet),
        dimension: "ROW",
        elements: Array.from({ length: many }, (_, index) => fromRow - 1 + index),
        base: isDown ? beforeRow - 2 : beforeRow - 1,
        position: isDown ? "after" : "before",
      });
      checked(undefined);
    },
  };
}

function rangeActions(workbook: Workbook) {
  const { engine, checked } = workbook;
  const { sheetId, zone } = workbook.finder;
  return {
    /** Cuts a range and pastes it with its upper left corner in a cell: what refers to its cells follows them. */
    moveRange(sheet: string, a1: string, to: string): void {
      const { left, top } = zone(sheetId(sheet), to);
      select(workbook, sheet, a1);
      engine.run("CUT");
      engine.run("PASTE", { target: [{ left, top, right: left, bottom: top }] });
      checked(undefined);
    },
    /** Drags the corner of a range down to a row: its contents go on in the rows below. */
    fillDown(sheet: string, a1: string, toRow: number): void {
      const { left, bottom } = zone(sheetId(sheet), a1);
      select(workbook, sheet, a1);
      engine.run("AUTOFILL_SELECT", { col: left, row: toRow - 1 });
      if (toRow - 1 > bottom) engine.run("AUTOFILL");
      checked(undefined);
    },
    /** Sorts a range by one of its columns, given by its letter. */
    sortRange(sheet: string, a1: string, column: string, ascending = true): void {
      const id = sheetId(sheet);
      const area = zone(id, a1);
      const col = zone(id, `${column}1`).left;
      if (col < area.left || col > area.right) throw new Error(`Column ${column} is not in ${a1}`);
      const sortDirection = ascending ? "asc" : "desc";
      engine.run("SORT_CELLS", {
        sheetId: id,
        zone: area,
        col,
        row: area.top,
        sortDirection,
        sortOptions: { sortHeaders: true },
      });
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

function select({ engine, session, finder }: Workbook, sheet: string, a1: string): void {
  const id = finder.sheetId(sheet);
  const from = session.get<string>("getActiveSheetId");
  if (from !== id) engine.run("ACTIVATE_SHEET", { sheetIdFrom: from, sheetIdTo: id });
  const area = finder.zone(id, a1);
  const { selection } = engine.model as unknown as { selection: { selectZone(anchor: object): void } };
  selection.selectZone({ cell: { col: area.left, row: area.top }, zone: area });
}
