import { describe, expect, test } from "vitest";
import { batchCodes } from "../../shared/production/batch-code.ts";
import {
  changeSays,
  clock,
  clockAt,
  clockChanges,
  clockOf,
  clockText,
  dayWords,
  minutesBetween,
  minutesEarlier,
  momentAt,
  weekdayOf,
} from "../../shared/production/clock.ts";
import { batchFrom, batchOf, type Dough } from "../../shared/production/doughs.ts";
import { orderedByDay, ordersFor, piecesMade, type RegularOrder } from "../../shared/production/orders.ts";
import { deliveryFor, purchaseOf } from "../../shared/production/purchases.ts";

// 1 January 2026 is 46023 (days from 30 December 1899); it was a Thursday.
const THURSDAY = 46023;

describe("clock", () => {
  test("days and times are read as a person says them", () => {
    expect(weekdayOf(THURSDAY)).toBe(3);
    expect(dayWords(THURSDAY)).toBe("Thu 1 Jan");
    expect(clockText(clockOf(THURSDAY, 23.75 / 24))).toBe("23:45");
  });

  // The United Kingdom: forward at 01:00 on 29 March 2026, back at 02:00 on 25 October 2026 (from memory).
  const forward = { at: clockOf(46110, 1 / 24), forward: 60 };
  const back = { at: clockOf(46320, 2 / 24), forward: -60 };
  test("minutes that pass are counted on the nights on which clocks are changed", () => {
    // Ready at 07:00, five hours before: 02:00 on a usual night, 01:00 UTC+0 when an hour is skipped.
    expect(clockText(minutesEarlier(clockOf(46109, 7 / 24), 300, [forward]))).toBe("02:00");
    expect(clockText(minutesEarlier(clockOf(46110, 7 / 24), 420, [forward]))).toBe("23:00");
    expect(clockText(minutesEarlier(clockOf(46320, 7 / 24), 420, [back]))).toBe("01:00");
    expect(minutesBetween(clockOf(46109, 22 / 24), clockOf(46110, 6 / 24), [forward])).toBe(420);
    expect(minutesBetween(clockOf(46319, 22 / 24), clockOf(46320, 6 / 24), [back])).toBe(540);
    expect(changeSays(forward)).toContain("forward by 60 min on Sun 29 Mar at 01:00");
  });

  test("a moment and its clock lead to each other", () => {
    const changes = [forward, back];
    for (let at = 46109 * 1440; at < 46321 * 1440; at += 37) {
      const there = clockAt(momentAt(clock(at), changes), changes);
      // A time that the clock skips is shown an hour later.
      const isSkipped = at >= forward.at && at < forward.at + 60;
      expect(there - at).toBe(isSkipped ? 60 : 0);
    }
  });

  test("changes are found from what the wall is ahead of the world's time", () => {
    const offset = (world: number) => (world >= 46110 * 1440 + 60 && world < 46320 * 1440 + 60 ? 60 : 0);
    expect(clockChanges(46100, 46330, offset)).toEqual([forward, back]);
  });
});

describe("orders", () => {
  const loaf = { product: "Pier loaf", size: "large" };
  const regular: RegularOrder[] = [
    { ...loaf, customer: "Café Mole", week: [10, 10, 10, 12, 12, 20, null] },
    { ...loaf, customer: "Harbour inn", week: [null, null, null, 6, 6, 6, 6] },
  ];
  test("regular orders come in; what is typed overrules for its day, customer and product; 0 cancels, blank changes nothing", () => {
    const typed = [
      { ...loaf, size: " LARGE ", day: THURSDAY, customer: "café mole", pieces: 30 },
      { ...loaf, day: THURSDAY + 1, customer: "Harbour inn", pieces: 0 },
      { ...loaf, day: THURSDAY + 2, customer: "Café Mole", pieces: null },
    ];
    const orders = ordersFor([THURSDAY, THURSDAY + 1, THURSDAY + 2], typed, regular);
    // Thu 30 typed + 6; Fri 12 + cancelled; Sat 20 + 6.
    expect(orderedByDay([THURSDAY, THURSDAY + 1, THURSDAY + 2], orders, loaf)).toEqual([36, 12, 26]);
    expect(orders.map(({ isRegular }) => isRegular)).toEqual([false, true, true, true, true]);
  });

  test("what is made: (orders + spares − stock) ÷ multiple, upwards", () => {
    // (47 + 3 − 8) ÷ 12 = 3.5, so four trays; the second day (20 + 3) ÷ 12, two.
    expect(piecesMade([47, 20], { spares: 3, stock: 8, multiple: 12 })).toEqual([48, 24]);
    // 60 in stock: 50 go to the first day, 10 to the second: (23 − 10) ÷ 12 is two trays.
    expect(piecesMade([47, 20], { spares: 3, stock: 60, multiple: 12 })).toEqual([0, 24]);
    expect(piecesMade([0, 5], { spares: 3, stock: 0, multiple: 1 })).toEqual([0, 8]);
    expect(piecesMade([24], { spares: 0, stock: 0, multiple: 12 })).toEqual([24]);
  });
});

describe("doughs and mixes", () => {
  const dough: Dough = {
    name: "Pier loaf",
    rows: [
      { name: "Strong white flour", part: 1000 / 1700, inPreferment: 0.3 },
      { name: "Water", part: 670 / 1700, inPreferment: 300 / 670 },
      { name: "Salt", part: 20 / 1700, inPreferment: 0 },
      { name: "Fresh yeast", part: 10 / 1700, inPreferment: 0.1 },
    ],
    sizes: [
      { size: "large", scaling: 900 },
      { size: "small", scaling: 450 },
    ],
    handlingLoss: 0.02,
    mixerLimit: 40_000,
    scales: [5, 1],
  };

  test("trade case: 95 kg in a mixer of 40 kg are three mixes of 31.667 kg, not 40 + 40 + 15", () => {
    const batch = batchFrom(dough, 95_000);
    expect(batch.mixes).toBe(3);
    expect(batch.each).toBeCloseTo(31_666.667, 3);
  });

  test("trade case: 60 L filled to 0.55 take 38.82 kg, of which 22.70 kg are flour at 171 %", () => {
    // 60 × 0.55 × 1.1765 = 38.82 kg; 38.82 ÷ 1.71 = 22.70
    const limit = 60_000 * 0.55 * 1.1765;
    const one = batchFrom(
      { ...dough, mixerLimit: limit, rows: [{ name: "Flour", part: 1 / 1.71, inPreferment: 0 }] },
      limit,
    );
    expect(one.mixes).toBe(1);
    expect((one.rows[0]?.exact ?? 0) / 1000).toBeCloseTo(22.7, 2);
  });

  test("trade case: 167.47 g are 165 on a scale of 5 g, and 167 on one of 1 g", () => {
    const salt = { ...dough, mixerLimit: null, rows: [{ name: "Salt", part: 1, inPreferment: 0 }] };
    expect(batchFrom({ ...salt, scales: [5] }, 167.47).rows[0]?.perMix).toBe(165);
    expect(batchFrom({ ...salt, scales: [1] }, 167.47).rows[0]?.perMix).toBe(167);
  });

  test("two sizes share the mixes of their dough; preferment and final mix add up to the mix", () => {
    // (60 × 900 + 80 × 450) ÷ 0.98 = 91 836.73 g, three mixes of 30 612.24 g
    const batch = batchOf(dough, [60, 80]);
    expect(batch.dough).toBeCloseTo(91_836.7347, 3);
    expect(batch.mixes).toBe(3);
    const [flour, water, salt, yeast] = batch.rows;
    // 30 612.245 × 1000 ÷ 1700 = 18 007.20; 0.3 of it are 5 402.16
    expect(flour).toMatchObject({ perMix: 18_005, preferment: 5400, finalMix: 12_605 });
    // × 670 ÷ 1700 = 12 064.83; the preferment's water is its flour's weight
    expect(water).toMatchObject({ perMix: 12_065, preferment: 5400, finalMix: 6665 });
    // 360.14 moves by 0.04 % on 5 g
    expect(salt?.perMix).toBe(360);
    // 180.07; a tenth of it, 18.007, would move by 11 % on 5 g, so the fine scale weighs it
    expect(yeast).toMatchObject({ perMix: 180, preferment: 18, finalMix: 162 });
  });

  // From published questions of bakers: P1 sourdough.com topic 942, P2 The Fresh Loaf node 23963.
  test("P1: 300 g wanted of a loaf that bakes 314 g to 267 g: 352.8 g of dough, not 300 × 1.15", () => {
    const scaling = 300 / (267 / 314);
    const batch = batchOf({ ...dough, sizes: [{ size: "", scaling }], handlingLoss: 0, mixerLimit: null }, [1]);
    expect(batch.dough).toBeCloseTo(352.8, 1);
  });

  test("P2: 17 loaves of 500 g that ended 150 g short: 1.76 % of process loss, 8652.7 g to mix", () => {
    const sizes = [{ size: "", scaling: 500 }];
    const batch = batchOf({ ...dough, sizes, handlingLoss: 150 / 8500, mixerLimit: null }, [17]);
    expect(batch.dough).toBeCloseTo(8652.7, 1);
  });

  test("a field bakery of 1916: 144 lb a dough, a dough every 90 min, seven in 16 h are 1008 lb", () => {
    const batch = batchFrom({ ...dough, mixerLimit: 144, rows: [{ name: "Dough", part: 1, inPreferment: 0 }] }, 1008);
    expect(batch.mixes).toBe(7);
    expect(batch.each).toBe(144);
  });
});

describe("to order", () => {
  test("need + minimum − (counted − used + delivered), in packs", () => {
    // 60 − 22 + 25 = 63 there; 118 + 20 − 63 = 75 missing; packs of 25 at 21.50
    const purchase = purchaseOf(118, 20, { counted: 60, used: 22, delivered: 25 }, { holds: 25, price: 21.5 });
    expect(purchase).toEqual({ stock: 63, missing: 75, packs: 3, ordered: 75, cost: 64.5 });
    expect(purchaseOf(10, 0, { counted: 10, used: 0, delivered: 0 }, { holds: 25, price: null }).packs).toBe(0);
    expect(purchaseOf(10, 0, { counted: 5, used: 9, delivered: 0 }, { holds: null, price: 2 })).toMatchObject({
      stock: 0,
      missing: 10,
      packs: null,
      cost: null,
    });
  });

  test("the last delivery before the day, and until when to order it", () => {
    const mill = {
      name: "Tern mill",
      delivers: [true, false, false, true, false, false, false],
      cutOff: { daysBefore: 2, time: 12 / 24 },
    };
    const monday = THURSDAY - 3;
    // Needed on Saturday: Thursday's delivery, ordered by Tuesday noon.
    expect(deliveryFor(mill, THURSDAY + 2, clockOf(monday, 0.5))).toEqual({
      day: THURSDAY,
      orderBy: clockOf(THURSDAY - 2, 0.5),
    });
    expect(deliveryFor(mill, THURSDAY + 2, clockOf(THURSDAY - 2, 0.51))).toBeNull();
    expect(deliveryFor({ ...mill, delivers: Array<boolean>(7).fill(false) }, THURSDAY, clockOf(monday, 0))).toBeNull();
  });
});

test("batch codes lead back to one dough and one day", () => {
  const titles = ["Harbour levain loaf", "Hazel long loaf", "Focaccia", "harbour levain loaf 2"];
  const code = batchCodes([...titles.map((title) => ({ name: title, title })), { name: "Tab 9", title: "Focaccia" }]);
  expect(code("Harbour levain loaf", THURSDAY)).toBe("HLL-260101");
  expect(code("Hazel long loaf", THURSDAY)).toBe("HLL2-260101");
  expect(code("Focaccia", THURSDAY + 31)).toBe("FOC-260201");
  expect(code("harbour levain loaf 2", THURSDAY)).toBe("HLL22-260101");
  // A tab that was renamed keeps the letters of its title, as labels have them.
  expect(code("Tab 9", THURSDAY)).toBe("FOC2-260101");
});
