import { type Fault, fault, refuse, refuseAll } from "../base/refusal.ts";
import { atMost } from "../base/scaling.ts";
import { showNumber, shownWeight } from "../base/show.ts";
import { type Ratio, ratio, type Weight, weight } from "../base/units.ts";
import { isFlour, isPreferment, type Kind } from "../larder/kinds.ts";
import { type AmountOf, flourOf, flourShares, sum } from "./formula.ts";
import { type Frame, misfits, type PercentCell, type Percents, readPercents, type Style, shareOf } from "./percents.ts";

type Rows = {
  readonly percents: readonly (PercentCell | null)[];
  readonly weights: readonly (Weight | null)[];
  readonly kinds: readonly (Kind | null)[];
};

/** Both typed and this far apart, the two contradict each other. */
const FURTHEST_APART = 0.005;
const FURTHEST_APART_OF_FLOUR = 0.0005;

/**
 * Share of all flour and weight of each row, from rows that have either a percentage or a weight.
 * Without an amount one typed weight is the anchor; with both, everything is multiplied to the amount.
 */
export function fillIn(
  rows: Rows,
  amount: Weight | null,
  of: AmountOf,
): { shares: (Ratio | null)[]; weights: (Weight | null)[] } {
  const { kinds } = rows;
  const { shares, frame } = typedShares(rows);
  const anchor = anchorOf(rows, shares);
  const flour = anchor ?? flourForAmount(rows, shares, amount, of);
  refuseAll(contradictions(rows, shares, flour));
  const filled = shares.map((share, row) => rows.weights[row] ?? (share === null ? null : weight(share * flour)));
  const weights = anchor === null || amount === null ? filled : multiplied(filled, amount, of, frame, kinds);
  return { shares: flourShares(weights, kinds), weights };
}

/** The typed percentages as shares, of the flour that they refer to, and how they were written. */
export function typedShares({ percents, weights, kinds }: Rows): Percents {
  const flourRows = kinds.map((kind, row) => (isFlour(kind) ? row : -1)).filter((row) => row >= 0);
  const typed = flourRows.filter((row) => percents[row] !== null);
  const weighedOnly = flourRows.filter((row) => percents[row] === null && weights[row] !== null);
  if (typed.length > 0 && weighedOnly.length === 0) return readPercents(percents, kinds);
  const starter = kinds.findIndex((kind, row) => isPreferment(kind) && percents[row] !== null);
  if (starter >= 0 && typed.length === 0) {
    refuse(
      "is a preferment with a percentage, which needs a flour row with a percentage too; type the flour's 100%",
      "percents",
      starter + 1,
    );
  }
  const style = typed.length === 0 ? "ratio" : styleOfPart(sum(typed.map((row) => percents[row]?.value ?? 0)));
  refuseAll(misfits(percents, kinds, style, "percents"));
  const shares = percents.map((cell) => (cell === null ? null : ratio(shareOf(cell, style))));
  return { shares, frame: "added flour", style };
}

/** Where one flour has only a weight, the other flours' percentages are a part of 1 or of 100. */
function styleOfPart(flours: number): Style {
  if (atMost(flours, 1 + FURTHEST_APART)) return "ratio";
  if (flours < 100) return "plain";
  return refuse(
    "of the flour rows already make 100 or more, and another flour has a weight; give that row its percentage too",
    "percents",
  );
}

/** The flour the percents refer to, as the typed weights tell it; null when none of them does. */
function anchorOf({ weights, kinds }: Rows, shares: readonly (number | null)[]): number | null {
  const rows = weights.flatMap((row, index) =>
    row === null ? [] : [{ row, share: shares[index] ?? null, kind: kinds[index] ?? null }],
  );
  const flours = rows.filter(({ kind }) => isFlour(kind));
  const weighedOnly = flours.filter(({ share }) => share === null);
  if (weighedOnly.length > 0) {
    const percent = sum(shares.map((share, index) => (isFlour(kinds[index] ?? null) ? share : null)));
    if (percent >= 1) refuse("of the flour rows make 100 % without the flour that has only a weight", "percents");
    return sum(weighedOnly.map(({ row }) => row)) / (1 - percent);
  }
  const share = sum(flours.map((one) => one.share));
  if (share > 0) return sum(flours.map(({ row }) => row)) / share;
  const heaviest = rows.filter((one) => (one.share ?? 0) > 0).sort((a, b) => b.row - a.row)[0];
  return heaviest === undefined ? null : heaviest.row / (heaviest.share ?? 1);
}

function flourForAmount(
  { weights }: Rows,
  shares: readonly (number | null)[],
  amount: Weight | null,
  of: AmountOf,
): number {
  if (amount === null) {
    return refuse(
      "give no anchor. Type the weight of one row that has a percentage, such as the flour, or give an amount of dough or flour",
      "percents",
    );
  }
  if (of === "flour") return amount;
  const left = amount - sum(weights);
  if (left <= 0) {
    return refuse(
      `is ${shownWeight(amount)}, and the typed weights alone make ${shownWeight(sum(weights))}; nothing is left for the rows in percent`,
      "amount",
    );
  }
  const percent = sum(shares.map((share, row) => (weights[row] === null ? share : null)));
  if (!(percent > 0)) {
    return refuse(
      "of the rows without a weight add up to 0; type a percentage above 0, or leave the amount out",
      "percents",
    );
  }
  return left / percent;
}

function contradictions({ weights }: Rows, shares: readonly (number | null)[], flour: number): Fault[] {
  return weights.flatMap((typed, row) => {
    const share = shares[row] ?? null;
    if (typed === null || share === null) return [];
    const meant = share * flour;
    const gap = Math.abs(typed - meant);
    if (gap <= Math.max(FURTHEST_APART * meant, FURTHEST_APART_OF_FLOUR * flour) * (1 + 1e-9)) return [];
    const says = `says two things: ${showNumber(share * 100, 3)} % of ${shownWeight(flour)} is ${shownWeight(meant)}, and ${shownWeight(typed)} is typed, ${shownWeight(gap)} apart; clear one of the two`;
    return [fault(says, "weights", row + 1)];
  });
}

function multiplied(
  filled: readonly (Weight | null)[],
  amount: Weight,
  of: AmountOf,
  frame: Frame,
  kinds: Rows["kinds"],
) {
  const now = of === "dough" ? sum(filled) : flourOf(frame, filled, kinds);
  if (!(now > 0)) refuse("hold nothing that could be brought to the amount", "weights");
  return filled.map((row) => (row === null ? null : weight((row * amount) / now)));
}
