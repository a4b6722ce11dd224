// A price list beside the ingredient sheet: what stands there, and what of the list is written.
import { refuse } from "../../shared/base/refusal.ts";
import { type Larder, readTable } from "../../shared/larder/larder.ts";
import type { SheetRow } from "../../shared/price-list/lines.ts";
import type { TakePricesAnswer, TakePricesAsk } from "../../shared/protocol/planned-questions.ts";
import { readPriceListAnswer } from "../../shared/protocol/price-list.ts";
import { readStockAnswer } from "../../shared/protocol/stock.ts";
import { LARDER_NAME, NO_LARDER_SHEET } from "../../shared/sheet/workbook-names.ts";
import { look, type Steps } from "./steps.ts";

export type PriceSheet = { readonly rows: readonly SheetRow[]; readonly larder: Larder };

/** The ingredient sheet as it stands. */
export function* readPriceSheet(): Steps<PriceSheet> {
  const [table] = (yield* look({ cells: [LARDER_NAME] })).names;
  if (table === undefined) return refuse(NO_LARDER_SHEET);
  const larder = readTable(table.values);
  const text = (cell: unknown) => (cell === null || cell === undefined ? "" : String(cell).trim());
  const heads = (table.values[0] ?? []).map((cell) => text(cell).toLowerCase());
  const [price, pack, supplier] = ["price", "pack", "supplier"].map((head) => heads.indexOf(head)) as [
    number,
    number,
    number,
  ];
  return {
    larder,
    rows: larder.rows.map(({ name, row }): SheetRow => {
      const cells = table.values[row - 1] ?? [];
      const value = cells[price];
      return {
        name,
        price: typeof value === "number" ? value : null,
        pack: text(cells[pack]),
        supplier: text(cells[supplier]),
      };
    }),
  };
}

/** New ingredients and new names first, so that the prices find their rows. */
export function* takePrices(question: Readonly<Record<string, unknown>>, now: Date): Steps<TakePricesAnswer> {
  const { rows, added, also } = question as TakePricesAsk;
  const stocked =
    added.length + also.length === 0
      ? []
      : readStockAnswer(yield { ask: "stock", ingredients: added.map((name) => ({ name, kind: "" as const })), also })
          .added;
  const answer = readPriceListAnswer(yield { ask: "priceList", day: dayOf(now), rows });
  return { ...answer, added: stocked };
}

/** As it is on the clock of whoever asks. */
const dayOf = (now: Date): string =>
  [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, "0")).join("-");
