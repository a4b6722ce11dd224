// What functions say to a user: "enter" for typing, "choose" for lists, and never "write".

import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { Refusal } from "../../shared/base/refusal.ts";
import { call } from "../../src/functions/call.ts";
import { FUNCTIONS } from "../../src/functions/index.ts";

const WRITE = /\bwrit(?:e|es|ing|ten)\b/i;
/** What nobody should read: what the product calls itself or its errors, and words that blame. */
const UNKIND = /\b(?:refused|mend|invalid|illegal|undefined|NaN|\[object)\b/;

/** Values that one argument or another refuses: percents typed plain, texts, blanks, ticks, dates, extremes. */
const BAD: readonly unknown[] = [
  ...[65, -5, 0, 1e-4, 1e9, 1e15, Number.NaN, Number.POSITIVE_INFINITY, 1.5, 14],
  ...["abc", "", "1,250", "1e2", "5 kg", "9 in", "a cup", "65%", "dry", "2 bags (25 kg)", "1/0", "butter", "levain"],
  ...[true, new Date(2026, 0, 2), new Date(1899, 11, 30, 1, 30), "#N/A", "Loading...", undefined],
];

/** Every sentence and every text that a call of this function answers with, one argument after another made bad. */
function saidBy(made: (typeof FUNCTIONS)[number]): string[] {
  const said: string[] = [];
  const tryOut = (args: readonly unknown[]) => {
    try {
      said.push(JSON.stringify(call(made, args)));
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      said.push(error.message);
    }
  };
  for (const { call: args } of [...made.examples, ...made.refusals]) {
    Object.keys(made.args).forEach((_, at) => {
      for (const bad of BAD) {
        const put = [...args] as unknown[];
        while (put.length <= at) put.push(undefined);
        const arg = args[at];
        put[at] = Array.isArray(arg) ? arg.map((row, down) => (down === 0 ? [...row].fill(bad) : row)) : bad;
        tryOut(put);
        put[at] = bad;
        tryOut(put);
        put[at] = [[bad], [bad], [bad], [bad], [bad]];
        tryOut(put);
      }
    });
  }
  return said;
}

describe.each(FUNCTIONS)("$name", (made) => {
  test("its help and its examples say neither", () => {
    const { summary, returns, args, examples, refusals } = made;
    const texts = [
      summary,
      ...Object.values(returns).flat(),
      ...Object.values(args).flatMap(({ is, says }) => [says, "what" in is.hint ? is.hint.what : ""]),
      ...examples.map(({ gives }) => JSON.stringify(gives)),
      ...refusals.map(({ because }) => because),
    ];
    for (const text of texts) {
      expect(text).not.toMatch(WRITE);
      expect(text).not.toMatch(UNKIND);
    }
  });
  test("whatever it is given, it says neither", () => {
    const said = saidBy(made);
    expect(said.length).toBeGreaterThan(20);
    for (const text of said) {
      expect(text).not.toMatch(WRITE);
      expect(text).not.toMatch(UNKIND);
    }
  });
});

/** Where sentences of functions stand; `protocol` and `sheet` talk to programs. */
const TOPICS = "base,cells,larder,formula,water,tins,enrichment,recipe,review,label,money".split(",");

test("no line of their sources says it, comments apart", () => {
  const folders = ["src/functions", ...TOPICS.map((topic) => `shared/${topic}`)];
  const lines = folders.flatMap((folder) =>
    readdirSync(folder, { recursive: true, encoding: "utf8" })
      .filter((file) => file.endsWith(".ts"))
      .flatMap((file) => readFileSync(`${folder}/${file}`, "utf8").split("\n")),
  );
  expect(lines.length).toBeGreaterThan(8000);
  const code = lines.filter((line) => !/^\s*(?:\/\/|\/\*|\*)/.test(line)).map((line) => line.replace(/\s\/\/ .*$/, ""));
  expect(code.filter((line) => WRITE.test(line))).toEqual([]);
});
