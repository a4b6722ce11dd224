import type { Block } from "../../shared/sheet/model.ts";
import { headingLine } from "../blocks/line.ts";
import { figures, input } from "./block-lines.ts";
import { RIGHT } from "./columns.ts";
import { LEVAIN_SINGLES } from "./levain.ts";
import { type Single, single } from "./singles.ts";
import { flourFromLine, hoursLine, readyLines } from "./stage-lines.ts";

/** A poolish, biga or sponge with yeast of its own. Hydration and hours: Fundamental Techniques of Classic Bread Baking, guide to preferments. */
export const prefermentBlock: Block = {
  block: "preferment",
  left: RIGHT,
  when: "preferment",
  lines: [
    headingLine("Preferment", 6),
    input("Kind", "pre_kind", "text", { choices: ["poolish", "biga", "sponge"], value: "poolish" }, "usual 12 to 16 h"),
    input(
      "Prefermented flour",
      "pre_share",
      "share",
      { bounds: [0, 1], hint: "Of all flour. If blank, no preferment is set apart." },
      "of all flour",
    ),
    input("Hydration", "pre_hydration", "percent", { bounds: [0.3, 2] }, "poolish 100 %, biga 50 to 60 %"),
    input("Yeast, of its flour", "pre_yeast", "share", { bounds: [0, 0.1] }),
    flourFromLine,
    hoursLine,
    ...readyLines("Mix it at, on day"),
    figures("Preferment of a mix ({weight})", {
      name: "pre_mix_shown",
      unit: "graded",
      formula: '=IF(COUNT(@pre_weight)=0;"";ROUND(@pre_mix;IF(@pre_mix>=100;0;1)))',
    }),
    { cells: [{ at: 0, role: "check", name: "pre_note", unit: "text", formula: "=@pre_says" }] },
  ],
};

/** What of a mix goes into the preferment. */
export const prefermentSingles = (stage: "preferment" | "levain"): readonly Single[] => [
  single("Flour of a mix", "flour_mix", "=@flour_all*@per_percent/@mixes_some"),
  single("Flour it may take", "pre_flour_rows", "=SUMPRODUCT(@pre_of_row;@mix_exact)"),
  single("Prefermented flour of a mix", "pre_flour_mix", "=IF(COUNT(@pre_hydration)=1;N(@pre_share)*@flour_mix;0)"),
  single(
    "Part of that flour",
    "pre_share_of",
    "=IF(@pre_flour_rows>0;MIN(1;@pre_flour_mix/MAX(@pre_flour_rows;1/10^9));0)",
  ),
  single("Water in it", "pre_water_mix", "=@pre_flour_mix*N(@pre_hydration)"),
  single("Yeast in it", "pre_yeast_mix", stage === "levain" ? "=0" : "=@pre_flour_mix*N(@pre_yeast)"),
  single("Water of the final mix", "water_final", "=MAX(0;@water_mix-@pre_water_mix)"),
  single("Preferment of a mix", "pre_mix", "=SUM(@pre_exact)"),
  single(
    "Flour in the preferment",
    "pre_flour",
    '=IF((@weighable=1)*(@pre_flour_mix>0)=1;@pre_flour_mix*@mixes_some;"")',
  ),
  single("Water in the preferment", "pre_water", '=IF(COUNT(@pre_flour)=0;"";@pre_water_mix*@mixes_some)'),
  single("Yeast in the preferment", "pre_yeast_weight", '=IF(COUNT(@pre_flour)=0;"";@pre_yeast_mix*@mixes_some)'),
  single("Share of all yeast", "pre_yeast_part", "=IF(@yeast_mix>0;MIN(1;@pre_yeast_mix/MAX(@yeast_mix;1/10^9));0)"),
  single("Preferment in all", "pre_weight", '=IF(COUNT(@pre_flour)=0;"";@pre_mix*@mixes_some)'),
  single(
    "What does not fit",
    "pre_says",
    `=IF(@weighable=0;"";IF(@pre_flour_mix>@pre_flour_rows*(1+1/10^9);"The preferment takes more flour than the chosen flour has. ";"")&IF(@pre_water_mix>@water_mix*(1+1/10^9);"The preferment takes more water than the dough has. ";"")&${stage === "levain" ? "@seed_says" : "@pre_yeast_says"})`,
  ),
  ...(stage === "levain" ? LEVAIN_SINGLES : [YEAST_SAYS]),
];

const YEAST_SAYS: Single = single(
  "Yeast that does not fit",
  "pre_yeast_says",
  '=IF(@pre_yeast_mix>@yeast_mix*(1+1/10^9);"The preferment takes more yeast than the dough has. ";"")',
);

/** When the preferment is mixed, in minutes from the midnight before it is ready. */
export const PREFERMENT_TIME: readonly Single[] = [
  single("Step it is for", "pre_row", "=ARRAYFORMULA(IFERROR(MATCH(1;(@step=@pre_step)*(LEN(@pre_step)>0);0);0))"),
  single(
    "Preferment is mixed at, minutes",
    "pre_minutes",
    '=IF((COUNT(@pre_hours)=0)+(@pre_row=0)+(COUNT(@ready)=0)>0;"";ROUND(1440*(INDEX(@step_day;@pre_row;1)+INDEX(@step_start;@pre_row;1));0)-ROUND(60*@pre_hours;0))',
  ),
];

/** Without a preferment all water is poured into the mix. */
export const NO_PREFERMENT: readonly Single[] = [
  single("Water of the mix", "water_final", "=@water_mix"),
  single("Preferment", "pre_says", '=""'),
];
