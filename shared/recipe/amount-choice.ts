// One amount of several that a line gives: a written weight before a measure, and what disagrees with it.
import { showNumber } from "../base/show.ts";
import { countedWeight } from "./count-weight.ts";
import type { Choice } from "./line-parts.ts";
import { type LineRemark, noteOf, type Search, type Weighed, type Weight, weightOf } from "./weight.ts";

/** Amounts of one line that differ by more than this are remarked: a spoon and its rounded ounces often do. */
const APART = 0.15;

/** The first written weight in the open, else in brackets; else the first amount that can be weighed. */
export function chosen(choices: readonly Choice[], search: Search, remarks: LineRemark[]): Weighed {
  const [only] = choices;
  if (only !== undefined && choices.length === 1) return weightOf(only.amount, search);
  const inOrder = [...choices.filter(({ bracketed }) => !bracketed), ...choices.filter(({ bracketed }) => bracketed)];
  const isWritten = ({ amount }: Choice) => amount.low.every(({ unit }) => unit.of === "weight");
  const preferred = [...inOrder.filter(isWritten), ...inOrder.filter((choice) => !isWritten(choice))];
  let says: string | undefined;
  for (const choice of preferred) {
    const weighed = countedWeight(choice, search, remarks);
    if (!("says" in weighed)) {
      const contradiction = compare(choice, weighed, choices, search, remarks);
      return contradiction === undefined ? weighed : { says: contradiction };
    }
    // A number that may be read two ways is never passed over for the next.
    if (isWritten(choice)) return weighed;
    says = says ?? weighed.says;
  }
  return { says: says ?? "no amount" };
}

/** Remarks amounts that disagree; two that nothing joins ("3 lb flour 2 oz") cannot be told apart and come back as a fault. */
function compare(
  taken: Choice,
  weight: Weight,
  choices: readonly Choice[],
  search: Search,
  remarks: LineRemark[],
): string | undefined {
  const middle = (one: Weight) => (one.least + one.most) / 2;
  for (const choice of choices) {
    const isMeasured = choice.amount.low.every(({ unit }) => unit.of === "weight" || unit.of === "volume");
    const other = choice === taken || !isMeasured ? undefined : countedWeight(choice, search, []);
    if (other === undefined || "says" in other) continue;
    const apart = Math.max(middle(other), middle(weight)) / Math.min(middle(other), middle(weight)) - 1;
    if (!(apart > APART)) continue;
    const later = choices.indexOf(choice) > choices.indexOf(taken) ? choice : taken;
    if (later.link === "unsaid" && !choice.bracketed && !taken.bracketed) {
      return `two amounts that disagree, ${showNumber(middle(weight), 1)} g and ${showNumber(middle(other), 1)} g; keep one`;
    }
    const both = `${showNumber(middle(weight), 1)} g is taken, ${showNumber(middle(other), 1)} g stands beside it`;
    remarks.push(noteOf(`${both}, ${showNumber(apart * 100, 0)} % apart`));
  }
  return undefined;
}
