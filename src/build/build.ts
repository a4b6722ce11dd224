import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import * as esbuild from "esbuild";
import { FUNCTIONS } from "../functions/index.ts";
import { reference, stub } from "./print.ts";

const WORDS = /\b(says|summary):\s*(?:"(?:[^"\\\n]|\\.)*"|'(?:[^'\\\n]|\\.)*')/g;

/** Help, examples and refusals are for the stubs, the README and the bench; a formula cell never needs them. */
const withoutExamples: esbuild.Plugin = {
  name: "without-examples",
  setup(build) {
    build.onLoad({ filter: /src[\\/]functions[\\/][a-z]+[\\/][A-Z0-9]+\.ts$/ }, ({ path }) => {
      const source = readFileSync(path, "utf8");
      const from = source.indexOf("\n  examples: [");
      const to = source.indexOf("\n  compute:");
      if (from < 0 || to < from) throw new Error(`${path}: examples and refusals must stand right before compute`);
      const head = source.slice(0, from).replace(WORDS, '$1: ""');
      return { contents: `${head}\n  examples: [], refusals: [],${source.slice(to)}`, loader: "ts" };
    });
  },
};

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
function benchAsk(question) {
  return Gramwright.benchAsk(question);
}
`;

/** Code.js: the bundle as one `var Gramwright`, the globals of the add-on, and a stub for every sheet function. */
export async function codeJs(): Promise<string> {
  const bundled = await esbuild.build({
    entryPoints: ["src/main.ts"],
    bundle: true,
    write: false,
    format: "iife",
    globalName: "Gramwright",
    target: "es2020",
    minify: true,
    charset: "utf8",
    legalComments: "none",
    plugins: [withoutExamples],
    // Without "use strict" or a footer that a reader of global declarations could stumble over.
    logLevel: "warning",
  });
  const body = bundled.outputFiles[0]?.text ?? "";
  return `/** @OnlyCurrentDoc */\n${body}${GLOBALS}\n${FUNCTIONS.map(stub).join("\n\n")}\n`;
}

/** sidebar.html: page, look and script in one file; nothing in it that HtmlService would cut as a comment. */
export async function sidebarHtml(): Promise<string> {
  const script = await esbuild.build({
    entryPoints: ["sidebar/main.ts"],
    bundle: true,
    write: false,
    format: "iife",
    target: "es2020",
    minify: true,
    charset: "utf8",
    legalComments: "none",
    supported: { "template-literal": false },
    plugins: [withoutExamples],
    logLevel: "warning",
  });
  const style = await esbuild.transform(readFileSync("sidebar/style.css", "utf8"), { loader: "css", minify: true });
  const js = (script.outputFiles[0]?.text ?? "").replace(/<\/script/gi, "<\\/script").replace(/<!--/g, "<\\!--");
  return readFileSync("sidebar/index.html", "utf8")
    .replace("<!-- style -->", () => `<style>${style.code}</style>`)
    .replace("<!-- script -->", () => `<script>${js}</script>`);
}

const MARKERS = /(<!-- functions: printed by npm run build -->\n)[\s\S]*?(<!-- \/functions -->)/;

/** The README with its function reference printed anew. */
export function readmeWithReference(readme: string): string {
  return readme.replace(MARKERS, (_, open: string, close: string) => `${open}\n${reference(FUNCTIONS)}\n\n${close}`);
}

/** Writes the three files that are pushed, and the reference in the README. */
export async function build(): Promise<void> {
  mkdirSync("dist", { recursive: true });
  const [code, sidebar] = await Promise.all([codeJs(), sidebarHtml()]);
  writeFileSync("dist/Code.js", code);
  writeFileSync("dist/sidebar.html", sidebar);
  writeFileSync("dist/appsscript.json", readFileSync("src/appsscript.json", "utf8"));
}

export async function run(): Promise<void> {
  await build();
  const readme = readFileSync("README.md", "utf8");
  const printed = readmeWithReference(readme);
  if (printed !== readme) writeFileSync("README.md", printed);
  console.log("Built dist/Code.js, dist/sidebar.html and dist/appsscript.json; the README's reference is current.");
}
