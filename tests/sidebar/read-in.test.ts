import { beforeAll, describe, expect, test } from "vitest";
import { a1 } from "../../shared/sheet/a1.ts";
import { layOut } from "../../shared/sheet/layout.ts";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { panLoaf } from "../../templates/pan-loaf.ts";
import { METRIC_UNITS } from "../kit/units.ts";
import { workbook } from "../templates/sheet-support.ts";
import { skipWithoutChromium } from "./browser.ts";
import { benchPages, type Way } from "./page.ts";

const skip = skipWithoutChromium("reading in a recipe in a browser");

const RECIPE = `Quay rolls
Makes 24
For the poolish:
• 300 g bread flour
• 300 g water
• pinch of instant yeast
For the dough:
• 700 g bread flour
• 1 1/2 cups water
• 20 g salt
• 2 oz (2.33 tbsp) butter
• a handful of raisins
• all of the poolish
Method
1. Mix everything for 8 minutes.`;
const SHOTS = process.env.SHOTS;

describe.skipIf(skip)("the Read in panel", () => {
  let host: WorkbookHost;
  const bench = benchPages((json) => String(host.script.serve("benchAsk", [json])));
  const field = (label: string) => bench.field(label).filter({ visible: true });
  const shot = async (name: string) => {
    if (SHOTS !== undefined) await bench.page.screenshot({ path: `${SHOTS}/readin-${name}.png`, fullPage: true });
  };
  const status = () => bench.page.locator(".panel:visible section .status").first().textContent();
  const foot = () => bench.page.locator("footer:visible .status").textContent();
  const paste = (text: string) => field("The recipe, as you found it").fill(text);
  const readButton = () => bench.page.getByRole("button", { name: "Read it" });
  const buildButton = () => bench.page.getByRole("button", { name: "Build the sheet" });
  const start = async (way: Way = "answers") => {
    await bench.open(way);
    await bench.page.getByRole("button", { name: "Paste recipe", exact: true }).click();
  };
  const readIt = async (text = RECIPE) => {
    await paste(text);
    await readButton().click();
    await bench.wait(50);
    await expect.poll(status).toMatch(/^Read:/);
  };
  const row = (at: number) => bench.page.locator(".line").nth(at);
  const typed = async (at: number) =>
    row(at)
      .locator("input")
      .evaluateAll((all) => all.map((one) => (one as HTMLInputElement).value));

  beforeAll(async () => {
    if (!skip) host = await workbook();
  });

  test("empty, it says what to do first", async () => {
    await start();
    await shot("empty");
    await bench.checked("empty");
    await readButton().click();
    expect(await bench.troubles()).toEqual(["Paste a recipe first: one ingredient a line, with its amount."]);
    expect(await bench.focused()).toBe("The recipe, as you found it");
    await bench.checked("nothing pasted");
  });

  test("reads a recipe line by line, and keeps what is none", async () => {
    await start();
    await readIt();
    expect(await status()).toBe("Read: 8 ingredients, 3 headings, 4 kept aside. 1 question is open below.");
    expect(await field("Name of the formula").inputValue()).toBe("Quay rolls");
    expect(await typed(3)).toEqual(["• 300 g bread flour", "bread flour", "flour", "300"]);
    // 1.5 cups of 236.588 mL; 2 oz of 28.3495 g
    expect(await typed(8)).toEqual(["• 1 1/2 cups water", "water", "water", "354.88"]);
    expect(await typed(10)).toEqual(["• 2 oz (2.33 tbsp) butter", "butter", "fat", "56.7"]);
    expect(await row(10).locator(".hint").textContent()).toMatch(/56\.7 g is taken, .* % apart/);
    expect(await row(12).locator(".hint").textContent()).toMatch(
      /^Kept aside\. Not counted again: its ingredients stand under "For the poolish:"/,
    );
    expect(await row(11).locator(".trouble").textContent()).toBe('"handful" has no weight; enter grams, or a measure.');
    await shot("filled");
    await bench.checked("filled");
    // 300 of 1000 g of flour
    await field("Grams, line 12").fill("90");
    expect(await row(3).locator(".share").textContent()).toBe("30");
    expect(await row(11).locator(".share").textContent()).toBe("9");
    expect(await row(11).locator(".trouble").isVisible()).toBe(false);
    expect(await status()).toMatch(/No question is open\.$/);
    await bench.checked("answered");
  });

  test("builds a sheet whose weights are those that were read", async () => {
    await start();
    await readIt();
    await buildButton().click();
    expect(await bench.focused()).toBe("Grams, line 12");
    await shot("error");
    await bench.checked("in error");
    await bench.page.keyboard.type("90");
    await bench.wait(1000);
    await buildButton().dblclick();
    await bench.wait(100);
    await expect.poll(foot).toMatch(/^Built “Quay rolls”/);
    await shot("built");
    expect((await bench.builds()).length).toBe(1);
    const { names } = layOut(panLoaf, { ...METRIC_UNITS, parts: ["water", "steps"] });
    const cell = (name: string, at = 0) => {
      const zone = names.get(name);
      if (zone === undefined) throw new Error(`no cell is called ${name}`);
      return host.cell("Quay rolls", a1({ row: zone.row + at, column: zone.column })).value;
    };
    expect(cell("ingredient", 1)).toBe("bread flour");
    expect(cell("grams", 5)).toBeCloseTo(354.88236, 4);
    expect(cell("percent", 5)).toBeCloseTo(0.35488, 4);
    const shown = host.shownTexts("Quay rolls", host.usedRange("Quay rolls")).flat().join("\n");
    expect(shown).toMatch(/US cups; "For the poolish" rows 1 to 3, "For the dough" rows 4 to 8/);
    await bench.checked("built");
  });

  test("a corrected text is read again, and what was typed by hand stays", async () => {
    await start();
    await readIt("500 g bread flour\n1 cup Zauberwasser\n10 g salt");
    expect(await row(1).locator(".trouble").textContent()).toMatch(/which the larder does not know/);
    await field("Name, line 2").fill("water");
    await bench.page.keyboard.press("Tab");
    await bench.wait(50);
    await expect.poll(() => typed(1)).toEqual(["1 cup Zauberwasser", "water", "water", "236.59"]);
    await field("Grams, line 3").fill("11");
    await field("Text, line 3").fill("2 tsp salt");
    await bench.page.keyboard.press("Tab");
    await bench.wait(50);
    await expect.poll(() => typed(2)).toEqual(["2 tsp salt", "salt", "salt", "11"]);
    await field("Text, line 1").fill("400 g bread flour, 100 g rye flour");
    await bench.page.keyboard.press("Tab");
    await bench.wait(50);
    await expect.poll(() => bench.page.locator(".line").count()).toBe(4);
    await bench.wait(50);
    expect(await bench.focused()).toBe("Text, line 1");
    await bench.page.getByRole("button", { name: "Take out line 4" }).click();
    expect(await bench.page.locator(".line").count()).toBe(3);
    await bench.checked("corrected");
  });

  test("other cups, other grams; a line aside can be counted", async () => {
    await start();
    await readIt("500 g bread flour\n1 cup water\nmoon dust");
    await field("Cups and spoons of").selectOption("AU");
    await bench.wait(50);
    await expect.poll(() => typed(1)).toEqual(["1 cup water", "water", "water", "250"]);
    await bench.page.getByRole("button", { name: "Count it: line 3" }).click();
    expect(await bench.focused()).toBe("Grams, line 3");
    await bench.page.keyboard.type("5");
    expect(await row(2).locator(".trouble").textContent()).toBe("Enter the kind of line 3.");
    await field("Kind, line 3").fill("other");
    expect(await row(2).locator(".share").textContent()).toBe("1");
  });

  test("pasted markup and formulas stay text", async () => {
    await start();
    await readIt('<img src=x onerror="alert(1)"> 5 g\n500 g =IMPORTXML("x")\n500 g flour');
    expect((await typed(0))[0]).toBe('<img src=x onerror="alert(1)"> 5 g');
    expect(await bench.page.locator(".lines img").count()).toBe(0);
  });

  test("while it reads it says so, and reads once", async () => {
    await start();
    await paste(RECIPE);
    await bench.turn("slow");
    await readButton().click();
    await bench.wait(600);
    expect(await status()).toBe("Reading …");
    expect(await readButton().getAttribute("aria-disabled")).toBe("true");
    await readButton().click({ force: true });
    await shot("busy");
    await bench.checked("busy");
    expect((await bench.sent()).filter(({ ask }) => ask === "read")).toHaveLength(1);
  });

  test.each<[Way, number, RegExp]>([
    ["fails", 100, /^The add-on could not answer \(Service unavailable\)\..*What you pasted is still here\.$/],
    ["other account", 100, /signed in to one account only.*What you pasted is still here\.$/],
    ["silent", 31_000, /^The add-on does not answer\./],
  ])("a reading that %s is told with a way on", async (way, ms, sentence) => {
    await start();
    await paste(RECIPE);
    await bench.turn(way);
    await readButton().click();
    await bench.wait(ms);
    // The click reaches the page a moment later than the clock was moved.
    const told = async () => {
      await bench.wait(50);
      return status();
    };
    await expect.poll(told).toMatch(sentence);
    await shot(`${way.replace(" ", "-")}`);
    await bench.checked(way);
    await bench.turn("answers");
    await readButton().click();
    await expect.poll(told).toMatch(/^Read:/);
  });

  test("a line that could not be read again keeps the sheet from being built", async () => {
    await start();
    await readIt("500 g flour\n300 g water");
    await bench.turn("fails");
    await field("Text, line 2").fill("310 g water");
    await bench.page.keyboard.press("Tab");
    await bench.wait(100);
    expect(await row(1).locator(".trouble").textContent()).toMatch(/Service unavailable.*Change the line once more/);
    await buildButton().click();
    await bench.wait(100);
    expect(await bench.builds()).toEqual([]);
  });

  test("everything is reached by the keyboard, nothing is cut off, at twice the text size too", async () => {
    await start();
    await readIt();
    const narrow = () =>
      bench.page.locator("input:visible, select:visible, button:visible, textarea:visible").evaluateAll((all) =>
        all.flatMap((one) => {
          const { left, right, width, height } = one.getBoundingClientRect();
          const small = one.matches("[type=radio], [type=checkbox]") ? 16 : 24;
          return left < 0 || right > innerWidth || width < small || height < small ? [one.outerHTML] : [];
        }),
      );
    expect(await narrow()).toEqual([]);
    await bench.page.evaluate(() => {
      document.documentElement.style.fontSize = "200%";
    });
    expect(await narrow()).toEqual([]);
    await shot("large");
    await bench.checked("large text");
  });
});
