import type { Zone } from "../engine/library.ts";
import { engineName, inside, keepPlace, type Place, zoneOf } from "../engine/places.ts";
import type { PlacedMark } from "../engine/plugins.ts";
import { makeProtection } from "./protection.ts";
import { activate, makeRange, makeRangeList, writeRow } from "./range.ts";
import { addConditional, colour, conditionalOf } from "./rules.ts";
import type { Session } from "./session.ts";

/** A Sheet for scripts. */
export function makeSheet(session: Session, sheetId: string, sheetOf: (sheetId: string) => object): object {
  const { engine, guard } = session;
  const name = () => session.get<string>("getSheetName", sheetId);
  const rows = () => session.get<number>("getNumberRows", sheetId);
  const columns = () => session.get<number>("getNumberCols", sheetId);
  const rangeOf = (zone: Zone) => makeRange(session, { sheetId, zone }, sheetOf);
  const all = (): Zone => ({ left: 0, top: 0, right: columns() - 1, bottom: rows() - 1 });

  const getRange = (...where: readonly (string | number)[]) => {
    const [first, column, high = 1, wide = 1] = where;
    if (typeof first === "string" && where.length === 1) return rangeOf(zoneOf(first, rows(), columns()));
    if (typeof first !== "number" || typeof column !== "number")
      throw new Error("getRange takes A1 notation, or a row and a column");
    const [top, left] = [first - 1, column - 1];
    const zone = { left, top, right: left + Number(wide) - 1, bottom: top + Number(high) - 1 };
    return rangeOf(inside(zone, rows(), columns()));
  };

  const used = (): Zone => {
    session.flush();
    const cells = session.get<readonly { col: number; row: number }[]>("getEvaluatedCellsPositions", sheetId);
    const filled = cells.filter(({ col, row }) => engine.evaluated({ sheetId, col, row }).type !== "empty");
    const right = Math.max(-1, ...filled.map(({ col }) => col));
    const bottom = Math.max(-1, ...filled.map(({ row }) => row));
    return { left: 0, top: 0, right, bottom };
  };

  const change = (type: string, payload: object) => {
    session.flush();
    engine.run(type, { sheetId, ...payload });
    return sheet;
  };
  const cut = (dimension: "ROW" | "COL", from: number, many: number) => {
    const size = dimension === "ROW" ? rows() : columns();
    const what = dimension === "ROW" ? "rows" : "columns";
    if (from < 1 || many < 1 || from + many - 1 > size) throw new Error(`Those ${what} are out of bounds.`);
    if (many >= size) throw new Error(`You can't delete all the ${what} on the sheet.`);
    const elements = Array.from({ length: many }, (_, index) => from - 1 + index);
    return change("REMOVE_COLUMNS_ROWS", { sheetName: name(), dimension, elements });
  };
  const insert = (dimension: "ROW" | "COL", position: "before" | "after", at: number, quantity: number) => {
    const size = dimension === "ROW" ? rows() : columns();
    if (at < 1 || at > size || quantity < 1) throw new Error("Those rows or columns are out of bounds.");
    return change("ADD_COLUMNS_ROWS", { sheetName: name(), dimension, position, base: at - 1, quantity });
  };
  const resize = (dimension: "ROW" | "COL", from: number, many: number, size: number) => {
    const limit = dimension === "ROW" ? rows() : columns();
    if (from < 1 || many < 1 || from + many - 1 > limit) throw new Error("Those rows or columns are out of bounds.");
    if (!Number.isInteger(size) || size < 2)
      throw new Error(`A width or height is a whole number of pixels, not ${size}`);
    const elements = Array.from({ length: many }, (_, index) => from - 1 + index);
    session.write({ type: "RESIZE_COLUMNS_ROWS", payload: { sheetId, dimension, elements, size } });
    return sheet;
  };
  const freeze = (dimension: "ROWS" | "COLUMNS", quantity: number) => {
    session.write(
      quantity === 0
        ? { type: `UNFREEZE_${dimension}`, payload: { sheetId } }
        : { type: `FREEZE_${dimension}`, payload: { sheetId, quantity } },
    );
  };
  const hide = (dimension: "ROW" | "COL", from: number, many: number) => {
    const limit = dimension === "ROW" ? rows() : columns();
    if (from < 1 || many < 1 || from + many - 1 > limit) throw new Error("Those rows or columns are out of bounds.");
    const elements = Array.from({ length: many }, (_, index) => from - 1 + index);
    session.write({ type: "HIDE_COLUMNS_ROWS", payload: { sheetId, dimension, elements } });
  };
  const set = (type: string, payload: object) => {
    session.write({ type, payload: { sheetId, ...payload } });
    return sheet;
  };
  const formats = () => session.get<readonly { id: string }[]>("getConditionalFormats", sheetId);

  const sheet: object = guard.made("Sheet", {
    free: {
      getSheetId: () => session.numberOf(sheetId),
      getRange,
      getRangeList: (names: readonly string[]) => {
        const zones = Array.from(names, (one) => zoneOf(one, rows(), columns()));
        return makeRangeList(
          session,
          zones.map((zone): Place => ({ sheetId, zone })),
          zones.map(rangeOf),
        );
      },
      getMaxRows: rows,
      getMaxColumns: columns,
      activate: () => {
        activate(session, { sheetId, zone: { left: 0, top: 0, right: 0, bottom: 0 } });
        return sheet;
      },
    },
    reads: {
      getName: name,
      getIndex: () => session.get<readonly string[]>("getSheetIds").indexOf(sheetId) + 1,
      getDataRange: () => {
        const { right, bottom } = used();
        return rangeOf({ left: 0, top: 0, right: Math.max(0, right), bottom: Math.max(0, bottom) });
      },
      getLastRow: () => used().bottom + 1,
      getLastColumn: () => used().right + 1,
      getConditionalFormatRules: () => {
        if (formats().length > 0) throw new Error("Reading back conditional formats is not in the stand-in");
        return [];
      },
      getProtections: (kind: string) => {
        session.flush();
        const marks = session
          .get<readonly PlacedMark[]>("getMarks")
          .filter((mark) => mark.kind === "protection" && mark.sheetId === sheetId);
        if (kind !== "RANGE" && kind !== "SHEET") throw new Error("getProtections takes SpreadsheetApp.ProtectionType");
        const whole = (zone: Zone) => zone.right === columns() - 1 && zone.bottom === rows() - 1;
        const wanted = marks.filter(({ zone }) => whole(zone) === (kind === "SHEET"));
        return wanted.map((mark) => makeProtection(session, mark, rangeOf(mark.zone), mark));
      },
    },
    writes: {
      setName: (to: string) => {
        checkSheetName(session, to, sheetId);
        return change("RENAME_SHEET", { oldName: name(), newName: engineName(to) });
      },
      deleteRow: (from: number) => cut("ROW", from, 1),
      deleteRows: (from: number, many: number) => cut("ROW", from, many),
      deleteColumns: (from: number, many: number) => cut("COL", from, many),
      insertRowsAfter: (at: number, many: number) => insert("ROW", "after", at, many),
      insertRowsBefore: (at: number, many: number) => insert("ROW", "before", at, many),
      insertColumnsAfter: (at: number, many: number) => insert("COL", "after", at, many),
      setColumnWidth: (column: number, width: number) => resize("COL", column, 1, width),
      setColumnWidths: (column: number, many: number, width: number) => resize("COL", column, many, width),
      setRowHeight: (row: number, height: number) => resize("ROW", row, 1, height),
      setRowHeights: (row: number, many: number, height: number) => resize("ROW", row, many, height),
      setRowHeightsForced: (row: number, many: number, height: number) => resize("ROW", row, many, height),
      setFrozenRows: (many: number) => freeze("ROWS", many),
      setFrozenColumns: (many: number) => freeze("COLUMNS", many),
      hideRows: (from: number, many = 1) => hide("ROW", from, many),
      setHiddenGridlines: (hide: boolean) => set("SET_GRID_LINES_VISIBILITY", { areGridLinesVisible: !hide }),
      appendRow: (contents: readonly unknown[]) => {
        const [row, wide] = [used().bottom + 1, contents.length];
        if (row >= rows()) insert("ROW", "after", rows(), 1);
        writeRow(session, { sheetId, zone: { left: 0, top: row, right: wide - 1, bottom: row } }, contents);
        return sheet;
      },
      setTabColor: (value: string | null) => set("COLOR_SHEET", { color: colour(value, "setTabColor") }),
      setConditionalFormatRules: (rules: readonly object[]) => {
        session.flush();
        for (const { id } of formats()) session.write({ type: "REMOVE_CONDITIONAL_FORMAT", payload: { sheetId, id } });
        for (const rule of Array.from(rules)) session.write(addConditional(sheetId, conditionalOf(rule)));
      },
      protect: () => makeProtection(session, { sheetId, zone: all() }, sheet),
    },
  });
  keepPlace(sheet, { sheetId, zone: all() });
  return sheet;
}

/** Names a sheet must not have: taken ones (whatever their case), the reserved one, forbidden signs, too long ones. */
export function checkSheetName(session: Session, name: unknown, except?: string): void {
  if (typeof name !== "string" || name.trim() === "") throw new Error("A sheet needs a name");
  if (name.length > 100) throw new Error(`A sheet name has at most 100 characters: ${name}`);
  if (/[\\/?*[\]:]/.test(name)) throw new Error(`A sheet name must not contain \\ / ? * [ ] or : – ${name}`);
  if (/^'|'$/.test(name)) throw new Error(`A sheet name must not begin or end with an apostrophe: ${name}`);
  if (name.toLowerCase() === "history") throw new Error("The sheet name History is reserved");
  const ids = session.get<readonly string[]>("getSheetIds").filter((id) => id !== except);
  const taken = ids.some(
    (id) => session.get<string>("getSheetName", id).toLowerCase() === engineName(name).toLowerCase(),
  );
  if (taken) throw new Error(`A sheet with the name "${name}" already exists. Please enter another name.`);
}
