// The names that a workbook gives to ranges.

type Workbook = GoogleAppsScript.Spreadsheet.Spreadsheet;
type Range = GoogleAppsScript.Spreadsheet.Range;

/** All of them in one call of the service, without those whose sheet was deleted. */
export function namedRanges(workbook: Workbook): ReadonlyMap<string, Range> {
  return new Map(
    workbook.getNamedRanges().flatMap((one): [string, Range][] => {
      try {
        return [[one.getName(), one.getRange()]];
      } catch {
        return [];
      }
    }),
  );
}
