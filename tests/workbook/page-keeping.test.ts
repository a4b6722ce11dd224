// What is typed in the page is in the file: after a reload, beside another program, and where the file was spoilt.
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test, vi } from "vitest";
import { openKeeper } from "../../src/workbook/file/keeper.ts";
import { openWorkbook } from "../../src/workbook/host.ts";
import { PATIENCE } from "../kit/scale.ts";
import { skipWithoutChromium } from "../sidebar/browser.ts";
import { cellText, type LocalPage, openLocalPage, pageReady } from "./local-page.ts";
import { CODE, testRoot } from "./test-sidebar.ts";

describe.skipIf(skipWithoutChromium("keeping in the page"))("the page", () => {
  const folder = mkdtempSync(join(tmpdir(), "gramwright-page-kept-"));
  const path = join(folder, "page.json");
  const root = testRoot();
  let local: LocalPage;
  beforeAll(async () => {
    const keeper = openKeeper(path, (data) => void openWorkbook({ codeJs: CODE, data }));
    local = await openLocalPage({ root, keeper, hasClock: true });
  });
  afterAll(async () => {
    await local?.close();
    for (const one of [folder, root]) rmSync(one, { recursive: true, force: true });
  });
  const kept = () => readFileSync(path, "utf8");
  const [FREE, BELOW] = ["C23", "C24"];

  test("opens with what was typed before the reload, and builds no second demo", async () => {
    const { page } = local;
    await local.type(FREE, "kept rye");
    await vi.waitFor(() => expect(kept()).toContain("kept rye"), { timeout: PATIENCE, interval: 50 });
    const tabs = await page.locator(".o-sheet-name").allTextContents();
    await page.reload();
    await pageReady(page);
    expect(await page.locator(".o-sheet-name").allTextContents()).toEqual(tabs);
    expect(await cellText(local, FREE)).toBe("kept rye");
    expect(existsSync(path)).toBe(true);
  });

  test("asks before it closes while a cell is still being typed, and not where all is kept", async () => {
    const tab = await local.page.context().newPage();
    const asked: string[] = [];
    tab.on("dialog", (dialog) => {
      asked.push(dialog.type());
      void dialog.accept();
    });
    const select = () => tab.locator(".o-grid").click({ position: { x: 300, y: 300 } });
    await tab.goto(local.page.url());
    await pageReady(tab);
    // A browser asks nobody who did nothing.
    await select();
    await tab.reload();
    await pageReady(tab);
    expect(asked).toEqual([]);
    await select();
    await tab.keyboard.type("half a word");
    await tab.reload();
    await pageReady(tab);
    expect(asked).toEqual(["beforeunload"]);
    await tab.close();
  });

  test("a program that wrote is not written over: the page says so, and keeps nothing until the person chose", async () => {
    const { page } = local;
    writeFileSync(path, JSON.stringify({ ...JSON.parse(kept()), other: 1 }));
    await local.passes(4000);
    await page.getByRole("alert").getByText("This tab is behind").waitFor();
    const posts = local.posts();
    await local.type(BELOW, "too late");
    await local.passes(60_000);
    expect(local.posts()).toBe(posts);
    expect(JSON.parse(kept()).other).toBe(1);
    await page.getByRole("button", { name: "Take the newer state" }).click();
    await page.getByRole("alert").waitFor({ state: "hidden" });
    await pageReady(page);
    expect(await cellText(local, BELOW)).toBe("");
    expect(await cellText(local, FREE)).toBe("kept rye");
  });

  test("moving about writes nothing", async () => {
    const { page } = local;
    await page.reload();
    await pageReady(page);
    await local.passes(5000);
    const [before, posts] = [kept(), local.posts()];
    await local.goTo("B3");
    await local.goTo("C9");
    await local.passes(60_000);
    expect(local.posts()).toBe(posts);
    expect(kept()).toBe(before);
  });

  test("a broken file is set aside and said in the page", async () => {
    const { page } = local;
    writeFileSync(path, "half a");
    await page.reload();
    await page.waitForFunction(() => document.getElementById("status")?.textContent?.includes("was set aside as"));
    expect(readFileSync(path.replace(".json", ".broken-1.json"), "utf8")).toBe("half a");
  });
});
