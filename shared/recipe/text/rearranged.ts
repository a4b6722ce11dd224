// A text whose lists stand beside each other, run across the page or are told in sentences, as lines below each other.

import { upright } from "./across.ts";
import { apart } from "./beside-lists.ts";
import { unitIn } from "./columns.ts";
import { unbroken } from "./goes-on.ts";
import { NUMBER } from "./line-cells.ts";
import { toldApart } from "./prose.ts";
import { gramsOf } from "./row-amount.ts";
import type { SourceLine } from "./source-lines.ts";

const THREE = new RegExp(
  `^(\\p{L}.*?)\\s+(${NUMBER}\\s?(?:k?g|lbs?|oz|l|lt|lit(?:re|er)s?|ml))\\s+(\\d+(?:[.,]\\d+)?)\\s?%?$`,
  "iu",
);
/** Cheap to ask, and true of few lines. */
const ENDS_IN_NUMBER = /\d\s?%?$/;

/** The weights are the percentages of one flour. */
function areInProportion(rows: readonly (readonly string[])[]): boolean {
  const pairs = rows.map(([, weight = "", percent = ""]) => {
    const unit = unitIn(weight.replace(/(\d)(?=\p{L})/gu, "$1 "));
    const number = Number((/[\d.,]+/.exec(weight)?.[0] ?? "").replace(",", "."));
    return { grams: number * (unit === "" ? 1000 : gramsOf(unit)), percent: Number(percent.replace(",", ".")) };
  });
  const rates = pairs.map(({ grams, percent }) => grams / percent).sort((one, other) => one - other);
  const rate = rates[Math.floor(rates.length / 2)] ?? 0;
  return (
    rate > 0 && pairs.every(({ grams, percent }) => Math.abs(grams / rate - percent) <= Math.max(0.05 * percent, 0.1))
  );
}

/** "Flour 25 kg 100", "Water 14.5 l 58": what a single blank parts from the weight is its percentage. */
function withPercents(lines: readonly SourceLine[]): readonly SourceLine[] {
  const found = new Map<SourceLine, readonly string[]>();
  for (const line of lines) {
    const match = ENDS_IN_NUMBER.test(line.text) && !line.raw.includes("\t") ? THREE.exec(line.text) : null;
    if (match !== null) found.set(line, match.slice(1));
  }
  if (found.size < 3) return lines;
  if (!areInProportion([...found.values()])) return lines;
  return lines.map((line) => {
    const cells = found.get(line);
    return cells === undefined ? line : { ...line, raw: `${cells[0]}\t${cells[1]}\t${cells[2]}%` };
  });
}

const isParted = ({ raw }: SourceLine): boolean => raw.includes("  ") || raw.includes("\t") || raw.includes("|");

export function rearranged(lines: readonly SourceLine[]): readonly SourceLine[] {
  const told = toldApart(unbroken(lines));
  return withPercents(told.some(isParted) ? upright(apart(told)) : told);
}
