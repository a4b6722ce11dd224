// Every weight that stands beside a card's table, of doughs of two mixes and of three, worked out by hand: card of values and living card.
import { describe, expect, test } from "vitest";
import { SHELLED_EGGS } from "../../shared/base/volumes.ts";
import { laminated } from "../../templates/laminated.ts";
import { levainLoaf } from "../../templates/levain-loaf.ts";
import { softBun } from "../../templates/soft-bun.ts";
import { METRIC_UNITS } from "../kit/units.ts";
import { buildSheet } from "../templates/sheet-support.ts";
import { card } from "./card-support.ts";

const KINDS = ["values", "living"] as const;

/** 100 loaves of 1000 g, twice 50 kg: of 2.0 parts flour 1, water 0.68, salt 0.02, seeds 0.3. */
const LEVAIN = {
  title: "Pier seeded",
  by: "pieces",
  mixer_limit: 50_000,
  step_coarse: 5,
  step_fine: 1,
  size_name: ["loaf"],
  size_pieces: [100],
  size_weight: [850],
  size_loss: [0.15],
  pre_share: 0.2,
  pre_hydration: 1,
  seed_hydration: 1,
  seed_share: 0.2,
  keep: 1000,
  pre_hours: 9,
  dough_target: 24,
  room_temp: 24,
  flour_temp: 24,
  preferment_temp: 24,
  friction_own: 8,
  tap_temp: 20,
  held_share: 0.05,
  ingredient: ["Flour", "Water", "Salt", "Seeds"],
  kind: ["flour", "water", "salt", "other"],
  percent: [1, 0.68, 0.02, 0.3],
};

describe("a levain loaf of two mixes", () => {
  const open = () =>
    buildSheet(LEVAIN, { model: levainLoaf, options: { ...METRIC_UNITS, parts: ["preferment", "water"] } });

  test.each(KINDS)("seed, preferment, ice, tap water and held-back water, %s", async (kind) => {
    const { book, sheet } = await open();
    const made = card(book, { sheet, kind });
    const columns = (name: string) => [made.figure(name, 2), made.figure(name, 3)];
    expect(made.figure("Mixes")).toBe(2);
    // Of a mix of 50 kg: 25 000 flour, 17 000 water, 500 salt, 7500 seeds; a fifth of the flour and as much water are levain.
    expect(columns("Flour")).toEqual([5000, 20_000]);
    expect(columns("Water")).toEqual([5000, 12_000]);
    expect(columns("Salt")).toEqual(["", 500]);
    expect(columns("Seeds")).toEqual(["", 7500]);
    expect(made.figure("Levain in each mix (g)", 3)).toBe(10_000);
    // Water at 4 × 24 − 3 × 24 − 8 = 16 °C out of a tap of 20: 12 000 × 4 ÷ (20 + 333.55 ÷ 4.186) = 481.5 of ice.
    expect(made.figure("Ice (part of the water) (g)", 3)).toBe(480);
    expect(made.figure("And tap water, together 16 °C (g)", 3)).toBe(11_520);
    // A twentieth of the 12 000 that are poured.
    expect(made.figure("Water to hold back (g)", 3)).toBe(600);
    // 20 000 for two mixes and 1000 kept: 10 500 of flour; seed of 0.2 ÷ 1.1 of that is 1909.1, half of it flour.
    expect(made.figure("Build levain: starter (g)")).toBe(1910);
    expect(made.figure("Levain to build for all: flour (g)")).toBe(9545);
    expect(made.figure("Levain to build for all: water (g)")).toBe(9545);
    expect(made.figure("Keep back as starter (g)")).toBe(1000);
  });

  test("a weigh-up has the same of each mix, and ice for the temperatures of its own day", async () => {
    const { book } = await open();
    const { sheet: production } = book.answer({
      ask: "day",
      day: "2026-12-05",
      orders: [{ sheet: "Pier seeded", pieces: 100 }],
    }) as { sheet: string };
    const { sheet } = book.answer({ ask: "weighUp", sheet: production }) as { sheet: string };
    const line = (words: string) =>
      book
        .values(sheet, book.usedRange(sheet))
        .find((row) => row[1] === words)
        ?.slice(2, 4);
    const [water, ice] = ["Water at (°C), hold back (g)", "Of the water: ice, tap water (g)"];
    expect(book.shownTexts(sheet, book.usedRange(sheet)).flat()).toContain("☐☐ 2 mixes of 50 kg");
    expect(line("Flour")?.[0]).toBe(20_000);
    expect(line("Levain, ready")?.[0]).toBe(10_000);
    // As on the card: 481.5 of ice, a twentieth of 12 000 held back.
    expect(line(water)).toEqual([16, 600]);
    expect(line(ice)).toEqual([480, 11_520]);
    const rows = book.shownTexts(sheet, book.usedRange(sheet));
    const at = rows.findIndex((row) => row[3] === "Room") + 1;
    const enter = (...degrees: number[]) =>
      degrees.forEach((one, place) => {
        book.type(sheet, `E${at + place}`, String(one));
      });
    // 4 × 24 − 29 − 25 − 24 − 8 = 10 out of a tap of 12: 12 000 × 2 ÷ (12 + 79.68) = 261.8 of ice.
    enter(29, 25, 12);
    expect(line(water)).toEqual([10, 600]);
    expect(line(ice)).toEqual([260, 11_740]);
    // 12 out of a tap of 12.
    enter(27, 25, 12);
    expect(line(ice)).toEqual(["no ice", ""]);
    // 96 − 40 − 35 − 24 − 8 = −11: 12 000 × 23 ÷ 91.68 = 3010.5 of ice, and no water that is colder than the tap's.
    enter(40, 35, 12);
    expect(line(water)?.[0]).toBe(-11);
    expect(line(ice)).toEqual([3010, 8990]);
  });

  test("typed for 150 pieces the living card has three mixes; what is kept back stays", async () => {
    const { book, sheet } = await open();
    const made = card(book, { sheet, kind: "living" });
    book.type(made.sheet, made.place("Pieces wanted"), "150");
    expect(made.figure("Mixes")).toBe(3);
    expect(made.figure("Flour", 3)).toBe(20_000);
    expect(made.figure("Levain in each mix (g)", 3)).toBe(10_000);
    expect(made.figure("Ice (part of the water) (g)", 3)).toBe(480);
    // 30 000 and 1000: 31 ÷ 21 of what two mixes took, 2818.2 and 14 090.9.
    expect(made.figure("Build levain: starter (g)")).toBe(2820);
    expect(made.figure("Levain to build for all: flour (g)")).toBe(14_090);
    expect(made.figure("Levain to build for all: water (g)")).toBe(14_090);
    expect(made.figure("Keep back as starter (g)")).toBe(1000);
  });

  test("a living card shows pieces first, and nothing of what it reckons with is on its page", async () => {
    const { book, sheet } = await open();
    const made = card(book, { sheet, kind: "living" });
    expect(made.rows()[3]?.slice(0, 4)).toEqual(["Pieces wanted", "", 100, "← type here"]);
    const page = made.rows().map((row) => row.slice(0, 4));
    const texts = page.flat().map(String).join(" ");
    expect(texts).not.toMatch(/on the formula sheet|Batch factor|Scales read|exact/);
    // Beside it they are, and the columns are folded away.
    expect(made.rows().flat()).toContain("Batch factor");
    expect(book.trail).toContain("collapseGroups");
  });
});

// EU medium is 53 to 63 g (Regulation (EC) 589/2008), 58 less 12 % shell; an AU large one 50 to 58 g likewise; US large 50 g (USDA SR28 01123).
test.each([
  ["EU", SHELLED_EGGS.EU.medium ?? 0, 51],
  ["AU", SHELLED_EGGS.AU.large ?? 0, 48],
  ["US", 50, 50],
])("eggs of a mix by the size of the country: %s", async (_, each, known) => {
  expect(each).toBe(known);
  const { book, sheet } = await buildSheet(
    {
      title: "Pier bun",
      by: "pieces",
      mixer_limit: 10_000,
      step_coarse: 5,
      step_fine: 1,
      size_name: ["bun"],
      size_pieces: [200],
      size_weight: [85],
      size_loss: [0.15],
      egg_weight: each,
      ingredient: ["Flour", "Whole egg", "Water", "Salt"],
      kind: ["flour", "egg", "water", "salt"],
      percent: [1, 0.2, 0.78, 0.02],
    },
    { model: softBun, options: { ...METRIC_UNITS, parts: [] } },
  );
  for (const kind of KINDS) {
    const made = card(book, { sheet, kind });
    // 20 kg in two mixes, a tenth of each egg: 1000 g.
    expect(made.figure("Mixes")).toBe(2);
    expect(made.figure(`Eggs per mix, ${each} g each, shelled`), kind).toBeCloseTo(1000 / each, 1);
  }
});

test.each(KINDS)("fat to roll in is told for all mixes, 0.28 of the base dough: %s", async (kind) => {
  const parts = laminated.parts.filter((part) => !/cost|label/.test(part));
  const values = { ...laminated.sample, mixer_limit: 5000 };
  const { book, sheet } = await buildSheet(values, { model: laminated, options: { ...METRIC_UNITS, parts } });
  const made = card(book, { sheet, kind });
  const line = made.rows().find((row) => row.some((cell) => /to roll in, in all/.test(String(cell))));
  expect(Number(made.figure("Mixes"))).toBe(2);
  // Each of the two figures stands on a step of the scales, 5 g at most.
  expect(Math.abs(Number(line?.[2]) - 0.28 * Number(made.figure("Dough to make (g)")))).toBeLessThanOrEqual(5);
});
