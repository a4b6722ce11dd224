import { DEMO_FRONT } from "../../../templates/demo/shop.ts";
import { answerQuestion, type Served } from "../../planners/answer.ts";
import { demoToday } from "../demo.ts";
import type { Engine } from "../engine/engine.ts";
import type { Position } from "../engine/library.ts";
import type { Script } from "../service/script.ts";

const FRONT = "sheet in front";

/** The first sheets of an empty workbook: planned and built on the sidebar's own path. */
export async function buildDemo(
  engine: Engine,
  script: Script,
  tell: (says: string, isProblem?: boolean) => void,
): Promise<void> {
  const sheetIds = engine.get<readonly string[]>("getSheetIds");
  const isEmpty = sheetIds.every(
    (id) => engine.get<readonly Position[]>("getEvaluatedCellsPositions", id).length === 0,
  );
  if (!isEmpty) {
    bringForward(engine, localStorage.getItem(FRONT) ?? DEMO_FRONT);
    tell("As it was left.");
    return;
  }
  const serve = (json: string) => JSON.parse(String(script.serve("answerSidebar", [json]))) as Served;
  const names: string[] = [];
  const demo = demoToday();
  for (const [index, question] of demo.entries()) {
    tell(`Building the demo shop, sheet ${index + 1} of ${demo.length} …`);
    await shown();
    const reply = answerQuestion(question, serve);
    if (!reply.ok) {
      tell(reply.message, true);
      return;
    }
    // What only links sheets makes none.
    const { sheet } = reply.answer as { sheet?: string };
    if (sheet !== undefined) names.push(sheet);
  }
  if (names.length > 0) {
    bringForward(engine, names.includes(DEMO_FRONT) ? DEMO_FRONT : (names[0] ?? ""));
    for (const id of sheetIds) engine.run("DELETE_SHEET", { sheetId: id, sheetName: engine.get("getSheetName", id) });
  }
  tell(names.length === 0 ? "Ready." : `Built: ${[...new Set(names)].join(", ")}.`);
}

/** The file of the workbook does not say which sheet is in front; the browser remembers it. */
export function rememberFront(engine: Engine): void {
  engine.model.on("update", rememberFront, () =>
    localStorage.setItem(FRONT, engine.get<string>("getSheetName", engine.get("getActiveSheetId"))),
  );
}

function bringForward(engine: Engine, name: string): void {
  const sheetIdTo = engine.get<string | undefined>("getSheetIdByName", name);
  const sheetIdFrom = engine.get<string>("getActiveSheetId");
  if (sheetIdTo !== undefined && sheetIdTo !== sheetIdFrom) engine.run("ACTIVATE_SHEET", { sheetIdFrom, sheetIdTo });
}

/** Until the page has been drawn and has done what was clicked; a page that nobody sees is not drawn, and goes on all the same. */
const shown = (): Promise<void> =>
  new Promise((resolve) => {
    requestAnimationFrame(() => setTimeout(resolve));
    setTimeout(resolve, 200);
  });
