// A formula of another sheet in the units of the one that it is compared with.
import { centimetres, fromCentimetres, fromGrams, toCentimetres, toGrams } from "../base/units.ts";
import type { Formula } from "./formula.ts";
import type { Money } from "./money.ts";

type Costed = { readonly formula: Formula; readonly money: Money };

/** Weights, diameters and prices are converted; percentages and what a piece costs are the same in all units. */
export function inUnits({ formula, money }: Costed, options: Formula["options"]): Costed {
  const { weight: unit, length } = formula.options;
  if (unit === options.weight && length === options.length) return { formula, money };
  const weighs = (value: number) => fromGrams(toGrams(value, unit), options.weight);
  const across = (value: number) => fromCentimetres(centimetres(toCentimetres(value, length)), options.length);
  const orNull = (value: number | null, to: (value: number) => number) => (value === null ? null : to(value));
  return {
    formula: {
      ...formula,
      options: { ...formula.options, weight: options.weight, length: options.length },
      batch: { ...formula.batch, amount: weighs(formula.batch.amount) },
      sizes: formula.sizes.map(({ diameter, ...size }) => ({
        ...size,
        baked: orNull(size.baked, weighs),
        ...(diameter === undefined ? {} : { diameter: orNull(diameter, across) }),
      })),
      perArea: orNull(formula.perArea, (value) => weighs(value) / across(1) ** 2),
    },
    money: {
      ...money,
      prices: Object.fromEntries(Object.entries(money.prices).map(([name, price]) => [name, price / weighs(1)])),
    },
  };
}
