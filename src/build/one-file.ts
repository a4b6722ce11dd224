// gramwright-local.html: the page of `npm start` with all that its server gives, in one file that opens without a server.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import * as esbuild from "esbuild";
import { VERSION } from "../../shared/base/version.ts";
import { fileFor } from "../workbook/http/files.ts";
import { jsonBlock, licenceText, PACKAGES_IN_PAGE, scriptBlock, styleText, textOf } from "./one-file-parts.ts";

/** Raised when an older page could no longer read what this one keeps in the browser. */
export const STORE_VERSION = 1;

const NODE = (name: string) => join(process.cwd(), "src/workbook/page/node", name);

/** The page's script with the .xlsx library in it, made for a browser; and the packages that went into it. */
export async function oneFileScript(): Promise<{ readonly script: string; readonly packages: readonly string[] }> {
  const { outputFiles, metafile } = await esbuild.build({
    entryPoints: ["src/workbook/page/one-file.ts"],
    bundle: true,
    write: false,
    metafile: true,
    format: "iife",
    target: "es2022",
    platform: "browser",
    minify: true,
    legalComments: "none",
    define: { global: "globalThis" },
    inject: [NODE("globals.ts")],
    alias: {
      events: NODE("events.ts"),
      stream: "readable-stream",
      ...Object.fromEntries(["fs", "crypto", "util", "zlib"].map((name) => [name, NODE("unused.ts")])),
    },
    plugins: [workbookOnly],
    logLevel: "error",
  });
  const inputs = Object.values(metafile.outputs)[0]?.inputs ?? {};
  const names = Object.keys(inputs).flatMap((path) => /.*node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(path)?.[1] ?? []);
  return { script: outputFiles[0]?.text ?? "", packages: [...new Set(names)].sort() };
}

/** Of the .xlsx library the page needs the workbook alone, from its sources. */
const workbookOnly: esbuild.Plugin = {
  name: "workbook only",
  setup(build) {
    build.onResolve({ filter: /^exceljs$/ }, () => ({ path: "exceljs", namespace: "workbook-only" }));
    build.onLoad({ filter: /.*/, namespace: "workbook-only" }, () => ({
      contents: `module.exports = { Workbook: require("exceljs/lib/doc/workbook") };`,
      resolveDir: process.cwd(),
    }));
    build.onLoad({ filter: /exceljs[\\/]lib[\\/]csv[\\/]csv\.js$/ }, () => ({
      contents: "module.exports = class {};",
    }));
  },
};

const ENGINE_NOTE = (name: string, licence: string) => `
    <!-- ${name}, ${licence}, unchanged; this element holds nothing else. You may put another build of it in its place.
         Its source and our changes to what it does go with this page in gramwright-local-source.zip. -->
`;

/** Nothing in the page may ask anybody for anything. */
const POLICY =
  "default-src 'none'; script-src 'unsafe-inline' 'unsafe-eval'; style-src 'unsafe-inline'; img-src data: blob:; font-src data:; form-action 'none'; base-uri 'none'";

/** The whole page, from the three files of the add-on. */
export async function oneFile({ codeJs, sidebarHtml }: { codeJs: string; sidebarHtml: string }): Promise<string> {
  const { script, packages } = await oneFileScript();
  const frame = readFileSync("src/workbook/page/index.html", "utf8");
  const head = `<meta http-equiv="Content-Security-Policy" content="${POLICY}" />\n    <meta name="generator" content="Gramwright ${VERSION}" />`;
  const blocks = [
    jsonBlock("code-js", codeJs),
    jsonBlock("sidebar-html", sidebarHtml),
    jsonBlock("engine-templates", textOf("/engine/o_spreadsheet.xml")),
    jsonBlock("licence-list", licenceText([...PACKAGES_IN_PAGE, ...packages])),
  ].join("\n    ");
  return frame
    .replace('<html lang="en">', `<html lang="en" data-store="${STORE_VERSION}">`)
    .replace('<meta charset="utf-8" />', (meta) => `${meta}\n    ${head}`)
    .replace(/<link rel="stylesheet" href="([^"]+)" \/>/g, (_, path: string) => `<style>${styleText(path)}</style>`)
    .replace('<script src="/page.js"></script>', () => `${blocks}\n    ${scriptBlock("page", script)}`)
    .replace(/ *<script src="(\/engine\/[^"]+)"><\/script>/g, (_, path: string) => {
      const name = /node_modules\/(@odoo\/[^/]+)\//.exec(fileFor(path) ?? "")?.[1] ?? "";
      const { version, license } = JSON.parse(readFileSync(`node_modules/${name}/package.json`, "utf8")) as {
        version: string;
        license: string;
      };
      return `${ENGINE_NOTE(`${name} ${version}`, license)}    ${scriptBlock(name.replace("@odoo/", ""), textOf(path))}`;
    });
}
