// Add to this sheet: a part is put in or taken out, and all that was typed elsewhere stands as before.
import { describe, expect, test } from "vitest";
import type { SheetReview } from "../../shared/protocol/sheet-review.ts";
import type { SheetModel, Values } from "../../shared/sheet/model.ts";
import { plan } from "../../shared/sheet/plan.ts";
import type { SheetPlan } from "../../shared/sheet/sheet-plan.ts";
import { partsOn } from "../../src/planners/parts-on-sheet.ts";
import { type Book, openBook, type Sheet } from "../../src/workbook/scripted.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { panLoaf } from "../../templates/pan-loaf.ts";
import { IS_LONG, someOf } from "../kit/scale.ts";
import { METRIC_UNITS, US_UNITS } from "../kit/units.ts";
import { templateOf } from "../sidebar/samples.ts";

const change = (sheet: Sheet, part: string, isWanted: boolean): Sheet => {
  const { book, sheet: name } = sheet;
  const answer = book.answer({ ask: "change", sheet: name, part, isWanted }) as { sheet: string };
  expect(answer.sheet).toBe(name);
  return book.sheet(answer.sheet);
};
const refused = (sheet: Sheet, part: string, isWanted: boolean): string => {
  const reply = sheet.book.ask({ ask: "change", sheet: sheet.sheet, part, isWanted });
  return reply.ok ? "" : reply.message;
};

const NEED_LARDER = ["cost", "label"];
async function opened(parts: readonly string[]): Promise<Book> {
  const book = await openBook();
  if (parts.some((part) => NEED_LARDER.includes(part))) book.build("larder", { title: "Ingredients" });
  return book;
}

/** Inputs by name, as they stand: the text of a formula, or what was typed. */
function inputsOf(model: SheetModel, sheet: Sheet): ReadonlyMap<string, string> {
  const there = new Set(sheet.names());
  const texts = (name: string, rows: readonly number[]) =>
    JSON.stringify(rows.map((row) => sheet.formula(name, row) || sheet.value(name, row)));
  const entries = model.bands.flat().flatMap((item): (readonly [string, string])[] => {
    if ("table" in item)
      return item.columns
        .filter(({ role, name }) => role === "input" && there.has(name))
        .map(({ name }) => [
          name,
          texts(
            name,
            Array.from({ length: sheet.rows(name) - 2 }, (_, at) => at + 1),
          ),
        ]);
    return item.lines.flatMap(({ cells }) =>
      cells.flatMap(({ name, formula, role }) =>
        name !== undefined && formula === undefined && role !== "helper" && there.has(name)
          ? [[name, texts(name, [0])] as const]
          : [],
      ),
    );
  });
  return new Map(entries);
}

/** What the page shows. */
const page = (sheet: Sheet): unknown[][] =>
  sheet.book.values(sheet.sheet, "A1:L70").map((line) => line.map((cell) => (cell instanceof Date ? +cell : cell)));

/** What a plan writes of words: those of the page, and those beside it. */
function gridOf({ values, columns, aside }: SheetPlan): unknown[][] {
  const grid = values.map((line): unknown[] => [...line, ...Array<string>(columns - line.length).fill("")]);
  for (const { row, column, cells } of aside.words) grid[row]?.splice(column, cells.length, ...cells);
  return grid;
}

test.each(TEMPLATES)("$title: every choice of parts is known by its words", (model) => {
  const choices = model.parts.reduce<string[][]>((some, part) => some.flatMap((one) => [one, [...one, part]]), [[]]);
  for (const units of someOf([METRIC_UNITS, US_UNITS], 2, TEMPLATES.indexOf(model)))
    for (const parts of someOf(choices, 3, TEMPLATES.indexOf(model)))
      expect(partsOn(gridOf(plan(model, { ...units, parts }, model.sample)), model, { ...units, parts: [] })).toEqual(
        parts,
      );
});

test("it is told how many typed cells go with a part", async () => {
  const { sample } = panLoaf;
  const book = await openBook();
  const sheet = book.build("pan-loaf", sample, { ...METRIC_UNITS, parts: ["tin", "water"] });
  const cleared = () => {
    const { parts } = book.answer({ ask: "review", style: "" }) as SheetReview;
    return Object.fromEntries(parts.map(({ part, isThere, clears }) => [part, [isThere, clears]]));
  };
  // Five sizes of the tin and its fill; four temperatures, mixer, minutes and friction. All else is as it was from the start.
  expect(cleared()).toEqual({
    tin: [true, 6],
    water: [true, 7],
    steps: [false, 0],
    cost: [false, 0],
    label: [false, 0],
  });
  sheet.type("price_typed", "0.8", 1);
  expect(cleared().cost).toEqual([false, 1]);
});

/** A long run tries every part of every template, a short one three of them: a block, a preferment's columns, and what reads the ingredients. */
const SHORT = ["hearth-loaf preferment", "soft-bun cost"];
const CASES = TEMPLATES.flatMap((model) =>
  model.parts.flatMap((part) =>
    IS_LONG || `${model.name} ${part}` === "pan-loaf water" || SHORT.includes(`${model.name} ${part}`)
      ? [[`${model.title}, ${part}`, model, part] as const]
      : [],
  ),
);

describe("each part of each template", () => {
  test.each(CASES)("%s: taken out and put in again, as if it had been built so", async (_says, model, part) => {
    const by =
      model.name === "cake" || model.name === "cookie"
        ? { by: model.name === "cake" ? "batter" : "dough", amount: 9000 }
        : {};
    const values: Values = { ...model.sample, law: "EU", date: 46_000, ...by };
    const without = model.parts.filter((one) => one !== part);
    const book = await opened(model.parts);
    const sheet = book.build(model.name, values, { ...METRIC_UNITS, parts: model.parts });
    const before = inputsOf(model, sheet);
    const out = change(sheet, part, false);
    const fresh = await opened(model.parts);
    // Of what a larder makes possible nothing is left out when a sheet is built beside one.
    const alike = NEED_LARDER.includes(part)
      ? null
      : fresh.build(model.name, values, { ...METRIC_UNITS, parts: without });
    if (alike !== null) expect(page(out)).toEqual(page(alike));
    const kept = inputsOf(model, out);
    expect(kept.size).toBeGreaterThan(10);
    for (const [name, texts] of kept) if (before.has(name)) expect([name, texts]).toEqual([name, before.get(name)]);
    expect(out.value("check")).toBe("");
    const again = change(out, part, true);
    for (const [name, texts] of inputsOf(model, again))
      if (kept.has(name)) expect([name, texts]).toEqual([name, kept.get(name)]);
    expect(book.sheetNames().filter((name) => name.startsWith(String(values.title)))).toEqual([values.title]);
    expect(book.shown.messages).toEqual([]);
  });
});

const lastRow = (sheet: Sheet): number => Math.max(...sheet.names().map((name) => sheet.rowOf(name)));

describe("a sheet that people worked on", () => {
  const model = templateOf("hearth-loaf");
  const worked = async () => {
    const book = await openBook();
    const parts = model.parts.filter((part) => !NEED_LARDER.includes(part));
    const sheet = book.build(model.name, { ...model.sample, date: 46_000 }, { ...US_UNITS, parts });
    book.build("pan-loaf", { title: "Other" }, { parts: [] });
    return { book, sheet };
  };

  test("rows that were inserted, formulas that were typed, words of one's own, notes and what other sheets read go along", async () => {
    const { book, sheet } = await worked();
    const name = sheet.sheet;
    sheet.insertRows(sheet.rowOf("ingredient", 2), 2);
    sheet.insertRows(sheet.rowOf("step", 2), 1);
    sheet.type("ingredient", "Malt", 2);
    sheet.type("kind", "other", 2);
    sheet.type("percent", "=C$99*0+0.5%", 2);
    sheet.type("step_minutes", `=${sheet.at("step_minutes", 1)}+5`, 2);
    sheet.type("step", "'=Fold", 2);
    book.type(name, "C1", "ask Ada");
    book.type(name, `A${lastRow(sheet) + 3}`, "below all");
    book.type("Sheet1", "A1", `='${name}'!${sheet.at("percent", 3)}*2`);
    book.type("Sheet1", "A2", `=SUM('${name}'!${sheet.at("grams", 1)}:${sheet.at("grams", 9)})`);
    book.type("Sheet1", "A3", `='${name}'!${sheet.at("pre_share")}+1`);
    book.type("Sheet1", "A4", `="'${name}'!A1 is a text"`);
    const before = inputsOf(model, sheet);
    const shown = book.values("Sheet1", "A1:A4");
    const [dough, starts] = [sheet.value("dough_exact"), sheet.value("step_start", 1)];
    const out = change(sheet, "water", false);
    const kept = inputsOf(model, out);
    // Where cells are is another matter; a decimal that a script writes is a fraction, and an apostrophe only marks a text.
    const moved = (text: string | undefined) =>
      text
        ?.replace(/[A-Z]+\$?\d+/g, "#")
        .replace("(5/10)%", "0.5%")
        .replace("'=", "=");
    for (const [one, text] of kept)
      if (before.has(one)) expect([one, moved(text)]).toEqual([one, moved(before.get(one))]);
    expect(book.values("Sheet1", "A1:A4")).toEqual(shown);
    expect([out.value("dough_exact"), out.value("step_start", 1)]).toEqual([dough, starts]);
    expect(out.value("step_minutes", 2)).toBe(Number(out.value("step_minutes", 1)) + 5);
    expect(out.value("step", 2)).toBe("=Fold");
    const all = book.values(name, book.usedRange(name)).flat();
    expect(all).toContain("ask Ada");
    expect(all).toContain("below all");
    // What a block had that was taken out is gone, and so is what read it.
    const last = change(out, "preferment", false);
    expect(last.names()).not.toContain("pre_share");
    expect(book.values("Sheet1", "A3")).toEqual([["#REF!"]]);
    expect(book.values("Sheet1", "A1:A2")).toEqual(shown.slice(0, 2));
    expect(book.values("Sheet1", "A4")).toEqual(shown.slice(3));
  });

  test("its row of the formula list says where its cells are now", async () => {
    const book = await openBook();
    book.build("hearth-loaf", { ...model.sample }, { parts: [] });
    book.answer({ ask: "list" });
    const sheet = book.build("pan-loaf", { ...panLoaf.sample }, { ...METRIC_UNITS, parts: ["tin", "steps"] });
    // All but the number of the tab.
    const list = () => book.values("Formula list", "A1:AD8").map((line) => line.filter((_, at) => at !== 6));
    const before = list();
    expect(before.flat()).toContain("Quay pan loaf");
    const out = change(sheet, "tin", false);
    expect(list()).toEqual(before);
    change(out, "water", true);
    expect(list()).toEqual(before);
    book.type("Quay pan loaf", book.sheet("Quay pan loaf").at("title"), "Renamed loaf");
    expect(list().flat()).toContain("Renamed loaf");
  });

  test("notes stay on their cells", async () => {
    const { sheet } = await worked();
    sheet.type("weight", "a cup", 3);
    const note = sheet.note("weight", 3);
    expect(note).toMatch(/^Gramwright cleared/);
    const out = change(sheet, "water", false);
    expect(out.note("weight", 3)).toBe(note);
    // And go at the next edit of the cell, as they would have.
    out.type("weight", "9.5", 3);
    expect(out.note("weight", 3)).toBe("");
  });

  test("refused in a sentence, and nothing is changed", async () => {
    const { book, sheet } = await worked();
    const before = JSON.stringify(book.engine.data());
    expect(refused(sheet, "cost", true)).toBe(
      "Build the ingredient sheet first, under Plan: costs and labels are read from it.",
    );
    expect(refused(sheet, "water", true)).toMatch(/has this part already/);
    expect(refused(sheet, "cost", false)).toMatch(/does not have this part/);
    expect(refused(sheet, "tin", true)).toBe("This sheet has no such part.");
    expect(JSON.stringify(book.engine.data())).toBe(before);
    const tins = book.build("pan-loaf", { ...panLoaf.sample, by: "tins", amount: 12 }, { parts: ["tin"] });
    expect(refused(tins, "tin", false)).toMatch(/is scaled to tins\. Choose pieces, flour or the weight of the dough/);
    book.type(sheet.sheet, `A${sheet.rowOf("ingredient", 0) - 1}`, "My ingredients");
    expect(refused(sheet, "water", false)).toMatch(/Columns or headings of the sheet .* so its cells cannot be told/);
  });

  test.each([
    ["once", (book: Book, call: number) => book.failAt(call)],
    ["from there on", (book: Book, call: number) => book.failFrom(call)],
  ] as const)(
    "where the service fails %s the sheet stands as it was, or the sentence says what is left",
    async (_says, fails) => {
      const { book, sheet } = await worked();
      const name = sheet.sheet;
      book.type("Sheet1", "A1", `='${name}'!${sheet.at("percent", 3)}*2`);
      const grid = page(sheet);
      const asked = { ask: "change", sheet: name, part: "water", isWanted: false };
      let isDone = false;
      for (let call = 1; !isDone && call < 100; call += IS_LONG ? 1 : 23) {
        fails(book, call);
        const reply = book.ask(asked);
        book.failAt(undefined);
        expect(book.values("Sheet1", "A1")).toEqual([[1.4]]);
        const left = book.sheetNames().filter((one) => one.startsWith(name) && one !== name);
        if (reply.ok) isDone = true;
        else {
          expect([call, page(book.sheet(name))]).toEqual([call, grid]);
          for (const one of left) expect([call, reply.message]).toEqual([call, expect.stringContaining(one)]);
          if (left.length === 0)
            expect(reply.message).toMatch(/stands as it was|could not be read|nothing was|may be left/);
          for (const one of left) book.deleteSheet(one);
          if (/other sheets read it/.test(reply.message)) break;
        }
      }
    },
  );
});
