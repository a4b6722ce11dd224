// The question that writes one formula at the cursor, checked at both ends.
import { refuse } from "../base/refusal.ts";

/** The arguments as they were typed, in order; "" for one left out. */
export type InsertAsk = { readonly name: string; readonly args: readonly string[] };
export type InsertAnswer = {
  readonly sheet: string;
  readonly cell: string;
  /** What the cell says now instead of an answer; "" where it answers. */
  readonly says: string;
};

const MAX_ARGUMENTS = 20;
export const MAX_ARGUMENT_LENGTH = 500;

export function insertAsk({ name, args }: Readonly<Record<string, unknown>>): InsertAsk {
  const texts = Array.isArray(args) ? args.slice(0, MAX_ARGUMENTS) : [];
  const fits = texts.every((one): one is string => typeof one === "string" && one.length <= MAX_ARGUMENT_LENGTH);
  if (typeof name === "string" && Array.isArray(args) && fits) return { name, args: texts };
  return refuse(`An argument takes up to ${MAX_ARGUMENT_LENGTH} characters; put the values into cells and name those.`);
}

export function insertAnswer(raw: unknown): InsertAnswer | null {
  if (typeof raw !== "object" || raw === null) return null;
  const { sheet, cell, says } = raw as Record<string, unknown>;
  if (typeof sheet !== "string" || typeof cell !== "string" || typeof says !== "string") return null;
  return { sheet, cell, says };
}
