// A price as price lists write it: "€ 18.50", "18,50 EUR", "4.20 / kg".

import { readNumber } from "../base/number.ts";
import type { Fault } from "../base/refusal.ts";
import { quote, showNumber } from "../base/show.ts";
import type { Cell } from "./table.ts";

export type Priced = { readonly price: number; readonly pack: string | null };

/** What one of it costs: the pack is said behind the price, or in the heading. */
const PER =
  /(?:\/|\bper\b|\bje\b|\ba\b)\s*(?:1\s*)?(kg|kilo|kilogram|lb|pound|g|100\s*g|l|litre|liter|ltr|each|piece|pc|pcs)s?\b\.?|\b(each)\b/i;
const PACKS: Readonly<Record<string, string>> = {
  kg: "1 kg",
  kilo: "1 kg",
  kilogram: "1 kg",
  lb: "1 lb",
  pound: "1 lb",
  g: "1 g",
  "100g": "100 g",
  l: "1 l",
  litre: "1 l",
  liter: "1 l",
  ltr: "1 l",
  each: "1 piece",
  piece: "1 piece",
  pc: "1 piece",
  pcs: "1 piece",
};
const MONEY =
  /[\p{Sc}]|\b(?:eur|euro|euros|gbp|usd|cad|aud|nzd|chf|sek|nok|dkk|pln|czk|huf|zar|inr|kr|zł|kč|ft)\b\.?|\b(?:excl?|net|ex)\.? ?(?:vat|tax)\b/giu;

/** The pack that a price or its heading names; null for none. */
export function packPer(text: string): string | null {
  const [, per, unit = per] = PER.exec(text) ?? [];
  return unit === undefined ? null : (PACKS[unit.toLowerCase().replace(/\s/g, "")] ?? null);
}

export function priceIn(cell: Cell): Priced | Fault {
  if (typeof cell === "number")
    return cell > 0 ? { price: cell, pack: null } : { says: `is ${showNumber(cell)}; enter a price above 0` };
  const pack = packPer(cell);
  const bare = cell.replace(PER, " ").replace(MONEY, " ").replace(/\s+/g, " ").trim();
  const reading = readNumber(bare);
  if ("says" in reading)
    return {
      says:
        reading.reason === "two readings"
          ? `is ${quote(cell)}, which ${reading.says}`
          : `is ${quote(cell)}, which is no price; enter a number`,
    };
  return reading.value > 0 ? { price: reading.value, pack } : { says: `is ${quote(cell)}; enter a price above 0` };
}

/** "25KG" is 25 kg, as the sheet's own formula reads it; everything else stays as it is written. */
export function packText(cell: Cell): string {
  const text = String(cell).replace(/\s+/g, " ").trim();
  if (PACKS[text.toLowerCase()] !== undefined) return PACKS[text.toLowerCase()] ?? text;
  const [, many, unit = ""] = /^(\d+(?:\.\d+)?) ?(kg|kgs|kilos?|g|gr|grams?|lbs?|oz)\.?$/i.exec(text) ?? [];
  if (many === undefined) return text;
  const plain = /^k/i.test(unit) ? "kg" : /^g/i.test(unit) ? "g" : /^l/i.test(unit) ? "lb" : "oz";
  return `${many} ${plain}`;
}
