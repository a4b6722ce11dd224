import { describe, expect, test } from "vitest";
import { percent } from "../../shared/formula/percents.ts";
import { column } from "../enrichment/support.ts";
import { down, expectCells, refusal, run } from "../functions/support.ts";

// How a column of percentages is read: what its flour rows say of the others, and what no row can be.

const flour = (kinds: readonly string[], ...percents: unknown[]) =>
  column("BAKE_WEIGHTS", down(...percents), down("flour", ...kinds), 1000, "flour");
const refused = (kinds: readonly string[], ...percents: unknown[]) =>
  refusal("BAKE_WEIGHTS", down(...percents), down("flour", ...kinds), 1000, "flour");

describe("a percent cell", () => {
  test.each([
    ["abc", 'percents row 2 is "abc", which is not a number; enter a percentage such as 65%.'],
    [-1, "percents row 2 is -1; it cannot be below 0."],
  ])("%j is refused", (typed, says) => expect(refused(["water"], 100, typed)).toBe(`BAKE_WEIGHTS: ${says}`));
  test("has three decimals, with its sign and without", () => {
    expectCells(flour(["water", "water"], 100, "62,125", "62,125%"), [1000, 621.25, 621.25]);
    expectCells(flour(["water", "water"], 1, "62,125%", "0,125"), [1000, 621.25, 125]);
    expect(percent().hint).toEqual({ of: "percent" });
  });
  test("says whether it carries its own sign", () => {
    expect(["62,125", "62,125%", 62.125].map(percent().read)).toEqual([
      { value: 62.125, marked: false },
      { value: 0.62125, marked: true },
      { value: 62.125, marked: false },
    ]);
  });
  test("a blank one stays blank", () => expect(flour(["water", "salt"], 100, "", 2)).toEqual([1000, "", 20]));
});

describe("the flours' sum", () => {
  test.each([99.5, 100.5])("%d is within half a point: the whole column is divided by it", (sum) => {
    expectCells(flour(["water"], sum, 60), [1000, (60 / sum) * 1000]);
    expectCells(flour(["water"], sum / 100, 0.6), [1000, (60 / sum) * 1000]);
    expectCells(flour(["water"], `${sum}%`, "60%"), [1000, (60 / sum) * 1000]);
  });
  test("three thirds, the amount being flour", () => {
    const kinds = ["flour", "flour", "water"];
    expectCells(flour(kinds, 33.3, 33.3, 33.3, 66.6), [1000 / 3, 1000 / 3, 1000 / 3, 2000 / 3]);
  });
  test.each([
    [99.4, 60, "99.4"],
    [100.6, 60, "100.6"],
    ["95%", "60%", "95"],
    [200, 130, "200"],
  ])("%s is not", (sum, water, told) => {
    expect(refused(["water"], sum, water)).toBe(
      `BAKE_WEIGHTS: percents have flour rows that add up to ${told}; all flours together make 100 (or 100%).`,
    );
  });
  test("beyond 200 weights may be meant", () => {
    expect(refused(["water"], 201, 130)).toMatch(/add up to 201; .*; if these are weights, BAKE_FLOURPCT makes shares/);
  });
});

describe("flour inside starters", () => {
  const kinds = ["levain 100%", "water"];
  test("where both frames fit the nearer sum counts", () => {
    // 99.7 without the levain's 0.4, 100.1 with it: all flour. 99.9 and 100.3: added flour.
    expectCells(flour(kinds, 99.7, 0.8, 60), [(99.7 / 100.1) * 1000, (0.8 / 100.1) * 1000, (60 / 100.1) * 1000]);
    expectCells(flour(kinds, 99.9, 0.8, 60), [1000, (0.8 / 99.9) * 1000, (60 / 99.9) * 1000]);
  });
  test("added flour on a tie", () => {
    // A 256th below without the levain's 128th, a 256th above with it.
    const sum = 1 - 1 / 256;
    expectCells(flour(kinds, sum, 1 / 64, 0.6), [1000, 1000 / 64 / sum, 600 / sum]);
  });
  test("an amount of flour is the flour that the percents refer to", () => {
    const rows = down("flour", ...kinds);
    // Added flour: 900 typed as 100 %. To 1800 everything is doubled; the levain's own 200 of flour come on top.
    expectCells(run("BAKE_FILLIN", down(100, "", 60), down(900, 200, ""), rows, 1800, "flour"), [
      [0.9, 1800],
      [0.2, 400],
      [0.54, 1080],
    ]);
    // All flour: 90 and half of 20 make 100.
    expectCells(run("BAKE_FILLIN", down(90, 20, 60), down(900, "", ""), rows, 2000, "flour"), [
      [0.9, 1800],
      [0.2, 400],
      [0.6, 1200],
    ]);
  });
});

describe("a row that was typed the other way", () => {
  test.each([
    ["salt", 0.25],
    ["yeast", 0.15],
    ["water", 3],
    ["fat", 3],
    ["sugar", 5],
    ["egg", 5],
    ["dairy", 5],
    ["grain", 40],
    ["other", 40],
  ])("beside flour of 1 %s may be %d and no more", (kind, most) => {
    expectCells(flour([kind], 1, most), [1000, most * 1000]);
    const more = most + 0.01;
    expect(refused([kind], 1, more)).toBe(
      `BAKE_WEIGHTS: percents row 2 is ${more}, which beside flour of 1 (100%) is ${Math.round(more * 100)} %; enter ${more}% (${Math.round(more * 100) / 10_000}). Or type every row plain, the flour as 100.`,
    );
  });
  test("beside flour of 100 salt below 0.1 is refused, nothing or a tenth is not", () => {
    expect(refused(["water", "salt"], 100, 65, 0.02)).toBe(
      "BAKE_WEIGHTS: percents row 3 is 0.02, which beside flour of 100 is 0.02 %; enter 2, or 0.02% if that is meant. Or type every row as a share, the flour as 100% (1).",
    );
    expect(refused(["water", "salt"], 100, 65, 0.099)).toMatch(/row 3 is 0\.099/);
    expectCells(flour(["water", "salt"], 100, 65, 0.1), [1000, 650, 1]);
    expectCells(flour(["water", "salt"], 100, 65, 0), [1000, 650, 0]);
    // What is of no other kind, malt or an improver, may be as little as that.
    expectCells(flour(["water", "other"], 100, 65, 0.05), [1000, 650, 0.5]);
    expect(refused(["water", "sugar"], 100, 65, 0.05)).toMatch(/row 3 is 0\.05.*enter 5, or 0\.05%/);
    expectCells(flour(["water", "sugar"], 100, 65, "0.05%"), [1000, 650, 0.5]);
  });
  test("beside flour of 100 not all the others are below 1, unless yeast is all there is", () => {
    expect(refused(["water", "fat", "salt"], 100, 0.65, 0, 0.2)).toBe(
      "BAKE_WEIGHTS: percents row 2 is 0.65, which beside flour of 100 is 0.65 %; enter 65, or 0.65% if that is meant. Or type every row as a share, the flour as 100% (1); percents row 4 is 0.2, which beside flour of 100 is 0.2 %; enter 20, or 0.2% if that is meant. Or type every row as a share, the flour as 100% (1).",
    );
    expectCells(flour(["fat", "yeast"], 100, 0, 0.5), [1000, 0, 5]);
    expect(refused(["fat", "yeast"], 100, 0.5, 0.5)).toMatch(/row 2 is 0\.5.*row 3 is 0\.5/);
    expectCells(flour(["yeast"], 100, 0.5), [1000, 5]);
    expectCells(flour(["fat"], 100, 1), [1000, 10]);
    expectCells(run("BAKE_WEIGHTS", 100, "flour", 1000, "flour"), 1000);
  });
});
