import type { Position, Zone } from "../library.ts";
import type { Command } from "../plugins.ts";

type Style = Readonly<Record<string, unknown>>;
type Look = { readonly style?: Style; readonly format?: string };
type CellCommand = Position & Look & { readonly content?: string };

/** Commands that leave contents, styles and number formats of cells alone, and do not ask for them either. */
const BESIDE_CELLS =
  /^(RESIZE_|(UN)?FREEZE_|HIDE_|GROUP_|FOLD_|SET_GRID_LINES|COLOR_SHEET|SET_ZONE_BORDERS|ADD_DATA_VALIDATION_RULE|GRAMWRIGHT_)/;

/**
 * The same changes with one command a cell: a sheet that gets its formats, colours, text styles and values one after
 * the other would make every cell anew each time. Lists with other commands in them stay as they are.
 */
export function joined(commands: readonly Command[], styleOf: (position: Position) => Style | undefined): Command[] {
  const cells = new Map<string, CellCommand>();
  const beside: Command[] = [];
  const change = (position: Position, { style, ...more }: Look & { content?: string }) => {
    const key = `${position.sheetId}!${position.col}!${position.row}`;
    const { style: earlier, ...known }: CellCommand = cells.get(key) ?? position;
    const looks = style === undefined ? earlier : { ...(earlier ?? styleOf(position)), ...style };
    cells.set(key, { ...known, ...more, ...(looks === undefined ? {} : { style: looks }) });
  };
  for (const command of commands) {
    if (command.type === "UPDATE_CELL") {
      const { sheetId, col, row, ...more } = command.payload as CellCommand;
      change({ sheetId, col, row }, more);
    } else if (command.type === "SET_FORMATTING") {
      const { sheetId, target, ...look } = command.payload as Look & { sheetId: string; target: readonly Zone[] };
      for (const { left, top, right, bottom } of target) {
        for (let row = top; row <= bottom; row++) {
          for (let col = left; col <= right; col++) change({ sheetId, col, row }, look);
        }
      }
    } else if (BESIDE_CELLS.test(command.type)) beside.push(command);
    else return [...commands];
  }
  return [...[...cells.values()].map((payload) => ({ type: "UPDATE_CELL", payload })), ...beside];
}
