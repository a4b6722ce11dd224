// Mutation testing: the sources are changed in a thousand small ways, and the tests must notice. `-- tin ice` for some topics.
import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { explainedIn, type MutantReport, summary, survivors } from "./mutate/report.ts";
import { TOPICS, type Topic } from "./mutate/topics.ts";

const VERSION = "9.6.1";
const FOLDER = join(".gramwright", "mutate");
/** Survivors that were read, and why no test can or should notice them. */
const EXPLAINED = join("src", "build", "mutate", "explained.txt");
/** A busy computer takes its time; what never ends is noticed by how often it comes by. */
const PATIENCE = 180_000;
const CORE = join(FOLDER, "node_modules", "@stryker-mutator", "core");

/**
 * Runs Stryker on the topics named, or on the first ones if none is named. `--changed` keeps the results of the last run for
 * sources and tests that have not changed since.
 */
export function run(args: readonly string[]): void {
  const option = args.find((arg) => arg.startsWith("--") && arg !== "--changed");
  if (option !== undefined) throw new Error(`There is no option ${option}; there is --changed.`);
  const names = args.filter((arg) => !arg.startsWith("--"));
  const unknown = names.find((name) => !(name in TOPICS));
  if (unknown !== undefined)
    throw new Error(`There is no topic "${unknown}"; there are ${Object.keys(TOPICS).join(", ")}.`);
  fetchTool();
  const chosen = Object.entries(TOPICS).filter(([name, { first }]) =>
    names.length > 0 ? names.includes(name) : first,
  );
  const explained = explainedIn(readFileSync(EXPLAINED, "utf8"));
  for (const [name, topic] of chosen) {
    const tests = topic.tests.map((test) => `tests/${test}.test.ts`);
    const report = runStryker(name, topic, tests, args.includes("--changed"));
    writeFileSync(join(FOLDER, `${name}-survivors.txt`), survivors(report, explained));
    console.log(`\n${name}\n${summary(report, explained)}`);
  }
  console.log(`\nWhat survived without an explanation stands in ${join(FOLDER, "TOPIC-survivors.txt")}.`);
}

/** A folder of its own: nothing else in the project needs these packages, and its lockfile stays without them. */
function fetchTool(): void {
  const there = join(CORE, "package.json");
  if (existsSync(there) && JSON.parse(readFileSync(there, "utf8")).version === VERSION) return;
  console.log(`Fetching Stryker ${VERSION} into ${FOLDER} …`);
  mkdirSync(FOLDER, { recursive: true });
  writeFileSync(join(FOLDER, "package.json"), '{ "private": true }\n');
  // Vitest, which the runner asks for, is the project's own.
  const wanted = ["core", "vitest-runner"].map((name) => `@stryker-mutator/${name}@${VERSION}`);
  const quiet = ["--no-save", "--no-package-lock", "--legacy-peer-deps", "--no-audit", "--no-fund", "--loglevel=error"];
  const npm = spawnSync("npm", ["install", ...quiet, ...wanted], {
    cwd: FOLDER,
    stdio: ["ignore", "ignore", "inherit"],
    shell: process.platform === "win32",
  });
  if (npm.status !== 0) throw new Error("npm could not fetch them; check the network, and run the command again.");
}

function runStryker(name: string, topic: Topic, tests: readonly string[], onlyChanged: boolean): MutantReport {
  const at = (ending: string) => join(FOLDER, `${name}-${ending}`);
  // One after the other in one place: nothing here leaves a trace, and sources are read once instead of once a file.
  const settings = { test: { include: tests, isolate: false, testTimeout: PATIENCE } };
  writeFileSync(at("vitest.mjs"), `export default ${JSON.stringify(settings)};\n`);
  const config = {
    mutate: topic.files,
    testRunner: "vitest",
    vitest: { configFile: join(process.cwd(), at("vitest.mjs")), related: false },
    coverageAnalysis: "perTest",
    ignorePatterns: [".gramwright", "dist", "*.png"],
    tempDirName: join(FOLDER, "sandbox"),
    concurrency: Number(process.env.CONCURRENCY ?? 1),
    timeoutMS: PATIENCE,
    reporters: ["progress-append-only", "json"],
    jsonReporter: { fileName: at("report.json") },
    incremental: onlyChanged,
    incrementalFile: at("incremental.json"),
    checkers: [],
    disableTypeChecks: false,
    // There is none by that name: the tool would rewrite tsconfig.json by an interface that TypeScript 7 has no more.
    tsconfigFile: "no-tsconfig",
  };
  writeFileSync(at("config.json"), JSON.stringify(config, null, 2));
  rmSync(at("report.json"), { force: true });
  console.log(`\n${name}: ${topic.files.join(", ")}`);
  spawnSync(process.execPath, [join(CORE, "bin", "stryker.js"), "run", at("config.json")], {
    stdio: "inherit",
  });
  if (!existsSync(at("report.json"))) throw new Error(`The run of ${name} failed, see above.`);
  return JSON.parse(readFileSync(at("report.json"), "utf8")) as MutantReport;
}
