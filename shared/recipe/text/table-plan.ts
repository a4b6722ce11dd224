// What the columns of a table hold: names, amounts by stage, percentages.
import { isTotal } from "./clutter.ts";
import { type Column, unitIn } from "./columns.ts";
import type { Draft } from "./draft.ts";
import { readRow } from "./row.ts";
import { cellNumber, gramsOf } from "./row-amount.ts";
import type { Reading } from "./row-context.ts";
import type { TableLine } from "./table.ts";

export type Weight = Extract<Column, { is: "weight" }>;
type At<T> = { readonly at: number; readonly column: T };

/** What a table's columns are for, worked out once a table. */
type Plan = {
  readonly name: number;
  readonly stage: number;
  readonly unit: number;
  readonly weights: readonly At<Weight>[];
  /** Pounds and ounces beside each other. */
  readonly isSplit: boolean;
  readonly percent: At<{ of: "flour" | "total" }> | undefined;
  readonly isFraction: boolean;
};

const plans = new WeakMap<ReadonlyMap<number, TableLine>, Map<string, Plan>>();

/** Columns that weigh the same in two units, within rounding. */
const ALIKE = 0.03;

export function planOf(table: TableLine, reading: Reading, tables: ReadonlyMap<number, TableLine>, draft: Draft): Plan {
  const known = plans.get(tables) ?? new Map<string, Plan>();
  plans.set(tables, known);
  const key = `${table.table} ${table.columns.map((column) => column?.is ?? "").join(" ")}`;
  const before = known.get(key);
  if (before !== undefined) return before;
  const tablePlan = makePlan(table, reading, tables, draft);
  known.set(key, tablePlan);
  return tablePlan;
}

function makePlan(table: TableLine, reading: Reading, tables: ReadonlyMap<number, TableLine>, draft: Draft): Plan {
  const rows = [...tables.values()].filter(
    (one) => one.table === table.table && !one.isHeader && one.columns === table.columns,
  );
  const at = (is: Column["is"]) => table.columns.findIndex((column) => column?.is === is);
  const name = Math.max(0, at("name"));
  const body = rows.filter(({ cells }) => (cells[name] ?? "") !== "" && !isTotal(cells[name] ?? ""));
  const flours = body.filter(({ cells }) => readRow(cells[name] ?? "", reading).type === "flour");
  const all = table.columns.flatMap((column, place) => (column?.is === "weight" ? [{ at: place, column }] : []));
  const values = (place: number, of: readonly TableLine[]) =>
    of.map(({ cells }) => cellNumber(cells[place] ?? "", reading.style) ?? 0);
  const sum = (numbers: readonly number[]) => numbers.reduce((total, one) => total + one, 0);
  // Beside other numbers, a column whose flour makes 100 holds percentages.
  const isPercents = ({ at: place, column }: At<Weight>) =>
    all.length > 1 && column.head === "" && flours.length > 0 && Math.abs(sum(values(place, flours)) - 100) < 0.05;
  const weights = all.filter((one) => !isPercents(one));
  const percents = table.columns.flatMap((column, place) =>
    column?.is === "percent" ? [{ at: place, column: { of: column.of } }] : [],
  );
  const looked = all.filter(isPercents).map(({ at: place }) => ({ at: place, column: { of: "flour" as const } }));
  const flourOnes = percents.filter(({ column }) => column.of === "flour");
  const sums = (place: number) => sum(values(place, flours));
  const percent =
    flourOnes.find(({ at: place }) => Math.abs(sums(place) - 100) < 0.5 || Math.abs(sums(place) - 1) < 0.005) ??
    flourOnes[0] ??
    looked[0] ??
    percents[0];
  const isFraction =
    percent !== undefined &&
    body.length > 0 &&
    values(percent.at, body).every((one) => one <= 2) &&
    Math.abs(sums(percent.at) - 1) < 0.005;
  const plain = weights.filter(({ column }) => column.stage === undefined);
  const staged = weights.filter(({ column }) => column.stage !== undefined);
  const chosen =
    staged.length >= 2 ? staged : chosenWeight(plain.length > 0 ? plain : staged, body, reading, draft, table);
  const isSplit = staged.length < 2 && plain.length === 2 && chosen.length === 2;
  return {
    name,
    stage: at("stage"),
    unit: at("unit"),
    weights: chosen,
    isSplit,
    percent,
    isFraction,
  };
}

/** One column of weights: the only one, one of several that say the same, or the one that a person chooses. */
function chosenWeight(
  weights: readonly At<Weight>[],
  body: readonly TableLine[],
  reading: Reading,
  draft: Draft,
  table: TableLine,
): At<Weight>[] {
  const [first] = weights;
  if (first === undefined || weights.length === 1) return [...weights];
  const gramsIn = ({ at, column }: At<Weight>, { cells }: TableLine) => {
    const text = cells[at] ?? "";
    const number = cellNumber(text, reading.style);
    const unit = column.unit === "" ? unitIn(text) : column.unit;
    return number === null ? null : number * (unit === "" ? 1 : gramsOf(unit));
  };
  // Grams that pounds and ounces are rounded to; in one unit nothing is rounded.
  const rounded = (one: At<Weight>) => (one.column.unit === first.column.unit ? 0 : 15);
  const isAlike = weights.every((one) =>
    body.every((row) => {
      const [here, there] = [gramsIn(first, row), gramsIn(one, row)];
      return (
        here === null ||
        there === null ||
        Math.abs(here - there) <= Math.max(ALIKE * Math.max(here, there), rounded(one))
      );
    }),
  );
  const isMetric = ({ column }: At<Weight>) => column.unit === "g" || column.unit === "kg";
  if (isAlike) return [weights.find(({ column }) => column.unit === "g") ?? weights.find(isMetric) ?? first];
  const [large, small] = weights;
  const isPair = (one: string, other: string) => large?.column.unit === one && small?.column.unit === other;
  if (weights.length === 2 && (isPair("lb", "oz") || isPair("kg", "g"))) {
    const most = isPair("lb", "oz") ? 16 : 1000;
    const fits = body.every(({ cells }) => (cellNumber(cells[small?.at ?? -1] ?? "", reading.style) ?? 0) < most);
    if (fits) return [...weights];
  }
  const heads = weights.map(({ column, at }) => column.head || `column ${at + 1}`);
  const answer = reading.corrections.answers[`which column: ${heads.join(" / ")}`];
  const chosen = heads.indexOf(answer ?? "");
  if (chosen >= 0) return [weights[chosen] ?? first];
  draft.questions.push({
    reason: "which column",
    line: table.line.at,
    about: [heads.join(" / ")],
    choices: heads,
    isOpen: true,
  });
  return [first];
}
