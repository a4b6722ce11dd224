// The question that adds rows to the lot log.
import * as v from "valibot";
import { Refusal, refuse, refuseUnread } from "../base/refusal.ts";
import { list, messageReader, type Read, type Sent, text } from "./message.ts";

export const LOT_HEADS = ["Ready on", "Batch", "Product", "Mix", "Ingredient", "Weight", "Lot"] as const;
const MAX_ROWS = 2000;
const MAX_TEXT = 200;

/** A row for each mix, ingredient and lot; weights in the unit of their sheet. */
export const lotRows = (least: number) =>
  list(
    v.object({
      /** Day on which it is ready, such as 2026-12-05. */
      day: text(MAX_TEXT),
      batch: text(MAX_TEXT),
      product: text(MAX_TEXT),
      /** Such as "mix 1 of 2", or "preferment". */
      mix: text(MAX_TEXT),
      ingredient: text(MAX_TEXT),
      weight: v.pipe(v.number(), v.finite()),
      lot: text(MAX_TEXT),
    }),
    MAX_ROWS,
    least,
  );

export const readLotsAsk = messageReader(refuseLots, () => v.object({ rows: lotRows(1) }));
export type LotsAsk = Sent<typeof readLotsAsk>;
export type LotRow = LotsAsk["rows"][number];

function refuseLots({ type, input }: v.BaseIssue<unknown>): never {
  if (type === "max_length" && Array.isArray(input)) mustFitLog(input.length);
  return refuseUnread("The lots from the sidebar");
}

/** Refuses more rows than are kept at a time. */
export function mustFitLog(rows: number): void {
  if (rows > MAX_ROWS) refuse(`Up to ${MAX_ROWS} rows of lots are kept at a time, not ${rows}.`);
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

export const readLotsAnswer = messageReader(
  () => refuse("The lots are kept, but the answer could not be read. Look at the lot log before you keep them again."),
  () => v.object({ sheet: v.string(), added: v.number() }),
);
export type LotsAnswer = Read<typeof readLotsAnswer>;

const UNKEPT = "lots not kept";

/** Refuses to take the place of a weigh-up whose lots no log keeps: the log is a sheet of its own. */
export function refuseUnkept(weighUp: string): never {
  throw new Refusal([
    {
      reason: UNKEPT,
      says: `Lots are entered on “${weighUp}”, and there is no lot log yet. Press “Keep the lots”, then build it again.`,
    },
  ]);
}
/** Whether that is why it was refused. */
export const isUnkept = (reason: string | undefined): boolean => reason === UNKEPT;
