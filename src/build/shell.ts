import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";

/** Runs a program of the project's own packages and gives its exit code. */
export function runTool(name: string, args: readonly string[]): number {
  const { status } = spawnSync(process.execPath, [binOf(name), ...args], { stdio: "inherit" });
  return status ?? 1;
}

const BINS: Readonly<Record<string, string>> = {
  vitest: "node_modules/vitest/vitest.mjs",
  tsc: "node_modules/typescript/bin/tsc",
  biome: "node_modules/@biomejs/biome/bin/biome",
  clasp: "node_modules/@google/clasp/build/src/index.js",
};

function binOf(name: string): string {
  const path = BINS[name];
  if (path === undefined || !existsSync(path))
    throw new Error(`${name} is not installed where it is looked for (${path})`);
  return path;
}
