// What a sheet over all formula sheets asks of the spreadsheet's service: one look finds them, and one list tells what they hold.
import { beforeAll, describe, expect, test } from "vitest";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { IS_LONG, someOf } from "../kit/scale.ts";
import { METRIC_UNITS } from "../kit/units.ts";
import { buildSheet, HANDOUT, workbook } from "../templates/sheet-support.ts";
import { withCopies } from "./copies.ts";

/** So many formula sheets are few, and so many are many. */
const FEW = 6;
const MANY = IS_LONG ? [60, 200] : [9];
const OPTIONS = { ...METRIC_UNITS, parts: [] } as const;
const MAX_CALLS = 40;
/** A formula sheet has hidden rows and folded columns; other sheets look for formula sheets. */
const MAX_CALLS_OF = { folded: 95, looking: 40 };

describe("a shop of many formula sheets", () => {
  let book: WorkbookHost;
  const PRICES = { ask: "build", template: "prices", options: { ...OPTIONS, parts: ["products"] } };
  const dayOf = (...sheets: string[]) => ({
    ask: "day",
    day: "2026-01-31",
    orders: sheets.map((sheet) => ({ sheet, pieces: 10 })),
  });
  const count = (asked: object): number => {
    const { sheet } = book.answer(asked) as { sheet: string };
    const shown = book.shownTexts(sheet, book.usedRange(sheet)).flat();
    for (const text of shown) expect(text).not.toMatch(/^#/);
    return book.trail.length;
  };
  const build = async (from: number, to: number) => {
    for (let at = from; at <= to; at++)
      await buildSheet({ ...HANDOUT, title: `Loaf ${at}` }, { book, options: OPTIONS });
  };
  const both = () => [count(PRICES), count(dayOf("Loaf 1", "Loaf 2"))];
  beforeAll(async () => {
    book = await workbook();
    book.answer({
      ask: "build",
      template: "larder",
      values: { ingredient: ["Flour", "Salt"], price: [20, 3], pack: ["25 kg", "1 kg"] },
    });
    await build(1, 1);
  });

  test("the price sheet and the production sheet take no more than any other sheet may, and no more for more formula sheets", async () => {
    await build(2, 5);
    // The first price sheet builds the list that it reads.
    expect(count(PRICES)).toBeLessThanOrEqual(2 * MAX_CALLS_OF.looking);
    expect(count(dayOf("Loaf 1", "Loaf 2"))).toBeLessThanOrEqual(MAX_CALLS_OF.looking);
    await build(6, FEW);
    const six = both();
    expect(Math.max(...six)).toBeLessThanOrEqual(MAX_CALLS_OF.looking);
    for (let at = 1; at <= 5; at++)
      book.answer({ ask: "build", template: "bake-off-log", options: OPTIONS, values: {} });
    // Their own first names are taken by now: to find the second one free is a call more, the third two.
    expect(both().map((calls, at) => calls - (six[at] ?? 0))).toEqual([1, 1]);
  });

  test(`whatever goes over all formula sheets takes as many calls for ${MANY.join(" and ")} of them as for ${FEW}`, async () => {
    const questions = someOf<object>(
      [
        PRICES,
        dayOf("Loaf 1", "Loaf 2"),
        ...["price-lists", "allergen-table", "label-text"].map((template) => ({ ...PRICES, template })),
        { ask: "build", template: "pan-loaf", options: OPTIONS, values: HANDOUT },
        { ask: "prices", day: "2026-01-31" },
        { ask: "link" },
      ],
      2,
    );
    const callsFor = async (many: number) => {
      const shop = await withCopies(book, "Loaf 1", many);
      // The list itself is built once, and reads every sheet.
      shop.answer({ ask: "list" });
      return questions.map((question) => {
        const { sheet } = shop.answer(question) as { sheet?: string };
        const formulas = sheet === undefined ? [] : shop.formulas(sheet, shop.usedRange(sheet)).flat();
        const sheetCalls = formulas.filter((formula) => formula?.includes("BAKE_")).length;
        return [shop.trail.length, sheetCalls];
      });
    };
    const few = await callsFor(FEW);
    // The price sheet has one, however many formulas it goes over.
    expect(few[0]?.[1]).toBe(1);
    for (const many of MANY) expect(await callsFor(many), `of ${many}`).toEqual(few);
  });

  // The week of the demo shop has the same limit in every run.
  test.runIf(IS_LONG)(
    `a production and what is built of it take at most ${MAX_CALLS} calls for ${[FEW, ...MANY].join(", ")} formula sheets`,
    async () => {
      for (const many of [FEW, ...MANY]) {
        const shop = await withCopies(book, "Loaf 1", many);
        shop.answer({ ask: "list" });
        const loaves = Array.from({ length: Math.min(many, 60) }, (_, at) => `Loaf ${at + 1}`);
        const ask = (question: object, sheets = 1): string => {
          const { sheet = "" } = shop.answer(question) as { sheet?: string };
          expect(shop.trail.length / sheets, `${JSON.stringify(question).slice(0, 60)}, ${many}`).toBeLessThanOrEqual(
            MAX_CALLS,
          );
          return sheet;
        };
        const production = ask(dayOf(...loaves));
        const weighUp = ask({ ask: "weighUp", sheet: production });
        const rows = shop.shownTexts(weighUp, shop.usedRange(weighUp));
        const places = rows.flatMap(([, name], at) => (name === "Flour" || name === "Salt" ? [`E${at + 1}`] : []));
        expect(places.length).toBe(2 * loaves.length);
        // The first lot has a log built for it, others find it.
        for (const [lots, place] of [places[0] ?? "", places[places.length - 1] ?? ""].entries()) {
          shop.type(weighUp, place, `W-${lots}`);
          if (lots === 0) ask({ ask: "keepLots" });
          expect(ask({ ask: "weighUp", sheet: production })).toBe(weighUp);
          expect(shop.shownTexts(weighUp, `${place}:${place}`)).toEqual([[`W-${lots}`]]);
        }
        for (const question of ["purchases", "customers"]) ask({ ask: question, sheet: production });
        const few = ask(dayOf("Loaf 1", "Loaf 2"));
        ask({ ask: "cards", sheet: few }, 2);
        ask({ ask: "night", sheet: few });
      }
    },
  );

  test("a formula sheet takes no more for its row in the list", () => {
    book.answer({ ask: "build", template: "mix-log", options: OPTIONS, values: {} });
    for (const { name, parts, sample, foldedFrom } of someOf(TEMPLATES, 3)) {
      book.answer({ ask: "build", template: name, options: { ...OPTIONS, parts }, values: sample });
      expect(book.trail).toContain("appendRow");
      expect(book.trail.length).toBeLessThanOrEqual(foldedFrom === undefined ? MAX_CALLS : MAX_CALLS_OF.folded);
    }
  });

  test("a sheet whose tab has another name than its title is found by its name", async () => {
    book.renameSheet("Loaf 3", "Friday loaf");
    // Two tabs that took each other's names: every name is there, and none is the right sheet's.
    book.renameSheet("Loaf 4", "between");
    book.renameSheet("Loaf 5", "Loaf 4");
    book.renameSheet("between", "Loaf 5");
    const { sheet } = book.answer(dayOf("Friday loaf", "Loaf 4")) as { sheet: string };
    const formulas = book.formulas(sheet, book.usedRange(sheet)).flat().join(" ");
    expect(formulas).toContain("'Friday loaf'!");
    expect(formulas).not.toContain("'Loaf 3'!");
    // The dough of the tab Loaf 4 follows that tab, which has the title Loaf 5.
    expect(book.values("Loaf 4", "A1:A1")).toEqual([["Loaf 5"]]);
    const mixes = () =>
      book
        .shownTexts(sheet, book.usedRange(sheet))
        .flatMap((row) => (row[0] === "Loaf 4" && /×/.test(row[2] ?? "") ? [row[2]] : []));
    // Ten loaves of 390 g, then of 780 g.
    expect(mixes()).toEqual(["1 × 3.9 kg"]);
    const [weight] = book.values("Loaf 4", "A1:J20").flatMap((row, down) => {
      const at = row.indexOf(390);
      return at < 0 ? [] : [`${"ABCDEFGHIJ"[at]}${down + 1}`];
    });
    book.type("Loaf 4", weight ?? "", "780");
    expect(mixes()).toEqual(["1 × 7.8 kg"]);
  });
});
