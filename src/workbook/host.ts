import { answerQuestion, type Served, type SheetListener } from "../planners/answer.ts";
import { type Checked, cellReaders } from "./cell-readers.ts";
import { nameCells } from "./engine/cell-names.ts";
import { type Engine, type LocaleCode, openEngine } from "./engine/engine.ts";
import type { WorkbookData } from "./engine/library.ts";
import { loadLibrary } from "./engine/library-node.ts";
import { openNodeRealm } from "./engine/realm-node.ts";
import { findCallable } from "./engine/stubs.ts";
import { makeEdits } from "./service/edits.ts";
import { makeScript, type Script, servicesFor } from "./service/script.ts";
import { type MenuItem, Session, type Shown } from "./service/session.ts";
import { serviceFailures } from "./service-failures.ts";
import { makeUserActions } from "./user-actions.ts";
import { makeFinder } from "./user-row-actions.ts";

export type SidebarAnswer = Served;

export type WorkbookHost = ReturnType<typeof openWorkbook>;

/**
 * Opens an empty workbook in Node with the built script in it. Everything is synchronous: after each call all formulas
 * are calculated. Every call fails loudly when a custom function did what it never may (NaN, null, a ragged list, a
 * TypeError).
 *
 *   const book = openWorkbook({ codeJs, sidebarHtml });
 *   book.answer({ ask: "build", template: "pan-loaf", values: { title: "Country loaf" } });
 *   book.type("Country loaf", "B7", "65%");
 *   expect(book.cell("Country loaf", "C7").value).toBeCloseTo(650);
 */
export function openWorkbook(how: {
  readonly codeJs: string;
  /** Left out, the script has no page that it could show. */
  readonly sidebarHtml?: string;
  readonly locale?: LocaleCode;
  readonly data?: WorkbookData;
}) {
  const engine = openEngine(loadLibrary(), {
    stubs: findCallable(how.codeJs),
    ...(how.locale === undefined ? {} : { locale: how.locale }),
    ...(how.data === undefined ? {} : { data: how.data }),
  });
  const session = new Session(engine, new Map(how.sidebarHtml === undefined ? [] : [["sidebar", how.sidebarHtml]]));
  const script = makeScript(session, openNodeRealm(how.codeJs, servicesFor(session)));
  engine.attach(script);
  return makeHost(engine, session, script);
}

function makeHost(engine: Engine, session: Session, script: Script) {
  const { guard, shown } = session;
  const checked: Checked = (result) => {
    if (engine.defects.length > 0)
      throw new Error(`Defects in custom functions: ${[...new Set(engine.defects)].join("; ")}`);
    return result;
  };
  // As soon as it is done, unless a test holds it back.
  const edits = makeEdits(session, script, ({ answer }) => answer());
  const finder = makeFinder(session);
  const { sheetId, sheetNames } = finder;
  const menu = (): readonly MenuItem[] => {
    shown.menu = undefined;
    script.run("NONE", "onOpen", [{ authMode: "NONE" }]);
    const opened = shown.menu as Shown["menu"];
    if (opened === undefined) throw new Error("onOpen made no menu");
    return opened.items;
  };

  // The calls of all steps of a question; whatever runs afterwards begins a trail of its own.
  let trail: string[] = [];
  let latest = guard.trail;
  const serve = (json: string): Served => {
    const reply = script.serve("answerSidebar", [json]);
    latest = guard.trail;
    trail.push(...latest);
    if (typeof reply !== "string") throw new Error("answerSidebar did not return a text");
    const answer = JSON.parse(reply) as Served;
    if (answer.ok !== true && typeof answer.message !== "string")
      throw new Error(`answerSidebar returned ${reply.slice(0, 200)}`);
    return checked(answer);
  };
  const keepNames: SheetListener = (sheet, names) => {
    const zones = Array.from(names, ([name, { row, column, rows, columns }]) => ({
      name,
      zone: { left: column, top: row, right: column + columns - 1, bottom: row + rows - 1 },
    }));
    const { type, payload } = nameCells(sheetId(sheet), zones);
    engine.run(type, payload);
  };
  const ask = (request: unknown): SidebarAnswer => {
    trail = [];
    return answerQuestion(request, serve, keepNames);
  };

  return {
    engine,
    session,
    script,
    /** What the script showed: menu, sidebar, messages (alerts, toasts, `log: …`). */
    shown,
    /** Asks as a panel of the sidebar does: what the sidebar plans is planned here, JSON both ways at each step. */
    ask,
    /** The answer itself; throws the sentence when the sidebar refuses. */
    answer(request: unknown): unknown {
      const reply = ask(request);
      if (!reply.ok) throw new Error(reply.message);
      return reply.answer;
    },
    /** Runs onOpen as for a person who installed the add-on but has not used it here (mode NONE). */
    menu,
    /** Clicks an item of the menu. */
    runMenu(caption: string): unknown {
      const items = menu();
      const item = items.find((one) => one !== "separator" && one.caption === caption);
      if (item === undefined || item === "separator") throw new Error(`The menu has no item "${caption}"`);
      return checked(script.run("FULL", item.functionName));
    },
    ...cellReaders(engine, session, finder, checked),
    sheetNames,
    sheetId,
    ...makeUserActions({ engine, session, finder, edits, checked }),
    /** Edits wait until they are answered, two at most, as where a person types faster than the add-on answers. */
    holdEdits: () => edits.hold(),
    answerEdits: () => checked(edits.answer()),
    /** Takes the custom functions away, as if the add-on were missing: every formula that calls one shows #NAME?. */
    removeFunctions: () => {
      engine.attach({ ...script, has: () => false });
      edits.silence(true);
    },
    restoreFunctions: () => {
      engine.attach(script);
      edits.silence(false);
    },
    /** Calls of the script that read or wrote the document, since the workbook was opened. */
    get serviceCalls(): number {
      return guard.calls;
    },
    /** Their names in the latest question, all its steps together. */
    get trail(): readonly string[] {
      return [...(guard.trail === latest ? trail : guard.trail)];
    },
    ...serviceFailures(engine, session, script),
  };
}
