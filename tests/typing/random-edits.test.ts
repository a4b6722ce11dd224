// Weights typed at random over formula sheets, one after the other: each holds exactly or is put back, flours stay 100 %.
import { describe, expect, test } from "vitest";
import type { Sheet } from "../../src/workbook/scripted.ts";
import { IS_LONG, seedOf, tries } from "../kit/scale.ts";
import { randomFrom } from "../templates/formula-sheet-slips.ts";
import { ADDED, type By, built, exact, LEVAIN, log, ONE_FLOUR, ROWS, stands } from "./sheet-kit.ts";

const BYS: readonly By[] = ["pieces", "tins", "dough", "flour"];
const RECIPES = [ROWS, ONE_FLOUR, LEVAIN, ADDED] as const;
/** Edits on one sheet, before its list of what could be undone grows too long. */
const TOGETHER = 40;
/** 2 000 in a long run. */
const EDITS = tries(40) / BYS.length;

const sum = (rows: number, part: (row: number) => number): number =>
  Array.from({ length: rows }, (_, at) => part(at + 1)).reduce((all, one) => all + one, 0);
const number = (value: unknown): number => (typeof value === "number" ? value : 0);

/** Flours of the table, with and without the flour of a levain of 100 % hydration. */
function flours(sheet: Sheet, rows: number): readonly [number, number] {
  const percent = (row: number) => number(sheet.value("percent", row));
  const added = sum(rows, (row) => (sheet.value("kind", row) === "flour" ? percent(row) : 0));
  return [added, added + sum(rows, (row) => (sheet.value("kind", row) === "levain 100%" ? percent(row) / 2 : 0))];
}

describe.each(BYS)("scaled to %s", (by) => {
  test(`${EDITS} edits`, async () => {
    const chance = randomFrom(seedOf(20) + BYS.indexOf(by));
    const random = (below: number) => Math.floor(chance(below));
    let held = 0;
    for (let done = 0; done < EDITS; done += Math.min(TOGETHER, EDITS)) {
      const recipe = RECIPES[random(RECIPES.length)] ?? ROWS;
      const sheet = await built({ recipe, by });
      for (let edit = 0; edit < Math.min(TOGETHER, EDITS); edit++) {
        const row = 1 + random(recipe.length);
        const isMix = random(3) === 0;
        const now = exact(sheet, row) / (isMix ? number(sheet.value("mixes")) : 1);
        const typed = Math.max(0.5, Math.round(now * (70 + random(61))) / 100);
        const column = isMix ? "per_mix" : "weight";
        const before = JSON.stringify(recipe.map((_, at) => sheet.value("percent", at + 1)));
        sheet.type(column, String(typed), row);
        const says = `${by}, ${recipe[row - 1]?.[0]}, ${column} ${typed}, ${sheet.note(column, row)}`;
        if (/put back/.test(sheet.note(column, row))) {
          expect(JSON.stringify(recipe.map((_, at) => sheet.value("percent", at + 1))), says).toBe(before);
        } else {
          held += 1;
          const wanted = isMix ? typed * number(sheet.value("mixes")) : typed;
          expect(Math.abs(exact(sheet, row) - wanted) / wanted, says).toBeLessThan(1e-9);
        }
        expect(Math.min(...flours(sheet, recipe.length).map((one) => Math.abs(one - 1))), says).toBeLessThan(1e-9);
        stands(sheet);
      }
      expect(log(sheet.book)).toEqual([]);
    }
    if (IS_LONG) console.info(`${by}: ${held} of ${EDITS} held, the others were put back`);
    expect(held).toBeGreaterThan(EDITS / 3);
  });
});
