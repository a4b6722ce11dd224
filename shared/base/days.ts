// Days as a spreadsheet counts them.
const MS_A_DAY = 86_400_000;

/** The day of a clock on the wall as the number a sheet counts in: 1 is 31 December 1899. */
export const dayNumber = (now: Date): number =>
  Math.round((Date.UTC(now.getFullYear(), now.getMonth(), now.getDate()) - Date.UTC(1899, 11, 30)) / MS_A_DAY);
