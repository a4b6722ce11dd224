// The page of `npm start` as a person uses it, with a script and a bench that do little.
import { rmSync } from "node:fs";
import exceljs from "exceljs";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { skipWithoutChromium } from "../sidebar/browser.ts";
import { bytesOf, cellText, type LocalPage, openLocalPage, openTab } from "./local-page.ts";
import { testRoot } from "./test-sidebar.ts";

describe.skipIf(skipWithoutChromium("the page"))("the page", () => {
  const root = testRoot();
  let local: LocalPage;
  let page: Page;
  const status = () => page.textContent("#status");
  const goTo = (a1: string) => local.goTo(a1);
  const typed = async (a1: string, text: string) => {
    await local.type(a1, text);
    await goTo(a1);
  };

  beforeAll(async () => {
    local = await openLocalPage({ root, width: 1280 });
    page = local.page;
  });
  afterAll(async () => {
    await local?.close();
    rmSync(root, { recursive: true, force: true });
  });

  test("opens with the demo built and the sidebar beside it", async () => {
    expect(await status()).toBe("Built: Rye.");
    expect(await page.locator("#sidebar-title").textContent()).toBe("Test bench");
    expect(await page.locator("#menu button").allTextContents()).toEqual(["Open Gramwright", "Stumble"]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(1280);
  });

  test("a percent typed into a percent cell recalculates what reads it", async () => {
    await typed("A1", "80%");
    await goTo("C1");
    expect(await page.locator(".o-topbar-composer").textContent()).toContain("PROBE_SHOW(A1:A2)");
    const [download] = await Promise.all([page.waitForEvent("download"), page.click("#save")]);
    const file = new exceljs.Workbook();
    await file.xlsx.load((await bytesOf(download)) as unknown as ArrayBuffer);
    expect(download.suggestedFilename()).toMatch(/\.xlsx$/);
    expect(file.getWorksheet("Rye")?.getCell("C1").value).toBe("[[[0.8],[0.25]]]");
    expect(file.getWorksheet("Rye")?.getCell("B2").result).toBe(1.05);
  });

  test("a percentage stands in the formula bar as it was typed, without a tail of digits", async () => {
    // As numbers 100 times these are 57.99999999999999 and 56.99999999999999, and 0.07 is 7.000000000000001 %.
    for (const text of ["58%", "57%", "7%", "62.5%", "0.25%"]) {
      await typed("A1", text);
      expect(await page.locator(".o-topbar-composer").textContent()).toBe(text);
    }
    await typed("A1", "80%");
  });

  test("a quick hand types over what stands there, also where the computer draws slowly", async () => {
    const slow = await openTab(local, async (tab) => {
      await tab.addInitScript(() => {
        const draw = window.requestAnimationFrame.bind(window);
        window.requestAnimationFrame = (then) => window.setTimeout(() => draw(then), 200);
      });
    });
    await slow.goTo("A1");
    for (const text of ["45%", "35%"]) {
      await slow.page.keyboard.type(text);
      await slow.page.keyboard.press("Enter");
    }
    await expect.poll(() => cellText(slow, "A1")).toMatch(/^45(\.0+)?%$/);
    await expect.poll(() => cellText(slow, "A2")).toMatch(/^35(\.0+)?%$/);
    await slow.page.close();
  });

  test("the status line tells an error's sentence and a note", async () => {
    await typed("E1", '=PROBE_THROW("weigh the flour")');
    await page.waitForFunction(() => document.getElementById("status")?.textContent === "weigh the flour");
    await goTo("B1");
    expect(await status()).toBe("told in the status line");
  });

  test("the helper shows each argument in words while typing", async () => {
    await goTo("E2");
    await page.keyboard.type("=PROBE_SHOW(");
    const help = page.locator(".o-formula-assistant");
    await help.waitFor();
    expect(await help.textContent()).toMatch(/Shows its arguments as JSON\.[\s\S]*The second one \(optional\)\./);
    await page.keyboard.press("Escape");
    await page.keyboard.press("Escape");
  });

  test("the sidebar asks the script, and a refusal comes back", async () => {
    const bench = page.frameLocator("#sidebar-frame");
    await bench.locator("#go").click();
    await bench.locator("#said:has-text('say make')").waitFor();
  });

  test("a failing menu item says why, and the sidebar closes and opens", async () => {
    await page.getByRole("button", { name: "Stumble" }).click();
    expect(await status()).toBe("the oven is cold");
    await page.getByRole("button", { name: "Close Gramwright" }).click();
    expect(await page.locator("#sidebar").isVisible()).toBe(false);
    await page.getByRole("button", { name: "Open Gramwright" }).click();
    await page.frameLocator("#sidebar-frame").locator("#go").waitFor();
  });

  test("F6 leads from the sheet to the sidebar, to the menu and back", async () => {
    await goTo("A2");
    const where = () =>
      page.evaluate(() => {
        const active = document.activeElement;
        return active?.id === "sidebar-frame"
          ? "bench"
          : active?.closest("#grid")
            ? "sheet"
            : (active?.textContent ?? "");
      });
    const seen = [await where()];
    for (let step = 0; step < 3; step++) {
      await page.keyboard.press("F6");
      seen.push(await where());
    }
    expect(seen).toEqual(["sheet", "bench", "Open Gramwright", "sheet"]);
    await page.keyboard.type("5%");
    await page.keyboard.press("Enter");
    await goTo("B2");
    await page.keyboard.press("Shift+F6");
    expect(await where()).toBe("Open Gramwright");
  });

  test("the script has no timers and no network of the browser", async () => {
    const found = await page.evaluate(() => {
      const frame = Array.from(document.querySelectorAll("iframe")).find(({ title }) => title === "Script");
      const scope = frame?.contentWindow as unknown as Record<string, unknown>;
      return ["setTimeout", "fetch", "URL", "navigator", "PROBE_SHOW"].map((name) => typeof scope[name]);
    });
    expect(found).toEqual(["undefined", "undefined", "undefined", "undefined", "function"]);
  });
});
