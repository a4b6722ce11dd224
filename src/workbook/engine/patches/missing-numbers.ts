// Functions of a sheet that the engine lacks and that give a number; each can go when the engine has it.
import { isMatrix } from "../library.ts";
import { all, type Missing, numbersOf, only, type ToNumber } from "./arguments.ts";
import { failure, isError } from "./errors.ts";

/** By their numbers from 1, as OpenFormula has them (from memory); any other error, such as a custom function's, is 8. */
const ERROR_KINDS = ["#NULL!", "#DIV/0!", "#VALUE!", "#REF!", "#NAME?", "#NUM!", "#N/A"];

const divisor = (a: number, b: number): number => (b === 0 ? Math.abs(a) : divisor(b, a % b));

export const arithmetic = (toNumber: ToNumber): readonly Missing[] => [
  [
    "SUMSQ",
    "Sums the squares of numbers.",
    ["value1 (number, range<number>)", "value2 (number, range<number>, repeating, optional)"],
    (...args) => all(args).find(isError) ?? numbersOf(args, toNumber).reduce((sum, value) => sum + value * value, 0),
  ],
  [
    "QUOTIENT",
    "Divides and drops the remainder.",
    ["dividend (number)", "divisor (number)"],
    (dividend, by) =>
      toNumber(by) === 0
        ? failure("#DIV/0!", "The divisor must be different from zero.")
        : Math.trunc(toNumber(dividend) / toNumber(by)),
  ],
  [
    "GCD",
    "The greatest common divisor.",
    ["value1 (number, range<number>)", "value2 (number, range<number>, repeating, optional)"],
    (...args) => numbersOf(args, toNumber).map(Math.trunc).reduce(divisor, 0),
  ],
  [
    "LCM",
    "The least common multiple.",
    ["value1 (number, range<number>)", "value2 (number, range<number>, repeating, optional)"],
    (...args) =>
      numbersOf(args, toNumber)
        .map(Math.trunc)
        .reduce((a, b) => (a * b === 0 ? 0 : Math.abs(a * b) / divisor(a, b)), 1),
  ],
  ["SIGN", "The sign of a number.", ["value (number)"], (value) => Math.sign(toNumber(value))],
  [
    "EVEN",
    "Rounds up to an even number.",
    ["value (number)"],
    (value) => Math.sign(toNumber(value)) * 2 * Math.ceil(Math.abs(toNumber(value)) / 2) || 0,
  ],
];

export const kinds: readonly Missing[] = [
  [
    "ERROR.TYPE",
    "The kind of an error as a number.",
    ["reference (any)"],
    (value) => {
      const cell = only(value);
      if (!isError(cell)) return failure("#N/A", "ERROR.TYPE takes an error, and there is none.");
      const at = ERROR_KINDS.indexOf(String(cell.value));
      return at < 0 ? ERROR_KINDS.length + 1 : at + 1;
    },
  ],
  [
    "TYPE",
    "The kind of a value as a number.",
    ["value (any, range<any>)"],
    (value) => {
      if (isMatrix(value) && value.flat().length > 1) return 64;
      const cell = only(value);
      if (isError(cell)) return 16;
      return typeof cell.value === "boolean" ? 4 : typeof cell.value === "string" ? 2 : 1;
    },
  ],
];
