// Numbers of recipe lines in words and beside other numbers: the same as in digits, or refused. What is expected is counted here.
import { describe, expect, test } from "vitest";
import { down, expectCells, refusal, run } from "../functions/support.ts";

const grams = (line: string, cups = "US") => run("BAKE_GRAMS", line, "", cups);

const SMALL =
  "one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split(
    " ",
  );
const TENS = ["twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];
/** Every number up to ninety-nine in the ways that it is written. */
const UP_TO_99: readonly (readonly [number, string])[] = [
  ...SMALL.map((word, at) => [at + 1, word] as const),
  ...TENS.flatMap((ten, at) => [
    [10 * (at + 2), ten] as const,
    ...SMALL.slice(0, 9).flatMap((one, more) =>
      [`${ten}-${one}`, `${ten} ${one}`].map((word) => [10 * (at + 2) + more + 1, word] as const),
    ),
  ]),
];

describe("a number in words is that number", () => {
  test("up to ninety-nine", () => {
    for (const [value, words] of UP_TO_99) {
      expect(grams(`${words} g sugar`), words).toBe(value);
      expect(grams(`${words[0]?.toUpperCase()}${words.slice(1)} grams of sugar`), words).toBe(value);
    }
  });
  test("hundreds and thousands", () => {
    for (const [hundreds, word] of UP_TO_99.slice(0, 9)) {
      expect(grams(`${word} hundred g sugar`)).toBe(100 * hundreds);
      expect(grams(`${hundreds} hundred g sugar`)).toBe(100 * hundreds);
      expect(grams(`${word} thousand g sugar`)).toBe(1000 * hundreds);
      for (const [more, words] of UP_TO_99.filter((_, at) => at % 7 === hundreds % 7)) {
        expect(grams(`${word} hundred and ${words} g sugar`)).toBe(100 * hundreds + more);
        expect(grams(`${word} hundred ${words} g sugar`)).toBe(100 * hundreds + more);
        expect(grams(`two thousand ${word} hundred ${words} g sugar`)).toBe(2000 + 100 * hundreds + more);
      }
    }
    expect(grams("a hundred g sugar")).toBe(100);
    expect(grams("hundred g sugar")).toBe(100);
  });
  test("a couple and a pair are two, with a fraction, a range and packs besides", () => {
    expectCells(grams("a couple of eggs"), 100);
    expectCells(grams("couple eggs"), 100);
    expectCells(grams("a pair of eggs"), 100);
    expectCells(grams("twenty and a half g sugar"), 20.5);
    expectCells(grams("twenty to thirty g sugar"), 25);
    expectCells(grams("two-three g sugar"), 2.5);
    expectCells(grams("twenty five-gram sachets sugar"), 100);
    expectCells(grams("twenty five gram sachets sugar"), 25);
    expectCells(grams("100 g hundreds and thousands"), 100);
  });
});

describe("a number in front of a pack's size counts the packs, whatever stands between the digits", () => {
  const PACKS = ["tin", "can", "pack", "packet", "bag", "bar", "carton", "tub", "jar", "bottle", "sachet"];
  test.each(PACKS)("%s", (pack) => {
    for (const many of [1, 2, 3, 6, 12])
      for (const size of [100, 125, 250, 400, 500])
        for (const between of [" ", " x ", "\u00a0", "\u2009", "\u202f"])
          for (const unit of ["g", " g", "-g", " gram"]) {
            const line = `${many}${between}${size}${unit} ${pack}${many > 1 ? "s" : ""} sugar`;
            expect(grams(line), line).toBe(many * size);
          }
  });
  test("without a pack they are thousands in grams and millilitres, and refused in anything larger", () => {
    expect(grams("1 250 g sugar")).toBe(1250);
    expect(grams("1\u202f250 ml water")).toBe(1250);
    for (const unit of ["kg", "l", "cups", "lb", "oz", "tsp"])
      expect(refusal("BAKE_GRAMS", `1 250 ${unit} sugar`)).toMatch(/two numbers side by side/);
  });
});

describe("two numbers that nothing joins", () => {
  const NUMBERS = ["1", "2", "12", "1 1/2", "2½", "0.5"];
  const UNITS = ["g", "kg", "cups", "tsp", "oz", "ml"];
  test.each(NUMBERS)("%s before another", (first) => {
    for (const second of ["1", "3", "12", "34", "1.5", "2500"])
      for (const unit of UNITS)
        for (const line of [`${first} ${second} ${unit} sugar`, `${first} ... ${second} ${unit} sugar`])
          expect(refusal("BAKE_GRAMS", line), line).toMatch(/two numbers (?:side by side|with dots)/);
  });
  test("behind the name as well; the type of a flour is part of its name", () => {
    expect(refusal("BAKE_GRAMS", "sugar 12 34 g")).toMatch(/side by side/);
    expect(refusal("BAKE_GRAMS", "sugar, 5 5 g")).toMatch(/side by side/);
    for (const type of ["550", "405", "00", "type 550", "T55", "1050"])
      expect(grams(`flour ${type} 500 g`), type).toBe(500);
  });
});

describe("a fraction that may have lost its space", () => {
  const GLUED = ["11/2", "21/4", "13/4", "12/3", "101/2", "23/8"];
  test.each(GLUED)("%s is asked about in lines, packs and weights", (typed) => {
    const spaced = typed.replace(/(\d)\//, " $1/");
    expect(refusal("BAKE_GRAMS", `${typed} cups sugar`)).toMatch(/without its space/);
    const said = refusal("BAKE_TRUEPCT", down(typed, 5));
    const [, decimal = "", mixed = ""] = /could be ([\d.]+) or ([\d /]+); enter the one you mean/.exec(said) ?? [];
    expect(mixed).toBe(spaced);
    expect(refusal("BAKE_TRUEPCT", down(`${typed} lb`, "5 lb"))).toContain(`could be ${decimal} or ${spaced}`);
    // Both ways that are told are read, and differ.
    const [one, other] = [Number(decimal), mixed].map((entry) => run("BAKE_RESCALE", down(entry), 10, 1) as number);
    expect(one).not.toBe(other);
  });
  test.each([
    ["3/2 cups sugar", 300],
    ["10/8 cups sugar", 250],
    ["1 1/2 cups sugar", 300],
    ["9/4 cups sugar", 450],
  ])("but %s is one number", (line, wanted) => expectCells(grams(line), wanted));
});
