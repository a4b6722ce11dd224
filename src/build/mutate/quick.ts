// The changes that Stryker makes, tried in this one process: minutes where a Vitest of its own for each takes an hour.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join, relative } from "node:path";
import { pathToFileURL } from "node:url";
import { Script } from "node:vm";
import { build } from "esbuild";
import type { Mutant, MutantReport } from "./report.ts";
import { standIn } from "./stand-in.ts";

type Place = { readonly line: number; readonly column: number };
type Change = {
  readonly id: string;
  readonly fileName: string;
  readonly mutatorName: string;
  readonly replacement: string;
  readonly location: { readonly start: Place; readonly end: Place };
};
type Sources = readonly { readonly name: string; readonly content: string }[];
type Changed = { readonly files: Sources; readonly mutants: readonly Change[] };
/** What changed sources look at (Stryker's instrumenter 9.6): which change is on, and how often each was come by. */
type Switch = {
  activeMutant?: string | undefined;
  currentTestId?: string | undefined;
  hitCount?: number | undefined;
  hitLimit?: number;
  mutantCoverage?: { static: Record<string, number>; perTest: Record<string, Record<string, number>> } | undefined;
};
type Shared = typeof globalThis & { __stryker__?: Switch; __test__?: (() => unknown) | undefined };
type Load = () => readonly (() => unknown)[];

/** Come by so much oftener than unchanged, a change never ends; nor does a test that takes so long, ms, and so much longer. */
const PATIENCE = 100;
const LONG = 30_000;
const LONGER = 10;

export async function tryHere(tool: string, files: readonly string[], tests: readonly string[]): Promise<MutantReport> {
  const changed = await changeAll(tool, files);
  const load = await bundled(changed.files, tests);
  const reach = await reached(load);
  const results: Record<string, Mutant[]> = Object.fromEntries(files.map((file) => [file, []]));
  for (const change of changed.mutants) {
    const status = await tried(change.id, load, reach);
    const { start, end } = change.location;
    const location = { start: fromOne(start), end: fromOne(end) };
    const { mutatorName, replacement } = change;
    results[relative(process.cwd(), change.fileName)]?.push({ mutatorName, replacement, location, status });
  }
  // A change that left a trace behind would have failed the tests of those after it.
  await reached(load);
  const report = Object.entries(results).map(([file, mutants]) => {
    return [file, { source: readFileSync(file, "utf8"), mutants }] as const;
  });
  return { files: Object.fromEntries(report) };
}

const fromOne = ({ line, column }: Place): Place => ({ line: line + 1, column: column + 1 });

async function changeAll(tool: string, files: readonly string[]): Promise<Changed> {
  const path = join(tool, "..", "instrumenter", "dist", "src", "index.js");
  const { Instrumenter } = await import(pathToFileURL(path).href);
  const silent = { debug() {}, info() {}, warn: console.warn, isDebugEnabled: () => false };
  const sources = files.map((file) => ({
    name: join(process.cwd(), file),
    mutate: true,
    content: readFileSync(file, "utf8"),
  }));
  return new Instrumenter(silent).instrument(sources, { excludedMutations: [], ignorers: [], plugins: null });
}

/** Tests that time something see a clock that stands: a busy computer must not look like a change that was noticed. */
const CLOCK = { now: () => 0 };

/** Loads changed sources and tests anew at every call, so that nothing kept in a module outlives a change. */
async function bundled(sources: Sources, tests: readonly string[]): Promise<Load> {
  const changed = new Map(sources.map(({ name, content }) => [name, content]));
  const { outputFiles } = await build({
    stdin: { contents: tests.map((test) => `import "./${test}";`).join("\n"), resolveDir: process.cwd(), loader: "ts" },
    bundle: true,
    write: false,
    format: "cjs",
    platform: "node",
    target: "node20",
    packages: "external",
    plugins: [
      {
        name: "changed",
        setup: (made) =>
          made.onLoad({ filter: /\.ts$/ }, ({ path }) => {
            const contents = changed.get(path);
            return contents === undefined ? undefined : { contents, loader: "ts" };
          }),
      },
    ],
  });
  const script = new Script(`(require, module, exports, performance) => {${outputFiles[0]?.text ?? ""}\n}`);
  const require = createRequire(join(process.cwd(), "tests", "any.ts"));
  return () => {
    const vitest = standIn();
    const fetched = (name: string) => (name === "vitest" ? vitest.module : require(name));
    script.runInThisContext()(fetched, { exports: {} }, {}, CLOCK);
    return vitest.tests;
  };
}

type Reach = {
  /** Places of the tests that come by a change, the quickest first; all of them if it is come by while loading. */
  readonly tests: ReadonlyMap<string, readonly number[]>;
  readonly early: ReadonlySet<string>;
  readonly hits: ReadonlyMap<string, number>;
  readonly took: readonly number[];
};

const state = (): Switch => {
  const all = globalThis as Shared;
  all.__stryker__ ??= {};
  return all.__stryker__;
};

/** Runs everything unchanged once; a test that fails then is told. */
async function reached(load: Load): Promise<Reach> {
  const now = state();
  Object.assign(now, { mutantCoverage: undefined });
  const tests = load();
  const took: number[] = [];
  for (const [at, test] of tests.entries()) {
    now.currentTestId = String(at);
    const started = performance.now();
    await test();
    took[at] = performance.now() - started;
    now.currentTestId = undefined;
  }
  const { static: early = {}, perTest = {} } = now.mutantCoverage ?? {};
  const all = tests.map((_, at) => at).sort((a, b) => (took[a] ?? 0) - (took[b] ?? 0));
  const ids = new Set([early, ...Object.values(perTest)].flatMap((one) => Object.keys(one)));
  const comeBy = (id: string) => all.filter((at) => (perTest[at]?.[id] ?? 0) > 0);
  const hits = (id: string) => all.reduce((sum, at) => sum + (perTest[at]?.[id] ?? 0), early[id] ?? 0);
  return {
    tests: new Map([...ids].map((id) => [id, id in early ? all : comeBy(id)])),
    early: new Set(Object.keys(early)),
    hits: new Map([...ids].map((id) => [id, hits(id)])),
    took,
  };
}

/** What a change sets running without end stands outside the changed files now and then, so that nothing counts. */
const timed = new Script("__test__()");
function inTime<T>(work: () => T, usual = 0): T {
  (globalThis as Shared).__test__ = work;
  return timed.runInThisContext({ timeout: Math.ceil(Math.max(LONG, LONGER * usual)) });
}

/**
 * "Killed" is a test that fails, or a file of tests that cannot even be loaded, which fails in Vitest as well. A change that is
 * come by while loading may alter which tests there are: those that are left must fail, a missing one tells nothing.
 */
async function tried(id: string, load: Load, { tests, early, hits, took }: Reach): Promise<string> {
  const chosen = tests.get(id);
  if (chosen === undefined) return "NoCoverage";
  const now = state();
  Object.assign(now, { activeMutant: id, hitCount: 0, hitLimit: PATIENCE * (hits.get(id) ?? 0) });
  try {
    const loaded = inTime(load);
    const added = early.has(id) ? [...loaded.keys()].slice(took.length) : [];
    for (const at of [...chosen, ...added]) {
      const test = loaded[at];
      if (test !== undefined) await inTime(test, took[at]);
    }
    return "Survived";
  } catch (error) {
    return neverEnds(error, now) ? "Timeout" : "Killed";
  } finally {
    Object.assign(now, { activeMutant: undefined, hitCount: undefined });
  }
}

const neverEnds = (error: unknown, { hitCount = 0, hitLimit = 0 }: Switch): boolean =>
  hitCount > hitLimit || (error as { code?: unknown } | undefined)?.code === "ERR_SCRIPT_EXECUTION_TIMEOUT";
