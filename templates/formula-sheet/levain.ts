// A levain built from a ripe seed, with what is kept back to seed the next one.
import type { Block } from "../../shared/sheet/model.ts";
import { headingLine } from "../blocks/line.ts";
import { figures, input, weightOf } from "./block-lines.ts";
import { RIGHT } from "./columns.ts";
import { type Single, single } from "./singles.ts";
import { flourFromLine, hoursLine, readyLines } from "./stage-lines.ts";

const WEIGHTS = [
  { when: "oz", least: 0.01, most: 50_000 },
  { least: 0.1, most: 1_000_000 },
] as const;

export const levainBlock: Block = {
  block: "levain",
  left: RIGHT,
  when: "preferment",
  lines: [
    headingLine("Levain", 6),
    input(
      "Prefermented flour",
      "pre_share",
      "share",
      { bounds: [0, 1], hint: "Of all flour. If blank, no levain is set apart." },
      "of all flour",
    ),
    input("Hydration", "pre_hydration", "percent", { bounds: [0.3, 2] }),
    input("Starter hydration", "seed_hydration", "percent", { bounds: [0.3, 2] }),
    input("Seed, of the flour fed", "seed_share", "percent", { bounds: [0.001, 5] }),
    input("or the seed's weight ({weight})", "seed_weight", "graded", {
      bounds: WEIGHTS,
      asks: "or the seed's weight",
    }),
    input("Starter kept back ({weight})", "keep", "graded", { bounds: WEIGHTS }),
    flourFromLine,
    hoursLine,
    ...readyLines("Feed it at, on day"),
    figures("Levain of a mix ({weight})", {
      name: "pre_mix_shown",
      unit: "graded",
      formula: '=IF(COUNT(@pre_weight)=0;"";ROUND(@pre_mix;IF(@pre_mix>=100;0;1)))',
    }),
    figures("Levain to build ({weight})", weightOf("levain")),
    figures("Feed: starter, flour, water", weightOf("feed_seed"), weightOf("feed_flour"), weightOf("feed_water")),
    { cells: [{ at: 0, role: "check", name: "pre_note", unit: "text", formula: "=@pre_says" }] },
  ],
};

/** Flour and water that the seed brings are part of the levain's: the rest is fed. */
export const LEVAIN_SINGLES: readonly Single[] = [
  single("Levain to build", "levain", '=IF(COUNT(@pre_weight)=0;"";@pre_weight+N(@keep))'),
  single("Flour of the levain", "levain_flour", "=N(@levain)/(1+N(@pre_hydration))"),
  // The share is of the flour fed, so the seed's own flour comes off the levain's first.
  single(
    "Seed",
    "seed_used",
    '=IF((COUNT(@levain)=0)+(COUNT(@seed_hydration)=0)+(N(@seed_weight)+N(@seed_share)<=0)>0;"";IF(N(@seed_weight)>0;@seed_weight;@levain_flour*@seed_share/(1+@seed_share/(1+@seed_hydration))))',
  ),
  single("Levain, of all flour", "pre_of_flour", "=SUMPRODUCT(@share_typed;@pre_part)/MAX(@flour_all;1/10^9)"),
  single("Seed to feed", "feed_seed", "=@seed_used"),
  single("Flour to feed", "feed_flour", '=IF(COUNT(@seed_used)=0;"";@levain_flour-@seed_used/(1+@seed_hydration))'),
  single("Water to feed", "feed_water", '=IF(COUNT(@feed_flour)=0;"";@levain-@seed_used-@feed_flour)'),
  single("Seed in the dough", "seed_dough", '=IF(COUNT(@seed_used)=0;"";@seed_used*@pre_weight/@levain)'),
  single(
    "Seed by share and weight",
    "seed_both",
    '=IF((N(@seed_weight)>0)*(N(@seed_share)>0)=1;"The seed has a share and a weight: clear one of the two. ";"")',
  ),
  single(
    "Seed that does not fit",
    "seed_says",
    '=IF(COUNT(@feed_flour)=0;"";IF((@feed_flour<0)+(@feed_water<0)>0;"The seed is more than the levain takes. ";""))&@seed_both',
  ),
];
