// What Check says of the sheet in front is what its own cells say.
import { describe, expect, test } from "vitest";
import type { SheetReview } from "../../shared/protocol/sheet-review.ts";
import type { SheetModel } from "../../shared/sheet/model.ts";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { METRIC_UNITS } from "../kit/units.ts";
import { templateOf } from "../sidebar/samples.ts";
import { buildSheet, HANDOUT, workbook } from "../templates/sheet-support.ts";

const review = (book: WorkbookHost, style = "") => book.answer({ ask: "review", style }) as SheetReview;
const FEEL = "The dough's feel";
const HANDOUT_SHEET = "Hand-out";
const fact = ({ facts }: SheetReview, label: string) => facts.find((one) => one.label === label)?.says;

/** What the first flour speaks for. */
const OF_ALL = ["Whole dough", "Water", "Yeast", "Salt"];
/** What the rows say beside the sheet, whatever comes first. */
const inAnyOrder = (says: readonly string[]) =>
  says.map((one) => one.replace(/\.$/, "").toLowerCase()).sort((one, other) => one.localeCompare(other));

describe("the sheet in front is read", () => {
  test.each(TEMPLATES)("$title: notes and figures are those of the sheet's own cells", async (model: SheetModel) => {
    const parts = model.parts.filter((part) => part !== "cost" && part !== "label");
    // Salty, and weighed on coarse scales, so that there is something to say.
    const percent = (model.sample.percent as readonly number[]).map((one, row) =>
      (model.sample.kind as readonly string[])[row] === "salt" ? 0.05 : one,
    );
    const built = await buildSheet(
      { ...model.sample, percent, step_coarse: 50, step_fine: 20 },
      { model, options: { ...METRIC_UNITS, parts } },
    );
    const { book, sheet, at, value } = built;
    const read = review(book);
    expect(read.sheet).toBe(sheet);
    const rows = (model.sample.ingredient as readonly string[]).length;
    for (let row = 1; row <= rows; row++) {
      const own = read.remarks.filter(({ cell }) => cell === at("percent", row)).map(({ says }) => says);
      const note = String(value("note", row));
      expect(inAnyOrder(own)).toEqual(inAnyOrder(note === "" ? [] : note.split("; ")));
      for (const { cell, name } of read.remarks)
        if (cell === at("percent", row))
          expect([...OF_ALL, (model.sample.ingredient as readonly string[])[row - 1]]).toContain(name);
    }
    expect(read.remarks[0]?.says).toMatch(/^Salt is 5 % of all flour, above the usual range/);
    const range = (name: string) => `'${sheet}'!${at(name, 1)}:${at(name, rows)}`;
    book.type("Sheet1", "C1", `=BAKE_HYDRATION(${range("ingredient")};${range("grams")};${range("kind")})`);
    const hydration = book.cell("Sheet1", "C1").value;
    expect(hydration).toBeTypeOf("number");
    expect(fact(read, "Effective hydration")).toContain(`${Math.round((hydration as number) * 1000) / 10} %`);
    expect(fact(read, FEEL)).toMatch(/^Hydration is (usual|low|high) for /);
    if (parts.includes("tin")) expect(fact(read, "Fill")).toBe(value("tin_note"));
    if (parts.includes("water")) expect(fact(read, "Water")).toBe(value("water_note"));
  });

  test("each flour's share and the prefermented share are told, a starter's flour among them", async () => {
    // 20 % of the flour are set apart: the sample's own figure.
    const levain = templateOf("levain-loaf");
    const { book } = await buildSheet(levain.sample, {
      model: levain,
      options: { ...METRIC_UNITS, parts: ["preferment", "water", "steps"] },
    });
    expect(fact(review(book), "Flour")).toBe("Strong white flour 70 %, Wholemeal wheat flour 20 %, Rye flour 10 %.");
    expect(fact(review(book), "Prefermented flour")).toBe("20 % of all flour.");
    // 100 of flour and 40 of a levain at 100 %, which is half flour: 20 of 120.
    const typed = await buildSheet({
      ...HANDOUT,
      ingredient: ["Flour", "Levain", "Water", "Salt"],
      kind: ["flour", "levain 100%", "water", "salt"],
      percent: [1, 0.4, 0.6, 0.02],
    });
    expect(fact(review(typed.book), "Flour")).toBe("Flour 83.3 %, flour in Levain 16.7 %.");
    expect(fact(review(typed.book), "Prefermented flour")).toBe("16.7 % of all flour.");
    const plain = await buildSheet(HANDOUT);
    expect(fact(review(plain.book), "Prefermented flour")).toBeUndefined();
  });

  test("missing yeast and 5 % of salt lead, whatever the water is", async () => {
    const { book, at } = await buildSheet({
      ...HANDOUT,
      ingredient: ["Flour", "Water", "Salt", "Butter"],
      kind: ["flour", "water", "salt", "fat"],
      percent: [1, 0.63, 0.05, 0.3],
    });
    const { remarks, facts } = review(book);
    expect(remarks.map(({ name, cell, says }) => [name, cell, says.replace(/ is .*$/, "")])).toEqual([
      ["Yeast", at("percent", 1), "Yeast"],
      ["Salt", at("percent", 3), "Salt"],
      ["Butter", at("percent", 4), "Fat"],
    ]);
    expect(remarks[0]?.says).toMatch(/^Yeast is missing, below the usual range for pan bread/);
    expect(facts[0]?.says).not.toMatch(/usual/);
  });

  test("what the sheet cannot work with comes before all that is unusual, by ingredient and cell", async () => {
    const { book, at, type } = await buildSheet({ ...HANDOUT, percent: [1, 0.67, 0.05, 0.01] });
    type("kind", "", 2);
    book.paste(HANDOUT_SHEET, at("percent", 4), "a bit");
    const { remarks } = review(book);
    expect(remarks.slice(0, 3).map(({ name, cell }) => [name, cell])).toEqual([
      ["Water", at("kind", 2)],
      ["Yeast", at("percent", 4)],
      ["Salt", at("percent", 3)],
    ]);
    expect(remarks[0]?.says).toBe("Choose a type.");
    expect(remarks[1]?.says).toBe("“a bit”: enter a number from 0.");
    // What a cell that cannot be read may hold is not missed.
    expect(remarks.some(({ says }) => /^Yeast is missing/.test(says))).toBe(false);
  });

  test("what is wrong with the whole sheet is told with the cell to look at; without weights the sheet is read all the same", async () => {
    const { book, at } = await buildSheet({ ...HANDOUT, size_pieces: [null], percent: [0.9, 0.67, 0.02, 0.01] });
    const { remarks, facts } = review(book);
    expect(remarks).toContainEqual({
      cell: at("percent", 1),
      name: "Sheet",
      says: expect.stringMatching(/Flours add up to 90 %/),
    });
    expect(facts.find(({ label }) => label === "Effective hydration")?.says).toBe("Not known yet.");
  });

  test("a pan loaf's pictures show its kinds, its tin and its steps as the sheet has them", async () => {
    const model = templateOf("pan-loaf");
    const { book } = await buildSheet(model.sample, {
      model,
      options: { ...METRIC_UNITS, parts: model.parts },
    });
    const { parts, steps, tin, unit } = review(book).pictures;
    expect(unit).toBe("g");
    // The sample's percentages over their sum, 172.
    expect(parts.map(({ word }) => word)).toEqual(["flour", "water", "sugar", "fat", "salt", "yeast"]);
    parts.forEach(({ share }, at) => {
      expect(share).toBeCloseTo(([100, 63, 2, 3, 2, 2][at] ?? 0) / 172, 9);
    });
    // 21 × 11 at the rim, 19 × 9 at the base, 9 cm deep: 9 ÷ 6 × (231 + 171 + 800) cm³.
    expect(tin?.capacity).toBeCloseTo(1803, 9);
    expect(tin?.dough).toBeCloseTo(700 / 0.89, 6);
    // Counted back from 07:00: 60 to cool, 35 + 10 + 35 to bake in two loads.
    expect(steps.map(({ name, start, minutes: long }) => [name, start, long])).toEqual([
      ["Mix", 115, 15],
      ["Bulk fermentation", 130, 60],
      ["Divide and shape", 190, 30],
      ["Final proof", 220, 60],
      ["Bake", 280, 80],
      ["Cool", 360, 60],
    ]);
  });

  test("a poolish ripens on the line of time, on the day before", async () => {
    const model = templateOf("hearth-loaf");
    const { book } = await buildSheet(model.sample, {
      model,
      options: { weight: "oz", temperature: "F", length: "in", parts: model.parts },
    });
    const [first, mix] = review(book).pictures.steps;
    // 14 hours before ten past midnight.
    expect(first).toMatchObject({ name: "Poolish ripens", minutes: 840, start: 10 - 840 });
    expect(mix).toMatchObject({ name: "Mix", start: 10 });
    expect(review(book).pictures.tin).toBeNull();
  });

  test("5 % of salt and a third of the water are remarked beside their cells, and the meaning follows the style", async () => {
    const { book, at } = await buildSheet({
      ...HANDOUT,
      ingredient: ["Flour", "Water", "Salt", "Fresh yeast"],
      percent: [1, 0.4, 0.05, 0.01],
    });
    const read = review(book, "hearth");
    const { remarks, styles } = read;
    expect(styles).toHaveLength(19);
    expect(remarks.find(({ name }) => name === "Salt")).toMatchObject({
      cell: at("percent", 3),
      says: expect.stringMatching(/5 %/),
    });
    expect(fact(read, FEEL)).toMatch(/^Hydration is low for hearth .* a stiff dough/);
    expect(fact(review(book, "layer cake"), FEEL)).toMatch(/a stiff batter/);
  });

  test("a remark leads to the percentage, also where weights were given", async () => {
    const { book, at } = await buildSheet(
      {
        ...HANDOUT,
        ingredient: ["Flour", "Water", "Salt"],
        kind: ["flour", "water", "salt"],
        percent: [null, null, null],
        weighed: [1000, 650, 50],
      },
      { model: templateOf("cookie"), options: { ...METRIC_UNITS, parts: [] } },
    );
    const { remarks } = review(book, "hearth");
    expect(remarks.find(({ name }) => name === "Salt")?.cell).toBe(at("percent", 3));
  });

  test.each([
    ["a sheet that is none of ours", "Sheet1", "", /"Sheet1" is no formula sheet of Gramwright/],
    ["an unknown style", "", "toast", /style is "toast"; it can be "pan bread"/],
  ])("refuses %s", async (_, front, style, sentence) => {
    const { book } = await buildSheet(HANDOUT);
    if (front !== "") book.answer({ ask: "goto", sheet: front, cell: "A1" });
    const reply = book.ask({ ask: "review", style });
    expect(reply.ok ? "" : reply.message).toMatch(sentence);
  });

  test.each([
    ["A1", "Gone", /no sheet "Gone" any more/],
    ["A1:B2", "Sheet1", /cell to go to could not be read/],
  ])("does not go to %s of %s", async (cell, sheet, sentence) => {
    const book = await workbook();
    const reply = book.ask({ ask: "goto", sheet, cell });
    expect(reply.ok ? "" : reply.message).toMatch(sentence);
  });
});
