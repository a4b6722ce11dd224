import { describe, expect, test } from "vitest";
import { refuse } from "../../shared/base/refusal.ts";
import { number, word } from "../../shared/cells/cell.ts";
import { cell, column, either, list, optional, optionalColumn, table } from "../../shared/cells/decoder.ts";
import { kind } from "../../shared/larder/kinds.ts";
import { type Answer, define } from "../../src/functions/define.ts";
import { down } from "../functions/support.ts";
import { given, made, refused, says, weight } from "./random-cells.ts";

// Columns that line up, tables, and a row back for every row, whichever function it is.

describe("columns of one table", () => {
  const echo = define({
    ...made,
    name: "BAKE_ECHO",
    args: {
      weights: { is: column(weight), says },
      kinds: { is: column(kind()), says },
      each: { is: either(weight), says },
      more: { is: optionalColumn(weight), says },
      sizes: { is: list(weight), says },
      rows: { is: table({ of: "any" }, true, (cells) => cells.length), says },
    },
    returns: { shape: "cell", says },
    compute: ({ weights, kinds, each, more, sizes, rows }) =>
      JSON.stringify([weights, kinds.length, each, more, sizes, rows]),
  });
  test("are made as long as the longest, and lists are not", () => {
    expect(given(echo, down(1, 2, 3), down("flour"), 7, undefined, down(4))).toBe(
      "[[1,2,3],3,7,[null,null,null],[4],0]",
    );
    expect(given(echo, down(1), down("flour"), down(7, 8, 9), down(5, 6), down(4, 5))).toBe(
      "[[1,null,null],3,[7,8,9],[5,6,null],[4,5],0]",
    );
    expect(given(echo, down(1, 2, 3), down("flour"), down(7, 8), undefined, down(3, 4, 5, 6))).toBe(
      "[[1,2,3],3,[7,8,null],[null,null,null],[3,4,5,6],0]",
    );
    expect(given(echo, down(1), down("flour", "water", "salt"), 2, "", down(4), [["a"], ["b"]])).toBe(
      "[[1,null,null],3,2,[null,null,null],[4],2]",
    );
  });
  test("missing ones are told before anything else", () => {
    expect(refused(echo, down("x"))).toBe(
      "BAKE_ECHO: kinds is missing; give a range; each is missing; give a cell or a range; sizes is missing; give a cell or a range.",
    );
  });
  test("a fresh sheet, its kinds filled and its amounts not, gives a blank", () => {
    const fresh = [down("", ""), down("flour", "water"), 7, down("", ""), down("")] as const;
    expect(given(echo, ...fresh)).toBe("");
    expect(given(echo, ...fresh, [["a"]])).toBe("");
    expect(given(echo, down("", ""), down("flour"), "x", "", down(""))).toBe("");
    // A single filled amount, wherever it stands, makes it a formula.
    expect(given(echo, down("", ""), down("flour"), 7, down("", 3), down(""))).toBe("[[null,null],2,7,[null,3],[],0]");
    expect(given(echo, [["", 3]], down("", "flour"), 7, "", "")).toBe("[[null,3],2,7,[null,null],[],0]");
    expect(given(echo, down(""), down("flour"), 7, "", down(4))).toBe("[[null],1,7,[null],[4],0]");
    expect(refused(echo, down("x"), down("flour"), 7, "", down(""))).toBe(
      'BAKE_ECHO: weights row 1 is "x", which is not a number; enter a weight such as 350.',
    );
  });
  test("without any table there is nothing that could be blank", () => {
    const none = define({
      ...made,
      name: "BAKE_NONE",
      args: { rows: { is: table({ of: "any" }, true, (cells) => cells.length), says } },
      returns: { shape: "cell", says },
      compute: ({ rows }): Answer => rows,
    });
    expect(given(none)).toBe(0);
  });
  test("a table that must be given is an amount, one that may be left out is none", () => {
    const day = define({
      ...made,
      name: "BAKE_DAY",
      args: {
        orders: { is: table({ of: "any" }, false, (cells) => cells.length), says },
        larder: { is: table({ of: "any" }, true, (cells) => cells.length), says },
      },
      returns: { shape: "cell", says },
      compute: ({ orders, larder }): Answer => `${orders} ${larder}`,
    });
    expect(given(day, [["bun", 3]], [["flour"]])).toBe("1 1");
    expect(given(day, [["", ""]], [["flour"]])).toBe("");
    expect(refused(day)).toBe("BAKE_DAY: orders is missing; give a cell or a range.");
  });
});

describe("a row back for every row", () => {
  const parts = define({
    ...made,
    name: "BAKE_PARTS",
    rowwise: true,
    args: {
      whole: { is: cell(weight), says },
      by: { is: cell(number<number>("a number such as 2", { min: 0 })), says },
      unit: { is: optional(word({ g: [], oz: [] }), "g"), says },
      names: { is: table({ of: "any" }, true, (cells) => cells.length), says },
    },
    returns: { shape: "row", cells: ["part", "rest", "unit"], says },
    compute: ({ whole, by, unit, names }) => {
      if (by === 0) refuse("is 0, and nothing is parted by 0", "by");
      if (by === 13) throw new RangeError("broken");
      if (by === 7) refuse("is not known", "names", 2);
      return [whole / by, names, unit];
    },
  });
  test("columns, single cells for all rows, blanks between and at the end", () => {
    expect(given(parts, 10, 2)).toEqual([[5, 0, "g"]]);
    expect(given(parts, down(10, "", 30, ""), 2, "oz", [["a"], ["b"]])).toEqual([
      [5, 2, "oz"],
      ["", "", ""],
      [15, 2, "oz"],
    ]);
    expect(given(parts, 12, [[2, 3, 4]], down("g", "", "oz"))).toEqual([
      [6, 0, "g"],
      [4, 0, "g"],
      [3, 0, "oz"],
    ]);
    expect(given(parts, "", 2)).toEqual([["", "", ""]]);
    expect(given(parts, down("", "", ""), 2)).toEqual([["", "", ""]]);
    // The table is one for all rows, whatever its size.
    const larder = [
      ["a", 1],
      ["b", 2],
      ["c", 3],
    ];
    expect(given(parts, 10, 2, "", larder)).toEqual([[5, 3, "g"]]);
    expect(given(parts, down(10, 20), 2, "", larder)).toEqual([
      [5, 3, "g"],
      [10, 3, "g"],
    ]);
    expect(given(parts, down(10), down(2))).toEqual([[5, 0, "g"]]);
  });
  test.each([
    [[undefined, 2], "BAKE_PARTS: whole is missing; enter a weight such as 350."],
    [[10, 0], "BAKE_PARTS: by is 0, and nothing is parted by 0."],
    // Of a single question the row is the table's own, of several that of the question.
    [[10, 7], "BAKE_PARTS: names row 2 is not known."],
    [[down(10, 20, 30), down(2, 2, 7)], "BAKE_PARTS: names row 3 is not known."],
    [
      [down(10, 20), down(0, 0)],
      "BAKE_PARTS: by row 1 is 0, and nothing is parted by 0; by row 2 is 0, and nothing is parted by 0.",
    ],
    [[down(10, 20, 30), down(2, 4)], "BAKE_PARTS: by row 3 is blank; enter a number such as 2."],
    [[down(10, 20), down(2)], undefined],
    [[10, "x"], 'BAKE_PARTS: by is "x", which is not a number; enter a number such as 2.'],
    [
      [down(10, "x"), down(0, 2)],
      'BAKE_PARTS: by row 1 is 0, and nothing is parted by 0; whole row 2 is "x", which is not a number; enter a weight such as 350.',
    ],
    [
      [
        [
          [1, 2],
          [3, 4],
        ],
        2,
      ],
      "BAKE_PARTS: whole is a block of 2 rows and 2 columns; give one column.",
    ],
  ])("%j", (raw, because) => expect(refused(parts, ...raw)).toBe(because ?? 'answered [[5,0,"g"],[10,0,"g"]]'));
  test("blank rows between stay blank also where the first argument is one cell for all rows", () => {
    expect(given(parts, 12, down(2, "", 3))).toEqual([
      [6, 0, "g"],
      ["", "", ""],
      [4, 0, "g"],
    ]);
    // What may be left out does not fill a row, and alone it leaves none blank.
    expect(given(parts, 12, down(2, "", 3), down("g", "oz", "g"))).toEqual([
      [6, 0, "g"],
      ["", "", ""],
      [4, 0, "g"],
    ]);
    expect(given(parts, 12, 2, down("oz", "", "oz"))).toEqual([
      [6, 0, "oz"],
      [6, 0, "g"],
      [6, 0, "oz"],
    ]);
  });
  test("what is wrong with one cell for all rows is told once, and only if a row needs it", () => {
    expect(refused(parts, down(10, 20, 30), "x")).toBe(
      'BAKE_PARTS: by is "x", which is not a number; enter a number such as 2.',
    );
    expect(refused(parts, down(10, "y", 30), "x")).toBe(
      'BAKE_PARTS: by is "x", which is not a number; enter a number such as 2; whole row 2 is "y", which is not a number; enter a weight such as 350.',
    );
    expect(given(parts, down("", ""), "x")).toEqual([["", "", ""]]);
  });
  test("a defect stays a defect", () => {
    expect(() => given(parts, 10, 13)).toThrow(RangeError);
    expect(() => given(parts, down(10, 20), 13)).toThrow(RangeError);
  });
});
