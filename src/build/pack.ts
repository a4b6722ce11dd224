import { readFileSync, writeFileSync } from "node:fs";
import { zipSync } from "fflate";
import { VERSION } from "../../shared/protocol/bench.ts";
import { build } from "./build.ts";

/** The files that make the add-on; nothing else is pushed or packed. */
export const ADD_ON_FILES = ["appsscript.json", "Code.js", "sidebar.html"] as const;

/** The first day a .zip can hold: equal files make equal bytes whenever they are packed. */
const firstDay = () => new Date(1980, 0, 1);

/** A .zip archive of files by name, in the order given. */
export function zipArchive(files: Readonly<Record<string, Uint8Array>>): Uint8Array {
  return zipSync({ ...files }, { level: 9, mtime: firstDay() });
}

/** Builds, and puts the three files in one .zip for somebody without Node. */
export async function run(): Promise<void> {
  await build();
  const path = `gramwright-${VERSION}.zip`;
  const files = Object.fromEntries(ADD_ON_FILES.map((name) => [name, readFileSync(`dist/${name}`)]));
  writeFileSync(path, zipArchive(files));
  console.log(`Packed ${ADD_ON_FILES.join(", ")} in ${path}; the README says where each of them goes.`);
}
