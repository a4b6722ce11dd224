import { describe, expect, test } from "vitest";
import { fault, isFault, Refusal, refuse, refuseAll, refuseUnread } from "../../shared/base/refusal.ts";
import { oneOf, quote, rowsNamed, showNumber, shownShare, shownWeight } from "../../shared/base/show.ts";
import * as units from "../../shared/base/units.ts";
import type { Reader } from "../../shared/cells/cell.ts";
import * as readers from "../../shared/cells/readers.ts";

// How numbers, texts and faults stand in a sentence, the bounds that arguments share, and units. All worked out by hand.

describe("a number in a sentence", () => {
  test.each<[number, number | undefined, string]>([
    [0, undefined, "0"],
    [-0, undefined, "0"],
    [12.345, undefined, "12.35"],
    [-12.345, undefined, "-12.35"],
    [1.005, undefined, "1.01"],
    [100, undefined, "100"],
    [100, 0, "100"],
    [2.5, 0, "3"],
    [1.2, 4, "1.2"],
    [0.005, undefined, "0.01"],
    [0.0041, undefined, "0.004"],
    [-0.0041, undefined, "-0.004"],
    [0.00012345, undefined, "0.0001"],
    [123456789012345, undefined, "123456789012345"],
    [1.23456789e15, undefined, "1235000000000000"],
  ])("%d with %j digits is %s", (value, digits, says) => expect(showNumber(value, digits)).toBe(says));
  test("shares in percent", () => {
    expect([0.655, 1 / 3, 1].map((one) => shownShare(one))).toEqual(["65.5 %", "33.33 %", "100 %"]);
    expect(shownShare(1 / 3, 0)).toBe("33 %");
  });
  test("weights below 10 and below 1 have a third and a fourth place", () => {
    expect([0.123456, 1.23456, 12.3456, -0.123456].map((one) => shownWeight(one))).toEqual([
      "0.1235",
      "1.235",
      "12.35",
      "-0.1235",
    ]);
  });
  test("a limit is rounded to the side on which it holds, but not for the dust of binary arithmetic", () => {
    expect([shownWeight(12.349, "at most"), shownWeight(12.341, "at least")]).toEqual(["12.34", "12.35"]);
    expect([shownWeight(1.1 * 3, "at least"), shownWeight(0.1 * 3, "at least")]).toEqual(["3.3", "0.3"]);
    expect(shownWeight(100 * 1.1 * 1.1 - 1e-12, "at most")).toBe("121");
  });
});

describe("words in a sentence", () => {
  test("a text from a cell is cut after 40 signs", () => {
    expect(quote("  a \n\t b ")).toBe('"a b"');
    expect(quote("x".repeat(40))).toBe(`"${"x".repeat(40)}"`);
    expect(quote("x".repeat(41))).toBe(`"${"x".repeat(37)}…"`);
  });
  test("one of several", () => {
    expect([[], ["a"], ["a", "b"], ["a", "b", "c"]].map(oneOf)).toEqual(["", '"a"', '"a" or "b"', '"a", "b" or "c"']);
  });
  test("rows, ten of them at most", () => {
    const upTo = (last: number) => Array.from({ length: last }, (_, at) => at + 1);
    expect([[2], [2, 5], [2, 5, 7]].map(rowsNamed)).toEqual(["row 2", "rows 2 and 5", "rows 2, 5 and 7"]);
    expect(rowsNamed(upTo(10))).toBe("rows 1, 2, 3, 4, 5, 6, 7, 8, 9 and 10");
    expect(rowsNamed(upTo(13))).toBe("rows 1, 2, 3, 4, 5, 6, 7, 8, 9, 10 and 3 more");
  });
});

describe("a refusal", () => {
  const message = (refused: () => void) => {
    try {
      refused();
    } catch (error) {
      if (error instanceof Refusal) return error.message;
    }
    return "not refused";
  };
  test("says what, and where", () => {
    expect(message(() => refuse("Nothing is there"))).toBe("Nothing is there.");
    expect(message(() => refuse("Is it there?"))).toBe("Is it there?");
    expect(message(() => refuse("is blank", "weights"))).toBe("weights is blank.");
    expect(message(() => refuse("is blank", "weights", 3))).toBe("weights row 3 is blank.");
    expect(message(() => refuse("nothing is there", undefined, 3))).toBe("row 3: nothing is there.");
    expect(message(() => refuseUnread("A question"))).toBe(
      "A question could not be read. Close Gramwright and open it again.",
    );
    expect(new Refusal([fault("is blank", "weights")], "BAKE_SOME").message).toBe("BAKE_SOME: weights is blank.");
    expect(message(() => refuseAll([]))).toBe("not refused");
  });
  test("a fault has what it was given and nothing else", () => {
    expect(fault("a")).toStrictEqual({ says: "a" });
    expect(fault("a", "b", 1)).toStrictEqual({ says: "a", argument: "b", row: 1 });
  });
  test("three are told in full, of twenty more the rows", () => {
    const rows = (count: number) =>
      message(() => refuseAll(Array.from({ length: count }, (_, at) => fault("is blank", "weights", at + 1))));
    const three = "weights row 1 is blank; weights row 2 is blank; weights row 3 is blank";
    const rest = Array.from({ length: 20 }, (_, at) => `row ${at + 4}`).join(", ");
    expect(rows(3)).toBe(`${three}.`);
    expect(rows(5)).toBe(`${three}; and 2 more of the kind (row 4, row 5).`);
    expect(rows(23)).toBe(`${three}; and 20 more of the kind (${rest}).`);
    expect(rows(25)).toBe(`${three}; and 22 more of the kind (${rest}, and 2 others).`);
    const odd = [fault("a"), fault("b"), fault("c"), fault("is blank", "weights"), fault("d")];
    expect(message(() => refuseAll(odd))).toBe("a; b; c; and 2 more of the kind (weights, ).");
  });
});

describe("readers that arguments share", () => {
  const MAX_NUMBER = 1e9;
  test.each<[string, () => Reader<number>, number, number, number]>([
    ["a weight such as 350", readers.someWeight, 0, MAX_NUMBER, -1],
    ["a weight such as 350", readers.weightAboveZero, 0.001, MAX_NUMBER, 0],
    ["a number of pieces such as 48", readers.count, 0, MAX_NUMBER, -1],
    ["a price such as 4.90", readers.priceCell, 0, MAX_NUMBER, -1],
    ["a hydration such as 65% (0.65)", readers.hydration, 0, 5, -0.01],
    ["a temperature such as 24", readers.degrees, -40, 250, -41],
    ["a temperature such as 24", readers.workedOutDegrees, -200, 500, -201],
    ["a friction factor such as 14", readers.factor, -150, 150, -151],
    ["minutes such as 8", readers.minutesOf, 0, 120, -1],
    ["a capacity in cm³ such as 1900", readers.capacityCell, 0.001, MAX_NUMBER, 0],
  ])("%s", (what, reader, least, most, below) => {
    const { read } = reader();
    expect([least, most].map(read)).toEqual([least, most]);
    expect([below, most * 1.01].map((one) => isFault(read(one)))).toEqual([true, true]);
    expect(read("x")).toEqual({ says: `is "x", which is not a number; enter ${what}` });
  });
  test("shares are read with their sign; the example is one that fits", () => {
    const tried = (reader: Reader<number>) => [0.04, "4%", 0, 0.06].map((one) => isFault(reader.read(one)));
    expect(tried(readers.share(0.05))).toEqual([false, false, false, true]);
    expect(tried(readers.share(0.05, 0.01))).toEqual([false, false, true, true]);
    expect(tried(readers.shareAboveZero(0.05))).toEqual([false, false, true, true]);
    const write = (reader: Reader<number>) => reader.read("x");
    expect(write(readers.share(0.05))).toEqual({
      says: 'is "x", which is not a number; enter a share such as 5% (0.05)',
    });
    expect(write(readers.share(0.04))).toEqual({
      says: 'is "x", which is not a number; enter a share such as 1% (0.01)',
    });
    expect(write(readers.shareAboveZero(1))).toEqual({
      says: 'is "x", which is not a number; enter a share such as 85% (0.85)',
    });
    expect(readers.hydration().read("65%")).toBe(0.65);
  });
  test("a count in thousands is not read as one with decimals", () => {
    expect(readers.count().read("1,250")).toEqual({
      says: 'is "1,250", which could be 1250 or 1.25; enter the one you mean',
    });
    expect(readers.count().read("1,25")).toBe(1.25);
    expect(readers.count("loaves such as 4").read("x")).toEqual({
      says: 'is "x", which is not a number; enter loaves such as 4',
    });
  });
});

test("units: the pound of 453.59237 g, the inch of 2.54 cm, 32 °F and 9/5 (NIST SP 811)", () => {
  const { grams, centimetres, celsius, celsiusDegrees } = units;
  expect((["g", "kg", "oz", "lb"] as const).map((unit) => units.toGrams(2, unit))).toEqual([
    2, 2000, 56.69904625, 907.18474,
  ]);
  expect((["kg", "lb"] as const).map((unit) => units.fromGrams(grams(907.18474), unit))).toEqual([0.90718474, 2]);
  expect((["kg", "lb"] as const).map(units.gramsIn)).toEqual([1000, 453.59237]);
  expect((["cm", "mm", "in"] as const).map((unit) => units.toCentimetres(2, unit))).toEqual([2, 0.2, 5.08]);
  expect((["cm", "mm", "in"] as const).map((unit) => units.fromCentimetres(centimetres(5.08), unit))).toEqual([
    5.08, 50.8, 2,
  ]);
  expect([units.toCelsius(212, "F"), units.toCelsius(24, "C"), units.fromCelsius(celsius(-40), "F")]).toEqual([
    100, 24, -40,
  ]);
  expect((["F", "C"] as const).map((unit) => units.toCelsiusDegrees(9, unit))).toEqual([5, 9]);
  expect((["F", "C"] as const).map((unit) => units.fromCelsiusDegrees(celsiusDegrees(5), unit))).toEqual([9, 5]);
  expect([units.minutes(5), units.hours(6), units.ratio(0.5), units.anyDegrees(7)]).toEqual([5, 6, 0.5, 7]);
  expect([units.squareCentimetres(8), units.cubicCentimetres(9)]).toEqual([8, 9]);
});
