// Cells whose call has not answered yet, as scripts read them.

/** A script reads `Loading...` in the spreadsheet's own language, or #N/A; every language ends it with dots. */
const DOTS = /^\S.{0,38}(?:\.\.\.|…)$/;

export const isWaitingText = (cell: unknown): boolean =>
  typeof cell === "string" && (cell === "#N/A" || DOTS.test(cell));
