// The search of the panel Functions: a right function is among the first three for 95 of 100 phrases at least.
import { expect, test } from "vitest";
import { findFunctions } from "../../sidebar/functions/help.ts";
import { functionHelp } from "../../src/build/help.ts";
import { PHRASES } from "./functions-phrases.ts";

test("a hundred phrases and more of a manager find their function", () => {
  expect(PHRASES.length).toBeGreaterThanOrEqual(100);
  const all = functionHelp();
  const known = new Set(all.map(({ name }) => name.replace("BAKE_", "")));
  expect(PHRASES.flatMap(([, ...answers]) => answers).filter((name) => !known.has(name))).toEqual([]);
  const missed = PHRASES.flatMap(([phrase, ...answers]) => {
    const first = findFunctions(all, phrase)
      .slice(0, 3)
      .map(({ name }) => name.replace("BAKE_", ""));
    return first.some((name) => answers.includes(name))
      ? []
      : [`${phrase}: ${first.join(" ")}, not ${answers.join(", ")}`];
  });
  expect(missed.length, missed.join("\n")).toBeLessThanOrEqual(0.05 * PHRASES.length);
});
