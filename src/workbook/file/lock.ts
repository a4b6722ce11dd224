// One server to a file: the lock beside it holds the process that serves it, and outlives it where that was killed.
import { linkSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { hostname } from "node:os";
import { basename } from "node:path";
import { unwritable } from "./write-file.ts";

export type Lock = { isHeld(): boolean; release(): void };
type Holder = { readonly process: number; readonly computer: string };

const thisProcess = (): Holder => ({ process: process.pid, computer: hostname() });
/** Locks that this process holds: after a restart of a computer or container a dead server's number may be our own. */
const held = new Set<string>();

/** Locks a file for this process, or throws a sentence that says who has it. A lock whose process is gone is taken over. */
export function lockFile(path: string): Lock {
  const lock = `${path}.lock`;
  const text = JSON.stringify(thisProcess());
  const ready = `${lock}.${process.pid}`;
  try {
    // A lock is whole from its first moment on: it is written beside, and a link is made or refused in one step.
    writeFileSync(ready, text, { mode: 0o600 });
    while (!isLinked(ready, lock)) {
      const lockHolder = read(lock);
      if (lockHolder === undefined) continue;
      const { process: id, computer } = holder(lockHolder);
      if (computer !== hostname())
        throw new Error(
          `${basename(path)} is open in Gramwright on the computer ${computer}. Close it there; if it is not running, delete ${lock}.`,
        );
      if (held.has(lock) || (id !== process.pid && isRunning(id)))
        throw new Error(
          `${basename(path)} is open in another Gramwright (process ${id}). Use that one, or stop it and start again. If that process is another program, delete ${lock}.`,
        );
      takeAway(lock, lockHolder);
    }
  } catch (error) {
    throw (error as NodeJS.ErrnoException).code === undefined
      ? error
      : unwritable(lock, error as NodeJS.ErrnoException);
  } finally {
    rmSync(ready, { force: true });
  }
  held.add(lock);
  return {
    isHeld: () => held.has(lock) && read(lock) === text,
    release() {
      if (held.delete(lock) && read(lock) === text) rmSync(lock, { force: true });
    },
  };
}

function isLinked(ready: string, lock: string): boolean {
  try {
    linkSync(ready, lock);
    return true;
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === "EEXIST") return false;
    // Disks such as a memory stick's know no links.
    if (code !== "EPERM" && code !== "ENOTSUP" && code !== "ENOSYS") throw error;
  }
  try {
    writeFileSync(lock, readFileSync(ready), { flag: "wx", mode: 0o600 });
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "EEXIST") return false;
    throw error;
  }
}

/** The text of a lock; undefined where there is none. */
function read(lock: string): string | undefined {
  try {
    return readFileSync(lock, "utf8");
  } catch (error) {
    if (["ENOENT", "ENOTDIR"].includes((error as NodeJS.ErrnoException).code ?? "")) return undefined;
    throw error;
  }
}

/** A lock that cannot be read was left by a computer that stopped in the middle: nobody holds it. */
function holder(text: string): Holder {
  try {
    const lockHolder = JSON.parse(text) as Partial<Holder> | null;
    if (Number.isInteger(lockHolder?.process) && typeof lockHolder?.computer === "string") return lockHolder as Holder;
  } catch {}
  return { process: 0, computer: hostname() };
}

function isRunning(id: number): boolean {
  if (id <= 0) return false;
  try {
    process.kill(id, 0);
    return true;
  } catch (error) {
    // A process of another person's is running, too.
    return (error as NodeJS.ErrnoException).code === "EPERM";
  }
}

/** Moves a dead server's lock aside; puts it back where a third server took it over in between. */
function takeAway(lock: string, text: string): void {
  const aside = `${lock}.${process.pid}.old`;
  try {
    renameSync(lock, aside);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENOENT") return;
    throw error;
  }
  if (readFileSync(aside, "utf8") === text) rmSync(aside);
  else renameSync(aside, lock);
}
