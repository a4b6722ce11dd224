// Types of preferments: sheets read their hydration in whole percent, so that a decimal sign means the same in every country.

import { quote } from "../../shared/base/show.ts";
import type { Kind } from "../../shared/larder/kinds.ts";

/** Hydration in percent, without the tail that it has as a share of the row. */
const hydrationOf = ({ flour }: Kind): number => Number((100 / flour - 100).toPrecision(9));

/** A preferment's word and its hydration, which a sheet reads in whole percent, however it was typed. */
export function asSheetReads(preferment: Kind, typed: string): string {
  const name = /[a-z]{4,}/i.exec(typed.replace(/hydration/gi, ""))?.[0]?.toLowerCase() ?? "levain";
  return `${name} ${Math.round(hydrationOf(preferment))}%`;
}

/** What to enter where the hydration is no whole percentage; "" for all other types. */
export function brokenHydration(read: Kind, typed: string): string {
  if (read.word !== "preferment" || Number.isInteger(hydrationOf(read))) return "";
  return `is ${quote(typed.trim())}; enter its hydration in whole percent, such as ${quote(asSheetReads(read, typed))}`;
}
