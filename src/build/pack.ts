import { mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { zipSync } from "fflate";
import { build } from "./build.ts";
import { installPage } from "./install-page.ts";
import { oneFile } from "./one-file.ts";
import { sourceArchive } from "./source-archive.ts";
import { printWorkspace } from "./workspace.ts";

/** The files that make the add-on; nothing else is pushed or packed. */
export const ADD_ON_FILES = ["appsscript.json", "Code.js", "sidebar.html"] as const;
export const PACK = "pack";

/** The first day a .zip can hold: equal files make equal bytes whenever they are packed. */
const firstDay = () => new Date(1980, 0, 1);

/** A .zip archive of files by name, in the order given. */
export function zipArchive(files: Readonly<Record<string, Uint8Array>>): Uint8Array {
  return zipSync({ ...files }, { level: 9, mtime: firstDay() });
}

/** What is handed to somebody without Node, by name. */
export async function packedFiles(): Promise<Readonly<Record<string, string | Uint8Array>>> {
  const read = (name: string) => readFileSync(`dist/${name}`, "utf8");
  const files = { codeJs: read("Code.js"), sidebarHtml: read("sidebar.html"), manifest: read("appsscript.json") };
  return {
    "gramwright-install.html": await installPage(files),
    "gramwright-local.html": await oneFile(files),
    "gramwright-local-source.zip": zipArchive(sourceArchive()),
  };
}

/** Builds, and puts what is handed over in one folder. */
export async function run(args: readonly string[] = []): Promise<void> {
  if (args[0] === "--workspace") return printWorkspace();
  if (args.length > 0) throw new Error(`Unknown argument ${args[0]}. Usage: npm run pack [-- --workspace]`);
  await build();
  rmSync(PACK, { recursive: true, force: true });
  mkdirSync(PACK);
  for (const [name, content] of Object.entries(await packedFiles())) writeFileSync(join(PACK, name), content);
  console.log(`In the folder ${PACK}, to be handed over by a link or a memory stick:
  gramwright-install.html       the steps and the three files for a Google spreadsheet
  gramwright-local.html         the whole workbook in one file: open it with a double click
  gramwright-local-source.zip   goes with that page wherever it goes: the source of its engine`);
}
