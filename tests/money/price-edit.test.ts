// A price typed over: costs follow on every sheet, and nothing that a label or advice says is asked anew.
import { beforeAll, expect, test } from "vitest";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { finishedProduct } from "../../templates/finished-product.ts";
import { METRIC } from "../functions/support.ts";
import { type Built, buildSheet, workbook } from "../templates/sheet-support.ts";
import { costed, larderOf, modelNamed, pricesOf, SLOW } from "./costing-support.ts";

let book: WorkbookHost;
let [larder, dough, product, prices]: Built[] = [];
/** The calls that were computed since the last time. */
let ran: string[] = [];
const since = (): string[] => {
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
  expect([1, 2].map((row) => prices?.value("full_cost", row)).sort()).toEqual(
    [dough?.value("size_cost", 1), product?.value("size_cost")].sort(),
  );
  expect(since()).toEqual(["BAKE_COSTCHANGE", "BAKE_COSTS"]);
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
