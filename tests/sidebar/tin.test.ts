import { describe, expect, test } from "vitest";
import { skipWithoutChromium } from "./browser.ts";
import { benchPages } from "./page.ts";

const skip = skipWithoutChromium("the tin's picture in a browser");

describe.skipIf(skip)("the tin in the sidebar", () => {
  const bench = benchPages();
  const tin = () => bench.page.getByRole("img", { name: /^Side view of the tin\./ });

  test("draws the tin with its dough and the guide", async () => {
    await bench.open();
    await bench.fill();
    const says = await tin().locator("title").textContent();
    // 21 × 11 × 9 = 2079 cm³; 700 ÷ 0.89 = 786.5 g, a fill of 0.38; the guide for white is 0.34 to 0.59, usually 0.43
    expect(says).toContain("Fill 0.38 g/cm³, within the usual range for white (0.34 to 0.59)");
    const texts = (await tin().locator("text").allTextContents()).map((text) => text.replace(/\s/g, " "));
    expect(texts).toEqual(["high 1 227 g", "usual 894 g", "low 707 g", "21 × 9 cm, 2079 cm³", "dough 787 g"]);
    const [dough, hollow] = await Promise.all(
      [".dough", ".wall"].map((one) =>
        tin()
          .locator(one)
          .evaluate((node) => {
            const { width, height } = (node as SVGGraphicsElement).getBBox();
            return { width, height };
          }),
      ),
    );
    // straight walls: the height is the fill; the picture is 21 wide and 9 deep
    expect((dough?.height ?? Number.NaN) / (hollow?.height ?? 1)).toBeCloseTo(700 / 0.89 / 2079, 3);
    expect((hollow?.width ?? 0) / (hollow?.height ?? 1)).toBeCloseTo(21 / 9, 3);
    await bench.field("Shape").selectOption("");
    expect(await tin().filter({ visible: true }).count()).toBe(0);
  });

  test("a cake's tin holds batter", async () => {
    await bench.open();
    await bench.field("Template").selectOption("cake");
    expect(await bench.field("Kind of batter").count()).toBe(1);
    expect(await bench.field("Kind of dough").count()).toBe(0);
    expect(await bench.page.getByText(/^Guide: .* g of batter per cm³ of tin/).count()).toBe(1);
  });

  test("every shape of tin can be drawn and harms nobody", async () => {
    await bench.open();
    await bench.fill();
    const sizes: Record<string, string[]> = {
      round: ["23", "7"],
      ring: ["24", "8", "9"],
      oval: ["30", "20", "6"],
      dome: ["20"],
      wreath: ["24", "8"],
      polygon: ["6", "10", "5"],
      water: ["1520"],
    };
    for (const [shape, typed] of Object.entries(sizes)) {
      await bench.field("Shape").selectOption(shape);
      const fields = bench.page.locator(".two .field:visible input");
      for (let at = 0; at < (await fields.count()); at++) await fields.nth(at).fill(typed[at] ?? "");
      expect(await tin().locator(".dough").count(), shape).toBeGreaterThan(0);
      expect(await tin().innerHTML(), shape).not.toMatch(/NaN|Infinity|undefined/);
    }
    await bench.checked("shapes");
  });
});
