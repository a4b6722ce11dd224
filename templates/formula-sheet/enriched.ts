// Water that a dough has from everything: advice, beside percentages that are typed.
import type { Block } from "../../shared/sheet/model.ts";
import { headingLine } from "../blocks/line.ts";
import { figures, input, numberOf } from "./block-lines.ts";
import { RIGHT } from "./columns.ts";
import { type Single, single } from "./singles.ts";

export const enrichedBlock: Block = {
  block: "liquid",
  left: RIGHT,
  lines: [
    headingLine("Effective hydration", 6),
    input("Effective hydration wanted", "effective_wanted", "percent", { bounds: [0.2, 3] }),
    figures("Effective hydration now", { name: "effective_shown", unit: "percent", formula: numberOf("effective") }),
    figures("Water to add, % of flour", {
      name: "plain_water_shown",
      unit: "percent",
      formula: numberOf("plain_water"),
    }),
    {
      cells: [
        {
          at: 0,
          role: "remark",
          text: "Water in eggs, milk, butter and the rest counts. Enter the plain water in the table.",
        },
      ],
    },
  ],
};

export const ENRICHED_SINGLES: readonly Single[] = [
  single("Effective hydration", "effective", '=IF(@weighable=0;"";BAKE_HYDRATION(@name_counted;@grams;@kind_counted))'),
  single(
    "Plain water that it needs",
    "plain_water",
    '=IF((N(@effective_wanted)<=0)+(@flour_all<=0)>0;"";BAKE_PLAINWATER(@name_counted;@share;@kind_counted;@effective_wanted))',
  ),
];
/** Those that are calls. */
export const ENRICHED_CALLS: readonly string[] = ["effective", "plain_water"];
