// The ingredient rows of the panel, read as the sheet will read them.

import { tidy } from "../../shared/base/number.ts";
import { type Fault, isFault, Refusal } from "../../shared/base/refusal.ts";
import { type Weight, weight } from "../../shared/base/units.ts";
import { fillIn, typedShares } from "../../shared/formula/fill-in.ts";
import { type AmountOf, allFlour, sum } from "../../shared/formula/formula.ts";
import { type PercentCell, percent, shareOf } from "../../shared/formula/percents.ts";
import { isFlour, type Kind, type KindCell, kind, kindsOf } from "../../shared/larder/kinds.ts";
import { type FieldFault, fieldFault } from "../kit/field-fault.ts";
import type { RowDraft } from "./draft.ts";
import { asSheetReads, brokenHydration } from "./preferment-type.ts";
import { readQuantity, type Units } from "./quantity.ts";

/** A formula that can be built: names, kinds as the sheet counts them, percentages as ratios, weights in the sheet's unit. */
export type FormulaRows = {
  readonly ingredient: readonly string[];
  readonly kind: readonly string[];
  readonly percent: readonly (number | null)[];
  readonly weighed: readonly (Weight | null)[];
  readonly kinds: readonly Kind[];
  /** Which of the panel's rows each of them is. */
  readonly places: readonly number[];
  /** Water rows left to what the sheet works out for them, so that nothing can be told here of the whole. */
  readonly isOpen: boolean;
};

/** What the template lets the rows leave open. */
export type RowRules = {
  readonly units: Units;
  readonly weighed: boolean;
  /** A water row may stay blank: "no", "yes", or only once the effective hydration is typed. */
  readonly blankWater: "no" | "yes" | "with hydration";
};

type Read = {
  readonly index: number;
  readonly row: RowDraft;
  readonly percent: PercentCell | null;
  readonly weighed: Weight | null;
  readonly kind: KindCell;
};

/** Reads the rows; blank ones are passed over. Null where there is anything to mend, which `faults` then says. */
export function readRows(rows: readonly RowDraft[], rules: RowRules, faults: FieldFault[]): FormulaRows | null {
  const before = faults.length;
  const used = rows.map((row) => (rules.weighed ? row : { ...row, weighed: "" }));
  const readings = used.flatMap((row, index) => {
    const one = isEmpty(row) ? null : readRow(row, index, rules, faults);
    return one === null ? [] : [one];
  });
  if (used.every(isEmpty)) {
    faults.push(
      fieldFault("percent/0", "Enter the formula: a flour row with 100, then each ingredient's percentage.", true),
    );
  }
  if (faults.length > before) return null;
  try {
    return asRatios(readings);
  } catch (error) {
    faults.push(...rowFaults(error, readings));
    return null;
  }
}

export const isEmpty = ({ ingredient, kind, percent, weighed }: RowDraft): boolean =>
  [ingredient, kind, percent, weighed].every((text) => text.trim() === "");

function readRow(row: RowDraft, index: number, rules: RowRules, faults: FieldFault[]): Read | null {
  const before = faults.length;
  const at = (column: string) => `${column}/${index}`;
  const place = `row ${index + 1}`;
  if (row.ingredient.trim() === "") faults.push(fieldFault(at("ingredient"), `Name the ingredient of ${place}.`, true));
  let kindRead: KindCell | Fault = { says: "" };
  if (row.kind.trim() === "") {
    faults.push(fieldFault(at("kind"), `Choose the type of ${place}: flour, water, salt, yeast …`, true));
  } else {
    kindRead = kind().read(row.kind);
    const unread = isFault(kindRead) ? kindRead.says : "unread" in kindRead ? kindRead.unread : "";
    const broken = wordOf(kindRead) === "preferment" ? brokenHydration(kindRead as Kind, row.kind) : "";
    if ((unread || broken) !== "") faults.push(fieldFault(at("kind"), `The type of ${place} ${unread || broken}.`));
  }
  const weighed = readQuantity(row.weighed, "weight", rules.units);
  if (isFault(weighed)) faults.push(fieldFault(at("weighed"), `The weight of ${place} ${weighed.says}.`));
  let share: PercentCell | Fault | null = null;
  if (row.percent.trim() !== "") {
    share = percent().read(row.percent.replace(/percent$/i, "%"));
    if (isFault(share)) faults.push(fieldFault(at("percent"), `The percentage of ${place} ${share.says}.`));
  } else if (row.weighed.trim() === "") {
    const missing = blankSays(place, wordOf(kindRead) === "water", rules);
    if (missing !== "") faults.push(fieldFault(at("percent"), missing, true));
  }
  if (faults.length > before || isFault(share) || isFault(kindRead) || isFault(weighed)) return null;
  return { index, row, percent: share, weighed: weighed === null ? null : weight(weighed), kind: kindRead };
}

const wordOf = (cell: KindCell | Fault): string => ("word" in cell ? cell.word : "");

function blankSays(place: string, isWater: boolean, { weighed, blankWater }: RowRules): string {
  if (isWater && blankWater === "yes") return "";
  const or = weighed ? " or weight" : "";
  const hydration =
    isWater && blankWater === "with hydration" ? ", or the effective hydration you want, and it is worked out" : "";
  return `Enter the percentage${or} of ${place}${hydration}${hydration === "" ? ", or delete the row" : ""}.`;
}

function asRatios(readings: readonly Read[]): FormulaRows {
  const typed = underSign(readings);
  const weighed = readings.map((one) => one.weighed);
  const names = readings.map(({ row }) => row.ingredient.trim());
  // A row left open counts as one that has an amount: its kind is read as the sheet will read it.
  const kinds = kindsOf(
    readings,
    readings.map((one) => one.kind),
    "kinds",
    names,
  ).filter((one) => one !== null);
  const { style } = typedShares({ percents: typed, weights: weighed, kinds });
  const ratios = typed.map((cell) => (cell === null ? null : tidy(shareOf(cell, style))));
  typedShares({ percents: asCells(ratios), weights: weighed, kinds });
  return {
    ingredient: names,
    kind: kinds.map((one, at) =>
      one.word === "preferment" ? asSheetReads(one, readings[at]?.row.kind ?? "") : one.word,
    ),
    percent: ratios,
    weighed,
    kinds,
    places: readings.map(({ index }) => index),
    isOpen: readings.some((one) => one.percent === null && one.weighed === null),
  };
}

const SAID: Readonly<Record<string, string>> = {
  percents: "The percentage",
  kinds: "The type",
  weights: "The weight",
};
const WHOLE: Readonly<Record<string, string>> = { amount: "The amount to make", weights: "The weights" };
const COLUMN: Readonly<Record<string, string>> = { kinds: "kind", weights: "weighed" };

/** Faults count the rows that were read; the panel counts its own. */
function rowFaults(error: unknown, readings: readonly Pick<Read, "index" | "kind">[]): FieldFault[] {
  if (!(error instanceof Refusal)) throw error;
  const flour = readings.find((one) => "word" in one.kind && isFlour(one.kind));
  const first = (flour ?? readings[0])?.index ?? 0;
  return error.faults.map(({ argument = "", row, says }): FieldFault => {
    const index = row === undefined ? undefined : readings[row - 1]?.index;
    const column = COLUMN[argument] ?? "percent";
    if (index === undefined) {
      const subject = WHOLE[argument] ?? "The percentages";
      return { ...fieldFault(`percent/${first}`, `${subject} ${says}.`), whole: true };
    }
    return fieldFault(`${column}/${index}`, `${SAID[argument] ?? "The entry"} of row ${index + 1} ${says}.`);
  });
}

/**
 * Where no flour has a percentage that tells how the others are written, the heading's % sign does; a share below 1 of
 * anything but yeast stays as it was typed.
 */
function underSign(readings: readonly Read[]): (PercentCell | null)[] {
  const typed = readings.map(({ percent: cell }) => cell);
  const settled = readings.some(
    (one) =>
      one.percent !== null &&
      (wordOf(one.kind) === "flour" ||
        (!one.percent.marked && one.percent.value > 0 && one.percent.value < 1 && wordOf(one.kind) !== "yeast")),
  );
  if (settled) return typed;
  return typed.map((cell) => (cell === null || cell.marked ? cell : { value: cell.value / 100, marked: true }));
}

const asCells = (ratios: readonly (number | null)[]): (PercentCell | null)[] =>
  ratios.map((value) => (value === null ? null : { value, marked: false }));

export type Weighed = {
  readonly dough: Weight;
  readonly flour: Weight;
  /** Row by row. */
  readonly weights: readonly (Weight | null)[];
  readonly kinds: readonly Kind[];
};

/** Dough, flour and each row for an amount (null: as the rows' own weights say), by the sum the sheet does. */
export function weighRows(
  rows: FormulaRows,
  amount: Weight | null,
  of: AmountOf,
  faults: FieldFault[],
): Weighed | null {
  const { kinds } = rows;
  if (rows.isOpen || (amount === null && rows.weighed.every((one) => one === null))) return null;
  try {
    const { weights } = fillIn({ percents: asCells(rows.percent), weights: rows.weighed, kinds }, amount, of);
    return { dough: sum(weights) as Weight, flour: allFlour(weights, kinds), weights, kinds };
  } catch (error) {
    const placed = kinds.map((one, row) => ({ kind: one, index: rows.places[row] ?? row }));
    faults.push(...rowFaults(error, placed));
    return null;
  }
}
