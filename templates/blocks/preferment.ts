import type { Block, ColumnModel, Line } from "../../shared/sheet/model.ts";
import { COLUMNS, ingredientTable } from "./formula.ts";
import { computedLine, headingLine, inputLine, label, when } from "./line.ts";
import { PLAIN_FEED, PLAIN_STAGES, plainFromNote } from "./plain-stages.ts";
import { hoursBefore } from "./steps.ts";

const BOTH = "COUNT(@flour;@pre_share;@pre_hydration)<3";

const shareLine = inputLine("Share of all flour in it", "pre_share", "share");
const hydrationLine = inputLine("Its hydration", "pre_hydration", "percent");
const fromLineOf = (seed: boolean): Line => ({
  cells: [
    label("One flour only (its name)"),
    { at: 1, role: "input", name: "pre_from", unit: "text", among: "ingredient", hint: "Blank: of every flour." },
    {
      at: 2,
      role: "remark",
      name: "pre_from_note",
      unit: "text",
      formula:
        '=IF(IF(LEN(@pre_from)=0;1;COUNTIF(@ingredient;@pre_from))=0;"no row of this name";IF(ISERROR(INDEX(@pre;1;1));"does not fit: see its red cell";""))',
      plain: plainFromNote(seed),
    },
  ],
});
/** Hours, and the step of the day it must be ripe for. */
const timeLine: Line = {
  cells: [
    label("Hours it ripens, for step"),
    { at: 1, role: "input", name: "pre_hours", unit: "plain", asks: "Hours it ripens" },
    {
      at: 2,
      role: "input",
      name: "pre_step",
      unit: "text",
      value: "Mix",
      when: "steps",
      asks: "It must be ripe for the step",
      among: "step",
    },
  ],
};
const flourLine = computedLine("Flour in it ({weight})", "pre_flour", "weight", `=IF(${BOTH};"";@flour*@pre_share)`);
const waterLine = computedLine(
  "Water in it ({weight})",
  "pre_water",
  "weight",
  '=IF(COUNT(@pre_flour)=0;"";@pre_flour*@pre_hydration)',
);

function startLine(says: string): Line {
  const { time, day } = hoursBefore("@pre_hours", "@pre_step");
  return when("steps", {
    cells: [
      label(says),
      { at: 1, role: "computed", name: "pre_start", unit: "time", formula: time },
      { at: 2, role: "computed", name: "pre_day", unit: "day", formula: day },
    ],
  });
}

/** Hydration and hours: Fundamental Techniques of Classic Bread Baking, guide to preferments. */
const USUAL_HYDRATION = "poolish 100 %, biga 50 to 60 %";
const USUAL_HOURS = "usual 12 to 16 h";

/** A poolish, biga or sponge with yeast of its own. */
export const prefermentBlock: Block = {
  block: "preferment",
  left: 0,
  lines: [
    headingLine("Preferment", 3),
    {
      cells: [
        label("What it is"),
        {
          at: 1,
          role: "input",
          name: "pre_kind",
          unit: "text",
          choices: ["poolish", "biga", "sponge"],
          value: "poolish",
        },
        { at: 2, role: "remark", text: USUAL_HOURS },
      ],
    },
    shareLine,
    {
      cells: [...hydrationLine.cells, { at: 2, role: "remark", text: USUAL_HYDRATION }],
    },
    inputLine("Its yeast, of its flour", "pre_yeast", "share"),
    timeLine,
    fromLineOf(false),
    startLine("Set it at, on day"),
    flourLine,
    waterLine,
    computedLine(
      "Yeast in it ({weight})",
      "pre_yeast_weight",
      "weight",
      '=IF(COUNT(@pre_flour)=0;"";@pre_flour*@pre_yeast)',
    ),
    computedLine(
      "as a part of all yeast",
      "pre_yeast_part",
      "share",
      '=IF(COUNT(@pre_yeast_weight)=0;0;IF(SUMIF(@kind;"yeast*";@grams)=0;0;@pre_yeast_weight/SUMIF(@kind;"yeast*";@grams)))',
    ),
    computedLine(
      "Preferment in all ({weight})",
      "pre_weight",
      "weight",
      '=IF(COUNT(@pre_flour)=0;"";@pre_flour+@pre_water+SUMIF(@kind;"yeast*";@grams)*@pre_yeast_part)',
    ),
  ],
};

const NUMBERS = 'LEN(@seed_share)+LEN(@seed_weight)=0;"";';

/** A levain built from a ripe seed, with what is kept back to seed the next one. */
export const levainBlock: Block = {
  block: "levain",
  left: 0,
  lines: [
    headingLine("Levain", 3),
    shareLine,
    hydrationLine,
    inputLine("Hydration of the seed", "seed_hydration", "percent"),
    {
      cells: [
        label("Seed, of flour fed; or weight"),
        { at: 1, role: "input", name: "seed_share", unit: "percent", asks: "Seed, of the flour fed" },
        { at: 2, role: "input", name: "seed_weight", unit: "weight", asks: "or the seed's weight" },
      ],
    },
    inputLine("Kept back as seed ({weight})", "keep", "weight"),
    timeLine,
    fromLineOf(true),
    startLine("Feed it at, on day"),
    {
      cells: [
        label("Seed used, part in dough"),
        {
          at: 1,
          role: "computed",
          name: "seed_used",
          unit: "weight",
          // The share is of the flour fed, so the seed's own flour comes off the levain's first.
          formula: `=IF(COUNT(@levain;@pre_hydration;@seed_hydration)<3;"";IF(${NUMBERS}IF(LEN(@seed_weight)>0;@seed_weight;@levain/(1+@pre_hydration)*@seed_share/(1+@seed_share/(1+@seed_hydration)))))`,
        },
        {
          at: 2,
          role: "computed",
          name: "seed_dough",
          unit: "weight",
          formula: "=IF(COUNT(@seed_used)=0;0;IF(@levain=0;0;@seed_used*@pre_weight/@levain))",
        },
      ],
    },
    flourLine,
    waterLine,
    computedLine(
      "Levain in the dough ({weight})",
      "pre_weight",
      "weight",
      '=IF(COUNT(@pre_flour)=0;"";@pre_flour+@pre_water)',
    ),
    computedLine("Levain to build ({weight})", "levain", "weight", '=IF(COUNT(@pre_weight)=0;"";@pre_weight+@keep)'),
    {
      cells: [
        label("Feed: seed, flour, water"),
        {
          at: 1,
          role: "computed",
          name: "feed_seed",
          unit: "weight",
          align: "center",
          spills: ["feed_flour", "feed_water"],
          formula:
            '=IF(COUNT(@seed_used;@seed_hydration;@levain)<3;"";BAKE_STARTERFEED(@levain;@pre_hydration;@seed_hydration;@seed_used))',
          plain: PLAIN_FEED,
        },
      ],
    },
  ],
};

/** Each flour row's part, and the yeast's; blank leaves a row to the final mix. */
const PARTS = (yeast: string) =>
  `ARRAYFORMULA(IF((@kind="flour")+(@kind="flours")>0;IF(LEN(@pre_from)=0;@pre_share;IF(@ingredient=@pre_from;ROUND(@pre_flour/SUMIF(@ingredient;@pre_from;@grams);9);""));${yeast}))`;

function stageColumn(name: "pre" | "final", head: string, seed: boolean): ColumnModel {
  const parts = PARTS(seed ? '""' : 'IF(@kind="yeast";@pre_yeast_part;"")');
  const seeded = seed ? ";@seed_dough/@mixes;@seed_hydration" : "";
  const mix = 'ARRAYFORMULA(IF(LEN(@grams)=0;"";@grams/@mixes))';
  const stages = `BAKE_STAGES(${mix};@kind;${parts};@pre_hydration${seeded})`;
  const rounded = (weights: string) => `BAKE_SCALEROUND(${weights};@step_coarse:@step_fine)`;
  const formula =
    name === "pre"
      ? // A refusal of the stages is shown as it is, for what it says.
        `IF(COUNT(@pre_flour)=0;"";IF(ISERROR(INDEX(${stages};1;1));INDEX(${stages};1;1);${rounded(`INDEX(${stages};0;1)`)}))`
      : // Without a preferment everything goes into the final mix.
        rounded(`IF(COUNT(@pre_flour)=0;${mix};INDEX(${stages};0;2))`);
  return {
    name,
    head,
    unit: "weight",
    role: "computed",
    formula: `=IF(COUNT(@mixes)=0;"";IF(@mixes=0;"";${formula}))`,
    plain: PLAIN_STAGES[name],
  };
}

const { ingredient, kind, percent, weighed, share, grams, remark } = COLUMNS;
const stagedTable = (pre: string, seed: boolean) =>
  ingredientTable(
    ingredient,
    kind,
    percent,
    weighed,
    share,
    grams,
    stageColumn("pre", pre, seed),
    stageColumn("final", "Final mix ({weight})", seed),
    remark,
  );

/** Weights of one mix: what goes into the preferment, and what is added in the final mix. */
export const prefermentTable = stagedTable("Preferment ({weight})", false);
export const levainTable = stagedTable("Levain ({weight})", true);
