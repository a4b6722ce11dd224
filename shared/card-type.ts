// How large a card may be written so that it stands on one A4 page, upright.
import type { CardData } from "./card-data.ts";
import type { SheetModel } from "./model.ts";
import type { SheetPlan } from "./plan.ts";

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

const TYPES = [2.2, 2, 1.8, 1.6, 1.4, 1.25, 1.1, 1] as const;
/** Pixels of a row and of a letter, by points of its type: measured on sheets and on their pages. */
const ROW = 1.75;
const LETTER = 0.64;
const BASE_POINTS = 10;
const CAUTION_POINTS = 9;
const TITLE_POINTS = 16;

/** Over the column of ingredients. */
export const HEADING = "For each mix";

/** The largest type in which all of it fits the page. */
export function fitted(data: CardData, isLiving: boolean): Fitted {
  const all = TYPES.map((type) => withType(data, isLiving, type));
  return (all.find(({ height }) => height <= PAGE_HEIGHT) ?? all[all.length - 1] ?? withType(data, isLiving, 1)).fitted;
}

function withType(data: CardData, isLiving: boolean, type: number): { fitted: Fitted; height: number } {
  const points = BASE_POINTS * type;
  const number = Math.round(points * 6.2);
  const also = data.unit === "oz" ? [Math.round(points * 8)] : [];
  const tick = Math.round(points * 2.4);
  const figures = [
    ...data.stages.flatMap(() => [number, ...also]),
    ...(isLiving ? data.stages.map(() => Math.round(points * 5.4)) : []),
  ];
  // A step's start and day stand from the fourth column on.
  const beside = figures.slice(1).reduce((sum, width) => sum + width, 0);
  const start = data.timed.length === 0 && !isLiving ? 0 : Math.round(points * 11);
  if (beside < start) figures.push(start - beside);
  const taken = figures.reduce((sum, width) => sum + width, tick);
  const name = Math.max(120, Math.min(PAGE_WIDTH - taken, Math.round(points * 30)));
  const width = taken + name;
  const letters = Math.floor(width / (LETTER * points));
  const smallLetters = Math.floor(width / (LETTER * CAUTION_POINTS * type));
  const linesOf = (text: string) => Math.max(1, Math.ceil(text.length / (name / (LETTER * points))));
  const wrappedLines = [...data.ingredients, ...data.timed.map(({ step }) => step)].reduce(
    (sum, one) => sum + linesOf(one),
    0,
  );
  const plainLines =
    wrappedLines +
    data.added.length +
    data.sizes.length +
    (data.eggs === null ? 0 : 1) +
    data.facts.reduce((sum, fact) => sum + folded(fact, letters).length, 0) +
    // Title, from, what is made, headings, and the blank rows and edge rows between.
    18 +
    (isLiving ? 8 : 0);
  const cautionLines = data.cautions.reduce((sum, one) => sum + folded(one, smallLetters).length, 0);
  const height = plainLines * ROW * points + cautionLines * ROW * CAUTION_POINTS * type;
  return { fitted: { widths: [tick, name, ...figures], type, letters, smallLetters }, height };
}

/** A text as lines of at most so many letters, parted between words. */
export function folded(text: string, letters: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(/\s+/).filter((one) => one !== "")) {
    const last = lines[lines.length - 1];
    if (last !== undefined && last.length + 1 + word.length <= letters) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

/** Heights of a card's rows, in pixels: not every program makes rows high enough for their type. */
export function cardHeights({ rows, values }: SheetPlan, { type = 1, widths }: SheetModel): SheetPlan["heights"] {
  const points = BASE_POINTS * type;
  const height = Math.round(ROW * points);
  const letters = (widths[1] ?? 0) / (LETTER * points);
  const long = values.flatMap((line, row) => {
    const lines = Math.ceil(String(line[1] ?? "").length / letters);
    return lines > 1 && line[0] !== "" ? [{ row, height: height * lines }] : [];
  });
  // Headings of weights may take two lines.
  const heading = values.findIndex((line) => line[1] === HEADING);
  return [
    { row: 0, rows, height },
    { row: 0, height: Math.round(ROW * TITLE_POINTS * type) },
    ...(heading < 0 ? [] : [{ row: heading, height: Math.round(height * 1.6) }]),
    ...long,
  ];
}
