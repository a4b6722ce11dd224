import { describe, expect, test } from "vitest";
import { type NumberStyle, readNumber } from "../../shared/base/number.ts";
import { isFault } from "../../shared/base/refusal.ts";
import { number } from "../../shared/cells/cell.ts";

// Numbers that were typed as text: read when they can mean one thing only.

const read = (text: string, style?: NumberStyle) => {
  const one = readNumber(text, style);
  return "says" in one ? one.says : one.value;
};

describe("what a person types for a number", () => {
  test.each([
    ["12", 12],
    ["350", 350],
    ["12.5", 12.5],
    ["97,4", 97.4],
    ["0.125", 0.125],
    ["0,125", 0.125],
    [".125", 0.125],
    [".5", 0.5],
    ["1234,567", 1234.567],
    ["1,2345", 1.2345],
    ["1 250", 1250],
    ["12 345 678", 12_345_678],
    ["1 250,55", 1250.55],
    ["1 250.55", 1250.55],
    ["1.250,50", 1250.5],
    ["1.250.000", 1_250_000],
    ["12.345.678,25", 12_345_678.25],
    ["1,250.55", 1250.55],
    ["1,250,000", 1_250_000],
    ["12,345,678.25", 12_345_678.25],
    ["1\u00a0250,5", 1250.5],
    ["1\u202f250", 1250],
    ["  42\u2009", 42],
    ["3/4", 0.75],
    ["11/12", 11 / 12],
    ["3 / 4", 0.75],
    ["3\u20444", 0.75],
    ["12 11/12", 12 + 11 / 12],
    ["9½", 9.5],
    ["12 ½", 12.5],
    ["-5", -5],
    ["\u22125,5", -5.5],
    ["\u20135", -5],
    ["- 5", -5],
    ["+5", 5],
    ["+ 5", 5],
  ])("%j is %d", (text, value) => expect(read(text)).toBe(value));

  // The Unicode Character Database decomposes each sign into its two numbers and a fraction slash.
  test.each([..."½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅐⅛⅜⅝⅞⅑⅒"])("%s is what Unicode takes it apart into", (sign) => {
    const [over = 0, under = 0] = sign.normalize("NFKD").split("\u2044").map(Number);
    expect(read(sign)).toBe(over / under);
    expect(read(`2${sign}`)).toBe(2 + over / under);
  });

  test.each([
    "",
    " ",
    "-",
    "abc",
    "1e2",
    "12.",
    "--5",
    "+-5",
    "x12",
    "12x",
    "x1.5",
    "1.5x",
    "1,2.3",
    "1.2,3",
    "12.5.1",
    "1 25",
    "1 2500",
    "1234 567",
    "x1 250",
    "1 250x",
    "1 250,",
    "1 250,5x",
    "1234.567.890",
    "1.250.0001",
    "x1.250.000",
    "1.250.000x",
    "1.250,5x",
    "1234,567,890",
    "1,250,0001",
    "x1,250,000",
    "1,250,000x",
    "1,250.5x",
    "3/0",
    "x3/4",
    "3/4x",
    "3//4",
    "3/",
    "/4",
    "1  1 3/4",
    "x½",
    "½x",
    "½½",
  ])("%j is no number", (text) => expect(read(text)).toBe("is not a number"));

  test.each([
    ["1,250", "1250 or 1.25"],
    ["1.250", "1250 or 1.25"],
    ["12,345", "12345 or 12.3450"],
    ["123,456", "123456 or 123.4560"],
    ["-1,250", "1250 or 1.25"],
    ["00,125", "125 or 0.125"],
    ["11/2", "5.5 or 1 1/2"],
    ["23/8", "2.8750 or 2 3/8"],
  ])("%j is not decided, and either can be entered as it is told", (text, either) => {
    expect(read(text)).toBe(`could be ${either}; enter the one you mean`);
    for (const one of either.split(" or ")) expect(typeof read(one)).toBe("number");
  });

  test("cups, kilograms and shares have three decimals", () => {
    expect(read("1,250", { threeDecimals: true })).toBe(1.25);
    expect(read("1,250", { threeDecimals: false })).toMatch(/could be/);
    expect(read("1,250%", { percent: true })).toBe(0.0125);
    expect(read("1,250", { percent: true })).toMatch(/could be/);
  });

  test("a % sign is hundredths where a share is meant, and refused where none is", () => {
    expect(readNumber("65%", { percent: true })).toEqual({ value: 0.65, marked: true });
    expect(readNumber("65 %", { percent: true })).toEqual({ value: 0.65, marked: true });
    expect(readNumber("-5%", { percent: true })).toEqual({ value: -0.05, marked: true });
    expect(readNumber("65", { percent: true })).toEqual({ value: 65, marked: false });
    expect(read("%65", { percent: true })).toBe("is not a number");
    expect(read("65%")).toBe("has a % sign, and no share is meant here");
    expect(read("65%", { percent: false })).toBe("has a % sign, and no share is meant here");
  });
});

describe("a cell where a number is wanted", () => {
  const weight = number("a weight such as 350", { min: 0, max: 1000 });
  const said = (raw: unknown, reader = weight) => {
    const one = reader.read(raw);
    return isFault(one) ? one.says : one;
  };

  test.each([
    [7, 7],
    ["7", 7],
    [0, 0],
    [1000, 1000],
    ["abc", 'is "abc", which is not a number; enter a weight such as 350'],
    ["500 g", 'is "500 g", which is not a number; enter a weight such as 350'],
    ["500g.", 'is "500g.", which is not a number; enter a weight such as 350'],
    ["12,5kg", 'is "12,5kg", which is not a number; enter a weight such as 350'],
    ["22 °C", 'is "22 °C", which is not a number; enter a weight such as 350'],
    ["17 loaves of rye", 'is "17 loaves of rye", which is not a number; enter it without "loaves of rye"'],
    ["1000 cm³", 'is "1000 cm³", which is not a number; enter a weight such as 350'],
    // A slip of the finger is not seven of anything.
    ["7oo", 'is "7oo", which is not a number; enter a weight such as 350'],
    ["7OO", 'is "7OO", which is not a number; enter a weight such as 350'],
    // What may be a unit makes the number another amount, and is not told to be left out.
    ["7 oxo", 'is "7 oxo", which is not a number; enter a weight such as 350'],
    ["2 gal", 'is "2 gal", which is not a number; enter a weight such as 350'],
    ["3 large", 'is "3 large", which is not a number; enter a weight such as 350'],
    ["4 dozen", 'is "4 dozen", which is not a number; enter 48'],
    ["1½ doz", 'is "1½ doz", which is not a number; enter 18'],
    ["20 EUR/kg", 'is "20 EUR/kg", which is not a number; enter a weight such as 350'],
    ["20 EUR", 'is "20 EUR", which is not a number; enter it without "EUR"'],
    ["7 g. ", 'is "7 g.", which is not a number; enter a weight such as 350'],
    ["7 g (net)", 'is "7 g (net)", which is not a number; enter a weight such as 350'],
    ["about\n7 g", 'is "about 7 g", which is not a number; enter a weight such as 350'],
    ["x7 g", 'is "x7 g", which is not a number; enter a weight such as 350'],
    ["1,250 g", 'is "1,250 g", which is not a number; enter a weight such as 350'],
    [`7 ${"g".repeat(60)}`, `is "7 ${"g".repeat(35)}…", which is not a number; enter a weight such as 350`],
    [`7 ${"g".repeat(58)}`, `is "7 ${"g".repeat(35)}…", which is not a number; enter a weight such as 350`],
    [true, "is TRUE, not a number; enter a weight such as 350"],
    [false, "is FALSE, not a number; enter a weight such as 350"],
    [{}, "is not a number or a text, not a number; enter a weight such as 350"],
    [-0.5, "is -0.5; it cannot be below 0"],
    [1000.5, "is 1000.5; it cannot be above 1000"],
    ["1000.5", "is 1000.5; it cannot be above 1000"],
    [Number.NaN, "is not a finite number"],
    [Number.POSITIVE_INFINITY, "is not a finite number"],
    ["9".repeat(400), "is not a finite number; enter a weight such as 350"],
    ["#N/A", "holds the error #N/A; correct that cell first"],
    [" #DIV/0! ", "holds the error #DIV/0!; correct that cell first"],
    ["#NAME?", "holds the error #NAME?; correct that cell first"],
    ["Loading...", "is still calculating; wait a moment"],
    ["loading …", "is still calculating; wait a moment"],
    ["x#N/A", 'is "x#N/A", which is not a number; enter a weight such as 350'],
    ["#N/A x", 'is "#N/A x", which is not a number; enter a weight such as 350'],
    ["reloading...", 'is "reloading...", which is not a number; enter a weight such as 350'],
    ["loading... 3", 'is "loading... 3", which is not a number; enter a weight such as 350'],
    [new Date(1899, 11, 30, 1, 30), "is a time of day; enter a number, such as 1.5 for 1:30"],
    [
      new Date(1900, 0, 2),
      "is a date; if a fraction was typed, enter 0 1/2 or '1/2 and set the cell's format back to number",
    ],
  ])("%j", (raw, expected) => expect(said(raw)).toBe(expected));

  test("bounds: the least and the most are inside, what must be above is not", () => {
    const above = number("a weight such as 350", { above: 2, max: 5 });
    expect(said(2, above)).toBe("is 2; it must be above 2");
    expect(said(2.5, above)).toBe(2.5);
    expect(said(5, above)).toBe(5);
    const least = number("a weight such as 350", { min: 2 });
    expect(said(2, least)).toBe(2);
    expect(said(1e300, least)).toBe(1e300);
    expect(said(1.99, least)).toBe("is 1.99; it cannot be below 2");
    expect(least.hint).toEqual({ of: "number", what: "a weight such as 350", min: 2 });
    expect(said(-1e300, number("any"))).toBe(-1e300);
  });

  test("a share typed plain is told both ways to write it", () => {
    const share = number("a share such as 5% (0.05)", { min: 0, max: 0.5 }, { percent: true });
    expect(said(0.5, share)).toBe(0.5);
    expect(said("50%", share)).toBe(0.5);
    expect(said(12, share)).toBe("is 12, which is 1200 %; enter 12% or 0.12");
    expect(said(50, share)).toBe("is 50, which is 5000 %; enter 50% or 0.5");
    expect(said(51, share)).toBe("is 51; it cannot be above 50 %");
  });
});
