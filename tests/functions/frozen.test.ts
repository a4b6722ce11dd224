// What is in somebody's cells already must go on working: names and the order of arguments are kept for good.
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { SheetFunction } from "../../src/functions/define.ts";
import { FUNCTIONS } from "../../src/functions/index.ts";

const FILE = "src/functions/frozen.txt";

type Kept = Pick<SheetFunction, "name" | "args">;
type Argument = { readonly name: string; readonly optional: boolean };

/** `BAKE_X(a; b; [c])`: what may be left out in brackets. */
function lineOf({ name, args }: Kept): string {
  return `${name}(${argumentsOf({ args })
    .map((one) => (one.optional ? `[${one.name}]` : one.name))
    .join("; ")})`;
}

const argumentsOf = ({ args }: Pick<Kept, "args">): Argument[] =>
  Object.entries(args).map(([name, { is }]) => ({ name, optional: is.optional }));

function readLine(line: string): { name: string; args: Argument[] } {
  const [, name, inside = ""] = /^(BAKE_[A-Z]+)\(([^()]*)\)$/.exec(line) ?? [];
  if (name === undefined) throw new Error(`${FILE}: "${line}" is not of the form BAKE_X(a; b; [c])`);
  const args = inside.split("; ").map((one) => ({ name: one.replace(/^\[|\]$/g, ""), optional: one.startsWith("[") }));
  return { name, args };
}

/** Promises that the functions no longer keep, and lines that the list does not have yet. */
function compared(lines: readonly string[], functions: readonly Kept[]): { broken: string[]; missing: string[] } {
  const broken: string[] = [];
  const promised = lines.map(readLine);
  for (const { name, args } of promised) {
    const made = functions.find((one) => one.name === name);
    if (made === undefined) {
      broken.push(`${name} is gone; cells that use it would show #NAME?`);
      continue;
    }
    const now = argumentsOf(made);
    args.forEach((was, at) => {
      const is = now[at];
      if (is?.name !== was.name)
        broken.push(`${name}: argument ${at + 1} was ${was.name} and is ${is?.name ?? "gone"}`);
      else if (was.optional && !is.optional) broken.push(`${name}: ${was.name} could be left out and no longer can`);
    });
    for (const { name: added, optional } of now.slice(args.length)) {
      if (!optional) broken.push(`${name}: the new argument ${added} must be one that can be left out`);
    }
  }
  const known = new Set(lines);
  return { broken, missing: functions.map(lineOf).filter((line) => !known.has(line)) };
}

const frozen = () =>
  readFileSync(FILE, "utf8")
    .split("\n")
    .filter((line) => line !== "" && !line.startsWith("#"));

test("every name and every argument's place is as it was published", () => {
  const { broken, missing } = compared(frozen(), FUNCTIONS);
  if (missing.length > 0) {
    console.warn(
      `${FILE} promises less than there is. Once published, add (or put in place of the shorter line):\n${missing.join("\n")}`,
    );
  }
  expect(broken).toEqual([]);
});

test("list, reference and README say from when", () => {
  for (const file of [FILE, "src/functions/README.md", "README.md"])
    expect(readFileSync(file, "utf8"), file).toMatch(/\bfrozen\s+from\s+2026-11-30\b/i);
});

test("the list names each function once", () => {
  const names = frozen().map((line) => readLine(line).name);
  expect(new Set(names).size).toBe(names.length);
  expect(names.length).toBeGreaterThan(50);
});

describe("the comparison", () => {
  const SCALE = made("BAKE_SCALE", "weights", "factor", "[step]");
  const line = "BAKE_SCALE(weights; factor; [step])";

  test("finds what is the same, and says the line of a new function", () => {
    expect(compared([line], [SCALE])).toEqual({ broken: [], missing: [] });
    expect(compared([line], [SCALE, made("BAKE_NEW", "a")])).toEqual({ broken: [], missing: ["BAKE_NEW(a)"] });
  });

  test("lets an optional last argument come, and an argument become optional", () => {
    expect(compared([line], [made("BAKE_SCALE", "weights", "factor", "[step]", "[unit]")]).broken).toEqual([]);
    expect(compared([line], [made("BAKE_SCALE", "weights", "[factor]", "[step]")]).broken).toEqual([]);
  });

  test.each([
    ["a function that is gone", made("BAKE_OTHER", "weights"), /BAKE_SCALE is gone/],
    ["a renamed argument", made("BAKE_SCALE", "weights", "times", "[step]"), /argument 2 was factor and is times/],
    ["changed places", made("BAKE_SCALE", "factor", "weights", "[step]"), /argument 1 was weights and is factor/],
    ["an argument less", made("BAKE_SCALE", "weights", "factor"), /argument 3 was step and is gone/],
    ["one that can no longer be left out", made("BAKE_SCALE", "weights", "factor", "step"), /step could be left out/],
    [
      "a new one that is needed",
      made("BAKE_SCALE", "weights", "factor", "[step]", "unit"),
      /new argument unit must be one/,
    ],
    [
      "a new one between the others",
      made("BAKE_SCALE", "weights", "[unit]", "factor", "[step]"),
      /argument 2 was factor and is unit/,
    ],
  ])("finds %s", (_, changed, sentence) => {
    expect(compared([line], [changed]).broken.join("\n")).toMatch(sentence);
  });

  test("does not take a line it cannot read", () => {
    expect(() => compared(["BAKE_SCALE weights"], [SCALE])).toThrow(/is not of the form/);
  });
});

function made(name: string, ...args: string[]): Kept {
  const decoder = FUNCTIONS[0]?.args.weights?.is;
  if (decoder === undefined) throw new Error("the first function has no weights");
  const parts = args.map((arg) => [
    arg.replace(/[[\]]/g, ""),
    { is: { ...decoder, optional: arg.startsWith("[") }, says: "" },
  ]);
  return { name, args: Object.fromEntries(parts) };
}
