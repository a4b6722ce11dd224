import { CellError } from "../base/refusal.ts";
import { atMost } from "../base/scaling.ts";
import { shown, shownShare, shownWeight } from "../base/show.ts";
import { type Weight, type WeightUnit, weight } from "../base/units.ts";
import { isProblem, type Reader } from "../cells/cell.ts";
import { flourShares } from "../formula/formula.ts";
import { type PercentCell, readPercents } from "../formula/percents.ts";
import { isFlour, type Kind, type KindCell, kindsOf } from "../larder/kinds.ts";
import type { Larder } from "../larder/larder.ts";
import type { StyleName } from "./bands.ts";
import { review } from "./review.ts";

/** A cell that could not be read waits here: what is wrong with it becomes its row's remark. */
export type Unread = { readonly unread: string };
const isUnread = (cell: unknown): cell is Unread => typeof cell === "object" && cell !== null && "unread" in cell;

/** Reads what it can, and keeps what is wrong with the rest. */
export function leniently<T>(reader: Reader<T>): Reader<T | Unread> {
  return {
    hint: reader.hint,
    read: (raw) => {
      const read = reader.read(raw);
      return isProblem(read) ? { unread: read.problem } : (read as T);
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

/** The notes beside a formula's rows: what cannot be read, what is unusual for the style, what the scale cannot show. */
export function notes(cells: FormulaCells, style: StyleName, larder: Larder, scale: Scale): (string | null)[] {
  const said = cells.percents.map((): string[] => []);
  const names = cells.names.map((cell, row) => readable(cell, "Ingredient", said[row]));
  const percents = cells.percents.map((cell, row) => readable(cell, "Percentage", said[row]));
  const perMix = cells.perMix.map((cell, row) => readable(cell, "Weight per mix", said[row]));
  reviewRows({ names, kinds: cells.kinds, percents }, cells, style, larder).forEach((remarks, row) => {
    said[row]?.push(...remarks);
  });
  perMix.forEach((each, row) => {
    const remark = each === null ? null : offScale(each, scale);
    if (remark !== null) said[row]?.push(remark);
  });
  return said.map((remarks) => (remarks.length === 0 ? null : remarks.join("; ")));
}

function readable<T>(cell: T | Unread | null, what: string, said: string[] | undefined): T | null {
  if (!isUnread(cell)) return cell;
  said?.push(`${what} ${cell.unread}`);
  return null;
}

type Read = Pick<FormulaCells, "kinds"> & { readonly names: Column<string>; readonly percents: Column<PercentCell> };

function reviewRows(
  { names, kinds, percents }: Read,
  cells: FormulaCells,
  style: StyleName,
  larder: Larder,
): string[][] {
  const said = percents.map((): string[] => []);
  const known = kindsOfReadable(percents, kinds, names, said);
  const amounts = percents.map((cell, row) => (known[row] === null ? null : cell));
  const unread = cells.percents.map((cell, row) => isUnread(cell) || (cell !== null && known[row] === null));
  if (amounts.every((cell) => cell === null)) return said;
  const open = unread.flatMap((isOpen, row) => (isOpen ? [kinds[row] ?? null] : []));
  const first = Math.max(0, known.findIndex(isFlour));
  try {
    const { shares } = readPercents(amounts, known);
    const all = flourShares(
      shares.map((share) => (share === null ? null : weight(share))),
      known,
    );
    review(names, known, all, style, larder).forEach((remarks, row) => {
      if (remarks !== null) said[row]?.push(...surelyTrue(remarks.split("; "), open));
    });
  } catch (error) {
    if (!(error instanceof CellError)) throw error;
    const flour = amounts.reduce((sum, cell, row) => sum + (isFlour(known[row] ?? null) ? (cell?.value ?? 0) : 0), 0);
    for (const { row, says } of error.faults) {
      const cell = row === undefined ? null : (amounts[row - 1] ?? null);
      if (row !== undefined && cell !== null) said[row - 1]?.push(meant(cell.value, flour));
      // Without a row that cannot be read, the sum is nobody's fault yet.
      else if (open.length === 0) said[first]?.push(`Percentages ${says}`);
    }
  }
  return said;
}

/** The kinds of the rows that have one; of the others their row says what is wrong. */
function kindsOfReadable(
  percents: Column<PercentCell>,
  kinds: Column<KindCell>,
  names: Column<string>,
  said: readonly string[][],
): (Kind | null)[] {
  try {
    return kindsOf(percents, kinds, "kinds", names);
  } catch (error) {
    if (!(error instanceof CellError)) throw error;
    const wrong = new Set(error.faults.map(({ row = 0 }) => row - 1));
    for (const { row = 0, says } of error.faults) said[row - 1]?.push(`Kind ${says}`);
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
  const [read, likely] = flour < 10 ? [value * 100, value] : [value, value * 100];
  return `${shown(read, 4)} %: ${shown(likely, 4)} % meant? Enter ${shown(likely, 6)}%`;
}

/** The kinds of row that a remark of too little rests on, by its first words; any row may add to what is not named here. */
const RESTS_ON: readonly (readonly [RegExp, readonly string[]])[] = [
  [/^Salt /, ["salt"]],
  [/^(?:Fresh y|Dry y|Y)east/, ["yeast", "preferment"]],
  [/^Sugar /, ["sugar"]],
  [/^Fat /, ["fat"]],
  [/^Egg /, ["egg"]],
  [/^Milk solids /, ["dairy"]],
  [/^Water/, ["water", "ice", "dairy", "preferment"]],
];

/** Too little of something is said only where no row that could not be read may hold the rest; `open` are the kinds of those. */
function surelyTrue(remarks: readonly string[], open: readonly (KindCell | null)[]): string[] {
  if (open.length === 0) return [...remarks];
  return remarks.filter((says) => {
    if (!says.includes(", below the usual range")) return true;
    const words = RESTS_ON.find(([begins]) => begins.test(says))?.[1];
    return words !== undefined && open.every((kind) => kind !== null && !isUnread(kind) && !words.includes(kind.word));
  });
}

/** A scale may move a weight by this much before it is said (the default of BAKE_SCALEROUND). */
const MOST_SHIFT = 0.02;

/** Where even the finest step of the scales moves a weight too much. */
function offScale(each: Weight, { steps, unit }: Scale): string | null {
  if (steps.length === 0 || !(each > 0)) return null;
  const finest = Math.min(...steps);
  const reads = Math.floor(each / finest + 0.5 + 1e-9) * finest;
  const off = Math.abs(reads - each) / each;
  if (atMost(off, MOST_SHIFT)) return null;
  const side = reads > each ? "too much" : "too little";
  return `${shownWeight(each)} on a ${shown(finest, 4)} ${unit} scale would read ${shownWeight(reads)}, ${shownShare(off, 0)} ${side}: use a finer scale`;
}
