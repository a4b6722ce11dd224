// What each line is, in the order in which that is asked.

import { isNumberAlone, takeAside, takeClutter, takeMade, takeMode, takeTotal } from "./beside-lines.ts";
import { addSteps, takeBody, takeCorrected, takePlain } from "./body-lines.ts";
import { isTotal, OF_THE_PAPER } from "./clutter.ts";
import { columnOf } from "./columns.ts";
import { lineKey, NO_CORRECTIONS } from "./corrections.ts";
import {
  addStage,
  type Draft,
  hasAmount,
  ignore,
  isCapitals,
  isFirstOf,
  looksLikeRow,
  type Place,
  takeYield,
} from "./draft.ts";
import { takeGoesOn } from "./goes-on.ts";
import { takeHeading } from "./heading-lines.ts";
import { takeHeadingWithRows } from "./heading-with-rows.ts";
import { modeOf } from "./headings.ts";
import { readRow } from "./row.ts";
import type { Reading } from "./row-context.ts";
import { isSeparator, type SourceLine } from "./source-lines.ts";
import type { TableLine } from "./table.ts";
import { headStage, tableRows } from "./table-rows.ts";
import { headYield, takeHead, takeTitle, titleIn } from "./titles.ts";
import { yieldIn } from "./yields.ts";

/** All of a text beside the line in hand. */
export type WholeText = {
  readonly lines: readonly SourceLine[];
  readonly tables: ReadonlyMap<number, TableLine>;
  readonly reading: Reading;
};

/** How far ahead a heading looks for its rows. */
const AHEAD = 11;

export function readLineAt(draft: Draft, line: SourceLine, place: number, text: WholeText): void {
  const table = text.tables.get(line.at);
  if (table !== undefined && draft.mode !== "web page") readTableLine(draft, table, place, text);
  else readLine(draft, line, place, text);
}

function readLine(draft: Draft, line: SourceLine, at: number, { lines, reading }: WholeText): void {
  const { lines: order } = reading.corrections;
  const isCorrected = order !== NO_CORRECTIONS.lines && order[lineKey(line.text)] !== undefined;
  if (!isCorrected && takePlain(draft, line, reading)) return;
  const place: Place = {
    draft,
    line,
    reading,
    before: lines[at - 1],
    next: lines.slice(at + 1, at + 1 + AHEAD),
    isFirst: isFirstOf(draft),
    isSetOff:
      line.isMarked ||
      line.text.endsWith(":") ||
      isCapitals(line.text) ||
      isAloneOverRows(draft, line, lines[at - 1], lines[at + 1], reading),
  };
  TAKERS.some((take) => take(place));
}

/** A few words between a gap and the first row under it, which name nothing that anybody weighs: "Crossing paste". */
function isAloneOverRows(
  draft: Draft,
  { text, isListed }: SourceLine,
  before: SourceLine | undefined,
  next: SourceLine | undefined,
  reading: Reading,
): boolean {
  if (draft.mode !== "ingredients" || draft.rows.length === 0 || isListed || before?.text !== "") return false;
  if (/\d|[.!?,;]$/.test(text) || text.split(" ").length > 4 || !hasAmount(next?.text ?? "")) return false;
  return looksLikeRow(next) && !readRow(text, reading).isKnown;
}

const LABEL =
  /^(method|directions?|instructions?|procedure|preparation|process|notes?|tips?|ingredients?|equipment|title|recipe|recipe name|product|formula name|name)\s*[:–-]\s+(\S.*)$/i;

/** "Method: Mix 6 minutes", "Name: Pier loaf": a label with its text beside it. */
function takeLabelled(place: Place): boolean {
  const { draft, line } = place;
  const [, label = "", rest = ""] = LABEL.exec(line.text) ?? [];
  if (rest === "") return false;
  if (/^(?:title|recipe|recipe name|product|formula name|name)$/i.test(label)) {
    const head = headYield(rest);
    if (head !== undefined) takeYield(draft, head.made);
    if (draft.title === "") draft.title = titleIn(head?.title ?? rest);
    return ignore(draft, line, "title");
  }
  const mode = modeOf(label);
  if (mode === "note" || mode === "equipment") return ignore(draft, line, mode);
  if (mode !== undefined) draft.mode = mode;
  const remainder = { ...line, text: rest };
  return TAKERS.some((take) => take({ ...place, line: remainder }));
}

/** "Scones: makes 24. 1.5 kg flour, 300 g butter": the name with what it makes, and the list behind it. */
function takeHeadAndList(place: Place): boolean {
  const { draft, line, isFirst } = place;
  const [, opening = "", list = ""] = (isFirst && /^([^.]{3,60}?)\.\s+(\d.*)$/.exec(line.text)) || [];
  const head = opening === "" || hasAmount(opening) || !hasAmount(list) ? undefined : headYield(opening);
  if (head === undefined) return false;
  takeYield(draft, head.made);
  draft.title = titleIn(head.title);
  return TAKERS.some((take) => take({ ...place, isFirst: false, line: { ...line, text: list } }));
}

/** A list with sentences behind it. */
function takeListed(place: Place): boolean {
  return takeGoesOn(place, (list) => TAKERS.some((take) => take !== takeListed && take(list)), addSteps);
}

/** Each answers whether the line was its own. */
const TAKERS: readonly ((place: Place) => boolean)[] = [
  takeCorrected,
  takeHeadAndList,
  takeListed,
  ({ draft, line }) => isSeparator(line.text) && ignore(draft, line, "separator"),
  ({ draft, line }) => isNumberAlone(draft, line.text) && ignore(draft, line, "heading"),
  takeLabelled,
  takeMode,
  takeHeadingWithRows,
  takeHeading,
  takeAside,
  takeTotal,
  takeClutter,
  takeHead,
  takeMade,
  takeTitle,
  takeBody,
];

function readTableLine(draft: Draft, table: TableLine, place: number, text: WholeText): void {
  const { line, cells } = table;
  const filled = cells.filter((cell) => cell !== "" && !/^[-–—]+$/.test(cell));
  const correction = text.reading.corrections.lines[lineKey(line.text)];
  if (table.isHeader) takeColumns(draft, table);
  else if (filled.length === 0) ignore(draft, line, "separator");
  else if (OF_THE_PAPER.test(line.text)) ignore(draft, line, "note");
  else if (correction?.is === "not an ingredient") ignore(draft, line, "not an ingredient");
  else if (filled.length === 1) readSingle(draft, { ...line, text: filled[0] ?? "" }, place, text);
  else tableRows(draft, table, text.reading, text.tables);
}

/** "Part A – Poolish | g": the heading of the names may be that of a stage. */
function takeColumns(draft: Draft, { line, cells, columns }: TableLine): void {
  const at = columns.findIndex((column) => column?.is === "name");
  const head = cells[at] ?? "";
  const heads = head === "" || columnOf(head)?.is === "name" ? undefined : headStage(head, line.at);
  if (heads !== undefined) draft.stage = addStage(draft, heads);
  ignore(draft, line, heads === undefined ? "column headings" : "heading");
}

/** A row with one cell alone heads the rows below it, or is a line like any other. */
function readSingle(draft: Draft, line: SourceLine, place: number, text: WholeText): void {
  const heads = headStage(line.text, line.at);
  if (heads === undefined || isTotal(line.text) || yieldIn(line.text) !== undefined) readLine(draft, line, place, text);
  else {
    draft.stage = addStage(draft, heads);
    ignore(draft, line, "heading");
  }
}
