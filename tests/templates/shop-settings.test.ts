import { beforeEach, describe, expect, test } from "vitest";
import type { Questions } from "../../shared/protocol/questions.ts";
import type { Draft } from "../../sidebar/new-formula/draft.ts";
import { assess } from "../../sidebar/new-formula/order.ts";
import { beginWith, readShop, settingsOf } from "../../sidebar/new-formula/shop.ts";
import { startFrom } from "../../sidebar/new-formula/start.ts";
import { assess as assessPasted } from "../../sidebar/paste-recipe/order.ts";
import { emptyState, takeText } from "../../sidebar/paste-recipe/state.ts";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { skipWithoutChromium } from "../sidebar/browser.ts";
import { GRAMS, model, OUNCES, sampleDraft } from "../sidebar/drafts.ts";
import { benchPages } from "../sidebar/page.ts";
import { templateOf } from "../sidebar/samples.ts";
import { workbook } from "./sheet-support.ts";

const rowsIn = (book: WorkbookHost) => (book.answer({ ask: "settings" }) as Questions["settings"]["answer"]).rows;
function keep(book: WorkbookHost, draft: Draft) {
  const values = { title: "Bakery settings", ...settingsOf(draft) };
  const options = { ...draft.units, parts: [] };
  return book.answer({ ask: "build", template: "settings", options, values }) as { sheet: string; note?: string };
}
const begun = (book: WorkbookHost, template = model): Draft => {
  const draft = startFrom(template);
  beginWith(draft, readShop(rowsIn(book) ?? []));
  return draft;
};

describe("the shop's settings", () => {
  let book: WorkbookHost;
  beforeEach(async () => {
    book = await workbook();
  });

  test("are not there in a workbook without them", () => {
    expect(rowsIn(book)).toBeNull();
  });

  test("go into a sheet and come back: scales, mixer and kitchen, and nothing of the formula", () => {
    const { sheet } = keep(book, sampleDraft());
    expect(sheet).toBe("Bakery settings");
    const draft = begun(book, templateOf("hearth-loaf"));
    expect(draft.shop).toBe("Tern Quay Bakehouse");
    expect(draft.units).toEqual(GRAMS);
    const { mixer_limit, step_coarse, handling_loss, flour_temp, tap_temp, dough_target, minutes } = draft.fields;
    expect({ mixer_limit, step_coarse, handling_loss, flour_temp, tap_temp, dough_target, minutes }).toEqual({
      mixer_limit: "20 kg",
      step_coarse: "5 g",
      handling_loss: "2 %",
      flour_temp: "21 °C",
      tap_temp: "14 °C",
      dough_target: "",
      minutes: "",
    });
    const { order, faults } = assess(draft, templateOf("hearth-loaf"));
    expect(faults.filter(({ missing }) => !missing)).toEqual([]);
    expect(order.values).toMatchObject({ mixer_limit: 20_000, handling_loss: 0.02, flour_temp: 21, tap_temp: 14 });
  });

  test("changed in the sheet's cells are what the next formula begins with", () => {
    const { sheet } = keep(book, sampleDraft());
    const rows = book.values(sheet, "A1:A30").flat().map(String);
    const type = (name: string, text: string) => book.type(sheet, `B${rows.indexOf(name) + 1}`, text);
    type("Weights in", "ounces");
    type("Temperatures in", "°F");
    type("Lengths in", "inches");
    type("Mixer capacity", "44 lb");
    type("Room temperature", "");
    type("Labelling rules", "us");
    book.type(sheet, `A${rows.indexOf("Shop") + 1}`, "Our name");
    const draft = begun(book);
    expect(draft.units).toEqual(OUNCES);
    expect(draft.fields.room_temp).toBe("");
    expect(draft.law).toBe("US");
    expect(draft.shop).toBe("");
    const { order } = assess(draft, model);
    expect(order.values.law).toBe("US");
    // 44 × 16 ounces; 21 °C and 4000 g as they were typed
    expect(order.values.mixer_limit).toBeCloseTo(704, 9);
    expect(order.values.flour_temp).toBeCloseTo(69.8, 9);
    expect(Number(order.values.mixer_least) * 28.349523125).toBeCloseTo(4000, 6);
  });

  test("that cannot be read are said at their field", () => {
    const { sheet } = keep(book, sampleDraft());
    const rows = book.values(sheet, "A1:A30").flat().map(String);
    book.type(sheet, `B${rows.indexOf("Flour temperature") + 1}`, "warm");
    const { faults } = assess(begun(book), model);
    expect(faults.find(({ at }) => at === "flour_temp")?.says).toContain('"warm"');
  });

  test("kept twice make a second sheet, which says that the first goes on", () => {
    keep(book, sampleDraft());
    const again = keep(book, startFrom(model));
    expect(again.sheet).toBe("Bakery settings (2)");
    expect(again.note).toMatch(/has settings already/);
    expect(begun(book).fields.mixer_limit).toBe("20 kg");
  });

  test("belong to a recipe that is read in as well", () => {
    keep(book, { ...sampleDraft(), law: "UK" });
    const shop = readShop(rowsIn(book) ?? []);
    const state = emptyState();
    state.shop = shop;
    state.units = shop.units;
    takeText(state, "Rolls\n500 g flour\n300 g water");
    const { order } = assessPasted(state);
    expect(order.values).toMatchObject({ shop: "Tern Quay Bakehouse", law: "UK", mixer_limit: 20_000, room_temp: 23 });
  });

  test("are converted for a recipe in other units, and a scale that is like most stays so", () => {
    const state = emptyState();
    const built = (text: string) => {
      takeText(state, text);
      return assessPasted(state).order;
    };
    const text = "Rolls\n500 g flour\n300 g water\nBake at 350 °F for 20 minutes";
    expect(built(text).options.temperature).toBe("F");
    state.units = { ...state.units, weight: "oz" };
    expect(built(`${text}\n`).values).toMatchObject({ step_coarse: 0.1, step_fine: 0.05 });
    const rows: [string, string][] = [
      ["Weights in", "grams"],
      ["Scale reads to", "5"],
      ["Fine scale reads to", "2"],
      ["Mixer capacity", "10000"],
    ];
    state.shop = readShop(rows);
    // 10 kg are 352.74 oz, 2 g are 0.07 oz (NIST SP 811: 1 oz = 28.349523125 g).
    expect(built(text).values).toMatchObject({ step_coarse: 0.1, step_fine: 0.07, mixer_limit: 352.74 });
  });
});

describe.skipIf(skipWithoutChromium("the shop's settings in a browser"))("the panel New formula", () => {
  let book: WorkbookHost;
  const bench = benchPages((json) => JSON.stringify(book.ask(JSON.parse(json))));
  beforeEach(async () => {
    book = await workbook();
  });
  const keepButton = () => bench.page.getByRole("button", { name: "Keep as the bakery settings" });
  /** An open panel asks at once; its answer is on its way. */
  const settled = () => bench.wait(200);

  test("keeps them, and begins the next formula with them, also when it is opened anew", async () => {
    await bench.open();
    await settled();
    await bench.page.locator("summary", { hasText: "Scales and mixer" }).click();
    await bench.field("Temperature").selectOption("F");
    await bench.field("Mixer capacity g").fill("18 kg");
    await keepButton().click();
    await bench.wait(1500);
    await expect.poll(() => book.sheetNames()).toContain("Bakery settings");
    await expect.poll(() => bench.page.getByText("Kept in “Bakery settings”.").count()).toBe(1);
    await bench.checked("kept");
    await bench.field("Template").selectOption("cookie");
    await expect.poll(() => bench.field("Mixer capacity g").inputValue()).toBe("18 kg");
    expect(await bench.field("Temperature").inputValue()).toBe("F");
    await bench.open();
    await settled();
    await expect.poll(() => bench.field("Mixer capacity g").inputValue()).toBe("18 kg");
    expect(await keepButton().count()).toBe(0);
    expect(await bench.page.getByText(/^Started from your bakery settings/).count()).toBe(1);
    await bench.checked("begun");
  });

  test("lists the templates in groups", async () => {
    await bench.open();
    const groups = bench.field("Template").locator("optgroup");
    expect(await groups.evaluateAll((all) => all.map((one) => one.getAttribute("label")))).toEqual([
      "Bread",
      "Buns and laminated dough",
      "Cake and cookies",
    ]);
    expect(await groups.locator("option").count()).toBe(8);
  });

  test("leaves what is being typed alone, and offers to begin anew", async () => {
    await bench.open();
    await settled();
    await bench.field("Name of the formula").fill("Half typed");
    keep(book, sampleDraft());
    await bench.page.getByRole("button", { name: "Check", exact: true }).click();
    await bench.page.getByRole("button", { name: "New formula", exact: true }).click();
    await settled();
    expect(await bench.field("Name of the formula").inputValue()).toBe("Half typed");
    await bench.page.getByRole("button", { name: "Start again with the bakery settings" }).click();
    await expect.poll(() => bench.field("Bakery name (optional)").inputValue()).toBe("Tern Quay Bakehouse");
  });
});
