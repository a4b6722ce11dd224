import { expect, test } from "vitest";
import type { SheetModel } from "../../shared/sheet/model.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { METRIC } from "../functions/support.ts";
import { buildSheet, HANDOUT } from "./sheet-support.ts";

test("a pan loaf made by tins counts its tins, and a day can order some", async () => {
  const model = TEMPLATES.find(({ name }) => name === "pan-loaf") as SheetModel;
  const { size_name: _, size_pieces: __, size_weight: ___, ...formula } = HANDOUT;
  const { book, sheet, value } = await buildSheet(
    {
      ...formula,
      by: "tins",
      tins: 12,
      tin_shape: "box",
      tin_size_1: 33,
      tin_size_2: 10,
      tin_size_3: 10,
      tin_kind: "white",
    },
    { model, options: { ...METRIC, parts: ["tin"] } },
  );
  expect(value("pieces")).toBe(12);
  // 33 × 10 × 10 cm³ at the usual 0.43 g/cm³ (the project's guide), twelve times
  expect(value("dough")).toBeCloseTo(12 * 3300 * 0.43, 6);
  const { sheets } = book.answer({ ask: "formulas" }) as { sheets: { sheet: string; pieces: number }[] };
  expect(sheets).toMatchObject([{ sheet, pieces: 12 }]);
  const day = book.answer({ ask: "day", day: "2026-12-01", orders: [{ sheet, pieces: 24 }] }) as { sheet: string };
  const texts = book.values(day.sheet, book.usedRange(day.sheet)).flat();
  expect(texts.some((cell) => typeof cell === "number" && Math.abs(cell - 24 * 3300 * 0.43) < 1e-6)).toBe(true);
});
