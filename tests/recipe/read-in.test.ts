// Recipes as people find them, read by the add-on in the local workbook, and the sheets that come of them.
import { describe, expect, test } from "vitest";
import { isHonest, line, near, read } from "./read-in-support.ts";
import { CASES } from "./text-cases.ts";
import { RECIPES } from "./text-data.ts";

describe.each(CASES)("published: $source", ({ cups = "US", lines }) => {
  test("gives the grams that its source prints", () => {
    const { lines: got } = read(lines.map(([text]) => text).join("\n"), cups);
    expect(got.map(({ text }) => text)).toEqual(lines.map(([text]) => text.trim()));
    got.forEach((one, at) => {
      isHonest(one);
      const [text, grams, within] = lines[at] ?? ["", 0, 0];
      near(one.grams, grams, within || 1e-6 * grams, text);
    });
  });
});

describe.each(RECIPES)("in the style of $title", ({ cups, lines }) => {
  test("gives the grams worked out by hand, or a question", () => {
    for (const [text, ingredient, grams] of lines) {
      const one = line(text, cups, ingredient);
      isHonest(one);
      if (grams === null) {
        expect(one.grams, text).toBeNull();
        expect(one.is === "heading" || one.asks !== "", text).toBe(true);
        continue;
      }
      const wanted = typeof grams === "number" ? grams : (grams[0] + grams[1]) / 2;
      near(one.grams, wanted, wanted * 0.004, text);
      if (typeof grams !== "number") expect(one.says).toMatch(/the middle is taken/);
    }
  });
});

/** Written down before the reader was tried on them; grams as written, or by the household weights of USDA SR28. */
const STYLES: readonly {
  readonly style: string;
  readonly text: string;
  readonly rows: readonly (readonly [name: string, kind: string, grams: number])[];
  readonly title?: string;
  readonly headings?: readonly string[];
  readonly asides?: number;
  readonly questions?: readonly RegExp[];
}[] = [
  {
    style: "bullets, a title and a yield",
    text: "Quay rolls\nMakes 24\n• 1 kg bread flour\n• 620 g water\n• 20 g salt\n• 12 g instant yeast",
    title: "Quay rolls",
    rows: [
      ["bread flour", "flour", 1000],
      ["water", "water", 620],
      ["salt", "salt", 20],
      ["instant yeast", "yeast", 12],
    ],
    asides: 2,
  },
  {
    style: "name, dash, amount",
    text: "flour – 500g\nwater – 325 g\nbutter — 25g\nsugar - 10 g\nsalt- 10g",
    rows: [
      ["flour", "flour", 500],
      ["water", "water", 325],
      ["butter", "fat", 25],
      ["sugar", "sugar", 10],
      ["salt", "salt", 10],
    ],
  },
  {
    style: "sections, and the preferment named again",
    text: "For the poolish:\n300 g bread flour\n300 g water\n0.5 g instant yeast\nFor the dough:\n700 g bread flour\n370 g water\n20 g salt\nall of the poolish",
    headings: ["For the poolish:", "For the dough:"],
    rows: [
      ["bread flour", "flour", 300],
      ["water", "water", 300],
      ["instant yeast", "yeast", 0.5],
      ["bread flour", "flour", 700],
      ["water", "water", 370],
      ["salt", "salt", 20],
    ],
    asides: 1,
  },
  {
    style: "sections that give the preferment's weight, rounded",
    text: "Poolish\n500 g bread flour\n500 g water\nFinal dough\n500 g bread flour\n1000 g poolish\n20 g salt",
    headings: ["Poolish", "Final dough"],
    rows: [
      ["bread flour", "flour", 500],
      ["water", "water", 500],
      ["bread flour", "flour", 500],
      ["salt", "salt", 20],
    ],
    asides: 1,
  },
  {
    style: "a levain with its hydration",
    text: "900 g bread flour\n200 g levain (100% hydration)\n600 g water\n20 g sea salt",
    rows: [
      ["bread flour", "flour", 900],
      ["levain", "levain 100%", 200],
      ["water", "water", 600],
      ["sea salt", "salt", 20],
    ],
  },
  {
    style: "notes in brackets, cups and spoons",
    text: "3 cups all-purpose flour (sifted twice)\n1 cup milk (warm, not hot)\n2 tablespoons sugar (plus more for the top)\n1 teaspoon salt (fine)",
    rows: [
      ["all-purpose flour", "flour", 375],
      ["milk", "dairy", 244],
      ["sugar", "sugar", 25.2],
      ["salt", "salt", 6],
    ],
  },
  {
    style: "all in one line",
    text: "500 g flour, 300 g water, 10 g salt and 5 g instant yeast",
    rows: [
      ["flour", "flour", 500],
      ["water", "water", 300],
      ["salt", "salt", 10],
      ["instant yeast", "yeast", 5],
    ],
  },
  {
    style: "a sheet's columns, with percentages beside the grams",
    text: "Bread flour, 1000 g, 100%\nWater, 700 g, 70%\nSalt, 20 g, 2%",
    rows: [
      ["Bread flour", "flour", 1000],
      ["Water", "water", 700],
      ["Salt", "salt", 20],
    ],
  },
  {
    style: "with its method below",
    text: "Harbour buns\n500 g bread flour\n300 g milk\nMethod\n1. Mix the flour with 250 g of the milk for 8 minutes.\n2. Bake at 220 °C for 15 minutes.",
    title: "Harbour buns",
    headings: ["Method"],
    rows: [
      ["bread flour", "flour", 500],
      ["milk", "dairy", 300],
    ],
    asides: 3,
  },
  {
    style: "what cannot be weighed",
    text: "500 g bread flour\n1 tsp kosher salt\na handful of raisins\nsalt to taste\n30 g Zauberpulver\n150 g ripe starter\nflour, for dusting",
    rows: [["bread flour", "flour", 500]],
    asides: 1,
    questions: [
      /weighs 2\.8 g to 5 g/,
      /"handful" has no weight/,
      /There is no amount/,
      /What kind is it/,
      /How wet is it/,
    ],
  },
];

describe.each(STYLES)("$style", ({ text, rows, title = "", headings = [], asides = 0, questions = [] }) => {
  const answer = read(text);
  test("gives every row, and keeps what is none", () => {
    answer.lines.forEach(isHonest);
    const clear = answer.lines.filter(({ is, asks }) => is === "ingredient" && asks === "");
    expect(clear.map(({ name, kind }) => [name, kind])).toEqual(rows.map(([name, kind]) => [name, kind]));
    rows.forEach(([name, , grams], at) => {
      near(clear[at]?.grams ?? null, grams, grams * 1e-9, name);
    });
    expect(answer.title).toBe(title);
    expect(answer.lines.filter(({ is }) => is === "heading").map((one) => one.text)).toEqual(headings);
    expect(answer.lines.filter(({ is }) => is === "aside")).toHaveLength(asides);
  });
  test("asks what it cannot know", () => {
    const open = answer.lines.map(({ asks }) => asks).filter((asks) => asks !== "");
    expect(open).toHaveLength(questions.length);
    questions.forEach((question, at) => {
      expect(open[at]).toMatch(question);
    });
  });
});
