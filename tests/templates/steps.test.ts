// The steps of the bench's planned questions as the add-on takes them: what it shows of the workbook, what it writes, what it refuses.
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { CalculateAnswer } from "../../shared/protocol/calculate.ts";
import type { Snapshot } from "../../shared/protocol/look.ts";
import type { MakeAsk } from "../../shared/protocol/plan-message.ts";
import type { PlannedQuestion } from "../../shared/protocol/planned-questions.ts";
import { badFormula } from "../../shared/sheet/make-formulas.ts";
import { stepsFor } from "../../src/planners/planners.ts";
import type { Step } from "../../src/planners/steps.ts";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { seedOf, tries } from "../kit/scale.ts";
import { buildSheet, HANDOUT, workbook } from "./sheet-support.ts";

type Reply = { readonly ok: boolean; readonly message: string; readonly answer: unknown };
const send = (book: WorkbookHost, step: object): Reply =>
  JSON.parse(String(book.script.serve("answerSidebar", [JSON.stringify(step)]))) as Reply;

/** Answers the steps of a question up to the one that writes, and gives that. */
function planned(book: WorkbookHost, question: PlannedQuestion, asked: Record<string, unknown>): Step & MakeAsk {
  const steps = stepsFor(question, asked, new Date(2026, 0, 31));
  let next = steps.next();
  while (next.done !== true && next.value.ask !== "make") next = steps.next(send(book, next.value).answer);
  if (next.done === true) throw new Error("nothing was to be written");
  return next.value as unknown as Step & MakeAsk;
}
const HAND_OUT = { template: "pan-loaf", options: { parts: [] }, values: HANDOUT };

describe("a look", () => {
  const look = (book: WorkbookHost, asked: object) => send(book, { ...asked, ask: "look" }).answer as Snapshot;

  test("shows the sheets with one of the words, rows without the blanks at their end, dates as blanks", async () => {
    const book = await workbook();
    book.type("Sheet1", "A1", "Ingredient");
    book.type("Sheet1", "C2", "=1+1");
    book.type("Sheet1", "B3", "2026-01-31");
    expect(typeof book.cell("Sheet1", "B3").value).toBe("object");
    const sheets = [{ id: expect.any(Number), name: "Sheet1", values: [["Ingredient"], ["", "", 2], ["", null]] }];
    expect(look(book, { words: ["ingredient", "Ingredient"] })).toEqual({ front: "Sheet1", sheets, names: [] });
    expect(look(book, { words: ["Ingredients"] })).toEqual({ front: "Sheet1", sheets: [], names: [] });
    const { front, sheets: unnamed } = look(book, { words: ["Ingredient"], unnamed: true });
    expect([front, unnamed]).toEqual(["", [{ ...sheets[0], name: "" }]]);
    expect(look(book, { sheet: "Gone" }).sheets).toEqual([]);
    const [shown] = look(book, { sheet: "", shown: true }).sheets;
    expect(shown?.shown?.[1]).toEqual(["", "", "2"]);
  });

  test("tells which of the workbook's names are there, and what stands under those that are to be read", async () => {
    const book = await workbook();
    const names = ["gramwright_larder", "gramwright_mixlog"];
    expect(look(book, { names }).names).toEqual([]);
    book.answer({ ask: "build", template: "larder", values: { ingredient: ["rye flour"] } });
    expect(look(book, { names }).names).toMatchObject([{ name: "gramwright_larder", values: [] }]);
    const [larder] = look(book, { cells: names }).names;
    expect(larder?.values[0]?.[0]).toBe("Ingredient");
    // What stands there and the blank rows below it, as far as the name reaches.
    expect(larder?.rows).toBe(larder?.values.length);
  });

  test.each([
    [{ sheet: 5 }],
    [{ sheet: "x".repeat(300) }],
    [{ words: "Ingredient" }],
    [{ words: [5] }],
    [{ words: [""] }],
    [{ words: Array(500).fill("a") }],
    [{ names: ["Private"] }],
    [{ cells: ["gramwright_larder!A1"] }],
  ])("is refused where it is none: %j", async (asked) => {
    const { ok, message } = send(await workbook(), { ...asked, ask: "look" });
    expect(ok ? "" : message).toMatch(/^The sidebar's look at the workbook could not be read\./);
  });
});

describe("a calculation", () => {
  test("gives what a cell gives, and says what a cell says", async () => {
    const calls = [
      { name: "BAKE_DOUGHFOR", args: [73, 390] },
      { name: "BAKE_DOUGHFOR", args: [73, "x"] },
      { name: "BAKE_TRUEPCT", args: [[[100], [60], [1], [2], [1]]] },
    ];
    const { answer } = send(await workbook(), { ask: "calculate", calls });
    const [dough, refused, shares] = (answer as CalculateAnswer).answers;
    // 73 × 390; 100 ÷ 164
    expect(dough).toEqual({ gives: 28470 });
    expect(refused).toEqual({ says: expect.stringMatching(/^BAKE_DOUGHFOR: weight is "x"/) });
    expect((shares as { gives: number[][] }).gives[0]?.[0]).toBeCloseTo(100 / 164, 12);
  });

  test("reads the shop's larder where it is asked to, and does without where there is none", async () => {
    const book = await workbook();
    const calls = [
      { name: "BAKE_CONTENT", args: [[["house blend"]], [[100]], "protein", { cells: "gramwright_larder" }] },
    ];
    const asked = () => (send(book, { ask: "calculate", calls }).answer as CalculateAnswer).answers[0];
    expect(asked()).toEqual({ says: expect.stringMatching(/house blend/) });
    const { sheet } = book.answer({ ask: "build", template: "larder", values: { ingredient: ["house blend"] } }) as {
      sheet: string;
    };
    const rows = book.values(sheet, book.usedRange(sheet));
    const head = rows.findIndex((row) => row[0] === "Ingredient");
    const column = rows[head]?.findIndex((cell) => /^protein/i.test(String(cell))) ?? -1;
    const row = rows.findIndex((cells, at) => at > head && cells[0] === "house blend");
    book.type(sheet, `${"ABCDEFGHIJKLMNOPQRSTUVWXYZ"[column]}${row + 1}`, "12%");
    // 12 % of 100
    expect(asked()).toEqual({ gives: expect.closeTo(12, 9) });
  });

  test.each([
    [{ calls: [{ name: "BAKE_NOTHING", args: [] }] }, /^There is no function "BAKE_NOTHING"\./],
    [{ calls: [{ name: "__proto__", args: [] }] }, /^There is no function/],
    [{ calls: {} }, /could not be read/],
    [{ calls: Array(50).fill({ name: "BAKE_DOUGHFOR", args: [1, 2] }) }, /could not be read/],
    [{ calls: [{ name: "BAKE_DOUGHFOR", args: [{ cells: "Sheet1!A1" }] }] }, /could not be read/],
    [{ calls: [{ name: "BAKE_DOUGHFOR", args: [[[1], [1, 2]]] }] }, /could not be read/],
    [{ calls: [null] }, /could not be read/],
  ])("is refused where it is none: %j", async (asked, sentence) => {
    const { ok, message } = send(await workbook(), { ...asked, ask: "calculate" });
    expect(ok ? "" : message).toMatch(sentence);
  });
});

describe("a plan is written as it is, or not at all", () => {
  type Plan = Record<string, unknown> & {
    values: unknown[][];
    formulas: { row: number; column: number; cells: string[][] }[];
  };
  const typedAt = ({ values }: Plan) => {
    const row = values.findIndex((cells) => cells.some((cell) => cell !== ""));
    return { row, column: values[row]?.findIndex((cell) => cell !== "") ?? 0 };
  };
  test.each<[string, (plan: Plan) => void]>([
    ["a title that is no text", (plan) => Object.assign(plan, { title: { toString: 5 } })],
    ["no rows", (plan) => Object.assign(plan, { rows: 0 })],
    ["rows beyond measure", (plan) => Object.assign(plan, { rows: 1e9 })],
    ["columns that are no whole number", (plan) => Object.assign(plan, { columns: 2.5 })],
    ["a grid that is short of a row", (plan) => plan.values.pop()],
    ["a row that is short of a cell", (plan) => plan.values[0]?.pop()],
    ["a value that is a list", (plan) => plan.values[0]?.splice(0, 1, [1])],
    ["widths of another number", (plan) => (plan.widths as number[]).push(80)],
    ["a width of nothing", (plan) => (plan.widths as number[]).splice(0, 1, 0)],
    ["a format of somebody else", (plan) => ((plan.formats as { kinds: string[] }).kinds[0] = '[>9]"x"')],
    ["a look without colour", (plan) => ((plan.appearances as { kinds: { ink: string }[] }).kinds[0] = { ink: "red" })],
    ["a kind that is not there", (plan) => (plan.appearances as { cells: number[][] }).cells[0]?.splice(0, 1, 999)],
    [
      "a prototype for a kind",
      (plan) => (plan.appearances as { cells: unknown[][] }).cells[0]?.splice(0, 1, "__proto__"),
    ],
    ["a formula that is none", (plan) => plan.formulas[0]?.cells[0]?.splice(0, 1, "1+1")],
    ["a formula that asks outside", (plan) => plan.formulas[0]?.cells[0]?.splice(0, 1, '=IMPORTXML("x";"y")')],
    [
      "a formula that asks outside, inside another",
      (plan) => plan.formulas[0]?.cells[0]?.splice(0, 1, '=IF(1;image ("x"))'),
    ],
    ["a formula over what is typed", (plan) => plan.formulas.push({ ...typedAt(plan), cells: [["=1"]] })],
    ["a formula beyond the sheet", (plan) => plan.formulas.push({ row: 0, column: 999, cells: [["=1"]] })],
    ["a range that is none", (plan) => Object.assign(plan, { wrapped: ["A1:B2;C3"] })],
    [
      "a border of another sheet",
      (plan) => Object.assign(plan, { borders: { box: ["Sheet1!A1"], under: [], rule: [] } }),
    ],
    ["a name that is not ours", (plan) => Object.assign(plan, { defines: [{ name: "Sales", range: "A1:B2" }] })],
    [
      "a rule of another kind",
      (plan) => ((plan.validations as { kinds: unknown[] }).kinds[0] = { is: "formula", help: "" }),
    ],
    [
      "a text that would become a formula",
      (plan) => {
        const { row, column } = typedAt(plan);
        const formats = plan.formats as { kinds: string[]; cells: number[][] };
        const general = formats.kinds.push("General") - 1;
        formats.cells[row]?.splice(column, 1, general);
        plan.values[row]?.splice(column, 1, '=IMPORTXML("x";"y")');
      },
    ],
  ])("%s", async (_, spoil) => {
    const book = await workbook();
    const plan = JSON.parse(JSON.stringify(planned(book, "build", HAND_OUT))) as Plan;
    spoil(plan);
    const reply = send(book, plan);
    expect(reply.ok ? "" : reply.message).toMatch(/^The plan of the sheet could not be read\./);
    expect(book.sheetNames()).toEqual(["Sheet1"]);
  });

  test("a plan of more rows than a new sheet has gets them", async () => {
    const book = await workbook();
    const values = { off_product: Array.from({ length: 1000 }, (_, at) => `bake ${at + 1}`) };
    const { sheet } = book.answer({ ask: "build", template: "bake-off-log", values }) as { sheet: string };
    const texts = book.values(sheet, book.usedRange(sheet)).flat();
    expect(["bake 1", "bake 1000"].map((text) => texts.includes(text))).toEqual([true, true]);
  });

  test("whatever of it is replaced by whatever: written or refused in a sentence, and no other sheet is touched", async () => {
    const book = await workbook();
    book.type("Sheet1", "A1", "rye");
    const good = JSON.stringify(planned(book, "build", HAND_OUT));
    const whatever = fc.oneof(
      fc.constantFrom<unknown>(
        "=1+1",
        "@",
        "A1",
        "__proto__",
        "Sheet1!A1",
        -1,
        0,
        1e308,
        null,
        [],
        {},
        [[]],
        "General",
      ),
      fc.jsonValue({ maxDepth: 2 }),
    );
    let written = 0;
    fc.assert(
      fc.property(fc.array(fc.nat(), { minLength: 1, maxLength: 4 }), whatever, (path, other) => {
        const plan = JSON.parse(good) as Record<string, unknown>;
        let at: Record<string, unknown> = plan;
        for (const [depth, turn] of path.entries()) {
          const keys = Object.keys(at).filter((key) => key !== "ask");
          const key = keys[turn % keys.length];
          if (key === undefined) break;
          const below = at[key];
          if (depth < path.length - 1 && typeof below === "object" && below !== null && Object.keys(below).length > 0)
            at = below as Record<string, unknown>;
          else {
            at[key] = other;
            break;
          }
        }
        const before = book.sheetNames();
        const reply = send(book, plan);
        if (reply.ok) {
          written += 1;
          const { sheet } = reply.answer as { sheet: string };
          const formulas = book.formulas(sheet, book.usedRange(sheet)).flat();
          for (const formula of formulas) if (formula !== undefined) expect(badFormula(formula), formula).toBe(false);
          expect(book.sheetNames().filter((name) => !before.includes(name))).toEqual([sheet]);
          book.engine.run("DELETE_SHEET", { sheetId: book.session.get("getActiveSheetId"), sheetName: sheet });
        } else {
          expect(reply.message.length).toBeGreaterThan(20);
          expect(book.sheetNames()).toEqual(before);
        }
        expect(book.usedRange("Sheet1")).toBe("A1");
        expect(book.cell("Sheet1", "A1").value).toBe("rye");
      }),
      { numRuns: tries(150), seed: seedOf(11) },
    );
    expect(written).toBeGreaterThan(0);
  });
});

describe("a workbook that changes between the look and the making", () => {
  const orders = [{ sheet: "Hand-out", pieces: 10 }];

  test.each([
    ["renamed", (book: WorkbookHost) => book.renameSheet("Hand-out", "Rolls")],
    [
      "deleted",
      (book: WorkbookHost) =>
        book.engine.run("DELETE_SHEET", { sheetId: book.session.get("getActiveSheetId"), sheetName: "Hand-out" }),
    ],
  ])("a formula sheet that was %s: refused, nothing is built, and the next press sees it", async (_, change) => {
    const book = await workbook();
    await buildSheet(HANDOUT, { book });
    const plan = planned(book, "day", { day: "2026-01-31", orders });
    change(book);
    const before = book.sheetNames();
    expect(send(book, plan)).toMatchObject({
      ok: false,
      message: 'The sheet "Hand-out" was renamed or deleted meanwhile, and nothing was built. Press the button again.',
    });
    expect(book.sheetNames()).toEqual(before);
    expect(book.ask({ ask: "day", day: "2026-01-31", orders })).toMatchObject({
      ok: false,
      message: expect.stringMatching(/no formula sheet/),
    });
  });

  test("a larder that went, or that came: refused, and no name points elsewhere", async () => {
    const book = await workbook();
    const larder = { template: "larder", values: { ingredient: ["bread flour"] } };
    const second = planned(book, "build", larder);
    book.answer({ ask: "build", ...larder });
    expect(send(book, second)).toMatchObject({
      ok: false,
      message: expect.stringMatching(/took the name gramwright_larder/),
    });
    const costed = planned(book, "build", HAND_OUT);
    book.engine.run("DELETE_NAMED_RANGE", { name: "gramwright_prices" });
    const before = book.sheetNames();
    expect(send(book, costed)).toMatchObject({
      ok: false,
      message: expect.stringMatching(/name gramwright_prices was taken out/),
    });
    expect(book.sheetNames()).toEqual(before);
  });
});
