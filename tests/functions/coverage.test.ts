import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { FUNCTIONS } from "../../src/functions/index.ts";

/**
 * Each function's check from outside, as its source is named beside the check (in its examples or in a test that calls it),
 * and the test that tries its law on made-up figures.
 */
const COVERED: Readonly<Record<string, readonly [outside: RegExp, law: string]>> = {
  FLOURPCT: [/Wild Yeast blog/, "formula/formula"],
  TRUEPCT: [/Wikipedia, Baker percentage/, "formula/formula"],
  WEIGHTS: [/Gisslen, Professional Baking/, "functions/two-ways"],
  FILLIN: [/micquality\.com/, "functions/laws"],
  RESCALE: [/cocoandme\.com/, "functions/two-ways"],
  SCALEROUND: [/Gisslen, Professional Baking: 794/, "functions/laws"],
  STOCKLIMIT: [/US Army card D009/, "functions/two-ways"],
  STAGES: [/King Arthur professional formulas/, "formula/stages"],
  REVIEW: [/US Army/, "functions/laws-water"],
  DOUGHFOR: [/The Fresh Loaf node\/23963/, "functions/two-ways"],
  PIECES: [/US Army card D009/, "functions/laws"],
  ROLLIN: [/eoibakery\.com\.au/, "functions/laws"],
  MIXES: [/a mixer maker's chart/, "functions/two-ways"],
  WEIGHTLIMITS: [/nibusinessinfo/, "label/weight-limits"],
  TINCAPACITY: [/NIST SP 811/, "functions/laws"],
  TINAREA: [/Pizza Today/, "functions/laws"],
  TINMATCH: [/Mumsnet 1769010/, "functions/laws"],
  TINGUIDE: [/tutti-sandwiches\.fr/, "functions/laws"],
  TINDOUGH: [/yumarama\.com/, "functions/laws"],
  TINNOTE: [/toolntricks\.com/, "functions/laws"],
  WATERTEMP: [/Lehmann, Pizza Today/, "water/temperature"],
  DOUGHTEMP: [/Lehmann, Pizza Today/, "water/temperature"],
  FRICTION: [/Lehmann, Pizza Today/, "water/temperature"],
  FRICTIONFIT: [/Siegel, Biometrika/, "water/friction-log"],
  FRICTIONGUIDE: [/Cook's Illustrated how-to 5818/, "functions/laws-water"],
  HEATBALANCE: [/Çengel & Boles/, "water/heat-balance"],
  ICE: [/Gisslen/, "functions/laws-water"],
  WATERNOTE: [/Exploratorium/, "functions/laws-water"],
  YEASTSWAP: [/bread textbook on ckbk/, "formula/yeast"],
  YEASTTIME: [/bakemag\.com 836/, "formula/yeast"],
  YEASTPLAN: [/fornobravo\.com/, "formula/yeast-plan"],
  FEEDPLAN: [/King Arthur/, "formula/preferment"],
  PREFERMENT: [/The Fresh Loaf node\/64591/, "formula/preferment"],
  STARTERFEED: [/The Fresh Loaf comment\/99090/, "formula/preferment"],
  CONTENT: [/USDA SR28/, "enrichment/content"],
  HYDRATION: [/The Fresh Loaf node\/42177/, "enrichment/enrichment"],
  PLAINWATER: [/r\/Sourdough/, "enrichment/enrichment"],
  SWAP: [/Gisslen/, "enrichment/content"],
  EXTRAWATER: [/J\. Dairy Sci\. 34:1092/, "functions/laws-water"],
  GLUTENADD: [/forum\.breadtopia\.com/, "enrichment/flour-protein"],
  FLOURBLEND: [/SR28 20640 and 20084/, "enrichment/flour-protein"],
  LABELPROTEIN: [/21 CFR 101\.9/, "enrichment/flour-protein"],
  GRAMS: [/The Fresh Loaf node\/3236/, "recipe/laws"],
  GRAMSPAN: [/The Fresh Loaf node\/3236/, "recipe/laws"],
  SPOONS: [/Friberg/, "recipe/laws"],
  UNITCOST: [/slideplayer 7840814/, "money/unit-cost"],
  COSTS: [/docstoc 52086225/, "functions/laws"],
  COSTCHANGE: [/docstoc 52086225/, "money/breakdown"],
  SELLPRICE: [/gauthmath/, "money/sell-price"],
  RAWNEEDS: [/King Arthur/, "money/needs-laws"],
  LABELLIST: [/Regulation \(EU\) 1169\/2011/, "label/label"],
  ALLERGENS: [/Regulation \(EU\) 1169\/2011/, "label/allergens"],
  NUTRITION: [/Regulation \(EU\) 1169\/2011, annex XIV/, "label/nutrition"],
  ALLERGENTABLE: [/FDA's list of nine/, "label/allergen-table"],
  LABELSHARE: [/paperzz 8931015/, "label/label"],
};

const own = (name: string) => name.replace(/^BAKE_/, "");
const tests = new Map(
  readdirSync("tests", { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".test.ts"))
    .map((file) => [file.replace(/\.test\.ts$/, ""), readFileSync(`tests/${file}`, "utf8")]),
);

test("every function is covered here, and nothing else is", () => {
  expect(Object.keys(COVERED).sort()).toEqual(FUNCTIONS.map(({ name }) => own(name)).sort());
});

describe.each(FUNCTIONS)("$name", ({ name, examples, refusals }) => {
  const [outside, law] = COVERED[own(name)] ?? [/^never$/, ""];
  const calls = (text: string) => text.includes(`"${name}"`);

  test("has examples with their sources, refusals, and a check from outside the project", () => {
    expect(examples.length).toBeGreaterThan(0);
    expect(refusals.length).toBeGreaterThan(0);
    for (const { source } of examples) expect(source.length).toBeGreaterThan(7);
    const told = [
      ...examples.map(({ source }) => source),
      ...[...tests].filter(([file, text]) => file !== "functions/coverage" && calls(text)).map(([, text]) => text),
    ];
    expect(
      told.some((text) => outside.test(text)),
      `${outside} is nowhere beside ${name}`,
    ).toBe(true);
  });

  test("has its law tried on made-up figures", () => {
    const text = tests.get(law) ?? "";
    expect(calls(text), `${law}.test.ts does not call ${name}`).toBe(true);
    expect(text).toContain("fc.property(");
  });
});
