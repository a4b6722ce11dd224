import { describe, expect, test } from "vitest";
import { STYLE_NAMES } from "../../shared/review/bands.ts";
import { FLOUR, type Row, remarks } from "./support.ts";

/**
 * The bands as compiled from US Army, USDA, Gisslen, Figoni, Hamelman, A Treatise on Baking and school formulas, percent of
 * all flour: salt; sugar; fat; egg; milk solids. Laminated fat is dough fat and roll-in together.
 */
const PRINTED: Readonly<Record<string, readonly string[]>> = {
  "pan bread": ["1.5-2-2.4", "1.5-5-12", "1-3-9", "0", "0-4-8.5"],
  hearth: ["1.5-2-2.2", "0-0-2", "0-0-2", "0", "0"],
  baguette: ["1.8-2-2.2", "0", "0", "0", "0"],
  ciabatta: ["1.8-2-2.2", "0", "0-1-4", "0", "0"],
  pizza: ["1.5-2-2.8", "0-0-3", "0-2-5", "0", "0"],
  "whole wheat": ["1.6-2-2.2", "0-3-8", "0-2-5", "0", "0-2-4"],
  rye: ["1.8-2-2.2", "0-1-4", "0", "0", "0"],
  bagel: ["1.8-2-2.8", "0-2-5", "0-0-2", "0", "0"],
  bun: ["1.7-2-2.2", "8-10-15", "6-10-12", "0-5-10", "3-5-8"],
  "sweet dough": ["0.9-1.7-2", "10-18-25", "10-16-25", "5-15-25", "3-5-8"],
  brioche: ["2-2-2.5", "5-12-15", "35-50-80", "45-50-65", "0-2-5"],
  laminated: ["1.7-2.2-2.5", "7-10-13", "45-63-80", "0-10-25", "0-2-5"],
  "yeast doughnut": ["1.7-2-2.5", "8-14-15", "8-12-15", "0-10-15", "4-5-8"],
  "pie crust": ["1.5-2-3", "0-5-7", "50-70-80", "0", "0"],
  "drop cookie": ["0.8-1.5-2", "60-100-120", "45-70-85", "15-30-40", "0"],
  muffin: ["0.8-1.5-2.5", "35-55-70", "20-38-50", "30-40-50", "0-7-10"],
  "layer cake": ["1.5-2.5-3.2", "100-120-150", "40-50-55", "50-60-70", "5-10-16"],
  "pound cake": ["1-1.5-2", "90-100-120", "50-90-100", "50-90-100", "0-3-6"],
  sponge: ["0-1-2", "100-125-200", "0-0-20", "100-150-200", "0"],
};
const COMPONENTS: readonly (readonly [string, string, string])[] = [
  ["Salt", "salt", "salt"],
  ["Sugar", "sugar", "sugar"],
  ["Fat", "lard", "fat"],
  ["Egg", "egg", "egg"],
  ["Milk solids", "nonfat dry milk", "dairy"],
];

describe("the edges of the bands", () => {
  test("nineteen styles, and no others", () => {
    expect(Object.keys(STYLE_NAMES)).toEqual(Object.keys(PRINTED));
    expect(Object.keys(PRINTED)).toHaveLength(19);
  });

  const rows = Object.entries(PRINTED).flatMap(([style, bands]) =>
    bands.map((band, at) => ({ style, band, component: COMPONENTS[at] ?? COMPONENTS[0] })),
  );
  test.each(rows)("$style: $component.0 $band", ({ style, band, component }) => {
    const [what = "", name = "", kind = ""] = component ?? [];
    const [low = 0, , high = low] = band.split("-").map(Number);
    const said = (amount: number) =>
      remarks(style, [
        ["flour", "flour", 1],
        [name, kind, amount / 100],
      ])[1]
        ?.split("; ")
        .some((one) => one.startsWith(`${what} is `));
    if (low > 0) {
      expect(said(low)).toBe(false);
      expect(said(low * 0.99)).toBe(true);
    }
    if (high > 0) expect(said(high)).toBe(false);
    expect(said(high * 1.01 + 0.05)).toBe(true);
  });

  test.each([
    ["pan bread", 57, 68],
    ["baguette", 64, 72],
    ["ciabatta", 74, 85],
    ["whole wheat", 60, 80],
    ["rye", 65, 85],
    ["bagel", 50, 58],
  ])("%s takes %d to %d %% of water", (style, low, high) => {
    const said = (amount: number) => remarks(style, [FLOUR, ["water", "water", amount]])[1] ?? "";
    expect(said(low)).toBe("");
    expect(said(high)).toBe("");
    expect(said(low - 0.5)).toContain("below the usual range");
    expect(said(high + 0.5)).toContain("above the usual range");
  });
});

describe("yeast", () => {
  const lean = (...rest: Row[]): Row[] => [FLOUR, ["water", "water", 63], ["salt", "salt", 2], ...rest];
  const said = (style: string, name: string, amount: number) => remarks(style, lean([name, "yeast", amount]))[3] ?? "";

  test("3 % is high for a dry yeast, not for fresh (Wild Yeast blog, part 2)", () => {
    expect(said("pan bread", "instant yeast", 3)).toContain(
      "Dry yeast is 3 % of all flour, above the usual range for pan bread",
    );
    expect(said("pan bread", "fresh yeast", 3)).toBe("");
  });

  test("a cube of 42 g on 500 g of flour is flagged, on 1 kg it is near the edge (German packs)", () => {
    expect(said("pan bread", "fresh yeast", 8.4)).toContain("Fresh yeast is 8.4 % of all flour, above");
    expect(said("sweet dough", "fresh yeast", 4.2)).toBe("");
  });

  test("a slipped decimal is flagged: 0.75 kg for 0.075 kg in a slow baguette", () => {
    const rows: Row[] = [FLOUR, ["water", "water", 70], ["salt", "salt", 2], ["fresh yeast", "yeast", 7.5]];
    expect(remarks("baguette", rows)[3]).toContain(
      "Fresh yeast is 7.5 % of all flour, above the usual range for baguette (0.5 to 1.5 %",
    );
  });

  test("dry yeast counts as fresh where the style has no dry band: 1 to 0.33, or 0.40 (a bread textbook on ckbk)", () => {
    expect(said("baguette", "instant yeast", 0.33)).toBe("");
    expect(said("baguette", "instant yeast", 0.66)).toContain("Yeast, counted as fresh, is 2 % of all flour, above");
    expect(said("baguette", "active dry yeast", 0.8)).toContain("Yeast, counted as fresh, is 2 % of all flour, above");
  });

  test("where the dry band is one kind's, the other is converted", () => {
    expect(said("bun", "active dry yeast", 4)).not.toContain("Yeast");
    expect(said("bun", "instant yeast", 3.3)).not.toContain("Yeast");
    expect(said("bun", "instant yeast", 3.63)).toContain("Yeast, counted as active dry, is 4.4 %");
    expect(said("laminated", "fresh yeast", 9)).toContain("Yeast, counted as instant, is 2.97 %");
  });

  test('"yeast" alone does not say which', () => {
    expect(said("pan bread", "Yeast", 1)).toBe("say fresh, instant or active dry");
    expect(said("pan bread", "dry yeast", 1)).toBe("say fresh, instant or active dry");
  });

  test("yeast that is missing is told to the first flour row; a starter excuses little or none, not too much", () => {
    expect(remarks("pan bread", lean())[0]).toContain("Yeast is missing, below the usual range for pan bread");
    const sour = (...rest: Row[]) =>
      remarks("hearth", [FLOUR, ["water", "water", 60], ["salt", "salt", 2.2], ["levain", "levain 100%", 20], ...rest]);
    expect(sour()).toEqual(["", "", "", ""]);
    expect(sour(["fresh yeast", "yeast", 0.1])[4]).toBe("");
    expect(sour(["fresh yeast", "yeast", 5])[4]).toContain("above the usual range for hearth");
  });

  test("styles without yeast have no band for it, but one for their leavening", () => {
    const muffin = (powder: number) =>
      remarks("muffin", [FLOUR, ["milk", "dairy", 60], ["salt", "salt", 1.5], ["baking powder", "other", powder]])[3] ??
      "";
    expect(muffin(5)).toBe("");
    expect(muffin(8)).toContain(
      "Baking powder is 8 % of all flour, above the usual range for muffin (4 to 6.5 %, usually 5.5 %)",
    );
    expect(remarks("drop cookie", [FLOUR, ["baking soda", "other", 3]])[1]).toContain("Baking soda is 3 %");
  });
});
