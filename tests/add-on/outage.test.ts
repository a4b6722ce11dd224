// The spreadsheet's service fails at each call of a build in turn, and from each call on: the workbook is as before, or the
// sentence names what is left in it. `npm test` takes every fourth call, another fourth with each question; a long run takes all.
import { afterEach, beforeAll, describe, expect, test, vi } from "vitest";
import { look } from "../../src/add-on/look.ts";
import type { WorkbookData } from "../../src/workbook/engine/library.ts";
import { openWorkbook, type WorkbookHost } from "../../src/workbook/host.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { IS_LONG } from "../kit/scale.ts";
import { buildSheet, files, HANDOUT } from "../templates/sheet-support.ts";

const OPTIONS = {
  weight: "g",
  temperature: "C",
  length: "cm",
  parts: [],
} as const;
const LIST = "All formulas";
const ROW = /It has no row in the formula list/;

/** A shop with ingredients, formulas and, where wanted, the list of them. */
async function shop(isListed: boolean): Promise<WorkbookData> {
  const book = openWorkbook(await files());
  book.answer({
    ask: "build",
    template: "larder",
    values: {
      ingredient: ["Flour", "Salt"],
      price: [20, 3],
      pack: ["25 kg", "1 kg"],
    },
  });
  for (const title of ["Loaf 1", "Loaf 2"]) await buildSheet({ ...HANDOUT, title }, { book, options: OPTIONS });
  if (isListed) book.answer({ ask: "list" });
  return book.engine.data();
}

let plain: WorkbookData;
let listed: WorkbookData;
beforeAll(async () => {
  plain = await shop(false);
  listed = await shop(true);
});

const opened = async (data?: WorkbookData) =>
  openWorkbook({ ...(await files()), ...(data === undefined ? {} : { data }) });
const state = (book: WorkbookHost) => {
  const { sheets, namedRanges } = book.engine.data() as {
    sheets: { name: string; cells: object }[];
    namedRanges: object;
  };
  return {
    sheets: new Map(sheets.map((one) => [one.name, JSON.stringify(one.cells)])),
    names: JSON.stringify(namedRanges),
  };
};

const STEP = IS_LONG ? 1 : 4;

/** Gives how many calls there are, up to a step more, and how many of the failures left something. */
function mustTell(
  book: WorkbookHost,
  asked: object,
  isLasting: boolean,
  turn: number,
): { calls: number; left: number } {
  let before = state(book);
  let left = 0;
  for (let call = 1 + (turn % STEP); call < 200; call += STEP) {
    if (isLasting) book.failFrom(call);
    else book.failAt(call);
    const reply = book.ask(asked);
    book.failAt(undefined);
    const after = state(book);
    const added = [...after.sheets.keys()].filter((name) => !before.sheets.has(name));
    const isBuilt = reply.ok && !ROW.test((reply.answer as { note?: string }).note ?? "");
    // A list has a row more where all went well.
    for (const [name, was] of before.sheets)
      if (!isBuilt || name !== LIST) expect(after.sheets.get(name), `call ${call}: ${name}`).toBe(was);
    if (reply.ok) {
      expect(added).toHaveLength(1);
      if (isBuilt) return { calls: call - 1, left };
      book.deleteSheet(added[0] ?? "");
      continue;
    }
    if (added.length === 0) {
      expect(reply.message, `call ${call}`).toMatch(/nothing was changed|nothing was built|could not be read/);
      expect(after.names, `call ${call}`).toBe(before.names);
      continue;
    }
    left += 1;
    expect(reply.message, `call ${call}`).not.toMatch(/nothing was/);
    for (const name of added) {
      expect(reply.message, `call ${call}`).toContain(`“${name}” is left: delete it`);
      book.deleteSheet(name);
    }
    if (after.names !== before.names && /older formula list/.test(reply.message))
      before = { ...before, names: state(book).names };
  }
  throw new Error("it never ends");
}

const build = (template: string, values: object = {}, parts: readonly string[] = []) => ({
  ask: "build",
  template,
  options: { ...OPTIONS, parts },
  values,
});
const QUESTIONS: readonly (readonly [string, object])[] = [
  ...TEMPLATES.map(({ name, parts, sample }) => [name, build(name, sample, parts)] as const),
  ["prices", build("prices", {}, ["products"])],
  [
    "day",
    {
      ask: "day",
      day: "2026-01-31",
      orders: [{ sheet: "Loaf 1", pieces: 10 }],
    },
  ],
  ["list", { ask: "list" }],
  ["mix log", build("mix-log")],
  ["card", { ask: "card", sheet: "Loaf 1", language: "en", parts: [] }],
];

describe.each(["once", "from there on"])("the service fails %s", (how) => {
  const later = how === "once" ? 0 : 2;
  test.each(QUESTIONS.map(([name, asked], at) => [name, asked, at + later] as const))("%s", async (_, asked, turn) => {
    const { calls, left } = mustTell(await opened(plain), asked, how !== "once", turn);
    expect(calls).toBeGreaterThan(15);
    if (how !== "once") expect(left * STEP).toBeGreaterThan(10);
    else expect(left).toBe(0);
  });

  test("a formula sheet with its row in the list", async () => {
    const { calls } = mustTell(await opened(listed), build("pan-loaf", HANDOUT), how !== "once", later);
    expect(calls).toBeGreaterThan(20);
  });
});

test("a list that its owner locked keeps nobody from building: the row is said to be missing", async () => {
  const book = await opened(listed);
  book.answer(build("pan-loaf", HANDOUT));
  const at = book.trail.indexOf("appendRow") + 1;
  const before = book.shownTexts(LIST, book.usedRange(LIST));
  book.failAt(at);
  expect(book.answer(build("pan-loaf", { ...HANDOUT, title: "Late loaf" }))).toMatchObject({
    sheet: "Late loaf",
    note: expect.stringMatching(/^It has no row .* ask its owner to let you edit it\. Price and day sheets find/),
  });
  expect(book.shownTexts(LIST, book.usedRange(LIST))).toEqual(before);
  // And so they do.
  const { sheets } = book.answer({ ask: "formulas" }) as {
    sheets: { sheet: string }[];
  };
  expect(sheets.map(({ sheet }) => sheet)).toContain("Late loaf");
});

test("a person without rights is told whom to ask", async () => {
  const book = await opened(plain);
  book.answer(build("pan-loaf", HANDOUT));
  book.failAt(book.trail.indexOf("insertSheet") + 1);
  const reply = book.ask(build("pan-loaf", { ...HANDOUT, title: "Another" }));
  expect(reply.ok ? "" : reply.message).toMatch(
    /nothing was changed: .*If you may only view this file, ask its owner to let you edit it\.$/,
  );
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
