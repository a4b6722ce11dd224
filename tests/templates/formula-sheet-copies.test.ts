// Formula sheets of any length, duplicated, copied to another workbook, and without the functions: their sums stay right.
import { describe, expect, test } from "vitest";
import type { Values } from "../../shared/sheet/model.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { IS_LONG } from "../kit/scale.ts";
import { type Tried, verdict } from "./formula-sheet-page.ts";
import { put } from "./formula-sheet-slips.ts";
import { KINDS, type Kind, kindsOf, opened, trialOf } from "./formula-sheet-trials.ts";

const [PAN, PAN_US, HEARTH] = KINDS as readonly [Kind, Kind, Kind];
/** Of every template one. */
const ONE_OF_EACH = TEMPLATES.flatMap(({ name }) => kindsOf(name)[0] ?? []);
const OTHERS = ONE_OF_EACH.filter((kind) => kind !== PAN && kind !== HEARTH);
/** Blank where the figure is 0, and where no price was typed. */
const MAY_BE_BLANK = /^(price_shown|pre_|tin_dough_shown|held_|water_final)/;
/** The first row that is no flour; in most it is the water. */
const rowOfWater = ({ model }: Kind): number =>
  1 + (model.sample.kind as string[]).findIndex((type) => type !== "flour");

/** All is there, and nothing is wrong. */
function expectRight(tried: Tried): void {
  const { check, wrong, blank, figures } = verdict(tried);
  expect(figures).toBeGreaterThan(80);
  expect([check, ...wrong]).toEqual([""]);
  expect(blank.filter((name) => !MAY_BE_BLANK.test(name))).toEqual([]);
}

/** So many ingredients: a flour, water where there are two, and so on. */
function rowsOf(many: number): Values {
  const kinds = ["flour", "water", "salt", "yeast", "fat", "sugar", "grain"];
  const rows = Array.from({ length: many }, (_, at) => at);
  return {
    ingredient: rows.map((at) => (at < 7 ? `Ingredient ${at + 1}` : `Seeds ${at}`)),
    kind: rows.map((at) => kinds[Math.min(at, 6)] ?? "grain"),
    percent: rows.map((at) => [1, 0.65, 0.02, 0.02][at] ?? 0.01),
    price_typed: rows.map((at) => at + 1),
  };
}

/** All of them in a long run, otherwise those that differ most. */
const TRIED = IS_LONG ? ONE_OF_EACH : ONE_OF_EACH.filter(({ model }) => /^(?:hearth-loaf|laminated)$/.test(model.name));

describe.each(TRIED)("$says", (kind) => {
  test.each(OTHERS.includes(kind) && !IS_LONG ? [60] : [1, 8, 24, 60])("%i rows", async (many) => {
    const alone: Values = many === 1 && kind.isStaged ? { pre_share: null, pre_hydration: null } : {};
    const tried = await opened(await trialOf(kind, { ...rowsOf(many), ...alone }));
    expect(tried.sheet.rows("percent")).toBeGreaterThanOrEqual(many + 2);
    expectRight(tried);
  });

  test("duplicated and copied to another workbook it goes on by itself", async () => {
    const tried = await opened(await trialOf(kind));
    const { book, sheet } = tried;
    const copied = book.sheet(book.duplicateSheet(sheet.sheet));
    const elsewhere = book.copySheet(sheet.sheet);
    expect(elsewhere.book.sheetNames()).toEqual([sheet.sheet]);
    for (const other of [copied, elsewhere]) {
      const there: Tried = { ...tried, book: other.book, sheet: other };
      expectRight(there);
      other.type("size_pieces", "31", 1);
      other.type("percent", "0.71", rowOfWater(kind));
      expectRight(there);
      put(there, other.at("percent", rowOfWater(kind)), "'0.71 ?");
      expect(verdict(there).check).toMatch(/“0.71 \?”: enter a number/);
    }
    expect(sheet.value("size_pieces", 1)).not.toBe(31);
    expectRight(tried);
  });
});

describe("with the functions taken away", () => {
  test.each([
    [PAN, {}],
    [PAN, { tin_shape: "round", tin_size_1: 20, tin_size_2: 8, tin_size_3: 18, tin_size_4: null, tin_size_5: null }],
    [PAN_US, {}],
    [HEARTH, {}],
    ...OTHERS.map((kind) => [kind, {}] as const),
  ] as const)("$says %j", async (kind, values) => {
    const tried = await opened(await trialOf(kind, values), kind.ways.includes("tins") ? "tins" : "flour");
    const { book, sheet } = tried;
    expectRight(tried);
    book.removeFunctions();
    sheet.type("percent", "0.67", rowOfWater(kind));
    const isBread = sheet.names().includes("room_temp");
    if (isBread) sheet.type("room_temp", kind === PAN_US ? "75" : "24");
    if (isBread) sheet.type("minutes", "7");
    expectRight(tried);
    if (isBread) expect(sheet.shown("friction_note")).toBe("guide needs Gramwright");
    if (isBread) expect(sheet.shown("water_note")).toBe("needs Gramwright");
    expect(sheet.shown("note", 1)).toBe("Notes need Gramwright");
  });

  test("an odd tin says that its capacity needs Gramwright, or with the functions what is refused", async () => {
    const oval: Values = { tin_shape: "oval", tin_size_4: null, tin_size_5: null, tin_own: 1500 };
    const tried = await opened(await trialOf(PAN, oval));
    const { book, sheet } = tried;
    expect(sheet.shown("capacity_note")).toMatch(/^by its sizes/);
    expectRight(tried);
    sheet.type("tin_size_3", "");
    expect(sheet.shown("capacity_note")).not.toBe("needs Gramwright");
    expect(verdict(tried).wrong).toEqual([]);
    book.removeFunctions();
    sheet.type("tin_size_1", "22");
    expect(sheet.shown("capacity_note")).toBe("needs Gramwright");
    expect(verdict(tried).wrong).toEqual([]);
  });
});
