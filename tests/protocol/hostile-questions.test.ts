// Whatever reaches the sidebar or its server.
import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { FUNCTIONS } from "../../src/functions/index.ts";
import { isPlanned } from "../../src/planners/planners.ts";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { PROTOTYPE } from "../cells/hostile-support.ts";
import { seedOf, tries } from "../kit/scale.ts";
import { skipWithoutChromium } from "../sidebar/browser.ts";
import { workbook } from "../templates/sheet-support.ts";
import { type LocalPage, oneCellKept, openLocalPage } from "../workbook/local-page.ts";

/** The add-on's own reply, and where the page plans such a question, the page's. */
function replyTo(book: WorkbookHost, asked: unknown): { readonly ok: boolean; readonly message?: string } {
  const reply = JSON.parse(String(book.script.serve("answerSidebar", [asked])));
  let read: unknown;
  try {
    read = JSON.parse(String(asked));
  } catch {
    return reply;
  }
  const { ask } = (read ?? {}) as { ask?: unknown };
  return typeof ask === "string" && isPlanned(ask) ? book.ask(read) : reply;
}

describe("the sidebar's questions", () => {
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
    "stock",
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
        "remake",
        "take",
        "change",
        "calculate",
        "ingredients",
        "goto",
        "review",
        "card",
        "day",
        "purchases",
        "weighUp",
        "timetable",
        "customers",
        "cards",
        "lots",
        "keepLots",
        "night",
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
      { numRuns: tries(500), seed: seedOf(7) },
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
    for (const name of ["GRAMWRIGHT_PROBE", "GRAMWRIGHT_GIVE", ...FUNCTIONS.map((made) => made.name)]) {
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

describe("markup in the sidebar", () => {
  test("no source of the sidebar or of the page makes HTML out of text", () => {
    const sources = ["sidebar", "src/workbook/page"].flatMap((folder) =>
      readdirSync(folder, { recursive: true, encoding: "utf8" })
        .filter((file) => file.endsWith(".ts"))
        .map((file) => `${folder}/${file}`),
    );
    for (const file of sources) {
      // The script's own page, and what the script puts at its end.
      const source = readFileSync(file, "utf8")
        .replace(/insertAdjacentHTML\("beforeend", added\)/, "")
        .replace('frame.srcdoc = withShim(carried("sidebar-html"))', "")
        .replace('removeAttribute("srcdoc")', "");
      expect(source, file).not.toMatch(
        /innerHTML|outerHTML|insertAdjacentHTML|document\.write|createContextualFragment|DOMParser|srcdoc|\beval\(|new Function/,
      );
    }
  });

  describe.skipIf(skipWithoutChromium("markup in the page"))("in the page", () => {
    let local: LocalPage;
    beforeAll(async () => {
      local = await openLocalPage({ keeper: await oneCellKept() });
    });
    afterAll(async () => {
      await local?.close();
    });

    test("names with markup are shown as they are", async () => {
      const { page } = local;
      const bench = page.frameLocator("#sidebar-frame");
      const dialogs: string[] = [];
      page.on("dialog", (dialog) => {
        dialogs.push(dialog.message());
        void dialog.dismiss();
      });
      const name = '<img src="x" onerror="alert(1)">';
      await bench.getByLabel("Name of the formula", { exact: true }).fill(name);
      await bench.getByLabel("Name, ingredient 1", { exact: true }).fill("<script>alert(2)</script>");
      await bench.getByLabel("Pieces, size 1", { exact: true }).fill("24");
      await bench.getByLabel("Baked g, size 1", { exact: true }).fill("700");
      await bench.locator("summary", { hasText: "Tin" }).click();
      await bench.getByLabel("Length cm", { exact: true }).fill("21x11x9");
      await bench.getByRole("button", { name: "Build the sheet" }).click();
      await bench.getByText("Built “").first().waitFor();
      expect(await bench.locator("img, main script").count()).toBe(0);
      expect(await page.locator("#status img, #status script").count()).toBe(0);
      expect(dialogs).toEqual([]);
    });
  });
});
