// Levains of several formulas in one production: built and bought, kept in different amounts, taken in another step than Mix.
import { beforeAll, expect, test } from "vitest";
import type { CellValue } from "../../shared/protocol/look.ts";
import { productionNow } from "../../src/planners/production/read.ts";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { openBook } from "../../src/workbook/scripted.ts";
import { address, pageOf } from "./week-book.ts";

const UNITS = { weight: "g", temperature: "C", length: "cm" } as const;
const loaf = (title: string, template: string, more: Record<string, unknown>) => ({
  ask: "build",
  template,
  options: { ...UNITS, parts: ["preferment", "steps"] },
  values: {
    title,
    by: "pieces",
    step_coarse: 5,
    step_fine: 1,
    size_name: ["loaf"],
    size_pieces: [10],
    size_weight: [900],
    size_loss: [0.1],
    step: ["Autolyse", "Mix", "Bulk fermentation", "Bake"],
    step_minutes: [60, 15, 225, 60],
    ready: 8 / 24,
    oven_step: "Bake",
    ...more,
  },
});
const levain = { seed_share: 0.2, pre_from: "Strong white flour" };
const FORMULAS = [
  // A tenth of the flour in a levain that it builds, and a rye sour that is bought.
  loaf("Pier loaf", "levain-loaf", {
    ...levain,
    pre_share: 0.1,
    pre_hydration: 1,
    seed_hydration: 1,
    keep: 300,
    pre_hours: 8,
    pre_step: "Mix",
    ingredient: ["Strong white flour", "Water", "Sea salt", "Rye sour"],
    kind: ["flour", "water", "salt", "levain 100%"],
    percent: [0.9, 0.58, 0.02, 0.2],
  }),
  // A stiff levain, which goes in at the autolyse.
  loaf("Mole loaf", "levain-loaf", {
    ...levain,
    pre_share: 0.2,
    pre_hydration: 0.5,
    seed_hydration: 0.5,
    keep: 700,
    pre_hours: 6,
    pre_step: "Autolyse",
    ingredient: ["Strong white flour", "Water", "Sea salt"],
    kind: ["flour", "water", "salt"],
    percent: [1, 0.68, 0.02],
  }),
  // A poolish for the autolyse.
  loaf("Cove loaf", "hearth-loaf", {
    pre_kind: "poolish",
    pre_share: 0.3,
    pre_hydration: 1,
    pre_yeast: 0.001,
    pre_hours: 12,
    pre_step: "Autolyse",
    ingredient: ["Strong white flour", "Water", "Sea salt", "Fresh yeast"],
    kind: ["flour", "water", "salt", "yeast"],
    percent: [1, 0.66, 0.02, 0.02],
  }),
];

let book: WorkbookHost;
const sheets: Record<string, string> = {};
beforeAll(async () => {
  book = await openBook();
  for (const asked of FORMULAS) book.answer(asked);
  const orders = FORMULAS.map(({ values }) => ({ sheet: values.title, pieces: 17 }));
  sheets.day = (book.answer({ ask: "day", day: "2026-12-05", orders }) as { sheet: string }).sheet;
  for (const ask of ["purchases", "weighUp", "timetable"])
    sheets[ask] = (book.answer({ ask, sheet: sheets.day }) as { sheet: string }).sheet;
});

/** 17 loaves of 900 g, baked with a tenth of loss. */
const DOUGH = 17_000;
/** Flour of all flour: 0.9 and the half of 0.2 that is flour of the sour. */
const PIER = { all: 1.7, inLevain: 2 * 0.1 * 1.0 };
const pierLevain = (DOUGH * PIER.inLevain) / PIER.all;
const moleLevain = (DOUGH * 0.2 * 1.5) / 1.7;

test("each levain makes what its doughs take and what is kept of it; seeds are a fifth of the flour that is fed", () => {
  const { values, shown } = pageOf(book, sheets.day ?? "");
  const head = shown.findIndex((row) => row.includes("Levain in the doughs"));
  const from = shown[head]?.indexOf("Levain in the doughs") ?? -1;
  const of = (name: string) =>
    (values.slice(head + 1).find((row) => row[0] === name) ?? []).slice(from, from + 4).map(Number);
  for (const [name, taken, keep, hydration] of [
    ["Levain, 100 %", pierLevain, 300, 1],
    ["Levain, 50 %", moleLevain, 700, 0.5],
  ] as const) {
    const flour = (taken + keep) / (1 + hydration);
    // s = 0.2 f where f + s ÷ (1 + hydration) is all flour.
    const seed = (0.2 * flour) / (1 + 0.2 / (1 + hydration));
    const [inDoughs = 0, fed = 0, water = 0, first = 0] = of(name);
    expect(inDoughs, name).toBeCloseTo(taken, 6);
    // As it was planned, to a thousandth.
    expect(first, name).toBeCloseTo(seed, 2);
    expect(fed, name).toBeCloseTo(flour - seed / (1 + hydration), 2);
    expect(water, name).toBeCloseTo(taken + keep - seed - (flour - seed / (1 + hydration)), 2);
  }
});

test("needs: the feeds in the place of the built levains, and the sour as it is bought", () => {
  const { values, shown } = pageOf(book, sheets.purchases ?? "");
  expect(shown[2]?.[0]).toBe("");
  const need = (name: string) => Number(values.find(([one]) => one === name)?.[2]);
  expect(need("Rye sour")).toBeCloseTo((DOUGH * 0.2) / 1.7, 6);
  expect(need("Sea salt")).toBeCloseTo(3 * ((DOUGH * 0.02) / 1.7), 6);
  const net = (taken: number, keep: number, hydration: number) => {
    const flour = (taken + keep) / (1 + hydration);
    const seed = (0.2 * flour) / (1 + 0.2 / (1 + hydration));
    return {
      flour: flour - seed / (1 + hydration),
      water: taken + keep - flour - (seed * hydration) / (1 + hydration),
    };
  };
  const [pier, mole] = [net(pierLevain, 300, 1), net(moleLevain, 700, 0.5)];
  const white = (DOUGH * (0.9 + 1 + 1)) / 1.7 - pierLevain / 2 - moleLevain / 1.5;
  expect(Math.abs(need("Strong white flour") - (white + pier.flour + mole.flour))).toBeLessThan(0.01);
  const water = (DOUGH * (0.58 + 0.68 + 0.66)) / 1.7 - pierLevain / 2 - (moleLevain * 0.5) / 1.5;
  expect(Math.abs(need("Water") - (water + pier.water + mole.water))).toBeLessThan(0.01);
});

test("a preferment for another step than Mix is counted back from that step, and so is the levain's feed", () => {
  const { shown } = pageOf(book, sheets.timetable ?? "");
  const row = (dough: string, step: string) => shown.find((cells) => cells[2] === dough && cells[3] === step);
  // Ready at 08:00 after 360 min: the autolyse begins at 02:00, Mix at 03:00.
  expect(row("Cove loaf", "Autolyse")?.[0]).toBe("02:00");
  expect(row("Cove loaf", "Mix the poolish")?.slice(0, 2)).toEqual(["14:00", "02:00"]);
  const feeds = shown.filter((cells) => /^Levain, /.test(cells[2] ?? ""));
  expect(feeds.map((cells) => [cells[2], cells[0], cells[1]])).toEqual([
    ["Levain, 100 %", "Fri 4 Dec 19:00", "03:00–07:00"],
    ["Levain, 50 %", "Fri 4 Dec 20:00", "02:00–06:00"],
  ]);
});

test("the weigh-up of a dough with both: the levain comes ready, the sour is weighed with the rest", () => {
  const { shown, values } = pageOf(book, sheets.weighUp ?? "");
  const at = shown.findIndex((row) => /^\d+\. Pier loaf$/.test(row[0] ?? ""));
  const weighed = (name: string) => values.slice(at).find((row) => row[1] === name)?.[2];
  // 17 000 × 0.2 ÷ 1.7, on steps of 5 g, in one mix.
  expect(weighed("Rye sour")).toBe(2000);
  expect(weighed("Levain, ready")).toBe(2000);
  // 9000 of white flour less 1000 of the levain's.
  expect(weighed("Strong white flour")).toBe(8000);
});

test("a machine whose row was inserted is read once it has a name and a kind; a blank row hides none below it", () => {
  const sheet = sheets.day ?? "";
  const page = pageOf(book, sheet);
  const oven = page.shown.findIndex((row) => row[0] === "Oven");
  book.insertRows(sheet, oven + 1);
  const takes = () =>
    productionNow({ id: 1, name: sheet, values: pageOf(book, sheet).values as CellValue[][] }).machines;
  const names = () => takes().map(({ name, kind }) => `${name}: ${kind}`);
  expect(names()).toEqual(["Mixer: mixer", "Oven: oven"]);
  book.type(sheet, address(oven, 2), "2");
  expect(names).toThrow(/^Row \d+ of the production has a machine without a kind\. Choose mixer or oven/);
  book.type(sheet, address(oven, 1), "oven");
  expect(names).toThrow(/^Row \d+ of the production has an oven without a name\. Enter a name/);
  book.type(sheet, address(oven, 0), "Deck");
  expect(names()).toEqual(["Mixer: mixer", "Deck: oven", "Oven: oven"]);
  expect(takes()[1]?.number).toBe(2);
  book.deleteRows(sheet, oven + 1);
});
