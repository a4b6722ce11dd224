// Days as a sheet counts them: 1 is 31 December 1899.

/** The days before a day, one for each row of a log. */
export const daysBefore = (today: number, many: number): number[] =>
  Array.from({ length: many }, (_, at) => today - many + at);

/** A day by its calendar date: 1 January 2026 is 46023. */
export const serialOf = (year: number, month: number, day: number): number =>
  Math.round((Date.UTC(year, month - 1, day) - Date.UTC(1899, 11, 30)) / 86_400_000);

/** The other way round, as 2026-01-01. */
export const isoOf = (serial: number): string =>
  new Date(Date.UTC(1899, 11, 30) + serial * 86_400_000).toISOString().slice(0, 10);
