// What a step of the method says of the pieces.

import { weightsIn } from "./yield-weights.ts";
import { NO_YIELD, type YieldRead } from "./yield-words.ts";
import { yieldIn } from "./yields.ts";

const DIVIDE =
  /(?<!\p{L})(?:détailler|façonner|diviser|peser|teilen|abwiegen|formare|dividere|spezzare|dividir|s?pezzatura\s*:?)\s+(?:(?:en|in|à|zu|auf)\s+)?(\d[^.;]{1,40})|\b(?:divide|portion|scale|cut|shape|form|split|make|roll)\b[^.]*?\b(?:into|as|at|to)\b\s*([^.;]{2,60})|\b(?:divide|scale|portion)\s+(\d[^.;]{1,40})|\b(?:shape|form|mould|make|roll)\s+(\d{1,4}\s*[x×@]\s*\d[^.;,]{1,20})/iu;

/** "Divide into 12 pieces of 85 g": what a step says of the pieces. */
export function yieldOfStep(text: string): YieldRead | undefined {
  const match = DIVIDE.exec(text);
  const words = match?.[1] ?? match?.[2] ?? match?.[3] ?? match?.[4] ?? "";
  if (words === "") return undefined;
  if (/^\s*\d+(?:[.,]\d+)?\s*(?:k?g|oz|lb)\b/i.test(words)) {
    // "85 g, round, flatten"
    const { all, rest } = weightsIn(words.split(/,\s|\s+(?:and|then)\s+/)[0] ?? "");
    const counted = /^\s*(?:(?:each|pieces?|rolls?|loaves|buns?|balls?|portions?|apiece|dough)\b.*)?$/i.test(rest);
    return counted && all.length === 1 ? { ...NO_YIELD, pieceWeight: all[0] ?? null } : undefined;
  }
  const stepYield = yieldIn(
    words.replace(/\s*(?:,|and|then)\s+(?:shape|place|round|let|rest|roll|pre|form|put|leave)\b.*$/i, "").trim(),
  );
  return stepYield === undefined || stepYield.isSpan ? undefined : stepYield;
}
