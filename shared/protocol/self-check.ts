// The add-on's own check: examples as cells and formulas over them, and what came out compared with what should.
import { a1, zoneA1 } from "../sheet/a1.ts";
import { isWaitingText } from "./waiting.ts";

export type Cell = number | string | boolean;
type Cells = readonly (readonly Cell[])[];

/** An example as it travels: null is an argument left out. */
export type CheckExample = {
  readonly name: string;
  readonly call: readonly (Cell | Cells | null)[];
  readonly gives: Cell | Cells;
  readonly within?: number;
};

/** Only a sheet that begins with these words is read, written or removed by the check. */
export const CHECK_MARK = "Gramwright checks itself in this sheet and removes it afterwards. It may be deleted.";

export type PlacedFormula = { readonly row: number; readonly column: number; readonly formula: string };
/** Rows and columns are counted from 0 at A1; the cells' first row is row 2 of the sheet, below what the sheet says of itself. */
export type CheckCells = {
  readonly cells: Cells;
  /** Number formats of cells that are no text; "" is the automatic one. */
  readonly formats: readonly (readonly string[])[];
  readonly formulas: readonly PlacedFormula[];
};
export type Batch = CheckCells & { readonly expected: readonly (PlacedFormula & { readonly example: CheckExample })[] };

/** Sheets runs some 30 functions at a time for one person; the rest would wait. */
export const FORMULAS_AT_A_TIME = 20;
const TOP = 1;

/** The examples, so many at a time, each with its arguments as cells and a formula that has room for its answer. */
export function batchesOf(examples: readonly CheckExample[]): Batch[] {
  const batches: Batch[] = [];
  for (let from = 0; from < examples.length; from += FORMULAS_AT_A_TIME) {
    batches.push(batchOf(examples.slice(from, from + FORMULAS_AT_A_TIME)));
  }
  return batches;
}

const blockOf = (value: Cell | Cells): Cells => (typeof value === "object" ? value : [[value]]);

function batchOf(examples: readonly CheckExample[]): Batch {
  const rows: Cell[][] = [];
  const expected: (PlacedFormula & { example: CheckExample })[] = [];
  for (const example of examples) {
    const top = rows.length;
    const blocks = example.call.map((arg) => (arg === null ? null : blockOf(arg)));
    const height = Math.max(1, blockOf(example.gives).length, ...blocks.map((block) => block?.length ?? 0));
    for (let down = 0; down <= height; down++) rows.push([]);
    let column = 0;
    const args = blocks.map((block) => {
      if (block === null) return "";
      const columns = block[0]?.length ?? 1;
      block.forEach((line, down) => {
        line.forEach((cell, across) => {
          const row = rows[top + down];
          if (row) row[column + across] = cell;
        });
      });
      const range = zoneA1({ row: TOP + top, column, rows: block.length, columns });
      column += columns;
      return range;
    });
    while (args.length > 0 && args[args.length - 1] === "") args.pop();
    const formula = `=${example.name}(${args.join(";")})`;
    expected.push({ row: TOP + top, column: column + 1, formula, example });
  }
  const width = Math.max(...expected.map(({ column, example }) => column + (blockOf(example.gives)[0]?.length ?? 1)));
  const cells = rows.map((row) => Array.from({ length: width }, (_, column) => row[column] ?? ""));
  return { cells, formats: cells.map((row) => row.map(() => "")), formulas: expected, expected };
}

/** Calls to measure the time of; `salt` makes their cells new ones, so that no earlier answer is taken. */
export function timedCalls(calls: number, salt: number): CheckCells {
  const cells = Array.from({ length: calls }, (_, at) => [at + 1, 300 + (salt % 1000) / 10]);
  return {
    cells,
    formats: cells.map((row) => row.map(() => "")),
    formulas: cells.map((_, at) => ({
      row: TOP + at,
      column: 2,
      formula: `=BAKE_DOUGHFOR(A${TOP + at + 1};B${TOP + at + 1})`,
    })),
  };
}

/** Whether a formula is still calculating. */
export const isWaiting = (values: readonly (readonly unknown[])[]): boolean =>
  values.some((row) => row.some(isWaitingText));

/** What differs, one sentence a cell. */
export function differences({ expected }: Batch, values: readonly (readonly unknown[])[]): string[] {
  return expected.flatMap(({ row, column, formula, example: { gives, within } }) =>
    blockOf(gives).flatMap((line, down) =>
      line.flatMap((wanted, across) => {
        const actual = values[row + down]?.[column + across] ?? "";
        if (agrees(actual, wanted, within)) return [];
        const where = a1({ row: row + down, column: column + across });
        return [`${formula} in ${where}: ${JSON.stringify(actual)} is there, ${JSON.stringify(wanted)} should be`];
      }),
    ),
  );
}

function agrees(actual: unknown, wanted: Cell, within: number | undefined): boolean {
  if (typeof wanted !== "number") return actual === wanted;
  return typeof actual === "number" && Math.abs(actual - wanted) <= (within ?? 1e-9 * Math.max(1, Math.abs(wanted)));
}
