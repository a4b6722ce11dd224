import { build, outdatedDocuments } from "./build.ts";
import { runTool } from "./shell.ts";

const PROJECTS = [".", "src/add-on", "src/build", "sidebar", "tests"];

/** Build, printed documents, types, lint and format: everything but the tests. */
export async function run(): Promise<void> {
  await build();
  const outdated = outdatedDocuments().map(({ path }) => path);
  if (outdated.length > 0) fail(`Not what the functions print: ${outdated.join(", ")}. Run npm run build.`);
  for (const project of PROJECTS) {
    if (runTool("tsc", ["-p", project]) !== 0) fail(`The types of ${project} do not hold.`);
  }
  if (runTool("biome", ["ci", "--error-on-warnings", "."]) !== 0)
    fail("Lint or format: npx biome check --write . mends most of it.");
  console.log("Built; printed documents, types, lint and format are in order.");
}

function fail(sentence: string): never {
  console.error(sentence);
  process.exit(1);
}
