// What a range of the stand-in writes: values, formulas and notes.
import { contentFor } from "../engine/content.ts";
import { fromScript } from "../engine/dialect.ts";
import type { Position } from "../engine/library.ts";
import { columnsOf, type Place, rowsOf } from "../engine/places.ts";
import { addMark, type PlacedMark, removeMark } from "../engine/plugins.ts";
import { newId } from "./rules.ts";
import type { Session } from "./session.ts";

type Grid = <T>(of: (position: Position) => T) => T[][];
type At = (down: number, across: number) => unknown;

export const gridOf =
  ({ sheetId, zone }: Place): Grid =>
  (of) =>
    Array.from({ length: rowsOf(zone) }, (_, down) =>
      Array.from({ length: columnsOf(zone) }, (_, across) =>
        of({ sheetId, col: zone.left + across, row: zone.top + down }),
      ),
    );

function forEach(grid: Grid, use: (position: Position, down: number, across: number) => void): void {
  grid((position) => position).forEach((row, down) => {
    row.forEach((position, across) => {
      use(position, down, across);
    });
  });
}

export function writeValues(session: Session, grid: Grid, at: At): void {
  const commands = grid((position) => position).flatMap((row, down) =>
    row.flatMap((position, across) => {
      const content = contentFor(session, at(down, across), position);
      if (content === "" && session.contentOf(position) === "") return [];
      // In a cell of text the engine would still calculate what begins with "=": keep it by the escape instead.
      const update = content.startsWith("=") ? { content: `'${content}`, format: "" } : { content };
      return [{ type: "UPDATE_CELL", payload: { ...position, ...update } }];
    }),
  );
  session.write(...commands);
}

export function writeFormulas(session: Session, grid: Grid, by: string, at: At): void {
  const { engine, guard } = session;
  const commands = grid((position) => position).flatMap((row, down) =>
    row.flatMap((position, across) => {
      const formula = at(down, across);
      const where = engine.library.helpers.toXC(position.col, position.row);
      // A blank among formulas empties its cell: a slip, unless the cell is blank already.
      if (formula === "" && session.contentOf(position) === "") return [];
      if (typeof formula !== "string" || formula === "")
        throw new Error(`${by}: ${where} has no formula; write it alone`);
      if (session.formatOf(position) === "@")
        throw new Error(`${by}: ${where} is a cell of text and would show the formula's text`);
      return {
        type: "UPDATE_CELL",
        payload: { ...position, content: fromScript(engine.library, engine.locale, formula) },
      };
    }),
  );
  session.write(...commands);
  guard.noteFormula(by);
}

/**
 * What a script appends below everything is read as if it were typed: a formula is one, "1/2" is a day and "007" is 7, and an
 * apostrophe before anything keeps it a text. Formulas stand in a row of their own, as nothing may be read after them.
 */
export function writeRow(session: Session, { sheetId, zone }: Place, contents: readonly unknown[]): void {
  const columns = session.get<number>("getNumberCols", sheetId);
  if (columnsOf(zone) > columns) throw new Error(`appendRow: ${columnsOf(zone)} cells for ${columns} columns`);
  const grid: Grid = (of) => [contents.map((_, across) => of({ sheetId, col: zone.left + across, row: zone.top }))];
  if (contents.every(isFormula)) {
    writeFormulas(session, grid, "appendRow", (_down, across) => contents[across]);
    return;
  }
  const commands = grid((position) => position).flatMap((row) =>
    row.flatMap((position, across) => {
      const typed = contents[across];
      if (typed === "" || typed === null || typed === undefined) return [];
      if (typeof typed !== "string" && typeof typed !== "number" && typeof typed !== "boolean")
        throw new Error("appendRow takes texts, numbers and ticks");
      if (isFormula(typed)) throw new Error(`appendRow: ${typed} would be a formula; put an apostrophe before a text`);
      if (String(typed).length > MAX_CELL)
        throw new Error("Your input contains more than the maximum of 50000 characters in a single cell.");
      return [{ type: "UPDATE_CELL", payload: { ...position, content: String(typed) } }];
    }),
  );
  session.write(...commands);
}

/** What a cell takes. */
const MAX_CELL = 50_000;
const isFormula = (one: unknown): boolean => typeof one === "string" && /^[=+]/.test(one);

export function writeNotes(session: Session, grid: Grid, at: At): void {
  forEach(grid, ({ sheetId, col, row }, down, across) => {
    const text = at(down, across);
    const zone = { left: col, right: col, top: row, bottom: row };
    clearNotes(session, { sheetId, zone });
    if (text === null || text === "") return;
    session.write(
      addMark(sheetId, zone, { id: newId("note"), kind: "note", text: String(text), warningOnly: false, except: [] }),
    );
  });
}

export function clearNotes(session: Session, { sheetId, zone }: Place): void {
  const isIn = ({ left, top }: Place["zone"]) =>
    left >= zone.left && left <= zone.right && top >= zone.top && top <= zone.bottom;
  for (const mark of session.get<readonly PlacedMark[]>("getMarks"))
    if (mark.kind === "note" && mark.sheetId === sheetId && isIn(mark.zone))
      session.write(removeMark(sheetId, mark.id));
}

export function noteAt(session: Session, { sheetId, col, row }: Position): string {
  const marks =
    session.get<readonly { kind: string; text: string; sheetId: string; zone: Place["zone"] }[]>("getMarks");
  const notes = marks.filter(
    (mark) => mark.kind === "note" && mark.sheetId === sheetId && mark.zone.left === col && mark.zone.top === row,
  );
  return notes[notes.length - 1]?.text ?? "";
}
