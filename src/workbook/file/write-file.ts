// A file is written whole or not at all.
import {
  closeSync,
  existsSync,
  fchmodSync,
  fsyncSync,
  lstatSync,
  openSync,
  readdirSync,
  readlinkSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from "node:fs";
import { basename, dirname, join, resolve } from "node:path";

/** Readable by its owner alone: a bakery's costs are nobody else's business. */
const NEW_FILE = 0o600;
const MAX_LINKS = 40;

const NOT_ALLOWED: ReadonlySet<string> = new Set(["EACCES", "EPERM"]);
/** What stands in the way of writing, for a person to do something about; no path of this computer is in it. */
const BECAUSE: ReadonlyMap<string, string> = new Map([
  ["ENOSPC", "The disk is full. Make room on it"],
  ["EDQUOT", "Your share of the disk is used up. Make room on it"],
  ["EFBIG", "The disk takes no larger file. Choose another with --file"],
  ["EROFS", "The disk can only be read. Choose another with --file"],
  ["EACCES", "You may not write in that folder. Allow it, or choose another with --file"],
  ["EPERM", "You may not write in that folder. Allow it, or choose another with --file"],
  ["ENOENT", "Its folder is gone. Put it back, or choose another with --file"],
  ["ENOTDIR", "Its folder is gone. Put it back, or choose another with --file"],
  ["EIO", "The disk failed. Save a copy elsewhere now"],
]);

/** An error that says why a file could not be written or read; `code` is the system's. */
export type Unwritable = Error & { readonly code?: string; readonly isUnwritable: true };
type Failed = { readonly code?: string | undefined };

export const unwritable = (path: string, { code }: Failed): Unwritable =>
  failure(path, "written", code, BECAUSE.get(code ?? ""));

export const unreadable = (path: string, { code }: Failed): Unwritable =>
  failure(
    path,
    "read",
    code,
    NOT_ALLOWED.has(code ?? "")
      ? "You may not read it. Allow it, or choose another with --file"
      : BECAUSE.get(code ?? ""),
  );

function failure(path: string, done: string, code: string | undefined, because: string | undefined): Unwritable {
  const reason = because ?? `The disk answered ${code ?? "with an error"}`;
  const error = Object.assign(new Error(`${basename(path)} could not be ${done}. ${reason}.`), {
    isUnwritable: true as const,
  });
  return code === undefined ? error : Object.assign(error, { code });
}

/** Where a symbolic link leads, also to a file that is not there yet; any other path as it is. */
export function targetOf(path: string): string {
  let at = path;
  for (let links = 0; isLink(at); links++) {
    if (links === MAX_LINKS) throw new Error(`${basename(path)} is a link that leads in a circle; give another file.`);
    at = resolve(dirname(at), readlinkSync(at));
  }
  const folder = dirname(at);
  return existsSync(folder) ? join(realpathSync(folder), basename(at)) : at;
}

function isLink(path: string): boolean {
  return lstatSync(path, { throwIfNoEntry: false })?.isSymbolicLink() ?? false;
}

/** Beside the file first, and on the disk for certain; then in its place, which is one step for the file system. The mode stays. */
export function writeWhole(path: string, text: string): void {
  const part = partOf(path);
  try {
    const mode = (statSync(path, { throwIfNoEntry: false })?.mode ?? NEW_FILE) & 0o777;
    const file = openSync(part, "w", NEW_FILE);
    try {
      // One call need not write everything.
      const bytes = Buffer.from(text, "utf8");
      for (let done = 0; done < bytes.length; ) done += writeSync(file, bytes, done);
      fchmodSync(file, mode);
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
    renameSync(part, path);
  } catch (error) {
    rmSync(part, { force: true });
    throw unwritable(path, error as NodeJS.ErrnoException);
  }
  keepFolder(dirname(path));
}

const partOf = (path: string) => join(dirname(path), `.${basename(path)}.${process.pid}.part`);

/** The new name is on the disk as well; not every system lets a folder be opened, and those write it by themselves. */
function keepFolder(folder: string): void {
  try {
    const open = openSync(folder, "r");
    try {
      fsyncSync(open);
    } finally {
      closeSync(open);
    }
  } catch {}
}

/** What a killed run left beside the file. */
export function clearParts(path: string): void {
  const folder = dirname(path);
  for (const name of readdirSync(folder)) {
    if (name.startsWith(`.${basename(path)}.`) && name.endsWith(".part")) rmSync(join(folder, name), { force: true });
  }
}
