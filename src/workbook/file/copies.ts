// Dated copies beside the file: what it held before the first save of a day, for ten days of work.
import { constants, copyFileSync, existsSync, linkSync, readdirSync, renameSync, rmSync } from "node:fs";
import { basename, dirname, join } from "node:path";

export const MAX_COPIES = 10;

/** Keeps what the file holds now, unless there is a copy of this day already; a clock set back writes over no copy. */
export function keepCopy(path: string, now: Date): void {
  if (!existsSync(path)) return;
  const copy = copyOf(path, dayOf(now));
  if (existsSync(copy)) return;
  try {
    // A save puts another file in this one's place, so that a second name for it costs no room and is whole at once.
    linkSync(path, copy);
  } catch {
    const part = join(dirname(path), `.${basename(path)}.copy.part`);
    copyFileSync(path, part, constants.COPYFILE_FICLONE);
    renameSync(part, copy);
  }
  // Where the clock was set back the new copy is not the latest by its name, and stays all the same.
  const others = copiesOf(path).filter((one) => one !== copy);
  for (const old of others.slice(0, Math.max(0, others.length - MAX_COPIES + 1))) rmSync(old, { force: true });
}

/** The copies of a file, oldest day first. */
export function copiesOf(path: string): string[] {
  const stem = basename(path).replace(/\.json$/i, "");
  return readdirSync(dirname(path))
    .filter((name) => name.startsWith(`${stem}.`) && /^\d{4}-\d\d-\d\d\.json$/.test(name.slice(stem.length + 1)))
    .sort()
    .map((name) => join(dirname(path), name));
}

const copyOf = (path: string, day: string): string => `${path.replace(/\.json$/i, "")}.${day}.json`;

const dayOf = (now: Date): string =>
  [String(now.getFullYear()), String(now.getMonth() + 1).padStart(2, "0"), String(now.getDate()).padStart(2, "0")].join(
    "-",
  );
