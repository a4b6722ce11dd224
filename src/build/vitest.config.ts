import { defineConfig } from "vitest/config";
import { LongestFirst } from "./longest-first.ts";

/** A busy computer takes its time; a test that never ends is to fail all the same. */
const PATIENCE = 600_000;

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts"],
    setupFiles: ["tests/kit/random-setup.ts"],
    globalSetup: ["src/build/global-setup.ts", "tests/kit/browser-setup.ts"],
    // No test changes a module that another one reads: the sources are loaded once for a worker, not once for a file.
    isolate: false,
    // One more than the cores of a small machine: what waits for a browser or a server leaves them to the others.
    maxWorkers: 3,
    // Workbooks come and go: with room for them the collector of garbage runs a quarter as often.
    execArgv: ["--max-semi-space-size=64"],
    sequence: { sequencer: LongestFirst },
    testTimeout: PATIENCE,
    hookTimeout: PATIENCE,
    expect: { poll: { timeout: PATIENCE / 2 } },
    restoreMocks: true,
    unstubEnvs: true,
  },
});
