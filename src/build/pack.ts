import { readFileSync, writeFileSync } from "node:fs";
import { VERSION } from "../../shared/protocol/bench.ts";
import { build } from "./build.ts";
import { zipped } from "./zip.ts";

/** The files that make the add-on; nothing else is pushed or packed. */
export const ADD_ON_FILES = ["appsscript.json", "Code.js", "sidebar.html"] as const;

/** Builds, and puts the three files in one .zip for somebody without Node. */
export async function run(): Promise<void> {
  await build();
  const path = `gramwright-${VERSION}.zip`;
  writeFileSync(path, zipped(ADD_ON_FILES.map((name) => ({ name, bytes: readFileSync(`dist/${name}`) }))));
  console.log(`Packed ${ADD_ON_FILES.join(", ")} in ${path}; the README says where each of them goes.`);
}
