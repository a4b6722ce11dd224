import type { ColumnModel, Formula } from "../../shared/sheet/model.ts";
import { isKind } from "./plain-rows.ts";
import { DUST, type Figure, plainSteps } from "./plain-steps.ts";

// Preferment and final mix of one mix in the sheet's own sums, as shared/formula/stages.ts divides them.

const FLOUR = `${isKind("flour")}>0`;
const WATER = `${isKind("water")}>0`;

/** What goes from each row into the preferment; water follows from the hydration. */
function own(seed: boolean): string {
  const yeast = seed ? "0" : 'IF(@kind="yeast";N(@pre_yeast_part);0)';
  const ofOne = "IF(@ingredient=@pre_from;ROUND(N(@pre_flour)/SUMIF(@ingredient;@pre_from;@grams);9);0)";
  const part = `IF(${FLOUR};IF(LEN(@pre_from)=0;N(@pre_share);${ofOne});${yeast})`;
  return `=ARRAYFORMULA(IF(LEN(@grams)*COUNT(@pre_flour)*COUNTIF(@mixes;">0")=0;0;@grams/@mixes*${part}))`;
}

/** What is weighed into the preferment beside the seed, and what is left for the final mix; flour and water lend the seed theirs. */
function exact(stage: "pre" | "final"): string {
  const mix = "@grams/@mixes";
  const guarded = (formula: string) =>
    `=ARRAYFORMULA(IF(LEN(@grams)*LEN(@pre_own)*COUNTIF(@mixes;">0")=0;0;IF(COUNT(@pre_flour)=0;${mix};${formula})))`;
  if (stage === "pre")
    return guarded(`IF(${FLOUR};@pre_own*N(@pre_flour_kept);IF(${WATER};${mix}*N(@pre_water_kept);@pre_own))`);
  const taken = `IF(${WATER};${mix}*N(@pre_water_part);@pre_own)`;
  return guarded(`(${mix}-${taken})*(${mix}-${taken}>${mix}/1000000000)`);
}

export const stageColumns = (seed: boolean): ColumnModel[] => [
  { name: "pre_own", head: "Preferment's own", unit: "weight", role: "computed", formula: own(seed) },
  { name: "pre_exact", head: "Preferment, exact", unit: "weight", role: "computed", formula: exact("pre") },
  { name: "final_exact", head: "Final, exact", unit: "weight", role: "computed", formula: exact("final") },
];

const FILLED = 'LEN(@grams)*(LEN(@pre_says)=0)*COUNTIF(@mixes;">0")';
/** Without a preferment everything goes into the final mix. */
export const PLAIN_STAGES = {
  pre: [plainSteps("@pre_exact", `${FILLED}*LEN(@pre_exact)*COUNT(@pre_flour)`)],
  final: [plainSteps("@final_exact", `${FILLED}*LEN(@final_exact)`)],
} as const;

/** What the seed brings into one mix; nothing without one. */
function seeds(seed: boolean): { flour: string; water: string } {
  if (!seed) return { flour: "0", water: "0" };
  const hydration = "IF(COUNT(@seed_hydration)=0;@pre_hydration;@seed_hydration)";
  const each = `@seed_dough/@mixes/(1+${hydration})`;
  return { flour: each, water: `${each}*${hydration}` };
}

export function stageFigures(seed: boolean): Figure[] {
  const ready = (formula: string) => `=IF(COUNT(@pre_flour;@mixes)<2;"";IF(@mixes=0;"";${formula}))`;
  const brought = seeds(seed);
  const kept = (whole: string, taken: string, of: string) =>
    ready(`IF(${of}=0;0;IF(${whole}<=${taken}*${DUST};0;${whole}-${taken})/${of})`);
  return [
    {
      says: "Preferment: its flour in a mix",
      name: "pre_flour_mix",
      formula: ready('SUMIF(@kind;"flour";@pre_own)+SUMIF(@kind;"flours";@pre_own)'),
    },
    { says: "Preferment: its water in a mix", name: "pre_water_mix", formula: ready("@pre_flour_mix*@pre_hydration") },
    {
      says: "Water rows of a mix",
      name: "pre_waters",
      formula: ready('(SUMIF(@kind;"water";@grams)+SUMIF(@kind;"waters";@grams))/@mixes'),
    },
    {
      says: "Its water, of the water rows",
      name: "pre_water_part",
      formula: ready("IF(@pre_waters=0;0;@pre_water_mix/@pre_waters)"),
    },
    {
      says: "beside the seed's water",
      name: "pre_water_kept",
      formula: kept("@pre_water_mix", brought.water, "@pre_waters"),
    },
    {
      says: "Its flour beside the seed's",
      name: "pre_flour_kept",
      formula: kept("@pre_flour_mix", brought.flour, "@pre_flour_mix"),
    },
    { says: "What the preferment says", name: "pre_says", unit: "text", align: "right", formula: says(seed) },
  ];
}

function says(seed: boolean): Formula {
  const brought = seeds(seed);
  const whole = "(@pre_flour_mix+@pre_water_mix)";
  const ofSeed = seed
    ? `IF((${brought.flour}>@pre_flour_mix*${DUST})+(${brought.water}>@pre_water_mix*${DUST})>0;"seed is too much for it";IF((@seed_dough>0)*(@seed_dough/@mixes<${whole}/200)=1;"seed is below 0.5 % of it";""))`
    : '""';
  return [
    '=IF(COUNT(@pre_flour;@mixes)<2;"";IF(@mixes=0;"";IF(COUNTIF(@kind;"*%")>0;"a starter is no row of the table here";',
    `IF(@pre_water_mix>@pre_waters*${DUST};IF(@pre_waters=0;"no water row to take from";"takes more water than there is");`,
    `IF(SUM(@pre_own)>@mix_dough;"takes more flour than there is";${ofSeed})))))`,
  ].join("");
}

/** What is left to feed a seed with, so that the levain is as much and as wet as wanted. */
function fed(part: string, seedPart: string): string {
  const [whole, brought] = [`@levain*${part}/(1+@pre_hydration)`, `@seed_used*${seedPart}/(1+@seed_hydration)`];
  return `IF(${whole}<=${brought}*${DUST};0;${whole}-${brought})`;
}
const feed = (formula: string) =>
  `=IF(COUNT(@seed_used;@seed_hydration;@levain)<3;"";IF(LEN(@feed_says)>0;"";${formula}))`;
export const PLAIN_FEED: readonly Formula[] = [
  feed("@seed_used"),
  feed(fed("1", "1")),
  feed(fed("@pre_hydration", "@seed_hydration")),
];

const isMore = (part: string, seedPart: string) =>
  `(@seed_used*${seedPart}/(1+@seed_hydration)>@levain*${part}/(1+@pre_hydration)*${DUST})`;
export const FEED_FIGURE: Figure = {
  says: "What the feeding says",
  name: "feed_says",
  unit: "text",
  align: "right",
  formula: `=IF(COUNT(@seed_used;@seed_hydration;@levain)<3;"";IF(${isMore("1", "1")}+${isMore("@pre_hydration", "@seed_hydration")}>0;"seed is more than fits";""))`,
};

/** Beside the name of the one flour: whether it is there, and whether what is asked for fits. */
export const plainFromNote = (seed: boolean): readonly Formula[] => [
  `=IF(IF(LEN(@pre_from)=0;1;COUNTIF(@ingredient;@pre_from))=0;"no row of this name";IF(LEN(@pre_says)>0;@pre_says;${seed ? "@feed_says" : '""'}))`,
];
