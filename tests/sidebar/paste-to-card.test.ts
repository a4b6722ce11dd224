// Five texts from paste to staff card on the local page, by keyboard alone; axe looks at each state.
import { mkdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Frame } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { WorkbookData } from "../../src/workbook/engine/library.ts";
import type { Keeper } from "../../src/workbook/file/keeper.ts";
import { openBook } from "../../src/workbook/scripted.ts";
import { IS_LONG } from "../kit/scale.ts";
import { type LocalPage, oneCellKept, openLocalPage } from "../workbook/local-page.ts";
import { skipWithoutChromium } from "./browser.ts";

const SHOTS = process.env.SHOTS;
const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

type Text = {
  readonly title: string;
  readonly text: string;
  /** The name of a field that a question has, and what is entered there. */
  readonly answers?: readonly (readonly [field: RegExp, typed: string])[];
  /** Words of a row of the card, and the figure in it. */
  readonly card: readonly (readonly [words: RegExp, figure: RegExp])[];
};

const TEXTS: readonly Text[] = [
  {
    title: "Ferry buns",
    text: "Ferry buns\nMakes 24\n500 g strong white flour\n300 g whole milk\n50 g butter, softened\n40 g caster sugar\n10 g salt\n7 g sachet instant yeast\na handful of poppy seeds\n\nMix everything for 10 minutes.\nRise 1 hour.\nBake at 200 °C for 14 minutes.",
    answers: [[/^Amount, line 9/, "15"]],
    card: [
      [/strong white flour/, /\b500\b/],
      [/poppy seeds/, /\b15\b/],
      [/Bake/, /\b14\b/],
    ],
  },
  {
    title: "Pier white",
    text: "Pier white, 40 pcs @ 0.460 kg\nFlour 100%\nWater 62%\nFat 2%\nSalt 2%\nFresh yeast 2.5%",
    // 40 × 460 g over 168.5 parts are 10 919.9 g of flour
    card: [
      [/Flour/, /10[,\u202f ]?920/],
      [/Water/, /6[,\u202f ]?770/],
    ],
  },
  {
    title: "Quay milk rolls",
    text: "Quay milk rolls\nIngredient\tkg\t%\nFlour\t5.000\t100\nMilk\t2.750\t55\nButter\t0.400\t8\nSugar\t0.400\t8\nSalt\t0.090\t1.8\nYeast\t0.150\t3\nTotal\t8.790\t175.8",
    card: [
      [/Flour/, /5[,\u202f ]?000/],
      [/Milk/, /2[,\u202f ]?750/],
      [/Salt/, /\b90\b/],
    ],
  },
  {
    title: "Harbour baguette",
    text: "Harbour baguette\nPoolish (12 h)\nbread flour 300 g\nwater 300 g\ninstant yeast 0.6 g\nFinal dough\nbread flour 700 g\nwater 380 g\nsalt 20 g\ninstant yeast 4.4 g\npoolish, all\n\nMix 8 min\nBulk 2 h at 24 °C\nBake 22 min at 240 °C",
    // Flour: 300 in the poolish and 700 in the final mix
    card: [
      [/bread flour/, /\b300\b[\s\S]*\b700\b|\b700\b[\s\S]*\b300\b/],
      [/water/, /\b300\b[\s\S]*\b380\b|\b380\b[\s\S]*\b300\b/],
      [/salt/, /\b20\b/],
    ],
  },
  {
    title: "Slipway croissants",
    text: "Slipway croissants (makes 24)\nDough\nFlour 1000 g\nMilk 300 g\nWater 220 g\nSugar 120 g\nSalt 20 g\nFresh yeast 40 g\nButter 60 g\nTo laminate\nButter 500 g\nEgg wash\n1 egg",
    card: [
      [/Flour/, /1[,\u202f ]?000/],
      [/roll in/i, /\b500\b/],
      [/Egg wash/, /☐/],
    ],
  },
];

/** A walk by Tab that finds nothing after so many stops found nothing. */
const MAX_STOPS = 260;

describe.skipIf(skipWithoutChromium("texts from paste to card"))("five texts, by keyboard alone", () => {
  let local: LocalPage;
  let bench: Frame;
  let kept: WorkbookData = {};
  beforeAll(async () => {
    const keeper = await oneCellKept();
    const save: Keeper["save"] = (data, revision) => {
      kept = data as WorkbookData;
      return keeper.save(data, revision);
    };
    local = await openLocalPage({ keeper: { ...keeper, save }, width: 1280, height: 720 });
    bench = (await (await local.page.waitForSelector("#sidebar-frame")).contentFrame()) as Frame;
    await bench.waitForSelector(".panel");
    if (SHOTS !== undefined) mkdirSync(SHOTS, { recursive: true });
  });
  afterAll(() => local?.close());

  /** Presses Tab until the stop has this name, from wherever the focus is; looks in the page, so that each stop is one question. */
  const reach = async (name: RegExp): Promise<void> => {
    for (let stop = 0; stop < MAX_STOPS; stop++) {
      const seen = await bench.evaluate((pattern) => {
        const one = document.activeElement as HTMLInputElement | null;
        const label = [...(one?.labels ?? [])].map((each) => each.textContent ?? "").join(" ");
        const words = one?.getAttribute("aria-label") ?? (label === "" ? (one?.textContent ?? "") : label);
        if (one !== document.body && new RegExp(pattern).test(words.trim())) return "there";
        return document.hasFocus() ? "in the side" : "elsewhere";
      }, name.source);
      if (seen === "there") return;
      // The grid keeps Tab for its cells: F6 goes on to the side.
      await local.page.keyboard.press(seen === "in the side" ? "Tab" : "F6");
    }
    throw new Error(`Tab does not reach ${name}`);
  };
  const press = async (name: RegExp): Promise<void> => {
    await reach(name);
    await local.page.keyboard.press("Enter");
  };
  const says = (sentence: RegExp) =>
    expect
      .poll(async () => (await bench.locator(".panel:visible .status").allTextContents()).join(" "), {
        timeout: 20_000,
      })
      .toMatch(sentence);
  const looked = async (state: string): Promise<void> => {
    if (SHOTS !== undefined) await local.page.screenshot({ path: `${SHOTS}/card-${state}.png` });
    if (!(await bench.evaluate(() => "axe" in window))) await bench.evaluate(axe);
    const found = await bench.evaluate(async () => {
      type Found = { violations: { id: string; nodes: { html: string }[] }[] };
      const { violations } = await (window as unknown as { axe: { run: (what: object) => Promise<Found> } }).axe.run({
        resultTypes: ["violations"],
      });
      return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`);
    });
    expect(found, state).toEqual([]);
  };

  // All five in a long run, otherwise one with a question and one in stages: they take a quarter of a minute each.
  test.each(IS_LONG ? TEXTS : TEXTS.filter((_, at) => at === 0 || at === 3))(
    "$title",
    async ({ title, text, answers = [], card }) => {
      const word = title.split(" ")[1] ?? title;
      await press(/^Paste recipe$/);
      await reach(/^The recipe, as you have it/);
      await local.page.keyboard.press("Control+A");
      await local.page.keyboard.insertText(text);
      await says(/question/);
      await looked(`${word}-pasted`);
      for (const [field, typed] of answers) {
        await reach(field);
        await local.page.keyboard.type(typed);
        await local.page.keyboard.press("Tab");
      }
      await says(/No question is open/);
      await press(/^Build the sheet$/);
      await says(new RegExp(`Built “${title}”`));
      await looked(`${word}-built`);
      await press(/^Make a staff card$/);
      await bench.getByLabel("Made for").filter({ visible: true }).waitFor();
      await press(/^Make the card$/);
      await says(new RegExp(`Made “${title} – card”`));
      await looked(`${word}-card`);
      const rows = await cardRows(`${title} – card`);
      for (const [words, figure] of card) {
        const row = rows.find((one) => words.test(one));
        expect(row, `${words} in\n${rows.join("\n")}`).toMatch(figure);
      }
    },
  );

  /** The card's rows as they stand in the workbook that the page sends to be kept. */
  async function cardRows(sheet: string): Promise<string[]> {
    await expect.poll(() => JSON.stringify(kept).includes(`"${sheet}"`), { timeout: 20_000 }).toBe(true);
    const book = await openBook({ data: kept });
    return book.shownTexts(sheet, book.usedRange(sheet)).map((row) => row.join(" "));
  }
});
