import { isFault, Refusal } from "../base/refusal.ts";
import { atMost } from "../base/scaling.ts";
import { showNumber, shownShare, shownWeight } from "../base/show.ts";
import { type Weight, type WeightUnit, weight } from "../base/units.ts";
import type { Reader } from "../cells/cell.ts";
import { flourShares } from "../formula/formula.ts";
import { type PercentCell, readPercents } from "../formula/percents.ts";
import { isFlour, type Kind, type KindCell, kindsOf } from "../larder/kinds.ts";
import type { Larder } from "../larder/larder.ts";
import type { StyleName } from "./bands.ts";
import { notesInto, type Remark, type RowNote, type Topic, UNREADABLE } from "./remark.ts";
import { review } from "./review.ts";

/** A cell that could not be read waits here: what is wrong with it becomes its row's remark. */
export type Unread = { readonly unread: string };
const isUnread = (cell: unknown): cell is Unread => typeof cell === "object" && cell !== null && "unread" in cell;

/** Reads what it can, and keeps what is wrong with the rest. */
export function leniently<T>(reader: Reader<T>): Reader<T | Unread> {
  return {
    hint: reader.hint,
    read: (raw) => {
      const cellValue = reader.read(raw);
      return isFault(cellValue) ? { unread: cellValue.says } : (cellValue as T);
    },
  };
}

type Column<T> = readonly (T | null)[];
export type FormulaCells = {
  readonly names: Column<string | Unread>;
  readonly kinds: Column<KindCell>;
  readonly percents: Column<PercentCell | Unread>;
  readonly perMix: Column<Weight | Unread>;
};
export type Scale = { readonly steps: readonly number[]; readonly unit: WeightUnit };

/** The notes beside a formula's rows, null where there is none. */
export function notes(cells: FormulaCells, style: StyleName, larder: Larder, scale: Scale): (string | null)[] {
  const remarks = new Map<number, string[]>();
  for (const { row, says } of allSaid(cells, style, larder, scale)) {
    const ofRow = remarks.get(row) ?? [];
    remarks.set(row, ofRow);
    ofRow.push(says);
  }
  return cells.percents.map((_, row) => remarks.get(row)?.join("; ") ?? null);
}

/** What cannot be read, what is unusual for the style, what the scale cannot show; of one row in this order. */
export function allSaid(cells: FormulaCells, style: StyleName, larder: Larder, scale: Scale): RowNote[] {
  const notes: RowNote[] = [];
  const remark = notesInto(notes);
  const readable = <T>(column: Column<T | Unread>, what: string): Column<T> =>
    column.map((cell, row) => {
      if (!isUnread(cell)) return cell;
      remark(row, `${what} ${cell.unread}`, UNREADABLE);
      return null;
    });
  const names = readable(cells.names, "Ingredient");
  const percents = readable(cells.percents, "Percentage");
  const perMix = readable(cells.perMix, "Weight per mix");
  reviewRows({ names, kinds: cells.kinds, percents }, cells, { style, larder, remark });
  perMix.forEach((each, row) => {
    if (each !== null) offScale(each, scale, (says, matters) => remark(row, says, matters));
  });
  return notes;
}

type Read = Pick<FormulaCells, "kinds"> & { readonly names: Column<string>; readonly percents: Column<PercentCell> };
type Reviewing = { readonly style: StyleName; readonly larder: Larder; readonly remark: Remark };

function reviewRows({ names, kinds, percents }: Read, cells: FormulaCells, { style, larder, remark }: Reviewing): void {
  const known = kindsOfReadable(percents, kinds, names, remark);
  const amounts = percents.map((cell, row) => (known[row] === null ? null : cell));
  const unread = cells.percents.map((cell, row) => isUnread(cell) || (cell !== null && known[row] === null));
  if (amounts.every((cell) => cell === null)) return;
  const open = unread.flatMap((isOpen, row) => (isOpen ? [kinds[row] ?? null] : []));
  const first = Math.max(0, known.findIndex(isFlour));
  try {
    const { shares } = readPercents(amounts, known);
    const all = flourShares(
      shares.map((share) => (share === null ? null : weight(share))),
      known,
    );
    for (const note of review(names, known, all, style, larder)) {
      const { row, says, matters, ...detail } = note;
      if (isSurelyTrue(note, open)) remark(row, says, matters, detail);
    }
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    const flour = amounts.reduce((sum, cell, row) => sum + (isFlour(known[row] ?? null) ? (cell?.value ?? 0) : 0), 0);
    for (const { row, says } of error.faults) {
      const cell = row === undefined ? null : (amounts[row - 1] ?? null);
      if (row !== undefined && cell !== null) remark(row - 1, meant(cell.value, flour), UNREADABLE);
      // Without a row that cannot be read, the sum is nobody's fault yet.
      else if (open.length === 0) remark(first, `Percentages ${says}`, UNREADABLE, { of: "flour" });
    }
  }
}

/** The kinds of the rows that have one; of the others their row says what is wrong. */
function kindsOfReadable(
  percents: Column<PercentCell>,
  kinds: Column<KindCell>,
  names: Column<string>,
  remark: Remark,
): (Kind | null)[] {
  try {
    return kindsOf(percents, kinds, "kinds", names);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    const wrong = new Set(error.faults.map(({ row = 0 }) => row - 1));
    for (const { row = 0, says } of error.faults) remark(row - 1, `Type ${says}`, UNREADABLE);
    return kindsOf(
      percents.map((cell, row) => (wrong.has(row) ? null : cell)),
      kinds,
      "kinds",
      names,
    );
  }
}

/** "3000 %: 30 % meant?" where a column of ratios holds a 30, "0.02 %: 2 % meant?" where a plain one holds a 0.02. */
function meant(value: number, flour: number): string {
  const [asTyped, likely] = flour < 10 ? [value * 100, value] : [value, value * 100];
  return `${showNumber(asTyped, 4)} %: ${showNumber(likely, 4)} % meant? Enter ${showNumber(likely, 6)}%`;
}

/** The kinds of row that a remark of too little rests on; any row may add to what is not named here. */
const RESTS_ON: Readonly<Record<Topic, readonly Kind["word"][]>> = {
  salt: ["salt"],
  yeast: ["yeast", "preferment"],
  sugar: ["sugar"],
  fat: ["fat"],
  egg: ["egg"],
  "milk solids": ["dairy"],
  water: ["water", "ice", "dairy", "preferment"],
};

/** Too little of something is said only where no row that could not be read may hold the rest; `open` are the kinds of those. */
function isSurelyTrue({ topic, side }: RowNote, open: readonly (KindCell | null)[]): boolean {
  if (open.length === 0 || side !== "below") return true;
  if (topic === undefined) return false;
  return open.every((kind) => kind !== null && !isUnread(kind) && !RESTS_ON[topic].includes(kind.word));
}

/** A scale may move a weight by this much before it is said (the default of BAKE_SCALEROUND). */
const MAX_SHIFT = 0.02;

/** Where even the finest step of the scales moves a weight too much. */
function offScale(each: Weight, { steps, unit }: Scale, remark: (says: string, matters: number) => void): void {
  if (steps.length === 0 || !(each > 0)) return;
  const finest = Math.min(...steps);
  const reads = Math.floor(each / finest + 0.5 + 1e-9) * finest;
  const off = Math.abs(reads - each) / each;
  if (atMost(off, MAX_SHIFT)) return;
  const side = reads > each ? "too much" : "too little";
  remark(
    `${shownWeight(each)} on a ${showNumber(finest, 4)} ${unit} scale would read ${shownWeight(reads)}, ${shownShare(off, 0)} ${side}: use a finer scale`,
    1 + off,
  );
}
