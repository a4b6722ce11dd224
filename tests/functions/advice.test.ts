// What a refusal says to enter is entered to the letter, and then the answer must be right.

import { describe, expect, test } from "vitest";
import { Refusal } from "../../shared/base/refusal.ts";
import { call } from "../../src/functions/call.ts";
import type { SheetFunction } from "../../src/functions/define.ts";
import { FUNCTIONS } from "../../src/functions/index.ts";
import { down, expectCells, refusal, run } from "./support.ts";

type Argument = SheetFunction["args"][string]["is"];
/** Every place of every example where one cell of an argument may be typed differently. */
type Place = { readonly made: SheetFunction; readonly name: string; readonly is: Argument; readonly typed: unknown } & {
  readonly with: (cell: unknown) => readonly unknown[];
};

const PLACES: readonly Place[] = FUNCTIONS.flatMap((made) =>
  made.examples.flatMap(({ call: args }) =>
    Object.entries(made.args).flatMap(([name, { is }], at): Place[] => {
      const arg = args[at];
      const put = (value: unknown) => Object.keys(made.args).map((_, index) => (index === at ? value : args[index]));
      if (!Array.isArray(arg)) return [{ made, name, is, typed: arg, with: put }];
      if (is.shape === "table") return [];
      return arg.flatMap((row: readonly unknown[], down) =>
        row.map((typed, across) => ({
          made,
          name,
          is,
          typed,
          with: (cell: unknown) =>
            put(
              arg.map((cells, y) =>
                y === down ? cells.map((one: unknown, x: number) => (x === across ? cell : one)) : cells,
              ),
            ),
        })),
      );
    }),
  ),
);

/** What a call is refused with; undefined where it is answered. */
function says({ made }: Place, args: readonly unknown[]): string | undefined {
  try {
    call(made, args);
    return undefined;
  } catch (error) {
    if (error instanceof Refusal) return error.message;
    throw error;
  }
}

/** Sentences print four to six places. */
const PRINTED = 2e-4;
function near(got: unknown, wanted: unknown): void {
  if (Array.isArray(wanted)) for (const [at, one] of wanted.entries()) near((got as unknown[])[at], one);
  else if (typeof wanted === "number")
    expect(Math.abs((got as number) - wanted), `${String(got)} against ${wanted}`).toBeLessThanOrEqual(
      PRINTED * Math.max(Math.abs(wanted), 1e-3),
    );
  else if (typeof wanted === "string" && !/\d/.test(wanted)) expect(got).toBe(wanted);
}

/** Types each place wrongly, enters what the refusal advises, and holds the answer against the one of the right cell. */
function follow(
  wrong: (place: Place) => unknown,
  advised: (said: string, place: Place) => readonly unknown[] | undefined,
): { followed: number; functions: Set<string> } {
  const functions = new Set<string>();
  let followed = 0;
  for (const place of PLACES) {
    const cell = wrong(place);
    const said = cell === undefined ? undefined : says(place, place.with(cell));
    if (said === undefined) continue;
    const entries = advised(said, place);
    if (entries === undefined) continue;
    const right = call(place.made, place.with(place.typed));
    for (const entry of entries) near(call(place.made, place.with(entry)), right);
    followed += entries.length;
    functions.add(place.made.name);
  }
  return { followed, functions };
}

const whatOf = ({ is }: Place): string => ("what" in is.hint ? is.hint.what : "");
const measureOf = ({ is }: Place): string => ("measure" in is.hint ? (is.hint.measure ?? "") : "");
const isNumber = (cell: unknown): cell is number => typeof cell === "number" && cell > 0;

describe("in every argument of its sort", () => {
  test("a share typed plain: both ways that are offered are the share", () => {
    const { followed, functions } = follow(
      (place) => (isNumber(place.typed) && / \(0\.\d+\)$/.test(whatOf(place)) ? place.typed * 100 : undefined),
      (said) => {
        const [, marked, ratio] = /; enter ([\d.]+%) or ([\d.]+)(?=[;. ])/.exec(said.replace(/\.$/, " ")) ?? [];
        return marked === undefined ? undefined : [marked, Number(ratio), ratio];
      },
    );
    expect(functions.size).toBeGreaterThan(8);
    expect(followed).toBeGreaterThan(40);
  });
  test("ounces beside weights without a unit: the grams that are told, and all of them with their unit", () => {
    const { functions } = follow(
      (place) =>
        isNumber(place.typed) && measureOf(place) === "weight" ? `${place.typed / (453.59237 / 16)} oz` : undefined,
      (said) => {
        const [, grams] = /; enter ([\d.]+) if those are grams/.exec(said) ?? [];
        return grams === undefined ? undefined : [Number(grams), grams];
      },
    );
    expect(functions.size).toBeGreaterThan(8);
  });
  test("°F beside temperatures without a unit: the number that is told for °C", () => {
    const { functions } = follow(
      (place) => (isNumber(place.typed) && measureOf(place) === "degrees" ? `${place.typed * 1.8 + 32} °F` : undefined),
      (said) => {
        const [, celsius] = /; enter ([\d.]+) if the other temperatures are in °C/.exec(said) ?? [];
        return celsius === undefined ? undefined : [Number(celsius)];
      },
    );
    expect([...functions]).toEqual(["BAKE_WATERTEMP", "BAKE_DOUGHTEMP", "BAKE_FRICTION"]);
  });
  test("thousands or decimals: the thousands that are told, without their separator", () => {
    const { functions } = follow(
      ({ typed, is }) =>
        isNumber(typed) && Number.isInteger(typed) && typed >= 1000 && typed < 1e6 && is.hint.of === "number"
          ? `${Math.floor(typed / 1000)},${String(typed % 1000).padStart(3, "0")}`
          : undefined,
      (said) => {
        const [, whole] = /could be (\d+) or [\d.]+; enter the one you mean/.exec(said) ?? [];
        return whole === undefined ? undefined : [whole, Number(whole)];
      },
    );
    expect(functions.size).toBeGreaterThan(8);
  });
  test("what is counted beside its number: the number without it", () => {
    const { functions } = follow(
      ({ typed, is }) => (isNumber(typed) && is.hint.of === "number" ? `${typed} loaves` : undefined),
      (said, { typed }) => (said.includes('; enter it without "loaves"') ? [typed, String(typed)] : undefined),
    );
    expect(functions.size).toBeGreaterThan(8);
  });
  test("dozens beside their number: the number of all", () => {
    const { functions } = follow(
      ({ typed, is }) => (isNumber(typed) && is.hint.of === "number" ? `${typed / 12} dozen` : undefined),
      (said) => {
        const [, all] = /; enter ([\d.]*\d)\.?$/.exec(said) ?? [];
        return all === undefined ? undefined : [Number(all), all];
      },
    );
    expect(functions.size).toBeGreaterThan(3);
  });
  test("a word that may be a unit, or a size: never the number alone, which would be another amount", () => {
    let refused = 0;
    for (const word of [
      "gal",
      "gallons",
      "quarts",
      "st",
      "t",
      "tonnes",
      "gm",
      "ct",
      "large",
      "g of flour",
      "kg/day",
      "x",
    ])
      for (const place of PLACES) {
        if (!isNumber(place.typed) || place.is.hint.of !== "number") continue;
        const said = says(place, place.with(`${place.typed} ${word}`));
        if (said === undefined) continue;
        expect(said).not.toMatch(/enter it without "/);
        refused++;
      }
    expect(refused).toBeGreaterThan(2000);
  });
  test("a word that nobody knows: each that may be chosen is taken, and the right one is right", () => {
    let chosen = 0;
    for (const place of PLACES) {
      const said = place.is.hint.of === "word" ? says(place, place.with("zzz")) : undefined;
      if (said === undefined || place.made.name === "BAKE_REVIEW") continue;
      const [, list = ""] =
        new RegExp(`\\b${place.name}(?: row \\d+)? is "zzz"; choose ([^;]+?)(?:;|\\.?$)`).exec(said) ?? [];
      const words = [...list.matchAll(/"([^"]+)"/g)].map(([, word]) => word);
      expect(words.length, said).toBeGreaterThan(1);
      for (const word of words) {
        const then = says(place, place.with(word)) ?? "";
        expect(then).not.toContain(`${place.name} is "${word}"; choose`);
        chosen++;
      }
      if (typeof place.typed === "string" && words.includes(place.typed))
        expectCells(call(place.made, place.with(place.typed.toUpperCase())), call(place.made, place.with(place.typed)));
    }
    expect(chosen).toBeGreaterThan(100);
  });
  test("a misspelled ingredient: a name that is offered is known, and the right one is right", () => {
    const { functions } = follow(
      ({ typed, name }) =>
        typeof typed === "string" && /^(?:ingredients?|from|to)$/.test(name) && typed.length > 5
          ? `${typed.slice(0, -2)}${typed.slice(-1)}`
          : undefined,
      (said, { typed }) => {
        const [, list = ""] = /; perhaps (.+?)\?/.exec(said) ?? [];
        const names = [...list.matchAll(/"([^"]+)"/g)].map(([, one]) => one);
        return names.includes(String(typed)) ? [typed] : undefined;
      },
    );
    expect(functions.size).toBeGreaterThan(4);
  });
});

describe("percentages that are mixed", () => {
  const kinds = down("flour", "water", "salt", "yeast");
  const grams = down(1000, 650, 20, 10);
  const weights = (percents: readonly unknown[]) => run("BAKE_WEIGHTS", down(...percents), kinds, 1000, "flour");
  test.each([1, 2, 3])("row %i typed plain among ratios", (row) => {
    const ratios = [1, 0.65, 0.02, 0.01];
    const mixed = ratios.map((one, at) => (at === row ? one * 100 : one));
    const said = refusal("BAKE_WEIGHTS", down(...mixed), kinds, 1000, "flour");
    const [, marked = "", ratio = ""] = /enter ([\d.]+%) \(([\d.]+)\). Or type every row plain/.exec(said) ?? [];
    for (const entry of [marked, Number(ratio), ratio])
      expectCells(weights(ratios.map((one, at) => (at === row ? entry : one))), grams);
    expectCells(weights(ratios.map((one) => one * 100)), grams);
  });
  test.each([1, 2, 3])("row %i typed as a ratio among plain figures", (row) => {
    const plain = [100, 65, 2, 1];
    const mixed = plain.map((one, at) => (at === row ? one / 100 : one));
    const said = refusal("BAKE_WEIGHTS", down(...mixed), kinds, 1000, "flour");
    const [, figure = "", marked = ""] =
      /enter ([\d.]+), or ([\d.]+%) if that is meant. Or type every row/.exec(said) ?? [];
    for (const entry of [Number(figure), figure])
      expectCells(weights(plain.map((one, at) => (at === row ? entry : one))), grams);
    // The other meaning is the other number.
    const other = plain.map((one, at) => (at === row ? marked : one));
    expectCells(
      weights(other),
      grams.map(([one], at) => [at === row ? Number(one) / 100 : one]),
    );
    expectCells(weights(plain.map((one) => one / 100)), grams);
  });
});

describe("one by one", () => {
  const advised = (said: string, words: RegExp): string => words.exec(said)?.[1] ?? `nothing in “${said}”`;
  test("a starter without its %, and a number above 1 for a kind", () => {
    for (const kind of ["levain 100", 100]) {
      const said = refusal("BAKE_FLOURPCT", down(100, 100), down("flour", kind));
      const entry = advised(said, /"((?:levain|starter) 100%)"/);
      expectCells(run("BAKE_FLOURPCT", down(100, 100), down("flour", entry)), down(2 / 3, 2 / 3));
    }
  });
  test("kilograms of water, and a fill typed as a percentage", () => {
    const water = advised(refusal("BAKE_TINCAPACITY", "water", 1.53), /enter "([^"]+)"/);
    expectCells(run("BAKE_TINCAPACITY", "water", water), 1530 / 0.998207);
    const fill = advised(refusal("BAKE_TINDOUGH", 1000, 34), /enter ([\d.]+), say/);
    expectCells(run("BAKE_TINDOUGH", 1000, fill), 340);
  });
  test("each or all, and a pack that may be several", () => {
    const said = refusal("BAKE_GRAMS", "2 (300 g) eggs");
    const [each, all] = [advised(said, /Enter "([^"]+)"/), advised(said, / or "([^"]+)"/)];
    expectCells(run("BAKE_GRAMS", down(`${each} egg`, `${all} egg`)), down(600, 300));
    const pack = advised(refusal("BAKE_UNITCOST", 6, "2/3 kg"), /Enter "([^"]+)"/);
    expectCells(run("BAKE_UNITCOST", 6, pack), 6 / 6000);
  });
  test("the least that the mixer takes, the most starter that fits, the surplus of water", () => {
    const said = refusal("BAKE_MIXES", 45, 40, 25);
    for (const dough of [/; ([\d.]+) or/, /or ([\d.]+) would fit/])
      expect(run("BAKE_MIXES", Number(advised(said, dough)), 40, 25)).toHaveLength(1);
    const water = refusal("BAKE_PLAINWATER", down("flour", "whole egg"), down(1000, 800), down("flour", "egg"), 0.5);
    const surplus = Number(advised(water, /already: ([\d.]+) too much/));
    // SR28 01123: an egg is 76.15 % water, so that the surplus leaves with surplus ÷ 0.7615 of egg.
    const egg = 800 - surplus / 0.7615;
    expectCells(
      run("BAKE_PLAINWATER", down("flour", "whole egg"), down(1000, egg), down("flour", "egg"), 0.5),
      0,
      0.01,
    );
  });
});
