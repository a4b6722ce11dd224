// An egg's size, wherever it is said: in the line, beside it, in brackets, in the larder's name. Shelled grams by USDA SR28
// 01123 (US), Regulation (EC) 589/2008 less a shell of 12 % (UK, EU), and Egg Standards for Australia's grades likewise.
import { describe, expect, test } from "vitest";
import { down, expectCells, refusal, run } from "../functions/support.ts";

const SHELLED: readonly (readonly [cups: string, size: string, grams: number])[] = [
  ...(["small 38", "medium 44", "large 50", "extra large 56", "jumbo 63"].map((one) => ["US", one]) as [
    string,
    string,
  ][]),
  ...["UK", "EU"].flatMap((cups) =>
    ["medium 51", "large 60", "extra large 67"].map((one) => [cups, one] as [string, string]),
  ),
  ...(["medium 40", "large 48", "extra large 55"].map((one) => ["AU", one]) as [string, string][]),
].map(([cups = "", one = ""]) => [cups, one.replace(/ \d+$/, ""), Number(/\d+$/.exec(one)?.[0])] as const);

describe.each(SHELLED)("%s, %s", (cups, size, each) => {
  const hyphened = size.replace(" ", "-");
  test.each([
    [`3 ${size} eggs`, ""],
    [`3 eggs, ${size}`, ""],
    [`3 eggs (${size})`, ""],
    [`3 ${hyphened} eggs`, ""],
    ["3", `${size} egg`],
    ["3", `${hyphened} eggs`],
    ["3", `eggs, ${size}`],
    ["3 eggs", `${size} eggs`],
    [`3 ${size}`, "egg"],
    [`3 ${size}`, `${size} egg`],
  ])("%s beside “%s”", (line, name) => expectCells(run("BAKE_GRAMS", line, name, cups), 3 * each, 1e-9));
  test("weighed, priced and counted alike", () => {
    // SR28 01123: 76.15 % water.
    expectCells(run("BAKE_CONTENT", `${size} egg`, `3 ${size}`, "water", "", "", cups), 3 * each * 0.7615, 1e-9);
    expectCells(run("BAKE_CONTENT", `${size} egg`, "3 pieces", "water", "", "", cups), 3 * each * 0.7615, 1e-9);
    expectCells(run("BAKE_UNITCOST", 3, "1 dozen", "", `${size} egg`, "", "g", cups), 3 / (12 * each), 1e-12);
    expectCells(run("BAKE_UNITCOST", 3, `12 ${size} eggs`, "", "", "", "g", cups), 3 / (12 * each), 1e-12);
    const larder = [
      ["ingredient", "price", "pack"],
      [`${size} eggs`, 3, "1 dozen"],
    ];
    expectCells(run("BAKE_COSTS", `${size} egg`, `3 ${size}`, larder, "", cups), [[0.75, ""]], 1e-12);
    expectCells(run("BAKE_COSTS", "egg", `3 ${size}`, larder, "", cups), [[0.75, ""]], 1e-12);
  });
});

describe("a shop's rows for two sizes", () => {
  const SHOP = [
    ["ingredient", "measures"],
    ["large egg", "piece 55"],
    ["medium egg", "piece 45"],
  ];
  const grams = (line: string, name = "") => run("BAKE_GRAMS", line, name, "UK", SHOP);
  test("each counts by its own piece", () => {
    expectCells(grams("3 large eggs"), 165);
    expectCells(grams("3 medium eggs"), 135);
    expectCells(grams("3 eggs (medium)"), 135);
    expectCells(grams("3", "medium egg"), 135);
    expectCells(grams("3 large", "large egg"), 165);
  });
  test("eggs without a size, of a third one, or of two sizes are asked about", () => {
    for (const line of ["3 eggs", "3 small eggs"])
      expect(refusal("BAKE_GRAMS", line, "", "UK", SHOP)).toMatch(/rows 2 and 3 could each be meant/);
    expect(refusal("BAKE_GRAMS", "3 large", "medium egg", "UK", SHOP)).toMatch(/large or medium/);
    expect(refusal("BAKE_GRAMS", "3 large eggs (medium)")).toMatch(/large or medium/);
  });
});

test("a large egg is an egg wherever ingredients are named", () => {
  for (const name of ["large egg", "eggs, large", "Large\u00a0Eggs"]) {
    const content = run("BAKE_CONTENT", down("flour", name), down(1000, 50), "water");
    expectCells(content, run("BAKE_CONTENT", down("flour", "egg"), down(1000, 50), "water"));
    expectCells(run("BAKE_HYDRATION", down("flour", name), down(1000, 50), down("flour", "egg")), 0.05 * 0.7615, 1e-9);
  }
});
