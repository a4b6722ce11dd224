import { describe, expect, test } from "vitest";
import { column, number, sum } from "../enrichment/support.ts";
import { down, expectCells, refusal, run } from "./support.ts";

// What a spreadsheet does to what was typed.

const FOUR = down("flour", "water", "salt", "yeast");

describe("X1: 65, 65 % and 0.65, and the yeast at 0.2 — Microsoft KB 215203; Super User 1369654", () => {
  const weights = (...percents: unknown[]) => column("BAKE_WEIGHTS", down(...percents), FOUR, 1000, "flour");
  test("both ways give 650, 20 and 2 g: the flour row decides for the whole column", () => {
    expectCells(weights(1, 0.65, 0.02, 0.002), [1000, 650, 20, 2]);
    expectCells(weights(100, 65, 2, 0.2), [1000, 650, 20, 2]);
  });
  test.each([
    [1, 65, 2, 0.2],
    [100, 0.65, 0.02, 0.002],
  ])("%d beside %d, %d, %d is refused, never 200 g of yeast", (...percents) => {
    expect(refusal("BAKE_WEIGHTS", down(...percents), FOUR, 1000, "flour")).toMatch(/percents row 2/);
  });
  test("a lone 0.65 without a flour row is not decided", () => {
    expect(refusal("BAKE_WEIGHTS", down(0.65), down("water"), 1000, "flour")).toMatch(/flour/);
  });
});

describe('X2: an invisible space in "200 g" — domainwebcenter.com', () => {
  test("no-break and thin spaces are read, in amounts and in names", () => {
    expectCells(number("BAKE_GRAMS", "350\u00a0g"), 350);
    expectCells(number("BAKE_GRAMS", "1\u202f200,5 g"), 1200.5);
    expectCells(number("BAKE_GRAMS", "2 cups", "flour\u00a0"), 250);
    expectCells(column("BAKE_FLOURPCT", down("1\u00a0000", "650\u00a0"), down("flour\u00a0", "water")), [1, 0.65]);
  });
  test("a name never falls back to a default: misspelled it is refused", () => {
    expect(refusal("BAKE_GRAMS", "2 cups", "flouur\u00a0")).toMatch(/does not know; perhaps "flour"/);
  });
});

describe("X3: blank rows, formula blanks and numbers as text — LibreOffice forum thread on a blank formula result", () => {
  const weights = down(1000, "", "", 650, "20");
  const kinds = down("flour", "", "", "water", "salt");
  test("the text counts, so the whole is 1670 and not 1650; the water is 65 %", () => {
    const shares = column("BAKE_FLOURPCT", weights, kinds);
    expectCells(shares, [1, "", "", 0.65, 0.02]);
    expectCells(1000 / (column("BAKE_TRUEPCT", weights)[0] ?? 0), 1670);
    expectCells(sum(column("BAKE_RESCALE", weights, 3340).map(Number)), 3340);
  });
  test('"to taste" and "1e2" are told by row, not taken as 0 or 100', () => {
    const said = refusal("BAKE_FLOURPCT", down(1000, "to taste", "1e2"), down("flour", "salt", "water"));
    expect(said).toMatch(/weights row 2 is "to taste".*weights row 3 is "1e2"/);
  });
  test('a row of "" with a kind of flour is no flour of 0', () => {
    expectCells(run("BAKE_FLOURPCT", down(1000, "", 650), down("flour", "flour", "water")), down(1, "", 0.65));
  });
});

describe("X5: a fraction that became a date, pounds and ounces as 2.14 — Journal of Accountancy, November 2001; Experts Exchange", () => {
  const third = new Date(2026, 1, 3);
  test.each([
    ["BAKE_GRAMS", [down("2 cups flour", third)]],
    ["BAKE_FLOURPCT", [down(1000, third), down("flour", "water")]],
    ["BAKE_WEIGHTS", [down(100, third), down("flour", "water"), 1000]],
    ["BAKE_YEASTSWAP", [third, "fresh", "instant"]],
  ])("%s refuses a date and tells how to type the fraction", (name, args) => {
    expect(refusal(name, ...args)).toMatch(/is a date; if a fraction was typed, enter 0 1\/2 or '1\/2/);
  });
  test("2 lb 14 oz + 2 lb 4 oz is 5 lb 2 oz, 2324.7 g; read as pounds it would be 1896 g", () => {
    const grams = column("BAKE_GRAMS", down("2 lb 14 oz", "2 lb 4 oz"));
    expectCells(sum(grams), 2324.7, 0.05);
    expect(run("BAKE_SPOONS", sum(grams), "flour", "lb oz")).toBe("5 lb 2 oz");
    expectCells(
      column("BAKE_GRAMS", down("2.14 lb", "2.04 lb")).reduce((all, one) => all + one, 0),
      1896,
      0.05,
    );
  });
  test.each([2.14, 2.1])("a bare %d says neither pounds nor ounces and is refused", (typed) => {
    expect(refusal("BAKE_GRAMS", down("1 lb flour", typed))).toMatch(/lines row 2 is "2\.1/);
  });
});

describe("X8: percent and weight both typed — micquality.com, excel_primer ep04; exceltip.com", () => {
  const fill = (percents: unknown[], weights: unknown[], ...rest: unknown[]) =>
    ["BAKE_FILLIN", down(...percents), down(...weights), down("flour", "water"), ...rest] as const;
  test("either gives the other, both within half a percent pass, 50 g apart are refused", () => {
    expectCells(run(...fill(["", 0.65], [1000, ""])), [
      [1, 1000],
      [0.65, 650],
    ]);
    expectCells(run(...fill(["", ""], [1000, 650])), [
      [1, 1000],
      [0.65, 650],
    ]);
    expectCells(run(...fill(["", 0.65], [1000, 650.4])), [
      [1, 1000],
      [0.6504, 650.4],
    ]);
    expect(refusal(...fill(["", 0.65], [1000, 700]))).toMatch(/row 2 .*700 is typed, 50 apart/);
  });
  test("all in percent: an anchor is asked for", () => {
    expect(refusal(...fill([1, 0.65], ["", ""]))).toMatch(/no anchor.*or give an amount of dough or flour/);
    expectCells(run(...fill([1, 0.65], ["", ""], 1000, "flour")), [
      [1, 1000],
      [0.65, 650],
    ]);
  });
});
