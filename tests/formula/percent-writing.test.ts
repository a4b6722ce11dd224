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

type Way = "ratio" | "plain" | "text";
const written = (percent: number, way: Way): unknown =>
  way === "plain" ? percent : way === "ratio" ? percent / 100 : `${percent}%`;

function outcome(rows: readonly (readonly [string, number])[], ways: readonly Way[]): "right" | "refused" | "wrong" {
  try {
    const cells = rows.map(([, percent], row) => [written(percent, ways[row] ?? "ratio")]);
    const kinds = rows.map(([kind]) => [kind]);
    const weights = run("BAKE_WEIGHTS", cells, kinds, 1000, "flour") as number[][];
    const isRight = rows.every(([, percent], row) => Math.abs((weights[row]?.[0] ?? 0) - 10 * percent) < 1e-6);
    return isRight ? "right" : "wrong";
  } catch {
    return "refused";
  }
}

describe.each(Object.entries(FORMULAS))("%s", (_name, rows) => {
  test.each(["ratio", "plain", "text"] as const)("as %s throughout", (way) =>
    expect(
      outcome(
        rows,
        rows.map(() => way),
      ),
    ).toBe("right"),
  );
  test("some rows as text with a % sign: right beside ratios and beside plain figures", () => {
    for (const way of ["ratio", "plain"] as const)
      for (let mask = 0; mask < 2 ** rows.length; mask++)
        expect(
          outcome(
            rows,
            rows.map((_, row): Way => ((mask >> row) & 1 ? "text" : way)),
          ),
        ).toBe("right");
  });
  test("ratios and plain figures mixed in any way: right or refused", () => {
    const met = new Set<string>();
    for (let mask = 0; mask < 2 ** rows.length; mask++) {
      const ways = rows.map((_, row): Way => ((mask >> row) & 1 ? "plain" : "ratio"));
      const got = outcome(rows, ways);
      met.add(got);
      expect(got, ways.join(" ")).not.toBe("wrong");
    }
    expect(met.has("refused")).toBe(true);
  });
});
