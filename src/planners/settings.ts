import type { Questions } from "../../shared/protocol/questions.ts";
import { SETTINGS_NAME } from "../../shared/sheet/model.ts";
import { look, type Steps } from "./steps.ts";

/** The shop's settings as they stand in the workbook; a cell with a number or a tick is read as it would be typed. */
export function* readSettings(): Steps<Questions["settings"]["answer"]> {
  const [found] = (yield* look({ cells: [SETTINGS_NAME] })).names;
  if (found === undefined) return { rows: null };
  const text = (cell: unknown) => String(cell ?? "").trim();
  return {
    rows: found.values.flatMap(([name, value]): (readonly [string, string])[] =>
      text(name) === "" ? [] : [[text(name), text(value)]],
    ),
  };
}
