import type { Block, ColumnModel } from "../../shared/sheet/model.ts";
import { COLUMNS, ingredientTable } from "./formula.ts";
import { computedLine, headingLine, inputLine, label } from "./line.ts";
import { AMOUNT_OF } from "./make.ts";
import { LIQUID_NOTE, PLAIN_EFFECTIVE, PLAIN_PLAIN_WATER } from "./plain-liquid.ts";
import { BY_PERCENT, plainRows } from "./plain-rows.ts";

/** The water a dough has from everything, and what of it is left for the tap. */
export const liquidBlock: Block = {
  block: "liquid",
  left: 0,
  lines: [
    headingLine("Water from everything", 3),
    inputLine("Effective hydration wanted", "effective_wanted", "percent"),
    inputLine("One egg shelled ({weight})", "egg_weight", "weight"),
    {
      cells: [
        label("Plain water for it, of flour"),
        {
          at: 1,
          role: "computed",
          name: "plain_water",
          unit: "share",
          formula:
            '=IF(LEN(@effective_wanted)*COUNT(@percent)=0;"";BAKE_PLAINWATER(@ingredient;@percent;@kind;@effective_wanted))',
          plain: PLAIN_PLAIN_WATER,
        },
        { at: 2, role: "remark", name: "liquid_says", unit: "text", formula: LIQUID_NOTE, when: "plain" },
      ],
    },
    computedLine(
      "Effective hydration reached",
      "effective",
      "share",
      '=IF(COUNT(@dough)=0;"";IF(@dough=0;"";BAKE_HYDRATION(@ingredient;@grams;@kind)))',
      { plain: PLAIN_EFFECTIVE },
    ),
    computedLine(
      "Eggs in one mix",
      "eggs",
      "figure",
      '=IF(COUNT(@mixes;@egg_weight)<2;"";IF(@mixes*@egg_weight=0;"";SUMIF(@kind;"egg*";@grams)/@mixes/@egg_weight))',
    ),
  ],
};

/** What was typed, and in a water row left blank the plain water of the typed rows: it never reads itself. */
const used: ColumnModel = {
  name: "used",
  head: "% used",
  unit: "percent",
  role: "computed",
  formula:
    '=ARRAYFORMULA(IF(LEN(@percent)>0;@percent;IF((@kind="water")*(COUNT(@plain_water)>0)=1;(@plain_water-SUMIF(@kind;"water*";@percent))/SUM((@kind="water")*(LEN(@percent)=0));"")))',
};
const plain = plainRows(BY_PERCENT);
const share: ColumnModel = {
  ...COLUMNS.share,
  formula: `=BAKE_FILLIN(@used;"";@kind;@amount;${AMOUNT_OF})`,
  plain: plain.share,
};
const mix: ColumnModel = { ...COLUMNS.mix, plain: plain.mix };

const { ingredient, kind, percent, grams, whole, remark } = COLUMNS;
/** Percentages only: plain water can be told from weights no sooner than the flour is known. */
export const usedTable = ingredientTable(ingredient, kind, percent, used, share, grams, whole, mix, remark);
