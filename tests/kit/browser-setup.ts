// Runs once before all tests: one Chromium for every browser test. Each file has a context of its own in it.
import { chromium } from "playwright-core";
import type { TestProject } from "vitest/node";
import { findTestChromium } from "../../src/build/programs.ts";

declare module "vitest" {
  export interface ProvidedContext {
    /** Where the workers reach it; undefined without a Chromium. */
    chromium: string | undefined;
  }
}

const QUIET = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

export async function setup(project: TestProject): Promise<(() => Promise<void>) | undefined> {
  const executablePath = findTestChromium();
  if (executablePath === undefined) {
    project.provide("chromium", undefined);
    return undefined;
  }
  const server = await chromium.launchServer({ executablePath, headless: true, args: QUIET, host: "127.0.0.1" });
  project.provide("chromium", server.wsEndpoint());
  return () => server.close();
}
