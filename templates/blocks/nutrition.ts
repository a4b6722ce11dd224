// Nutrition by the label's law: one call, a line for each line of the declaration.
import type { Block, ColumnModel, Formula, Table } from "../../shared/sheet/model.ts";
import { after, type Labelled, OWN_PARTS, rowsOf, SHOP_ROWS } from "./label-needs.ts";
import { computedLine, headingLine } from "./line.ts";

/** Nine in all: the first stands in the row of the formula. */
const LINES = 8;

export const nutritionHeading: Block = {
  block: "nutrition",
  left: 0,
  when: "label",
  lines: [
    headingLine("Nutrition, an estimate", 9),
    computedLine(
      "",
      "nutrition_says",
      "text",
      '=IF(@law="US";"Not a Nutrition Facts panel: what is missing is named below.";IF(LEN(@law)=0;"Choose the labelling rules above.";"Energy by the factors of (EU) 1169/2011, annex XIV; alcohol, polyols and organic acids are not counted."))',
    ),
  ],
};

export function nutritionTable(costed: Labelled): Table {
  const { names, weights, kinds } = rowsOf(costed);
  const portion = "IF(COUNT(@serving)>0;@serving;@piece)";
  const formula = (unit: string, table: string) =>
    `=IF(LEN(@law)*COUNT(@baked)=0;"";IF(@baked=0;"";BAKE_NUTRITION(${names};${weights};@baked;@law;${portion};${SHOP_ROWS};${kinds};"${unit}"${after(2, table)})))`;
  const isProduct = costed.finished !== undefined;
  const formulas: Formula = [
    ...(isProduct ? [{ when: "oz", formula: formula("oz", OWN_PARTS) }, { formula: formula("g", OWN_PARTS) }] : []),
    { when: "oz&cost", formula: formula("oz", OWN_PARTS) },
    { when: "oz", formula: formula("oz", "") },
    { when: "cost", formula: formula("g", OWN_PARTS) },
    { formula: formula("g", "") },
  ];
  const figures = (name: string, headFormula: string): ColumnModel => ({
    name,
    head: "",
    headFormula,
    unit: "plain",
    role: "computed",
    align: "right",
  });
  return {
    table: "nutrition",
    left: 0,
    when: "label",
    rows: LINES,
    spare: 0,
    list: true,
    columns: [
      {
        name: "nutrient",
        head: "",
        unit: "text",
        role: "computed",
        formula: formulas,
        spills: ["per_100", "per_portion", "nutrition_note"],
      },
      figures("per_100", '=IF(LEN(@law)=0;"";"per 100 g")'),
      figures("per_portion", '=IF(LEN(@law)=0;"";IF(COUNT(@serving)>0;"per serving";"per piece"))'),
      { name: "nutrition_note", head: "", unit: "text", role: "remark" },
    ],
  };
}
