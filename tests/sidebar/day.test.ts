import { mkdirSync } from "node:fs";
import { beforeEach, describe, expect, test } from "vitest";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { larderSheet } from "../../templates/larder-sheet.ts";
import { METRIC_UNITS } from "../kit/units.ts";
import { buildSheet, HANDOUT, workbook } from "../templates/sheet-support.ts";
import { skipWithoutChromium } from "./browser.ts";
import { benchPages, type Way } from "./page.ts";

const PICTURES = process.env.PICTURES;

describe.skipIf(skipWithoutChromium("planning a day from the sidebar in a browser"))("planning a day", () => {
  let book: WorkbookHost;
  const bench = benchPages((json) => JSON.stringify(book.ask(JSON.parse(json))));
  beforeEach(async () => {
    book = await workbook();
  });
  const open = async () => {
    await bench.open();
    await bench.page.getByRole("button", { name: "Plan", exact: true }).click();
    await bench.wait(100);
  };
  const make = () => bench.page.getByRole("button", { name: "Build the production" });
  const says = (sentence: RegExp) =>
    expect
      .poll(async () => (await bench.page.locator(".panel:visible .status").allTextContents()).join(" ").trim())
      .toMatch(sentence);
  const looked = async (state: string) => {
    await bench.checked(state);
    if (PICTURES === undefined) return;
    mkdirSync(PICTURES, { recursive: true });
    await bench.page.screenshot({ path: `${PICTURES}/day-${state}.png`, fullPage: true });
  };

  test("prices are compared when the sidebar opens, and again when the panel is refreshed", async () => {
    const larder = await buildSheet(
      { ingredient: ["Flour", "Butter"], price: [20, 80], pack: ["25 kg", "10 kg"] },
      { book, model: larderSheet, options: { ...METRIC_UNITS, parts: [] } },
    );
    // The page asks by its own clock, once the add-on has answered its first question.
    const later = async <T>(read: () => T) => {
      await bench.wait(50);
      return read();
    };
    const tells = (sentence: string) =>
      expect.poll(() => later(() => bench.page.getByText(sentence).count())).toBeGreaterThan(0);
    const kept = (row: number) => ["price_kept", "price_before"].map((name) => larder.value(name, row));
    await open();
    await expect.poll(() => later(() => kept(2))).toEqual([80, ""]);
    larder.type("price", "86", 2);
    await open();
    await tells("Changed since they were last compared: Butter 80 → 86.");
    expect(kept(2)).toEqual([86, 80]);
    expect(larder.value("price_seen", 2)).toMatch(/^\d{4}-\d\d-\d\d$/);
    larder.type("price", "21", 1);
    await bench.page.getByRole("button", { name: "Refresh" }).click();
    await bench.wait(100);
    await tells("Changed since they were last compared: Flour 20 → 21.");
    expect(kept(1)).toEqual([21, 20]);
  });

  test("pieces of two products become one production, built once, and its shift is weighed", async () => {
    await buildSheet(HANDOUT, { book });
    await buildSheet({ ...HANDOUT, title: "Rolls" }, { book });
    await open();
    await make().waitFor();
    await make().click();
    expect(await bench.faults()).toEqual(["Choose the day of these orders."]);
    await looked("error");
    await bench.page.clock.runFor(1000);
    await bench.field("Day").fill("2026-01-31");
    await bench.field("Hand-out").fill("100");
    await bench.field("Rolls").fill("2,5e");
    await make().click();
    expect((await bench.faults()).join(" ")).toMatch(/^The number of pieces is "2,5e"/);
    await bench.page.clock.runFor(1000);
    await bench.field("Rolls").fill("40 pieces");
    await make().dblclick();
    const title = "Production Sat 31 Jan";
    await says(/^Built “Production Sat 31 Jan”\. Change orders there; mixes and weights follow\./);
    expect((await bench.sent()).filter(({ ask }) => ask === "make")).toMatchObject([{ title }]);
    const made = book
      .shownTexts(title, book.usedRange(title))
      .filter((row) => ["Hand-out", "Rolls"].includes(row[0] ?? ""));
    expect(made.map((row) => row[2]).filter((text) => text !== "" && text !== "loaf")).toEqual([
      "100",
      "40",
      "100",
      "40",
      "1 × 39 kg",
      "1 × 15.6 kg",
    ]);
    await looked("filled");
    await bench.page.clock.runFor(1000);
    expect(await bench.page.getByLabel("From", { exact: true }).inputValue()).toBe("2026-01-30T12:00");
    await bench.page.getByLabel("To", { exact: true }).fill("2026-01-30T11:00");
    await bench.page.getByRole("button", { name: "Build the weigh-up" }).click();
    expect(await bench.faults()).toEqual(["The shift ends before it begins. Enter a later end."]);
    await bench.page.getByLabel("To", { exact: true }).fill("2026-01-31T12:00");
    await bench.page.clock.runFor(1000);
    await bench.page.getByRole("button", { name: "Build the weigh-up" }).click();
    const weighUp = "Weigh-up Fri 30 Jan 12.00";
    await says(new RegExp(`Built “${weighUp}”\\. No times are known for “Hand-out”, “Rolls”`));
    // A lot that was entered there is in a log, which is built for it, before the weigh-up is built again.
    const flour = book.shownTexts(weighUp, book.usedRange(weighUp)).findIndex((row) => row[1] === "Flour");
    book.type(weighUp, `E${flour + 1}`, "W-117");
    await bench.page.clock.runFor(1000);
    await bench.page.getByRole("button", { name: "Build the weigh-up" }).click();
    await says(/Kept one row in “Lot log”: lots entered on weigh-ups\. Built “Weigh-up Fri 30 Jan 12\.00”/);
    expect(book.shownTexts(weighUp, `E${flour + 1}:E${flour + 1}`)).toEqual([["W-117"]]);
    // On paper alone: a page for each dough, with its weights and the line about allergens.
    await bench.page.clock.runFor(1000);
    await bench.page.evaluate(() => {
      window.print = () => document.body.setAttribute("data-printed", "yes");
    });
    await bench.page.getByRole("button", { name: "Print the night" }).click();
    await says(/2 cards, one a page\./);
    expect(await bench.page.locator("body").getAttribute("data-printed")).toBe("yes");
    const pages = bench.page.locator(".printed-pages section");
    expect(await pages.count()).toBe(2);
    // 39 000 ÷ 1.7 of flour in one mix of at most 40 kg, on the 5 g scale.
    const text = (await pages.nth(0).textContent()) ?? "";
    expect(text).toContain("HO-260131");
    expect(text).toContain("22940");
    expect(text).toContain("Allergens: not worked out.");
    expect(await pages.nth(0).isVisible()).toBe(false);
    await bench.page.emulateMedia({ media: "print" });
    expect(await pages.nth(0).isVisible()).toBe(true);
    expect(await make().isVisible()).toBe(false);
    await bench.page.emulateMedia({ media: "screen" });
  });

  test("orders of several days and customers, and from a table, are one sheet; one that is not asked for says why", async () => {
    await buildSheet(HANDOUT, { book });
    await buildSheet({ ...HANDOUT, title: "Rolls" }, { book });
    await buildSheet({ ...HANDOUT, title: "Custard", percent: [] }, { book });
    await open();
    const on = (at: number) => bench.page.getByRole("group", { name: `Orders ${at}` });
    await on(1).getByLabel("Hand-out").fill("100");
    const another = bench.page.getByRole("button", { name: "Add another day or customer" });
    await another.click();
    await on(2).getByLabel("Rolls").fill("40");
    await on(2).getByLabel("Customer").fill("Café Mole");
    await bench.page.clock.runFor(1000);
    await make().click();
    expect(await bench.faults()).toEqual(["Choose the day of these orders.", "Choose the day of these orders."]);
    expect(await bench.focused()).toBe("Day");
    await on(1).getByLabel("Day").fill("2026-12-31");
    await on(2).getByLabel("Day").fill("2027-01-02");
    await another.click();
    // The next day is what a third one most often is.
    await expect.poll(() => on(3).getByLabel("Day").inputValue()).toBe("2027-01-03");
    await on(3).getByLabel("Rolls").fill("7");
    await looked("several");
    await on(3).getByRole("button", { name: "Remove these orders" }).click();
    expect((await bench.page.locator(".panel:visible .hint").allTextContents()).join("\n")).toMatch(
      /“Custard” is left out\. "Custard" has no weights yet\. Flour C15: no percentage\./,
    );
    await bench.page.getByText("Paste orders from a table").click();
    await bench.page.getByLabel("Copied cells").fill("Product\tThu\nHandout\t5");
    await make().click();
    expect((await bench.faults()).join(" ")).toBe("There is no formula sheet “Handout”. Perhaps “Hand-out”?");
    await bench.page.getByLabel("Copied cells").fill("Product\tHarbour inn\nHand-out\t5");
    const across = bench.page.getByLabel("Columns of the sheet");
    await across.selectOption("customers");
    await make().click();
    expect(await bench.faults()).toEqual([
      "Customers stand across for one day. Choose days, or remove the other days.",
    ]);
    await across.selectOption("days");
    await on(2).getByLabel("Note").fill("sliced");
    // Another look keeps what is typed.
    await bench.page.getByRole("button", { name: "Refresh" }).click();
    await bench.page.clock.runFor(1000);
    expect(await on(2).getByLabel("Rolls").inputValue()).toBe("40");
    await make().click();
    const title = "Production 31 Dec to 2 Jan";
    await says(/^Built “Production 31 Dec to 2 Jan”\. .* “Custard” is left out: it shows no weights\./);
    const rows = book.shownTexts(title, book.usedRange(title)).map((row) => row.slice(0, 5));
    expect(rows).toContainEqual(["Hand-out", "loaf", "", "100", ""]);
    expect(rows).toContainEqual(["Hand-out", "loaf", "Harbour inn", "5", ""]);
    expect(rows).toContainEqual(["Rolls", "loaf", "Café Mole", "", "40"]);
    expect(book.shownTexts(title, book.usedRange(title)).flat()).toContain("Sat 2 Jan: sliced");
  });

  test("a new user has tomorrow's orders of six products on printed cards in ten actions, customers across or not", async () => {
    const names = ["Pier loaf", "Mole loaf", "Cove rolls", "Quay tin", "Ferry round", "Tern batard"];
    for (const title of names)
      await buildSheet({ ...HANDOUT, title }, { book, options: { ...METRIC_UNITS, parts: [] } });
    await bench.open();
    const actions: string[] = [];
    const act = async (says: string, action: () => Promise<unknown>) => {
      actions.push(says);
      await action();
      await bench.wait(100);
    };
    await act("open Plan", () => bench.page.getByRole("button", { name: "Plan", exact: true }).click());
    await make().waitFor();
    await act("choose tomorrow", () => bench.field("Day").fill("2026-01-31"));
    for (const name of names) await act(`enter the pieces of ${name}`, () => bench.field(name).fill("60"));
    await act("Build the production", () => make().click());
    await says(/^Built “Production Sat 31 Jan”/);
    await bench.page.evaluate(() => {
      window.print = () => document.body.setAttribute("data-printed", "yes");
    });
    await bench.page.clock.runFor(1000);
    await act("Print the night", () => bench.page.getByRole("button", { name: "Print the night" }).click());
    await says(/6 cards, one a page\./);
    expect(await bench.page.locator("body").getAttribute("data-printed")).toBe("yes");
    expect(await bench.page.locator(".printed-pages section").count()).toBe(6);
    expect(actions).toHaveLength(10);
    // One customer beside the shop, both across.
    await bench.page.getByRole("button", { name: "Add another day or customer" }).click();
    const second = bench.page.getByRole("group", { name: "Orders 2" });
    await second.getByLabel("Day").fill("2026-01-31");
    await second.getByLabel("Customer").fill("Café Mole");
    await second.getByLabel("Pier loaf").fill("12");
    await bench.page.getByLabel("Columns of the sheet").selectOption("customers");
    await bench.page.clock.runFor(1000);
    await make().click();
    await says(/Built “Production Sat 31 Jan \(2\)”/);
    const shown = book.shownTexts("Production Sat 31 Jan (2)", "A1:F12");
    expect(shown.some((row) => row[3] === "Café Mole")).toBe(true);
    expect(shown.find((row) => row[0] === "Pier loaf")?.slice(0, 4)).toEqual(["Pier loaf", "loaf", "60", "12"]);
  });

  test("an empty workbook says what to do, and still builds the logs", async () => {
    await open();
    await says(/no formula sheet that makes pieces in this workbook yet\. Build one under New formula/);
    await looked("empty");
    await bench.page.getByRole("button", { name: "Build a mix log" }).click();
    await says(/Built “Mix log”, a sheet of its own\./);
    await bench.page.getByRole("button", { name: "Build a bake log" }).click();
    await says(/Built “Bake log”, a sheet of its own\./);
  });

  test("a larder, then a formula sheet with its cost, then the prices of all", async () => {
    await open();
    await says(/no formula sheet that makes pieces/);
    await bench.page.getByRole("button", { name: "Build an ingredient sheet" }).click();
    await says(/Built “Ingredients”, a sheet of its own\./);
    await buildSheet(HANDOUT, { book, options: { ...METRIC_UNITS, parts: [] } });
    expect(book.shownTexts("Hand-out", book.usedRange("Hand-out")).flat()).toContain("Costs and price");
    await bench.page.getByRole("button", { name: "Build a price sheet" }).click();
    await says(/Built “Costs and prices”, a sheet of its own\./);
    expect(book.shownTexts("Costs and prices", book.usedRange("Costs and prices")).flat()).toContain("Hand-out");
  });

  test("a larder of what the shop picks, found by name and kind", async () => {
    await open();
    await says(/no formula sheet that makes pieces/);
    await bench.page.getByRole("button", { name: "Start with chosen ingredients" }).click();
    const build = bench.page.getByRole("button", { name: "Build with the ticked ingredients" });
    await build.waitFor();
    const search = bench.page.getByLabel("Find an ingredient");
    const counts = (sentence: RegExp) =>
      expect.poll(() => bench.page.locator('.panel:visible .hint[role="status"]').textContent()).toMatch(sentence);
    const results = bench.page.getByRole("group", { name: "Ingredients" });
    const shown = () => results.locator(".pick:visible").allTextContents();
    expect((await shown()).length).toBeGreaterThan(100);
    await build.click();
    expect(await bench.faults()).toEqual(["Tick at least one ingredient. Add your own on the sheet."]);
    expect(await bench.focused()).toBe("Find an ingredient");
    await bench.page.clock.runFor(1000);
    await search.fill("Rye");
    expect((await shown()).every((name) => /rye/i.test(name))).toBe(true);
    await bench.page.getByLabel("medium rye flour", { exact: true }).check();
    await search.fill("zzz");
    await counts(/^Nothing matches; try a shorter word, 1 ticked\.$/);
    // What is ticked stays in sight, and can be taken back there.
    const before = bench.page.getByRole("group", { name: "Ticked before" });
    expect(await before.locator("label").allTextContents()).toEqual(["medium rye flour"]);
    await before.getByLabel("medium rye flour").uncheck();
    await counts(/, 0 ticked\.$/);
    await before.getByLabel("medium rye flour").check();
    // Words in any order, and what else it is called.
    await search.fill("flour strong WHITE");
    expect(await shown()).toContain("bread flouralso strong white flour");
    await search.fill("sugars caster");
    expect((await shown()).join(" ")).toMatch(/caster/);
    await looked("found");
    await search.fill("butter");
    // With the keyboard alone: the boxes are the next stops after the search.
    const at = (await shown()).findIndex((name) => name.startsWith("unsalted butter"));
    for (let stop = 0; stop <= at; stop++) await bench.page.keyboard.press("Tab");
    expect(await bench.focused()).toBe("unsalted butter");
    await bench.page.keyboard.press("Space");
    await counts(/^\d+ shown, 2 ticked\.$/);
    // Asked for again, the list forgets no tick.
    await bench.page.getByRole("button", { name: "Start with chosen ingredients" }).click();
    await bench.wait(1000);
    await counts(/^\d+ shown, 2 ticked\.$/);
    await search.fill("flour");
    await looked("picking");
    await build.dblclick();
    await says(/Built “Ingredients”, a sheet of its own\./);
    const { names, kinds } = larderOf(book);
    expect(names).toEqual(["medium rye flour", "unsalted butter"]);
    expect(kinds).toEqual(["fat", "flour"]);
  });

  test("ingredients that cannot be read are said, with another way", async () => {
    await open();
    await says(/no formula sheet that makes pieces/);
    await bench.turn("fails");
    await bench.page.getByRole("button", { name: "Start with chosen ingredients" }).click();
    await bench.wait(100);
    await says(/could not answer \(Service unavailable\)/);
  });

  test.each<[Way, number, RegExp]>([
    ["slow", 2000, /^Building the production …$/],
    ["fails", 100, /could not answer \(Service unavailable\)/],
    ["silent", 91_000, /^No answer for 90 seconds\. The sheet may still be on its way/],
  ])("a server that is %s", async (way, ms, sentence) => {
    await buildSheet(HANDOUT, { book });
    await open();
    await make().waitFor();
    await bench.field("Day").fill("2026-01-31");
    await bench.field("Hand-out").fill("10");
    await bench.turn(way);
    await make().click();
    await bench.wait(ms);
    await says(sentence);
    if (way === "slow") await looked("busy");
  });
});

/** The larder's rows as every formula reads them. */
function larderOf(book: WorkbookHost) {
  const rows = book.values("Ingredients", book.usedRange("Ingredients"));
  const head = rows.findIndex((row) => row[0] === "Ingredient");
  const filled = rows.slice(head + 1).filter((row) => row[0] !== "");
  return {
    names: filled.map((row) => row[0]).sort(),
    kinds: filled.map((row) => row[rows[head]?.indexOf("Type") ?? -1]).sort(),
  };
}
