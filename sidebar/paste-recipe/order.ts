// From what was understood to what is sent: the order for a sheet, and everything that is in its way.

import { tidy } from "../../shared/base/number.ts";
import { fromCelsius } from "../../shared/base/units.ts";
import { inputNames, type Order } from "../../shared/protocol/order.ts";
import type { FormulaRow } from "../../shared/recipe/text/described-formula.ts";
import type { Described, Stage } from "../../shared/recipe/text/description.ts";
import { questionSays } from "../../shared/recipe/text/wording.ts";
import type { SheetModel, Value } from "../../shared/sheet/model.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { type FieldFault, fieldFault } from "../kit/field-fault.ts";
import { MAX_HANDLING } from "../new-formula/order.ts";
import { shopValues } from "../new-formula/shop.ts";
import { amountOf } from "./amount.ts";
import { type MethodRow, methodRows } from "./method.ts";
import { besideSteps } from "./part-steps.ts";
import { tiedValues, tieOf } from "./preferment-cells.ts";
import { rolledPart, rollInValues } from "./roll-in.ts";
import { ownOf, type PasteState, partAt } from "./state.ts";
import { likelyTemplates } from "./template-order.ts";
import { tinFor, tinValues } from "./tin.ts";

export type Assessed = {
  readonly order: Order;
  readonly faults: readonly FieldFault[];
  readonly title: string;
  readonly model: SheetModel;
  readonly models: readonly SheetModel[];
  /** Preferments that the template has no cells for. */
  readonly untied: readonly string[];
  /** Grams in all, null where they are not told. */
  readonly dough: number | null;
  readonly flour: number | null;
  readonly pieces: number | null;
  /** Grams of dough that a piece takes. */
  readonly each: number | null;
};

const takesRows = (model: SheetModel): boolean => {
  const names = inputNames(model);
  return ["ingredient", "kind", "percent"].every((name) => names.has(name));
};
const MODELS = TEMPLATES.filter(takesRows);

export function assess(state: PasteState, at = state.shown): Assessed {
  const described = partAt(state, at);
  const choices = ownOf(state, at);
  const models = likelyTemplates(MODELS, described);
  const model = MODELS.find(({ name }) => name === choices.template) ?? (models[0] as SheetModel);
  const title = choices.title ?? described.title;
  const faults = openFaults(described, at === state.shown ? "" : `${at}/`);
  if (title.trim() === "")
    faults.push(fieldFault("title", "Give the formula a name. The new sheet is called after it.", true));
  const { formula } = described;
  if (formula.rows.length === 0) faults.push(fieldFault("text", "No ingredients yet. Paste a recipe above.", true));
  const batch = amountOf(state, at, model, faults);
  const most = mostRows(model);
  const { rows } = formula;
  const tie = tieOf(described, model);
  const { weight, temperature } = state.units;
  const steps = methodRows(described.steps, temperature);
  const method = [...tie.before, ...steps, ...besideSteps(described, model, weight)];
  if (rows.length > most)
    faults.push(fieldFault("template", `This template has ${most} rows, and these are ${rows.length} ingredients.`));
  const inputs = inputNames(model);
  const tin = tinValues(state, tinFor(described, model), at, faults);
  const values = new Map<string, Value | readonly Value[]>([
    ["title", title.trim()],
    ["ingredient", rows.map(({ name }) => name)],
    ["kind", rows.map(({ type }) => type)],
    ["percent", sharesOf(rows)],
    ...tiedValues(tie.preferment, model, steps, weight),
    ...batch.values,
    ...rollInValues(described),
    ...tin,
    ...methodValues(method, described, state),
    ["change_1", changeOf(described)],
  ]);
  for (const [name, value] of shopValues(state.shop, state.units)) if (!values.has(name)) values.set(name, value);
  // Pieces need what is lost on the way besides; a dough that is told by its weight is mixed as it is told.
  const mixed = batch.dough === null || !batch.isByPieces ? batch.dough : batch.dough / (1 - handlingLoss(values));
  const dough = mixed === null ? formula.dough : mixed / (1 + rolledPart(described, model));
  const share = formula.dough !== null && formula.flour !== null ? formula.flour / formula.dough : null;
  return {
    order: {
      template: model.name,
      options: { ...state.units, parts: partsFor(model, tie.preferment !== undefined, tin.length > 0) },
      values: Object.fromEntries([...values].filter(([name]) => inputs.has(name))),
    },
    faults,
    title: title.trim(),
    model,
    models,
    untied: tie.untied,
    dough,
    flour: share === null ? formula.flour : (dough ?? 0) * share,
    pieces: batch.pieces,
    each: batch.each,
  };
}

/** As the sheet has it from the bakery's settings, up to its limit. */
function handlingLoss(values: ReadonlyMap<string, Value | readonly Value[]>): number {
  const loss = values.get("handling_loss");
  return typeof loss === "number" && loss > 0 ? Math.min(loss, MAX_HANDLING) : 0;
}

/** Blocks for a tin and for a preferment only stand where there is one. */
function partsFor(model: SheetModel, isTied: boolean, hasTin: boolean): string[] {
  return model.parts.filter((part) => (part !== "tin" || hasTin) && (part !== "preferment" || isTied));
}

/** Shares of the flour, in the frame of the text where its flours make 100 %. */
function sharesOf(rows: readonly FormulaRow[]): (number | null)[] {
  const flours = rows.reduce((all, { type, shareInText }) => all + (type === "flour" ? (shareInText ?? 0) : 0), 0);
  const isSaid = Math.abs(flours - 100) < 0.05;
  return rows.map(({ shareInText, percent }) => {
    const share = isSaid ? shareInText : percent;
    return share === null ? null : Math.round(share * 1e10) / 1e12;
  });
}

function openFaults({ questions }: Described, before: string): FieldFault[] {
  return questions.flatMap((question, at) =>
    question.isOpen ? [fieldFault(`${before}question/${at}`, questionSays(question))] : [],
  );
}

/** Rows of the template's ingredient table; one that grows holds any number. */
function mostRows(model: SheetModel): number {
  for (const item of model.bands.flat()) {
    if ("table" in item && item.columns.some(({ name }) => name === "ingredient"))
      return item.spare === undefined ? item.rows : Number.POSITIVE_INFINITY;
  }
  return 0;
}

function methodValues(
  rows: readonly MethodRow[],
  { doughTemperature }: Described,
  { units }: PasteState,
): [string, Value | readonly Value[]][] {
  const target: [string, Value][] =
    doughTemperature === null ? [] : [["dough_target", tidy(fromCelsius(doughTemperature, units.temperature))]];
  if (rows.length === 0) return target;
  return [
    ...target,
    ["step", rows.map(({ name }) => name)],
    ["step_minutes", rows.map(({ minutes }) => minutes)],
    ["step_temp", rows.map(({ temperature }) => temperature)],
    ["step_how", rows.map(({ how }) => how)],
  ];
}

/** What the sheet remembers of the text. */
function changeOf({ stages, formula }: Described): string {
  const named = (list: readonly (Stage | undefined)[]) =>
    list.flatMap((one) => (one === undefined || one.name === "" ? [] : [one.name]));
  const apart = named(formula.parts.map(({ stage }) => stages[stage]));
  const parts = apart.length === 0 ? "" : `; kept apart: ${apart.join(", ")}`;
  return `pasted from a recipe text${parts}`.slice(0, 480);
}
