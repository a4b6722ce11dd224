// What the add-on answers, as it is read in the page.
import * as v from "valibot";
import { readCalculateAnswer } from "./calculate.ts";
import { readCheckAnswer } from "./check.ts";
import { readConnectAnswer } from "./connect.ts";
import { readHistoryAnswer, readReviseAnswer } from "./history.ts";
import { readIngredientsAnswer } from "./ingredients.ts";
import { readInsertAnswer } from "./insert.ts";
import { readSnapshot } from "./look.ts";
import { readLotsAnswer } from "./lots.ts";
import { messageReader } from "./message.ts";
import type { Whole } from "./pasted-sum.ts";
import { readMakeAnswer } from "./plan-message.ts";
import { readPriceListAnswer } from "./price-list.ts";
import { readStockAnswer } from "./stock.ts";

export const ANSWER_READERS = {
  ping: messageReader("The version of the add-on", () =>
    v.object({
      version: v.string(),
      /** Whether Code.js is as it was packed, and the sum of what stands there; an older one does not say. */
      whole: v.optional(v.picklist<readonly Whole[]>(["whole", "damaged", "unknown"]), "unknown"),
      sum: v.optional(v.string(), ""),
    }),
  ),
  look: readSnapshot,
  calculate: readCalculateAnswer,
  make: readMakeAnswer,
  remake: readMakeAnswer,
  connect: readConnectAnswer,
  ingredients: readIngredientsAnswer,
  stock: readStockAnswer,
  prices: messageReader("What the add-on saw of the prices", () =>
    v.object({ changes: v.array(v.object({ name: v.string(), before: v.number(), now: v.number() })) }),
  ),
  priceList: readPriceListAnswer,
  printed: messageReader("What the add-on marked as printed", () =>
    v.object({ products: v.number(), changed: v.number(), unknown: v.number() }),
  ),
  lots: readLotsAnswer,
  history: readHistoryAnswer,
  revise: readReviseAnswer,
  insert: readInsertAnswer,
  /** Addresses of cells whose weight was taken, and what is said on others. */
  take: messageReader("What the add-on took", () =>
    v.object({
      taken: v.array(v.string()),
      notes: v.array(v.object({ cells: v.array(v.string()), text: v.string() })),
    }),
  ),
  goto: messageReader("The add-on's answer", () => v.object({ sheet: v.string() })),
  check: readCheckAnswer,
};
