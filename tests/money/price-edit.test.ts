// A price typed over: costs follow on every sheet, and nothing that a label or advice says is asked anew.
import { beforeAll, expect, test } from "vitest";
import { a1 } from "../../shared/sheet/a1.ts";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { finishedProduct } from "../../templates/finished-product.ts";
import { METRIC } from "../functions/support.ts";
import { type Built, buildSheet, workbook } from "../templates/sheet-support.ts";
import { costed, larderOf, modelNamed, pricesOf, SLOW } from "./costing-support.ts";

type Evaluator = { computeFormulaCell(at: { sheetId: string; row: number; col: number }, cell: object): object };

let book: WorkbookHost;
let [larder, dough, product, prices]: Built[] = [];
/** The calls that were computed since the last time, on any sheet. */
let ran: string[] = [];
const since = (): string[] => {
  for (const sheet of book.sheetNames()) book.values(sheet, "A1");
  const all = [...new Set(ran)].sort();
  ran = [];
  return all;
};
const ADVICE = /LABEL|ALLERGENS|NUTRITION|CONTENT|REVIEW/;

beforeAll(async () => {
  book = await workbook();
  larder = await larderOf(book, {
    ingredient: ["Flour", "Sugar", "Milk"],
    price: [1, 2, 12],
    pack: ["1 kg", "1 kg", "12 x 1 l"],
    allergens: ["wheat", "none", "milk"],
  });
  const cookie = modelNamed("cookie");
  const rows = { ingredient: ["Flour", "Sugar"], kind: ["flour", "sugar"], percent: [1, 0.5] };
  const sizes = { size_name: ["piece"], size_pieces: [100], size_weight: [50], size_loss: [0.1], size_price: [1] };
  dough = await costed(book, { title: "Dough", by: "pieces", ...rows, ...sizes, law: "EU" }, cookie);
  const parts = {
    ingredient: ["Dough", "Milk"],
    kind: ["dough", "filling"],
    part_each: [50, 10],
    part_unit: ["g", "g"],
  };
  product = await buildSheet(
    { title: "Bun", pieces_made: 10, size_weight: 55, size_price: 2, ...parts, law: "EU" },
    { book, model: finishedProduct, options: { ...METRIC, parts: ["label"] } },
  );
  book.answer({ ask: "link" });
  prices = await pricesOf(book);
  const { engine, script } = book;
  engine.attach({
    ...script,
    callCustom: (name, args) => {
      ran.push(name);
      return script.callCustom(name, args);
    },
  });
  since();
}, SLOW);

test("of a pack by weight: costs follow on three sheets, and only what asks for prices is asked", () => {
  const before = [dough, product].map((sheet) => sheet?.value("cost_ingredients") as number);
  larder?.type("price", "3", 1);
  const after = [dough, product].map((sheet) => sheet?.value("cost_ingredients") as number);
  after.forEach((cost, at) => {
    expect(cost).toBeGreaterThan(before[at] ?? 0);
  });
  // The formula list tells sizes to the billionth.
  const costs = [dough?.value("size_cost", 1), product?.value("size_cost")] as number[];
  expect([1, 2].map((row) => prices?.value("full_cost", row)).sort()).toEqual(
    costs.sort().map((cost) => expect.closeTo(cost, 8)),
  );
  expect(since()).toEqual(["BAKE_COSTCHANGE", "BAKE_COSTS"]);
});

test("and no name is looked for again: of what Ingredients says, a formula sheet calculates its price and costs", () => {
  const { handlers } = book.engine.model as unknown as { handlers: readonly { evaluator?: Evaluator }[] };
  const evaluator = handlers.find((one) => one.evaluator !== undefined)?.evaluator as Evaluator;
  const { computeFormulaCell } = evaluator;
  const cells = new Set<string>();
  evaluator.computeFormulaCell = function (at, cell) {
    cells.add(`${book.engine.get<string>("getSheetName", at.sheetId)}!${a1({ row: at.row, column: at.col })}`);
    return computeFormulaCell.call(this, at, cell);
  };
  since();
  cells.clear();
  larder?.type("price", "4", 1);
  // Until they are read, no sheet but its own is calculated.
  expect([...cells].filter((cell) => !cell.startsWith("Ingredients!"))).toEqual([]);
  since();
  const isCalculated = (name: string) => cells.has(`${dough?.sheet}!${dough?.at(name)}`);
  expect(["price_there", "price_found", "row_cost", "size_cost"].filter((name) => !isCalculated(name))).toEqual([]);
  const others = ["name_plain", "rows_called", "row_called", "rows_also", "row_also", "larder_row", "exact", "list"];
  expect(others.filter(isCalculated)).toEqual([]);
  evaluator.computeFormulaCell = computeFormulaCell;
});

test("a supplier, a minimum stock or an odd pack changes no label either", () => {
  larder?.type("supplier", "Lantern Mill", 1);
  larder?.type("pack", "6 x 1 l", 3);
  larder?.type("least_stock", "40", 1);
  expect(since().filter((name) => ADVICE.test(name))).toEqual([]);
});

test("an allergen does, on each sheet that has one", () => {
  expect(String(product?.value("allergens"))).toBe("cereals containing gluten (wheat), milk");
  larder?.type("allergens", "soybeans", 2);
  expect(since().filter((name) => ADVICE.test(name))).toContain("BAKE_ALLERGENS");
  expect(String(product?.value("allergens"))).toBe("cereals containing gluten (wheat), soybeans, milk");
  expect(String(dough?.value("allergens"))).toBe("cereals containing gluten (wheat), soybeans");
});
