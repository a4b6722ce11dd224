import { describe, expect, test } from "vitest";
import { down, refusal, run } from "../functions/support.ts";
import { FLOUR, type Row, remarks } from "./support.ts";

describe("the rest", () => {
  test("0.2 % of salt is low (Wild Yeast blog, part 2, exercise 3), and none is missing", () => {
    const [whole, , salt] = remarks("hearth", [
      FLOUR,
      ["water", "water", 65],
      ["salt", "salt", 0.2],
      ["fresh yeast", "yeast", 1],
    ]);
    expect(salt).toBe(
      "Salt is 0.2 % of all flour, below the usual range for hearth (1.5 to 2.2 %, usually 2 %), from published formulas",
    );
    expect(whole).toBe("");
    expect(remarks("hearth", [FLOUR, ["water", "water", 65], ["fresh yeast", "yeast", 1]])[0]).toContain(
      "Salt is missing",
    );
  });

  test("only water, salt and yeast are missed", () => {
    const bun = remarks("bun", [FLOUR, ["water", "water", 57], ["salt", "salt", 2], ["fresh yeast", "yeast", 5]]);
    expect(bun).toEqual(["", "", "", ""]);
    expect(remarks("pan bread", [FLOUR, ["salt", "salt", 2], ["fresh yeast", "yeast", 2]])[0]).toContain(
      "Water is missing",
    );
  });

  test("water in a preferment counts, and percents may refer to the added flour", () => {
    const rows: Row[] = [
      ["flour", "flour", 100],
      ["water", "water", 69],
      ["salt", "salt", 2.2],
      ["levain", "levain 100%", 20],
    ];
    const [, water] = remarks("bagel", rows);
    // (69 + 10) over 110 is 71.82 %.
    expect(water).toContain(
      "Water, starters included, is 71.82 % of all flour, above the usual range for bagel (50 to 58 %",
    );
  });

  test("a rich dough's water hides in its eggs: effective hydration is told to the first flour row", () => {
    const [whole, egg] = remarks("brioche", [
      FLOUR,
      ["egg", "egg", 65],
      ["milk", "dairy", 22],
      ["butter", "fat", 80],
      ["cream cheese", "other", 40],
      ["salt", "salt", 2],
      ["fresh yeast", "yeast", 5],
    ]);
    // 65 × 0.7615 + 22 × 0.8813 + 80 × 0.1794 + 40 × 0.5262 = 104.29; band 20 + 0.76 × 65 + 0.18 × 80 = 83.8 at most.
    expect(whole).toContain("Effective hydration is 104.29 % of all flour, above the usual range for brioche");
    expect(whole).toContain("to 83.8 %");
    expect(egg).toBe("");
  });

  test("a name the larder lacks is not counted, and nothing is said to be missing on its account", () => {
    const rows: Row[] = [FLOUR, ["curd", "dairy", 60], ["salt", "salt", 2], ["fresh yeast", "yeast", 2]];
    expect(remarks("pan bread", rows)).toEqual(["", "not in the larder: its water is not counted", "", ""]);
    const larder = [
      ["ingredient", "water"],
      ["curd", 0.8],
    ];
    expect(remarks("pan bread", rows, larder)[0]).toContain("Water, dairy included, is 48 % of all flour, below");
  });

  test("ratios and plain percents say the same, blank rows stay blank, a fresh sheet is a blank cell", () => {
    const plain: Row[] = [
      FLOUR,
      ["water", "water", 80],
      ["", "", ""],
      ["salt", "salt", 2],
      ["fresh yeast", "yeast", 2],
    ];
    const ratios = plain.map(([name, kind, percent]): Row => [name, kind, percent === "" ? "" : Number(percent) / 100]);
    expect(remarks("pan bread", ratios)).toEqual(remarks("pan bread", plain));
    expect(remarks("pan bread", plain).map((said) => said !== "")).toEqual([false, true, false, false, false]);
    expect(
      remarks("pan bread", [
        ["flour", "flour", ""],
        ["water", "water", ""],
      ]),
    ).toEqual(["", ""]);
    expect(run("BAKE_REVIEW", down("", ""), down("flour", "water"), down("", ""), "pan bread")).toBe("");
  });

  test("dried egg counts as the egg it makes, dry milk as milk solids, liquid milk not", () => {
    // 12 g of dried egg hold the solids of 48.9 g of shell egg (USDA SR28 01123, 01133).
    const rows: Row[] = [
      FLOUR,
      ["dried whole egg", "egg", 12],
      ["water", "water", 20],
      ["butter", "fat", 50],
      ["sugar", "sugar", 12],
      ["salt", "salt", 2],
      ["fresh yeast", "yeast", 5],
    ];
    expect(remarks("brioche", rows)[1]).toBe("");
    const bun: Row[] = [FLOUR, ["milk", "dairy", 60], ["salt", "salt", 2], ["fresh yeast", "yeast", 5]];
    expect(remarks("bun", bun)[1]).toBe("");
  });

  test.each([
    ["Sandwich Loaf", "pan bread"],
    ["croissants", "laminated"],
    ["wholemeal", "whole wheat"],
    ["Hearth, lean", "hearth"],
    ["Rye (any share)", "rye"],
    ["Bun, soft roll", "bun"],
    ["Pie crust", "pie crust"],
    ["genoise", "sponge"],
  ])("%s is %s", (typed, style) => {
    expect(remarks(typed, [FLOUR, ["salt", "salt", 9]])[1]).toContain(`above the usual range for ${style} (`);
  });

  test.each([
    [down("flour"), down("flour"), down(100), "chiffon", 'style is "chiffon"; choose "pan bread"'],
    [down("flour"), down("flour"), down(100), "", "style is blank"],
  ])("%j, %j, %j, %s is refused", (names, kinds, percents, style, sentence) => {
    expect(refusal("BAKE_REVIEW", names, kinds, percents, style)).toContain(sentence);
  });
});
