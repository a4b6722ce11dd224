// The units of shared/ as branded numbers, and every conversion between units. Nothing outside this file converts.

declare const unit: unique symbol;
type In<U extends string> = number & { readonly [unit]: U };

/** A part of something, 0.65 being 65 %. */
export type Ratio = In<"ratio">;
/** A weight in grams. */
export type Grams = In<"g">;
/** A weight in whatever one unit the question uses throughout. */
export type Weight = In<"weight">;
export type Celsius = In<"°C">;
/** A difference of temperatures: friction, rise. It converts by 5/9 alone. */
export type CelsiusDegrees = In<"K">;
/** A temperature, or a factor of the factor method, in the one unit the question uses throughout. */
export type AnyDegrees = In<"degrees">;
export type Centimetres = In<"cm">;
export type SquareCentimetres = In<"cm²">;
export type CubicCentimetres = In<"cm³">;
export type Minutes = In<"min">;
export type Hours = In<"h">;

export const ratio = (value: number) => value as Ratio;
export const grams = (value: number) => value as Grams;
export const weight = (value: number) => value as Weight;
export const celsius = (value: number) => value as Celsius;
export const celsiusDegrees = (value: number) => value as CelsiusDegrees;
export const anyDegrees = (value: number) => value as AnyDegrees;
export const centimetres = (value: number) => value as Centimetres;
export const squareCentimetres = (value: number) => value as SquareCentimetres;
export const cubicCentimetres = (value: number) => value as CubicCentimetres;
export const minutes = (value: number) => value as Minutes;
export const hours = (value: number) => value as Hours;

export type WeightUnit = "g" | "kg" | "oz" | "lb";
export type LengthUnit = "cm" | "mm" | "in";
export type TemperatureUnit = "C" | "F";

/** International avoirdupois pound, exact: 0.45359237 kg (NIST SP 811, appendix B); the ounce is a sixteenth. */
const GRAMS_IN: Readonly<Record<WeightUnit, number>> = { g: 1, kg: 1000, oz: 453.59237 / 16, lb: 453.59237 };
/** The inch is 2.54 cm exactly (NIST SP 811, appendix B). */
const CENTIMETRES_IN: Readonly<Record<LengthUnit, number>> = { cm: 1, mm: 0.1, in: 2.54 };
/** 0 °C is 32 °F; a Celsius degree is 9/5 of a Fahrenheit degree (NIST SP 811, 8.5). */
const FREEZING_FAHRENHEIT = 32;
const FAHRENHEIT_IN_CELSIUS = 9 / 5;

export const gramsIn = (unit: WeightUnit) => grams(GRAMS_IN[unit]);
export const toGrams = (value: number, unit: WeightUnit) => grams(value * GRAMS_IN[unit]);
export const fromGrams = (value: Grams, unit: WeightUnit) => value / GRAMS_IN[unit];
export const toCentimetres = (value: number, unit: LengthUnit) => centimetres(value * CENTIMETRES_IN[unit]);
export const fromCentimetres = (value: Centimetres, unit: LengthUnit) => value / CENTIMETRES_IN[unit];

export const toCelsius = (value: number, unit: TemperatureUnit) =>
  celsius(unit === "C" ? value : (value - FREEZING_FAHRENHEIT) / FAHRENHEIT_IN_CELSIUS);
export const fromCelsius = (value: Celsius, unit: TemperatureUnit) =>
  unit === "C" ? value : value * FAHRENHEIT_IN_CELSIUS + FREEZING_FAHRENHEIT;
export const toCelsiusDegrees = (value: number, unit: TemperatureUnit) =>
  celsiusDegrees(unit === "C" ? value : value / FAHRENHEIT_IN_CELSIUS);
export const fromCelsiusDegrees = (value: CelsiusDegrees, unit: TemperatureUnit) =>
  unit === "C" ? value : value * FAHRENHEIT_IN_CELSIUS;

/** The words people write for the units, by the unit they mean. */
export const WEIGHT_UNITS = {
  g: ["gram", "gramme", "gr", "gm"],
  kg: ["kilo", "kilogram"],
  oz: ["ounce"],
  lb: ["pound"],
} as const;
export const LENGTH_UNITS = {
  cm: ["centimetre", "centimeter"],
  mm: ["millimetre", "millimeter"],
  in: ["inch", "inches", '"'],
} as const;
export const TEMPERATURE_UNITS = { C: ["celsius", "°c", "centigrade"], F: ["fahrenheit", "°f"] } as const;

/** "1.5 kg" is "1.5" and "kg"; a text without one of these units stays whole. */
export function splitUnit<U extends string>(
  text: string,
  known: Readonly<Record<U, readonly string[]>>,
): { bare: string; unit: U | undefined } {
  const end = /^(.*?[\d½⅓⅔¼¾⅛⅜⅝⅞])\s*([°\p{L}"″]+)\.?$/u.exec(text.trim());
  const word = (end?.[2] ?? "").toLowerCase().replace("″", '"');
  const unit = (Object.keys(known) as U[]).find((one) =>
    [one.toLowerCase(), ...known[one], ...known[one].map((name) => `${name}s`)].includes(word),
  );
  return unit === undefined ? { bare: text, unit } : { bare: end?.[1] ?? "", unit };
}
