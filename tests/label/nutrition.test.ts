import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Declared, declaredFigure } from "../../shared/label/declared-figures.ts";
import { down, expectCells, refusal, run } from "../functions/support.ts";

type Row = [string, number | string, number | string, string];
const nutrition = (...args: unknown[]) => run("BAKE_NUTRITION", ...args) as Row[];
/** A line's exact figure of 100 g. */
const exact = (name: string, law: string, line: string, larder?: unknown[][]): number | string =>
  nutrition(down(name), down(100), 100, law, undefined, larder, undefined, "g", "exact").find(
    ([of]) => of === line,
  )?.[1] ?? "";

/**
 * By hand, from the columns of USDA SR28 and Regulation (EU) 1169/2011, annexes I and XIV: protein is SR28's × 6.25 ÷ its nitrogen
 * factor (Merrill and Watt 1973, FAO/WHO 1973); carbohydrate is 100 − water − ash − fat − fibre − that protein; kJ are 17 for
 * either, 37 for fat, 8 for fibre; kcal 4, 9 and 2.
 */
const BY_HAND: readonly [
  name: string,
  ndb: string,
  factor: number,
  protein: number,
  carbohydrate: number,
  kJ: number,
  kcal: number,
][] = [
  ["all-purpose flour", "20081", 5.7, 11.33, 72.6, 1485, 350],
  ["whole wheat flour", "20080", 5.83, 14.16, 60.32, 1444, 342],
  ["medium rye flour", "20064", 5.83, 11.66, 62.85, 1417, 335],
  ["rolled oats", "08120", 5.83, 14.1, 56.65, 1525, 362],
  ["rice flour", "20061", 5.95, 6.25, 77.43, 1494, 352],
  ["whole egg", "01123", 6.25, 12.56, 0.72, 578, 139],
  ["whole milk", "01211", 6.38, 3.09, 4.84, 256, 61],
  ["unsalted butter", "01145", 6.38, 0.83, 0.03, 3016, 733],
  ["almonds", "12061", 5.18, 25.52, 4.67, 2461, 595],
  ["walnuts", "12155", 5.3, 17.96, 4.28, 2844, 689],
];

describe("Regulation (EU) 1169/2011, annex XIV, on ten rows of USDA SR28", () => {
  test.each(BY_HAND)("%s (NDB %s)", (name, ndb, factor, protein, carbohydrate, kJ, kcal) => {
    const of = (column: string) => figure(ndb, column);
    // What is written above is itself worked out here from the published table, rounded as it is printed.
    const labelled = (of("protein") * 6.25) / factor;
    const rest = 100 - of("water") - of("ash") - of("fat") - of("fibre") - labelled;
    const joules = 17 * (rest + labelled) + 37 * of("fat") + 8 * of("fibre");
    const calories = 4 * (rest + labelled) + 9 * of("fat") + 2 * of("fibre");
    expect([protein, carbohydrate]).toEqual([Number(labelled.toFixed(2)), expect.closeTo(rest, 1)]);
    expect([kJ, kcal]).toEqual([Math.round(joules), Math.round(calories)]);
    for (const law of ["EU", "UK"]) {
      expect(exact(name, law, "Protein (g)")).toBeCloseTo(labelled, 6);
      // SR28 rounds its carbohydrate to two places, and butter's is 0.06 where the difference is 0.01.
      expect(Math.abs((exact(name, law, "Carbohydrate (g)") as number) - rest)).toBeLessThan(0.06);
      expect(Math.abs((exact(name, law, "Energy (kJ)") as number) - joules)).toBeLessThan(1);
      expect(Math.abs((exact(name, law, "Energy (kcal)") as number) - calories)).toBeLessThan(0.25);
    }
  });
});

test.each([
  // European Commission guidance on tolerances, December 2012, table 4 (from memory).
  ["EU", "fat", 10.4, 10],
  ["EU", "fat", 9.96, 10],
  ["EU", "protein", 5.44, 5.4],
  ["EU", "fibre", 0.51, 0.5],
  ["EU", "sugar", 0.5, "<0.5"],
  ["EU", "sugar", 0, 0],
  ["EU", "saturates", 0.14, 0.1],
  ["EU", "saturates", 0.1, "<0.1"],
  ["EU", "salt", 1.26, 1.3],
  ["EU", "salt", 0.126, 0.13],
  ["EU", "salt", 0.0125, "<0.01"],
  ["UK", "kilojoules", 1484.6, 1485],
  // 21 CFR 101.9(c), from memory.
  ["US", "kilocalories", 4.9, 0],
  ["US", "kilocalories", 47, 45],
  ["US", "kilocalories", 96, 100],
  ["US", "fat", 0.49, 0],
  ["US", "fat", 2.3, 2.5],
  ["US", "fat", 5.4, 5],
  ["US", "sodium", 137.6, 140],
  ["US", "sodium", 146, 150],
  ["US", "sodium", 4.9, 0],
  ["US", "protein", 0.7, "<1"],
  ["US", "protein", 1.4, 1],
] as const)("%s: %s of %s is declared as %s", (law, of, value, shown) =>
  expect(declaredFigure(value, of, law)).toBe(shown),
);

/** Every step and boundary of a table: what lies at it, just below and just above it, and where halves go. */
const STEPS: readonly [
  law: "EU" | "US",
  of: readonly Declared[],
  figures: readonly (readonly [number, number | string])[],
][] = [
  // The Commission's guidance of December 2012, table 4 (from memory): 1 kJ and 1 kcal.
  [
    "EU",
    ["kilojoules", "kilocalories"],
    [
      [0, 0],
      [0.49, 0],
      [0.5, 1],
      [1484.49, 1484],
      [1484.5, 1485],
    ],
  ],
  // From 10 g to 1 g, below to 0.1 g, up to 0.5 g "<0.5".
  [
    "EU",
    ["fat", "carbohydrate", "sugar", "fibre", "protein"],
    [
      [0, 0],
      [0.001, "<0.5"],
      [0.5, "<0.5"],
      [0.501, 0.5],
      [0.55, 0.6],
      [9.94, 9.9],
      [9.95, 10],
      [10, 10],
      [10.49, 10],
      [10.5, 11],
    ],
  ],
  // Saturates alike, up to 0.1 g "<0.1".
  [
    "EU",
    ["saturates"],
    [
      [0, 0],
      [0.001, "<0.1"],
      [0.1, "<0.1"],
      [0.101, 0.1],
      [0.15, 0.2],
      [9.94, 9.9],
      [10, 10],
      [10.5, 11],
    ],
  ],
  // Salt from 1 g to 0.1 g, below to 0.01 g, up to 0.0125 g "<0.01".
  [
    "EU",
    ["salt"],
    [
      [0, 0],
      [0.0125, "<0.01"],
      [0.0126, 0.01],
      [0.015, 0.02],
      [0.994, 0.99],
      [0.995, 1],
      [1, 1],
      [1.049, 1],
      [1.05, 1.1],
    ],
  ],
  // 21 CFR 101.9(c)(1), from memory: below 5 as 0, to 5 up to 50, to 10 above.
  [
    "US",
    ["kilocalories"],
    [
      [0, 0],
      [4.99, 0],
      [5, 5],
      [7.49, 5],
      [7.5, 10],
      [47.5, 50],
      [50, 50],
      [54.9, 50],
      [55, 60],
      [105, 110],
    ],
  ],
  // (c)(2), from memory: below 0.5 g as 0, to 0.5 g below 5 g, to 1 g above.
  [
    "US",
    ["fat", "saturates"],
    [
      [0.49, 0],
      [0.5, 0.5],
      [0.74, 0.5],
      [0.75, 1],
      [4.74, 4.5],
      [4.75, 5],
      [5, 5],
      [5.49, 5],
      [5.5, 6],
    ],
  ],
  // (c)(4), from memory: below 5 mg as 0, to 5 mg up to 140 mg, to 10 mg above.
  [
    "US",
    ["sodium"],
    [
      [4.99, 0],
      [5, 5],
      [137.4, 135],
      [137.5, 140],
      [140, 140],
      [144.9, 140],
      [145, 150],
    ],
  ],
  // (c)(6) and (7), from memory: below 0.5 g as 0, below 1 g "<1", to 1 g above.
  [
    "US",
    ["carbohydrate", "fibre", "sugar", "protein"],
    [
      [0, 0],
      [0.49, 0],
      [0.5, "<1"],
      [0.99, "<1"],
      [1, 1],
      [1.49, 1],
      [1.5, 2],
      [10.5, 11],
    ],
  ],
];
const LAWS = { EU: ["EU", "UK"], US: ["US"] } as const;

test.each(STEPS)("%s: %j at every step and boundary", (table, nutrients, figures) => {
  for (const law of LAWS[table])
    for (const of of nutrients)
      for (const [value, shown] of figures) expect(declaredFigure(value, of, law), `${value} of ${of}`).toBe(shown);
});

describe("BAKE_NUTRITION", () => {
  const larder = [
    [
      "ingredient",
      "protein",
      "protein factor",
      "fat",
      "saturates",
      "carbohydrate",
      "sugar",
      "fibre",
      "salt",
      "made of",
    ],
    ["mill flour", 0.12, "", 0.01, 0.002, 0.7, 0.01, 0.03, 0, ""],
    ["dry mix", 0.12, 6.25, 0.01, 0.002, 0.7, 0.01, 0.03, 0, ""],
    ["spice", "", "", "", "", "", "", "", "", ""],
    ["paste", "", "", "", "", "", "", "", "", "almonds 40%, granulated sugar 60%"],
  ];
  const lines = (name: string, law = "EU") => nutrition(down(name), down(100), 100, law, undefined, larder);
  const line = (name: string, of: string, law = "EU") => lines(name, law).find(([one]) => one === of);

  test("a protein of the shop's own without its factor is asked for; all else stands", () => {
    expect(line("mill flour", "Protein (g)")).toEqual([
      "Protein (g)",
      "",
      "",
      'not known of "mill flour (protein factor)"',
    ]);
    expect(line("mill flour", "Energy (kJ)")?.[1]).toBe("");
    expect(line("mill flour", "Fat (g)")?.[1]).toBe(1);
    expect(line("dry mix", "Protein (g)")?.[1]).toBe(12);
    // 17 × (67 + 12) + 37 × 1 + 8 × 3.
    expect(line("dry mix", "Energy (kJ)")?.[1]).toBe(1404);
    // 21 CFR 101.9(c)(1)(i)(B), from memory: 4 × (70 + 12) + 9 × 1.
    expect(line("dry mix", "Calories", "US")?.[1]).toBe(340);
  });
  test("an ingredient without figures leaves lines blank and is named, and what a US panel needs besides is named", () => {
    expect(lines("spice").every(([, value, , note]) => value === "" && note === 'not known of "spice"')).toBe(true);
    expect(lines("dry mix", "US")[8]?.[3]).toContain("added sugars");
    expect(line("dry mix", "Sodium (mg)", "US")?.[1]).toBe(0);
  });
  test("sodium of a US panel is the salt ÷ 2.5 (Regulation (EU) 1169/2011, annex I, 11; USDA SR28 02047: 38 758 mg)", () => {
    expectCells(exact("salt", "US", "Sodium (mg)"), 38_758, 1e-6);
    const cured = [
      ["ingredient", "salt"],
      ["cured ham", 0.025],
    ];
    expectCells(exact("cured ham", "US", "Sodium (mg)", cured), 1000);
  });
  test("a compound without figures has those of its parts (USDA SR28 12061 and 19335: 40 % of 49.93 g of fat)", () => {
    expectCells(exact("paste", "EU", "Fat (g)", larder), 0.4 * 49.93);
    expectCells(exact("paste", "EU", "of which sugars (g)", larder), 0.4 * 4.35 + 0.6 * 99.8);
  });
  test("own formulas: what boils off concentrates, what is left in the pan does not matter", () => {
    const formulas = [
      ["custard", "whole milk", 800, 0.1],
      ["", "sugar", 200, ""],
    ];
    const held = (weight: number, rows: unknown[][] | undefined, name = "custard") =>
      nutrition(down(name), down(weight), weight, "EU", undefined, undefined, undefined, "g", "exact", rows);
    // By hand: 200 × 0.998 + 800 × 0.0505 in 900 g.
    expectCells(held(855, formulas)[5]?.[1], (100 * (200 * 0.998 + 800 * 0.0505)) / 900);
    expectCells(held(100, formulas), held(855, formulas));
  });
  test("ounces and grams agree to the last digit that counts", () => {
    const names = down("flour", "water", "salt", "fresh yeast", "butter");
    const grams = [1000, 600, 20, 25, 80];
    const ounces = grams.map((one) => one / 28.349523125);
    const of = (weights: number[], finished: number, portion: number, unit: string, law: string) =>
      nutrition(names, down(...weights), finished, law, portion, undefined, undefined, unit, "exact").slice(0, 8);
    for (const law of ["EU", "US"]) {
      const metric = of(grams, 1500, 85, "g", law);
      expectCells(of(ounces, 1500 / 28.349523125, 85 / 28.349523125, "oz", law), metric, 1e-9);
      // A piece of 85 g has 0.85 of 100 g.
      for (const [, hundred, piece] of metric) expectCells(piece, 0.85 * (hundred as number));
    }
  });
  test("kinds speak for names that no table knows; a levain counts by its flour", () => {
    const kinds = down("levain 100%", "salt", "water");
    const rows = nutrition(
      down("wild", "grey salt", "spring"),
      down(200, 10, 90),
      300,
      "EU",
      undefined,
      undefined,
      kinds,
      "g",
      "exact",
    );
    expectCells(rows[2]?.[1], (100 * 0.98) / 300);
    // USDA SR28 02047 and 20081: 38 758 mg and 2 mg of sodium in 100 g.
    expectCells(rows[8]?.[1], ((10 * 38.758 + 100 * 0.002) * 2.5) / 300, 1e-6);
  });
  test("two doughs mixed hold what both hold; a dried product holds it in less", () => {
    const weights = fc.array(fc.integer({ min: 1, max: 5000 }), { minLength: 4, maxLength: 4 });
    const names = ["flour", "butter", "sugar", "almonds"];
    fc.assert(
      fc.property(weights, fc.integer({ min: 50, max: 100 }), (four, percent) => {
        const sum = four.reduce((all, one) => all + one, 0);
        const finished = (sum * percent) / 100;
        const mixed = run(
          "BAKE_NUTRITION",
          down(...names),
          down(...four),
          finished,
          "EU",
          undefined,
          undefined,
          undefined,
          "g",
          "exact",
        ) as Row[];
        mixed.forEach(([line, value]) => {
          const parts = names.map((name, at) => ((exact(name, "EU", line) as number) * (four[at] ?? 0)) / finished);
          expectCells(
            value,
            parts.reduce((all, one) => all + one, 0),
            1e-6,
          );
        });
      }),
    );
  });
  test("before anything is weighed there are no figures, and a finished weight in kilograms beside grams is refused", () => {
    expect(run("BAKE_NUTRITION", down("flour"), down(""), 100, "EU")).toBe("");
    expect(refusal("BAKE_NUTRITION", down("flour"), down(1000), 0.9, "EU")).toContain("less than a tenth");
  });
});

/** A figure of 100 g as the published table prints it. */
function figure(ndb: string, column: string): number {
  const [head = "", ...lines] = readFileSync("tests/data/usda-sr28-bakery.csv", "utf8").trim().split(/\r?\n/);
  const cells = lines.map((line) => line.replace(/"(?:[^"]|"")*"/g, "text").split(",")).find((row) => row[0] === ndb);
  const value = Number(cells?.[head.split(",").indexOf(column)]);
  if (!Number.isFinite(value)) throw new Error(`the table has no ${column} of ${ndb}`);
  return value;
}
