// Lists that stand beside each other, or that run across the page, as lines below each other.

import { toldApart } from "./prose.ts";
import { isSeparator, type SourceLine } from "./source-lines.ts";
import { typeOf } from "./types.ts";

const NUMBER = "[\\d.,½¼¾⅓⅔]*[\\d½¼¾⅓⅔](?:\\s\\d/\\d)?";
const UNIT = "(?:k?g|gr|grams?|oz|lbs?|#|ml|cl|dl|l|cups?|tsp|tbsp|%)";
const AMOUNT = new RegExp(`^${NUMBER}\\s?${UNIT}?\\.?$`, "iu");
const BARE = new RegExp(`^${NUMBER}%?$`, "u");
const AMOUNT_AND_NAME = new RegExp(`^${NUMBER}\\s?${UNIT}\\s+\\p{L}{2}`, "iu");
const NAME_AND_AMOUNT = new RegExp(`^\\p{L}{2}.*\\s${NUMBER}\\s?${UNIT}$`, "iu");
const isName = (cell: string): boolean => /\p{L}{2}/u.test(cell) && !AMOUNT.test(cell);

/** A cell and where in its line it begins. */
type Cell = { readonly text: string; readonly from: number };
const MAY = /\t|\||\S {2,}\S/;

function cellsOf(raw: string): Cell[] {
  const cells: Cell[] = [];
  for (const match of raw.matchAll(/[^\t|\s](?:[^\t|]*?[^\t|\s])??(?=\s*[\t|]| {2,}|\s*$)/g))
    cells.push({ text: match[0], from: match.index ?? 0 });
  return cells;
}

/** An ingredient with its amount, and where it begins. */
type Item = { readonly text: string; readonly from: number };

/** The ingredients of a line that holds several beside each other; undefined where its cells are anything else. */
function itemsOf(raw: string): Item[] | undefined {
  const cells = cellsOf(raw);
  const items: Item[] = [];
  for (let at = 0; at < cells.length; ) {
    const [cell, next, third] = [cells[at], cells[at + 1], cells[at + 2]];
    if (cell === undefined) return undefined;
    if (AMOUNT_AND_NAME.test(cell.text) || NAME_AND_AMOUNT.test(cell.text)) {
      items.push(cell);
      at += 1;
    } else if (isName(cell.text) && next !== undefined && AMOUNT.test(next.text)) {
      const isUnit = third !== undefined && new RegExp(`^${UNIT}$`, "i").test(third.text) && BARE.test(next.text);
      items.push({ text: `${cell.text} ${next.text}${isUnit ? ` ${third.text}` : ""}`, from: cell.from });
      at += isUnit ? 3 : 2;
    } else return undefined;
  }
  return items;
}

const lineOf = (line: SourceLine, text: string, isMarked = false): SourceLine => ({
  ...line,
  raw: text,
  text,
  isMarked,
  isListed: false,
  isNumbered: false,
});

/** Fewer lines with several ingredients are no lists beside each other. */
const FEWEST = 2;

/** The same lines; lists that stand beside each other one after the other. */
function apart(lines: readonly SourceLine[]): readonly SourceLine[] {
  const all: SourceLine[] = [];
  let isChanged = false;
  for (let at = 0; at < lines.length; ) {
    const run: { line: SourceLine; items: Item[] }[] = [];
    let end = at;
    while (end < lines.length) {
      const line = lines[end];
      const items =
        line === undefined || (!MAY.test(line.raw) && run.length === 0) ? undefined : itemsOf(line?.raw ?? "");
      if (line === undefined || items === undefined || items.length === 0) break;
      run.push({ line, items });
      end += 1;
    }
    const [first] = run;
    const wide = run.filter(({ items }) => items.length === first?.items.length);
    if (
      first === undefined ||
      first.items.length < 2 ||
      wide.length < FEWEST ||
      run.some(({ items }) => items.length > first.items.length)
    ) {
      const line = lines[at];
      if (line !== undefined) all.push(line);
      at += 1;
      continue;
    }
    const columns = first.items.map((_, place) => Math.min(...wide.map(({ items }) => items[place]?.from ?? 0)));
    const columnOf = (from: number) =>
      columns.reduce(
        (best, start, place) => (Math.abs(start - from) < Math.abs((columns[best] ?? 0) - from) ? place : best),
        0,
      );
    const heads = headsOver(all, columns.length);
    if (heads !== undefined) all.pop();
    columns.forEach((_, place) => {
      const head = heads?.cells[place];
      if (head !== undefined && heads !== undefined) all.push(lineOf(heads.line, head.text.replace(/:$/, ""), true));
      for (const { line, items } of run)
        items.forEach((item, index) => {
          const here = items.length === columns.length ? index : columnOf(item.from);
          if (here === place) all.push(lineOf(line, item.text.replace(/\s+/g, " ")));
        });
    });
    isChanged = true;
    at = end;
  }
  return isChanged ? all : lines;
}

/** A line of as many headings as there are lists below it. */
function headsOver(above: readonly SourceLine[], many: number) {
  const line = above[above.length - 1];
  if (line === undefined || isSeparator(line.text)) return undefined;
  const cells = cellsOf(line.raw);
  return cells.length === many && cells.every(({ text }) => isName(text) && !/\d/.test(text))
    ? { line, cells }
    : undefined;
}

/** Names across the page and one row of numbers under them. */
function upright(lines: readonly SourceLine[]): readonly SourceLine[] {
  for (const [place, head] of lines.entries()) {
    if (!MAY.test(head.raw) || /\d/.test(head.raw)) continue;
    const names = cellsOf(head.raw);
    const next = lines[place + 1];
    if (names.length < 3 || next === undefined || !names.every(({ text }) => isIngredient(text))) continue;
    const after = lines[place + 2];
    const numbers = numbersUnder(next, names.length);
    if (numbers === undefined || (after !== undefined && numbersUnder(after, names.length) !== undefined)) continue;
    const rows = names.map(({ text }, at) => lineOf(next, `${text} ${numbers[at]}`));
    return [...lines.slice(0, place), lineOf(head, ""), ...rows, ...upright(lines.slice(place + 2))];
  }
  return lines;
}

const isIngredient = (text: string): boolean => text.split(" ").length <= 4 && typeOf(text, text).word !== "";

function numbersUnder({ raw }: SourceLine, many: number): string[] | undefined {
  const cells = cellsOf(raw).map(({ text }) => text);
  const label = cells.length === many + 1 ? (cells[0] ?? "") : "";
  const unit = /^\W*(k?g|lbs?|oz|%|grams?|kilos?)\W*$/i.exec(label)?.[1];
  const numbers = label === "" ? cells : cells.slice(1);
  if (numbers.length !== many || !numbers.every((one) => AMOUNT.test(one)) || (label !== "" && unit === undefined))
    return undefined;
  return numbers.map((one) => (BARE.test(one) && unit !== undefined ? `${one} ${unit}` : one));
}

const THREE = new RegExp(
  `^(\\p{L}.*?)\\s+(${NUMBER}\\s?(?:k?g|lbs?|oz|l|lt|lit(?:re|er)s?|ml))\\s+(\\d+(?:[.,]\\d+)?)\\s?%?$`,
  "iu",
);
/** Cheap to ask, and true of few lines. */
const ENDS_IN_NUMBER = /\d\s?%?$/;
const isHundred = (sum: number): boolean => Math.abs(sum - 100) < 0.5;

/** "Flour 25 kg 100", "Water 14.5 l 58": what a single blank parts from the weight is its percentage. */
function withPercents(lines: readonly SourceLine[]): readonly SourceLine[] {
  const found = new Map<SourceLine, readonly string[]>();
  for (const line of lines) {
    const match = ENDS_IN_NUMBER.test(line.text) && !line.raw.includes("\t") ? THREE.exec(line.text) : null;
    if (match !== null) found.set(line, match.slice(1));
  }
  if (found.size < 3) return lines;
  const flour = [...found.values()].reduce(
    (sum, [name = "", , percent = ""]) =>
      sum + (typeOf(name, name).word === "flour" ? Number(percent.replace(",", ".")) : 0),
    0,
  );
  if (!isHundred(flour)) return lines;
  return lines.map((line) => {
    const cells = found.get(line);
    return cells === undefined ? line : { ...line, raw: `${cells[0]}\t${cells[1]}\t${cells[2]}%` };
  });
}

const isParted = ({ raw }: SourceLine): boolean => raw.includes("  ") || raw.includes("\t") || raw.includes("|");

export function rearranged(lines: readonly SourceLine[]): readonly SourceLine[] {
  const told = toldApart(lines);
  return withPercents(told.some(isParted) ? upright(apart(told)) : told);
}
