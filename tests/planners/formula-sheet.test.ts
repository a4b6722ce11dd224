import { describe, expect, test } from "vitest";
import { layOut } from "../../shared/sheet/layout.ts";
import type { SheetModel } from "../../shared/sheet/model.ts";
import { asFormulaSheet } from "../../src/planners/formula-sheet.ts";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { METRIC_UNITS } from "../kit/units.ts";
import { buildSheet } from "../templates/sheet-support.ts";

/** Cost and label stand only where there is a larder. */
const built = (model: SheetModel) => model.parts.filter((part) => part !== "cost" && part !== "label");
const read = (book: WorkbookHost, sheet: string) => asFormulaSheet(sheet, book.values(sheet, book.usedRange(sheet)));

describe.each(TEMPLATES)("$title", (model) => {
  test.each([
    { ...METRIC_UNITS, parts: built(model) },
    { weight: "oz", temperature: "F", length: "in", parts: built(model) },
    { ...METRIC_UNITS, length: "in", parts: [] },
  ] as const)("every named cell is found where it was built: %j", async (options) => {
    const known = layOut(model, options).names;
    const typed = Object.fromEntries(Object.entries(model.sample).filter(([name]) => known.has(name)));
    const { book, sheet, at } = await buildSheet(typed, { model, options });
    const found = read(book, sheet);
    expect(found?.model.name).toBe(model.name);
    expect(found?.options).toMatchObject({ weight: options.weight });
    const wrong = [...known.keys()].filter(
      (name) => !/_table$|_note$|^shop$|^check$|^chart_|^tin_size/.test(name) && found?.at(name) !== at(name),
    );
    expect(wrong).toEqual([]);
  });
});
