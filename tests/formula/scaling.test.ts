import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { down, expectCells, refusal, run } from "../functions/support.ts";
import { seedOf, tries } from "../kit/scale.ts";

const SEED = { seed: seedOf(20_261_125), numRuns: tries(500) };
const _flat = (cells: unknown) => (cells as unknown[][]).map(([cell]) => cell as number);
describe("rows with a percentage or a weight — micquality.com, primer on circular formulas (X8)", () => {
  const two = down("flour", "water");
  test("water by percent, by weight, and by both within half a percent", () => {
    expectCells(run("BAKE_FILLIN", down("", 0.65), down(1000, ""), two), [
      [1, 1000],
      [0.65, 650],
    ]);
    expectCells(run("BAKE_FILLIN", down("", ""), down(1000, 650), two), [
      [1, 1000],
      [0.65, 650],
    ]);
    expectCells(run("BAKE_FILLIN", down("", 0.65), down(1000, 650.4), two), [
      [1, 1000],
      [0.6504, 650.4],
    ]);
    expect(refusal("BAKE_FILLIN", down("", 0.65), down(1000, 700), two)).toMatch(
      /row 2 .*65 % of 1000 is 650, and 700 is typed, 50 apart/,
    );
  });

  test("a flour with only a weight beside one in percent: 200 g beside 80 % is 1000 g of flour", () => {
    expectCells(run("BAKE_FILLIN", down(80, "", 65), down("", 200, ""), down("flour", "flour", "water")), [
      [0.8, 800],
      [0.2, 200],
      [0.65, 650],
    ]);
  });

  test("with an amount everything comes to it, and typed weights count where there is no other anchor", () => {
    expectCells(run("BAKE_FILLIN", down(1, 0.65), down(1000, ""), two, 3300), [
      [1, 2000],
      [0.65, 1300],
    ]);
    expectCells(run("BAKE_FILLIN", down(1, 0.63, ""), down("", "", 20), down("flour", "water", "salt"), 1650), [
      [1, 1000],
      [0.63, 630],
      [0.02, 20],
    ]);
    expectCells(run("BAKE_FILLIN", down(100, 65), down("", ""), two, 500, "flour"), [
      [1, 500],
      [0.65, 325],
    ]);
  });

  test("a levain by weight counts as flour in the shares", () => {
    const [flour, levain] = run(
      "BAKE_FILLIN",
      down(100, "", 60),
      down(900, 200, ""),
      down("flour", "levain 100%", "water"),
    ) as number[][];
    expectCells(flour, [0.9, 900]);
    expectCells(levain, [0.2, 200]);
  });

  test.each([
    ["no anchor", [down(1, 0.65), down("", ""), two], /give no anchor/],
    [
      "a starter in percent beside flour by weight",
      [down("", 0.2), down(1000, ""), down("flour", "levain 100%")],
      /row 2 is a preferment with a percentage/,
    ],
    [
      "typed weights above the dough",
      [down(1, ""), down("", 600), down("flour", "water"), 500],
      /amount is 500, and the typed weights alone make 600/,
    ],
    [
      "no kind",
      [down(1, 0.65), down("", ""), down("flour", ""), 100],
      /kinds row 2 is blank though the row has an amount/,
    ],
  ])("%s is refused", (_, args, sentence) => {
    expect(refusal("BAKE_FILLIN", ...args)).toMatch(sentence);
  });
});

describe("scaling", () => {
  test("tins: 12 to 9 inch round keeps the depth — Mumsnet 1769010, 0.5625; depth too — cocoandme.com, 2.344", () => {
    const area = (diameter: number) => run("BAKE_TINAREA", "round", down(diameter), "in");
    expectCells(run("BAKE_RESCALE", down(100), area(9), area(12)), 56.25, 1e-9);
    const capacity = (diameter: number, depth: number) => run("BAKE_TINCAPACITY", "round", down(diameter, depth), "in");
    expectCells(run("BAKE_RESCALE", down(100), capacity(10, 3), capacity(8, 2)), 234.375, 1e-9);
  });

  test("half a loaf short in seventeen — The Fresh Loaf node/23963: 8652.7 g; two losses in series — derived: 927.644 g", () => {
    expectCells(run("BAKE_DOUGHFOR", 17, 500, 0, 150 / 8500), 8652.69, 0.01);
    expectCells(run("BAKE_DOUGHFOR", 1, 800, 0.12, 0.02), 927.644, 5e-4);
    expectCells(run("BAKE_DOUGHFOR", 160, 60, 0, 0.02), 9795.918, 5e-4);
  });

  test("300 g from a loaf that lost 14.97 % — sourdough.com topic 942: 352.8 g, not 345", () => {
    expectCells(run("BAKE_DOUGHFOR", 1, 300, 1 - 267 / 314), 352.8, 0.02);
  });

  test.each([
    [40.5, 40, 2, 20.25],
    [40.5, 22, 2, 20.25],
    [40.5, 19.8, 3, 13.5],
    [0, 40, 0, 0],
    // A dough of 144 lb every 90 minutes, seven in a shift: a field bakery's manual of 1916.
    [1008, 144, 7, 144],
  ])(
    "mixes of %f in a mixer for %f: %f of %f — a mixer maker's chart, 60 % absorption; a field bakery",
    (dough, limit, mixes, each) => {
      expectCells(run("BAKE_MIXES", dough, limit), [[mixes, each]], 1e-9);
    },
  );

  test("a column of doughs gives a row each, blank rows stay blank, a half-filled row is named", () => {
    expectCells(run("BAKE_MIXES", down(95, "", 40), 40), [
      [3, 95 / 3],
      ["", ""],
      [1, 40],
    ]);
    expect(refusal("BAKE_DOUGHFOR", down(10, 20, 30), down(500, "", "x"))).toMatch(
      /weight row 2 is blank.*weight row 3 is "x"/,
    );
  });

  test("rounding: half away from 0, never to nothing, never to a step that was not named", () => {
    expectCells(run("BAKE_SCALEROUND", down(2.5, 0.002, 1234.5, 0, 98.4), 1), down(2.5, 0.002, 1235, 0, 98), 1e-12);
    expectCells(run("BAKE_SCALEROUND", down(12.7), 5), 12.7);
    expectCells(run("BAKE_SCALEROUND", down(104, 12.34, 0.31), down(5, 1, 0.1)), down(105, 12.3, 0.31));
  });

  test("laws: scaling there and back; rounded rows stay within their shift or one finest step", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.01, max: 1e5, noNaN: true }), { minLength: 1, maxLength: 8 }),
        fc.double({ min: 0.1, max: 100, noNaN: true }),
        (rows, factor) => {
          const total = rows.reduce((sum, one) => sum + one, 0);
          const there = run("BAKE_RESCALE", down(...rows), total * factor);
          const back = run("BAKE_RESCALE", there, total);
          expectCells([back].flat(2), rows, 1e-6);
          [run("BAKE_SCALEROUND", down(...rows), 1)].flat(2).forEach((rounded, row) => {
            const was = rows[row] ?? 0;
            expect(Math.abs((rounded as number) - was)).toBeLessThanOrEqual(Math.max(0.02 * was, 0.001) * (1 + 1e-9));
          });
        },
      ),
      SEED,
    );
  });
});
