// A recipe as text, described: rows, stages, steps, yield, what was left aside and why, and what has to be asked.

import { assembled } from "./assemble.ts";
import { weighedBare } from "./bare-numbers.ts";
import { checksOf } from "./checks.ts";
import { unitIn } from "./columns.ts";
import { type Corrections, lineKey, NO_CORRECTIONS } from "./corrections.ts";
import type { Described, Kitchen, Question } from "./description.ts";
import { correctedRow, type Draft, ignore } from "./draft.ts";
import { leftOutOf } from "./left-out.ts";
import { readLineAt } from "./line-order.ts";
import { type NumberStyle, numberStyle } from "./numbers.ts";
import { rearranged } from "./rearranged.ts";
import { type Reading, rowsRead, weigherOf } from "./row-context.ts";
import { bakeSponges, leaveOpenBeside, plantSeeds, ripenFirstDay } from "./second-look.ts";
import { linesOf, type SourceLine } from "./source-lines.ts";
import { takenStages } from "./stage-use.ts";
import { tableLines } from "./table.ts";
import { hasPercents, saysPercents, statedUnit } from "./text-unit.ts";
import { tinOf } from "./tins.ts";
import { takeStated } from "./titles.ts";
import { NO_YIELD } from "./yield-words.ts";
import { yieldIn } from "./yields.ts";

export function describeRecipe(text: string, kitchen: Kitchen, corrections: Corrections = NO_CORRECTIONS): Described {
  return describeLines(linesOf(text), kitchen, corrections);
}

/** No batch is lighter, in grams. */
const LIGHTEST = 50;

/** Whether numbers read one way give a dough that a baker may mix. */
function isPlausible({ formula, questions }: Described): boolean {
  if (
    questions.some(({ reason }) => /^(?:percent and weight differ|total differs|unclear amount|thousands)/.test(reason))
  )
    return false;
  if (formula.dough !== null && formula.dough < LIGHTEST) return false;
  return formula.rows.every(
    ({ type, percent }) => percent === null || percent <= (type === "salt" ? 6 : type === "yeast" ? 15 : 400),
  );
}

/** Described as its numbers are written; where that may be two ways, as the one that gives a dough. */
export function describeLines(lines: readonly SourceLine[], kitchen: Kitchen, corrections: Corrections): Described {
  const whole = lines.map(({ raw }) => raw).join("\n");
  const style = numberStyle(whole, corrections.answers["thousands or decimals"]);
  if (style !== "unclear") return describedAs(style, lines, kitchen, corrections);
  const ways = (["thousands", "decimals"] as const).flatMap((answer) => {
    const way = numberStyle(whole, answer);
    const description = way === "unclear" ? undefined : describedAs(way, lines, kitchen, corrections);
    return description !== undefined && isPlausible(description) ? [description] : [];
  });
  const [only] = ways;
  if (only !== undefined && ways.length === 1) return only;
  const open = describedAs("unclear", lines, kitchen, corrections);
  const separator = open.questions.find(({ reason }) => reason === "thousands or decimals");
  const about = separator?.about ?? [/\d{1,3}[.,]\d{3}/.exec(whole)?.[0] ?? ""];
  const question: Question = {
    reason: "thousands or decimals",
    line: null,
    about,
    choices: ["thousands", "decimals"],
    isOpen: true,
  };
  return {
    ...open,
    questions: [question, ...open.questions.filter(({ reason }) => reason !== "thousands or decimals")],
  };
}

/** Lines whose words went to the rows below them. */
function emptied(text: readonly SourceLine[], lines: readonly SourceLine[]): readonly SourceLine[] {
  if (lines === text) return [];
  const kept = new Set(lines.filter((line) => line.text !== "").map(({ at }) => at));
  return text.filter((line) => line.text !== "" && !kept.has(line.at));
}

/** What a person said of one of several rows of a line goes by the row's own text. */
function correctorOf(reading: Reading): Draft["correct"] {
  const { lines } = reading.corrections;
  if (lines === NO_CORRECTIONS.lines) return (plainRow) => plainRow;
  return (before) => {
    const correction = lines[lineKey(before.text)];
    return correction === undefined || correction.is !== undefined ? before : correctedRow(before, correction, reading);
  };
}

/** Questions about one of several rows of a line say which. */
function withParts({ rows, questions, askedOf }: Draft): Question[] {
  if (askedOf.size === 0) return questions;
  const seen = new Set<number>();
  const several = new Set<number>();
  for (const { line } of rows) (seen.has(line) ? several : seen).add(line);
  return questions.map((question) => {
    const row = askedOf.get(question);
    return row === undefined || !several.has(row.line) ? question : { ...question, part: row.text };
  });
}

function describedAs(
  style: NumberStyle,
  text: readonly SourceLine[],
  kitchen: Kitchen,
  corrections: Corrections,
): Described {
  const lines = rearranged(text);
  const tables = tableLines(lines);
  const unit = statedUnit(lines);
  const answered = corrections.answers["which unit"];
  const way = {
    kitchen,
    corrections,
    style,
    unit: unit.unit !== "" ? unit.unit : answered === undefined || answered === "percentages" ? "" : unitIn(answered),
    isPercents: hasPercents(lines, tables),
  };
  const reading: Reading = {
    ...way,
    saysPercents: saysPercents(lines, tables),
    weigh: weigherOf(kitchen),
    ...rowsRead(way),
  };
  const draft: Draft = {
    title: "",
    yield: NO_YIELD,
    stages: [],
    rows: [],
    bare: new Map(),
    askedOf: new Map(),
    counts: new Map(),
    correct: correctorOf(reading),
    ignored: [],
    steps: [],
    questions: [],
    totals: [],
    byColumn: new Set(),
    mode: "start",
    stage: -1,
    doughTemperature: null,
  };
  const whole = { lines, tables, reading };
  for (const [place, line] of lines.entries()) {
    if (line.text === "") continue;
    if (line.at === unit.line && !tables.get(line.at)?.isHeader && yieldIn(line.text) === undefined) {
      takeStated(draft, line, unit.isTitle);
    } else readLineAt(draft, line, place, whole);
  }
  for (const line of emptied(text, lines))
    ignore(
      draft,
      line,
      line.raw.includes(", ") || !/\s{2}|[\t|]/.test(line.raw.trim()) ? "goes on" : "column headings",
    );
  weighedBare(draft, reading);
  leaveOpenBeside(draft);
  bakeSponges(draft);
  ripenFirstDay(draft);
  plantSeeds(draft);
  const taken = takenStages(draft);
  const { formula, asks } = assembled(draft, taken, reading);
  const { pieces, pieceWeight, tins, total } = draft.yield;
  const checks = [...checksOf(draft, formula, reading), ...leftOutOf(draft, lines, tables, reading)];
  return {
    title: draft.title,
    yield: { pieces, pieceWeight, tins, total },
    stages: draft.stages,
    rows: draft.rows,
    ignored: draft.ignored,
    steps: draft.steps,
    doughTemperature: draft.doughTemperature,
    tin: tinOf(lines),
    questions: [...withParts(draft), ...asks, ...checks].sort((one, other) => (one.line ?? -1) - (other.line ?? -1)),
    formula,
  };
}
