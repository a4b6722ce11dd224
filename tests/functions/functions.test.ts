import { readdirSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { call } from "../../src/functions/call.ts";
import { FAMILIES } from "../../src/functions/define.ts";
import { FUNCTIONS } from "../../src/functions/index.ts";
import { expectCells, refusal, typed } from "./support.ts";

describe.each(FUNCTIONS)("$name", (made) => {
  for (const { call: args, gives, within, source } of made.examples) {
    test(`${typed(made.name, args)} — ${source}`, () => {
      expectCells(call(made, args), gives, within);
    });
  }
  for (const { call: args, because } of made.refusals) {
    test(`${typed(made.name, args)} is refused`, () => {
      expect(refusal(made.name, ...args)).toBe(because);
    });
  }
  test("its help is short, plain text, and says what may be left out", () => {
    const args = Object.entries(made.args);
    expect(made.summary.length).toBeLessThanOrEqual(140);
    for (const [name, { is, says }] of args) {
      expect(name).toMatch(/^[a-z][a-z_]*$/);
      expect(says.startsWith("(optional) "), `${name}: ${says}`).toBe(
        is.optional && !/where they are known/.test(says),
      );
    }
    for (const line of [made.summary, made.returns.says, ...args.map(([, { says }]) => says)]) {
      expect(line).not.toMatch(/\*\/|[\r\n<>]/);
      expect(line).toMatch(/[.)]$/);
    }
  });
});

test("every file of a function is in the list, once, under its own name and in its family's place", () => {
  const files = readdirSync("src/functions", { recursive: true, encoding: "utf8" })
    .filter((file) => /\/[A-Z0-9]+\.ts$/.test(file))
    .map((file) => `BAKE_${file.replace(/^.*\/|\.ts$/g, "")}`);
  expect(FUNCTIONS.map(({ name }) => name).sort()).toEqual(files.sort());
  const families = FUNCTIONS.map(({ family }) => FAMILIES.indexOf(family));
  expect(families).toEqual([...families].sort((a, b) => a - b));
});
