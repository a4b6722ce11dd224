// Builds the list of formula sheets.
import { LIST_NAME, type Options, type Values } from "../../shared/model.ts";
import { plan } from "../../shared/plan.ts";
import { formulaList } from "../../templates/formula-list.ts";
import { formulaSheetCount, unlistedSheets } from "./all-sheets.ts";
import { listLinks } from "./listed.ts";
import { make, type Steps } from "./steps.ts";

/** Fewer are read one by one in as few calls of the service as a sheet may take. */
const MANY = 6;
const UNITS: Options = { weight: "g", temperature: "C", length: "cm", parts: [] };

type Built = { readonly sheet: string; readonly note?: string };

/** A new list, of every formula sheet as it is now; the name of an older one goes over to it. */
export function* listAll({ values = {}, behind = false }: { values?: Values; behind?: boolean }): Steps<Built> {
  const { sheets, tabs, names } = yield* unlistedSheets({ names: [LIST_NAME] });
  const found = sheets.flatMap((sheet, at) => {
    const tab = tabs[at];
    return tab === undefined ? [] : [{ sheet, tab }];
  });
  const made = plan(formulaList, UNITS, values, listLinks(found));
  const sheet = yield* make(made, formulaList.title, tabs, { behind });
  return names.has(LIST_NAME)
    ? { sheet, note: "The bench keeps this list from now on: delete the older one." }
    : { sheet };
}

/** With the sixth formula sheet a workbook gets its list. What comes of it is only told: the sheet that was asked for is there. */
export function* listed(): Steps<{ note?: string }> {
  try {
    if ((yield* formulaSheetCount()) < MANY) return {};
    const { sheet } = yield* listAll({ behind: true });
    return {
      note: `This workbook has ${MANY} formulas or more now: the sheet “${sheet}” lists them, and the bench keeps it.`,
    };
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    return {
      note: `The list of all formulas could not be built, and is tried again with the next formula: ${message}`,
    };
  }
}
