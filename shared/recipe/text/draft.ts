// What is known of a recipe while its lines are read, one after the other.

import type { Corrections } from "./corrections.ts";
import type { Described, Ignored, IgnoredReason, Question, Row, Stage, StageRole, Step } from "./description.ts";
import { readRow } from "./row.ts";
import type { Reading, RowRead } from "./row-context.ts";
import type { SourceLine } from "./source-lines.ts";
import type { YieldRead } from "./yield-words.ts";
import { bothYields } from "./yields.ts";

/** A row that adds up the rows before it, as the text gives it. */
export type Total = {
  readonly line: number;
  readonly grams: number | null;
  /** A number whose unit is that of the other bare ones. */
  readonly bare: number | null;
  readonly percent: number | null;
  readonly stage: number;
  /** How many rows stood above it. */
  readonly rows: number;
};

export type Mode = "start" | "ingredients" | "method" | "nutrition" | "note" | "equipment" | "web page";
export type Draft = {
  title: string;
  yield: YieldRead;
  readonly stages: Stage[];
  readonly rows: Row[];
  readonly bare: Map<Row, number>;
  /** The row that a question is about, where it is about one. */
  readonly askedOf: Map<Question, Row>;
  /** A row with what a person said of it, where it is one of several in its line. */
  readonly correct: (before: RowRead) => RowRead;
  /** Bare numbers that were taken for pieces. */
  readonly counts: Map<Row, number>;
  readonly ignored: Ignored[];
  readonly steps: Step[];
  readonly questions: Question[];
  readonly totals: Total[];
  /** Stages that a column of a table names beside each row. */
  readonly byColumn: Set<number>;
  mode: Mode;
  /** The stage that rows go to; -1 before the first. */
  stage: number;
  doughTemperature: Described["doughTemperature"];
};

/** A line in hand, and what is known around it. */
export type Place = {
  readonly draft: Draft;
  readonly line: SourceLine;
  readonly reading: Reading;
  readonly before: SourceLine | undefined;
  readonly next: readonly SourceLine[];
  /** Nothing of the recipe was read yet. */
  readonly isFirst: boolean;
  /** Marks, capitals or a colon make it a heading, whatever its words. */
  readonly isSetOff: boolean;
};

/** Leaves a line aside; true, as it was taken. */
export function ignore(draft: Draft, { at, text }: SourceLine, reason: IgnoredReason): true {
  draft.ignored.push({ line: at, text, reason });
  return true;
}

export const isCapitals = (text: string): boolean => /\p{Lu}{3}/u.test(text) && !/\p{Ll}/u.test(text);
export const hasAmount = (text: string): boolean =>
  /\d\s?(?:k?g|gr|grams?|oz|lbs?|ml|l|cups?|tsp|tbsp|%|#)(?![\p{L}])/iu.test(text);
export const looksLikeRow = (line: SourceLine | undefined): boolean =>
  line !== undefined && line.text !== "" && line.text.length < 80 && /\d|½|¼|¾|⅓|⅔|\b(?:pinch|all)\b/i.test(line.text);

/** Whether nothing of the recipe was read yet. */
export const isFirstOf = (draft: Draft): boolean => draft.title === "" && draft.rows.length === 0 && draft.stage < 0;

export function stageAt(draft: Draft): number {
  if (draft.stage < 0) draft.stage = addStage(draft, plainStage("dough", "", null));
  return draft.stage;
}

export const plainStage = (role: StageRole, name: string, line: number | null): Stage => ({
  role,
  name,
  line,
  preferment: "",
  hours: null,
  temperature: null,
});

export function addStage(draft: Draft, stage: Stage): number {
  draft.stages.push(stage);
  return draft.stages.length - 1;
}

/** The stage of a role that single rows belong to: an egg for the wash, flour for the bench. */
export function sideStage(draft: Draft, role: StageRole): number {
  const at = draft.stages.findIndex((one) => one.role === role && one.line === null);
  return at >= 0 ? at : addStage(draft, plainStage(role, "", null));
}

/** The stage that rows name by themselves: the one of that kind, however many name it. */
export function stageLike(draft: Draft, stage: Stage): number {
  const at = draft.stages.findIndex((one) => one.role === stage.role && one.preferment === stage.preferment);
  return at >= 0 ? at : addStage(draft, stage);
}

/** Asks about one row of a line that may hold several. */
export function askOf(draft: Draft, row: Row, question: Question): void {
  draft.questions.push(question);
  draft.askedOf.set(question, row);
}

/** "Sour, all, wheat 500": what is asked of the wheat is not asked of the sour beside it. */
export function isAbout({ askedOf }: Draft, question: Question, { line, text }: Row): boolean {
  const of = askedOf.get(question);
  return question.line === line && (of === undefined || of.text === text);
}

export function addRow(
  draft: Draft,
  line: number,
  plainRow: RowRead,
  stage: number,
  more: readonly Row["remarks"][number][] = [],
): Row {
  const contents = draft.correct(plainRow);
  const row: Row = {
    line,
    text: contents.text,
    name: contents.name,
    readName: contents.readName,
    type: contents.type,
    amountOf: contents.amountOf,
    grams: contents.grams,
    percent: contents.percent,
    stage,
    optional: contents.isOptional,
    remarks: [...contents.remarks, ...more],
    takes: null,
    keeps: contents.keeps,
    isKnown: contents.isKnown,
  };
  draft.rows.push(row);
  if (contents.count !== null) draft.counts.set(row, contents.count);
  if (contents.bare !== null) draft.bare.set(row, contents.bare);
  for (const ask of contents.asks) askOf(draft, row, { ...ask, line });
  if (draft.mode !== "ingredients") draft.mode = "ingredients";
  return row;
}

export function takeYield(draft: Draft, yieldRead: YieldRead): void {
  draft.yield = bothYields(draft.yield, yieldRead);
}

export function correctedRow(
  before: RowRead,
  correction: NonNullable<Corrections["lines"][string]>,
  reading: Reading,
): RowRead {
  const again =
    correction.name === undefined ? before : { ...readRow(`${correction.name}`, reading), text: before.text };
  const { name, type, grams, percent } = correction;
  const hasSaid = grams !== undefined || percent !== undefined;
  const asks = [...again.asks, ...before.asks].filter(
    ({ reason }, at, all) =>
      all.findIndex((one) => one.reason === reason) === at &&
      !(hasSaid && /amount|grams or|thousands/.test(reason)) &&
      !(type !== undefined && /type|hydration/.test(reason)) &&
      !(
        name !== undefined &&
        (/misspelt|which name/.test(reason) ||
          (reason === "no amount" && !before.asks.some((one) => one.reason === reason)))
      ),
  );
  return {
    ...before,
    name: name ?? before.name,
    type: type ?? again.type,
    isKnown: again.isKnown,
    grams: grams === undefined ? before.grams : (grams as RowRead["grams"]),
    percent: percent ?? before.percent,
    bare: hasSaid ? null : before.bare,
    amountOf: grams !== undefined ? "weight" : percent !== undefined ? "percentage" : before.amountOf,
    asks: type === undefined ? asks : asks.filter(({ reason }) => reason !== "misspelt"),
  };
}
