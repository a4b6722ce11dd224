// What is read of lines that are hard to read, refused as no recipe, or no more than text.
import { describe, expect, test } from "vitest";
import type { ReadRecipe } from "../../shared/recipe/read-line.ts";
import { LARDER_NAME } from "../../shared/sheet/model.ts";
import { buildSheet, workbook } from "../templates/sheet-support.ts";
import { asked, book, isHonest, line, near, read } from "./read-in-support.ts";

describe("a line is never dropped, doubled or guessed in silence", () => {
  test("amounts side by side that disagree are remarked", () => {
    // 2.33 tbsp of salt are 42 g by USDA SR28; the card's 2 oz are 35 % more.
    expect(line("salt 2 oz (2.33 tbsp)").says).toMatch(/56\.7 g is taken, 41\.9 g stands beside it, 35 % apart/);
  });
  test("a preferment that weighs more than its section is asked about", () => {
    const { lines } = read("Poolish:\n500 g flour\n500 g water\nDough:\n500 g flour\n1200 g poolish");
    expect(lines[5]).toMatchObject({ is: "ingredient", grams: null });
    expect(lines[5]?.asks).toMatch(/counted twice\? .*1000 g in all, and here stand 1200 g/);
  });
  test("a name that a person gives is looked up instead of the line's", () => {
    expect(line("1 cup Mehl").asks).toMatch(/which the larder does not know/);
    expect(line("1 cup Mehl", "US", "all-purpose flour")).toMatchObject({
      name: "all-purpose flour",
      kind: "flour",
      grams: 125,
      asks: "",
    });
  });
  test("a kind taken from a word of the name says so", () => {
    expect(line("500 g Roggenmehl")).toMatchObject({ kind: "flour", asks: "" });
    expect(line("500 g Roggenmehl").says).toMatch(/guess from the word "roggenmehl"/);
    expect(line("1 cup sour cream")).toMatchObject({ kind: "dairy", grams: 230 });
  });
  test("the cups are those of the country", () => {
    // Australian cup 250 mL, tablespoon 20 mL; water 1 g/mL.
    near(line("2½ cups water", "AU").grams, 625, 1e-9, "AU");
    near(line("2½ cups water", "US").grams, 591.47, 0.01, "US");
  });
  test("the shop's own larder counts first, and one that cannot be read is left aside aloud", async () => {
    const shop = await workbook();
    const table = (rows: readonly (readonly string[])[]) => {
      rows.forEach((row, down) => {
        row.forEach((cell, across) => {
          shop.type("Sheet1", `${"ABC"[across]}${down + 1}`, cell);
        });
      });
    };
    table([
      ["ingredient", "kind", "measures"],
      ["quay starter", "levain 100%", ""],
      ["kosher salt", "salt", "tsp 3.2"],
    ]);
    shop.engine.run("CREATE_NAMED_RANGE", {
      name: LARDER_NAME,
      ranges: [{ _sheetId: shop.engine.get("getActiveSheetId"), _zone: { left: 0, right: 2, top: 0, bottom: 2 } }],
    });
    const ask = () =>
      shop.answer({
        ask: "read",
        cups: "US",
        lines: [asked("2 tsp kosher salt"), asked("2 cups flour")],
      }) as ReadRecipe;
    expect(ask().lines[0]).toMatchObject({ grams: 6.4, kind: "salt", asks: "" });
    expect(ask().says).toBe("");
    shop.type("Sheet1", "A3", "quay starter");
    expect(ask().says).toMatch(/left aside, as it cannot be read: .*another name/);
    expect(ask().lines[1]).toMatchObject({ grams: 250 });
  });
});

describe("what is not a recipe is refused with a sentence", () => {
  test.each([
    [{ cups: "XX", lines: [] }, /could not be read\. Close Gramwright/],
    [{ cups: "US" }, /could not be read\. Close Gramwright/],
    [{ cups: "US", lines: Array(151).fill(asked("1 g salt")) }, /That is 151 lines/],
    [{ cups: "US", lines: [asked("x".repeat(1001))] }, /Line 1 is no line of a recipe/],
    [{ cups: "US", lines: [{ text: 5, name: "" }] }, /Line 1 is no line of a recipe/],
  ])("%j", (rest, sentence) => {
    expect(book.ask({ ask: "read", ...rest })).toMatchObject({ ok: false, message: expect.stringMatching(sentence) });
  });
  test("any text is answered, and every line comes back", () => {
    const texts = [
      "(((",
      "1/0 cup",
      "½½½ g",
      "--- 5 ---",
      "e\u0301 2 cups",
      "0 g flour",
      "99999999999999999999 kg flour",
      "{}",
      "'",
    ];
    const { lines } = read(texts.join("\n"));
    expect(new Set(lines.map(({ from }) => from)).size).toBe(texts.length);
    lines.forEach(isHonest);
  });
});

describe("formulas in pasted text stay text", () => {
  const HOSTILE = ['=IMPORTXML("x","y")', "+1+1", "-2+3", "@SUM(A1)", "'=1+1", '=HYPERLINK("x")'];
  test("on the sheet that is built", async () => {
    const { sheet, at } = await buildSheet(
      {
        title: '=IMPORTXML("x")',
        ingredient: ["Flour", ...HOSTILE],
        kind: ["flour", ...HOSTILE.map(() => "other")],
        weighed: [1000, ...HOSTILE.map(() => 10)],
        change_1: "=1+1",
      },
      { book },
    );
    HOSTILE.forEach((text, index) => {
      const cell = book.cell(sheet, at("ingredient", index + 2));
      expect(cell.formula).toBeUndefined();
      expect(cell.value).toBe(text.replace(/^'+/, ""));
    });
    expect(book.cell(sheet, at("title")).formula).toBeUndefined();
    expect(book.cell(sheet, at("change_1")).formula).toBeUndefined();
  });
  test("and in what is read", () => {
    for (const text of HOSTILE) expect(line(text).text).toBe(text);
  });
});
