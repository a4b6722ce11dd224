import { expect, test } from "vitest";
import { LARDER_NAME } from "../../shared/sheet/workbook-names.ts";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { workbook } from "./sheet-support.ts";

// The first test builds the add-on too, which takes its time on a busy computer.

const build = (book: WorkbookHost, ingredient: unknown) =>
  book.ask({ ask: "build", template: "larder", options: {}, values: { ingredient } });

/** Ingredient and kind of each filled row of the sheet. */
function rowsOf(book: WorkbookHost) {
  const all = book.values("Ingredients", book.usedRange("Ingredients"));
  const head = all.findIndex((row) => row[0] === "Ingredient");
  return all
    .slice(head + 1)
    .filter((row) => row[0] !== "")
    .map((row) => [row[0], row[all[head]?.indexOf("Type") ?? -1]]);
}

test("a larder holds the picked ingredients and no others, and the workbook's name covers them all", async () => {
  const book = await workbook();
  expect(build(book, ["dark rye flour", "bread flour"]).ok).toBe(true);
  expect(rowsOf(book)).toEqual([
    ["dark rye flour", "flour"],
    ["bread flour", "flour"],
  ]);
  const counted = (name: string, row: number) => {
    book.type("Sheet1", `A${row}`, `=COUNTIF(${LARDER_NAME};"${name}")`);
    return book.cell("Sheet1", `A${row}`).value;
  };
  const names = ["Ingredient", "dark rye flour", "bread flour", "cake flour"];
  expect(names.map((name, at) => counted(name, at + 1))).toEqual([1, 1, 1, 0]);
});

test("names that nobody knows are kept as text, one that comes twice stands once, blanks are left out", async () => {
  const book = await workbook();
  const names = ['=HYPERLINK("x")', "", null, "bread flour", "Bread Flours", "  ", "__proto__", "constructor"];
  expect(build(book, names).ok).toBe(true);
  expect(rowsOf(book)).toEqual([
    ['=HYPERLINK("x")', ""],
    ["bread flour", "flour"],
    ["__proto__", ""],
    ["constructor", ""],
  ]);
  expect(
    book
      .formulas("Ingredients", "A1:A30")
      .flat()
      .filter((one) => one?.includes("HYPERLINK")),
  ).toEqual([]);
});

const numbered = (count: number) => Array.from({ length: count }, (_, at) => `flour no. ${at + 1}`);

test.each<[string, unknown, RegExp]>([
  ["a text", "bread flour", /^The ingredients of an ingredient sheet are a list of names\./],
  ["a number", 7, /^The ingredients of an ingredient sheet are a list of names\./],
  ["null", null, /^The ingredients of an ingredient sheet are a list of names\./],
  ["an object", { length: 2 }, /^The input ingredient is neither a number nor a text/],
  ["lists in a list", [["bread flour"]], /^The input ingredient is neither a number nor a text/],
  ["true", [true], /^The input ingredient is neither a number nor a text/],
  ["a name too long", ["x".repeat(501)], /^The input ingredient is neither a number nor a text of up to 500/],
  ["more than a sheet has rows for", numbered(501), /^An ingredient sheet starts with up to 500 ingredients;/],
  ["very many", numbered(20_000), /^An ingredient sheet starts with up to 500 ingredients;/],
])("%s is refused in a sentence, and no sheet is left behind", async (_, ingredient, sentence) => {
  const book = await workbook();
  const before = book.sheetNames();
  const reply = build(book, ingredient);
  expect(reply.ok ? "built" : reply.message).toMatch(sentence);
  expect(book.sheetNames()).toEqual(before);
});

test("the bench is told the names that a larder without a choice holds, and no water", async () => {
  const book = await workbook();
  const { ingredients } = book.answer({ ask: "ingredients" }) as { ingredients: { name: string; kind: string }[] };
  expect(book.ask({ ask: "build", template: "larder" }).ok).toBe(true);
  expect(rowsOf(book)).toEqual(ingredients.map(({ name, kind }) => [name, kind]));
  expect(ingredients.filter(({ kind }) => kind === "water" || kind === "ice")).toEqual([]);
});
