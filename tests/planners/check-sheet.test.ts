import { mkdirSync } from "node:fs";
import { beforeEach, describe, expect, test } from "vitest";
import type { SheetReview } from "../../shared/protocol/bench.ts";
import type { SheetModel } from "../../shared/sheet/model.ts";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { METRIC_UNITS } from "../kit/units.ts";
import { skipWithoutChromium } from "../sidebar/browser.ts";
import { benchPages, type Way } from "../sidebar/page.ts";
import { templateOf } from "../sidebar/samples.ts";
import { buildSheet, HANDOUT, workbook } from "../templates/sheet-support.ts";

const PICTURES = process.env.PICTURES;
const review = (book: WorkbookHost, style = "") => book.answer({ ask: "review", style }) as SheetReview;
const fact = ({ facts }: SheetReview, label: string) => facts.find((one) => one.label === label)?.says;

describe("the sheet in front is read", () => {
  test.each(TEMPLATES)(
    "$title: remarks and figures are those of the functions in its cells",
    async (model: SheetModel) => {
      const parts = model.parts.filter((part) => part !== "cost" && part !== "label");
      const built = await buildSheet(model.sample, {
        model,
        options: { ...METRIC_UNITS, parts },
      });
      const { book, sheet, at, value } = built;
      const read = review(book);
      expect(read.sheet).toBe(sheet);
      const rows = (model.sample.ingredient as readonly string[]).length;
      const range = (name: string) => `${at(name, 1)}:${at(name, rows)}`;
      book.type(
        "Sheet1",
        "A1",
        `=BAKE_REVIEW('${sheet}'!${range("ingredient")};'${sheet}'!${range("kind")};'${sheet}'!${range("share")};"${read.style}")`,
      );
      book.type(
        "Sheet1",
        "C1",
        `=BAKE_HYDRATION('${sheet}'!${range("ingredient")};'${sheet}'!${range("grams")};'${sheet}'!${range("kind")})`,
      );
      const cells = book.values("Sheet1", `A1:A${rows}`).flat();
      cells.forEach((says, row) => {
        const mine = read.remarks.find(({ cell }) => cell === at("percent", row + 1));
        expect(mine?.says.replace(/\.$/, "").toLowerCase() ?? "").toBe(String(says).replace(/\.$/, "").toLowerCase());
      });
      const hydration = book.cell("Sheet1", "C1").value;
      expect(hydration).toBeTypeOf("number");
      expect(fact(read, "Effective hydration")).toContain(`${Math.round((hydration as number) * 1000) / 10} %`);
      expect(read.meaning).toMatch(/^(As wet as|Drier than|Wetter than) usual for /);
      if (parts.includes("tin")) expect(fact(read, "Fill")).toBe(value("tin_note"));
      if (parts.includes("water")) expect(fact(read, "Water")).toBe(value("water_note"));
    },
  );

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
      ["First rise", 130, 60],
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
    const { remarks, meaning, styles } = review(book, "hearth");
    expect(styles).toHaveLength(19);
    expect(remarks.find(({ name }) => name === "Salt")).toMatchObject({
      cell: at("percent", 3),
      says: expect.stringMatching(/5 %/),
    });
    expect(meaning).toMatch(/^Drier than usual for hearth .* a firm dough/);
    expect(review(book, "layer cake").meaning).toMatch(/a stiff batter/);
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

describe.skipIf(skipWithoutChromium("checking from the bench in a browser"))("the panel", () => {
  let book: WorkbookHost;
  const bench = benchPages((json) => JSON.stringify(book.ask(JSON.parse(json))));
  beforeEach(async () => {
    book = await workbook();
  });
  const open = async () => {
    await bench.open();
    await bench.page.getByRole("button", { name: "Check", exact: true }).click();
    await bench.wait(100);
  };
  const says = (sentence: RegExp) =>
    expect
      .poll(async () => (await bench.page.locator(".panel:visible .status").textContent())?.trim())
      .toMatch(sentence);
  const looked = async (state: string) => {
    await bench.checked(state);
    if (PICTURES === undefined) return;
    mkdirSync(PICTURES, { recursive: true });
    await bench.page.screenshot({ path: `${PICTURES}/check-${state}.png`, fullPage: true });
  };

  test("reads what is in front, follows the style, and goes to the cell", async () => {
    const { at } = await buildSheet({ ...HANDOUT, percent: [1, 0.4, 0.05, 0.01] }, { book });
    await open();
    await says(/^Read “Hand-out”: .* for pan bread\.$/);
    await looked("filled");
    await bench.field("Checked as").selectOption("bagel");
    await bench.wait(100);
    await says(/for bagel\.$/);
    await expect.poll(() => bench.focused()).toBe("Checked as");
    await bench.page.getByRole("button", { name: `Salt, ${at("percent", 3)}` }).click();
    await expect
      .poll(async () => (await bench.sent()).filter(({ ask }) => ask === "goto"))
      .toMatchObject([{ sheet: "Hand-out", cell: at("percent", 3) }]);
    await bench.wait(1000);
    const selected = () => {
      const { left, top } = book.session.get<{ left: number; top: number }>("getSelectedZone");
      return `${"ABCDEFGH"[left]}${top + 1}`;
    };
    await expect.poll(selected).toBe(at("percent", 3));
  });

  test("draws the dough, the tin and the steps, each told in words too", async () => {
    const model = templateOf("pan-loaf");
    await buildSheet(model.sample, {
      book,
      model,
      options: { ...METRIC_UNITS, parts: model.parts },
    });
    await open();
    await says(/^Read “Quay pan loaf”/);
    const picture = (says: RegExp) => bench.page.getByRole("img", { name: says });
    await picture(/^Of the whole dough: flour 58\.1 %/).waitFor();
    await picture(/^Side view of the tin\. Fill 0\.44 g/).waitFor();
    await picture(/^Steps by time\. 01:55 Mix, 15 min; 02:10 First rise, 1 h;/).waitFor();
    await looked("pictures");
  });

  test("a sheet that is none of ours is told, and read again once another is in front", async () => {
    await open();
    await says(/is no formula sheet of Gramwright/);
    await looked("empty");
    await buildSheet(HANDOUT, { book });
    await bench.wait(1000);
    await bench.page.getByRole("button", { name: "Read the sheet in front" }).click();
    await says(/^Read “Hand-out”/);
    // What was read of one sheet does not stand below the sentence about another.
    book.answer({ ask: "goto", sheet: "Sheet1", cell: "A1" });
    await bench.wait(1000);
    await bench.page.getByRole("button", { name: "Read the sheet in front" }).click();
    await says(/is no formula sheet of Gramwright/);
    await expect.poll(() => bench.page.getByRole("heading", { name: "Remarks by row" }).count()).toBe(0);
  });

  test.each<[Way, number, RegExp]>([
    ["slow", 2000, /^Reading the sheet …$/],
    ["fails", 100, /could not answer \(Service unavailable\)/],
    ["silent", 91_000, /^No answer for 90 seconds\. Wait until the sheet is calculated/],
  ])("a server that is %s", async (way, ms, sentence) => {
    await buildSheet(HANDOUT, { book });
    await open();
    await says(/^Read/);
    await bench.turn(way);
    await bench.wait(1000);
    await bench.page.getByRole("button", { name: "Read the sheet in front" }).click();
    await bench.wait(ms);
    await says(sentence);
    if (way === "slow") await looked("busy");
  });
});
