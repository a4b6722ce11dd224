import { readFileSync } from "node:fs";
import { build, readmeWithReference } from "./build.ts";
import { runTool } from "./shell.ts";

const PROJECTS = [".", "src", "src/build", "sidebar", "tests"];

/** Build, README, types, lint and format: everything but the tests. */
export async function run(): Promise<void> {
  await build();
  const readme = readFileSync("README.md", "utf8");
  if (readmeWithReference(readme) !== readme)
    fail("The README's function reference is out of date: run npm run build.");
  for (const project of PROJECTS) {
    if (runTool("tsc", ["-p", project]) !== 0) fail(`The types of ${project} do not hold.`);
  }
  if (runTool("biome", ["ci", "--error-on-warnings", "."]) !== 0)
    fail("Lint or format: npx biome check --write . mends most of it.");
  console.log("Built; README, types, lint and format are in order.");
}

function fail(sentence: string): never {
  console.error(sentence);
  process.exit(1);
}
