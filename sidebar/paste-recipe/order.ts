// From what was understood to what is sent: the order for a sheet, and everything that is in its way.

import { fromCelsius, fromGrams, grams, toGrams } from "../../shared/base/units.ts";
import { isProblem } from "../../shared/cells/cell.ts";
import { inputNames, type Order } from "../../shared/protocol/bench.ts";
import type { Described, Stage } from "../../shared/recipe/text/described.ts";
import { questionSays } from "../../shared/recipe/text/wording.ts";
import type { SheetModel, Value } from "../../shared/sheet/model.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { readQuantity } from "../new-formula/quantity.ts";
import { tidy } from "../new-formula/shares.ts";
import { shopValues } from "../new-formula/shop.ts";
import { type Trouble, trouble } from "../new-formula/trouble.ts";
import { likelyTemplates } from "./likely.ts";
import { methodRows } from "./method.ts";
import { ownOf, type PasteState, shownPart } from "./state.ts";
import { tieOf } from "./tie.ts";

export type Assessed = {
  readonly order: Order;
  readonly troubles: readonly Trouble[];
  readonly title: string;
  readonly model: SheetModel;
  readonly models: readonly SheetModel[];
  /** Grams in all, null where they are not told. */
  readonly dough: number | null;
  readonly flour: number | null;
  readonly pieces: number | null;
};

const partAt = (state: PasteState, at: number): Described => (state.parts[at] ?? shownPart(state)).described;

const takesRows = (model: SheetModel): boolean => {
  const names = inputNames(model);
  return ["ingredient", "kind", "percent"].every((name) => names.has(name));
};
const MODELS = TEMPLATES.filter(takesRows);

export const takesPieces = (model: SheetModel): boolean =>
  ["size_pieces", "size_weight"].every((name) => inputNames(model).has(name));

export function assess(state: PasteState, at = state.shown): Assessed {
  const described = partAt(state, at);
  const own = ownOf(state, at);
  const models = likelyTemplates(MODELS, described);
  const model = MODELS.find(({ name }) => name === own.template) ?? (models[0] as SheetModel);
  const title = own.title ?? described.title;
  const troubles = openTroubles(described, at === state.shown ? "" : `${at}/`);
  if (title.trim() === "")
    troubles.push(trouble("title", "Give the formula a name. The new sheet is called after it.", true));
  const { formula } = described;
  if (formula.rows.length === 0) troubles.push(trouble("text", "No ingredients yet. Paste a recipe above.", true));
  const made = amountOf(state, at, model, troubles);
  const most = mostRows(model);
  const { rows, tied } = tieOf(described, model);
  if (rows.length > most)
    troubles.push(trouble("template", `This template has ${most} rows, and these are ${rows.length} ingredients.`));
  const inUnit = (value: number) => tidy(fromGrams(grams(value), state.units.weight));
  const inputs = inputNames(model);
  const values = new Map<string, Value | readonly Value[]>([
    ["title", title.trim()],
    ["ingredient", rows.map(({ name }) => name)],
    ["kind", rows.map(({ type }) => type)],
    ...tied,
    ...made.values,
    ...rollInOf(described),
    ...methodValues(described, state),
    ["change_1", changeOf(described)],
  ]);
  const isWeighed = inputs.has("weighed") && rows.every((row) => row.grams !== null && row.said === null);
  if (isWeighed)
    values.set(
      "weighed",
      rows.map((row) => (row.grams === null ? null : inUnit(row.grams))),
    );
  else
    values.set(
      "percent",
      rows.map((row) => {
        const share = row.said ?? row.percent;
        return share === null ? null : tidy(share / 100);
      }),
    );
  if (state.shop !== null)
    for (const [name, value] of shopValues({ ...state.shop, units: state.units }))
      if (!values.has(name)) values.set(name, value);
  const dough = made.dough ?? formula.dough;
  const share = formula.dough !== null && formula.flour !== null ? formula.flour / formula.dough : null;
  return {
    order: {
      template: model.name,
      options: { ...state.units, parts: partsFor(model, described) },
      values: Object.fromEntries([...values].filter(([name]) => inputs.has(name))),
    },
    troubles,
    title: title.trim(),
    model,
    models,
    dough,
    flour: share === null ? formula.flour : (dough ?? 0) * share,
    pieces: made.pieces,
  };
}

/** A tin's sizes are no part of a recipe text, and a block for a preferment only stands where there is one. */
function partsFor(model: SheetModel, { formula }: Described): string[] {
  return model.parts.filter((part) => part !== "tin" && !(part === "preferment" && formula.preferments.length === 0));
}

function openTroubles({ questions }: Described, before: string): Trouble[] {
  return questions.flatMap((question, at) =>
    question.isOpen ? [trouble(`${before}question/${at}`, questionSays(question))] : [],
  );
}

/** How much to make: pieces of a weight, or the dough in all; what is typed wins over what the text says. */
function amountOf(state: PasteState, at: number, model: SheetModel, troubles: Trouble[]) {
  const { formula, yield: made } = partAt(state, at);
  const own = ownOf(state, at);
  const read = (
    name: "pieces" | "weight" | "dough" | "loss",
    quantity: "count" | "weight" | "share",
    said: number | null,
  ) => {
    const text = own[name]?.trim();
    if (text === undefined) return said;
    if (text === "") return null;
    const value = readQuantity(text, quantity, state.units);
    if (isProblem(value)) troubles.push(trouble(`make/${name}`, `The figure ${value.problem}.`));
    return isProblem(value) || value === null
      ? null
      : quantity === "weight"
        ? toGrams(value, state.units.weight)
        : value;
  };
  const pieces = read("pieces", "count", made.pieces);
  const loss = read("loss", "share", null);
  const typed = read("weight", "weight", made.pieceWeight);
  const dough = read("dough", "weight", null);
  const values = new Map<string, Value | readonly Value[]>();
  const inUnit = (value: number) => tidy(fromGrams(grams(value), state.units.weight));
  // Pieces that nobody weighed are as large as the recipe's own.
  const base = dough ?? formula.dough;
  const each =
    typed ??
    (made.pieces !== null && formula.dough !== null
      ? formula.dough / made.pieces
      : base !== null && pieces !== null
        ? base / pieces
        : null);
  if (own.pieces !== undefined && pieces !== null && made.pieces === null && typed === null && takesPieces(model))
    troubles.push(trouble("make/weight", "Enter the scaling weight of a piece.", true));
  if (takesPieces(model) && pieces !== null && each !== null && own.dough === undefined) {
    values.set("by", "pieces");
    values.set("size_pieces", [pieces]);
    values.set("size_weight", [inUnit(each * (1 - (loss ?? 0)))]);
    values.set("size_loss", [loss]);
    return { values, dough: pieces * each, pieces };
  }
  if (base !== null) {
    values.set("by", wholeChoice(model));
    values.set("dough_wanted", inUnit(base));
  }
  return { values, dough: base, pieces };
}

/** What the sheet calls making by the whole of it. */
function wholeChoice(model: SheetModel): string {
  const cells = model.bands.flat().flatMap((item) => ("lines" in item ? item.lines.flatMap((line) => line.cells) : []));
  const choices = cells.find(({ name }) => name === "by")?.choices ?? [];
  return choices.find((one) => one === "batter") ?? "dough";
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
  { steps, doughTemperature }: Described,
  { units }: PasteState,
): [string, Value | readonly Value[]][] {
  const rows = methodRows(steps, units.temperature);
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

/** Fat that is rolled in, as a share of the base dough. */
function rollInOf({ formula, rows, stages }: Described): [string, Value][] {
  const fats = rows.filter((row) => stages[row.stage]?.role === "roll-in" && row.type === "fat");
  const weight = fats.reduce((all, row) => all + (row.grams ?? 0), 0);
  const [first] = fats;
  if (first === undefined || formula.dough === null || weight === 0) return [];
  return [
    ["roll_in_name", first.name],
    ["roll_in_share", tidy(weight / formula.dough)],
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
