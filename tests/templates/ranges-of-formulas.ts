// No range that a formula sheet reads depends on a formula sheet, ranges taken as wholes: otherwise a spreadsheet that goes by whole
// ranges (LibreOffice does) finds a circle where no cell waits for itself.
import { beforeAll, expect, test } from "vitest";
import { columnNumber } from "../../shared/sheet/a1.ts";
import { asFormulaSheet } from "../../src/planners/formula-sheet.ts";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { LISTED_SHEETS } from "../../templates/index.ts";

type Area = {
  readonly sheet: string;
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
};
type Formula = { readonly row: number; readonly column: number; readonly reads: readonly Area[] };

const REFERENCE =
  /(?:(?:'((?:[^']|'')+)'|([A-Za-z_][\w.]*))!)?\$?([A-Z]{1,3})\$?(\d+)(?::\$?([A-Z]{1,3})\$?(\d+))?(?![\w(])/g;

function areasIn(formula: string, own: string, names: ReadonlyMap<string, Area>): Area[] {
  const bare = formula.replace(/"(?:[^"]|"")*"/g, '""');
  const named = [...bare.matchAll(/\bgramwright_\w+/g)].flatMap(([name]) => names.get(name) ?? []);
  const cells = [...bare.matchAll(REFERENCE)].map(
    ([, quoted, plain, left = "", top = "", right = left, bottom = top]) => ({
      sheet: quoted?.replace(/''/g, "'") ?? plain ?? own,
      top: Number(top),
      left: columnNumber(left),
      bottom: Number(bottom),
      right: columnNumber(right),
    }),
  );
  return [...cells, ...named];
}

const isRange = ({ top, bottom, left, right }: Area): boolean => bottom > top || right > left;
const holds = (area: Area, { row, column }: Pick<Formula, "row" | "column">): boolean =>
  row >= area.top && row <= area.bottom && column >= area.left && column <= area.right;

/** Tests of a workbook that is open by the time they run. */
export function testRanges(openedBook: () => WorkbookHost): void {
  let book: WorkbookHost;
  const formulas = new Map<string, readonly Formula[]>();
  const formulaSheets = new Set<string>();

  beforeAll(() => {
    book = openedBook();
    const names = new Map(
      book.engine
        .get<
          readonly {
            name: string;
            range: { sheetId: string; zone: { top: number; left: number; bottom: number; right: number } };
          }[]
        >("getNamedRanges")
        .map(({ name, range: { sheetId, zone } }): [string, Area] => [
          name,
          {
            sheet: book.engine.get<string>("getSheetName", sheetId),
            top: zone.top + 1,
            left: zone.left,
            bottom: zone.bottom + 1,
            right: zone.right,
          },
        ]),
    );
    for (const sheet of book.sheetNames()) {
      const range = book.usedRange(sheet);
      const cells = book
        .formulas(sheet, range)
        .flatMap((line, down) =>
          line.flatMap((formula, across) =>
            formula === undefined ? [] : [{ row: down + 1, column: across, reads: areasIn(formula, sheet, names) }],
          ),
        );
      formulas.set(sheet, cells);
      if (asFormulaSheet(sheet, book.values(sheet, range), [], LISTED_SHEETS) !== null) formulaSheets.add(sheet);
    }
  });

  /** Formula sheets that an area depends on by any number of steps, each range as a whole. */
  function sheetsBehind(start: Area): string[] {
    const seen = new Set<string>();
    const queue = [start];
    const behind = new Set<string>();
    for (const area of queue) {
      if (formulaSheets.has(area.sheet)) {
        behind.add(area.sheet);
        continue;
      }
      const key = JSON.stringify(area);
      if (seen.has(key)) continue;
      seen.add(key);
      for (const formula of formulas.get(area.sheet) ?? []) if (holds(area, formula)) queue.push(...formula.reads);
    }
    return [...behind];
  }

  test("the demo shop's formula sheets read ranges of other sheets, none of which a formula sheet stands behind", () => {
    expect(formulaSheets.size).toBeGreaterThanOrEqual(10);
    const read = new Map<string, Area>();
    for (const sheet of formulaSheets)
      for (const { reads } of formulas.get(sheet) ?? [])
        for (const area of reads) if (area.sheet !== sheet && isRange(area)) read.set(JSON.stringify(area), area);
    // Names, prices and labels of the ingredients, and the mix log.
    expect(new Set([...read.values()].map(({ sheet }) => sheet))).toEqual(new Set(["Ingredients"]));
    expect([...read.values()].flatMap(sheetsBehind)).toEqual([]);
  });

  test("of each other they read single cells alone, and what walks the ranges would find a formula sheet behind one", () => {
    const between = [...formulaSheets].flatMap((sheet) =>
      (formulas.get(sheet) ?? []).flatMap(({ reads }) =>
        reads.filter((area) => area.sheet !== sheet && formulaSheets.has(area.sheet)),
      ),
    );
    expect(between.length).toBeGreaterThan(20);
    expect(between.filter(isRange)).toEqual([]);
    // The table of costs reads the list, and the list every formula sheet.
    const costs = formulas.get("Costs and prices") ?? [];
    const list = costs.flatMap(({ reads }) => reads).find(({ sheet }) => sheet === "Formula list");
    expect(list && sheetsBehind(list).sort()).toEqual([...formulaSheets].sort());
  });
}
