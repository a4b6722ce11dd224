import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { findOffice } from "../../src/build/programs.ts";
import { openWorkbook, type WorkbookHost } from "../../src/workbook/host.ts";
import type { AuthMode } from "../../src/workbook/service/guard.ts";

/** Custom functions that show what reaches them and return what they are told to. */
export const PROBES = `
/**
 * Shows its arguments as JSON.
 * @param {*} first The first one.
 * @param {*} second The second one (optional).
 * @param {*} third The third one (optional).
 * @customfunction
 */
function PROBE_SHOW(first, second, third) {
  var shown = [];
  for (var i = 0; i < arguments.length; i++) shown.push(told(arguments[i]));
  return JSON.stringify(shown);
}
function told(value) {
  if (value === undefined) return "undefined";
  if (Array.isArray(value)) return value.map(function (row) { return row.map(told); });
  if (value instanceof Date) return "Date " + value.getFullYear() + "-" + (value.getMonth() + 1) + "-" + value.getDate();
  return value;
}
/**
 * Returns what its argument names.
 * @param {string} what The name.
 * @customfunction
 */
function PROBE_RETURN(what) {
  return { nan: NaN, infinity: 1 / 0, nul: null, undef: undefined, date: new Date(0), ragged: [[1, 2], [3]], flat: [1, 2], empty: [],
    inside: [[1, null]], block: [[1, "a"], [true, ""]], text: "plain", long: new Array(50002).join("x") }[what];
}
/**
 * Throws.
 * @param {string} sentence What it says.
 * @customfunction
 */
function PROBE_THROW(sentence) { throw new Error(sentence); }
/** @customfunction */
function PROBE_SLIP() { return missing.thing; }
/** @customfunction */
function PROBE_WRITE() { SpreadsheetApp.getActive().getActiveSheet().getRange("A1").setValue(1); return 1; }
`;

export const openProbes = (locale?: "en_US" | "de_DE"): WorkbookHost =>
  openWorkbook({ codeJs: PROBES, sidebarHtml: "", ...(locale ? { locale } : {}) });

/** A workbook whose script has one function, \`go\`, with this body; \`sheet\` is the active sheet in it. */
export function withScript(body: string): WorkbookHost & { go(mode?: AuthMode): unknown } {
  const start = body.includes("sheet")
    ? "var book = SpreadsheetApp.getActive(); var sheet = book.getActiveSheet();"
    : "";
  const book = openWorkbook({ codeJs: `function go() { ${start} ${body} }`, sidebarHtml: "" });
  return Object.assign(book, { go: (mode: AuthMode = "FULL") => book.script.run(mode, "go") });
}

/** The value of one formula, alone in a cell of an otherwise empty sheet. */
export function formulaValue(formula: string, cells: Readonly<Record<string, string>> = {}): unknown {
  const book = openProbes();
  for (const [a1, text] of Object.entries(cells)) book.type("Sheet1", a1, text);
  book.type("Sheet1", "Z99", formula);
  return book.cell("Sheet1", "Z99").value;
}

const SOFFICE = findOffice();
export const hasOffice = SOFFICE !== undefined;

/**
 * An .xlsx as LibreOffice reads it, every formula calculated anew: sheet name → rows of texts. Numbers come unformatted
 * unless they are wanted as they are shown.
 */
export function asOfficeReads(xlsx: Buffer, asShown = false): Record<string, string[][]> {
  // Comma, quote, UTF-8, from line 1, not quoting numbers, values as they are or as shown, every sheet.
  const filter = `csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false,${asShown},false,false,-1`;
  const files = inOffice({ "book.xlsx": xlsx }, filter, ".csv");
  return Object.fromEntries(
    Object.entries(files).map(([name, bytes]) => [name.replace(/^book-|\.csv$/g, ""), rowsOf(bytes.toString("utf8"))]),
  );
}

/** Files as LibreOffice saves them in another format, by name. */
export function inOffice(files: Readonly<Record<string, Buffer>>, filter: string, end: string): Record<string, Buffer> {
  const home = mkdtempSync(join(tmpdir(), "gramwright-office-"));
  try {
    mkdirSync(join(home, "user"));
    writeFileSync(join(home, "user", "registrymodifications.xcu"), RECALCULATE);
    for (const [name, bytes] of Object.entries(files)) writeFileSync(join(home, name), bytes);
    const args = [
      `-env:UserInstallation=file://${home}`,
      "--headless",
      "--convert-to",
      filter,
      "--outdir",
      home,
      ...Object.keys(files).map((name) => join(home, name)),
    ];
    const { status, stderr } = spawnSync(SOFFICE ?? "soffice", args, {
      encoding: "utf8",
      env: { ...process.env, HOME: home },
      timeout: 120_000,
    });
    const saved = readdirSync(home).filter((file) => file.endsWith(end));
    if (status !== 0 || saved.length === 0) throw new Error(`LibreOffice wrote nothing: ${stderr}`);
    return Object.fromEntries(saved.map((file) => [file, readFileSync(join(home, file))]));
  } finally {
    rmSync(home, { recursive: true, force: true });
  }
}

const RECALCULATE = `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
</oor:items>`;

function rowsOf(csv: string): string[][] {
  const rows: string[][] = [[]];
  for (const [, quoted, plain = "", end] of csv.matchAll(/(?:"((?:[^"]|"")*)"|([^,\n\r]*))(,|\r?\n|$)/g)) {
    rows[rows.length - 1]?.push(quoted === undefined ? plain : quoted.replace(/""/g, '"'));
    if (end !== ",") rows.push([]);
  }
  while (rows.length > 0 && rows[rows.length - 1]?.every((text) => text === "")) rows.pop();
  return rows;
}

/** A text of LibreOffice as a number where it is one ("65%" is 0.65), otherwise itself. */
export function asValue(text: string): number | string {
  if (/^-?[\d.]+(E[-+]?\d+)?%$/i.test(text)) return Number(text.slice(0, -1)) / 100;
  return text !== "" && Number.isFinite(Number(text)) ? Number(text) : text;
}
