// Cells of 50 000 letters, in every argument and in every cell of its range: refused or read at a glance.

import { expect, test } from "vitest";
import { Refusal } from "../../shared/base/refusal.ts";
import { COLUMNS } from "../../shared/larder/larder-columns.ts";
import { call } from "../../src/functions/call.ts";
import { FUNCTIONS } from "../../src/functions/index.ts";
import { IS_LONG } from "../kit/scale.ts";

const LENGTH = 50_000;
/** What readers look for, over and over: digits, marks, brackets, words, shares, blanks. */
const PARTS = [
  ...["a", "1", "1 ", "(", "1 (", "2 x ", "a ", "½", "1/", "egg;", "100 g plus ", "wheat, ", "sugar 5%, ", "tbsp 5; "],
  ...["  %", "-", "1,", ".", "=", "'", "é", " "],
];
const TEXTS = [
  ...PARTS.map((part) => part.repeat(Math.ceil(LENGTH / part.length)).slice(0, LENGTH)),
  `sugar ${" ".repeat(LENGTH)}5%`,
  `${"1".repeat(LENGTH)}x`,
];

const cpu = (work: () => void): number => {
  const from = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(from);
  return user + system;
};
/** Ten million turns of a loop that multiplies and adds: what the limit is stated in. */
const loop = (): number => {
  let sum = 0;
  for (let at = 0; at < 10_000_000; at++) sum += (at * 1.01) / 3;
  return sum;
};
/** 300 ms where the loop takes 15. */
const LIMIT = 20;

const LARDER = [
  Object.keys(COLUMNS),
  ...["egg", "flour"].map((name) =>
    Object.keys(COLUMNS).map(
      (column) =>
        (({ ingredient: name, price: 5, pack: "1 kg", allergens: "egg" }) as Record<string, unknown>)[column] ?? "",
    ),
  ),
];
const put = (table: readonly (readonly unknown[])[], row: number, column: number, text: string): unknown[][] =>
  table.map((cells, at) => cells.map((cell, place) => (at === row && place === column ? text : cell)));

/** The calls of a function with a long text in one place after another. */
function* callsOf(made: (typeof FUNCTIONS)[number], text: string): Generator<readonly unknown[]> {
  const args = made.examples[0]?.call ?? [];
  const names = Object.keys(made.args);
  const larder = names.indexOf("larder");
  for (const [at, arg] of names.map((_, index) => [index, args[index]] as const)) {
    const filled = (value: unknown) => names.map((_, index) => (index === at ? value : args[index]));
    yield filled(text);
    if (!Array.isArray(arg)) continue;
    for (let column = 0; column < (arg[0]?.length ?? 0); column++)
      yield filled(put(arg, arg.length > 1 ? 1 : 0, column, text));
  }
  if (larder < 0) return;
  const named = names.findIndex((name) => /^(?:ingredients?|from|lines)$/.test(name));
  for (let column = 0; column < Object.keys(COLUMNS).length; column++)
    yield names.map((_, index) => {
      if (index === larder) return put(LARDER, 1, column, text);
      return index === named ? (Array.isArray(args[index]) ? args[index].map(() => ["egg"]) : "egg") : args[index];
    });
}

test(`no call takes ${LIMIT} times as long as a loop of ten million turns`, () => {
  const turns = Math.min(...Array.from({ length: 5 }, () => cpu(loop)));
  let worst = { time: 0, what: "" };
  let calls = 0;
  for (const [place, made] of FUNCTIONS.entries())
    for (const [at, text] of TEXTS.entries()) {
      // Every eighth text of each function in npm test, another one for the next function.
      if (!IS_LONG && (place + at) % 8 !== 0) continue;
      for (const args of callsOf(made, text)) {
        calls++;
        const once = () =>
          cpu(() => {
            try {
              call(made, args);
            } catch (error) {
              if (!(error instanceof Refusal)) throw error;
              expect(error.message.length).toBeLessThan(2000);
            }
          });
        let time = once();
        // A collection of all garbage of the tests before may fall into any call: one that is slow by itself is so again.
        if (time > LIMIT * turns) time = Math.min(time, once(), once());
        if (time > worst.time) worst = { time, what: `${made.name} ${text.slice(0, 8)}` };
      }
    }
  expect(calls).toBeGreaterThan(1000);
  expect(worst.time / turns, worst.what).toBeLessThan(LIMIT);
});
