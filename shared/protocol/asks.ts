// What the page may ask of the add-on, as it is read there.
import * as v from "valibot";
import { readCalculateAsk } from "./calculate.ts";
import { readCheckAsk } from "./check.ts";
import { readConnectAsk } from "./connect.ts";
import { readHistoryAsk, readReviseAsk } from "./history.ts";
import { readInsertAsk } from "./insert.ts";
import { readLookAsk } from "./look.ts";
import { readLotsAsk } from "./lots.ts";
import { readMakeAsk } from "./make.ts";
import { matching, messageReader } from "./message.ts";
import { readPriceListAsk } from "./price-list.ts";
import { readRemakeAsk } from "./remake.ts";
import { readStockAsk } from "./stock.ts";

const nothing = messageReader("The question from the sidebar", () => v.object({}));

export const ASK_READERS = {
  /** Is anybody there, as the right account? */
  ping: nothing,
  /** What stands in the workbook. */
  look: readLookAsk,
  /** What sheet functions give. */
  calculate: readCalculateAsk,
  /** A planned sheet, written. */
  make: readMakeAsk,
  /** A formula sheet, built anew in the place of another, with all that was typed there. */
  remake: readRemakeAsk,
  /** What formula sheets read of each other, written. */
  connect: readConnectAsk,
  /** The ingredients that the ingredient sheet can start with. */
  ingredients: nothing,
  /** Ingredients into free rows of the sheet that holds them. */
  stock: readStockAsk,
  /** Prices of the ingredient sheet, compared with those last seen; `day` is such as 2026-01-31. The sidebar asks `unasked` too. */
  prices: messageReader("The day from the sidebar", () =>
    v.object({ day: matching(/^\d{4}-\d\d-\d\d$/), unasked: v.optional(v.boolean()) }),
  ),
  /** Prices of a price list, written into the ingredient sheet. */
  priceList: readPriceListAsk,
  /** What the allergen table says now, kept as what its last print says. */
  printed: nothing,
  /** Rows into the lot log. */
  lots: readLotsAsk,
  /** Versions that are kept, of one formula sheet or of all. */
  history: readHistoryAsk,
  /** A formula sheet, kept as it is and written as a new version. */
  revise: readReviseAsk,
  /** One formula into the cell with the cursor. */
  insert: readInsertAsk,
  /** Weights typed over those of a formula sheet, please taken. */
  take: messageReader("The sheet with the typed weights", () => v.object({ sheet: v.string() })),
  /** Shows a cell of a sheet. */
  goto: messageReader("The cell to go to", () =>
    v.object({ sheet: v.string(), cell: matching(/^[A-Z]{1,3}[1-9]\d{0,6}$/) }),
  ),
  /** One step of the add-on's own check. */
  check: readCheckAsk,
};
