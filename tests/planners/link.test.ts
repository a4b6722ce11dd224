// An ingredient with a formula sheet of its own: what it costs, how long it takes and what is in it come from there.
import { beforeAll, describe, expect, test } from "vitest";
import { columnLetters } from "../../shared/sheet/a1.ts";
import { BUILT_BY } from "../../shared/sheet/built-by.ts";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { costed, larderOf, modelNamed, SLOW } from "../money/costing-support.ts";
import { type Built, workbook } from "../templates/sheet-support.ts";

const cookie = modelNamed("cookie");
const made = (book: WorkbookHost, title: string, rows: readonly [string, string, number][], more = {}) =>
  costed(
    book,
    {
      title,
      by: "dough",
      ingredient: rows.map(([name]) => name),
      kind: rows.map(([, kind]) => kind),
      amount: 1000,
      percent: rows.map(([, , grams]) => grams / 1000),
      ...more,
    },
    cookie,
  );
const link = (book: WorkbookHost) => book.answer({ ask: "link" }) as { sheets: string[]; note?: string };

describe("a bun with a filling of almond paste", () => {
  let book: WorkbookHost;
  let [larder, bun, filling, paste]: Built[] = [];
  beforeAll(async () => {
    book = await workbook();
    // The filling stands in Ingredients too, at a price that nobody pays any more.
    larder = await larderOf(book, {
      ingredient: ["Flour", "Almonds", "Sugar", "Cream", "Almond filling"],
      price: [1, 12, 1.5, 6, 99],
      pack: ["1 kg", "1 kg", "1 kg", "1 kg", "1 kg"],
    });
    bun = await made(book, "Almond bun", [
      ["Flour", "flour", 600],
      [" almond Filling", "other", 400],
    ]);
    filling = await made(
      book,
      "Almond filling",
      [
        ["Almond paste", "other", 800],
        ["Cream", "dairy", 200],
      ],
      { boil_off: 0.1, left_over: 0.05, labour_mix: 18 },
    );
    paste = await made(
      book,
      "Almond paste",
      [
        ["Almonds", "other", 500],
        ["Sugar", "sugar", 500],
      ],
      { labour_mix: 6 },
    );
  }, SLOW);

  // By hand. Paste: 500 × 12 + 500 × 1.5 = 6.75 a kilogram, 6 minutes. Filling: 0.8 × 6.75 + 0.2 × 6 = 6.60 in 1000 × 0.9 × 0.95 =
  // 855 g, so 7.719298 a kilogram; 18 + 0.8 × 6 = 22.8 minutes in it, 26.666667 a kilogram. Bun: 0.6 + 0.4 × 7.719298 = 3.687719.
  test("linked, two levels deep, each to the cell", () => {
    expect(bun?.value("cost_ingredients")).toBeCloseTo(0.6 + 0.4 * 99, 9);
    // A sheet that a newer version built is left alone, and said to be so.
    const version = `${columnLetters((book.values("Almond bun", "A1:Z1")[0] ?? []).indexOf(BUILT_BY))}1`;
    book.type("Almond bun", version, "Gramwright 99.0.0");
    expect(link(book)).toEqual({
      sheets: ["Almond filling"],
      note: expect.stringMatching(/^Gramwright 99\.0\.0 built “Almond bun”, and this is .* Update Gramwright/),
    });
    expect(bun?.value("cost_ingredients")).toBeCloseTo(0.6 + 0.4 * 99, 9);
    book.type("Almond bun", version, BUILT_BY);
    expect(link(book).sheets).toEqual(["Almond bun"]);
    expect(paste?.value("as_price")).toBeCloseTo(6.75, 9);
    expect(filling?.value("as_price")).toBeCloseTo(6.6 / 0.855, 9);
    expect(filling?.value("as_minutes")).toBeCloseTo(22.8 / 0.855, 9);
    expect(bun?.value("cost_ingredients")).toBeCloseTo(0.6 + (0.4 * 6.6) / 0.855, 9);
    expect(bun?.value("own_hours")).toBeCloseTo((0.4 * 22.8) / 0.855 / 60, 9);
    // A second time there is nothing to write.
    expect(link(book)).toEqual({ sheets: [] });
    expect(book.trail).not.toContain("setFormulas");
  });

  test("a filling does without flour once its boil-off is entered, 0 % too, and by percentages of 100", () => {
    expect(filling?.value("check")).toBe("");
    expect(paste?.value("check")).toBe("No flour row (a filling? Enter its boil-off).");
    paste?.type("boil_off", "0%");
    expect(paste?.value("check")).toBe("");
    paste?.type("percent", "50", 1);
    paste?.type("percent", "50", 2);
    expect([paste?.value("check"), paste?.value("total_label")]).toEqual(["", "Total, 100 %"]);
    expect(paste?.value("as_price")).toBeCloseTo(6.75, 9);
  });

  test("what goes into it stands in one cell, to any depth, the share that boils off with it", () => {
    const lines = String(bun?.value("as_parts")).split("\n");
    expect(lines.map((line) => line.split("\t"))).toEqual([
      ["Almond bun", "", "", "0", "0"],
      ["", "Flour", "60000000"],
      ["", "almond Filling", "40000000"],
      ["Almond filling", "", "", "10000000", "5000000"],
      ["", "Almond paste", "80000000"],
      ["", "Cream", "20000000"],
      ["Almond paste", "", "", "0", "0"],
      ["", "Almonds", "50000000"],
      ["", "Sugar", "50000000"],
    ]);
  });

  test("a price typed over, a row added, a title changed: all sheets follow by their own formulas", () => {
    larder?.type("price", "24", 2);
    // 500 × 24 + 500 × 1.5 = 12.75; 0.8 × 12.75 + 1.2 = 11.4.
    expect(bun?.value("cost_ingredients")).toBeCloseTo(0.6 + (0.4 * 11.4) / 0.855, 9);
    larder?.type("price", "12", 2);
    paste?.type("title", "Marzipan");
    // The filling's paste is a word that nothing is called any more, and has no price.
    expect(filling?.value("unpriced")).toBe("Without a price: 1");
    expect(bun?.value("unpriced")).toBe("Without a price: 1");
    paste?.type("title", "Almond paste");
    expect(bun?.value("cost_ingredients")).toBeCloseTo(0.6 + (0.4 * 6.6) / 0.855, 9);
  });

  test("a circle is named and not followed", () => {
    paste?.type("ingredient", "Almond bun", 2);
    const { sheets, note } = link(book);
    expect(note).toMatch(/"Almond bun" uses "Almond filling" uses "Almond paste" uses "Almond bun": a circle/);
    expect(sheets.length).toBeGreaterThan(0);
    expect(bun?.value("cost_ingredients")).toBeCloseTo(0.6 + 0.4 * 99, 9);
    for (const one of [bun, filling, paste])
      expect(
        book
          .shownTexts(one?.sheet ?? "", "A1:K60")
          .flat()
          .filter((text) => /^#/.test(text)),
      ).toEqual([]);
    paste?.type("ingredient", "Sugar", 2);
    expect(link(book).note).toBeUndefined();
    expect(bun?.value("cost_ingredients")).toBeCloseTo(0.6 + (0.4 * 6.6) / 0.855, 9);
  });
});
