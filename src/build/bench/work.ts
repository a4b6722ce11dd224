import Qty from "js-quantities";
// @ts-expect-error the package has no types for its entry
import unitMath from "unitmath";
import { call } from "../../functions/call.ts";
import { FUNCTIONS } from "../../functions/index.ts";
import { GRAMS } from "../../functions/measures/GRAMS.ts";
import { openWorkbook } from "../../workbook/host.ts";
import { codeJs } from "../build.ts";
import { longText } from "./long-text.ts";
import { longer, timeOf } from "./measure.ts";

export async function work(): Promise<void> {
  longText();
  recipes();
  against();
  const code = await codeJs();
  for (const sum of SUMS) native(code, sum);
  const bare = timeOf(() => bareLoop(10_000));
  const each = FUNCTIONS.flatMap((sheetFunction) => {
    const args = longer(sheetFunction, 10_000);
    return args === undefined
      ? []
      : [`${sheetFunction.name} ${(timeOf(() => call(sheetFunction, args)) / bare).toFixed(0)}`];
  });
  console.log(`10 000 rows, × a plain loop that multiplies and adds: ${each.join(", ")}`);
}

function bareLoop(rows: number): number {
  let sum = 0;
  for (let row = 0; row < rows; row++) sum += (row * 1.01) / 3;
  return sum;
}

const LINES = 10_000;
const ROUNDS = 7;

/** Pounds and ounces as grams: 10 000 different amounts, and others in each round, so that nothing can be remembered. */
function against(): void {
  const rounds = Array.from({ length: 3 + ROUNDS }, (_, round) =>
    Array.from({ length: LINES }, (_, at) => {
      const [amount, unit] = [1 + (round * LINES + at) / 8, at % 2 === 0 ? "oz" : "lb"];
      return { amount, unit, typed: [`${amount} ${unit} flour`] } as const;
    }),
  );
  const time = (work: (lines: (typeof rounds)[number]) => unknown): number => {
    let round = 0;
    return timeOf(() => work(rounds[round++ % rounds.length] ?? []), ROUNDS);
  };
  const ours = time((lines) => call(GRAMS, [lines.map(({ typed }) => typed)]));
  const js = time((lines) => lines.map(({ amount, unit }) => Qty(amount, unit).to("g").scalar));
  const math = time((lines) => lines.map(({ amount, unit }) => unitMath(amount, unit).to("g").getValue()));
  console.log(
    `BAKE_GRAMS, ${LINES} different lines of ounces and pounds: ${(ours / js).toFixed(2)} × js-quantities, ${(ours / math).toFixed(2)} × unitmath, both given number and unit apart`,
  );
}

const RECIPE = [
  "2 1/4 cups flour",
  "1 lb 4 oz butter",
  "3 large eggs",
  "1 tsp salt",
  "250 g water",
  "1 1/2 tbsp honey",
  "2-3 tsp dry yeast",
  "1/2 cup sugar",
];

const OTHER = ["g flour", "cups sugar", "oz butter", "tsp salt", "kg water"];

function recipes(): void {
  const columnOf = (lines: readonly (readonly [string])[]) => {
    const grams = timeOf(() => call(GRAMS, [lines]), 7);
    const split = timeOf(() => lines.map(([line]) => line.split(" ")), 31);
    return (grams / split).toFixed(0);
  };
  const lineAt = (at: number) => RECIPE[at % RECIPE.length] ?? "";
  const repeated = Array.from({ length: 10_000 }, (_, at) => [lineAt(at)] as const);
  const different = Array.from({ length: 10_000 }, (_, at) => [`${at + 1} ${OTHER[at % OTHER.length]}`] as const);
  console.log(
    `BAKE_GRAMS, 10 000 recipe lines: ${columnOf(repeated)} × splitting them on spaces (target 30 ×); ${columnOf(different)} × where no line comes twice`,
  );
}

type Sum = {
  readonly what: string;
  readonly call: string;
  readonly cells: (row: number) => string;
  readonly total?: string;
};
const ROWS = 1_000;
const all = (column: string): string => `${column}1:${column}${ROWS}`;
/** Column A holds kinds, B weights, E1 a target; D1 is the native sum's one total. */
const SUMS: readonly Sum[] = [
  {
    what: "percent of flour",
    call: `=BAKE_FLOURPCT(${all("B")},${all("A")})`,
    cells: (row) => `=B${row}/$D$1`,
    total: `=SUMIF(${all("A")},"flour",${all("B")})`,
  },
  {
    what: "scaling",
    call: `=BAKE_RESCALE(${all("B")},$E$1)`,
    cells: (row) => `=B${row}*$E$1/$D$1`,
    total: `=SUM(${all("B")})`,
  },
  {
    what: "cost",
    call: `=BAKE_COSTS(${all("A")},${all("B")},$G$1:$I$3,"g")`,
    cells: (row) => `=B${row}*VLOOKUP(A${row},$G$1:$I$3,2,FALSE)/VLOOKUP(A${row},$G$1:$I$3,3,FALSE)`,
  },
];

/** One weight is typed anew, until all 1 000 results are there: one call against 1 000 cells of native formulas. */
function native(code: string, sum: Sum): void {
  const inputs: Record<string, string> = { E1: "90000" };
  [
    ["ingredient", "price", "pack"],
    ["flour", "20", "25000"],
    ["water", "1", "1000"],
  ].forEach((line, row) => {
    line.forEach((text, column) => {
      inputs[`${"GHI"[column]}${row + 1}`] = text;
    });
  });
  for (let row = 1; row <= ROWS; row++) {
    inputs[`A${row}`] = row % 2 === 0 ? "water" : "flour";
    inputs[`B${row}`] = String(100 + (row % 37));
  }
  const cells = Object.fromEntries(Array.from({ length: ROWS }, (_, at) => [`C${at + 1}`, sum.cells(at + 1)]));
  const ours = edited(code, { ...inputs, C1: sum.call });
  const theirs = edited(code, { ...inputs, ...cells, ...(sum.total === undefined ? {} : { D1: sum.total }) });
  const isAlike = ours.results.every((value, at) => Math.abs(Number(value) - Number(theirs.results[at])) < 1e-6);
  if (!isAlike || ours.results.length !== ROWS) throw new Error(`${sum.what}: the two ways do not agree`);
  console.log(
    `${sum.what}, ${ROWS} rows, from an edit to the results: one call takes ${(ours.time / theirs.time).toFixed(2)} × the ${ROWS} native formulas`,
  );
}

function edited(code: string, cells: Readonly<Record<string, string>>) {
  const { settings, version } = openWorkbook({ codeJs: code }).engine.data() as Record<string, unknown>;
  const sheets = [{ id: "sheet-1", name: "Sheet1", colNumber: 26, rowNumber: ROWS, cells }];
  const book = openWorkbook({ codeJs: code, data: { version, settings, sheets } });
  const read = () => book.values("Sheet1", all("C")).map(([value]) => value);
  let round = 0;
  const time = timeOf(() => {
    round += 1;
    book.type("Sheet1", "B1", String(100 + (round % 2)));
    read();
  }, 9);
  book.type("Sheet1", "B1", "100");
  return { time, results: read() };
}
