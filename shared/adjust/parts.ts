// What a change moves beside the rows: fat, sugar, salt and protein that an ingredient brings or takes along.
import { Refusal } from "../base/refusal.ts";
import { shownShare } from "../base/show.ts";
import { type Content, contents } from "../enrichment/enrichment.ts";
import type { Larder } from "../larder/larder.ts";
import { allFlour, type Row } from "./formula.ts";
import { columns } from "./water.ts";

const PARTS: readonly Content[] = ["fat", "sugar", "protein", "salt"];
/** Less than this of the flour is nobody's concern. */
const MIN_SHOWN = 0.0005;

/** Null where a figure is refused, as of an ingredient that no table knows. */
export function orNull<T>(work: () => T): T | null {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return null;
  }
}

/** A part of all rows, over all flour; null where an ingredient's is not known. */
export function partOf(rows: readonly Row[], part: Content, larder: Larder): number | null {
  return orNull(() => {
    const [names, weights, kinds] = columns(rows);
    const held = contents(names, weights, part, larder, kinds).reduce<number>((sum, one) => sum + (one ?? 0), 0);
    return held / allFlour(rows);
  });
}

/** What all ingredients together hold, flour counted, before and after. */
export function partsMoved(before: readonly Row[], after: readonly Row[], larder: Larder): string[] {
  return PARTS.flatMap((part) => {
    const [was, now] = [partOf(before, part, larder), partOf(after, part, larder)];
    if (was === null || now === null || Math.abs(now - was) < MIN_SHOWN) return [];
    const name = part.slice(0, 1).toUpperCase() + part.slice(1);
    return [`${name} of the whole dough: ${shownShare(was)} to ${shownShare(now)} of flour.`];
  });
}
