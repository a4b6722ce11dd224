// The page of `npm start` with the very files that would be pushed, in a real browser.
import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Download, Page } from "playwright-core";
import { LOCAL_PAGE } from "../../src/build/local-page.ts";
import type { Keeper } from "../../src/workbook/keep.ts";
import { serve } from "../../src/workbook/server.ts";
import { openBrowser } from "../sidebar/browser.ts";
import { files, workbook } from "../templates/sheet-support.ts";

export type LocalPage = {
  readonly page: Page;
  /** Selects a cell by its A1 notation. */
  readonly goTo: (a1: string) => Promise<void>;
  readonly type: (a1: string, text: string) => Promise<void>;
  /** Fails when the page had an error or asked anybody else. */
  readonly close: () => Promise<void>;
};

export const pageJs = () => readFileSync(LOCAL_PAGE, "utf8");

/** A folder as the server wants it, with the built files in it. */
export async function builtRoot(): Promise<string> {
  const root = mkdtempSync(join(tmpdir(), "gramwright-local-"));
  mkdirSync(join(root, "dist"));
  mkdirSync(join(root, "src"));
  symlinkSync(join(process.cwd(), "src/workbook"), join(root, "src/workbook"));
  symlinkSync(join(process.cwd(), "node_modules"), join(root, "node_modules"));
  const { codeJs, sidebarHtml } = await files();
  writeFileSync(join(root, "dist/Code.js"), codeJs);
  writeFileSync(join(root, "dist/sidebar.html"), sidebarHtml);
  return root;
}

type How = {
  /** The server's folder; left out, one with the built files, which goes at the end. */
  readonly root?: string;
  readonly keeper?: Keeper;
  readonly width?: number;
};

export async function openLocalPage({ root, keeper, width = 1440 }: How = {}): Promise<LocalPage> {
  const folder = root ?? (await builtRoot());
  const server = await serve({ root: folder, pageJs: pageJs(), ...(keeper === undefined ? {} : { keeper }) });
  const browser = await openBrowser(width, 1000);
  const page = await browser.context.newPage();
  await page.goto(server.address);
  await page.waitForSelector(".o-grid canvas");
  // The demo shop takes some seconds; what is said afterwards depends on the test.
  await page.waitForFunction(
    () => !/^(|Opening .*|Building .*)$/.test(document.getElementById("status")?.textContent ?? ""),
  );
  const goTo = async (a1: string) => {
    const box = page.locator(".o-named-range-selector-container input");
    await box.fill(a1);
    await box.press("Enter");
    await page.waitForFunction(() => document.activeElement?.closest(".o-named-range-selector-container") === null);
    await drawn(page);
  };
  return {
    page,
    goTo,
    type: async (a1, text) => {
      await goTo(a1);
      await page.keyboard.type(text);
      await page.keyboard.press("Enter");
      await drawn(page);
    },
    close: async () => {
      try {
        await browser.close();
      } finally {
        await server.close();
        if (root === undefined) rmSync(folder, { recursive: true, force: true });
      }
    },
  };
}

/** The engine calculates and draws in the frame after a key was pressed. */
export const drawn = (page: Page): Promise<void> =>
  page.evaluate(() => new Promise<void>((done) => requestAnimationFrame(() => requestAnimationFrame(() => done()))));

/** An empty workbook, as if it had been kept before: the page opens it and builds no demo shop. */
export async function emptyKept(): Promise<Keeper> {
  const data = (await workbook()).engine.data();
  return { path: "", load: () => ({ data, revision: "1" }), revision: () => "1", save: () => ({ revision: "1" }) };
}

export async function bytesOf(download: Download): Promise<Buffer> {
  const parts: Buffer[] = [];
  for await (const part of await download.createReadStream()) parts.push(part as Buffer);
  return Buffer.concat(parts);
}
