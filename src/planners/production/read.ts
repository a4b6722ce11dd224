// A production sheet as it stands: found by the words over its helper columns, wherever rows and columns were put in.
import { refuse } from "../../../shared/base/refusal.ts";
import { quote } from "../../../shared/base/show.ts";
import { isoOf } from "../../../shared/production/clock.ts";
import type { Levain } from "../../../shared/production/levain.ts";
import { itemKey } from "../../../shared/production/orders.ts";
import type { CellValue, SeenSheet } from "../../../shared/protocol/look.ts";
import type { Questions } from "../../../shared/protocol/questions.ts";
import { a1, absolute, zoneA1 } from "../../../shared/sheet/a1.ts";
import { newerSays } from "../../../shared/sheet/built-by.ts";
import { quotedTab } from "../../../shared/sheet/tab.ts";
import { PRODUCTION_MARK } from "../../../templates/production/production.ts";
import { look, type Steps } from "../steps.ts";
import { machineRows, machinesNow } from "./machines-now.ts";
import { countedColumns, ordersNow } from "./orders-now.ts";
import type { Figure, LevainNow, ProductionNow } from "./production-now.ts";

/** The sheet of this name; refuses one that is gone, is no production, or is not calculated yet. */
export function* readProduction(name: string): Steps<ProductionNow> {
  // Its name is known: to ask for it is a call of the service.
  const [seen] = (yield* look({ sheet: name, unnamed: true })).sheets;
  if (seen === undefined) return refuse(`There is no sheet ${quote(name)} any more. Choose a production again.`);
  return productionNow({ ...seen, name });
}

/** The production sheets of the workbook and their days, the newest days first. */
export function* listProductions(): Steps<Questions["productions"]["answer"]> {
  const { sheets } = yield* look({ words: [PRODUCTION_MARK] });
  const known = sheets.map(({ name, values }) => {
    const row = values.findIndex((line) => line.includes(PRODUCTION_MARK));
    const from = (values[row]?.indexOf(PRODUCTION_MARK) ?? 0) + 1;
    const numbers = (values[row + 1] ?? []).slice(from, from + days(values[row] ?? []));
    const dates = numbers.flatMap((day) => (typeof day === "number" && day > 0 ? [day] : []));
    return { name, dates, newer: newerSays(name, values) };
  });
  known.sort((a, b) => Math.max(0, ...b.dates) - Math.max(0, ...a.dates));
  return {
    sheets: known.map(({ name, dates, newer }) => ({
      sheet: name,
      days: dates.map(isoOf),
      ...(newer === "" ? {} : { newer }),
    })),
  };
}

export function productionNow(seen: SeenSheet): ProductionNow {
  const { name, id, values } = seen;
  const says = (row: number, column: number): string => {
    const cell = values[row]?.[column];
    return typeof cell === "string" ? cell.trim() : "";
  };
  const number = (row: number, column: number): number | null => {
    const cell = values[row]?.[column];
    return typeof cell === "number" ? cell : null;
  };
  const place = (text: string): { row: number; column: number } | null => {
    for (let row = 0; row < values.length; row++) {
      const column = values[row]?.indexOf(text) ?? -1;
      if (column >= 0) return { row, column };
    }
    return null;
  };
  const reference = (row: number, column: number, columns = 1) =>
    `${quotedTab(name)}${absolute(columns === 1 ? a1({ row, column }) : zoneA1({ row, column, rows: 1, columns }))}`;
  const mark = place(PRODUCTION_MARK);
  if (mark === null) return refuse(`The sheet ${quote(name)} is no production sheet of Gramwright. Choose another.`);
  mustBeCalculated(name, values);
  const first = mark.column + 1;
  const count = days(values[mark.row] ?? []);
  const dayNumbers = Array.from({ length: count }, (_, at) => number(mark.row + 1, first + at) ?? 0);
  const undated = dayNumbers.findIndex((day) => day <= 0);
  if (undated >= 0) refuse(`${quote(name)} has no date for its day ${undated + 1}. Enter it beside “Ready on”.`);
  const figures = (row: number, column: number): Figure[] =>
    dayNumbers.map((_, at) => ({ value: number(row, column + at) ?? 0, at: reference(row, column + at) }));
  const heading = (row: number, text: string): number => values[row]?.lastIndexOf(text) ?? -1;
  /** Rows below a heading in the helpers, while they hold something. */
  const below = (text: string): { head: number; rows: number[] } => {
    const at = place(text);
    if (at === null) return { head: -1, rows: [] };
    const rows: number[] = [];
    for (let row = at.row + 1; values[row]?.[at.column] !== undefined && values[row]?.[at.column] !== ""; row++)
      rows.push(row);
    return { head: at.row, rows };
  };
  const items = below("Key");
  const doughs = below("Mixed of it");
  const levains = below("Levain in the doughs");
  const typedAt = (text: string) => values[items.head]?.indexOf(text) ?? -1;
  return {
    tab: { name, id },
    title: says(0, 0) || name,
    unit: says(mark.row + 2, mark.column + 4) === "oz" ? "oz" : "g",
    check: says(2, 0),
    days: dayNumbers,
    dayRow: reference(mark.row + 1, first, count),
    items: items.rows.map((row) => ({
      product: says(row, 0),
      size: says(row, 1),
      made: figures(row, heading(items.head, "Made, day 1")),
      madeRow: reference(row, heading(items.head, "Made, day 1"), count),
    })),
    doughs: doughs.rows.map((row) => ({
      name: says(row, 0),
      whole: figures(row, heading(doughs.head, "With fat, day 1")),
      mixed: figures(row, heading(doughs.head, "Mixed, day 1")),
      mixes: figures(row, heading(doughs.head, "Mixes, day 1")),
      each: figures(row, heading(doughs.head, "A mix, day 1")),
      wholeRow: reference(row, heading(doughs.head, "With fat, day 1"), count),
      earlier: number(row, values[doughs.head]?.indexOf("Earlier (min)") ?? -1) ?? 0,
      earlierAt: reference(row, values[doughs.head]?.indexOf("Earlier (min)") ?? 0),
    })),
    orders: ordersNow(values, dayNumbers, reference),
    countedColumns: countedColumns(values, name),
    making: new Map(
      items.rows.map((row) => [
        itemKey({ product: says(row, 0), size: says(row, 1) }),
        {
          spares: number(row, typedAt("Spares")) ?? 0,
          stock: number(row, typedAt("In stock")) ?? 0,
          multiple: number(row, typedAt("Tray of")) ?? 1,
        },
      ]),
    ),
    levains: levains.rows.map((row) => {
      const column = values[levains.head]?.indexOf("Flour to feed") ?? -1;
      return levainNow(values[row] ?? [], reference(row, column), reference(row, column + 1));
    }),
    machines: machinesNow(values),
    typedRows: [...levains.rows, ...machineRows(values)].map((row) => ({
      value: (values[row] ?? [])
        .slice(TYPED.first, TYPED.first + TYPED.columns)
        .reduce<number>((sum, cell) => sum + (typeof cell === "number" ? cell : 0), 0),
      at: reference(row, TYPED.first, TYPED.columns),
    })),
  };
}

/** Columns of the page in which levains and machines have their numbers. */
const TYPED = { first: 2, columns: 8 };

function levainNow(line: readonly CellValue[], flourAt: string, waterAt: string): LevainNow {
  const typed = (at: number) => (typeof line[at] === "number" ? (line[at] as number) : 0);
  const [hydration, ripeFrom, ripeTo] = [typed(3) || 1, typed(6) * 60, typed(7) * 60];
  const levain: Levain = {
    name: String(line[0] ?? "").trim(),
    hydration,
    motherHydration: typed(4) || hydration,
    seedShare: typed(5) || 0.2,
    seedWeight: null,
    ripeFrom,
    ripeTo: Math.max(ripeFrom, ripeTo),
    mother: typed(8),
    keep: typed(9),
  };
  return { levain, flour: String(line[1] ?? "").trim(), flourAt, waterAt };
}

/** Days as the headings count them. */
function days(heads: readonly CellValue[]): number {
  let count = 0;
  while (heads.includes(`Day ${count + 1}`)) count += 1;
  return count;
}

function mustBeCalculated(name: string, values: readonly (readonly CellValue[])[]): void {
  for (const row of values)
    for (const cell of row) {
      // A script reads either for a cell whose call has no answer yet; texts with dots may be somebody's notes.
      if (cell === "Loading..." || cell === "#N/A")
        refuse(
          `${quote(name)} is still calculating, or a cell there shows ${cell}. Wait until its numbers are there and try again.`,
        );
      if (typeof cell === "string" && /^#(?:N\/A|[A-Z]+[/\d]*[!?])$/.test(cell))
        refuse(`${quote(name)} shows an error (${cell}), so its amounts are not known. Undo the last change there.`);
    }
}
