// One kind of fault at a time, over every function and every argument of its sort: spaces and cases, blanks in the middle, two
// units that must agree, ranges that run backwards.

import { describe, expect, test } from "vitest";
import { toGrid } from "../../shared/cells/decoder.ts";
import { isBlank } from "../../shared/cells/hint.ts";
import { call } from "../../src/functions/call.ts";
import type { SheetFunction } from "../../src/functions/define.ts";
import { FUNCTIONS } from "../../src/functions/index.ts";
import { down, expectCells, refusal, run } from "./support.ts";

type Cell = (cell: unknown) => unknown;
const each = (arg: unknown, of: Cell): unknown =>
  Array.isArray(arg) ? arg.map((row) => (Array.isArray(row) ? row.map(of) : of(row))) : of(arg);
const answers = (made: SheetFunction, args: readonly unknown[]): string[][] =>
  toGrid(call(made, args)).map((row) => row.map(String));

describe("spaces of every sort and the case of letters change no answer", () => {
  const WAYS: readonly Cell[] = [
    (cell) => (typeof cell === "string" ? cell.toUpperCase() : cell),
    (cell) => (typeof cell === "string" && cell !== "" ? `\u00a0 ${cell}\u2009` : cell),
    (cell) => (typeof cell === "string" ? cell.replace(/ /g, "\u202f ") : cell),
    (cell) => (typeof cell === "string" && cell !== "" ? `${cell.replace(/^./, (one) => one.toUpperCase())}\t` : cell),
  ];
  // A T is a tablespoon and a t a teaspoon; a text that is taken over keeps its letters, so that numbers are compared.
  const numbers = (rows: string[][]) => rows.flat().map((cell) => (Number.isFinite(Number(cell)) ? cell : "text"));
  test.each(FUNCTIONS)("$name", (made) => {
    for (const { call: args } of made.examples) {
      const wanted = numbers(answers(made, args));
      for (const way of WAYS)
        expect(
          numbers(
            answers(
              made,
              args.map((arg) => each(arg, way)),
            ),
          ),
        ).toEqual(wanted);
      const lower = args.map((arg) => each(arg, (cell) => (typeof cell === "string" ? cell.toLowerCase() : cell)));
      if (!/\bT\b/.test(JSON.stringify(args))) expect(numbers(answers(made, lower))).toEqual(wanted);
    }
  });
});

describe("a blank row in the middle stays blank and moves nothing else", () => {
  const SIZES = /^(?:sizes|orders|on_hand)$/;
  const CASES = FUNCTIONS.flatMap((made) =>
    made.examples.flatMap(({ call: args }) => {
      const columns = Object.entries(made.args).flatMap(([name, { is }], at) => {
        const arg = args[at];
        const isRows =
          is.shape === "column" || is.shape === "either" || made.rowwise || (is.shape === "table" && SIZES.test(name));
        return isRows && Array.isArray(arg) && arg.length > 1 && !/^(?:part|step)$/.test(name) ? [at] : [];
      });
      return columns.length > 0 ? [{ made, args, columns }] : [];
    }),
  );
  test("most functions that take columns are tried", () =>
    expect(new Set(CASES.map(({ made }) => made.name)).size).toBeGreaterThan(25));
  test.each(CASES)("$made.name $#", ({ made, args, columns }) => {
    const wanted = answers(made, args);
    for (const blank of ["", " ", null, undefined, "\u00a0"]) {
      const spread = args.map((arg, at) =>
        columns.includes(at) && Array.isArray(arg) ? [arg[0], arg[0].map(() => blank), ...arg.slice(1)] : arg,
      );
      const got = answers(made, spread);
      const { shape } = made.returns;
      const isRows = shape === "column" || shape === "rows" || made.rowwise;
      // Several parts of CONTENT, and the days' needs, come in rows of their own.
      const hasOwnRows = !isRows || got.length === wanted.length;
      const rows = hasOwnRows ? got : [got[0] ?? [], ...got.slice(2)];
      if (!hasOwnRows) expect(got[1]?.every((cell) => cell === "")).toBe(true);
      // Rows are counted in the answers of these two.
      const counted = /STOCKLIMIT|TINMATCH/.test(made.name);
      const plain = counted ? rows.map((row) => row.slice(0, 1)) : rows;
      expect(plain).toEqual(counted ? wanted.map((row) => row.slice(0, 1)) : wanted);
      if (counted) {
        const [at, before] = [Number(got[0]?.[1]), Number(wanted[0]?.[1])];
        expect(at).toBe(before === 1 ? 1 : before + 1);
      }
    }
  });
});

describe("two units that must agree", () => {
  /** How many of the unit make one of the first unit of its sort (NIST SP 811). */
  const SIZE: Readonly<Record<string, number>> = {
    ...{ g: 1, kg: 1000, oz: 453.59237 / 16, lb: 453.59237 },
    ...{ cm: 1, mm: 0.1, in: 2.54 },
  };
  const convert = (value: number, from: string, to: string): number => {
    if (from === to) return value;
    if (to === "F") return value * 1.8 + 32;
    if (to === "C") return (value - 32) / 1.8;
    return (value * (SIZE[from] ?? 0)) / (SIZE[to] ?? 1);
  };
  const FITS: Readonly<Record<string, string>> = { weight: "g", size: "cm", degrees: "C" };
  const CASES = FUNCTIONS.flatMap((made) => {
    const names = Object.keys(made.args);
    const unit = names.indexOf("unit");
    const hint = made.args.unit?.is.hint;
    const words = hint?.of === "word" ? hint.words : [];
    const measured = Object.entries(made.args).flatMap(([, { is }], at) => {
      const measure = "measure" in is.hint ? (is.hint.measure ?? "") : "";
      return words.includes(FITS[measure] ?? "none") ? [at] : [];
    });
    return measured.length === 0
      ? []
      : made.examples.flatMap(({ call: args }) => words.map((to) => ({ made, args, unit, measured, words, to })));
  });
  test("the functions with a unit are tried", () =>
    expect(new Set(CASES.map(({ made }) => made.name)).size).toBeGreaterThan(8));
  test.each(CASES)("$made.name $# in $to", ({ made, args, unit, measured, words, to }) => {
    const own = isBlank(args[unit]) ? (words[0] ?? "") : String(args[unit]);
    const isOfWater = args.includes("water");
    const isCount = (value: unknown) => typeof value !== "number" || isOfWater;
    const typed = (of: (value: number) => unknown) => {
      const all = Object.keys(made.args).map((_, at) =>
        measured.includes(at) ? each(args[at], (cell) => (isCount(cell) ? cell : of(cell as number))) : args[at],
      );
      all[unit] = to;
      return all;
    };
    const inUnit = toGrid(
      call(
        made,
        typed((value) => convert(value, own, to)),
      ),
    );
    // A difference of degrees has no unit in its cell, and is typed in the unit of the call.
    const rise = Object.keys(made.args).indexOf("rise");
    const carried = typed((value) => `${value} ${own}`);
    const bare = typed((value) => convert(value, own, to));
    if (rise >= 0) carried[rise] = bare[rise];
    expectCells(toGrid(call(made, carried)), inUnit);
    // And the answer is the example's own, or the example's own in the other unit.
    if (rise >= 0 && !isBlank(args[rise]) && args[rise] !== 0) return;
    const before = toGrid(call(made, args));
    before.forEach((row, y) => {
      row.forEach((was, x) => {
        const now = inUnit[y]?.[x];
        if (typeof was !== "number" || typeof now !== "number") return;
        const factor = (SIZE[own] ?? 1) / (SIZE[to] ?? 1);
        const meant = [
          was,
          was * factor,
          was / factor,
          ...(own === "C" || own === "F" ? [convert(was, own, to), was * 1.8, was / 1.8] : []),
        ];
        const isMeant = meant.some((one) => Math.abs(now - one) <= 1e-7 * Math.max(1e-3, Math.abs(one)));
        expect(isMeant, `${now} is none of ${meant.join(", ")}`).toBe(true);
      });
    });
  });
});

describe("a range that runs backwards is refused in whatever reads an amount", () => {
  const AMOUNTS = [
    "3 to 2 cups",
    "3-2 cups",
    "3–2 cups",
    "1 to 3/4 cup",
    "500 g to 400 g",
    "1 lb - 12 oz",
    "2 or 1 cups",
    "2 cups to 1 cup",
  ];
  const larder = (cell: string) => [
    ["ingredient", "price", "pack", "measures"],
    ["flour", 5, cell, ""],
  ];
  const remark = (answer: unknown, at: number) => (answer as unknown[][])[0]?.[at];
  test.each(AMOUNTS)("%s", (amount) => {
    expect(refusal("BAKE_GRAMS", `${amount} flour`)).toMatch(/^BAKE_GRAMS: lines row 1/);
    expect(run("BAKE_GRAMSPAN", `${amount} flour`)).toEqual([["", "", expect.stringMatching(/\S/)]]);
    expect(refusal("BAKE_UNITCOST", 5, amount, "", "flour")).toMatch(/^BAKE_UNITCOST: pack is/);
    expect(refusal("BAKE_CONTENT", "flour", amount, "fat")).toMatch(/^BAKE_CONTENT: weights row 1/);
    expect(refusal("BAKE_COSTS", "flour", amount, larder("1 kg"))).toMatch(/^BAKE_COSTS: weights row 1/);
    const cost = run("BAKE_COSTS", "flour", 100, larder(amount));
    expect([remark(cost, 0), remark(cost, 1)]).toEqual(["", expect.stringMatching(/^pack is/)]);
  });
  test("in the larder's measures", () => {
    const shop = [
      ["ingredient", "measures"],
      ["salt", "tsp 5 to 2.8"],
    ];
    expect(refusal("BAKE_GRAMS", "1 tsp salt", "", "US", shop)).toMatch(
      /larder row 2 column "measures".*lighter figure first/,
    );
    expect(refusal("BAKE_SPOONS", 5, "salt", "US", shop)).toMatch(/lighter figure first/);
  });
  test("cells in any order are a table, not a range: minutes and frictions of mixes may fall", () =>
    expectCells(
      run("BAKE_FRICTIONFIT", down(12, 8, 4), down(15, 11, 7)),
      run("BAKE_FRICTIONFIT", down(4, 8, 12), down(7, 11, 15)),
    ));
});
