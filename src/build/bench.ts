// Measured as ratios: what is printed here holds on any machine, near enough.
import { performance } from "node:perf_hooks";
import vm from "node:vm";
import { layOut } from "../../shared/layout.ts";
import type { Options, SheetModel } from "../../shared/model.ts";
import { plan } from "../../shared/plan.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { call } from "../call.ts";
import type { SheetFunction } from "../define.ts";
import { FUNCTIONS } from "../functions/index.ts";
import { openWorkbook } from "../workbook/host.ts";
import { codeJs, sidebarHtml } from "./build.ts";
import { formulasOf, longestChain } from "./chains.ts";
import { nodesOf, parseFormula } from "./formula-parser.ts";
import { isSheetFunction } from "./lint.ts";

const METRIC = { weight: "g", temperature: "C", length: "cm" } as const;

export async function run(): Promise<void> {
  const code = await codeJs();
  const sidebar = await sidebarHtml();
  heading("Calls of each built sheet, for 6, 24 and 60 ingredient rows");
  for (const model of TEMPLATES) callsOf(model, code, sidebar);
  heading("Start: what every formula cell pays");
  start(code);
  heading("Work: rows in, rows out");
  work();
}

function heading(text: string): void {
  console.log(`\n${text}\n${"-".repeat(text.length)}`);
}

/** The model with another number of rows in its formula table. */
function withRows(model: SheetModel, rows: number): SheetModel {
  const bands = model.bands.map((band) =>
    band.map((item) => ("table" in item && item.table === "formula" ? { ...item, rows } : item)),
  );
  return { ...model, bands };
}

function callsOf(model: SheetModel, codeText: string, sidebarText: string): void {
  const options: Options = { ...METRIC, parts: model.parts };
  for (const rows of [6, 24, 60]) {
    const sized = withRows(model, rows);
    const formulas = formulasOf(sized, options);
    let calls = 0;
    for (const { formula } of formulas.cells.values()) {
      const tree = parseFormula(formula);
      if (typeof tree !== "string") for (const node of nodesOf(tree)) calls += isSheetFunction(node) ? 1 : 0;
    }
    const chain = longestChain(formulas);
    const columns = sized.bands
      .flat()
      .flatMap((item) => ("table" in item && item.table === "formula" ? item.columns : []));
    const perCell = calls - 2 + rows * columns.filter(({ role }) => role === "computed").length;
    const made = plan(sized, options, sized.sample);
    const writes = made.formulas.length;
    console.log(
      `${model.name}, ${rows} rows: ${calls} calls, longest chain ${"length" in chain ? chain.length : "circle"}, ${writes} rectangles of formulas; one formula a cell would be ${perCell} calls (${(perCell / calls).toFixed(1)} ×)`,
    );
  }
  const book = openWorkbook({ codeJs: codeText, sidebarHtml: sidebarText });
  book.answer({ ask: "build", template: model.name, options: { ...METRIC, parts: model.parts }, values: model.sample });
  console.log(
    `${model.name}: ${book.trail.length} service calls that read or write (24 rows; the number does not depend on the rows)`,
  );
  console.log(`${model.name}: ${layOut(model, options).rows} rows in the sheet`);
}

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;

function start(code: string): void {
  const stubsAt = code.indexOf("\nfunction onOpen");
  console.log(`Code.js: ${kilobytes(code.slice(0, stubsAt))} without stubs, ${kilobytes(code)} with`);
  const once = (source: string) => {
    const from = performance.now();
    vm.runInContext(source, vm.createContext({}));
    return performance.now() - from;
  };
  const empty: number[] = [];
  const full: number[] = [];
  for (let round = 0; round < 200; round++) {
    empty.push(once(""));
    full.push(once(code));
  }
  console.log(
    `compile and run in a fresh context, median of 200: ${(median(full) - median(empty)).toFixed(2)} ms above an empty script`,
  );
}

const kilobytes = (text: string): string => `${(Buffer.byteLength(text) / 1000).toFixed(1)} KB`;

function work(): void {
  for (const made of FUNCTIONS) {
    const timed = [10, 1_000, 10_000].map((rows) => {
      const args = longer(made, rows);
      return args === undefined ? undefined : perRow(() => call(made, args), rows);
    });
    const [, thousand, tenThousand] = timed;
    if (thousand === undefined || tenThousand === undefined) continue;
    const bare = perRow(() => bareLoop(10_000), 10_000);
    console.log(
      `${made.name}: ${(tenThousand / thousand).toFixed(2)} × the time per row at 10 000 rows against 1 000; ${(tenThousand / bare).toFixed(0)} × a plain loop that multiplies and adds`,
    );
  }
}

/** The first example with its columns repeated to so many rows, where that still makes sense. */
function longer(made: SheetFunction, rows: number): unknown[] | undefined {
  const example = made.examples[0];
  if (example === undefined) return undefined;
  const shapes = Object.values(made.args).map(({ is }) => is.shape);
  if (!made.rowwise && !shapes.includes("column")) return undefined;
  const args = example.call.map((arg, index) => {
    const isColumn = made.rowwise || shapes[index] === "column";
    if (!isColumn || (!made.rowwise && !Array.isArray(arg))) return arg;
    const cells = Array.isArray(arg) ? arg : [[arg]];
    return Array.from({ length: rows }, (_, row) => cells[row % cells.length]);
  });
  try {
    call(made, args);
    return args;
  } catch {
    // Some formulas cannot be repeated (flours would no longer make 100 %); they are left out of the table.
    return undefined;
  }
}

function perRow(work: () => unknown, rows: number): number {
  for (let warm = 0; warm < 3; warm++) work();
  const times = Array.from({ length: 15 }, () => {
    const from = performance.now();
    work();
    return performance.now() - from;
  });
  return median(times) / rows;
}

function bareLoop(rows: number): number {
  let sum = 0;
  for (let row = 0; row < rows; row++) sum += (row * 1.01) / 3;
  return sum;
}
