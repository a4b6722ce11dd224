import { describe, expect, test } from "vitest";
import { number } from "../enrichment/support.ts";
import { expectCells, refusal, run } from "../functions/support.ts";

// Packs as price lists spell them. A pound is 453.59237 g; a large egg 50 g (USDA SR28 01123).

const LB = 453.59237;
const grams = (pack: unknown, ingredient: unknown = "") =>
  1 / number("BAKE_UNITCOST", 1, pack, "", ingredient, "", "g");
const refused = (pack: unknown, ingredient: unknown = "") => refusal("BAKE_UNITCOST", 1, pack, "", ingredient, "", "g");

describe("what one pack weighs", () => {
  test.each<[string, number]>([
    ["12 x 750 g", 9000],
    ["2x3kg", 6000],
    ["2 × 6 x 500 g", 6000],
    ["12 * 6 * 50 g", 3600],
    ["4 x ½ lb", 2 * LB],
    ["10 bags of 25 kg", 250_000],
    ["10 bags 25 kg", 250_000],
    ["10bags 25 kg", 250_000],
    ["250 g x 40", 10_000],
    ["250 g*40", 10_000],
    ["1.5 kg × 12", 18_000],
    ["24/1.5 kg", 36_000],
    ["6/2,5 kg", 15_000],
    ["3/3 kg", 9000],
    ["1/2 lb", LB / 2],
    ["1/3 lb", LB / 3],
    ["1/4 lb", LB / 4],
    ["1/8 lb", LB / 8],
    ["1/16 lb", LB / 16],
    ["2 dozen 60 g", 1440],
    ["2 doz. 60 g", 1440],
    ["2 boxes of 60 g", 120],
    ["2 bags (25 kg each)", 50_000],
    ["2 bags (25 kg)", 50_000],
    ["2bags(25 kg)", 50_000],
    ["10 bags (25 kg)", 250_000],
    ["3 tubs (5 lb)", 15 * LB],
    ["2 bags (25 kg total)", 25_000],
    ["2 bags (25 kg in all)", 25_000],
    ["1 bag (25 kg)", 25_000],
    ["6 x 500 g (3 kg)", 3000],
    ["2 x 5 lb 4 oz", 2 * 5.25 * LB],
    ["  25000 ", 25_000],
    ["1 250,5", 1250.5],
    ["+5", 5],
  ])("%s: %d g", (pack, weight) => expectCells(grams(pack), weight, 1e-6 * weight));
  test.each<[string, string, number]>([
    ["tray of 30", "egg", 1500],
    ["30 eggs", "egg", 1500],
    ["2 dozen", "eggs", 1200],
    ["15 dozen eggs", "", 9000],
  ])("%s %s: %d g", (pack, ingredient, weight) => expectCells(grams(pack, ingredient), weight, 1e-6 * weight));
  test("US and UK pints by their own size, however the country is spelled: 473.176473 ml and 568.26125 ml", () => {
    const us = grams("1 US pint", "water");
    for (const pack of ["1 U.S. pint", "1 u.s pint", "1 American pint"]) expectCells(grams(pack, "water"), us, 1e-9);
    for (const pack of ["1 UK pint", "1 U.K. pint", "1 imperial pint", "1 British pint"])
      expectCells(grams(pack, "water") / us, 568.26125 / 473.176473, 1e-6);
  });
});

describe("what is no pack", () => {
  test.each([
    ["5 to 6 kg", "a range; enter one size"],
    ["2 or 3 kg", "a range; enter one size"],
    ["12 / 500 g", 'one pack, or several? Enter "2 x 3 kg" for two of 3 kg'],
    ["1/5 lb", 'one pack, or several? Enter "2 x 3 kg" for two of 3 kg'],
    ["30 eggs and 2 cases", 'how much is "eggs and cases"? Enter "24 x 500 g" or "30 pieces"'],
  ])("%s", (pack, says) => expect(refused(pack, "flour")).toBe(`BAKE_UNITCOST: pack is "${pack}": ${says}.`));
  test.each(["16 floz", "16 fl oz", "16 fl. oz", "2 pts", "1 quart", "1 qt", "3 gallons", "1 gal", "2 gills"])(
    "%s of either country",
    (pack) => expect(refused(pack, "water")).toMatch(/: say "US" or "UK" before /),
  );
  test("less than nothing, and what belongs to nobody", () => {
    expect(refused("-5")).toBe("BAKE_UNITCOST: pack is -5; it must be above 0.");
    expect(refused(25_000, "nonsuch")).toMatch(/^BAKE_UNITCOST: pack belongs to an ingredient that .*nonsuch/);
  });
  test("a bare number of what is counted, by any of its sizes", () => {
    const larder = [
      ["ingredient", "measures"],
      ["rusk", "piece 12"],
      ["roll", "small 40"],
      ["crumb", "cup 110"],
    ];
    const cost = (name: string) => [1, 30, "", name, larder, "g"];
    for (const name of ["rusk", "roll"])
      expect(refusal("BAKE_UNITCOST", ...cost(name))).toMatch(/^BAKE_UNITCOST: pack is 30, g or pieces\?/);
    expectCells(run("BAKE_UNITCOST", ...cost("crumb")), 1 / 30);
  });
  test("a bare number is asked about, and every way to write it that is offered is read", () => {
    const said = refusal("BAKE_UNITCOST", 1, 12, "", "egg");
    const offered = [...said.matchAll(/"(12 [^"]+)"/g)].map(
      ([, pack]) => run("BAKE_UNITCOST", 1, pack, "", "egg") as number,
    );
    const grams = [12_000, 12, 12 * LB, 600];
    expectCells([offered], [grams.map((one) => 1 / one)], 1e-9);
  });
  test.each([
    ["kg", 1000],
    ["g", 1],
    ["lb", LB],
    ["oz", LB / 16],
  ])("a bare number beside the unit %s is in it", (unit, size) => {
    expectCells(run("BAKE_UNITCOST", 18, 25, "", "", "", unit), 18 / 25);
    expectCells(
      run("BAKE_UNITCOST", 18, 25, "", "flour", "", unit),
      run("BAKE_UNITCOST", 18, `${25 * size} g`, "", "", "", unit),
    );
  });
  test.each([
    // Large eggs shelled: SR28 01123, grade weights of Regulation (EC) 589/2008 and the AU guide, less 12 % shell.
    ["US", 50],
    ["UK", 60],
    ["EU", 60],
    ["AU", 48],
  ])("eggs by the country: %s", (cups, egg) => {
    expectCells(run("BAKE_UNITCOST", 6, "30 eggs", "", "egg", "", "", cups), 6 / (30 * egg));
    const larder = [
      ["ingredient", "price", "pack"],
      ["egg", 6, "30 eggs"],
    ];
    expectCells(run("BAKE_COSTS", [["egg"]], [[30 * egg]], larder, "", cups), [[6, ""]]);
    // The recipe's eggs weigh as those that were bought.
    expectCells(run("BAKE_GRAMS", "3 large eggs", "", cups), 3 * egg);
  });
  test("the shop's own piece is its large egg", () => {
    const larder = [
      ["ingredient", "measures"],
      ["egg", "piece 55"],
    ];
    expectCells(run("BAKE_GRAMS", [["2 large eggs"], ["2 eggs"]], "", "US", larder), [[110], [110]]);
  });
});
