// The add-on's own check as a person runs it: the menu, the panel, one cell typed, the report.
import { afterAll, beforeAll, describe, expect, test, vi } from "vitest";
import { TYPED_CELL } from "../shared/self-check-probes.ts";
import { checkExamples } from "../src/build/page.ts";
import { skipWithoutChromium } from "./browser.ts";
import { type LocalPage, openLocalPage } from "./local-page.ts";

vi.setConfig({ testTimeout: 180_000, hookTimeout: 120_000 });

describe.skipIf(skipWithoutChromium("the check in the page"))("Check this add-on", () => {
  let local: LocalPage;
  beforeAll(async () => {
    local = await openLocalPage();
  });
  afterAll(async () => {
    await local?.close();
  });

  test("calculates every example in a sheet, reports, and removes the sheet", async () => {
    const { page, mishaps } = local;
    const bench = page.frameLocator("#bench-frame");
    const tabs = () => page.locator(".o-sheet-name").allTextContents();
    const before = await tabs();
    await page.getByRole("button", { name: "Check this add-on" }).click();
    await bench.getByRole("heading", { name: "Check this add-on" }).waitFor();
    await bench.getByRole("button", { name: "Run the check" }).click();
    await bench.getByText(`All ${checkExamples().length} examples agree.`).waitFor({ timeout: 120_000 });
    const report = bench.getByLabel("The report, to copy");
    expect(await report.inputValue()).toContain(`${checkExamples().length} examples in`);
    expect(await report.inputValue()).toContain("All of them agree.");
    await local.type(TYPED_CELL, "0.65");
    await bench.getByRole("button", { name: "Read what I typed" }).click();
    await bench.getByText("The sheet of the check is removed").waitFor();
    expect(await report.inputValue()).toMatch(/0\.65 typed into a percent cell: 0\.\d+/);
    expect(await tabs()).toEqual(before);
    expect(mishaps).toEqual([]);
  });

  test("the menu's other entry shows the bench again", async () => {
    const { page } = local;
    await page.getByRole("button", { name: "Open the bench" }).click();
    const bench = page.frameLocator("#bench-frame");
    await bench.getByRole("button", { name: "Build the sheet" }).waitFor();
    expect(await bench.getByRole("button", { name: "Run the check" }).count()).toBe(0);
  });
});
