import { readFileSync } from "node:fs";
import { createServer, type Server } from "node:http";
import { createRequire } from "node:module";
import type { AddressInfo } from "node:net";
import type { Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test, vi } from "vitest";
import { VERSION } from "../shared/bench.ts";
import { sidebarHtml } from "../src/build/build.ts";
import { type Browser, openBrowser, skipWithoutChromium } from "./browser.ts";

// axe and a real page take their time, more so on a busy computer.
vi.setConfig({ testTimeout: 60_000 });

const html = await sidebarHtml();

describe("the built file", () => {
  const script = /<script>([\s\S]*)<\/script>/.exec(html)?.[1] ?? "";

  test("is one file of a fair size that asks for nothing", () => {
    expect(html.length).toBeLessThan(120_000);
    expect(/https?:\/\/|src=|@import|url\(|<link/.exec(html)).toBeNull();
    expect(/\bfetch\(|XMLHttpRequest|localStorage|sessionStorage|innerHTML|document\.write/.exec(script)).toBeNull();
  });

  test("has nothing that HtmlService takes for a comment", () => {
    expect(script.length).toBeGreaterThan(10_000);
    expect(script).not.toContain("`");
    // Outside regular expressions and divisions, which no slash pair or slash star can begin.
    expect(/\/\/|\/\*|<!--/.exec(script)).toBeNull();
  });
});

type Way = "answers" | "slow" | "silent" | "fails" | "refuses" | "late" | "other account" | "other version";

/** A stand-in for `google.script.run`: asynchronous, JSON strings, and as slow or broken as a test wants. */
function fakeServer({ way, version }: { way: Way; version: string }): void {
  const state = { way, sent: [] as string[] };
  const answerTo = (question: { ask: string; values: { title: string } }) =>
    question.ask === "ping"
      ? { version: state.way === "other version" ? "9.9.9" : version }
      : { sheet: state.way === "slow" ? `${question.values.title} (2)` : question.values.title };
  type Handlers = { success?: (answer: string) => void; failure?: (error: Error) => void };
  const runner = (handlers: Handlers): object => ({
    withSuccessHandler: (success: (answer: string) => void) => runner({ ...handlers, success }),
    withFailureHandler: (failure: (error: Error) => void) => runner({ ...handlers, failure }),
    benchAsk: (json: string) => {
      state.sent.push(json);
      const question = JSON.parse(json);
      const ping = question.ask === "ping";
      if (state.way === "silent") return;
      const { way } = state;
      setTimeout(
        () => {
          if (way === "other account") handlers.failure?.(new Error("You do not have permission to call benchAsk."));
          else if (way === "fails" && !ping) handlers.failure?.(new Error("Service unavailable."));
          else if (way === "refuses" && !ping)
            handlers.success?.(JSON.stringify({ ok: false, message: "Another build is still running." }));
          else handlers.success?.(JSON.stringify({ ok: true, answer: answerTo(question) }));
        },
        ping ? 20 : way === "slow" ? 20_000 : way === "late" ? 100_000 : 20,
      );
    },
  });
  Object.assign(window, { google: { script: { run: runner({}) } }, fake: state });
}

const skip = skipWithoutChromium("the bench in a browser");

describe.skipIf(skip)("the bench at 300 px", () => {
  const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
  let browser: Browser;
  let server: Server;
  let page: Page;
  const mishaps: string[] = [];

  beforeAll(async () => {
    server = createServer((_, answer) => answer.setHeader("content-type", "text/html; charset=utf-8").end(html));
    await new Promise<void>((done) => server.listen(0, "127.0.0.1", done));
    browser = await openBrowser(300, 900);
  }, 60_000);

  afterAll(async () => {
    await browser?.close();
    server?.close();
  });

  beforeEach(async () => {
    page = await browser.context.newPage();
    page.on("pageerror", (error) => mishaps.push(error.message));
    page.on("request", (request) => {
      if (!request.url().startsWith("http://127.0.0.1")) mishaps.push(`asked for ${request.url()}`);
    });
  });

  afterEach(async () => {
    await page.close();
    expect(mishaps.splice(0)).toEqual([]);
  });

  async function open(way: Way = "answers"): Promise<void> {
    await page.clock.install();
    await page.addInitScript(fakeServer, { way, version: VERSION });
    await page.goto(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`);
    await page.clock.runFor(50);
  }

  const turn = (way: Way) =>
    page.evaluate((to) => {
      (window as unknown as { fake: { way: string } }).fake.way = to;
    }, way);
  const sent = () =>
    page.evaluate(() => (window as unknown as { fake: { sent: string[] } }).fake.sent.map((json) => JSON.parse(json)));
  const builds = async () => (await sent()).filter(({ ask }) => ask === "build");
  const field = (label: string | RegExp) => page.getByLabel(label, { exact: true });
  const build = () => page.getByRole("button", { name: "Build the sheet" });
  const status = () => page.locator(".status");
  const focused = () =>
    page.evaluate(() => (document.activeElement as HTMLInputElement | null)?.labels?.[0]?.textContent);
  const wait = (ms: number) => page.clock.runFor(ms);

  async function noHarm(state: string): Promise<void> {
    await page.evaluate(axe);
    const found = await page.evaluate(async () => {
      const { violations } = await (
        window as unknown as {
          axe: { run: () => Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
        }
      ).axe.run();
      return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(" ")}`);
    });
    expect(found, state).toEqual([]);
    const overflow = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(overflow, `${state}: sideways`).toBe(0);
  }

  /** axe waits on real time. */
  const checked = async (state: string) => {
    await page.clock.resume();
    await noHarm(state);
  };

  async function fill(): Promise<void> {
    await field("Name of the formula").fill("Quay pan loaf");
    await field("Size of size 1").fill("large");
    await field("Pieces of size 1").fill("24");
    await field("Sold at of size 1 g").fill("700");
    await field("Loss of size 1 %").fill("11");
    await field("Length cm").fill("21x11x9");
    await field("Width cm").focus();
  }

  test("pings, and says nothing where all is well", async () => {
    await open();
    expect(await sent()).toEqual([{ ask: "ping" }]);
    await expect.poll(() => page.getByRole("alert").textContent()).toBe("");
    await checked("empty");
  });

  test("is filled in and sends the order once, with what was typed", async () => {
    await open();
    await fill();
    await page.getByRole("button", { name: "Add a size" }).click();
    expect(await focused()).toBe("Size of size 2 ");
    for (const text of ["small", "12", "350", "13"]) {
      await page.keyboard.type(text);
      await page.keyboard.press("Tab");
    }
    await field("Lost in bowl and on bench %").fill("2");
    await page.getByRole("heading", { name: "Scale and mixer" }).click();
    await field("Mixer takes at most g").fill("20 kg");
    // (24 × 700 ÷ 0.89 + 12 × 350 ÷ 0.87) ÷ 0.98 = 24 187.7 g; ÷ 1.72 = 14 062.6 g; half of the dough a mix
    const figures = (await page.locator(".figures span").allTextContents()).join(", ").replace(/\s/g, " ");
    expect(figures).toContain("Dough 24 188 g");
    expect(figures).toContain("Flour 14 063 g");
    expect(figures).toContain("in 2 mixes of 12 094 g");
    await checked("filled");
    await build().dblclick();
    await expect.poll(() => status().textContent()).toMatch(/^Built “Quay pan loaf”\./);
    const orders = await builds();
    expect(orders).toHaveLength(1);
    expect(orders[0]).toMatchObject({
      template: "pan-loaf",
      options: { weight: "g", temperature: "C", length: "cm", parts: ["tin", "water"] },
      values: {
        title: "Quay pan loaf",
        by: "pieces",
        size_name: ["large", "small"],
        size_pieces: [24, 12],
        size_weight: [700, 350],
        size_loss: [0.11, 0.13],
        handling_loss: 0.02,
        mixer_limit: 20000,
        percent: [1, 0.63, 0.02, 0.02, 0.03, 0.02],
        tin_shape: "box",
        tin_size_1: 21,
        tin_size_2: 11,
        tin_size_3: 9,
      },
    });
    await checked("built");
  });

  test("says what is missing, goes to the first, and sends nothing", async () => {
    await open();
    await build().click();
    expect(await focused()).toBe("Pieces of size 1 ");
    expect(await page.locator(".lead").textContent()).toBe("5 things before it can be built:");
    expect(await field("Pieces of size 1").getAttribute("aria-invalid")).toBe("true");
    expect(await page.locator(".trouble:visible").allTextContents()).toEqual([
      "Write how many pieces you want. Write what one piece weighs when it is sold.",
      "Write the tin's inner length. Write the tin's inner width. Write the tin's inner depth.",
    ]);
    await checked("in error");
    await page.getByRole("button", { name: "Write the tin's inner length." }).click();
    expect(await focused()).toBe("Length cm");
    await fill();
    await expect.poll(() => page.locator(".trouble:visible").count()).toBe(0);
    expect(await page.locator(".lead").textContent()).toBe("");
    expect(await builds()).toEqual([]);
  });

  test("says what it cannot read when the field is left, not before", async () => {
    await open();
    await field("Sold at of size 1 g").pressSequentially("7oo");
    expect(await page.locator(".trouble:visible").count()).toBe(0);
    await page.keyboard.press("Tab");
    expect(await page.locator(".trouble:visible").textContent()).toBe(
      'The weight of size 1 is "7oo", which is not a number; write a weight such as 700.',
    );
    await field("Sold at of size 1 g").fill("700");
    expect(await page.locator(".trouble:visible").count()).toBe(0);
  });

  test("flours that make no 100 are told below the table", async () => {
    await open();
    await fill();
    await field("% flour of ingredient 1").fill("90");
    await field("% flour of ingredient 2").focus();
    expect(await page.locator(".trouble:visible").count()).toBe(0);
    await field("Name of the formula").focus();
    expect(await page.locator(".trouble:visible").textContent()).toBe(
      "The percentages have flour rows that add up to 90; all flours together make 100 (or 100%).",
    );
    await build().click();
    expect(await focused()).toBe("% flour of ingredient 1 ");
    await checked("flours");
  });

  test("percentages are typed down the column, or all in one", async () => {
    await open();
    await field("% flour of ingredient 1").selectText();
    await page.keyboard.type("100/67/2/1");
    await page.keyboard.press("Enter");
    const column = () =>
      page
        .locator(".ingredients .row:not(.heads) input.number")
        .evaluateAll((all) => all.map((one) => (one as HTMLInputElement).value));
    expect(await column()).toEqual(["100", "67", "2", "1", "3", "2"]);
    expect(await focused()).toBe("% flour of ingredient 2 ");
    await page.keyboard.type("65\n");
    expect(await column()).toEqual(["100", "65", "2", "1", "3", "2"]);
    await page.getByRole("button", { name: "Take out ingredient 5" }).click();
    expect(await column()).toEqual(["100", "65", "2", "1", "2"]);
    expect(await focused()).toBe("Name of ingredient 5 ");
    await field("% flour of ingredient 5").focus();
    await page.keyboard.press("Enter");
    expect(await focused()).toBe("% flour of ingredient 6 ");
  });

  test("draws the tin with its dough and the guide", async () => {
    await open();
    await fill();
    const says = await page.locator("svg title").textContent();
    // 21 × 11 × 9 = 2079 cm³; 700 ÷ 0.89 = 786.5 g, a fill of 0.38; the guide for white is 0.34 to 0.59, usually 0.43
    expect(says).toContain("Fill 0.38 g/cm³, within the guide for white (0.34 to 0.59)");
    const texts = (await page.locator("svg text").allTextContents()).map((text) => text.replace(/\s/g, " "));
    expect(texts).toEqual(["high 1 227 g", "usual 894 g", "low 707 g", "21 × 9 cm, 2079 cm³", "dough 787 g"]);
    const [dough, hollow] = await Promise.all(
      [".dough", ".wall"].map((one) =>
        page.locator(`svg ${one}`).evaluate((node) => {
          const { width, height } = (node as SVGGraphicsElement).getBBox();
          return { width, height };
        }),
      ),
    );
    // straight walls: the height is the fill; the picture is 21 wide and 9 deep
    expect((dough?.height ?? Number.NaN) / (hollow?.height ?? 1)).toBeCloseTo(700 / 0.89 / 2079, 3);
    expect((hollow?.width ?? 0) / (hollow?.height ?? 1)).toBeCloseTo(21 / 9, 3);
    await field("Shape").selectOption("");
    expect(await page.locator("svg:visible").count()).toBe(0);
  });

  test("every shape of tin can be drawn and harms nobody", async () => {
    await open();
    await fill();
    const sizes: Record<string, string[]> = {
      round: ["23", "7"],
      ring: ["24", "8", "9"],
      oval: ["30", "20", "6"],
      dome: ["20"],
      wreath: ["24", "8"],
      polygon: ["6", "10", "5"],
      water: ["1520"],
    };
    for (const [shape, typed] of Object.entries(sizes)) {
      await field("Shape").selectOption(shape);
      const fields = page.locator(".two .field:visible input");
      for (let at = 0; at < (await fields.count()); at++) await fields.nth(at).fill(typed[at] ?? "");
      expect(await page.locator("svg .dough").count(), shape).toBeGreaterThan(0);
      expect(await page.locator("svg").innerHTML(), shape).not.toMatch(/NaN|Infinity|undefined/);
    }
    await checked("shapes");
  });

  test("units convert what was typed, without moving the focus", async () => {
    await open();
    await fill();
    await field("Weights").selectOption("oz");
    await field("Lengths").focus();
    await field("Lengths").selectOption("in");
    expect(await focused()).toBe("Lengths ");
    expect(await field("Sold at of size 1 oz").inputValue()).toBe("24.69");
    expect(await field("Length in").inputValue()).toBe("8.27");
    await field("Weights").selectOption("g");
    expect(await field("Sold at of size 1 g").inputValue()).toBe("700");
  });

  test("one way of making at a time", async () => {
    await open();
    await field("Flour").check();
    expect(await field("Pieces of size 1").isVisible()).toBe(false);
    await field("Flour to use g").fill("12,5 kg");
    await field("Shape").selectOption("");
    await build().click();
    await wait(100);
    const [order] = await builds();
    expect(order.values).toMatchObject({ by: "flour", flour_wanted: 12500 });
    expect(order.options.parts).toEqual(["water"]);
  });

  test("typing keeps the caret where it is", async () => {
    await open();
    await field("Name of the formula").fill("Quay loaf");
    await field("Name of the formula").evaluate((node) => (node as HTMLInputElement).setSelectionRange(5, 5));
    await page.keyboard.type("pan ");
    expect(await field("Name of the formula").inputValue()).toBe("Quay pan loaf");
  });

  test("a long build shows that it goes on, and is not built twice meanwhile", async () => {
    await open();
    await fill();
    await turn("slow");
    await build().click();
    await wait(300);
    expect(await status().textContent()).toBe("");
    await wait(300);
    expect(await status().textContent()).toBe("Building “Quay pan loaf” …");
    expect(await page.locator(".bar").isVisible()).toBe(true);
    expect(await build().getAttribute("aria-disabled")).toBe("true");
    await wait(1000);
    // A person can click what only says that it is busy.
    await build().click({ force: true });
    await page.keyboard.press("Enter");
    await wait(20_000);
    expect(await status().textContent()).toBe(
      "Built “Quay pan loaf (2)”. That was the nearest name free. It is a sheet of its own; no other was touched.",
    );
    expect(await builds()).toHaveLength(1);
    await wait(1000);
    await build().click();
    expect(await builds()).toHaveLength(2);
    await wait(600);
    await checked("busy");
  });

  test.each<[Way, number, RegExp]>([
    [
      "fails",
      100,
      /^The add-on could not answer \(Service unavailable\)\. Try once more.*What you typed is still here\.$/,
    ],
    ["refuses", 100, /^Another build is still running\. What you typed is still here\.$/],
    ["other account", 100, /permission.*signed in to one account only/],
    ["silent", 91_000, /^No answer for 90 seconds\. The sheet may still be on its way: look at the tabs/],
  ])("a build that %s is told with a way on", async (way, ms, sentence) => {
    await open();
    await fill();
    await turn(way);
    await build().click();
    await wait(ms);
    expect(await status().textContent()).toMatch(sentence);
    await turn("answers");
    await wait(1000);
    await build().click();
    await wait(100);
    expect(await status().textContent()).toMatch(/^Built/);
  });

  test("an answer after the time-out is still told", async () => {
    await open();
    await fill();
    await turn("late");
    await build().click();
    await wait(91_000);
    expect(await status().textContent()).toMatch(/^No answer for 90 seconds/);
    await wait(10_000);
    expect(await status().textContent()).toMatch(/^Built “Quay pan loaf”\..*It took longer/);
  });

  test.each<[Way, RegExp]>([
    ["silent", /^The add-on does not answer\. Open the spreadsheet in a window signed in to one account only/],
    ["other account", /^The add-on may not work in this file .*signed in to one account only/],
    ["other version", /Reload the spreadsheet\.$/],
  ])("a first question that meets %s shows a notice", async (way, sentence) => {
    await open(way);
    await wait(21_000);
    expect(await page.getByRole("alert").locator("p").textContent()).toMatch(sentence);
    if (way === "other version") return;
    await checked("notice");
    await turn("answers");
    await page.getByRole("button", { name: "Ask again" }).click();
    await expect.poll(() => page.getByRole("alert").textContent()).toBe("");
  });

  test("outside a spreadsheet it says so", async () => {
    await page.goto(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`);
    expect(await page.getByRole("alert").locator("p").textContent()).toMatch(/^This page works beside a spreadsheet/);
  });

  test("no field is cut off at 300 px, at twice the text size, or without a keyboard", async () => {
    await open();
    await fill();
    for (const heading of await page.locator("summary").all()) await heading.click();
    const narrow = () =>
      page.locator("input:visible, select:visible, button:visible").evaluateAll((all) =>
        all.flatMap((one) => {
          const { left, right, width, height } = one.getBoundingClientRect();
          const small = one.matches("[type=radio], [type=checkbox]") ? 16 : 24;
          return left < 0 || right > innerWidth || width < small || height < small ? [one.outerHTML] : [];
        }),
      );
    expect(await narrow()).toEqual([]);
    await page.evaluate(() => {
      document.documentElement.style.fontSize = "200%";
    });
    expect(await narrow()).toEqual([]);
    await checked("large text");
  });

  test("a tab's way through reaches everything, and nothing in focus stands behind the foot", async () => {
    await open();
    await fill();
    await page.clock.resume();
    await page.evaluate(() => (document.activeElement as HTMLElement).blur());
    const seen = new Set<string>();
    const total = await page.locator("input:visible, select:visible, button:visible, summary").count();
    for (let step = 0; step < total + 5; step++) {
      await page.keyboard.press("Tab");
      const at = await page.evaluate(() => {
        const one = document.activeElement as HTMLElement;
        if (one === document.body) return "";
        const { bottom } = one.getBoundingClientRect();
        const foot = document.querySelector("footer");
        const covered = foot !== null && !foot.contains(one) && bottom > foot.getBoundingClientRect().top + 1;
        const outline = getComputedStyle(one).outlineStyle;
        return `${one.id || one.getAttribute("aria-label") || one.textContent} ${covered ? "COVERED" : ""} ${outline === "none" ? "UNSEEN" : ""}`;
      });
      if (at === "") continue;
      expect(at).not.toMatch(/COVERED|UNSEEN/);
      seen.add(at);
    }
    // Of the four radios the Tab key reaches the chosen one, the arrows the others.
    expect(seen.size).toBe(total - 3);
  });
});
