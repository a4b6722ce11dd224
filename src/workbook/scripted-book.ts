// What a program can do with a workbook and its sheets.
import type { Options, Values } from "../../shared/sheet/model.ts";
import type { HostCell } from "./cell-readers.ts";
import type { WorkbookHost } from "./host.ts";

/** A workbook: all that a WorkbookHost does by the names of sheets and by addresses, and this. */
export type Book = WorkbookHost & {
  /**
   * Builds a sheet of a template through the sidebar's own question. What is left out is as the sidebar has it: metric
   * units, every part. Throws the sentence with which the add-on refuses.
   */
  readonly build: (template: string, values?: Values, options?: Partial<Options>) => Sheet;
  /** A sheet by the name of its tab; throws a sentence with the names that there are. */
  readonly sheet: (name: string) => Sheet;
  /** A second workbook that holds the same. */
  readonly copy: () => Book;
  /** A sheet copied to a new workbook, as its tab's menu does, and nothing else there. */
  readonly copySheet: (name: string) => Sheet;
  /**
   * Writes the workbook, whole or not at all: .xlsx for other programs, .json as `npm start` keeps it and `openFile` opens
   * it. Throws a sentence for any other ending, and where the file cannot be written.
   */
  readonly save: (path: string) => Promise<void>;
};

/**
 * A sheet. `place` is an address ("B7") or a name of the template ("title", "percent"); with the name of a table's column goes
 * a row of it, counted from the edge row above the first (1 is the first row). Names follow their cells when rows and cells are
 * inserted, deleted and moved; sorting moves what rows hold, and names stay. Every call throws a sentence for a name, a row or
 * an address that is not there.
 */
export type Sheet = {
  readonly book: Book;
  /** The name of its tab, as it is now. */
  readonly sheet: string;
  /** Names of cells and of tables' columns; none on a sheet of somebody's own. */
  readonly names: () => string[];
  /** The address of a place: "B7". */
  readonly at: (place: string, row?: number) => string;
  /** The number of a place's row in the sheet, from 1. */
  readonly rowOf: (place: string, row?: number) => number;
  /** How many rows a column of a table has, both edge rows counted; 1 for a cell. */
  readonly rows: (place: string) => number;
  /** Value, shown text, formula, error message, number format and note. */
  readonly cell: (place: string, row?: number) => HostCell;
  /** As a script reads it: a number, a text, a truth value, a Date, "" for a blank cell, the text of an error. */
  readonly value: (place: string, row?: number) => unknown;
  readonly shown: (place: string, row?: number) => string;
  /** The sentence behind an error; undefined where there is none. */
  readonly message: (place: string, row?: number) => string | undefined;
  /** In the dialect of scripts, with `;`; undefined where there is none. */
  readonly formula: (place: string, row?: number) => string | undefined;
  /** "" where there is none. */
  readonly note: (place: string, row?: number) => string;
  /** Types as a person does: "65%", "=A1*2", "" to empty. Throws the notice of a validation that refuses it. */
  readonly type: (place: string, text: string, row?: number) => void;
  /** Pastes rows of texts, the first cell going to the place. Throws for a text with a tab or a line break in it. */
  readonly paste: (place: string, block: readonly (readonly string[])[], row?: number) => void;
  /** Puts empty rows in front of a row of the sheet. */
  readonly insertRows: (beforeRow: number, many?: number) => void;
  readonly deleteRows: (fromRow: number, many?: number) => void;
  /** Drags rows in front of another row; the row after the last of the sheet is its end. */
  readonly moveRows: (fromRow: number, many: number, beforeRow: number) => void;
  /** Cuts a range ("A3:C3") and pastes it at an address: what refers to its cells follows them. */
  readonly moveCells: (range: string, to: string) => void;
  /** Sorts a range ("A3:C9", no headings in it) by one of its columns, told by letter or by name. */
  readonly sortRows: (range: string, by: string, ascending?: boolean) => void;
};
