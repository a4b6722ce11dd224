import { describe, expect, test } from "vitest";
import { down, expectCells, refusal, run } from "../functions/support.ts";

const LB = 453.59237;

/** Sixteen dozen dinner rolls: a class worksheet, docstoc 52086225. */
const ROLLS = {
  lines: down(
    "1 lb sugar",
    "1 lb 4 oz shortening",
    "8 oz dry milk",
    "2 oz salt",
    "3 eggs",
    "6 oz fresh yeast",
    "4 lb water",
    "7 lb flour",
  ),
  names: down("sugar", "shortening", "dry milk", "salt", "eggs", "fresh yeast", "water", "flour"),
  larder: [
    ["Ingredient", "Price", "Pack"],
    ["sugar", 1.99, "5 lb"],
    ["shortening", 2.89, "3 lb"],
    ["dry milk", 1.89, "1 lb"],
    ["salt", 0.59, "1 lb"],
    ["eggs", 0.89, "1 dozen"],
    ["fresh yeast", 4.29, "4 oz"],
    ["water", "n/a", ""],
    ["flour", 2.89, "5 lb"],
  ],
};
type Rows = [number | "", string][];

describe("BAKE_COSTS", () => {
  const rolls = (larder: unknown = ROLLS.larder) =>
    run("BAKE_COSTS", ROLLS.names, run("BAKE_GRAMS", ROLLS.lines), larder) as Rows;
  const sum = (rows: Rows) => rows.reduce((all, [cost]) => all + (cost || 0), 0);

  test("sixteen dozen rolls cost $13.3244, $0.8328 a dozen, yeast 48 % of it (docstoc 52086225)", () => {
    const rows = rolls();
    const expected = [0.398, 1.2042, 0.945, 0.0738, 0.2225, 6.435];
    expected.forEach((cost, at) => {
      expectCells(rows[at]?.[0], cost, 1e-4);
    });
    expectCells(rows[7]?.[0], 4.046, 1e-4);
    expectCells(sum(rows), 13.3244, 1e-3);
    expectCells(sum(rows) / 16, 0.8328, 1e-4);
    expectCells(sum(rows) / 192, 0.0694, 1e-4);
    expectCells((rows[5]?.[0] || 0) / sum(rows), 0.48, 5e-3);
  });
  test("a price of n/a is told in its row and leaves the others their costs", () => {
    expect(rolls()[6]).toEqual(["", 'column "price" is "n/a", which is not a number; enter a price such as 4.90']);
    const blank = ROLLS.larder.map((row) => row.map((cell) => (cell === "n/a" ? "" : cell)));
    expect(rolls(blank)[6]).toEqual(["", "no price"]);
    expect(rolls(ROLLS.larder.filter(([name]) => name !== "water"))[6]).toEqual(["", "no price"]);
  });
  test("every reason for no cost is said in its row", () => {
    const larder = [
      ["ingredient", "price", "pack", "usable"],
      ["flour", 20, "25 kg", ""],
      ["salt", "", "1 kg", ""],
      ["rye flour", 3, "", ""],
      ["egg", 4, 30, ""],
      ["carrot", 1, "1 kg", 0.8],
      ["onion", 1, "1 kg", 0],
      ["vanilla", 9, "1 pint", ""],
    ];
    const names = down(
      "Flours",
      "salt",
      "rye flour",
      "egg",
      "carrots",
      "onion",
      "vanilla",
      "sugar",
      "moon dust",
      "",
      "water",
    );
    expectCells(run("BAKE_COSTS", names, down(2.5, 1, 1, 1, 1, 1, 1, 1, 1, "", 1), larder, "kg"), [
      [2, ""],
      ["", "no price"],
      ["", "no pack size"],
      ["", 'pack is 30, kg or pieces? Enter "30 kg" or "30 each"'],
      [1.25, ""],
      ["", "usable is 0"],
      ["", 'pack is "1 pint": say "US" or "UK" before pint'],
      ["", "not in larder"],
      ["", "not in larder"],
      ["", ""],
      ["", "no price"],
    ]);
  });
  test("an empty larder prices nothing and refuses nothing; a fresh sheet is blank", () => {
    expect(run("BAKE_COSTS", down("flour"), down(100), [["ingredient", "price", "pack"]])).toEqual([
      ["", "not in larder"],
    ]);
    expect(run("BAKE_COSTS", down("", ""), down("", ""), [["", ""]])).toBe("");
    expect(refusal("BAKE_COSTS", down("flour"), down(100))).toContain("BAKE_COSTS: larder is missing; give a ");
  });
  test("costs grow with the weight and do not depend on its unit", () => {
    const larder = [
      ["ingredient", "price", "pack"],
      ["flour", 2.89, "5 lb"],
    ];
    const costOf = (weight: number, unit: string) => (run("BAKE_COSTS", "flour", weight, larder, unit) as Rows)[0]?.[0];
    expectCells(costOf(7, "lb"), 4.046);
    expectCells(costOf(112, "oz"), 4.046);
    expectCells(costOf(7 * LB, "g"), 4.046);
    expectCells(costOf(14 * LB, "g"), 8.092);
  });
});

describe("cupcakes of three sizes (CakeCentral t/757549: parts rounded once, at the end)", () => {
  const batter = run("BAKE_RESCALE", down(1.49, 1.49, 1.49), 1, 1) as number[][];
  const frosting = run("BAKE_UNITCOST", 14.98, "96 oz", "", "", "", "oz") as number;
  const made = [17.33, 10, 9];
  const iced = [1, 2.25, 3.6];
  const total = (at: number) => 1.49 / (made[at] ?? 0) + frosting * (iced[at] ?? 0);
  test("frosting costs 0.1560 an ounce; the cakes 0.2420, 0.5001, 0.7273", () => {
    expect(batter).toHaveLength(3);
    expectCells(frosting, 0.156, 5e-5);
    expectCells([0, 1, 2].map(total), [0.242, 0.5001, 0.7273], 5e-4);
  });
  test("a food cost of 24.2 % and 20.0 % is a price of $1.00 and $2.50", () => {
    expectCells(run("BAKE_SELLPRICE", down(total(0), total(1)), down(0.242, 0.2), "food cost"), down(1, 2.5), 5e-3);
  });
});
