import { describe, expect, test } from "vitest";
import { staffCard } from "../../shared/card/staff-card.ts";
import type { SheetModel } from "../../shared/sheet/model.ts";
import { lint } from "../../src/build/lint.ts";
import { cardAmount, cardData } from "../../src/planners/card-data.ts";
import { toXlsx } from "../../src/workbook/xlsx/xlsx.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { someOf } from "../kit/scale.ts";
import { METRIC_UNITS, US_UNITS } from "../kit/units.ts";
import { buildSheet, HANDOUT, workbook } from "../templates/sheet-support.ts";
import { asOfficeReads, asValue, hasOffice } from "../workbook/support.ts";
import { card, column, formulaSheet, STAGES } from "./card-support.ts";

describe.each(someOf(TEMPLATES, 2, 1))("a card of the $title", (model) => {
  test("has the formula sheet's own weights for each mix, in both kinds, and no call in the living one", async () => {
    const { book, sheet, read } = await formulaSheet(model, model.sample);
    const stages = STAGES.find(([first = ""]) => read.zone(first) !== undefined) ?? [];
    for (const kind of ["values", "living"] as const) {
      const made = card(book, { sheet, kind });
      stages.forEach((stage, at) => {
        const expected = column(read, stage);
        read.rows.forEach(({ name }, row) => {
          const found = made.figure(name, 2 + at);
          if ((expected[row] ?? 0) === 0) expect(found, `${kind} ${name}`).toBe("");
          else expect(found, `${kind} ${stage} ${name}`).toBeCloseTo(expected[row] ?? Number.NaN, 6);
        });
      });
      expect(made.figure("Mixes")).toBe(read.number("mixes"));
      // What a living card reckons with is folded away beside it.
      expect(book.trail.length, kind).toBeLessThanOrEqual(40);
      const formulas = made.formulas();
      if (kind === "values") expect(formulas).toEqual([]);
      else {
        expect(formulas.length).toBeGreaterThan(5);
        expect(formulas.join(" ")).not.toMatch(/BAKE_|!/);
      }
      for (const text of book.shownTexts(made.sheet, book.usedRange(made.sheet)).flat()) expect(text).not.toMatch(/^#/);
    }
  });
});

describe("an amount of its own", () => {
  // 60 of the 73 pieces of 390 g from 100/67/2/1: 23 400 g of dough, 23 400 ÷ 1.7 = 13 764.7 g of flour, in one mix of at most 40 kg;
  // water 9222.35, salt 275.29, yeast 137.65 g, each on the 5 g steps, which move it by less than 2 %.
  const WEIGHTS = { Flour: 13765, Water: 9220, Salt: 275, Yeast: 140 } as const;

  test.each(["values", "living"] as const)("60 pieces, %s", async (kind) => {
    const { book, sheet } = await buildSheet(HANDOUT);
    const made = card(book, { sheet, kind, by: "pieces", amount: 60 });
    for (const [name, weight] of Object.entries(WEIGHTS)) expect(made.figure(name), name).toBeCloseTo(weight, 6);
    expect(made.figure("Dough to make (g)")).toBeCloseTo(23400, 6);
    expect(made.figure("Mixes")).toBe(1);
    expect(made.figure("Scaling weight, loaf (g)")).toBe(390);
  });

  test("the open cell is typed in, and all follows: by pieces, over the mixer's limit", async () => {
    const { book, sheet } = await buildSheet(HANDOUT);
    const made = card(book, { sheet, kind: "living", by: "pieces", amount: 60 });
    book.type(made.sheet, made.place("Pieces wanted"), "146");
    // 146 × 390 = 56 940 g in two mixes of 28 470: the sheet's own mix
    expect(made.figure("Mixes")).toBe(2);
    expect(made.figure("Flour")).toBeCloseTo(16745, 6);
    expect(made.figure("Yeast")).toBeCloseTo(165, 6);
    book.type(made.sheet, made.place("Pieces wanted"), "");
    expect(made.figure("Flour")).toBe("");
  });

  test("by the ingredient that is short", async () => {
    const { book, sheet } = await buildSheet(HANDOUT);
    const made = card(book, { sheet, kind: "living", by: "ingredient", ingredient: "flour", amount: 10000 });
    expect(made.figure("Flour")).toBeCloseTo(10000, 6);
    expect(made.figure("Water")).toBeCloseTo(6700, 6);
    expect(made.figure("Salt")).toBeCloseTo(200, 6);
    // 17 000 g ÷ 390 g = 43.6
    expect(made.figure("Pieces")).toBe(43);
  });

  test("by mixes: three of the sheet's own", async () => {
    const { book, sheet } = await buildSheet(HANDOUT);
    const made = card(book, { sheet, kind: "values", by: "mixes", amount: 3 });
    expect(made.figure("Mixes")).toBe(3);
    expect(made.figure("Flour")).toBeCloseTo(16745, 6);
    expect(made.figure("Pieces")).toBe(219);
  });
});

test("in ounces every weight stands in pounds and ounces, too", async () => {
  const { book, sheet } = await buildSheet(
    { ...HANDOUT, size_weight: [14], step_coarse: 0.25, step_fine: 0.05 },
    { options: { ...US_UNITS, parts: [] } },
  );
  // 14 oz is less than 150 steps of a quarter, 1022 oz is more.
  // 73 × 14 = 1022 oz ÷ 1.7 = 601.18 oz of flour, on quarter ounces 601.25: 37 lb 9.25 oz
  for (const kind of ["values", "living"] as const) {
    const made = card(book, { sheet, kind });
    expect(made.figure("Flour"), kind).toBeCloseTo(601.25, 6);
    expect(made.figure("Flour", 3), kind).toBe("37 lb 9.25 oz");
    expect(made.figure("Dough to make (oz)"), kind).toBe(1022);
    if (!hasOffice) continue;
    const theirs = asOfficeReads(await toXlsx(book.engine))[made.sheet] ?? [];
    for (const [at, row] of made.rows().entries()) {
      if (String(row[3] ?? "").includes(" lb ")) expect(theirs[at]?.[3], `${kind} row ${at + 1}`).toBe(row[3]);
    }
  }
});

// 600 + 140 pieces on trays of 24 are 30.8 trays, 7.8 loads of four; half of them 15.4 trays, 3.9 loads.
test.each(["values", "living"] as const)(
  "pieces of each size, trays and oven loads follow the amount, %s",
  async (kind) => {
    const model = TEMPLATES.find((one) => one.name === "soft-bun") as SheetModel;
    const { book, sheet } = await formulaSheet(model, { ...model.sample, size_pieces: [600, 140] });
    const made = card(book, { sheet, kind, by: "pieces", amount: 370 });
    expect([made.figure("Pieces: bun"), made.figure("Pieces: roll")]).toEqual([300, 70]);
    expect(made.figure("Trays, 24 pieces on each")).toBe(16);
    expect(made.figure("Oven loads, 4 trays in each")).toBe(4);
    // 70 g ÷ 0.9 is 77.78 g, less than 150 of the 1 g steps; a fine scale shows 78 g.
    expect(made.figure("Scaling weight, bun (g)")).toBe(78);
  },
);

test.skipIf(!hasOffice)("a living card calculates the same in LibreOffice, where nobody has the add-on", async () => {
  const book = await workbook();
  const sheets = [];
  for (const name of ["levain-loaf", "soft-bun"]) {
    const model = TEMPLATES.find((one) => one.name === name) as SheetModel;
    const { sheet } = await formulaSheet(model, model.sample, METRIC_UNITS, book);
    const made = card(book, { sheet, kind: "living", by: "mixes" });
    book.type(made.sheet, made.place("Mixes wanted"), "3");
    sheets.push(made);
  }
  const office = asOfficeReads(await toXlsx(book.engine));
  for (const { sheet, rows } of sheets) {
    const theirs = office[sheet] ?? [];
    let numbers = 0;
    rows().forEach((row, at) => {
      for (const [place, own] of row.entries()) {
        if (typeof own !== "number") continue;
        numbers += 1;
        expect(asValue(theirs[at]?.[place] ?? ""), `${sheet} row ${at + 1}`).toBeCloseTo(own, 6);
      }
    });
    expect(numbers).toBeGreaterThan(20);
  }
});

test("a living card's formulas mean the same everywhere, and its page is no wider than A4", async () => {
  for (const [name, units] of [
    ["levain-loaf", METRIC_UNITS],
    ["soft-bun", US_UNITS],
  ] as const) {
    const model = TEMPLATES.find((one) => one.name === name) as SheetModel;
    const { read } = await formulaSheet(model, model.sample, units);
    const data = cardData(read, "2026-01-02");
    for (const by of ["pieces", "mixes", "ingredient"] as const) {
      const ask = { sheet: "", kind: "living", by, amount: null, ingredient: data.ingredients[0] ?? "" } as const;
      const { model: made } = staffCard(data, cardAmount(data, ask), "living");
      expect(lint(made, { ...units, parts: [] }, 0)).toEqual([]);
      // 190 mm at 96 pixels an inch
      expect(made.widths.slice(0, made.foldedFrom).reduce((sum, width) => sum + width, 0)).toBeLessThanOrEqual(718);
    }
  }
});
