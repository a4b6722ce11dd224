import { readdirSync, readFileSync } from "node:fs";
import { run as runTests } from "./test.ts";

/** Runs the tests that try random input, with fifty times the tries of `npm test`; SEED=N repeats a run. */
export async function run(args: string[]): Promise<void> {
  const seed = process.env.SEED ?? String(Math.floor(Math.random() * 2 ** 31));
  console.log(`A long run with SEED=${seed}.`);
  process.env.GRAMWRIGHT_LONG_SEED = seed;
  const files = args.some((arg) => !arg.startsWith("-")) ? [] : randomTests();
  // An hour and more for one test.
  await runTests(["--testTimeout=14400000", ...files, ...args]);
  console.log(`This was SEED=${seed}.`);
}

const randomTests = () =>
  readdirSync("tests", { recursive: true, encoding: "utf8" })
    .map((name) => `tests/${name.replaceAll("\\", "/")}`)
    .filter(
      (file) => file.endsWith(".test.ts") && /from "(?:fast-check|[./]+scale\.ts)"/.test(readFileSync(file, "utf8")),
    );
