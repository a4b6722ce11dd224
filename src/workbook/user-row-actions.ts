// Rows and ranges as a person handles them: put in, deleted, copied, sorted.
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

export type Workbook = {
  readonly engine: Engine;
  readonly session: Session;
  readonly finder: Finder;
  readonly edits: Edits;
  /** Throws when a custom function did what it never may. */
  readonly checked: <T>(result: T) => T;
};

export function rowActions(workbook: Workbook) {
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

export function rangeActions(workbook: Workbook) {
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

export function select({ engine, session, finder }: Workbook, sheet: string, a1: string): void {
  const id = finder.sheetId(sheet);
  const from = session.get<string>("getActiveSheetId");
  if (from !== id) engine.run("ACTIVATE_SHEET", { sheetIdFrom: from, sheetIdTo: id });
  const area = finder.zone(id, a1);
  const { selection } = engine.model as unknown as { selection: { selectZone(anchor: object): void } };
  selection.selectZone({ cell: { col: area.left, row: area.top }, zone: area });
}
