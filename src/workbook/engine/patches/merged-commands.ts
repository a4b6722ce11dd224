import type { Position, Zone } from "../library.ts";
import type { Command } from "../plugins.ts";

type Style = Readonly<Record<string, unknown>>;
type Appearance = { readonly style?: Style; readonly format?: string };
type CellCommand = Position & Appearance & { readonly content?: string };
type Written = Position & { content?: string; format?: string; style?: Style };
/** More columns than a sheet can have. */
const COLUMNS = 100_000;

/** Commands that leave contents, styles and number formats of cells alone, and do not ask for them either. */
const BESIDE_CELLS =
  /^(RESIZE_|(UN)?FREEZE_|HIDE_|GROUP_|FOLD_|SET_GRID_LINES|COLOR_SHEET|SET_ZONE_BORDERS|ADD_DATA_VALIDATION_RULE|GRAMWRIGHT_)/;

/**
 * The same changes with one command a cell: a sheet that gets its formats, colours, text styles and values one after
 * the other would make every cell anew each time. A cell that has no number format and is given none is left alone: of a
 * new sheet's cells those are most. Lists with other commands in them stay as they are.
 */
export function joinCommands(
  commands: readonly Command[],
  appearanceOf: (position: Position) => Appearance | undefined,
): Command[] {
  const cells = new Map<string, Map<number, Written>>();
  const beside: Command[] = [];
  const change = (position: Position, content: string | undefined, { style, format }: Appearance) => {
    const { sheetId, col, row } = position;
    const known = cells.get(sheetId) ?? new Map<number, Written>();
    cells.set(sheetId, known);
    const key = row * COLUMNS + col;
    const cell = known.get(key) ?? { sheetId, col, row };
    known.set(key, cell);
    if (content !== undefined) cell.content = content;
    if (format !== undefined) cell.format = format;
    if (style !== undefined) cell.style = { ...(cell.style ?? appearanceOf(position)?.style), ...style };
  };
  for (const command of commands) {
    if (command.type === "UPDATE_CELL") {
      const { sheetId, col, row, content, ...appearance } = command.payload as CellCommand;
      change({ sheetId, col, row }, content, appearance);
    } else if (command.type === "SET_FORMATTING") {
      const { sheetId, target, ...appearance } = command.payload as Appearance & {
        sheetId: string;
        target: readonly Zone[];
      };
      for (const { left, top, right, bottom } of target) {
        for (let row = top; row <= bottom; row++) {
          for (let col = left; col <= right; col++) change({ sheetId, col, row }, undefined, appearance);
        }
      }
    } else if (BESIDE_CELLS.test(command.type)) beside.push(command);
    else return [...commands];
  }
  const isChange = ({ content, style, format, ...position }: Written): boolean =>
    content !== undefined || style !== undefined || (format ?? "") !== (appearanceOf(position)?.format ?? "");
  const written = [...cells.values()].flatMap((known) => [...known.values()].filter(isChange));
  return [...written.map((payload) => ({ type: "UPDATE_CELL", payload })), ...beside];
}
