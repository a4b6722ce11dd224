// Names across the page with their numbers under them, as lines below each other.

import { AMOUNT, BARE, cellsOf, lineOf, MAY } from "./line-cells.ts";
import type { SourceLine } from "./source-lines.ts";
import { typeOf } from "./types.ts";

/** Names across the page and one row of numbers under them. */
export function upright(lines: readonly SourceLine[]): readonly SourceLine[] {
  for (const [place, head] of lines.entries()) {
    if (!MAY.test(head.raw) || /\d/.test(head.raw)) continue;
    const all = cellsOf(head.raw);
    const [first] = all;
    const isLabelled = first !== undefined && !isIngredient(first.text);
    const names = isLabelled ? all.slice(1) : all;
    const next = lines[place + 1];
    if (names.length < 3 || next === undefined || !names.every(({ text }) => isIngredient(text))) continue;
    const under: string[][] = [];
    for (let at = place + 1; at < lines.length; at++) {
      const numbers = numbersUnder(lines[at] as SourceLine, names.length, isLabelled);
      if (numbers === undefined) break;
      under.push(numbers);
    }
    // Percentages and weights belong together; two rows of weights are two recipes.
    const isShare = (row: readonly string[]) => row.every((one) => one.endsWith("%"));
    if (
      under.length === 0 ||
      under.length > 2 ||
      (under.length === 2 && isShare(under[0] ?? []) === isShare(under[1] ?? []))
    )
      continue;
    const rows = names.map(({ text }, at) => lineOf(next, [text, ...under.map((row) => row[at] ?? "")].join(" ")));
    if (isLabelled && under.length > 1 && !under.some(isShare)) continue;
    const title = isLabelled ? (labelOf(next, names.length) ?? first.text) : "";
    return [...lines.slice(0, place), lineOf(head, title), ...rows, ...upright(lines.slice(place + 1 + under.length))];
  }
  return lines;
}

const isIngredient = (text: string): boolean => text.split(" ").length <= 4 && typeOf(text, text).word !== "";

/** The name before a row of numbers, where it is no unit. */
function labelOf({ raw }: SourceLine, many: number): string | undefined {
  const cells = cellsOf(raw);
  const label = cells.length === many + 1 ? cells[0]?.text : undefined;
  return label === undefined || UNIT_ALONE.test(label) ? undefined : label;
}

const UNIT_ALONE = /^\W*(k?g|lbs?|oz|%|grams?|kilos?)\W*$/i;

function numbersUnder({ raw }: SourceLine, many: number, isLabelled: boolean): string[] | undefined {
  const cells = cellsOf(raw).map(({ text }) => text);
  const label = cells.length === many + 1 ? (cells[0] ?? "") : "";
  const unit = UNIT_ALONE.exec(label)?.[1];
  const numbers = label === "" ? cells : cells.slice(1);
  if (
    numbers.length !== many ||
    !numbers.every((one) => AMOUNT.test(one)) ||
    (label !== "" && unit === undefined && !isLabelled)
  )
    return undefined;
  return numbers.map((one) => (BARE.test(one) && unit !== undefined ? `${one} ${unit}` : one));
}
