// The browser's own database, as little of it as the workbooks need. Every change is one transaction: two tabs never mix.

const NAME = "gramwright";
const WORKBOOKS = "workbooks";
/** Which workbook was opened last. */
const FRONT = "front";

const NEWER_STORE =
  "A newer Gramwright page keeps the workbook in this browser, and this older page leaves it alone. Open the newer page. Nothing was changed.";
const NEWER_OPEN =
  "Not kept: a newer Gramwright page was opened and keeps the workbook now. Choose “Save as file” here, then open that file in the newer page.";
const FULL = "Not kept: the browser has no room left for this page. Choose “Save as file” now.";

export type Database = {
  get(id: string): Promise<unknown>;
  all(): Promise<readonly unknown[]>;
  latest(): Promise<string | undefined>;
  bringForward(id: string): Promise<void>;
  /** Whether it was changed: `next` gets what is kept and gives what is to be, or undefined to leave it. */
  change<T>(id: string, next: (old: T | undefined) => T | undefined): Promise<boolean>;
};

/** A sentence instead where the browser keeps nothing; throws where a newer page keeps the workbooks. */
export async function openDatabase(version: number): Promise<Database | { readonly says: string }> {
  let database: IDBDatabase;
  try {
    const request = indexedDB.open(NAME, version);
    request.onupgradeneeded = () => {
      for (const name of [WORKBOOKS, FRONT])
        if (!request.result.objectStoreNames.contains(name)) request.result.createObjectStore(name);
    };
    database = await answerOf(request);
  } catch (error) {
    if ((error as Error).name === "VersionError") throw new Error(NEWER_STORE);
    return { says: (error as Error).message };
  }
  // A newer page waits until every older one lets go.
  database.onversionchange = () => database.close();
  return operations(database);
}

function operations(database: IDBDatabase): Database {
  const store = (name: string, mode: IDBTransactionMode): IDBObjectStore => {
    try {
      return database.transaction(name, mode).objectStore(name);
    } catch {
      throw new Error(NEWER_OPEN);
    }
  };
  return {
    get: async (id) => answerOf(store(WORKBOOKS, "readonly").get(id)),
    all: async () => answerOf(store(WORKBOOKS, "readonly").getAll()),
    latest: async () => answerOf(store(FRONT, "readonly").get(FRONT)),
    bringForward: async (id) => void (await answerOf(store(FRONT, "readwrite").put(id, FRONT))),
    async change(id, next) {
      const workbooks = store(WORKBOOKS, "readwrite");
      const { transaction } = workbooks;
      const done = new Promise<void>((resolve, reject) => {
        transaction.oncomplete = () => resolve();
        transaction.onabort = () => reject(new Error(FULL));
      });
      const wanted = next(await answerOf(workbooks.get(id)));
      if (wanted !== undefined) workbooks.put(wanted, id);
      await done;
      return wanted !== undefined;
    },
  };
}

const answerOf = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error ?? new Error("the browser's database failed"));
  });
