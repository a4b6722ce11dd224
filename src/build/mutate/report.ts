/** The part of a mutation testing report that is read here (mutation-testing-report-schema 2). */
export type MutantReport = { readonly files: Readonly<Record<string, FileReport>> };

type FileReport = { readonly source: string; readonly mutants: readonly Mutant[] };

type Place = { readonly line: number; readonly column: number };

export type Mutant = {
  readonly mutatorName: string;
  readonly replacement?: string;
  readonly status: string;
  readonly location: { readonly start: Place; readonly end: Place };
};

/** A test failed, or never ended; without a test that reaches it a change survives as well. */
const KILLED = ["Killed", "Timeout"];
const SURVIVED = ["Survived", "NoCoverage"];

const count = (mutants: readonly Mutant[], of: readonly string[]) =>
  mutants.filter(({ status }) => of.includes(status)).length;

/** File, mutants, killed, survived, share killed; all files together in the last line. */
export function summary({ files }: MutantReport): string {
  const rows = Object.entries(files).map(([name, { mutants }]) => ({ name, mutants }));
  const all = { name: "together", mutants: rows.flatMap(({ mutants }) => mutants) };
  const lines = (rows.length > 1 ? [...rows, all] : rows).map(({ name, mutants }) => {
    const [killed, survived] = [count(mutants, KILLED), count(mutants, SURVIVED)];
    const share = killed + survived === 0 ? 100 : (100 * killed) / (killed + survived);
    return [name, String(killed + survived), String(killed), String(survived), `${share.toFixed(1)} %`];
  });
  return aligned([["file", "mutants", "killed", "survived", "killed"], ...lines]);
}

function aligned(rows: readonly (readonly string[])[]): string {
  const width = (at: number) => Math.max(...rows.map((row) => (row[at] ?? "").length));
  return rows
    .map((row) => row.map((cell, at) => (at === 0 ? cell.padEnd(width(at)) : cell.padStart(width(at)))).join("  "))
    .join("\n");
}

/** A line for every change that no test noticed: where it is, what stood there, what was tried. */
export function survivors({ files }: MutantReport): string {
  const lines = Object.entries(files).flatMap(([name, { source, mutants }]) =>
    mutants
      .filter(({ status }) => SURVIVED.includes(status))
      .sort((a, b) => a.location.start.line - b.location.start.line)
      .map(({ location, mutatorName, replacement = "", status }) => {
        const reached = status === "NoCoverage" ? " (no test comes here)" : "";
        const { line, column } = location.start;
        return `${name}:${line}:${column} ${mutatorName}${reached}: ${flat(textAt(source, location))} → ${flat(replacement)}`;
      }),
  );
  return lines.map((line) => `${line}\n`).join("");
}

const flat = (code: string) => code.replace(/\s+/g, " ");

function textAt(source: string, { start, end }: Mutant["location"]): string {
  const lines = source.split("\n").slice(start.line - 1, end.line);
  const last = lines.length - 1;
  return lines
    .map((line, at) => line.slice(at === 0 ? start.column - 1 : 0, at === last ? end.column - 1 : undefined))
    .join("\n");
}
