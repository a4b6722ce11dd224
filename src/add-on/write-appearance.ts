// How the cells of a new sheet look: texts, formats, borders, validation, protection.
import type { Writable } from "../../shared/protocol/plan-message.ts";
import { zoneIn } from "../../shared/sheet/a1.ts";
import type { Validation } from "../../shared/sheet/validation.ts";

export type Sheet = GoogleAppsScript.Spreadsheet.Sheet;
export type Range = GoogleAppsScript.Spreadsheet.Range;

/** The page's cells, and beside it words; formulas come over the blanks afterwards. */
export function valuesOf({ values, aside, page, columns }: Writable): (string | number)[][] {
  const cells = values.map((row) => [...row, ...Array<string>(columns - page).fill("")]);
  for (const { row, column, cells: words } of aside.words) cells[row]?.splice(column, words.length, ...words);
  return cells;
}

/** How cells show what they hold: those beside the page as a new sheet has them, unless told otherwise. */
export function formatsOf({ formats, aside, page, columns }: Writable): string[][] {
  const cells = formats.map((row) => [...row, ...Array<string>(columns - page).fill(USUAL)]);
  for (const { format, ranges } of aside.formats)
    for (const range of ranges) {
      const { row, column, rows, columns: across } = zoneIn(range);
      for (const line of cells.slice(row, row + rows)) line.fill(format, column, column + across);
    }
  return cells;
}
const USUAL = "General";

/** Colour, weight, slant and size at once: one call in the place of four. */
export function textStyles({ appearances }: Writable): GoogleAppsScript.Spreadsheet.TextStyle[][] {
  const styles = new Map<string, GoogleAppsScript.Spreadsheet.TextStyle>();
  return appearances.map((row) =>
    row.map(({ ink, weight, style, size }) => {
      const key = `${ink} ${weight} ${style} ${size}`;
      const known = styles.get(key);
      if (known !== undefined) return known;
      const built = SpreadsheetApp.newTextStyle()
        .setForegroundColor(ink)
        .setBold(weight === "bold")
        .setItalic(style === "italic")
        .setFontSize(size)
        .build();
      styles.set(key, built);
      return built;
    }),
  );
}

export function commonest(widths: readonly number[]): number {
  const times = (width: number) => widths.filter((one) => one === width).length;
  return [...widths].sort((a, b) => times(b) - times(a))[0] ?? 84;
}

export function runs(widths: readonly number[]): { from: number; count: number; width: number }[] {
  const columnRuns: { from: number; count: number; width: number }[] = [];
  widths.forEach((width, column) => {
    const last = columnRuns[columnRuns.length - 1];
    if (last && last.width === width) last.count += 1;
    else columnRuns.push({ from: column, count: 1, width });
  });
  return columnRuns;
}

type Heights = { readonly row: number; readonly rows: number; readonly height: number; readonly grows: boolean };

/** Heights of rows in few calls: later ones win, and rows of one height below each other go together. */
export function heightRuns({ rows, heights }: Writable): Heights[] {
  const known = Array<Writable["heights"][number] | null>(rows).fill(null);
  for (const one of heights) known.fill(one, one.row, one.row + (one.rows ?? 1));
  // A height that grows with its text is another than the same one that stays.
  const numbers = known.map((one) => (one === null ? 0 : one.grows ? -one.height : one.height));
  const usual = numbers.includes(0) ? 0 : commonest(numbers);
  const asHeights = (row: number, many: number, number: number): Heights => ({
    row,
    rows: many,
    height: Math.abs(number),
    grows: number < 0,
  });
  return [
    ...(usual === 0 ? [] : [asHeights(0, rows, usual)]),
    ...runs(numbers)
      .filter(({ width }) => width !== usual)
      .map(({ from, count, width }) => asHeights(from, count, width)),
  ];
}

export function drawBorders(sheet: Sheet, { borders }: Writable): void {
  const { SOLID } = SpreadsheetApp.BorderStyle;
  if (borders.under.length > 0) {
    sheet.getRangeList(borders.under as string[]).setBorder(false, false, true, false, false, false, "#1f5f5b", SOLID);
  }
  if (borders.over.length > 0) {
    sheet.getRangeList(borders.over as string[]).setBorder(true, null, null, null, null, null, "#1f5f5b", SOLID);
  }
  if (borders.rule.length > 0) {
    sheet.getRangeList(borders.rule as string[]).setBorder(null, null, true, null, null, true, "#b9ad8e", SOLID);
  }
  if (borders.box.length > 0) {
    sheet.getRangeList(borders.box as string[]).setBorder(true, true, true, true, true, true, "#b9ad8e", SOLID);
  }
}

export function validation(one: Validation): GoogleAppsScript.Spreadsheet.DataValidation {
  const isStrict = one.is === "nothing" || one.isStrict === true;
  const rule = SpreadsheetApp.newDataValidation().setAllowInvalid(!isStrict).setHelpText(one.help);
  if (one.is === "list") return rule.requireValueInList(one.values as string[], true).build();
  if (one.is === "between") return rule.requireNumberBetween(one.least, one.most).build();
  return rule.requireFormulaSatisfied("=FALSE()").build();
}

/** Anyone may still type everywhere; on formulas and edge rows a warning comes first. */
export function protect(sheet: Sheet, plan: Writable): void {
  sheet
    .protect()
    .setWarningOnly(true)
    .setUnprotectedRanges(plan.unprotected.map((range) => sheet.getRange(range)));
}
