// Adjust with the keyboard alone: from a formula sheet to a new version, and to the card of it.
import { mkdirSync } from "node:fs";
import { beforeEach, describe, expect, test } from "vitest";
import type { Values } from "../../shared/sheet/model.ts";
import { type Book, openBook, type Sheet } from "../../src/workbook/scripted.ts";
import { IS_LONG } from "../kit/scale.ts";
import { skipWithoutChromium } from "./browser.ts";
import { benchPages } from "./page.ts";
import { templateOf } from "./samples.ts";

const PICTURES = process.env.PICTURES;
const MAX_TABS = 120;

type Story = {
  readonly name: string;
  readonly template: string;
  readonly values?: Values;
  readonly search: string;
  readonly change: string;
  /** Fields by their labels: a text to type, or a choice by its first letters. */
  readonly fields: readonly (readonly [label: string, text: string])[];
  /** What the sheet is then. */
  readonly holds: (sheet: Sheet) => void;
};

const STORIES: readonly Story[] = [
  {
    name: "overnight",
    template: "hearth-loaf",
    search: "overnight",
    change: "Make it overnight, in a retarder",
    fields: [["Hours in the cold", "14"]],
    holds: (sheet) => {
      const steps = Array.from({ length: 8 }, (_, at) => sheet.value("step", at + 1));
      const at = steps.indexOf("Retard");
      expect(steps[at + 1]).toBe("Final proof");
      expect(sheet.value("step_minutes", at + 1)).toBe(840);
    },
  },
  {
    name: "weaker flour",
    template: "pan-loaf",
    search: "weaker",
    change: "The flour is weaker: protein to … with vital gluten",
    fields: [
      ["Protein of this flour (%)", "10.5"],
      ["Protein wanted (%)", "12"],
    ],
    // (12 − 10.5) ÷ (75.16 − 12) of the flour.
    holds: (sheet) => expect(sheet.value("percent", rowOf(sheet, "Vital wheat gluten"))).toBeCloseTo(0.015 / 0.6316, 9),
  },
  {
    name: "milk powder",
    template: "soft-bun",
    search: "milk powder",
    change: "Swap one ingredient for another",
    fields: [["How much of it (%)", "100"]],
    // 25 % of whole milk, 12.17 % of it as powder (USDA SR28).
    holds: (sheet) => expect(sheet.value("percent", rowOf(sheet, "Whole milk powder"))).toBeCloseTo(0.25 * 0.12171, 5),
  },
  {
    name: "poolish",
    template: "hearth-loaf",
    values: { pre_share: null, pre_hydration: null, pre_yeast: null },
    search: "a third",
    change: "Put in, change or take out a preferment",
    fields: [["Prefermented flour (% of flour)", "33.3"]],
    holds: (sheet) =>
      expect([sheet.value("pre_kind"), sheet.value("pre_share"), sheet.value("pre_hydration")]).toEqual([
        "poolish",
        0.333,
        1,
      ]),
  },
  {
    name: "smaller tin",
    template: "pan-loaf",
    search: "smaller pan",
    change: "Another tin at the same fill",
    fields: [["Inside sizes (cm)", "18; 10; 8"]],
    holds: (sheet) => expect(sheet.value("tin_capacity")).toBeCloseTo(1440, 6),
  },
  {
    name: "less roll-in",
    template: "laminated",
    search: "croissant",
    change: "Roll-in fat: another fat, or another share",
    fields: [["Share (%)", "25"]],
    // 10 440 g of dough with its fat ÷ 1.25 × 0.25, by the template's sum.
    holds: (sheet) => expect(sheet.value("roll_in")).toBeCloseTo(10440.376051 / 5, 4),
  },
  {
    name: "larger round",
    template: "flat-round",
    search: "pizza",
    change: "Another diameter, or another thickness of a round",
    fields: [["Diameter (cm)", "30"]],
    holds: (sheet) => expect(sheet.value("size_diameter", 1)).toBe(30),
  },
];

const rowOf = (sheet: Sheet, name: string): number =>
  Array.from({ length: 9 }, (_, at) => at + 1).find((at) => sheet.value("ingredient", at) === name) ?? 0;

describe.skipIf(skipWithoutChromium("adjusting in a browser"))("with the keyboard alone", () => {
  let book: Book;
  const bench = benchPages((json) => JSON.stringify(book.ask(JSON.parse(json))));
  beforeEach(async () => {
    book = await openBook();
  });

  /** The name of what has the focus, as a person is told it. */
  const focused = () =>
    bench.page.evaluate(() => {
      const one = document.activeElement as HTMLInputElement | null;
      const label = one?.labels?.[0]?.textContent ?? one?.getAttribute("aria-label") ?? "";
      return (label !== "" ? label : (one?.textContent ?? "")).replace(/\s+/g, " ").trim();
    });
  const press = (key: string) => bench.page.keyboard.press(key);
  const tabTo = async (name: string): Promise<void> => {
    for (let tabs = 0; tabs < MAX_TABS; tabs++) {
      if ((await focused()) === name) return;
      await press("Tab");
    }
    expect.fail(`${name} is not reached by Tab`);
  };
  const typeInto = async (name: string, text: string): Promise<void> => {
    await tabTo(name);
    await press("Control+A");
    await bench.page.keyboard.type(text);
  };
  const pressOn = async (name: string): Promise<void> => {
    await tabTo(name);
    await press("Enter");
  };
  const status = () => bench.page.locator(".panel:visible .status, .panel:visible .note").allTextContents();
  const says = (sentence: RegExp) => expect.poll(async () => (await status()).join(" ")).toMatch(sentence);
  const looked = async (state: string) => {
    await bench.checked(state);
    if (PICTURES === undefined) return;
    mkdirSync(PICTURES, { recursive: true });
    await bench.page.screenshot({ path: `${PICTURES}/adjust-${state.replace(/ /g, "-")}.png`, fullPage: true });
  };

  test.each(
    // One of them in a usual run; all in a long one, or where pictures are wanted.
    STORIES.filter((_, at) => IS_LONG || PICTURES !== undefined || at === 2).map(
      (story) => [story.name, story] as const,
    ),
  )("%s", async (name, { template, values = {}, search, change, fields, holds }) => {
    const model = templateOf(template);
    const parts = model.parts.filter((one) => one !== "cost" && one !== "label");
    const sheet = book.build(template, { ...model.sample, ...values }, { parts });
    await bench.open();
    await bench.page.clock.resume();
    await pressOn("Adjust");
    await says(/version 1\./);
    await typeInto("What do you want?", search);
    await pressOn(change);
    for (const [label, text] of fields) await typeInto(label, text);
    await looked(`${name} chosen`);
    await pressOn("Add this change");
    await pressOn("Take as a new version");
    await says(/is version 2 now\. What stood there before is in the history, too\./);
    await looked(`${name} taken`);
    holds(sheet);
    expect(sheet.value("check")).toBe("");
    expect(sheet.value("version")).toBe("2");
    await bench.page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    await pressOn("Staff card");
    await tabTo("Formula sheet");
    await pressOn("Make the card");
    await says(/^.*Made “/);
    expect(book.sheetNames().some((one) => one.endsWith("– card"))).toBe(true);
  });

  test("what cannot be is said while it is typed, changes are taken back last first, and an older version comes back", async () => {
    const { sample, parts } = templateOf("hearth-loaf");
    const sheet = book.build("hearth-loaf", sample, {
      parts: parts.filter((one) => one !== "cost" && one !== "label"),
    });
    await bench.open();
    await bench.page.clock.resume();
    await pressOn("Adjust");
    await says(/version 1\./);
    await typeInto("What do you want?", "salt");
    await pressOn("Salt to …");
    await typeInto("Salt wanted (% of flour)", "40");
    expect(await bench.faults()).toEqual(["Salt wanted (% of flour) is 40 %. Enter at most 10 %."]);
    await typeInto("Salt wanted (% of flour)", "1.8");
    expect(await bench.faults()).toEqual([]);
    await pressOn("Add this change");
    await typeInto("What do you want?", "wetter");
    await pressOn("Hydration to …");
    await typeInto("Hydration wanted (%)", "74");
    await pressOn("Add this change");
    const lines = () => bench.page.locator("ol:visible li").allTextContents();
    expect(await lines()).toEqual(["Salt 2 % to 1.8 %", "Hydration 70 % to 74 %"]);
    await pressOn("Take back the last change");
    expect(await lines()).toEqual(["Salt 2 % to 1.8 %"]);
    await pressOn("Take as a new version");
    await says(/is version 2 now/);
    await pressOn("Formula history");
    await pressOn("Show the versions");
    await says(/2 versions are kept/);
    await pressOn("Compare");
    await says(/1 row differs|All rows are the same/);
    expect(await bench.page.locator(".panel:visible").textContent()).toContain(
      "No labelling rules are chosen. Choose EU, UK or US in Bakery settings to see the ingredient list.",
    );
    await looked("history");
    await pressOn("Bring back");
    await says(/Version 1 is brought back, as version 3/);
    expect(sheet.value("percent", rowOf(sheet, "Sea salt"))).toBe(0.02);
  });
});
