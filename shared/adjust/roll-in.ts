// Fat that is rolled in: another fat, another share, and what a share of one thing is as a share of another.
import { refuse } from "../base/refusal.ts";
import { atMost } from "../base/scaling.ts";
import { quote, shownShare } from "../base/show.ts";
import { builtInNamed } from "../larder/built-in-larder.ts";
import { findIngredient, type Larder } from "../larder/larder.ts";
import type { Change, Changed, Field } from "./change.ts";
import { fieldReader } from "./field-input.ts";
import { rolledOfFlour } from "./figures.ts";
import { allFlour, allRows, amountOf, baseOf, type Formula, ROLL_IN, ROLLED_OF, type RollIn } from "./formula.ts";
import { orNull, partsMoved } from "./parts.ts";

const OF: Readonly<Record<RollIn["of"], string>> = {
  base: "the base dough",
  finished: "the finished dough",
  flour: "the flour",
};
const words = ({ share, of }: RollIn): string => `${shownShare(share)} of ${OF[of]}`;
/** As much as the sheet takes of dough or flour, and of a finished dough. */
const MAX_SHARE = 2;
const MAX_OF_FINISHED = 0.9;

export const rollIn: Change = {
  name: "roll-in",
  group: "Salt, sugar and fat",
  label: "Roll-in fat: another fat, or another share",
  words: "laminated croissant puff pastry butter margarine shortening layers sheet block lamination richer",
  fields: ({ rollIn: now }): Field[] =>
    now === null
      ? []
      : [
          { name: "fat", label: "Fat to roll in", start: now.name, isText: true },
          { name: "share", label: "Share (%)", start: String(Number((now.share * 100).toPrecision(12))) },
          {
            name: "of",
            label: "Share of",
            choices: ROLLED_OF,
            start: now.of,
            hint: "Base or finished dough, or flour.",
          },
        ],
  apply: (formula, values, larder) => {
    const now = formula.rollIn;
    if (now === null)
      return refuse("This sheet has no roll-in fat. Build a sheet of the template Laminated dough for it.");
    const input = fieldReader(rollIn.fields(formula), values);
    const of = input.choice("of", ROLLED_OF);
    const share = input.share("share", { min: 0, max: of === "finished" ? MAX_OF_FINISHED : MAX_SHARE });
    const name = input.text("fat");
    if (name === "" && share > 0) refuse("Fat to roll in is blank. Enter a fat such as Sheet butter.");
    mustBeFirm(name, larder);
    return withRollIn(formula, { name, share, of }, larder);
  },
};

/** A formula with another roll-in: the finished dough stays as it is ordered, and what else moves is said. */
export function withRollIn(formula: Formula, wanted: RollIn, larder: Larder): Changed {
  const now = formula.rollIn ?? { name: "", share: 0, of: wanted.of };
  const after: Formula = { ...formula, rollIn: wanted };
  const called = now.name === wanted.name ? [] : [`${now.name || "no fat"} is ${wanted.name || "no fat"}`];
  const shared = words(now) === words(wanted) ? [] : [`${words(now)} to ${words(wanted)}`];
  return {
    formula: after,
    line: `Roll-in ${[...called, ...shared].join(", ") || `stays ${words(now)}`}`,
    rows: new Set([ROLL_IN]),
    parts: ["roll-in"],
    notes: [
      `Roll-in fat: ${shownShare(rolledOfFlour(formula))} to ${shownShare(rolledOfFlour(after))} of flour. The percentages of the dough stay.`,
      ...partsMoved(allRows(formula), allRows(after), larder),
      ...waterMoved(formula, after, larder),
      ...(called.length === 0
        ? []
        : ["Choose a fat as firm as the dough at your room temperature. Test one block first."]),
    ],
    cautions: [],
  };
}

/** Water of the fat is none of the dough's, and steams in the oven. */
function waterMoved(before: Formula, after: Formula, larder: Larder): string[] {
  const held = (formula: Formula) => {
    const { rollIn: block } = formula;
    const water =
      block === null || block.share === 0 ? 0 : (orNull(() => findIngredient(larder, block.name))?.water ?? null);
    return water === null ? null : water * rolledOfFlour(formula);
  };
  const [was, now] = [held(before), held(after)];
  if (was === null || now === null || shownShare(was) === shownShare(now)) return [];
  return [
    `Water in the roll-in fat: ${shownShare(was)} to ${shownShare(now)} of flour. It does not count as the dough's.`,
  ];
}

/** Refuses what is liquid, and what is no fat. */
export function mustBeFirm(name: string, larder: Larder): void {
  const known = orNull(() => findIngredient(larder, name)) ?? undefined;
  const builtIn = builtInNamed(name) ?? (known === undefined ? undefined : builtInNamed(known.name));
  if ([name, known?.name ?? "", builtIn?.name ?? ""].some((one) => /\boils?$/i.test(one.trim())))
    refuse("Oil cannot be rolled in: it soaks into the dough, and no layers form. Choose a fat that is firm.");
  if (builtIn !== undefined && builtIn.kind !== "fat")
    refuse(`${quote(name)} is no fat. Enter a fat that is firm, such as butter or margarine.`);
}

/** The share that comes to so much fat, in the words of the roll-in; the amount is over the flour of 100 %. */
export function shareFor(formula: Formula, { of }: RollIn, amount: number): number {
  const part = amount / amountOf(formula.rows);
  if (of === "base") return part;
  return of === "flour" ? amount / baseOf(formula.rows, formula.frame) : part / (1 + part);
}

/** All fat to a share of all flour: the dough's own stays, and the roll-in makes up the rest. */
export function rollInTo(formula: Formula, wanted: number, fat: number, larder: Larder): Changed {
  const now = formula.rollIn;
  if (now === null || now.name === "")
    return refuse("The sheet names no fat to roll in. Enter its name on the sheet first.");
  if (!atMost(fat, wanted))
    refuse(
      `The dough has ${shownShare(fat)} of fat without the roll-in. Enter more than that, or change the dough's fat first.`,
    );
  const share = shareFor(formula, now, Math.max(0, wanted - fat) * allFlour(formula.rows));
  const most = now.of === "finished" ? MAX_OF_FINISHED : MAX_SHARE;
  if (!atMost(share, most))
    refuse(
      `That is ${shownShare(share)} of ${OF[now.of]} as roll-in, and a sheet takes ${shownShare(most)}. Enter less fat.`,
    );
  return withRollIn(formula, { ...now, share }, larder);
}

/** What a change of the dough does to a roll-in whose share stays. */
export function rollInMoved(before: Formula, changed: Changed): Changed {
  const { formula, rows, notes } = changed;
  if (rows.has(ROLL_IN) || before.rollIn === null) return changed;
  const [was, now] = [rolledOfFlour(before), rolledOfFlour(formula)];
  const amount = (one: Formula) => allRows(one).find(({ id }) => id === ROLL_IN)?.amount ?? 0;
  const isSame = Math.abs(amount(before) - amount(formula)) <= 1e-9 * Math.max(amount(before), amount(formula));
  if (isSame && shownShare(was) === shownShare(now)) return changed;
  return {
    ...changed,
    rows: new Set([...rows, ROLL_IN]),
    notes: [
      ...notes,
      `The roll-in fat stays ${words(before.rollIn)}, which is ${shownShare(was)} to ${shownShare(now)} of flour.`,
    ],
  };
}
