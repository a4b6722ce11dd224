// The question that writes what formula sheets read of each other, checked at both ends.
import { refuseUnread } from "../base/refusal.ts";
import { badFormula } from "../sheet/make-formulas.ts";
import type { Tab } from "../sheet/tab.ts";

/** Formulas for the small table of a sheet; row and column of its first cell, counted from 1. */
export type Connection = {
  readonly tab: Tab;
  readonly row: number;
  readonly column: number;
  readonly formulas: readonly (readonly string[])[];
};
export type ConnectAsk = {
  readonly connections: readonly Connection[];
  /** What stands over each table: without it nothing is written. */
  readonly head: string;
  /** The sheets that are read. */
  readonly tabs: readonly Tab[];
};
export type ConnectAnswer = { readonly sheets: readonly string[] };

const MAX_SHEETS = 300;
const MAX_CELLS = 20;
const MAX_LENGTH = 1000;

export function connectAsk({ connections, head, tabs }: Readonly<Record<string, unknown>>): ConnectAsk {
  return {
    connections: list(connections, MAX_SHEETS, (one) => {
      const { tab, row, column, formulas } = record(one);
      return {
        tab: tabOf(tab),
        row: whole(row),
        column: whole(column),
        formulas: list(formulas, MAX_CELLS, (line) => list(line, MAX_CELLS, formulaOf)),
      };
    }),
    head: text(head),
    tabs: list(tabs, MAX_SHEETS, tabOf),
  };
}

export function connectAnswer(raw: unknown): ConnectAnswer {
  return { sheets: list(record(raw).sheets, MAX_SHEETS, text) };
}

const unclear = (): never => refuseUnread("What the sidebar found of the formula sheets");
const record = (raw: unknown): Readonly<Record<string, unknown>> =>
  typeof raw === "object" && raw !== null ? (raw as Record<string, unknown>) : unclear();
const list = <T>(raw: unknown, most: number, read: (one: unknown) => T): T[] =>
  Array.isArray(raw) && raw.length <= most ? raw.map(read) : unclear();
const text = (raw: unknown): string => (typeof raw === "string" && raw.length <= MAX_LENGTH ? raw : unclear());
const whole = (raw: unknown): number => (Number.isInteger(raw) && (raw as number) > 1 ? (raw as number) : unclear());
const formulaOf = (raw: unknown): string => {
  const formula = text(raw);
  return formula === "" || !badFormula(formula) ? formula : unclear();
};
function tabOf(raw: unknown): Tab {
  const { name, id } = record(raw);
  return { name: text(name), id: Number.isInteger(id) ? (id as number) : unclear() };
}
