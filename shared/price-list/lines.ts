// The lines of a price list beside the ingredient sheet: what each would change there, and what has to be asked first.
import { isFault, Refusal } from "../base/refusal.ts";
import { nearest } from "../base/words.ts";
import { nameKey } from "../larder/built-in-larder.ts";
import { findIngredient, type Larder } from "../larder/larder.ts";
import { packWeight } from "../money/pack.ts";
import type { Columns, Places } from "./columns.ts";
import { packPer, packText, priceIn } from "./price-cell.ts";
import type { Cell, Table } from "./table.ts";

/** A row of the ingredient sheet as it stands. */
export type SheetRow = {
  readonly name: string;
  readonly price: number | null;
  readonly pack: string;
  readonly supplier: string;
};

export type Line = {
  /** Its row in the list, counted from 1 with the headings. */
  readonly row: number;
  readonly name: string;
  /** As they are written in the list. */
  readonly price: string;
  readonly pack: string;
  readonly supplier: string;
  /** The ingredient of the sheet that goes by this name; null where none does, or more than one may. */
  readonly of: string | null;
  /** Ingredients of the sheet that may be meant. */
  readonly near: readonly string[];
};

const MAX_LINES = 3000;
const MAX_NAME = 100;

/** Lines with a name and a price or a pack: what else stands there is a heading of a group, or a page's end. */
export function linesIn(table: Table, { above }: Columns, places: Places, larder: Larder): readonly Line[] {
  const { ingredient, price, pack, supplier } = places;
  if (ingredient === null || price === null) return [];
  const heads = above > 0 ? (table[above - 1] ?? []) : [];
  const perHead = packPer(String(heads[price] ?? ""));
  const at = (cells: readonly Cell[], column: number | null) => (column === null ? "" : (cells[column] ?? ""));
  return table.slice(above, above + MAX_LINES).flatMap((cells, down): Line[] => {
    const name = String(at(cells, ingredient)).replace(/\s+/g, " ").trim().slice(0, MAX_NAME);
    const priceCell = at(cells, price);
    if (name === "" || priceCell === "" || nameKey(name) === "") return [];
    const packOfCell = packText(at(cells, pack));
    const per = typeof priceCell === "string" ? (packPer(priceCell) ?? perHead) : perHead;
    return [
      {
        row: above + down + 1,
        name,
        price: String(priceCell),
        // What the price is of is said beside it; the pack's own column says then how it is sold.
        pack: per ?? packOfCell,
        supplier: String(at(cells, supplier)).trim().slice(0, MAX_NAME),
        ...matched(name, larder),
      },
    ];
  });
}

const MAX_TOLD = 5;

/** What of the list is not read, in sentences: rows with a price and no name, and those that are too many. */
export function leftUnread(table: Table, { above }: Columns, { ingredient, price }: Places): string[] {
  if (ingredient === null || price === null) return [];
  const rows = table.slice(above, above + MAX_LINES).flatMap((cells, down) => {
    const [name, cost] = [nameKey(String(cells[ingredient] ?? "")), cells[price] ?? ""];
    return name === "" && !isFault(priceIn(cost)) ? [above + down + 1] : [];
  });
  const told = `${rows.slice(0, MAX_TOLD).join(", ")}${rows.length > MAX_TOLD ? ` and ${rows.length - MAX_TOLD} more` : ""}`;
  return [
    ...(rows.length === 0
      ? []
      : [`${rows.length === 1 ? "Row" : "Rows"} ${told}: a price without a name, which is left out.`]),
    ...(table.length > above + MAX_LINES
      ? [
          `Rows below ${above + MAX_LINES} are not read, and the list has ${table.length}. Take out what you do not buy, or read the rest as a list of its own.`,
        ]
      : []),
  ];
}

/** Weights and counts that stand in a name say how it is packed. */
const MEASURES =
  /\b\d+(?:[.,]\d+)?\s*(?:x|kg|kgs|g|gr|lb|lbs|oz|l|ltr|ml|cl|pcs|pieces|each|dozen|%)\b\.?|\b\d+\b|[()*]/gi;

function matched(name: string, larder: Larder): Pick<Line, "of" | "near"> {
  const bare = name
    .replace(MEASURES, " ")
    .replace(/\s+/g, " ")
    .replace(/^[\s,.;:-]+|[\s,.;:-]+$/g, "");
  for (const one of [name, bare]) {
    const of = one === "" ? null : ownRow(one, larder);
    if (of !== null) return { of, near: [] };
  }
  return { of: null, near: nearRows(bare || name, larder) };
}

/** The sheet's own row of this name: of a row that is there, not of what the built-in table knows besides. */
function ownRow(name: string, larder: Larder): string | null {
  try {
    const exact = larder.byName.get(nameKey(name));
    if (exact !== undefined) return exact.name;
    const known = findIngredient(larder, name);
    return known === undefined || known.row === null ? null : known.name;
  } catch (error) {
    if (error instanceof Refusal) return null;
    throw error;
  }
}

const MAX_NEAR = 5;

/** At least one word in three is the same. */
const MIN_ALIKE = 1 / 3;

/** Rows that share words with the name, the most alike first; then those spelled nearly so. */
function nearRows(name: string, larder: Larder): string[] {
  const words = (text: string) =>
    nameKey(text)
      .split(" ")
      .filter((word) => word.length > 1);
  const wanted = words(name);
  const alike = (packName: string): number => {
    const some = words(packName);
    const both = some.filter((word) => wanted.includes(word)).length;
    return both / Math.max(1, new Set([...some, ...wanted]).size);
  };
  const rows = larder.rows
    .map((row) => ({ name: row.name, alike: Math.max(...[row.name, ...row.alsoCalled].map(alike)) }))
    .filter((row) => row.alike >= MIN_ALIKE - 1e-9)
    .sort((one, other) => other.alike - one.alike);
  const spelled = nearest(
    name,
    larder.rows.map((row) => row.name),
    2,
  );
  return [...new Set([...rows.map((row) => row.name), ...spelled])].slice(0, MAX_NEAR);
}

/** A line as a person may have put it right, for one ingredient. */
export type Wanted = Pick<Line, "name" | "price" | "pack" | "supplier">;

export type Offer = {
  readonly price: number;
  /** "" where the sheet's pack stays. */
  readonly pack: string;
  readonly supplier: string;
  /** How many times as much by weight it costs; null where that cannot be told. */
  readonly times: number | null;
  /** Whether anything on the sheet would change. */
  readonly isNew: boolean;
  /** What a person must say yes to first; "" for nothing. */
  readonly asks: string;
};

/** By more than a half up or down is a slip as often as a price. */
const MOST = 1.5;
const LEAST = 0.5;

/** What a line says for an ingredient, or which cell of it cannot be read. */
export function offerFor(
  wanted: Wanted,
  now: SheetRow | null,
  larder: Larder,
): Offer | { readonly at: "price" | "pack"; readonly says: string } {
  const priced = priceIn(
    typeof wanted.price === "string" && /^\d+(?:\.\d+)?(?:e-?\d+)?$/.test(wanted.price)
      ? Number(wanted.price)
      : wanted.price,
  );
  if (isFault(priced)) return { at: "price", says: priced.says };
  const pack = wanted.pack;
  const name = now?.name ?? wanted.name;
  const grams = pack === "" ? null : weighed(pack, name, larder);
  if (grams !== null && typeof grams !== "number") return { at: "pack", says: grams.says };
  if (pack === "" && (now === null || now.pack === ""))
    return { at: "pack", says: "is not said; enter one such as 25 kg" };
  const before = now === null || now.pack === "" ? null : weighed(now.pack, name, larder);
  const each =
    pack === "" || pack === now?.pack ? 1 : typeof before === "number" && grams !== null ? before / grams : null;
  const times = now?.price == null || now.price <= 0 || each === null ? null : (priced.price / now.price) * each;
  const isNew =
    now === null ||
    priced.price !== now.price ||
    (pack !== "" && pack !== now.pack) ||
    (wanted.supplier !== "" && wanted.supplier !== now.supplier);
  return { price: priced.price, pack, supplier: wanted.supplier, times, isNew, asks: question(times, now, each) };
}

function question(times: number | null, now: SheetRow | null, each: number | null): string {
  if (times !== null && (times > MOST || times < LEAST)) return "moved";
  return now?.price != null && each === null ? "pack" : "";
}

/** A pack that is counted weighs what its ingredient's measures say; where they say nothing, it is a pack all the same. */
function weighed(pack: string, name: string, larder: Larder): number | { readonly says: string } {
  const known = ((): string | null => {
    try {
      return findIngredient(larder, name) === undefined ? null : name;
    } catch (error) {
      if (error instanceof Refusal) return null;
      throw error;
    }
  })();
  const packGrams = packWeight(pack, known, larder, { unit: null });
  return isFault(packGrams) ? packGrams : packGrams;
}
