// The local workbook on disk: written whole or not at all, and never over what cannot be read.
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, renameSync, statSync } from "node:fs";
import { basename, dirname } from "node:path";
import type { WorkbookData } from "../engine/library.ts";
import { keepCopy } from "./copies.ts";
import type { Lock } from "./lock.ts";
import { asWorkbook, readKept, writeKept } from "./workbook-data.ts";
import { clearParts, targetOf, unreadable, unwritable, writeWhole } from "./write-file.ts";

/** What the page gets: the workbook, if one was kept, and the mark by which a later save is known to follow it. */
export type KeptFile = {
  readonly data?: WorkbookData;
  readonly revision: string;
  /** What a person should know: a broken file was set aside. */
  readonly says?: string;
};
export type Saved = { readonly revision: string } | { readonly stale: string } | { readonly unreadable: string };
export type Keeper = {
  readonly path: string;
  load(): KeptFile;
  /** The mark of what the file holds now. */
  revision(): string;
  /** The new revision; or a sentence where the file is no longer what `revision` says, or where the data are no workbook. */
  save(data: unknown, revision: string): Saved;
};

const STALE = "The workbook was changed in another window or by another program.";
const UNLOCKED =
  "The workbook's lock was taken away, and another Gramwright may have it. Stop this one and start it again.";
const NO_WORKBOOK = "What was sent is no workbook, and the kept one was left as it is.";

const NOTHING = "none";
const revisionOf = (text: string): string => createHash("sha256").update(text).digest("hex");

/** `proves` opens the data as the page would, and throws where it cannot; what was proven once is not opened again. */
export function openKeeper(file: string, proves: (data: WorkbookData) => void, lock?: Lock): Keeper {
  const path = targetOf(file);
  if (isFolder(path)) throw new Error(`${file} is a folder; give a file name.`);
  mkdirSync(dirname(path), { recursive: true });
  clearParts(path);
  let says: string | undefined;
  let proven = NOTHING;
  const text = (): string | undefined => {
    try {
      return readFileSync(path, "utf8");
    } catch (error) {
      // Where the folder is gone too, as with a disk that was taken out, the workbook is not gone.
      if ((error as NodeJS.ErrnoException).code === "ENOENT" && isFolder(dirname(path))) return undefined;
      throw unreadable(path, error as NodeJS.ErrnoException);
    }
  };
  const revision = (): string => {
    const fileText = text();
    return fileText === undefined ? NOTHING : revisionOf(fileText);
  };
  const notice = () => (says === undefined ? {} : { says });
  return {
    path,
    revision,
    load() {
      const fileText = text();
      if (fileText === undefined) return { revision: NOTHING, ...notice() };
      const marked = revisionOf(fileText);
      try {
        const data = readKept(fileText);
        if (marked !== proven) proves(data);
        proven = marked;
        return { data, revision: marked, ...notice() };
      } catch (error) {
        says = `${basename(path)} could not be read (${(error as Error).message}). It was set aside as ${basename(setAside(path))}, and the workbook starts again.`;
        return { revision: NOTHING, says };
      }
    },
    save(data, known) {
      const workbook = asWorkbook(data);
      if (workbook === undefined) return { unreadable: NO_WORKBOOK };
      if (!isFolder(dirname(path))) throw unwritable(path, { code: "ENOENT" });
      if (lock?.isHeld() === false) return { stale: UNLOCKED };
      if (revision() !== known) return { stale: STALE };
      try {
        keepCopy(path, new Date());
      } catch {
        // The copy is a convenience; what was typed now goes first.
      }
      const written = writeKept(workbook);
      writeWhole(path, written);
      proven = revisionOf(written);
      return { revision: proven };
    },
  };
}

const isFolder = (path: string): boolean => existsSync(path) && statSync(path).isDirectory();

/** A name that no file has yet: nothing that was kept is ever written over. */
function setAside(path: string): string {
  const stem = path.replace(/\.json$/i, "");
  let number = 1;
  while (existsSync(`${stem}.broken-${number}.json`)) number += 1;
  const aside = `${stem}.broken-${number}.json`;
  try {
    renameSync(path, aside);
  } catch (error) {
    throw unwritable(path, error as NodeJS.ErrnoException);
  }
  return aside;
}
