import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { FUNCTIONS } from "../src/functions/index.ts";

/**
 * Each function's check from outside, as its source is named beside the check (in its examples or in a test that calls it),
 * and the test that tries its law on made-up figures.
 */
const COVERED: Readonly<Record<string, readonly [outside: RegExp, law: string]>> = {
  FLOURPCT: [/Wild Yeast blog/, "formula"],
  TRUEPCT: [/Wikipedia, Baker percentage/, "formula"],
  WEIGHTS: [/Gisslen, Professional Baking/, "two-ways"],
  FILLIN: [/micquality\.com/, "laws"],
  RESCALE: [/cocoandme\.com/, "two-ways"],
  SCALEROUND: [/Gisslen, Professional Baking: 794/, "laws"],
  STOCKLIMIT: [/US Army card D009/, "two-ways"],
  STAGES: [/King Arthur professional formulas/, "stages"],
  REVIEW: [/US Army/, "laws-water"],
  DOUGHFOR: [/The Fresh Loaf node\/23963/, "two-ways"],
  PIECES: [/US Army card D009/, "laws"],
  ROLLIN: [/eoibakery\.com\.au/, "laws"],
  MIXES: [/a mixer maker's chart/, "two-ways"],
  WEIGHTLIMITS: [/nibusinessinfo/, "weight-limits"],
  TINCAPACITY: [/NIST SP 811/, "laws"],
  TINAREA: [/Pizza Today/, "laws"],
  TINMATCH: [/Mumsnet 1769010/, "laws"],
  TINGUIDE: [/tutti-sandwiches\.fr/, "laws"],
  TINDOUGH: [/yumarama\.com/, "laws"],
  TINNOTE: [/toolntricks\.com/, "laws"],
  WATERTEMP: [/Lehmann, Pizza Today/, "temperature"],
  DOUGHTEMP: [/Lehmann, Pizza Today/, "temperature"],
  FRICTION: [/Lehmann, Pizza Today/, "temperature"],
  FRICTIONFIT: [/Siegel, Biometrika/, "friction-log"],
  FRICTIONGUIDE: [/Cook's Illustrated how-to 5818/, "laws-water"],
  HEATBALANCE: [/Çengel & Boles/, "heat-balance"],
  ICE: [/Gisslen/, "laws-water"],
  WATERNOTE: [/Exploratorium/, "laws-water"],
  YEASTSWAP: [/bread textbook on ckbk/, "yeast"],
  YEASTTIME: [/bakemag\.com 836/, "yeast"],
  YEASTPLAN: [/fornobravo\.com/, "yeast-plan"],
  FEEDPLAN: [/King Arthur/, "preferment"],
  PREFERMENT: [/The Fresh Loaf node\/64591/, "preferment"],
  STARTERFEED: [/The Fresh Loaf comment\/99090/, "preferment"],
  CONTENT: [/USDA SR28/, "enrichment-content"],
  HYDRATION: [/The Fresh Loaf node\/42177/, "enrichment"],
  PLAINWATER: [/r\/Sourdough/, "enrichment"],
  SWAP: [/Gisslen/, "enrichment-content"],
  EXTRAWATER: [/J\. Dairy Sci\. 34:1092/, "laws-water"],
  GLUTENADD: [/forum\.breadtopia\.com/, "flour-protein"],
  FLOURBLEND: [/SR28 20640 and 20084/, "flour-protein"],
  LABELPROTEIN: [/21 CFR 101\.9/, "flour-protein"],
  GRAMS: [/The Fresh Loaf node\/3236/, "recipe-laws"],
  GRAMSPAN: [/The Fresh Loaf node\/3236/, "recipe-laws"],
  SPOONS: [/Friberg/, "recipe-laws"],
  UNITCOST: [/slideplayer 7840814/, "unit-cost"],
  COSTS: [/docstoc 52086225/, "laws"],
  SELLPRICE: [/gauthmath/, "sell-price"],
  RAWNEEDS: [/King Arthur/, "needs-laws"],
  LABELLIST: [/Regulation \(EU\) 1169\/2011/, "label"],
  ALLERGENS: [/Regulation \(EU\) 1169\/2011/, "allergens"],
  LABELSHARE: [/paperzz 8931015/, "label"],
};

const own = (name: string) => name.replace(/^BAKE_/, "");
const tests = new Map(
  readdirSync("tests")
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
      ...[...tests].filter(([file, text]) => file !== "coverage" && calls(text)).map(([, text]) => text),
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
