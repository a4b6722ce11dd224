// What is typed for a formula sheet, as its cells take it: one amount, percentages alone, and figures filled in from guides.

import { refuse } from "../../shared/base/refusal.ts";
import { quoted } from "../../shared/base/show.ts";
import { minutes, weight } from "../../shared/base/units.ts";
import { isProblem, type Reader } from "../../shared/cells/cell.ts";
import { fillIn } from "../../shared/formula/fill-in.ts";
import type { AmountOf } from "../../shared/formula/formula.ts";
import { percent } from "../../shared/formula/percents.ts";
import { kind, kindsOf } from "../../shared/larder/kinds.ts";
import type { SeenName } from "../../shared/protocol/look.ts";
import type { Options, SheetModel, Value, Values } from "../../shared/sheet/model.ts";
import { inputCell } from "../../shared/sheet/template-inputs.ts";
import { TIN_SHAPES, type TinShape, tinCapacity, tinSizes } from "../../shared/tins/tin.ts";
import { TIN_DOUGH_KINDS, type TinDoughKind, tinGuide } from "../../shared/tins/tin-guide.ts";
import { frictionGuide, MIXINGS, type Mixing } from "../../shared/water/temperature.ts";

/** The values for the cells of a formula sheet; those of other sheets as they are. Refuses weights that contradict each other. */
export function orderValues(model: SheetModel, values: Values, options: Options, mixLog?: SeenName): Values {
  if (inputCell(model, "amount") === undefined) return values;
  const weighed = withPercentages({ ...values, amount: amountOf(values) });
  return withFill(withFriction(weighed, options, mixLog), options);
}

const AMOUNTS: Readonly<Record<string, string>> = {
  dough: "dough_wanted",
  batter: "dough_wanted",
  flour: "flour_wanted",
  tins: "tins",
  trays: "trays",
};

const one = (values: Values, name: string): Value => {
  const value = values[name];
  return typeof value === "object" && value !== null ? (value[0] ?? null) : (value ?? null);
};
const column = (values: Values, name: string): readonly Value[] => {
  const value = values[name] ?? [];
  return typeof value === "object" && value !== null ? value : [value];
};

/** What the sheet is scaled to has one cell for its amount, whatever it is an amount of. */
function amountOf(values: Values): Value {
  const name = AMOUNTS[String(one(values, "by") ?? "pieces")];
  return one(values, "amount") ?? (name === undefined ? null : one(values, name));
}

/** A recipe by weights becomes one by percentages, and its dough the amount where none was typed. */
function withPercentages(values: Values): Values {
  const weights = column(values, "weighed");
  if (weights.every((cell) => cell === null)) return values;
  const names = column(values, "ingredient");
  const read = <T>(reader: Reader<T>, cells: readonly Value[], what: string): (T | null)[] =>
    Array.from({ length: Math.max(names.length, weights.length) }, (_, row) => {
      const cell = cells[row] ?? null;
      if (cell === null) return null;
      const answer = reader.read(cell);
      return isProblem(answer)
        ? refuse(`${what} of ${quoted(String(names[row] ?? `row ${row + 1}`))} ${answer.problem}.`)
        : answer;
    });
  const rows = read({ hint: { of: "any" }, read: (cell) => cell }, weights, "The weight").map((cell, row) =>
    cell === null || typeof cell === "number"
      ? cell
      : refuse(`The weight of ${quoted(String(names[row] ?? ""))} is no number. Enter one.`),
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
  const isBlank = one(values, "by") === null || (amount === null && one(values, "by") !== "pieces");
  return {
    ...values,
    percent: filled.shares,
    ...(isBlank ? { by: "dough", amount: dough } : {}),
  };
}

/** Factors are told for three temperatures; a preferment's is the fourth. */
function withFriction(values: Values, { temperature }: Options, mixLog: SeenName | undefined): Values {
  const [mixing, mixed] = [one(values, "mixing"), one(values, "minutes")];
  if (one(values, "friction_own") !== null || typeof mixing !== "string" || !(mixing in MIXINGS)) return values;
  const times = one(values, "preferment_temp") === null ? 1 : 4 / 3;
  const filled = (factor: number): Values => ({
    ...values,
    friction_own: hundredths(factor),
    friction_filled: hundredths(factor),
    friction_for: `${mixing} ${mixed ?? ""}`,
  });
  const logged = typeof mixed === "number" ? loggedFriction(mixLog, mixed, temperature) : null;
  if (logged !== null) return filled(logged * times);
  const isPerMinute = frictionGuide(mixing as Mixing, minutes(1))[1] !== frictionGuide(mixing as Mixing, minutes(2))[1];
  if (isPerMinute && typeof mixed !== "number") return values;
  const usual = frictionGuide(mixing as Mixing, typeof mixed === "number" ? minutes(mixed) : null)[1] ?? 0;
  return filled(usual * times * (temperature === "F" ? 9 / 5 : 1));
}

const hundredths = (value: number): number => Math.round(value * 100) / 100;

/** The factor of the shop's own mixes for so many minutes, where the log has read enough of them. */
function loggedFriction(log: SeenName | undefined, mixed: number, temperature: "C" | "F"): number | null {
  const [at0, perMinute, , read, degrees] = log?.values[0] ?? [];
  if (typeof at0 !== "number" || typeof perMinute !== "number" || typeof read !== "number") return null;
  const scale = degrees === temperature ? 1 : temperature === "C" ? 5 / 9 : 9 / 5;
  return (at0 + perMinute * mixed) * scale;
}

/** The usual fill of the dough's type, and what a tin of a shape holds that the sheet has no formula for. */
function withFill(values: Values, options: Options): Values {
  if (!options.parts.includes("tin")) return values;
  const kindOf = one(values, "tin_kind");
  const usual = typeof kindOf === "string" && kindOf in TIN_DOUGH_KINDS ? tinGuide(kindOf as TinDoughKind)[1] : null;
  const filled =
    one(values, "tin_fill") !== null || usual === null
      ? values
      : { ...values, tin_fill: usual, fill_filled: usual, fill_for: kindOf };
  return withCapacity(filled, options);
}

const BY_FORMULA: readonly TinShape[] = ["box", "round"];

function withCapacity(values: Values, { length }: Options): Values {
  const shape = one(values, "tin_shape");
  if (typeof shape !== "string" || !(shape in TIN_SHAPES) || BY_FORMULA.includes(shape as TinShape)) return values;
  const typed = [1, 2, 3, 4, 5].map((at) => one(values, `tin_size_${at}`));
  if (one(values, "tin_own") !== null || !typed.every((size) => size === null || typeof size === "number"))
    return values;
  const sizes = typed as (number | null)[];
  while (sizes.length > 0 && sizes[sizes.length - 1] === null) sizes.pop();
  if (sizes.length === 0) return values;
  const holds = tinCapacity(shape as TinShape, tinSizes(shape as TinShape, sizes, length));
  // Grams of water are no length: the capacity says what they say.
  return { ...values, tin_own: Math.round(holds), ...(shape === "water" ? { tin_size_1: null } : {}) };
}
