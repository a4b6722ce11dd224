import { describe, expect, test } from "vitest";
import { text, word } from "../../shared/cells/cell.ts";
import { cell, list, optional } from "../../shared/cells/decoder.ts";
import { define, type Returns } from "../../src/functions/define.ts";
import { given, made, refused, says, weight } from "./random-cells.ts";

// What a formula cell gives for what it is given, whichever function it runs.

describe("what comes out", () => {
  const fixed = (returns: Returns, answer: unknown) =>
    given(define({ ...made, name: "BAKE_X", args: {}, returns, compute: () => answer as never }));
  const one = { shape: "cell", says } as const;
  const row = { shape: "row", cells: ["a", "b"], says } as const;
  const rows = { shape: "rows", cells: ["a", "b"], says } as const;

  test.each([
    [one, 5, 5],
    [one, "five", "five"],
    [one, null, ""],
    [row, [1, 2], [[1, 2]]],
    [row, [1, null], [[1, ""]]],
    [row, [1], 1],
    [{ shape: "column", says }, [1, null, 3], [[1], [""], [3]]],
    [{ shape: "column", says }, [1], 1],
    [{ shape: "column", says }, [], ""],
    [
      rows,
      [
        [1, 2],
        [3, null],
      ],
      [
        [1, 2],
        [3, ""],
      ],
    ],
    [rows, [[1, 2]], [[1, 2]]],
    // A rectangle, whatever came.
    [
      rows,
      [[1], [2, 3]],
      [
        [1, ""],
        [2, 3],
      ],
    ],
    [rows, [], ""],
  ] as const)("%j: %j", (returns, answer, cells) => expect(fixed(returns, answer)).toEqual(cells));

  test("no minus before a 0", () => expect(Object.is(fixed(one, -0), 0)).toBe(true));

  test.each([Number.NaN, Number.POSITIVE_INFINITY, -Number.POSITIVE_INFINITY])("%d is refused", (answer) => {
    expect(() => fixed(one, answer)).toThrow(
      "BAKE_X: the answer is too large for a cell; check for a figure with too many digits.",
    );
  });

  test("a text that a cell cannot take is cut (Google Sheets takes 50 000 characters)", () => {
    expect(fixed(one, "x".repeat(50_000))).toBe("x".repeat(50_000));
    expect(fixed(one, "x".repeat(50_001))).toBe(`${"x".repeat(49_999)}…`);
  });

  test("what is no refusal is a defect and passes as it is", () => {
    const broken = define({
      ...made,
      name: "BAKE_X",
      args: {},
      returns: one,
      compute: () => {
        throw new TypeError("broken");
      },
    });
    expect(() => given(broken)).toThrow(TypeError);
    expect(() => given(broken)).toThrow(/^broken$/);
  });
});

describe("arguments", () => {
  const two = define({
    ...made,
    name: "BAKE_TWO",
    args: { a: { is: cell(weight), says }, b: { is: optional(weight, 0), says } },
    returns: { shape: "cell", says },
    compute: ({ a, b }) => a + b,
  });
  test("may be left out where they are optional, and no more than there are", () => {
    expect(given(two, 1)).toBe(1);
    expect(given(two, 1, 2)).toBe(3);
    expect(refused(two, 1, 2, 3)).toBe("BAKE_TWO: takes 2 arguments (a; b), and 3 are given.");
    expect(refused(two)).toBe("BAKE_TWO: a is missing; enter a weight such as 350.");
    expect(refused(two, "x", "y")).toBe(
      'BAKE_TWO: a is "x", which is not a number; enter a weight such as 350; b is "y", which is not a number; enter a weight such as 350.',
    );
  });

  const listed = define({
    ...made,
    name: "BAKE_LISTED",
    args: {
      first: { is: cell(text()), says },
      many: { is: list(weight), says },
      last: { is: cell(weight), says },
      unit: { is: optional(word({ g: [], oz: [] }), "g"), says },
    },
    returns: { shape: "cell", says },
    compute: ({ many, last }) => many.length + last,
  });
  test.each([
    // As many values belong together as leave one for each argument that must follow.
    [
      ["x", 1, 2, 3, 4],
      "takes 4 arguments (first; many; last; unit), and 5 are given. For many select a range of cells, or enter {1; 2; 3}.",
    ],
    [
      ["x", 1, 2, 3, 4, 5, "oz"],
      "takes 4 arguments (first; many; last; unit), and 7 are given. For many select a range of cells, or enter {1; 2; 3; 4}.",
    ],
    [["x", 1, 2, 3], "unit is 3. For many select a range of cells, or enter {1; 2}."],
    [["x", [[1], [2]], 2, 3, 4], "takes 4 arguments (first; many; last; unit), and 5 are given."],
    [["x", [[1], [2]], 2, 3], 'unit is 3; choose "g" or "oz".'],
    [["x", 1, 2, "ml"], 'unit is "ml"; choose "g" or "oz".'],
  ] as const)("%j: values of one argument that were given as several", (args, sentence) => {
    expect(refused(listed, ...args)).toBe(`BAKE_LISTED: ${sentence}`);
  });

  const slips = define({
    ...made,
    name: "BAKE_SLIPS",
    args: {
      first: { is: cell(text()), says },
      start: { is: optional(weight, 0), says },
      mode: { is: optional(word({ up: [], down: [] }), "up"), says },
      note: { is: optional(text(), ""), says },
      unit: { is: optional(word({ g: [], oz: [] }), "g"), says },
    },
    returns: { shape: "cell", says },
    compute: ({ first, start, mode, note, unit }) => [first, start, mode, note, unit].join(" "),
  });
  test.each([
    [["x", "up"], 'BAKE_SLIPS: start is "up", which is meant for mode; leave start blank before it.'],
    [["x", "oz"], 'BAKE_SLIPS: start is "oz", which is meant for unit; leave start and mode and note blank before it.'],
    [["x", 1, "oz"], 'BAKE_SLIPS: mode is "oz", which is meant for unit; leave mode and note blank before it.'],
    [["x", "many"], 'BAKE_SLIPS: start is "many", which is not a number; enter a weight such as 350.'],
    [["x", 1, "up", "", 5], 'BAKE_SLIPS: unit is 5; choose "g" or "oz".'],
    // A first argument that must be given is read as it stands.
    [["oz", "down"], 'BAKE_SLIPS: start is "down", which is meant for mode; leave start blank before it.'],
  ])("%j", (raw, because) => expect(refused(slips, ...raw)).toBe(because));
  test("words in their own places are read", () => {
    expect(given(slips, "oz", "", "down", "", "oz")).toBe("oz 0 down  oz");
    expect(given(slips, "up", " ", "", "a note")).toBe("up 0 up a note g");
  });
});
