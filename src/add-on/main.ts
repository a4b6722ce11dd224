// What Apps Script may call. Nothing here runs when the script is loaded: every formula cell loads it.
import { call as callFunction } from "../functions/call.ts";
import { FUNCTIONS } from "../functions/index.ts";
import { mustBeWhole } from "./code-check.ts";
import { onEdit as answerEdit } from "./typing.ts";

export { give, probe } from "./self-check.ts";
export { answerSidebar } from "./server.ts";

/** A formula cell: the function's name and the arguments as the sheet passed them. */
export function call(name: string, args: ArrayLike<unknown>): unknown {
  mustBeWhole();
  const sheetFunction = FUNCTIONS.find((one) => one.name === name);
  if (sheetFunction === undefined) throw new Error(`${name} is not a function of Gramwright`);
  return callFunction(sheetFunction, args);
}

/** What was typed; nothing is changed by a script that did not arrive whole. */
export const onEdit: typeof answerEdit = (event) => {
  mustBeWhole();
  answerEdit(event);
};

/** The menu; the only thing that is allowed before anybody used the add-on in a file. */
export function onOpen(): void {
  SpreadsheetApp.getUi()
    .createAddonMenu()
    .addItem("Open Gramwright", "openSidebar")
    .addItem("Test this installation", "checkAddOn")
    .addToUi();
}

export function openSidebar(): void {
  requireBoth();
  SpreadsheetApp.getUi().showSidebar(page().setTitle("Gramwright"));
  tellOfOtherText();
}

/** The same page; what is put at its end makes it show the check in place of the sidebar. */
export function checkAddOn(): void {
  requireBoth();
  SpreadsheetApp.getUi().showSidebar(
    page().setTitle("Gramwright: test this installation").append('<i id="check-now" hidden></i>'),
  );
  tellOfOtherText();
}

/** Permissions are ticked one by one: where one was left out, Google asks for it here, and not in the middle of something. */
function requireBoth(): void {
  if (typeof ScriptApp !== "undefined" && typeof ScriptApp.requireAllScopes === "function")
    ScriptApp.requireAllScopes(ScriptApp.AuthMode.FULL);
}

const page = () => HtmlService.createHtmlOutputFromFile("sidebar");

/** A page of ours that lost something says so itself. One with another text in its file, or none, cannot. */
function tellOfOtherText(): void {
  // Parted, as Code.js itself may be the other text.
  if (page().getContent().indexOf(["not", "whole"].join("-")) >= 0) return;
  SpreadsheetApp.getUi().alert(
    "The file sidebar.html holds another text, or none. Open the script editor, empty sidebar.html, paste all of the second text, save, then reload.",
  );
}
