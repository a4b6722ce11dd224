// The question that adds rows to the lot log, checked at both ends.
import { refuse, refuseUnread } from "../base/refusal.ts";

/** A row for each mix, ingredient and lot; weights in the unit of their sheet. */
export type LotRow = {
  /** Day on which it is ready, such as 2026-12-05. */
  readonly day: string;
  readonly batch: string;
  readonly product: string;
  /** Such as "mix 1 of 2", or "preferment". */
  readonly mix: string;
  readonly ingredient: string;
  readonly weight: number;
  readonly lot: string;
};
export type LotsAnswer = { readonly sheet: string; readonly added: number };

export const LOT_HEADS = ["Ready on", "Batch", "Product", "Mix", "Ingredient", "Weight", "Lot"] as const;
const TEXTS = ["day", "batch", "product", "mix", "ingredient", "lot"] as const;
const MAX_ROWS = 2000;
const MAX_TEXT = 200;

export function lotsAsk({ rows }: Readonly<Record<string, unknown>>): readonly LotRow[] {
  if (!Array.isArray(rows) || rows.length === 0) return refuseUnread("The lots from the sidebar");
  if (rows.length > MAX_ROWS) return refuse(`Up to ${MAX_ROWS} rows of lots are kept at a time, not ${rows.length}.`);
  return rows.map((raw: unknown): LotRow => {
    const row = (typeof raw === "object" && raw !== null ? raw : {}) as Record<string, unknown>;
    const isText = TEXTS.every((name) => typeof row[name] === "string" && (row[name] as string).length <= MAX_TEXT);
    if (!isText || typeof row.weight !== "number" || !Number.isFinite(row.weight))
      return refuseUnread("The lots from the sidebar");
    return row as unknown as LotRow;
  });
}

/** What tells one row from another: the same is kept once. */
export const lotKey = (cells: readonly unknown[]): string =>
  [cells[1], cells[3], cells[4], cells[6]].map((cell) => String(cell).trim().toLowerCase()).join("|");

export const lotCells = (row: LotRow): (string | number)[] => [
  row.day,
  row.batch,
  row.product,
  row.mix,
  row.ingredient,
  row.weight,
  row.lot,
];

export function lotsAnswer(raw: unknown): LotsAnswer {
  const { sheet, added } = (typeof raw === "object" && raw !== null ? raw : {}) as Record<string, unknown>;
  if (typeof sheet !== "string" || typeof added !== "number")
    return refuse(
      "The lots are kept, but the answer could not be read. Look at the lot log before you keep them again.",
    );
  return { sheet, added };
}
