// Times as medians; what is printed are ratios, which hold on any machine, near enough.
import { call } from "../../functions/call.ts";
import type { SheetFunction } from "../../functions/define.ts";

export const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;

/** Milliseconds of the fastest run of each, in turns, so that what disturbs one disturbs the others. */
export function fastest(works: readonly (() => unknown)[], rounds: number): number[] {
  const times = works.map(() => Number.POSITIVE_INFINITY);
  for (let round = 0; round < rounds; round++) {
    works.forEach((work, at) => {
      times[at] = Math.min(times[at] ?? 0, once(work));
    });
  }
  return times;
}

/** Milliseconds of one run, the median of `rounds` after three that warm up; of fewer where they would take seconds. */
export function timeOf(work: () => unknown, rounds = 15): number {
  const warm = median(Array.from({ length: 3 }, () => once(work)));
  const most = Math.max(3, Math.floor(PATIENCE / warm));
  return median(Array.from({ length: Math.min(rounds, most) }, () => once(work)));
}

const PATIENCE = 300;

/** Milliseconds of ten million turns of a loop that multiplies and adds: what times are multiples of, where nothing else compares. */
export const loopTime = (): number =>
  timeOf(() => {
    let sum = 0;
    for (let at = 0; at < 10_000_000; at++) sum += (at * 1.01) / 3;
    return sum;
  });

/** Milliseconds of processor time of one run, which other work on the computer sways least. */
export function once(work: () => unknown): number {
  const from = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(from);
  return (user + system) / 1000;
}

/** Columns whose sum or one blank matters cannot simply be repeated. */
const OWN: Readonly<Record<string, (rows: number) => unknown[]>> = {
  BAKE_WEIGHTS: (rows) => [...bread(rows), 28_470],
  BAKE_REVIEW: (rows) => {
    const [percents, kinds] = bread(rows);
    return [kinds, kinds, percents, "hearth"];
  },
  BAKE_HEATBALANCE: (rows) => [
    26,
    ...[["weight"], ["temperature"], ["kind"]].map(([what]) =>
      Array.from({ length: rows }, (_, at) => {
        const isWater = at === rows - 1;
        if (what === "weight") return [isWater ? (rows - 1) * 0.65 : 1];
        if (what === "kind") return [isWater ? "water" : "flour"];
        return [isWater ? "" : 20 + (at % 3)];
      }),
    ),
    0,
  ],
  BAKE_RAWNEEDS: (rows) => {
    const products = Math.max(1, Math.floor(rows / 10));
    const parts = ["flour", "water", "salt", "fresh yeast", "butter", "sugar", "honey", "milk", "raisins", "egg"];
    return [
      Array.from({ length: products }, (_, at) => [`product ${at}`, 1000 + at]),
      Array.from({ length: products * 10 }, (_, at) => [`product ${Math.floor(at / 10)}`, parts[at % 10], 10 + at]),
    ];
  },
};

/** Percents that stay those of a bread, whatever the number of rows, and their kinds. */
function bread(rows: number): [unknown[][], unknown[][]] {
  const kinds = ["flour", "water", "salt", "yeast", "fat"];
  const shares = [100, 67, 2, 1, 3];
  const times = Math.ceil(rows / kinds.length);
  const column = (cell: (at: number) => unknown) => Array.from({ length: times * kinds.length }, (_, at) => [cell(at)]);
  return [column((at) => (shares[at % kinds.length] ?? 0) / times / 100), column((at) => kinds[at % kinds.length])];
}

/** So many rows for a function: its own, or the first example with its columns repeated; none where it takes single cells. */
export function longer(sheetFunction: SheetFunction, rows: number): unknown[] | undefined {
  const table = OWN[sheetFunction.name];
  if (table !== undefined) return table(rows);
  const example = sheetFunction.examples[0];
  if (example === undefined) return undefined;
  const shapes = Object.values(sheetFunction.args).map(({ is }) => is.shape);
  if (!sheetFunction.rowwise && !shapes.includes("column")) return undefined;
  const args = example.call.map((arg, index) => {
    const isColumn = sheetFunction.rowwise || shapes[index] === "column";
    if (!isColumn || (!sheetFunction.rowwise && !Array.isArray(arg))) return arg;
    const cells = Array.isArray(arg) ? arg : [[arg]];
    return Array.from({ length: rows }, (_, row) => cells[row % cells.length]);
  });
  try {
    call(sheetFunction, args);
    return args;
  } catch {
    // Some formulas cannot be repeated (flours would no longer make 100 %); they are left out of the table.
    return undefined;
  }
}
