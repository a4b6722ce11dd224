import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { Options, SheetModel, Values } from "../shared/model.ts";
import type { WorkbookHost } from "../src/workbook/host.ts";
import { SHEETS, TEMPLATES } from "../templates/index.ts";
import { type Built, buildSheet, workbook } from "./sheet-support.ts";

const SLOW = 120_000;
const METRIC: Options = { weight: "g", temperature: "C", length: "cm", parts: [] };

const modelNamed = (name: string): SheetModel => {
  const found = SHEETS.find((one) => one.name === name);
  if (found === undefined) throw new Error(`no template ${name}`);
  return found;
};
const larderSheet = modelNamed("larder");
const panLoaf = modelNamed("pan-loaf");
const priceSheet = modelNamed("prices");

/** A sheet with all that a larder makes possible. */
const costed = (book: WorkbookHost, values: Values, model = panLoaf, units: Partial<Options> = {}) =>
  buildSheet(values, {
    book,
    model,
    options: { ...METRIC, ...units, parts: ["cost", "label", ...(model === panLoaf ? ["tin", "water"] : model.parts)] },
  });
const larderOf = (book: WorkbookHost, values: Values = larderSheet.sample) =>
  buildSheet(values, { book, model: larderSheet, options: METRIC });
const pricesOf = (book: WorkbookHost) =>
  buildSheet({ title: "Prices" }, { book, model: priceSheet, options: { ...METRIC, parts: ["products"] } });

function callsOn({ book, sheet }: Pick<Built, "book" | "sheet">): number {
  const formulas = book.formulas(sheet, book.usedRange(sheet)).flat();
  return formulas.reduce((sum, formula) => sum + (formula?.match(/BAKE_[A-Z]+\(/g)?.length ?? 0), 0);
}

/** A class worksheet, docstoc 52086225: sixteen dozen dinner rolls. Prices and packs as printed. */
const BOUGHT = [
  ["Sugar", "1.99", "5 lb"],
  ["Shortening", "2.89", "3 lb"],
  ["Nonfat dry milk", "1.89", "1 lb"],
  ["Salt", "0.59", "1 lb"],
  ["Whole egg", "0.89", "1 dozen"],
  ["Fresh yeast", "4.29", "4 oz"],
  ["Water", "n/a", ""],
  ["Flour", "2.89", "5 lb"],
] as const;
/** In ounces; three eggs of 50 g without shell (USDA SR28 01123, large). */
const EGGS = (3 * 50) / 28.349523125;
const WEIGHED = [
  ["Flour", "flour", 112],
  ["Water", "water", 64],
  ["Sugar", "sugar", 16],
  ["Shortening", "fat", 20],
  ["Nonfat dry milk", "dairy", 8],
  ["Salt", "salt", 2],
  ["Whole egg", "egg", EGGS],
  ["Fresh yeast", "yeast", 6],
] as const;
const PRINTED = [4.046, "", 0.398, 1.2042, 0.945, 0.0738, 0.2225, 6.435];

describe("sixteen dozen dinner rolls (docstoc 52086225)", () => {
  const rolls = async () => {
    const book = await workbook();
    const larder = await larderOf(book, { ingredient: [] });
    BOUGHT.forEach(([name, price, pack], row) => {
      larder.type("ingredient", name, row + 1);
      larder.type("price", price, row + 1);
      if (pack !== "") larder.type("pack", pack, row + 1);
    });
    const sheet = await costed(book, { title: "Dinner rolls", by: "dough" }, panLoaf, { weight: "oz" });
    WEIGHED.forEach(([name, kind, weight], row) => {
      sheet.type("ingredient", name, row + 1);
      sheet.type("kind", kind, row + 1);
      sheet.type("weighed", String(weight), row + 1);
    });
    sheet.type("size_name", "roll", 1);
    // 14.58 lb of dough for 192 rolls.
    sheet.type("size_weight", String((112 + 64 + 16 + 20 + 8 + 2 + 6 + EGGS) / 192), 1);
    return { book, larder, sheet };
  };

  test(
    "cost $13.3244, 48 % of it the yeast; the water's row says that it has no price",
    async () => {
      const { larder, sheet } = await rolls();
      PRINTED.forEach((printed, row) => {
        const cost = sheet.value("cost", row + 1);
        if (typeof printed === "number") expect(Math.abs((cost as number) - printed)).toBeLessThan(6e-5);
        else expect(cost).toBe(printed);
      });
      const all = sheet.value("cost_ingredients") as number;
      expect(Math.abs(all - 13.3244)).toBeLessThan(0.001);
      expect((sheet.value("cost", 8) as number) / all).toBeCloseTo(0.48, 2);
      expect(sheet.value("price_note", 2)).toMatch(/price" is "n\/a"/);
      larder.type("price", "", 7);
      expect(sheet.value("price_note", 2)).toBe("no price");
      expect(sheet.value("cost_ingredients")).toBe(all);
      expect(sheet.value("unpriced")).toBe("");
      expect(sheet.value("size_ingredients", 1)).toBeCloseTo(0.0694, 4);
      expect((sheet.value("size_ingredients", 1) as number) * 12).toBeCloseTo(0.8328, 4);
    },
    SLOW,
  );

  test(
    "an ingredient that lost its price is counted as missing, and the rest still adds up",
    async () => {
      const { larder, sheet } = await rolls();
      larder.type("price", "", 6);
      expect(sheet.value("cost", 8)).toBe("");
      expect(sheet.value("price_note", 8)).toBe("no price");
      expect(sheet.value("unpriced")).toBe("1 without");
      expect(sheet.value("cost_ingredients")).toBeCloseTo(13.3244 - 6.435, 3);
      expect(larder.value("price_remark", 6)).toBe("no price");
      larder.type("price", "4.29", 6);
      larder.type("pack", "a box", 6);
      expect(sheet.value("cost_ingredients")).toBeCloseTo(13.3244 - 6.435, 3);
      expect(String(sheet.value("price_note", 8))).not.toBe("");
    },
    SLOW,
  );
});

test(
  "labour, overhead, packaging and price: 0.80 + 0.50 + 0.30 + 0.05 is 1.65; 2.5385 at a margin of 35 %, 2.2275 at a markup of 35 %",
  async () => {
    // Derived by hand: 24 pieces, 40 minutes at 18 an hour, overhead 60 % of labour. 1.65 ÷ 0.65, 1.65 × 1.35.
    const book = await workbook();
    await larderOf(book, { ingredient: ["Flour"], price: [0.8 * 24], pack: ["1 kg"] });
    const sheet = await costed(book, {
      title: "Pieces",
      size_name: ["piece"],
      size_pieces: [24],
      size_weight: [1000 / 24],
      ingredient: ["Flour"],
      kind: ["flour"],
      percent: [1],
      labour_minutes: 40,
      labour_rate: 18,
      overhead: 0.6,
      packaging: 0.05,
      price_by: "margin",
      price_share: 0.35,
    });
    expect(sheet.value("size_ingredients", 1)).toBeCloseTo(0.8, 9);
    expect(sheet.value("size_cost", 1)).toBeCloseTo(1.65, 9);
    expect(sheet.value("size_price", 1)).toBeCloseTo(2.5385, 4);
    expect(sheet.value("size_margin", 1)).toBeCloseTo(0.35, 9);
    sheet.type("price_by", "markup");
    expect(sheet.value("size_price", 1)).toBeCloseTo(2.2275, 4);
    // A food cost of 32 % of the price; tax of 20 % on top of it, and the sum goes up to the next 0.05.
    sheet.type("price_by", "cost share");
    sheet.type("price_from", "ingredients");
    sheet.type("price_share", "32%");
    expect(sheet.value("size_price", 1)).toBeCloseTo(2.5, 9);
    sheet.type("price_tax", "20%");
    sheet.type("price_step", "0.35");
    expect(sheet.value("size_price", 1)).toBeCloseTo(3.15, 9);
    expect(sheet.value("size_untaxed", 1)).toBeCloseTo(2.625, 9);
    // What is made but not sold is paid for by the rest: 4 of 5 sold.
    sheet.type("unsold", "20%");
    expect(sheet.value("size_cost", 1)).toBeCloseTo(1.65 / 0.8, 9);
    sheet.type("price_by", "margin");
    sheet.type("price_share", "100%");
    expect(sheet.message("size_price")).toMatch(/margin must be below 100 %/);
    expect(sheet.value("size_margin", 1)).toBe("");
  },
  SLOW,
);

describe("label", () => {
  const bread = async (law = "UK") => {
    const book = await workbook();
    const larder = await larderOf(book);
    const sheet = await costed(book, {
      title: "Bread",
      size_name: ["loaf"],
      size_pieces: [10],
      size_weight: [858],
      size_loss: [1 - 858 / 1000],
      ingredient: ["Strong white flour", "Water", "Sea salt", "Fresh yeast"],
      kind: ["flour", "water", "salt", "yeast"],
      percent: [1, 0.6, 0.02, 0.01],
      law,
    });
    return { larder, sheet };
  };

  test(
    "energy and nutrients of a plain bread follow the SR28 figures of its parts (USDA SR28 20083, 18374, 02047)",
    async () => {
      const { sheet } = await bread();
      const dough = { flour: 10_000 / 1.63, salt: 200 / 1.63, yeast: 100 / 1.63 };
      const per100 = (column: string) =>
        (dough.flour * figure("20083", column) +
          dough.yeast * figure("18374", column) +
          dough.salt * figure("02047", column)) /
        85.8;
      const close = (name: string, expected: number) => {
        const value = sheet.value(name) as number;
        expect(Math.abs(value / expected - 1), `${name}: ${value} against ${expected}`).toBeLessThan(0.03);
      };
      close("energy_100", per100("energy_kcal"));
      close("fat_100", per100("fat"));
      close("protein_100", per100("protein"));
      close("fibre_100", per100("fibre"));
      close("carbohydrate_100", per100("carbohydrate") - per100("fibre"));
      close("sugar_100", per100("sugar"));
      close("salt_100", (per100("sodium_mg") * 2.5) / 1000);
      close("joules_100", per100("energy_kcal") * 4.184);
      expect(sheet.value("energy_piece")).toBeCloseTo((sheet.value("energy_100") as number) * 8.58, 6);
      sheet.type("law", "US");
      close("carbohydrate_100", per100("carbohydrate"));
    },
    SLOW,
  );

  test(
    "the list falls by weight with the water that is left: 1000 g flour, 600 g water, baked to 1430 of 1630 g",
    async () => {
      // Derived: 858 of 1000 is 1398.5 of 1630; water left 1398.5 − 1030 = 368.5, still second.
      const { sheet } = await bread();
      expect(sheet.value("list")).toBe("WHEAT flour, water, salt, yeast");
      expect(sheet.value("list_1")).toBe("WHEAT flour, water, salt, yeast");
      expect(sheet.value("list_2")).toBe("");
      expect(sheet.value("allergens")).toBe("cereals containing gluten (wheat)");
      sheet.type("declare", "Strong white flour");
      expect(sheet.value("declared")).toBeCloseTo(1000 / 1398.54, 4);
      sheet.type("law", "US");
      expect(sheet.value("allergens")).toBe("wheat");
    },
    SLOW,
  );

  test(
    "an allergen that came or went since the last version is pointed out",
    async () => {
      const { larder, sheet } = await bread();
      sheet.type("allergens_last", String(sheet.value("allergens")));
      expect(sheet.value("allergens_change")).toBe("As in the last version.");
      larder.type("allergens", "rye; milk", 1);
      expect(sheet.value("allergens_change")).toMatch(/^CHANGED since the last version/);
      expect(String(sheet.value("allergens_came")).trim()).toBe("rye milk");
      expect(String(sheet.value("allergens_gone")).trim()).toBe("wheat");
    },
    SLOW,
  );

  test(
    "an ingredient without allergen data is named, never passed over, and the numbers beside it stay",
    async () => {
      const { larder, sheet } = await bread();
      larder.type("allergens", "", 7);
      expect(sheet.message("allergens")).toMatch(/ingredients row 5 is "Fresh yeast", whose allergens are not known/);
      expect(sheet.value("list_length")).toBe("see the red cell");
      expect(sheet.value("list_1")).toBe("");
      expect(sheet.value("energy_100")).toBeGreaterThan(200);
    },
    SLOW,
  );

  test(
    "a long list is shown whole, in lines that break between words",
    async () => {
      const { larder, sheet } = await bread();
      const parts = Array.from({ length: 12 }, (_, at) => `ancient grain number ${at + 1}`).join(", ");
      larder.type("made_of", parts, 1);
      const lines = [1, 2, 3].map((at) => String(sheet.value(`list_${at}`)));
      expect(lines.join("")).toBe(sheet.value("list"));
      for (const line of lines.slice(0, 2)) expect(line.length).toBeLessThan(130);
      expect(lines[0]).toMatch(/ $/);
      expect(lines[2]).not.toBe("");
    },
    SLOW,
  );
});

/** A figure per gram (energy in kcal, sodium in mg) as the published table prints it for 100 g. */
function figure(ndb: string, column: string): number {
  const [head = "", ...lines] = readFileSync("tests/data/usda-sr28-bakery.csv", "utf8").trim().split(/\r?\n/);
  const cells = lines.map((line) => line.replace(/"(?:[^"]|"")*"/g, "text").split(",")).find((row) => row[0] === ndb);
  const value = Number(cells?.[head.split(",").indexOf(column)]);
  if (!Number.isFinite(value)) throw new Error(`the table has no ${column} of ${ndb}`);
  return value / 100;
}

describe("without a larder", () => {
  test.each(TEMPLATES)(
    "$title has neither cost nor label, and nothing of them",
    async (model) => {
      const { book, sheet } = await buildSheet(
        {},
        { model, options: { ...METRIC, parts: model.parts.filter((part) => part !== "cost" && part !== "label") } },
      );
      const texts = book.shownTexts(sheet, book.usedRange(sheet)).flat();
      expect(texts).not.toContain("Cost and price");
      expect(texts).not.toContain("Label");
      expect(texts.join("\n")).not.toMatch(/Price per/);
    },
    SLOW,
  );
});

describe("calls", () => {
  test.each(TEMPLATES)(
    "$title: at most 18 with cost and label, and the same when rows are added",
    async (model) => {
      const book = await workbook();
      await larderOf(book);
      // Everything typed, so that no formula can be written together with a blank beside it.
      const typed = {
        labour_minutes: 90,
        labour_rate: 18,
        overhead: 0.6,
        other_costs: 2,
        packaging: 0.05,
        unsold: 0.04,
      };
      const priced = {
        price_share: 0.3,
        price_tax: 0.2,
        price_step: 0.05,
        law: "EU",
        declare: (model.sample.ingredient as string[])[0] ?? "",
      };
      const sheet = await costed(book, { ...model.sample, ...typed, ...priced, allergens_last: "milk" }, model);
      expect(book.trail.length, "service calls of the build").toBeLessThanOrEqual(40);
      const calls = callsOn(sheet);
      expect(calls).toBeLessThanOrEqual(18);
      expect(calls).toBeGreaterThan(6);
      book.insertRows(sheet.sheet, Number(sheet.at("ingredient", 3).replace(/\D/g, "")), 20);
      expect(callsOn(sheet)).toBe(calls);
      for (const text of book.shownTexts(sheet.sheet, book.usedRange(sheet.sheet)).flat()) {
        expect(text).not.toMatch(/^#|\d\.\d{5}|\d\.$/);
      }
    },
    SLOW,
  );

  test(
    "the larder has one at any length, and a row added last is priced",
    async () => {
      const book = await workbook();
      const short = await larderOf(book);
      expect(callsOn(short)).toBe(1);
      const { book: other, ...long } = await larderOf(await workbook(), { title: "All of it" });
      expect(callsOn({ book: other, ...long })).toBe(1);
      const filled = other
        .values(long.sheet, `${long.at("ingredient", 1)}:${long.at("ingredient", 110)}`)
        .flat()
        .filter((name) => name !== "");
      expect(filled.length).toBeGreaterThan(100);
      book.type(short.sheet, short.at("ingredient", 25), "Own blend");
      book.type(short.sheet, short.at("price", 25), "30");
      book.type(short.sheet, short.at("pack", 25), "20 kg");
      expect(short.value("price_each", 25)).toBeCloseTo(1.5, 9);
    },
    SLOW,
  );
});

describe("larder sheet", () => {
  test(
    "suggests allergens beside the column of checked ones, never in it",
    async () => {
      const { value } = await larderOf(await workbook(), { ingredient: ["Butter", "Rye flour", "My own mix"] });
      expect([1, 2, 3].map((row) => value("usual", row))).toEqual(["milk", "rye", ""]);
      expect([1, 2, 3].map((row) => value("allergens", row))).toEqual(["", "", ""]);
      expect([1, 2, 3].map((row) => value("kind", row))).toEqual(["fat", "flour", ""]);
      expect(value("unchecked")).toBe(3);
    },
    SLOW,
  );

  test(
    "a second one says that formulas read the first",
    async () => {
      const book = await workbook();
      const first = await larderOf(book, { ingredient: ["Flour"], price: [1], pack: ["1 kg"] });
      const answer = book.answer({
        ask: "build",
        template: "larder",
        values: { ingredient: ["Flour"], price: [9], pack: ["1 kg"] },
      });
      expect(answer).toMatchObject({ sheet: "Larder (2)", note: expect.stringMatching(/has a larder already/) });
      const sheet = await costed(book, {
        title: "Bread",
        by: "dough",
        ingredient: ["Flour"],
        kind: ["flour"],
        weighed: [1000],
      });
      expect(sheet.value("cost", 1)).toBeCloseTo(1, 9);
      first.type("price", "2", 1);
      expect(sheet.value("cost", 1)).toBeCloseTo(2, 9);
    },
    SLOW,
  );

  test(
    "a service call that throws, each in turn, leaves neither sheet nor name",
    async () => {
      const probe = await workbook();
      await larderOf(probe);
      const book = await workbook();
      for (let call = 1; call <= probe.trail.length; call++) {
        book.failAt(call);
        const reply = book.ask({ ask: "build", template: "larder", values: larderSheet.sample });
        book.failAt(undefined);
        expect(reply.ok, `call ${call}`).toBe(false);
        expect(book.sheetNames(), `call ${call}`).toEqual(["Sheet1"]);
      }
      const sheet = await buildSheet(panLoaf.sample, { book });
      expect(book.shownTexts(sheet.sheet, book.usedRange(sheet.sheet)).flat()).not.toContain("Cost and price");
    },
    SLOW,
  );

  test(
    "rows can be inserted, deleted and sorted, and every formula sheet follows",
    async () => {
      const book = await workbook();
      const larder = await larderOf(book, { ingredient: ["Flour", "Salt"], price: [2, 4], pack: ["1 kg", "1 kg"] });
      const sheet = await costed(book, {
        title: "Bread",
        by: "dough",
        ingredient: ["Flour", "Salt", "Oat mix"],
        kind: ["flour", "salt", "grain"],
        weighed: [1000, 20, 100],
      });
      expect(sheet.value("price_note", 3)).toBe("not in the larder");
      const line = (row: number) => Number(larder.at("ingredient", row).replace(/\D/g, ""));
      book.insertRows(larder.sheet, line(1));
      for (const [name, entry] of [
        ["ingredient", "Oat mix"],
        ["price", "5"],
        ["pack", "1 kg"],
      ] as const)
        larder.type(name, entry, 1);
      expect([1, 2, 3].map((row) => sheet.value("cost", row))).toEqual([2, 0.08, 0.5]);
      book.sortRange(larder.sheet, `${larder.at("ingredient", 1)}:${larder.at("measures", 3)}`, "C");
      expect([1, 2, 3].map((row) => sheet.value("cost", row))).toEqual([2, 0.08, 0.5]);
      book.deleteRows(larder.sheet, line(1));
      expect(sheet.value("cost_ingredients")).toBeCloseTo(0.58, 9);
    },
    SLOW,
  );
});

describe("price sheet", () => {
  const shop = async () => {
    const book = await workbook();
    const larder = await larderOf(book);
    const pan = await costed(book, {
      ...panLoaf.sample,
      labour_minutes: 90,
      labour_rate: 18,
      price_by: "margin",
      price_share: 0.4,
    });
    const croissant = modelNamed("laminated");
    const rolled = await costed(book, croissant.sample, croissant);
    return { book, larder, pan, rolled };
  };

  test(
    "every product with its cost, and one changed price in all of them",
    async () => {
      const { book, larder, pan, rolled } = await shop();
      book.renameSheet(pan.sheet, "Quay's @ loaf");
      const prices = await pricesOf(book);
      expect(callsOn(prices)).toBe(1);
      const rows = [1, 2, 3, 4];
      const before = rows.map((row) => prices.value("full_cost", row) as number);
      expect(rows.map((row) => prices.value("piece", row))).toEqual(["large", "small", "croissant", "mini"]);
      expect(before[2]).toBeCloseTo(rolled.value("size_cost", 1) as number, 9);
      expect(prices.value("margin", 1)).toBeCloseTo(0.4, 9);
      // What if butter cost 120 in the place of 86? Then the price is changed for good, and the table says the same.
      prices.type("tried", "Unsalted butter");
      prices.type("tried_price", "120");
      expect(prices.value("tried_now")).toBe(86);
      expect(prices.value("check")).toBe("");
      const then = rows.map((row) => prices.value("new_cost", row) as number);
      const margin = prices.value("new_margin", 1);
      larder.type("price", "120", 9);
      const after = rows.map((row) => prices.value("full_cost", row) as number);
      after.forEach((cost, row) => {
        expect(cost).toBeGreaterThan(before[row] ?? 0);
        expect(then[row]).toBeCloseTo(cost, 9);
      });
      // The selling price follows the margin wanted; what was told is the margin at the old price.
      expect(margin).toBeLessThan(0.4);
    },
    SLOW,
  );

  test(
    "its calls do not grow with the products, ounces and grams stand side by side, and rows inserted later are counted",
    async () => {
      const { book, larder, pan } = await shop();
      const soft = modelNamed("soft-bun");
      const ounces = await costed(
        book,
        {
          title: "Ounce bread",
          by: "dough",
          ingredient: ["Strong white flour", "Butter"],
          kind: ["flour", "fat"],
          weighed: [100, 10],
          size_name: ["loaf"],
          size_weight: [20],
        },
        panLoaf,
        { weight: "oz" },
      );
      await costed(book, soft.sample, soft);
      const prices = await pricesOf(book);
      expect(callsOn(prices)).toBe(1);
      const line = Number(pan.at("ingredient", 2).replace(/\D/g, ""));
      book.insertRows(pan.sheet, line, 2);
      for (const [column, entry] of [
        ["A", "Butter"],
        ["B", "fat"],
        ["C", "10%"],
      ] as const)
        book.type(pan.sheet, `${column}${line}`, entry);
      prices.type("tried", "Unsalted butter");
      prices.type("tried_price", "172");
      const rows = [1, 2, 3, 4, 5, 6, 7];
      expect(rows.map((row) => prices.value("piece", row))).toEqual([
        "large",
        "small",
        "croissant",
        "mini",
        "loaf",
        "bun",
        "roll",
      ]);
      const then = rows.map((row) => prices.value("new_cost", row) as number);
      larder.type("price", "172", 9);
      rows.forEach((row, at) => {
        expect(then[at]).toBeCloseTo(prices.value("full_cost", row) as number, 9);
      });
      expect(prices.value("full_cost", 5)).toBeCloseTo(ounces.value("size_cost", 1) as number, 12);
    },
    SLOW,
  );

  test(
    "sheets that show no cost are told by name, and a workbook without any says what to do",
    async () => {
      const book = await workbook();
      await buildSheet({ title: "Old loaf" }, { book });
      await larderOf(book);
      await costed(book, panLoaf.sample);
      const answer = book.answer({ ask: "build", template: "prices", values: {} });
      expect(answer).toMatchObject({ note: expect.stringMatching(/show no cost: Old loaf\./) });
      const empty = await buildSheet({}, { model: priceSheet, options: METRIC });
      expect(empty.book.shownTexts(empty.sheet, "A1:A8").flat().join(" ")).toMatch(
        /Build a larder, then formula sheets/,
      );
    },
    SLOW,
  );

  test(
    "an ingredient the larder lacks is told",
    async () => {
      const { book } = await shop();
      const prices = await pricesOf(book);
      prices.type("tried", "Saffron");
      prices.type("tried_price", "5");
      expect(prices.value("tried_now")).toBe("not in the larder");
      expect(prices.value("change", 1)).toBeCloseTo(0, 9);
    },
    SLOW,
  );
});
