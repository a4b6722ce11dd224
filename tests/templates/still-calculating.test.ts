// A cell whose call has not answered yet holds an error in Sheets (ErrorType LOADING of the Sheets API): nothing may speak to a person as if something were wrong.
import { beforeAll, describe, expect, test } from "vitest";
import { ANSWER_READERS } from "../../shared/protocol/answers.ts";
import type { CellValue } from "../../shared/protocol/look.ts";
import { isWaitingText } from "../../shared/protocol/waiting.ts";
import { PLANNED } from "../../src/planners/planners.ts";
import { lotsOn } from "../../src/planners/production/lots.ts";
import { waitingCells } from "../../src/planners/steps.ts";
import { type Book, openBook } from "../../src/workbook/scripted.ts";
import { SHEETS } from "../../templates/index.ts";

type Formula = { readonly name: string; readonly text: string };

/** All formulas of a sheet's model, each with the name of its cell or column. */
function formulasOf(part: unknown, name = ""): Formula[] {
  if (typeof part !== "object" || part === null) return [];
  if (Array.isArray(part)) return part.flatMap((one) => formulasOf(one, name));
  const own = "name" in part && typeof part.name === "string" ? part.name : name;
  return Object.values(part).flatMap((value) =>
    typeof value === "string" && value.startsWith("=") ? [{ name: own, text: value }] : formulasOf(value, own),
  );
}

const namesIn = (text: string): string[] =>
  [...text.matchAll(/@(\w+)/g)].flatMap(([, name = ""]) => name.replace(/_top$/, ""));

/** Names whose value waits for a call, also by way of others. */
function waitingNames(formulas: readonly Formula[]): Set<string> {
  const waiting = new Set<string>();
  for (let size = -1; size !== waiting.size; ) {
    size = waiting.size;
    for (const { name, text } of formulas)
      if (name !== "" && (text.includes("BAKE_") || namesIn(text).some((one) => waiting.has(one)))) waiting.add(name);
  }
  return waiting;
}

const SPEAKS = /"[^"]*(?:red cell|cannot be read|shows an error|point at)[^"]*"/i;

test.each(SHEETS.map((model) => [model.name, model] as const))(
  "%s: what speaks of an error waits for no call, or says so",
  (_, model) => {
    const formulas = formulasOf(model);
    const waiting = waitingNames(formulas);
    for (const { text } of formulas) {
      const asks = [...text.matchAll(/ISERROR\((?:INDEX\()?@(\w+)/g)].map(([, name = ""]) => name.replace(/_top$/, ""));
      const isWaiting = asks.some((name) => waiting.has(name));
      if (isWaiting && SPEAKS.test(text)) expect(text).toMatch(/still calculating, or/i);
    }
  },
);

test("a text is taken for a call that has no answer in any language", () => {
  // The first is what getValues gives by jsoma/tabletop 60, the second by burnash/gspread 164; the others are Google's words in its languages, from memory.
  for (const text of ["Loading...", "#N/A", "Wird geladen...", "Chargement...", "Cargando…", "読み込んでいます..."])
    expect(isWaitingText(text), text).toBe(true);
  for (const cell of ["", "Flour", "65 %", "#REF!", "#DIV/0!", "...", 12, true, null, `${"a".repeat(60)}...`])
    expect(isWaitingText(cell), String(cell)).toBe(false);
  const sheets = [
    {
      id: 7,
      name: "a",
      values: [
        ["Flour", 3],
        ["", "#N/A"],
      ],
    },
  ];
  expect(waitingCells({ sheets, names: [{ name: "n", rows: 1, values: [["Loading..."]] }] })).toEqual([
    "7 1 1 #N/A",
    "n 0 0 Loading...",
  ]);
});

describe("a sheet with every block", () => {
  let book: Book;
  const sheet = "Pan loaf";
  beforeAll(async () => {
    book = await openBook();
    book.build("pan-loaf", {
      by: "pieces",
      size_pieces: [40],
      size_weight: [400],
      ingredient: ["Strong white flour", "Water", "Salt", "Fresh yeast", "Butter"],
      kind: ["flour", "water", "salt", "yeast", "fat"],
      percent: [1, 0.62, 0.02, 0.02, 0.03],
      law: "EU",
    });
  });

  const texts = () => book.shownTexts(sheet, book.usedRange(sheet)).flat();
  const numbers = () =>
    book
      .values(sheet, "A1:K30")
      .flat()
      .filter((cell) => typeof cell === "number");

  test.each(["Loading...", "#N/A", "Wird geladen..."])(
    "goes on adding up while calls hold %s, and says nothing is wrong",
    (text) => {
      const before = numbers();
      const usual = new Set(texts());
      book.holdCalls(text);
      const speaking = texts().filter(
        (one) => !usual.has(one) && /red cell|cannot be read|shows an error|point at|undo/i.test(one),
      );
      expect(texts()).toContain(text);
      expect(speaking.length).toBeGreaterThan(0);
      for (const one of speaking) expect(one).toMatch(/still calculating, or/i);
      expect(numbers().length).toBeGreaterThan(20);
      expect(before).toEqual(expect.arrayContaining(numbers()));
      book.answerCalls();
      expect(numbers()).toEqual(before);
    },
  );

  test("the calls answer once values were read so many times", () => {
    book.holdCalls("Loading...", 2);
    const seen = () => JSON.stringify(book.answer({ ask: "look", sheet }));
    expect(seen()).toContain("Loading...");
    expect(seen()).toContain("Loading...");
    expect(seen()).not.toContain("Loading...");
  });
});

describe("while no call has an answer", () => {
  let book: Book;
  const LOAF = "Quay loaf";
  beforeAll(async () => {
    book = await openBook();
    const names = ["Strong white flour", "Water", "Salt", "Fresh yeast", "Butter"];
    book.build("larder", {
      ingredient: names.filter((name) => name !== "Water"),
      price: [20, 5, 3.6, 86],
      pack: ["25 kg", "10 kg", "1 kg", "10 x 1 kg"],
      allergens: ["wheat", "none", "none", "milk"],
    });
    book.build("pan-loaf", {
      title: LOAF,
      by: "pieces",
      size_pieces: [40],
      size_weight: [400],
      size_loss: [0.12],
      ingredient: names,
      kind: ["flour", "water", "salt", "yeast", "fat"],
      percent: [1, 0.62, 0.02, 0.02, 0.03],
      law: "EU",
      step: ["Mix", "Proof", "Bake"],
      step_minutes: [15, 90, 35],
      ready: 6 / 24,
      oven_step: "Bake",
    });
    book.answer({ ask: "day", day: "2026-12-01", orders: [{ sheet: LOAF, size: "", customer: "Pier", pieces: 12 }] });
    book.holdCalls();
  });

  const tried = new Set<string>();
  const answered = <T = Readonly<Record<string, unknown>>>(ask: string, rest: object = {}): T => {
    tried.add(ask);
    const reply = book.ask({ ask, ...rest });
    expect(reply.ok, `${ask}: ${JSON.stringify(reply).slice(0, 400)}`).toBe(true);
    expect(JSON.stringify(reply), ask).not.toMatch(/shows an error in|red cell|Loading|geladen/);
    return (reply as { answer: T }).answer;
  };
  /** A sheet that was built meanwhile holds nothing that was still on its way. */
  const built = (ask: string, rest: object = {}) => {
    const { sheet } = answered<{ sheet: string }>(ask, rest);
    const typed = book.values(sheet, book.usedRange(sheet));
    const formulas = book.formulas(sheet, book.usedRange(sheet));
    const isTyped = (row: number, column: number) => (formulas[row]?.[column] ?? null) === null;
    const waiting = typed.flatMap((line, row) =>
      line.filter(
        (cell, column) => isTyped(row, column) && formulas.length > 0 && isWaitingText(cell) && cell !== "#N/A",
      ),
    );
    return { sheet, waiting };
  };

  test("Adjust reads the sheet, takes a change, keeps, compares and brings back", () => {
    book.answer({ ask: "goto", sheet: LOAF, cell: "A1" });
    book.sheet(LOAF).type("percent", "0.021", 3);
    const { id, seen } = answered<{ id: number; seen: number }>("adjusting");
    const same = { sheet: LOAF, id, seen };
    const wishes = [{ change: "salt", values: { wanted: "1.8" } }];
    expect(answered("takeChanges", { ...same, wishes, title: null })).toMatchObject({ number: 2 });
    answered("versions");
    answered("keepVersion", { sheet: LOAF, line: "for the market" });
    answered("compare", { sheet: LOAF, one: "1", other: "now" });
    const now = answered<{ id: number; seen: number }>("adjusting");
    expect(answered("bringBack", { sheet: LOAF, id: now.id, seen: now.seen, number: 1 })).toMatchObject({ number: 3 });
    expect(book.sheet(LOAF).value("percent", 3)).toBeCloseTo(0.021, 9);
  });

  test("prices are compared and taken from a list, and what is missing is looked for", () => {
    answered("prices", { day: "2026-12-01" });
    answered("priceSheet");
    expect(
      answered("takePrices", { rows: [{ name: "Salt", price: 5.5, pack: "", supplier: "" }], added: [], also: [] }),
    ).toMatchObject({ written: 1 });
    answered("missing");
    answered("link");
  });

  test.each([
    ["purchases", { sheet: "Production 2026-12-01" }],
    ["customers", { sheet: "Production 2026-12-01" }],
  ] as const)("a production's %s", (ask, rest) => {
    const [{ sheet }] = answered<{ sheets: [{ sheet: string }] }>("productions").sheets;
    expect(built(ask, { ...rest, sheet }).waiting).toEqual([]);
  });

  test("a shift's weigh-up, timetable and cards", () => {
    const [{ sheet }] = answered<{ sheets: [{ sheet: string }] }>("productions").sheets;
    const shift = { sheet, from: "2026-11-30T18:00", to: "2026-12-01T12:00" };
    for (const ask of ["weighUp", "timetable", "cards"]) expect(built(ask, shift).waiting, ask).toEqual([]);
    for (const text of ["Loading...", "Wird geladen..."]) {
      book.holdCalls(text);
      const pages = JSON.stringify(answered("night", shift));
      expect(pages).toContain("Allergens: not worked out.");
      expect(pages).not.toContain("Contains:");
    }
  });

  test("lots on a weigh-up are kept, each with the weight that it was entered for", () => {
    const [{ sheet }] = answered<{ sheets: [{ sheet: string }] }>("productions").sheets;
    const shift = { sheet, from: "2026-11-30T18:00", to: "2026-12-01T12:00" };
    const { sheet: weighUp } = built("weighUp", shift);
    const rows = book.values(weighUp, book.usedRange(weighUp));
    const at = rows.findIndex(([, name]) => name === "Strong white flour");
    book.type(weighUp, `E${at + 1}`, "W-117");
    expect(answered("keepLots")).toEqual({ sheet: "Lot log", added: 1 });
    const [, , weight] = rows[at] ?? [];
    expect(book.values("Lot log", book.usedRange("Lot log"))).toContainEqual(
      expect.arrayContaining(["Strong white flour", weight, "W-117"]),
    );
    // A weight that is not there yet is no weight of 0.
    for (const text of ["Loading...", "Wird geladen...", "#N/A", "#REF!"]) {
      const values = book.values(weighUp, book.usedRange(weighUp)).map((row) => [...row] as CellValue[]);
      (values[at] as CellValue[])[2] = text;
      expect(() => lotsOn({ values })).toThrow(`shows ${text} for “Strong white flour”, so no lot was kept`);
    }
  });

  test("a part is taken out of a formula sheet and put in again, and what was typed is there", () => {
    const typed = () => [0, 1, 2, 3, 4, 5].map((row) => book.sheet(LOAF).value("percent", row));
    const before = typed();
    for (const isWanted of [false, true])
      expect(built("change", { sheet: LOAF, part: "water", isWanted }), String(isWanted)).toEqual({
        sheet: LOAF,
        waiting: [],
      });
    expect(typed()).toEqual(before);
  });

  test.each([
    "prices",
    "finished-product",
    "mix-log",
    "bake-off-log",
    "allergen-table",
    "label-text",
    "regular-orders",
    "settings",
    "larder",
  ])("a sheet of the template %s is built", (template) => {
    const options = { weight: "g", temperature: "C", length: "cm", parts: template === "prices" ? ["products"] : [] };
    expect(built("build", { template, options, values: {} }).waiting).toEqual([]);
  });

  test("what the panels ask besides: a formula is put in, a cell gone to, a weight taken, notes and cards", () => {
    answered("goto", { sheet: LOAF, cell: "A1" });
    for (const [ask, rest] of [
      ["formulas", {}],
      ["review", { style: "" }],
      ["settings", {}],
      ["ingredients", {}],
      ["list", {}],
      ["history", { sheet: LOAF }],
      ["take", { sheet: LOAF }],
    ] as const)
      answered(ask, rest);
    built("card", { sheet: LOAF, kind: "values", by: "sheet" });
    built("day", { day: "2026-12-02", orders: [{ sheet: LOAF, size: "", customer: "Pier", pieces: 12 }] });
    book.build("label-text", { date: 46_356 });
    book.answer({ ask: "goto", sheet: "Sheet1", cell: "A1" });
    answered("insert", { name: "BAKE_DOUGHFOR", args: ["40", "400"] });
  });

  test("label texts that are not there yet are no file for a label printer", () => {
    // The product without a list is left out, and the panel says how many are.
    const { rows, without } = answered<{ rows: string[][]; without: number }>("labels");
    expect([rows.length, without]).toEqual([1, 2]);
    book.answerCalls();
    expect(answered<{ rows: string[][] }>("labels").rows).toHaveLength(2);
  });

  test("so every question of the panels was tried", () => {
    const all = [...PLANNED, ...Object.keys(ANSWER_READERS)];
    expect(all.filter((one) => !tried.has(one) && !(one in ELSEWHERE))).toEqual([]);
  });

  test("and nothing that was written meanwhile keeps a text that stood for an answer", () => {
    book.answerCalls();
    const kept = book
      .sheetNames()
      .flatMap((sheet) =>
        book
          .values(sheet, book.usedRange(sheet))
          .flatMap((row) => row.filter((cell) => isWaitingText(cell)).map((cell) => `${sheet}: ${cell}`)),
      );
    expect(kept).toEqual([]);
  });
});

/** Questions that wait for no cell of a sheet, or that others above ask on the way. */
const ELSEWHERE: Readonly<Record<string, string>> = {
  ping: "reads no sheet",
  look: "asked by each that is planned; and above, until the calls answer",
  make: "asked by each that builds",
  remake: "asked by change",
  revise: "asked by takeChanges",
  calculate: "reads no formula sheet",
  stock: "asked by missing",
  connect: "asked by link",
  priceList: "asked by takePrices",
  lots: "asked by keepLots",
  printed: "tests/planners/label-sheets.test.ts",
  check: "waits by itself: tests/protocol/self-check.test.ts",
};
