// What a card leaves as it was, what it refuses, and what it says of its formula sheet.
import { describe, expect, test } from "vitest";
import { cookie } from "../../templates/cookie.ts";
import { METRIC_UNITS } from "../kit/units.ts";
import { buildSheet, HANDOUT } from "../templates/sheet-support.ts";
import { card } from "./card-support.ts";

describe("nothing is lost", () => {
  test("a second card is a second sheet, and the formula sheet stays as it was", async () => {
    const { book, sheet } = await buildSheet(HANDOUT);
    const before = book.shownTexts(sheet, book.usedRange(sheet));
    expect(card(book, { sheet }).sheet).toBe("Hand-out – card");
    expect(card(book, { sheet }).sheet).toBe("Hand-out – card (2)");
    expect(book.shownTexts(sheet, book.usedRange(sheet))).toEqual(before);
  });

  test("rows inserted above and in the table, a renamed tab and a duplicate: the card is of what stands there", async () => {
    const { book, sheet, at, type } = await buildSheet(HANDOUT);
    book.insertRows(sheet, 1);
    book.insertRows(sheet, Number(at("percent", 3).replace(/\D/g, "")) + 1);
    const copy = book.duplicateSheet(sheet, "Monday");
    type("percent", "70%", 3);
    book.type("Monday", at("percent", 3), "60%");
    expect(card(book, { sheet }).figure("Water")).toBeCloseTo(11520, 6);
    // 28 470 ÷ 1.63 × 0.6 = 10 479.75
    expect(card(book, { sheet: copy }).figure("Water")).toBeCloseTo(10480, 6);
  });

  test.each([
    ["a sheet that is gone", { sheet: "Gone" }, /no sheet "Gone" any more/],
    ["a sheet that is none of ours", { sheet: "Sheet1" }, /"Sheet1" is no formula sheet of Gramwright/],
    ["an amount below 0", { by: "pieces", amount: -3 }, /no number above 0/],
    ["an unknown kind", { kind: "poster" }, /kind of card is "poster"; it can be "values" or "living"/],
    ["an ingredient that left", { by: "ingredient", ingredient: "Rye" }, /"Rye" is no ingredient/],
  ])("refuses %s with a sentence", async (_, ask, sentence) => {
    const { book, sheet } = await buildSheet(HANDOUT);
    const names = book.sheetNames();
    const reply = book.ask({ ask: "card", sheet, ...ask });
    expect(reply.ok ? "" : reply.message).toMatch(sentence);
    expect(book.sheetNames()).toEqual(names);
  });

  test.each(["values", "living"] as const)("a step comes with its temperature and what to do: %s", async (kind) => {
    const { book, sheet, type, at } = await buildSheet(
      { ...HANDOUT, step: ["Mix", "Bake", "Cool"], step_minutes: [12, 30, 60], ready: 8 / 24 },
      { model: cookie, options: { ...METRIC_UNITS, parts: ["steps"] } },
    );
    type("step_temp", "230", 2);
    book.type(sheet, at("step_how", 2), "Steam for the first ten minutes.");
    book.type(sheet, at("step_how", 3), "On racks.");
    const { rows } = card(book, { sheet, kind });
    const steps = rows().map((row) => row[1]);
    expect(steps).toEqual(
      expect.arrayContaining(["Mix", "Bake at 230 °C: Steam for the first ten minutes.", "Cool: On racks."]),
    );
  });

  test("a card of values sets thousands apart, and keeps the decimals that a weight has", async () => {
    const { book, sheet } = await buildSheet({
      ...HANDOUT,
      step_coarse: 1,
      step_fine: 0.1,
      percent: [1, 0.67, 0.02, 0.0001],
    });
    const { sheet: made } = card(book, { sheet, kind: "values" });
    const shown = book.shownTexts(made, book.usedRange(made));
    const of = (name: string) => shown.find((row) => row.includes(name))?.[2];
    // 73 × 390 = 28 470 g of dough over 1.6901 is 16 845.2 g of flour and 1.7 g of yeast.
    expect(of("Dough to make (g)")).toBe("28,470");
    expect(of("Flour")).toBe("16,845");
    expect(of("Yeast")).toBe("1.7");
    expect(of("Pieces")).toBe("73");
  });

  test("refuses a formula sheet that cannot read a row, in the sheet's own words", async () => {
    const { book, sheet, at } = await buildSheet(HANDOUT);
    book.paste(sheet, at("percent", 2), "two thirds");
    const reply = book.ask({ ask: "card", sheet });
    expect(reply.ok ? "" : reply.message).toMatch(/has no weights yet\. Water C16 “two thirds”: enter a number/);
  });

  test("refuses a sheet that has no weights, with what its check line says", async () => {
    const { book, sheet, type, at } = await buildSheet(HANDOUT, {
      model: cookie,
      options: { ...METRIC_UNITS, parts: [] },
    });
    type("percent", "", 2);
    const reply = book.ask({ ask: "card", sheet });
    expect(reply.ok ? "" : reply.message).toMatch(
      new RegExp(`has no weights yet\\. .*${at("percent", 2)}: no percentage`),
    );
  });

  test("what the formula sheet says is wrong stands on the card", async () => {
    const { book, sheet, type, at } = await buildSheet(HANDOUT);
    type("kind", "leven", 4);
    const made = card(book, { sheet, kind: "values" });
    const texts = book.shownTexts(made.sheet, book.usedRange(made.sheet)).flat().join(" ").replace(/\s+/g, " ");
    expect(texts).toContain(`First look at the formula sheet: Yeast ${at("kind", 4)}: “leven” is no type.`);
  });

  test("a service call that throws leaves the workbook as it was", async () => {
    const { book, sheet } = await buildSheet(HANDOUT);
    card(book, { sheet, kind: "living" });
    const calls = book.trail.length;
    const names = book.sheetNames();
    for (let call = 1; call <= calls; call += 4) {
      book.failAt(call);
      const reply = book.ask({ ask: "card", sheet, kind: "living" });
      book.failAt(undefined);
      expect(reply.ok, `call ${call}`).toBe(false);
      expect(book.sheetNames(), `call ${call}`).toEqual(names);
    }
  });
});
