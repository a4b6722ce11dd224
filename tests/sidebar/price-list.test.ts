// A price list as a person reads it in: a file or copied cells, questions, and the prices on the sheet.
import { mkdirSync } from "node:fs";
import exceljs from "exceljs";
import { beforeEach, describe, expect, test } from "vitest";
import { type Book, openBook, type Sheet } from "../../src/workbook/scripted.ts";
import { skipWithoutChromium } from "./browser.ts";
import { benchPages } from "./page.ts";

const PICTURES = process.env.PICTURES;

describe.skipIf(skipWithoutChromium("a price list in a browser"))("a price list", () => {
  let book: Book;
  let sheet: Sheet;
  const bench = benchPages((json) => JSON.stringify(book.ask(JSON.parse(json))));
  beforeEach(async () => {
    book = await openBook();
    sheet = book.build("larder", {
      ingredient: ["Strong white flour", "Sea salt", "Butter", "Sugar"],
      price: [21.25, 9, 86, 24],
      pack: ["25 kg", "10 kg", "10 kg", "25 kg"],
    });
    await bench.open();
    await bench.page.clock.resume();
    await bench.page.getByRole("button", { name: "Plan" }).click();
  });
  const press = (name: string) => bench.page.getByRole("button", { name, exact: true }).click();
  const seen = async (state: string) => {
    await bench.checked(state);
    if (PICTURES === undefined) return;
    mkdirSync(PICTURES, { recursive: true });
    const part = bench.page.locator("section", { has: bench.page.getByRole("heading", { name: "Price list" }) }).last();
    await part.screenshot({ path: `${PICTURES}/prices-${state.replace(/ /g, "-")}.png` });
  };

  test("copied cells: what is clear is taken, what is not is asked, and nothing is written before", async () => {
    const { page } = bench;
    await press("Read the price list");
    await page.getByText("Choose a file, or paste the list’s cells.").waitFor();
    await page
      .getByLabel("or pasted cells")
      .fill(
        "Article\tPack\tPrice\nStrong white flour 25kg\t25KG\t22.10\nSalt, fine\t10 kg\t9.50\nButter\t10 kg\t1,250\nSugar\t25 kg\t60\nNapkins\t500\t4",
      );
    await press("Read the price list");
    await page.getByRole("heading", { name: "3 lines to answer" }).waitFor();
    await seen("asked");
    expect(await page.getByRole("button", { name: "Take these prices" }).isVisible()).toBe(false);
    await page.getByLabel("Ingredient of row 3").selectOption("Sea salt");
    await page.getByLabel("Price of row 4").fill("88");
    await page.getByLabel("Row 5", { exact: true }).selectOption("Leave it out");
    await press("Use these answers");
    await page.getByRole("heading", { name: "3 prices to take" }).waitFor();
    await page.getByText("Not on your sheet: 1").waitFor();
    await seen("answered");
    expect(sheet.value("price", 1)).toBe(21.25);
    await press("Take these prices");
    await page
      .getByText(/3 prices stand on “Ingredients” now\. Changed: Strong white flour 21\.25 → 22\.1/)
      .first()
      .waitFor();
    expect([1, 2, 3, 4].map((at) => sheet.value("price", at))).toEqual([22.1, 9.5, 88, 24]);
    expect(sheet.value("also_called", 2)).toBe("Salt, fine");
    await seen("taken");
  });

  test("an .xlsx file whose columns cannot be told: they are chosen", async () => {
    const { page } = bench;
    const file = new exceljs.Workbook();
    file.addWorksheet("Prices").addRows([
      ["Sea salt", "10 kg", 9.4],
      ["Sugar", "25 kg", 25],
    ]);
    const buffer = Buffer.from(await file.xlsx.writeBuffer());
    await page.getByLabel("File (.xlsx or .csv)").setInputFiles({ name: "list.xlsx", mimeType: "", buffer });
    await press("Read the price list");
    await page.getByText("Choose the columns: the list does not tell them by itself.").waitFor();
    await page.getByLabel("Column with the ingredient").selectOption({ index: 1 });
    await page.getByLabel("Column with the price").selectOption({ index: 3 });
    await page.getByLabel("Column with the pack").selectOption({ index: 2 });
    await page.getByLabel("Supplier of this list").fill("Harbour");
    await page.getByRole("heading", { name: "2 prices to take" }).waitFor();
    await press("Take these prices");
    await page
      .getByText(/2 prices stand on “Ingredients” now/)
      .first()
      .waitFor();
    expect([2, 4].map((at) => [sheet.value("price", at), sheet.value("supplier", at)])).toEqual([
      [9.4, "Harbour"],
      [25, "Harbour"],
    ]);
  });
});
