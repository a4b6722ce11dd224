import { type Engine, openEngine } from "../engine/engine.ts";
import type { Library, Position } from "../engine/library.ts";
import { findCallable } from "../engine/stubs.ts";
import { makeEdits } from "../service/edits.ts";
import { noteAt } from "../service/range-writers.ts";
import { makeScript, type Script, servicesFor } from "../service/script.ts";
import { Session } from "../service/session.ts";
import { csvText } from "../xlsx/csv.ts";
import { googleFor } from "./client-run.ts";
import { buildDemo, rememberFront } from "./demo.ts";
import { download } from "./download.ts";
import { type Grid, startEmpty } from "./first-key.ts";
import type { Home } from "./home.ts";
import { openPageRealm } from "./realm.ts";
import { keepEverything } from "./saving.ts";
import { closeSidebar, openSidebar, showSidebar } from "./sidebar-frame.ts";
import { byId, sentence, tell } from "./status.ts";
import { tidyPercent } from "./tidy-percent.ts";

type Owl = { App: new (component: unknown, how: object) => { mount(target: Element): Promise<Grid> } };
declare global {
  interface Window {
    o_spreadsheet: Library;
    owl: Owl;
    gramwrightGoogle: (client: Window) => object;
  }
}

async function open(home: Home): Promise<void> {
  byId("address").textContent = home.where;
  const [code, templates, stored] = await Promise.all([home.code(), home.templates(), home.store.load()]);
  home.begun?.();
  const engine = openEngine(window.o_spreadsheet, {
    stubs: findCallable(code),
    ...(stored.data === undefined ? {} : { data: stored.data }),
  });
  // The frame is given the page itself: here it is only known to be there.
  const session = new Session(engine, new Map([["sidebar", '<p id="not-whole"></p>']]));
  const script = makeScript(session, openPageRealm(code, servicesFor(session), home.nonce));
  engine.attach(script);
  window.gramwrightGoogle = (client) => {
    const added = session.shown.sidebar?.added ?? "";
    client.document.addEventListener("DOMContentLoaded", () =>
      client.document.body.insertAdjacentHTML("beforeend", added),
    );
    return googleFor(client, script, closeSidebar);
  };
  await mountGrid(engine, templates);
  byId("save").addEventListener("click", () => void save(home, engine));
  byId("save-csv").addEventListener("click", () => saveCsv(engine));
  byId("sidebar-close").addEventListener("click", closeSidebar);
  answerEdits(session, script);
  showMenu(home, session, script);
  openSidebar(home, session, script);
  await buildDemo(engine, script, tell);
  keepEverything(engine, stored, home.store, tell);
  if (stored.says !== undefined) tell(stored.says, true);
  rememberFront(engine);
  followSelection(engine, session);
  movesByF6();
  home.added?.(engine, tell);
}

async function mountGrid(engine: Engine, templates: string): Promise<void> {
  const props = {
    model: engine.model,
    notifyUser: ({ text: says }: { text: string }) => tell(says, true),
    raiseError: (says: string, then?: () => void) => {
      tell(refusedEntry(engine, says), true);
      then?.();
    },
    askConfirmation: (says: string, yes: () => void, no?: () => void) => (window.confirm(says) ? yes() : no?.()),
  };
  const { Spreadsheet, stores } = window.o_spreadsheet;
  tidyPercent(stores.CellComposerStore);
  startEmpty(await new window.owl.App(Spreadsheet, { props, templates }).mount(byId("grid")), stores.CellComposerStore);
}

/** The service answers an edit a moment later. */
const ANSWER_MS = 150;

function answerEdits(session: Session, script: Script): void {
  let isDue = false;
  makeEdits(session, script, ({ answer }) => {
    if (isDue) return;
    isDue = true;
    window.setTimeout(() => {
      isDue = false;
      answer();
    }, ANSWER_MS);
  });
}

function showMenu(home: Home, session: Session, script: Script): void {
  script.run("NONE", "onOpen", [{ authMode: "NONE" }]);
  const items = session.shown.menu?.items ?? [];
  const buttons = items.flatMap((item) => {
    if (item === "separator") return [];
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = item.caption;
    button.addEventListener("click", () => runMenuItem(home, session, script, item.functionName));
    return [button];
  });
  byId("menu").replaceChildren(...buttons);
}

function runMenuItem(home: Home, session: Session, script: Script, functionName: string): void {
  session.shown.sidebar = undefined;
  session.shown.messages = [];
  try {
    script.run("FULL", functionName);
  } catch (error) {
    tell(sentence(error), true);
    return;
  }
  const message = session.shown.messages.filter((one) => !one.startsWith("log: ")).pop();
  if (message !== undefined) tell(message);
  if (session.shown.sidebar !== undefined) showSidebar(home, session);
}

/** In a grid the Tab key goes to the next cell; F6 goes on from menu to sheet to sidebar. */
function movesByF6(): void {
  const frame = byId<HTMLIFrameElement>("sidebar-frame");
  const regions: readonly (() => HTMLElement | null)[] = [
    () => document.querySelector("body > header button"),
    () => document.querySelector("#grid .o-grid [tabindex], #grid .o-grid input, #grid .o-grid"),
    () => (byId("sidebar").hidden ? null : frame),
  ];
  const next = (event: KeyboardEvent) => {
    if (event.key !== "F6") return;
    event.preventDefault();
    const active = document.activeElement;
    const at = active === frame ? 2 : byId("grid").contains(active) ? 1 : 0;
    const steps = event.shiftKey ? [2, 1] : [1, 2];
    const match = steps.map((step) => regions[(at + step) % 3]?.()).find((one) => one);
    if (match === frame) frame.contentWindow?.focus();
    match?.focus();
  };
  window.addEventListener("keydown", next, { capture: true });
  frame.addEventListener("load", () => frame.contentWindow?.addEventListener("keydown", next));
  frame.contentWindow?.addEventListener("keydown", next);
}

/** An entry that the grid refused: the cell, and what its rule asks for; the entry before it stays. */
function refusedEntry(engine: Engine, says: string): string {
  const [, cell] = /entered in ([A-Z]+\d+) violates/.exec(says) ?? [];
  const help = helpAt(engine, engine.get<Position>("getActivePosition"));
  return cell === undefined || help === "" ? says : `${cell} was left as it was. ${help}`;
}

const helpAt = (engine: Engine, position: Position): string =>
  engine.get<{ help?: string } | undefined>("getValidationRuleForCell", position)?.help ?? "";

/** The status line says what belongs to the selected cell: its error's sentence, its note, its rule's help. */
function followSelection(engine: Engine, session: Session): void {
  let last = "";
  engine.model.on("update", followSelection, () => {
    if (engine.defects.length > 0) return tell(engine.defects[engine.defects.length - 1] ?? "", true);
    const position = engine.get<Position>("getActivePosition");
    const { message, type } = engine.evaluated(position);
    const says = type === "error" ? (message?.toString() ?? "") : noteAt(session, position) || helpAt(engine, position);
    if (says === last) return;
    last = says;
    tell(says, type === "error");
  });
}

async function save(home: Home, engine: Engine): Promise<void> {
  try {
    download(await home.xlsx(engine), "tern-quay-bakehouse.xlsx");
    tell("Saved as tern-quay-bakehouse.xlsx. Cells of BAKE_ functions are kept values there, slanted on grey.");
  } catch (error) {
    tell(`The workbook could not be saved: ${sentence(error)}`, true);
  }
}

/** The sheet in front, with the mark that tells spreadsheets that it is UTF-8. */
function saveCsv(engine: Engine): void {
  const sheetId = engine.get<string>("getActiveSheetId");
  const name = `${engine.get<string>("getSheetName", sheetId).replace(/[\\/:*?"<>|]+/g, " ")}.csv`;
  try {
    download(new Blob([`\ufeff${csvText(engine, sheetId)}`], { type: "text/csv;charset=utf-8" }), name);
    tell(`Saved as ${name}: values only. Its last column names the cells that only Gramwright fills.`);
  } catch (error) {
    tell(`The sheet could not be saved: ${sentence(error)}`, true);
  }
}

/** Opens the workbook of a home in this page. */
export function openPage(home: Home): void {
  // The engine tells the time of every command there.
  console.debug = () => {};
  open(home).catch((error: unknown) => {
    tell(`The workbook could not be opened: ${sentence(error)}`, true);
    throw error;
  });
}
