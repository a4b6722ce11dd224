import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cells, LAWS } from "../enrichment/support.ts";
import { down, expectCells, refusal } from "../functions/support.ts";

const plan = (yeast: number, hours: number, temp: number, rests: readonly (readonly [number, number])[], unit = "") =>
  cells("BAKE_YEASTPLAN", yeast, hours, temp, down(...rests.map(([h]) => h)), down(...rests.map(([, t]) => t)), unit);

const warm = fc.double({ min: 15, max: 32, noNaN: true });
const hours = fc.double({ min: 0.5, max: 24, noNaN: true });
const change = fc.double({ min: 0.51, max: 2.99, noNaN: true });

describe("a schedule of rests", () => {
  test("an oven maker's dough guide (fornobravo.com): half the rate 17 °F colder; two hours at 58 °F do what one does at 75 °F", () => {
    const [low = 0, middle = 0, high = 0] = plan(
      1,
      2,
      75,
      [
        [1, 75],
        [2, 58],
      ],
      "F",
    );
    expect(low).toBeLessThan(1);
    expect(high).toBeGreaterThan(1);
    expect(low < middle && middle < high).toBe(true);
  });

  test("bakemag.com 836: 1.5 h at 24 °C and 1 h at 27 °C are 2.831 h at 24 °C, so that by the inverse rule the yeast stays", () => {
    const rests = [
      [1.5, 24],
      [1, 27],
    ] as const;
    expectCells(plan(10, 2.831, 24, rests)[0], 10);
    expectCells(plan(10, 2.5, 24, rests)[0], (10 * 2.5) / 2.831);
  });

  test("one rest is BAKE_YEASTTIME, in either unit", () => {
    fc.assert(
      fc.property(change, hours, warm, warm, (times, wanted, now, then) => {
        const time = cells("BAKE_YEASTTIME", 10, wanted * times, wanted, now, then);
        expectCells(plan(10, wanted * times, now, [[wanted, then]]), time, 1e-9 * (time[2] ?? 1));
        const fahrenheit = (one: number) => one * 1.8 + 32;
        fc.pre(now > 15.001 && then > 15.001 && now < 31.999 && then < 31.999);
        expectCells(
          plan(10, wanted * times, fahrenheit(now), [[wanted, fahrenheit(then)]], "F"),
          time,
          1e-6 * (time[2] ?? 1),
        );
      }),
      LAWS,
    );
  });

  test("a rest in two parts is one, the order does not matter, and more of a rest never asks for more yeast", () => {
    fc.assert(
      fc.property(hours, warm, warm, fc.double({ min: 0.1, max: 0.9, noNaN: true }), (length, now, other, part) => {
        const rests = [
          [length * part, now],
          [length * (1 - part), other],
        ] as const;
        const [first, second] = rests;
        const whole = plan(10, length, now, rests);
        const within = 1e-9 * (whole[2] ?? 1);
        expectCells(plan(10, length, now, [second, first]), whole, within);
        expectCells(plan(10, length, now, [[first[0] / 2, now], second, [first[0] / 2, now]]), whole, within);
        const longer = plan(10, length, now, [...rests, [length * 0.5, now]]);
        longer.forEach((one, edge) => {
          expect(one).toBeLessThan(whole[edge] ?? 0);
        });
        expect([...whole].sort((a, b) => a - b)).toEqual(whole);
      }),
      LAWS,
    );
  });

  test("a cold rest counts between nothing, for the high yeast, and as a warm one would, for the low", () => {
    const cold = fc.double({ min: 1, max: 14.9, noNaN: true });
    fc.assert(
      fc.property(hours, fc.double({ min: 20, max: 30, noNaN: true }), cold, (length, now, temp) => {
        const without = plan(10, length, now, [[length, now]]);
        const cool = plan(10, length, now, [
          [length, now],
          [length * 0.4, temp],
        ]);
        expectCells(cool[2], without[2]);
        expect(cool[0]).toBeLessThan(without[0] ?? 0);
        expect(cool[1]).toBeLessThan(without[1] ?? 0);
        expect(cool[0]).toBeLessThanOrEqual(cool[1] ?? 0);
        // Nothing leaps at 15 °C but the doubt.
        const [justCold = 0] = plan(10, length, now, [
          [length, now],
          [length * 0.4, 15 - 1e-6],
        ]);
        expectCells(
          justCold,
          plan(10, length, now, [
            [length, now],
            [length * 0.4, 15],
          ])[0],
          1e-5,
        );
      }),
      LAWS,
    );
  });

  test("blank rows between are passed over, no rest at all is a blank cell", () => {
    const gap = cells("BAKE_YEASTPLAN", 10, 3, 24, down(2, "", 1), down(24, "", 26));
    expectCells(
      gap,
      plan(10, 3, 24, [
        [2, 24],
        [1, 26],
      ]),
    );
    expect(cells("BAKE_YEASTPLAN", 10, 3, 24, "", "")).toEqual([]);
  });

  test.each([
    [[1, 3, 24, down(3), down(0.9)], "temps row 1 is 0.9 °C; below 1 °C dough begins to freeze"],
    [[1, 3, 75, down(3), down(33.7), "F"], "temps row 1 is 33.7 °F; below 33.8 °F dough begins to freeze"],
    [[1, 3, 24, down(3), down(32.1)], "temps row 1 is 32.1 °C, and the rule holds up to 32 °C"],
    [
      [1, 3, 24, down(1, 3), down(24, 75)],
      'temps row 2 is 75 °C, and the rule holds up to 32 °C; find the time of a hotter dough by trial; for °F choose "F"',
    ],
    [[1, 3, 14, down(3), down(24)], "temp_now is 14 °C, and the rule holds from 15 to 32 °C"],
    [[1, 3, 24, down(2, 12), down(24, 4)], "temps hold rests below 10 °C that do more than half of the work"],
    [[1, 3, 24, down(12), down(12)], "hours of 15 °C or more add up to 0, and hours_now is 3"],
    [
      [1, 3, 24, down(0.5, 0.4), down(24, 26)],
      "hours add up to 0.9, and hours_now is 3. The rule holds down to a third",
    ],
    [
      [1, 3, 24, down(4, 2.1), down(24, 26)],
      "hours add up to 6.1, and hours_now is 3. The rule holds up to twice that",
    ],
    [[1, 3, 24, down(4, 8), down(24, 12)], "hours do the work of 7.18 at temp_now, and hours_now is 3"],
    [[1, 3, 24, down("", 1), down(24, 24)], "hours row 1 is blank though the rest has a temperature"],
    [[1, 3, 24, down(0, 0), down(24, 24)], "hours add up to 0; enter how long each rest takes"],
    [[1, 3, "", down(3), down(24)], "temp_now is blank"],
    [["2%", 3, 24, down(3), down("cold")], 'temps row 1 is "cold"'],
  ])("%j is refused", (args, because) => expect(refusal("BAKE_YEASTPLAN", ...args)).toContain(because));

  test("the limits themselves are inside", () => {
    expectCells(
      plan(1, 0.9, 20, [
        [0.1, 20],
        [0.2, 20],
      ])[0],
      3,
    );
    expectCells(
      plan(1, 0.3, 20, [
        [0.2, 20],
        [0.4, 20],
      ])[2],
      0.5,
    );
    expect(
      plan(1, 3, 24, [
        [3, 24],
        [1, 1],
      ]),
    ).toHaveLength(3);
    expect(
      plan(
        1,
        3,
        75.2,
        [
          [3, 89.6],
          [1, 33.8],
        ],
        "F",
      ),
    ).toHaveLength(3);
    // As much work below 10 °C as above it.
    expect(
      plan(1, 3, 24, [
        [1.5, 24],
        [1.5 * 1.08 ** 20, 4],
      ]),
    ).toHaveLength(3);
  });
});
