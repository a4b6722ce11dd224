// The page that is one file: what a server would give stands in it, and the browser keeps the workbook.
import { type Engine, openEngine } from "../engine/engine.ts";
import { keptText } from "../file/file-text.ts";
import { xlsxBytes } from "../xlsx/xlsx.ts";
import {
  type BrowserStore,
  type Entry,
  FIRST,
  isFileDue,
  NOT_KEPT,
  openBrowserStore,
  readFile,
} from "./browser-store.ts";
import { download } from "./download.ts";
import { type Home, type Tell, withShim } from "./home.ts";
import { revisionOf } from "./revision.ts";

const byId = <T extends HTMLElement>(id: string): T => {
  const match = document.getElementById(id);
  if (!match) throw new Error(`The page has no #${id}`);
  return match as T;
};

/** A text that stands in the page as JSON, to the byte. */
const carried = (id: string): string => JSON.parse(byId(id).textContent ?? "") as string;

const WHERE = "Kept in this browser only. The saved file is the record.";
const FILE = "gramwright-workbook";
const REMIND_MS = 60_000;

export function fileHome(): Home {
  const version = Number(document.documentElement.dataset.store);
  const store = openBrowserStore(version, decodeURIComponent(location.hash.slice(1)));
  addDialogs(store);
  return {
    store,
    where: `${WHERE} · F6 moves on`,
    nonce: "",
    code: async () => carried("code-js"),
    templates: async () => carried("engine-templates"),
    showSidebar: (frame) => {
      frame.srcdoc = withShim(carried("sidebar-html"));
    },
    xlsx: async (engine) => new Blob([new Uint8Array(await xlsxBytes(engine))]),
    begun: () => void remind(store),
    added(engine, tell) {
      // The tab goes on with its own workbook, also where another tab opens another one.
      location.hash = store.id();
      byId("save-file").hidden = false;
      byId("save-file").addEventListener("click", () => void saveFile(store, engine, tell));
      void remind(store);
      setInterval(() => void remind(store), REMIND_MS);
    },
  };
}

/** Opening a file and reading the licences need no workbook, so that a person gets on where the kept one does not open. */
function addDialogs(store: BrowserStore): void {
  for (const id of ["open-file", "licences"]) byId(id).hidden = false;
  byId("open-file").addEventListener("click", () => void showOpening(store).catch(refuse));
  byId("licences").addEventListener("click", () => {
    byId<HTMLTextAreaElement>("licence-words").value ||= carried("licence-list");
    byId<HTMLDialogElement>("licence-texts").showModal();
  });
  for (const button of document.querySelectorAll("dialog button.close"))
    button.addEventListener("click", () => button.closest("dialog")?.close());
  const chosen = byId<HTMLInputElement>("chosen-file");
  chosen.addEventListener("change", () => void openChosen(store, chosen));
}

async function saveFile(store: BrowserStore, engine: Engine, tell: Tell): Promise<void> {
  const json = engine.text();
  const day = new Date();
  const date = [day.getFullYear(), day.getMonth() + 1, day.getDate()].map((part) => String(part).padStart(2, "0"));
  const name = `${FILE}.${date.join("-")}.json`;
  const text = keptText(json);
  download(new Blob([`{"id":${JSON.stringify(store.id())},${text.slice(1)}`], { type: "application/json" }), name);
  await store.noteFiled(await revisionOf(text));
  await remind(store);
  tell(`Saved as ${name}. Put it where you keep the shop’s records.`);
}

const NEVER_FILED =
  "No file holds this workbook yet. Choose “Save as file”: clearing the browser’s data would take all of it away.";
const FILE_DUE = "What was entered since the last file is in this browser only. Choose “Save as file” today.";

/** The line is there while a day's work is in no file. */
async function remind(store: BrowserStore): Promise<void> {
  const stored = await store.entry().catch(() => undefined);
  const says = !store.isKept()
    ? NOT_KEPT
    : store.isFirst()
      ? FIRST
      : stored?.filed === undefined
        ? NEVER_FILED
        : FILE_DUE;
  byId("reminder").hidden = store.isKept() && stored !== undefined && !isFileDue(stored, Date.now());
  if (byId("reminder-says").textContent !== says) byId("reminder-says").textContent = says;
}

async function showOpening(store: BrowserStore): Promise<void> {
  const entries = [...(await store.all())].sort((a, b) => b.at - a.at);
  const here = entries.find(({ id }) => id === store.id());
  const others = entries.filter((one) => one !== here);
  byId("kept-here").replaceChildren(
    ...(here?.before ? [choice(`As it was on ${when(here.before.at)}`, () => store.takeBefore())] : []),
    ...others.map((one) => choice(`${sheetsOf(one)}, of ${when(one.at)}`, () => store.take(one.text, one.id))),
  );
  byId("kept-title").hidden = byId("kept-here").childElementCount === 0;
  byId("opening-says").textContent = "";
  byId<HTMLDialogElement>("opening").showModal();

  function choice(text: string, act: () => Promise<void>): HTMLElement {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = text;
    button.addEventListener("click", () => void act().then(() => goOn(store), refuse));
    const item = document.createElement("li");
    item.append(button);
    return item;
  }
}

const when = (at: number): string => new Date(at).toLocaleString(undefined, { dateStyle: "long", timeStyle: "short" });

/** The first sheets of a kept workbook, as a person knows it by. */
function sheetsOf({ text }: Entry): string {
  const { data } = JSON.parse(text) as { data: { sheets: readonly { name: string }[] } };
  const names = data.sheets.map(({ name }) => name);
  return `${names.slice(0, 3).join(", ")}${names.length > 3 ? " …" : ""}`;
}

async function openChosen(store: BrowserStore, chosen: HTMLInputElement): Promise<void> {
  const [file] = chosen.files ?? [];
  chosen.value = "";
  if (file === undefined) return;
  try {
    const { text, id, data } = readFile(file.name, await file.text());
    try {
      openEngine(window.o_spreadsheet, { data });
    } catch {
      throw new Error(`“${file.name}” cannot be opened. Nothing was changed. Choose an earlier file.`);
    }
    await store.take(text, id);
    goOn(store);
  } catch (error) {
    refuse(error as Error);
  }
}

function refuse({ message }: Error): void {
  byId("opening-says").textContent = message;
}

/** Opens the workbook that the store has in front now. */
function goOn(store: BrowserStore): void {
  location.hash = store.id();
  location.reload();
}
