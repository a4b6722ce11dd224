import { existsSync, readFileSync } from "node:fs";
import { build } from "./build.ts";
import { runTool } from "./shell.ts";

/** Builds and sends the three files to the script that .clasp.json names. */
export async function run(): Promise<void> {
  if (!existsSync(".clasp.json")) {
    console.error("There is no .clasp.json: the README's section on installing says how to make the script first.");
    process.exit(1);
  }
  if (!/"(rootDir|srcDir)"\s*:\s*"(\.\/)?dist\/?"/.test(readFileSync(".clasp.json", "utf8"))) {
    console.error('.clasp.json must say "rootDir": "dist", the folder of the three files.');
    process.exit(1);
  }
  await build();
  // Without -f a changed manifest is skipped in silence where nobody can be asked.
  process.exit(runTool("clasp", ["push", "-f"]));
}
