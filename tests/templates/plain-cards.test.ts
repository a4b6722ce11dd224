import { expect, test } from "vitest";
import { METRIC } from "../functions/support.ts";
import { OLDER } from "../kit/older.ts";
import { ownParts, templateNamed } from "./plain-support.ts";
import { buildSheet, workbook } from "./sheet-support.ts";

test.each(OLDER.flatMap(({ name }) => (["values", "living"] as const).map((kind) => [name, kind] as const)))(
  "%s: a card (%s) from the plain sheet says what one from the other form says",
  async (name, kind) => {
    const model = templateNamed(name);
    const book = await workbook();
    const options = { ...METRIC, parts: ownParts(model) };
    const sheets = [
      await buildSheet(model.sample, { model, book, options }),
      await buildSheet(model.sample, { model, book, options: { ...options, form: "plain" } }),
    ];
    const [added, plain] = sheets.map(({ sheet }) => {
      const { sheet: card } = book.answer({ ask: "card", sheet, kind }) as { sheet: string };
      const [, , ...rest] = book.shownTexts(card, book.usedRange(card));
      return rest;
    });
    // Its first two rows name the sheet it was made from.
    expect(added?.length).toBeGreaterThan(15);
    expect(plain).toEqual(added);
    // A cake is mixed as a batter, everything else here as a dough.
    const [what, other] = name === "cake" ? ["Batter", "Dough"] : ["Dough", "Batter"];
    const labels = added?.flat().join("\n") ?? "";
    expect(labels).toMatch(new RegExp(`^${what} in all`, "m"));
    expect(labels).not.toMatch(new RegExp(`^${other} in `, "m"));
  },
);
