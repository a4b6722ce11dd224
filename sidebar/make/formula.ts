// The ingredient rows of the panel, read as the sheet will read them.
import { isProblem, type Problem } from "../../shared/cell.ts";
import { fillIn } from "../../shared/fill-in.ts";
import { type AmountOf, allFlour, sum } from "../../shared/formula.ts";
import { isFlour, type Kind, type KindCell, kind, kindsOf } from "../../shared/kinds.ts";
import { type PercentCell, percent, readPercents, shareOf } from "../../shared/percents.ts";
import { CellError } from "../../shared/refusal.ts";
import type { Weight } from "../../shared/units.ts";
import type { RowDraft } from "./draft.ts";
import { tidy } from "./quantity.ts";
import { type Trouble, trouble } from "./trouble.ts";

/** A formula that can be built: names, kinds as the sheet counts them, percentages as ratios. */
export type FormulaRows = {
  readonly ingredient: readonly string[];
  readonly kind: readonly string[];
  readonly percent: readonly number[];
  readonly cells: readonly PercentCell[];
  readonly kinds: readonly Kind[];
};

type Read = { readonly index: number; readonly row: RowDraft; readonly percent: PercentCell; readonly kind: KindCell };

/** Reads the rows; blank ones are passed over. Null where there is anything to mend, which `troubles` then says. */
export function readRows(rows: readonly RowDraft[], troubles: Trouble[]): FormulaRows | null {
  const before = troubles.length;
  const read = rows.flatMap((row, index) => {
    const one = isEmpty(row) ? null : readRow(row, index, troubles);
    return one === null ? [] : [one];
  });
  if (rows.every(isEmpty)) {
    troubles.push(
      trouble("percent/0", "Write the formula: a flour row with 100, then each ingredient's percentage.", true),
    );
  }
  if (troubles.length > before) return null;
  try {
    return asRatios(read);
  } catch (error) {
    troubles.push(...rowTroubles(error, read));
    return null;
  }
}

export const isEmpty = ({ ingredient, kind, percent }: RowDraft): boolean =>
  [ingredient, kind, percent].every((text) => text.trim() === "");

function readRow(row: RowDraft, index: number, troubles: Trouble[]): Read | null {
  const before = troubles.length;
  const at = (column: string) => `${column}/${index}`;
  const place = `row ${index + 1}`;
  if (row.ingredient.trim() === "") troubles.push(trouble(at("ingredient"), `Name the ingredient of ${place}.`, true));
  let kindRead: KindCell | Problem = { problem: "" };
  if (row.kind.trim() === "") {
    troubles.push(trouble(at("kind"), `Say what kind ${place} is: flour, water, salt, yeast …`, true));
  } else {
    kindRead = kind().read(row.kind);
    const unread = isProblem(kindRead) ? kindRead.problem : "unread" in kindRead ? kindRead.unread : "";
    if (unread !== "") troubles.push(trouble(at("kind"), `The kind of ${place} ${unread}.`));
  }
  let share: PercentCell | Problem = { problem: "" };
  if (row.percent.trim() === "") {
    troubles.push(trouble(at("percent"), `Write the percentage of ${place}, or take the row out.`, true));
  } else {
    share = percent().read(row.percent.replace(/percent$/i, "%"));
    if (isProblem(share)) troubles.push(trouble(at("percent"), `The percentage of ${place} ${share.problem}.`));
  }
  if (troubles.length > before || isProblem(share) || isProblem(kindRead)) return null;
  return { index, row, percent: share, kind: kindRead };
}

function asRatios(read: readonly Read[]): FormulaRows {
  const typed = read.map((one) => one.percent);
  const names = read.map(({ row }) => row.ingredient.trim());
  const kinds = kindsOf(
    typed,
    read.map((one) => one.kind),
    "kinds",
    names,
  ).filter((one) => one !== null);
  const { style } = readPercents(typed, kinds);
  const ratios = typed.map((cell) => tidy(shareOf(cell, style)));
  const cells = ratios.map((value) => ({ value, marked: false }));
  readPercents(cells, kinds);
  return {
    ingredient: names,
    kind: kinds.map((one, at) => (one.word === "preferment" ? (read[at]?.row.kind.trim() ?? "") : one.word)),
    percent: ratios,
    cells,
    kinds,
  };
}

const SAID: Readonly<Record<string, string>> = { percents: "The percentage", kinds: "The kind" };

/** Faults count the rows that were read; the panel counts its own. */
function rowTroubles(error: unknown, read: readonly Read[]): Trouble[] {
  if (!(error instanceof CellError)) throw error;
  const flour = read.find((one) => "word" in one.kind && isFlour(one.kind));
  const first = (flour ?? read[0])?.index ?? 0;
  return error.faults.map(({ argument = "", row, says }): Trouble => {
    const index = row === undefined ? undefined : read[row - 1]?.index;
    const column = argument === "kinds" ? "kind" : "percent";
    if (index === undefined) return { ...trouble(`percent/${first}`, `The percentages ${says}.`), whole: true };
    return trouble(`${column}/${index}`, `${SAID[argument] ?? "The entry"} of row ${index + 1} ${says}.`);
  });
}

export type Weighed = { readonly dough: Weight; readonly flour: Weight };

/** Dough and flour for an amount, by the sum the sheet does. */
export function weighed({ cells, kinds }: FormulaRows, amount: Weight, of: AmountOf): Weighed {
  const { weights } = fillIn({ percents: cells, weights: cells.map(() => null), kinds }, amount, of);
  return { dough: sum(weights) as Weight, flour: allFlour(weights, kinds) };
}
