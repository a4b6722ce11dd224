import { describe, expect, test } from "vitest";
import { METRIC } from "../functions/support.ts";
import { costed, larderOf, larderSheet, modelNamed, panLoaf, SLOW } from "../money/costing-support.ts";
import { buildSheet, workbook } from "./sheet-support.ts";

describe("larder sheet", () => {
  test(
    "suggests allergens beside the column of checked ones, never in it",
    async () => {
      const { value } = await larderOf(await workbook(), { ingredient: ["Butter", "Rye flour", "My own mix"] });
      expect([1, 2, 3].map((row) => value("usual", row))).toEqual(["milk", "rye", ""]);
      expect([1, 2, 3].map((row) => value("allergens", row))).toEqual(["", "", ""]);
      expect([1, 2, 3].map((row) => value("kind", row))).toEqual(["fat", "flour", ""]);
      expect(value("unchecked")).toBe(3);
    },
    SLOW,
  );

  test("a pack's number is read digit by digit, so that no locale takes 12,5 for 125 and 1/2 for a day", async () => {
    const packs = [
      "12,5 kg",
      "12.5 kg",
      "0.75 kg",
      "1/2 kg",
      "2,05 kg",
      "25 kg",
      "1.250 kg",
      "1e2 kg",
      "50% kg",
      ".5 kg",
    ];
    const { value } = await larderOf(await workbook(), {
      ingredient: packs.map((_, at) => `Sort ${at}`),
      price: packs.map(() => 25),
      pack: packs,
    });
    const number = (at: number) => value("pack_number", at + 1);
    expect(packs.map((_, at) => number(at))).toEqual([12.5, 12.5, 0.75, 0, 2.05, 25, 0, 0, 0, 0]);
    const price = (at: number) => value("price_each", at + 1);
    expect([0, 1, 2, 5].map(price)).toEqual([2, 2, expect.closeTo(25 / 0.75, 9), 1]);
    // A row without an ingredient stays blank: no price of 0, no note.
    expect([value("price_each", packs.length + 3), value("price_remark", packs.length + 3)]).toEqual(["", ""]);
    // What is not so plain is the call's to read: half a kilogram at 25, and kilograms with three decimals.
    expect(price(3)).toBeCloseTo(50, 9);
    expect(price(6)).toBeCloseTo(20, 9);
  });

  test(
    "eggs are weighed and priced by the bakery's own country",
    async () => {
      const book = await workbook();
      await buildSheet(
        { setting: ["Labelling rules", "Decimals of prices"], setting_value: ["UK", "0"] },
        { book, model: modelNamed("settings"), options: METRIC },
      );
      const larder = await larderOf(book, { ingredient: ["Whole egg"], price: [36], pack: ["15 dozen"] });
      // 180 large eggs without their shells: 60 g in the UK (grades of Regulation (EC) 589/2008), 50 g in the US (USDA SR28 01123).
      expect(larder.value("country")).toBe("UK");
      expect(larder.value("price_each", 1)).toBeCloseTo(36 / (180 * 0.06), 9);
      // Money has the decimals of the bakery's currency: 3.33 as 3.
      expect(book.cell(larder.sheet, larder.at("price_each", 1)).shown).toBe("3");
      larder.type("country", "US");
      expect(larder.value("price_each", 1)).toBeCloseTo(36 / (180 * 0.05), 9);
      larder.type("country", "");
      expect(larder.value("price_each", 1)).toBeCloseTo(36 / (180 * 0.05), 9);
      // A formula begins with the same egg, and its label with the same law.
      const cake = await costed(
        book,
        { by: "batter", amount: 1000, ingredient: ["Flour", "Whole egg"], kind: ["flour", "egg"], percent: [1, 0.6] },
        modelNamed("cake"),
      );
      expect([cake.value("egg_weight"), cake.value("law")]).toEqual([60, "UK"]);
      // 375 g at 4.00 a kilogram are 1.50, the whole without a price for flour.
      expect(book.cell(cake.sheet, cake.at("cost_shown", 2)).shown).toBe("2");
      // 375 g of egg are 6.25 of them.
      expect(cake.value("eggs")).toBeCloseTo(375 / 60, 9);
    },
    SLOW,
  );

  test(
    "a second one says that formulas read the first",
    async () => {
      const book = await workbook();
      const first = await larderOf(book, { ingredient: ["Flour"], price: [1], pack: ["1 kg"] });
      const answer = book.answer({
        ask: "build",
        template: "larder",
        values: { ingredient: ["Flour"], price: [9], pack: ["1 kg"] },
      });
      expect(answer).toMatchObject({
        sheet: "Ingredients (2)",
        note: expect.stringMatching(/has an ingredient sheet already/),
      });
      const sheet = await costed(book, {
        title: "Bread",
        by: "dough",
        ingredient: ["Flour"],
        kind: ["flour"],
        weighed: [1000],
      });
      expect(sheet.value("row_cost", 1)).toBeCloseTo(1, 9);
      first.type("price", "2", 1);
      expect(sheet.value("row_cost", 1)).toBeCloseTo(2, 9);
    },
    SLOW,
  );

  test(
    "a service call that throws, each in turn, leaves neither sheet nor name",
    async () => {
      const probe = await workbook();
      await larderOf(probe);
      const book = await workbook();
      for (let call = 1; call <= probe.trail.length; call++) {
        book.failAt(call);
        const reply = book.ask({ ask: "build", template: "larder", values: larderSheet.sample });
        book.failAt(undefined);
        expect(reply.ok, `call ${call}`).toBe(false);
        expect(book.sheetNames(), `call ${call}`).toEqual(["Sheet1"]);
      }
      const sheet = await buildSheet(panLoaf.sample, { book });
      expect(book.shownTexts(sheet.sheet, book.usedRange(sheet.sheet)).flat()).not.toContain("Cost and price");
    },
    SLOW,
  );

  test(
    "rows can be inserted, deleted and sorted, and every formula sheet follows",
    async () => {
      const book = await workbook();
      const larder = await larderOf(book, { ingredient: ["Flour", "Salt"], price: [2, 4], pack: ["1 kg", "1 kg"] });
      const sheet = await costed(book, {
        title: "Bread",
        by: "dough",
        ingredient: ["Flour", "Salt", "Oat mix"],
        kind: ["flour", "salt", "grain"],
        weighed: [1000, 20, 100],
      });
      expect(sheet.value("price", 3)).toBe("");
      const line = (row: number) => Number(larder.at("ingredient", row).replace(/\D/g, ""));
      book.insertRows(larder.sheet, line(1));
      for (const [name, entry] of [
        ["ingredient", "Oat mix"],
        ["price", "5"],
        ["pack", "1 kg"],
      ] as const)
        larder.type(name, entry, 1);
      for (const [at, cost] of [2, 0.08, 0.5].entries()) expect(sheet.value("row_cost", at + 1)).toBeCloseTo(cost, 9);
      book.sortRange(larder.sheet, `${larder.at("ingredient", 1)}:${larder.at("measures", 3)}`, "D");
      for (const [at, cost] of [2, 0.08, 0.5].entries()) expect(sheet.value("row_cost", at + 1)).toBeCloseTo(cost, 9);
      book.deleteRows(larder.sheet, line(1));
      expect(sheet.value("cost_ingredients")).toBeCloseTo(0.58, 9);
    },
    SLOW,
  );
});

test("over an ingredient sheet of an older version no formula sheet shows an error: it says what to do", async () => {
  const book = await workbook();
  await larderOf(book, { ingredient: ["Flour"], price: [20], pack: ["25 kg"] });
  book.engine.run("DELETE_NAMED_RANGE", { name: "gramwright_prices" });
  const answer = (question: object) => book.answer(question) as { sheet: string; note?: string };
  const loaf = () => answer({ ask: "build", template: "pan-loaf", values: { title: "Loaf" } });
  const { sheet, note } = loaf();
  expect(note).toMatch(/^No cost or label was built: the ingredient sheet comes from an older version\./);
  for (const text of book.shownTexts(sheet, book.usedRange(sheet)).flat()) expect(text).not.toMatch(/^#/);
  const reply = book.ask({ ask: "change", sheet, part: "cost", isWanted: true });
  expect(reply).toMatchObject({ ok: false, message: expect.stringMatching(/older version/) });
  // What it says leads to a sheet that has the names, and costs are there again.
  book.duplicateSheet("Ingredients");
  book.deleteSheet("Ingredients");
  await larderOf(book, { ingredient: ["Flour"], price: [20], pack: ["25 kg"] });
  const costed = loaf();
  expect(costed.note ?? "").not.toMatch(/older version/);
  // Without labelling rules a formula sheet has no label, and a finished product none either; what to do is said of each.
  const NO_LABEL = "It has no label yet. Choose EU, UK or US in Bakery settings, then ";
  expect(costed.note).toBe(`${NO_LABEL}add the label under Check.`);
  const bun = answer({ ask: "build", template: "finished-product", values: { title: "Bun" } });
  expect(bun.note).toBe(`${NO_LABEL}build this sheet again.`);
  for (const built of [costed, bun])
    expect(book.shownTexts(built.sheet, book.usedRange(built.sheet)).flat()).not.toContain("Label, an estimate");
  expect(book.formulas(costed.sheet, book.usedRange(costed.sheet)).flat().join(" ")).toContain("gramwright_prices");
});
