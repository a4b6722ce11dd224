import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { METRIC_UNITS } from "../kit/units.ts";
import { skipWithoutChromium } from "./browser.ts";
import { benchPages } from "./page.ts";

const html = readFileSync("dist/sidebar.html", "utf8");

describe("the built file", () => {
  test("reaches for nothing outside itself", () => {
    const reaching = /https?:\/\/|src=|@import|url\(|<link|\bfetch\(|XMLHttpRequest|localStorage|sessionStorage/;
    expect(reaching.exec(html)?.[0]).toBeUndefined();
    expect(/innerHTML|document\.write|\beval\(/.exec(html)?.[0]).toBeUndefined();
  });
});

const skip = skipWithoutChromium("filling in the sidebar in a browser");

describe.skipIf(skip)("the sidebar at 300 px", () => {
  const bench = benchPages();

  test("pings, and says nothing where all is well", async () => {
    await bench.open();
    // Besides it looks for the shop's settings.
    expect((await bench.sent()).map(({ ask }) => ask).sort()).toEqual(["look", "ping"]);
    await expect.poll(() => bench.page.getByRole("alert").textContent()).toBe("");
    await bench.checked("empty");
  });

  test("is filled in and sends the order once, with what was typed", async () => {
    await bench.open();
    await bench.fill();
    await bench.page.getByRole("button", { name: "Add a size" }).click();
    expect(await bench.focused()).toBe("Size, size 2");
    for (const text of ["small", "12", "350", "13"]) {
      await bench.page.keyboard.type(text);
      await bench.page.keyboard.press("Tab");
    }
    await bench.field("Handling loss %").fill("2");
    await bench.page.getByRole("heading", { name: "Scales and mixer" }).click();
    await bench.field("Mixer capacity g").fill("20 kg");
    // (24 × 700 ÷ 0.89 + 12 × 350 ÷ 0.87) ÷ 0.98 = 24 187.7 g; ÷ 1.72 = 14 062.6 g; half of the dough a mix
    const figures = (await bench.page.locator(".figures span").allTextContents()).join(", ").replace(/\s/g, " ");
    expect(figures).toContain("Dough 24 188 g");
    expect(figures).toContain("Flour 14 063 g");
    expect(figures).toContain("in 2 mixes of 12 094 g");
    await bench.checked("filled");
    await bench.build().dblclick();
    await expect.poll(() => bench.status()).toMatch(/^Built “Quay pan loaf”\./);
    const sheets = await bench.builds();
    expect(sheets).toHaveLength(1);
    const [sheet] = sheets;
    if (sheet === undefined) throw new Error("nothing was built");
    const column = <T>(many: number, of: (row: number) => T) => Array.from({ length: many }, (_, at) => of(at + 1));
    expect(sheet.model.name).toBe("pan-loaf");
    expect(sheet.options).toMatchObject(METRIC_UNITS);
    expect(["title", "by", "tin_shape"].map((name) => sheet.text(name))).toEqual(["Quay pan loaf", "pieces", "box"]);
    expect(column(2, (row) => sheet.text("size_name", row))).toEqual(["large", "small"]);
    expect(column(2, (row) => sheet.number("size_pieces", row))).toEqual([24, 12]);
    expect(column(2, (row) => sheet.number("size_weight", row))).toEqual([700, 350]);
    expect(column(2, (row) => sheet.number("size_loss", row))).toEqual([0.11, 0.13]);
    expect(column(6, (row) => sheet.number("percent", row))).toEqual([1, 0.63, 0.02, 0.02, 0.03, 0.02]);
    const numbers = ["handling_loss", "mixer_limit", "tin_size_1", "tin_size_2", "tin_size_3"];
    expect(numbers.map((name) => sheet.number(name))).toEqual([0.02, 20000, 21, 11, 9]);
    expect(["Tin", "Water", "Cost and price"].map((heading) => sheet.says(heading))).toEqual([true, true, false]);
    await bench.checked("built");
  });

  test("says what is missing, goes to the first, and sends nothing", async () => {
    await bench.open();
    await bench.build().click();
    expect(await bench.focused()).toBe("Pieces, size 1");
    expect(await bench.page.locator(".lead").textContent()).toBe(
      "5 things to enter or correct before the sheet can be built:",
    );
    expect(await bench.field("Pieces, size 1").getAttribute("aria-invalid")).toBe("true");
    expect(await bench.faults()).toEqual([
      "Enter how many pieces you want. Enter what one piece weighs when it is sold.",
      "Enter the tin's inner length. Enter the tin's inner width. Enter the tin's inner depth.",
    ]);
    await bench.checked("in error");
    await bench.page.getByRole("button", { name: "Enter the tin's inner length." }).click();
    expect(await bench.focused()).toBe("Length cm");
    await bench.fill();
    await expect.poll(() => bench.faults()).toEqual([]);
    expect(await bench.page.locator(".lead").textContent()).toBe("");
    expect(await bench.builds()).toEqual([]);
  });

  test("says what it cannot read when the field is left, not before", async () => {
    await bench.open();
    await bench.field("Baked g, size 1").pressSequentially("7oo");
    expect(await bench.faults()).toEqual([]);
    await bench.page.keyboard.press("Tab");
    expect(await bench.page.locator(".fault:visible").textContent()).toBe(
      'The weight of size 1 is "7oo", which is not a number; enter a weight such as 700.',
    );
    await bench.field("Baked g, size 1").fill("700");
    expect(await bench.faults()).toEqual([]);
  });

  test("flours that make no 100 are told below the table", async () => {
    await bench.open();
    await bench.fill();
    await bench.field("Baker's %, ingredient 1").fill("90");
    await bench.field("Baker's %, ingredient 2").focus();
    expect(await bench.faults()).toEqual([]);
    await bench.field("Name of the formula").focus();
    expect(await bench.page.locator(".fault:visible").textContent()).toBe(
      "The percentages have flour rows that add up to 90; all flours together make 100 (or 100%).",
    );
    await bench.build().click();
    expect(await bench.focused()).toBe("Baker's %, ingredient 1");
    await bench.checked("flours");
  });

  test("percentages are typed down the column, or all in one", async () => {
    await bench.open();
    await bench.field("Baker's %, ingredient 1").selectText();
    await bench.page.keyboard.type("100/67/2/1");
    await bench.page.keyboard.press("Enter");
    const column = () =>
      bench.page
        .locator(".ingredients .row:not(.heads) input.number:visible")
        .evaluateAll((all) => all.map((one) => (one as HTMLInputElement).value));
    expect(await column()).toEqual(["100", "67", "2", "1", "3", "2"]);
    expect(await bench.focused()).toBe("Baker's %, ingredient 2");
    await bench.page.keyboard.type("65\n");
    expect(await column()).toEqual(["100", "65", "2", "1", "3", "2"]);
    await bench.page.getByRole("button", { name: "Take out ingredient 5" }).click();
    expect(await column()).toEqual(["100", "65", "2", "1", "2"]);
    expect(await bench.focused()).toBe("Name, ingredient 5");
    await bench.field("Baker's %, ingredient 5").focus();
    await bench.page.keyboard.press("Enter");
    expect(await bench.focused()).toBe("Baker's %, ingredient 6");
  });

  test("cells copied from a sheet fill the table", async () => {
    await bench.open();
    await bench.field("Name, ingredient 5").evaluate((input) => {
      const clipboardData = new DataTransfer();
      clipboardData.setData("text/plain", "Rye\tflour\t10\r\nLevain\tlevain 100%\t20%\r\nSeeds\tgrain\t5,5\r\n");
      input.dispatchEvent(new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true }));
    });
    const row = bench.page.locator(".ingredients .row:not(.heads)");
    const typed = async (at: number) =>
      row
        .nth(at)
        .locator("input:visible")
        .evaluateAll((all) => all.map((one) => (one as HTMLInputElement).value));
    expect(await row.count()).toBe(7);
    expect(await typed(4)).toEqual(["Rye", "flour", "10"]);
    expect(await typed(5)).toEqual(["Levain", "levain 100%", "20%"]);
    expect(await typed(6)).toEqual(["Seeds", "grain", "5,5"]);
  });

  test("units convert what was typed, without moving the focus", async () => {
    await bench.open();
    await bench.fill();
    await bench.field("Weights").selectOption("oz");
    await bench.field("Lengths").focus();
    await bench.field("Lengths").selectOption("in");
    expect(await bench.focused()).toBe("Lengths");
    expect(await bench.field("Baked oz, size 1").inputValue()).toBe("24.69");
    expect(await bench.field("Length in").inputValue()).toBe("8.27");
    await bench.field("Weights").selectOption("g");
    expect(await bench.field("Baked g, size 1").inputValue()).toBe("700");
  });

  test("one way of making at a time", async () => {
    await bench.open();
    await bench.field("Flour").check();
    expect(await bench.field("Pieces, size 1").isVisible()).toBe(false);
    await bench.field("Flour to use g").fill("12,5 kg");
    await bench.field("Shape").selectOption("");
    await bench.build().click();
    await bench.wait(100);
    const [sheet] = await bench.builds();
    expect(sheet?.text("by")).toBe("flour");
    expect(sheet?.number("amount")).toBe(12500);
    expect(["Tin", "Dough temperature"].map((heading) => sheet?.says(heading))).toEqual([false, true]);
  });
});
