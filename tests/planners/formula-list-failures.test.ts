// A list of formula sheets and its rows are whole or not there when the spreadsheet's service fails. `npm test` takes every ninth
// call, a long run all.
import { describe, expect, test } from "vitest";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { IS_LONG } from "../kit/scale.ts";
import { METRIC_UNITS } from "../kit/units.ts";
import { HANDOUT, workbook } from "../templates/sheet-support.ts";

const LIST = "Formula list";
const rowsOf = (book: WorkbookHost) => book.shownTexts(LIST, "A7:F20").filter((row) => row[0] !== "");

const STEP = IS_LONG ? 1 : 9;

describe("where a call of the service fails", () => {
  /** Asks with each call failing in turn, and gives how many there are, up to a step more. */
  function inTurn(book: WorkbookHost, asked: object, isAsBefore: () => void): number {
    for (let fails = 1; fails < 200; fails += STEP) {
      book.failAt(fails);
      const reply = book.ask(asked);
      book.failAt(undefined);
      // A row that could not be added is said, and the next try has the same name free.
      if (reply.ok && (reply.answer as { note?: string }).note?.includes("no row in the formula list")) {
        book.deleteSheet((reply.answer as { sheet: string }).sheet);
        isAsBefore();
        continue;
      }
      if (reply.ok) return fails - 1;
      isAsBefore();
    }
    throw new Error("it never ends");
  }

  test("a list is there or not, a formula sheet has its row, is not there, or says that the row is missing", async () => {
    const book = await workbook();
    const loaf = (at: number) => ({
      ask: "build",
      template: "pan-loaf",
      options: { ...METRIC_UNITS, parts: ["water"] },
      values: { ...HANDOUT, title: `Loaf ${at}` },
    });
    for (let at = 1; at <= 2; at++) book.answer(loaf(at));
    const names = () => [...book.sheetNames()].sort();
    const before = names();
    expect(inTurn(book, { ask: "list" }, () => expect(names()).toEqual(before))).toBeGreaterThan(20);
    expect(names()).toEqual([...before, LIST].sort());
    const listed = book.shownTexts(LIST, book.usedRange(LIST));
    const isAsBefore = () => {
      expect(names()).toEqual([...before, LIST].sort());
      expect(book.shownTexts(LIST, book.usedRange(LIST))).toEqual(listed);
    };
    expect(inTurn(book, loaf(3), isAsBefore)).toBeGreaterThan(25);
    expect(rowsOf(book).map(([title]) => title)).toEqual(["Loaf 1", "Loaf 2", "Loaf 3"]);
  });
});
