// Hears what a person changes in cells: typed, pasted, filled down, emptied, undone. What a script writes is no edit.
import type { Model, Position, Zone } from "./library.ts";

/** `isTyped`: one cell, by its keys. `before` is what that cell showed. */
export type Edit = {
  readonly sheetId: string;
  readonly zone: Zone;
  readonly isTyped: boolean;
  readonly before: unknown;
};

/** Commands of hands that change what cells hold; those that insert, delete and move rows are no edits to a script. */
const BY_HAND: ReadonlySet<string> = new Set([
  "UPDATE_CELL",
  "DELETE_CONTENT",
  "DELETE_UNFILTERED_CONTENT",
  "CLEAR_CELLS",
  "PASTE",
  "PASTE_FROM_OS_CLIPBOARD",
  "AUTOFILL",
  "AUTOFILL_AUTO",
  "SORT_CELLS",
  "REQUEST_UNDO",
  "REQUEST_REDO",
]);

type Change = {
  readonly type: string;
  readonly content?: string;
  readonly target?: readonly Zone[];
  readonly commands?: readonly Change[];
} & Position;
type Changed = { readonly sheetId: string; readonly zone: Zone };

function changesOf({ type, sheetId, col, row, content, target, commands }: Change): Changed[] {
  if (type === "UNDO" || type === "REDO") return (commands ?? []).flatMap(changesOf);
  if (type === "CLEAR_CELLS" || type === "DELETE_CONTENT") return (target ?? []).map((zone) => ({ sheetId, zone }));
  if (type !== "UPDATE_CELL" || content === undefined) return [];
  return [{ sheetId, zone: { left: col, right: col, top: row, bottom: row } }];
}

/** Tells of every edit once it is done; `shown` reads a cell. */
export function hearEdits(model: Model, shown: (at: Position) => unknown, hear: (edit: Edit) => void): void {
  const { dispatch } = model;
  let changed: Changed[] | undefined;
  model.on("command-dispatched", hearEdits, (command: Change) => void changed?.push(...changesOf(command)));
  model.dispatch = (type, payload) => {
    if (!BY_HAND.has(type) || changed !== undefined) return dispatch(type, payload);
    const isTyped = type === "UPDATE_CELL";
    const before = isTyped ? shown(payload as Position) : undefined;
    const changes: Changed[] = [];
    changed = changes;
    let result: ReturnType<typeof dispatch>;
    try {
      result = dispatch(type, payload);
    } finally {
      changed = undefined;
    }
    const [first] = changes;
    if (first !== undefined) {
      const { sheetId } = first;
      const zones = changes.filter((one) => one.sheetId === sheetId).map(({ zone }) => zone);
      hear({ sheetId, zone: around(zones), isTyped, before });
    }
    return result;
  };
}

const around = (zones: readonly Zone[]): Zone => ({
  left: Math.min(...zones.map(({ left }) => left)),
  top: Math.min(...zones.map(({ top }) => top)),
  right: Math.max(...zones.map(({ right }) => right)),
  bottom: Math.max(...zones.map(({ bottom }) => bottom)),
});
