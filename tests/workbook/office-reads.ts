// What is in a saved .xlsx beside what LibreOffice calculates from it.
import type exceljs from "exceljs";
import { expect } from "vitest";
import { a1 } from "../../shared/sheet/a1.ts";
import { type asOfficeReads, asValue } from "./support.ts";

/** Sheets of the demo shop that say what they say in words. */
const IN_WORDS = /^(?:Allergen table|Label text)$/;

/** Every number, and every word of the sheets in words, is what LibreOffice calculates from the same file. */
export function sameAsRead(book: exceljs.Workbook, read: ReturnType<typeof asOfficeReads>): void {
  for (const [sheet, cells] of Object.entries(read)) {
    const there = book.getWorksheet(sheet);
    let compared = 0;
    cells.forEach((row, down) => {
      row.forEach((text, across) => {
        const value = there?.getCell(down + 1, across + 1).value as { result?: unknown } | number | null;
        const plain = typeof value === "object" && value !== null ? value.result : value;
        if (IN_WORDS.test(sheet) && typeof plain === "string" && plain !== "") {
          expect(text, `${sheet} ${a1({ row: down, column: across })}`).toBe(plain);
          compared += 1;
        }
        if (typeof plain !== "number") return;
        const number = asValue(text);
        if (typeof number !== "number") return;
        expect(Math.abs(number - plain), `${sheet} ${a1({ row: down, column: across })}: ${text}`).toBeLessThanOrEqual(
          Math.abs(plain) * 1e-6 + 0.006,
        );
        compared += 1;
      });
    });
    // A staff card has a weight for each ingredient and little more, and orders and prices are few.
    expect(compared, sheet).toBeGreaterThan(/card$|orders$|^Price lists$/.test(sheet) ? 10 : 20);
  }
}
