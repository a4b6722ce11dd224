import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { costed, larderOf, SLOW } from "../money/costing-support.ts";
import { workbook } from "./sheet-support.ts";

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
      const list = "WHEAT flour (statutory additions not known), water, salt, yeast";
      expect(sheet.value("list")).toBe(list);
      expect(sheet.value("list_1")).toBe(list);
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
