// A real browser for the tests that need one; the system's own, never downloaded.
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type BrowserContext, chromium } from "playwright-core";
import { findChromium } from "../../src/build/programs.ts";

/** Whether browser tests are to be left out; says so in one line, and under CI it is a failure. */
export function skipWithoutChromium(what: string): boolean {
  if (findChromium() !== undefined) return false;
  if (process.env.CI === "true") throw new Error(`No Chromium was found, and under CI ${what} must be tested.`);
  console.warn(`Skipped: ${what}; no Chromium or Chrome was found (GRAMWRIGHT_CHROMIUM may name one).`);
  return true;
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

export type Browser = { readonly context: BrowserContext; readonly close: () => Promise<void> };

/** A browser with a profile of its own, which goes with it. */
export async function openBrowser(width: number, height: number): Promise<Browser> {
  const profile = mkdtempSync(join(tmpdir(), "gramwright-browser-"));
  const executablePath = findChromium();
  if (executablePath === undefined) throw new Error("no Chromium was found");
  const context = await chromium.launchPersistentContext(profile, {
    executablePath,
    headless: true,
    args: QUIET,
    viewport: { width, height },
  });
  // A busy computer takes its time.
  context.setDefaultTimeout(120_000);
  const close = async () => {
    await context.close();
    rmSync(profile, { recursive: true, force: true });
  };
  return { context, close };
}
