import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { LAWS } from "../enrichment/support.ts";
import { down, refusal, run } from "../functions/support.ts";

// The Note column: each row's own remark, whatever stands in the others.

const NAMES = down("flour", "water", "salt", "fresh yeast");
const KINDS = down("flour", "water", "salt", "yeast");
const GOOD = [1, 0.63, 0.02, 0.02];

type Cells = readonly unknown[];
const notes = (
  percents: Cells,
  style = "pan bread",
  names: unknown = NAMES,
  kinds: unknown = KINDS,
  ...rest: unknown[]
) => (run("BAKE_REVIEW", names, kinds, down(...percents), style, "", ...rest) as string[][]).map(([one]) => one);

describe("a row that cannot be read", () => {
  test.each<[unknown, RegExp]>([
    ["abc", /^Percentage is "abc", which is not a number/],
    [-0.02, /^Percentage is -0\.02; it cannot be below 0/],
    [new Date(2026, 0, 2), /^Percentage is a date/],
    ["#REF!", /^Percentage holds the error #REF!/],
    ["Loading...", /^Percentage is still calculating/],
    [true, /^Percentage is TRUE, not a number/],
    [{}, /^Percentage is not a number or a text/],
  ])("says so in its own row, and the others keep theirs: %j", (cell, says) => {
    const said = notes([1, 0.8, cell, 0.02]);
    expect(said[2]).toMatch(says);
    expect(said[1]).toMatch(/^Water is 80 % of all flour, above the usual range/);
    expect([said[0], said[3]]).toEqual(["", ""]);
  });

  test("a kind, an ingredient and a weight per mix likewise; several in one row stand one after the other", () => {
    const said = notes(
      GOOD,
      "pan bread",
      down("flour", "water", "#N/A", "fresh yeast"),
      down("flour", "wet", "salt", ""),
      down(1, 2, "heavy", 4),
      5,
    );
    expect(said[1]).toMatch(/^Type is "wet"/);
    expect(said[2]).toMatch(/^Ingredient holds the error #N\/A.*; Weight per mix is "heavy"/);
    expect(said[3]).toMatch(/^Type is blank though the row has an amount.*; 4 on a 5 g scale would read 5/);
  });

  test("too little is not said of what it may hold, too much is", () => {
    expect(notes([1, 0.63, "abc", 0.001])[3]).toMatch(/below the usual range/);
    expect(notes([1, 0.63, 0.002, "abc"])[2]).toMatch(/^Salt is 0\.2 % of all flour, below/);
    expect(notes([1, "abc", 0.02, 0.02]).join()).not.toContain("Water is missing");
    expect(
      notes([1, 0.3, 0.02, 0.02], "pan bread", NAMES, down("flour", "water", "sauce", "yeast")).join(),
    ).not.toContain("below");
  });

  test("of the flour: nothing is guessed, and nothing said that may not be true", () => {
    expect(notes(["abc", 0.63, 0.02, 0.02])).toEqual([expect.stringMatching(/^Percentage is "abc"/), "", "", ""]);
  });
});

describe("the whole column", () => {
  test("flours that do not make 100 % are told in the first flour row", () => {
    expect(notes([95, 63, 2, 2])[0]).toMatch(/^Percentages have flour rows that add up to 95/);
    expect(
      notes(
        [0.63, 0.95, 0.02, 0.02],
        "rye",
        down("water", "flour", "salt", "yeast"),
        down("water", "flour", "salt", "yeast"),
      )[1],
    ).toMatch(/^Percentages have flour rows that add up to 0\.95/);
  });

  test.each<[Cells, number, string]>([
    [[1, 30, 0.02, 0.02], 1, "3000 %: 30 % meant? Enter 30%"],
    [[1, 0.63, 2, 0.02], 2, "200 %: 2 % meant? Enter 2%"],
    [[100, 63, 0.02, 2], 2, "0.02 %: 2 % meant? Enter 2%"],
    [["100%", 30, 0.02, 0.02], 1, "3000 %: 30 % meant? Enter 30%"],
  ])("mixed ways to write a percentage: %j", (percents, row, says) => {
    const said = notes(percents);
    expect(said[row]).toBe(says);
    // What is advised, followed to the letter, is read.
    const fixed = percents.map((cell, at) => (at === row ? says.split("Enter ")[1] : cell));
    expect(notes(fixed)[row]).not.toContain("meant?");
  });

  test("a sheet without any amount yet has no notes", () => {
    expect(notes(["", "", "", ""], "rye")).toEqual(["", "", "", ""]);
    expect(refusal("BAKE_REVIEW", NAMES, KINDS, down(...GOOD), "chiffon")).toMatch(/style is "chiffon"/);
  });
});

describe("a levain's flour", () => {
  const levain = (percent: number) =>
    notes(
      [1, 0.6, 0.02, percent],
      "hearth",
      down("flour", "water", "salt", "levain"),
      down("flour", "water", "salt", "levain 100%"),
    )[3];
  test("from memory: Hamelman, Bread, up to half of the flour; the least is common practice", () => {
    expect(levain(0.4)).toBe("");
    // 3 ÷ 103 and 300 ÷ 2 over 250 of flour.
    expect(levain(0.06)).toMatch(/^Prefermented flour is 2\.91 % of all flour, below the usual range \(5 to 50 %\)/);
    expect(levain(3)).toMatch(/^Prefermented flour is 60 % of all flour, above the usual range/);
  });
});

describe("what a scale cannot show", () => {
  const scale = (each: unknown, steps: unknown, unit?: string) =>
    notes(GOOD, "pan bread", NAMES, KINDS, down(1000, 630, 20, each), steps, unit)[3];
  test.each([
    [12.7, 5, "g", "12.7 on a 5 g scale would read 15, 18 % too much: use a finer scale"],
    [12.2, 5, "g", "12.2 on a 5 g scale would read 10, 18 % too little: use a finer scale"],
    [2, 5, "g", "2 on a 5 g scale would read 0, 100 % too little: use a finer scale"],
    [0.37, 0.25, "oz", "0.37 on a 0.25 oz scale would read 0.25, 32 % too little: use a finer scale"],
  ])("%d on %d %s", (each, step, unit, says) => expect(scale(each, step, unit)).toBe(says));

  test("the finest of several steps counts, 2 % is still shown, and without steps or weights nothing is said", () => {
    expect(scale(12.7, down(50, 5, 0.1))).toBe("");
    expect(scale(50, 49)).toBe("");
    expect(scale(50, 48.9)).toMatch(/2 % too little/);
    expect([scale(12.7, ""), scale("", 5), scale(0, 5)]).toEqual(["", "", ""]);
  });

  test("what is said is what the scale does: the nearest step, more than 2 % off", () => {
    const weight = fc.double({ min: 0.01, max: 3000, noNaN: true });
    fc.assert(
      fc.property(weight, fc.constantFrom(0.1, 0.5, 1, 5, 20), (each, step) => {
        const reads = Math.round(each / step) * step;
        const off = Math.abs(reads - each) / each;
        fc.pre(Math.abs(off - 0.02) > 1e-6 && Math.abs(((each / step) % 1) - 0.5) > 1e-6);
        const says = scale(each, step) ?? "";
        expect(says.includes("use a finer scale")).toBe(off > 0.02);
        if (off > 0.02) expect(Number(/would read ([\d.]+)/.exec(says)?.[1])).toBeCloseTo(reads, 3);
      }),
      LAWS,
    );
  });
});
