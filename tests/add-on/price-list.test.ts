// A price list into the ingredient sheet: what is written, what each price was before, and what is left alone.
import { beforeEach, describe, expect, test } from "vitest";
import { type Book, openBook, type Sheet } from "../../src/workbook/scripted.ts";

let book: Book;
let sheet: Sheet;
beforeEach(async () => {
  book = await openBook();
  sheet = book.build("larder", {
    ingredient: ["Strong white flour", "Sea salt", "Butter"],
    price: [21.25, 9, 86],
    pack: ["25 kg", "10 kg", "10 kg"],
    supplier: ["Mill", "", ""],
  });
});

const row = (name: string, price: number, pack = "", supplier = "") => ({ name, price, pack, supplier });
type Reply = { readonly ok: boolean; readonly message?: string; readonly answer?: Record<string, unknown> };
const take = (rows: readonly object[], added: readonly string[] = [], also: readonly object[] = []): Reply =>
  book.ask({ ask: "takePrices", rows, added, also }) as Reply;
const values = (name: string) => [1, 2, 3, 4].map((at) => sheet.value(name, at));

describe("prices of a list", () => {
  test("stand in their rows, with what each was before and the day; the price per kilogram follows", () => {
    const { answer } = take([row("Sea salt", 9.5, "10 kg", "Harbour"), row("Butter", 45, "5 kg")]);
    expect(answer).toMatchObject({
      written: 2,
      formulas: [],
      added: [],
      changes: [
        { name: "Sea salt", before: 9, now: 9.5 },
        { name: "Butter", before: 86, now: 45 },
      ],
    });
    expect(values("price")).toEqual([21.25, 9.5, 45, ""]);
    expect(values("pack")).toEqual(["25 kg", "10 kg", "5 kg", ""]);
    expect(values("supplier")).toEqual(["Mill", "Harbour", "", ""]);
    expect(values("price_each").slice(0, 3)).toEqual([0.85, 0.95, 9]);
    expect(values("price_before")).toEqual(["", 9, 86, ""]);
    for (const at of [1, 2, 3]) expect(sheet.value("price_seen", at)).toMatch(/^\d{4}-\d\d-\d\d$/);
  });

  test("a new ingredient comes in with its price, and a name that was chosen is known the next time", () => {
    const { answer } = take(
      [row("Spelt flour", 40, "25 kg"), row("Sea salt", 9.2, "10 kg")],
      ["Spelt flour"],
      [{ name: "Salt, fine", of: "Sea salt" }],
    );
    expect(answer).toMatchObject({ written: 2, added: ["Spelt flour"] });
    expect([values("ingredient")[3], values("price")[3], values("pack")[3]]).toEqual(["Spelt flour", 40, "25 kg"]);
    expect(values("also_called")[1]).toBe("Salt, fine");
  });

  test("a price that is a cell formula stays, and is named", () => {
    sheet.type("price", "=20*1.1", 1);
    expect(take([row("Strong white flour", 30), row("Sea salt", 9.1)]).answer).toMatchObject({
      written: 1,
      formulas: ["Strong white flour"],
    });
    expect(values("price")[0]).toBeCloseTo(22, 9);
  });

  test("a name that went meanwhile, or stands there twice, stops all of it before anything is written", () => {
    sheet.type("ingredient", "Rock salt", 2);
    expect(take([row("Butter", 90), row("Sea salt", 9.1)]).message).toMatch(
      /^"Sea salt" is no longer on “Ingredients”/,
    );
    expect(values("price")).toEqual([21.25, 9, 86, ""]);
    sheet.type("ingredient", "Butter", 2);
    expect(take([row("Butter", 90)]).ok).toBe(false);
  });

  test("what is no price is refused, and without the sheet it is said where to build it", async () => {
    expect(take([row("Butter", -1)]).message).toMatch(/could not be read/);
    expect(take([]).ok).toBe(false);
    book = await openBook();
    expect(take([row("Butter", 1)]).message).toMatch(/There is no ingredient sheet/);
  });
});
