// Figures that a formula sheet is filled in with where nobody typed them: from guides, the shop's own mixes and the built-in table.

import { isFault } from "../../shared/base/refusal.ts";
import { fromGrams, type Grams, grams, minutes, ratio, weight } from "../../shared/base/units.ts";
import { type CupSystem, SHELLED_EGGS } from "../../shared/base/volumes.ts";
import { plainWater } from "../../shared/enrichment/enrichment.ts";
import { kind, kindsOf } from "../../shared/larder/kinds.ts";
import { NO_LARDER } from "../../shared/larder/larder.ts";
import type { SeenName } from "../../shared/protocol/look.ts";
import type { Options, Value, Values } from "../../shared/sheet/model.ts";
import { TIN_SHAPES, type TinShape, tinCapacity, tinSizes } from "../../shared/tins/tin.ts";
import { TIN_DOUGH_KINDS, type TinDoughKind, tinGuide } from "../../shared/tins/tin-guide.ts";
import { frictionGuide, MIXINGS, type Mixing } from "../../shared/water/temperature.ts";

export const one = (values: Values, name: string): Value => {
  const value = values[name];
  return typeof value === "object" && value !== null ? (value[0] ?? null) : (value ?? null);
};
export const column = (values: Values, name: string): readonly Value[] => {
  const value = values[name] ?? [];
  return typeof value === "object" && value !== null ? value : [value];
};

/** The water row that was left blank gets what the effective hydration wanted leaves to the tap. */
export function withPlainWater(values: Values): Values {
  const wanted = one(values, "effective_wanted");
  const percents = column(values, "percent");
  const kinds = column(values, "kind").map((cell) => {
    const kindCell = cell === null ? null : kind().read(cell);
    return isFault(kindCell) ? null : kindCell;
  });
  const open = kinds.findIndex(
    (one, row) => one !== null && "word" in one && one.word === "water" && (percents[row] ?? null) === null,
  );
  const isTyped = percents.every((cell) => cell === null || typeof cell === "number");
  if (typeof wanted !== "number" || open < 0 || !isTyped || !percents.some((cell) => cell !== null)) return values;
  const names = column(values, "ingredient").map((name) => (name === null ? null : String(name)));
  const weights = names.map((_, row) => {
    const cell = row === open ? 0 : percents[row];
    return typeof cell === "number" ? weight(cell) : null;
  });
  const isOther = kinds.map((one, row) => row !== open && one !== null && "word" in one && one.word === "water");
  const typed = weights.reduce<number>((sum, cell, row) => sum + (isOther[row] ? (cell ?? 0) : 0), 0);
  const all = plainWater(names, weights, kindsOf(weights, kinds, "kinds", names), ratio(wanted), NO_LARDER);
  return {
    ...values,
    percent: names.map((_, row) => (row === open ? Math.max(0, all - typed) : (percents[row] ?? null))),
  };
}

/** A large egg without its shell in grams: of the US by USDA SR28 01123 (50 g), elsewhere by the grades of the country. */
const largeEgg = (country: CupSystem): Grams => grams(country === "US" ? 50 : (SHELLED_EGGS[country].large ?? 50));

/** What an egg weighs goes by the country of the bakery, where it is known. */
export function withEgg(values: Values, { weight: unit }: Options, country: CupSystem): Values {
  const hasEgg = column(values, "kind").some((cell) => /^eggs?$/i.test(String(cell ?? "").trim()));
  if (!hasEgg || one(values, "egg_weight") !== null) return values;
  return { ...values, egg_weight: hundredths(fromGrams(largeEgg(country), unit)) };
}

/** Factors are told for three temperatures; a preferment's is the fourth. */
export function withFriction(values: Values, { temperature }: Options, mixLog: SeenName | undefined): Values {
  const [mixing, mixed] = [one(values, "mixing"), one(values, "minutes")];
  if (one(values, "friction_own") !== null || typeof mixing !== "string" || !Object.keys(MIXINGS).includes(mixing))
    return values;
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
export function withFill(values: Values, options: Options): Values {
  if (!options.parts.includes("tin")) return values;
  const kindOf = one(values, "tin_kind");
  const usual =
    typeof kindOf === "string" && Object.keys(TIN_DOUGH_KINDS).includes(kindOf)
      ? tinGuide(kindOf as TinDoughKind)[1]
      : null;
  const filled =
    one(values, "tin_fill") !== null || usual === null
      ? values
      : { ...values, tin_fill: usual, fill_filled: usual, fill_for: kindOf };
  return withCapacity(filled, options);
}

const BY_FORMULA: readonly TinShape[] = ["box", "round"];

function withCapacity(values: Values, { length }: Options): Values {
  const shape = one(values, "tin_shape");
  if (typeof shape !== "string" || !Object.keys(TIN_SHAPES).includes(shape) || BY_FORMULA.includes(shape as TinShape))
    return values;
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
