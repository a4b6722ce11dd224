// Types of preferments: sheets read their hydration to a tenth of a percent, with a point or a comma alike.

import { quote, showNumber } from "../../shared/base/show.ts";
import type { Kind } from "../../shared/larder/kinds.ts";

/** Hydration in percent, without the tail that it has as a share of the row. */
const hydrationOf = ({ flour }: Kind): number => Number((100 / flour - 100).toPrecision(9));

/** A preferment's word and its hydration, which a sheet reads to a tenth of a percent, however it was typed. */
export function asSheetReads(preferment: Kind, typed: string): string {
  const name = /[a-z]{4,}/i.exec(typed.replace(/hydration/gi, ""))?.[0]?.toLowerCase() ?? "levain";
  return `${name} ${showNumber(hydrationOf(preferment), 1)}%`;
}

/** What to enter where a preferment's hydration has more decimals; "" where it has not. */
export function brokenHydration(preferment: Kind, typed: string): string {
  if (Number.isInteger(Number((10 * hydrationOf(preferment)).toPrecision(9)))) return "";
  return `is ${quote(typed.trim())}; enter its hydration with one decimal, such as ${quote(asSheetReads(preferment, typed))}`;
}
