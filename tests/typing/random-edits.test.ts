// Weights typed at random over formula sheets, one after the other: each holds exactly or is put back, flours stay 100 %.
import { describe, expect, test } from "vitest";
import type { Values } from "../../shared/sheet/model.ts";
import type { Sheet } from "../../src/workbook/scripted.ts";
import { IS_LONG, seedOf, tries } from "../kit/scale.ts";
import { templateOf } from "../sidebar/samples.ts";
import { randomFrom } from "../templates/formula-sheet-slips.ts";
import { ADDED, AMOUNTS, built, exact, isWhole, LEVAIN, log, ONE_FLOUR, type Recipe, ROWS } from "./sheet-kit.ts";

/** Edits on one sheet, before its list of what could be undone grows too long. */
const TOGETHER = 40;

const POOLISH = { pre_kind: "poolish", pre_share: 0.3, pre_hydration: 1, pre_yeast: 0.002 };
const rolled = (of: string): Values => ({ roll_in_name: "Sheet butter", roll_in_share: 0.3, roll_in_of: of });
const sampleOf = (name: string): { readonly recipe: Recipe; readonly values: Values } => {
  const { sample } = templateOf(name);
  const column = (of: string) => sample[of] as readonly (string | number)[];
  const recipe = column("ingredient").map((one, at) => [one, column("kind")[at], column("percent")[at]]);
  return { recipe: recipe as unknown as Recipe, values: sample };
};

type Case = {
  readonly template: string;
  readonly recipe: Recipe;
  readonly by: string;
  readonly amount?: number;
  readonly values?: Values;
};
/** Every template in every way of scaling it, with all that stands beside the table of some. */
const CASES: readonly Case[] = [
  ...[ROWS, ONE_FLOUR, LEVAIN, ADDED].flatMap((recipe): Case[] => [
    { template: "pan-loaf", recipe, by: "pieces", values: AMOUNTS.pieces as Values },
    { template: "pan-loaf", recipe, by: "tins", amount: 30 },
    { template: "pan-loaf", recipe, by: "dough", amount: 25_000 },
    { template: "pan-loaf", recipe, by: "flour", amount: 14_000 },
  ]),
  { template: "hearth-loaf", recipe: ROWS, by: "dough", amount: 25_000, values: POOLISH },
  ...["levain-loaf", "soft-bun", "flat-round"].flatMap((template): Case[] => [
    { template, ...sampleOf(template), by: "pieces" },
    { template, ...sampleOf(template), by: "dough", amount: 25_000 },
    { template, ...sampleOf(template), by: "flour", amount: 14_000 },
  ]),
  ...["base", "finished", "flour"].flatMap((of): Case[] => [
    { template: "laminated", recipe: ROWS, by: "pieces", values: { ...sampleOf("laminated").values, ...rolled(of) } },
    { template: "laminated", recipe: ONE_FLOUR, by: "dough", amount: 21_000, values: rolled(of) },
    { template: "laminated", recipe: ROWS, by: "flour", amount: 14_000, values: rolled(of) },
  ]),
  { template: "cake", ...sampleOf("cake"), by: "tins", amount: 24 },
  { template: "cake", ...sampleOf("cake"), by: "batter", amount: 17_000 },
  { template: "cookie", ...sampleOf("cookie"), by: "trays", amount: 30 },
  { template: "cookie", ...sampleOf("cookie"), by: "dough", amount: 9000 },
];
/** 2 000 in a long run. */
const EDITS = Math.max(2, Math.ceil(tries(40) / CASES.length));

const number = (value: unknown): number => (typeof value === "number" ? value : 0);
/** Flours of the table, with and without the flour inside a levain. */
function flours(sheet: Sheet, rows: number): readonly [number, number] {
  const at = Array.from({ length: rows }, (_, row) => [
    number(sheet.value("percent", row + 1)),
    number(sheet.value("flour_part", row + 1)),
  ]) as [number, number][];
  const sum = (part: (percent: number, flour: number) => number) =>
    at.reduce((all, [percent, flour]) => all + part(percent, flour), 0);
  return [sum((percent, flour) => (flour === 1 ? percent : 0)), sum((percent, flour) => percent * flour)];
}

describe("over all templates", () => {
  test.each(
    // Every other one in a usual run.
    CASES.filter((_, at) => IS_LONG || at % 2 === 0).map(
      (one, at) => [`${one.template}, ${one.recipe.length} rows, by ${one.by}, ${at + 1}`, one] as const,
    ),
  )("%s", async (_says, { template, recipe, by, amount, values = {} }) => {
    const at = CASES.findIndex((one) => one.template === template && one.recipe === recipe && one.by === by);
    const chance = randomFrom(seedOf(20) + at);
    const random = (below: number) => Math.floor(chance(below));
    let held = 0;
    for (let done = 0; done < EDITS; done += TOGETHER) {
      const order = { by, amount: amount ?? null };
      const sheet = await built({ template, recipe, values: { ...values, ...columnsOf(recipe), ...order } });
      const first = recipe.map((_, row) => exact(sheet, row + 1));
      for (let edit = 0; edit < Math.min(TOGETHER, EDITS - done); edit++)
        held += typedOnce(sheet, recipe, first, random);
      expect(log(sheet.book)).toEqual([]);
    }
    if (IS_LONG) console.info(`${template} by ${by}: ${held} of ${EDITS} held, the others were put back`);
  });
});

const columnsOf = (recipe: Recipe): Values => ({
  ingredient: recipe.map(([name]) => name),
  kind: recipe.map(([, kind]) => kind),
  percent: recipe.map(([, , percent]) => percent),
});

/** 1 where the weight held, 0 where it was put back. Weights stay near the `first` ones; after many of them the sheet may still ask whether so much is meant. */
function typedOnce(sheet: Sheet, recipe: Recipe, first: readonly number[], random: (below: number) => number): number {
  const row = 1 + random(recipe.length);
  const isMix = sheet.names().includes("per_mix") && random(3) === 0;
  const now = (first[row - 1] ?? 0) / (isMix ? number(sheet.value("mixes")) : 1);
  const typed = Math.max(0.5, Math.round(now * (70 + random(61))) / 100);
  const column = isMix ? "per_mix" : "weight";
  const percents = () => JSON.stringify(recipe.map((_, at) => sheet.value("percent", at + 1)));
  const before = percents();
  sheet.type(column, String(typed), row);
  const says = `${recipe[row - 1]?.[0]}, ${column} ${typed}, ${sheet.note(column, row)}`;
  const isBack = /put back/.test(sheet.note(column, row));
  if (isBack) expect(percents(), says).toBe(before);
  else {
    const wanted = isMix ? typed * number(sheet.value("mixes")) : typed;
    expect(Math.abs(exact(sheet, row) - wanted) / wanted, says).toBeLessThan(1e-9);
  }
  expect(Math.min(...flours(sheet, recipe.length).map((one) => Math.abs(one - 1))), says).toBeLessThan(1e-9);
  isWhole(sheet);
  return isBack ? 0 : 1;
}
