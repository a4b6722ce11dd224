// A price list that was read, beside the ingredient sheet, with all that was answered since.
import type { Columns, Places } from "../../shared/price-list/columns.ts";
import { type Choice, type Decision, decide } from "../../shared/price-list/decide.ts";
import { leftUnread, linesIn } from "../../shared/price-list/lines.ts";
import type { Table } from "../../shared/price-list/table.ts";
import type { Questions } from "../../shared/protocol/questions.ts";

type Sheet = Questions["priceSheet"]["answer"];

export type Reading = {
  readonly sheet: Sheet;
  readonly table: Table;
  readonly columns: Columns;
  places: Places;
  readonly choices: Map<number, Choice>;
  supplier: string;
  isRemembered: boolean;
};

export const decided = ({ table, columns, places, sheet, choices, supplier }: Reading): Decision =>
  decide(linesIn(table, columns, places, sheet.larder), choices, sheet.rows, sheet.larder, supplier);

export const unread = ({ table, columns, places }: Reading): readonly string[] => leftUnread(table, columns, places);
