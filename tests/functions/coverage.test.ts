import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { Origin } from "../../src/functions/define.ts";
import { FUNCTIONS } from "../../src/functions/index.ts";
import { OUTSIDE } from "./outside.ts";
import { expectCells, run } from "./support.ts";

/** Neither memory nor our own bounds and words check anything from outside. */
const COUNTS: Readonly<Record<Origin, boolean>> = {
  published: true,
  derived: true,
  practice: true,
  memory: false,
  own: false,
};

/** The test that tries each function's law on made-up figures. */
const LAWS: Readonly<Record<string, string>> = {
  FLOURPCT: "formula/formula",
  TRUEPCT: "formula/formula",
  WEIGHTS: "functions/two-ways",
  FILLIN: "functions/laws",
  RESCALE: "functions/two-ways",
  SCALEROUND: "functions/laws",
  STOCKLIMIT: "functions/two-ways",
  STAGES: "formula/stages",
  REVIEW: "functions/laws-water",
  DOUGHFOR: "functions/two-ways",
  PIECES: "functions/laws",
  ROLLIN: "functions/laws",
  MIXES: "functions/two-ways",
  WEIGHTLIMITS: "label/weight-limits",
  TINCAPACITY: "functions/laws",
  TINAREA: "functions/laws",
  TINMATCH: "functions/laws",
  TINGUIDE: "functions/laws",
  TINDOUGH: "functions/laws",
  TINNOTE: "functions/laws",
  WATERTEMP: "water/temperature",
  DOUGHTEMP: "water/temperature",
  FRICTION: "water/temperature",
  FRICTIONFIT: "water/friction-log",
  FRICTIONGUIDE: "functions/laws-water",
  HEATBALANCE: "water/heat-balance",
  ICE: "functions/laws-water",
  WATERNOTE: "functions/laws-water",
  YEASTSWAP: "formula/yeast",
  YEASTTIME: "formula/yeast",
  YEASTPLAN: "formula/yeast-plan",
  FEEDPLAN: "formula/preferment",
  PREFERMENT: "formula/preferment",
  STARTERFEED: "formula/preferment",
  CONTENT: "enrichment/content",
  HYDRATION: "enrichment/enrichment",
  PLAINWATER: "enrichment/enrichment",
  SWAP: "enrichment/content",
  EXTRAWATER: "functions/laws-water",
  GLUTENADD: "enrichment/flour-protein",
  FLOURBLEND: "enrichment/flour-protein",
  LABELPROTEIN: "enrichment/flour-protein",
  GRAMS: "recipe/laws",
  GRAMSPAN: "recipe/laws",
  SPOONS: "recipe/laws",
  UNITCOST: "money/unit-cost",
  COSTS: "functions/laws",
  COSTCHANGE: "money/breakdown",
  SELLPRICE: "money/sell-price",
  RAWNEEDS: "money/needs-laws",
  LABELLIST: "label/label",
  ALLERGENS: "label/allergens",
  NUTRITION: "label/nutrition",
  ALLERGENTABLE: "label/allergen-table",
  LABELSHARE: "label/label",
};

const own = (name: string) => name.replace(/^BAKE_/, "");
const tests = new Map(
  readdirSync("tests", { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".test.ts"))
    .map((file) => [file.replace(/\.test\.ts$/, ""), readFileSync(`tests/${file}`, "utf8")]),
);

test("every function is covered here, and nothing else is", () => {
  expect(Object.keys(LAWS).sort()).toEqual(FUNCTIONS.map(({ name }) => own(name)).sort());
});

describe.each(FUNCTIONS)("$name", ({ name, examples, refusals }) => {
  const law = LAWS[own(name)] ?? "";
  const calls = (text: string) => text.includes(`"${name}"`);

  test("has examples, refusals, and a check from outside the project", () => {
    expect(examples.length).toBeGreaterThan(0);
    expect(refusals.length).toBeGreaterThan(0);
    const checks = [...examples, ...OUTSIDE.filter((one) => one.name === name)];
    expect(
      checks.filter(({ origin }) => COUNTS[origin]).length,
      `${name} is checked by ${checks.map(({ origin }) => origin).join(" and ")} alone`,
    ).toBeGreaterThan(0);
  });

  test("says where each expected value comes from, in the words that its mark asks for", () => {
    for (const { origin, source } of examples) {
      expect(source.length).toBeGreaterThan(7);
      expect(/from memory/.test(source), `${origin}: ${source}`).toBe(origin === "memory");
      expect(/common practice/.test(source), `${origin}: ${source}`).toBe(origin === "practice");
      expect(/\bour (bounds|words)\b/.test(source), `${origin}: ${source}`).toBe(origin === "own");
    }
  });

  test("has its law tried on made-up figures", () => {
    const text = tests.get(law) ?? "";
    expect(calls(text), `${law}.test.ts does not call ${name}`).toBe(true);
    expect(text).toContain("fc.property(");
  });
});

test.each(OUTSIDE)("$name, cell $at: $source", ({ name, call: args, at, gives, within }) => {
  const cell = [run(name, ...args)].flat(2)[at];
  if (typeof gives === "number") expectCells(cell, gives, within);
  else expect(cell).toMatch(gives);
});
