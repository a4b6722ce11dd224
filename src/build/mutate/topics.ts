/** What belongs together: sources, and the fast tests that exercise them (names in tests/ without their ending). */
export type Topic = { readonly files: readonly string[]; readonly tests: readonly string[]; readonly first?: true };

const shared = (...names: readonly string[]) => names.map((name) => `shared/${name}.ts`);

/**
 * Examples, refusals, cases of the trade. Random calls of all functions are left out: they would be made anew for every change,
 * and the laws of a topic make random ones of its own.
 */
const EVERY = [
  "functions/functions",
  "functions/field-cases",
  "functions/field-cases-cells",
  "functions/field-cases-kitchen",
  "cells/wrong-calls",
];

/** Every example of every function passes the boundary; what tries the boundary itself says the same in a tenth of the time. */
const BOUNDARY = [
  "functions/field-cases-cells",
  "cells/wrong-calls",
  "cells/cells",
  "cells/numbers",
  "cells/calls",
  "cells/calls-tables",
];

export const TOPICS: Readonly<Record<string, Topic>> = {
  cell: { first: true, files: shared("cells/cell", "cells/decoder", "base/number"), tests: BOUNDARY },
  call: {
    first: true,
    files: ["src/functions/call.ts", "src/functions/answer.ts", "src/functions/convert-units.ts"],
    tests: BOUNDARY,
  },
  formula: {
    first: true,
    files: shared("formula/formula", "formula/percents", "base/scaling"),
    tests: [...EVERY, "formula/formula", "formula/percents", "base/scaling", "functions/laws", "functions/two-ways"],
  },
  review: {
    first: true,
    files: shared(
      "review/review",
      "review/bands",
      "review/batters",
      "review/doughs",
      "review/remark",
      "review/salt",
      "review/water",
      "review/yeast",
    ),
    tests: [
      "functions/functions",
      "review/review",
      "review/edges",
      "review/bands",
      "review/formulas",
      "functions/laws-water",
    ],
  },
  tin: {
    first: true,
    files: shared("tins/tin", "tins/tin-guide"),
    tests: [...EVERY, "tins/tins", "tins/tin-edges", "functions/laws", "functions/two-ways"],
  },
  temperature: {
    first: true,
    files: shared("water/temperature", "water/heat-balance", "water/friction-fit"),
    tests: [...EVERY, "water/temperature", "water/heat-balance", "functions/laws-water"],
  },
  ice: {
    first: true,
    files: shared("water/ice", "water/water-note"),
    tests: [...EVERY, "water/temperature", "functions/laws-water"],
  },
  yeast: {
    first: true,
    files: shared("formula/yeast", "formula/preferment"),
    tests: [...EVERY, "formula/yeast", "formula/preferment", "functions/two-ways"],
  },
  stages: {
    files: shared("formula/stages", "formula/fill-in"),
    tests: [
      ...EVERY,
      "formula/stages",
      "formula/fill-in",
      "formula/formula",
      "functions/laws",
      "functions/published-slips",
    ],
  },
  median: { files: shared("base/repeated-median"), tests: ["water/temperature", "base/repeated-median"] },
  enrichment: {
    files: shared("enrichment/enrichment", "enrichment/extra-water", "enrichment/protein"),
    tests: [
      ...EVERY,
      "enrichment/enrichment",
      "enrichment/content",
      "enrichment/edges",
      "enrichment/flour-protein",
      "functions/laws-water",
    ],
  },
  measures: {
    files: shared(
      ...[
        "amount",
        "amount-faults",
        "grams",
        "line",
        "line-parts",
        "line-words",
        "measure-words",
        "name",
        "no-amounts",
        "pieces",
        "quantity",
        "tokens",
        "unit-words",
        "units",
        "weight",
      ].map((part) => `recipe/${part}`),
      "larder/ingredient-measures",
      "larder/measures",
      "base/volumes",
      "recipe/spoons",
    ),
    tests: [
      ...EVERY,
      "recipe/text",
      "recipe/words",
      "recipe/amounts",
      "money/pack-edges",
      "money/unit-cost",
      "larder/larder",
      "cells/numbers",
      "functions/two-ways",
    ],
  },
  money: {
    files: shared("money/cost", "money/price", "money/pack"),
    tests: [...EVERY, "money/money", "money/unit-cost", "money/pack-edges", "money/sell-price", "functions/laws"],
  },
  planning: {
    files: shared(
      "money/needs",
      "label/label",
      "label/allergens",
      "label/allergen-list",
      "label/read-allergens",
      "label/weight-limits",
    ),
    tests: [...EVERY, "money/needs", "money/needs-laws", "label/label", "label/allergens", "label/weight-limits"],
  },
  larder: {
    files: shared(
      "larder/larder",
      "larder/larder-rows",
      "larder/built-in-larder",
      "larder/ingredient",
      "larder/kinds",
      "base/words",
    ),
    tests: [
      ...[
        ...EVERY,
        "larder/larder",
        "larder/larder-data",
        "label/label",
        "label/allergens",
        "money/money",
        "money/unit-cost",
        "cells/numbers",
        "cells/cells",
      ],
      ...[
        "larder/kinds",
        "formula/formula",
        "formula/stages",
        "enrichment/enrichment",
        "enrichment/content",
        "enrichment/edges",
        "recipe/text",
      ],
    ],
  },
  words: {
    files: shared("base/show", "base/refusal", "base/units", "cells/readers"),
    tests: [...BOUNDARY, "base/said"],
  },
};
