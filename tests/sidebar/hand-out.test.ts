import { mkdirSync } from "node:fs";
import { beforeEach, describe, expect, test } from "vitest";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { METRIC_UNITS } from "../kit/units.ts";
import { buildSheet, HANDOUT, workbook } from "../templates/sheet-support.ts";
import { skipWithoutChromium } from "./browser.ts";
import { benchPages, type Way } from "./page.ts";
import { templateOf } from "./samples.ts";

const skip = skipWithoutChromium("handing out from the sidebar in a browser");
const PICTURES = process.env.PICTURES;

describe.skipIf(skip)("handing out a staff card", () => {
  let book: WorkbookHost;
  const bench = benchPages((json) => JSON.stringify(book.ask(JSON.parse(json))));
  beforeEach(async () => {
    book = await workbook();
  });

  const open = async (way?: Way) => {
    await bench.open(way);
    await bench.page.getByRole("button", { name: "Staff card", exact: true }).click();
    await bench.wait(100);
  };
  const make = () => bench.page.getByRole("button", { name: "Make the card" });
  const status = () => bench.page.locator(".panel:visible .status").allTextContents();
  const says = (sentence: RegExp) => expect.poll(async () => (await status()).join(" ").trim()).toMatch(sentence);
  const looked = async (state: string) => {
    await bench.checked(state);
    if (PICTURES === undefined) return;
    mkdirSync(PICTURES, { recursive: true });
    await bench.page.screenshot({ path: `${PICTURES}/hand-out-${state}.png`, fullPage: true });
  };
  const cards = async () => (await bench.sent()).filter(({ ask }) => ask === "make");

  test("an empty workbook says what to do, and looks again", async () => {
    await open();
    await says(/no formula sheet in this workbook yet\. Build one under New formula/);
    await looked("empty");
    await buildSheet(HANDOUT, { book });
    await bench.page.getByRole("button", { name: "Refresh" }).click();
    await make().waitFor();
    expect(await bench.field("Formula sheet").inputValue()).toBe("Hand-out");
  });

  test("the sheet in front is chosen, and a card for 60 pieces is made once", async () => {
    await buildSheet({ ...HANDOUT, title: "Other" }, { book });
    await buildSheet(HANDOUT, { book });
    await open();
    await make().waitFor();
    expect(await bench.field("Formula sheet").inputValue()).toBe("Hand-out");
    expect((await bench.page.locator(".figures:visible").textContent())?.replace(/\s/g, " ")).toContain("Pieces 73");
    await bench.field("Made for").selectOption("pieces");
    await make().click();
    expect(await bench.faults()).toEqual(["Enter how many pieces you want."]);
    expect(await bench.focused()).toBe("Pieces wanted");
    await looked("error");
    await bench.page.clock.runFor(1000);
    await bench.field("Pieces wanted").fill("60");
    await bench.page.getByLabel("the amount (recalculating card)").check();
    await make().dblclick();
    await says(/^Made “Hand-out – card”, a sheet of its own\./);
    expect(await cards()).toMatchObject([{ title: "Hand-out – card" }]);
    expect(book.sheetNames()).toContain("Hand-out – card");
    expect(book.values("Hand-out – card", "C4:C4")).toEqual([[60]]);
    await looked("filled");
  });

  test("by the ingredient that is short, in kilograms", async () => {
    await buildSheet(HANDOUT, { book });
    await open();
    await make().waitFor();
    await bench.field("Made for").selectOption("ingredient");
    await bench.field("Ingredient").selectOption("Salt");
    await bench.field("Available g").fill("0,2 kg");
    await make().click();
    await says(/^Made/);
    expect(await cards()).toHaveLength(1);
    // 200 g of salt at 2 % of the flour are 10 000 g of flour.
    const written = book.values("Hand-out – card", book.usedRange("Hand-out – card"));
    expect(written.find((row) => row.includes("Flour"))).toContain(10000);
  });

  test("a sheet full of errors says so, where the first is and what to do", async () => {
    const { sheet, type, at } = await buildSheet(HANDOUT, {
      book,
      model: templateOf("cookie"),
      options: { ...METRIC_UNITS, parts: [] },
    });
    const figures = () => bench.page.locator(".figures:visible").textContent();
    const look = async () => {
      await bench.page.getByRole("button", { name: "Refresh" }).click();
      await bench.wait(100);
    };
    book.paste(sheet, at("percent", 2), "=1/0");
    await open();
    await make().waitFor();
    expect(await figures()).toBe(`"Hand-out" has no weights yet. Water ${at("percent", 2)}: an error.`);
    await looked("errors");
    type("percent", "2%", 2);
    book.type(sheet, at("typed"), "=BAKE_NOSUCH(1)");
    await look();
    await expect
      .poll(figures)
      .toMatch(
        /^"Hand-out" shows an error in [A-Z]+\d+, so its weights are not known; point at the red cell: it says what to enter\. #NAME\? is not available in this file: open Gramwright from the file's own menu, then reload\.$/,
      );
    await bench.page.getByRole("button", { name: "Plan", exact: true }).click();
    await bench.wait(100);
    await says(/“Hand-out” is left out\. "Hand-out" shows an error in/);
  });

  test("a sheet that was deleted meanwhile is told, with a way on", async () => {
    const { sheet } = await buildSheet(HANDOUT, { book });
    await open();
    await make().waitFor();
    book.engine.run("DELETE_SHEET", { sheetId: book.session.get("getActiveSheetId"), sheetName: sheet });
    await make().click();
    await says(/no sheet "Hand-out" any more; it was renamed or deleted/);
  });

  test.each<[Way, number, RegExp]>([
    ["slow", 2000, /^Making the card of “Hand-out” …$/],
    ["fails", 100, /could not answer \(Service unavailable\)/],
    ["refuses", 100, /^Another build is still running/],
    ["silent", 91_000, /^No answer for 90 seconds\. The card may still be on its way/],
  ])("a server that is %s", async (way, ms, sentence) => {
    await buildSheet(HANDOUT, { book });
    await open();
    await make().waitFor();
    await bench.turn(way);
    await make().click();
    await bench.wait(ms);
    await says(sentence);
    if (way === "slow") {
      expect(await make().getAttribute("aria-disabled")).toBe("true");
      await looked("busy");
    }
  });
});
