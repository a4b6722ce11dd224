// The pages that are handed over, opened from a disk: nothing serves them, and nothing is asked for.
import { copyFileSync, mkdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import exceljs from "exceljs";
import type { FrameLocator, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { openFile } from "../../src/workbook/scripted.ts";
import { type Browser, openBrowser, skipWithoutChromium } from "../sidebar/browser.ts";
import { bytesOf, cellText, type Hands, handsOn, pageReady } from "../workbook/local-page.ts";
import { ID, LOCAL, type Pages, seedPage, writePages } from "./one-file-pages.ts";

describe.skipIf(skipWithoutChromium("the pages that are one file"))("opened from a disk in Chromium", () => {
  let pages: Pages;
  let browser: Browser;
  const asked: string[] = [];
  beforeAll(async () => {
    pages = await writePages();
    browser = await openBrowser(1440, 1000);
    browser.context.on("request", (one) => {
      if (!/^(data|blob|about):/.test(one.url())) asked.push(one.url().replace(/#.*/, ""));
    });
  });
  afterAll(async () => {
    await browser?.close();
    if (pages !== undefined) rmSync(pages.folder, { recursive: true, force: true });
  });

  const opened = async (url: string): Promise<Hands> => {
    const page = await browser.context.newPage();
    await page.goto(url);
    await pageReady(page);
    return handsOn(page);
  };

  /** What the clipboard holds, as a person gets it who pastes. */
  async function pasted(page: Page): Promise<string> {
    await page.evaluate(() => {
      document.querySelector("#pasted")?.remove();
      const box = document.createElement("textarea");
      box.id = "pasted";
      document.body.append(box);
      box.focus();
    });
    await page.keyboard.press("Control+v");
    return page.locator("#pasted").inputValue();
  }

  const COPIES = [
    ["Copy the first text", "Code.js", "Code.gs"],
    ["Copy the second text", "sidebar.html", "sidebar.html"],
    ["Copy the third text", "appsscript.json", "appsscript.json"],
  ] as const;

  test("the three copies are the three files to the byte", async () => {
    const page = await browser.context.newPage();
    await page.goto(pages.install);
    await browser.context.grantPermissions(["clipboard-read", "clipboard-write"]);
    for (const [button, file, place] of COPIES) {
      await page.getByRole("button", { name: button }).click();
      await page.getByText(new RegExp(`^Copied: .* characters\\. Now click into ${place}`)).waitFor();
      expect((await pasted(page)) === pages.files[file], file).toBe(true);
    }
    // Without the newer way to the clipboard the text is selected and copied.
    await page.evaluate(() => Object.defineProperty(navigator, "clipboard", { value: undefined }));
    await page.getByRole("button", { name: "Copy the first text" }).click();
    await page.getByText(/^Copied: .* click into Code\.gs/).waitFor();
    expect((await pasted(page)) === pages.files["Code.js"]).toBe(true);
    // Without either it stands there selected.
    await page.evaluate(() => {
      document.execCommand = () => false;
    });
    await page.getByRole("button", { name: "Copy the third text" }).click();
    await page.getByText("press Ctrl+C").waitFor();
    expect(await page.evaluate(() => String(getSelection()))).toBe(pages.files["appsscript.json"]);
    await page.close();
  });

  test("the local page does the main job, and has everything when it is opened again, moved or renamed", async () => {
    const local = join(pages.folder, LOCAL);
    const seed = await browser.context.newPage();
    await seed.goto(pages.write(LOCAL, await seedPage()));
    await seed.waitForFunction(() => document.title === "seeded");
    await seed.close();
    const first = await opened(pages.write(LOCAL, pages.local));
    expect(await cellText(first, "A1")).toBe("Left from yesterday");
    expect(first.page.url()).toBe(`${pathToFileURL(local).href}#${ID}`);
    await first.page.getByText("No file holds this workbook yet.").waitFor();
    const bench = first.page.frameLocator("#sidebar-frame");
    await orderLoaves(bench);
    await bench.getByRole("button", { name: "Build the sheet" }).click();
    await bench.getByText("Built “Pan loaf”").first().waitFor();
    await savedXlsx(first.page, ["Pan loaf", "Sheet1"]);
    const saved = await savedFile(first.page);
    await mainJobIn(saved);
    await keptBy(first.page, "Pan loaf");
    await first.page.close();

    const moved = join(pages.folder, "elsewhere");
    mkdirSync(moved);
    copyFileSync(local, join(moved, "our bakery.html"));
    const again = await opened(pathToFileURL(join(moved, "our bakery.html")).href);
    expect(cellsIn(await savedFile(again.page))).toEqual(cellsIn(saved));
    expect(await again.page.locator("#reminder").isHidden()).toBe(true);
    await twoTabs(again);
    await before(again);
    await again.page.close();
  });

  /** 73 loaves of 390 g, as a school's hand-out asks for. */
  async function orderLoaves(bench: FrameLocator): Promise<void> {
    const folded = bench.locator("details:not([open]) > summary");
    while ((await folded.count()) > 0) await folded.first().click();
    await bench.getByLabel("Pieces, size 1", { exact: true }).fill("73");
    await bench.getByLabel("Baked g, size 1", { exact: true }).fill("390");
    await bench.getByLabel("Shape", { exact: true }).selectOption({ label: "no tin" });
    await bench.getByLabel("Include in the sheet", { exact: true }).uncheck();
  }

  /** 100 + 63 + 2 + 2 + 3 + 2 = 172 % of the flour are 73 × 390 g; and the file opens where `npm start -- --file` opens it. */
  async function mainJobIn(saved: string): Promise<void> {
    const path = join(pages.folder, "saved.json");
    writeFileSync(path, saved);
    const book = await openFile(path);
    const rows = book.values("Pan loaf", "A1:D40");
    const weight = (name: string) => Number(rows.find((row) => row[0] === name)?.[3]);
    // The shop's scales show whole grams.
    expect(Math.abs(weight("Strong white flour") - (73 * 390) / 1.72)).toBeLessThan(1);
    expect(Math.abs(weight("Sea salt") - ((73 * 390) / 1.72) * 0.02)).toBeLessThan(1);
  }

  const cellsIn = (text: string): unknown => {
    const { id, data } = JSON.parse(text) as { id: string; data: { sheets: { name: string; cells: unknown }[] } };
    return { id, sheets: data.sheets.map(({ name, cells }) => ({ name, cells })) };
  };

  async function savedXlsx(page: Page, sheets: readonly string[]): Promise<void> {
    const [file] = await Promise.all([page.waitForEvent("download"), page.locator("#save").click()]);
    const book = new exceljs.Workbook();
    await book.xlsx.load((await bytesOf(file)) as unknown as ArrayBuffer);
    expect(book.worksheets.map(({ name }) => name).sort()).toEqual([...sheets].sort());
  }

  async function savedFile(page: Page): Promise<string> {
    const [file] = await Promise.all([page.waitForEvent("download"), page.locator("#save-file").click()]);
    expect(file.suggestedFilename()).toMatch(/^gramwright-workbook\.\d{4}-\d\d-\d\d\.json$/);
    await page.locator("#reminder").waitFor({ state: "hidden" });
    return (await bytesOf(file)).toString("utf8");
  }

  const keptBy = (page: Page, text: string) =>
    page.waitForFunction(
      async ([id = "", wanted = ""]) => {
        const database = await new Promise<IDBDatabase>((done) => {
          const asked = indexedDB.open("gramwright");
          asked.onsuccess = () => done(asked.result);
        });
        const entry = await new Promise<{ text: string } | undefined>((done) => {
          const asked = database.transaction("workbooks").objectStore("workbooks").get(id);
          asked.onsuccess = () => done(asked.result as { text: string } | undefined);
        });
        database.close();
        return entry?.text.includes(wanted) === true;
      },
      [ID, text],
    );

  /** What one tab keeps the other one hears of; it keeps nothing more, and takes the newer state. */
  async function twoTabs(first: Hands): Promise<void> {
    const second = await opened(first.page.url());
    await first.type("A1", "typed in the first tab");
    await second.page.getByRole("alert").getByText("This tab is behind").waitFor();
    await second.page.getByRole("button", { name: "Take the newer state" }).click();
    await second.page.getByRole("alert").waitFor({ state: "hidden" });
    await pageReady(second.page);
    expect(await cellText(second, "A1")).toBe("typed in the first tab");
    await second.page.close();
  }

  /** What it held before today's work is there too. */
  async function before({ page }: Hands): Promise<void> {
    await page.getByRole("button", { name: "Open file" }).click();
    await page
      .locator("#chosen-file")
      .setInputFiles({ name: "flour.csv", mimeType: "text/csv", buffer: Buffer.from("a") });
    await page.getByText("“flour.csv” cannot be opened here.").waitFor();
    await page.getByRole("button", { name: /^As it was on/ }).click();
    await page.waitForEvent("load");
    await pageReady(page);
    expect(await page.locator(".o-sheet").allTextContents()).toEqual([expect.stringContaining("Sheet1")]);
  }

  test("an older page leaves alone what a newer one keeps, and says so", async () => {
    const newer = await opened(pages.write("newer.html", pages.newer));
    await newer.page.close();
    const older = await browser.context.newPage();
    await older.goto(pathToFileURL(join(pages.folder, LOCAL)).href);
    await older.getByText("A newer Gramwright page keeps the workbook in this browser").waitFor();
    expect(browser.takeMishaps().join()).toContain("A newer Gramwright page");
    await older.close();
  });

  test("nothing but the pages themselves was asked for", () => {
    expect(asked.filter((url) => !url.startsWith(pathToFileURL(pages.folder).href))).toEqual([]);
    expect(asked.every((url) => url.endsWith(".html"))).toBe(true);
  });
});
