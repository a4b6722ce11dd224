import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { down, expectCells, refusal, run } from "../functions/support.ts";
import { seedOf } from "../kit/scale.ts";

const SEED = seedOf(4180);

describe("heat balance, which row", () => {
  const balance = (weights: unknown[], temps: unknown[], kinds: unknown[], target = 26) =>
    run("BAKE_HEATBALANCE", target, down(...weights), down(...temps), down(...kinds), 0) as number;

  test("small blank rows take the flour's temperature, the heavier flour counting more", () => {
    const kinds = ["flour", "flour", "water", "salt", "yeast"];
    const filled = balance([900, 100, 650, 20, 10], [20, 10, "", 19, 19], kinds);
    expectCells(balance([900, 100, 650, 20, 10], [20, 10, "", "", ""], kinds), filled);
  });
  test("a small flour row without a temperature takes the other flours'", () => {
    const kinds = ["flour", "flour", "water"];
    expectCells(balance([900, 50, 650], [20, "", ""], kinds), balance([900, 50, 650], [20, 20, ""], kinds));
  });
  test("of several water rows the blank one", () => {
    // By hand: (1.76 + 0.65 × 4.18) × 26 = 116.402; less 35.2 of flour and 0.15 × 4.18 × 60 = 37.62, over 2.09.
    expectCells(balance([1000, 150, 500], [20, 60, ""], ["flour", "water", "water"]), (116.402 - 35.2 - 37.62) / 2.09);
  });
  test("a blank water row is solved even when it is small", () => {
    // By hand, C = 1.76 + 2.5216 + 0.209 with levain 100 % of 849 g at (1.76 + 4.18) ÷ 2.
    const levain = 0.849 * 2.97;
    const wanted = ((1.76 + levain + 0.209) * 26 - 1.76 * 25 - levain * 27) / 0.209;
    expectCells(balance([1000, 849, 50], [25, 27, ""], ["flour", "levain 100%", "water"]), wanted);
  });
  test("without a blank water row the only large blank row, a small one taking the flour's temperature", () => {
    // By hand: egg at 3.3; (1.76 + 1.32 + 0.836 + 0.0176) × 22 less flour, water and salt.
    const wanted = ((1.76 + 1.32 + 0.836 + 0.0176) * 22 - 1.76 * 20 - 0.836 * 30 - 0.0176 * 20) / 1.32;
    expectCells(balance([1000, 400, 200, 20], [20, "", 30, ""], ["flour", "egg", "water", "salt"], 22), wanted);
  });
  test("the only blank row, however small", () => {
    const wanted = ((1.76 + 0.65 * 4.18 + 0.032) * 21.9 - 1.76 * 20 - 0.65 * 4.18 * 23) / 0.032;
    expectCells(balance([1000, 650, 10], [20, 23, ""], ["flour", "water", "yeast"], 21.9), wanted);
  });
  test("6 % of the dough is large, a little less is small", () => {
    const kinds = ["flour", "water", "fat"];
    // 600 and 340 beside 60: the fat is 6 % and refused. With 341 it takes the flour's 20 °C.
    const wanted = ((1.76 * 600 + 4.18 * 341 + 2.1 * 60) * 26 - (1.76 * 600 + 2.1 * 60) * 20) / (4.18 * 341);
    expectCells(balance([600, 341, 60], [20, "", ""], kinds), wanted);
    expect(refused([600, 340, 60], [20, "", ""], kinds)).toMatch(/rows 2 and 3 are blank/);
  });
  test("every kind has its heat capacity", () => {
    const capacities = {
      dairy: 3.94,
      egg: 3.3,
      fat: 2.1,
      sugar: 1.25,
      salt: 0.88,
      yeast: 3.2,
      grain: 1.6,
      fruit: 3,
      other: 2,
    };
    for (const [kind, c] of Object.entries(capacities)) {
      // One part of it at 10 °C and one part of water make 20 °C.
      expectCells(balance([1, 1], [10, ""], [kind, "water"], 20), 20 + (c * 10) / 4.18);
    }
    expectCells(balance([1, 1], [10, ""], ["biga 50%", "water"], 20), 20 + ((1.76 * 2 + 4.18) / 3) * (10 / 4.18));
    expectCells(balance([1, 1], [10, ""], [0.5, "water"], 20), 20 + ((1.76 + 4.18) / 2) * (10 / 4.18));
  });
  test("a row without a weight is not in the dough", () => {
    expectCells(balance([1000, "", 650, 0], [20, "", "", ""], ["flour", "egg", "water", "fat"]), 29.887, 5e-4);
  });
  test("blank throughout gives a blank", () => {
    expect(run("BAKE_HEATBALANCE", 26, down("", ""), down("", ""), down("flour", "water"))).toBe("");
  });

  const refused = (weights: unknown[], temps: unknown[], kinds: unknown[], target: unknown = 26, ...more: unknown[]) =>
    refusal("BAKE_HEATBALANCE", target, down(...weights), down(...temps), down(...kinds), ...more);
  test.each([
    ["two blank water rows", [1000, 600, 40], [20, "", ""], ["flour", "water", "water"], /rows 2 and 3 are blank/],
    ["water and a large row", [1000, 600, 300], [20, "", ""], ["flour", "water", "egg"], /rows 2 and 3 are blank/],
    ["a large row and water below it", [1000, 300, 600], [20, "", ""], ["flour", "egg", "water"], /rows 2 and 3 are/],
    [
      "two large rows and a small one",
      [1000, 600, 300, 300, 20],
      [20, 20, "", "", ""],
      ["flour", "water", "egg", "fat", "salt"],
      /temps rows 3 and 4 are blank/,
    ],
    ["two large rows", [1000, 600, 300, 300], [20, 20, "", ""], ["flour", "water", "egg", "fat"], /rows 3 and 4 are/],
    ["two small rows", [1000, 600, 20, 10], [20, 20, "", ""], ["flour", "water", "salt", "yeast"], /rows 3 and 4 are/],
    ["no blank row", [1000, 600], [20, 20], ["flour", "water"], /temps leave no row/],
    ["no weight", [0, 0], [20, ""], ["flour", "water"], /weights hold no weight above 0/],
    ["warm ice", [1000, 500, 100], [20, "", 3], ["flour", "water", "ice"], /temps row 3 is above freezing/],
    ["no flour to go by", [600, 20], ["", ""], ["water", "salt"], /temps row 2 is blank, and no flour row/],
    ["no kind", [1000, 600], [20, ""], ["flour", ""], /kinds row 2 is blank though the row has an amount/],
    ["text", [1000, 600], ["cold", ""], ["flour", "water"], /temps row 1 is "cold"/],
    ["a negative weight", [-1, 600], [20, ""], ["flour", "water"], /weights row 1 is -1; it cannot be below 0/],
    ["levain without its hydration", [1000, 600], [20, ""], ["levain", "water"], /without its hydration/],
  ])("%s is refused", (_what, weights, temps, kinds, because) => {
    expect(refused(weights, temps, kinds)).toMatch(because);
  });
  test("water hotter than boiling is refused, 100 °C is not", () => {
    // One part of flour at 20 °C and one of water at 100 °C make (35.2 + 418) ÷ 5.94 °C.
    const hottest = (1.76 * 20 + 418) / 5.94;
    expectCells(balance([1, 1], [20, ""], ["flour", "water"], hottest), 100);
    expect(refused([1, 1], [20, ""], ["flour", "water"], hottest + 0.01, 0)).toMatch(/hotter than boiling/);
    expect(refused([1, 1], [68, ""], ["flour", "water"], hottest * 1.8 + 32.1, 0, "F")).toMatch(/hotter than boiling/);
  });
  test("water colder than ice can stand for is refused", () => {
    expect(refused([1000, 50], [40, ""], ["flour", "water"], 5, 0)).toBe(
      "BAKE_HEATBALANCE: dough_target cannot be reached: row 2 (water) would have to be colder than any ice makes it; cool the other rows, or accept a warmer dough.",
    );
  });
});

/** kJ/kg·K, typed again here so that the mixing is checked from outside. */
const HEATS = {
  flour: 1.76,
  water: 4.18,
  dairy: 3.94,
  egg: 3.3,
  fat: 2.1,
  sugar: 1.25,
  salt: 0.88,
  "levain 100%": 2.97,
};
type Row = { readonly kind: keyof typeof HEATS; readonly weight: number; readonly temp: number };

/** What everything has in common after mixing: each row gives or takes m·c per degree until nothing flows. */
function mixed(rows: readonly Row[], ice: number): number {
  let [low, high] = [-500, 500];
  for (let step = 0; step < 200; step++) {
    const middle = (low + high) / 2;
    const given = rows.reduce((sum, { kind, weight, temp }) => sum + weight * HEATS[kind] * (temp - middle), 0);
    const taken = ice * (333.55 + 4.18 * middle);
    if (given > taken) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

describe("heat balance, laws", () => {
  const kind = fc.constantFrom("flour", "dairy", "egg", "fat", "sugar", "salt", "levain 100%") as fc.Arbitrary<
    Row["kind"]
  >;
  const temp = fc.double({ min: -15, max: 60, noNaN: true });
  const row = fc.record({ kind, weight: fc.double({ min: 1, max: 2000, noNaN: true }), temp });
  const rows = fc.array(row, { minLength: 1, maxLength: 6 });
  const water = fc.double({ min: 100, max: 2000, noNaN: true });

  test("equal temperatures and no heat need that temperature", () => {
    fc.assert(
      fc.property(rows, water, fc.double({ min: -15, max: 50, noNaN: true }), (others, weight, same) => {
        const weights = down(...others.map((one) => one.weight), weight);
        const kinds = down(...others.map((one) => one.kind), "water");
        const temps = down(...others.map(() => same), "");
        expectCells(run("BAKE_HEATBALANCE", same, weights, temps, kinds, 0), same, 1e-8);
      }),
      { seed: SEED },
    );
  });

  test("the hidden temperature of the water is found again from what the mix comes to, with ice, in °C and °F", () => {
    const ice = fc.double({ min: 0, max: 50, noNaN: true });
    const rise = fc.double({ min: -5, max: 15, noNaN: true });
    const hidden = fc.double({ min: 0, max: 95, noNaN: true });
    fc.assert(
      fc.property(rows, water, hidden, ice, rise, (others, weight, wanted, frozen, warmed) => {
        const all = [...others, { kind: "water", weight, temp: wanted } as const];
        const target = mixed(all, frozen) + warmed;
        fc.pre(target > -20);
        const weights = down(...all.map((one) => one.weight), frozen);
        const kinds = down(...all.map((one) => one.kind), "ice");
        const temps = [...others.map((one) => one.temp), ""];
        expectCells(run("BAKE_HEATBALANCE", target, weights, down(...temps, ""), kinds, warmed), wanted, 1e-6);
        const fahrenheit = temps.map((one) => (typeof one === "number" ? one * 1.8 + 32 : one));
        const inF = run(
          "BAKE_HEATBALANCE",
          target * 1.8 + 32,
          weights,
          down(...fahrenheit, 32),
          kinds,
          warmed * 1.8,
          "F",
        );
        expectCells(inF, wanted * 1.8 + 32, 1e-5);
      }),
      { seed: SEED },
    );
  });

  test("left out, the rise is 15.1 kJ per kg of the flour rows over the dough's heat capacity", () => {
    fc.assert(
      fc.property(rows, water, (others, weight) => {
        const capacity = others.reduce((sum, one) => sum + one.weight * HEATS[one.kind], weight * HEATS.water);
        const flour = others.reduce((sum, one) => sum + (one.kind === "flour" ? one.weight : 0), 0);
        const args = [
          down(...others.map((one) => one.weight), weight),
          down(...others.map((one) => one.temp), ""),
          down(...others.map((one) => one.kind), "water"),
        ];
        const target = mixed([...others, { kind: "water", weight, temp: 30 }], 0) + (15.1 * flour) / capacity;
        expectCells(run("BAKE_HEATBALANCE", target, ...args), 30, 1e-6);
        expectCells(run("BAKE_HEATBALANCE", target, ...args, (15.1 * flour) / capacity), 30, 1e-6);
      }),
      { seed: SEED },
    );
  });
});
