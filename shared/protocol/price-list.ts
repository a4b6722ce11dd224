// The question that writes prices of a price list into the ingredient sheet.
import * as v from "valibot";
import { list, matching, messageReader, type Read, type Sent, text } from "./message.ts";

const MAX_ROWS = 500;
const MAX_TEXT = 200;

export const readPriceListAsk = messageReader("The prices from the sidebar", () =>
  v.object({
    /** Such as 2026-01-31. */
    day: matching(/^\d{4}-\d\d-\d\d$/),
    rows: list(
      v.object({
        /** As the ingredient sheet has it. */
        name: text(MAX_TEXT, 1),
        price: v.pipe(v.number(), v.finite(), v.minValue(0)),
        /** "" where it stays as it stands. */
        pack: text(MAX_TEXT),
        supplier: text(MAX_TEXT),
      }),
      MAX_ROWS,
      1,
    ),
  }),
);
export type PriceListAsk = Sent<typeof readPriceListAsk>;

export const readPriceListAnswer = messageReader("What the add-on wrote of the prices", () =>
  v.object({
    sheet: v.string(),
    written: v.number(),
    /** Ingredients whose price is a formula there: it stays. */
    formulas: v.array(v.string()),
    changes: v.array(v.object({ name: v.string(), before: v.number(), now: v.number() })),
  }),
);
export type PriceListAnswer = Read<typeof readPriceListAnswer>;
