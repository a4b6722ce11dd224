// A formula sheet built anew in the place of another: where what was typed goes, and where other sheets find what they read.
import { refuseUnread } from "../base/refusal.ts";
import type { Zone } from "../sheet/a1.ts";
import type { SeenSheet } from "./look.ts";
import type { MakeAsk } from "./make.ts";

/** From where to where; of the same size. */
export type Move = readonly [from: Zone, to: Zone];

export type RemakeAsk = MakeAsk & {
  readonly sheet: string;
  readonly id: number;
  /** What was seen of it, in short: nothing is built where it was changed meanwhile. */
  readonly seen: number;
  /** What was typed, cell by cell or column by column. */
  readonly typed: readonly Move[];
  /** Where everything else stands that formulas of other sheets may read. */
  readonly moves: readonly Move[];
  /** For rows from the first: where each stands now, -1 where it is gone. */
  readonly rowsNow: readonly number[];
};
export type Remade = Pick<RemakeAsk, "sheet" | "id" | "seen" | "typed" | "moves" | "rowsNow">;

/** The same for what is the same, and hardly ever for anything else (FNV-1a, from memory). */
export function inShort({ values, formulas }: Pick<SeenSheet, "values" | "formulas">): number {
  const text = JSON.stringify([values, formulas]);
  let hash = 0x811c9dc5;
  for (let at = 0; at < text.length; at++) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193) >>> 0;
  return hash;
}

const MAX_ENTRIES = 5000;
const unclear = (): never => refuseUnread("The plan of the sheet");

export function readRemade(raw: Readonly<Record<string, unknown>>): Remade {
  const { sheet, id, seen, typed, moves, rowsNow } = raw;
  const whole = (one: unknown, least: number, most: number): number =>
    typeof one === "number" && Number.isInteger(one) && one >= least && one <= most ? one : unclear();
  const list = <T>(some: unknown, of: (one: unknown) => T): T[] =>
    Array.isArray(some) && some.length <= MAX_ENTRIES ? some.map(of) : unclear();
  const zone = (one: unknown): Zone => {
    const { row, column, rows, columns } = (one ?? {}) as Record<string, unknown>;
    return {
      row: whole(row, 0, 20_000),
      column: whole(column, 0, 1000),
      rows: whole(rows, 1, 20_000),
      columns: whole(columns, 1, 1000),
    };
  };
  const move = (one: unknown): Move => {
    const [from, to] = Array.isArray(one) && one.length === 2 ? [zone(one[0]), zone(one[1])] : unclear();
    return from.rows === to.rows && from.columns === to.columns ? [from, to] : unclear();
  };
  if (typeof sheet !== "string" || sheet === "") return unclear();
  return {
    sheet,
    id: whole(id, 0, Number.MAX_SAFE_INTEGER),
    seen: whole(seen, 0, 0xffffffff),
    typed: list(typed, move),
    moves: list(moves, move),
    rowsNow: list(rowsNow, (row) => whole(row, -1, 20_000)),
  };
}
