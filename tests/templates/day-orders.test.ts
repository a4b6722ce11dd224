import { describe, expect, test } from "vitest";
import { METRIC_UNITS } from "../kit/units.ts";
import { close, day } from "./day-support.ts";
import { buildSheet, HANDOUT, workbook } from "./sheet-support.ts";

describe("orders on a day sheet", () => {
  test("an order counts on its day; a blank date is the sheet's own, and one cell says which day it is", async () => {
    const book = await workbook();
    await buildSheet(HANDOUT, { book });
    await buildSheet({ ...HANDOUT, title: "Rolls", size_weight: [60], percent: [1, 0.6, 0.02, 0.02] }, { book });
    const { below, need, all, order, on } = day(book, [
      { sheet: "Hand-out", pieces: 100 },
      { sheet: "Rolls", pieces: 200, day: "2026-02-01" },
    ]);
    const pieces = (name: string) => below("Pieces", "Product", name);
    expect([pieces("Hand-out"), pieces("Rolls")]).toEqual([100, ""]);
    close(all(), 39000);
    // A second order of the same product, by the day of the sheet.
    order("Hand-out", "20");
    expect(pieces("Hand-out")).toBe(120);
    on("2026-02-01");
    // The blank date went along: 20 loaves of 390 g over 1.7, 200 rolls of 60 g over 1.64.
    expect([pieces("Hand-out"), pieces("Rolls")]).toEqual([20, 200]);
    close(need("Flour"), 7800 / 1.7 + 12000 / 1.64);
    close(need("Yeast"), (7800 / 1.7) * 0.01 + (12000 / 1.64) * 0.02);
    on("2026-01-31");
    close(all(), 120 * 390);
    on("2026-03-01");
    expect([pieces("Hand-out"), pieces("Rolls")]).toEqual([20, ""]);
  });

  test.each([
    ["one day", "2026-01-31", ["2026-01-31", undefined], "Day 2026-01-31"],
    ["two days of a month", "2026-01-30", ["2026-01-31", undefined], "Day 2026-01-30 – 01-31"],
    [
      "days of two years, typed in another order",
      "2027-01-02",
      ["2026-12-31", "2027-01-01"],
      "Day 2026-12-31 – 2027-01-02",
    ],
    ["days of the orders alone", "", ["2026-02-02", "2026-02-01"], "Day 2026-02-01 – 02-02"],
  ])("is named by the days that are ordered for: %s", async (_, day, days, name) => {
    const { book } = await buildSheet(HANDOUT);
    const orders = days.map((one, at) => ({
      sheet: "Hand-out",
      pieces: at + 1,
      ...(one === undefined ? {} : { day: one }),
    }));
    expect(book.answer({ ask: "day", day, orders })).toMatchObject({ sheet: name });
    const [first] = [day, ...days].flatMap((one) => one || []).sort();
    expect(book.shownTexts(name, "B2:B2")).toEqual([[day || first]]);
  });

  test("what is not made of an order is said beside it", async () => {
    const book = await workbook();
    await buildSheet(HANDOUT, { book });
    const { order, below, on, all } = day(book, [{ sheet: "Hand-out", pieces: 10 }]);
    const pieces = () => below("Pieces", "Product", "Hand-out");
    const notes = [
      order("Hand out", "5"),
      order("Hand-out", "-5"),
      order("Hand-out", "many"),
      order("Hand-out", "5", "soon"),
      order("Hand-out", ""),
      order("", "5"),
    ];
    expect(notes.map(({ note }) => note())).toEqual([
      "no formula sheet of this name",
      "pieces below 0",
      "pieces are no number",
      "the date is no date",
      "how many pieces?",
      "which product?",
    ]);
    expect(pieces()).toBe(10);
    close(all(), 3900);
    const half = order("hand-out", "0.5");
    expect(half.note()).toBe("not whole: counted as it is");
    expect(pieces()).toBe(10.5);
    half.type("1");
    expect([half.note(), pieces()]).toEqual(["", 11]);
    const dated = order("Hand-out", "5", "2026-01-31");
    expect([dated.note(), pieces()]).toEqual(["", 16]);
    on("");
    // The bench's own order is dated, too.
    expect([dated.note(), pieces()]).toEqual(["no day is chosen above", 1]);
  });

  test("equal mixes: 95 kg at most 40 are three of 31.667; below the least the remark says what to do", async () => {
    const book = await workbook();
    // A kilogram a piece and no loss, so that pieces are kilograms.
    const kilos = { size_weight: [1000], size_pieces: [10], mixer_limit: 40000, mixer_least: 2000 };
    await buildSheet({ ...HANDOUT, ...kilos }, { book });
    await buildSheet({ ...HANDOUT, ...kilos, title: "Odd", mixer_limit: 1500 }, { book });
    await buildSheet({ ...HANDOUT, ...kilos, title: "Bare", mixer_limit: null, mixer_least: null }, { book });
    const { below, order, sheet, place } = day(book, [{ sheet: "Hand-out", pieces: 95 }]);
    const mixes = (name: string) =>
      ["Mixes", "Dough a mix (g)", "Remark"].map((head) => below(head, "Product", name) as number | string);
    // Not 40 + 40 + 15: worked out by division alone.
    expect(mixes("Hand-out")[0]).toBe(3);
    close(mixes("Hand-out")[1], 95000 / 3);
    expect(mixes("Hand-out")[2]).toBe("");
    const pieces = (count: string) => book.type(sheet, place("Pieces ordered", "Product ordered", "Hand-out"), count);
    // At the limit to the gram it is one mix; a gram more makes two.
    pieces("40");
    expect(mixes("Hand-out").slice(0, 1)).toEqual([1]);
    pieces("40.001");
    expect(mixes("Hand-out")[0]).toBe(2);
    pieces("2");
    expect(mixes("Hand-out")[2]).toBe("");
    const below2 = (weight: string) =>
      `below the mixer’s least: ${weight} kg of 2 kg; mix by hand or join with another dough`;
    pieces("1.2");
    expect(mixes("Hand-out")[2]).toBe(below2("1.2"));
    // Just below is never shown as the least itself.
    pieces("1.9999");
    expect(mixes("Hand-out")[2]).toBe(below2("1.99"));
    order("Odd", "10");
    expect(mixes("Odd")[2]).toBe("its sheet has a mixer’s least above its most");
    order("Bare", "10");
    expect(mixes("Bare")).toEqual([1, 10000, "no mixer limit on its sheet: one mix"]);
  });

  test("144 lb every 90 minutes, seven times, are 1008 lb in seven equal mixes, counted in ounces", async () => {
    const book = await workbook();
    const options = { weight: "oz", temperature: "F", length: "in", parts: [] } as const;
    // 144 lb a dough and 1008 lb in 16 hours: the manual of a field bakery of 1916.
    const pounds = { size_weight: [16], size_pieces: [10], mixer_limit: 144 * 16, mixer_least: 32 };
    await buildSheet({ ...HANDOUT, ...pounds }, { book, options });
    const { below, order } = day(book, [{ sheet: "Hand-out", pieces: 1008 }]);
    expect(below("Mixes", "Product", "Hand-out")).toBe(7);
    close(below("Dough a mix (oz)", "Product", "Hand-out"), 144 * 16);
    order("Hand-out", "-1008");
    expect(below("Pieces", "Product", "Hand-out")).toBe(1008);
  });

  test("packs by the larder where there is one: a typed pack goes before it, what is trimmed off comes off", async () => {
    const book = await workbook();
    book.answer({
      ask: "build",
      template: "larder",
      options: { ...METRIC_UNITS, parts: [] },
      values: {
        title: "Ingredients",
        ingredient: ["Flour", "Salt", "Yeast", "Water", "Apple"],
        price: [20, null, 4, null, 18],
        pack: ["25 kg", "10 x 1 kg", "a box", null, "12 kg"],
        usable: [null, null, null, null, 0.75],
      },
    });
    const apples = { ingredient: ["Flour", "Water", "Salt", "Yeast", "Apple"], percent: [1, 0.6, 0.02, 0.01, 0.4] };
    await buildSheet(
      { ...HANDOUT, ...apples, kind: ["flour", "water", "salt", "yeast", "other"] },
      { book, options: { ...METRIC_UNITS, parts: [] } },
    );
    // 30 kg of flour, 18 of water, 0.6 of salt, 0.3 of yeast, 12 of apple: 60.9 kg in 100 pieces of 609 g.
    const { below, need, sheet, place } = day(book, [{ sheet: "Hand-out", pieces: 60900 / 390 }]);
    const row = (name: string) => ["In a pack (g)", "Packs to order"].map((head) => below(head, "To get", name));
    close(need("Flour"), 30000);
    close(row("Flour")[0], 25000);
    expect(row("Flour")[1]).toBe(2);
    // Without a price the pack is known all the same.
    close(row("Salt")[0], 10000);
    expect(row("Salt")[1]).toBe(1);
    // 12 kg of which 9 can be used: 12 kg of apple are two boxes.
    close(row("Apple")[0], 9000);
    expect(row("Apple")[1]).toBe(2);
    expect(row("Yeast")).toEqual(["", "see Ingredients"]);
    expect(row("Water")).toEqual(["", ""]);
    book.type(sheet, place("a pack has (g)", "In stock", "Flour"), "16000");
    expect(row("Flour")[1]).toBe(2);
    book.type(sheet, place("a pack has (g)", "In stock", "Flour"), "10000");
    expect(row("Flour")).toEqual([10000, 3]);
    book.type(sheet, place("there is (g)", "In stock", "Flour"), "30000");
    expect(row("Flour")[1]).toBe(0);
    expect(book.formulas(sheet, book.usedRange(sheet)).flat().join(" ").match(/BAKE_/g)).toHaveLength(3);
  });
});
