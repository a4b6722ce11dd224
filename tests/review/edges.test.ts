import { describe, expect, test } from "vitest";
import { STYLE_NAMES } from "../../shared/review/bands.ts";
import { FLOUR, type Row, remarks } from "./support.ts";

// Where a remark stands, what it counts, and what it leaves alone. Water by USDA SR28: whole egg 76.15 %, milk 88.13 %, nonfat dry milk 3.16 %.

const SALT: Row = ["salt", "salt", 2];
const YEAST: Row = ["fresh yeast", "yeast", 2];
const LEAN: readonly Row[] = [SALT, YEAST];

describe("where it stands", () => {
  test("what is missing stands in the first flour row, one remark after the other", () => {
    const said = remarks("pan bread", [
      ["sugar", "sugar", 5],
      ["rye flour", "flour", 40],
      ["flour", "flour", 60],
    ]);
    expect(said.map((one) => one !== "")).toEqual([false, true, false]);
    expect(said[1]?.match(/(^|; )(Water|Salt|Yeast) is missing, below the usual range for pan bread/g)).toEqual([
      "Water is missing, below the usual range for pan bread",
      "; Salt is missing, below the usual range for pan bread",
      "; Yeast is missing, below the usual range for pan bread",
    ]);
    expect(said[1]).toContain("Yeast is missing, below the usual range for pan bread (1 to 4 %, usually 2 %)");
  });
  test("a row of 0 % is as good as none; the first row that holds some speaks for its kind", () => {
    const [whole, water] = remarks("pan bread", [FLOUR, ["water", "water", 0], ...LEAN]);
    expect(whole).toContain("Water is missing");
    expect(water).toBe("");
    const said = remarks("pan bread", [
      FLOUR,
      ["water", "water", 63],
      ...LEAN,
      ["honey", "sugar", 0],
      ["sugar", "sugar", 20],
    ]);
    expect(said[4]).toBe("");
    expect(said[5]).toContain("Sugar is 20 % of all flour, above the usual range for pan bread (1.5 to 12 %");
  });
  test("ice is water that is poured in", () => {
    const [whole, ice] = remarks("pan bread", [FLOUR, ["ice", "ice", 75], ...LEAN]);
    expect(ice).toContain("Water is 75 % of all flour, above the usual range");
    expect(whole).toBe("");
  });
  test("a band of nothing says so", () => {
    expect(remarks("baguette", [FLOUR, ["water", "water", 68], ...LEAN, ["egg", "egg", 5]])[4]).toContain(
      "Egg is 5 % of all flour, above the usual range for baguette (none), from published formulas",
    );
  });
});

test("a remark says where its range is from, and nobody's name", () => {
  for (const style of Object.keys(STYLE_NAMES)) {
    const says = remarks(style, [FLOUR, ["salt", "salt", 9]])[1] ?? "";
    expect(says).toMatch(
      /^Salt is 9 % of all flour, above the usual range for [a-z ]+ \([^()]*\), from published formulas$/,
    );
  }
});

describe("what counts as water", () => {
  test("of a muffin liquid dairy with its whole weight, dry milk and egg with their water", () => {
    expect(remarks("muffin", [FLOUR, ["milk", "dairy", 45]])[0]).toContain("Water, dairy included, is 45 %");
    expect(remarks("muffin", [FLOUR, ["nonfat dry milk", "dairy", 60]])[0]).toContain(
      "Water, dairy included, is 1.9 %",
    );
    expect(remarks("muffin", [FLOUR, ["water", "water", 50], ["whole egg", "egg", 30]])[0]).toContain(
      "Effective hydration is 72.85 % of all flour, below the usual range for muffin (76.4 to 147 %, usually 97.24 %)",
    );
  });
  test("dairy's and starters' together", () => {
    // 80 × 0.8813 and 20, over 120 of flour.
    const rows: Row[] = [FLOUR, ["milk", "dairy", 80], ["levain", "levain 100%", 40], ...LEAN];
    expect(remarks("pan bread", rows)[0]).toContain("Water, dairy and starters included, is 75.42 %");
  });
  test("a whole that is only the water is told once, one that holds more is told beside it", () => {
    const wet = (...more: Row[]) => remarks("pan bread", [FLOUR, ["water", "water", 80], ...LEAN, ...more]);
    expect(wet()[0]).toBe("");
    // 80 and 20 × 0.7615.
    expect(wet(["whole egg", "egg", 20])[0]).toContain("Effective hydration is 95.23 % of all flour, above");
    expect(remarks("brioche", [FLOUR, ["water", "water", 15], SALT, ["fresh yeast", "yeast", 5]])[0]).toContain(
      "Effective hydration is 15 % of all flour, below",
    );
  });
  test("what is not counted cannot be missed, but too much is too much without it", () => {
    const rows = (water: number): Row[] => [FLOUR, ["water", "water", water], ["curd", "dairy", 10], ...LEAN];
    expect(remarks("pan bread", rows(40)).slice(0, 3)).toEqual(["", "", "not in the larder: its water is not counted"]);
    expect(remarks("pan bread", rows(75))[1]).toContain("Water, dairy included, is 75 % of all flour, above");
    const fat = [
      ["ingredient", "fat"],
      ["curd", 0.3],
    ];
    expect(remarks("pan bread", rows(60), fat)[2]).toBe("its water is not in the larder and is not counted");
    expect(remarks("pan bread", [FLOUR, ["water", "water", 63], ...LEAN, ["", "other", 5]])[4]).toBe(
      "not in the larder: its water is not counted",
    );
  });
});

describe("names", () => {
  const bread = (name: string, percent: number, larder?: unknown) =>
    remarks("pan bread", [FLOUR, ["water", "water", 63], SALT, [name, "yeast", percent]], larder)[3];
  test("a yeast's own name tells which, or what the larder also calls it", () => {
    expect(bread("bag of instant", 1)).toBe("");
    expect(bread("bag of instant", 3)).toContain("Dry yeast is 3 %");
    expect(bread("Compressed block", 3)).toBe("");
    expect(bread("block", 9)).toBe("say fresh, instant or active dry");
    const larder = [
      ["ingredient", "also called"],
      ["block", "instant yeast"],
    ];
    expect(bread("block", 3, larder)).toContain("Dry yeast is 3 %");
  });
  test("a starter of nothing excuses nothing", () => {
    const sour = (percent: number): Row[] => [FLOUR, ["water", "water", 63], SALT, ["levain", "levain 100%", percent]];
    expect(remarks("hearth", sour(0))[0]).toContain("Yeast is missing");
    expect(remarks("hearth", sour(5))[0]).not.toContain("Yeast is missing");
  });
  test("a leavening is found by what the larder also calls it", () => {
    const larder = [
      ["ingredient", "also called", "water"],
      ["double acting", "baking powder", 0],
    ];
    expect(remarks("muffin", [FLOUR, ["double acting", "other", 8]], larder)[1]).toContain("Baking powder is 8 %");
  });
  test("an egg that the larder lacks counts as it stands, dried egg as the egg it makes", () => {
    expect(remarks("brioche", [FLOUR, ["mystery", "egg", 70]])[1]).toContain("Egg is 70 % of all flour, above");
    // 97.22 % solids against 23.85 % (USDA SR28 01133, 01123): 20 g are 81.53 g of shell egg.
    expect(remarks("brioche", [FLOUR, ["dried whole egg", "egg", 20]])[1]).toContain(
      "Egg is 81.53 % of all flour, above",
    );
  });
});
