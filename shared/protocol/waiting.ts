// Cells whose call has not answered yet, as scripts read them.
import type { Snapshot } from "./look.ts";

/** A script reads `Loading...` in the spreadsheet's own language, or #N/A; every language ends it with dots. */
const DOTS = /^\S.{0,38}(?:\.\.\.|…)$/;

export const isWaitingText = (cell: unknown): boolean =>
  typeof cell === "string" && (cell === "#N/A" || DOTS.test(cell));

/** The cells that may still be calculating, each by its place and its text. */
export function waitingCells({ sheets, names }: Pick<Snapshot, "sheets" | "names">): string[] {
  const grids = [
    ...sheets.map(({ id, values }) => [String(id), values] as const),
    ...names.map(({ name, values }) => [name, values] as const),
  ];
  return grids.flatMap(([of, values]) =>
    values.flatMap((row, down) =>
      row.flatMap((cell, across) => (isWaitingText(cell) ? [`${of} ${down} ${across} ${cell}`] : [])),
    ),
  );
}
