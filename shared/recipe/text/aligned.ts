// Tables whose columns stand under each other with blanks between them: a row with an empty cell goes by where its words stand.

type Span = { readonly text: string; readonly from: number; readonly to: number };

const spansOf = (raw: string): Span[] =>
  [...raw.matchAll(/\S+(?: \S+)*/g)].map(({ 0: text, index = 0 }) => ({ text, from: index, to: index + text.length }));

/** How far two stand apart; below 0 they stand under each other. */
const gapBetween = (one: Span, other: Span): number => Math.max(one.from - other.to, other.from - one.to);

/** The cells of the headings, with an empty one in front where the names stand left of all of them. */
export function alignedHeads(header: string, rows: readonly string[]): string[] {
  const heads = spansOf(header);
  const [first] = heads;
  const left = rows.filter((row) => {
    const [name] = spansOf(row);
    return name !== undefined && first !== undefined && name.to < first.from;
  });
  const texts = heads.map(({ text }) => text);
  return rows.length > 0 && left.length === rows.length ? ["", ...texts] : texts;
}

/** The cells of a row that has fewer than there are headings, each under its own; undefined where nobody can tell. */
export function alignedCells(header: string, heads: readonly string[], row: string): string[] | undefined {
  const own = spansOf(header);
  const spans = heads.length > own.length ? [{ text: "", from: 0, to: 1 }, ...own] : own;
  const cells = spansOf(row);
  if (cells.length >= spans.length || /[\t\u00a0]/.test(row)) return undefined;
  const aligned = spans.map(() => "");
  let last = -1;
  for (const cell of cells) {
    const gaps = spans.map((span) => gapBetween(cell, span));
    const at = gaps.indexOf(Math.min(...gaps));
    if (at <= last) return undefined;
    aligned[at] = cell.text;
    last = at;
  }
  return aligned;
}
