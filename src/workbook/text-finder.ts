import type { Session } from "./session.ts";

/** A TextFinder over the whole workbook as a script has it: part of what a cell shows, whatever the capitals. */
export function makeTextFinder(
  session: Session,
  text: unknown,
  rangeAt: (sheetId: string, col: number, row: number) => object,
) {
  if (typeof text !== "string" || text === "") throw new Error("createTextFinder takes the text to find");
  const wanted = text.toLowerCase();
  return session.guard.made("TextFinder", {
    reads: {
      findAll: () => {
        session.flush();
        return session.get<readonly string[]>("getSheetIds").flatMap((sheetId) =>
          [...session.get<readonly { col: number; row: number }[]>("getEvaluatedCellsPositions", sheetId)]
            .sort((a, b) => a.row - b.row || a.col - b.col)
            .filter((at) =>
              session.engine
                .evaluated({ sheetId, ...at })
                .formattedValue.toLowerCase()
                .includes(wanted),
            )
            .map(({ col, row }) => rangeAt(sheetId, col, row)),
        );
      },
    },
  });
}
