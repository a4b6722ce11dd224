// Runs a script's onEdit after the edits of a person, as the service does, and where that is not known more strictly.
import { cellValue } from "../engine/custom.ts";
import { type Edit, hearEdits } from "../engine/edits.ts";
import type { Position } from "../engine/library.ts";
import { makeRange } from "./range.ts";
import type { Script } from "./script.ts";
import type { Session } from "./session.ts";
import { makeSheet } from "./sheet.ts";

/** The service keeps so many events that wait; others are lost. */
const MAX_WAITING = 2;

export type Edits = {
  /** Runs what waits. */
  readonly answer: () => void;
  /** From now on edits wait until they are answered, as where a person types faster than the script answers. */
  readonly hold: () => void;
  /** Work that fails was no edit: what it changed was taken back. */
  readonly attempt: (work: () => void) => void;
  /** As if the add-on were missing, or not. */
  readonly silence: (isSilent: boolean) => void;
};

/** `due` is told that an edit waits. An undone edit is an edit, too; a script has to know it again. */
export function makeEdits(session: Session, script: Script, due: (edits: Edits) => void): Edits {
  const { engine } = session;
  let waiting: Edit[] = [];
  let isHeld = false;
  let isSilent = false;
  const sheetOf = (sheetId: string): object => makeSheet(session, sheetId, sheetOf);
  const valueAt = (at: Position): unknown => cellValue(engine.library, session.Date, engine.evaluated(at));
  const authMode = () => (session.isEnabled ? "LIMITED" : "NONE");
  const eventOf = ({ sheetId, zone, isTyped, before }: Edit): object => {
    const event = { authMode: authMode(), range: makeRange(session, { sheetId, zone }, sheetOf) };
    if (!isTyped) return event;
    const at = { sheetId, col: zone.left, row: zone.top };
    const now = engine.formula(at) === undefined ? texted(valueAt(at)) : undefined;
    const old = texted(before);
    return { ...event, ...(now === undefined ? {} : { value: now }), ...(old === undefined ? {} : { oldValue: old }) };
  };
  const run = () => {
    const edits = waiting;
    waiting = [];
    for (const edit of edits) script.run(authMode(), "onEdit", [eventOf(edit)]);
  };
  const edits: Edits = {
    answer: () => {
      isHeld = false;
      run();
    },
    hold: () => {
      isHeld = true;
    },
    attempt(work) {
      const [before, was] = [waiting.length, isHeld];
      isHeld = true;
      try {
        work();
      } catch (error) {
        waiting.length = before;
        throw error;
      } finally {
        isHeld = was;
      }
      if (!isHeld && waiting.length > 0) due(edits);
    },
    silence: (silent) => {
      isSilent = silent;
    },
  };
  const typedBefore = (at: Position): unknown =>
    engine.formula(at) === undefined && session.contentOf(at) !== "" ? valueAt(at) : "";
  hearEdits(engine.model, typedBefore, (edit) => {
    if (isSilent || !script.has("onEdit")) return;
    if (waiting.length < MAX_WAITING) waiting.push(edit);
    if (!isHeld) due(edits);
  });
  return edits;
}

/** Values travel as texts; a blank cell's is left out. */
function texted(value: unknown): string | undefined {
  return value === "" || value === undefined || value === null ? undefined : String(value);
}
