import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { Refusal } from "../../shared/base/refusal.ts";
import type { Decoder } from "../../shared/cells/decoder.ts";
import type { Hint } from "../../shared/cells/hint.ts";
import { KIND_WORDS } from "../../shared/larder/kind-words.ts";
import { call } from "../../src/functions/call.ts";
import type { SheetFunction } from "../../src/functions/define.ts";
import { FUNCTIONS } from "../../src/functions/index.ts";
import { seedOf, tries } from "../kit/scale.ts";

/** All calls together. */
const CALLS = tries(20_000);
const SEED = seedOf(20_261_125);

/** No cell of a sheet is one of these; what a script or a broken page passes may be. */
const NO_CELLS: readonly unknown[] = [
  Object.create(null),
  [[Object.create(null)], [1]],
  Object.assign(Object.create(null), { length: 2, 0: 1, 1: 2 }),
  { toString: null, valueOf: null },
  { says: "made up" },
  { unread: "made up" },
  { value: 1, marked: true },
  { word: "flour", flour: 1, water: 0 },
  Symbol("cell"),
  10n,
  new Date(Number.NaN),
  new Date(1899, 11, 30, 1, 30),
  new Map([[1, 2]]),
  /65%/,
  new Array(3),
  [new Array(3)],
  [[1], new Array(2)],
  new Error("cell"),
];

const ODD: fc.Arbitrary<unknown> = fc.oneof(
  fc.constantFrom(...NO_CELLS),
  fc.constantFrom<unknown>(
    "",
    " ",
    undefined,
    null,
    true,
    false,
    0,
    -0,
    -1,
    1e-12,
    1e9,
    1e308,
    Number.NaN,
    Number.POSITIVE_INFINITY,
    "12,5",
    "1,250",
    "65%",
    "½",
    "1 1/2",
    "1e2",
    "12.",
    "#N/A",
    "#DIV/0!",
    "Loading...",
    "abc",
    "=1+1",
    "__proto__",
    "constructor",
    "levain 100%",
    "levain",
    new Date(0),
    {},
    [],
    [[]],
    [1, 2],
    [
      [1, 2],
      [3, 4],
    ],
    [[1], [2, 3]],
    () => 1,
  ),
  fc.double(),
  fc.string({ maxLength: 12 }),
);

/** A value the decoder is meant for, by its own bounds and words; now and then just beyond them. */
function fitting(hint: Hint): fc.Arbitrary<unknown> {
  switch (hint.of) {
    case "number": {
      const least = hint.min ?? hint.above ?? -1000;
      const most = Math.min(hint.max ?? 1e6, 1e6);
      return fc.oneof(
        fc.double({ min: least, max: most, noNaN: true }),
        fc.integer({ min: Math.ceil(least), max: Math.max(Math.ceil(least), Math.floor(most)) }),
        fc.constantFrom<unknown>(least, most, most * 1.001 + 1),
      );
    }
    case "word":
      return fc.constantFrom<unknown>(...hint.words);
    case "kind":
      return fc.constantFrom<unknown>(...KIND_WORDS, "levain 80%", "poolish 100%", 1, 0, 0.5, true, false);
    case "percent":
      return fc.oneof(
        fc.constantFrom<unknown>(1, 100, 0.65, 65, "65%", 0.02, 2),
        fc.double({ min: 0, max: 2, noNaN: true }),
      );
    default:
      return fc.constantFrom<unknown>("butter", "whole egg", "milk", "2 cups flour", "500 g rye", "salt", "", "x");
  }
}

function argument({ shape, hint, optional }: Decoder<unknown>): fc.Arbitrary<unknown> {
  const one = fitting(hint);
  const blank = fc.constantFrom<unknown>("", undefined);
  const column = fc

    .array(fc.oneof({ weight: 27, arbitrary: one }, { weight: 3, arbitrary: blank }, { weight: 1, arbitrary: ODD }), {
      minLength: 1,
      maxLength: 6,
    })
    .map((cells) => cells.map((cell) => [cell]));
  const table = fc.array(fc.array(fc.oneof(one, ODD), { minLength: 1, maxLength: 4 }), { maxLength: 5 });
  const right =
    shape === "cell"
      ? fc.oneof({ weight: 8, arbitrary: one }, { weight: 1, arbitrary: column })
      : shape === "table"
        ? table
        : fc.oneof({ weight: 6, arbitrary: column }, { weight: 1, arbitrary: one });
  return fc.oneof(
    { weight: 12, arbitrary: right },
    { weight: optional ? 4 : 1, arbitrary: blank },
    { weight: 2, arbitrary: ODD },
  );
}

/** What most tables of a shop's own formulas look like; of made-up ones hardly any is a table of three columns. */
const OWN_FORMULAS = fc.constantFrom<unknown>(
  undefined,
  [["milk", "butter", 100, 0.1]],
  [
    ["product", "ingredient", "weight"],
    ["x", "salt", 30],
    ["", "whole egg", 70],
  ],
);

/** All arguments made up, or those of an example with one of them replaced. */
function argumentsOf({ args, examples }: SheetFunction): fc.Arbitrary<unknown[]> {
  const made = Object.entries(args).map(([name, { is }]) =>
    name === "formulas" && is.optional
      ? fc.oneof({ weight: 9, arbitrary: OWN_FORMULAS }, { weight: 1, arbitrary: argument(is) })
      : argument(is),
  );
  const changed = fc
    .tuple(fc.constantFrom(...examples), fc.nat({ max: made.length - 1 }))
    .chain(([{ call }, place]) =>
      (made[place] ?? ODD).map((value) => made.map((_, index) => (index === place ? value : call[index]))),
    );
  return fc.oneof({ weight: 3, arbitrary: fc.tuple(...made) }, { weight: 1, arbitrary: changed });
}

/** What a cell takes: finite numbers and texts, alone or as a rectangle. */
function isAnswer(answer: unknown, made: SheetFunction): boolean {
  const isCell = (cell: unknown) =>
    (typeof cell === "number" && Number.isFinite(cell)) || (typeof cell === "string" && cell.length <= 50_000);
  if (!Array.isArray(answer)) return isCell(answer);
  // Of several parts the content comes side by side, as many as were asked for, and a law has its own number of groups.
  const asked = ["BAKE_CONTENT", "BAKE_ALLERGENTABLE"].includes(made.name) ? answer[0]?.length : undefined;
  const width = asked ?? ("cells" in made.returns ? made.returns.cells.length : 1);
  return answer.length > 0 && answer.every((row) => Array.isArray(row) && row.length === width && row.every(isCell));
}

describe(`answers finitely in its shape or refuses with a sentence (seed ${SEED})`, () => {
  test.each(FUNCTIONS)("$name", (made) => {
    let answered = 0;
    fc.assert(
      fc.property(argumentsOf(made), (args) => {
        try {
          const answer = call(made, args);
          if (!isAnswer(answer, made)) throw new Error(`answered ${fc.stringify(answer)}`);
          answered += 1;
        } catch (error) {
          if (!(error instanceof Refusal)) throw error;
          expect(error.message.startsWith(`${made.name}: `)).toBe(true);
          expect(error.message).not.toMatch(/undefined|NaN|\[object|\d\.\d{7}/);
          expect(error.message.length).toBeLessThan(2000);
        }
      }),
      { numRuns: Math.ceil(CALLS / FUNCTIONS.length), seed: SEED },
    );
    expect(answered, "so many random calls must reach the arithmetic").toBeGreaterThan(20);
  });
});
