// Every template, in the order of the sidebar.
import type { SheetModel } from "../shared/sheet/model.ts";
import { allergenTable } from "./allergen-table.ts";
import { bakeOffLog } from "./bake-off-log.ts";
import { cake } from "./cake.ts";
import { cookie } from "./cookie.ts";
import { finishedProduct } from "./finished-product.ts";
import { flatRound } from "./flat-round.ts";
import { hearthLoaf } from "./hearth-loaf.ts";
import { labelText } from "./label-text.ts";
import { laminated } from "./laminated.ts";
import { larderSheet } from "./larder-sheet.ts";
import { levainLoaf } from "./levain-loaf.ts";
import { mixLog } from "./mix-log.ts";
import { panLoaf } from "./pan-loaf.ts";
import { priceLists } from "./price-lists.ts";
import { priceSheet } from "./price-sheet.ts";
import { regularOrders } from "./production/regular.ts";
import { settings } from "./settings.ts";
import { softBun } from "./soft-bun.ts";

export const TEMPLATES: readonly SheetModel[] = [
  panLoaf,
  hearthLoaf,
  levainLoaf,
  flatRound,
  softBun,
  laminated,
  cake,
  cookie,
];

/** Sheets that have a row in the list of formulas and are found by other sheets. */
export const LISTED_SHEETS: readonly SheetModel[] = /* @__PURE__ */ TEMPLATES.concat([finishedProduct]);

/** All that can be built: the formula sheets, and the sheets around them. */
// Marked as free of effects, so that the sidebar, which builds only templates, leaves the others out.
export const SHEETS: readonly SheetModel[] = /* @__PURE__ */ TEMPLATES.concat([
  finishedProduct,
  larderSheet,
  priceSheet,
  priceLists,
  mixLog,
  bakeOffLog,
  settings,
  allergenTable,
  labelText,
  regularOrders,
]);
