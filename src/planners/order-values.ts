// What is typed for a formula sheet, as its cells take it: one amount, and percentages alone.

import { isFault, refuse } from "../../shared/base/refusal.ts";
import { quote } from "../../shared/base/show.ts";
import { weight } from "../../shared/base/units.ts";
import type { CupSystem } from "../../shared/base/volumes.ts";
import type { Reader } from "../../shared/cells/cell.ts";
import { fillIn } from "../../shared/formula/fill-in.ts";
import type { AmountOf } from "../../shared/formula/formula.ts";
import { percent } from "../../shared/formula/percents.ts";
import { kind, kindsOf } from "../../shared/larder/kinds.ts";
import type { SeenName } from "../../shared/protocol/look.ts";
import type { Options, SheetModel, Value, Values } from "../../shared/sheet/model.ts";
import { inputCell, makesBatter } from "../../shared/sheet/template-inputs.ts";
import { column, one, withEgg, withFill, withFriction, withPlainWater } from "./guide-figures.ts";

/** The values for the cells of a formula sheet; those of other sheets as they are. Refuses weights that contradict each other. */
export function orderValues(
  model: SheetModel,
  values: Values,
  options: Options,
  { mixLog, country = "US" }: { readonly mixLog?: SeenName | undefined; readonly country?: CupSystem } = {},
): Values {
  if (inputCell(model, "amount") === undefined) return values;
  const watered = inputCell(model, "effective_wanted") === undefined ? values : withPlainWater(values);
  const weighed = withPercentages(model, { ...watered, amount: amountOf(values) });
  const counted = inputCell(model, "egg_weight") === undefined ? weighed : withEgg(weighed, options, country);
  return withFill(withFriction(counted, options, mixLog), options);
}

const AMOUNTS: Readonly<Record<string, string>> = {
  dough: "dough_wanted",
  batter: "dough_wanted",
  flour: "flour_wanted",
  tins: "tins",
  trays: "trays",
};

/** What the sheet is scaled to has one cell for its amount, whatever it is an amount of. */
function amountOf(values: Values): Value {
  const name = AMOUNTS[String(one(values, "by") ?? "pieces")];
  return one(values, "amount") ?? (name === undefined ? null : one(values, name));
}

/** What is mixed, as the sheet calls it. */
const mixOf = (model: SheetModel): string => (makesBatter(model) ? "batter" : "dough");

/** A recipe by weights becomes one by percentages, and its dough the amount where none was typed. */
function withPercentages(model: SheetModel, values: Values): Values {
  const weights = column(values, "weighed");
  if (weights.every((cell) => cell === null)) return values;
  const names = column(values, "ingredient");
  const read = <T>(reader: Reader<T>, cells: readonly Value[], what: string): (T | null)[] =>
    Array.from({ length: Math.max(names.length, weights.length) }, (_, row) => {
      const cell = cells[row] ?? null;
      if (cell === null) return null;
      const answer = reader.read(cell);
      return isFault(answer)
        ? refuse(`${what} of ${quote(String(names[row] ?? `row ${row + 1}`))} ${answer.says}.`)
        : answer;
    });
  const rows = read({ hint: { of: "any" }, read: (cell) => cell }, weights, "The weight").map((cell, row) =>
    cell === null || typeof cell === "number"
      ? cell
      : refuse(`The weight of ${quote(String(names[row] ?? ""))} is no number. Enter one.`),
  );
  const percents = read(percent(), column(values, "percent"), "The percentage");
  const kinds = read(kind(), column(values, "kind"), "The type");
  const typed = percents.map((cell, row) => cell ?? rows[row] ?? null);
  const by = one(values, "by") === "flour" ? "flour" : "dough";
  const amount = values.amount;
  const filled = fillIn(
    { percents, weights: rows.map((row) => (row === null ? null : weight(row))), kinds: kindsOf(typed, kinds) },
    typeof amount === "number" && one(values, "by") === by ? weight(amount) : null,
    by as AmountOf,
  );
  const dough = filled.weights.reduce<number>((sum, row) => sum + (row ?? 0), 0);
  const isOrdered =
    one(values, "by") === "pieces" ? column(values, "size_pieces").some((cell) => cell !== null) : amount !== null;
  return {
    ...values,
    percent: filled.shares,
    ...(isOrdered ? {} : { by: mixOf(model), amount: dough }),
  };
}
