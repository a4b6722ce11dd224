// A price list as a file of the person's own computer.
import { type Table, tableOf } from "../../shared/price-list/table.ts";
import { workbookTable } from "../../shared/price-list/workbook-cells.ts";

/** A text file of another program may be in the encoding of its country: what is no UTF-8 is read as Windows has it. */
export function decodeText(bytes: Uint8Array): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder("utf-16le").decode(bytes);
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
}

/** Every .zip, and so every .xlsx, begins with these two letters. */
const isZip = (bytes: Uint8Array): boolean => bytes[0] === 0x50 && bytes[1] === 0x4b;

/** By what it holds: its name may say anything. Refuses what is neither. */
export const fileTable = (bytes: Uint8Array): Table =>
  isZip(bytes) ? workbookTable(bytes) : tableOf(decodeText(bytes));
