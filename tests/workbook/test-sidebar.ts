// A script and a bench that do little, served as the built ones are.
import { mkdirSync, mkdtempSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { openKeeper } from "../../src/workbook/file/keeper.ts";
import { openWorkbook } from "../../src/workbook/host.ts";
import { demoSheetsSeen } from "../templates/seen-sheets.ts";
import { PROBES } from "./support.ts";

export const CODE = `${PROBES}
var SEEN = ${JSON.stringify(demoSheetsSeen())};
var LARDER = ["gramwright_larder", "gramwright_labels", "gramwright_prices"];
function onOpen(e) { SpreadsheetApp.getUi().createAddonMenu().addItem("Open Gramwright", "openSidebar").addItem("Stumble", "stumble").addToUi(); }
function openSidebar() { SpreadsheetApp.getUi().showSidebar(HtmlService.createHtmlOutputFromFile("sidebar").setTitle("Test bench")); }
function stumble() { throw new Error("the oven is cold"); }
function answerSidebar(json) {
  try {
    var asked = JSON.parse(json);
    var seen = SEEN.filter(function (one) { return asked.words !== undefined || asked.sheet === one.name; });
    if (asked.ask === "look") return JSON.stringify({ ok: true, answer: { front: "", sheets: seen, names: (asked.names || []).filter(function (name) { return LARDER.indexOf(name) >= 0; }).map(function (name) { return { name: name, rows: 9, values: [] }; }) } });
    if (asked.ask === "connect") return JSON.stringify({ ok: true, answer: { sheets: [] } });
    if (asked.ask === "ingredients") return JSON.stringify({ ok: true, answer: { ingredients: [] } });
    if (asked.ask !== "make") throw new Error("say make");
    if (SpreadsheetApp.getActive().getSheetByName("Rye") !== null) return JSON.stringify({ ok: true, answer: { sheet: "Rye" } });
    var sheet = SpreadsheetApp.getActive().insertSheet("Rye");
    sheet.getRange("A1:A2").setNumberFormat("0.0%").setValues([[0.5], [0.25]]);
    sheet.getRange("B1").setNote("told in the status line");
    sheet.getRange("B2").setFormula("=SUM(A1:A2)");
    sheet.getRange("C1").setFormula("=PROBE_SHOW(A1:A2)");
    return JSON.stringify({ ok: true, answer: { sheet: "Rye" } });
  } catch (error) { return JSON.stringify({ ok: false, message: error.message }); }
}`;
export const BENCH = `<!doctype html><html lang="en"><head><title>b</title></head><body><button id="go">Ask</button><p id="said"></p><script>
document.getElementById("go").onclick = function () {
  google.script.run.withSuccessHandler(function (text) { said.textContent = text; }).withFailureHandler(function (e) { said.textContent = e.message; }).answerSidebar("{}");
};</script></body></html>`;

/** A folder as the server wants it, with these two in it. */
export function testRoot(): string {
  const root = mkdtempSync(join(tmpdir(), "gramwright-page-"));
  mkdirSync(join(root, "dist"));
  mkdirSync(join(root, "src"));
  symlinkSync(join(process.cwd(), "src/workbook"), join(root, "src/workbook"));
  symlinkSync(join(process.cwd(), "node_modules"), join(root, "node_modules"));
  writeFileSync(join(root, "dist/Code.js"), CODE);
  writeFileSync(join(root, "dist/sidebar.html"), BENCH);
  return root;
}

/** A file as the page keeps it once this script has built its sheet: who opens it waits for no demo shop. */
export function keepRye(file: string): void {
  const book = openWorkbook({ codeJs: CODE });
  const reply = JSON.parse(String(book.script.serve("answerSidebar", ['{"ask":"make"}']))) as {
    answer: { sheet: string };
  };
  book.engine.run("DELETE_SHEET", { sheetId: "sheet-1", sheetName: "Sheet1" });
  if (reply.answer.sheet !== "Rye") throw new Error("the sheet was not built");
  const keeper = openKeeper(file, () => {});
  const kept = keeper.save(book.engine.data(), keeper.load().revision);
  if (!("revision" in kept)) throw new Error("the file was not kept");
}
