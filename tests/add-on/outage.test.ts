// The spreadsheet's service fails at each call of a build in turn, for a while, from each call on, and after it did what it
// was asked: the workbook is as before, or the sentence names what is left in it. A long run tries every call; otherwise one call
// of each question fails.
import { afterEach, describe, expect, test, vi } from "vitest";
import { look } from "../../src/add-on/look.ts";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { IS_LONG, someOf } from "../kit/scale.ts";
import { HANDOUT } from "../templates/sheet-support.ts";
import { addedTo, build, LIST, openShop, QUESTIONS, type Question, stateOf } from "./shop.ts";

const NO_ROW = /It may have no row in the formula list/;
const OLDER_LIST = /The older formula list may not be in use any more: build the list again\./;

type Fails = (book: WorkbookHost, call: number) => void;
/** How the service fails, and at which calls a sheet can be left then. */
const FAILURES: readonly (readonly [how: string, fails: Fails, leaves: (call: string | undefined) => boolean])[] = [
  ["once", (book, call) => book.failAt(call), () => false],
  ["for three calls", (book, call) => book.failFrom(call, 3), () => true],
  ["from there on", (book, call) => book.failFrom(call), () => true],
  // A new sheet that the service does not tell of is not known from another person's of that name.
  ["after it did what it was asked", (book, call) => book.loseAnswer(call), (call) => call === "insertSheet"],
  ["after it did what it was asked, and from there on", (book, call) => book.loseAnswer(call, EVER), () => true],
];
/** At each call in turn, and from each on. */
const EVERY = new Set(["once", "from there on"]);
const EVER = Number.POSITIVE_INFINITY;
const mayBeLeft = (name: string) => `An empty sheet “${name}” may be left: delete it, unless another person added it.`;

/** Asks with one failure, follows what is said of it, and gives whether it left something. */
function mustTell(book: WorkbookHost, asked: object, call: number, fails: Fails): boolean {
  const before = stateOf(book);
  fails(book, call);
  const reply = book.ask(asked);
  book.failAt(undefined);
  const after = stateOf(book);
  const { trail } = book;
  const added = addedTo(before, after);
  for (const name of added) book.deleteSheet(name);
  const note = reply.ok ? ((reply.answer as { note?: string }).note ?? "") : "";
  // A list has a row more where all went well, and perhaps where it is said to be missing; a new one has the name of the older.
  const isWhole = reply.ok && !NO_ROW.test(note);
  for (const [name, was] of before.sheets)
    if (!reply.ok || name !== LIST) expect(after.sheets.get(name), name).toBe(was);
  if (!isWhole && !(!reply.ok && OLDER_LIST.test(reply.message))) expect(stateOf(book).names).toBe(before.names);
  if (reply.ok) {
    const { sheet } = reply.answer as { sheet: string };
    expect(added).toContain(sheet);
    const empty = added.filter((name) => name !== sheet);
    for (const name of empty) {
      expect(after.sheets.get(name), name).toBe("{}");
      expect(note).toContain(mayBeLeft(name));
    }
    if (empty.length === 0) expect(note).not.toMatch(/may be left/);
    return empty.length > 0;
  }
  if (added.length === 0) {
    // Where the service does not say either whether the sheet is there, nobody knows.
    const isUnknown = trail[call - 1] === "insertSheet" && /An empty sheet “.*” may be left/.test(reply.message);
    if (!OLDER_LIST.test(reply.message) && !isUnknown)
      expect(reply.message).toMatch(/nothing was changed|nothing was built|could not be read/);
    return false;
  }
  expect(reply.message).not.toMatch(/nothing was/);
  for (const name of added)
    expect([mayBeLeft(name), `“${name}” is left: delete it`].some((told) => reply.message.includes(told))).toBe(true);
  return true;
}

describe("where the service fails", () => {
  let left = 0;
  const shops = new Map<string, WorkbookHost>();
  /** The shop that questions share: what each builds is deleted again. */
  const shared = async (kind: Question["kind"] = "plain"): Promise<WorkbookHost> => {
    const book = shops.get(kind) ?? (await openShop(kind));
    shops.set(kind, book);
    return book;
  };

  /** Without a trail of the question a call is taken at random, but the same each time; not every question makes so many. */
  const MOST_CALLS = 29;
  let failed = 0;

  test.skipIf(IS_LONG).each(QUESTIONS.map((one, at) => [one.what, one, at] as const))(
    "one call of %s",
    async (_what, { asked, kind: shop = "plain" }, at) => {
      const book = await shared(shop);
      const before = stateOf(book);
      const [how, fails, leaves] = FAILURES[at % FAILURES.length] as (typeof FAILURES)[number];
      const call = 1 + ((at * 11) % MOST_CALLS);
      try {
        const isLeft = mustTell(book, asked, call, fails);
        const name = book.trail[call - 1];
        if (!leaves(name)) expect(isLeft).toBe(false);
        if (isLeft) left += 1;
        if (name !== undefined) failed += 1;
      } catch (error) {
        throw new Error(`${how}, call ${call} (${book.trail[call - 1]}): ${(error as Error).message}`);
      }
      if (stateOf(book).names !== before.names) shops.delete(shop);
    },
  );

  test.runIf(IS_LONG).each(QUESTIONS.map((one, at) => [one.what, one, at] as const))(
    "%s",
    async (_what, question, at) => {
      const { asked, kind: shop = "plain" } = question;
      const book = await shared(shop);
      const before = stateOf(book);
      book.answer(asked);
      const trail = book.trail;
      for (const name of addedTo(before, stateOf(book))) book.deleteSheet(name);
      expect(trail.length).toBeGreaterThan(15);
      for (const [how, fails, leaves] of FAILURES) {
        const all = Array.from({ length: trail.length + 1 }, (_, index) => index + 1);
        // The rarer ways take every third call.
        for (const call of all.filter((one) => EVERY.has(how) || one % 3 === at % 3)) {
          try {
            const isLeft = mustTell(book, asked, call, fails);
            if (!leaves(trail[call - 1])) expect(isLeft).toBe(false);
            if (isLeft) left += 1;
          } catch (error) {
            throw new Error(`${how}, call ${call} (${trail[call - 1]}): ${(error as Error).message}`);
          }
        }
      }
      // Another list has the older one's name now, or none has; and after hundreds of builds a workbook is slow.
      shops.delete(shop);
    },
  );

  test("some of that left a sheet", () => {
    expect(left).toBeGreaterThan(IS_LONG ? 500 : 1);
    if (!IS_LONG) expect(failed).toBeGreaterThan(QUESTIONS.length * 0.7);
  });
});

const BUILDERS = QUESTIONS.filter(({ what }) => ["cake", "a day", "a list", "a card of values"].includes(what));
describe("where the new sheet is added and the service does not say so", () => {
  test.each(someOf(BUILDERS, 2, 1).map(({ what, asked }) => [what, asked] as const))(
    "%s is built under the next name, and the empty sheet is told of",
    async (_what, asked) => {
      const book = await openShop();
      const { sheet } = book.answer(asked) as { sheet: string };
      const at = book.trail.indexOf("insertSheet") + 1;
      book.deleteSheet(sheet);
      const before = stateOf(book);
      book.loseAnswer(at);
      const answer = book.answer(asked) as { sheet: string; note?: string };
      expect(answer.sheet).toBe(`${sheet} (2)`);
      expect(answer.note).toContain(mayBeLeft(sheet));
      expect(addedTo(before, stateOf(book)).sort()).toEqual([sheet, answer.sheet].sort());
      for (const name of [sheet, answer.sheet]) book.deleteSheet(name);
      // Nor does it say anything afterwards: once more the sentence is all that a person has to go by.
      book.loseAnswer(at, EVER);
      const reply = book.ask(asked);
      book.failAt(undefined);
      expect(reply).toMatchObject({
        ok: false,
        message: expect.stringMatching(/^The sheet could not be built: Service [^.]*\. An empty sheet “/),
      });
      expect(reply).toMatchObject({ message: expect.stringContaining(mayBeLeft(sheet)) });
      expect(addedTo(before, stateOf(book))).toEqual([sheet]);
    },
  );
});

test("a list that its owner locked keeps nobody from building: the row is said to be missing", async () => {
  const book = await openShop("listed");
  book.answer(build("pan-loaf", HANDOUT));
  const at = book.trail.indexOf("appendRow") + 1;
  const before = book.shownTexts(LIST, book.usedRange(LIST));
  book.failAt(at);
  expect(book.answer(build("pan-loaf", { ...HANDOUT, title: "Late loaf" }))).toMatchObject({
    sheet: "Late loaf",
    note: expect.stringMatching(
      /^It may have no row .* ask its owner to let you edit it\. Price and production sheets find/,
    ),
  });
  expect(book.shownTexts(LIST, book.usedRange(LIST))).toEqual(before);
  // And so they do.
  const { sheets } = book.answer({ ask: "formulas" }) as { sheets: { sheet: string }[] };
  expect(sheets.map(({ sheet }) => sheet)).toContain("Late loaf");
});

test("a list that is left half-made, and the name that it took, go when the sentence is followed", async () => {
  const book = await openShop("listed");
  const before = stateOf(book);
  const fresh = book.answer({ ask: "list" }) as { sheet: string };
  const named = book.trail.indexOf("setNamedRange") + 1;
  book.deleteSheet(fresh.sheet);
  book.answer({ ask: "list" });
  const [older] = addedTo(before, stateOf(book));
  // Its name is given, and then nothing works any more.
  book.failFrom(named + 1);
  const reply = book.ask({ ask: "list" });
  book.failAt(undefined);
  const [half] = addedTo(before, stateOf(book)).filter((name) => name !== older);
  expect(reply).toMatchObject({ ok: false, message: expect.stringContaining(`“${half}” is left: delete it`) });
  expect(reply).toMatchObject({ message: expect.stringMatching(OLDER_LIST) });
  book.deleteSheet(half ?? "");
  const again = book.answer({ ask: "list" }) as { sheet: string };
  book.answer(build("pan-loaf", { ...HANDOUT, title: "Listed loaf" }));
  expect(book.shownTexts(again.sheet, book.usedRange(again.sheet)).flat()).toContain("Listed loaf");
});

describe("a chart's tab in front", () => {
  afterEach(() => vi.unstubAllGlobals());
  const tab = (type: string) => ({
    getName: () => "Sales chart",
    getSheetId: () => 5,
    getType: () => type,
    getMaxRows: () => {
      throw new Error("Action not allowed");
    },
  });
  const stub = (type: string) =>
    vi.stubGlobal("SpreadsheetApp", {
      SheetType: { GRID: "GRID" },
      getActiveSpreadsheet: () => ({ getActiveSheet: () => tab(type) }),
    });
  test("is said to have no cells, with what to do", () => {
    stub("OBJECT");
    expect(() => look({ sheet: "" })).toThrow("“Sales chart”, is a chart and has no cells. Select a tab with cells");
    stub("GRID");
    expect(() => look({ sheet: "" })).toThrow("Action not allowed");
  });
});
