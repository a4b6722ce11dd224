// `npm run pictures`: the pictures of the README, one of each main sheet and each panel, taken of the demo shop in the local page.
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium, type FrameLocator, type Locator, type Page } from "playwright-core";
import { openKeeper } from "../workbook/file/keeper.ts";
import { openDemo } from "../workbook/scripted.ts";
import { serve } from "../workbook/server.ts";
import { build } from "./build.ts";
import { LOCAL_PAGE, localPage } from "./local-page.ts";
import { findChromium } from "./programs.ts";

export const FOLDER = join("src", "build", "pictures");
const SIDEBAR = "#sidebar-frame";
const SIZE = { width: 1280, height: 720 };
/** The shop's day in the pictures, so that the same page gives the same picture. */
const DAY = new Date(2026, 0, 30);
const QUIET = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking"];

type Sheet = { readonly file: string; readonly tab: string };
type Panel = {
  readonly file: string;
  readonly name: string;
  /** The sheet in front of it. */
  readonly tab: string;
  readonly before?: (panel: FrameLocator) => Promise<void>;
};

export const SHEETS: readonly Sheet[] = [
  { file: "pan-loaf", tab: "Quay pan loaf" },
  { file: "levain-loaf", tab: "Harbour levain loaf" },
  { file: "finished-product", tab: "Custard bun" },
  { file: "ingredients", tab: "Ingredients" },
  { file: "costs-and-prices", tab: "Costs and prices" },
  { file: "production", tab: "Production 31 Jan to 1 Feb" },
  { file: "card", tab: "Quay pan loaf – card" },
  { file: "mix-log", tab: "Mix log" },
];

const RECIPE = `Harbour buns, makes 24
3 cups bread flour
1 cup milk
2 tbsp butter
1 egg
2 tsp instant yeast
1 tsp salt`;

export const PANELS: readonly Panel[] = [
  { file: "panel-new-formula", name: "New formula", tab: "Quay pan loaf" },
  {
    file: "panel-paste-recipe",
    name: "Paste recipe",
    tab: "Quay pan loaf",
    before: (panel) => panel.locator("textarea").first().fill(RECIPE),
  },
  { file: "panel-adjust", name: "Adjust", tab: "Quay pan loaf" },
  { file: "panel-check", name: "Check", tab: "Harbour levain loaf" },
  { file: "panel-plan", name: "Plan", tab: "Production 31 Jan to 1 Feb" },
  { file: "panel-staff-card", name: "Staff card", tab: "Quay pan loaf" },
  {
    file: "panel-functions",
    name: "Functions",
    tab: "Quay pan loaf",
    before: (panel) => panel.getByRole("searchbox").or(panel.getByRole("textbox")).first().fill("water temperature"),
  },
];

export async function run(): Promise<void> {
  const executablePath = findChromium();
  if (executablePath === undefined) throw new Error("The pictures need Chromium or Chrome; none was found.");
  await Promise.all([build(), localPage()]);
  const folder = mkdtempSync(join(tmpdir(), "gramwright-pictures-"));
  const file = join(folder, "workbook.json");
  await (await openDemo(DAY)).save(file);
  const server = await serve({
    root: process.cwd(),
    pageJs: readFileSync(LOCAL_PAGE, "utf8"),
    keeper: openKeeper(file, () => {}),
  });
  const browser = await chromium.launch({ executablePath, args: QUIET });
  try {
    const page = await (await browser.newContext({ viewport: SIZE })).newPage();
    await page.goto(server.address);
    await page.waitForSelector(".o-grid canvas");
    await page.waitForFunction(() => /\S/.test(document.getElementById("status")?.textContent ?? ""));
    for (const sheet of SHEETS) {
      await choose(page, sheet.tab);
      await take(page, sheet.file);
    }
    for (const panel of PANELS) {
      await choose(page, panel.tab);
      const frame = page.frameLocator(SIDEBAR);
      await frame.getByRole("navigation").getByRole("button", { name: panel.name, exact: true }).click();
      await panel.before?.(frame);
      await take(page, panel.file, page.locator(SIDEBAR));
    }
  } finally {
    await browser.close();
    await server.close();
    rmSync(folder, { recursive: true, force: true });
  }
  console.log(`Took ${SHEETS.length + PANELS.length} pictures into ${FOLDER}. Look at them before you publish them.`);
}

/** Puts a sheet in front by the list of all sheets, wherever its tab is. */
async function choose(page: Page, tab: string): Promise<void> {
  await page.locator(".o-list-sheets").click();
  await page.locator(".o-menu-item", { hasText: tab }).first().click();
}

async function take(page: Page, file: string, part?: Locator): Promise<void> {
  // Everything asked for was answered, and drawn.
  await page.waitForLoadState("networkidle");
  await page.waitForTimeout(1500);
  await (part ?? page).screenshot({ path: join(FOLDER, `${file}.png`) });
}
