import type { Library, Zone } from "./library.ts";

/** Something that belongs to cells and that the engine has no place for; it moves with them. */
export type Mark = {
  readonly id: string;
  readonly kind: "note" | "protection";
  readonly text: string;
  readonly warningOnly: boolean;
  readonly except: readonly string[];
};
export type PlacedMark = Mark & { readonly sheetId: string; readonly zone: Zone };

export type Command = { readonly type: string; readonly payload?: object };

export const BATCH = "GRAMWRIGHT_BATCH";
const ADD_MARK = "GRAMWRIGHT_ADD_MARK";
const REMOVE_MARK = "GRAMWRIGHT_REMOVE_MARK";

export const addMark = (sheetId: string, zone: Zone, mark: Mark): Command => ({
  type: ADD_MARK,
  payload: { sheetId, zone, mark },
});
export const removeMark = (sheetId: string, id: string): Command => ({ type: REMOVE_MARK, payload: { sheetId, id } });

/** Refusals of the commands of the last batch; the engine itself only tells the caller of a single command. */
export const refusals: string[] = [];

/**
 * Adds two parts to the engine: one runs a list of commands with one calculation and one undo step, the other keeps
 * notes and protections.
 */
export function addPlugins(library: Library): void {
  library.registries.featurePluginRegistry.add("gramwright_batch", batchPlugin(library));
  library.registries.corePluginRegistry.add("gramwright_marks", marksPlugin(library));
  for (const type of [ADD_MARK, REMOVE_MARK]) {
    library.coreTypes.add(type);
    // Without it whatever is done after such a command was undone fails half-way, and the workbook takes nothing any more.
    library.registries.inverseCommandRegistry.add(type, (command) => [command]);
  }
}

function batchPlugin(library: Library): unknown {
  return class extends library.UIPlugin {
    static getters = [];
    handle(command: { type: string; commands?: readonly Command[] }) {
      if (command.type !== BATCH) return;
      for (const { type, payload } of command.commands ?? []) {
        const result = this.dispatch(type, payload);
        if (!result.isSuccessful) refusals.push(`${type}: ${result.reasons.join(", ")}`);
      }
    }
  };
}

type MarkedRange = Mark & { readonly range: { sheetId: string; zone: Zone } };
type MarkCommand = { type: string; sheetId: string; sheetIdTo: string; zone: Zone; mark: Mark; id: string };

function marksPlugin(library: Library): unknown {
  return class extends library.CorePlugin {
    static getters = ["getMarks"];
    marks: readonly MarkedRange[] = [];

    /** What was answered since `marks` became another list. */
    answer: { readonly of: readonly MarkedRange[]; readonly placed: readonly PlacedMark[] } | undefined;

    /** The same list as long as the marks of the workbook stay where they are. */
    getMarks(): readonly PlacedMark[] {
      if (this.answer?.of !== this.marks) {
        const marks = this.marks.map(({ range, ...mark }) => ({ ...mark, sheetId: range.sheetId, zone: range.zone }));
        this.answer = { of: this.marks, placed: marks };
      }
      return this.answer.placed;
    }

    adaptRanges({ applyChange }: { applyChange(range: unknown): { changeType: string; range: MarkedRange["range"] } }) {
      const marks = this.marks.flatMap((mark) => {
        const { changeType, range } = applyChange(mark.range);
        if (changeType === "REMOVE") return [];
        return [changeType === "NONE" ? mark : { ...mark, range }];
      });
      this.history.update("marks", marks);
    }

    handle(command: MarkCommand) {
      const keep = (marks: readonly MarkedRange[]) => this.history.update("marks", marks);
      if (command.type === ADD_MARK) {
        const range = this.getters.getRangeFromZone(command.sheetId, command.zone);
        keep([...this.marks.filter(({ id }) => id !== command.mark.id), { ...command.mark, range }]);
      }
      if (command.type === REMOVE_MARK) keep(this.marks.filter(({ id }) => id !== command.id));
      if (command.type === "DELETE_SHEET") keep(this.marks.filter(({ range }) => range.sheetId !== command.sheetId));
      if (command.type === "DUPLICATE_SHEET") {
        const copies = this.marks
          .filter(({ range, kind }) => range.sheetId === command.sheetId && kind === "note")
          .map((mark) => ({
            ...mark,
            id: `${mark.id}-${command.sheetIdTo}`,
            range: this.getters.getRangeFromZone(command.sheetIdTo, mark.range.zone),
          }));
        keep([...this.marks, ...copies]);
      }
    }

    import(data: { marks?: readonly PlacedMark[] }) {
      this.marks = (data.marks ?? []).map(({ sheetId, zone, ...mark }) => ({
        ...mark,
        range: this.getters.getRangeFromZone(sheetId, zone),
      }));
    }

    export(data: { marks?: readonly PlacedMark[] }) {
      data.marks = [...this.getMarks()];
    }
  };
}
