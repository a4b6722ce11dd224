import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import * as esbuild from "esbuild";
import { FUNCTIONS } from "../functions/index.ts";
import { sidebarHtml } from "./page.ts";
import { withoutHelp, withPackedLarder } from "./plugins.ts";
import { functionIndex, REFERENCE_FILE, reference, stub } from "./print.ts";

const GLOBALS = `
function onOpen(e) {
  Gramwright.onOpen(e);
}
function onInstall(e) {
  Gramwright.onOpen(e);
}
function openBench() {
  Gramwright.openBench();
}
function checkAddOn() {
  Gramwright.checkAddOn();
}
function benchAsk(question) {
  return Gramwright.benchAsk(question);
}
function GRAMWRIGHT_PROBE(first, second, third) {
  return Gramwright.probe(arguments);
}
`;

/** All that the stubs call, and the sources it was made of with what each takes of it. */
export async function codeBundle() {
  const { outputFiles, metafile } = await esbuild.build({
    entryPoints: ["src/add-on/main.ts"],
    inject: ["src/build/short-names.js"],
    bundle: true,
    write: false,
    metafile: true,
    format: "esm",
    target: "es2020",
    minify: true,
    charset: "utf8",
    legalComments: "none",
    plugins: [withoutHelp, withPackedLarder],
    logLevel: "warning",
  });
  return { text: asGlobal(outputFiles[0]?.text ?? ""), sources: Object.values(metafile.outputs)[0]?.inputs ?? {} };
}

/** A module as one global object with what it exports; esbuild's own way to one takes half a kilobyte more. */
function asGlobal(module: string): string {
  const [all, names = ""] = /export\{([^{}]*)\};?\s*$/.exec(module) ?? [];
  if (all === undefined) throw new Error("Code.js: what is exported is not where it was");
  const members = names.replace(/([\w$]+) as ([\w$]+)/g, "$2:$1");
  return `var Gramwright=(()=>{"use strict";${module.slice(0, -all.length)}return{${members}}})();`;
}

/** Code.js: the bundle as one `var Gramwright`, the globals of the add-on, and a stub for every sheet function. */
export async function codeJs(): Promise<string> {
  const { text } = await codeBundle();
  return `/** @OnlyCurrentDoc */\n${text}${GLOBALS}\n${FUNCTIONS.map(stub).join("\n\n")}\n`;
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
