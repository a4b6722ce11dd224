import { refuse } from "../../shared/base/refusal.ts";
import { quote } from "../../shared/base/show.ts";
import { activeWorkbook } from "./workbook.ts";

/** Shows a cell of a sheet. */
type Target = { readonly sheet: string; readonly cell: string };

export function goTo({ sheet: name, cell }: Target): { sheet: string } {
  const sheet = activeWorkbook().getSheetByName(name);
  if (sheet === null) {
    return refuse(`There is no sheet ${quote(name)} any more; it was renamed or deleted. Check the sheet again.`);
  }
  sheet.getRange(cell).activate();
  return { sheet: name };
}
