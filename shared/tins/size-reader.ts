// Sizes of tins that may carry their unit: "9 in", "1.5 kg" of water, "2 l" wanted.
import { fault, isFault } from "../base/refusal.ts";
import { type Carried, readCarried } from "../cells/carried-units.ts";
import { number, type Reader } from "../cells/cell.ts";
import { type Decoder, table } from "../cells/decoder.ts";
import { isBlank } from "../cells/hint.ts";

/** A number in the unit of the call, or what a cell carries its own unit with; `text` as it was typed. */
export type Sized = number | (Carried & { readonly text: string });

/** A number, or what carries its own unit: "9 in", "1.5 kg" of water, "2 l" wanted. */
export const sizedReader = (of: Reader<number>): Reader<Sized> => ({
  hint: of.hint,
  read: (raw) => {
    const carried = readCarried(raw);
    if (carried === undefined || typeof raw !== "string") return of.read(raw);
    const value = of.read(carried.value);
    return isFault(value) ? value : { ...carried, text: raw };
  },
});
const size = sizedReader(number<number>("a size such as 23", { min: 0, max: 1e5 }));
/** Of the shapes with most sizes: length, width, depth and both at the base. */
const MAX_SIZES = 5;

/** A row of sizes for each tin; blank cells at its end are left off. */
export const sizesTable = (): Decoder<(Sized | null)[][]> =>
  table(size.hint, false, (rows, argument, faults): (Sized | null)[][] => {
    const width = rows.reduce((most, row) => Math.max(most, row.length), 0);
    if (width > MAX_SIZES) {
      faults.push(fault(`are ${width} columns; choose the sizes alone, at most ${MAX_SIZES} columns`, argument));
      return [];
    }
    return rows.map((row, index) => {
      const sizes = row.map((raw): Sized | null => {
        if (isBlank(raw)) return null;
        const sizeCell = size.read(raw);
        if (!isFault(sizeCell)) return sizeCell;
        faults.push(fault(sizeCell.says, argument, index + 1));
        return null;
      });
      while (sizes.length > 0 && sizes[sizes.length - 1] === null) sizes.pop();
      return sizes;
    });
  });
