// From a formula sheet to a staff card: what is on the sheet now, for the amount that was asked for.

import { refuse } from "../../shared/base/refusal.ts";
import { quote, showNumber } from "../../shared/base/show.ts";
import { fromGrams, grams } from "../../shared/base/units.ts";
import { allergenLine } from "../../shared/card/allergens.ts";
import type { CardAmount, CardData } from "../../shared/card/data.ts";
import { upOnSteps } from "../../shared/card/values.ts";
import type { CardAsk } from "../../shared/protocol/card.ts";
import { isWaitingText } from "../../shared/protocol/waiting.ts";
import { makesBatter } from "../../shared/sheet/template-inputs.ts";
import { labelCautions } from "../../templates/blocks/label.ts";
import { CAUTIONS } from "../../templates/blocks/name.ts";
import { addedWeights, same, stagesOf } from "./card-stages.ts";
import type { FormulaSheet } from "./formula-sheet.ts";

/** A large egg without its shell in grams (USDA SR28 01123: 50 g). */
const LARGE_EGG = grams(50);

/** Everything a card tells, in the unit of the formula sheet. `dated` is the day it is made. */
export function cardData(sheet: FormulaSheet, dated: string): CardData {
  const { options } = sheet;
  const rows = sheet.rows.filter(({ weight: one }) => one !== null);
  const dough = sheet.number("dough") ?? rows.reduce((sum, row) => sum + (row.weight ?? 0), 0);
  const mixes = sheet.number("mixes") ?? 1;
  if (!(dough > 0) || !(mixes > 0)) {
    refuse(`${quote(sheet.name)} has no amount yet. Enter how much to make on the formula sheet first.`);
  }
  const version = sheet.text("version");
  const from = [
    version === "" ? "" : `Version ${version}`,
    `card of ${dated}`,
    `from sheet ${sheet.name}`,
    sheet.text("shop"),
  ];
  return {
    title: sheet.title,
    from: from.filter((one) => one !== "").join(" · "),
    unit: options.weight,
    what: makesBatter(sheet.model) ? "Batter" : "Dough",
    dough,
    pieces: sheet.number("pieces"),
    mixes,
    mixerLimit: sheet.number("mixer_limit"),
    steps: scaleSteps(sheet),
    ingredients: rows.map(({ name, kind }) => name || kind),
    stages: stagesOf(sheet, rows),
    lastIsRest: sheet.zone("pre_scale") !== undefined,
    added: addedWeights(sheet, mixes),
    eggs: eggsOf(sheet, rows),
    sizes: sizesOf(sheet),
    oven: ovenOf(sheet),
    water: waterFact(sheet.number("water_temp"), sheet.options.temperature),
    facts: factsOf(sheet),
    timed: timedSteps(sheet),
    cautions: cautionsOf(sheet),
  };
}

type Rows = FormulaSheet["rows"];

/** The scale's steps, the coarsest first, as on the sheet; where nobody named one, grams and what is finer. */
function scaleSteps(sheet: FormulaSheet): number[] {
  const typed = [sheet.number("step_coarse"), sheet.number("step_fine")].filter((one) => one !== null && one > 0);
  const steps = [...new Set(typed as number[])].sort((a, b) => b - a);
  const whole = sheet.options.weight === "g" ? 1 : 0.1;
  return steps.length > 0 ? steps : [1, 10, 100, 1000].map((parts) => whole / parts);
}

function eggsOf(sheet: FormulaSheet, rows: Rows): CardData["eggs"] {
  const all = rows.reduce((sum, row) => sum + (/^eggs?\b/i.test(row.kind) ? (row.weight ?? 0) : 0), 0);
  const large = fromGrams(LARGE_EGG, sheet.options.weight);
  return all > 0 ? { weight: all, each: sheet.number("egg_weight") ?? large } : null;
}

function sizesOf(sheet: FormulaSheet): CardData["sizes"] {
  const sizeRows = Array.from({ length: sheet.zone("size_scaled")?.rows ?? 0 }, (_, at) => ({
    name: sheet.text("size_name", at),
    weight: sheet.number("size_scaled", at) ?? 0,
    pieces: sheet.number("size_pieces", at),
  })).filter(({ weight: one }) => one > 0);
  const inTin = sheet.number("tin_dough");
  if (sizeRows.length === 0) return inTin === null ? [] : [{ name: "into each tin", weight: inTin, pieces: null }];
  // Of one size all are, and made by weight the sheet does not say how many of each.
  const each = sizeRows.length > 1 && sheet.text("by") === "pieces";
  return sizeRows.map((size) => (each ? size : { ...size, pieces: null }));
}

function ovenOf(sheet: FormulaSheet): CardData["oven"] {
  const [holds, takes] = [sheet.number("tray_pieces"), sheet.number("oven_takes")];
  if (sheet.zone("tray_pieces") === undefined)
    return takes === null || takes <= 0
      ? null
      : { on: sheet.zone("tin_shape") === undefined ? "pieces" : "tins", holds: 1, takes };
  return holds === null || holds <= 0
    ? null
    : { on: "trays", holds, takes: takes !== null && takes > 0 ? takes : null };
}

export const waterFact = (water: number | null, temperature: string): string =>
  water === null ? "" : `Water at ${showNumber(water, 1)} °${temperature}.`;

function factsOf(sheet: FormulaSheet): string[] {
  const { length, weight: unit } = sheet.options;
  const sizes = [1, 2, 3, 4, 5].flatMap((at) => sheet.number(`tin_size_${at}`) ?? []);
  const shape = sheet.text("tin_shape");
  const tin = sheet.number("tin_dough");
  // Where a size is the tin's, the card says its weight already.
  const isSaid = tin === null || sizesOf(sheet).some((size) => Math.abs(size.weight - tin) < 1e-6 * tin);
  const inTin = isSaid ? "" : `, ${showNumber(upOnSteps(tin, scaleSteps(sheet)))} ${unit} in each`;
  const check = sheet.text("check");
  return [
    ...(check === "" || check.startsWith("#") ? [] : [`First look at the formula sheet: ${check}`]),
    ...(sizes.length === 0 || shape === ""
      ? []
      : [`Tin: ${shape}, ${tinSizes(sizes)} ${shape === "water" ? "g of water" : length}${inTin}.`]),
    allergenLine(allergensOf(sheet)),
  ];
}

/** What still calculates reads like a text in the language of the spreadsheet, and is none. */
const allergensOf = (sheet: FormulaSheet): string => {
  const text = sheet.text("allergens");
  return isWaitingText(text) ? "#N/A" : text;
};

/** Sizes of the rim and the depth first; those of a base come after. */
function tinSizes(sizes: readonly number[]): string {
  const by = (some: readonly number[]) => some.map((one) => showNumber(one, 2)).join(" × ");
  return sizes.length > 3 ? `${by(sizes.slice(0, 3))} (base ${by(sizes.slice(3))})` : by(sizes);
}

function timedSteps(sheet: FormulaSheet): CardData["timed"] {
  return Array.from({ length: sheet.zone("step")?.rows ?? 0 }, (_, at) => ({
    step: stepWords(sheet, at),
    minutes: sheet.number("step_minutes", at),
    start: sheet.shown("step_start", at),
    day: dayOf(sheet.number("step_day", at)),
  })).filter(({ step }) => step !== "");
}

/** A step with its temperature and what to do; "" where the row has no step. */
function stepWords(sheet: FormulaSheet, at: number): string {
  const name = sheet.text("step", at);
  if (name === "") return "";
  const [degrees, how] = [sheet.number("step_temp", at), sheet.text("step_how", at).trim()];
  const hot = degrees === null ? "" : ` at ${showNumber(degrees, 1)} °${sheet.options.temperature}`;
  return `${name}${hot}${how === "" ? "" : `: ${how}`}`;
}

function dayOf(day: number | null): string {
  if (day === null || day === 0) return "";
  const days = Math.abs(day) === 1 ? "day" : "days";
  return `${showNumber(Math.abs(day))} ${days} ${day < 0 ? "before" : "after"}`;
}

const cautionsOf = (sheet: FormulaSheet): string[] =>
  sheet.model.bands
    .flat()
    .flatMap((item) => ("lines" in item ? item.lines : []))
    .flatMap(({ cells }) => cells)
    .flatMap(({ role, text }) =>
      role === "caution" && text !== undefined && sheet.says(text) && concerns(sheet, text) ? [text] : [],
    );

const LABELS: readonly string[] = labelCautions.flatMap(({ cells }) => cells.flatMap(({ text }) => text ?? []));

/** Labels and guides are no work of the shift, and egg is a matter where there is some. */
function concerns(sheet: FormulaSheet, caution: string): boolean {
  if (caution === CAUTIONS.guides || LABELS.includes(caution)) return false;
  if (caution !== CAUTIONS.egg) return true;
  return sheet.rows.some(({ kind, weight }) => /^(?:egg|dairy)/i.test(kind) && (weight ?? 0) > 0);
}

/** How much the card is for; refuses what the sheet cannot tell. */
export function cardAmount(data: CardData, { by, amount, ingredient, kind }: CardAsk): CardAmount {
  const wanted = (base: number) => {
    const value = amount ?? base;
    return value > 0 ? value : refuse("Enter an amount above 0 for the card.");
  };
  switch (by) {
    case "pieces": {
      const base = data.pieces ?? 0;
      if (!(base > 0))
        refuse("The formula sheet does not say how many pieces it makes; choose mixes or dough instead.");
      return { by, says: "Pieces wanted", base, wanted: wanted(base) };
    }
    case "ingredient": {
      const row = data.ingredients.findIndex((one) => same(one, ingredient));
      const base = data.stages.reduce((sum, { weights }) => sum + (weights[row] ?? 0), 0);
      if (row < 0 || !(base > 0)) {
        refuse(`${quote(ingredient)} is no ingredient of the formula sheet any more; choose another.`);
      }
      return { by, says: `${data.ingredients[row]} there is (${data.unit})`, base, wanted: wanted(base) };
    }
    case "dough":
      return { by, says: `${data.what} wanted (${data.unit})`, base: data.dough, wanted: wanted(data.dough) };
    case "mixes":
      return { by, says: "Mixes wanted", base: data.mixes, wanted: wanted(data.mixes) };
    default:
      // Pieces are what people have; where the sheet does not say them, mixes.
      if (kind === "living" && (data.pieces ?? 0) > 0)
        return { by: "pieces", says: "Pieces wanted", base: data.pieces ?? 0, wanted: data.pieces ?? 0 };
      return kind === "living" || data.pieces === null
        ? { by: "mixes", says: "Mixes wanted", base: data.mixes, wanted: data.mixes }
        : { by: "mixes", says: "Mixes", base: data.mixes, wanted: data.mixes };
  }
}
