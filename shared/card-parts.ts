// What both kinds of card are put together from.

import type { CardData } from "./card-data.ts";
import type { Block, CellModel, ColumnModel, Line, Value } from "./model.ts";

export const TICK = "☐";

export type Drawn = {
  readonly make: Block;
  readonly columns: readonly ColumnModel[];
  readonly below: readonly Line[];
};
/** Values by the name of a cell or column, filled while a card is drawn. */
export type Into = Map<string, Value | readonly Value[]>;

export const block = (name: string, lines: readonly Line[]): Block => ({ block: name, left: 0, lines });
export const text = (says: string, role: CellModel["role"] = "label", at = 0): Line => ({
  cells: [{ at, role, text: says }],
});
export const weightColumn = (data: CardData, stage: number): number => 2 + stage * (data.unit === "oz" ? 2 : 1);
export const head = (data: CardData, says: string): string => `${says} (${data.unit})`;

export const named = (says: string, tick: boolean): CellModel[] => [
  { at: 0, role: "ruled", text: tick ? TICK : says },
  { at: 1, role: "ruled", text: tick ? says : "" },
];
/** Words for the count of eggs. */
export const eggsSay = ({ eggs, unit }: CardData): string =>
  `Eggs in each mix, of ${tidy(eggs?.each ?? 0, 2)} ${unit} without shell`;

export const tidy = (value: number, digits = 9): number => Number(value.toFixed(digits));
