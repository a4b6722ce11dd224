// A price list as a file of the person's own computer.
import { refuse } from "../../shared/base/refusal.ts";
import { type Table, tableOf } from "../../shared/price-list/table.ts";
import { workbookTable } from "../../shared/price-list/workbook-cells.ts";

/** A text file of another program may be in the encoding of its country: what is no UTF-8 is read as Windows has it. */
export function decodeText(bytes: Uint8Array): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder("utf-16le").decode(bytes);
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return new TextDecoder("utf-16be").decode(bytes);
  mustBeText(bytes);
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
}

const PDF = [0x25, 0x50, 0x44, 0x46];

/** No text holds a zero: an older .xls does, and a picture. */
function mustBeText(bytes: Uint8Array): void {
  if (bytes.includes(0) || PDF.every((byte, at) => bytes[at] === byte))
    refuse(
      "This file is neither text nor an .xlsx workbook. Save the price list as .xlsx or .csv and choose it again.",
    );
}

/** Every .zip, and so every .xlsx, begins with these two letters. */
const isZip = (bytes: Uint8Array): boolean => bytes[0] === 0x50 && bytes[1] === 0x4b;

/** By what it holds: its name may say anything. Refuses what is neither. */
export const fileTable = (bytes: Uint8Array): Table =>
  isZip(bytes) ? workbookTable(bytes) : tableOf(decodeText(bytes));
