import { existsSync } from "node:fs";
import { relative } from "node:path";
import { BaseSequencer, type TestSpecification } from "vitest/node";

/** The test files that take longest, in seconds on one core of a usual computer, so that both workers end together. Rough figures do. */
const SECONDS: Readonly<Record<string, number>> = {
  "tests/add-on/outage.test.ts": 30,
  "tests/sidebar/paste-to-card.test.ts": 25,
  "tests/workbook/page-outage.test.ts": 25,
  "tests/planners/change-parts.test.ts": 22,
  "tests/workbook/page-tabs.test.ts": 22,
  "tests/templates/main-job.test.ts": 22,
  "tests/workbook/start.test.ts": 20,
  "tests/sidebar/day.test.ts": 20,
  "tests/sidebar/keyboard.test.ts": 20,
  "tests/sidebar/check-panel.test.ts": 18,
  "tests/build/one-file.test.ts": 18,
  "tests/planners/formula-list.test.ts": 17,
  "tests/templates/formula-sheet-moves.test.ts": 17,
  "tests/templates/templates.test.ts": 17,
  "tests/sidebar/paste-recipe.test.ts": 16,
  "tests/add-on/meanwhile.test.ts": 15,
  "tests/templates/formula-sheet-hostile.test.ts": 15,
  "tests/production/week.test.ts": 15,
  "tests/workbook/xlsx-formula-sheet.test.ts": 15,
  "tests/sidebar/building.test.ts": 14,
  "tests/build/one-file-firefox.test.ts": 14,
  "tests/protocol/hostile-questions.test.ts": 14,
  "tests/planners/formula-list-by-hand.test.ts": 13,
  "tests/card/staff-card.test.ts": 12,
  "tests/workbook/page.test.ts": 12,
  "tests/cells/hostile.test.ts": 12,
  "tests/workbook/page-keeping.test.ts": 12,
  "tests/templates/demo-shop.test.ts": 12,
  "tests/add-on/service-calls.test.ts": 11,
  "tests/sidebar/sidebar.test.ts": 11,
  "tests/sidebar/functions.test.ts": 11,
  "tests/templates/formula-sheet-copies.test.ts": 11,
  "tests/sidebar/self-check-page.test.ts": 10,
  "tests/planners/check-sheet.test.ts": 10,
  "tests/functions/sentences.test.ts": 10,
  "tests/typing/on-edit.test.ts": 10,
  "tests/templates/still-calculating.test.ts": 10,
  "tests/add-on/reports-sheets.test.ts": 10,
  "tests/typing/random-edits.test.ts": 10,
  "tests/sidebar/hand-out.test.ts": 9,
  "tests/planners/adjust.test.ts": 9,
  "tests/sidebar/adjust.test.ts": 9,
};

/** Measures times, so it comes before anything that fills the memory of its worker. */
const FIRST = "tests/cells/long-text.test.ts";

/** Begins with the longest files; the others follow as vitest orders them. */
export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    for (const name of [FIRST, ...Object.keys(SECONDS)])
      if (!existsSync(name)) throw new Error(`${name} is gone: take it out of longest-first.ts, or give its new name.`);
    const name = (file: TestSpecification) => relative(process.cwd(), file.moduleId).replaceAll("\\", "/");
    const seconds = (file: TestSpecification) =>
      name(file) === FIRST ? Number.POSITIVE_INFINITY : (SECONDS[name(file)] ?? 0);
    return (await super.sort(files)).sort((one, other) => seconds(other) - seconds(one));
  }
}
