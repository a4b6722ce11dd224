// Prices are found by whole names: no sign in a name is a pattern, spaces around it and capitals do not matter, and what stands twice is named.
import { beforeAll, expect, test } from "vitest";
import type { Value } from "../../shared/sheet/model.ts";
import { type Book, openBook, type Sheet } from "../../src/workbook/scripted.ts";
import { panLoaf } from "../../templates/pan-loaf.ts";
import { METRIC, type Tried, US, verdict } from "./formula-sheet-page.ts";

/** What is bought, and a kilogram's price. */
const BOUGHT = [
  ">5 grain",
  "Hand*",
  "=Rye",
  "a~b",
  "a~~b",
  "Fl?ur",
  "Flour",
  "fl*ur",
  "Sugar",
  "Salt",
  "No\u00a0break ",
];
const ALSO = ["", "", "", "", "", "", "White flour; Bread flour", "", "", "sea salt; Sel*", ""];
const USED = [
  ["Flour", 7],
  [">5 grain", 1],
  ["Hand*", 2],
  ["=Rye", 3],
  ["a~b", 4],
  ["a~~b", 5],
  [" Salt ", 10],
  ["BREAD FLOUR", 7],
  ["Sel*", 10],
  ["Fl?ur", 6],
  ["fl*ur", 8],
  ["No break", 11],
  ["fl*", undefined],
  ["*", undefined],
  ["Hand", undefined],
  [">5", undefined],
] as const;

let book: Book;
let larder: Sheet;
let loaf: Sheet;
const rows = <T>(of: (at: number) => T): T[] => USED.map((_, at) => of(at));

beforeAll(async () => {
  book = await openBook();
  larder = book.build("larder", {
    ingredient: BOUGHT,
    kind: BOUGHT.map(() => "grain"),
    price: BOUGHT.map((_, at) => at + 1),
    pack: BOUGHT.map(() => "1 kg"),
    also_called: ALSO as Value[],
  });
  loaf = book.build("pan-loaf", {
    ...panLoaf.sample,
    ingredient: rows((at) => USED[at]?.[0] ?? ""),
    kind: rows((at) => (at === 0 ? "flour" : "grain")),
    percent: rows((at) => (at === 0 ? 1 : 0.05)),
  });
});

const prices = new Map(USED.flatMap(([name, price]) => (price === undefined ? [] : [[clean(name), price] as const])));
function clean(name: string): string {
  return name.trim().toLowerCase();
}

test("every name finds its own price, and those that are none find none", () => {
  const tried: Tried = { book, sheet: loaf, units: METRIC, prices };
  expect(rows((at) => loaf.value("price_shown", at + 1))).toEqual(USED.map(([, price]) => price ?? ""));
  const { check, wrong, blank } = verdict(tried);
  expect([check, ...wrong]).toEqual([""]);
  expect(blank.filter((name) => /cost|price/.test(name))).toEqual([]);
});

test("a price for a pound is what 0.45359237 kg cost", () => {
  const other = book.copy();
  const sheet = other.build(
    "pan-loaf",
    { ...panLoaf.sample, ingredient: ["Flour"], kind: ["flour"], percent: [1] },
    US,
  );
  expect(sheet.value("price_shown", 1)).toBeCloseTo(7 * 0.45359237, 9);
});

test("a name that stands twice has no price and is named; an error in the ingredient sheet costs its own row alone", () => {
  const other = book.copy();
  const [bought, used] = [other.sheet(larder.sheet), other.sheet(loaf.sheet)];
  bought.paste("ingredient", [["flour "]], 2);
  expect(used.value("price_shown", 1)).toBe("");
  expect(used.shown("check")).toMatch(/Flour .*twice in Ingredients/);
  bought.type("ingredient", "=1/0", 2);
  bought.type("price", "=1/0", 3);
  expect(used.value("price_shown", 1)).toBe(7);
  expect(used.value("price_shown", 4)).toBe("");
  expect(used.value("price_shown", 5)).toBe(4);
  expect(used.shown("check")).toBe("");
});
