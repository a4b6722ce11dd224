// Rows of a pasted table: which cell is the name, which the weight, which the percentage, and which stage it belongs to.

import { isTotal } from "./clutter.ts";
import { type Column, unitIn } from "./columns.ts";
import { lineKey, type Stage } from "./description.ts";
import { addRow, addStage, correctedRead, type Draft, ignore, stageAt, takeYield } from "./draft.ts";
import { stageOf } from "./headings.ts";
import { readRow } from "./row.ts";
import { cellNumber, gramsOf } from "./row-amount.ts";
import type { Reading } from "./row-context.ts";
import { roleBeside } from "./rows-in-line.ts";
import type { TableLine } from "./table.ts";
import { yieldIn } from "./yields.ts";

type Weight = Extract<Column, { is: "weight" }>;
type At<T> = { readonly at: number; readonly column: T };

export function headStage(text: string, line: number): Stage | undefined {
  const stage = stageOf(text, line, true);
  if (stage === undefined || !("stage" in stage)) return undefined;
  return stage.isUnsure && !/:$/.test(text) ? undefined : stage.stage;
}

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

export function tableRows(
  draft: Draft,
  table: TableLine,
  reading: Reading,
  tables: ReadonlyMap<number, TableLine>,
): void {
  const plan = planOf(table, reading, tables, draft);
  const { cells, line } = table;
  const cell = (at: number): string => (at < 0 ? "" : (cells[at] ?? ""));
  const name = cell(plan.name);
  const number = (text: string, column: Weight): number | null => {
    const read = cellNumber(text, reading.style);
    const unit = column.unit === "" ? (unitIn(text) === "" ? reading.unit : unitIn(text)) : column.unit;
    return read === null ? null : read * (unit === "" ? 1 : gramsOf(unit));
  };
  const stageCell = cell(plan.stage);
  const percentText = plan.percent === undefined ? "" : cell(plan.percent.at);
  const percentRead = percentText === "" ? null : cellNumber(percentText, reading.style);
  const percent = percentRead === null ? null : percentRead * (plan.isFraction ? 100 : 1);
  if (name === "" || isTotal(name)) {
    const [first] = plan.weights;
    const grams = first === undefined || cell(first.at) === "" ? null : number(cell(first.at), first.column);
    const hasUnit =
      first !== undefined && (first.column.unit !== "" || reading.unit !== "" || unitIn(cell(first.at)) !== "");
    draft.totals.push({
      line: line.at,
      grams: hasUnit ? grams : null,
      bare: hasUnit ? null : grams,
      percent,
      stage: draft.stage,
      rows: draft.rows.length,
    });
    ignore(draft, line, "total");
    return;
  }
  const isYield = /\b(?:yield|makes|pieces|scal|piece weight)\b/i.test(name)
    ? yieldIn(cells.filter((one) => one !== "").join(" "))
    : undefined;
  if (isYield !== undefined) {
    takeYield(draft, isYield);
    ignore(draft, line, "yield");
    return;
  }
  const staged = plan.weights.filter(({ column }) => column.stage !== undefined);
  if (stageCell !== "") draft.stage = stageOfCell(draft, stageCell, line.at);
  const correction = reading.corrections.lines[lineKey(line.text)];
  const add = (stage: number, amount: string | undefined, unit: string, percentage: number | null): void => {
    const read = readRow(name, reading, { ...(amount === undefined ? {} : { amount }), unit, percent: percentage });
    const role = roleBeside(name);
    const side = role === undefined ? stage : sideOf(draft, role);
    addRow(draft, line.at, correction === undefined ? read : correctedRead(read, correction, reading), side);
  };
  if (staged.length >= 2) {
    for (const { at, column } of staged) {
      const text = cell(at);
      if (text === "" || /^[-–—]+$/.test(text) || cellNumber(text, reading.style) === 0) continue;
      if (column.stage === undefined) continue;
      add(stageOfColumn(draft, column.stage), text, column.unit, null);
    }
    return;
  }
  const here = stageAt(draft);
  if (plan.isSplit) {
    const texts = plan.weights.flatMap(({ at, column }) => (cell(at) === "" ? [] : [`${cell(at)} ${column.unit}`]));
    add(here, texts.join(" "), "", percent);
    return;
  }
  const [weight] = plan.weights;
  const text = weight === undefined ? undefined : cell(weight.at);
  const unit = weight === undefined ? "" : weight.column.unit || cell(plan.unit);
  add(
    here,
    weight === undefined && percent !== null ? "" : (text ?? ""),
    /\p{L}/u.test(text ?? "") ? "" : unit,
    percent,
  );
}

function sideOf(draft: Draft, role: Stage["role"]): number {
  const at = draft.stages.findIndex((one) => one.role === role);
  return at >= 0 ? at : addStage(draft, { role, name: "", line: null, preferment: "", hours: null, temperature: null });
}

const sameName = (one: string, other: string): boolean => one.trim().toLowerCase() === other.trim().toLowerCase();

function stageOfColumn(draft: Draft, stage: Stage): number {
  const at = draft.stages.findIndex((one) => sameName(one.name, stage.name) && one.role === stage.role);
  return at >= 0 ? at : addStage(draft, { ...stage, line: null });
}

function stageOfCell(draft: Draft, text: string, line: number): number {
  const at = draft.stages.findIndex((one) => sameName(one.name, text));
  if (at >= 0) return at;
  const match = stageOf(text, line, true);
  const stage: Stage =
    match !== undefined && "stage" in match && !match.isUnsure
      ? match.stage
      : { role: "dough", name: text, line, preferment: "", hours: null, temperature: null };
  return addStage(draft, { ...stage, name: text });
}

/** Columns that weigh the same in two units, within rounding. */
const ALIKE = 0.03;

function planOf(table: TableLine, reading: Reading, tables: ReadonlyMap<number, TableLine>, draft: Draft): Plan {
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
  const isAlike = weights.every((one) =>
    body.every((row) => {
      const [here, there] = [gramsIn(first, row), gramsIn(one, row)];
      return here === null || there === null || Math.abs(here - there) <= Math.max(ALIKE * Math.max(here, there), 15);
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
