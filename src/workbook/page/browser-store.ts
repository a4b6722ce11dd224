// The workbook of the page that is one file: kept in the browser, under its own id, with what it held before today's work.
import { VERSION } from "../../../shared/base/version.ts";
import type { WorkbookData } from "../engine/library.ts";
import { keptText } from "../file/file-text.ts";
import { asWorkbook, readKept } from "../file/workbook-data.ts";
import { type Database, openDatabase } from "./database.ts";
import type { Store, StoredBook } from "./home.ts";
import { revisionOf } from "./revision.ts";

/** A workbook as the browser keeps it. */
export type Entry = {
  readonly id: string;
  /** As in a file that was saved. */
  readonly text: string;
  readonly revision: string;
  readonly at: number;
  /** The version of Gramwright that kept it. */
  readonly by: string;
  readonly before?: { readonly text: string; readonly revision: string; readonly at: number };
  /** The last file that a person saved. */
  readonly filed?: { readonly revision: string; readonly at: number };
};

const NOTHING = "none";
export const NOT_KEPT =
  "This browser keeps nothing for this page, as in a private window. Choose “Save as file” before you close it.";
export const FIRST =
  "This browser keeps no workbook for this page yet. If you had one, the page may have been moved or renamed, or the browser’s data cleared. Choose “Open file” and take the file that you saved last.";

const dayOf = (at: number): string => new Date(at).toDateString();

export type BrowserStore = Store & {
  /** False where the browser keeps nothing. */
  isKept(): boolean;
  /** Whether nothing was kept when the page was opened. */
  isFirst(): boolean;
  /** The workbook in this page as it is kept; undefined where nothing is. */
  entry(): Promise<Entry | undefined>;
  all(): Promise<readonly Entry[]>;
  /** Makes a file's workbook, or one that is kept here, the one of this page; what it takes the place of stays as the one before. */
  take(text: string, id?: string): Promise<void>;
  /** Puts the one before in the place of the workbook, and the other way round. */
  takeBefore(): Promise<void>;
  noteFiled(revision: string): Promise<void>;
  id(): string;
};

/** `wanted` names the workbook that this tab had; without it the one that was opened last is opened. */
export function openBrowserStore(version: number, wanted: string): BrowserStore {
  let id = wanted === "" ? crypto.randomUUID() : wanted;
  let database: Database | undefined;
  let isFirst = false;
  const readEntry = async () => (await database?.get(id)) as Entry | undefined;
  const record = () => {
    if (database === undefined) throw new Error(NOT_KEPT);
    return database;
  };

  return {
    id: () => id,
    isFirst: () => isFirst,
    isKept: () => database !== undefined,
    entry: readEntry,
    all: async () => ((await database?.all()) ?? []) as readonly Entry[],
    channel: () => `gramwright ${id}`,
    ownFile: { name: "gramwright-this-tab.json", opens: "To open it, choose “Open file”." },
    async load(): Promise<StoredBook> {
      const opened = await openDatabase(version);
      if ("says" in opened) return { says: NOT_KEPT };
      database = opened;
      const here = wanted === "" ? undefined : await readEntry();
      if (here === undefined) id = (await database.latest()) ?? id;
      const record = await readEntry();
      isFirst = record === undefined;
      if (record === undefined) return { revision: NOTHING };
      await database.bringForward(id);
      return { data: readKept(record.text), revision: record.revision };
    },
    revision: async () => (await readEntry())?.revision ?? NOTHING,
    async save(json, known) {
      const text = keptText(json);
      const [revision, at] = [await revisionOf(text), Date.now()];
      const isDone = await record().change(id, (old: Entry | undefined): Entry | undefined => {
        if ((old?.revision ?? NOTHING) !== known) return undefined;
        const isNewDay = old !== undefined && dayOf(old.at) !== dayOf(at);
        return { ...old, id, text, revision, at, by: VERSION, ...(isNewDay && { before: beforeOf(old) }) };
      });
      return isDone ? revision : undefined;
    },
    async take(text, isOwn) {
      id = isOwn ?? crypto.randomUUID();
      const [revision, at] = [await revisionOf(text), Date.now()];
      await record().change(id, (old: Entry | undefined): Entry => {
        if (old?.revision === revision) return old;
        const filed = { revision, at };
        return { id, text, revision, at, by: VERSION, filed, ...(old && { before: beforeOf(old) }) };
      });
      await record().bringForward(id);
    },
    async takeBefore() {
      await record().change(
        id,
        (old: Entry | undefined): Entry | undefined =>
          old?.before && { ...old, ...old.before, at: Date.now(), before: beforeOf(old) },
      );
    },
    async noteFiled(revision) {
      await database?.change(
        id,
        (old: Entry | undefined): Entry | undefined => old && { ...old, filed: { revision, at: Date.now() } },
      );
    },
  };
}

const beforeOf = ({ text, revision, at }: Entry) => ({ text, revision, at });

/** Whether a day's work is in no file yet: something was changed since the last one, and that was not today. */
export const isFileDue = ({ revision, filed }: Entry, now: number): boolean =>
  filed === undefined || (filed.revision !== revision && dayOf(filed.at) !== dayOf(now));

/** The workbook in a file that a person chose; throws a sentence where it is none. */
export function readFile(name: string, text: string): { text: string; id: string | undefined; data: WorkbookData } {
  try {
    const data = asWorkbook(readKept(text));
    if (data === undefined) throw new Error("some of it is missing");
    const { id } = JSON.parse(text) as { id?: unknown };
    return { text: keptText(JSON.stringify(data)), id: typeof id === "string" ? id : undefined, data };
  } catch {
    const isOther = !/\.json$/i.test(name);
    throw new Error(
      isOther
        ? `“${name}” cannot be opened here. Choose a file that “Save as file” made: its name ends in .json.`
        : `“${name}” holds no workbook of Gramwright, or not all of it. Choose another file that “Save as file” made.`,
    );
  }
}
