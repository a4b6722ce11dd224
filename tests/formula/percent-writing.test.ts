import { describe, expect, test } from "vitest";
import { run } from "../functions/support.ts";

// Percentages of the flour: common practice for each of the five (from memory), salt and leavening left out of the mixture of
// ratios and plain figures where a figure is usual either way (0.5 of salt, 4 of baking powder, kind "other").
const FORMULAS: Readonly<Record<string, readonly (readonly [kind: string, percent: number])[]>> = {
  bread: [
    ["flour", 100],
    ["water", 66],
    ["salt", 2],
    ["yeast", 1],
    ["fat", 2],
  ],
  cake: [
    ["flour", 100],
    ["sugar", 110],
    ["fat", 55],
    ["egg", 60],
    ["dairy", 85],
    ["salt", 1.5],
  ],
  "angel food": [
    ["flour", 100],
    ["egg", 330],
    ["sugar", 250],
    ["salt", 1.5],
  ],
  "rich fruit cake": [
    ["flour", 100],
    ["fruit", 400],
    ["sugar", 90],
    ["fat", 90],
    ["egg", 110],
  ],
  croissant: [
    ["flour", 100],
    ["water", 28],
    ["dairy", 25],
    ["sugar", 12],
    ["salt", 2],
    ["yeast", 4],
    ["fat", 55],
  ],
};

type Rows = readonly (readonly [kind: string, percent: number])[];
type Way = "ratio" | "plain" | "text" | "spaced text";
const typed = (percent: number, way: Way): unknown =>
  way === "plain"
    ? percent
    : way === "ratio"
      ? percent / 100
      : way === "text"
        ? `${percent}%`
        : `\u00a0${String(percent).replace(".", ",")} %`;

type Outcome = "right" | "refused" | "wrong";
/** Every function that takes a column of percentages: what it makes of these rows, typed in these ways. */
const FUNCTIONS: Readonly<Record<string, (rows: Rows, ways: readonly Way[]) => Outcome>> = {
  BAKE_WEIGHTS: (rows, ways) =>
    compared(rows, () => run("BAKE_WEIGHTS", ...columns(rows, ways), 1000, "flour"), [(percent) => 10 * percent]),
  "BAKE_FILLIN for an amount": (rows, ways) =>
    compared(rows, () => {
      const [percents, kinds] = columns(rows, ways);
      return run("BAKE_FILLIN", percents, "", kinds, 1000, "flour");
    }, [(percent) => percent / 100, (percent) => 10 * percent]),
  "BAKE_FILLIN beside the flour's weight": (rows, ways) =>
    compared(rows, () => {
      const [percents, kinds] = columns(rows, ways);
      const weights = rows.map(([kind]) => [kind === "flour" ? 1000 : ""]);
      return run("BAKE_FILLIN", percents, weights, kinds);
    }, [(percent) => percent / 100, (percent) => 10 * percent]),
  // Remarks are right where they are those of the same column in ratios; an unclear row asks what is meant.
  BAKE_REVIEW: (rows, ways) => {
    const review = (as: readonly Way[]) => {
      const [percents, kinds] = columns(rows, as);
      return JSON.stringify(run("BAKE_REVIEW", kinds, kinds, percents, "sweet dough"));
    };
    try {
      const remarks = review(ways);
      if (/meant\b/.test(remarks)) return "refused";
      return remarks === review(rows.map(() => "ratio")) ? "right" : "wrong";
    } catch {
      return "refused";
    }
  },
};

const columns = (rows: Rows, ways: readonly Way[]) => [
  rows.map(([, percent], row) => [typed(percent, ways[row] ?? "ratio")]),
  rows.map(([kind]) => [kind]),
];

function compared(rows: Rows, answer: () => unknown, wanted: readonly ((percent: number) => number)[]): Outcome {
  try {
    const got = answer() as number[][];
    const isRight = rows.every(([, percent], row) =>
      wanted.every((of, column) => Math.abs((got[row]?.[column] ?? Number.NaN) - of(percent)) < 1e-9 * of(percent)),
    );
    return isRight ? "right" : "wrong";
  } catch {
    return "refused";
  }
}

/** Every way to give some of the rows the one and the others the other. */
const mixtures = (rows: Rows, one: Way, other: Way): Way[][] =>
  Array.from({ length: 2 ** rows.length }, (_, mask) => rows.map((_, row) => ((mask >> row) & 1 ? one : other)));

describe.each(Object.entries(FUNCTIONS))("%s", (_function, outcome) => {
  describe.each(Object.entries(FORMULAS))("%s", (_name, rows) => {
    test.each(["ratio", "plain", "text", "spaced text"] as const)("as %s throughout", (way) =>
      expect(
        outcome(
          rows,
          rows.map(() => way),
        ),
      ).toBe("right"),
    );
    test("some rows as text with a % sign: right beside ratios and beside plain figures", () => {
      for (const text of ["text", "spaced text"] as const)
        for (const way of ["ratio", "plain"] as const)
          for (const ways of mixtures(rows, text, way)) expect(outcome(rows, ways), ways.join(" ")).toBe("right");
    });
    test("ratios and plain figures mixed in any way: right or refused", () => {
      const met = new Set<string>();
      for (const ways of mixtures(rows, "plain", "ratio")) {
        const got = outcome(rows, ways);
        met.add(got);
        expect(got, ways.join(" ")).not.toBe("wrong");
      }
      expect(met.has("refused")).toBe(true);
    });
  });
});
