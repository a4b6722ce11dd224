import { Refusal } from "../../shared/base/refusal.ts";
import { number } from "../../shared/cells/cell.ts";
import { call } from "../../src/functions/call.ts";
import type { SheetFunction } from "../../src/functions/define.ts";

// Made-up functions, so that nothing but the way of a call has a say.

export const weight = number<number>("a weight such as 350", { min: 0 });
export const says = "made up.";
const example = { call: [], gives: "", origin: "own", source: "none: made up" } as const;
export const made = {
  family: "Formula",
  summary: "Made up.",
  examples: [example],
  refusals: [{ call: [], because: "" }],
} as const;

export const given = (one: SheetFunction, ...raw: unknown[]) => call(one, raw);
export const refused = (one: SheetFunction, ...raw: unknown[]) => {
  try {
    return `answered ${JSON.stringify(call(one, raw))}`;
  } catch (error) {
    if (error instanceof Refusal) return error.message;
    throw error;
  }
};
