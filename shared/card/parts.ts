// What both kinds of card are put together from.

import type { Block, CellModel, ColumnModel, Line, Value } from "../sheet/model.ts";
import type { CardData } from "./data.ts";

export const TICK = "☐";

export type Drawn = {
  readonly make: Block;
  readonly columns: readonly ColumnModel[];
  readonly below: readonly Line[];
  /** Beside the page, where a living card keeps what it reckons from: single figures, and a column a stage. */
  readonly workings: readonly Line[];
  readonly bases: readonly ColumnModel[];
};
/** Values by the name of a cell or column, filled while a card is drawn. */
export type Into = Map<string, Value | readonly Value[]>;

export const block = (name: string, lines: readonly Line[]): Block => ({ block: name, left: 0, lines });
export const text = (says: string, role: CellModel["role"] = "label", at = 0): Line => ({
  cells: [{ at, role, text: says }],
});
export const weightColumn = (data: CardData, stage: number): number => 2 + stage * (data.unit === "oz" ? 2 : 1);
/** The steps of the day take four. */
export const pageColumns = (data: CardData): number => Math.max(4, weightColumn(data, data.stages.length));
export const head = (data: CardData, says: string): string => `${says} (${data.unit})`;

export const labelCells = (says: string, tick: boolean): CellModel[] => [
  { at: 0, role: "ruled", text: tick ? TICK : says },
  { at: 1, role: "ruled", text: tick ? says : "" },
];
/** Words for the count of eggs. */
export const eggsSay = ({ eggs, unit }: CardData): string =>
  `Eggs per mix, ${tidy(eggs?.each ?? 0, 2)} ${unit} each, shelled`;

/** A piece's or a dough's weight is told in the coarsest step that is so small a part of it, upwards. */
export const FINE = 150;

/** Words for the sizes, in both kinds of card. */
export const sizeSays = (data: CardData, name: string): string =>
  head(data, name === "" ? "Scaling weight" : `Scaling weight, ${name}`);
export const piecesSay = (name: string): string => `Pieces: ${name}`;
export const traysSay = ({ holds }: NonNullable<CardData["oven"]>): string =>
  `Trays, ${tidy(holds, 2)} ${holds === 1 ? "piece" : "pieces"} on each`;
export const loadsSay = ({ on }: NonNullable<CardData["oven"]>, takes: number): string =>
  `Oven loads, ${tidy(takes, 2)} ${on} in each`;

export const tidy = (value: number, digits = 9): number => Number(value.toFixed(digits));
