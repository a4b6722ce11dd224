import { answerQuestion, type Served, type SheetListener } from "../planners/answer.ts";
import { nameCells } from "./engine/cell-names.ts";
import { cellValue } from "./engine/custom.ts";
import { type Engine, type LocaleCode, openEngine } from "./engine/engine.ts";
import type { Position, WorkbookData } from "./engine/library.ts";
import { loadLibrary } from "./engine/library-node.ts";
import { knowWaiting } from "./engine/patches/errors.ts";
import { openNodeRealm } from "./engine/realm-node.ts";
import { findCallable } from "./engine/stubs.ts";
import { makeEdits } from "./service/edits.ts";
import { noteAt } from "./service/range.ts";
import { makeScript, type Script, servicesFor } from "./service/script.ts";
import { type MenuItem, Session, type Shown } from "./service/session.ts";
import { type Finder, makeFinder, makeUserActions } from "./user-actions.ts";

export type HostCell = {
  /** As a script reads it: "" for a blank cell, the text of an error, a Date for a date. */
  readonly value: unknown;
  readonly shown: string;
  /** As a script wrote it, with `;`; undefined when the cell has none (also in a cell that a spill fills). */
  readonly formula: string | undefined;
  /** The sentence behind an error. */
  readonly message: string | undefined;
  readonly format: string;
  readonly note: string;
};

export type BenchAnswer = Served;

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
  const session = new Session(engine, new Set(how.sidebarHtml === undefined ? [] : ["sidebar"]));
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
  const ask = (request: unknown): BenchAnswer => {
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

/** Calls that take their time, as on the live service. */
function unansweredCalls(engine: Engine, { guard }: Session, script: Script) {
  let forget = () => {};
  const answerCalls = () => {
    guard.onRead = undefined;
    forget();
    forget = () => {};
    engine.attach(script);
  };
  return {
    /**
     * From now on no call has answered yet: its cell holds an error, `Loading...` or what the spreadsheet's language says for it, and
     * scripts read that text. Calls answer once values were read so many times, or with `answerCalls`.
     */
    holdCalls(text = "Loading...", reads = Number.POSITIVE_INFINITY): void {
      let left = reads;
      forget();
      forget = knowWaiting(engine.library, text);
      guard.onRead = (name) => {
        if (!name.endsWith("getValues")) return;
        if (left === 0) answerCalls();
        left -= 1;
      };
      engine.attach({ ...script, waiting: () => text });
    },
    answerCalls,
  };
}

type Checked = <T>(result: T) => T;

/** What stands in cells: what a script reads, and what the grid shows. */
function cellReaders(engine: Engine, session: Session, { sheetId, zone, position }: Finder, checked: Checked) {
  const grid = <T>(sheet: string, a1: string, of: (at: Position) => T): T[][] => {
    const id = sheetId(sheet);
    const { left, top, right, bottom } = zone(id, a1);
    return Array.from({ length: bottom - top + 1 }, (_, down) =>
      Array.from({ length: right - left + 1 }, (_, across) => of({ sheetId: id, col: left + across, row: top + down })),
    );
  };
  const valueAt = (at: Position) => cellValue(engine.library, session.Date, engine.evaluated(at));

  return {
    cell(sheet: string, a1: string): HostCell {
      const at = position(sheet, a1);
      const { formattedValue, message, format } = engine.evaluated(at);
      return checked({
        value: valueAt(at),
        shown: formattedValue,
        formula: engine.formula(at),
        message: message?.toString(),
        format: format ?? "",
        note: noteAt(session, at),
      });
    },
    /** Values of a range, rows first, as a script reads them. */
    values: (sheet: string, a1: string): unknown[][] => checked(grid(sheet, a1, valueAt)),
    /** What a range shows, rows first. */
    shownTexts: (sheet: string, a1: string): string[][] =>
      checked(grid(sheet, a1, (at) => engine.evaluated(at).formattedValue)),
    formulas: (sheet: string, a1: string): (string | undefined)[][] => grid(sheet, a1, (at) => engine.formula(at)),
    /** The rectangle from A1 to the last filled cell, in A1 notation; "A1" for an empty sheet. */
    usedRange(sheet: string): string {
      const id = sheetId(sheet);
      const filled = session
        .get<readonly { col: number; row: number }[]>("getEvaluatedCellsPositions", id)
        .filter(({ col, row }) => engine.evaluated({ sheetId: id, col, row }).type !== "empty");
      const last = engine.library.helpers.toXC(
        Math.max(0, ...filled.map(({ col }) => col)),
        Math.max(0, ...filled.map(({ row }) => row)),
      );
      return last === "A1" ? "A1" : `A1:${last}`;
    },
  };
}

/** What may go wrong while the script calls the service. */
function serviceFailures(engine: Engine, session: Session, script: Script) {
  const { guard } = session;
  return {
    ...unansweredCalls(engine, session, script),
    /** Makes the n-th service call from now fail once, as Google's service sometimes does; undefined takes it back. */
    failAt: (call: number | undefined) => guard.failAt(call),
    /** Makes the n-th service call from now fail and `many` in all, as in an outage; `failAt(undefined)` takes it back. */
    failFrom: (call: number, many = Number.POSITIVE_INFINITY) => guard.failAt(call, { many }),
    /** Has the n-th service call from now carried out and fail all the same, as where its answer gets lost; `many` fail in all. */
    loseAnswer: (call: number, many = 1) => guard.failAt(call, { many, isDone: true }),
    /** What another person does right before the n-th service call from now. */
    meanwhile: (call: number, act: () => void) =>
      guard.beforeCall(call, () => {
        session.flush();
        act();
      }),
    /** From now on it is the workbook of a person who may only view it, or not. */
    setViewer: (isViewer: boolean) => {
      guard.isViewer = isViewer;
    },
  };
}
