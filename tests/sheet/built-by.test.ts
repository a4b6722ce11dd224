import { expect, test } from "vitest";
import { VERSION } from "../../shared/base/version.ts";
import { BUILT_BY, builtByColumn, newerBuild } from "../../shared/sheet/built-by.ts";
import { plan } from "../../shared/sheet/plan.ts";
import { formulaHistory } from "../../templates/formula-history.ts";
import { formulaList } from "../../templates/formula-list.ts";
import { SHEETS } from "../../templates/index.ts";
import { lotLog } from "../../templates/production/lot-log.ts";

const UNITS = [
  { weight: "g", temperature: "C", length: "cm" },
  { weight: "oz", temperature: "F", length: "in" },
] as const;

test.each([...SHEETS, formulaHistory, formulaList, lotLog].map((model) => [model.name, model] as const))(
  "%s says once in its first rows which version built it, where nothing else stands",
  (_name, model) => {
    for (const units of UNITS)
      for (const parts of [[], model.parts]) {
        const { values, widths, formulas } = plan(model, { ...units, parts }, model.sample);
        if (values[0]?.length === 1) continue;
        const places = values.flatMap((row, at) =>
          row.flatMap((cell, column) => (cell === BUILT_BY ? [{ row: at, column }] : [])),
        );
        expect(places).toHaveLength(1);
        const { row = -1, column = -1 } = places[0] ?? {};
        expect(row).toBe(0);
        // A screen of 1280 beside the sidebar shows it whole: its words take some 90 pixels.
        expect(widths.slice(0, column).reduce((sum, width) => sum + width, 90)).toBeLessThanOrEqual(920);
        expect(
          formulas.some(
            (one) => one.row === 0 && one.column <= column && column < one.column + (one.cells[0]?.length ?? 0),
          ),
        ).toBe(false);
      }
  },
);

test("its column is the last blank one that begins on the screen and has room", () => {
  expect(builtByColumn(["Title", "", "", ""], [100, 80, 80, 80])).toBe(2);
  expect(builtByColumn(["Title", "", "", ""], [400, 530, 80, 300])).toBe(1);
  expect(builtByColumn(["Title", "x", ""], [100, 80, 80])).toBeNull();
  expect(builtByColumn(["Title", "", "x"], [100, 200, 80])).toBe(1);
});

test("a newer version is told by its numbers, in any of the first three rows", () => {
  const sheet = (text: string) => [["Loaf"], ["", text]];
  expect(newerBuild(sheet("Gramwright 0.10.0"), "0.9.9")).toBe("0.10.0");
  expect(newerBuild(sheet("Gramwright 0.9.9"), "0.10.0")).toBeNull();
  expect(newerBuild(sheet(BUILT_BY), VERSION)).toBeNull();
  expect(newerBuild(sheet("Gramwright 1.0.0"), "0.99.99")).toBe("1.0.0");
  expect(newerBuild(sheet("Gramwright bakes"), "0.1.0")).toBeNull();
  expect(newerBuild([["a"], ["b"], ["c"], ["Gramwright 9.0.0"]], "0.1.0")).toBeNull();
  expect(newerBuild([], "0.1.0")).toBeNull();
});
