// Writes the larder's table as shared/larder/larder-packing.ts reads it.
import { BETWEEN, DECIMALS, ENDING, LEADING, MOST_SIGNS, signOf } from "../../shared/larder/larder-packing.ts";

export type PackedLarder = {
  readonly text: string;
  readonly signs: string;
  readonly entries: string;
  readonly figures: string;
};

/** Fields of a line that are figures. */
const FIGURES = { from: 3, to: 3 + DECIMALS.length };
/** Entries that are found in one reading of the text. */
const AT_ONCE = 6;
const LONGEST = 5;
const bytes = (text: string): number => Buffer.byteLength(text);

export function packedLarder(lines: readonly string[]): PackedLarder {
  const fields = lines.map((line) => line.split("\t"));
  const text = fields
    .map(([name, kind, , ...rest]) => [name, kind, ...rest.slice(FIGURES.to - FIGURES.from)].join("\t"))
    .join("\n");
  const figures = fields.flatMap((line) =>
    DECIMALS.map((decimals, at) => lettersOf(line[FIGURES.from + at] ?? "", decimals)),
  );
  return { ...folded(text), figures: figures.join("") };
}

function lettersOf(figure: string, decimals: number): string {
  if (figure === "") return String.fromCharCode(ENDING.first);
  const [whole = "", part = ""] = figure.split(".");
  if (part.length > decimals) throw new Error(`the larder's figure ${figure} has more than ${decimals} decimals`);
  const value = Number(whole + part.padEnd(decimals, "0")) + 1;
  let letters = String.fromCharCode(ENDING.first + (value % ENDING.many));
  for (let rest = Math.floor(value / ENDING.many); rest > 0; rest = Math.floor(rest / LEADING.many))
    letters = String.fromCharCode(LEADING.first + (rest % LEADING.many)) + letters;
  return letters;
}

/** What comes often is written once; the longest gain first. */
function folded(whole: string): Omit<PackedLarder, "figures"> {
  const used = new Set(whole);
  const signs = Array.from({ length: 94 }, (_, at) => String.fromCharCode(33 + at))
    .filter((sign) => !used.has(sign) && !`"\\$\`${BETWEEN}`.includes(sign))
    .join("");
  const entries: string[] = [];
  let text = whole;
  for (;;) {
    const found = repeated(text, bytes(signOf(entries.length, signs)));
    let isMore = false;
    for (const entry of found) {
      const sign = signOf(entries.length, signs);
      // The one before may have taken some of it.
      if (gain(text.split(entry).length - 1, entry, bytes(sign)) <= 0) continue;
      if (entries.length === signs.length + MOST_SIGNS) break;
      text = text.split(entry).join(sign);
      entries.push(entry);
      isMore = true;
    }
    if (!isMore) return { text, signs, entries: entries.join(BETWEEN) };
  }
}

const gain = (times: number, entry: string, sign: number): number =>
  times * (bytes(entry) - sign) - bytes(entry) - bytes(BETWEEN);

/** Runs of words and signs with what each would save, the best first. */
function repeated(text: string, sign: number): string[] {
  const parts = text.match(/[a-z]+|[^a-z]/g) ?? [];
  const times = new Map<string, number>();
  for (let from = 0; from < parts.length; from++) {
    let run = "";
    for (const part of parts.slice(from, from + LONGEST)) {
      run += part;
      times.set(run, (times.get(run) ?? 0) + 1);
    }
  }
  return [...times]
    .map(([entry, count]) => ({ entry, gain: gain(count, entry, sign) }))
    .filter((one) => one.gain > 0)
    .sort((a, b) => b.gain - a.gain)
    .slice(0, AT_ONCE)
    .map(({ entry }) => entry);
}
