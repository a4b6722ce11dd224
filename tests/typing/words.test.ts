// The words by which the trigger finds cells are those of the sheet models, for every template in every form.
import { describe, expect, test } from "vitest";
import { columnNumber, type Zone } from "../../shared/sheet/a1.ts";
import { type Layout, labelText, layOut } from "../../shared/sheet/layout.ts";
import type { Options } from "../../shared/sheet/model.ts";
import { plan } from "../../shared/sheet/plan.ts";
import { ingredientsOf } from "../../shared/typing/cells.ts";
import {
  BESIDE,
  FIRST_COLUMN,
  FIRST_ROW,
  HEADS,
  INPUTS,
  MESSAGE,
  MIN_COLUMNS,
  SINGLES,
} from "../../shared/typing/words.ts";
import { TEMPLATES } from "../../templates/index.ts";

const NEWER = TEMPLATES.filter(({ foldedFrom }) => foldedFrom !== undefined);
const UNITS = [
  { weight: "g", temperature: "C", length: "cm" },
  { weight: "oz", temperature: "F", length: "in" },
] as const;

/** Every choice of parts that there may be. */
const choices = (parts: readonly string[]): string[][] =>
  parts.reduce<string[][]>((some, part) => some.flatMap((one) => [one, [...one, part]]), [[]]);

const FORMS = NEWER.flatMap((model) =>
  choices(model.parts).flatMap((parts) => UNITS.map((unit): [typeof model, Options] => [model, { ...unit, parts }])),
);

/** A range as written, "C5" or "C5:D7". */
function zoneOf(a1: string): Zone {
  const [from = "", to = from] = a1.split(":");
  const [first, last] = [from, to].map((one) => {
    const [, letters = "", digits = ""] = /^([A-Z]+)(\d+)$/.exec(one) ?? [];
    return { row: Number(digits) - 1, column: columnNumber(letters) };
  }) as [{ row: number; column: number }, { row: number; column: number }];
  return { ...first, rows: last.row - first.row + 1, columns: last.column - first.column + 1 };
}

/** What stands on the sheet before anything is typed: words, and the label of the total. */
function gridOf({ cells, tables, rows }: Layout, options: Options): unknown[][] {
  const width = Math.max(...tables.map(({ table, column }) => column + table.columns.length), 60);
  const grid = Array.from({ length: rows }, () => Array<unknown>(width).fill(""));
  const put = (row: number, column: number, value: unknown) => {
    const line = grid[row];
    if (line !== undefined) line[column] = value;
  };
  for (const { table, row, column } of tables)
    for (const [at, { head }] of table.columns.entries()) put(row, column + at, labelText(head, options));
  for (const { cell, row, column } of cells)
    if (cell.name === "total_label") put(row, column, "Total, 100 %");
    else if (cell.text !== undefined) put(row, column, labelText(cell.text, options));
    else if (cell.name !== undefined) put(row, column, `@${cell.name}`);
  return grid;
}

test("there are templates in this form", () => expect(NEWER.length).toBeGreaterThan(1));

describe.each(NEWER)("$name", (model) => {
  test("its cells are found where the model has them", () => {
    for (const [, options] of FORMS.filter(([one]) => one === model)) {
      const layout = layOut(model, options);
      const grid = gridOf(layout, options);
      const found = ingredientsOf(grid);
      const column = (name: string) => layout.names.get(name)?.column ?? -1;
      const zone = layout.names.get("percent");
      expect(found).toMatchObject({
        unit: options.weight,
        top: zone?.row,
        total: (zone?.row ?? 0) + (zone?.rows ?? 0) - 1,
        columns: Object.fromEntries(
          ["ingredient", "kind", "percent", "counts", "flour_part"].map((name) => [name, column(name)]),
        ),
        weight: column("weight"),
        perMix: column("per_mix"),
        stages: ["pre_shown", "final_shown"].map(column).filter((at) => at >= 0),
      });
      for (const name of Object.keys(SINGLES) as (keyof typeof SINGLES)[])
        expect(found?.single(name), name).toBe(layout.names.has(name) ? `@${name}` : undefined);
      for (const name of Object.keys(INPUTS) as (keyof typeof INPUTS)[]) {
        const place = layout.names.get(name);
        expect(found?.input(name), name).toEqual(place && { row: place.row, column: place.column });
      }
    }
  });

  test("each word stands where it can be told from others, and no cell that is filled lies outside", () => {
    for (const [, options] of FORMS.filter(([one]) => one === model)) {
      const layout = layOut(model, options);
      expect(Math.max(...[...layout.names.values()].map(({ column }) => column))).toBeGreaterThanOrEqual(
        MIN_COLUMNS - 1,
      );
      for (const { table, row, column } of layout.tables) {
        if (!table.hidden) continue;
        table.columns.forEach(({ formula }, at) => {
          if (formula === undefined) return;
          expect(column + at, table.table).toBeGreaterThanOrEqual(FIRST_COLUMN);
          expect(row + 2, table.table).toBeGreaterThanOrEqual(FIRST_ROW);
        });
      }
      const heads = [...Object.values(HEADS), ...Object.values(BESIDE), MESSAGE].map((text) =>
        labelText(text, options),
      );
      const line = layout.tables.filter(({ row }) => row === (layout.names.get("percent")?.row ?? 0) - 1);
      const texts = line.flatMap(({ table }) => table.columns.map(({ head }) => labelText(head, options)));
      for (const text of heads) expect(texts.filter((one) => one === text).length, text).toBeLessThanOrEqual(1);
    }
  });
});

describe.each(NEWER)("$name's warning", (model) => {
  test("comes before what is worked out is typed over, but not before a weight", () => {
    for (const [, options] of FORMS.filter(([one]) => one === model).slice(-4)) {
      const { unprotected, names } = plan(model, options, {});
      const free = unprotected.map(zoneOf);
      const isFree = (name: string, down: number) => {
        const { row, column } = names.get(name) ?? { row: -1, column: -1 };
        return free.some(
          (zone) =>
            zone.row <= row + down &&
            row + down < zone.row + zone.rows &&
            zone.column <= column &&
            column < zone.column + zone.columns,
        );
      };
      const body = ["weight", "per_mix"].filter((name) => names.has(name));
      expect(body.map((name) => [name, isFree(name, 1), isFree(name, 0)])).toEqual(
        body.map((name) => [name, true, false]),
      );
      expect(["ingredient", "kind", "percent"].every((name) => isFree(name, 1))).toBe(true);
      const worked = ["of_whole", "note", "scaled_shown", "exact", "pre_shown"].filter((name) => names.has(name));
      expect(worked.filter((name) => isFree(name, 1))).toEqual([]);
    }
  });
});
