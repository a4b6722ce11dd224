// The panel that checks the sheet in front, in a browser.
import { mkdirSync } from "node:fs";
import { beforeEach, describe, expect, test } from "vitest";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { METRIC_UNITS } from "../kit/units.ts";
import { buildSheet, HANDOUT, workbook } from "../templates/sheet-support.ts";
import { skipWithoutChromium } from "./browser.ts";
import { benchPages, type Way } from "./page.ts";
import { templateOf } from "./samples.ts";

const PICTURES = process.env.PICTURES;

describe.skipIf(skipWithoutChromium("checking from the sidebar in a browser"))("the panel", () => {
  let book: WorkbookHost;
  const bench = benchPages((json) => JSON.stringify(book.ask(JSON.parse(json))));
  beforeEach(async () => {
    book = await workbook();
  });
  const open = async () => {
    await bench.open();
    await bench.page.getByRole("button", { name: "Check", exact: true }).click();
    await bench.wait(100);
  };
  const says = (sentence: RegExp) =>
    expect
      .poll(async () => (await bench.page.locator(".panel:visible .status").first().textContent())?.trim())
      .toMatch(sentence);
  const looked = async (state: string) => {
    await bench.checked(state);
    if (PICTURES === undefined) return;
    mkdirSync(PICTURES, { recursive: true });
    await bench.page.screenshot({ path: `${PICTURES}/check-${state}.png`, fullPage: true });
  };

  test("reads what is in front, follows the style, and goes to the cell", async () => {
    const { at } = await buildSheet({ ...HANDOUT, percent: [1, 0.4, 0.05, 0.01] }, { book });
    await open();
    await says(/^“Hand-out”: .* for pan bread\.$/);
    await looked("filled");
    await bench.field("Check against").selectOption("bagel");
    await bench.wait(100);
    await says(/for bagel\.$/);
    await expect.poll(() => bench.focused()).toBe("Check against");
    await bench.page.getByRole("button", { name: `Salt, ${at("percent", 3)}` }).click();
    await expect
      .poll(async () => (await bench.sent()).filter(({ ask }) => ask === "goto"))
      .toMatchObject([{ sheet: "Hand-out", cell: at("percent", 3) }]);
    await bench.wait(1000);
    const selected = () => {
      const { left, top } = book.session.get<{ left: number; top: number }>("getSelectedZone");
      return `${"ABCDEFGH"[left]}${top + 1}`;
    };
    await expect.poll(selected).toBe(at("percent", 3));
  });

  test("leads with the worst, and looks so beside a sheet at 1280 × 720", async () => {
    const percent = [1, 0.63, 0.05, 0.3];
    const ingredient = ["Flour", "Water", "Salt", "Butter"];
    const kind = ["flour", "water", "salt", "fat"];
    const { at } = await buildSheet({ ...HANDOUT, ingredient, kind, percent }, { book });
    await bench.page.setViewportSize({ width: 300, height: 720 });
    await open();
    await says(/^“Hand-out”: 3 notes, the worst first, for pan bread\.$/);
    const worst = bench.page.locator(".worst");
    expect(await worst.textContent()).toMatch(/^Yeast, [A-Z]+\d+Yeast is missing, below the usual range for pan bread/);
    const box = await worst.boundingBox();
    // In sight without scrolling, and above all figures and pictures.
    expect((box?.y ?? 720) + (box?.height ?? 0)).toBeLessThan(400);
    const heads = await bench.page.locator(".panel:visible h2").allTextContents();
    expect(heads.slice(0, 2)).toEqual(["Look at this first", "Notes by ingredient"]);
    expect(heads.slice(-2)).toEqual(["Key figures", "Add to this sheet"]);
    await looked("worst");
    await bench.page.getByRole("button", { name: `Salt, ${at("percent", 3)}` }).click();
    await expect
      .poll(async () => (await bench.sent()).filter(({ ask }) => ask === "goto"))
      .toMatchObject([{ sheet: "Hand-out", cell: at("percent", 3) }]);
  });

  test("takes weights that stand over the sheet's own, and says of each cell what came of it", async () => {
    const { at, sheet } = await buildSheet({ ...HANDOUT, by: "flour", amount: 1000 }, { book });
    // As on a phone, or before the menu was used: no trigger runs.
    book.session.isEnabled = false;
    book.type(sheet, at("weight", 2), "700");
    book.type(sheet, at("weight", 4), "much");
    book.session.isEnabled = true;
    expect(String(book.values(sheet, at("check"))[0]?.[0])).toMatch(/clear what is typed over/);
    await open();
    await says(/^“Hand-out”: /);
    await bench.page.getByText(`weights were typed in ${at("weight", 2)}, ${at("weight", 4)}`).waitFor();
    await looked("typed");
    await bench.page.getByRole("button", { name: "Take the typed weights" }).click();
    await bench.wait(1000);
    await bench.page.getByText("Took 1 weight: the percentages follow.").waitFor();
    await bench.page
      .getByText(`${at("weight", 4)}: Cleared “much”. Enter a weight in g, as a number from 0.`)
      .waitFor();
    await looked("taken");
    expect(book.values(sheet, at("percent", 2))).toEqual([[0.7]]);
    expect(book.values(sheet, at("check"))).toEqual([[""]]);
    await bench.page.getByRole("button", { name: "Check this sheet" }).click();
    await bench.wait(1000);
    await expect.poll(() => bench.page.getByRole("heading", { name: "Typed weights" }).count()).toBe(0);
  });

  test("takes a block out of the sheet once it was pressed twice, and adds it", async () => {
    const values = { ...HANDOUT, tap_temp: 14, room_temp: 21 };
    await buildSheet(values, { book, options: { ...METRIC_UNITS, parts: ["steps", "water"] } });
    await open();
    await says(/^“Hand-out”: /);
    await bench.page.getByText("Add to this sheet").click();
    const button = (name: string) => bench.page.getByRole("button", { name, exact: true });
    const shows = (text: string) => book.values("Hand-out", "A1:L50").flat().includes(text);
    expect(await button("Add label and nutrition").count()).toBe(1);
    await looked("parts");
    await button("Take out dough temperature").click();
    await bench.page.getByText("2 cells that you entered go with it. Press the button again to take it out.").waitFor();
    await looked("take-out");
    expect(shows("Tap water (°C)")).toBe(true);
    await button("Take out dough temperature").click();
    await bench.wait(1000);
    await button("Add dough temperature").waitFor();
    expect(shows("Tap water (°C)")).toBe(false);
    expect(book.sheetNames()).toContain("Hand-out");
    // Nothing goes with it, so once is enough.
    await button("Add dough temperature").click();
    await bench.wait(1000);
    await button("Take out dough temperature").waitFor();
    expect(shows("Tap water (°C)")).toBe(true);
    await expect
      .poll(() => bench.page.evaluate(() => document.activeElement?.textContent))
      .toBe("Take out dough temperature");
  });

  test("draws the dough, the tin and the steps, each told in words too", async () => {
    const model = templateOf("pan-loaf");
    await buildSheet(model.sample, {
      book,
      model,
      options: { ...METRIC_UNITS, parts: model.parts },
    });
    await open();
    await says(/^“Quay pan loaf”/);
    const picture = (says: RegExp) => bench.page.getByRole("img", { name: says });
    await picture(/^Of the whole dough: flour 58\.1 %/).waitFor();
    await picture(/^Side view of the tin\. Fill 0\.44 g/).waitFor();
    await picture(/^Steps by time\. 01:55 Mix, 15 min; 02:10 Bulk fermentation, 1 h;/).waitFor();
    await looked("pictures");
  });

  test("a sheet that is none of ours is told, and read again once another is in front", async () => {
    await open();
    await says(/is no formula sheet of Gramwright/);
    await looked("empty");
    await buildSheet(HANDOUT, { book });
    await bench.wait(1000);
    await bench.page.getByRole("button", { name: "Check this sheet" }).click();
    await says(/^“Hand-out”/);
    // What was read of one sheet does not stand below the sentence about another.
    book.answer({ ask: "goto", sheet: "Sheet1", cell: "A1" });
    await bench.wait(1000);
    await bench.page.getByRole("button", { name: "Check this sheet" }).click();
    await says(/is no formula sheet of Gramwright/);
    await expect.poll(() => bench.page.getByRole("heading", { name: "Key figures" }).count()).toBe(0);
  });

  test.each<[Way, number, RegExp]>([
    ["slow", 2000, /^Reading the sheet …$/],
    ["fails", 100, /could not answer \(Service unavailable\)/],
    ["silent", 91_000, /^No answer for 90 seconds\. Wait until the sheet is calculated/],
  ])("a server that is %s", async (way, ms, sentence) => {
    await buildSheet(HANDOUT, { book });
    await open();
    await says(/^“/);
    await bench.turn(way);
    await bench.wait(1000);
    await bench.page.getByRole("button", { name: "Check this sheet" }).click();
    await bench.wait(ms);
    await says(sentence);
    if (way === "slow") await looked("busy");
  });
});
