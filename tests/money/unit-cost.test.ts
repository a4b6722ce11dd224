import fc from "fast-check";
import { describe, expect, test, vi } from "vitest";
import { down, expectCells, refusal, run } from "../functions/support.ts";

const LB = 453.59237;

describe("BAKE_UNITCOST", () => {
  test("50 kg of potatoes that trim to 42.5 kg cost what 42.5 kg would (a course note on yields: 85 %)", () => {
    expectCells(run("BAKE_UNITCOST", 30, "50 kg", 0.85, "", "", "kg"), 30 / 42.5);
  });
  test("3.6 kg ready at 90 % cost what 4.0 kg bought cost (the same course note)", () => {
    const each = run("BAKE_UNITCOST", 8, "4 kg", "90%", "", "", "kg") as number;
    expectCells(each * 3.6, 8);
  });
  test("$1.86 a pound at 75 % is $2.48 a usable pound, $93.00 both ways for 50 lb (slideplayer 7840814)", () => {
    const each = run("BAKE_UNITCOST", 50 * 1.86, "50 lb", 0.75, "", "", "lb") as number;
    expectCells(each, 2.48);
    expectCells(each * 37.5, 93);
  });
  test("carrots that trim from 1 kg to 800 g cost a quarter more (BCcampus, Basic Kitchen and Food Service Management)", () => {
    expectCells(run("BAKE_UNITCOST", down(1, 1), 1000, down("", 0.8), "", "", "g"), down(0.001, 0.00125));
  });
  test("a $60 case of 20 lb costs 3.00 a pound as bought, 6.00 at a yield of 50 % (slidegur)", () => {
    expectCells(run("BAKE_UNITCOST", 60, "20 lb", down("", "50%"), "", "", "lb"), down(3, 6));
  });
  test("is never below the price as bought", () => {
    const anyShare = fc.double({ min: 1e-3, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1e6, noNaN: true }),
        fc.integer({ min: 1, max: 1e6 }),
        anyShare,
        (price, pack, usable) => {
          expect(run("BAKE_UNITCOST", price, `${pack} g`, usable)).toBeGreaterThanOrEqual(
            (run("BAKE_UNITCOST", price, `${pack} g`) as number) * (1 - 1e-12),
          );
        },
      ),
    );
  });

  // Pounds and ounces NIST SP 811; volumes × SR28 densities: whole milk 244 g per US cup, vanilla extract 208.
  const CUP = 236.5882365;
  test.each<[unknown, string, number]>([
    ["5 lb", "", 5 * LB],
    ["6/5 lb", "", 30 * LB],
    ["24/8 oz", "", 12 * LB],
    ["1/2 lb", "", LB / 2],
    ["1 lb 4 oz x 6", "", 7.5 * LB],
    ["2 x 5 lb 4 oz", "", 10.5 * LB],
    ["2 x 6 x 500 g", "", 6000],
    ["2 x 12 pieces", "egg", 1200],
    ["6 x 500g (3kg)", "", 3000],
    ["10kg (22 lb)", "", 10_000],
    ["250 g x 40", "", 10_000],
    ["40×250 g", "", 10_000],
    ["6 packs of 500 g", "", 3000],
    ["12 tins 400 g", "", 4800],
    ["case of 12 x 500 g", "", 6000],
    ["25 kg bag", "", 25_000],
    ["12,5 kg", "", 12_500],
    ["12.5 kg", "", 12_500],
    ["1.250 kg", "", 1250],
    ["2500", "", 2500],
    [2500, "", 2500],
    ["12 x 750 ml", "vanilla", (9000 * 208) / CUP],
    ["1 l", "water", 1000],
    ["1 US gallon", "milk", 16 * 244],
    ["1 gal US", "milk", 16 * 244],
    ["4 UK pints", "milk", 4 * 568.26125 * (244 / CUP)],
    ["1 dozen", "egg", 600],
    ["15 dozen", "eggs", 9000],
    ["tray of 30", "egg", 1500],
    ["30 eggs", "egg", 1500],
    ["2 dozen 60 g eggs", "egg", 1440],
    ["1 stick", "butter", 113.4],
    ["2 sachets", "instant yeast", 14],
  ])("reads a pack of %s %s as %d g", (pack, ingredient, weight) => {
    expectCells(run("BAKE_UNITCOST", 1, pack, "", ingredient, "", "g"), 1 / weight, 1e-6 / weight);
  });
  test("a text too long for a pack is refused, with its row, after a glance at it", () => {
    expect(refusal("BAKE_UNITCOST", down(4, 9), down("5 lb", "a".repeat(50_000)))).toBe(
      'BAKE_UNITCOST: pack row 2 has 50000 characters: enter only the pack, such as "12 x 750 ml".',
    );
    // A glance: of each text the boundary asks with two patterns whether it is blank, or an error or still loading; the reader of
    // packs, which would try tens of thousands on 50 000 characters, asks none.
    const lengths: number[] = [];
    const exec = RegExp.prototype.exec;
    const watched = vi.spyOn(RegExp.prototype, "exec").mockImplementation(function (this: RegExp, text) {
      lengths.push(text.length);
      return exec.call(this, text);
    });
    try {
      for (const text of ["1 ".repeat(25_000), "9".repeat(201)]) refusal("BAKE_UNITCOST", 1, text);
    } finally {
      watched.mockRestore();
    }
    expect(lengths.filter((length) => length > 200).length, "patterns tried on a long text").toBe(2 * 2);
    expectCells(run("BAKE_UNITCOST", 1, `5 kg${" (of the mill)".padEnd(196)}`), 1 / 5000);
    expect(refusal("BAKE_UNITCOST", 1, "a".repeat(200))).toMatch(/no size/);
  });
  test("a shop's own measure weighs its pieces", () => {
    const larder = [
      ["Ingredient", "Measures"],
      ["duck egg", "piece 70"],
    ];
    expectCells(
      run("BAKE_UNITCOST", down(3, 6), down("6 pieces", "1 dozen"), "", "duck eggs", larder),
      down(3 / 420, 6 / 840),
    );
  });

  test.each<[unknown, unknown, string]>([
    ["4 pints", "milk", 'pack is "4 pints": say "US" or "UK" before pint.'],
    ["16 fl oz", "vanilla", 'pack is "16 fl oz": say "US" or "UK" before fl oz.'],
    ["2/3 kg", "", 'pack is "2/3 kg": one pack, or several? Enter "2 x 3 kg" for two of 3 kg.'],
    ["1/50 lb", "", 'pack is "1/50 lb": one pack, or several? Enter "2 x 3 kg" for two of 3 kg.'],
    ["5-6 lb", "", 'pack is "5-6 lb": a range; enter one size.'],
    ["-5 lb", "", 'pack is "-5 lb": no size; enter one such as "5 lb".'],
    ["0 g", "", 'pack is "0 g": a pack weighs more than 0 g.'],
    ["1 case", "egg", 'pack is "1 case": how much is "case"? Enter "24 x 500 g" or "30 pieces".'],
    ["10 kg (30 lb)", "", 'pack is "10 kg (30 lb)": 10000 g is taken, 13607.8 g stands beside it, 36 % apart.'],
    [30, "eggs", 'pack is 30 of what? Enter "30 kg", "30 g", "30 lb" or "30 each".'],
    [0, "", "pack is 0; it must be above 0."],
    [
      new Date(0),
      "",
      "pack is a date; if a fraction was typed, enter 0 1/2 or '1/2 and set the cell's format back to number.",
    ],
    ["#N/A", "", "pack holds the error #N/A; correct that cell first."],
  ])("refuses a pack of %s %s", (pack, ingredient, says) => {
    expect(refusal("BAKE_UNITCOST", 1, pack, "", ingredient)).toBe(`BAKE_UNITCOST: ${says}`);
  });
  test("refuses a volume or a count without its ingredient, and a usable share of 0 or above 100 %", () => {
    expect(refusal("BAKE_UNITCOST", 1, "12 x 750 ml")).toContain("an amount without an ingredient; name it");
    expect(refusal("BAKE_UNITCOST", 1, "1 dozen")).toContain("an amount without an ingredient; name it");
    expect(refusal("BAKE_UNITCOST", 1, 100, 0)).toBe("BAKE_UNITCOST: usable is 0; it must be above 0.");
    expect(refusal("BAKE_UNITCOST", 1, 100, 85)).toBe(
      "BAKE_UNITCOST: usable is 85, which is 8500 %; enter 85% or 0.85.",
    );
  });
  test("a row without a price stays blank, a half-filled one is refused, and a table serves all rows", () => {
    const larder = [
      ["ingredient", "measures"],
      ["house flour", "cup 130"],
    ];
    const cups = down("1 cup", "1 cup", "2 cups");
    expectCells(run("BAKE_UNITCOST", down(1, "", 2), cups, "", "house flour", larder), down(1 / 130, "", 1 / 130));
    expect(refusal("BAKE_UNITCOST", down(1, 2), down("5 lb", ""))).toBe(
      "BAKE_UNITCOST: pack row 2 is blank; it is needed.",
    );
  });
});
