import { crc32, deflateRawSync } from "node:zlib";

export type ZipEntry = { readonly name: string; readonly bytes: Buffer };

/** 1 January 1980, the first day a .zip can say: the same files always make the same bytes. */
const FIRST_DAY = 0x0021;
const DEFLATED = 8;
/** Version 2.0 of the format, and names in UTF-8 (APPNOTE.TXT 6.3.10, 4.4.3 and 4.4.4). */
const NEEDS = 20;
const UTF8 = 0x0800;

/** A .zip of a few small files (PKWARE's APPNOTE.TXT): each with its local header, then the list of all, then the end. */
export function zipped(entries: readonly ZipEntry[]): Buffer {
  const parts: Buffer[] = [];
  const list: Buffer[] = [];
  let offset = 0;
  for (const { name, bytes } of entries) {
    const named = Buffer.from(name, "utf8");
    const packed = deflateRawSync(bytes, { level: 9 });
    const common = commonFields(bytes, packed.length, named.length);
    const local = Buffer.concat([Buffer.from("PK\x03\x04", "latin1"), common, named, packed]);
    parts.push(local);
    list.push(Buffer.concat([Buffer.from("PK\x01\x02", "latin1"), u16(NEEDS), common, centralFields(offset), named]));
    offset += local.length;
  }
  const directory = Buffer.concat(list);
  const many = entries.length;
  const end = [
    Buffer.from("PK\x05\x06", "latin1"),
    u16(0),
    u16(0),
    u16(many),
    u16(many),
    u32(directory.length),
    u32(offset),
    u16(0),
  ];
  return Buffer.concat([...parts, directory, ...end]);
}

const commonFields = (bytes: Buffer, packed: number, name: number): Buffer =>
  Buffer.concat([
    u16(NEEDS),
    u16(UTF8),
    u16(DEFLATED),
    u16(0),
    u16(FIRST_DAY),
    u32(crc32(bytes)),
    u32(packed),
    u32(bytes.length),
    u16(name),
    u16(0),
  ]);

/** No comment, disk 0, no attributes, and where the file's own header stands. */
const centralFields = (offset: number): Buffer => Buffer.concat([u16(0), u16(0), u16(0), u32(0), u32(offset)]);

function u16(value: number): Buffer {
  const bytes = Buffer.alloc(2);
  bytes.writeUInt16LE(value);
  return bytes;
}

function u32(value: number): Buffer {
  const bytes = Buffer.alloc(4);
  bytes.writeUInt32LE(value);
  return bytes;
}
