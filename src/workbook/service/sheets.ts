import type { Zone } from "../engine/library.ts";
import { engineName, placeOf } from "../engine/places.ts";
import { BORDERS, WRAPS } from "./appearance.ts";
import { strict } from "./guard.ts";
import { activate, makeRange } from "./range.ts";
import { newConditional, newValidation } from "./rules.ts";
import type { Session } from "./session.ts";
import { checkSheetName, makeSheet } from "./sheet.ts";
import { makeTextFinder } from "./text-finder.ts";
import { newTextStyle } from "./text-style.ts";
import { makeUi } from "./ui.ts";

type NamedRange = { readonly name: string; readonly range: { readonly sheetId: string; readonly zone: Zone } };

export const WORKBOOK_NAME = "Tern Quay Bakehouse";

/** The SpreadsheetApp a script sees. What it lacks throws; where Google is lenient it is strict. */
export function makeSpreadsheetApp(session: Session): object {
  const { guard } = session;
  const sheets = new Map<string, object>();
  const sheetOf = (sheetId: string): object => {
    const known = sheets.get(sheetId);
    if (known) return known;
    const newSheet = makeSheet(session, sheetId, sheetOf);
    sheets.set(sheetId, newSheet);
    return newSheet;
  };
  const spreadsheet = makeSpreadsheet(session, sheetOf);
  const open = (name: string) => {
    guard.open(name);
    return spreadsheet;
  };
  const named = (kinds: object) =>
    strict("SpreadsheetApp constants", Object.fromEntries(Object.keys(kinds).map((one) => [one, one])));
  return strict("SpreadsheetApp", {
    getUi: () => {
      if (guard.mode === "CUSTOM_FUNCTION") guard.forbid("SpreadsheetApp.getUi");
      return makeUi(session);
    },
    getActive: () => open("SpreadsheetApp.getActive"),
    getActiveSpreadsheet: () => open("SpreadsheetApp.getActiveSpreadsheet"),
    getActiveSheet: () => {
      open("SpreadsheetApp.getActiveSheet");
      return sheetOf(session.get("getActiveSheetId"));
    },
    getActiveRange: () => {
      open("SpreadsheetApp.getActiveRange");
      return activeRange(session, sheetOf);
    },
    flush: () => {
      guard.open("SpreadsheetApp.flush");
      session.flush();
      session.engine.settle();
    },
    newDataValidation: () => newValidation(session),
    newConditionalFormatRule: () => newConditional(session),
    newTextStyle,
    BorderStyle: named(BORDERS),
    WrapStrategy: named(WRAPS),
    ProtectionType: named({ RANGE: "", SHEET: "" }),
  });
}

function activeRange(session: Session, sheetOf: (sheetId: string) => object): object {
  const sheetId = session.get<string>("getActiveSheetId");
  return makeRange(session, { sheetId, zone: { ...session.get<Zone>("getSelectedZone") } }, sheetOf);
}

let lastSheet = 0;

function makeSpreadsheet(session: Session, sheetOf: (sheetId: string) => object): object {
  const { engine, guard, shown } = session;
  const ids = () => session.get<readonly string[]>("getSheetIds");
  const byName = (name: string) => ids().find((id) => session.get<string>("getSheetName", id) === engineName(name));
  const namedRanges = () => session.get<readonly NamedRange[]>("getNamedRanges");
  const find = (name: string) => namedRanges().find((one) => one.name.toLowerCase() === name.toLowerCase());
  const remove = (name: string) => {
    session.flush();
    if (!find(name)) throw new Error(`The named range ${name} does not exist`);
    engine.run("DELETE_NAMED_RANGE", { name });
  };
  const activateSheet = (sheetId: string) =>
    activate(session, { sheetId, zone: { left: 0, top: 0, right: 0, bottom: 0 } });

  return guard.made("Spreadsheet", {
    free: {
      getId: () => "local-workbook",
      getName: () => WORKBOOK_NAME,
      getSpreadsheetLocale: () => engine.locale.code,
      getSpreadsheetTimeZone: () => "Etc/UTC",
      getActiveSheet: () => sheetOf(session.get("getActiveSheetId")),
      getActiveRange: () => activeRange(session, sheetOf),
      createTextFinder: (text: unknown) =>
        makeTextFinder(session, text, (sheetId, left, top) =>
          makeRange(session, { sheetId, zone: { left, top, right: left, bottom: top } }, sheetOf),
        ),
      setActiveSheet: (sheet: object) => {
        activateSheet(placeOf(sheet).sheetId);
        return sheet;
      },
      setActiveRange: (range: object) => {
        activate(session, placeOf(range));
        return range;
      },
      toast: (text: string, title = "") => {
        guard.show("Spreadsheet.toast");
        shown.messages.push(title === "" ? String(text) : `${title}: ${text}`);
      },
    },
    reads: {
      getSheets: () => ids().map(sheetOf),
      getSheetByName: (name: string) => {
        const id = byName(String(name));
        return id === undefined ? null : sheetOf(id);
      },
      getRangeByName: (name: string) => {
        session.flush();
        const existing = find(name);
        if (!existing) return null;
        return makeRange(session, { sheetId: existing.range.sheetId, zone: { ...existing.range.zone } }, sheetOf);
      },
      getNamedRanges: () => {
        session.flush();
        return namedRanges().map(({ name, range }) =>
          guard.made("NamedRange", {
            free: {
              getName: () => name,
              getRange: () => makeRange(session, { sheetId: range.sheetId, zone: { ...range.zone } }, sheetOf),
            },
            writes: { remove: () => remove(name) },
          }),
        );
      },
    },
    writes: {
      insertSheet: (name: unknown, index?: number) => {
        checkSheetName(session, name);
        session.flush();
        const many = ids().length;
        const position =
          index ?? session.get<readonly string[]>("getSheetIds").indexOf(session.get("getActiveSheetId")) + 1;
        if (!Number.isInteger(position) || position < 0 || position > many)
          throw new Error(`insertSheet: there is no place ${index}`);
        const sheetId = `made-${++lastSheet}-${Math.random().toString(36).slice(2, 8)}`;
        engine.run("CREATE_SHEET", { sheetId, position, name: engineName(String(name)), cols: 26, rows: 1000 });
        activateSheet(sheetId);
        return sheetOf(sheetId);
      },
      deleteSheet: (sheet: object) => {
        const { sheetId } = placeOf(sheet);
        if (ids().length === 1) throw new Error("You can't remove all the sheets in a document.");
        session.forget(sheetId);
        session.flush();
        engine.run("DELETE_SHEET", { sheetId, sheetName: session.get("getSheetName", sheetId) });
      },
      setNamedRange: (name: string, range: object) => {
        checkRangeName(name);
        session.flush();
        const { sheetId, zone } = placeOf(range);
        const ranges = [{ _sheetId: sheetId, _zone: zone }];
        const known = find(name);
        if (known) engine.run("UPDATE_NAMED_RANGE", { oldRangeName: known.name, newRangeName: name, ranges });
        else engine.run("CREATE_NAMED_RANGE", { name, ranges });
      },
      removeNamedRange: remove,
    },
  });
}

/** Letters, digits and underscores; not like a cell (A1, R1C1), a truth value or a number. */
function checkRangeName(name: unknown): void {
  if (typeof name !== "string" || !/^[A-Za-z_]\w{0,249}$/.test(name))
    throw new Error(`${String(name)} is no name for a range`);
  if (/^(true|false)/i.test(name) || /^[a-z]{1,3}\d+$/i.test(name) || /^r\d*c\d*$/i.test(name)) {
    throw new Error(`${name} is no name for a range: it reads like a cell or a truth value`);
  }
}
