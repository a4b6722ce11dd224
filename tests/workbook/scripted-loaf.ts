// The loaf that the tests of scripted.ts change.
import { openBook, type Sheet } from "../../src/workbook/scripted.ts";

export const LOAF = {
  title: "Quay test loaf",
  by: "pieces",
  size_name: ["loaf"],
  size_pieces: [100],
  size_weight: [840],
  ingredient: ["Flour", "Water", "Salt", "Yeast"],
  kind: ["flour", "water", "salt", "yeast"],
  percent: [1, 0.65, 0.02, 0.01],
};
/** 100 pieces of 840 g from 168 percent: 84 000 g / 1.68 of flour. */
export const FLOUR = 50_000;

const start = await openBook();
start.build("soft-bun", LOAF, { parts: ["water"] });

/** In a workbook of its own, for a test to change. */
export const loaf = (): Sheet => start.copy().sheet("Quay test loaf");
export const column = ({ value }: Sheet, name: string, from = 1, to = 4): unknown[] =>
  Array.from({ length: to - from + 1 }, (_, index) => value(name, from + index));
export const weights = (sheet: Sheet): number[] => column(sheet, "grams").map((one) => Math.round(Number(one)));
