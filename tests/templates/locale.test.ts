// A workbook whose decimal sign is the comma. What else the stand-in refuses is in sheets.test.ts (grids, names, text,
// decimal literals, modes: "without permission only the menu can be made"), workbook-engine.test.ts ("writing from a formula is
// forbidden", "percent, decimals and formulas as the locale reads them") and templates.test.ts (at most 40 calls; each failing).
import { beforeAll, describe, expect, test } from "vitest";
import type { SheetModel } from "../../shared/sheet/model.ts";
import { inputCell } from "../../shared/sheet/template-inputs.ts";
import { openWorkbook } from "../../src/workbook/host.ts";
import { openBook } from "../../src/workbook/scripted.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { someOf } from "../kit/scale.ts";
import { METRIC_UNITS } from "../kit/units.ts";
import { cellAt, type Tried, verdict } from "./formula-sheet-page.ts";
import { typedCells } from "./formula-sheet-slips.ts";
import { buildSheet, files, HANDOUT } from "./sheet-support.ts";

// A workbook takes a second each, more so on a busy computer.

const german = async () => openWorkbook({ ...(await files()), locale: "de_DE" });

/** Kept on one sheet of ingredients, with a price for each but water. */
const NAMES = [
  ...new Set(
    TEMPLATES.flatMap(({ sample }) => [...(sample.ingredient as string[]), ...[sample.roll_in_name ?? []].flat()]),
  ),
].map(String);
const priceOf = (name: string): number | null => (name === "Water" ? null : 0.55 + NAMES.indexOf(name) / 4);

/** Templates on their samples, priced by a sheet of ingredients. */
async function built(
  locale: "en_US" | "de_DE",
  models: readonly SheetModel[],
): Promise<ReadonlyMap<SheetModel, Tried>> {
  const book = await openBook({ locale });
  book.build("larder", {
    ingredient: NAMES,
    kind: NAMES.map(() => "other"),
    price: NAMES.map(priceOf),
    pack: NAMES.map((name) => (priceOf(name) === null ? null : "1 kg")),
  });
  const prices = new Map(NAMES.flatMap((name) => [[name.toLowerCase(), priceOf(name) ?? undefined] as const]));
  return new Map(
    models.map((model) => {
      const parts = model.parts.filter((part) => part !== "label");
      const sheet = book.build(model.name, model.sample, { ...METRIC_UNITS, parts });
      const ways = inputCell(model, "by")?.choices ?? [];
      return [model, { book, sheet, units: METRIC_UNITS, ways, prices: prices as ReadonlyMap<string, number> }];
    }),
  );
}

const inComma = (value: number): string => String(Number(value.toPrecision(7))).replace(".", ",");
/** Counted, or counted in whole minutes. */
const WHOLE = /^(?:size_pieces|tray_pieces|oven_takes|oven_reload|blocks|fold_|step_minutes|minutes|pre_hours)/;
/** Shown as percentages. */
const SHARES =
  /^(?:percent|size_loss|held_share|handling_loss|pre_|seed_hydration|seed_share|effective_wanted|roll_in_share)/;

/** Types every number of a sheet again, a little larger and with a comma; answers what then must stand there. */
function typedAgain(tried: Tried, typed: string[]): Map<string, number> {
  const wanted = new Map<string, number>();
  for (const { name, at } of typedCells(tried)) {
    const now = cellAt(tried, at);
    if (typeof now !== "number") continue;
    const isFlour =
      name.startsWith("percent/") && cellAt(tried, tried.sheet.at("kind", Number(name.slice(8)))) === "flour";
    const next = isFlour ? now : WHOLE.test(name) ? now + 1 : Number((now * 1.03 + 0.0001).toPrecision(5));
    const isHours = name === "ready";
    const text = isHours ? "06:30" : SHARES.test(name) ? `${inComma(100 * next)}%` : inComma(next);
    typed.push(`${name} ${text}`);
    wanted.set(at, isHours ? 6.5 / 24 : next);
    tried.sheet.type(at, text);
  }
  return wanted;
}

/** Half of them in a usual run. */
const COMPARED = someOf(TEMPLATES, 2, 1);

describe("in both locales", () => {
  let english: ReadonlyMap<SheetModel, Tried>;
  let comma: ReadonlyMap<SheetModel, Tried>;
  beforeAll(async () => {
    english = await built("en_US", COMPARED);
    comma = await built("de_DE", TEMPLATES);
  });
  const inGerman = (model: SheetModel) => comma.get(model) as Tried;
  const cellsOf = ({ book, sheet }: Tried) => book.values(sheet.sheet, book.usedRange(sheet.sheet));
  const formulasOf = ({ book, sheet }: Tried) => book.formulas(sheet.sheet, book.usedRange(sheet.sheet));

  test.each(COMPARED)("$title computes the same, cell for cell", (model) => {
    const [one, other] = [english.get(model) as Tried, inGerman(model)];
    // Words that formulas join have the locale's decimal sign in them.
    const inPoints = cellsOf(other).map((row) =>
      row.map((value) => (typeof value === "string" ? value.replace(/(\d),(\d)/g, "$1.$2") : value)),
    );
    expect(inPoints).toEqual(cellsOf(one));
    expect(formulasOf(other)).toEqual(formulasOf(one));
  });

  test.each(TEMPLATES)("$title finds its prices, and its costs are right", (model) => {
    const { check, wrong, figures, blank } = verdict(inGerman(model));
    expect([check, ...wrong]).toEqual([""]);
    expect(figures).toBeGreaterThan(70);
    expect(blank.filter((name) => /^(?:price|cost|as_price)/.test(name))).toEqual([]);
  });

  test.each(TEMPLATES)("$title shows the comma, and the point for thousands", (model) => {
    const tried = inGerman(model);
    const { book, sheet } = tried;
    const shown = book.shownTexts(sheet.sheet, book.usedRange(sheet.sheet)).flat();
    const values = cellsOf(tried).flat();
    const numbers = shown.filter((_, at) => typeof values[at] === "number");
    expect(numbers.filter((text) => /^[\d.,]+( ?%)?$/.test(text)).length).toBeGreaterThan(20);
    for (const text of numbers) expect(text).not.toMatch(/\d,\d{3}\.|\.\d{1,2}(?!\d)/);
    const result = String(sheet.value("result"));
    expect(result).toMatch(/\d,\d/);
    expect(result).not.toMatch(/\d\.\d/);
  });

  test.each(TEMPLATES)("$title takes every number with a comma, and all that it shows follows", (model) => {
    const tried = inGerman(model);
    const typed: string[] = [];
    const wanted = typedAgain(tried, typed);
    expect(typed.length).toBeGreaterThan(20);
    for (const [at, value] of wanted) expect(cellAt(tried, at), `${at} of ${typed.join("; ")}`).toBeCloseTo(value, 9);
    const { check, wrong, blank } = verdict(tried);
    expect([check, ...wrong]).toEqual([""]);
    expect(blank.filter((name) => /^(?:weight|per_mix|final|cost|result)/.test(name))).toEqual([]);
  });
});

describe("typed with a comma", () => {
  test("12,5 % and 12,5 g are what they say, and everything follows", async () => {
    const { type, value } = await buildSheet(HANDOUT, { book: await german() });
    type("percent", "67,5%", 2);
    expect(value("percent", 2)).toBe(0.675);
    expect(value("grams", 2)).toBeCloseTo((28470 / 1.705) * 0.675, 6);
    type("percent", "2,25", 3);
    expect(value("percent", 3)).toBe(2.25);
    type("percent", "2,25%", 3);
    expect(value("exact", 1)).toBeCloseTo(28470 / 1.7075, 6);
    type("size_weight", "390,5", 1);
    expect(value("dough")).toBeCloseTo(73 * 390.5, 6);
  });

  test("a point in such a workbook is no decimal: 12.5 stays text, and is read as what it can only mean", async () => {
    const book = await german();
    const typed = (weight: string) => {
      for (const [at, text] of [
        ["A1", "100"],
        ["A2", weight],
        ["B1", "flour"],
        ["B2", "water"],
        ["C1", "=BAKE_FLOURPCT(A1:A2;B1:B2)"],
      ] as const)
        book.type("Sheet1", at, text);
      return book.cell("Sheet1", "C2").value;
    };
    expect(typed("'12.5")).toBe(0.125);
    typed("'1.250");
    expect(book.cell("Sheet1", "C1").message).toMatch(/could be 1250 or 1\.25;/);
    // A formula sheet takes numbers alone.
    const { sheet, at, value } = await buildSheet(HANDOUT, { book });
    book.paste(sheet, at("percent", 2), "'12.5");
    expect(value("check")).toMatch(/“12\.5”: enter a number from 0\./);
  });

  test("a friction factor filled in for 7,5 minutes is not old, until they are others", async () => {
    const water = { dough_target: 26, flour_temp: 20, room_temp: 22, mixing: "spiral", minutes: 7.5 };
    const { type, value } = await buildSheet({ ...HANDOUT, ...water }, { book: await german() });
    expect(value("friction_own")).toBeGreaterThan(0);
    expect(value("check")).toBe("");
    type("minutes", "8,5");
    expect(value("check")).toBe("Friction factor is for spiral 7.5 min.");
  });

  test("a formula that a person types parts its arguments by ; and reads 1,5 as a number", async () => {
    const { book, sheet, at, value } = await buildSheet(HANDOUT, { book: await german() });
    book.type(sheet, at("size_weight", 1), "=ROUND(260*1,5;0)");
    expect(value("size_weight", 1)).toBe(390);
    expect(value("dough")).toBe(73 * 390);
  });
});

test("a cell that is still calculating is said to be so, wherever it is read", async () => {
  const book = await german();
  for (const [at, text] of [
    ["A1", "100"],
    ["A2", "Loading..."],
    ["B1", "flour"],
    ["B2", "water"],
    ["C1", "=BAKE_FLOURPCT(A1:A2;B1:B2)"],
  ] as const)
    book.type("Sheet1", at, text);
  expect(book.cell("Sheet1", "C1").message).toMatch(/row 2 is still calculating; wait a moment/);
  book.type("Sheet1", "A2", "67");
  expect(book.cell("Sheet1", "C2").value).toBe(0.67);
});

test("the bench's questions are numbers of JSON: no locale touches them", async () => {
  const { value } = await buildSheet(
    { ...HANDOUT, size_weight: [390.5], percent: [1, 0.675, 0.0225, 0.0125] },
    { book: await german() },
  );
  expect([1, 2, 3, 4].map((row) => value("percent", row))).toEqual([1, 0.675, 0.0225, 0.0125]);
  expect(value("dough")).toBeCloseTo(73 * 390.5, 6);
});
