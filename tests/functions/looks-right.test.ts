// Figures that look right and are wrong: a unit slipped, a number passed over, millimetres as centimetres, litres as cm³.
import { describe, expect, test } from "vitest";
import { FUNCTIONS } from "../../src/functions/index.ts";
import { down, expectCells, refusal, run } from "./support.ts";

describe("a pack whose size can be two", () => {
  test.each([
    ["1t", /a tonne, or a teaspoon\? Enter "1000 kg"/],
    ["2.5 t", /a tonne, or a teaspoon/],
    ["1 T bag", /a tonne, or a teaspoon/],
    ["500 g (12)", /one pack, or several/],
    ["1 kg (6)", /one pack, or several/],
    ["5 kg, 2 bags", /one pack, or several/],
    ["750 ml; 6 bottles", /one pack, or several/],
  ])("%s", (pack, says) => {
    expect(refusal("BAKE_UNITCOST", 10, pack, "", "egg", "", "kg")).toMatch(says);
    const larder = [
      ["ingredient", "price", "pack"],
      ["egg", 10, pack],
    ];
    expect(String((run("BAKE_COSTS", "egg", 100, larder) as unknown[][])[0]?.[1])).toMatch(says);
  });
  test.each([
    ["1000 kg", 1_000_000],
    ["12 x 500 g", 6000],
    ["2 bags (25 kg)", 50_000],
    ["1 bag (25 kg)", 25_000],
    ["4 x 250 g (1 kg)", 1000],
    ["6 tins of 400 g", 2400],
  ])("but %s is one", (pack, grams) =>
    expectCells(run("BAKE_UNITCOST", 1, pack, "", "egg", "", "g"), 1 / grams, 1e-15),
  );
});

describe("sizes of tins in another unit than the call's", () => {
  const SIZES: readonly (readonly [shape: string, millimetres: readonly number[]])[] = [
    ["box", [230, 130, 70]],
    ["round", [200, 60]],
    ["ring", [250, 80, 90]],
    ["oval", [300, 200, 50]],
    ["dome", [160]],
    ["wreath", [240, 60]],
    ["polygon", [6, 125, 50]],
  ];
  test.each(SIZES)("%s in millimetres, read as centimetres", (shape, sizes) => {
    for (const [name, given] of [
      ["BAKE_TINCAPACITY", sizes],
      ["BAKE_TINAREA", sizes],
    ] as const) {
      expect(refusal(name, shape, down(...given))).toMatch(
        /cm, more than any tin; enter it with its unit, such as "230 mm"/,
      );
      expect(Number(run(name, shape, down(...given), "mm"))).toBeGreaterThan(0);
      // What it advises, to the letter: each size with its unit.
      const advised = given.map((size, at) => (shape === "polygon" && at === 0 ? size : `${size} mm`));
      expectCells(run(name, shape, down(...advised)), run(name, shape, down(...given), "mm"), 1e-6);
    }
    expect(refusal("BAKE_TINMATCH", 1900, down(shape), [[...sizes]])).toMatch(/more than any tin/);
  });
  test("at the limit exactly, and a hair beyond it", () => {
    expectCells(run("BAKE_TINAREA", "box", down(120, 60)), 7200);
    expect(refusal("BAKE_TINAREA", "box", down(120.001, 60))).toMatch(/length of 120\.001 cm/);
    expect(refusal("BAKE_TINAREA", "box", down(120.0000003, 60))).toMatch(/length of a hair more than 120 cm/);
  });
});

describe("a capacity in litres, read as cm³", () => {
  const BY = FUNCTIONS.filter(({ args }) => "capacity" in args).map(({ name }) => name);
  const call = (name: string, capacity: unknown) =>
    name === "BAKE_TINNOTE" ? [1155, capacity, "white"] : [capacity, "white"];
  test("there are two that take one", () => expect(BY.sort()).toEqual(["BAKE_TINDOUGH", "BAKE_TINNOTE"]));
  test.each(BY)("%s", (name) => {
    const said = refusal(name, ...call(name, 3.408));
    expect(said).toMatch(/capacity is 3\.408 cm³, less than any tin holds; for litres enter "3\.408 l"/);
    // What it advises, to the letter.
    expectCells(run(name, ...call(name, "3.408 l")), run(name, ...call(name, 3408)), 1e-9);
  });
});

describe("temperatures of two units, or of another than the call's", () => {
  const F = (celsius: number) => Math.round(celsius * 1.8 + 32);
  const AROUND = [
    [22, 21],
    [18, 30],
    [24, 20, 26],
  ];
  test.each(AROUND)("%d and %d around a dough", (...temps) => {
    for (const dough of [22, 24, 27]) {
      const both = /beside a dough of .*; enter every temperature in °C, or every one in °F/;
      for (const name of ["BAKE_WATERTEMP", "BAKE_FRICTION"]) {
        expect(refusal(name, dough, down(...temps.map(F)), 8)).toMatch(both);
        expect(refusal(name, F(dough), down(...temps), 8)).toMatch(both);
        // What it advises: all of them in one unit.
        expect(typeof run(name, dough, down(...temps), 8)).toBe("number");
        expect(typeof run(name, F(dough), down(...temps.map(F)), 14)).toBe("number");
      }
    }
  });
  test("°F where °C is the unit: refused with the unit to choose, which then gives the answer in °C", () => {
    for (const [tap, wanted] of [
      [20, 5],
      [15, 2],
      [25, 12],
    ] as const) {
      expect(refusal("BAKE_ICE", 1000, F(tap), F(wanted))).toMatch(/for °F choose "F" as the unit/);
      expectCells(run("BAKE_ICE", 1000, F(tap), F(wanted), "F"), run("BAKE_ICE", 1000, tap, wanted), 8);
    }
    const dough = [down(1000, 650, 20), down("flour", "water", "salt")];
    for (const [target, flour] of [
      [26, 20],
      [24, 18],
      [28, 25],
    ] as const) {
      const temps = (unit: (celsius: number) => number) => down(unit(flour), "", unit(flour));
      expect(refusal("BAKE_HEATBALANCE", F(target), dough[0], temps(F), dough[1])).toMatch(
        /for °F choose "F" as the unit/,
      );
      const inF = run("BAKE_HEATBALANCE", F(target), dough[0], temps(F), dough[1], "", "F") as number;
      const inC = run(
        "BAKE_HEATBALANCE",
        target,
        dough[0],
        temps((one) => one),
        dough[1],
      ) as number;
      expect(Math.abs((inF - 32) / 1.8 - inC)).toBeLessThan(2);
    }
  });
  test("a scald, and cold flour from the freezer, are right in °C", () => {
    expect(typeof run("BAKE_HEATBALANCE", 65, down(100, 500), down(20, ""), down("flour", "water"), 0)).toBe("number");
    expect(typeof run("BAKE_WATERTEMP", 26, down(-2, 20), 10)).toBe("number");
    expect(typeof run("BAKE_WATERTEMP", 38, down(60, 62), 20)).toBe("number");
  });
});

describe("a finished weight in another unit than the ingredients'", () => {
  const NAMES = down("flour", "water", "butter");
  const LARDER = [
    ["ingredient", "label name", "made of", "allergens"],
    ["flour", "wheat flour", "", "wheat"],
    ["water", "", "", "none"],
    ["butter", "", "", "milk"],
  ];
  const says = /finished_weight is .*, less than a tenth of the ingredients' 1700; enter both in one unit/;
  test.each([1.5, 0.9, 53])("%d beside 1700", (finished) => {
    for (const law of ["EU", "UK"])
      expect(refusal("BAKE_LABELLIST", NAMES, down(1000, 600, 100), LARDER, law, finished)).toMatch(says);
    expect(refusal("BAKE_LABELSHARE", "butter", NAMES, down(1000, 600, 100), finished)).toMatch(says);
  });
  test("at a tenth exactly, and with units that fit", () => {
    expectCells((run("BAKE_LABELSHARE", "butter", NAMES, down(1000, 600, 100), 170) as unknown[][])[0]?.[0], 100 / 170);
    const kilograms = run("BAKE_LABELLIST", NAMES, down("1 kg", "600 g", "100 g"), LARDER, "EU", "1.5 kg");
    expect(kilograms).toBe(run("BAKE_LABELLIST", NAMES, down(1000, 600, 100), LARDER, "EU", 1500));
    expect(kilograms).toBe("WHEAT flour, water, butter (MILK)");
  });
});

test("a capacity of litres that a tin is looked for with", () => {
  const tins = [
    down("round", "box"),
    [
      [20, 6, ""],
      [23, 13, 7],
    ],
  ] as const;
  expect(refusal("BAKE_TINMATCH", 2, ...tins)).toMatch(
    /wanted is 2 cm³, less than any tin holds; for litres enter "2 l"/,
  );
  expectCells(run("BAKE_TINMATCH", "2 l", ...tins), run("BAKE_TINMATCH", 2000, ...tins));
});
