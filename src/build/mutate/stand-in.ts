import { expect, vi } from "vitest";

// What the tests import from Vitest, where they run without it: they are collected, and whoever loads them runs them.

type Body = (...args: readonly unknown[]) => unknown;
type Declare = (name: unknown, ...rest: readonly unknown[]) => void;

const bodyOf = (rest: readonly unknown[]) => rest.find((one): one is Body => typeof one === "function");

/** Rows that are all arrays are spread over the arguments, others are handed over whole, as Vitest does it. */
const each = (declare: Declare) => (rows: readonly unknown[]) => {
  const spread = rows.every(Array.isArray);
  return (name: unknown, ...rest: readonly unknown[]) => {
    for (const row of rows) declare(name, () => bodyOf(rest)?.(...(spread ? (row as unknown[]) : [row])));
  };
};

/** The module in Vitest's place, and the tests that were collected through it. */
export function standIn(): { readonly module: object; readonly tests: readonly Body[] } {
  const tests: Body[] = [];
  const test: Declare = (_, ...rest) => {
    const body = bodyOf(rest);
    if (body) tests.push(body);
  };
  const describe: Declare = (_, ...rest) => bodyOf(rest)?.();
  const module = {
    expect,
    vi,
    test: Object.assign(test, { each: each(test) }),
    describe: Object.assign(describe, { each: each(describe) }),
  };
  return { module, tests };
}
