import { describe, expect, test } from "vitest";
import { FLOUR, type Row, remarks } from "./support.ts";

describe("published formulas of a style are unremarkable", () => {
  test.each<[string, string, readonly Row[]]>([
    [
      "USDA quantity recipes 1988, yeast rolls",
      "soft roll",
      [
        FLOUR,
        ["water", "water", 57.7],
        ["active dry yeast", "yeast", 3.9],
        ["instant nonfat dry milk", "dairy", 5.6],
        ["sugar", "sugar", 9.9],
        ["salt", "salt", 2.2],
        ["vegetable oil", "fat", 11.6],
      ],
    ],
    [
      "US Army card D036, sweet dough",
      "sweet dough",
      [
        FLOUR,
        ["active dry yeast", "yeast", 5],
        ["water", "water", 37.5],
        ["sugar", "sugar", 17.5],
        ["salt", "salt", 1.875],
        ["shortening", "fat", 16.25],
        ["eggs", "egg", 17.5],
        ["nonfat dry milk", "dairy", 3.125],
      ],
    ],
    [
      "Gisslen, Professional Baking, brioche",
      "brioche",
      [
        FLOUR,
        ["milk", "dairy", 20],
        ["fresh yeast", "yeast", 5],
        ["egg", "egg", 50],
        ["sugar", "sugar", 5],
        ["salt", "salt", 2],
        ["butter", "fat", 70],
      ],
    ],
    [
      "haisendata.com 14647, whole-milk bread",
      "pan bread",
      [
        FLOUR,
        ["water", "water", 64],
        ["salt", "salt", 2],
        ["fresh yeast", "yeast", 2],
        ["sugar", "sugar", 4],
        ["lard", "fat", 2.5],
        ["whole milk powder", "dairy", 8.5],
      ],
    ],
    [
      "haisendata.com 11538, yellow layer cake",
      "Layer, high-ratio",
      [
        ["cake flour", "flour", 100],
        ["sugar", "sugar", 125],
        ["shortening", "fat", 25],
        ["butter", "fat", 25],
        ["egg", "egg", 50],
        ["water", "water", 75],
        ["whole milk powder", "dairy", 15.625],
        ["baking powder", "other", 5],
        ["salt", "salt", 3.125],
        ["vanilla extract", "other", 0.625],
      ],
    ],
    [
      "a professional ciabatta with its biga (Hamelman)",
      "ciabatta",
      [
        FLOUR,
        ["water", "water", (5.8 / 7) * 100],
        ["salt", "salt", (0.2 / 7) * 100],
        ["fresh yeast", "yeast", (0.12 / 7) * 100],
        ["biga", "biga 60%", (4.8 / 7) * 100],
      ],
    ],
    [
      "a professional French bread with poolish (Hamelman)",
      "hearth",
      [
        FLOUR,
        ["water", "water", (3.4 / 6.7) * 100],
        ["salt", "salt", (0.2 / 6.7) * 100],
        ["fresh yeast", "yeast", (0.11 / 6.7) * 100],
        ["poolish", "poolish 100%", (6.6 / 6.7) * 100],
      ],
    ],
    [
      "a baking school's pie crust (mynebraskakitchen.com)",
      "pie dough",
      [FLOUR, ["water", "water", 30], ["salt", "salt", 2], ["sugar", "sugar", 7], ["butter", "fat", 70]],
    ],
    [
      "bakemag.com 10514, corn muffin",
      "muffin",
      [
        FLOUR,
        ["water", "water", 60],
        ["salt", "salt", 2.5],
        ["baking powder", "other", 5.75],
        ["sugar", "sugar", 33.6],
        ["honey", "sugar", 16],
        ["vegetable oil", "fat", 24],
        ["egg", "egg", 35],
        ["nonfat dry milk", "dairy", 10],
      ],
    ],
    [
      "culinary-school notes, yeast doughnut",
      "donut",
      [
        FLOUR,
        ["water", "water", 55.2],
        ["salt", "salt", 1.7],
        ["fresh yeast", "yeast", 5.2],
        ["sugar", "sugar", 13.8],
        ["shortening", "fat", 10.3],
        ["egg", "egg", 13.8],
        ["nonfat dry milk", "dairy", 5.2],
      ],
    ],
    [
      "Gisslen, Professional Baking, two-stage white cake",
      "high-ratio layer",
      [
        ["cake flour", "flour", 100],
        ["milk", "dairy", 100],
        ["salt", "salt", 2],
        ["baking powder", "other", 6.25],
        ["sugar", "sugar", 125],
        ["shortening", "fat", 50],
        ["egg whites", "egg", 67],
      ],
    ],
    [
      "sweetnapa.com, croissant: 10 % of butter in the dough, 55 % rolled in",
      "croissant",
      [
        FLOUR,
        ["milk", "dairy", 71],
        ["salt", "salt", 2.5],
        ["instant yeast", "yeast", 1],
        ["sugar", "sugar", 10],
        ["butter", "fat", 65],
      ],
    ],
    [
      "bakefromscratch.com, Danish: milk 46.2 as the style's liquid",
      "danish",
      [
        FLOUR,
        ["milk", "dairy", 46.2],
        ["salt", "salt", 1.7],
        ["instant yeast", "yeast", 1.35],
        ["sugar", "sugar", 12.9],
        ["butter", "fat", 55.8],
        ["egg", "egg", 13.3],
      ],
    ],
  ])("%s", (_, style, rows) => {
    expect(remarks(style, rows)).toEqual(rows.map(() => ""));
  });
});
