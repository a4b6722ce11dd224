// The script of the local workbook's page, for the tests; `npm start` bundles its own.
import { join } from "node:path";
import * as esbuild from "esbuild";

export const LOCAL_PAGE = join("node_modules", ".cache", "gramwright", "page.js");

/** Bundles the page's script into LOCAL_PAGE. */
export async function localPage(): Promise<void> {
  await esbuild.build({
    entryPoints: ["src/workbook/page/page.ts"],
    bundle: true,
    outfile: LOCAL_PAGE,
    format: "iife",
    target: "es2022",
    logLevel: "warning",
  });
}
