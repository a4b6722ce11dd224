// The list of all formulas comes by itself with the sixth formula that the sidebar builds, and from a button of the Day panel.
import { beforeEach, describe, expect, test } from "vitest";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { buildSheet, HANDOUT, workbook } from "../templates/sheet-support.ts";
import { skipWithoutChromium } from "./browser.ts";
import { benchPages } from "./page.ts";

const skip = skipWithoutChromium("the list of all formulas in a browser");

describe.skipIf(skip)("the list of all formulas", () => {
  let book: WorkbookHost;
  const bench = benchPages((json) => JSON.stringify(book.ask(JSON.parse(json))));
  beforeEach(async () => {
    book = await workbook();
  });
  const front = () => book.session.get("getSheetName", book.session.get("getActiveSheetId"));
  const says = (panel: string, sentence: RegExp) =>
    expect
      .poll(async () => {
        await bench.wait(50);
        return (await bench.page.locator(`${panel} .status`).allTextContents()).join(" ").trim();
      })
      .toMatch(sentence);

  test("is built with the sixth, after it is said that that is there, and the sheet that was asked for stays in front", async () => {
    for (let at = 1; at <= 5; at++) await buildSheet({ ...HANDOUT, title: `Loaf ${at}` }, { book });
    await bench.open();
    await bench.fill();
    await bench.build().click();
    await says(
      ".panel:visible",
      /^Built “Quay pan loaf”\..* There are six formulas or more now: the sheet “Formula list” lists them, and Gramwright keeps it\.$/,
    );
    expect(book.sheetNames()).toContain("Formula list");
    expect(front()).toBe("Quay pan loaf");
    const listed = book.shownTexts("Formula list", "A7:A12").flat();
    expect(listed).toEqual(["Loaf 1", "Loaf 2", "Loaf 3", "Loaf 4", "Loaf 5", "Quay pan loaf"]);
  });

  test("is built from the Day panel for as few as there are", async () => {
    await buildSheet(HANDOUT, { book });
    await bench.open();
    await bench.page.getByRole("button", { name: "Plan", exact: true }).click();
    await bench.page.getByRole("button", { name: "List all formulas" }).click();
    await says(".panel:visible", /Built “Formula list”\./);
    expect(book.shownTexts("Formula list", "A7:D7")).toEqual([["Hand-out", "28,470.0", "g", "73"]]);
    expect(front()).toBe("Hand-out");
  });
});
