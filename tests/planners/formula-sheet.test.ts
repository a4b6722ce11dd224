import { describe, expect, test } from "vitest";
import { layOut } from "../../shared/sheet/layout.ts";
import type { SheetModel } from "../../shared/sheet/model.ts";
import { asFormulaSheet } from "../../src/planners/formula-sheet.ts";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { someOf } from "../kit/scale.ts";
import { METRIC_UNITS } from "../kit/units.ts";
import { buildSheet } from "../templates/sheet-support.ts";

/** Cost and label stand only where there is a larder. */
const built = (model: SheetModel) => model.parts.filter((part) => part !== "cost" && part !== "label");
const read = (book: WorkbookHost, sheet: string) => asFormulaSheet(sheet, book.values(sheet, book.usedRange(sheet)));

/** Of a sheet with columns beside its page, what cards, lists, the day and the check read. */
const READ = new Set(
  [
    "title version by amount size_name size_pieces size_weight size_loss ingredient kind percent",
    "dough mixes pieces hydration grams share name_counted kind_counted mix_scale pre_scale final held",
    "size_scaled size_ingredients size_cost size_margin cost_of cost_ingredients unpriced",
    "water_temp ice tap_water tin_shape tin_kind tin_dough tin_capacity mixer_limit mixer_least step_coarse step_fine",
    "step step_minutes step_start step_day oven_step oven_loads oven_minutes oven_takes",
    "pre_kind pre_share pre_hydration pre_from pre_flour pre_yeast_part pre_weight pre_hours pre_step",
  ].flatMap((names) => names.split(" ")),
);

describe.each(TEMPLATES)("$title", (model) => {
  const options = [
    { ...METRIC_UNITS, parts: built(model) },
    { weight: "oz", temperature: "F", length: "in", parts: built(model) },
    { ...METRIC_UNITS, length: "in", parts: [] },
  ] as const;
  test.each(someOf(options, 2, TEMPLATES.indexOf(model)))(
    "every named cell is found where it was built: %j",
    async (options) => {
      const known = layOut(model, options).names;
      const typed = Object.fromEntries(Object.entries(model.sample).filter(([name]) => known.has(name)));
      const { book, sheet, at } = await buildSheet(typed, { model, options });
      const found = read(book, sheet);
      expect(found?.model.name).toBe(model.name);
      expect(found?.options).toMatchObject({ weight: options.weight });
      const isRead = (name: string) =>
        model.foldedFrom === undefined ? !/_table$|_note$|^shop$|^check$|^chart_|^tin_size/.test(name) : READ.has(name);
      const wrong = [...known.keys()].filter((name) => isRead(name) && found?.at(name) !== at(name));
      expect([...known.keys()].filter(isRead).length).toBeGreaterThan(20);
      expect(wrong).toEqual([]);
      // What was not built is nowhere, above all in no cell of another block. Prices, typed or not, share a column.
      const whole = layOut(model, { ...options, parts: model.parts }).names;
      const isLeftOut = (name: string) => !known.has(name) && !/^price_shown$|^intact_|_message(_row)?$/.test(name);
      expect([...whole.keys()].filter((name) => isLeftOut(name) && found?.zone(name) !== undefined)).toEqual([]);
      // Columns whose headings are computed are where they were built too.
      for (const name of ["now_shown", "cost_each", "size_price", "margin_shown", "wanted_shown"])
        if (known.has(name)) expect([name, found?.at(name)]).toEqual([name, at(name)]);
    },
  );
});
