// What the service and its JavaScript do where no documentation says so: each answer is a line of the report.

type Sheet = GoogleAppsScript.Spreadsheet.Sheet;

/** Each is tried alone: what one throws is its answer. */
function line(asks: string, answer: () => unknown): string {
  try {
    return `${asks}: ${JSON.stringify(answer())}`;
  } catch (error) {
    return `${asks}: failed, ${error instanceof Error ? error.message : String(error)}`;
  }
}

const has = (owner: unknown, name: string): boolean =>
  typeof (owner as Readonly<Record<string, unknown>> | undefined)?.[name] === "function";

/** Signs, a word and a length that a tab may be refused for. */
const TABS = ["a/b", "a:b", "a?b", "a*b", "a[b]", "a'b", "History", "n".repeat(100), "n".repeat(101), "n".repeat(256)];

/** Each is tried on the sheet of the check, which has its own name again afterwards. */
function takenNames(sheet: Sheet): string[] {
  const own = sheet.getName();
  try {
    return TABS.flatMap((name) => {
      try {
        sheet.setName(name);
        return sheet.getName() === name ? [name.length > 9 ? `${name.length} letters` : name] : [];
      } catch {
        return [];
      }
    });
  } finally {
    sheet.setName(own);
  }
}

const PAGES = [500_000, 2_000_000, 8_000_000];

function pageLength(length: number): number | string {
  try {
    return HtmlService.createHtmlOutput("x".repeat(length)).getContent().length;
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

/** In the free rows below everything in the sheet of the check. */
export function serviceLines(sheet: Sheet): string[] {
  const row = sheet.getLastRow() + 8;
  if (row + 1 > sheet.getMaxRows()) sheet.insertRowsAfter(sheet.getMaxRows(), row + 1 - sheet.getMaxRows());
  const pair = sheet.getRange(row, 1, 1, 2);
  const world = globalThis as unknown as Readonly<Record<string, unknown>>;
  return [
    line('setFormulas with "" over a value', () => {
      pair.setValues([[5, 6]]);
      pair.setFormulas([["=1+1", ""]]);
      SpreadsheetApp.flush();
      return pair.getValues()[0];
    }),
    line("texts behind an apostrophe", () => {
      pair.clear();
      pair.setValues([["'007", "'=1+1"]]);
      SpreadsheetApp.flush();
      return [...(pair.getValues()[0] ?? []), ...(pair.getFormulas()[0] ?? [])];
    }),
    line("a half in a formula, as fraction and with a point", () => {
      pair.clear();
      pair.setFormulas([["=IF(1;1/2;0)", "=0.5*2"]]);
      SpreadsheetApp.flush();
      return [...(pair.getValues()[0] ?? []), ...(pair.getFormulas()[0] ?? [])];
    }),
    line("a comma between arguments", () => {
      pair.clear();
      pair.setFormulas([["=SUM(1,2)", ""]]);
      SpreadsheetApp.flush();
      return pair.getValues()[0]?.[0];
    }),
    line("a text that appendRow is given", () => {
      sheet.appendRow(["1/2", "007", "'1/2"]);
      SpreadsheetApp.flush();
      const last = sheet.getLastRow();
      const shown = sheet.getRange(last, 1, 1, 3).getDisplayValues()[0];
      sheet.deleteRows(last, 1);
      return shown;
    }),
    line("newer parts of JavaScript", () => [
      has(String.prototype, "at"),
      has(String.prototype, "replaceAll"),
      has(Object, "hasOwn"),
      has(world, ["structured", "Clone"].join("")),
    ]),
    line("names that a tab takes", () => takenNames(sheet)),
    line("characters of a page that is taken", () => PAGES.map(pageLength)),
    line("1234.5 as German writes it", () => new Intl.NumberFormat("de-DE").format(1234.5)),
  ];
}
