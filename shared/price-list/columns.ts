// Which column of a price list says what: told by its headings, and asked where they do not tell.
import type { Cell, Table } from "./table.ts";

export const ROLES = ["ingredient", "price", "pack", "supplier"] as const;
export type Role = (typeof ROLES)[number];
/** The column of each, counted from 0; null for none. */
export type Places = Readonly<Record<Role, number | null>>;

export type Columns = {
  /** How many rows stand above the first line. */
  readonly above: number;
  /** What each column is called, or begins with where there are no headings. */
  readonly names: readonly string[];
  readonly places: Places;
  /** Those that a person has to choose, as no column or more than one may be meant. */
  readonly unclear: readonly Role[];
};

const MAX_ABOVE = 25;

/** The headings of price lists; what stands first is the plainest. */
const HEADS: Readonly<Record<Role, readonly RegExp[]>> = {
  ingredient: [
    /^(?:ingredient|product|item|article|description|name|goods)s?$/,
    /\b(?:ingredient|product|item|article)s? (?:name|description)\b|\bdescription\b/,
  ],
  price: [/^(?:price|new price|list price|net price|pack price|cost)$/, /\b(?:price|cost)\b/],
  pack: [/^(?:pack|packing|pack size|packaging|size|contents?)$/, /\b(?:pack|size)\b|^(?:unit|uom)s?$/],
  supplier: [/^(?:supplier|vendor|wholesaler)$/],
};
/** Headings that hold such a word and mean something else. */
const OTHER =
  /\b(?:old|previous|last|code|no|number|id|ref|sku|group|category|change|diff|min|minimum|rrp|retail|deposit)\b/;

const plain = (cell: Cell | undefined): string =>
  String(cell ?? "")
    .toLowerCase()
    .replace(/[^\p{L}\d]+/gu, " ")
    .trim();

/** Columns that fit a role best; several where they fit as well. */
function fitting(heads: readonly Cell[], role: Role): number[] {
  for (const pattern of HEADS[role]) {
    const places = heads.flatMap((head, at) => (pattern.test(plain(head)) && !OTHER.test(plain(head)) ? [at] : []));
    if (places.length > 0) return places;
  }
  return [];
}

export function columnsIn(table: Table): Columns {
  const width = Math.max(0, ...table.slice(0, 200).map((row) => row.length));
  const all = Array.from({ length: width }, (_, at) => at);
  const top = table
    .slice(0, MAX_ABOVE)
    .findIndex((row) => fitting(row, "ingredient").length > 0 && fitting(row, "price").length > 0);
  if (top < 0) {
    const first = table.find((row) => row.some((cell) => cell !== "")) ?? [];
    const places = { ingredient: null, price: null, pack: null, supplier: null };
    return {
      above: 0,
      names: all.map((at) => `Column ${at + 1}: ${String(first[at] ?? "").slice(0, 30) || "blank"}`),
      places,
      unclear: ["ingredient", "price", "pack"],
    };
  }
  const heads = table[top] ?? [];
  const found = ROLES.map((role) => [role, fitting(heads, role)] as const);
  const places = Object.fromEntries(found.map(([role, at]) => [role, at.length === 1 ? (at[0] ?? null) : null]));
  return {
    above: top + 1,
    names: all.map((at) => String(heads[at] ?? "").slice(0, 40) || `Column ${at + 1}`),
    places: places as Places,
    // A list without packs, or without suppliers, is one whose prices are for the packs of the sheet.
    unclear: found.flatMap(([role, at]) => (at.length > 1 || (role === "price" && at.length === 0) ? [role] : [])),
  };
}
