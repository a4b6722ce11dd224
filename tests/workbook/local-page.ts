// The page of `npm start` with the very files that would be pushed, in a real browser.
import { mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { LOCAL_PAGE } from "../../src/build/local-page.ts";
import { type LocalServer, serve } from "../../src/workbook/server.ts";
import { type Browser, openBrowser } from "../sidebar/browser.ts";
import { files } from "../templates/sheet-support.ts";

export type LocalPage = {
  readonly page: Page;
  /** Errors of the page and questions to anybody else. */
  readonly mishaps: string[];
  /** Selects a cell by its A1 notation. */
  readonly goTo: (a1: string) => Promise<void>;
  readonly type: (a1: string, text: string) => Promise<void>;
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

export async function openLocalPage(
  how: Omit<Parameters<typeof serve>[0], "root" | "pageJs"> = {},
): Promise<LocalPage> {
  const root = await builtRoot();
  const server: LocalServer = await serve({ root, pageJs: pageJs(), ...how });
  const browser: Browser = await openBrowser(1440, 1000);
  const page = await browser.context.newPage();
  const mishaps: string[] = [];
  page.on("pageerror", (error) => mishaps.push(error.message));
  page.on("request", (one) => {
    if (one.url().startsWith("http") && new URL(one.url()).hostname !== "127.0.0.1")
      mishaps.push(`asked for ${one.url()}`);
  });
  // While the demo shop is built the page has little time for anybody else.
  page.setDefaultTimeout(110_000);
  await page.goto(server.address);
  await page.waitForSelector(".o-grid canvas");
  // The demo shop takes some seconds; what is said afterwards depends on the test.
  await page.waitForFunction(
    () => !/^(|Opening .*|Building .*)$/.test(document.getElementById("status")?.textContent ?? ""),
  );
  const goTo = async (a1: string) => {
    const box = page.locator(".o-named-range-selector-container input");
    await box.click();
    await box.fill(a1);
    await box.press("Enter");
    await page.waitForTimeout(100);
  };
  return {
    page,
    mishaps,
    goTo,
    type: async (a1, text) => {
      await goTo(a1);
      await page.keyboard.type(text);
      await page.keyboard.press("Enter");
    },
    close: async () => {
      await browser.close();
      await server.close();
      rmSync(root, { recursive: true, force: true });
    },
  };
}
