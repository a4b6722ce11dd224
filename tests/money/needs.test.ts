import { describe, expect, test } from "vitest";
import { expectCells, refusal, run } from "../functions/support.ts";

type Row = [string, number | string];
type Line = [string, string, number | string];
const needs = (orders: unknown, formulas: unknown, onHand?: unknown) =>
  run("BAKE_RAWNEEDS", orders, formulas, onHand) as Row[];

/** Formulas of the Tern Quay Bakehouse: a levain in a sponge in a loaf, butter in a dough and in its roll-in. */
const FORMULAS: Line[] = [
  ["pan loaf", "strong flour", 900],
  ["", "water", 580],
  ["", "salt", 20],
  ["", "levain", 300],
  ["levain", "strong flour", 50],
  ["", "water", 40],
  ["", "seed", 10],
  ["bun", "plain flour", 500],
  ["", "milk", 250],
  ["", "butter", 50],
  ["glazed bun", "bun", 90],
  ["glazed bun", "glaze", 10],
  ["glaze", "butter", 1],
  ["glaze", "milk", 3],
];

describe("BAKE_RAWNEEDS", () => {
  test("breaks a product down to any depth, each to its own sum (derived by hand)", () => {
    // 1800 of loaf take 300 of levain: 150 flour, 120 water, 30 seed. 1000 of glazed bun take 900 of bun and 100 of glaze.
    expectCells(
      needs(
        [
          ["pan loaf", 1800],
          ["glazed bun", 1000],
        ],
        FORMULAS,
      ),
      [
        ["strong flour", 1050],
        ["water", 700],
        ["salt", 20],
        ["seed", 30],
        ["plain flour", 562.5],
        ["milk", 281.25 + 75],
        ["butter", 56.25 + 25],
      ],
    );
  });
  test("an order scales with its dough: the ciatabatta formula's biga of 4.803 kg (King Arthur, professional formulas)", () => {
    const formulas: Line[] = [
      ["ciabatta", "flour", 7],
      ["", "water", 5.8],
      ["", "salt", 0.2],
      ["", "yeast", 0.117],
      ["", "biga", 4.803],
      ["biga", "flour", 3],
      ["", "water", 1.8],
      ["", "yeast", 0.003],
    ];
    // The printed overall formula: 10, 7.6, 0.2 and 0.12 kg make 17.92 kg.
    expectCells(needs([["ciabatta", 17.92]], formulas), [
      ["flour", 10],
      ["water", 7.6],
      ["salt", 0.2],
      ["yeast", 0.12],
    ]);
  });
  test("what is on hand comes off at its level, orders of one product first added; what stock covers stays as 0", () => {
    const orders = [
      ["pan loaf", 600],
      ["levain", 100],
      ["PAN  LOAVES", ""],
      ["Pan Loaf", 1200],
    ];
    // 400 of levain are wanted, 150 stand ready: 250 are mixed, of 125 flour, 100 water, 25 seed; 30 of seed stand ready.
    const onHand = [
      ["levains", 150],
      ["Seed", 30],
      ["strong flour", 25],
      ["baking paper", 7],
    ];
    expectCells(needs(orders, FORMULAS, onHand), [
      ["strong flour", 1000],
      ["water", 680],
      ["salt", 20],
      ["seed", 0],
    ]);
    expectCells(needs([["glaze", 8]], FORMULAS, [["glaze", 9]]), [
      ["milk", 0],
      ["butter", 0],
    ]);
    expectCells(needs([["glaze", 0.1 + 0.2]], FORMULAS, [["glaze", 0.3]]), [
      ["milk", 0],
      ["butter", 0],
    ]);
  });
  test("headings, blank rows, case, accents, plural s and odd spaces do not matter", () => {
    const orders = [
      ["Product", "Dough"],
      ["", ""],
      ["LÉVAIN ", "1,5"],
    ];
    const formulas = [
      ["", "", ""],
      ["Product", "Ingredient", "Weight"],
      ["levains", "flours", "1 1/2"],
      ["", "", ""],
      ["", "Water ", 1.5],
    ];
    expectCells(needs(orders, formulas), [
      ["flours", 0.75],
      ["Water", 0.75],
    ]);
  });
  test("a fresh sheet is blank; an order of nothing needs nothing", () => {
    expect(run("BAKE_RAWNEEDS", [["", ""]], [["", "", ""]])).toBe("");
    expect(run("BAKE_RAWNEEDS", [["pan loaf", ""]], FORMULAS)).toBe("");
    expectCells(needs([["glaze", 0]], FORMULAS), [
      ["milk", 0],
      ["butter", 0],
    ]);
  });
  test("a levain fed with its own name takes its seed from what is on hand", () => {
    const formulas: Line[] = [
      ["levain", "levain", 100],
      ["", "flour", 200],
      ["", "water", 200],
    ];
    // 1000 wanted, 300 there: 875 are mixed with 175 of the 300 as seed, so that 125 + 875 make 1000.
    expectCells(needs([["levain", 1000]], formulas, [["levain", 300]]), [
      ["flour", 350],
      ["water", 350],
    ]);
    expect(refusal("BAKE_RAWNEEDS", [["levain", 1000]], formulas, [["levain", 100]])).toBe(
      'BAKE_RAWNEEDS: formulas row 1 makes "levain" of itself; name the seed differently, or put it on hand (225 needed, 100 there).',
    );
  });
  test.each<[string, unknown[], string]>([
    [
      "self",
      [
        [["a", 1]],
        [
          ["a", "a", 1],
          ["", "b", 1],
        ],
      ],
      'formulas row 1 makes "a" of itself; name the seed differently, or put it on hand.',
    ],
    [
      "only self",
      [[["a", 1]], [["a", "A", 1]], [["a", 0.5]]],
      'formulas row 1 makes "a" of itself; name the seed differently, or put it on hand.',
    ],
    [
      "loop below",
      [
        [["x", 1]],
        [
          ["x", "a", 1],
          ["a", "b", 1],
          ["b", "a", 1],
        ],
      ],
      'formulas run in a loop: "a" → "b" → "a"; break it at one of them.',
    ],
    [
      "unknown",
      [
        [
          ["rye", 1],
          ["bunn", 2],
        ],
        [
          ["rye", "flour", 1],
          ["bun", "flour", 1],
        ],
      ],
      'orders row 2 is "bunn", which has no formula; perhaps "bun"?',
    ],
    ["raw order", [[["butter", 1]], FORMULAS], 'orders row 1 is "butter", which has no formula.'],
    ["nameless", [[["", 1]], FORMULAS], "orders row 1 has a weight and no name; enter what it is."],
    [
      "nameless stock",
      [[["bun", 1]], FORMULAS, [["", 1]]],
      "on_hand row 1 has a weight and no name; enter what it is.",
    ],
    ["no ingredient", [[["a", 1]], [["a", "", 1]]], "formulas row 1 has a weight and no ingredient; enter its name."],
    [
      "no product",
      [
        [["a", 1]],
        [
          ["", "flour", 1],
          ["a", "flour", 1],
        ],
      ],
      "formulas row 1 has no product in its row or above it.",
    ],
    ["nothing in it", [[["a", 1]], [["a", "flour", 0]]], 'formulas row 1 makes "a" of nothing; give it weights.'],
    [
      "total",
      [
        [["bun", 1]],
        [
          ["bun", "flour", 1],
          ["", "Total dough", 1],
        ],
      ],
      'formulas row 2 is named "Total dough"; leave totals out of the range.',
    ],
    [
      "text",
      [
        [
          ["bun", 1],
          ["bun", "many"],
        ],
        FORMULAS,
      ],
      'orders row 2 is "many", which is not a number; enter a weight such as 350.',
    ],
    ["negative", [[["bun", -1]], FORMULAS], "orders row 1 is -1; it cannot be below 0."],
    ["error", [[["bun", "#N/A"]], FORMULAS], "orders row 1 holds the error #N/A; correct that cell first."],
    ["narrow", [[["bun"]], FORMULAS], "orders must have 2 columns: product, weight."],
    ["wide", [[["bun", 12, 900]], FORMULAS], "orders must have 2 columns: product, weight."],
  ])("refuses %s", (_, args, says) => {
    expect(refusal("BAKE_RAWNEEDS", ...args)).toBe(`BAKE_RAWNEEDS: ${says}`);
  });
  test("refuses to go without formulas", () => {
    expect(refusal("BAKE_RAWNEEDS", [["bun", 12]])).toContain("BAKE_RAWNEEDS: formulas is missing; give a ");
  });
  test("a chain of 2000 products is followed to its end, a loop of 2000 refused with its path cut short", () => {
    const chain = Array.from({ length: 2000 }, (_, at): Line => [`dough ${at}`, `dough ${at + 1}`, 3]);
    expectCells(needs([["dough 0", 7]], chain), [["dough 2000", 7]]);
    const says = refusal("BAKE_RAWNEEDS", [["dough 0", 7]], [...chain, ["dough 2000", "dough 0", 1]]);
    expect(says).toContain('"dough 0" → "dough 1" → ');
    expect(says).toMatch(/ → 199\d more → .*"dough 2000" → "dough 0"; break it/);
    expect(says.length).toBeLessThan(400);
  });
  test("200 orders of 500 products of 30 ingredients weigh together what was ordered", () => {
    const formulas = Array.from({ length: 15_000 }, (_, at): Line => {
      const [product, part] = [Math.floor(at / 30), at % 30];
      const isDough = part === 0 && product < 499;
      return [
        part === 0 ? `product no. ${product}` : "",
        isDough ? `product no. ${product + 1}` : `Ingredient ${(product * 7 + part) % 90}`,
        part + 1,
      ];
    });
    const orders = Array.from({ length: 200 }, (_, at): Row => [`product no. ${at}`, 1000]);
    const rows = needs(orders, formulas);
    expectCells(
      rows.reduce((all, [, weight]) => all + Number(weight), 0),
      200_000,
    );
  });
});
