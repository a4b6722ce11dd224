// The page of `npm start` with the very files that would be pushed, in a real browser.
import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Download, Page } from "playwright-core";
import { LOCAL_PAGE } from "../../src/build/local-page.ts";
import type { Keeper } from "../../src/workbook/file/keeper.ts";
import { serve } from "../../src/workbook/server.ts";
import { openBrowser } from "../sidebar/browser.ts";
import { files, workbook } from "../templates/sheet-support.ts";

export type LocalPage = {
  readonly page: Page;
  /** Selects a cell by its A1 notation. */
  readonly goTo: (a1: string) => Promise<void>;
  readonly type: (a1: string, text: string) => Promise<void>;
  /** So much of the page's own time goes by at once, and what it asked for then was answered; only with `hasClock`. */
  readonly passes: (milliseconds: number) => Promise<void>;
  /** How often the page sent anything. */
  readonly posts: () => number;
  /** What the page did wrong so far, for a test in which it is to; it counts no more. */
  readonly takeMishaps: () => string[];
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

type Shown = {
  readonly width?: number;
  readonly height?: number;
  /** The page's timers follow a clock that a test can put forward. */
  readonly hasClock?: boolean;
};
type How = Shown & {
  /** The server's folder; left out, one with the built files, which goes at the end. */
  readonly root?: string;
  readonly keeper?: Keeper;
};

/** The page of a server in this process. */
export async function openLocalPage({ root, keeper, ...shown }: How = {}): Promise<LocalPage> {
  const folder = root ?? (await builtRoot());
  const server = await serve({ root: folder, pageJs: pageJs(), ...(keeper === undefined ? {} : { keeper }) });
  const local = await openPageAt(server.address, shown);
  return {
    ...local,
    close: async () => {
      try {
        await local.close();
      } finally {
        await server.close();
        if (root === undefined) rmSync(folder, { recursive: true, force: true });
      }
    },
  };
}

/** The page of whichever server is there, in a browser of its own: no other page hears what it tells its tabs. */
export async function openPageAt(
  address: string,
  { width = 1100, height = 640, hasClock }: Shown = {},
): Promise<LocalPage> {
  const browser = await openBrowser(width, height);
  const page = await browser.context.newPage();
  if (hasClock) await page.clock.install();
  await page.goto(address);
  await pageReady(page);
  return { ...handsOn(page), takeMishaps: browser.takeMishaps, close: browser.close };
}

/** Another tab of the same browser. */
export async function openTab({ page: first }: LocalPage, before: (tab: Page) => Promise<void>): Promise<Hands> {
  const page = await first.context().newPage();
  await before(page);
  await page.goto(first.url());
  await pageReady(page);
  return handsOn(page);
}

/** The grid is drawn; the demo shop takes some seconds; what is said afterwards depends on the test. */
export async function pageReady(page: Page): Promise<void> {
  await page.waitForSelector(".o-grid canvas");
  await page.waitForFunction(
    () => !/^(|Opening .*|Building .*)$/.test(document.getElementById("status")?.textContent ?? ""),
    undefined,
    { polling: 50 },
  );
}

export type Hands = Omit<LocalPage, "takeMishaps" | "close">;

export function handsOn(page: Page): Hands {
  let posts = 0;
  page.on("request", (request) => {
    if (request.method() === "POST") posts += 1;
  });
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
    passes: async (milliseconds) => {
      await page.clock.runFor(milliseconds);
      // What the page asked for in that time was asked before this.
      await page.evaluate(async () => void (await fetch("/revision")));
    },
    posts: () => posts,
  };
}

/** What a cell holds, as the line above the grid shows it. */
export async function cellText({ page, goTo }: Pick<LocalPage, "page" | "goTo">, a1: string): Promise<string> {
  await goTo(a1);
  return (await page.locator(".o-topbar-composer").textContent()) ?? "";
}

/** The engine calculates and draws in the frame after a key was pressed. */
export const drawn = (page: Page): Promise<void> =>
  page.evaluate(() => new Promise<void>((done) => requestAnimationFrame(() => requestAnimationFrame(() => done()))));

/** A workbook with one cell in it, as if it had been kept before: the page opens it and builds no demo shop. */
export async function oneCellKept(): Promise<Keeper> {
  const book = await workbook();
  book.type("Sheet1", "A1", "Our bakery");
  const data = book.engine.data();
  return { path: "", load: () => ({ data, revision: "1" }), revision: () => "1", save: () => ({ revision: "1" }) };
}

export async function bytesOf(download: Download): Promise<Buffer> {
  const parts: Buffer[] = [];
  for await (const part of await download.createReadStream()) parts.push(part as Buffer);
  return Buffer.concat(parts);
}
