// What the formulas of a planned sheet may call, and what they refer to outside of it.

import { ARITHMETIC_CALLS, OTHER_CALLS, RANGE_CALLS } from "./sheet-calls.ts";
import {
  BAKELOG_NAME,
  CUSTOMERS_NAME,
  LABELS_NAME,
  LARDER_NAME,
  MIXLOG_NAME,
  PRICE_LISTS_NAME,
  PRICES_NAME,
  REGULAR_NAME,
} from "./workbook-names.ts";

const CALLS: ReadonlySet<string> = new Set([...RANGE_CALLS, ...ARITHMETIC_CALLS, ...OTHER_CALLS]);
/** A text, or the name of another sheet. */
const QUOTED = /"(?:[^"]|"")*"|'((?:[^']|'')+)'!/g;

const bare = (formula: string): string => formula.replace(QUOTED, " ");

/** Whether a formula is none, or calls anything but sheet functions and the spreadsheet's own that stay in the file. */
export function badFormula(formula: string): boolean {
  if (!formula.startsWith("=")) return true;
  const called = bare(formula).match(/[A-Za-z_][\w.]*(?=\s*\()/g) ?? [];
  return !called.every((name) => CALLS.has(name) || /^BAKE_[A-Z]+$/.test(name));
}

/** The sheets and the workbook's names that must be there for these formulas. */
export function neededBy(formulas: readonly string[]): { readonly sheets: string[]; readonly names: string[] } {
  const sheets = new Set<string>();
  const names = new Set<string>();
  for (const formula of formulas) {
    for (const [, sheet] of formula.matchAll(QUOTED)) if (sheet !== undefined) sheets.add(sheet.replace(/''/g, "'"));
    for (const name of [
      LARDER_NAME,
      LABELS_NAME,
      PRICES_NAME,
      PRICE_LISTS_NAME,
      CUSTOMERS_NAME,
      BAKELOG_NAME,
      MIXLOG_NAME,
      REGULAR_NAME,
    ])
      if (bare(formula).includes(name)) names.add(name);
  }
  return { sheets: [...sheets], names: [...names] };
}
