import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { costed, larderOf, modelNamed, SLOW } from "../money/costing-support.ts";
import { workbook } from "./sheet-support.ts";

test("a label is for one size: its weight and its own loss, in bread, in batter and in rounds", async () => {
  const book = await workbook();
  await larderOf(book);
  const sizes = { size_name: ["loaf", "roll"], size_pieces: [10, 40], size_weight: [800, 60], size_loss: [0.1, 0.16] };
  const rows = { ingredient: ["Strong white flour", "Water"], kind: ["flour", "water"], percent: [1, 0.5], law: "EU" };
  for (const [template, by] of [
    ["pan-loaf", "pieces"],
    ["cake", "pieces"],
  ] as const) {
    const sheet = await costed(book, { title: template, by, ...sizes, ...rows }, modelNamed(template));
    const whole = sheet.value("dough") as number;
    // Scaled at 800 ÷ 0.9 and 60 ÷ 0.84; the roll loses more, so that more of it is flour.
    for (const [row, weight, kept] of [
      [1, 800, 0.9],
      [2, 60, 0.84],
    ] as const) {
      sheet.type("piece_size", String(row));
      expect(sheet.value("piece")).toBe(weight);
      expect(sheet.value("baked")).toBeCloseTo(whole * kept, 6);
      sheet.type("declare", "Strong white flour");
      expect(sheet.value("declared")).toBeCloseTo(1 / 1.5 / kept, 9);
    }
    for (const other of ["3", "99", ""]) {
      sheet.type("piece_size", other);
      expect([sheet.value("piece"), sheet.value("baked"), sheet.value("list")]).toEqual(["", "", ""]);
      expect(sheet.value("list_length")).toBe("no weights yet, or no size in this row");
    }
  }
  const round = modelNamed("flat-round");
  const pizza = await costed(book, { ...round.sample, law: "EU", label_loss: 0.08 }, round);
  const scaled = pizza.value("size_scaled", 1) as number;
  expect(scaled).toBeGreaterThan(50);
  expect(pizza.value("piece")).toBeCloseTo(scaled * 0.92, 9);
  expect(pizza.value("baked")).toBeCloseTo((pizza.value("dough") as number) * 0.92, 6);
});

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
      const per100 = (column: string) =>
        (10_000 * figure("20083", column) + 100 * figure("18374", column) + 200 * figure("02047", column)) /
        1.63 /
        85.8;
      const line = (name: string, column = "per_100") => {
        const at = Array.from({ length: 9 }, (_, row) => row).find((row) => sheet.value("nutrient", row) === name);
        return sheet.value(column, at ?? -1);
      };
      // Bread flour's protein is counted as 5.70 of nitrogen, yeast's as 6.25.
      const flour = (10_000 * figure("20083", "protein")) / 1.63 / 85.8;
      const protein = per100("protein") + flour * (6.25 / 5.7 - 1);
      const carbohydrate = per100("carbohydrate") - per100("fibre") - (protein - per100("protein"));
      const joules = 17 * (carbohydrate + protein) + 37 * per100("fat") + 8 * per100("fibre");
      expect(line("Energy (kJ)")).toBe(Math.round(joules));
      expect(line("Energy (kJ)", "per_portion")).toBe(Math.round(joules * 8.58));
      expect(line("Protein (g)")).toBe(Math.round(protein * 10) / 10);
      expect(line("Carbohydrate (g)")).toBe(Math.round(carbohydrate));
      expect(line("Salt (g)")).toBe(Math.round((per100("sodium_mg") * 2.5) / 100) / 10);
      expect(sheet.value("nutrition_says")).toContain("annex XIV");
      sheet.type("law", "US");
      sheet.type("serving", "50");
      expect(line("Total carbohydrate (g)", "per_portion")).toBe(Math.round(per100("carbohydrate") / 2));
      expect(line("Sodium (mg)", "per_portion")).toBe(Math.round(per100("sodium_mg") / 20) * 10);
      expect(line("Not known here", "nutrition_note")).toMatch(/added sugars, vitamin D/);
      expect(sheet.value("nutrition_says")).toMatch(/^Not a Nutrition Facts panel/);
    },
    SLOW,
  );

  test(
    "the list falls by weight with the water that is left: 1000 g flour, 600 g water, baked to 1430 of 1630 g",
    async () => {
      // Derived: 858 of 1000 is 1398.5 of 1630; water left 1398.5 − 1030 = 368.5, still second.
      const { sheet } = await bread();
      const list = "WHEAT flour (statutory additions not known), water, salt, yeast";
      expect(sheet.value("list")).toBe(list);
      expect(sheet.value("list_1")).toBe(list);
      expect(sheet.value("list_2")).toBe("");
      expect(sheet.value("allergens")).toBe("cereals containing gluten (wheat)");
      sheet.type("declare", "Strong white flour");
      expect(sheet.value("declared")).toBeCloseTo(1000 / 1398.54, 4);
      sheet.type("law", "US");
      expect(sheet.value("allergens")).toBe("wheat");
      // Rules that are taken out leave a label that says what to choose, and nothing that reads like one.
      sheet.type("law", "");
      expect(sheet.value("list_length")).toBe("choose the labelling rules above: EU, UK or US");
      for (const name of ["list", "list_1", "allergens", "declared", "not_assessed", "nutrient", "per_100"])
        expect(sheet.value(name), name).toBe("");
    },
    SLOW,
  );

  test(
    "an allergen that came or went since the last version is pointed out",
    async () => {
      const { larder, sheet } = await bread();
      sheet.type("allergens_last", String(sheet.value("allergens")));
      expect(sheet.value("allergens_change")).toBe("No change.");
      larder.type("allergens", "rye; milk", 1);
      expect(sheet.value("allergens_change")).toMatch(/^CHANGED since the current label/);
      expect(sheet.value("allergens_came")).toBe("rye, milk");
      expect(sheet.value("allergens_gone")).toBe("wheat");
    },
    SLOW,
  );

  test(
    "an ingredient without allergen data is named, never passed over, and the numbers beside it stay",
    async () => {
      const { larder, sheet } = await bread();
      larder.type("allergens", "", 7);
      expect(sheet.message("allergens")).toMatch(/ingredients row 5 is "Fresh yeast", whose allergens are not known/);
      expect(sheet.value("list_length")).toBe("still calculating, or see the red cell");
      expect(sheet.value("list_1")).toBe("");
      expect(sheet.value("per_100")).toBeGreaterThan(900);
    },
    SLOW,
  );

  test(
    "a long list is shown whole, in lines that break between words",
    async () => {
      const { larder, sheet } = await bread();
      const parts = Array.from({ length: 12 }, (_, at) => `ancient grain number ${at + 1}`).join(", ");
      larder.type("made_of", parts, 1);
      const lines = [1, 2, 3, 4, 5].map((at) => String(sheet.value(`list_${at}`)));
      expect(lines.join("")).toBe(sheet.value("list"));
      for (const line of lines.slice(0, 2)) expect(line.length).toBeLessThan(130);
      expect(lines[0]).toMatch(/ $/);
      expect(lines[3]).not.toBe("");
      expect(lines[4]).toBe("");
    },
    SLOW,
  );

  test(
    "in ounces the label says the same: figures of 100 g and of a piece to 1e-6, list and allergens to the letter",
    async () => {
      const OUNCE = 28.349523125;
      const book = await workbook();
      await larderOf(book);
      const inUnits = (weight: "g" | "oz", one: number) =>
        costed(
          book,
          {
            title: `Bread in ${weight}`,
            size_name: ["loaf"],
            size_pieces: [10],
            size_weight: [858 / one],
            size_loss: [1 - 858 / 1000],
            ingredient: ["Strong white flour", "Water", "Sea salt", "Unsalted butter"],
            kind: ["flour", "water", "salt", "fat"],
            percent: [1, 0.6, 0.02, 0.05],
            law: "EU",
            declare: "Unsalted butter",
          },
          undefined,
          { weight },
        );
      const [grams, ounces] = [await inUnits("g", 1), await inUnits("oz", OUNCE)];
      for (const name of ["list", "allergens"]) expect(ounces.value(name)).toBe(grams.value(name));
      expect(ounces.value("declared")).toBeCloseTo(grams.value("declared") as number, 6);
      expect((ounces.value("piece") as number) * OUNCE).toBeCloseTo(858, 6);
      expect((ounces.value("baked") as number) * OUNCE).toBeCloseTo(grams.value("baked") as number, 6);
      for (let row = 0; row < 9; row++)
        for (const column of ["per_100", "per_portion"])
          expect(ounces.value(column, row), `${column} ${row}`).toBe(grams.value(column, row));
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
