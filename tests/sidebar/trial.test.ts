// From a recipe somebody sent to a card for 60 pieces, from the screen alone: an action is one click, one field typed or one paste.
import { mkdirSync } from "node:fs";
import { beforeEach, describe, expect, test } from "vitest";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { workbook } from "../templates/sheet-support.ts";
import { skipWithoutChromium } from "./browser.ts";
import { benchPages } from "./page.ts";

const MAX_ACTIONS = 12;
const PICTURES = process.env.PICTURES;

const BUNS = `Ferry buns
Makes 24 soft buns

500 g strong white flour
300 ml whole milk
50 g butter, softened
40 g caster sugar
1 large egg
2 tsp salt
7 g sachet instant yeast
a handful of poppy seeds

Warm the milk. Mix everything for 10 minutes and leave to rise for an hour.
Bake at 200 °C for 14 minutes.`;

const PLAIN = `500 g bread flour
325 g water
10 g salt
5 g instant yeast`;

describe.skipIf(skipWithoutChromium("the trial from recipe to staff card in a browser"))("from recipe to card", () => {
  let book: WorkbookHost;
  const bench = benchPages((json) => JSON.stringify(book.ask(JSON.parse(json))));
  let actions: string[] = [];
  beforeEach(async () => {
    book = await workbook();
    actions = [];
    await bench.open();
  });

  const seen = async () => {
    if (PICTURES === undefined) return;
    mkdirSync(PICTURES, { recursive: true });
    await bench.page.screenshot({ path: `${PICTURES}/trial-${actions.length}.png`, fullPage: true });
  };
  const act = async (what: string, how: () => Promise<unknown>) => {
    actions.push(what);
    await how();
    // A person takes a moment; the page's clock stands still otherwise.
    await bench.wait(1000);
    await seen();
  };
  const click = (name: string) =>
    act(`click “${name}”`, () =>
      bench.page.getByRole("button", { name, exact: true }).filter({ visible: true }).click(),
    );
  const type = (label: string, text: string) =>
    act(`type ${text} into “${label}”`, () => bench.field(label).filter({ visible: true }).fill(text));
  const choose = (label: string, option: string) =>
    act(`choose “${option}” in “${label}”`, () =>
      bench.field(label).filter({ visible: true }).selectOption({ label: option }),
    );
  const paste = (text: string) => act("paste the recipe", () => bench.field("The recipe, as you have it").fill(text));
  const says = (sentence: RegExp) =>
    expect
      .poll(async () => {
        await bench.wait(50);
        return (await bench.page.locator(".panel:visible .status").allTextContents()).join(" ");
      })
      .toMatch(sentence);

  test("a recipe that says how many it makes, with one thing to ask", async () => {
    await click("Paste recipe");
    await paste(BUNS);
    await says(/1 question is open\./);
    expect(await bench.field("Pieces").filter({ visible: true }).inputValue()).toBe("24");
    await type("Amount, line 11", "15");
    await act("leave the field", () => bench.page.keyboard.press("Tab"));
    await says(/No question is open\./);
    await click("Build the sheet");
    await says(/Built “Ferry buns”/);
    await click("Make a staff card");
    await says(/^\s*$/);
    await bench.field("Made for").filter({ visible: true }).waitFor();
    expect(await bench.field("Formula sheet").inputValue()).toBe("Ferry buns");
    expect((await bench.page.locator(".figures:visible").textContent())?.replace(/\s/g, " ")).toContain("Pieces 24");
    await choose("Made for", "pieces");
    await type("Pieces wanted", "60");
    await click("Make the card");
    await says(/^\s*Made “Ferry buns – card”/);
    expect(actions.length).toBeLessThanOrEqual(MAX_ACTIONS);
    const card = book.shownTexts("Ferry buns – card", book.usedRange("Ferry buns – card")).map((row) => row.join(" "));
    // 60 of a recipe for 24: 2.5 times 500 g of flour, 50 g of butter, 7 g of yeast
    expect(card.find((row) => row.includes("strong white flour"))).toContain("1,250");
    expect(card.find((row) => row.includes("butter"))).toMatch(/\b125\b/);
    expect(card.find((row) => row.includes("yeast"))).toMatch(/\b17[.,]5\b/);
    expect(actions).toHaveLength(9);
  });

  test("a bare list: what a piece weighs is asked for", async () => {
    await click("Paste recipe");
    await paste(PLAIN);
    await says(/No question is open\./);
    await type("Name of the formula", "Quay rolls");
    await type("Pieces", "60");
    await click("Build the sheet");
    expect(await bench.faults()).toContain("Enter the scaling weight of a piece.");
    await type("Scaling weight g", "70");
    await click("Build the sheet");
    await says(/Built “Quay rolls”/);
    await click("Make a staff card");
    await bench.field("Made for").filter({ visible: true }).waitFor();
    await click("Make the card");
    await says(/^\s*Made “Quay rolls – card”/);
    expect(actions.length).toBeLessThanOrEqual(MAX_ACTIONS);
    const card = book.shownTexts("Quay rolls – card", book.usedRange("Quay rolls – card")).map((row) => row.join(" "));
    // 60 × 70 g of dough over 1.68 is the flour
    expect(card.find((row) => row.includes("bread flour"))).toContain("2,500");
  });

  test("the sheets that a panel lists are those that are there when it is looked at again", async () => {
    await click("Staff card");
    await says(/There is no formula sheet in this workbook yet/);
    await click("Paste recipe");
    await paste(PLAIN);
    await says(/No question is open\./);
    await type("Name of the formula", "Quay rolls");
    await click("Build the sheet");
    await says(/Built “Quay rolls”/);
    await click("Staff card");
    await bench.field("Made for").filter({ visible: true }).waitFor();
    expect(await bench.field("Formula sheet").inputValue()).toBe("Quay rolls");
    await choose("Made for", "pieces");
    await click("Make the card");
    expect(await bench.faults()).toEqual([
      "This formula sheet does not say how many pieces it makes. Type pieces and their weight on it and refresh, or choose mixes or dough.",
    ]);
    await bench.checked("no pieces");
  });
});
