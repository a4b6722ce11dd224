// The rows and columns of a sheet: inserted, deleted, sized, frozen and hidden, within the bounds that a sheet has.
import type { Session } from "./session.ts";

type Sheet = {
  readonly session: Session;
  readonly sheetId: string;
  readonly name: () => string;
  readonly rows: () => number;
  readonly columns: () => number;
};
type Dimension = "ROW" | "COL";

const sizeOf = (sheet: Sheet, dimension: Dimension): number => (dimension === "ROW" ? sheet.rows() : sheet.columns());

const elementsFrom = (from: number, many: number): number[] =>
  Array.from({ length: many }, (_, index) => from - 1 + index);

export function remove(sheet: Sheet, dimension: Dimension, from: number, many: number): void {
  const { session, sheetId } = sheet;
  const size = sizeOf(sheet, dimension);
  const what = dimension === "ROW" ? "rows" : "columns";
  if (from < 1 || many < 1 || from + many - 1 > size) throw new Error(`Those ${what} are out of bounds.`);
  if (many >= size) throw new Error(`You can't delete all the ${what} on the sheet.`);
  const sheetName = sheet.name();
  session.flush();
  session.engine.run("REMOVE_COLUMNS_ROWS", { sheetId, sheetName, dimension, elements: elementsFrom(from, many) });
}

export function insert(
  sheet: Sheet,
  dimension: Dimension,
  position: "before" | "after",
  at: number,
  quantity: number,
): void {
  const { session, sheetId } = sheet;
  if (at < 1 || at > sizeOf(sheet, dimension) || quantity < 1)
    throw new Error("Those rows or columns are out of bounds.");
  const sheetName = sheet.name();
  session.flush();
  session.engine.run("ADD_COLUMNS_ROWS", { sheetId, sheetName, dimension, position, base: at - 1, quantity });
}

export function resize(sheet: Sheet, dimension: Dimension, from: number, many: number, size: number): void {
  checkBounds(sheet, dimension, from, many);
  if (!Number.isInteger(size) || size < 2)
    throw new Error(`A width or height is a whole number of pixels, not ${size}`);
  const elements = elementsFrom(from, many);
  sheet.session.write({
    type: "RESIZE_COLUMNS_ROWS",
    payload: { sheetId: sheet.sheetId, dimension, elements, size },
  });
}

export function freeze({ session, sheetId }: Sheet, dimension: "ROWS" | "COLUMNS", quantity: number): void {
  session.write(
    quantity === 0
      ? { type: `UNFREEZE_${dimension}`, payload: { sheetId } }
      : { type: `FREEZE_${dimension}`, payload: { sheetId, quantity } },
  );
}

export function hide(sheet: Sheet, dimension: Dimension, from: number, many: number): void {
  checkBounds(sheet, dimension, from, many);
  const elements = elementsFrom(from, many);
  sheet.session.write({ type: "HIDE_COLUMNS_ROWS", payload: { sheetId: sheet.sheetId, dimension, elements } });
}

function checkBounds(sheet: Sheet, dimension: Dimension, from: number, many: number): void {
  if (from < 1 || many < 1 || from + many - 1 > sizeOf(sheet, dimension))
    throw new Error("Those rows or columns are out of bounds.");
}
