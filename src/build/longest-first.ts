import { existsSync } from "node:fs";
import { relative } from "node:path";
import { BaseSequencer, type TestSpecification } from "vitest/node";

/** The test files that take longest, in seconds on one core of a usual computer, so that both workers end together. Rough figures do. */
const SECONDS: Readonly<Record<string, number>> = {
  "tests/sidebar/paste-to-card.test.ts": 60,
  "tests/templates/formula-sheet-hostile.test.ts": 42,
  "tests/templates/formula-sheet-moves.test.ts": 41,
  "tests/add-on/outage.test.ts": 40,
  "tests/sidebar/keyboard.test.ts": 35,
  "tests/workbook/keeping.test.ts": 3,
  "tests/planners/formula-list.test.ts": 25,
  "tests/add-on/service-calls.test.ts": 18,
  "tests/sidebar/building.test.ts": 18,
  "tests/sidebar/paste-recipe.test.ts": 17,
  "tests/sidebar/paste-staged.test.ts": 16,
  "tests/templates/main-job.test.ts": 16,
  "tests/planners/formula-list-by-hand.test.ts": 15,
  "tests/sidebar/day.test.ts": 15,
  "tests/cells/hostile.test.ts": 14,
  "tests/templates/templates.test.ts": 14,
  "tests/sidebar/functions.test.ts": 12,
  "tests/sidebar/hand-out.test.ts": 12,
  "tests/planners/check-sheet.test.ts": 11,
  "tests/planners/formula-list-failures.test.ts": 8,
};

/** Begins with the longest files; the others follow as vitest orders them. */
export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    for (const name of Object.keys(SECONDS))
      if (!existsSync(name)) throw new Error(`${name} is gone: take it out of longest-first.ts, or give its new name.`);
    const name = (file: TestSpecification) => relative(process.cwd(), file.moduleId).replaceAll("\\", "/");
    const seconds = (file: TestSpecification) => SECONDS[name(file)] ?? 0;
    return (await super.sort(files)).sort((one, other) => seconds(other) - seconds(one));
  }
}
