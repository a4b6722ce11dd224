// Formula sheets with the trigger at work, and what is read back from them.
import { expect } from "vitest";
import { type Book, openBook, type Sheet } from "../../src/workbook/scripted.ts";

/** A pan loaf with two flours and a preferment that is bought in, scaled as told. */
export const ROWS = [
  ["Strong white flour", "flour", 0.9],
  ["Rye flour", "flour", 0.1],
  ["Water", "water", 0.62],
  ["Salt", "salt", 0.02],
  ["Fresh yeast", "yeast", 0.015],
  ["Butter", "fat", 0.03],
] as const;
export const ONE_FLOUR = [["Flour", "flour", 1], ...ROWS.slice(2)] as const;
/** Flours and the levain's flour make 100 %: 0.2 ÷ 2 are flour. */
export const LEVAIN = [
  ["White flour", "flour", 0.8],
  ["Rye flour", "flour", 0.1],
  ["Levain", "levain 100%", 0.2],
  ...ROWS.slice(2, 4),
] as const;
/** The same beside flours that make 100 % without it. */
export const ADDED = [["White flour", "flour", 0.9], ["Rye flour", "flour", 0.1], ...LEVAIN.slice(2)] as const;

export type Recipe = readonly (readonly [string, string, number])[];
export type By = "pieces" | "tins" | "dough" | "flour";
export const AMOUNTS: Readonly<Record<By, Readonly<Record<string, unknown>>>> = {
  pieces: { by: "pieces", size_pieces: [24, 12], size_weight: [700, 350], size_loss: [0.11, 0.13] },
  tins: { by: "tins", amount: 30 },
  dough: { by: "dough", amount: 25_000 },
  flour: { by: "flour", amount: 14_000 },
};
const TIN = {
  tin_shape: "box",
  tin_size_1: 21,
  tin_size_2: 11,
  tin_size_3: 9,
  tin_size_4: 19,
  tin_size_5: 9,
  tin_kind: "white",
};

export type How = {
  readonly template?: string;
  readonly recipe?: Recipe;
  /** Without it the values say what the sheet is scaled to. */
  readonly by?: By;
  readonly values?: Readonly<Record<string, unknown>>;
  readonly weight?: "g" | "oz";
};

export async function built({
  template = "pan-loaf",
  recipe = ROWS,
  by,
  values = {},
  weight = "g",
}: How = {}): Promise<Sheet> {
  const book = await openBook();
  const column = (at: 0 | 1 | 2) => recipe.map((row) => row[at]);
  const all = {
    title: "Quay loaf",
    ...(by === undefined ? {} : AMOUNTS[by]),
    ...(template === "pan-loaf" ? TIN : {}),
    mixer_limit: 20_000,
    step_coarse: 5,
    step_fine: 1,
    ingredient: column(0),
    kind: column(1),
    percent: column(2),
    ...values,
  };
  return book.build(template, all as never, { weight });
}

const known = new Map<string, Promise<Sheet>>();
/** One sheet for all edits of a file that may follow each other: building takes most of the time. */
export function shared(how: How): Promise<Sheet> {
  const key = JSON.stringify(how);
  const sheet = known.get(key) ?? built(how);
  known.set(key, sheet);
  return sheet;
}

const numberAt = (sheet: Sheet, name: string, row?: number): number => {
  const value = sheet.value(name, row);
  expect(typeof value, `${name} ${row ?? ""}: ${String(value)}`).toBe("number");
  return value as number;
};
export const exact = (sheet: Sheet, row: number): number => numberAt(sheet, "exact", row);
export const percents = (sheet: Sheet, rows = 8): unknown[] =>
  Array.from({ length: rows }, (_, at) => sheet.value("percent", at + 1));
/** The column's formula stands: nothing of it is typed over, and its rows are filled. */
export function stands(sheet: Sheet): void {
  expect(sheet.value("check")).toBe("");
  isWhole(sheet);
}

/** The same where the sheet may ask whether so much is meant. */
export function isWhole(sheet: Sheet): void {
  expect(String(sheet.value("check"))).not.toMatch(/typed over|damaged|undo/);
  for (const name of ["weight", "per_mix"].filter((one) => sheet.names().includes(one))) {
    expect(sheet.value(name, 0), name).toBe("");
    expect(typeof sheet.value(name, 1), name).toBe("number");
  }
}

/** What the script told the log: nothing, unless it failed. */
export const log = (book: Book): readonly string[] => book.shown.messages;

/** The same but for rounding. */
export const near = (value: number, wanted: number) => expect(Math.abs(value - wanted) / wanted).toBeLessThan(1e-9);
