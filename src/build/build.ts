import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import * as esbuild from "esbuild";
import type { CheckExample } from "../../shared/self-check.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { FUNCTIONS } from "../functions/index.ts";
import { cardsModule } from "./cards.ts";
import { functionHelp, packed } from "./help.ts";
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

/** A template's summary, its sample inputs and what they must come to are for the bench, the demo and the tests. */
const withoutSamples: esbuild.Plugin = {
  name: "without-samples",
  setup(build) {
    build.onLoad({ filter: /templates[\\/][a-z-]+\.ts$/ }, ({ path }) => {
      const source = readFileSync(path, "utf8");
      const from = source.indexOf("\n  sample: {");
      const to = source.indexOf("\n};", from);
      if (from < 0) return { contents: source, loader: "ts" };
      return {
        contents: `${source.slice(0, from).replace(WORDS, '$1: ""')}\n  sample: {}, expects: {},${source.slice(to)}`,
        loader: "ts",
      };
    });
  },
};

/** The bench asks the server about ingredients; of the larder's table it gets one row, so that what refers to it still works. */
const withoutLarder: esbuild.Plugin = {
  name: "without-larder",
  setup(build) {
    build.onLoad({ filter: /shared[\\/]larder-rows\.ts$/ }, ({ path }) => {
      const row = /LARDER_ROWS = `([^\n`]*)/.exec(readFileSync(path, "utf8"))?.[1];
      if (row === undefined) throw new Error(`${path}: the larder's table is not where it was`);
      return { contents: `export const LARDER_ROWS = ${JSON.stringify(row)};`, loader: "ts" };
    });
  },
};

/** Of the templates the bench gets what it asks about; the server computes. */
const withCards: esbuild.Plugin = {
  name: "with-cards",
  setup(build) {
    build.onLoad({ filter: /templates[\\/]index\.ts$/ }, () => ({
      contents: cardsModule(TEMPLATES),
      loader: "ts",
    }));
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
    plugins: [withoutExamples, withoutSamples],
    logLevel: "warning",
  });
  const body = bundled.outputFiles[0]?.text ?? "";
  return `/** @OnlyCurrentDoc */\n${body}${GLOBALS}\n${FUNCTIONS.map(stub).join("\n\n")}\n`;
}

/** What the add-on's own check calculates again in a sheet; a formula cell never needs it, so it is not in Code.js. */
export const checkExamples = (): CheckExample[] =>
  FUNCTIONS.flatMap(({ name, examples }) =>
    examples.map(({ call, gives, within }) => ({
      name,
      call: call.map((arg) => arg ?? null),
      gives,
      ...(within === undefined ? {} : { within }),
    })),
  );

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
    define: {
      CHECK_EXAMPLES: JSON.stringify(packed(JSON.stringify(checkExamples()))),
      FUNCTION_HELP: JSON.stringify(packed(JSON.stringify(functionHelp()))),
    },
    plugins: [withoutExamples, withoutLarder, withCards],
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
