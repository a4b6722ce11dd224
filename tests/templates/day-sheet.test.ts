import { describe, expect, test } from "vitest";
import { lint } from "../../src/build/lint.ts";
import { toXlsx } from "../../src/workbook/xlsx/xlsx.ts";
import { daySheet } from "../../templates/day-sheet.ts";
import { METRIC_UNITS } from "../kit/units.ts";
import { costed, larderOf, panLoaf } from "../money/costing-support.ts";
import { asOfficeReads, asValue, hasOffice } from "../workbook/support.ts";
import { close, day, fill } from "./day-support.ts";
import { buildSheet, HANDOUT, workbook } from "./sheet-support.ts";

describe("a day sheet", () => {
  test("100 loaves of 390 g from 100/67/2/1: dough, mixes and needs, less stock, in packs", async () => {
    const book = await workbook();
    await buildSheet({ ...HANDOUT, mixer_limit: 15000 }, { book });
    const { below, place, need, all, sheet } = day(book, [{ sheet: "Hand-out", pieces: 100 }]);
    expect(sheet).toBe("Day 2026-01-31");
    // 39 000 g in three mixes of 13 000; 39 000 ÷ 1.7 = 22 941.18 g of flour
    close(below("Dough in all (g)", "Product", "Hand-out"), 39000);
    expect(below("Mixes", "Product", "Hand-out")).toBe(3);
    close(below("Dough a mix (g)", "Product", "Hand-out"), 13000);
    close(need("Flour"), 39000 / 1.7);
    close(need("Water"), (39000 / 1.7) * 0.67);
    close(all(), 39000);
    book.type(sheet, place("there is (g)", "In stock", "Flour"), "10000");
    book.type(sheet, place("a pack has (g)", "In stock", "Flour"), "5000");
    close(need("Flour"), 39000 / 1.7 - 10000);
    // 12 941 g are three sacks of 5 kg
    expect(below("Packs to order", "To get", "Flour")).toBe(3);
    book.type(sheet, place("Pieces ordered", "Product ordered", "Hand-out"), "50");
    close(need("Flour"), 39000 / 3.4 - 10000);
  });

  test("several products share one list; a product inside another is broken down, what is ready comes off", async () => {
    const book = await workbook();
    const parts = { ingredient: ["Flour", "Custard"], kind: ["flour", "other"], percent: [1, 0.5] };
    await buildSheet({ ...HANDOUT, ...parts, title: "Tart", size_pieces: [10], size_weight: [150] }, { book });
    await buildSheet(
      { ...HANDOUT, title: "Custard", ingredient: ["Flour", "Milk"], kind: ["flour", "dairy"], percent: [1, 4] },
      { book },
    );
    await buildSheet(HANDOUT, { book });
    const { need, all, place, sheet } = day(book, [
      { sheet: "Tart", pieces: 20 },
      { sheet: "Hand-out", pieces: 10 },
    ]);
    // Tart: 3000 g, 2000 of flour and 1000 of custard, of which 200 are flour; hand-out: 3900 ÷ 1.7
    close(need("Flour"), 2000 + 200 + 3900 / 1.7);
    close(need("Milk"), 800);
    expect(need("Custard")).toBeUndefined();
    close(all(), 6900);
    book.type(sheet, place("there is (g)", "In stock", "Custard"), "400");
    close(need("Milk"), 480);
  });

  test("one call for all products, few service calls, and the formula sheets stay as they were", async () => {
    const book = await workbook();
    for (const name of ["levain-loaf", "laminated", "soft-bun"]) await fill(book, name);
    const before = book.sheetNames().map((name) => book.shownTexts(name, book.usedRange(name)));
    const { sheet, all, below } = day(book, [
      { sheet: "Harbour levain loaf", pieces: 68 },
      { sheet: "Slipway croissant", pieces: 72 },
    ]);
    expect(book.trail.length).toBeLessThanOrEqual(40);
    expect(
      book
        .sheetNames()
        .filter((name) => name !== sheet)
        .map((name) => book.shownTexts(name, book.usedRange(name))),
    ).toEqual(before);
    const formulas = book.formulas(sheet, book.usedRange(sheet)).flat().join(" ");
    expect(formulas.match(/BAKE_RAWNEEDS/g)).toHaveLength(1);
    expect(formulas.match(/BAKE_/g)).toHaveLength(2);
    const whole = (product: string) => below("Dough in all (g)", "Product", product) as number;
    close(all(), whole("Harbour levain loaf") + whole("Slipway croissant"));
    for (const text of book.shownTexts(sheet, book.usedRange(sheet)).flat()) expect(text).not.toMatch(/^#/);
  });

  test("the levain is fed for the day: twice the pieces need twice the levain, and what is kept stays", async () => {
    const book = await workbook();
    const { value } = await fill(book, "levain-loaf");
    const { beside } = day(book, [{ sheet: "Harbour levain loaf", pieces: 68 }]);
    // The sheet makes 34 pieces.
    expect(value("pieces")).toBe(34);
    close(beside("In the doughs (g)"), 2 * (value("pre_weight") as number));
    const levain = 2 * (value("pre_weight") as number) + 300;
    close(beside("To build (g)"), levain);
    const feed = ["Feed: seed (g)", "with flour (g)", "and water (g)"].map((words) => beside(words) as number);
    close(
      feed.reduce((sum, one) => sum + one, 0),
      levain,
    );
    // At 100 % the seed is half flour; 20 % of the flour fed.
    close(feed[0], 0.2 * (feed[1] ?? 0));
    close(feed[1], feed[2] ?? 0);
  });

  test("the levain is fed so many hours before the first mix that needs it, on the day it takes", async () => {
    const book = await workbook();
    await fill(book, "levain-loaf");
    await fill(book, "levain-loaf", { title: "Early loaf", ready: 4 / 24, keep: 200 });
    const { beside, shownBeside, order, place, sheet, on } = day(book, [{ sheet: "Harbour levain loaf", pieces: 68 }]);
    const moments = () =>
      ["First mix with it", "Feed it at"].map((words) => [shownBeside(words, 1), shownBeside(words, 2)]);
    // Mixing begins 1155 minutes before 08:00, which is 12:45 the day before; nine hours earlier it is 03:45.
    expect(moments()).toEqual([
      ["12:45", "the day before"],
      ["03:45", "the day before"],
    ]);
    expect(shownBeside("which is on")).toBe("2026-01-30");
    // Ready four hours earlier, and so the first of the two: 08:45, fed at 23:45 two days before.
    order("Early loaf", "34");
    expect(moments()).toEqual([
      ["08:45", "the day before"],
      ["23:45", "2 days before"],
    ]);
    expect(shownBeside("which is on")).toBe("2026-01-29");
    // Kept back is what the sheets of the bench's orders keep; less than the seed is said.
    expect(beside("Kept as seed (g)")).toBe(300);
    expect(beside("Feed: seed (g)", 2)).toBe("more than is kept as seed");
    const at = (words: string, right: number) => {
      const cell = place("Levain for this day", "Levain for this day", words);
      return `${String.fromCharCode(cell.charCodeAt(0) + right)}${cell.slice(1)}`;
    };
    book.type(sheet, at("Kept as seed (g)", 1), "5000");
    expect(beside("Feed: seed (g)", 2)).toBe("");
    // A typed time goes before the sheets'.
    book.type(sheet, at("First mix, typed", 1), "05:00");
    expect(moments()).toEqual([
      ["05:00", "on the day"],
      ["20:00", "the day before"],
    ]);
    book.type(sheet, at("First mix, typed", 2), "the day before");
    book.type(sheet, at("Hours it ripens", 1), "4.5");
    expect(moments()[1]).toEqual(["00:30", "the day before"]);
    on("");
    expect(shownBeside("which is on")).toBe("");
  });

  test.each([
    ["no order", [], /pieces of at least one product/],
    ["a sheet that is gone", [{ sheet: "Gone", pieces: 3 }], /no formula sheet "Gone" with weights any more/],
    ["no number", [{ sheet: "Hand-out", pieces: -3 }], /pieces of "Hand-out" are no number above 0/],
  ])("refuses %s", async (_, orders, sentence) => {
    const { book } = await buildSheet(HANDOUT);
    const names = book.sheetNames();
    const reply = book.ask({ ask: "day", day: "", orders });
    expect(reply.ok ? "" : reply.message).toMatch(sentence);
    expect(book.sheetNames()).toEqual(names);
  });

  test("a formula sheet without weights, one without pieces and one of another unit: each is named, and why", async () => {
    const { book } = await buildSheet(HANDOUT);
    await buildSheet({ ...HANDOUT, title: "Custard", percent: [] }, { book });
    const orders = [{ sheet: "Hand-out", pieces: 1 }];
    expect(book.answer({ ask: "day", day: "", orders })).toEqual({
      sheet: "Day sheet",
      note: "“Custard” is left out: it shows no weights. Type on it how much to make, and its percentages.",
    });
    await buildSheet(
      {
        ...HANDOUT,
        title: "Starter",
        by: "dough",
        dough_wanted: 5000,
        size_name: [],
        size_pieces: [],
        size_weight: [],
      },
      { book },
    );
    await buildSheet(
      { ...HANDOUT, title: "Ounces" },
      { book, options: { weight: "oz", temperature: "F", length: "in", parts: [] } },
    );
    expect(book.answer({ ask: "day", day: "", orders })).toMatchObject({
      note: [
        "“Custard” is left out: it shows no weights. Type on it how much to make, and its percentages.",
        "“Starter” cannot be ordered: it shows no pieces. If it is sold, type on it what a piece weighs.",
        "“Ounces” is left out: it counts in oz. Make a day sheet of its own for it.",
      ].join(" "),
    });
  });

  test.skipIf(!hasOffice)("LibreOffice shows the same doughs, remarks, levain and packs", async () => {
    const book = await workbook();
    await fill(book, "levain-loaf");
    await buildSheet({ ...HANDOUT, mixer_least: 4000 }, { book });
    const { sheet, order, grid } = day(book, [
      { sheet: "Harbour levain loaf", pieces: 68 },
      { sheet: "Hand-out", pieces: 3 },
    ]);
    order("Gone", "3");
    order("Hand-out", "-3");
    order("Hand-out", "7", "2026-02-01");
    const office = asOfficeReads(await toXlsx(book.engine))[sheet] ?? [];
    let compared = 0;
    grid().forEach((row, down) => {
      row.forEach((value, across) => {
        const shown = asValue(office[down]?.[across] ?? "");
        const where = `row ${down + 1}, column ${across + 1}: ${shown} against ${value}`;
        // Dates are told as such, and compared elsewhere.
        if (/^\d{4}-\d\d-\d\d$|^\d\d:\d\d/.test(String(shown))) return;
        if (typeof value === "number")
          expect(Math.abs(Number(shown) - value), where).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(value)));
        else expect(shown, where).toBe(value);
        if (value !== "") compared += 1;
      });
    });
    expect(compared).toBeGreaterThan(90);
    expect(office.flat()).toContain("below the mixer’s least: 1.17 kg of 4 kg; mix by hand or join with another dough");
  });

  test("more orders than a day sheet begins with are refused, not left out", async () => {
    const { book } = await buildSheet(HANDOUT);
    const orders = Array.from({ length: 301 }, () => ({ sheet: "Hand-out", pieces: 1 }));
    const reply = book.ask({ ask: "day", day: "", orders });
    expect(reply.ok ? "" : reply.message).toMatch(/begins with up to 300 orders; type the others into it/);
  });

  test("refuses sheets of two units together", async () => {
    const { book } = await buildSheet(HANDOUT);
    await buildSheet(
      { ...HANDOUT, title: "Ounces" },
      { book, options: { weight: "oz", temperature: "F", length: "in", parts: [] } },
    );
    const orders = [
      { sheet: "Hand-out", pieces: 10 },
      { sheet: "Ounces", pieces: 10 },
    ];
    const reply = book.ask({ ask: "day", day: "", orders });
    expect(reply.ok ? "" : reply.message).toMatch(/"Ounces" counts in oz, the others in g/);
  });
});

test("its formulas mean the same everywhere, and two calls are all it has", () => {
  expect(lint(daySheet, { ...METRIC_UNITS, parts: [] }, 2)).toEqual([]);
  // With a larder its packs are one more, whatever the number of products.
  expect(lint(daySheet, { ...METRIC_UNITS, parts: ["larder"] }, 3)).toEqual([]);
});

test("what it works out beside the printed part is shown in figures to read", async () => {
  const book = await workbook();
  await larderOf(book);
  const { sheet } = await costed(book, panLoaf.sample);
  const { sheet: made } = day(book, [{ sheet, pieces: 24 }]);
  const range = book.usedRange(made);
  const long = book
    .shownTexts(made, range)
    .flat()
    .filter((text) => /^-?[\d,]*\.\d{5,}$/.test(text));
  expect(long).toEqual([]);
  // Of a pack of 25 kg a gram is 1000 ÷ 25 000 thousandths; its packs are told from that.
  const shown = book.shownTexts(made, range);
  const row = shown.find((line) => line.includes("Strong white flour") && line.includes("25,000.0"));
  expect(row).toContain("0.0400");
  expect(row?.[row.indexOf("25,000.0") + 1]).toBe("1");
});
