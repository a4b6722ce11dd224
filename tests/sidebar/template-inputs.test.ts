import { beforeEach, describe, expect, test } from "vitest";
import { a1 } from "../../shared/sheet/a1.ts";
import { layOut } from "../../shared/sheet/layout.ts";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { METRIC_UNITS } from "../kit/units.ts";
import { workbook } from "../templates/sheet-support.ts";
import { skipWithoutChromium } from "./browser.ts";
import { benchPages } from "./page.ts";

describe.skipIf(skipWithoutChromium("what a template has of its own, in a browser"))("a template's own inputs", () => {
  let book: WorkbookHost;
  const bench = benchPages((json) => JSON.stringify(book.ask(JSON.parse(json))));
  beforeEach(async () => {
    book = await workbook();
  });
  const start = async (template: string) => {
    await bench.open();
    await bench.field("Template").selectOption(template);
    await bench.field("Name of the formula").fill("Quay");
  };
  const built = async () => {
    await bench.build().click();
    await expect.poll(() => bench.status()).toMatch(/^Built “Quay”/);
  };
  const figures = async () => (await bench.page.locator(".figures:visible").textContent())?.replace(/\s/g, " ");
  const cell = (template: string, name: string, row = 0) => {
    const model = TEMPLATES.find((one) => one.name === template);
    // No larder, and of the pan loaf no tin.
    const parts =
      model?.parts.filter((part) => !["cost", "label", template === "pan-loaf" ? "tin" : ""].includes(part)) ?? [];
    const zone = model && layOut(model, { ...METRIC_UNITS, parts }).names.get(name);
    if (zone === undefined) throw new Error(`no cell is called ${name}`);
    return book.shownTexts("Quay", a1({ row: zone.row + row, column: zone.column }))[0]?.[0];
  };

  test("a poolish, oven loads and steps: drawn as a line of time, and on the sheet", async () => {
    await start("hearth-loaf");
    await bench.field("Pieces, size 1").fill("50");
    await bench.field("Baked g, size 1").fill("860");
    await bench.field("Loss %, size 1").fill("14");
    expect(await bench.page.getByText("Enter a finish time to see the steps drawn.").isVisible()).toBe(true);
    await bench.field("Ready at").fill("7 am");
    await bench.field("Pieces in an oven load").fill("30");
    await bench.field("Time to reload min").fill("10");
    // 50 loaves are two loads: 40 + 10 + 40 minutes; all steps 410 minutes before 07:00, the poolish 14 hours before that.
    const line = bench.page.getByRole("img", { name: /^Steps by time\./ });
    const says = await line.locator("title").first().textContent();
    expect(says).toContain("10:10 the day before Poolish ripens, 14 h; 00:10 Mix, 20 min;");
    expect(says).toContain("04:30 Bake, 1 h 30 min; 06:00 Cool, 1 h; ready at 07:00.");
    // 50 × 860 ÷ 0.86 over 1.728
    expect(await figures()).toContain("Flour 28 935 g");
    expect(await bench.page.getByRole("img", { name: /^Of the whole dough: flour 57\.9 %, 28/ }).count()).toBe(1);
    await bench.checked("hearth loaf");
    await bench.field("Minutes, step 2").fill("2 h 30");
    await bench.field("Ripe for the step").fill("Fold");
    await bench.field("Ready at").fill("25:00");
    await bench.field("Name of the formula").focus();
    expect((await bench.faults()).join(" ")).toMatch(
      /"Fold", and nothing has that name; enter "Mix", .* no time of day/,
    );
    await bench.checked("own inputs in error");
    await bench.field("Ripe for the step").fill("mix");
    await bench.field("Ready at").fill("7:00");
    await bench.page.getByRole("button", { name: "Add a step" }).click();
    expect(await bench.focused()).toBe("Step, step 8");
    await bench.page.keyboard.type("Pack");
    await bench.page.keyboard.press("Tab");
    await bench.page.keyboard.type("20");
    await built();
    expect([cell("hearth-loaf", "step", 8), cell("hearth-loaf", "step_start", 8)]).toEqual(["Pack", "06:40"]);
    // 30 minutes more of rise and 20 of packing: 410 + 50 before 07:00
    expect([cell("hearth-loaf", "step_start", 1), cell("hearth-loaf", "step_day", 1)]).toEqual(["23:20", "-1"]);
    expect([cell("hearth-loaf", "pre_start"), cell("hearth-loaf", "pre_day")]).toEqual(["09:20", "-1"]);
    expect(cell("hearth-loaf", "pre_share")).toMatch(/^30/);
  });

  test("rounds by their diameter, and a thickness from a round that is right", async () => {
    await start("flat-round");
    await bench.field("Pieces, size 1").fill("20");
    await bench.field("Across cm, size 1").fill("30");
    await bench.field("Weight per area g/cm²").fill("");
    await bench.build().click();
    expect((await bench.faults()).join(" ")).toContain("Enter the weight per area, or weight and diameter of a round");
    await bench.field("or a round: its weight g").fill("270");
    await bench.field("Known base: diameter cm").fill("30");
    // 20 pieces as that one: 5400 g
    await expect.poll(figures).toContain("Dough 5 400 g");
    await bench.wait(1000);
    await built();
    expect(cell("flat-round", "size_scaled", 1)?.replace(/\D/g, "")).toMatch(/^270/);
    expect(cell("flat-round", "size_diameter", 1)).toMatch(/^30/);
  });

  test("a cake is made by pieces, tins, batter or flour, a cookie by trays", async () => {
    await start("cake");
    const ways = () => bench.page.locator(".choices:visible label").allTextContents();
    expect(await ways()).toEqual(["Pieces", "Tins", "Batter", "Flour"]);
    expect(await bench.page.getByLabel("Tins", { exact: true }).first().isChecked()).toBe(true);
    expect(await bench.page.getByLabel("Batter", { exact: true }).isChecked()).toBe(false);
    await bench.field("Template").selectOption("cookie");
    expect(await ways()).toEqual(["Pieces", "Trays", "Dough", "Flour"]);
    await bench.field("Name of the formula").fill("Quay");
    await bench.page.getByRole("radio", { name: "Trays", exact: true }).check();
    await bench.build().click();
    expect(await bench.focused()).toBe("Trays");
    await bench.page.getByRole("textbox", { name: "Trays", exact: true }).fill("14");
    await bench.field("Pieces on a tray").fill("15");
    await bench.field("Baked g, size 1").fill("60");
    // 14 × 15 × 60
    await expect.poll(figures).toContain("Dough 12 600 g");
    await bench.wait(1000);
    await built();
    expect(cell("cookie", "amount")).toBe("14");
    expect(cell("cookie", "by")).toBe("trays");
  });

  test("weights beside the percentages make the recipe's own amount", async () => {
    await start("cookie");
    await bench.page.getByLabel("Enter weights as well").check();
    await bench.field("Baker's %, ingredient 1").fill("");
    await bench.field("or weight g, ingredient 1").fill("12,5 kg");
    await bench.field("Baker's %, ingredient 2").focus();
    // 12 500 × (1 + 0.6 + 0.45 + 0.3 + 0.28 + 0.7 + 0.01 + 0.012)
    await expect.poll(figures).toContain("Dough 41 900 g");
    await bench.checked("weights");
    await bench.page.evaluate(() => {
      document.documentElement.style.fontSize = "200%";
    });
    await bench.checked("weights, large");
    await built();
    expect(cell("cookie", "weight", 1)?.replace(/\D/g, "")).toMatch(/^12500/);
  });
});
