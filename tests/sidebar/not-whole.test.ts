// A page that was cut on its way says so, wherever it was cut.
import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { VERSION } from "../../shared/base/version.ts";
import { type Browser, openBrowser, skipWithoutChromium } from "./browser.ts";

const html = readFileSync("dist/sidebar.html", "utf8");
const SENTENCE = /^sidebar\.html was not pasted whole\. /;
const bodyAt = html.indexOf("</p>", html.indexOf("not-whole", html.indexOf("<body>")));
const endAt = html.lastIndexOf("</script>");

describe.skipIf(skipWithoutChromium("a sidebar that was cut"))("a sidebar that was not pasted whole", () => {
  let browser: Browser;
  let page: Page;
  beforeAll(async () => {
    browser = await openBrowser(300, 720);
    page = await browser.context.newPage();
  });
  afterAll(async () => {
    await browser?.close();
  });

  /** The notice comes after a second, for a page that is still on its way; not to wait for it, its animation is ended. */
  const noticeOf = async (text: string, isHurried = true) => {
    // What ran in the page before is gone with it.
    await page.goto("about:blank");
    await page.setContent(text, { waitUntil: "load" });
    const notice = page.locator("#not-whole");
    const isThere = (await notice.count()) > 0;
    if (isThere && isHurried)
      await notice.evaluate((node) => {
        for (const one of node.getAnimations()) one.finish();
      });
    if (isThere) await notice.waitFor({ state: "visible" });
    return { notice: isThere ? ((await notice.textContent()) ?? "") : "", tabs: await page.locator("nav").count() };
  };

  test("whole, it shows its tabs and no notice", async () => {
    expect(await noticeOf(html)).toEqual({ notice: "", tabs: 1 });
  });

  test("by itself the notice comes into sight", async () => {
    expect((await noticeOf(html.slice(0, Math.round((bodyAt + endAt) / 2)), false)).notice).toMatch(SENTENCE);
  });

  const CUTS = 20;
  const cuts = Array.from({ length: CUTS }, (_, at) => bodyAt + Math.round(((endAt - bodyAt) * (at + 0.5)) / CUTS));
  test.each([bodyAt, ...cuts, endAt - 1, endAt])("cut after %i letters, it says so", async (length) => {
    const { notice, tabs } = await noticeOf(html.slice(0, length));
    expect(notice).toMatch(SENTENCE);
    expect(notice).toContain("paste the whole file again");
    expect(tabs).toBe(0);
  });

  test("what still runs with something changed in it says so, and offers nothing", async () => {
    await noticeOf(html.replace("Build the sheet", "Build the sheat"));
    await page.getByText("sidebar.html is not as it was packed.").waitFor();
    expect(await page.locator("nav").count()).toBe(0);
    // Line ends do no harm.
    expect(await noticeOf(html.replace(/\n/g, "\r\n"))).toEqual({ notice: "", tabs: 1 });
    expect(await page.locator(".version").textContent()).toBe(`Gramwright ${VERSION}`);
  });

  // What the editor begins a new page with, from memory.
  const BEGUN =
    '<!DOCTYPE html>\n<html>\n  <head>\n    <base target="_top">\n  </head>\n  <body>\n    \n  </body>\n</html>\n';
  test.each([
    ["pasted under what the editor begins with", BEGUN + html],
    ["pasted above it", html + BEGUN],
    ["behind a byte order mark", `\ufeff${html}`],
    ["read as another encoding", Buffer.from(html, "utf8").toString("latin1")],
    ["pasted twice", html + html],
  ])("%s, it works", async (_, text) => {
    expect(await noticeOf(text)).toEqual({ notice: "", tabs: 1 });
    expect(await page.locator(".version").textContent()).toBe(`Gramwright ${VERSION}`);
  });

  test("a piece lost from its middle is told, too", async () => {
    const middle = Math.round((bodyAt + endAt) / 2);
    const { notice, tabs } = await noticeOf(html.slice(0, middle) + html.slice(middle + 400));
    expect(notice).toMatch(SENTENCE);
    expect(tabs).toBe(0);
    // The script cannot be read, and the browser says so in its own words.
    expect(browser.takeMishaps()).toHaveLength(1);
  });
});
