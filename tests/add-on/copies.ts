// A workbook with many formula sheets that hold values in place of their formulas: who reads them sees no difference.
import { a1 } from "../../shared/sheet/a1.ts";
import { openWorkbook, type WorkbookHost } from "../../src/workbook/host.ts";
import { files } from "../templates/sheet-support.ts";

type SheetData = { readonly id: string; readonly name: string };

/** The ingredients of a workbook and so many copies of one of its sheets, called "Loaf 1" and so on. */
export async function withCopies(book: WorkbookHost, name: string, many: number): Promise<WorkbookHost> {
  const data = book.engine.data() as Record<string, unknown> & { readonly sheets: readonly SheetData[] };
  const one = data.sheets.find((sheet) => sheet.name === name);
  if (one === undefined) throw new Error(`There is no sheet ${name}`);
  const cells: Record<string, string> = {};
  book.values(name, book.usedRange(name)).forEach((line, row) => {
    line.forEach((value, column) => {
      // Days do not count here.
      if (value !== "" && !(value instanceof Date)) cells[a1({ row, column })] = String(value);
    });
  });
  const copies = Array.from({ length: many }, (_, at) => {
    const title = `Loaf ${at + 1}`;
    return { ...one, id: `copy-${at}`, name: title, cells: { ...cells, A1: title } };
  });
  const others = data.sheets.filter((sheet) => ["Sheet1", "Ingredients"].includes(sheet.name));
  const names = Object.entries(data.namedRanges as Readonly<Record<string, string>>);
  const namedRanges = Object.fromEntries(names.filter(([, range]) => range.startsWith("Ingredients!")));
  const sheets = [...others, ...copies];
  return openWorkbook({ ...(await files()), data: { ...data, sheets, namedRanges, marks: [], cellNames: [] } });
}
