// What Apps Script may call. Nothing here runs when the script is loaded: every formula cell loads it.
import { call as callFunction } from "./call.ts";
import { FUNCTIONS } from "./functions/index.ts";

export { benchAsk } from "./server.ts";

/** A formula cell: the function's name and the arguments as the sheet passed them. */
export function call(name: string, args: ArrayLike<unknown>): unknown {
  const made = FUNCTIONS.find((one) => one.name === name);
  if (made === undefined) throw new Error(`${name} is not a function of Gramwright`);
  return callFunction(made, args);
}

/** The menu; the only thing that is allowed before anybody used the add-on in a file. */
export function onOpen(): void {
  SpreadsheetApp.getUi().createAddonMenu().addItem("Open the bench", "openBench").addToUi();
}

export function openBench(): void {
  SpreadsheetApp.getUi().showSidebar(HtmlService.createHtmlOutputFromFile("sidebar").setTitle("Gramwright bench"));
}
