/** What belongs together: sources, and the fast tests that exercise them (names in tests/ without their ending). */
export type Topic = { readonly files: readonly string[]; readonly tests: readonly string[]; readonly first?: true };

const shared = (...names: readonly string[]) => names.map((name) => `shared/${name}.ts`);

/**
 * Examples, refusals, cases of the trade. Random calls of all functions are left out: they would be made anew for every change,
 * and the laws of a topic make random ones of its own.
 */
const EVERY = ["functions", "field-cases", "field-cases-cells", "field-cases-kitchen", "wrong-calls"];

/** Every example of every function passes the boundary; what tries the boundary itself says the same in a tenth of the time. */
const BOUNDARY = ["field-cases-cells", "wrong-calls", "cells", "numbers", "calls", "calls-tables"];

export const TOPICS: Readonly<Record<string, Topic>> = {
  cell: { first: true, files: shared("cell", "decoder", "number"), tests: BOUNDARY },
  call: { first: true, files: ["src/call.ts"], tests: BOUNDARY },
  formula: {
    first: true,
    files: shared("formula", "percents", "scaling"),
    tests: [...EVERY, "formula", "percents", "scaling", "laws", "two-ways"],
  },
  review: {
    first: true,
    files: shared(
      "review",
      "review-bands",
      "review-batters",
      "review-doughs",
      "review-remark",
      "review-salt",
      "review-water",
      "review-yeast",
    ),
    tests: ["functions", "review", "review-edges", "review-bands", "review-formulas", "laws-water"],
  },
  tin: { first: true, files: shared("tin", "tin-guide"), tests: [...EVERY, "tins", "tin-edges", "laws", "two-ways"] },
  temperature: {
    first: true,
    files: shared("temperature", "heat-balance", "friction-fit"),
    tests: [...EVERY, "temperature", "heat-balance", "laws-water"],
  },
  ice: { first: true, files: shared("ice", "water-note"), tests: [...EVERY, "temperature", "laws-water"] },
  yeast: { first: true, files: shared("yeast", "preferment"), tests: [...EVERY, "yeast", "preferment", "two-ways"] },
  stages: {
    files: shared("stages", "fill-in"),
    tests: [...EVERY, "stages", "fill-in", "formula", "laws", "published-slips"],
  },
  median: { files: shared("repeated-median"), tests: ["temperature", "repeated-median"] },
  enrichment: {
    files: shared("enrichment", "extra-water", "protein"),
    tests: [...EVERY, "enrichment", "enrichment-content", "enrichment-edges", "flour-protein", "laws-water"],
  },
  measures: {
    files: shared(
      ...["amount", "grams", "line", "name", "neutral", "pieces", "quantity", "tokens", "units", "weight"].map(
        (part) => `recipe-${part}`,
      ),
      "ingredient-measures",
      "measures",
      "volumes",
      "spoons",
    ),
    tests: [
      ...EVERY,
      "recipe-text",
      "recipe-words",
      "recipe-amounts",
      "pack-edges",
      "unit-cost",
      "larder",
      "numbers",
      "two-ways",
    ],
  },
  money: {
    files: shared("cost", "price", "pack"),
    tests: [...EVERY, "money", "unit-cost", "pack-edges", "sell-price", "laws"],
  },
  planning: {
    files: shared("needs", "label", "allergens", "weight-limits"),
    tests: [...EVERY, "needs", "needs-laws", "label", "allergens", "weight-limits"],
  },
  larder: {
    files: shared("larder", "larder-rows", "built-in-larder", "ingredient", "kinds", "words"),
    tests: [
      ...[...EVERY, "larder", "larder-data", "label", "allergens", "money", "unit-cost", "numbers", "cells"],
      ...["kinds", "formula", "stages", "enrichment", "enrichment-content", "enrichment-edges", "recipe-text"],
    ],
  },
  words: {
    files: shared("show", "refusal", "units", "readers"),
    tests: [...BOUNDARY, "said"],
  },
};
