// From a formula sheet to a new version and back, through the built add-on.
import { beforeAll, describe, expect, test } from "vitest";
import type { Wish } from "../../shared/adjust/changes.ts";
import type { Adjustable, Comparison, TakeChangesAnswer, Versions } from "../../shared/protocol/adjust.ts";
import type { SheetReview } from "../../shared/protocol/sheet-review.ts";
import { BUILT_BY } from "../../shared/sheet/built-by.ts";
import type { Values } from "../../shared/sheet/model.ts";
import { type Book, openBook, type Sheet } from "../../src/workbook/scripted.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { IS_LONG } from "../kit/scale.ts";
import { templateOf } from "../sidebar/samples.ts";

const ask = <T>(book: Book, question: string, rest: object = {}): T => book.answer({ ask: question, ...rest }) as T;
const reply = (book: Book, question: string, rest: object = {}) =>
  book.ask({ ask: question, ...rest }) as { readonly ok: boolean; readonly message?: string };

function take(book: Book, wishes: readonly Wish[], title: string | null = null): TakeChangesAnswer {
  const { sheet, id, seen } = ask<Adjustable>(book, "adjusting");
  return ask(book, "takeChanges", { sheet, id, seen, wishes, title });
}
const wish = (change: string, values: Wish["values"]): Wish => ({ change, values });
const HISTORY = "Formula history";
const PLAIN = "plain: water, and that of preferments";

async function built(
  template: string,
  values: Values = {},
  parts?: readonly string[],
): Promise<{ book: Book; sheet: Sheet }> {
  const book = await openBook();
  const model = templateOf(template);
  const own = { ...model.sample, ...values };
  return {
    book,
    sheet: book.build(template, own, {
      parts: parts ?? model.parts.filter((one) => one !== "cost" && one !== "label"),
    }),
  };
}
const names = (sheet: Sheet, many: number) =>
  Array.from({ length: many }, (_, at) => sheet.value("ingredient", at + 1));
const percents = (sheet: Sheet, many: number) =>
  Array.from({ length: many }, (_, at) => sheet.value("percent", at + 1));

const NAME = "Quay hearth loaf";
const PAN = "Quay pan loaf";

describe("a hearth loaf", () => {
  let book: Book;
  let sheet: Sheet;
  beforeAll(async () => {
    ({ book, sheet } = await built("hearth-loaf"));
  });

  test("is read as it stands", () => {
    const { formula, title, version } = ask<Adjustable>(book, "adjusting");
    expect([title, version]).toEqual(["Quay hearth loaf", "1"]);
    expect(formula.rows.map(({ name, amount }) => [name, amount])).toEqual([
      ["Strong white flour", 0.9],
      ["Wholemeal wheat flour", 0.1],
      ["Water", 0.7],
      ["Sea salt", 0.02],
      ["Fresh yeast", 0.008],
    ]);
    expect(formula.setApart).toEqual({ sort: "poolish", share: 0.3, hydration: 1, yeast: 0.002 });
    expect(formula.batch.amount).toBeCloseTo(sheet.value("dough") as number, 6);
    expect(formula.sizes.map(({ name, pieces, baked }) => [name, pieces, baked])).toEqual([
      ["round", 30, 800],
      ["long", 20, 400],
    ]);
    expect(formula.steps).toHaveLength(7);
    expect(formula.temp).toBe(24);
  });

  test("two changes are one version; what stood before is kept first", () => {
    const taken = take(book, [wish("hydration", { counted: PLAIN, wanted: "72" }), wish("salt", { wanted: "1.8" })]);
    expect(taken).toEqual({ sheet: "Quay hearth loaf", number: 2, wasEdited: true });
    expect(percents(sheet, 5)).toEqual([0.9, 0.1, 0.72, 0.018, 0.008]);
    expect(sheet.value("version")).toBe("2");
    expect(sheet.value("change_1")).toBe("Hydration 70 % to 72 %; Salt 2 % to 1.8 %");
    expect(sheet.value("check")).toBe("");
    // The dough stays: (30 × 800 ÷ 0.86 + 20 × 400 ÷ 0.84) ÷ 0.98.
    expect(sheet.value("dough")).toBeCloseTo(38_194.679866, 2);
    expect(book.values(HISTORY, "C5:D8").filter(([number]) => /^\d/.test(String(number)))).toEqual([
      ["1", "As it stood before the first change"],
      ["2", "Hydration 70 % to 72 %; Salt 2 % to 1.8 %"],
    ]);
  });

  test("a third of it as poolish, and a night in the retarder", () => {
    const taken = take(book, [
      wish("preferment", { sort: "poolish", share: "33.3", hydration: "100", yeast: "0.1" }),
      wish("retard", { hours: "12", temp: "4", before: "Final proof" }),
    ]);
    expect(taken).toMatchObject({ number: 3, wasEdited: false });
    expect([sheet.value("pre_share"), sheet.value("pre_yeast")]).toEqual([0.333, 0.001]);
    const steps = Array.from({ length: 9 }, (_, at) => sheet.value("step", at + 1));
    const was = templateOf("hearth-loaf").sample.step as readonly string[];
    const at = was.indexOf("Final proof");
    expect(steps.filter((one) => one !== "")).toEqual([...was.slice(0, at), "Retard", ...was.slice(at)]);
    expect(sheet.value("step_minutes", at + 1)).toBe(720);
    expect(sheet.value("check")).toBe("");
  });

  test("what was typed by hand since becomes a version first", () => {
    sheet.type("percent", "75%", 3);
    expect(take(book, [wish("salt", { wanted: "2" })])).toMatchObject({ number: 5, wasEdited: true });
    const { versions } = ask<Versions>(book, "versions");
    expect(versions.map(({ number, line, isNow }) => [number, line, isNow])).toEqual([
      [5, "Salt 1.8 % to 2 %", true],
      [4, "Edited by hand", false],
      [3, "Poolish of 30 % at 100 % to poolish of 33.3 % at 100 %; Retard 12 h at 4 °C", false],
      [2, "Hydration 70 % to 72 %; Salt 2 % to 1.8 %", false],
      [1, "As it stood before the first change", false],
    ]);
  });

  test("two versions side by side, and the first brought back as the sixth", () => {
    const { rows, figures, names: sides } = ask<Comparison>(book, "compare", { sheet: NAME, one: "1", other: "now" });
    expect(sides).toEqual(["Version 1", "Now"]);
    expect(rows.filter(({ isChanged }) => isChanged).map(({ name }) => name)).toEqual(["Water"]);
    expect(figures.find(({ label }) => label === "Prefermented flour")).toMatchObject({
      before: "30 %",
      after: "33.3 %",
    });
    const { sheet: name, id, seen } = ask<Adjustable>(book, "adjusting");
    expect(ask(book, "bringBack", { sheet: name, id, seen, number: 1 })).toMatchObject({ number: 6, wasEdited: false });
    expect(percents(sheet, 5)).toEqual([0.9, 0.1, 0.7, 0.02, 0.008]);
    expect(sheet.value("pre_share")).toBe(0.3);
    expect(sheet.value("step", 5)).toBe("Final proof");
    expect(sheet.value("check")).toBe("");
    expect(
      ask<Versions>(book, "versions")
        .versions.filter(({ isNow }) => isNow)
        .map(({ number }) => number),
    ).toEqual([6, 1]);
  });

  test("what is kept already is not kept twice", () => {
    const before = ask<Versions>(book, "versions").versions.length;
    expect(ask(book, "keepVersion", { sheet: NAME, line: "as sold at the quay" })).toMatchObject({ number: 6 });
    expect(ask<Versions>(book, "versions").versions).toHaveLength(before);
    sheet.type("percent", "71%", 3);
    expect(ask(book, "keepVersion", { sheet: NAME, line: "as sold at the quay" })).toMatchObject({ number: 7 });
    expect(ask<Versions>(book, "versions").versions[0]).toMatchObject({ line: "as sold at the quay", isNow: true });
  });

  test("a sheet that was changed since it was read, was deleted, or says that something is wrong, is left alone", () => {
    const { id, seen } = ask<Adjustable>(book, "adjusting");
    const asked = { sheet: NAME, id, seen, wishes: [wish("salt", { wanted: "1" })], title: null };
    const count = ask<Versions>(book, "versions").versions.length;
    sheet.type("percent", "75%", 3);
    expect(reply(book, "takeChanges", asked).message).toMatch(/was changed since you chose/);
    expect(reply(book, "takeChanges", { ...asked, sheet: "Nothing" }).message).toMatch(/There is no sheet/);
    expect(ask<Versions>(book, "versions").versions).toHaveLength(count);
    sheet.type("kind", "", 3);
    expect(reply(book, "adjusting").message).toBe("Water has no type that can be read. Choose one on the sheet first.");
  });
});

describe("rows that come and go", () => {
  test("milk powder for milk keeps the row's place; a full table gets rows", async () => {
    const { book, sheet } = await built("soft-bun");
    take(book, [wish("swap", { swap: "Whole milk → Whole milk powder", part: "50" })]);
    expect(names(sheet, 9)).toContain("Whole milk powder");
    // The table's last free row.
    sheet.type("ingredient", "Malt", 10);
    sheet.type("kind", "other", 10);
    sheet.type("percent", "1%", 10);
    const { number } = take(book, [
      wish("protein", { known: "a figure of the mill", now: "11", wanted: "12.5" }),
      wish("swap", { swap: "Sugar → Honey", part: "50" }),
    ]);
    expect(number).toBeGreaterThan(2);
    expect(sheet.value("check")).toBe("");
    const { formula } = ask<Adjustable>(book, "adjusting");
    expect(formula.rows.map(({ name }) => name)).toEqual(
      expect.arrayContaining(["Vital wheat gluten", "Honey", "Sugar"]),
    );
    expect(sheet.value("version")).toBe(String(number));
    // Rows that came in are weighed like the others.
    const end = sheet.rows("grams") - 1;
    const grams = Array.from({ length: end }, (_, at) =>
      Number(book.values("Ferry bun", sheet.at("grams", at + 1))[0]?.[0] || 0),
    );
    expect(grams.reduce((sum, one) => sum + one, 0)).toBeCloseTo(sheet.value("dough") as number, 6);
  });

  let book: Book;
  let sheet: Sheet;
  beforeAll(async () => {
    const ingredient = (templateOf("pan-loaf").sample.ingredient as string[]).map((name) =>
      name === "Sugar" ? "=Rye" : name,
    );
    ({ book, sheet } = await built("pan-loaf", { ingredient }));
  });

  test("a poolish in a sheet that sets none apart is a row, and its flours make 100 % with it", () => {
    take(book, [wish("preferment", { sort: "poolish", share: "30", hydration: "100" })]);
    expect(sheet.value("check")).toBe("");
    const { formula } = ask<Adjustable>(book, "adjusting");
    expect(formula.frame).toBe("all flour");
    expect(formula.rows.find(({ name }) => name === "Poolish")?.amount).toBeCloseTo(0.6, 9);
    expect(sheet.value("flour_all")).toBeCloseTo(1, 9);
  });

  test("a smaller tin, and an ingredient that is short", () => {
    const fill = sheet.value("tin_fill");
    take(book, [wish("tin", { shape: "box", sizes: "20; 10; 8" })]);
    expect(sheet.value("tin_capacity")).toBeCloseTo(1600, 6);
    expect(sheet.value("tin_fill")).toBe(fill);
    take(book, [wish("short", { ingredient: "Water", there: "1000" })]);
    expect(sheet.value("by")).toBe("dough");
    const { formula } = ask<Adjustable>(book, "adjusting");
    const water = formula.rows.findIndex(({ name }) => name === "Water");
    expect(sheet.value("grams", water + 1)).toBeCloseTo(1000, 6);
  });

  test("names that a cell would read as something else are kept and brought back as they are", () => {
    const odd = ["=Rye", "1/2", "007", "+salt", "TRUE", "'quoted"];
    const from = names(sheet, 9).indexOf("=Rye") + 1;
    sheet.type("ingredient", "1/2", names(sheet, 9).indexOf("Butter") + 1);
    const read = () => ask<Adjustable>(book, "adjusting").formula.rows.map(({ name }) => name);
    const was = read();
    expect(was).toEqual(expect.arrayContaining(["=Rye", "1/2"]));
    const { number } = take(book, [wish("salt", { wanted: "1" })]);
    for (const [at, line] of odd.entries()) {
      sheet.type("percent", `${at + 11}%`, from);
      ask(book, "keepVersion", { sheet: PAN, line });
      expect(ask<Versions>(book, "versions").versions[0]?.line).toBe(line);
    }
    sheet.type("ingredient", "Oats", from);
    const { id, seen } = ask<Adjustable>(book, "adjusting");
    ask(book, "bringBack", { sheet: PAN, id, seen, number });
    expect(read()).toEqual(was);
  });
});

test("as a new formula sheet: the old one stays, the new one has everything else", async () => {
  const { book, sheet } = await built("levain-loaf");
  const before = percents(sheet, 5);
  const taken = take(book, [wish("hydration", { counted: PLAIN, wanted: "78" })], "Harbour wet loaf");
  expect(taken).toMatchObject({ sheet: "Harbour wet loaf", number: 1 });
  expect(percents(sheet, 5)).toEqual(before);
  const fresh = book.sheet("Harbour wet loaf");
  expect(percents(fresh, 5)).toEqual([0.7, 0.2, 0.1, 0.78, 0.02]);
  expect(fresh.value("check")).toBe("");
  for (const name of ["pre_share", "keep", "ready", "dough_target", "pieces", "dough_ordered"])
    expect(fresh.value(name), name).toEqual(sheet.value(name));
  for (const name of ["size_pieces", "step_start", "step"])
    expect(fresh.value(name, 1), name).toEqual(sheet.value(name, 1));
  expect(fresh.value("title")).toBe("Harbour wet loaf");
});

test("percentages typed plain stay plain, in ounces and °F as well; what did not change stays as it was typed", async () => {
  const book = await openBook();
  const values = {
    title: "Ounces",
    by: "flour",
    amount: 160,
    ingredient: ["White flour", "Rye flour", "Water", "Salt", "Instant yeast"],
    kind: ["flour", "flour", "water", "salt", "yeast"],
    percent: [66.6, 33.3, 67, 2, 0.7],
    dough_target: 76,
    step: ["Bulk fermentation", "Bake"],
    step_minutes: [180, 40],
  };
  const sheet = book.build("pan-loaf", values, {
    weight: "oz",
    temperature: "F",
    length: "in",
    parts: ["water", "steps"],
  });
  // 2 to 1.8 of flour of 99.9, which counts as 100; half the time by the inverse rule is twice the yeast.
  const taken = take(book, [
    wish("salt", { wanted: "1.8" }),
    wish("time", { hours: "1.5", edge: "low" }),
    wish("swap", { swap: "Instant yeast → Fresh yeast", part: "100" }),
  ]);
  expect(taken.number).toBe(2);
  expect(percents(sheet, 2)).toEqual([66.6, 33.3]);
  expect(sheet.value("percent", 4)).toBeCloseTo(1.8 * 0.999, 9);
  expect(sheet.value("ingredient", 5)).toBe("Fresh yeast");
  expect(sheet.value("percent", 5)).toBeCloseTo((2 * 0.7) / 0.33, 9);
  // Fresh yeast brings the rest of its weight as water.
  expect(sheet.value("percent", 3)).toBeCloseTo(67 + 1.4 - 1.4 / 0.33, 9);
  expect(sheet.value("by")).toBe("flour");
  expect(sheet.value("flour_all")).toBeCloseTo(99.9, 9);
});

// In a long run; a usual one has the templates above and below.
test.skipIf(!IS_LONG).each(TEMPLATES.map(({ name }) => name))(
  "%s: a change is taken, and the version before is brought back",
  async (name) => {
    const { book, sheet } = await built(name);
    const title = String(templateOf(name).sample.title);
    const before = percents(sheet, 8);
    const { formula } = ask<Adjustable>(book, "adjusting");
    expect(formula.batch.amount).toBeGreaterThan(0);
    const dough = sheet.value("dough");
    expect(take(book, [wish("salt", { wanted: "1.3" })])).toMatchObject({ number: 2 });
    expect(sheet.value("check")).toBe("");
    expect(sheet.value("dough")).toBeCloseTo(dough as number, 6);
    expect(percents(sheet, 8)).not.toEqual(before);
    const { id, seen } = ask<Adjustable>(book, "adjusting");
    ask(book, "bringBack", { sheet: title, id, seen, number: 1 });
    expect(percents(sheet, 8)).toEqual(before);
    expect(sheet.value("check")).toBe("");
  },
);

describe("fat that is rolled in", () => {
  let book: Book;
  let sheet: Sheet;
  const CROISSANT = "Slipway croissant";
  beforeAll(async () => {
    ({ book, sheet } = await built("laminated"));
  });

  test("is read with the dough, which is weighed with it; another share is taken, and the finished dough stays", () => {
    const { formula } = ask<Adjustable>(book, "adjusting");
    expect(formula.rollIn).toEqual({ name: "Sheet butter", share: 0.28, of: "base" });
    expect(formula.batch.amount).toBeCloseTo(10440.376051, 4);
    const taken = take(book, [
      wish("salt", { wanted: "1.3" }),
      wish("roll-in", { fat: "Margarine", share: "25", of: "finished" }),
    ]);
    expect(taken).toMatchObject({ number: 2 });
    expect(["roll_in_name", "roll_in_share", "roll_in_of"].map((name) => sheet.value(name))).toEqual([
      "Margarine",
      0.25,
      "finished",
    ]);
    expect(sheet.value("check")).toBe("");
    expect(sheet.value("dough_in_all")).toBeCloseTo(10440.376051, 4);
    expect(sheet.value("roll_in")).toBeCloseTo(10440.376051 / 4, 4);
  });

  test("short of it, the order becomes dough with its fat", () => {
    take(book, [wish("short", { ingredient: "Margarine (roll-in)", there: "1000" })]);
    expect(sheet.value("by")).toBe("dough");
    expect(sheet.value("roll_in")).toBeCloseTo(1000, 6);
  });

  test("the version before comes back with its fat and its folds", () => {
    sheet.type("fold_1", "4");
    const { id, seen } = ask<Adjustable>(book, "adjusting");
    ask(book, "bringBack", { sheet: CROISSANT, id, seen, number: 1 });
    expect(["roll_in_name", "roll_in_share", "roll_in_of", "fold_1"].map((name) => sheet.value(name))).toEqual([
      "Sheet butter",
      0.28,
      "base",
      3,
    ]);
    expect(sheet.value("check")).toBe("");
  });

  test("two versions are compared with their labels, or in words why there is none", () => {
    const compared = () => ask<Comparison>(book, "compare", { sheet: CROISSANT, one: "2", other: "now" });
    expect(compared().rows.at(-1)).toMatchObject({ name: "Sheet butter (roll-in) (was Margarine)", isChanged: true });
    expect(compared().labels).toEqual(
      Array(2).fill({ missing: expect.stringMatching(/^No labelling rules are chosen\. Choose/) }),
    );
    book.build("settings", { setting: ["Labelling rules"], setting_value: ["EU"] });
    expect(compared().labels[1]).toEqual({
      missing: expect.stringMatching(/^The ingredient list is not known because of "S/),
    });
    book.build("larder", {
      ingredient: [
        "Strong white flour",
        "Whole milk",
        "Sugar",
        "Unsalted butter",
        "Instant yeast",
        "Sea salt",
        "Margarine",
        "Sheet butter",
      ],
      label_name: ["wheat flour", "milk", "sugar", "butter", "yeast", "salt", "margarine", "butter"],
      allergens: ["wheat", "milk", "none", "milk", "none", "none", "none", "milk"],
    });
    // By hand, for 1 of flour: 1.715 ÷ 3 is 0.572 of margarine, and 0.28 × 1.722 + 0.06 is 0.542 of butter. Of the water 0.856 × 2.287
    // − 1.907 and 0.856 × 2.204 − 1.824 are left, 3 % of what is baked: no more than may be left out.
    expect(compared().labels).toEqual([
      { list: "WHEAT flour, margarine, MILK, sugar, butter (MILK), salt, yeast" },
      { list: "WHEAT flour, butter (MILK), MILK, sugar, salt, yeast" },
    ]);
  });
});

test("rounds by their diameter: another one is taken, and the first comes back with its weight per area", async () => {
  const { book, sheet } = await built("flat-round");
  const { formula } = ask<Adjustable>(book, "adjusting");
  expect(formula.sizes.map(({ name, diameter }) => [name, diameter])).toEqual([
    ["small", 25],
    ["large", 32],
  ]);
  expect(formula.perArea).toBe(0.4);
  take(book, [wish("round", { size: "large", diameter: "40", area: "0.3" })]);
  expect([sheet.value("size_diameter", 2), sheet.value("per_area"), sheet.value("check")]).toEqual([40, 0.3, ""]);
  // π ÷ 4 × 40² × 0.3.
  expect(sheet.value("size_scaled", 2)).toBeCloseTo(376.991118, 4);
  const { id, seen } = ask<Adjustable>(book, "adjusting");
  ask(book, "bringBack", { sheet: "Breakwater flat", id, seen, number: 1 });
  expect(sheet.value("size_scaled", 2)).toBeCloseTo(321.699088, 4);
  expect(sheet.value("check")).toBe("");

  // A sheet says in its first row which version built it; where that is a newer one, Gramwright says so and leaves it alone.
  const first = book.values("Breakwater flat", "A1:Z1")[0] ?? [];
  sheet.type(`${"ABCDEFGHIJKLMNOPQRSTUVWXYZ"[first.indexOf(BUILT_BY)]}1`, "Gramwright 99.0.0");
  const newer = /^Gramwright 99\.0\.0 built “Breakwater flat”, and this is \d+\.\d+\.\d+\. Update Gramwright/;
  const read = ask<Adjustable>(book, "adjusting");
  expect(read.says).toMatch(newer);
  const wishes = [wish("salt", { wanted: "1" })];
  expect(reply(book, "takeChanges", { ...read, wishes, title: null }).message).toMatch(newer);
  expect(reply(book, "change", { sheet: "Breakwater flat", part: "water", isWanted: false }).message).toMatch(newer);
  expect(ask<SheetReview>(book, "review", { style: "" }).remarks[0]).toMatchObject({
    cell: "A1",
    says: expect.stringMatching(newer),
  });
  expect(ask<{ note: string }>(book, "card", { sheet: "Breakwater flat" }).note).toMatch(newer);
});
