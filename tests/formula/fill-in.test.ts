import { describe, expect, test } from "vitest";
import { down, expectCells, refusal, run } from "../functions/support.ts";

// Rows with a percentage or a weight: which of them tells the flour, and how far apart the two may be. All worked out by hand.

type Row = readonly [kind: string, percent: unknown, weight: unknown];
const cells = (rows: readonly Row[]) => [1, 2, 0].map((at) => down(...rows.map((row) => row[at])));
const filled = (rows: readonly Row[], ...amount: unknown[]) =>
  run("BAKE_FILLIN", ...cells(rows), ...amount) as unknown[][];
const refused = (rows: readonly Row[], ...amount: unknown[]) => refusal("BAKE_FILLIN", ...cells(rows), ...amount);

describe("which weight tells the flour", () => {
  test("a flour's over its own percentage, though another is heavier", () => {
    const rows: Row[] = [
      ["flour", 0.2, 200],
      ["flour", 0.8, ""],
      ["water", 0.65, 652],
    ];
    expectCells(filled(rows), [
      [0.2, 200],
      [0.8, 800],
      [0.652, 652],
    ]);
  });
  test("else the heaviest that has a percentage: 650 g at 65 %, not 20.2 g at 2 %", () => {
    const rows: Row[] = [
      ["flour", 1, ""],
      ["salt", 0.02, 20.2],
      ["water", 0.65, 650],
      ["fat", 0.05, 50.1],
    ];
    expectCells(filled(rows), [
      [1, 1000],
      [0.0202, 20.2],
      [0.65, 650],
      [0.0501, 50.1],
    ]);
  });
  test("a row without a percentage, or with 0 %, tells nothing", () => {
    const rows: Row[] = [
      ["flour", 1, ""],
      ["water", "", 700],
      ["sugar", 0, 0],
      ["salt", 0.02, 20],
    ];
    expectCells(filled(rows), [
      [1, 1000],
      [0.7, 700],
      [0, 0],
      [0.02, 20],
    ]);
  });
  test("a row of nothing stays blank, with an amount and without", () => {
    const rows: Row[] = [
      ["flour", 1, 1000],
      ["", "", ""],
      ["water", 0.65, ""],
    ];
    expect(filled(rows)).toEqual([
      [1, 1000],
      ["", ""],
      [0.65, 650],
    ]);
    expect(filled(rows, 3300)).toEqual([
      [1, 2000],
      ["", ""],
      [0.65, 1300],
    ]);
  });
  test("a starter by weight needs no percentage, one in percent needs a flour's", () => {
    const rows: Row[] = [
      ["levain 100%", "", 200],
      ["flour", "", 900],
      ["water", 0.6, ""],
    ];
    expectCells(filled(rows), [
      [0.2, 200],
      [0.9, 900],
      [0.54, 540],
    ]);
    expect(
      refused([
        ["levain 100%", 0.2, ""],
        ["flour", "", 1000],
      ]),
    ).toBe(
      "BAKE_FILLIN: percents row 1 is a preferment with a percentage, which needs a flour row with a percentage too; type the flour's 100%.",
    );
  });
});

describe("a flour by weight beside others in percent", () => {
  const beside = (percent: unknown, flour: unknown, water: unknown, salt: unknown = 0): Row[] => [
    ["flour", percent, ""],
    ["flour", "", flour],
    ["water", water, ""],
    ["salt", salt, ""],
  ];
  test.each([
    [0.8, 0.65, 0.02],
    ["80%", "65%", "2%"],
    [80, 65, 2],
  ])("%j of 1 or of 100: 200 g are the missing fifth", (percent, water, salt) => {
    expectCells(filled(beside(percent, 200, water, salt)), [
      [0.8, 800],
      [0.2, 200],
      [0.65, 650],
      [0.02, 20],
    ]);
  });
  test("3 g beside 99.7 %", () => {
    expectCells(filled(beside(0.997, 3, 0.65)).slice(0, 2), [
      [0.997, 997],
      [0.003, 3],
    ]);
    expectCells(filled(beside(99.7, 3, 65)).slice(0, 2), [
      [0.997, 997],
      [0.003, 3],
    ]);
  });
  test.each([
    [1, 0.65, "of the flour rows make 100 % without the flour that has only a weight"],
    [1.005, 0.65, "of the flour rows make 100 % without the flour that has only a weight"],
    [
      100,
      65,
      "of the flour rows already make 100 or more, and another flour has a weight; give that row its percentage too",
    ],
  ])("%d leaves nothing for it", (percent, water, says) => {
    expect(refused(beside(percent, 200, water))).toBe(`BAKE_FILLIN: percents ${says}.`);
  });
  test("a row typed the other way is refused", () => {
    const rows = (water: number, salt: number): Row[] => [
      ["flour", "", 1000],
      ["water", water, ""],
      ["salt", salt, ""],
    ];
    expectCells(filled(rows(0.65, 0.02)), [
      [1, 1000],
      [0.65, 650],
      [0.02, 20],
    ]);
    expect(refused(rows(65, 0.02))).toMatch(/^BAKE_FILLIN: percents row 2 is 65, which beside flour of 1 /);
  });
  test("percentages are of the flour that goes in by itself, and so is an amount of flour", () => {
    // 180 g are a fifth of 900; with 100 g in the levain 1000 g in all.
    const rows: Row[] = [
      ["flour", 0.8, ""],
      ["flour", "", 180],
      ["levain 100%", "", 200],
      ["water", 0.6, ""],
    ];
    expectCells(filled(rows), [
      [0.72, 720],
      [0.18, 180],
      [0.2, 200],
      [0.54, 540],
    ]);
    expectCells(filled(rows, 820), [
      [0.72, 360],
      [0.18, 90],
      [0.2, 100],
      [0.54, 270],
    ]);
    expectCells(filled(rows, 450, "flour"), [
      [0.72, 360],
      [0.18, 90],
      [0.2, 100],
      [0.54, 270],
    ]);
    const inPercent: Row[] = rows.map(([kind, ...row]) => (kind === "levain 100%" ? [kind, 0.2, ""] : [kind, ...row]));
    expectCells(filled(inPercent), [
      [720 / 990, 720],
      [180 / 990, 180],
      [180 / 990, 180],
      [540 / 990, 540],
    ]);
  });
});

describe("an amount", () => {
  const salted: Row[] = [
    ["flour", 1, ""],
    ["water", 0.63, ""],
    ["salt", "", 20],
  ];
  test("must leave something for the rows in percent", () => {
    expectCells(filled(salted, 183), [
      [1, 100],
      [0.63, 63],
      [0.2, 20],
    ]);
    for (const amount of [20, 19])
      expect(refused(salted, amount)).toBe(
        `BAKE_FILLIN: amount is ${amount}, and the typed weights alone make 20; nothing is left for the rows in percent.`,
      );
  });
  test("needs rows that can be brought to it", () => {
    expect(
      refused(
        [
          ["flour", 1, 0],
          ["water", 0.65, ""],
        ],
        100,
      ),
    ).toBe("BAKE_FILLIN: weights hold nothing that could be brought to the amount.");
    expect(refused([["water", 0, ""]], 100)).toBe(
      "BAKE_FILLIN: percents of the rows without a weight add up to 0; type a percentage above 0, or leave the amount out.",
    );
    expect(refused([["water", 0.65, 650]])).toMatch(/^BAKE_FILLIN: weights hold no flour; /);
  });
});

test("both typed may be half a hundredth apart, or half a thousandth of the flour", () => {
  const rows = (water: number, salt: number): Row[] => [
    ["flour", 1, 1000],
    ["water", 0.65, water],
    ["salt", 0.02, salt],
  ];
  for (const [water, salt] of [
    [653.25, 20.5],
    [646.75, 19.5],
  ] as const)
    expectCells(filled(rows(water, salt)), [
      [1, 1000],
      [water / 1000, water],
      [salt / 1000, salt],
    ]);
  expect(refused(rows(653.26, 19.49))).toBe(
    "BAKE_FILLIN: weights row 2 says two things: 65 % of 1000 is 650, and 653.26 is typed, 3.26 apart; clear one of the two; weights row 3 says two things: 2 % of 1000 is 20, and 19.49 is typed, 0.51 apart; clear one of the two.",
  );
});
