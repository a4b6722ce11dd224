// How lines are cut into the cells of a table, and where a table ends.

import type { SourceLine } from "./source-lines.ts";

export type Split = (raw: string) => string[];
export const clean = (cell: string) =>
  cell
    .replace(/[\u200b-\u200f\u2060\ufeff\u00ad]/g, "")
    .replace(/^["']|["']$/g, "")
    .replace(/\*\*/g, "")
    .trim();

function quotedSplit(sign: string): Split {
  return (raw) => {
    if (!raw.includes('"')) return raw.split(sign);
    const cells: string[] = [];
    let cell = "";
    let isQuoted = false;
    for (const letter of raw) {
      if (letter === '"') isQuoted = !isQuoted;
      else if (letter === sign && !isQuoted) {
        cells.push(cell);
        cell = "";
      } else cell += letter;
    }
    return [...cells, cell];
  };
}

export const SPLITS: readonly { readonly name: string; readonly may: RegExp; readonly split: Split }[] = [
  { name: "tab", may: /\t/, split: quotedSplit("\t") },
  {
    name: "bar",
    may: /\|/,
    split: (raw) =>
      raw
        .trim()
        .replace(/^\||\|$/g, "")
        .split("|"),
  },
  { name: "semicolon", may: /;/, split: quotedSplit(";") },
  { name: "comma", may: /,/, split: quotedSplit(",") },
  { name: "gap", may: /\S {2,}\S/, split: (raw) => raw.trim().split(/ {2,}|\u00a0{2,}/) },
];

const isRule = (raw: string): boolean => /^[\s|:+=_-]*-[\s|:+=_-]*$/.test(raw);

/** Rows end at a line that is not parted so; a blank line or a heading alone goes with the table as long as rows follow. */
export function rowsFrom(lines: readonly SourceLine[], at: number, may: RegExp, split: Split, name: string) {
  const rows: { line: SourceLine; cells: string[] }[] = [];
  let end = at;
  for (let next = at; next < lines.length; next++) {
    const line = lines[next];
    if (line === undefined) break;
    if (line.raw.trim() === "" || isRule(line.raw)) continue;
    if (may.test(line.raw)) {
      const cells = split(line.raw).map(clean);
      // A sentence with commas is no row.
      if ((name === "comma" || name === "semicolon") && cells.some((cell) => cell.split(" ").length > 8)) break;
      rows.push({ line, cells });
      end = next + 1;
      continue;
    }
    const isHeading = line.text.split(" ").length <= 6 && may.test(lines[next + 1]?.raw ?? "");
    if (!isHeading || rows.length === 0) break;
    rows.push({ line, cells: [clean(line.raw)] });
    end = next + 1;
  }
  return { rows, end };
}
