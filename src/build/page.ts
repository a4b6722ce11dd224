// sidebar.html: markup, styles and script in one plain file.
import { readFileSync } from "node:fs";
import * as esbuild from "esbuild";
import { sumOf } from "../../shared/protocol/pasted-sum.ts";
import type { CheckExample } from "../../shared/protocol/self-check.ts";
import { FUNCTIONS } from "../functions/index.ts";
import { functionHelp } from "./help.ts";
import { notices } from "./notices.ts";
import { asciiScript, checkPage, LINE_LIMIT, withoutMarkup } from "./plain-text.ts";

/** What the add-on's own check calculates again in a sheet. */
export const checkExamples = (): CheckExample[] =>
  FUNCTIONS.flatMap(({ name, examples }) =>
    examples.map(({ call, gives, within }) => ({
      name,
      call: call.map((arg) => arg ?? null),
      gives,
      ...(within === undefined ? {} : { within }),
    })),
  );

/** The sidebar's script, its styles in it. */
async function sidebarScript(): Promise<{ readonly script: string; readonly sources: object }> {
  const { code: styles } = await esbuild.transform(readFileSync("sidebar/style.css", "utf8"), {
    loader: "css",
    minify: true,
  });
  const { outputFiles, metafile } = await esbuild.build({
    entryPoints: ["sidebar/main.ts"],
    metafile: true,
    bundle: true,
    write: false,
    format: "iife",
    target: "es2020",
    // HtmlService cuts what looks like a comment in a template literal.
    supported: { "template-literal": false },
    minify: true,
    lineLimit: LINE_LIMIT,
    legalComments: "none",
    define: {
      STYLES: JSON.stringify(styles),
      CHECK_EXAMPLES: JSON.stringify(checkExamples()),
      CANARY: JSON.stringify(canaryIn(readFileSync("sidebar/index.html", "utf8"))),
      FUNCTION_HELP: JSON.stringify(functionHelp()),
    },
    logLevel: "warning",
  });
  return {
    script: withoutMarkup(asciiScript(outputFiles[0]?.text.trim() ?? "")),
    sources: Object.values(metafile.outputs)[0]?.inputs ?? {},
  };
}

const PLACE = "<script>/* the script */</script>";

/** The script of the page by which it shows whether the service leaves scripts as they are written. */
export const canaryIn = (page: string): string => /<script id="canary">([\s\S]*?)<\/script>/.exec(page)?.[1] ?? "";

export async function sidebarHtml(): Promise<string> {
  const { script, sources } = await sidebarScript();
  const frame = readFileSync("sidebar/index.html", "utf8");
  if (!frame.includes(PLACE)) throw new Error(`sidebar/index.html has no ${PLACE}`);
  const packages = notices(sources as Readonly<Record<string, unknown>>).map((line) => `  ${line}`.trimEnd());
  const page = frame
    .replace("\n-->", () => `\n${packages.join("\n")}\n-->`)
    .replace(PLACE, () => `<script data-sum="${sumOf(script)}">\n${script}\n</script>`);
  checkPage(page);
  return page;
}
