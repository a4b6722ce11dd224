import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { TIN_DOUGH_KINDS } from "../../shared/tins/tin-guide.ts";
import { cells, column, LAWS, number, sum } from "../enrichment/support.ts";
import { down, expectCells, refusal, run } from "./support.ts";

// Laws that hold whatever the figures: there and back, nothing lost, wider is never less.

const size = fc.double({ min: 0.5, max: 60, noNaN: true });
const part = fc.double({ min: 0.3, max: 1, noNaN: true });

describe("tins", () => {
  const capacity = (shape: string, ...sizes: number[]) => number("BAKE_TINCAPACITY", shape, down(...sizes));
  const area = (shape: string, ...sizes: number[]) => number("BAKE_TINAREA", shape, down(...sizes));

  test("a base as wide as the rim is a straight tin; a taper lies between base and rim, a round one is a cone cut off", () => {
    fc.assert(
      fc.property(size, size, size, part, part, (length, width, depth, a, b) => {
        const straight = length * width * depth;
        expectCells(capacity("box", length, width, depth, length, width), straight, 1e-9 * straight);
        expectCells(capacity("box", length, width, depth), straight, 1e-9 * straight);
        const tapered = capacity("box", length, width, depth, a * length, b * width);
        expect(tapered).toBeLessThanOrEqual(straight * (1 + 1e-12));
        expect(tapered).toBeGreaterThanOrEqual(a * b * straight * (1 - 1e-12));
        expectCells(area("box", length, width) * depth, straight, 1e-9 * straight);
        expectCells(
          capacity("oval", length, width, depth, a * length, b * width),
          (Math.PI / 4) * tapered,
          1e-9 * tapered,
        );
        // A cone to its tip less the cone below the base.
        const [depthOf, rim] = [Math.min(depth, length), length / 2];
        const cone = (radius: number, height: number) => (Math.PI * radius ** 2 * height) / 3;
        const whole = a < 1 ? depthOf / (1 - a) : 0;
        if (a < 0.999)
          expectCells(
            capacity("round", length, depthOf, a * length),
            cone(rim, whole) - cone(a * rim, whole - depthOf),
            1e-6 * straight,
          );
      }),
      LAWS,
    );
  });

  test("twice as large each way is eight times the capacity and four times the area", () => {
    const shapes = fc.constantFrom(
      ["box", 3, 1, 1],
      ["round", 3, 1],
      ["ring", 3, 1, 1],
      ["oval", 3, 2, 1],
      ["dome", 3, 1],
      ["wreath", 3, 1],
    ) as fc.Arbitrary<[string, ...number[]]>;
    fc.assert(
      fc.property(shapes, fc.double({ min: 1, max: 20, noNaN: true }), ([shape, ...unit], scale) => {
        const at = (times: number) => unit.map((one) => one * scale * times);
        const one = capacity(shape, ...at(1));
        expectCells(capacity(shape, ...at(2)), 8 * one, 1e-8 * one);
        expectCells(area(shape, ...at(2)), 4 * area(shape, ...at(1)), 1e-8 * one);
      }),
      LAWS,
    );
  });

  test("a tin matched with its own measure is 1, and the nearest row is the one whose measure differs least", () => {
    const shape = fc.constantFrom(
      ["box", 3, 1, 1],
      ["round", 3, 1],
      ["ring", 3, 1, 1],
      ["oval", 3, 2, 1],
      ["dome", 3],
    ) as fc.Arbitrary<[string, ...number[]]>;
    const tin = fc
      .tuple(shape, fc.double({ min: 1, max: 15, noNaN: true }))
      .map(([[name, ...unit], scale]) => ({ name, sizes: unit.map((one) => one * scale) }));
    const by = fc.constantFrom(["capacity", "BAKE_TINCAPACITY"], ["area", "BAKE_TINAREA"]) as fc.Arbitrary<
      [string, string]
    >;
    fc.assert(
      fc.property(fc.array(tin, { minLength: 1, maxLength: 6 }), fc.nat(), by, (tins, pick, [what, one]) => {
        const measures = tins.map(({ name, sizes }) => number(one, name, [sizes], "in"));
        const at = pick % tins.length;
        const shapes = down(...tins.map(({ name }) => name));
        const table = tins.map(({ sizes }) => [0, 1, 2].map((place) => sizes[place] ?? ""));
        const rows = (wanted: number) => run("BAKE_TINMATCH", wanted, shapes, table, what, "in") as number[][];
        expectCells(rows(measures[at] ?? 1)[at]?.[0], 1, 1e-9);
        const wanted = (measures[at] ?? 1) * 1.2;
        const answer = rows(wanted);
        expectCells(
          answer.map(([ratio]) => ratio),
          measures.map((measure) => measure / wanted),
        );
        const gaps = measures.map((measure) => Math.abs(measure - wanted));
        const nearest = answer[0]?.[1] ?? 0;
        expectCells(gaps[nearest - 1], Math.min(...gaps), 2e-9 * wanted);
        expect(answer.slice(1).every(([, second]) => (second as unknown) === "")).toBe(true);
      }),
      LAWS,
    );
  });

  test("rows of a tin list that cannot be measured are told together; blank rows stay blank", () => {
    const match = (...args: unknown[]) => refusal("BAKE_TINMATCH", ...args);
    const rows = [
      [23, 13, ""],
      ["", "", ""],
      ["wide", 5, ""],
      [7, 23, ""],
    ];
    expect(match(1900, down("box", "", "round", "round"), rows)).toContain('sizes row 3 is "wide"');
    rows[2] = [20, 5, ""];
    expect(match(1900, down("box", "", "round", "round"), rows)).toMatch(
      /sizes row 1 have no depth.*; sizes row 4 have a depth of 23 above the diameter of 7/,
    );
    expect(match(1900, down("box", "", "water"), [[23, 13, 7], [], [1500]], "area")).toContain(
      'shapes row 3 is "water", which gives a capacity but no area',
    );
    expect(match(1900, down("box"), [[1, 2, 3, 4, 5, 6]])).toContain("sizes are 6 columns");
    expect(match(1900, down("box", "box"), [[23, 13, 7]])).toContain("sizes row 2 have no length");
    expect(run("BAKE_TINMATCH", 1900, "", "")).toBe("");
  });

  test("guide, dough and note speak of one fill: low, usual and high of every kind, in every unit", () => {
    const kind = fc.constantFrom(...Object.keys(TIN_DOUGH_KINDS));
    const unit = fc.constantFrom(["g", 1], ["kg", 1000], ["oz", 28.349523125], ["lb", 453.59237]) as fc.Arbitrary<
      [string, number]
    >;
    fc.assert(
      fc.property(
        kind,
        fc.double({ min: 50, max: 1e5, noNaN: true }),
        unit,
        fc.integer({ min: 1, max: 99 }),
        (name, holds, [weight, grams], tins) => {
          const [low = 0, usual = 0, high = 0] = cells("BAKE_TINGUIDE", name);
          expect(low < usual && usual < high).toBe(true);
          const dough = number("BAKE_TINDOUGH", holds, name, 1, weight);
          expectCells(dough * grams, usual * holds, 1e-9 * holds);
          expectCells(number("BAKE_TINDOUGH", holds, usual, tins, weight), tins * dough, 1e-9 * tins * dough);
          const [said, ...three] = cells("BAKE_TINNOTE", dough, holds, name, weight) as unknown as [
            string,
            ...number[],
          ];
          expectCells(
            three,
            [low, usual, high].map((fill) => (fill * holds) / grams),
            1e-9 * holds,
          );
          expect(said).toContain("the usual one for");
        },
      ),
      LAWS,
    );
  });
});

describe("dough, mixes and weights", () => {
  test("scaling weight × what the losses leave is what was promised", () => {
    const loss = (most: number) => fc.double({ min: 0, max: most, noNaN: true });
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), size, loss(0.5), loss(0.3), (pieces, weight, baked, handled) => {
        const dough = number("BAKE_DOUGHFOR", pieces, weight, baked, handled);
        expectCells((dough * (1 - handled) * (1 - baked)) / pieces, weight, 1e-9 * weight);
      }),
      LAWS,
    );
  });

  test("equal mixes make up the dough, fit the mixer, and one fewer would not", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 1e5, noNaN: true }),
        fc.double({ min: 0.5, max: 300, noNaN: true }),
        (dough, limit) => {
          const [mixes = 0, each = 0] = cells("BAKE_MIXES", dough, limit);
          expectCells(mixes * each, dough, 1e-9 * dough);
          expect(each).toBeLessThanOrEqual(limit * (1 + 1e-8));
          if (mixes > 1) expect(dough / (mixes - 1)).toBeGreaterThan(limit);
        },
      ),
      LAWS,
    );
  });

  test("whole pieces and what is left are the dough less its loss, what is left makes no piece, and dough for so many makes them", () => {
    const loss = fc.double({ min: 0, max: 0.3, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1e5, noNaN: true }), size, loss, (dough, weight, lost) => {
        const [pieces = 0, left = 0] = cells("BAKE_PIECES", dough, weight, lost);
        expect(Number.isInteger(pieces)).toBe(true);
        expectCells(pieces * weight + left, dough * (1 - lost), 2e-9 * dough);
        expect(left).toBeGreaterThanOrEqual(0);
        expect(left).toBeLessThan(weight);
        // The very dough that so many pieces need makes them, whatever binary arithmetic takes off.
        const needed = number("BAKE_DOUGHFOR", pieces, weight, 0, lost);
        expectCells(cells("BAKE_PIECES", needed, weight, lost), [pieces, 0], 1e-6 * weight);
      }),
      LAWS,
    );
  });

  test("the same roll-in fat by each of its three shares, in any unit", () => {
    const share = fc.double({ min: 0.05, max: 1, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 1e5, noNaN: true }), share, part, (dough, of, floury) => {
        const fat = number("BAKE_ROLLIN", dough, of);
        expectCells(fat / dough, of, 1e-9);
        const flour = floury * dough;
        if (fat <= flour) expectCells(number("BAKE_ROLLIN", dough, fat / flour, "flour", flour), fat, 1e-9 * dough);
        const finished = fat / (dough + fat);
        expectCells(number("BAKE_ROLLIN", dough, finished, "finished dough"), fat, 1e-9 * dough);
      }),
      LAWS,
    );
  });

  test.each([
    [[0, 0.3], "dough is 0; it must be above 0"],
    [[1000, 28], "share is 28, which is 2800 %"],
    [[1000, 0.7, "finished dough"], "share is 70 % of the finished dough, more fat than dough can hold"],
    [[500, 0.5, "flour", 600], "flour is 600, more than the dough of 500 that it is in"],
    [[500, 0.5, "butter"], 'of is "butter"'],
  ])("roll-in %j is refused", (args, because) => expect(refusal("BAKE_ROLLIN", ...args)).toContain(because));

  test("a factor of the stock uses up the limiting row and nothing beyond the others", () => {
    const amount = fc.double({ min: 0.1, max: 1e4, noNaN: true });
    fc.assert(
      fc.property(fc.array(fc.tuple(amount, amount), { minLength: 2, maxLength: 8 }), (pairs) => {
        const weights = down(...pairs.map(([needed]) => needed));
        const stock = pairs.map(([, there]) => there);
        const [factor = 0, row = 0] = cells("BAKE_STOCKLIMIT", weights, down(...stock));
        const used = column("BAKE_RESCALE", weights, factor, 1);
        used.forEach((one, at) => {
          expect(one).toBeLessThanOrEqual((stock[at] ?? 0) * (1 + 1e-8));
        });
        expectCells(used[row - 1], stock[row - 1], 1e-9 * (stock[row - 1] ?? 0));
      }),
      LAWS,
    );
  });

  test("rounded rows differ from the whole by at most half a step each", () => {
    const weights = fc.array(fc.double({ min: 50, max: 5000, noNaN: true }), { minLength: 2, maxLength: 12 });
    fc.assert(
      fc.property(weights, fc.constantFrom(0.1, 0.5, 1), (rows, step) => {
        const rounded = column("BAKE_SCALEROUND", down(...rows), step);
        expect(Math.abs(sum(rounded) - sum(rows))).toBeLessThanOrEqual((rows.length * step) / 2 + 1e-6);
        for (const one of rounded) expectCells(one / step, Math.round(one / step), 1e-6);
      }),
      LAWS,
    );
  });

  test("what was filled in agrees with both columns, whichever rows were typed", () => {
    const rows = fc.array(fc.tuple(fc.integer({ min: 1, max: 90 }), fc.boolean()), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(rows, fc.integer({ min: 100, max: 100_000 }), (others, flour) => {
        const kinds = down("flour", ...others.map(() => "other"));
        const asPercent = others.map(([percent, typed]) => (typed ? percent / 100 : ""));
        const asWeight = others.map(([percent, typed]) => (typed ? "" : (percent * flour) / 100));
        const filled = run("BAKE_FILLIN", down("", ...asPercent), down(flour, ...asWeight), kinds);
        expectCells(filled, [[1, flour], ...others.map(([percent]) => [percent / 100, (percent * flour) / 100])]);
      }),
      LAWS,
    );
  });
});

test("a row costs its weight × the price of a usable gram, alone or among others, in any unit", () => {
  const money = fc.integer({ min: 0, max: 100_000 }).map((cents) => cents / 100);
  const unit = fc.constantFrom(["g", 1], ["kg", 1000], ["oz", 28.349523125], ["lb", 453.59237]) as fc.Arbitrary<
    [string, number]
  >;
  const row = fc.tuple(money, fc.integer({ min: 1, max: 50_000 }), part, size);
  fc.assert(
    fc.property(fc.array(row, { minLength: 2, maxLength: 6 }), unit, (rows, [name, grams]) => {
      const larder = [
        ["ingredient", "price", "pack", "usable"],
        ...rows.map(([price, pack, usable], at) => [`item ${at}`, price, `${pack} g`, usable]),
      ];
      const names = rows.map((_, at) => `item ${at}`);
      const weights = rows.map(([, , , weight]) => weight);
      const costs = run("BAKE_COSTS", down(...names), down(...weights), larder, name) as [number, string][];
      rows.forEach(([price, pack, usable, weight], at) => {
        const each = number("BAKE_UNITCOST", price, `${pack} g`, usable, "", "", name);
        // A number alone is in the unit of the call.
        const bare = number("BAKE_UNITCOST", price, pack, usable, "", "", name);
        expectCells(bare, price / (pack * usable), 1e-9 * (1 + bare));
        expectCells(each, (price * grams) / (pack * usable), 1e-9 * (1 + each));
        expectCells(costs[at], [weight * each, ""], 1e-9 * (1 + weight * each));
      });
    }),
    LAWS,
  );
});
