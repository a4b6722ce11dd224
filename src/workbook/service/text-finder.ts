import type { EvaluatedCell, Position } from "../engine/library.ts";
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
        session.engine.settle();
        // Every cell of the workbook is looked at, so each is asked of the engine straight.
        const { getEvaluatedCell: evaluated = session.engine.evaluated } = session.engine.model.getters;
        const shows = (at: Position) => (evaluated(at) as EvaluatedCell).formattedValue.toLowerCase().includes(wanted);
        return session.get<readonly string[]>("getSheetIds").flatMap((sheetId) =>
          session
            .get<readonly Position[]>("getEvaluatedCellsPositions", sheetId)
            .filter(shows)
            .sort((a, b) => a.row - b.row || a.col - b.col)
            .map(({ col, row }) => rangeAt(sheetId, col, row)),
        );
      },
    },
  });
}
