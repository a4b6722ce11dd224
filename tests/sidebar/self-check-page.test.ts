// The add-on's own check as a person runs it: the menu, the panel, one cell typed, the report.
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { TYPED_CELL } from "../../shared/protocol/self-check-probes.ts";
import { checkExamples } from "../../src/build/page.ts";
import { IS_LONG } from "../kit/scale.ts";
import { type LocalPage, oneCellKept, openLocalPage } from "../workbook/local-page.ts";
import { skipWithoutChromium } from "./browser.ts";

const PICTURES = process.env.PICTURES;

describe.skipIf(skipWithoutChromium("the check in the page"))("Test this installation", () => {
  let local: LocalPage;
  beforeAll(async () => {
    local = await openLocalPage({ keeper: await oneCellKept() });
  });
  afterAll(async () => {
    await local?.close();
  });

  test("the page says what it is and that the shop is invented, and covers nothing with it", async () => {
    const { page } = local;
    const said = page.getByText(/Gramwright in a local workbook.*Tern Quay\s+Bakehouse is an invented shop/s);
    for (const width of [1440, 1024, 640]) {
      await page.setViewportSize({ width, height: 1000 });
      const [about, main] = [await said.boundingBox(), await page.locator("main").boundingBox()];
      if (about === null || main === null) throw new Error("nothing is shown");
      expect(about.y).toBeGreaterThanOrEqual(0);
      expect(about.y + about.height).toBeLessThanOrEqual(main.y);
      expect(about.x + about.width).toBeLessThanOrEqual(width);
      if (PICTURES !== undefined) await page.screenshot({ path: `${PICTURES}/local-${width}.png` });
    }
    await page.setViewportSize({ width: 1440, height: 1000 });
  });

  test("calculates every example in a sheet, reports, and removes the sheet", async () => {
    const { page } = local;
    const bench = page.frameLocator("#sidebar-frame");
    const tabs = () => page.locator(".o-sheet-name").allTextContents();
    const before = await tabs();
    await page.getByRole("button", { name: "Test this installation" }).click();
    await bench.getByRole("heading", { name: "Test this installation" }).waitFor();
    await bench.getByRole("button", { name: "Run the check" }).click();
    await bench.getByText(`All ${checkExamples().length} examples agree.`).waitFor();
    const report = bench.getByLabel("The report, to copy");
    expect(await report.inputValue()).toContain(`${checkExamples().length} examples in`);
    expect(await report.inputValue()).toContain("All of them are correct.");
    expect(await report.inputValue()).toMatch(/^Gramwright \d+\.\d+\.\d+, /);
    for (const file of ["Code.gs", "sidebar.html"])
      expect(await report.inputValue()).toMatch(new RegExp(`^${file}: as it was packed \\(\\d+:[0-9a-f]+\\)$`, "m"));
    expect(await report.inputValue()).toMatch(/^One call: [\d.]+ s; 20 at once: [\d.]+ s/m);
    expect(await report.inputValue()).toMatch(/^A build: [\d.]+ s; a typed weight: [\d.]+ s$/m);
    await local.type(TYPED_CELL, "0.65");
    await bench.getByRole("button", { name: "Read what I typed" }).click();
    await bench.getByText("The sheet of the check is removed").waitFor();
    // What only a person sees: the last answer stands in the report.
    await bench.getByText("What only you can see").click();
    const undo = bench.getByLabel(/press Ctrl\+Z once\. What happens\?/);
    await undo.selectOption("nothing");
    await undo.selectOption("part of it goes");
    expect((await report.inputValue()).match(/^By hand, .*/gm)).toEqual([
      "By hand, undo after a build: part of it goes",
    ]);
    expect(await report.inputValue()).toMatch(/0\.65 typed into a percent cell: 0\.\d+/);
    expect(await tabs()).toEqual(before);
  });

  // The whole check once more.
  test.runIf(IS_LONG)("a sheet that cannot be removed is named, for the person to delete", async () => {
    const { page } = local;
    const bench = page.frameLocator("#sidebar-frame");
    await bench.getByRole("button", { name: "Run the check" }).click();
    await bench.getByText(`All ${checkExamples().length} examples agree.`).waitFor();
    const tab = page.locator(".o-sheet-name", { hasText: "Gramwright check" });
    await tab.dblclick();
    await page.keyboard.press("Control+A");
    await page.keyboard.type("Theirs by now");
    await page.keyboard.press("Enter");
    await bench.getByRole("button", { name: "Read what I typed" }).click();
    await bench
      .getByText("The sheet “Gramwright check” could not be removed. If it is still there, delete it.")
      .waitFor();
  });

  test("the menu's other entry shows the sidebar again", async () => {
    const { page } = local;
    await page.getByRole("button", { name: "Open Gramwright" }).click();
    const bench = page.frameLocator("#sidebar-frame");
    await bench.getByRole("button", { name: "Build the sheet" }).waitFor();
    expect(await bench.getByRole("button", { name: "Run the check" }).count()).toBe(0);
  });
});
