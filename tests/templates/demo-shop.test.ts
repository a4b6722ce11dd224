// The demo shop as `npm start` opens it: what its sheets show, against sums made here from what is typed in them.
import { beforeAll, describe, expect, test } from "vitest";
import { asFormulaSheet, type FormulaSheet } from "../../src/planners/formula-sheet.ts";
import { type Book, openBook } from "../../src/workbook/scripted.ts";
import { serialOf } from "../../templates/demo/days.ts";
import { DEMO_FRONT, demoShop } from "../../templates/demo/shop.ts";
import { LISTED_SHEETS } from "../../templates/index.ts";
import { someOf } from "../kit/scale.ts";
import { testRanges } from "./ranges-of-formulas.ts";

const DEMO = demoShop(serialOf(2025, 11, 30));
/** A formula sheet has hidden rows and folded columns; other sheets look for formula sheets. */
const MAX_CALLS = { folded: 95, looking: 40 };
const LEVAIN = "Quay levain";
const PRODUCTION = "Production 1 Dec to 2 Dec";
let book: Book;
let sheets: string[] = [];
/** Links make no sheet. */
const BUILT = DEMO.filter(({ ask }) => ask !== "link");
/** How many calls of the service each took. */
const calls: number[] = [];
const build = (some = BUILT) =>
  some.map((asked) => {
    const { sheet } = book.answer(asked) as { sheet: string };
    calls.push(book.trail.length);
    return sheet;
  });
beforeAll(async () => {
  book = await openBook();
  sheets = build();
  book.answer({ ask: "link" });
});

test(`no sheet takes more than ${MAX_CALLS.looking} calls that read or write, a folded one ${MAX_CALLS.folded}`, () => {
  const folded = LISTED_SHEETS.map(({ name }) => name);
  const most = BUILT.map((asked) =>
    "template" in asked && folded.includes(asked.template) ? MAX_CALLS.folded : MAX_CALLS.looking,
  );
  expect(
    BUILT.flatMap(({ ask }, at) => ((calls[at] ?? 0) > (most[at] ?? 0) ? [[ask, sheets[at], calls[at]]] : [])),
  ).toEqual([]);
  expect(Math.min(...calls)).toBeGreaterThan(19);
});

test("every sheet has names for its cells", () => {
  expect(book.sheet("Quay pan loaf").value("title")).toBe("Quay pan loaf");
  for (const name of sheets) expect([name, book.sheet(name).names().length]).not.toEqual([name, 0]);
});

describe("ranges that formulas read", () => testRanges(() => book));

test("a filled bun costs what its dough and its custard cost", () => {
  const bun = cells("Custard bun");
  const part = (name: string) => bun.find(([cell]) => cell === name) ?? [];
  const heads = bun.find((row) => row[0] === "Part") ?? [];
  const at = (name: string, head: string) => Number(part(name)[heads.indexOf(head)]);
  // By hand: 10 l of milk at 1.00, 2.5 kg of sugar at 0.96, 2.4 kg of egg at 4.00, 1 kg of flour at 0.80 in 15.9 kg, of which
  // 8 % boil off and 3 % stay in the pan; 25 g go into a bun, and 3 % of that are lost.
  const custard = (10 * 1 + 2.5 * 0.96 + 2.4 * 4 + 1 * 0.8) / (15.9 * 0.92 * 0.97);
  close(at("Quay custard", "Price"), custard, "custard");
  close(at("Quay custard", "Cost a piece"), (0.025 / 0.97) * custard, "custard in a bun");
});

const cells = (sheet: string): unknown[][] => book.values(sheet, book.usedRange(sheet));
const formulaSheet = (name: string): FormulaSheet => {
  const found = asFormulaSheet(name, cells(name));
  if (found === null) throw new Error(`${name} is no formula sheet`);
  return found;
};
const sum = (numbers: readonly number[]) => numbers.reduce((all, one) => all + one, 0);
const close = (value: unknown, expected: number, what: string) =>
  expect(Math.abs(Number(value) / expected - 1), `${what}: ${value}, not ${expected}`).toBeLessThan(1e-9);

/** The rows below a heading, until one whose first cell is blank; the row right below it is the table's edge. */
function below(sheet: string, head: string, columns: number): unknown[][] {
  const all = cells(sheet);
  const top = all.findIndex((row) => row.includes(head));
  const left = all[top]?.indexOf(head) ?? 0;
  const rows = all.slice(top + 1).map((row) => row.slice(left, left + columns));
  const first = rows.findIndex(([cell]) => cell !== "");
  const length = rows.slice(first).findIndex(([cell]) => cell === "");
  return rows.slice(first, length < 0 ? undefined : first + length);
}

/** What the formula sheets make as they stand, of each product that is ordered. */
const products = [
  ...new Set(DEMO.flatMap((asked) => (asked.ask === "day" ? asked.orders.map(({ sheet }) => sheet) : []))),
];
const ordered = products.map((sheet) => ({ sheet, pieces: 10 }));

/** One product worked out from its typed cells alone: its dough a piece, and the grams of each row in it. */
function product(name: string) {
  const sheet = formulaSheet(name);
  const sizes = [0, 1, 2, 3, 4, 5, 6].flatMap((at) => {
    const [pieces, weight] = [sheet.number("size_pieces", at), sheet.number("size_weight", at)];
    if (pieces === null || weight === null) return [];
    return [{ name: sheet.text("size_name", at), pieces, scaled: weight / (1 - (sheet.number("size_loss", at) ?? 0)) }];
  });
  const pieces = sum(sizes.map((size) => size.pieces));
  const dough = sum(sizes.map((size) => size.pieces * size.scaled)) / (1 - (sheet.number("handling_loss") ?? 0));
  const rows = sheet.rows.map(({ index, name: row }) => ({ name: row, percent: sheet.number("percent", index) ?? 0 }));
  const all = sum(rows.map(({ percent }) => percent));
  return { sheet, sizes, pieces, dough, rows: rows.map((row) => ({ ...row, grams: (dough * row.percent) / all })) };
}

/** Raw grams of the day's orders; a levain row is half flour and half water, as the levain's own sheet has it. */
function dayNeeds(orders = ordered): Map<string, number> {
  const needs = new Map<string, number>();
  const add = (name: string, grams: number) => needs.set(name, (needs.get(name) ?? 0) + grams);
  const levain = formulaSheet(LEVAIN);
  const parts = levain.rows.map(({ index, name }) => ({ name, percent: levain.number("percent", index) ?? 0 }));
  const whole = sum(parts.map(({ percent }) => percent));
  for (const order of orders) {
    const { rows, pieces } = product(order.sheet);
    for (const { name, grams } of rows) {
      const wanted = (grams * order.pieces) / pieces;
      if (name !== LEVAIN) add(name, wanted);
      else for (const part of parts) add(part.name, (wanted * part.percent) / whole);
    }
  }
  return needs;
}

/** Price of a gram by the larder's typed cells; all its packs are in kilograms. */
function prices(): Map<string, number> {
  const rows = below("Ingredients", "Ingredient", 5);
  return new Map(
    rows.map(([name, , , price, pack]) => {
      const kilograms = /^([\d.]+) kg$/.exec(String(pack))?.[1];
      return [String(name), Number(price) / (Number(kilograms) * 1000)];
    }),
  );
}

describe("the demo shop", () => {
  test("is a whole shop, with no error in any cell of any sheet", () => {
    expect(new Set(sheets).size).toBe(BUILT.length);
    expect(sheets).toEqual(
      expect.arrayContaining([DEMO_FRONT, "Ingredients", "Mix log", "Bake log", "Costs and prices", PRODUCTION]),
    );
    expect(ordered.length).toBe(5);
    let filled = 0;
    for (const sheet of sheets) {
      const range = book.usedRange(sheet);
      const values = book.values(sheet, range);
      book.shownTexts(sheet, range).forEach((row, down) => {
        row.forEach((text, across) => {
          if (text === "") return;
          filled += 1;
          const where = `${sheet}, row ${down + 1}, column ${across + 1}`;
          expect(text, where).not.toMatch(/^#|NaN|undefined|Infinity/);
          expect(String(values[down]?.[across]), where).not.toMatch(/^#[A-Z]/);
        });
      });
    }
    expect(filled).toBeGreaterThan(2000);
  });

  test("needs → costs: what is bought costs what the formula sheets and the price sheet say", () => {
    const price = prices();
    // Water has no price. The levain's price in the larder is that of its flour and water, so it may be bought either way.
    const bought = sum(
      [...dayNeeds()].map(([name, grams]) => grams * (name === "Water" ? 0 : (price.get(name) ?? NaN))),
    );
    const onSheets = ordered.map((order) => {
      const { sheet, pieces } = product(order.sheet);
      return ((sheet.number("cost_ingredients") ?? NaN) * order.pieces) / pieces;
    });
    close(sum(onSheets), bought, "formula sheets");
    const rows = below("Costs and prices", "Product", 19);
    const onPrices = ordered.map((order) => {
      const { sheet, sizes, pieces } = product(order.sheet);
      // A piece carries the cost of those that are not sold.
      const sold = 1 - (sheet.number("unsold") ?? 0);
      const all = sizes.map((size) => {
        const row = rows.find(([name, one]) => name === order.sheet && one === size.name);
        return size.pieces * Number(row?.[18]) * sold;
      });
      return (sum(all) * order.pieces) / pieces;
    });
    close(sum(onPrices), bought, "price sheet");
  });

  test("a month of mixes teaches a friction factor that the formula sheets use", () => {
    const rows = below("Mix log", "Date", 8);
    expect(rows.length).toBeGreaterThanOrEqual(28);
    const points = rows.map(([, , minutes, flour, room, preferment, water, dough]) => {
      const count = preferment === "" ? 3 : 4;
      const factor = count * Number(dough) - sum([flour, room, preferment, water].map(Number));
      return { minutes: Number(minutes), factor: (factor * 3) / count };
    });
    // Repeated medians: Siegel, "Robust regression using repeated medians", Biometrika 69 (1982).
    const slopes = points.map((one) =>
      median(
        points.flatMap(({ minutes, factor }) =>
          minutes === one.minutes ? [] : [(factor - one.factor) / (minutes - one.minutes)],
        ),
      ),
    );
    const slope = median(slopes);
    const zero = median(points.map(({ minutes, factor }) => factor - slope * minutes));
    expect(slope).toBeGreaterThan(0.5);
    for (const name of ["Quay pan loaf", "Quay hearth loaf", "Ferry bun", "Lantern rye tin"]) {
      const sheet = formulaSheet(name);
      const minutes = sheet.number("minutes") ?? NaN;
      const temperatures = sheet.number("preferment_temp") === null ? 3 : 4;
      const factor = ((zero + slope * minutes) * temperatures) / 3;
      const filled = sheet.number("friction_own");
      // Filled in when the sheet is built it has two decimals.
      if (filled !== null) expect(filled, `${name}, friction`).toBeCloseTo(factor, 2);
      else close(sheet.number("friction"), factor, `${name}, friction`);
    }
  });

  test("a month of bakes teaches every product's losses", () => {
    const rows = below("Bake log", "Date", 8);
    expect(rows.length).toBeGreaterThanOrEqual(28);
    const learned = below("Bake log", "Product", 4);
    expect(learned.map(([name]) => name).sort()).toEqual(ordered.map(({ sheet }) => sheet).sort());
    for (const [name, handling, bake, unsold] of learned) {
      const total = (column: number) => sum(rows.filter((row) => row[1] === name).map((row) => Number(row[column])));
      expect(rows.filter((row) => row[1] === name).length).toBeGreaterThan(4);
      close(handling, 1 - total(3) / total(2), `${name}, handling`);
      close(bake, 1 - total(5) / total(4), `${name}, bake`);
      close(unsold, 1 - total(7) / total(6), `${name}, unsold`);
    }
  });

  test("built a second time, nothing is overwritten", () => {
    // These show the new formulas by themselves.
    const follow = ["Costs and prices", "Price lists", "Allergen table", "Label text"];
    const others = sheets.filter((sheet) => !follow.includes(sheet));
    const look = () => others.map((sheet) => ({ sheet, shown: book.shownTexts(sheet, book.usedRange(sheet)) }));
    const before = look();
    const again = someOf(BUILT, 5);
    const second = build([...again]);
    expect(second.filter((name) => sheets.includes(name))).toEqual([]);
    expect(new Set(second).size).toBe(again.length);
    // The list of all formulas has got a row for each new one below those it had.
    const after = look().map(({ sheet, shown }) => ({
      sheet,
      shown: sheet === "Formula list" ? shown.slice(0, before.find((one) => one.sheet === sheet)?.shown.length) : shown,
    }));
    expect(after).toEqual(before);
  });
});

function median(numbers: readonly number[]): number {
  const sorted = [...numbers].sort((a, b) => a - b);
  const half = Math.floor(sorted.length / 2);
  const [low = NaN, high = NaN] = [sorted[half - (sorted.length % 2 === 0 ? 1 : 0)], sorted[half]];
  return (low + high) / 2;
}
