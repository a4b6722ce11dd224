// sidebar.html: page, look and script in one file, look and script packed.
import { readFileSync } from "node:fs";
import * as esbuild from "esbuild";
import type { CheckExample } from "../../shared/protocol/self-check.ts";
import { PARTED, packed, unpacked } from "../../sidebar/packed.ts";
import { FUNCTIONS } from "../functions/index.ts";
import { functionHelp } from "./help.ts";
import { withoutExpectations, withoutLarder } from "./plugins.ts";

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

type Browser = Pick<esbuild.BuildOptions, "target" | "supported">;

/** A script of the page, and the sources it was made of with what each takes of it. */
async function bundled(entryPoint: string, define: Record<string, string>, browser: Browser = {}) {
  const { outputFiles, metafile } = await esbuild.build({
    entryPoints: [entryPoint],
    bundle: true,
    write: false,
    metafile: true,
    format: "iife",
    target: "es2020",
    minify: true,
    charset: "utf8",
    legalComments: "none",
    define,
    plugins: [withoutExpectations, withoutLarder],
    logLevel: "warning",
    ...browser,
  });
  return { text: outputFiles[0]?.text ?? "", sources: Object.values(metafile.outputs)[0]?.inputs ?? {} };
}

/** The bench's own script. */
export const benchScript = () =>
  bundled("sidebar/main.ts", {
    CHECK_EXAMPLES: JSON.stringify(checkExamples()),
    FUNCTION_HELP: JSON.stringify(functionHelp()),
  });

/** Browsers that are too old for the bench are to say so, and HtmlService cuts what looks like a comment in a template literal. */
const OLDER: Browser = { target: "es2015", supported: { "template-literal": false } };

export async function sidebarHtml(): Promise<string> {
  const [{ code: style }, { text: script }] = await Promise.all([
    esbuild.transform(readFileSync("sidebar/style.css", "utf8"), { loader: "css", minify: true }),
    benchScript(),
  ]);
  const letters = JSON.stringify(packed(style + PARTED + script));
  const loader = await bundled("sidebar/loader.ts", { PACKED: letters }, OLDER);
  return readFileSync("sidebar/index.html", "utf8").replace("<!-- script -->", () => `<script>${loader.text}</script>`);
}

/** The packed script of a page, as the page itself unpacks it. */
export function packedScript(html: string): string {
  const longest = [...html.matchAll(/"([^"]*)"/g)].reduce(
    (most, [, text = ""]) => (text.length > most.length ? text : most),
    "",
  );
  return unpacked(longest).split(PARTED)[1] ?? "";
}
