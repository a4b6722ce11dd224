import { describe, expect, test } from "vitest";
import { down, expectCells, refusal, run } from "../functions/support.ts";
import { cells, number } from "./support.ts";

// Who speaks for a row, its name or its kind, and the edges of protein. Figures of 100 g: USDA SR28 20083 bread flour 11.98 g of protein,
// 20081 flour 10.33 g, 01123 whole egg 9.51 g of fat.

const content = (name: string, weight: number, part: string, larder: unknown, kind: string) =>
  number("BAKE_CONTENT", name, weight, part, larder, kind);

describe("a row's name and its kind", () => {
  test("a name in the larder goes before the kind, whatever the kind", () => {
    expect(content("bread flour", 100, "protein", "", "flour")).toBeCloseTo(11.98, 9);
    expect(content("house flour 65", 100, "protein", "", "flour")).toBeCloseTo(10.33, 9);
    expect(content("", 300, "water", "", "water")).toBe(300);
  });
  test("only water, ice, salt, flour and starters are known by their kind", () => {
    const unknown = (name: string, kind: string) => refusal("BAKE_CONTENT", name, 100, "sugar", "", kind);
    expect(unknown("house curd", "dairy")).toMatch(/^BAKE_CONTENT: ingredients row 1 is "house curd", which /);
    // SR28 has no figure for its sugar, and that of plain flour is another's.
    expect(unknown("semolina", "flour")).toMatch(/^BAKE_CONTENT: ingredients row 1 is "semolina", whose sugar is not /);
  });
  test("only bare yeast is asked which it is, no name that yeast is a part of", () => {
    const names = ["house yeast", "yeast extract"];
    const larder = [["ingredient", "fat"], ...names.map((name) => [name, 0.01])];
    for (const name of names)
      expect(refusal("BAKE_CONTENT", name, 10, "energy", larder)).toMatch(
        /whose energy is not known; give its larder row a figure under "energy"\.$/,
      );
  });
  test("several parts are told side by side, a blank one blank", () => {
    const [fat, none, protein] = cells("BAKE_CONTENT", down("egg", ""), down(100, ""), down("fat", "", "protein"));
    expectCells([fat, none, protein], [9.51, "", 12.56]);
  });
  test("ice counts as water by its kind alone", () => {
    const names = down("flour", "scale ice", "tap");
    expectCells(run("BAKE_HYDRATION", names, down(1000, 100, 500), down("flour", "ice", "water")), 0.6);
    const plain = run("BAKE_PLAINWATER", names, down(1000, 100, 500), down("flour", "ice", "water"), 0.65);
    expectCells(plain, 650);
  });
});

describe("plain water that the others bring already", () => {
  const larder = [
    ["ingredient", "water"],
    ["curd", 0.7],
  ];
  const water = (flour: number, curd: number, hydration: number) =>
    run("BAKE_PLAINWATER", down("flour", "curd"), down(flour, curd), down("flour", "dairy"), hydration, larder);
  test("is 0 when it is exactly enough, and when only binary arithmetic says that it is too much", () => {
    expect(water(1000, 1000, 0.7)).toBe(0);
    for (let share = 1; share <= 70; share++) expect(water(1e6, (share / 70) * 1e6, share / 100)).toBeLessThan(1e-6);
  });
  test("is refused when it is more", () => {
    const args = [down("flour", "curd"), down(1000, 1010), down("flour", "dairy"), 0.7, larder];
    expect(refusal("BAKE_PLAINWATER", ...args)).toMatch(
      /^BAKE_PLAINWATER: hydration is 70 %.* has 70\.7 % already: 7 /,
    );
  });
});

describe("protein of a label", () => {
  const label = (...args: unknown[]) => cells("BAKE_LABELPROTEIN", ...args).slice(0, 2);
  test("an EU label gives tenths below 10 g and whole grams from there", () => {
    expectCells(label(9, "", "EU"), [0.0895, 0.0905]);
    expectCells(label(10, "", "EU"), [0.095, 0.105]);
    expectCells(label("10.0", "", "EU"), [0.0995, 0.1005]);
  });
  test("nothing may be up to half a gram, however it is printed", () => {
    expectCells(label(0, "", "EU"), [0, 0.005]);
    expectCells(label("0.0", "", "EU"), [0, 0.005]);
    expectCells(label(0, 40), [0, 0.0125]);
  });
  test("a figure with spaces around it keeps its digits; whole grams are never a share", () => {
    expectCells(label(" 3.5 ", 30), [3.45 / 30, 3.55 / 30]);
    expectCells(label(5, 1000), [0.0045, 0.0055]);
    expect(refusal("BAKE_LABELPROTEIN", 0.1, 30)).toMatch(
      /^BAKE_LABELPROTEIN: protein is 0\.1 g in 30 g; was it typed/,
    );
  });
  test("all of it may be protein, more may not", () => {
    expectCells(label(30, 30), [29.5 / 30, 1]);
    expect(refusal("BAKE_LABELPROTEIN", 31, 30)).toBe(
      "BAKE_LABELPROTEIN: protein is 31 g, more than the 30 g it is said to be in.",
    );
    expect(refusal("BAKE_LABELPROTEIN", 1001, 30)).toBe("BAKE_LABELPROTEIN: protein is 1001; it cannot be above 1000.");
    expect(refusal("BAKE_LABELPROTEIN", "much", 30)).toMatch(/; enter the label's grams of protein such as 3\.$/);
  });
});

describe("flours", () => {
  test("a protein that differs by the dust of binary arithmetic needs no gluten", () => {
    expect(cells("BAKE_GLUTENADD", 1000, 0.1 + 0.2, 0.3)).toEqual([0, 1000, 0]);
  });
  test("a blend lies between its flours, on either side", () => {
    for (const [a, b, wanted] of [
      [0.12, 0.1, 0.09],
      [0.12, 0.1, 0.13],
      [0.1, 0.12, 0.09],
    ])
      expect(refusal("BAKE_FLOURBLEND", a, b, wanted, 1000)).toBe(
        `BAKE_FLOURBLEND: wanted is ${(wanted ?? 0) * 100} %; a blend lies between its flours, 10 % and 12 %.`,
      );
  });
});
