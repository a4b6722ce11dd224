// The local workbook for programs and tests: the built add-on over the real engine, without a page.
import { readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import type { Options, Values } from "../../shared/sheet/model.ts";
import { serialOf } from "../../templates/demo/days.ts";
import { demoShop } from "../../templates/demo/shop.ts";
import type { LocaleCode } from "./engine/engine.ts";
import type { WorkbookData } from "./engine/library.ts";
import { openKeeper } from "./file/keeper.ts";
import { readKept } from "./file/workbook-data.ts";
import { openWorkbook } from "./host.ts";
import type { Book, Sheet } from "./scripted-book.ts";
import { sheetOf } from "./scripted-sheet.ts";
import { toXlsx } from "./xlsx/xlsx.ts";

export type { Book, Sheet } from "./scripted-book.ts";

/** The texts of the files that are pushed. */
export type BuiltFiles = { readonly codeJs: string; readonly sidebarHtml: string };

let files: Promise<BuiltFiles> | undefined;

/** The very files that would be pushed: those that were built for a test run, otherwise built once by this program. */
export function builtFiles(): Promise<BuiltFiles> {
  files ??= readOrBuild();
  return files;
}

async function readOrBuild(): Promise<BuiltFiles> {
  const folder = process.env.GRAMWRIGHT_BUILT;
  if (folder !== undefined) {
    const read = (name: string) => readFileSync(join(folder, name), "utf8");
    return { codeJs: read("Code.js"), sidebarHtml: read("sidebar.html") };
  }
  const [{ codeJs }, { sidebarHtml }] = await Promise.all([import("../build/build.ts"), import("../build/page.ts")]);
  const [code, sidebar] = await Promise.all([codeJs(), sidebarHtml()]);
  return { codeJs: code, sidebarHtml: sidebar };
}

/**
 * Opens a workbook with the built add-on in it: empty, or with what `book.engine.data()` gave. All formulas are calculated
 * when a call returns. Every call throws when a custom function did what it never may (NaN, null, a TypeError).
 *
 *   const book = await openBook();
 *   const loaf = book.build("pan-loaf", { title: "Country loaf" });
 *   loaf.type("percent", "68%", 2);
 *   loaf.value("grams", 2);
 */
export async function openBook(
  how: { readonly data?: WorkbookData; readonly locale?: LocaleCode } = {},
): Promise<Book> {
  return bookOf(await builtFiles(), how);
}

/** Opens the demo shop as of a day, today unless told otherwise. */
export async function openDemo(day = new Date()): Promise<Book> {
  const book = await openBook();
  for (const question of demoShop(serialOf(day.getFullYear(), day.getMonth() + 1, day.getDate())))
    book.answer(question);
  return book;
}

/** Opens a workbook that `npm start` or `save` kept (.json). Throws a sentence where the file is missing or is no such file. */
export async function openFile(path: string): Promise<Book> {
  let data: WorkbookData;
  try {
    data = readKept(readFileSync(path, "utf8"));
  } catch (error) {
    throw new Error(`${path} could not be opened: ${(error as Error).message}`);
  }
  return openBook({ data });
}

function bookOf(built: BuiltFiles, how: { readonly data?: WorkbookData; readonly locale?: LocaleCode }): Book {
  const host = openWorkbook({ ...built, ...how });
  const book: Book = Object.assign(host, {
    build(template: string, values: Values = {}, options: Partial<Options> = {}): Sheet {
      const { sheet } = host.answer({ ask: "build", template, options, values }) as { sheet: string };
      return sheetOf(book, sheet);
    },
    sheet: (name: string) => sheetOf(book, name),
    copy: () => bookOf(built, { ...how, data: host.engine.data() }),
    copySheet(name: string): Sheet {
      const id = host.sheetId(name);
      const alone = bookOf(built, { ...how, data: onlySheet(host.engine.data(), id) });
      return sheetOf(alone, name);
    },
    async save(path: string): Promise<void> {
      if (/\.xlsx$/i.test(path)) writeWhole(path, await toXlsx(host.engine));
      else if (/\.json$/i.test(path)) keep(resolve(path), host.engine.data());
      else throw new Error(`A workbook is saved as .xlsx or .json; "${path}" ends in neither.`);
    },
  });
  return book;
}

/** The workbook as if this sheet were its only one: what its formulas read of others is gone, names of the workbook with it. */
function onlySheet(data: WorkbookData, sheetId: string): WorkbookData {
  const { sheets, marks, cellNames } = data as Record<string, readonly { id?: string; sheetId?: string }[]>;
  const ofSheet = (some: typeof sheets | undefined) => (some ?? []).filter((one) => one.sheetId === sheetId);
  return {
    ...data,
    sheets: sheets?.filter(({ id }) => id === sheetId) ?? [],
    marks: ofSheet(marks),
    cellNames: ofSheet(cellNames),
    namedRanges: {},
  };
}

function keep(path: string, data: WorkbookData): void {
  const keeper = openKeeper(path, () => {});
  const result = keeper.save(data, keeper.load().revision);
  if ("stale" in result) throw new Error(`${path} was changed by another program at the same moment. Save again.`);
}

function writeWhole(path: string, bytes: Buffer): void {
  const part = `${path}.${process.pid}.part`;
  try {
    writeFileSync(part, bytes);
    renameSync(part, path);
  } catch (error) {
    rmSync(part, { force: true });
    throw new Error(`${path} could not be written: ${(error as Error).message}`);
  }
}
