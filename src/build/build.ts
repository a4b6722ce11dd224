import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { runInNewContext } from "node:vm";
import * as esbuild from "esbuild";
import { quickSumOf, sumOf } from "../../shared/protocol/pasted-sum.ts";
import { FUNCTIONS } from "../functions/index.ts";
import { notices } from "./notices.ts";
import { sidebarHtml } from "./page.ts";
import { asciiScript, checkAscii, LINE_LIMIT } from "./plain-text.ts";
import { functionIndex, REFERENCE_FILE, reference, stub } from "./print.ts";

const GLOBALS = `
function onOpen(e) {
  Gramwright.onOpen(e);
}
function onInstall(e) {
  Gramwright.onOpen(e);
}
function onEdit(e) {
  Gramwright.onEdit(e);
}
function openSidebar() {
  Gramwright.openSidebar();
}
function checkAddOn() {
  Gramwright.checkAddOn();
}
function answerSidebar(question) {
  return Gramwright.answerSidebar(question);
}
function GRAMWRIGHT_PROBE(first, second, third) {
  return Gramwright.probe(arguments);
}
function GRAMWRIGHT_GIVE(which) {
  return Gramwright.give(which);
}
`;

/** All that the stubs call, as one `var Gramwright`, and the sources that it was made of. */
export async function codeBundle() {
  const { outputFiles, metafile } = await esbuild.build({
    entryPoints: ["src/add-on/main.ts"],
    bundle: true,
    write: false,
    metafile: true,
    format: "iife",
    globalName: "Gramwright",
    target: "es2020",
    // So that no line end and no blank at one stands inside a text: a text that lost some is as good as whole.
    supported: { "template-literal": false },
    minify: true,
    lineLimit: LINE_LIMIT,
    legalComments: "none",
    logLevel: "warning",
  });
  return {
    text: asciiScript(outputFiles[0]?.text ?? ""),
    sources: Object.values(metafile.outputs)[0]?.inputs ?? {},
  };
}

const head = (sources: Readonly<Record<string, unknown>>): string => `/**
 * Gramwright: the functions of the cells, the menu, and what the sidebar asks for. Printed from the sources; do not edit it by
 * hand: change the sources, run "npm run build", and paste or push the whole file again.
 * @OnlyCurrentDoc
 */
/*
${notices(sources)
  .map((line) => ` * ${line}`.trimEnd())
  .join("\n")}
 */
`;

/** Shows whether the service leaves functions as they are written: a bit of all that it might write otherwise. */
const CANARY = `function gramwrightCanary_(first, second = 1) {
  return [/[\\w"']+\\/x{2}/g, "\\u00e9 it's", 'a "b"', (one) => one ?? second, { ...first }, 1e-9, 0.5, first?.[0]];
}`;

/** Every top-level function of the file by its name, and null for one that is gone. */
function partsText(code: string): string {
  const names = ["gramwrightBody_", ...[...code.matchAll(/^function (\w+)\(/gm)].map(([, name = ""]) => name)];
  return `function gramwrightParts_() {
  return [
${names.map((name) => `    typeof ${name} === "function" ? ${name} : null,`).join("\n")}
  ];
}`;
}

/** Code.js: the bundle as one `var Gramwright`, the globals of the add-on, a stub for every sheet function, and the sums of all that. */
export async function codeJs(): Promise<string> {
  const { text, sources } = await codeBundle();
  const body = `function () {\n${text.trim()}\nreturn Gramwright;\n}`;
  // In brackets the engine reads it once, and not a second time when it is called.
  const code = `${head(sources)}var gramwrightBody_ = (${body});\nvar Gramwright = gramwrightBody_();\n${GLOBALS}\n${FUNCTIONS.map(stub).join("\n\n")}\n\n${CANARY}\n`;
  const whole = `${code}\n${partsText(code)}\n\n${sumsText(code, body)}\n`;
  checkAscii("Code.js", whole);
  return whole;
}

function sumsText(code: string, body: string): string {
  const { parts } = runInNewContext(`${code}\n${partsText(code)}\n({ parts: gramwrightParts_().map(String) })`, {}) as {
    parts: string[];
  };
  // The file ends as plainly as its functions do.
  return `function gramwrightSums_() {\n  return ${JSON.stringify([CANARY, quickSumOf(body), sumOf(parts.join("\n"))])};\n}`;
}

const MARKERS = /(<!-- functions: printed by npm run build -->\n)[\s\S]*?(<!-- \/functions -->)/;

/** The README with its index of functions printed anew. */
export function readmeWithIndex(readme: string): string {
  return readme.replace(
    MARKERS,
    (_, open: string, close: string) => `${open}\n${functionIndex(FUNCTIONS)}\n\n${close}`,
  );
}

/** The printed documents that differ from what the functions print now: path and text. */
export function outdatedDocuments(): readonly { readonly path: string; readonly text: string }[] {
  const documents = [
    { path: "README.md", text: readmeWithIndex(readFileSync("README.md", "utf8")) },
    { path: REFERENCE_FILE, text: reference(FUNCTIONS) },
  ];
  return documents.filter(({ path, text }) => !existsSync(path) || readFileSync(path, "utf8") !== text);
}

/** Writes the three files that are pushed. */
export async function build(): Promise<void> {
  mkdirSync("dist", { recursive: true });
  const [code, sidebar] = await Promise.all([codeJs(), sidebarHtml()]);
  writeFileSync("dist/Code.js", code);
  writeFileSync("dist/sidebar.html", sidebar);
  writeFileSync("dist/appsscript.json", readFileSync("src/add-on/appsscript.json", "utf8"));
}

export async function run(): Promise<void> {
  await build();
  for (const { path, text } of outdatedDocuments()) writeFileSync(path, text);
  console.log("Built dist/Code.js, dist/sidebar.html and dist/appsscript.json; the function reference is current.");
}
