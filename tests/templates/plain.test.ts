import { describe, expect, test } from "vitest";
import { layOut } from "../../shared/sheet/layout.ts";
import type { SheetModel } from "../../shared/sheet/model.ts";
import { lint } from "../../src/build/lint.ts";
import { METRIC, optionsOf } from "../functions/support.ts";
import { OLDER } from "../kit/older.ts";
import { US_UNITS } from "../kit/units.ts";
import { callsOn, expectSame, ownParts, type Pair, pairOf, typeBoth } from "./plain-support.ts";

const has = (model: SheetModel, name: string) => layOut(model, { ...METRIC, parts: ownParts(model) }).names.has(name);

/** Every template's figures go through all that can be typed into them. */
const COMMON = [
  ["by", "dough"],
  ["dough_wanted", "5200"],
  ["percent", "72%", 2],
  ["step_fine", ""],
  ["step_coarse", "0.5"],
  ["mixer_limit", ""],
  ["by", "flour"],
  ["flour_wanted", "3100"],
  ["mixer_limit", "700"],
  ["handling_loss", "7%"],
  ["step_fine", "0.1"],
  ["dough_target", "31"],
  ["tap_temp", "22"],
  ["room_temp", "12"],
  ["dough_target", "19"],
  ["mixing", "hand"],
  ["preferment_temp", "18"],
  ["friction_own", "3"],
  ["yeast", "none"],
  ["tap_temp", ""],
  ["pre_share", "12%"],
  ["pre_hydration", "60%"],
  ["seed_hydration", "50%"],
  ["seed_share", ""],
  ["seed_weight", "40"],
  ["pre_yeast", ""],
  ["pre_share", ""],
  ["roll_in_share", "33%"],
  ["known_weight", "250"],
  ["known_diameter", "30"],
  ["per_area", ""],
  ["effective_wanted", "70%"],
  ["effective_wanted", ""],
  ["tins", "7"],
  ["tin_fill", "0.5"],
  ["trays_wanted", "4"],
  ["by", "trays"],
  ["by", "tins"],
  ["by", "pieces"],
  ["size_pieces", "31", 1],
  ["size_loss", "", 1],
  ["size_weight", "", 2],
] as const;

describe.each(OLDER)("$title", (model) => {
  test("the lint finds nothing in the plain form", () => {
    for (const options of optionsOf(model)) {
      expect(lint(model, { ...options, form: "plain" }, 5), JSON.stringify(options)).toEqual([]);
    }
  });

  test("sample inputs, and what is typed over them", async () => {
    const pair = await pairOf(model, model.sample);
    expect(callsOn(pair.plain)).toEqual([]);
    expect(callsOn(pair.added).length).toBeGreaterThan(1);
    expect(expectSame(pair)).toBeGreaterThan(45);
    for (const [name, text, row] of COMMON) {
      if (!has(model, name)) continue;
      typeBoth(pair, name, text, row);
      expectSame(pair, [], `${name} ${text}`);
    }
  });

  test("ounces, Fahrenheit and inches", async () => {
    const scales = { step_coarse: 0.25, step_fine: 0.05, mixer_limit: 400, mixer_least: 100 };
    const kitchen = { dough_target: 78, flour_temp: 70, room_temp: 72, tap_temp: 58 };
    const given = Object.entries({ ...scales, ...kitchen }).filter(([name]) => has(model, name));
    const pair = await pairOf(model, { ...model.sample, ...Object.fromEntries(given) }, US_UNITS);
    expect(expectSame(pair)).toBeGreaterThan(45);
    for (const [name, text] of [
      ["tap_temp", "90"],
      ["dough_target", "60"],
      ["minutes", "3"],
      ["by", "flour"],
      ["flour_wanted", "120"],
    ] as const) {
      if (!has(model, name)) continue;
      typeBoth(pair, name, text);
      expectSame(pair, [], `${name} ${text}`);
    }
  });

  test("rows inserted first, in the middle and last, deleted and sorted", async () => {
    const pair = await pairOf(model, model.sample, { parts: [] });
    const rows = Array.isArray(model.sample.percent) ? model.sample.percent.length : 0;
    const last = rows + 1;
    for (const [place, name] of [
      [1, "Malt"],
      [3, "Seeds"],
      [last + 2, "Oil"],
    ] as const) {
      insertRow(pair, place, name);
      expectSame(pair, [], `inserted ${name}`, 1);
    }
    deleteRow(pair, 1);
    expectSame(pair, [], "deleted", 1);
    const { added, plain, book } = pair;
    for (const { sheet, at } of [added, plain]) {
      book.sortRange(sheet, `${at("ingredient", 1)}:${at("percent", rows + 2)}`, "A");
    }
    expectSame(pair, [], "sorted", 1);
    typeBoth(pair, "percent", "", 2);
    typeBoth(pair, "kind", "", 2);
    typeBoth(pair, "ingredient", "", 2);
    expectSame(pair, [], "a blank row", 1);
  });

  test("nothing typed shows nothing, and no error", async () => {
    const pair = await pairOf(model, { title: "Blank" });
    // Without an amount there is no dough; the other form says 0 g of it.
    expectSame(pair, []);
    const { book, plain } = pair;
    for (const text of book.shownTexts(plain.sheet, book.usedRange(plain.sheet)).flat()) expect(text).not.toMatch(/^#/);
    expect(plain.value("check")).toBe("");
  });
});

function insertRow({ book, added, plain }: Pair, row: number, name: string): void {
  for (const { sheet, at } of [added, plain]) {
    const line = Number(at("percent", row).replace(/\D/g, ""));
    book.insertRows(sheet, line);
    for (const [column, text] of [
      ["A", name],
      ["B", "salt"],
      ["C", "3%"],
    ] as const)
      book.type(sheet, `${column}${line}`, text);
  }
}

function deleteRow({ book, added, plain }: Pair, row: number): void {
  for (const { sheet, at } of [added, plain]) book.deleteRows(sheet, Number(at("percent", row).replace(/\D/g, "")));
}

test.each([["levain-loaf"], ["soft-bun"], ["cookie"]])(
  "the bench reads a plain %s like the other form",
  async (name) => {
    const model = OLDER.find((one) => one.name === name);
    if (model === undefined) throw new Error(name);
    const { book, added, plain } = await pairOf(model, model.sample);
    const { sheets } = book.answer({ ask: "formulas" }) as { sheets: { sheet: string; dough: number }[] };
    const [own, other] = [added, plain].map(({ sheet }) => sheets.find((one) => one.sheet === sheet));
    expect(other).toEqual({ ...own, sheet: plain.sheet, dough: other?.dough });
    expect(other?.dough).toBeCloseTo(own?.dough ?? 0, 6);
    const reviewed = [added, plain].map(({ sheet, at }) => {
      book.answer({ ask: "goto", sheet, cell: at("by") });
      return book.answer({ ask: "review", style: "" });
    });
    expect(reviewed[1]).toMatchObject({ sheet: plain.sheet });
    const findings = (review: unknown) => {
      const { remarks, facts, meaning } = review as { remarks: { says: string }[]; facts: unknown; meaning: string };
      return { says: remarks.map(({ says }) => says), facts, meaning };
    };
    expect(findings(reviewed[1])).toEqual(findings(reviewed[0]));
  },
);
