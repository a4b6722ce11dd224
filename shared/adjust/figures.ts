// What a formula comes to, before and after: the same sums as the cells of its sheet.
import { inUnit, showNumber, shownShare } from "../base/show.ts";
import { builtInNamed } from "../larder/built-in-larder.ts";
import type { Larder } from "../larder/larder.ts";
import {
  allFlour,
  allRows,
  amountOf,
  type Formula,
  plainHydration,
  prefermented,
  type Row,
  rollPart,
  scaledOf,
  shareOf,
} from "./formula.ts";
import { billOf, doughOf, type Money, pieceMoney } from "./money.ts";
import { orNull, partOf } from "./parts.ts";
import { effectiveHydration } from "./water.ts";

export type Figure = { readonly label: string; readonly before: string; readonly after: string };

type Shown = (value: number) => string;

/** What neither of the two has, or has any of, is left out. */
function pair(label: string, was: number | null, now: number | null, shown: Shown): Figure[] {
  const say = (value: number | null) => (value === null ? "not known" : shown(value));
  return (was ?? 0) === 0 && (now ?? 0) === 0 ? [] : [{ label, before: say(was), after: say(now) }];
}

/** `other` is the money of the sheet that the second formula is of, where that is another sheet. */
export function figuresOf(
  before: Formula,
  after: Formula,
  money: Money,
  larder: Larder,
  other: Money = money,
): Figure[] {
  const both = (label: string, of: (formula: Formula) => number | null, shown: Shown): Figure[] =>
    pair(label, of(before), of(after), shown);
  const share = (label: string, of: (formula: Formula) => number | null): Figure[] =>
    both(label, of, (value) => shownShare(value));
  const weighs: Shown = (value) => inUnit(value, after.options.weight);
  const time = ({ steps }: Formula) => steps.reduce((sum, { minutes }) => sum + (minutes ?? 0), 0);
  const [was, now] =
    other === money
      ? pieceMoney(before, after, money, larder, 0)
      : [pieceMoney(before, before, money, larder, 0)[0], pieceMoney(after, after, other, larder, 0)[0]];
  const bill = (formula: Formula, money: Money) => billOf(formula, money, larder)?.cost ?? null;
  return [
    ...share("Hydration", ({ rows }) => plainHydration(rows)),
    ...share("Effective hydration", ({ rows }) => orNull(() => effectiveHydration(rows, larder))),
    ...share("Salt", ({ rows }) => shareOf(rows, "salt")),
    ...share("Yeast", ({ rows }) => shareOf(rows, "yeast")),
    ...share("Sugar", ({ rows }) => shareOf(rows, "sugar")),
    ...fats(before, after),
    ...share("Prefermented flour", prefermented),
    ...share("Flour protein, by table", ({ rows }) => flourProtein(rows, larder)),
    ...both("Dough", doughOf, weighs),
    ...both("Piece, baked", ({ sizes }) => sizes[0]?.baked ?? null, weighs),
    ...both(
      `Piece, across (${after.options.length})`,
      ({ sizes }) => sizes[0]?.diameter ?? null,
      (value) => showNumber(value),
    ),
    ...both(
      `Weight per area (${after.options.weight}/${after.options.length}²)`,
      ({ perArea }) => perArea,
      (value) => showNumber(value, 3),
    ),
    ...both("Piece, scaled", (formula) => scaledOf(formula.sizes[0], formula), weighs),
    ...both("All steps", time, timeOf),
    ...pair("Cost of ingredients", bill(before, money), bill(after, other), (value) => showNumber(value)),
    ...pair("Cost of a piece", was.cost, now.cost, (value) => showNumber(value, 3)),
    ...pair("Margin", was.margin, now.margin, (value) => shownShare(value, 1)),
  ];
}

/** Minutes as a person says them: 4 h 20 min. */
function timeOf(minutes: number): string {
  const whole = Math.round(minutes);
  const [hours, rest] = [Math.floor(whole / 60), whole % 60];
  return [...(hours > 0 ? [`${hours} h`] : []), ...(rest > 0 || hours === 0 ? [`${rest} min`] : [])].join(" ");
}

/** What is rolled in is told apart from the dough's own fat, and counted with it. */
function fats(before: Formula, after: Formula): Figure[] {
  const share = (label: string, of: (formula: Formula) => number): Figure[] =>
    pair(label, of(before), of(after), (value) => shownShare(value));
  const fatShare = ({ rows }: Formula) => shareOf(rows, "fat");
  if (rollPart(before) === 0 && rollPart(after) === 0) return share("Fat", fatShare);
  return [
    ...share("Fat in the dough", fatShare),
    ...share("Roll-in fat, of flour", rolledOfFlour),
    ...share("All fat, of flour", (formula) => shareOf(allRows(formula), "fat")),
  ];
}

/** What is rolled in, over all flour. */
export const rolledOfFlour = (formula: Formula): number =>
  (amountOf(formula.rows) * rollPart(formula)) / allFlour(formula.rows);

/** Protein of all flour with the gluten that is added to it, over both; null where a flour's is not known. */
export function flourProtein(rows: readonly Row[], larder: Larder): number | null {
  const strong = rows.filter(({ kind, name }) => kind.flour > 0 || builtInNamed(name)?.name === "vital wheat gluten");
  const held = partOf(strong, "protein", larder);
  const whole = strong.reduce((sum, { amount, kind }) => sum + amount * (kind.flour > 0 ? kind.flour : 1), 0);
  return held === null || !(whole > 0) ? null : (held * allFlour(strong)) / whole;
}
