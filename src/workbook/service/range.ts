import { cellValue } from "../engine/custom.ts";
import type { EvaluatedCell, Position } from "../engine/library.ts";
import { a1Of, columnsOf, inside, keepPlace, type Place, rowsOf } from "../engine/places.ts";
import { appearanceSetters, validate } from "./appearance.ts";
import { checkedGrid } from "./checked-grid.ts";
import { makeProtection } from "./protection.ts";
import { clearNotes, gridOf, noteAt, writeFormulas, writeNotes, writeValues } from "./range-writers.ts";
import type { Session } from "./session.ts";

type SheetOf = (sheetId: string) => object;

/** A Range for scripts. Setters give the range back; every setter counts as one call whatever the range's size. */
export function makeRange(session: Session, place: Place, sheetOf: SheetOf): object {
  const range: object = session.guard.made("Range", {
    free: () => geometry(session, place, sheetOf),
    reads: () => readers(session, place),
    writes: () => ({
      ...chained(writers(session, place), () => range),
      protect: () => makeProtection(session, place, range),
    }),
  });
  keepPlace(range, place);
  return range;
}

/** Where the range is and what is next to it: no call of the service. */
function geometry(session: Session, place: Place, sheetOf: SheetOf) {
  const { sheetId, zone } = place;
  const [rows, columns] = [rowsOf(zone), columnsOf(zone)];
  const moved = (down: number, across: number, high: number, wide: number) => {
    const to = {
      left: zone.left + across,
      top: zone.top + down,
      right: zone.left + across + wide - 1,
      bottom: zone.top + down + high - 1,
    };
    const size = [
      session.get<number>("getNumberRows", sheetId),
      session.get<number>("getNumberCols", sheetId),
    ] as const;
    return makeRange(session, { sheetId, zone: inside(to, ...size) }, sheetOf);
  };
  return {
    getRow: () => zone.top + 1,
    getColumn: () => zone.left + 1,
    getLastRow: () => zone.bottom + 1,
    getLastColumn: () => zone.right + 1,
    getNumRows: () => rows,
    getNumColumns: () => columns,
    getA1Notation: () => a1Of(session.engine.library, zone),
    getSheet: () => sheetOf(sheetId),
    getCell: (row: number, column: number) => moved(row - 1, column - 1, 1, 1),
    offset: (down: number, across: number, high = rows, wide = columns) => moved(down, across, high, wide),
  };
}

function readers(session: Session, place: Place) {
  const { engine } = session;
  const read = <T>(of: (position: Position) => T): T[][] => {
    session.flush();
    return gridOf(place)(of);
  };
  const valueAt = (position: Position) => cellValue(engine.library, session.Date, engine.evaluated(position));
  const shownAt = (position: Position) => (engine.evaluated(position) as EvaluatedCell).formattedValue;
  const formulaAt = (position: Position) => engine.formula(position) ?? "";
  const only = <T>(cells: T[][]): T => cells[0]?.[0] as T;
  return {
    getValue: () => only(read(valueAt)),
    getValues: () => read(valueAt),
    getDisplayValue: () => only(read(shownAt)),
    getDisplayValues: () => read(shownAt),
    getFormula: () => only(read(formulaAt)),
    getFormulas: () => read(formulaAt),
    getNumberFormat: () => only(read((position) => session.formatOf(position))),
    getNote: () => only(read((position) => noteAt(session, position))),
    getNotes: () => read((position) => noteAt(session, position)),
    isBlank: () => read(valueAt).every((row) => row.every((value) => value === "")),
  };
}

function writers(session: Session, place: Place) {
  const { sheetId, zone } = place;
  const grid = gridOf(place);
  return {
    ...appearanceSetters(session, [place]),
    setValue: (value: unknown) => writeValues(session, grid, (_down, _across) => value),
    setValues: (values: unknown) => {
      const checked = checkedGrid(values, zone);
      writeValues(session, grid, (down, across) => checked[down]?.[across]);
    },
    setFormula: (formula: unknown) => writeFormulas(session, grid, "setFormula", () => formula),
    setFormulas: (formulas: unknown) => {
      const checked = checkedGrid(formulas, zone);
      writeFormulas(session, grid, "setFormulas", (down, across) => checked[down]?.[across]);
    },
    setDataValidation: (rule: unknown) =>
      validate(
        session,
        place,
        grid(() => rule),
      ),
    setDataValidations: (rules: unknown) => validate(session, place, rules),
    setNote: (text: unknown) => writeNotes(session, grid, () => text),
    setNotes: (texts: unknown) => {
      const checked = checkedGrid(texts, zone);
      writeNotes(session, grid, (down, across) => checked[down]?.[across]);
    },
    clearNote: () => clearNotes(session, place),
    clear: () => session.write({ type: "CLEAR_CELLS", payload: { sheetId, target: [zone] } }),
    clearContent: () => session.write({ type: "DELETE_CONTENT", payload: { sheetId, target: [zone] } }),
    clearFormat: () => session.write({ type: "CLEAR_FORMATTING", payload: { sheetId, target: [zone] } }),
    activate: () => activate(session, place),
    shiftColumnGroupDepth: (by: number) => {
      if (by !== 1) throw new Error("shiftColumnGroupDepth by anything but 1 is not in the stand-in");
      session.write({
        type: "GROUP_HEADERS",
        payload: { sheetId, dimension: "COL", start: zone.left, end: zone.right },
      });
    },
    collapseGroups: () =>
      session.write({
        type: "FOLD_HEADER_GROUP",
        payload: { sheetId, dimension: "COL", start: zone.left, end: zone.right },
      }),
  };
}

/** Setters that give back what they set. */
const chained = (setters: object, chain: () => object) =>
  Object.fromEntries(
    Object.entries(setters).map(([name, set]) => [
      name,
      (...args: never[]) => {
        (set as (...args: never[]) => void)(...args);
        return chain();
      },
    ]),
  );

/** A RangeList: the looks of several ranges set at once. */
export function makeRangeList(session: Session, places: readonly Place[], ranges: readonly object[]): object {
  const setters = () => ({
    ...appearanceSetters(session, places),
    setValue: (value: never) => each(ranges, "setValue", value),
    setNote: (text: unknown) => {
      for (const place of places) writeNotes(session, gridOf(place), () => text);
    },
    clearContent: () => {
      for (const { sheetId, zone } of places)
        session.write({ type: "DELETE_CONTENT", payload: { sheetId, target: [zone] } });
    },
    clearNote: () => {
      for (const place of places) clearNotes(session, place);
    },
    clear: () => each(ranges, "clear"),
  });
  const writes = () => chained(setters(), () => list);
  const list: object = session.guard.made("RangeList", { free: { getRanges: () => [...ranges] }, writes });
  return list;
}

function each(ranges: readonly object[], name: string, ...args: unknown[]): void {
  for (const range of ranges) (range as Record<string, (...args: unknown[]) => unknown>)[name]?.(...args);
}

export function activate(session: Session, { sheetId, zone }: Place): void {
  session.flush();
  const { model } = session.engine;
  const from = session.get<string>("getActiveSheetId");
  if (from !== sheetId) session.engine.run("ACTIVATE_SHEET", { sheetIdFrom: from, sheetIdTo: sheetId });
  const { selection } = model as unknown as { selection: { selectZone(anchor: object): void } };
  selection.selectZone({ cell: { col: zone.left, row: zone.top }, zone });
}
