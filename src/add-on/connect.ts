// Writes what formula sheets read of each other into the small table of each, and nowhere else.

import { refuse } from "../../shared/base/refusal.ts";
import { quote } from "../../shared/base/show.ts";
import type { ConnectAnswer, ConnectAsk } from "../../shared/protocol/connect.ts";
import type { Tab } from "../../shared/sheet/tab.ts";
import { activeWorkbook } from "./workbook.ts";

export function connect({ connections, head, tabs }: ConnectAsk): ConnectAnswer {
  const workbook = activeWorkbook();
  const stillThere = ({ name, id }: Tab) => {
    const sheet = workbook.getSheetByName(name);
    if (sheet === null || sheet.getSheetId() !== id) return refuse(`The sheet ${quote(name)} was ${MEANWHILE}`);
    return sheet;
  };
  for (const tab of tabs) stillThere(tab);
  const ranges = connections.map(({ tab, row, column, formulas }) => {
    const sheet = stillThere(tab);
    if (sheet.getRange(row - 2, column).getValue() !== head) refuse(`The sheet ${quote(tab.name)} was ${MEANWHILE}`);
    return { range: sheet.getRange(row, column, formulas.length, formulas[0]?.length ?? 1), formulas };
  });
  for (const { range, formulas } of ranges) range.setFormulas(formulas as string[][]);
  return { sheets: connections.map(({ tab }) => tab.name) };
}

const MEANWHILE = "renamed, deleted or changed meanwhile. Press the button again.";
