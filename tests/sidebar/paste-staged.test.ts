// Staged formulas from text to built sheet: flour, hydration and prefermented share stand on it as the text has them.
import { beforeAll, describe, expect, test } from "vitest";
import { assess } from "../../sidebar/paste-recipe/order.ts";
import { emptyState, takeText } from "../../sidebar/paste-recipe/state.ts";
import { type Book, openBook } from "../../src/workbook/scripted.ts";
import { STAGED } from "./staged-formulas.ts";

describe("staged formulas on their sheets", () => {
  let book: Book;
  beforeAll(async () => {
    book = await openBook();
  });

  test("are twenty and more", () => expect(STAGED.length).toBeGreaterThanOrEqual(20));

  test.each(STAGED)("$title", ({ text, title, template, flour, hydration, share, dough }) => {
    const state = emptyState();
    takeText(state, text);
    const { order, faults } = assess(state);
    expect(faults).toEqual([]);
    expect(order.template).toBe(template);
    expect(order.values.title).toBe(title);
    const sheet = book.build(order.template, order.values, order.options);
    expect(sheet.shown("check")).toBe("");
    const rows = Array.from({ length: sheet.rows("kind") }, (_, row) => row);
    const weightOf = (isCounted: (kind: string) => boolean) =>
      rows.reduce(
        (all, row) => all + (isCounted(String(sheet.value("kind", row))) ? Number(sheet.value("grams", row)) : 0),
        0,
      );
    const flourOf = weightOf((kind) => kind === "flour");
    expect(flourOf / flour).toBeCloseTo(1, 3);
    expect(Math.abs(Number(sheet.value("hydration")) * 100 - hydration)).toBeLessThanOrEqual(0.1);
    expect(Math.abs((Number(sheet.value("pre_flour")) / flourOf) * 100 - share)).toBeLessThanOrEqual(0.1);
    expect(Math.abs(Number(sheet.value("dough")) - dough)).toBeLessThanOrEqual(0.001 * dough);
  });
});
