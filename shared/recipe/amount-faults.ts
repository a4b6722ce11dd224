// What no amount of a recipe line can mean: a reason each, and its sentence.
import type { Fault } from "../base/refusal.ts";

const SENTENCES = {
  "no fraction": 'a fraction that no kitchen has; enter one such as "1/2", or a decimal',
  "side by side": 'two numbers side by side; enter the number without a space, or "2 x 250 g" for two of them',
  dotted: 'two numbers with dots between them; enter "2 to 3", or one of them',
  "two in words": "a number that may be two; enter it in digits",
  "lost space": 'a fraction that may be "1 1/2" without its space; enter it so, or as a decimal',
  backwards: 'a range that runs backwards; enter the lower number first, or "1 3/4" for one and three quarters',
  wide: "a range too wide for one amount; enter one of its numbers",
  "thousands or decimals":
    "a number that could mean thousands or decimals; enter thousands without the separator, decimals with two digits",
  packs: 'one amount, or a number of packs? Enter "2 x 8 oz" for packs',
  "no unit": 'a number without its unit behind an amount; enter it too, such as "1 kg 500 g"',
  each: '"each" without a number of them',
  times: 'a number of times? Enter "2 x 100 g", or the whole amount',
} as const;
type Reason = keyof typeof SENTENCES;

export type AmountFault = Fault & { readonly reason: Reason | "loose measure" };

export const amountFault = (reason: Reason): AmountFault => ({ reason, says: SENTENCES[reason] });

export const looseSentence = (word: string): string => `"${word}" leaves open how much; enter a level measure or grams`;
export const looseFault = (word: string): AmountFault => ({ reason: "loose measure", says: looseSentence(word) });

const NO_NUMBER: ReadonlySet<string> = new Set<Reason>([
  "no fraction",
  "side by side",
  "dotted",
  "two in words",
  "lost space",
  "backwards",
  "wide",
]);

/** What is refused however the rest of the line may read. */
export const isNoNumber = (fault: AmountFault | undefined): fault is AmountFault =>
  fault !== undefined && NO_NUMBER.has(fault.reason);
