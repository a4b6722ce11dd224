// The built bench in a real browser, 300 px wide, before a stand-in for the add-on's server.
import { readFileSync } from "node:fs";
import { createServer, type Server } from "node:http";
import { createRequire } from "node:module";
import type { AddressInfo } from "node:net";
import type { Locator, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, expect } from "vitest";
import { VERSION } from "../../shared/base/version.ts";
import { readMakeAsk } from "../../shared/protocol/make.ts";
import { asFormulaSheet, type FormulaSheet } from "../../src/planners/formula-sheet.ts";
import { type Browser, openBrowser } from "./browser.ts";

export type Way = "answers" | "slow" | "silent" | "fails" | "refuses" | "late" | "other account" | "other version";

/** A stand-in for `google.script.run`: asynchronous, JSON strings, and as slow or broken as the page's address says. */
function fakeServer(version: string): void {
  const way = new URLSearchParams(location.search).get("way");
  if (way === null) return;
  const state = { way, sent: [] as string[] };
  const { askHost } = window as unknown as { askHost?: (json: string) => Promise<string> };
  const answerTo = (question: { ask: string; title: string }) => {
    if (question.ask === "ping") return { version: state.way === "other version" ? "9.9.9" : version };
    if (question.ask === "look") return { front: "Sheet1", sheets: [], names: [] };
    return { sheet: state.way === "slow" ? `${question.title} (2)` : question.title };
  };
  type Handlers = { success?: (answer: string) => void; failure?: (error: Error) => void };
  const runner = (handlers: Handlers): object => ({
    withSuccessHandler: (success: (answer: string) => void) => runner({ ...handlers, success }),
    withFailureHandler: (failure: (error: Error) => void) => runner({ ...handlers, failure }),
    answerSidebar: (json: string) => {
      const question = JSON.parse(json);
      // Nobody asked for it.
      if (question.ask !== "prices") state.sent.push(json);
      const ping = question.ask === "ping";
      // What is slow is the work that is wanted, not the look before it.
      const quick = ping || question.ask === "look";
      if (state.way === "silent") return;
      const { way } = state;
      setTimeout(
        () => {
          if (way === "other account")
            handlers.failure?.(new Error("You do not have permission to call answerSidebar."));
          else if (way === "fails" && !ping) handlers.failure?.(new Error("Service unavailable."));
          else if (way === "refuses" && !ping)
            handlers.success?.(JSON.stringify({ ok: false, message: "Another build is still running." }));
          else if (askHost !== undefined && !ping) void askHost(json).then(handlers.success);
          else handlers.success?.(JSON.stringify({ ok: true, answer: answerTo(question) }));
        },
        quick ? 20 : way === "slow" ? 20_000 : way === "late" ? 100_000 : 20,
      );
    },
  });
  Object.assign(window, { google: { script: { run: runner({}) } }, fake: state });
}

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

export type BenchPage = {
  readonly page: Page;
  /** The bare page, without anybody to ask. */
  readonly openAlone: (search?: string) => Promise<void>;
  readonly open: (way?: Way) => Promise<void>;
  readonly turn: (way: Way) => Promise<void>;
  readonly sent: () => Promise<Sent[]>;
  /** Sheets that were to be written, as the formula sheets they are. */
  readonly builds: () => Promise<FormulaSheet[]>;
  readonly field: (label: string) => Locator;
  readonly build: () => Locator;
  readonly status: () => Promise<string | null>;
  readonly faults: () => Promise<string[]>;
  /** The label of the field that has the focus. */
  readonly focused: () => Promise<string | undefined>;
  readonly wait: (ms: number) => Promise<void>;
  /** Fills in a tin and twenty-four loaves. */
  readonly fill: () => Promise<void>;
  /** axe finds nothing, and nothing reaches beyond the side. */
  readonly checked: (state: string) => Promise<void>;
};
type Sent = Readonly<Record<string, unknown>> & { readonly ask: string };

/**
 * Hooks that load the page anew for each test of the surrounding describe, in one tab. With `host` the add-on itself answers, as it
 * does in the local workbook: the question's JSON in, the reply's JSON out.
 */
export function benchPages(host?: (json: string) => string): BenchPage {
  let browser: Browser;
  let server: Server;
  let page: Page;

  beforeAll(async () => {
    const html = readFileSync("dist/sidebar.html", "utf8");
    server = createServer((_, answer) => answer.setHeader("content-type", "text/html; charset=utf-8").end(html));
    await new Promise<void>((done) => server.listen(0, "127.0.0.1", done));
    browser = await openBrowser(300, 900);
    page = await browser.context.newPage();
    // Before the stand-in, which looks for it.
    if (host !== undefined) await page.exposeFunction("askHost", host);
    await page.addInitScript(fakeServer, VERSION);
    await page.addInitScript(unfolded);
  });

  afterAll(async () => {
    await browser?.close();
    server?.close();
  });

  afterEach(async () => {
    // Nothing of the page goes on in the next test.
    await page.goto("about:blank");
    browser.expectClean();
  });

  const openAlone = async (search = "") => {
    await page.goto(`http://127.0.0.1:${(server.address() as AddressInfo).port}/${search}`);
  };
  const wait = (ms: number) => page.clock.runFor(ms);
  const field = (label: string) => page.getByLabel(label, { exact: true });
  const sent = () =>
    page.evaluate(() => (window as unknown as { fake: { sent: string[] } }).fake.sent.map((json) => JSON.parse(json)));

  return {
    get page() {
      return page;
    },
    openAlone,
    open: async (way = "answers") => {
      await page.clock.install();
      await openAlone(`?${new URLSearchParams({ way })}`);
      await page.waitForSelector("#sidebar .panel");
      await wait(50);
    },
    turn: (way) =>
      page.evaluate((to) => {
        (window as unknown as { fake: { way: string } }).fake.way = to;
      }, way),
    sent,
    builds: async () =>
      (await sent()).flatMap((one) => {
        if (one.ask !== "make") return [];
        const { title, plan } = readMakeAsk(one);
        return asFormulaSheet(title, plan.values) ?? [];
      }),
    field,
    build: () => page.getByRole("button", { name: "Build the sheet" }),
    status: () => page.locator("footer .status").textContent(),
    faults: () => page.locator(".fault:visible").allTextContents(),
    focused: () =>
      page.evaluate(() => (document.activeElement as HTMLInputElement | null)?.labels?.[0]?.textContent?.trim()),
    wait,
    fill: async () => {
      await field("Name of the formula").fill("Quay pan loaf");
      await field("Size, size 1").fill("large");
      await field("Pieces, size 1").fill("24");
      await field("Baked g, size 1").fill("700");
      await field("Loss %, size 1").fill("11");
      await field("Length cm").fill("21x11x9");
      await field("Width cm").focus();
    },
    checked: async (state) => {
      // axe waits on real time.
      await page.clock.resume();
      if (!(await page.evaluate(() => "axe" in window))) await page.evaluate(axe);
      // What follows a change of size, such as a picture that is now wider than its place, comes with the next frame.
      await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
      const [found, sideways] = await page.evaluate(async () => {
        type Found = { violations: { id: string; nodes: { html: string }[] }[] };
        const { violations } = await (window as unknown as { axe: { run: (what: object) => Promise<Found> } }).axe.run({
          resultTypes: ["violations"],
        });
        const { scrollWidth, clientWidth } = document.documentElement;
        return [
          violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`),
          scrollWidth - clientWidth,
        ] as const;
      });
      expect(found, state).toEqual([]);
      expect(sideways, `${state}: sideways`).toBe(0);
    },
  };
}

/** What is folded away because it may be left as it is stands open, so that tests reach its fields; one of them asks for it folded. */
function unfolded(): void {
  if (new URLSearchParams(location.search).has("folded")) return;
  new MutationObserver(() => {
    for (const one of document.querySelectorAll("details.optional:not([data-unfolded])")) {
      one.setAttribute("data-unfolded", "");
      (one as HTMLDetailsElement).open = true;
    }
  }).observe(document, { childList: true, subtree: true });
}
