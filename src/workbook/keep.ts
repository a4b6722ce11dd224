// The local workbook on disk: written whole or not at all, and never over what cannot be read.
import { createHash } from "node:crypto";
import {
  closeSync,
  existsSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from "node:fs";
import { basename, dirname, join } from "node:path";
import type { WorkbookData } from "./engine/library.ts";

const KIND = "gramwright workbook 1";

/** What the page gets: the workbook, if one was kept, and the mark by which a later save is known to follow it. */
export type Kept = {
  readonly data?: WorkbookData;
  readonly revision: string;
  /** What a person should know: a broken file was set aside. */
  readonly says?: string;
};
export type Keeper = {
  readonly path: string;
  load(): Kept;
  /** The new revision, or a sentence where the file is no longer what `revision` says. */
  save(data: WorkbookData, revision: string): { readonly revision: string } | { readonly stale: string };
};

const STALE =
  "The workbook was changed in another window or by another program. Reload this page to see it; what was typed here since then is not kept.";

const NOTHING = "none";
const revisionOf = (text: string): string => createHash("sha256").update(text).digest("hex");

/** `proves` opens the data as the page would, and throws where it cannot. */
export function openKeeper(path: string, proves: (data: WorkbookData) => void): Keeper {
  if (existsSync(path) && statSync(path).isDirectory()) throw new Error(`${path} is a folder; give a file name.`);
  mkdirSync(dirname(path), { recursive: true });
  clearParts(path);
  const onDisk = (): string => (existsSync(path) ? revisionOf(readFileSync(path, "utf8")) : NOTHING);
  let says: string | undefined;
  return {
    path,
    load() {
      if (!existsSync(path)) return { revision: NOTHING, ...(says === undefined ? {} : { says }) };
      const text = readFileSync(path, "utf8");
      try {
        const data = readWorkbook(text);
        proves(data);
        return { data, revision: revisionOf(text), ...(says === undefined ? {} : { says }) };
      } catch (error) {
        const aside = setAside(path);
        says = `${path} could not be read (${(error as Error).message}). It was set aside as ${aside}, and the workbook begins anew.`;
        return { revision: NOTHING, says };
      }
    },
    save(data, revision) {
      if (onDisk() !== revision) return { stale: STALE };
      const text = JSON.stringify({ kind: KIND, data });
      writeWhole(path, text);
      return { revision: revisionOf(text) };
    },
  };
}

/** The workbook in a kept file's text; throws what is wrong with it. */
export function readWorkbook(text: string): WorkbookData {
  const read = JSON.parse(text) as { kind?: unknown; data?: { sheets?: unknown } } | null;
  const sheets = read?.data?.sheets;
  if (read?.kind !== KIND || !Array.isArray(sheets) || sheets.length === 0) throw new Error("it is no kept workbook");
  return read.data as WorkbookData;
}

/** A name that no file has yet: nothing that was kept is ever written over. */
function setAside(path: string): string {
  const stem = path.replace(/\.json$/i, "");
  let number = 1;
  while (existsSync(`${stem}.broken-${number}.json`)) number += 1;
  const aside = `${stem}.broken-${number}.json`;
  renameSync(path, aside);
  return aside;
}

/** Beside the file first, and on the disk for certain; then in its place, which is one step for the file system. */
function writeWhole(path: string, text: string): void {
  const part = join(dirname(path), `.${basename(path)}.${process.pid}.part`);
  try {
    const file = openSync(part, "w");
    try {
      // One call need not write everything.
      const bytes = Buffer.from(text, "utf8");
      for (let done = 0; done < bytes.length; ) done += writeSync(file, bytes, done);
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
    renameSync(part, path);
  } catch (error) {
    rmSync(part, { force: true });
    throw new Error(`${path} could not be written: ${(error as Error).message}`);
  }
}

/** What a killed run left beside the file. */
function clearParts(path: string): void {
  const folder = dirname(path);
  for (const name of readdirSync(folder)) {
    if (name.startsWith(`.${basename(path)}.`) && name.endsWith(".part")) rmSync(join(folder, name), { force: true });
  }
}
