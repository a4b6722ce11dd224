// All that can be asked of a formula, in the order in which it is offered.
import { refuse } from "../base/refusal.ts";
import { quote } from "../base/show.ts";
import { foldText } from "../base/words.ts";
import type { Larder } from "../larder/larder.ts";
import { fat, salt, sugar } from "./amounts.ts";
import type { Change, Changed, Values } from "./change.ts";
import { blend, otherFlour } from "./flours.ts";
import type { Formula } from "./formula.ts";
import { preferment } from "./preferment.ts";
import { protein } from "./protein.ts";
import { retard } from "./retard.ts";
import { rollIn, rollInMoved } from "./roll-in.ts";
import { otherRound } from "./round.ts";
import { short } from "./shortage.ts";
import { otherTin, pieceWeight } from "./sizes.ts";
import { swap } from "./swap.ts";
import { hydration } from "./water.ts";
import { yeastTime } from "./yeast-time.ts";

export const CHANGES: readonly Change[] = [
  yeastTime,
  retard,
  hydration,
  salt,
  sugar,
  fat,
  rollIn,
  protein,
  blend,
  otherFlour,
  preferment,
  swap,
  otherTin,
  pieceWeight,
  otherRound,
  short,
];

/** One change as it is asked: which, and what was typed. */
export type Wish = { readonly change: string; readonly values: Values };

export const changeNamed = (name: string): Change =>
  CHANGES.find((one) => one.name === name) ?? refuse(`There is no change called ${quote(name)}.`);

/** Those whose words all stand in what a change is found by; all of them where nothing is typed. */
export function changesFor(search: string): readonly Change[] {
  const words = foldText(search)
    .split(" ")
    .filter((word) => word !== "");
  return CHANGES.filter(({ label, words: more, group }) => {
    const text = foldText(`${label} ${more} ${group}`);
    return words.every((word) => text.includes(word));
  });
}

export const applyWish = (formula: Formula, { change, values }: Wish, larder: Larder): Changed =>
  rollInMoved(formula, changeNamed(change).apply(formula, values, larder));

/** One after another: each on what the one before it made. */
export function applyAll(formula: Formula, wishes: readonly Wish[], larder: Larder): readonly Changed[] {
  const all: Changed[] = [];
  for (const wish of wishes) all.push(applyWish(all[all.length - 1]?.formula ?? formula, wish, larder));
  return all;
}
