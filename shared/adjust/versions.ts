// A version as it stands in the formula history: texts only, and what is longer than a cell goes on in the next.
export type Version = {
  /** With its zone, as 2026-11-30 16:20 +01:00. */
  readonly when: string;
  /** Of the formula sheet; it stays with it when it is renamed. */
  readonly sheet: number;
  readonly title: string;
  readonly number: number;
  /** What changed, in one line. */
  readonly line: string;
  readonly content: string;
};

/** A cell takes 50 000 characters; a formula has a few thousand. */
export const MAX_CELL = 40_000;
/** Cells for what is kept of one version. */
export const CONTENT_CELLS = 8;
/** Columns before them. */
export const BEFORE_CONTENT = 5;

/** The cells of a version. Content begins each cell with a sign that no cell reads as a number, a date or a formula. */
export function rowOf({ when, sheet, title, number, line, content }: Version): string[] {
  const pieces = Array.from({ length: Math.max(1, Math.ceil(content.length / MAX_CELL)) }, (_, at) =>
    content.slice(at * MAX_CELL, (at + 1) * MAX_CELL),
  );
  return [when, title, String(number), line, String(sheet), ...pieces.map((piece) => `${MARK}${piece}`)];
}

const MARK = "|";

/** Null for a row that is none: a heading, a blank one, or one that somebody typed. */
export function versionIn(cells: readonly unknown[]): Version | null {
  const [when = "", title = "", number = "", line = "", sheet = "", ...pieces] = cells.map((cell) =>
    String(cell ?? ""),
  );
  const [version, id] = [Number(number), Number(sheet)];
  const isWhole = (value: number) => Number.isSafeInteger(value) && value >= 0;
  if (number === "" || sheet === "" || !isWhole(version) || !isWhole(id) || !(pieces[0] ?? "").startsWith(MARK))
    return null;
  const content = pieces.map((piece) => (piece.startsWith(MARK) ? piece.slice(MARK.length) : "")).join("");
  return { when, title, number: version, line, sheet: id, content };
}

/** What appendRow reads as if it were typed stays a text behind an apostrophe, which no cell shows. */
export const asTyped = (text: string): string => (text === "" ? "" : `'${text}`);

export const versionsOf = (rows: readonly (readonly unknown[])[], sheet: number): Version[] =>
  rows.flatMap((cells) => {
    const version = versionIn(cells);
    return version !== null && version.sheet === sheet ? [version] : [];
  });

/** The next one; a history that was sorted or thinned out by hand still counts on from its highest. */
export const nextNumber = (versions: readonly Version[]): number =>
  Math.max(0, ...versions.map(({ number }) => number)) + 1;

/** The one that was kept last. */
export const latest = (versions: readonly Version[]): Version | undefined =>
  versions.reduce<Version | undefined>(
    (last, one) => (last === undefined || one.number >= last.number ? one : last),
    undefined,
  );

/** A moment where the person is, with the zone, so that two people in two places read the same. */
export function zonedTime(now: Date): string {
  const two = (value: number) => String(Math.floor(Math.abs(value))).padStart(2, "0");
  const offset = -now.getTimezoneOffset();
  const zone = `${offset < 0 ? "-" : "+"}${two(offset / 60)}:${two(Math.abs(offset) % 60)}`;
  const day = `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  return `${day} ${two(now.getHours())}:${two(now.getMinutes())} ${zone}`;
}
