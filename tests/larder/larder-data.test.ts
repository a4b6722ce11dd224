import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { builtInNamed, builtInRows, nameKey } from "../../shared/larder/built-in-larder.ts";
import { KIND_WORDS } from "../../shared/larder/kind-words.ts";

/** USDA National Nutrient Database for Standard Reference, Release 28 (May 2016), per 100 g; public domain. */
function releasedRows(): Map<string, Readonly<Record<string, string>>> {
  const [head = "", ...lines] = readFileSync("tests/data/usda-sr28-bakery.csv", "utf8").trim().split(/\r?\n/);
  const fields = (line: string) =>
    [...line.matchAll(/("(?:[^"]|"")*"|[^,]*)(?:,|$)/g)].map(([, field = ""]) => field.replace(/^"|"$/g, ""));
  const names = fields(head);
  return new Map(
    lines.map((line) => {
      const cells = fields(line);
      return [cells[0] ?? "", Object.fromEntries(names.map((name, at) => [name, cells[at] ?? ""]))];
    }),
  );
}

describe("the built-in table", () => {
  const released = releasedRows();

  test("knows every SR28 row of the file but tap water, which is counted as water alone", () => {
    const known = new Set(builtInRows().map(({ ndb }) => ndb));
    expect([...released.keys()].filter((ndb) => !known.has(ndb))).toEqual(["14411"]);
    expect(builtInRows().length).toBeGreaterThan(released.size);
  });

  test.each(builtInRows().filter(({ ndb }) => ndb !== null))("$name has the figures of SR28 $ndb", (row) => {
    const figures = released.get(row.ndb ?? "");
    const of = (column: string, scale: number) => {
      const text = figures?.[column];
      expect(text, `${column} is a column of the file`).toBeDefined();
      return text === "" ? null : Number(text) * scale;
    };
    const compare = (ours: number | null, theirs: number | null) =>
      theirs === null || ours === null ? expect(ours).toBe(theirs) : expect(ours).toBeCloseTo(theirs, 12);
    compare(row.water, of("water", 0.01));
    compare(row.protein, of("protein", 0.01));
    compare(row.fat, of("fat", 0.01));
    compare(row.saturates, of("saturated_fat", 0.01));
    compare(row.carbohydrate, of("carbohydrate", 0.01));
    compare(row.sugar, of("sugar", 0.01));
    compare(row.fibre, of("fibre", 0.01));
    compare(row.ash, of("ash", 0.01));
    compare(row.energy, of("energy_kcal", 0.01));
    compare(row.salt, of("sodium_mg", 2.5 / 1000 / 100));
  });

  /** Measures that are not SR28's: sticks of 4 oz, packs of yeast, a piece for the usual size, a date or nut by itself. */
  const OTHERWISE = ["stick", "sachet", "cube", "piece"];
  test.each(builtInRows().filter(({ ndb }) => ndb !== null))("$name weighs by the measures of SR28 $ndb", (row) => {
    const printed = released.get(row.ndb ?? "")?.measures ?? "";
    const weights = [...printed.matchAll(/([\d.]+) [^;]*? = ([\d.]+) g/g)].map(([, of, g]) => Number(g) / Number(of));
    for (const [word, { least, most }] of row.measures ?? []) {
      if (OTHERWISE.includes(word) || (row.name === "active dry yeast" && word === "tsp")) continue;
      expect(least).toBe(most);
      expect(
        weights.some((weight) => Math.abs(weight - least) < 1e-9),
        `${word} ${least}: ${printed}`,
      ).toBe(true);
    }
  });

  /** Rows whose proximates cannot make 100 g, and why. */
  const INCOMPLETE: Readonly<Record<string, string>> = {
    "fresh yeast": "99.2 as released",
    "baking soda": "37.1: carbonate is no proximate",
    "vanilla extract": "65.6: alcohol is no proximate",
    "cider vinegar": "94.9: acetic acid is no proximate",
    yeast: "which yeast is not said",
    psyllium: "no analysis at hand",
  };
  test.each(builtInRows())("water, protein, fat, carbohydrate and ash of $name make 100 g", (row) => {
    const parts = [row.water, row.protein, row.fat, row.carbohydrate, row.ash];
    const sum = parts.reduce<number>((total, part) => total + 100 * (part ?? 0), 0);
    if (row.name in INCOMPLETE) expect(Math.abs(sum - 100)).toBeGreaterThan(0.2);
    else expect(Math.abs(sum - 100), `${sum}`).toBeLessThanOrEqual(0.2);
  });

  test("no name is another row's name", () => {
    const owners = new Map<string, string>();
    for (const row of builtInRows()) {
      for (const name of [row.name, ...row.alsoCalled]) {
        const owner = owners.get(nameKey(name));
        expect(owner === undefined || owner === row.name, `${name}: ${owner} and ${row.name}`).toBe(true);
        owners.set(nameKey(name), row.name);
      }
    }
  });

  test("every row has a kind, and measures that grow with the measure", () => {
    const ladder = ["tsp", "tbsp", "cup"];
    for (const { name, kind, measures } of builtInRows()) {
      expect(KIND_WORDS, name).toContain(kind);
      const weights = ladder.flatMap((word) => measures?.get(word)?.most ?? []);
      expect(weights, name).toEqual([...weights].sort((a, b) => a - b));
    }
  });

  test.each([
    ["flour", "all-purpose flour"],
    ["AP flour", "all-purpose flour"],
    ["Strong flour", "bread flour"],
    ["butter", "unsalted butter"],
    ["milk", "whole milk"],
    ["skim milk", "skim milk"],
    ["sugar", "granulated sugar"],
    ["Caster sugar", "granulated sugar"],
    ["confectioner’s sugar", "powdered sugar"],
    ["eggs", "whole egg"],
    ["egg, whole", "whole egg"],
    ["nonfat dry milk", "nonfat dry milk"],
    ["instant milk powder", "instant nonfat dry milk"],
    ["IDY", "instant yeast"],
    ["fresh yeast", "fresh yeast"],
    ["crème fraîche", undefined],
    ["double cream", "double cream"],
    ["heavy cream", "heavy cream"],
    ["  Flour\u00a0 ,  bread ", "bread flour"],
    ["__proto__", undefined],
    ["constructor", undefined],
    ["toString", undefined],
  ])("a baker's %s is %s", (typed, meant) => {
    expect(builtInNamed(typed)?.name).toBe(meant);
  });

  test.each([
    ["flour", "cup", 125, "SR28 20081"],
    ["butter", "stick", 113.4, "4 oz of 28.35 g"],
    ["egg", "large", 50, "SR28 01123"],
    ["active dry yeast", "tsp", 3.1, "7 g in 2 1/4 teaspoons, US and German sachets"],
    ["instant yeast", "sachet", 7, "US, UK, German and French sachets"],
    ["nonfat dry milk", "cup", 120, "SR28 01091"],
    ["instant nonfat dry milk", "cup", 68, "SR28 01092"],
    ["fresh yeast", "cake", 17, "SR28 18374: 0.6 oz"],
  ])("%s weighs by the %s %d g (%s)", (name, measure, weight) => {
    expect(builtInNamed(name)?.measures?.get(measure)).toEqual({ least: weight, most: weight });
  });

  test("kosher salt by the teaspoon is a span (three cooking pages: 2.8 to 5 g)", () => {
    expect(builtInNamed("kosher salt")?.measures?.get("tsp")).toEqual({ least: 2.8, most: 5 });
  });
});
