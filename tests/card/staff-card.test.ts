import { describe, expect, test } from "vitest";
import type { CardAsk } from "../../shared/card/data.ts";
import { staffCard } from "../../shared/card/staff-card.ts";
import type { Options, SheetModel, Values } from "../../shared/sheet/model.ts";
import { lint } from "../../src/build/lint.ts";
import { cardAmount, cardData } from "../../src/planners/card.ts";
import { asFormulaSheet, type FormulaSheet } from "../../src/planners/formula-sheet.ts";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { toXlsx } from "../../src/workbook/xlsx/xlsx.ts";
import { cookie } from "../../templates/cookie.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { METRIC_UNITS, US_UNITS } from "../kit/units.ts";
import { buildSheet, HANDOUT, workbook } from "../templates/sheet-support.ts";
import { asOfficeReads, asValue, hasOffice } from "../workbook/support.ts";

const partsOf = (model: SheetModel) => model.parts.filter((part) => part !== "cost" && part !== "label");

async function formulaSheet(
  model: SheetModel,
  values: Values,
  options: Omit<Options, "parts"> = METRIC_UNITS,
  book?: WorkbookHost,
) {
  const built = await buildSheet(values, {
    model,
    options: { ...options, parts: partsOf(model) },
    ...(book ? { book } : {}),
  });
  const { book: open, sheet } = built;
  const range = open.usedRange(sheet);
  const read = asFormulaSheet(sheet, open.values(sheet, range), open.shownTexts(sheet, range));
  if (read === null) throw new Error("the formula sheet was not found again");
  return { ...built, read };
}

/** Builds a card by the bench's question; its cells by what stands in the second (or first) column of their row. */
function card(book: WorkbookHost, ask: Partial<CardAsk>) {
  const { sheet } = book.answer({ ask: "card", ...ask }) as { sheet: string };
  const range = book.usedRange(sheet);
  const rows = () => book.values(sheet, range);
  const line = (name: string) => rows().find((row) => row[0] === name || row[1] === name);
  return {
    sheet,
    rows,
    figure: (name: string, column = 2) => line(name)?.[column],
    place: (name: string) => `C${rows().findIndex((row) => row[0] === name || row[1] === name) + 1}`,
    formulas: () =>
      book
        .formulas(sheet, range)
        .flat()
        .filter((one) => one !== undefined),
  };
}

const column = (sheet: FormulaSheet, name: string) => sheet.rows.map(({ index }) => sheet.number(name, index));

/** The columns of what is weighed. */
const STAGES = [["pre_scale", "final"], ["mix_scale"]];

describe.each(TEMPLATES)("a card of the $title", (model) => {
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
    expect(made.figure("Dough in all (g)")).toBeCloseTo(23400, 6);
    expect(made.figure("Mixes")).toBe(1);
    expect(made.figure("Divide: loaf (g)")).toBe(390);
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
    expect(made.figure("Dough in all (oz)"), kind).toBe(1022);
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
    expect(made.figure("Divide: bun (g)")).toBe(78);
  },
);

test.skipIf(!hasOffice)("a living card calculates the same in LibreOffice, where nobody has the add-on", async () => {
  const book = await workbook();
  const sheets = [];
  for (const name of ["levain-loaf", "soft-bun"]) {
    const model = TEMPLATES.find((one) => one.name === name) as SheetModel;
    const { sheet } = await formulaSheet(model, model.sample, METRIC_UNITS, book);
    const made = card(book, { sheet, kind: "living" });
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

describe("nothing is lost", () => {
  test("a second card is a second sheet, and the formula sheet stays as it was", async () => {
    const { book, sheet } = await buildSheet(HANDOUT);
    const before = book.shownTexts(sheet, book.usedRange(sheet));
    expect(card(book, { sheet }).sheet).toBe("Hand-out – card");
    expect(card(book, { sheet }).sheet).toBe("Hand-out – card (2)");
    expect(book.shownTexts(sheet, book.usedRange(sheet))).toEqual(before);
  });

  test("rows inserted above and in the table, a renamed tab and a duplicate: the card is of what stands there", async () => {
    const { book, sheet, at, type } = await buildSheet(HANDOUT);
    book.insertRows(sheet, 1);
    book.insertRows(sheet, Number(at("percent", 3).replace(/\D/g, "")) + 1);
    const copy = book.duplicateSheet(sheet, "Monday");
    type("percent", "70%", 3);
    book.type("Monday", at("percent", 3), "60%");
    expect(card(book, { sheet }).figure("Water")).toBeCloseTo(11520, 6);
    // 28 470 ÷ 1.63 × 0.6 = 10 479.75
    expect(card(book, { sheet: copy }).figure("Water")).toBeCloseTo(10480, 6);
  });

  test.each([
    ["a sheet that is gone", { sheet: "Gone" }, /no sheet "Gone" any more/],
    ["a sheet that is none of ours", { sheet: "Sheet1" }, /"Sheet1" is no formula sheet of Gramwright/],
    ["an amount below 0", { by: "pieces", amount: -3 }, /no number above 0/],
    ["an unknown kind", { kind: "poster" }, /kind of card is "poster"; it can be "values" or "living"/],
    ["an ingredient that left", { by: "ingredient", ingredient: "Rye" }, /"Rye" is no ingredient/],
  ])("refuses %s with a sentence", async (_, ask, sentence) => {
    const { book, sheet } = await buildSheet(HANDOUT);
    const names = book.sheetNames();
    const reply = book.ask({ ask: "card", sheet, ...ask });
    expect(reply.ok ? "" : reply.message).toMatch(sentence);
    expect(book.sheetNames()).toEqual(names);
  });

  test.each(["values", "living"] as const)("a step comes with its temperature and what to do: %s", async (kind) => {
    const { book, sheet, type, at } = await buildSheet(
      { ...HANDOUT, step: ["Mix", "Bake", "Cool"], step_minutes: [12, 30, 60], ready: 8 / 24 },
      { model: cookie, options: { ...METRIC_UNITS, parts: ["steps"] } },
    );
    type("step_temp", "230", 2);
    book.type(sheet, at("step_how", 2), "Steam for the first ten minutes.");
    book.type(sheet, at("step_how", 3), "On racks.");
    const { rows } = card(book, { sheet, kind });
    const steps = rows().map((row) => row[1]);
    expect(steps).toEqual(
      expect.arrayContaining(["Mix", "Bake at 230 °C: Steam for the first ten minutes.", "Cool: On racks."]),
    );
  });

  test("a card of values sets thousands apart, and keeps the decimals that a weight has", async () => {
    const { book, sheet } = await buildSheet({
      ...HANDOUT,
      step_coarse: 1,
      step_fine: 0.1,
      percent: [1, 0.67, 0.02, 0.0001],
    });
    const { sheet: made } = card(book, { sheet, kind: "values" });
    const shown = book.shownTexts(made, book.usedRange(made));
    const of = (name: string) => shown.find((row) => row.includes(name))?.[2];
    // 73 × 390 = 28 470 g of dough over 1.6901 is 16 845.2 g of flour and 1.7 g of yeast.
    expect(of("Dough in all (g)")).toBe("28,470");
    expect(of("Flour")).toBe("16,845");
    expect(of("Yeast")).toBe("1.7");
    expect(of("Pieces")).toBe("73");
  });

  test("refuses a formula sheet that cannot read a row, in the sheet's own words", async () => {
    const { book, sheet, at } = await buildSheet(HANDOUT);
    book.paste(sheet, at("percent", 2), "two thirds");
    const reply = book.ask({ ask: "card", sheet });
    expect(reply.ok ? "" : reply.message).toMatch(/has no weights yet\. Water C16 “two thirds”: enter a number/);
  });

  test("refuses a sheet that has no weights, with what its check line says", async () => {
    const { book, sheet, type, at } = await buildSheet(HANDOUT, {
      model: cookie,
      options: { ...METRIC_UNITS, parts: [] },
    });
    type("percent", "", 2);
    const reply = book.ask({ ask: "card", sheet });
    expect(reply.ok ? "" : reply.message).toMatch(
      new RegExp(`has no weights yet\\. .*${at("percent", 2)}: no percentage`),
    );
  });

  test("what the formula sheet says is wrong stands on the card", async () => {
    const { book, sheet, type, at } = await buildSheet(HANDOUT);
    type("kind", "leven", 4);
    const made = card(book, { sheet, kind: "values" });
    const texts = book.shownTexts(made.sheet, book.usedRange(made.sheet)).flat().join(" ").replace(/\s+/g, " ");
    expect(texts).toContain(`First look at the formula sheet: Yeast ${at("kind", 4)}: “leven” is no type.`);
  });

  test("a service call that throws leaves the workbook as it was", async () => {
    const { book, sheet } = await buildSheet(HANDOUT);
    card(book, { sheet, kind: "living" });
    const calls = book.trail.length;
    const names = book.sheetNames();
    for (let call = 1; call <= calls; call += 4) {
      book.failAt(call);
      const reply = book.ask({ ask: "card", sheet, kind: "living" });
      book.failAt(undefined);
      expect(reply.ok, `call ${call}`).toBe(false);
      expect(book.sheetNames(), `call ${call}`).toEqual(names);
    }
  });
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
      expect(made.widths.reduce((sum, width) => sum + width, 0)).toBeLessThanOrEqual(718);
    }
  }
});
