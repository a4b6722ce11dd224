import { describe, expect, test } from "vitest";
import { type Fault, isFault } from "../../shared/base/refusal.ts";
import { number, type Reader, text, word } from "../../shared/cells/cell.ts";
import {
  cell,
  column,
  type Decoder,
  either,
  list,
  optional,
  optionalColumn,
  optionalList,
  table,
} from "../../shared/cells/decoder.ts";
import { isBlank } from "../../shared/cells/hint.ts";
import { down } from "../functions/support.ts";

// From raw cells to values: one cell, a column, a list, a table, and what is told when it cannot be read.

const said = <T>(reader: Reader<T>, raw: unknown) => {
  const read = reader.read(raw);
  return isFault(read) ? read.says : read;
};

describe("blank", () => {
  test.each([undefined, null, "", "  ", "\t", "\u00a0"])("%j is", (raw) => expect(isBlank(raw)).toBe(true));
  test.each([0, false, "0", "x", [], {}])("%j is not", (raw) => expect(isBlank(raw)).toBe(false));
});

test("what was read may be anything, and is a problem only where one is told", () => {
  expect([null, undefined, "problem", 0, {}].some(isFault)).toBe(false);
  expect(isFault({ says: "is blank" })).toBe(true);
});

describe("a cell where a word is wanted", () => {
  const unit = word({ cm: ["centimetre"], mm: [], in: ["inch", '"'] });
  test.each([
    ["cm", "cm"],
    [" CM ", "cm"],
    ["Centimetres", "cm"],
    ["inch", "in"],
    ['"', "in"],
    ["miles", 'is "miles"; choose "cm", "mm" or "in"'],
    ["cmm", 'is "cmm"; choose "cm", "mm" or "in"'],
    [2.34567, 'is 2.3457; choose "cm", "mm" or "in"'],
    [true, 'is TRUE; choose "cm", "mm" or "in"'],
    ["#N/A", "holds the error #N/A; correct that cell first"],
    ["__proto__", 'is "__proto__"; choose "cm", "mm" or "in"'],
  ])("%j", (raw, expected) => expect(said(unit, raw)).toBe(expected));

  test("of more than eight words the nearest are told first", () => {
    const many = (count: number) =>
      word(
        Object.fromEntries(
          ["flour", ...Array.from({ length: count - 1 }, (_, at) => `x${at}xxxxxx`)].map((one) => [one, []]),
        ),
      );
    expect(said(many(8), "flowr")).toMatch(/^is "flowr"; choose "flour", /);
    expect(said(many(9), "flowr")).toMatch(/^is "flowr"; perhaps "flour"\? Choose "flour", /);
    expect(said(many(9), "quite another thing")).toMatch(/^is "quite another thing"; choose "flour", /);
    expect(said(many(9), 5)).toMatch(/^is 5; choose "flour", /);
  });

  test("the hint lists the words", () => expect(unit.hint).toEqual({ of: "word", words: ["cm", "mm", "in"] }));
});

describe("a cell where a text is wanted", () => {
  test.each([
    ["  rye flour ", "rye flour"],
    [0.1234567, "0.123457"],
    [12, "12"],
    [true, "true"],
    [{}, "is not a text"],
    ["#REF!", "holds the error #REF!; correct that cell first"],
    [
      new Date(2026, 1, 3),
      "is a date; if a fraction was typed, enter 0 1/2 or '1/2 and set the cell's format back to number",
    ],
  ])("%j", (raw, expected) => expect(said(text(), raw)).toBe(expected));
  test("and its hint says so", () => expect(text().hint).toEqual({ of: "text" }));
});

/** What a decoder makes of an argument called "it", and the faults it tells. */
function decoded<T>({ decode }: Decoder<T>, raw: unknown, row?: number): readonly [T, ...string[]] {
  const faults: Fault[] = [];
  const value = decode(raw, "it", faults, row);
  expect(faults.every(({ argument }) => argument === "it")).toBe(true);
  return [value, ...faults.map((one) => `${one.row === undefined ? "" : `row ${one.row} `}${one.says}`)];
}

const weight = number<number>("a weight such as 350", { min: 0 });
const BAD = 'is "x", which is not a number; enter a weight such as 350';

describe("one cell", () => {
  const one = cell(weight);
  test("is read, alone or as a range of one cell", () => {
    expect(decoded(one, 5)).toEqual([5]);
    expect(decoded(one, [[5]])).toEqual([5]);
    expect(decoded(one, [5])).toEqual([5]);
  });
  test.each([
    [down(1, 2), undefined, "is a range; give one cell"],
    [[[1, 2]], undefined, "is a range; give one cell"],
    [[[]], undefined, "is a range; give one cell"],
    [[], undefined, "is a range; give one cell"],
    [undefined, undefined, "is missing; enter a weight such as 350"],
    ["", undefined, "is blank; enter a weight such as 350"],
    ["", 3, "row 3 is blank; enter a weight such as 350"],
    [[[""]], undefined, "is blank; enter a weight such as 350"],
    ["x", undefined, BAD],
    ["x", 4, `row 4 ${BAD}`],
  ])("%j is told", (raw, row, says) => expect(decoded(one, raw, row)).toEqual([undefined, says]));
  test("what is wanted is told by its kind", () => {
    expect(decoded(cell(word({ a: [], b: [] })), "")).toEqual([undefined, 'is blank; choose "a" or "b"']);
    expect(decoded(cell(text()), "")).toEqual([undefined, "is blank; it is needed"]);
  });
  test("left out it is what it is otherwise", () => {
    const maybe = optional(weight, 7);
    expect(decoded(maybe, "")).toEqual([7]);
    expect(decoded(maybe, undefined)).toEqual([7]);
    expect(decoded(maybe, [[""]])).toEqual([7]);
    expect(decoded(maybe, 5)).toEqual([5]);
    expect(decoded(maybe, "x", 2)).toEqual([undefined, `row 2 ${BAD}`]);
    expect(decoded(maybe, down(1, 2))).toEqual([undefined, "is a range; give one cell"]);
    expect([one.shape, one.optional, maybe.shape, maybe.optional]).toEqual(["cell", false, "cell", true]);
    expect([one.hint, maybe.hint]).toEqual([weight.hint, weight.hint]);
  });
});

describe("a column", () => {
  const rows = column(weight);
  test("keeps blanks between, cuts them at the end, and may lie as a row", () => {
    expect(decoded(rows, down(1, "", 3, "", " "))).toEqual([[1, null, 3]]);
    expect(decoded(rows, [[1, "", 3, ""]])).toEqual([[1, null, 3]]);
    expect(decoded(rows, [1, "", 3])).toEqual([[1, null, 3]]);
    expect(decoded(rows, 5)).toEqual([[5]]);
    expect(decoded(rows, undefined)).toEqual([[]]);
    expect(decoded(rows, [])).toEqual([[]]);
    expect(decoded(rows, [[]])).toEqual([[]]);
    expect(decoded(rows, down("", ""))).toEqual([[]]);
  });
  test("names the rows that cannot be read, counted from 1", () => {
    expect(decoded(rows, down("x", 2, "", "x"))).toEqual([
      [undefined, 2, null, undefined],
      `row 1 ${BAD}`,
      `row 4 ${BAD}`,
    ]);
  });
  test("is no block", () => {
    expect(decoded(rows, [[1], [2, 3, 4], [5, 6]])).toEqual([
      [],
      "is a block of 3 rows and 3 columns; give one column",
    ]);
  });
  test("may be left out, or have an order of its own", () => {
    const kinds = [rows, optionalColumn(weight), list(weight), optionalList(weight)];
    for (const one of kinds) {
      expect(decoded(one, down(1, "", 3))).toEqual([[1, null, 3]]);
      expect(one.hint).toEqual(weight.hint);
    }
    expect(kinds.map(({ shape }) => shape)).toEqual(["column", "column", "list", "list"]);
    expect(kinds.map((one) => one.optional)).toEqual([false, true, false, true]);
  });
});

describe("one value or a column", () => {
  const both = either(weight);
  test("one cell is one value, more are a column", () => {
    expect(decoded(both, 5)).toEqual([5]);
    expect(decoded(both, [[5]])).toEqual([5]);
    expect(decoded(both, down(5, 6))).toEqual([[5, 6]]);
    expect(decoded(both, [[5, "", 6, ""]])).toEqual([[5, null, 6]]);
    expect(decoded(both, down(5, "x"))).toEqual([[5, undefined], `row 2 ${BAD}`]);
    expect(decoded(both, "x")).toEqual([undefined, BAD]);
    expect(decoded(both, "")).toEqual([undefined, "is blank; enter a weight such as 350"]);
    expect(decoded(both, [])).toEqual([undefined, "is a range; give one cell"]);
    expect([both.shape, both.optional, both.hint]).toEqual(["either", false, weight.hint]);
  });
});

describe("a table", () => {
  const rows = table({ of: "any" }, true, (cells, argument, faults) => {
    if (cells.length > 2) faults.push({ says: "is long", argument });
    return cells;
  });
  test("is handed over row by row, blank rows at the end cut", () => {
    expect(
      decoded(rows, [
        ["a", 1],
        ["", " "],
        ["", ""],
      ]),
    ).toEqual([[["a", 1]]]);
    expect(
      decoded(rows, [
        ["", ""],
        ["", 1],
      ]),
    ).toEqual([
      [
        ["", ""],
        ["", 1],
      ],
    ]);
    expect(decoded(rows, [[1], [2], [3]])).toEqual([[[1], [2], [3]], "is long"]);
    expect(decoded(rows, "a")).toEqual([[["a"]]]);
    expect(decoded(rows, undefined)).toEqual([[]]);
    expect(decoded(rows, "")).toEqual([[]]);
    expect([rows.shape, rows.optional, rows.hint]).toEqual(["table", true, { of: "any" }]);
    expect(table({ of: "any" }, false, () => 1).optional).toBe(false);
  });
});
