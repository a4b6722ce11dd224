import type { Zone } from "../engine/library.ts";
import { engineName, inside, keepPlace, type Place, zoneOf } from "../engine/places.ts";
import type { PlacedMark } from "../engine/plugins.ts";
import { makeProtection } from "./protection.ts";
import { activate, makeRange, makeRangeList } from "./range.ts";
import { writeRow } from "./range-writers.ts";
import { freeze, hide, insert, remove, resize } from "./rows-columns.ts";
import { addConditional, colour, conditionalOf } from "./rules.ts";
import type { Session } from "./session.ts";

type SheetOf = (sheetId: string) => object;
/** A sheet in the engine: its name, its size, what is filled, and Range objects for its zones. */
type SheetPlace = ReturnType<typeof placeOf>;

/** A Sheet for scripts. */
export function makeSheet(session: Session, sheetId: string, sheetOf: SheetOf): object {
  const place = placeOf(session, sheetId, sheetOf);
  const sheet: object = session.guard.made("Sheet", {
    free: {
      ...ranges(place),
      activate: () => {
        activate(session, { sheetId, zone: { left: 0, top: 0, right: 0, bottom: 0 } });
        return sheet;
      },
    },
    reads: readers(place),
    writes: {
      ...looks(place, () => sheet),
      ...rowsAndColumns(place, () => sheet),
      protect: () => makeProtection(session, { sheetId, zone: place.all() }, sheet),
    },
  });
  keepPlace(sheet, { sheetId, zone: place.all() });
  return sheet;
}

function placeOf(session: Session, sheetId: string, sheetOf: SheetOf) {
  const { engine } = session;
  const rows = () => session.get<number>("getNumberRows", sheetId);
  const columns = () => session.get<number>("getNumberCols", sheetId);
  const all = (): Zone => ({ left: 0, top: 0, right: columns() - 1, bottom: rows() - 1 });
  const used = (): Zone => {
    session.flush();
    const cells = session.get<readonly { col: number; row: number }[]>("getEvaluatedCellsPositions", sheetId);
    const filled = cells.filter(({ col, row }) => engine.evaluated({ sheetId, col, row }).type !== "empty");
    const right = Math.max(-1, ...filled.map(({ col }) => col));
    const bottom = Math.max(-1, ...filled.map(({ row }) => row));
    return { left: 0, top: 0, right, bottom };
  };
  return {
    session,
    sheetId,
    name: () => session.get<string>("getSheetName", sheetId),
    rows,
    columns,
    all,
    used,
    rangeOf: (zone: Zone) => makeRange(session, { sheetId, zone }, sheetOf),
  };
}

function ranges(place: SheetPlace) {
  const { session, sheetId } = place;
  return {
    getSheetId: () => session.numberOf(sheetId),
    getRange: (...where: readonly (string | number)[]) => findRange(place, where),
    getRangeList: (names: readonly string[]) => {
      const zones = Array.from(names, (one) => zoneOf(one, place.rows(), place.columns()));
      return makeRangeList(
        session,
        zones.map((zone): Place => ({ sheetId, zone })),
        zones.map(place.rangeOf),
      );
    },
    getMaxRows: place.rows,
    getMaxColumns: place.columns,
  };
}

function findRange(place: SheetPlace, where: readonly (string | number)[]): object {
  const [first, column, high = 1, wide = 1] = where;
  if (typeof first === "string" && where.length === 1)
    return place.rangeOf(zoneOf(first, place.rows(), place.columns()));
  if (typeof first !== "number" || typeof column !== "number")
    throw new Error("getRange takes A1 notation, or a row and a column");
  const [top, left] = [first - 1, column - 1];
  const zone = { left, top, right: left + Number(wide) - 1, bottom: top + Number(high) - 1 };
  return place.rangeOf(inside(zone, place.rows(), place.columns()));
}

const conditionalFormats = ({ session, sheetId }: SheetPlace) =>
  session.get<readonly { id: string }[]>("getConditionalFormats", sheetId);

function readers(place: SheetPlace) {
  const { session, sheetId } = place;
  return {
    getName: place.name,
    getIndex: () => session.get<readonly string[]>("getSheetIds").indexOf(sheetId) + 1,
    getDataRange: () => {
      const { right, bottom } = place.used();
      return place.rangeOf({ left: 0, top: 0, right: Math.max(0, right), bottom: Math.max(0, bottom) });
    },
    getLastRow: () => place.used().bottom + 1,
    getLastColumn: () => place.used().right + 1,
    getConditionalFormatRules: () => {
      if (conditionalFormats(place).length > 0)
        throw new Error("Reading back conditional formats is not in the stand-in");
      return [];
    },
    getProtections: (kind: string) => {
      session.flush();
      const marks = session
        .get<readonly PlacedMark[]>("getMarks")
        .filter((mark) => mark.kind === "protection" && mark.sheetId === sheetId);
      if (kind !== "RANGE" && kind !== "SHEET") throw new Error("getProtections takes SpreadsheetApp.ProtectionType");
      const whole = (zone: Zone) => zone.right === place.columns() - 1 && zone.bottom === place.rows() - 1;
      const wanted = marks.filter(({ zone }) => whole(zone) === (kind === "SHEET"));
      return wanted.map((mark) => makeProtection(session, mark, place.rangeOf(mark.zone), mark));
    },
  };
}

/** The setters of the sheet's name, tab and looks. */
function looks(place: SheetPlace, sheet: () => object) {
  const { session, sheetId } = place;
  const set = (type: string, payload: object) => {
    session.write({ type, payload: { sheetId, ...payload } });
    return sheet();
  };
  return {
    setName: (to: string) => {
      checkSheetName(session, to, sheetId);
      session.flush();
      session.engine.run("RENAME_SHEET", { sheetId, oldName: place.name(), newName: engineName(to) });
      return sheet();
    },
    setHiddenGridlines: (hide: boolean) => set("SET_GRID_LINES_VISIBILITY", { areGridLinesVisible: !hide }),
    setTabColor: (value: string | null) => set("COLOR_SHEET", { color: colour(value, "setTabColor") }),
    setConditionalFormatRules: (rules: readonly object[]) => {
      session.flush();
      for (const { id } of conditionalFormats(place))
        session.write({ type: "REMOVE_CONDITIONAL_FORMAT", payload: { sheetId, id } });
      for (const rule of Array.from(rules)) session.write(addConditional(sheetId, conditionalOf(rule)));
    },
  };
}

/** The setters that insert, delete, size, freeze and hide rows and columns. */
function rowsAndColumns(place: SheetPlace, sheet: () => object) {
  const chained =
    <A extends unknown[]>(change: (...args: A) => void) =>
    (...args: A) => {
      change(...args);
      return sheet();
    };
  return {
    deleteRow: chained((from: number) => remove(place, "ROW", from, 1)),
    deleteRows: chained((from: number, many: number) => remove(place, "ROW", from, many)),
    deleteColumns: chained((from: number, many: number) => remove(place, "COL", from, many)),
    insertRowsAfter: chained((at: number, many: number) => insert(place, "ROW", "after", at, many)),
    insertRowsBefore: chained((at: number, many: number) => insert(place, "ROW", "before", at, many)),
    insertColumnsAfter: chained((at: number, many: number) => insert(place, "COL", "after", at, many)),
    setColumnWidth: chained((column: number, width: number) => resize(place, "COL", column, 1, width)),
    setColumnWidths: chained((column: number, many: number, width: number) =>
      resize(place, "COL", column, many, width),
    ),
    setRowHeight: chained((row: number, height: number) => resize(place, "ROW", row, 1, height)),
    setRowHeights: chained((row: number, many: number, height: number) => resize(place, "ROW", row, many, height)),
    setRowHeightsForced: chained((row: number, many: number, height: number) =>
      resize(place, "ROW", row, many, height),
    ),
    setFrozenRows: (many: number) => freeze(place, "ROWS", many),
    setFrozenColumns: (many: number) => freeze(place, "COLUMNS", many),
    hideRows: (from: number, many = 1) => hide(place, "ROW", from, many),
    appendRow: chained((contents: readonly unknown[]) => {
      const [row, wide] = [place.used().bottom + 1, contents.length];
      if (row >= place.rows()) insert(place, "ROW", "after", place.rows(), 1);
      const zone = { left: 0, top: row, right: wide - 1, bottom: row };
      writeRow(place.session, { sheetId: place.sheetId, zone }, contents);
    }),
  };
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
