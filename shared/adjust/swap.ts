// One ingredient in the place of another: the dough's water stays, and one part that is named; everything else that moves is said.
import { refuse } from "../base/refusal.ts";
import { shownShare } from "../base/show.ts";
import { weight } from "../base/units.ts";
import { swap as exchange } from "../enrichment/enrichment.ts";
import type { Yeast } from "../formula/yeast.ts";
import { builtInNamed } from "../larder/built-in-larder.ts";
import { findIngredient, type Larder, requireIngredient } from "../larder/larder.ts";
import type { StyleName } from "../review/bands.ts";
import type { Change, Changed, Field } from "./change.ts";
import { editOf } from "./edit.ts";
import { fieldReader } from "./field-input.ts";
import { allFlour, allRows, type Formula, ROLL_IN, type Row, shownName } from "./formula.ts";
import { orNull, partsMoved } from "./parts.ts";
import { mustBeFirm, shareFor, withRollIn } from "./roll-in.ts";
import { SWAPS, type Swap } from "./swaps.ts";
import { otherYeast, putInstead, YEAST_KINDS, YEAST_NAMES } from "./yeast-swap.ts";

type Offer =
  | { readonly row: Row; readonly label: string; readonly swap: Swap }
  | { readonly row: Row; readonly label: string; readonly from: Yeast; readonly to: Yeast };

/** Every swap that the formula has a row for. */
export function offersFor(formula: Formula): Offer[] {
  return allRows(formula)
    .filter(({ amount, name }) => amount > 0 && name !== "")
    .flatMap((row): Offer[] => {
      const known = knownAs(row);
      const label = (name: string) => `${shownName(row)} → ${name}`;
      const yeast = YEAST_KINDS.find((one) => known === `${one} yeast`);
      const yeasts = yeast === undefined ? [] : YEAST_KINDS.filter((one) => one !== yeast);
      return [
        ...SWAPS.filter(({ from }) => from === known).map((swap) => ({ row, swap, label: label(swap.name) })),
        ...yeasts.map((to) => ({ row, from: yeast as Yeast, to, label: label(YEAST_NAMES[to]) })),
      ];
    });
}

/** Butter for rolling goes by many names, and is butter. */
const knownAs = ({ id, name }: Row): string | undefined =>
  builtInNamed(name)?.name ?? (id === ROLL_IN && /\bbutter$/i.test(name) ? "unsalted butter" : undefined);

export const swap: Change = {
  name: "swap",
  group: "Swap an ingredient",
  label: "Swap one ingredient for another",
  words:
    "fresh dry instant yeast egg eggs dried yolk white milk powder water butter oil sugar honey instead substitute replace vegan cheaper cost price",
  fields: (formula): Field[] => {
    const labels = offersFor(formula).map(({ label }) => label);
    return [
      { name: "swap", label: "Swap", choices: labels, start: labels[0] ?? "" },
      { name: "part", label: "How much of it (%)", start: "100" },
    ];
  },
  apply: (formula, values, larder) => {
    const offers = offersFor(formula);
    if (offers.length === 0)
      refuse(
        "Nothing in this formula has a swap. Yeast, egg, milk, butter, oil, sugar and honey do: enter their names as in the list of ingredients.",
      );
    const input = fieldReader(swap.fields(formula), values);
    const chosen = input.choice(
      "swap",
      offers.map(({ label }) => label),
    );
    const part = input.share("part", { above: 0, max: 1 });
    const offer = offers.find(({ label }) => label === chosen);
    if (offer === undefined) return refuse("Choose a swap.");
    return "swap" in offer ? swapped(formula, offer.row, offer.swap, part, larder) : otherYeast(formula, offer, part);
  },
};

function swapped(
  formula: Formula,
  row: Row,
  { from, to, name, type, preserved }: Swap,
  part: number,
  larder: Larder,
): Changed {
  if (row.id === ROLL_IN) return rolledSwap(formula, row, { from, name, preserved }, part, larder);
  const gone = row.amount * part;
  const { amount, water } = exchanged(gone, row.name, name, preserved, larder);
  const edit = editOf(formula);
  putInstead(edit, row, part, name, type, amount);
  edit.water(water, name);
  const after = edit.done(formula);
  const all = allFlour(formula.rows);
  return {
    formula: after,
    line: `${shownShare(gone / all)} ${row.name} is ${shownShare(amount / all)} ${name}`,
    rows: edit.moved(),
    parts: [],
    notes: [
      `The dough's water and its ${preserved} stay.`,
      ...partsMoved(formula.rows, after.rows, larder),
      ...known(to, part),
    ],
    cautions: cautionsOf(from, to, formula.style),
  };
}

/** Another fat in the roll-in: what it brings of fat stays, and the dough itself is left alone. */
function rolledSwap(
  formula: Formula,
  row: Row,
  { from, name, preserved }: Pick<Swap, "from" | "name" | "preserved">,
  part: number,
  larder: Larder,
): Changed {
  mustBeFirm(name, larder);
  if (part < 1) refuse("A roll-in is one fat. Enter 100 to swap all of it.");
  const now = formula.rollIn;
  if (now === null) return refuse("This sheet has no roll-in fat.");
  const isKnown = orNull(() => findIngredient(larder, row.name)) != null;
  const { amount } = exchanged(row.amount, isKnown ? row.name : from, name, preserved, larder);
  const wanted = { ...now, name, share: shareFor(formula, now, amount) };
  const changed = withRollIn(formula, wanted, larder);
  return { ...changed, notes: [`The ${preserved} of the roll-in stays.`, ...changed.notes] };
}

/**
 * In the direction in which it becomes less: what is dried keeps a part of a few grams in fewer, and the way back is the
 * same sum turned round. `water` is what has to be poured in beside it.
 */
function exchanged(gone: number, from: string, to: string, preserved: Swap["preserved"], larder: Larder) {
  if (keptShare(from, preserved, larder) <= keptShare(to, preserved, larder)) {
    const forth = exchange(weight(1), from, to, preserved, larder);
    return { amount: gone * forth.weight, water: gone * forth.water };
  }
  const back = exchange(weight(1), to, from, preserved, larder);
  const amount = gone / back.weight;
  return { amount, water: -amount * back.water };
}

/** How rich it is in what is kept; where that is not known, the exchange itself says so. */
function keptShare(name: string, preserved: Swap["preserved"], larder: Larder): number {
  const ingredient = requireIngredient(larder, name, "ingredient");
  return (preserved === "solids" ? 1 - (ingredient.water ?? 0) : ingredient[preserved]) ?? 0;
}

/** Creamed with sugar, fat takes up the air that raises these. */
const CREAMED: readonly StyleName[] = ["drop cookie", "layer cake", "pound cake", "muffin"];

function cautionsOf(from: string, to: string, style: StyleName): string[] {
  return [
    ...(/oil$/.test(to) && !/oil$/.test(from) && CREAMED.includes(style)
      ? ["Do not cream oil: it holds no air. Mix it in as a liquid, and expect a denser crumb."]
      : []),
    ...(to === "whole egg" || to === "egg yolk" || to === "egg white"
      ? ["Keep raw egg at 5 °C or below and use it the same day. Your local food rules come first."]
      : []),
  ];
}

/** Honey in the place of sugar: up to half of it, in an oven 25 °F cooler (National Honey Board, as four copies have it). */
const known = (to: string, part: number): string[] =>
  to === "honey"
    ? [
        `Bake 15 °C (25 °F) cooler: honey browns sooner.${part > 0.5 ? " Usually at most half of the sugar is replaced." : ""}`,
      ]
    : [];
