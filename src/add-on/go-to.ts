import { refuse, refuseUnread } from "../../shared/base/refusal.ts";
import { quote } from "../../shared/base/show.ts";
import { activeWorkbook } from "./active.ts";

const CELL = /^[A-Z]{1,3}[1-9]\d{0,6}$/;
const text = (raw: unknown): string => (typeof raw === "string" ? raw.slice(0, 200) : "");

/** Shows a cell of a sheet. */
export function goTo(asked: Readonly<Record<string, unknown>>): { sheet: string } {
  const [name, cell] = [text(asked.sheet), text(asked.cell)];
  const sheet = activeWorkbook().getSheetByName(name);
  if (sheet === null) {
    return refuse(`There is no sheet ${quote(name)} any more; it was renamed or deleted. Check the sheet again.`);
  }
  if (!CELL.test(cell)) refuseUnread("The cell to go to");
  sheet.getRange(cell).activate();
  return { sheet: name };
}
