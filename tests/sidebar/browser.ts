// A real browser for the tests that need one; the system's own, never downloaded.
import { type BrowserContext, chromium, type Browser as Shared } from "playwright-core";
import { expect, inject } from "vitest";
import { findTestChromium } from "../../src/build/programs.ts";
import { PATIENCE } from "../kit/scale.ts";

/** Whether browser tests are to be left out; says so in one line, and under CI it is a failure. */
export function skipWithoutChromium(what: string): boolean {
  if (findTestChromium() !== undefined) return false;
  if (process.env.CI === "true") throw new Error(`No Chromium was found, and under CI ${what} must be tested.`);
  console.warn(`Skipped: ${what}; no Chromium or Chrome was found (GRAMWRIGHT_CHROMIUM may name one).`);
  return true;
}

export type Browser = {
  readonly context: BrowserContext;
  /** Fails when a page did something wrong since the last time: an error, or a request to anybody but this computer. */
  readonly expectClean: () => void;
  /** What pages did wrong since the last time, for a test in which one is to fail; it counts no more. */
  readonly takeMishaps: () => string[];
  /** Fails as `expectClean` does. */
  readonly close: () => Promise<void>;
};

let shared: Promise<Shared> | undefined;

/** A context in the browser that all tests share: cookies, storage and pages are its own. */
export async function openBrowser(width: number, height: number): Promise<Browser> {
  const address = inject("chromium");
  if (address === undefined) throw new Error("no Chromium was found");
  shared ??= chromium.connect(address);
  const context = await (await shared).newContext({ viewport: { width, height } });
  context.setDefaultTimeout(PATIENCE);
  const mishaps: string[] = [];
  context.on("weberror", (one) => mishaps.push(one.error().message));
  context.on("console", (one) => {
    if (one.type() === "error") mishaps.push(`${one.text()} (${one.location().url})`);
  });
  context.on("request", (one) => {
    const { protocol, hostname } = new URL(one.url());
    if (/^(https?|wss?):$/.test(protocol) && hostname !== "127.0.0.1") mishaps.push(`asked for ${one.url()}`);
  });
  const takeMishaps = () => mishaps.splice(0);
  const expectClean = () => expect(takeMishaps(), "what a page did wrong").toEqual([]);
  const close = async () => {
    await context.close();
    expectClean();
  };
  return { context, expectClean, takeMishaps, close };
}
