// An amount as a person enters it for one row: grams, another unit of weight, or a percentage.

import { readNumber } from "../../shared/base/number.ts";
import { toGrams, type WeightUnit } from "../../shared/base/units.ts";
import type { LineCorrection } from "../../shared/recipe/text/corrections.ts";

const AMOUNT = /^(.*?\d)\s*(%|kg|kilos?|g|gr|grams?|oz|ounces?|lbs?|pounds?)?\.?$/i;

/** Undefined where it is no amount. */
export function amountOfText(text: string): LineCorrection | undefined {
  const [, number = "", unit = "g"] = AMOUNT.exec(text.trim()) ?? [];
  const reading = readNumber(number, { threeDecimals: /^[kl%]/i.test(unit) });
  if ("says" in reading || !(reading.value > 0)) return undefined;
  if (unit === "%") return { percent: reading.value };
  const of: WeightUnit = /^k/i.test(unit) ? "kg" : /^o/i.test(unit) ? "oz" : /^[lp]/i.test(unit) ? "lb" : "g";
  return { grams: toGrams(reading.value, of) };
}

export const AMOUNT_WANTED = "Enter an amount such as 500 g or 65 %.";
