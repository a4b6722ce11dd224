// The two pages that are handed over, on a disk as a person has them; a small page at the same path puts a workbook into the browser first.
import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { packedFiles } from "../../src/build/pack.ts";
import { keptText } from "../../src/workbook/file/file-text.ts";
import { workbook } from "../templates/sheet-support.ts";

export const LOCAL = "gramwright-local.html";
export const INSTALL = "gramwright-install.html";
export const ID = "a-workbook-of-the-test";

export type Pages = Awaited<ReturnType<typeof writePages>>;

/** The pages in a folder of their own. */
export async function writePages() {
  const folder = mkdtempSync(join(tmpdir(), "gramwright-pack-"));
  const packed = await packedFiles();
  const local = String(packed[LOCAL]);
  const write = (name: string, text: string): string => {
    writeFileSync(join(folder, name), text);
    return pathToFileURL(join(folder, name)).href;
  };
  return {
    folder,
    local,
    write,
    install: write(INSTALL, String(packed[INSTALL])),
    /** The page as a newer Gramwright would pack it: what it keeps in the browser is of a later version. */
    newer: local.replace(/data-store="(\d+)"/, (_, version: string) => `data-store="${Number(version) + 1}"`),
    files: Object.fromEntries(
      ["Code.js", "sidebar.html", "appsscript.json"].map((name) => [name, readFileSync(`dist/${name}`, "utf8")]),
    ),
  };
}

/** A page that keeps a workbook as the local page does, and says when it is there. */
export async function seedPage(): Promise<string> {
  const book = await workbook();
  book.type("Sheet1", "A1", "Left from yesterday");
  const text = keptText(JSON.stringify(book.engine.data()));
  const entry = { id: ID, text, revision: "first", at: Date.now() - 86_400_000, by: "0.1.0" };
  return `<!doctype html><title>waiting</title><script>
const asked = indexedDB.open("gramwright", 1);
asked.onupgradeneeded = () => ["workbooks", "front"].forEach((name) => asked.result.createObjectStore(name));
asked.onsuccess = () => {
  const all = asked.result.transaction(["workbooks", "front"], "readwrite");
  all.objectStore("workbooks").put(${JSON.stringify(entry).replace(/</g, "\\u003c")}, ${JSON.stringify(ID)});
  all.objectStore("front").put(${JSON.stringify(ID)}, "front");
  all.oncomplete = () => { asked.result.close(); document.title = "seeded"; };
};
</script>`;
}
