// What the cells of the local workbook hold and show.
import { cellValue } from "./engine/custom.ts";
import type { Engine } from "./engine/engine.ts";
import type { Position } from "./engine/library.ts";
import { knowWaiting } from "./engine/patches/errors.ts";
import { noteAt } from "./service/range-writers.ts";
import type { Script } from "./service/script.ts";
import type { Session } from "./service/session.ts";
import type { Finder } from "./user-row-actions.ts";

export type HostCell = {
  /** As a script reads it: "" for a blank cell, the text of an error, a Date for a date. */
  readonly value: unknown;
  readonly shown: string;
  /** As a script wrote it, with `;`; undefined when the cell has none (also in a cell that a spill fills). */
  readonly formula: string | undefined;
  /** The sentence behind an error. */
  readonly message: string | undefined;
  readonly format: string;
  readonly note: string;
};

/** Calls that take their time, as on the live service. */
export function unansweredCalls(engine: Engine, { guard }: Session, script: Script) {
  let forget = () => {};
  const answerCalls = () => {
    guard.onRead = undefined;
    forget();
    forget = () => {};
    engine.attach(script);
  };
  return {
    /**
     * From now on no call has answered yet: its cell holds an error, `Loading...` or what the spreadsheet's language says for it, and
     * scripts read that text. Calls answer once values were read so many times, or with `answerCalls`.
     */
    holdCalls(text = "Loading...", reads = Number.POSITIVE_INFINITY): void {
      let left = reads;
      forget();
      forget = knowWaiting(engine.library, text);
      guard.onRead = (name) => {
        if (!name.endsWith("getValues")) return;
        if (left === 0) answerCalls();
        left -= 1;
      };
      engine.attach({ ...script, waiting: () => text });
    },
    answerCalls,
  };
}

export type Checked = <T>(result: T) => T;

/** What stands in cells: what a script reads, and what the grid shows. */
export function cellReaders(engine: Engine, session: Session, { sheetId, zone, position }: Finder, checked: Checked) {
  const grid = <T>(sheet: string, a1: string, of: (at: Position) => T): T[][] => {
    const id = sheetId(sheet);
    const { left, top, right, bottom } = zone(id, a1);
    return Array.from({ length: bottom - top + 1 }, (_, down) =>
      Array.from({ length: right - left + 1 }, (_, across) => of({ sheetId: id, col: left + across, row: top + down })),
    );
  };
  const valueAt = (at: Position) => cellValue(engine.library, session.Date, engine.evaluated(at));

  return {
    cell(sheet: string, a1: string): HostCell {
      const at = position(sheet, a1);
      const { formattedValue, message, format } = engine.evaluated(at);
      return checked({
        value: valueAt(at),
        shown: formattedValue,
        formula: engine.formula(at),
        message: message?.toString(),
        format: format ?? "",
        note: noteAt(session, at),
      });
    },
    /** Values of a range, rows first, as a script reads them. */
    values: (sheet: string, a1: string): unknown[][] => checked(grid(sheet, a1, valueAt)),
    /** What a range shows, rows first. */
    shownTexts: (sheet: string, a1: string): string[][] =>
      checked(grid(sheet, a1, (at) => engine.evaluated(at).formattedValue)),
    formulas: (sheet: string, a1: string): (string | undefined)[][] => grid(sheet, a1, (at) => engine.formula(at)),
    /** The rectangle from A1 to the last filled cell, in A1 notation; "A1" for an empty sheet. */
    usedRange(sheet: string): string {
      const id = sheetId(sheet);
      const filled = session
        .get<readonly { col: number; row: number }[]>("getEvaluatedCellsPositions", id)
        .filter(({ col, row }) => engine.evaluated({ sheetId: id, col, row }).type !== "empty");
      const last = engine.library.helpers.toXC(
        Math.max(0, ...filled.map(({ col }) => col)),
        Math.max(0, ...filled.map(({ row }) => row)),
      );
      return last === "A1" ? "A1" : `A1:${last}`;
    },
  };
}
