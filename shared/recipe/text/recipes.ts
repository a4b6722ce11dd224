// Several recipes in one text: where each begins.

import { clutterIn, isTotal } from "./clutter.ts";
import { type Corrections, NO_CORRECTIONS } from "./corrections.ts";
import type { Described, Kitchen } from "./description.ts";
import { modeOf, stageOf } from "./headings.ts";
import { describeLines } from "./reader.ts";
import { isSeparator, linesOf, type SourceLine } from "./source-lines.ts";
import { isStep } from "./steps.ts";
import { type TableLine, tableLines } from "./table.ts";
import { titleIn } from "./titles.ts";
import { yieldIn } from "./yields.ts";

/** A recipe of a text, and its lines. */
export type RecipePart = { readonly lines: readonly SourceLine[]; readonly described: Described };

const HAS_AMOUNT = /\d\s?(?:k?g|gr|oz|lbs?|ml|l|cups?|tsp|tbsp|%|#)(?![\p{L}])/iu;
const MAX_RECIPES = 60;

/** A line that may be the name of a further recipe: alone after a gap, and no heading of a part. */
function isName(line: SourceLine, before: SourceLine | undefined, next: readonly SourceLine[]): boolean {
  const { text } = line;
  const isAfterGap =
    before === undefined || before.text === "" || isSeparator(before.text) || line.isMarked || line.isNumbered;
  const words = text.split(" ").length;
  if (!isAfterGap || words > 10 || text.length > 80 || !/\p{L}{3}/u.test(text) || line.isListed) return false;
  if (HAS_AMOUNT.test(text) && yieldIn(text.replace(/^.*?[–—(-]\s*/, "")) === undefined) return false;
  if (modeOf(text) !== undefined || clutterIn(text) !== undefined || isTotal(text) || yieldIn(text) !== undefined)
    return false;
  if (isStep(text, false, true) || /[.!?]$/.test(text)) return false;
  const stage = stageOf(text, line.at, /:$/.test(text) || line.isMarked);
  if (stage !== undefined && "stage" in stage && !stage.isUnsure) return isDoughName(text);
  return next.some((one) => one.text !== "" && /\d/.test(one.text));
}

/** "Brioche dough" names a recipe, "final dough" a stage. */
const isDoughName = (text: string): boolean =>
  /^(?!for\b|the\b|final\b|main\b|bread\b|overall\b)\p{L}+(?: \p{L}+)? dough:?$/iu.test(text);

const isWhole = ({ rows, stages, formula }: Described): boolean =>
  rows.length >= 3 &&
  rows.some((row) => row.type === "flour" && stages[row.stage]?.role !== "topping") &&
  formula.rows.length >= 2;

/** A table that says in a column which recipe each row belongs to: its rows by recipe, each under the headings. */
function recipesInTable(
  lines: readonly SourceLine[],
  tables: ReadonlyMap<number, TableLine>,
): { title: string; own: SourceLine[] }[] | undefined {
  const header = [...tables.values()].find((one) => one.isHeader);
  const at = header?.columns.findIndex((column) => column?.is === "recipe") ?? -1;
  if (header === undefined || at < 0) return undefined;
  const groups = new Map<string, SourceLine[]>();
  let title = "";
  for (const line of lines) {
    const row = tables.get(line.at);
    if (row === undefined || row.isHeader || row.table !== header.table) continue;
    // Only the first row of a recipe may name it.
    title = row.cells[at] || title;
    if (title !== "") groups.set(title, [...(groups.get(title) ?? [header.line]), line]);
  }
  return groups.size < 2 || groups.size > MAX_RECIPES
    ? undefined
    : [...groups].map(([name, groupLines]) => ({ title: name, own: groupLines }));
}

/** The recipes of a text, each with its own lines; one where nothing else is sure. */
export function recipesIn(text: string, kitchen: Kitchen, corrections: Corrections = NO_CORRECTIONS): RecipePart[] {
  const lines = linesOf(text);
  const whole = () => [{ lines, described: describeLines(lines, kitchen, corrections) }];
  if (corrections.answers["several recipes"] === "one recipe") return whole();
  const tables = tableLines(lines);
  const recipes = recipesInTable(lines, tables);
  if (recipes !== undefined)
    return recipes.map(({ title, own }) => ({
      lines: own,
      described: { ...describeLines(own, kitchen, corrections), title },
    }));
  const starts = lines.flatMap((line, at) => {
    const inTable = tables.get(line.at);
    if (inTable !== undefined && inTable.cells.filter((cell) => cell !== "").length > 1) return [];
    return line.text !== "" && isName(line, lines[at - 1], lines.slice(at + 1, at + 8)) ? [at] : [];
  });
  if (starts.length < 2 || starts.length > MAX_RECIPES) return whole();
  const cuts = [0, ...starts.filter((at) => at > 0)];
  const parts: { from: number; to: number; isWhole: boolean }[] = [];
  cuts.forEach((from, index) => {
    const to = cuts[index + 1] ?? lines.length;
    const last = parts[parts.length - 1];
    const described = describeLines(lines.slice(from, to), kitchen, corrections);
    const here = isWhole(described);
    // What is no recipe by itself belongs to the one before it, an opening to the one after it.
    if (last !== undefined && (!here || !last.isWhole)) {
      last.to = to;
      last.isWhole = last.isWhole || isWhole(describeLines(lines.slice(last.from, to), kitchen, corrections));
    } else parts.push({ from, to, isWhole: here });
  });
  if (parts.length < 2 || !parts.every((part) => part.isWhole)) return whole();
  return parts.map(({ from, to }) => {
    const ownLines = lines.slice(from, to);
    const described = describeLines(ownLines, kitchen, corrections);
    // "Sweet dough:" over its rows is the only name that it has.
    const head = ownLines.find(({ text: one }) => one !== "");
    const title =
      described.title || (head !== undefined && head.at === described.stages[0]?.line ? titleIn(head.text) : "");
    return { lines: ownLines, described: { ...described, title } };
  });
}
