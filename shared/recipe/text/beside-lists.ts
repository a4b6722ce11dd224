// Lists that stand beside each other, as lines below each other.

import { columnOf, unitIn } from "./columns.ts";
import {
  AMOUNT,
  AMOUNT_AND_NAME,
  BARE,
  cellsOf,
  isName,
  lineOf,
  MAY,
  NAME_AND_AMOUNT,
  NUMBER,
  UNIT,
} from "./line-cells.ts";
import { isSeparator, type SourceLine } from "./source-lines.ts";
import { typeOf } from "./types.ts";

/** "3 eggs", with nothing else in its cell. */
const COUNT_AND_NAME = /^\d{1,3}\s+\p{L}{3,}(?: \p{L}+){0,3}$/u;
/** An ingredient with its amount, and where it begins. */
type Item = { readonly text: string; readonly from: number };

/** The ingredients of a line that holds several beside each other; undefined where its cells are anything else. */
function itemsOf(raw: string): Item[] | undefined {
  const cells = cellsOf(raw);
  const items: Item[] = [];
  for (let at = 0; at < cells.length; ) {
    const [cell, next, third] = [cells[at], cells[at + 1], cells[at + 2]];
    if (cell === undefined) return undefined;
    if (COUNT_AND_NAME.test(cell.text) || AMOUNT_AND_NAME.test(cell.text) || NAME_AND_AMOUNT.test(cell.text)) {
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

/** "Mill A 12.50" beside "Flour 10 kg" is a price, and no ingredient: half of a list's names tell what they are. */
function areIngredients(items: readonly string[]): boolean {
  const names = items.map((item) => item.replace(new RegExp(`${NUMBER}\\s?${UNIT}?(?!\\p{L})`, "giu"), " ").trim());
  return names.filter((name) => typeOf(name, name).word !== "").length * 2 >= names.length;
}

/** Fewer lines with several ingredients are no lists beside each other. */
const FEWEST = 2;

/** The same lines; lists that stand beside each other one after the other. */
export function apart(lines: readonly SourceLine[]): readonly SourceLine[] {
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
      run.some(({ items }) => items.length > first.items.length) ||
      !first.items.every((_, place) => areIngredients(wide.map(({ items }) => items[place]?.text ?? "")))
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
    const units = unitsOver(all, columns.length);
    const staged = stagesIn(all);
    if (units !== undefined) all.push(lineOf(all.pop() ?? first.line, ""));
    const heads =
      (units === undefined ? undefined : staged) ??
      headsOver(units === undefined ? all : all.slice(0, -1), columns.length);
    if (heads !== undefined && heads !== staged) all.splice(units === undefined ? -1 : -2, 1);
    columns.forEach((_, place) => {
      const head = heads?.cells[place];
      if (head !== undefined && heads !== undefined) all.push(lineOf(heads.line, head.text.replace(/:$/, ""), true));
      for (const { line, items } of run)
        items.forEach((item, index) => {
          const here = items.length === columns.length ? index : columnOf(item.from);
          const unit = /\p{L}\W*[\d.,]+$/u.test(item.text) ? (units?.[place] ?? "") : "";
          if (here === place) all.push(lineOf(line, `${item.text.replace(/\s+/g, " ")} ${unit}`.trim()));
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

/** "Masa | g | Relleno | g": headings of the lists themselves. */
function stagesIn(above: readonly SourceLine[]) {
  const line = above[above.length - 1];
  const cells = cellsOf(line?.raw ?? "").filter((_, at) => at % 2 === 0);
  return line === undefined || cells.some(({ text }) => columnOf(text)?.is === "name") ? undefined : { line, cells };
}

/** "Ingredient | kg | Ingredient | kg": the unit of each list. */
function unitsOver(above: readonly SourceLine[], many: number): string[] | undefined {
  const cells = cellsOf(above[above.length - 1]?.raw ?? "").map(({ text }) => text);
  const columns = cells.map((text) => columnOf(text));
  const isHead = cells.length === 2 * many && columns.every((column, at) => at % 2 === 0 || column?.is === "weight");
  if (!isHead || cells.some((text) => /\d/.test(text))) return undefined;
  return cells.flatMap((text, at) => (at % 2 === 0 ? [] : [unitIn(text)]));
}
