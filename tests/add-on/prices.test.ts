// Prices compared with those last seen: what changed is told and kept, and nothing else is touched.
import { describe, expect, test } from "vitest";
import { priceChanges } from "../../shared/money/price-changes.ts";
import { changesSentence } from "../../sidebar/kit/price-watch.ts";
import { addedSentence, linkedSentence } from "../../sidebar/plan/refresh.ts";
import { openBook } from "../../src/workbook/scripted.ts";

const row = (name: unknown, price: unknown, ...kept: unknown[]) => ({ name, price, kept });

describe("what was seen of prices", () => {
  test("a first price is kept and no change; another one is, with the one before it and the day", () => {
    const { kept, changes, isNew } = priceChanges(
      [row("Flour", 20), row("Butter", 86, 80, 75, "2026-01-01"), row("Salt", 9, 9, "", "2026-01-01")],
      "2026-02-03",
    );
    expect(kept).toEqual([
      [20, "", "2026-02-03"],
      [86, 80, "2026-02-03"],
      [9, "", "2026-01-01"],
    ]);
    expect(changes).toEqual([{ name: "Butter", before: 80, now: 86 }]);
    expect(isNew).toBe(true);
  });
  test("a price that is gone, a text and a row without a name keep what is known", () => {
    const { kept, isNew } = priceChanges(
      [row("Flour", "", 20, 18, "2026-01-01"), row("Oil", "n/a", 5, "", "2026-01-01"), row("", 3)],
      "2026-02-03",
    );
    expect(kept).toEqual([
      [20, 18, "2026-01-01"],
      [5, "", "2026-01-01"],
      ["", "", ""],
    ]);
    expect(isNew).toBe(false);
  });
});

test("on the sheet: kept at the right, told once, and not written where nothing changed", async () => {
  const book = await openBook();
  const ask = (day: string) => book.ask({ ask: "prices", day });
  expect(ask("2026-01-01")).toMatchObject({ ok: false, message: expect.stringMatching(/no ingredient sheet/) });
  expect(book.ask({ ask: "prices", day: "2026-01-01", unasked: true })).toEqual({ ok: true, answer: { changes: [] } });
  const sheet = book.build("larder", { ingredient: ["Flour", "Butter"], price: [20, 80], pack: ["25 kg", "10 kg"] });
  expect(ask("2026-01-01")).toEqual({ ok: true, answer: { changes: [] } });
  expect([sheet.value("price_kept", 1), sheet.value("price_seen", 2)]).toEqual([20, "2026-01-01"]);
  sheet.type("price", "86", 2);
  expect(ask("2026-02-03")).toEqual({ ok: true, answer: { changes: [{ name: "Butter", before: 80, now: 86 }] } });
  expect(["price_kept", "price_before", "price_seen"].map((name) => sheet.value(name, 2))).toEqual([
    86,
    80,
    "2026-02-03",
  ]);
  expect(ask("2026-02-04")).toEqual({ ok: true, answer: { changes: [] } });
  expect(sheet.value("price_seen", 2)).toBe("2026-02-03");
  expect(book.ask({ ask: "prices", day: "today" })).toMatchObject({ ok: false });
});

test("the panel says what came of each button", () => {
  expect(changesSentence({ changes: [{ name: "Butter", before: 80, now: 86 }] })).toBe(
    "Changed since they were last compared: Butter 80 → 86.",
  );
  expect(changesSentence({ changes: [] })).toMatch(/^No price has changed/);
  expect(linkedSentence({ sheets: ["Bun"] })).toBe('Linked: "Bun".');
  expect(linkedSentence({ sheets: [], note: "A circle." })).toBe("A circle.");
  expect(addedSentence({ sheet: "Ingredients", added: ["Sugar"], also: ["Butter as Unsalted butter"] })).toBe(
    'Added to "Ingredients": Sugar. Enter prices and allergens there. Known now by other names: Butter as Unsalted butter.',
  );
});
