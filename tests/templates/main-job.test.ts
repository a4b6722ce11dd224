// The main job as a person does it: the page of `npm start`, the bench beside the grid, the saved .xlsx.
import exceljs from "exceljs";
import type { FrameLocator, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { a1 } from "../../shared/sheet/a1.ts";
import { layOut } from "../../shared/sheet/layout.ts";
import type { Options } from "../../shared/sheet/model.ts";
import { DEMO_FRONT } from "../../templates/demo/shop.ts";
import { panLoaf } from "../../templates/pan-loaf.ts";
import { METRIC_UNITS } from "../kit/units.ts";
import { skipWithoutChromium } from "../sidebar/browser.ts";
import { bytesOf, drawn, type LocalPage, oneCellKept, openLocalPage } from "../workbook/local-page.ts";
import { sameAsRead } from "../workbook/office-reads.ts";
import { asOfficeReads, hasOffice } from "../workbook/support.ts";

const WITHOUT = skipWithoutChromium("the main job in the page");

let local: LocalPage;
let page: Page;
let bench: FrameLocator;

const field = (label: string) => bench.getByLabel(label, { exact: true });
const put = async (label: string, text: string) => {
  await field(label).fill(text);
};

async function handOut(): Promise<void> {
  await put("Name of the formula", "Hand-out");
  for (let row = 6; row > 4; row--) await bench.getByRole("button", { name: `Take out ingredient ${row}` }).click();
  const rows = [
    ["Flour", "flour", "100"],
    ["Water", "water", "67"],
    ["Salt", "salt", "2"],
    ["Yeast", "yeast", "1"],
  ];
  for (const [index, [name = "", kind = "", percent = ""]] of rows.entries()) {
    await put(`Name, ingredient ${index + 1}`, name);
    await put(`Type, ingredient ${index + 1}`, kind);
    await put(`Baker's %, ingredient ${index + 1}`, percent);
  }
}

/** Unfolds what is folded. */
async function unfold(): Promise<void> {
  const folded = bench.locator("details:not([open]) > summary");
  while ((await folded.count()) > 0) await folded.first().click();
}

async function build(name: string): Promise<void> {
  await bench.getByRole("button", { name: "Build the sheet" }).click();
  await bench.getByText(`Built “${name}”`).first().waitFor();
}

/** Chooses from the menu of a row's number, as a person does with the right mouse button. */
async function inRowMenu(row: number, item: string): Promise<void> {
  await local.goTo(`A${row}`);
  const corner = await page.locator(".o-autofill").first().boundingBox();
  if (corner === null) throw new Error(`row ${row} is not in sight`);
  await page.mouse.click(20, corner.y - 4, { button: "right" });
  await page.locator(".o-menu .o-menu-item", { hasText: item }).click();
  await drawn(page);
}

/** The saved .xlsx, as the button gives it. */
async function saved(): Promise<{ book: exceljs.Workbook; bytes: Buffer }> {
  const [download] = await Promise.all([page.waitForEvent("download"), page.click("#save")]);
  const bytes = await bytesOf(download);
  const book = new exceljs.Workbook();
  await book.xlsx.load(bytes as unknown as ArrayBuffer);
  return { book, bytes };
}

const at = (options: Options, name: string, row = 0) => {
  const zone = layOut(panLoaf, options).names.get(name);
  if (zone === undefined) throw new Error(`no cell is called ${name}`);
  return a1({ row: zone.row + row, column: zone.column });
};

function numberIn(book: exceljs.Workbook, sheet: string, address: string): number {
  const cell = book.getWorksheet(sheet)?.getCell(address);
  const value = cell?.value as { result?: unknown } | number | null | undefined;
  const plain = typeof value === "object" && value !== null ? value.result : value;
  expect(typeof plain, `${sheet} ${address}: ${JSON.stringify(value)}`).toBe("number");
  return plain as number;
}

const PIECES: Options = { ...METRIC_UNITS, parts: ["steps"] };
const TINS: Options = { weight: "g", temperature: "C", length: "in", parts: ["tin", "steps"] };

test.skipIf(WITHOUT)("npm start opens the demo shop, built by the page, with the pan loaf in front", async () => {
  const shop = await openLocalPage();
  expect(await shop.page.textContent("#status")).toMatch(/^(?:Built|Enter a number)/);
  const names = await shop.page.locator(".o-all-sheets .o-sheet-name").allTextContents();
  expect(names).toEqual(expect.arrayContaining([DEMO_FRONT, "Ingredients", "Costs and prices", "Mix log"]));
  await shop.page.frameLocator("#sidebar-frame").getByRole("button", { name: "Build the sheet" }).waitFor();
  await shop.close();
});

describe.skipIf(WITHOUT)("the main job", () => {
  let file: Awaited<ReturnType<typeof saved>> | undefined;
  beforeAll(async () => {
    local = await openLocalPage({ keeper: await oneCellKept() });
    page = local.page;
    bench = page.frameLocator("#sidebar-frame");
  });
  afterAll(() => local?.close());

  test("what is missing is said in the bench, and nothing is built", async () => {
    const names = () => page.locator(".o-all-sheets .o-sheet-name").allTextContents();
    const before = await names();
    expect(before).toHaveLength(1);
    await bench.getByRole("button", { name: "Build the sheet" }).click();
    await bench
      .getByText(/Enter how many pieces/)
      .first()
      .waitFor();
    expect(await names()).toEqual(before);
  });

  test("73 pieces of 390 g from 100/67/2/1: 16 747, 11 220.5, 334.9 and 167.5 g — a school's hand-out", async () => {
    await unfold();
    await handOut();
    await put("Pieces, size 1", "73");
    await put("Baked g, size 1", "390");
    await field("Shape").selectOption({ label: "no tin" });
    await field("Include in the sheet").uncheck();
    await build("Hand-out");
    const { book } = await saved();
    const printed = [16747.058, 11220.528, 334.941, 167.47];
    expect(numberIn(book, "Hand-out", at(PIECES, "dough"))).toBeCloseTo(28470, 6);
    for (const [row, grams] of printed.entries()) {
      expect(Math.abs(numberIn(book, "Hand-out", at(PIECES, "grams", row + 1)) - grams)).toBeLessThan(2e-3);
    }
  });

  test("the water's percentage changed in the grid: every number follows", async () => {
    await local.type(at(PIECES, "percent", 2), "70%");
    const { book } = await saved();
    expect(numberIn(book, "Hand-out", at(PIECES, "grams", 1))).toBeCloseTo(28470 / 1.73, 6);
    expect(numberIn(book, "Hand-out", at(PIECES, "grams", 2))).toBeCloseTo((28470 / 1.73) * 0.7, 6);
    expect(numberIn(book, "Hand-out", at(PIECES, "hydration"))).toBeCloseTo(0.7, 9);
  });

  test("rows put in first, in the middle and last, and the first taken out, by mouse: every total follows", async () => {
    const rowOf = (row: number) => Number(at(PIECES, "percent", row).replace(/\D/g, ""));
    const fill = async (line: number, name: string, percent: string) => {
      await local.type(`A${line}`, name);
      await local.type(`B${line}`, "fat");
      await local.type(`C${line}`, percent);
    };
    const total = async () => numberIn((await saved()).book, "Hand-out", at(PIECES, "per_percent"));
    await inRowMenu(rowOf(1), "Insert row above");
    await fill(rowOf(1), "Oil", "3%");
    await inRowMenu(rowOf(4), "Insert row above");
    await fill(rowOf(4), "Butter", "2%");
    // Below the last of what are now 10 rows stands the total.
    await inRowMenu(rowOf(11), "Insert row above");
    await fill(rowOf(11), "Lard", "1%");
    expect(await total()).toBeCloseTo(28470 / 1.79, 6);
    await inRowMenu(rowOf(1), "Delete row");
    expect(await total()).toBeCloseTo(28470 / 1.76, 6);
  });

  test("then by tins: 13 × 4 × 4 inches, lidded white, 3 408 cm³ and about 1 155 g each — yumarama.com/3919", async () => {
    await field("Tins").first().check();
    await field("Lengths").selectOption("in");
    await field("Shape").selectOption("box");
    await put("Length in", "13x4x4");
    await field("Width in").focus();
    await field("Kind of dough").selectOption("lidded white");
    await bench.getByRole("textbox", { name: "Tins", exact: true }).fill("12");
    const name = "Hand-out in tins";
    await put("Name of the formula", name);
    await build(name);
    file = await saved();
    const { book } = file;
    expect(numberIn(book, name, at(TINS, "tin_capacity"))).toBeCloseTo(3408.509, 2);
    expect(Math.abs(numberIn(book, name, at(TINS, "tin_dough")) - 1155)).toBeLessThan(5);
    expect(Math.abs(numberIn(book, name, at(TINS, "dough")) - 12 * 1155)).toBeLessThan(60);
    expect(numberIn(book, "Hand-out", at(PIECES, "hydration"))).toBeCloseTo(0.7, 9);
  });

  test.skipIf(!hasOffice)("LibreOffice shows what is in that file", () => {
    if (file === undefined) throw new Error("no file was saved");
    const { Sheet1: first, ...built } = asOfficeReads(file.bytes);
    expect(first).toEqual([["Our bakery"]]);
    expect(Object.keys(built).sort()).toEqual(["Hand-out", "Hand-out in tins"]);
    sameAsRead(file.book, built);
  });
});
