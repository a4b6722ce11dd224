// From what was typed to what is sent: the order, everything that is in its way, and the figures shown meanwhile. What else the
// panel shows of an order, such as its times, each part works out from what was read here.

import { isFault, Refusal } from "../../shared/base/refusal.ts";
import { mixes } from "../../shared/base/scaling.ts";
import { type Weight, weight } from "../../shared/base/units.ts";
import type { TinView } from "../../shared/drawings/tin-view.ts";
import type { Order } from "../../shared/protocol/order.ts";
import type { SheetModel, Value } from "../../shared/sheet/model.ts";
import { type FieldFault, fieldFault } from "../kit/field-fault.ts";
import { type Amount, readAmount } from "./amount.ts";
import { type Draft, FIELDS, type ReadField } from "./draft.ts";
import { type FormulaRows, type RowRules, readRows, type Weighed, weighRows } from "./formula.ts";
import { readQuantity } from "./quantity.ts";
import { type Asked, askedOf, readOwn, type TemplateInputs } from "./template-inputs.ts";
import { readTin } from "./tin.ts";
import { askMinutes, WATER_FIELDS } from "./water.ts";

export type Assessed = {
  readonly order: Order;
  readonly faults: readonly FieldFault[];
  readonly batch: Weighed | null;
  /** What is ordered, where it is known before the rows are. */
  readonly dough: Weight | null;
  /** How many and how large, or what is wrong with them; null while they cannot be told. */
  readonly mixes: { readonly mixes: number; readonly each: Weight } | { readonly note: string } | null;
  readonly tin: TinView | null;
  /** What `made` is called: a dough that has something rolled in later is mixed without it. */
  readonly what: "Dough" | "Base dough" | "Batter";
  /** A row is left to the sheet, so that dough and flour are told there. */
  readonly isOpen: boolean;
  /** The formula's rows; null where there is anything to mend in them. */
  readonly rows: FormulaRows | null;
  readonly inputs: TemplateInputs;
  readonly amount: Amount;
  readonly handling: number;
  /** Fat that is rolled in later, as a part of what is mixed. */
  readonly rolled: number;
};

type Values = Map<string, Value | readonly Value[]>;

export function assess(draft: Draft, model: SheetModel): Assessed {
  const faults: FieldFault[] = [];
  const values: Values = new Map();
  const asked = askedOf(model, draft.units);
  const take: ReadField = (name, missing, quantity = FIELDS[name].quantity) => {
    // What the sheet has no cell for is not asked, and what another template's was is not counted.
    if (name === "preferment_temp" && !asked.hasPrefermentTemp) return null;
    const reading = readQuantity(draft.fields[name], quantity, draft.units);
    if (isFault(reading)) faults.push(fieldFault(name, `${FIELDS[name].label} ${reading.says}.`));
    else if (reading === null && missing !== undefined) faults.push(fieldFault(name, missing, true));
    const value = isFault(reading) ? null : reading;
    values.set(name, value);
    return value;
  };
  if (draft.title.trim() === "") {
    faults.push(fieldFault("title", "Enter a name for the formula. The new sheet takes it.", true));
  }
  values.set("title", draft.title.trim());
  values.set("shop", draft.shop.trim() || null);
  if (draft.law !== "") values.set("law", draft.law);
  const ownInputs = readOwn(draft, asked, values, faults);
  const handling = handlingLoss(take, faults);
  const rows = readRows(draft.rows, rulesOf(draft, asked, ownInputs), faults);
  if (rows !== null) for (const name of ["ingredient", "kind", "percent"] as const) values.set(name, rows[name]);
  if (rows !== null && draft.weighed) values.set("weighed", rows.weighed);
  const needed = !draft.weighed || !draft.rows.some(({ weighed }) => weighed.trim() !== "");
  const rolled = rolledPart(ownInputs, rows?.percent ?? []);
  const amount = readAmount({
    draft,
    sizes: asked.sizes,
    take,
    inputs: ownInputs,
    values,
    faults,
    handling,
    needed,
    rolled,
  });
  const tin = model.parts.includes("tin") ? readTin(draft, take, values, faults, amount.scaled) : null;
  const whole = wholeAmount(amount, tin, handling);
  const isTold = whole !== null || (!needed && amount.tins === null);
  const weights = rows === null || !isTold ? null : weighRows(rows, whole, amount.of, faults);
  const mixed = readMixes(take, faults, weights?.dough ?? (amount.of === "dough" ? whole : null));
  if (draft.water) takeWater(draft, take, values, faults);
  return {
    order: {
      template: model.name,
      options: {
        ...draft.units,
        parts: partsOf(draft, model, ownInputs),
      },
      values: Object.fromEntries([...values].filter(([name]) => asked.names.has(name))),
    },
    faults,
    batch: weights,
    dough: weights?.dough ?? (amount.of === "dough" ? whole : null),
    mixes: mixed,
    tin,
    what: ownInputs.number("roll_in_share") !== null ? "Base dough" : asked.makesBatter ? "Batter" : "Dough",
    isOpen: rows?.isOpen ?? false,
    rows,
    inputs: ownInputs,
    amount,
    handling,
    rolled,
  };
}

/** What is rolled in, as a part of the base dough, whatever its share is of. */
function rolledPart(inputs: TemplateInputs, percents: readonly (number | null)[]): number {
  const share = inputs.number("roll_in_share") ?? 0;
  if (inputs.text("roll_in_of") === "finished") return share / (1 - Math.min(share, 0.9));
  const all = percents.reduce<number>((sum, one) => sum + (one ?? 0), 0);
  return inputs.text("roll_in_of") === "flour" && all > 0 ? share / all : share;
}

/** Which of the template's columns and inputs decide what a row may leave open. */
function rulesOf(draft: Draft, { hasHydration }: Asked, inputs: TemplateInputs): RowRules {
  const blankWater = !hasHydration ? "no" : inputs.number("effective_wanted") === null ? "with hydration" : "yes";
  return { units: draft.units, weighed: draft.weighed, blankWater };
}

/** Without a share of flour in it, no preferment is set apart. */
function partsOf(draft: Draft, model: SheetModel, inputs: TemplateInputs): string[] {
  const isBuilt: Readonly<Record<string, boolean>> = {
    tin: draft.choices.tin_shape !== "",
    water: draft.water,
    preferment: (inputs.number("pre_share") ?? 0) > 0,
  };
  return model.parts.filter((part) => isBuilt[part] ?? true);
}

/** The water's temperatures; all may stay blank until the day. */
function takeWater({ choices }: Draft, take: ReadField, values: Values, faults: FieldFault[]): void {
  for (const name of WATER_FIELDS) take(name);
  values.set("mixing", choices.mixing || null);
  values.set("yeast", choices.yeast);
  if (choices.mixing !== "") askMinutes(choices.mixing, values.get("minutes"), faults);
}

/** The sheet's own limit. */
export const MAX_HANDLING = 0.3;

function handlingLoss(take: ReadField, faults: FieldFault[]): number {
  const loss = take("handling_loss") ?? 0;
  if (loss <= MAX_HANDLING) return loss;
  faults.push(fieldFault("handling_loss", `${FIELDS.handling_loss.label} is over 30 %. Did you mean bake loss?`));
  return 0;
}

/** Tins are filled with what is left after handling; every other amount is told as it is mixed. */
function wholeAmount(amount: Amount, tin: TinView | null, handling: number): Weight | null {
  if (amount.tins === null) return amount.whole;
  return tin?.dough == null ? null : weight((amount.tins * tin.dough) / (1 - handling));
}

function readMixes(take: ReadField, faults: FieldFault[], dough: Weight | null): Assessed["mixes"] {
  const limit = take("mixer_limit");
  const least = take("mixer_least");
  take("step_coarse", "Enter the step your scale shows, such as 5.");
  take("step_fine");
  if (limit !== null && least !== null && least > limit) {
    faults.push(fieldFault("mixer_least", "The smallest mix is larger than the mixer capacity. Swap the two."));
    return null;
  }
  if (dough === null) return null;
  try {
    return mixes(dough, weight(limit ?? dough), weight(least ?? 0));
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return { note: `The dough ${error.faults[0]?.says ?? ""}.` };
  }
}
