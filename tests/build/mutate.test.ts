import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { explainedIn, type MutantReport, summary, survivors } from "../../src/build/mutate/report.ts";
import { TOPICS } from "../../src/build/mutate/topics.ts";

// Mutation testing is run by hand; what it counts, and what was explained to it, is checked here.

const EXPLAINED = readFileSync("src/build/mutate/explained.txt", "utf8");

/** Changes of "a > b" in the second line of a file, and how each went. */
function reportOf(...statuses: readonly string[]): MutantReport {
  const location = { start: { line: 2, column: 7 }, end: { line: 2, column: 12 } };
  const mutants = statuses.map((status, at) => ({ mutatorName: "Some", replacement: `${at}`, status, location }));
  return { files: { "one.ts": { source: "// A\n  if (a > b) c();\n", mutants } } };
}

describe("a report", () => {
  const report = reportOf("Killed", "Survived", "Timeout", "NoCoverage", "Ignored", "CompileError");
  test("counts what was noticed among what could be, what never ended with it, what no test reaches against it", () => {
    expect(summary(report, new Set()).split("\n")[1]?.split(/ {2,}/)).toEqual([
      "one.ts",
      "4",
      "2",
      "1",
      "2",
      "0",
      "50.0 %",
    ]);
  });
  test("tells a survivor by its line, until that is explained", () => {
    expect(survivors(report, new Set())).toBe(
      [
        "one.ts:2:7 Some",
        "  one.ts ‹if (a > b) c();› a > b → 1",
        "one.ts:2:7 Some (no test comes here)",
        "  one.ts ‹if (a > b) c();› a > b → 3",
        "",
      ].join("\n"),
    );
    const explained = explainedIn("Why not.\n\n  one.ts ‹if (a > b) c();› a > b → 1\n");
    expect(survivors(report, explained)).not.toContain("→ 1");
    expect(summary(report, explained).split("\n")[1]).toMatch(/ 2 {10}1 {2}50\.0 %$/);
  });
});

test("what is explained still stands in the sources", () => {
  for (const line of explainedIn(EXPLAINED)) {
    const [, file = "", code = "", from = ""] = /^(\S+) ‹(.+)› (.+) → .+$/.exec(line) ?? [];
    const lines = readFileSync(file, "utf8").split("\n");
    expect(
      lines.map((one) => one.trim()),
      line,
    ).toContain(code);
    expect(lines.join(" ").replace(/\s+/g, " "), line).toContain(from);
  }
});

test("a topic's files and tests are there, and no file is in two topics", () => {
  const files = Object.values(TOPICS).flatMap((topic) => topic.files);
  expect(new Set(files).size).toBe(files.length);
  for (const file of files) expect(readFileSync(file, "utf8")).not.toBe("");
  for (const { tests } of Object.values(TOPICS))
    for (const name of tests) expect(readFileSync(`tests/${name}.test.ts`, "utf8")).toMatch(/\b(test|describe)\b/);
});
