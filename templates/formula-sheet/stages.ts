import type { ColumnModel } from "../../shared/sheet/model.ts";
import { numbers, onSteps, shownColumn } from "./column-kinds.ts";

const showWithTotal = (helper: string) =>
  `=ARRAYFORMULA(IF(ROW(@counts)=MAX(ROW(@counts));SUM(${helper});IF(@mix_told*(${helper}<>0)=1;${helper};"")))`;

/** In the place of the weight of a mix: what goes into the preferment, and what is added in the final mix. */
export const stageColumns = (stage: "preferment" | "levain"): readonly ColumnModel[] => [
  shownColumn(
    "pre_shown",
    stage === "levain" ? "Levain ({weight})" : "Preferment ({weight})",
    "step",
    showWithTotal("@pre_scale"),
    { role: "strong" },
  ),
  shownColumn("final_shown", "Final mix ({weight})", "step", showWithTotal("@final"), { role: "strong" }),
];

/** Part of each row that goes into the preferment: flour by its share, water by the preferment's hydration, yeast by its own share. */
const PART =
  '=ARRAYFORMULA(IF(@flour_part=1;@pre_of_row*@pre_share_of;IF((@type_word="water")*(@water_mix>0)=1;MIN(1;@pre_water_mix/MAX(@water_mix;1/10^9));IF((@type_word="yeast")*(@yeast_mix>0)=1;@pre_yeast_part;0))))';

/** What is weighed adds up: the final mix is the mix on the scale less the preferment on the scale. */
export const stageHelpers: readonly ColumnModel[] = [
  numbers(
    "pre_of_row",
    "Flour of the preferment",
    "=ARRAYFORMULA((@flour_part=1)*((LEN(@pre_from)=0)+(IFERROR(TRIM(@ingredient);0)=TRIM(@pre_from))>0))",
  ),
  numbers("pre_part", "Part in the preferment", PART),
  numbers("pre_exact", "Preferment, exact", "=ARRAYFORMULA(@mix_exact*@pre_part)"),
  ...onSteps("pre", "Preferment", "@pre_exact"),
  numbers("final", "Final mix, on the scale", "=ARRAYFORMULA(ROUND(@mix_scale-@pre_scale;9))"),
];
