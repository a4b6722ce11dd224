/** The part of a mutation testing report that is read here (mutation-testing-report-schema 2). */
export type MutantReport = { readonly files: Readonly<Record<string, FileReport>> };

type FileReport = { readonly source: string; readonly mutants: readonly Mutant[] };

type Place = { readonly line: number; readonly column: number };

type Mutant = {
  readonly mutatorName: string;
  readonly replacement?: string;
  readonly status: string;
  readonly location: { readonly start: Place; readonly end: Place };
};

/** A test failed, or never ended; without a test that reaches it a change survives as well. */
const KILLED = ["Killed", "Timeout"];
const ENDLESS = ["Timeout"];
const SURVIVED = ["Survived", "NoCoverage"];

/** The changes of explained.txt: its indented lines; what stands at the margin is why. */
export const explainedIn = (text: string): ReadonlySet<string> =>
  new Set(text.split("\n").flatMap((line) => (/^ +\S/.test(line) ? [line.trim()] : [])));

/** File, mutants, killed, those of them that never ended, survived, explained, share killed; together in the last line. */
export function summary({ files }: MutantReport, explained: ReadonlySet<string>): string {
  const rows = Object.entries(files).map(([name, { source, mutants }]) => {
    const of = (statuses: readonly string[]) => mutants.filter(({ status }) => statuses.includes(status));
    const known = of(SURVIVED).filter((mutant) => explained.has(describeMutant(name, source, mutant)));
    return { name, counts: [of(KILLED), of(ENDLESS), of(SURVIVED), known].map((some) => some.length) };
  });
  const together = [0, 1, 2, 3].map((at) => rows.reduce((sum, { counts }) => sum + (counts[at] ?? 0), 0));
  const all = rows.length > 1 ? [...rows, { name: "together", counts: together }] : rows;
  const lines = all.map(({ name, counts }) => {
    const [killed = 0, , survived = 0] = counts;
    const share = killed + survived === 0 ? 100 : (100 * killed) / (killed + survived);
    return [name, String(killed + survived), ...counts.map(String), `${share.toFixed(1)} %`];
  });
  return aligned([["file", "mutants", "killed", "endless", "survived", "explained", "killed"], ...lines]);
}

function aligned(rows: readonly (readonly string[])[]): string {
  const width = (at: number) => Math.max(...rows.map((row) => (row[at] ?? "").length));
  return rows
    .map((row) => row.map((cell, at) => (at === 0 ? cell.padEnd(width(at)) : cell.padStart(width(at)))).join("  "))
    .join("\n");
}

/** Every change that no test noticed and explained.txt does not hold: its place, and under it the line for explained.txt. */
export function survivors({ files }: MutantReport, explained: ReadonlySet<string>): string {
  return Object.entries(files)
    .flatMap(([name, { source, mutants }]) =>
      mutants
        .filter((mutant) => SURVIVED.includes(mutant.status) && !explained.has(describeMutant(name, source, mutant)))
        .sort((a, b) => a.location.start.line - b.location.start.line)
        .map((mutant) => {
          const { line, column } = mutant.location.start;
          const reached = mutant.status === "NoCoverage" ? " (no test comes here)" : "";
          return `${name}:${line}:${column} ${mutant.mutatorName}${reached}\n  ${describeMutant(name, source, mutant)}\n`;
        }),
    )
    .join("");
}

/** Places move, so that a change is known by its file, the line that it begins in, what is replaced there, and what by. */
function describeMutant(name: string, source: string, { location, replacement = "" }: Mutant): string {
  const line = source.split("\n")[location.start.line - 1] ?? "";
  return `${name} ‹${line.trim()}› ${flat(textAt(source, location))} → ${flat(replacement)}`;
}

const flat = (code: string) => code.replace(/\s+/g, " ").trim();

function textAt(source: string, { start, end }: Mutant["location"]): string {
  const lines = source.split("\n").slice(start.line - 1, end.line);
  const last = lines.length - 1;
  return lines
    .map((line, at) => line.slice(at === 0 ? start.column - 1 : 0, at === last ? end.column - 1 : undefined))
    .join("\n");
}
