// The names that a workbook gives to ranges.

type Workbook = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Range = GoogleAppsScript.Spreadsheet.Range;

/** All of them in one call of the service, the first where two are alike, without those whose sheet was deleted. */
export function namedRanges(workbook: Workbook): ReadonlyMap<string, Range> {
  const found = new Map<string, Range>();
  for (const one of workbook.getNamedRanges()) {
    try {
      // Of a deleted sheet there may be none.
      const range = one.getRange() as Range | null;
      if (range !== null && !found.has(one.getName())) found.set(one.getName(), range);
    } catch {}
  }
  return found;
}
