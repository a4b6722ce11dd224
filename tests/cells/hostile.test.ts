// Input that means harm or is beyond all measure. Random calls of every function are in properties.test.ts (npm run test:long
// for a long run), recipe lines in recipe-hostile.test.ts, the sidebar's in hostile-questions.test.ts, the add-on's own check in self-check.test.ts.

import exceljs from "exceljs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { inputNames } from "../../shared/protocol/order.ts";
import { sheetName } from "../../shared/protocol/plan-message.ts";
import { FUNCTIONS } from "../../src/functions/index.ts";
import { toXlsx } from "../../src/workbook/xlsx/xlsx.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { METRIC } from "../functions/support.ts";
import { seedOf, someOf, tries } from "../kit/scale.ts";
import { buildSheet, HANDOUT, workbook } from "../templates/sheet-support.ts";
import { answerOrSentence, NASTY } from "./hostile-support.ts";

describe.each(someOf(TEMPLATES, 2))("$title with hostile text in every input", (model) => {
  test("has the formulas it always has, and no other, also in the saved file", async () => {
    const options = { ...METRIC, parts: model.parts };
    // A text for a weight is refused where weights become percentages: see the order's own test.
    const typed = [...inputNames(model)].filter((name) => model.foldedFrom === undefined || name !== "weighed");
    const texts = typed.map((name, at) => [name, NASTY[at % NASTY.length] ?? ""] as const);
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
    expect(saved.filter((formula) => /IMPORT|HYPERLINK|cmd|1\+1(?!\/10\^)/i.test(formula))).toEqual([]);
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

const SIGNS = Array.from({ length: 95 }, (_, at) => String.fromCharCode(32 + at)).concat("\n", "½", "é", "²", "\u00a0");
/** Microseconds of the processor: a search that goes through a long text again from each of its characters takes one to five million. */
const BUSY = 600_000;

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

  test("takes a cell of 50 000 characters in each argument, and is not busy with it", () => {
    const size = 50_000;
    const filled = (part: string) => part.repeat(Math.floor(size / part.length));
    const made = fc.sample(fc.string({ unit: fc.constantFrom(...SIGNS), minLength: 1, maxLength: 4 }), {
      numRuns: tries(4),
      seed: seedOf(50_000),
    });
    const long = ["9", "flour ", "½ cup ", "-", "1,", " ", "\u0000", "(", "flour (strong) ", "9 ", "a9", ...made].map(
      filled,
    );
    const slow: string[] = [];
    for (const { name, examples } of FUNCTIONS) {
      const args = examples[0]?.call ?? [];
      args.forEach((arg, at) => {
        // Of so many arguments each third takes the first of these texts, the next one the second, and so on.
        for (const text of someOf(long, 3, at)) {
          const put = Array.isArray(arg)
            ? arg.map((row: readonly unknown[], down: number) => row.map((cell) => (down === 0 ? text : cell)))
            : text;
          const before = process.cpuUsage();
          answerOrSentence(
            name,
            args.map((one, place) => (place === at ? put : one)),
          );
          const { user } = process.cpuUsage(before);
          if (user > BUSY) slow.push(`${name}, argument ${at + 1}, ${JSON.stringify(text.slice(0, 20))}: ${user} µs`);
        }
      });
    }
    expect(slow).toEqual([]);
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
      const filled = someOf(
        ranges,
        2,
        FUNCTIONS.findIndex((one) => one.name === name),
      );
      for (const one of [long, ...filled.map((range) => Object.keys(args).map(() => range))]) {
        answerOrSentence(name, one);
      }
    }
  });
});
