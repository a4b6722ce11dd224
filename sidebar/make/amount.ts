import { isProblem } from "../../shared/cell.ts";
import type { AmountOf } from "../../shared/formula.ts";
import { doughFor } from "../../shared/scaling.ts";
import { ratio, type Weight, weight } from "../../shared/units.ts";
import { type Draft, SIZE_QUANTITIES, type SizeDraft } from "./draft.ts";
import type { Take } from "./order.ts";
import { readQuantity, type Units } from "./quantity.ts";
import { type Trouble, trouble } from "./trouble.ts";

export type Amount = {
  readonly of: AmountOf;
  /** What is to be made, in the sheet's unit of weight; null while it cannot be told. */
  readonly whole: Weight | null;
  /** Tins wanted, where the sheet is made by tins; their fill makes the whole. */
  readonly tins: number | null;
  /** What a piece of the first size is scaled at: the dough that goes into the tin. */
  readonly scaled: Weight | null;
};

type Values = Map<string, string | number | null | readonly (string | number | null)[]>;

/** How much to make, one way of the four; the fields of the other ways stay in the panel and are not sent. */
export function readAmount(draft: Draft, take: Take, values: Values, troubles: Trouble[], handling: number): Amount {
  const none = { whole: null, tins: null, scaled: null };
  const by = draft.choices.by;
  values.set("by", by);
  switch (by) {
    case "tins":
      return { ...none, of: "dough", tins: take("tins", "Write how many tins you want to fill.") };
    case "dough":
      return { ...none, of: "dough", whole: known(take("dough_wanted", "Write how much dough you want to make.")) };
    case "flour":
      return { ...none, of: "flour", whole: known(take("flour_wanted", "Write how much flour you want to use.")) };
    default:
      return { ...none, of: "dough", ...readSizes(draft, values, troubles, handling) };
  }
}

const known = (value: number | null): Weight | null => (value === null ? null : weight(value));

type Size = { readonly name: string; pieces: number | null; weight: number | null; loss: number | null };

function readSizes(draft: Draft, values: Values, troubles: Trouble[], handling: number) {
  const before = troubles.length;
  const used = draft.sizes.map((size, index) => ({ size, index })).filter(({ size }) => !isEmpty(size));
  if (used.length === 0) {
    troubles.push(trouble("size_pieces/0", "Write how many pieces you want.", true));
    troubles.push(trouble("size_weight/0", "Write what one piece weighs when it is sold.", true));
  }
  const sizes = used.map(({ size, index }) => readSize(size, index, draft.units, troubles));
  values.set(
    "size_name",
    sizes.map(({ name }) => name || null),
  );
  values.set(
    "size_pieces",
    sizes.map(({ pieces }) => pieces),
  );
  values.set(
    "size_weight",
    sizes.map((one) => one.weight),
  );
  values.set(
    "size_loss",
    sizes.map(({ loss }) => loss),
  );
  const [first] = sizes;
  const scaled = first === undefined || first.weight === null ? null : weight(first.weight / (1 - (first.loss ?? 0)));
  if (troubles.length > before) return { whole: null, scaled };
  const whole = sizes.reduce(
    (total, one) => total + doughFor(one.pieces ?? 0, weight(one.weight ?? 0), ratio(one.loss ?? 0), ratio(handling)),
    0,
  );
  return { whole: weight(whole), scaled };
}

const isEmpty = (size: SizeDraft): boolean => Object.values(size).every((text) => text.trim() === "");

const ASKED = {
  pieces: { label: "The number of pieces", missing: "Write how many pieces" },
  weight: { label: "The weight", missing: "Write what one piece weighs when it is sold" },
  loss: { label: "The bake loss", missing: null },
} as const;

function readSize(size: SizeDraft, index: number, units: Units, troubles: Trouble[]): Size {
  const read: Size = { name: size.name.trim(), pieces: null, weight: null, loss: null };
  for (const name of ["pieces", "weight", "loss"] as const) {
    const value = readQuantity(size[name], SIZE_QUANTITIES[name], units);
    const { label, missing } = ASKED[name];
    const at = `size_${name}/${index}`;
    if (isProblem(value)) troubles.push(trouble(at, `${label} of size ${index + 1} ${value.problem}.`));
    else if (value === null && missing !== null) troubles.push(trouble(at, `${missing} (size ${index + 1}).`, true));
    else read[name] = value;
  }
  return read;
}
