// sidebar.html: page, look and script in one file, look and script packed.
import { readFileSync } from "node:fs";
import { deflateSync, inflateSync } from "node:zlib";
import * as esbuild from "esbuild";
import type { CheckExample } from "../../shared/self-check.ts";
import { bytesOf, LETTERS, PARTED } from "../../sidebar/packed.ts";
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

/** A script of the page, and the sources it was made of with what each takes of it. */
async function bundled(entry: string, define: Record<string, string>, supported: Record<string, boolean> = {}) {
  const { outputFiles, metafile } = await esbuild.build({
    entryPoints: [entry],
    bundle: true,
    write: false,
    metafile: true,
    format: "iife",
    target: "es2020",
    minify: true,
    charset: "utf8",
    legalComments: "none",
    supported,
    define,
    plugins: [withoutExpectations, withoutLarder],
    logLevel: "warning",
  });
  return { text: outputFiles[0]?.text ?? "", sources: Object.values(metafile.outputs)[0]?.inputs ?? {} };
}

/** The bench's own script. */
export const benchScript = () =>
  bundled("sidebar/main.ts", {
    CHECK_EXAMPLES: JSON.stringify(checkExamples()),
    FUNCTION_HELP: JSON.stringify(functionHelp()),
  });

/** Nothing in it that HtmlService would cut as a comment. */
export async function sidebarHtml(): Promise<string> {
  const [{ code: style }, { text: script }] = await Promise.all([
    esbuild.transform(readFileSync("sidebar/style.css", "utf8"), { loader: "css", minify: true }),
    benchScript(),
  ]);
  const packed = lettersOf(deflateSync(style + PARTED + script, { level: 9, memLevel: 9 }));
  const plain = { "template-literal": false };
  const loader = await bundled("sidebar/loader.ts", { PACKED: JSON.stringify(packed) }, plain);
  return readFileSync("sidebar/index.html", "utf8").replace("<!-- script -->", () => `<script>${loader.text}</script>`);
}

function lettersOf(bytes: Uint8Array): string {
  let letters = "";
  for (let from = 0; from < bytes.length; from += 4) {
    const many = Math.min(4, bytes.length - from);
    let four = 0;
    for (let at = from; at < from + 4; at++) four = four * 256 + (bytes[at] ?? 0);
    const group = [4, 3, 2, 1, 0].map((power) => LETTERS[Math.floor(four / 85 ** power) % 85]);
    letters += group.slice(0, many + 1).join("");
  }
  return letters;
}

/** The packed script of a page, as the page itself unpacks it. */
export function packedScript(html: string): string {
  const longest = [...html.matchAll(/"([^"]*)"/g)].reduce(
    (most, [, text = ""]) => (text.length > most.length ? text : most),
    "",
  );
  return inflateSync(bytesOf(longest)).toString("utf8").split(PARTED)[1] ?? "";
}
