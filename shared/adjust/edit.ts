// Changes rows, and remembers which: what a change moves can be said before it is taken.
import { isFault, refuse } from "../base/refusal.ts";
import { atMost } from "../base/scaling.ts";
import { quote, shownShare } from "../base/show.ts";
import type { Frame } from "../formula/percents.ts";
import { nameKey } from "../larder/built-in-larder.ts";
import { type Kind, kind } from "../larder/kinds.ts";
import { allFlour, amountOf, baseOf, type Formula, ofKind, type Row } from "./formula.ts";

export type Edit = {
  readonly rows: () => readonly Row[];
  /** What it moves, by the ids of the rows. */
  readonly moved: () => ReadonlySet<number>;
  readonly set: (id: number, amount: number) => void;
  /** More of rows, or less, in proportion; rows that are all at 0 stay there. */
  readonly spread: (rows: readonly Row[], more: number) => void;
  /** Into the row of this ingredient, or into a new one. */
  readonly add: (name: string, type: string, amount: number) => void;
  readonly remove: (id: number) => void;
  /** Another ingredient in the place of a row; where the formula has that one already, the two become one. */
  readonly replace: (id: number, name: string, type: string, amount: number) => void;
  /** Water that comes or goes with a change; refused where more goes than is poured, and `because` is what takes it. */
  readonly water: (more: number, because: string) => void;
  /** All percentages refer to another flour. */
  readonly reframe: (frame: Frame) => void;
  readonly done: (formula: Formula) => Formula;
};

/** A type that a change gives a row is one that the sheet's list has. */
export function kindOf(type: string): Kind {
  const kindCell = kind().read(type);
  return isFault(kindCell) || "unread" in kindCell ? refuse(`The type ${quote(type)} could not be read.`) : kindCell;
}

/** Binary arithmetic leaves a dust where everything is taken out. */
const DUST = 1e-12;
const clean = (amount: number): number => (Math.abs(amount) < DUST ? 0 : amount);

export function editOf(formula: Formula): Edit {
  let rows: readonly Row[] = formula.rows;
  let frame = formula.frame;
  const moved = new Set<number>();
  const all = allFlour(formula.rows);
  const set = (id: number, amount: number): void => {
    if (amount < -DUST) refuse("Less than nothing would be left of an ingredient. Ask for a smaller change.");
    moved.add(id);
    rows = rows.map((row) => (row.id === id ? { ...row, amount: clean(amount) } : row));
  };
  const add = (name: string, type: string, amount: number): void => {
    const there = rows.find((row) => nameKey(row.name) === nameKey(name));
    if (there !== undefined) {
      set(there.id, there.amount + amount);
      return;
    }
    const id = Math.max(0, ...formula.rows.map((row) => row.id), ...rows.map((row) => row.id)) + 1;
    moved.add(id);
    rows = [...rows, { id, name, type, kind: kindOf(type), amount }];
  };
  const remove = (id: number): void => {
    moved.add(id);
    rows = rows.filter((row) => row.id !== id);
  };
  const spread = (some: readonly Row[], more: number): void => {
    const sum = amountOf(some);
    if (sum > 0) for (const row of some) set(row.id, row.amount + (more * row.amount) / sum);
  };
  return {
    rows: () => rows,
    moved: () => moved,
    set,
    spread,
    add,
    remove,
    replace: (id, name, type, amount) => {
      const other = rows.find((row) => row.id !== id && nameKey(row.name) === nameKey(name));
      moved.add(id);
      if (other === undefined) {
        rows = rows.map((row) => (row.id === id ? { id, name, type, kind: kindOf(type), amount } : row));
      } else {
        remove(id);
        set(other.id, other.amount + amount);
      }
    },
    water: (more, because) => {
      const poured = ofKind(rows, "water", "ice");
      const there = amountOf(poured);
      if (more < 0 && !atMost(-more, there))
        refuse(
          `${because} takes ${shownShare(-more / all)} of water away, and only ${shownShare(there / all)} is poured in. Ask for less of it.`,
        );
      if (more === 0) return;
      if (there > 0) spread(poured, Math.max(more, -there));
      else add("Water", "water", more);
    },
    reframe: (to) => {
      frame = to;
    },
    done: (now) => {
      const base = baseOf(rows, frame);
      if (!(base > 0))
        refuse("No flour would be left that percentages could refer to. Keep some flour in a row of its own.");
      const isSame = Math.abs(base - baseOf(formula.rows, formula.frame)) <= DUST * base;
      const scale = isSame ? 1 : baseOf(formula.rows, formula.frame) / base;
      if (!isSame) for (const { id } of rows) moved.add(id);
      return { ...now, frame, rows: isSame ? rows : rows.map((row) => ({ ...row, amount: row.amount * scale })) };
    },
  };
}
