// From what was understood to what is sent: the order for a sheet, and everything that is in its way.

import { fromCelsius, fromGrams, grams, toGrams } from "../../shared/base/units.ts";
import { isProblem } from "../../shared/cells/cell.ts";
import { inputNames, type Order } from "../../shared/protocol/bench.ts";
import type { Described, FormulaRow, Stage } from "../../shared/recipe/text/described.ts";
import { questionSays } from "../../shared/recipe/text/wording.ts";
import type { SheetModel, Value } from "../../shared/sheet/model.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { readQuantity } from "../new-formula/quantity.ts";
import { tidy } from "../new-formula/shares.ts";
import { shopValues } from "../new-formula/shop.ts";
import { type Trouble, trouble } from "../new-formula/trouble.ts";
import { likelyTemplates } from "./likely.ts";
import { type MethodRow, methodRows } from "./method.ts";
import { ownOf, type PasteState, shownPart } from "./state.ts";
import { tiedValues, tieOf } from "./tie.ts";

export type Assessed = {
  readonly order: Order;
  readonly troubles: readonly Trouble[];
  readonly title: string;
  readonly model: SheetModel;
  readonly models: readonly SheetModel[];
  /** Preferments that the template has no cells for. */
  readonly untied: readonly string[];
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
  const { rows } = formula;
  const tie = tieOf(described, model);
  const method = [...tie.before, ...methodRows(described.steps, state.units.temperature)];
  if (rows.length > most)
    troubles.push(trouble("template", `This template has ${most} rows, and these are ${rows.length} ingredients.`));
  const inputs = inputNames(model);
  const values = new Map<string, Value | readonly Value[]>([
    ["title", title.trim()],
    ["ingredient", rows.map(({ name }) => name)],
    ["kind", rows.map(({ type }) => type)],
    ["percent", sharesOf(rows)],
    ...tiedValues(tie.preferment, model, method, state.units.weight),
    ...made.values,
    ...rollInValues(described),
    ...methodValues(method, described, state),
    ["change_1", changeOf(described)],
  ]);
  if (state.shop !== null)
    for (const [name, value] of shopValues({ ...state.shop, units: state.units }))
      if (!values.has(name)) values.set(name, value);
  const dough = made.dough === null ? formula.dough : made.dough / (1 + rolledPart(described, model));
  const share = formula.dough !== null && formula.flour !== null ? formula.flour / formula.dough : null;
  return {
    order: {
      template: model.name,
      options: { ...state.units, parts: partsFor(model, tie.preferment !== undefined) },
      values: Object.fromEntries([...values].filter(([name]) => inputs.has(name))),
    },
    troubles,
    title: title.trim(),
    model,
    models,
    untied: tie.untied,
    dough,
    flour: share === null ? formula.flour : (dough ?? 0) * share,
    pieces: made.pieces,
  };
}

/** A tin's sizes are no part of a recipe text, and a block for a preferment only stands where there is one. */
function partsFor(model: SheetModel, isTied: boolean): string[] {
  return model.parts.filter((part) => part !== "tin" && (part !== "preferment" || isTied));
}

/** Shares of the flour, in the frame of the text where its flours make 100 %. */
function sharesOf(rows: readonly FormulaRow[]): (number | null)[] {
  const flours = rows.reduce((all, { type, said }) => all + (type === "flour" ? (said ?? 0) : 0), 0);
  const isSaid = Math.abs(flours - 100) < 0.05;
  return rows.map(({ said, percent }) => {
    const share = isSaid ? said : percent;
    return share === null ? null : Math.round(share * 1e10) / 1e12;
  });
}

function openTroubles({ questions }: Described, before: string): Trouble[] {
  return questions.flatMap((question, at) =>
    question.isOpen ? [trouble(`${before}question/${at}`, questionSays(question))] : [],
  );
}

/** How much to make: pieces of a weight, or the dough in all; what is typed wins over what the text says. */
function amountOf(state: PasteState, at: number, model: SheetModel, troubles: Trouble[]) {
  const described = partAt(state, at);
  const { yield: made } = described;
  // With what is rolled into it, where the sheet keeps that apart.
  const wholeRead = described.formula.dough;
  const whole = wholeRead === null ? null : wholeRead * (1 + rolledPart(described, model));
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
  const base = dough ?? whole;
  const each =
    typed ??
    (made.pieces !== null && whole !== null
      ? whole / made.pieces
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

/** Fat that is rolled in, as a share of the base dough. */
function rollInOf({ formula, rows, stages }: Described): { name: string; share: number } | undefined {
  const fats = rows.filter((row) => stages[row.stage]?.role === "roll-in" && row.type === "fat");
  const weight = fats.reduce((all, row) => all + (row.grams ?? 0), 0);
  const [first] = fats;
  if (first === undefined) return undefined;
  if (formula.dough !== null && weight > 0) return { name: first.name, share: weight / formula.dough };
  // Beside percentages it is a share of the flour.
  const dough = formula.rows.reduce((all, row) => all + (row.percent ?? 0), 0);
  const percent = fats.reduce((all, row) => all + (row.percent ?? 0), 0);
  return dough > 0 && percent > 0 ? { name: first.name, share: percent / dough } : undefined;
}

/** What is rolled in beside the base dough on a sheet that keeps it apart. */
const rolledPart = (described: Described, model: SheetModel): number =>
  inputNames(model).has("roll_in_share") ? (rollInOf(described)?.share ?? 0) : 0;

function rollInValues(described: Described): [string, Value][] {
  const rolled = rollInOf(described);
  if (rolled === undefined) return [];
  return [
    ["roll_in_name", rolled.name],
    ["roll_in_share", Math.round(rolled.share * 1e9) / 1e9],
    ["roll_in_of", "base"],
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
