// Input that means harm or is beyond all measure. Random calls of every function are in properties.test.ts (CALLS=1000000 for a
// long run), recipe lines in recipe-hostile.test.ts, the steps of the add-on's own check in self-check.test.ts.
import { readdirSync, readFileSync } from "node:fs";
import exceljs from "exceljs";
import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, test, vi } from "vitest";
import { inputNames } from "../shared/bench.ts";
import { CellError } from "../shared/refusal.ts";
import { sheetName } from "../shared/sheet-name.ts";
import { isPlanned } from "../sidebar/plan/planners.ts";
import { call } from "../src/call.ts";
import { FUNCTIONS } from "../src/functions/index.ts";
import type { WorkbookHost } from "../src/workbook/host.ts";
import { toXlsx } from "../src/workbook/xlsx.ts";
import { TEMPLATES } from "../templates/index.ts";
import { skipWithoutChromium } from "./browser.ts";
import { type LocalPage, openLocalPage } from "./local-page.ts";
import { buildSheet, HANDOUT, workbook } from "./sheet-support.ts";
import { METRIC } from "./support.ts";

vi.setConfig({ testTimeout: 120_000, hookTimeout: 120_000 });

const FORMULAS = [
  '=IMPORTXML("x";"y")',
  "=1+1",
  "+1+1",
  "-1+1",
  "@SUM(A1)",
  "\t=1+1",
  "\r=1+1",
  "\n=1+1",
  " =1+1",
  "'=1+1",
  "=cmd|' /C calc'!A0",
];
const MARKUP = [
  "<img src=x onerror=alert(1)>",
  "</script><script>alert(1)</script>",
  "<!--",
  "&lt;b&gt;",
  "{{x}}",
  "[[x]]",
  "javascript:alert(1)",
];
const PROTOTYPE = [
  "__proto__",
  "constructor",
  "prototype",
  "toString",
  "valueOf",
  "hasOwnProperty",
  "__defineGetter__",
  "then",
];
const NASTY = [...FORMULAS, ...MARKUP, ...PROTOTYPE];

/** Calls a function as a formula cell does; anything but an answer or a sentence fails. */
function answerOrSentence(name: string, args: readonly unknown[]): unknown {
  const made = FUNCTIONS.find((one) => one.name === name);
  if (made === undefined) throw new Error(`no function is called ${name}`);
  try {
    return call(made, args);
  } catch (error) {
    if (!(error instanceof CellError)) throw error;
    expect(error.message.startsWith(`${name}: `)).toBe(true);
    expect(error.message.length, error.message.slice(0, 300)).toBeLessThan(2000);
    return "";
  }
}

describe.each(TEMPLATES)("$title with hostile text in every input", (model) => {
  test("has the formulas it always has, and no other, also in the saved file", async () => {
    const options = { ...METRIC, parts: model.parts };
    const texts = [...inputNames(model)].map((name, at) => [name, NASTY[at % NASTY.length] ?? ""] as const);
    // As many rows as the hostile ones: a table is as long as what is typed.
    const plain = { ...Object.fromEntries(texts.map(([name]) => [name, "x"])), ingredient: NASTY.map(() => "x") };
    const hostile = { ...Object.fromEntries(texts), title: '=IMPORTXML("a";"b") [x]: *?', ingredient: NASTY };
    const book = await workbook();
    const [one, other] = [
      await buildSheet(plain, { model, options, book }),
      await buildSheet(hostile, { model, options, book }),
    ];
    const formulas = ({ sheet }: typeof one) =>
      book
        .formulas(sheet, book.usedRange(sheet))
        .flatMap((row, down) =>
          row.flatMap((cell, across) => (cell === undefined ? [] : [`${down},${across} ${cell}`])),
        );
    expect(formulas(one).length).toBeGreaterThan(10);
    expect(formulas(other)).toEqual(formulas(one));
    expect(book.cell(other.sheet, other.at("title")).value).toBe(hostile.title);
    const file = new exceljs.Workbook();
    await file.xlsx.load((await toXlsx(book.engine)) as unknown as ArrayBuffer);
    const saved: string[] = [];
    file.worksheets.forEach((sheet) => {
      sheet.eachRow((row) => {
        row.eachCell((cell) => {
          if (cell.formula !== undefined) saved.push(String(cell.formula));
        });
      });
    });
    expect(saved.filter((formula) => /IMPORT|HYPERLINK|cmd|1\+1/i.test(formula))).toEqual([]);
  });
});

test("a sheet's name is what can be one, whatever was typed, and never longer than a sheet takes", () => {
  const typed = fc.oneof(
    fc.constantFrom(...NASTY, "x".repeat(300), "History", "\u2019'", "\u202e\u0000\u0007", "a\r\nb"),
    fc.string(),
  );
  fc.assert(
    fc.property(typed, (title) => {
      const name = sheetName(title);
      expect(name).toMatch(/^[^\\/?*[\]:'\p{Cc}]{1,80}$/u);
      expect(name.trim()).toBe(name);
      expect(name.toLowerCase()).not.toBe("history");
    }),
  );
});

test("a sheet is built under such a name", async () => {
  const book = await workbook();
  for (const title of ['=IMPORTXML("x";"y")', "__proto__", "\t@[a]:*?/"]) {
    const reply = book.ask({ ask: "build", template: "pan-loaf", values: { ...HANDOUT, title } });
    expect(reply, title).toMatchObject({ ok: true, answer: { sheet: sheetName(title) } });
  }
});

describe("every function", () => {
  test("takes hostile words in each argument in turn, and the language stays as it was", () => {
    const before = Object.getOwnPropertyNames(Object.prototype).join();
    for (const { name, examples } of FUNCTIONS) {
      for (const { call: args } of examples) {
        args.forEach((arg, at) => {
          for (const text of NASTY) {
            const put = Array.isArray(arg) ? arg.map((row) => row.map(() => text)) : text;
            answerOrSentence(
              name,
              args.map((one, place) => (place === at ? put : one)),
            );
          }
        });
      }
    }
    expect(Object.getOwnPropertyNames(Object.prototype).join()).toBe(before);
    expect(({} as Record<string, unknown>).flour).toBeUndefined();
  });

  test("takes a cell of 50 000 characters in each argument, in seconds", () => {
    const long = [
      "9".repeat(50_000),
      "flour ".repeat(8333),
      "½ cup ".repeat(8333),
      "-".repeat(50_000),
      "1,".repeat(25_000),
      " ".repeat(50_000),
      "\u0000".repeat(50_000),
    ];
    for (const { name, examples } of FUNCTIONS) {
      const args = examples[0]?.call ?? [];
      args.forEach((arg, at) => {
        for (const text of long) {
          const put = Array.isArray(arg)
            ? arg.map((row: readonly unknown[], down: number) => row.map((cell) => (down === 0 ? text : cell)))
            : text;
          const from = performance.now();
          answerOrSentence(
            name,
            args.map((one, place) => (place === at ? put : one)),
          );
          expect(
            performance.now() - from,
            `${name}, argument ${at + 1}, ${JSON.stringify(text.slice(0, 12))}`,
          ).toBeLessThan(5000);
        }
      });
    }
  });

  test("takes ranges of 10 000 rows: repeated, blank, of one word, of numbers, and 26 columns wide", () => {
    const rows = <T>(of: (row: number) => T) => Array.from({ length: 10_000 }, (_, row) => of(row));
    const ranges = [
      rows(() => [""]),
      rows(() => ["flour"]),
      rows((row) => [row]),
      rows((row) => Array.from({ length: 26 }, (_, column) => row * column)),
    ];
    for (const { name, args, examples } of FUNCTIONS) {
      const example = examples[0]?.call ?? [];
      const long = example.map((arg) => (Array.isArray(arg) ? rows((row) => arg[row % arg.length]) : arg));
      for (const one of [long, ...ranges.map((range) => Object.keys(args).map(() => range))]) {
        const from = performance.now();
        answerOrSentence(name, one);
        expect(performance.now() - from, name).toBeLessThan(10_000);
      }
    }
  });
});

/** The add-on's own reply, and where the page plans such a question, the page's. */
function replyTo(book: WorkbookHost, asked: unknown): { readonly ok: boolean; readonly message?: string } {
  const reply = JSON.parse(String(book.script.serve("benchAsk", [asked])));
  let read: unknown;
  try {
    read = JSON.parse(String(asked));
  } catch {
    return reply;
  }
  const { ask } = (read ?? {}) as { ask?: unknown };
  return typeof ask === "string" && isPlanned(ask) ? book.ask(read) : reply;
}

describe("the bench's questions", () => {
  const KEYS = [
    "ask",
    "template",
    "options",
    "values",
    "parts",
    "weight",
    "title",
    "sheet",
    "step",
    "cells",
    "formats",
    "formulas",
    "row",
    "rows",
    "words",
    "names",
    "calls",
    "args",
    "defines",
    "orders",
    ...PROTOTYPE,
  ];
  const WORDS = [
    "ping",
    "build",
    "check",
    "write",
    "read",
    "insert",
    "remove",
    "pan-loaf",
    "Mine",
    "Gramwright check",
    "=1+1",
    "g",
    "tin",
    ...PROTOTYPE,
  ];
  const leaf = fc.oneof(fc.constantFrom<unknown>(...WORDS), fc.jsonValue(), fc.double(), fc.integer());
  const { tree } = fc.letrec((tie) => ({
    tree: fc.oneof(
      { maxDepth: 3 },
      leaf,
      fc.array(tie("tree"), { maxLength: 4 }),
      fc
        .array(fc.tuple(fc.constantFrom(...KEYS), tie("tree")), { maxLength: 6 })
        .map((pairs) => Object.fromEntries(pairs)),
    ),
  }));
  const question = fc
    .tuple(
      fc.constantFrom(
        "ping",
        "build",
        "check",
        "larder",
        "nothing",
        "__proto__",
        "look",
        "make",
        "calculate",
        "ingredients",
        "goto",
        "review",
        "card",
        "day",
      ),
      fc.dictionary(fc.constantFrom(...KEYS), tree),
    )
    .map(([ask, rest]) => ({ ...rest, ask }));

  test("answers anything at all with JSON, never throws, and never touches a sheet that was there", async () => {
    const book = await workbook();
    book.renameSheet("Sheet1", "Mine");
    book.type("Mine", "A1", "rye");
    book.type("Mine", "B2", "=1+1");
    const [formula, value] = ["=1+1", 2];
    const asked = fc.oneof(
      { weight: 5, arbitrary: question.map((one) => JSON.stringify(one)) },
      { weight: 2, arbitrary: fc.json() },
      { weight: 2, arbitrary: fc.string() },
      { weight: 1, arbitrary: fc.jsonValue() },
    );
    fc.assert(
      fc.property(asked, (one) => {
        const { ok, message } = replyTo(book, one);
        if (ok !== true)
          expect(typeof message === "string" && message.length > 10 && message.length < 1000, message).toBe(true);
        expect(book.sheetNames()).toContain("Mine");
        expect(book.usedRange("Mine")).toBe("A1:B2");
        expect(book.cell("Mine", "A1").value).toBe("rye");
        expect(book.cell("Mine", "B2")).toMatchObject({ formula, value });
      }),
      { numRuns: 1500, seed: 7 },
    );
  });

  test.each([
    ["nested beyond all measure", "[".repeat(200_000)],
    ["half a text", '{"ask":"build","template":"pan-'],
    ["nothing", undefined],
    ["a number", 5],
    ["an object that has no text", { toString: 5, valueOf: 6 }],
    ["a list", [["ping"]]],
    ["values that name the prototype", '{"ask":"build","template":"pan-loaf","values":{"__proto__":{"title":"x"}}}'],
    [
      "options that name the prototype",
      '{"ask":"build","template":"pan-loaf","options":{"__proto__":1,"weight":"__proto__"}}',
    ],
    ["a template that is an object", '{"ask":"build","template":{"toString":1}}'],
    [
      "a text beyond measure",
      JSON.stringify({ ask: "build", template: "pan-loaf", values: { title: "x".repeat(60_000) } }),
    ],
    ["a number beyond measure", '{"ask":"build","template":"pan-loaf","values":{"tins":1e999}}'],
  ])("answers %s with a sentence and makes nothing", async (_, asked) => {
    const book = await workbook();
    const { ok, message = "" } = replyTo(book, asked);
    expect(ok).toBe(false);
    expect(message.length).toBeGreaterThan(20);
    expect(book.sheetNames()).toEqual(["Sheet1"]);
  });

  test("other names that a client can call do no more than a cell or the menu does", async () => {
    const book = await workbook();
    for (const name of ["GRAMWRIGHT_PROBE", ...FUNCTIONS.map((made) => made.name)]) {
      for (const args of [[], ["x", { a: 1 }, [[1]]], [null, null, null]]) {
        try {
          book.script.serve(name, args);
        } catch (error) {
          expect((error as Error).message).toMatch(new RegExp(`^${name}: `));
        }
      }
    }
    for (const name of ["Gramwright", "call", "__proto__", "constructor", "eval", "Function"]) {
      if (["eval", "Function"].includes(name)) continue;
      expect(() => book.script.serve(name, ["return 1"])).toThrow(/not found/);
    }
    expect(book.sheetNames()).toEqual(["Sheet1"]);
  });
});

describe("markup in the bench", () => {
  test("no source of the bench or of the page makes HTML out of text", () => {
    const sources = ["sidebar", "src/workbook/page"].flatMap((folder) =>
      readdirSync(folder, { recursive: true, encoding: "utf8" })
        .filter((file) => file.endsWith(".ts"))
        .map((file) => `${folder}/${file}`),
    );
    for (const file of sources) {
      const source = readFileSync(file, "utf8").replace(/insertAdjacentHTML\("beforeend", added\)/, "");
      expect(source, file).not.toMatch(
        /innerHTML|outerHTML|insertAdjacentHTML|document\.write|createContextualFragment|DOMParser|srcdoc|\beval\(|new Function/,
      );
    }
  });

  describe.skipIf(skipWithoutChromium("markup in the page"))("in the page", () => {
    let local: LocalPage;
    beforeAll(async () => {
      local = await openLocalPage();
    });
    afterAll(async () => {
      await local?.close();
    });

    test("names with markup are shown as they are", async () => {
      const { page, mishaps } = local;
      const bench = page.frameLocator("#bench-frame");
      const dialogs: string[] = [];
      page.on("dialog", (dialog) => {
        dialogs.push(dialog.message());
        void dialog.dismiss();
      });
      const name = '<img src="x" onerror="alert(1)">';
      await bench.getByLabel("Name of the formula", { exact: true }).fill(name);
      await bench.getByLabel("Name, ingredient 1", { exact: true }).fill("<script>alert(2)</script>");
      await bench.getByLabel("Pieces, size 1", { exact: true }).fill("24");
      await bench.getByLabel("Sold at g, size 1", { exact: true }).fill("700");
      await bench.getByLabel("Length cm", { exact: true }).fill("21x11x9");
      await bench.getByRole("button", { name: "Build the sheet" }).click();
      await bench.getByText("Built “").first().waitFor();
      expect(await bench.locator("img, main script").count()).toBe(0);
      expect(await page.locator("#status img, #status script").count()).toBe(0);
      expect(dialogs).toEqual([]);
      expect(mishaps).toEqual([]);
    });
  });
});
