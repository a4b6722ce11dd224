// Recipe lines read by the add-on in a local workbook that all tests of reading share.
import { expect } from "vitest";
import type { ReadLine, ReadRecipe } from "../../shared/recipe/read-line.ts";
import { workbook } from "../templates/sheet-support.ts";

export const book = await workbook();
export const asked = (text: string, name = "") => ({ text, name });
export const read = (text: string, cups = "US", name = ""): ReadRecipe =>
  book.answer({ ask: "read", cups, lines: text.split("\n").map((line) => asked(line, name)) }) as ReadRecipe;
export const line = (text: string, cups = "US", name = ""): ReadLine => {
  const [only, ...others] = read(text, cups, name).lines;
  expect(others, text).toEqual([]);
  if (only === undefined) throw new Error(`${text} was dropped`);
  return only;
};
export const near = (actual: number | null, wanted: number, within: number, what: string) => {
  expect(typeof actual, what).toBe("number");
  expect(Math.abs((actual ?? 0) - wanted), `${what}: ${actual}`).toBeLessThanOrEqual(within);
};

/** Every line comes back, with all it needs or with a question. */
export const isHonest = ({ is, name, kind, grams, asks, says, text }: ReadLine) => {
  if (is === "ingredient") expect(name !== "" && kind !== "" && grams !== null, `${text}: ${asks}`).toBe(asks === "");
  else
    expect([name, kind, grams, asks]).toEqual([
      is === "aside" && says.startsWith("Not counted") ? name : "",
      kind,
      null,
      "",
    ]);
};
