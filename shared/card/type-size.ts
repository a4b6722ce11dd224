// How large a card may be written so that it stands on one A4 page, upright.

import type { SheetModel } from "../sheet/model.ts";
import type { SheetPlan } from "../sheet/sheet-plan.ts";
import type { CardData } from "./data.ts";

export type Fitted = {
  readonly widths: readonly number[];
  readonly type: number;
  /** Letters of a line across the page, in the size of the text and in the size of the cautions. */
  readonly letters: number;
  readonly smallLetters: number;
};

/** A4 is 210 × 297 mm (ISO 216); within margins of 10 and 13 mm, at 96 pixels an inch. */
const PAGE_WIDTH = 718;
const PAGE_HEIGHT = 1024;

export const TYPES = [2.2, 2, 1.8, 1.6, 1.5, 1.4, 1.3, 1.2, 1.1, 1] as const;
/** Pixels of a row and of a letter, by points of its type: measured on sheets and on their pages. */
const ROW = 1.75;
const LETTER = 0.64;
const BASE_POINTS = 10;
const CAUTION_POINTS = 9;
const TITLE_POINTS = 16;

/** Over the column of ingredients. */
export const HEADING = "For each mix";

/** The columns in one size of type, and how many letters a line takes. */
export function fitType(data: CardData, isLiving: boolean, type: number): Fitted {
  const points = BASE_POINTS * type;
  const number = Math.round(points * 6.2);
  const also = data.unit === "oz" ? [Math.round(points * 9)] : [];
  const tick = Math.round(points * 2.4);
  const figures = data.stages.flatMap(() => [number, ...also]);
  // A step's start stands in the fourth column, with its day where it is another one.
  const starts = Math.max(0, ...data.timed.map(({ start, day }) => `${day}, ${start}`.length));
  const start = Math.round(points * Math.max(starts * LETTER, isLiving ? 7.2 : data.timed.length > 0 ? 6.2 : 0));
  if ((figures[1] ?? 0) < start) figures[1] = start;
  const taken = figures.reduce((sum, width) => sum + width, tick);
  const name = Math.max(120, Math.min(PAGE_WIDTH - taken, Math.round(points * 30)));
  const width = taken + name;
  const letters = Math.floor(width / (LETTER * points));
  const smallLetters = Math.floor(width / (LETTER * CAUTION_POINTS * type));
  return { widths: [tick, name, ...figures], type, letters, smallLetters };
}

/** Whether a card stands on one page. */
export function fits(plan: SheetPlan, model: SheetModel): boolean {
  const heights = new Map<number, number>();
  for (const { row, rows = 1, height } of cardHeights(plan, model)) {
    for (let at = row; at < row + rows; at++) heights.set(at, height);
  }
  const width = plan.widths.slice(0, plan.page).reduce((sum, one) => sum + one, 0);
  return width <= PAGE_WIDTH && [...heights.values()].reduce((sum, one) => sum + one, 0) <= PAGE_HEIGHT;
}

/** A text as lines of at most so many letters, parted between words. */
export function wrapText(text: string, letters: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(/\s+/).filter((one) => one !== "")) {
    const last = lines[lines.length - 1];
    if (last !== undefined && last.length + 1 + word.length <= letters) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

/** Heights of a card's rows, in pixels: not every program makes rows high enough for their type. */
export function cardHeights(
  { rows, values, heights }: SheetPlan,
  { type = 1, widths, bands }: SheetModel,
): SheetPlan["heights"] {
  const points = BASE_POINTS * type;
  const height = Math.round(ROW * points);
  const letters = (widths[1] ?? 0) / (LETTER * points);
  const long = values.flatMap((line, row) => {
    const lines = Math.ceil(String(line[1] ?? "").length / letters);
    return lines > 1 && line[0] !== "" ? [{ row, height: height * lines }] : [];
  });
  const tables = bands.flat().filter((item) => "table" in item);
  const edges = heights.flatMap(({ row, height: edge }, at) => [
    { row, height: edge },
    { row: row + (tables[at]?.rows ?? 0) + 1, height: edge },
  ]);
  // Headings of weights may take two lines.
  const heading = values.findIndex((line) => line[1] === HEADING);
  return [
    { row: 0, rows, height },
    { row: 0, height: Math.round(ROW * TITLE_POINTS * type) },
    ...(heading < 0 ? [] : [{ row: heading, height: Math.round(height * 2) }]),
    ...long,
    ...edges,
  ];
}
