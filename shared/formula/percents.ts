import { readNumber } from "../base/number.ts";
import { type Fault, fault, isFault, Refusal, refuse, refuseAll } from "../base/refusal.ts";
import { atMost } from "../base/scaling.ts";
import { showNumber } from "../base/show.ts";
import { type Ratio, ratio } from "../base/units.ts";
import { number, type Reader } from "../cells/cell.ts";
import { isFlour, isPreferment, type Kind } from "../larder/kinds.ts";

/** A percentage as it was typed; `marked` when it carries its own % sign, which settles it. */
export type PercentCell = { readonly value: number; readonly marked: boolean };

export const percent = (): Reader<PercentCell> => {
  const plain = number("a percentage such as 65%", { min: 0, max: 1e7 }, { percent: true, threeDecimals: true });
  return {
    hint: { of: "percent" },
    read: (raw) => {
      const value = plain.read(raw);
      if (isFault(value)) return value;
      const text = typeof raw === "string" ? readNumber(raw, { percent: true }) : undefined;
      return { value, marked: text !== undefined && !("says" in text) && text.marked };
    },
  };
};

/** Flour rows may miss 100 % by half a point: 33.3 three times. */
const TOLERANCE = 0.005;

/** How a column of percentages was written: as ratios (65 % arrives as 0.65) or as plain numbers (65). */
export type Style = "ratio" | "plain";
/** What the flour percents are shares of: flour that goes in by itself, or that and the flour inside preferments. */
export type Frame = "added flour" | "all flour";

export const shareOf = (cell: PercentCell, style: Style): number =>
  style === "plain" && !cell.marked ? cell.value / 100 : cell.value;

type Cells = readonly (PercentCell | null)[];
type Kinds = readonly (Kind | null)[];

export type Percents = {
  /** Each row over the flour of the frame; null where the row has none. */
  readonly shares: readonly (Ratio | null)[];
  readonly frame: Frame;
  readonly style: Style;
};

/** Reads a whole column of percentages: the flour rows decide how it was written and which flour it refers to. */
export function readPercents(cells: Cells, kinds: Kinds, argument = "percents"): Percents {
  if (!cells.some((cell, row) => cell !== null && isFlour(kinds[row] ?? null))) {
    refuse(
      "have no flour row; every percentage refers to the flour, so a row of the type flour needs its percentage",
      argument,
    );
  }
  const fits = (["ratio", "plain"] as const).flatMap((style) => {
    const fit = frameOf(cells, kinds, style);
    return fit === undefined ? [] : [{ style, ...fit, faults: misfits(cells, kinds, style, argument) }];
  });
  const [good, other] = fits.filter(({ faults }) => faults.length === 0);
  // Only where every flour row carries its own % sign can both hold.
  if (good !== undefined && other !== undefined) refuseAll(unclear(cells, argument));
  if (good === undefined) {
    const first = fits[0];
    if (first === undefined) return refuse(wrongSum(cells, kinds), argument);
    throw new Refusal(first.faults);
  }
  const { style, frame, sum } = good;
  return { shares: cells.map((cell) => (cell === null ? null : ratio(shareOf(cell, style) / sum))), frame, style };
}

const unclear = (cells: Cells, argument: string): Fault[] =>
  cells.flatMap((cell, row) =>
    cell === null || cell.marked || cell.value === 0
      ? []
      : [
          fault(
            `is ${showNumber(cell.value, 4)} beside flour with a % sign; enter ${showNumber(cell.value, 4)}% or ${showNumber(cell.value * 100, 4)}%, whichever is meant`,
            argument,
            row + 1,
          ),
        ],
  );

/** The frame in which the flours make 100 %, and the sum that every row is divided by. */
function frameOf(cells: Cells, kinds: Kinds, style: Style): { frame: Frame; sum: number } | undefined {
  let added = 0;
  let inside = 0;
  cells.forEach((cell, row) => {
    const kind = kinds[row] ?? null;
    if (cell === null || kind === null) return;
    if (isFlour(kind)) added += shareOf(cell, style);
    else inside += shareOf(cell, style) * kind.flour;
  });
  const gaps = { added: Math.abs(added - 1), all: Math.abs(added + inside - 1) };
  if (atMost(gaps.added, TOLERANCE) && gaps.added <= gaps.all) return { frame: "added flour", sum: added };
  return atMost(gaps.all, TOLERANCE) ? { frame: "all flour", sum: added + inside } : undefined;
}

/** A larger sum of flour percentages is no slip of the pen. */
const MAX_SUM = 200;

function wrongSum(cells: Cells, kinds: Kinds): string {
  let sum = 0;
  cells.forEach((cell, row) => {
    if (cell !== null && isFlour(kinds[row] ?? null)) sum += cell.marked ? cell.value * 100 : cell.value;
  });
  const preferments = kinds.some(isPreferment) ? ", with or without the flour inside preferments" : "";
  const weights = sum > MAX_SUM ? "; if these are weights, BAKE_FLOURPCT makes shares of them" : "";
  return `have flour rows that add up to ${showNumber(sum, 3)}; all flours together${preferments} make 100 (or 100%)${weights}`;
}

/** The most a row of a ratio column may be before it reads as a percentage typed plain. */
const MAX_RATIO: Readonly<Partial<Record<Kind["word"], number>>> = {
  salt: 0.25,
  yeast: 0.15,
  water: 3,
  fat: 3,
  sugar: 5,
  egg: 5,
  dairy: 5,
  fruit: 5,
};
const MAX_OF_ANY = 40;
/** A dough that yeast or a preferment raises has no water above 200 %, and of nothing else but flour and preferment as much. */
const MAX_LEAVENED = 2;

/**
 * The least a row of a plain column may be before it reads as a share: nobody weighs less of it. With egg or fruit and
 * without yeast it is a cake, in which fat, sugar, egg and fruit reach five times the flour; there a lesser figure can be
 * read both ways.
 */
const MIN_PLAIN: Readonly<Partial<Record<Kind["word"], number>>> = {
  salt: 0.1,
  yeast: 0.05,
  water: 5,
  fat: 1,
  sugar: 1,
  egg: 1,
  dairy: 1,
  grain: 1,
  fruit: 1,
};
const MIN_IN_CAKE: typeof MIN_PLAIN = { fat: 5, sugar: 5, egg: 5, fruit: 5 };

/** Rows that can't have been written in this style. */
export function misfits(cells: Cells, kinds: Kinds, style: Style, argument: string): Fault[] {
  const rows = cells.flatMap((cell, row) => {
    const kind = kinds[row] ?? null;
    return cell === null || kind === null || cell.marked || isFlour(kind)
      ? []
      : [{ value: cell.value, kind, row: row + 1 }];
  });
  const leavened = cells.some(
    (cell, row) => cell !== null && (kinds[row]?.word === "yeast" || isPreferment(kinds[row] ?? null)),
  );
  const isTooMuch = (value: number, { word }: Kind) =>
    !atMost(value, MAX_RATIO[word] ?? MAX_OF_ANY) ||
    (leavened && word !== "preferment" && (word === "water" ? !atMost(value, MAX_LEAVENED) : value >= MAX_LEAVENED));
  const isCake =
    !leavened &&
    cells.some(
      (cell, row) => cell !== null && cell.value > 0 && (kinds[row]?.word === "egg" || kinds[row]?.word === "fruit"),
    );
  const least = ({ word }: Kind) => (isCake ? MIN_IN_CAKE[word] : undefined) ?? MIN_PLAIN[word] ?? 0;
  const wrong = rows.filter(({ value, kind }) =>
    style === "ratio" ? isTooMuch(value, kind) : value > 0 && !atMost(least(kind), value),
  );
  const small = rows.filter(({ value, kind }) => value > 0 && kind.word !== "other");
  const allSmall =
    style === "plain" && small.every(({ value }) => value < 1) && small.some(({ kind }) => kind.word !== "yeast");
  return (allSmall ? small : wrong).map(({ value, row }) => fault(bothWays(value, style), argument, row));
}

function bothWays(value: number, style: Style): string {
  const v = showNumber(value, 4);
  return style === "ratio"
    ? `is ${v}, which beside flour of 1 (100%) is ${showNumber(value * 100)} %; enter ${v}% (${showNumber(value / 100, 6)}). Or type every row plain, the flour as 100`
    : `is ${v}, which beside flour of 100 is ${v} %; enter ${showNumber(value * 100, 4)}, or ${v}% if that is meant. Or type every row as a share, the flour as 100% (1)`;
}
