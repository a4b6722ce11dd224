// Texts that somebody might type or paste to do harm.

import { expect } from "vitest";
import { Refusal } from "../../shared/base/refusal.ts";
import { call } from "../../src/functions/call.ts";
import { FUNCTIONS } from "../../src/functions/index.ts";

export const FORMULAS = [
  '=IMPORTXML("x";"y")',
  "=1+1",
  "+1+1",
  "-1+1",
  "@SUM(A1)",
  "\t=1+1",
  "\r=1+1",
  "\n=1+1",
  " =1+1",
  "'=1+1",
  "=cmd|' /C calc'!A0",
];
export const MARKUP = [
  "<img src=x onerror=alert(1)>",
  "</script><script>alert(1)</script>",
  "<!--",
  "&lt;b&gt;",
  "{{x}}",
  "[[x]]",
  "javascript:alert(1)",
];
export const PROTOTYPE = [
  "__proto__",
  "constructor",
  "prototype",
  "toString",
  "valueOf",
  "hasOwnProperty",
  "__defineGetter__",
  "then",
];
export const NASTY = [...FORMULAS, ...MARKUP, ...PROTOTYPE];

/** Calls a function as a formula cell does; anything but an answer or a sentence fails. */
export function answerOrSentence(name: string, args: readonly unknown[]): unknown {
  const made = FUNCTIONS.find((one) => one.name === name);
  if (made === undefined) throw new Error(`no function is called ${name}`);
  try {
    return call(made, args);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    expect(error.message.startsWith(`${name}: `)).toBe(true);
    expect(error.message.length, error.message.slice(0, 300)).toBeLessThan(2000);
    return "";
  }
}
