// What becomes of each line of a price list: taken, asked about, left out, or the same as before.
import { quote, showNumber } from "../base/show.ts";
import type { Larder } from "../larder/larder.ts";
import { type Line, type Offer, offerFor, type SheetRow } from "./lines.ts";

/** What a person chose for a line; what was not touched is as the list has it. */
export type Choice = {
  /** An ingredient of the sheet, or one of the two below. */
  readonly of?: string;
  readonly price?: string;
  readonly pack?: string;
  readonly isSure?: boolean;
};
export const LEFT_OUT = "\u0000out";
export const AS_NEW = "\u0000new";

export type Taken = { readonly line: Line; readonly now: SheetRow | null; readonly offer: Offer };
export type Open = {
  readonly line: Line;
  readonly at: "of" | "price" | "pack" | "sure";
  /** A sentence that begins with the line. */
  readonly says: string;
};
export type Decision = {
  readonly taken: readonly Taken[];
  readonly open: readonly Open[];
  /** Lines whose price and pack stand on the sheet already. */
  readonly same: readonly Line[];
  /** Lines of no ingredient on the sheet that anybody asked for. */
  readonly others: readonly Line[];
  /** Ingredients of the sheet that no line names. */
  readonly unnamed: readonly string[];
};

export function decide(
  lines: readonly Line[],
  choices: ReadonlyMap<number, Choice>,
  rows: readonly SheetRow[],
  larder: Larder,
  supplier = "",
): Decision {
  const taken: Taken[] = [];
  const open: Open[] = [];
  const same: Line[] = [];
  const others: Line[] = [];
  const byName = new Map(rows.map((row) => [row.name, row]));
  const wanted = lines.map((line) => ({ line, choice: choices.get(line.row) ?? {} }));
  const targets = wanted.map(({ line, choice }) => choice.of ?? line.of ?? "");
  for (const [at, { line, choice }] of wanted.entries()) {
    const target = targets[at] ?? "";
    if (target === LEFT_OUT) continue;
    if (target === "") {
      if (line.near.length === 0) others.push(line);
      else open.push({ line, at: "of", says: `${where(line)} is not on your sheet. Is it ${either(line.near)}?` });
      continue;
    }
    const twin = targets.findIndex((one, other) => other !== at && one === target && target !== AS_NEW);
    const other = wanted[twin]?.line;
    if (other !== undefined) {
      open.push({
        line,
        at: "of",
        says: `${where(line)} and row ${other.row} both mean ${quote(target)}. Leave one of them out.`,
      });
      continue;
    }
    const now = target === AS_NEW ? null : (byName.get(target) ?? null);
    const row = {
      name: line.name,
      price: choice.price ?? line.price,
      pack: choice.pack ?? line.pack,
      supplier: line.supplier || supplier.trim(),
    };
    const offer = offerFor(row, now, larder);
    if ("at" in offer) open.push({ line, at: offer.at, says: `${where(line)}: its ${offer.at} ${offer.says}.` });
    else if (!offer.isNew) same.push(line);
    else if (offer.asks !== "" && choice.isSure !== true)
      open.push({ line, at: "sure", says: `${where(line)}: ${sureText(offer, now)}` });
    else taken.push({ line, now, offer });
  }
  const named = new Set(targets);
  return { taken, open, same, others, unnamed: rows.flatMap(({ name }) => (named.has(name) ? [] : [name])) };
}

const where = ({ row, name }: Line): string => `Row ${row}, ${quote(name)}`;
const either = (names: readonly string[]): string => names.slice(0, 3).map(quote).join(" or ");

function sureText({ price, pack, times, asks }: Offer, now: SheetRow | null): string {
  const [was, is] = [priceText(now?.price ?? null, now?.pack ?? ""), priceText(price, pack || (now?.pack ?? ""))];
  if (asks === "moved" && times !== null)
    return `${was} becomes ${is}, ${showNumber(times)} times as much by weight. Is that right?`;
  return `${was} becomes ${is}. The two packs cannot be compared. Is that right?`;
}

export const priceText = (price: number | null, pack: string): string =>
  `${price === null ? "no price" : showNumber(price, 4)}${pack === "" ? "" : ` for ${pack}`}`;
