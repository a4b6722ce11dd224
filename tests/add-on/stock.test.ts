// Ingredients that are added to the ingredient sheet: into free rows, each once, never over anything.
import { beforeEach, describe, expect, test } from "vitest";
import { type Book, openBook } from "../../src/workbook/scripted.ts";

const refused = (sentence: RegExp) => ({ ok: false, message: expect.stringMatching(sentence) });

describe("the ingredient sheet", () => {
  let book: Book;
  beforeEach(async () => {
    book = await openBook();
  });
  const add = (...names: string[]) =>
    book.ask({ ask: "stock", ingredients: names.map((name) => ({ name, kind: "other" })) });
  const names = () => {
    const sheet = book.sheet("Ingredients");
    return Array.from({ length: sheet.rows("ingredient") }, (_, row) => sheet.value("ingredient", row)).filter(Boolean);
  };

  test("gets what it lacks, with the type, below what it has", () => {
    book.build("larder", { ingredient: ["Rye flour"], price: [1.2], pack: ["1 kg"] });
    expect(add("moon dust", "Rye flour", "MOON DUST")).toEqual({
      ok: true,
      answer: { sheet: "Ingredients", added: ["moon dust"] },
    });
    expect(names()).toEqual(["Rye flour", "moon dust"]);
    expect(book.sheet("Ingredients").value("kind", 2)).toBe("other");
    expect(book.sheet("Ingredients").value("price", 1)).toBe(1.2);
  });
  test("a name that looks like a formula stays text", () => {
    book.build("larder", { ingredient: ["Rye flour"] });
    add("=1+1");
    expect(names()).toContain("=1+1");
  });
  test("a row with a price and no name is not free", () => {
    const sheet = book.build("larder", { ingredient: ["Rye flour"] });
    sheet.type("price", "3", 2);
    add("moon dust");
    expect(sheet.value("ingredient", 2)).toBe("");
    expect(sheet.value("ingredient", 3)).toBe("moon dust");
  });
  test("that is not there, or is full, is told", () => {
    expect(add("moon dust")).toEqual(refused(/There is no ingredient sheet in this workbook yet/));
    book.build("larder", { ingredient: ["Rye flour"] });
    const many = Array.from({ length: 200 }, (_, at) => `thing ${at}`);
    expect(add(...many)).toEqual(refused(/free rows, and 200 are needed/));
    expect(names()).toEqual(["Rye flour"]);
  });
  test.each([
    [{ ingredients: "flour" }, /The ingredients from the sidebar/],
    [{ ingredients: [] }, /Between 1 and 200 ingredients/],
    [{ ingredients: [{ name: " ", kind: "" }] }, /Ingredient 1 needs a name/],
    [{ ingredients: [{ name: "flour", kind: "kind" }] }, /Ingredient 1 needs a name/],
  ])("%j is refused", (asked, sentence) => {
    expect(book.ask({ ask: "stock", ...asked })).toEqual(refused(sentence));
  });
});
