// A limit that is met exactly holds, however the figure was worked out: 0.1 + 0.2 is no more than 0.3.

import { describe, expect, test } from "vitest";
import { call } from "../../src/functions/call.ts";
import { FUNCTIONS } from "../../src/functions/index.ts";
import { down, expectCells, refusal, run } from "./support.ts";

type Bounds = { readonly min?: number; readonly max?: number; readonly above?: number };
/** A review remarks what it refuses; how large a preferment's share may be is told by its hydration and basis (below). */
const OTHERWISE = ["BAKE_REVIEW per_mix", "BAKE_REVIEW steps", "BAKE_PREFERMENT share"];
const CASES = FUNCTIONS.flatMap((made) =>
  Object.entries(made.args).flatMap(([argument, { is }], index) => {
    const { min, max, above } = is.hint as Bounds;
    return is.hint.of === "number" && is.shape !== "table" && !OTHERWISE.includes(`${made.name} ${argument}`)
      ? [{ made, argument, index, min, max, above }]
      : [];
  }),
);

/** What a call says against one argument's bounds; "" where it is answered, or refused for anything else. */
function against(made: (typeof FUNCTIONS)[number], argument: string, index: number, value: number): string {
  const args = [...(made.examples[0]?.call ?? [])] as unknown[];
  while (args.length <= index) args.push(undefined);
  const arg = args[index];
  args[index] = Array.isArray(arg)
    ? arg.map((row, at) => (at === 0 ? (row as unknown[]).map(() => value) : row))
    : value;
  try {
    call(made, args);
    return "";
  } catch (error) {
    const { message } = error as Error;
    const bound = new RegExp(
      `\\b${argument}(?: row \\d+)? is (?:[^;]*; it (?:cannot be|must be|lies between)|[^;]*, which is [^;]* %;)`,
    );
    return bound.exec(message)?.[0] ?? "";
  }
}

/** A hair more and a hair less, as binary arithmetic leaves them. */
const HAIR = 1e-13;

test("most functions take a number that has bounds", () => expect(CASES.length).toBeGreaterThan(FUNCTIONS.length));

describe.each(CASES)("$made.name $argument", ({ made, argument, index, min, max, above }) => {
  const says = (value: number) => against(made, argument, index, value);
  if (max !== undefined)
    test("is as large as it may be, and no larger", () => {
      expect([says(max), says(max * (1 + HAIR))]).toEqual(["", ""]);
      expect(says(max * 1.5)).not.toBe("");
    });
  if (min !== undefined)
    test("is as small as it may be, and no smaller", () => {
      expect([says(min), says(min * (1 + (min < 0 ? HAIR : -HAIR)))]).toEqual(["", ""]);
      expect(says(min - Math.max(1, Math.abs(min)))).not.toBe("");
    });
  if (above !== undefined)
    test("is above what it must be above", () => {
      expect(says(above + 1e-9)).toBe("");
      expect(says(above)).not.toBe("");
    });
});

describe("what lies a hair beyond a limit is never said to be the limit", () => {
  test("in any argument", () => {
    let told = 0;
    for (const { made, index, min, max } of CASES)
      for (const [limit, value] of [
        [max, (max ?? 0) * 1.00001],
        [min, (min ?? 0) * 0.99999],
      ] as const) {
        if (limit === undefined || limit === 0) continue;
        const args = [...(made.examples[0]?.call ?? [])] as unknown[];
        while (args.length <= index) args.push(undefined);
        const arg = args[index];
        args[index] = Array.isArray(arg) ? arg.map((row) => (row as unknown[]).map(() => value)) : value;
        let said = "";
        try {
          call(made, args);
        } catch (error) {
          said = (error as Error).message;
        }
        for (const [, typed = "", bound = "", percent] of said.matchAll(
          /is (-?[\d.]+); it cannot be (?:above|below) (-?[\d.]+)( %)?/g,
        )) {
          expect(Number(typed), said).not.toBe(Number(bound) / (percent === undefined ? 1 : 100));
          told++;
        }
      }
    expect(told).toBeGreaterThan(60);
  });
  test.each([
    [refusal("BAKE_TINCAPACITY", "dome", down(20, 10.0001)), "a depth of 10.0001 above half the diameter of 20"],
    [refusal("BAKE_TINCAPACITY", "water", 19.9999), "have 19.9999 g of water"],
    [refusal("BAKE_TINCAPACITY", "wreath", down(20, 10.0001)), "a tube of 10.0001 above half"],
    [refusal("BAKE_TINAREA", "wreath", down(20, 10.0001)), "a tube of 10.0001 above half"],
    [refusal("BAKE_YEASTTIME", 10, 2, 4.0001), "2.0001 times hours_now. The rule holds up to twice"],
    [refusal("BAKE_YEASTTIME", 10, 3, 0.9999), "divided by 3.0003. The rule holds down to a third"],
    [refusal("BAKE_YEASTTIME", 10, 2, 3, 25, 32.01), "is 32.01 °C, and the rule holds from 15 to 32 °C"],
    [refusal("BAKE_SELLPRICE", 1, 1.000001, "cost share"), "is 100.0001 %; a food cost cannot be above 100 %"],
    [refusal("BAKE_ROLLIN", 1000, 0.5, "flour", 1000.001), "is 1000.001, more than the dough of 1000"],
    [refusal("BAKE_MIXES", 95, 40, 40.001), "is 40.001, above the limit of 40"],
    [refusal("BAKE_LABELSHARE", "a", down("a"), down(100), 100.001), "is 100.001, more than the ingredients' 100"],
    [refusal("BAKE_LABELPROTEIN", 30.001, 30), "is 30.001 g, more than the 30 g"],
    [
      refusal("BAKE_STARTERFEED", 550, 1, 1, 550.001),
      "is 550.001, which brings 275.001 of flour where 275 is wanted; at most 550 fits",
    ],
    [String(run("BAKE_WATERNOTE", 38.01, 18)), "Water of 38.01 °C is too hot for fresh yeast (38 °C at most)"],
  ])("%s", (said, told) => expect(said).toContain(told));
});

describe("what is compared was worked out", () => {
  const THREE_TENTHS = 0.1 + 0.2;
  test.each<[string, unknown[], unknown[]]>([
    ["BAKE_DOUGHFOR", [10, 500, 0, THREE_TENTHS], [10, 500, 0, 0.3]],
    ["BAKE_PIECES", [8500, 500, THREE_TENTHS], [8500, 500, 0.3]],
    ["BAKE_MIXES", [0.9, 0.3, THREE_TENTHS], [0.9, 0.3, 0.3]],
    ["BAKE_MIXES", [3 * THREE_TENTHS, 0.3], [0.9, 0.3]],
    ["BAKE_SCALEROUND", [down(THREE_TENTHS), 0.1], [down(0.3), 0.1]],
    ["BAKE_SELLPRICE", [4, 10 * 0.1 + 1e-16, "cost share"], [4, 1, "cost share"]],
    ["BAKE_SELLPRICE", [THREE_TENTHS, 1, "markup", 0, 0.1], [0.3, 1, "markup", 0, 0.1]],
    ["BAKE_TINCAPACITY", ["round", down(22.86, "9 in")], ["round", down(22.86, 22.86)]],
    ["BAKE_TINCAPACITY", ["wreath", down(3 * THREE_TENTHS * 20, THREE_TENTHS * 30)], ["wreath", down(18, 9)]],
    ["BAKE_TINCAPACITY", ["dome", down(6 * THREE_TENTHS, 3 * THREE_TENTHS)], ["dome", down(1.8, 0.9)]],
    ["BAKE_TINDOUGH", [1900, 2 + 1e-13], [1900, 2]],
    ["BAKE_PREFERMENT", [1000, 0.7 + THREE_TENTHS, 1], [1000, 1, 1]],
    ["BAKE_STARTERFEED", [THREE_TENTHS, 1, 0.5, 0.225], [0.3, 1, 0.5, 0.225]],
    [
      "BAKE_STAGES",
      [down(1, THREE_TENTHS), down("flour", "water"), 0.3, 1],
      [down(1, 0.3), down("flour", "water"), 0.3, 1],
    ],
    [
      "BAKE_STAGES",
      [down(1, 0.3), down("flour", "water"), THREE_TENTHS, 1],
      [down(1, 0.3), down("flour", "water"), 0.3, 1],
    ],
    ["BAKE_YEASTTIME", [10, 3 * THREE_TENTHS, 0.3], [10, 0.9, 0.3]],
    ["BAKE_YEASTTIME", [10, 0.3, 2 * THREE_TENTHS], [10, 0.3, 0.6]],
    ["BAKE_FLOURBLEND", [THREE_TENTHS, 0.1, 0.3, 1000], [0.3, 0.1, 0.3, 1000]],
    ["BAKE_GLUTENADD", [1000, THREE_TENTHS, 0.3], [1000, 0.3, 0.3]],
    [
      "BAKE_LABELSHARE",
      ["a", down("a", "b"), down(0.1, 0.2), 0.3],
      ["a", down("a", "b"), down(0.1, 0.2), THREE_TENTHS],
    ],
    ["BAKE_STOCKLIMIT", [down(0.3, 0.1), down(THREE_TENTHS, 0.1)], [down(0.3, 0.1), down(0.3, 0.1)]],
    [
      "BAKE_WEIGHTS",
      [down(1, 0.25 * (1 + HAIR)), down("flour", "salt"), 100],
      [down(1, 0.25), down("flour", "salt"), 100],
    ],
    [
      "BAKE_WEIGHTS",
      [down(0.7, 0.1 + 0.2 + 0.005), down("flour", "flour"), 100],
      [down(0.7, 0.305), down("flour", "flour"), 100],
    ],
  ])("%s %j is answered like %j", (name, worked, typed) =>
    expectCells(
      JSON.parse(JSON.stringify(run(name, ...worked)).replace(/0\.30000000000000004/g, "0.3")),
      run(name, ...typed),
    ),
  );
  test("38 °C is 100.4 °F and not too hot for fresh yeast (its limit in °C, worked out in °F)", () => {
    expect(run("BAKE_WATERNOTE", 100.4, 60, "fresh", "F")).toBe("Warm the water to 100.4 °F.");
    expect(run("BAKE_WATERNOTE", 100.5, 60, "fresh", "F")).toMatch(/too hot/);
    expect(run("BAKE_WATERNOTE", 20.3, 19.8)).toMatch(/as it is/);
    expect(run("BAKE_WATERNOTE", 20.31, 19.8)).not.toMatch(/as it is/);
  });
  test("all of the water as ice is the most that there is", () => {
    // Ice at 0 °C takes up 333.55 kJ/kg (and 0 more) where a degree of water takes 4.186: 79.68 degrees below 0.
    const coldest = -333.55 / 4.186;
    const [[ice, water]] = run("BAKE_ICE", 10, 20, coldest) as [[number, number]];
    expectCells([ice, water], [10, 0], 1e-9);
    expect(water).toBeGreaterThanOrEqual(0);
    expect(refusal("BAKE_ICE", 10, 20, coldest * 1.001)).toMatch(/too cold/);
  });
  test("a fill at the guide's limit is within it, a hair that is more than arithmetic is not", () => {
    const note = (dough: number) => String((run("BAKE_TINNOTE", dough, 1000, "lidded white") as unknown[][])[0]?.[0]);
    expect(note(370)).toMatch(/within the usual range/);
    expect(note((0.1 + 0.27) * 1000)).toMatch(/within the usual range/);
    expect(note(370.001)).toMatch(/above the usual range/);
    expect(note(299.999)).toMatch(/below the usual range/);
  });
  test("percentages and weights half a percent apart agree, a little more does not (65.325 is 65 and half a percent of it)", () => {
    const filled = (water: number) => [down(1, 0.65), down(1000, water), down("flour", "water")];
    expectCells(run("BAKE_FILLIN", ...filled(653.25)), [
      [1, 1000],
      [0.65325, 653.25],
    ]);
    expect(refusal("BAKE_FILLIN", ...filled(653.26))).toMatch(/weights row 2 says two things/);
  });
});
