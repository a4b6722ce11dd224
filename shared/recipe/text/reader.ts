// A recipe as text, described: rows, stages, steps, yield, what was left aside and why, and what has to be asked.

import { assembled } from "./assemble.ts";
import { weighedBare } from "./bare-numbers.ts";
import { checksOf } from "./checks.ts";
import { unitIn } from "./columns.ts";
import { type Corrections, NO_CORRECTIONS } from "./corrections.ts";
import { type Described, IN_DOUGH, type Kitchen, type Question } from "./description.ts";
import type { Draft } from "./draft.ts";
import { LATER } from "./headings.ts";
import { leftOutOf } from "./left-out.ts";
import { readLineAt } from "./line-order.ts";
import { type NumberStyle, numberStyle } from "./numbers.ts";
import { rearranged } from "./rearranged.ts";
import { type Reading, rowsRead, weigherOf } from "./row-context.ts";
import { linesOf, type SourceLine } from "./source-lines.ts";
import { takenStages } from "./stage-use.ts";
import { isStarter } from "./starter.ts";
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
    const read = way === "unclear" ? undefined : describedAs(way, lines, kitchen, corrections);
    return read !== undefined && isPlausible(read) ? [read] : [];
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

/** Nothing hangs on the type of what is kept apart: one that no table knows is no question there. */
function leaveOpenBeside({ rows, stages, questions }: Draft): void {
  rows.forEach((row, at) => {
    const role = stages[row.stage]?.role ?? "dough";
    if (row.type !== "" || role === "overall" || role === "part" || IN_DOUGH.has(role)) return;
    const asked = questions.findIndex(({ reason, line }) => reason === "which type" && line === row.line);
    if (asked < 0) return;
    questions.splice(asked, 1);
    rows[at] = { ...row, type: "other" };
  });
}

/** "For the sponge" of a cake has eggs and no yeast: it is no preferment. */
function bakeSponges({ rows, stages }: Draft): void {
  stages.forEach((stage, at) => {
    if (stage.preferment !== "sponge") return;
    const mine = rows.filter((row) => row.stage === at);
    const isRaised = mine.some((row) => row.type === "yeast" || isStarter(row));
    if (mine.some(({ type }) => type === "egg") && !isRaised) stages[at] = { ...stage, role: "dough", preferment: "" };
  });
}

/** Flour that ferments on the first day, and flour that follows on the next: what was mixed first is a preferment. */
function ripenFirstDay({ rows, stages }: Draft): void {
  const later = stages.findIndex(({ name, role }) => role === "dough" && LATER.test(name));
  const first = stages.findIndex(
    ({ role }, at) => at < later && role === "dough" && rows.some((row) => row.stage === at),
  );
  const stage = stages[first];
  const isFloured = (at: number) => rows.some((row) => row.stage === at && row.type === "flour");
  if (stage === undefined || !isFloured(later) || !isFloured(first)) return;
  const isSour = rows.some((row) => row.stage === first && isStarter(row));
  if (!isSour && !rows.some((row) => row.stage === first && row.type === "yeast")) return;
  stages[first] = {
    ...stage,
    role: "preferment",
    preferment: isSour ? "levain" : "sponge",
    name: stage.name || "Day 1",
  };
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
  weighedBare(draft, reading);
  leaveOpenBeside(draft);
  bakeSponges(draft);
  ripenFirstDay(draft);
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
    questions: [...draft.questions, ...asks, ...checks].sort((one, other) => (one.line ?? -1) - (other.line ?? -1)),
    formula,
  };
}
