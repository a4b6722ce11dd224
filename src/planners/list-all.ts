// Builds the list of formula sheets.
import type { Options } from "../../shared/sheet/model.ts";
import { plan } from "../../shared/sheet/plan.ts";
import { LIST_NAME } from "../../shared/sheet/workbook-names.ts";
import { formulaList } from "../../templates/formula-list.ts";
import { type FormulaSheets, overAllSheets } from "./all-sheets.ts";
import { listLinks } from "./list-row.ts";
import { make, type Steps, withNotes } from "./steps.ts";

const UNITS: Options = { weight: "g", temperature: "C", length: "cm", parts: [] };

type Built = { readonly sheet: string; readonly note?: string };

/** A new list, of every formula sheet as it is now; the name of an older one goes over to it. */
export function* listAll(): Steps<Built> {
  return yield* overAllSheets({ names: [LIST_NAME] }, listOf, { list: false });
}

function* listOf({ sheets, tabs, names }: FormulaSheets): Steps<Built> {
  const listRows = sheets.flatMap((sheet, at) => {
    const tab = tabs[at];
    return tab === undefined ? [] : [{ sheet, tab }];
  });
  const listPlan = plan(formulaList, UNITS, {}, listLinks(listRows));
  const isSecond = names.has(LIST_NAME);
  return withNotes(
    yield* make(listPlan, formulaList.title, tabs, { behind: true }),
    isSecond ? "Gramwright keeps this list from now on: delete the older one." : undefined,
  );
}
