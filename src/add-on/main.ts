// What Apps Script may call. Nothing here runs when the script is loaded: every formula cell loads it.
import { call as callFunction } from "../functions/call.ts";
import { FUNCTIONS } from "../functions/index.ts";

export { probe } from "./self-check.ts";
export { benchAsk } from "./server.ts";
export { onEdit } from "./typing.ts";

/** A formula cell: the function's name and the arguments as the sheet passed them. */
export function call(name: string, args: ArrayLike<unknown>): unknown {
  const sheetFunction = FUNCTIONS.find((one) => one.name === name);
  if (sheetFunction === undefined) throw new Error(`${name} is not a function of Gramwright`);
  return callFunction(sheetFunction, args);
}

/** The menu; the only thing that is allowed before anybody used the add-on in a file. */
export function onOpen(): void {
  SpreadsheetApp.getUi()
    .createAddonMenu()
    .addItem("Open Gramwright", "openBench")
    .addItem("Test this installation", "checkAddOn")
    .addToUi();
}

export function openBench(): void {
  SpreadsheetApp.getUi().showSidebar(page().setTitle("Gramwright"));
}

/** The same page; what is put at its end makes it show the check in place of the bench. */
export function checkAddOn(): void {
  SpreadsheetApp.getUi().showSidebar(page().setTitle("Test this installation").append('<i id="check-now" hidden></i>'));
}

const page = () => HtmlService.createHtmlOutputFromFile("sidebar");
