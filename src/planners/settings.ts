import type { CellValue } from "../../shared/protocol/look.ts";
import type { Questions } from "../../shared/protocol/questions.ts";
import { SETTINGS_NAME } from "../../shared/sheet/workbook-names.ts";
import { look, type Steps } from "./steps.ts";

/** The shop's settings as they stand in the workbook; a cell with a number or a tick is read as it would be typed. */
export function* readSettings(): Steps<Questions["settings"]["answer"]> {
  const [range] = (yield* look({ cells: [SETTINGS_NAME] })).names;
  if (range === undefined) return { rows: null };
  const text = (cell: unknown) => String(cell ?? "").trim();
  return {
    rows: range.values.flatMap(([name, value]): (readonly [string, string])[] =>
      text(name) === "" ? [] : [[text(name), text(value)]],
    ),
  };
}

/** What stands beside a name in the rows of the settings; "" where there is none. */
export const settingIn = (rows: readonly (readonly CellValue[])[], name: string): string =>
  String(rows.find(([one]) => String(one).trim().toLowerCase() === name.toLowerCase())?.[1] ?? "").trim();

/** The labelling rules of the bakery; "" where nobody chose any. */
export function lawIn(rows: readonly (readonly CellValue[])[]): string {
  const law = settingIn(rows, "Labelling rules").toUpperCase();
  return ["EU", "UK", "US"].includes(law) ? law : "";
}

/** How many decimals prices have by the settings, where they say so: yen none, dinars three. */
export function moneyIn(rows: readonly (readonly CellValue[])[]): { readonly moneyDecimals?: number } {
  const text = settingIn(rows, "Decimals of prices");
  return /^[0-4]$/.test(text) ? { moneyDecimals: Number(text) } : {};
}
