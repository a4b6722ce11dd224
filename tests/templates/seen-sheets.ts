// Formula sheets as a look shows them, for a script that has none: what is computed is put in by hand.
import type { SeenSheet } from "../../shared/protocol/look.ts";
import { plan } from "../../shared/sheet/plan.ts";
import { demoToday } from "../../src/workbook/demo.ts";
import { panLoaf } from "../../templates/pan-loaf.ts";
import { METRIC_UNITS } from "../kit/units.ts";

/** Every sheet that the demo shop orders for its days, with the sizes that are ordered. */
export function demoSheetsSeen(): SeenSheet[] {
  const ordered = demoToday().flatMap((asked) => (asked.ask === "day" ? asked.orders : []));
  const sheets = [...new Set(ordered.map(({ sheet }) => sheet))];
  return sheets.map((name, id) => {
    const sizes = ordered.flatMap(({ sheet, size }) => (sheet === name && size !== undefined ? [size] : []));
    return { id, name, values: seen([...new Set(sizes)]) };
  });
}

function seen(sizes: readonly string[]): (string | number)[][] {
  const { values, columns, aside, names } = plan(panLoaf, { ...METRIC_UNITS, parts: [] }, panLoaf.sample);
  const shown = values.map((row) => [...row, ...Array<string | number>(columns - row.length).fill("")]);
  for (const { row, column, cells } of aside.words) shown[row]?.splice(column, cells.length, ...cells);
  const put = (name: string, down: number, value: string | number) => {
    const zone = names.get(name);
    if (zone !== undefined) shown[zone.row + down]?.splice(zone.column, 1, value);
  };
  const { ingredient } = panLoaf.sample;
  for (const [row] of (Array.isArray(ingredient) ? ingredient : []).entries()) {
    put("grams", row + 1, 100);
    put("share", row + 1, 0.1);
    put("weight", row + 1, 100);
  }
  for (const [row, size] of sizes.entries()) {
    put("size_name", row + 1, size);
    put("size_scaled", row + 1, 100);
  }
  for (const [name, value] of [
    ["dough", 1000],
    ["mixes", 1],
    ["pieces", 2],
  ] as const)
    put(name, 0, value);
  return shown;
}
