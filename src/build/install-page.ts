// gramwright-install.html: one page that leads through the installation and carries the three files.
import { readFileSync } from "node:fs";
import * as esbuild from "esbuild";
import { VERSION } from "../../shared/base/version.ts";
import { jsonBlock, scriptBlock } from "./one-file-parts.ts";

const FOLDER = "src/build/install";
const POLICY =
  "default-src 'none'; script-src 'unsafe-inline'; style-src 'unsafe-inline'; img-src data:; form-action 'none'; base-uri 'none'";

export type AddOnTexts = { readonly codeJs: string; readonly sidebarHtml: string; readonly manifest: string };

export async function installPage({ codeJs, sidebarHtml, manifest }: AddOnTexts): Promise<string> {
  const { outputFiles } = await esbuild.build({
    entryPoints: [`${FOLDER}/page.ts`],
    bundle: true,
    write: false,
    format: "iife",
    target: "es2020",
    minify: true,
    logLevel: "warning",
  });
  const blocks = [
    jsonBlock("code-js", codeJs),
    jsonBlock("sidebar-html", sidebarHtml),
    jsonBlock("manifest", manifest),
    scriptBlock("page", outputFiles[0]?.text.trim() ?? ""),
  ].join("\n    ");
  return readFileSync(`${FOLDER}/index.html`, "utf8")
    .replace(
      '<meta charset="utf-8" />',
      (meta) => `${meta}\n    <meta http-equiv="Content-Security-Policy" content="${POLICY}" />`,
    )
    .replace("/* the styles */", () => `\n${readFileSync(`${FOLDER}/style.css`, "utf8")}`)
    .replace("Gramwright VERSION", `Gramwright ${VERSION}`)
    .replace("<script>/* the script */</script>", () => blocks);
}
