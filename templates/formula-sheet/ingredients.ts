import { KIND_CHOICES } from "../../shared/larder/kinds.ts";
import type { CellModel, Table } from "../../shared/sheet/model.ts";
import { shownColumn, showWhere, typedColumn } from "./column-kinds.ts";
import { conditionOf, EACH, type IngredientsSpec, ROWS, SPARE } from "./ingredient-helpers.ts";
import { typedPrices } from "./prices.ts";
import { stageColumns } from "./stages.ts";

/** The same with the sum of another column in the last row. */
const showWithTotal = (helper: string, total: string, when = EACH) =>
  `=ARRAYFORMULA(IF(ROW(@counts)=MAX(ROW(@counts));${total};IF(${when};${helper};"")))`;

/** The page's columns: what is typed, and what the sheet makes of it. */
export function ingredientsTable(spec: IngredientsSpec): Table {
  const weighed =
    spec.stage !== undefined
      ? stageColumns(spec.stage)
      : [
          shownColumn(
            "per_mix",
            "Per mix ({weight})",
            "step",
            showWithTotal("@mix_scale", "SUM(@mix_scale)", "@mix_told=1"),
            {
              role: "strong",
              takesWeights: true,
            },
          ),
        ];
  return {
    table: "formula",
    left: 0,
    when: conditionOf(spec),
    rows: ROWS,
    spare: SPARE,
    hidden: true,
    total: totalCells(spec),
    columns: [
      typedColumn("ingredient", "Ingredient", "text"),
      typedColumn("kind", "Type", "text", { choices: KIND_CHOICES }),
      typedColumn("percent", "Baker's %", "percent", { bounds: [0, 100_000] }),
      shownColumn("weight", "Weight ({weight})", "graded", showWithTotal("@grams_shown", "ROUND(@dough_exact;2)"), {
        takesWeights: true,
      }),
      ...weighed,
      shownColumn("of_whole", "% of total", "rate", showWhere("@whole_part", EACH)),
      ...(spec.isPriced
        ? [shownColumn("price_shown", "Price per {priced}", "money", showWhere("@price", "ISNUMBER(@price)"))]
        : typedPrices),
      shownColumn(
        "cost_shown",
        "Cost",
        "money",
        showWithTotal("@row_cost", 'IF(@priced_rows=0;"";SUM(@row_cost))', "@cost_told=1"),
      ),
      {
        name: "note",
        head: "Note",
        unit: "text",
        role: "remark",
        formula: NOTE,
      },
    ],
  };
}

/** Where the call has no answer the first row says so; under the notes stands which prices are missing. */
const NOTE =
  '=ARRAYFORMULA(IF(ROW(@counts)=MAX(ROW(@counts));@unpriced_says;IF(ISERROR(@advice_top);IF(ROW(@counts)=MIN(ROW(@counts))+1;@advice_says;"");@advice&"")))';

/** The sum of the percentages stands in the label: a number in its column would count as an ingredient. */
function totalCells({ stage }: IngredientsSpec): CellModel[] {
  const isStaged = stage !== undefined;
  const last = isStaged ? 9 : 8;
  return [
    {
      at: 0,
      role: "total",
      name: "total_label",
      unit: "text",
      formula: '="Total, "&ROUND(100*SUM(@share_typed)/@percent_base;1)&" %"',
    },
    ...Array.from(
      { length: last - 1 },
      (_, at): CellModel => ({ at: at + 1, role: "total", ...totalUnit(isStaged, at + 1) }),
    ),
  ];
}

/** The cells look like their columns, also where nothing stands: a row inserted above takes its formats from them. */
function totalUnit(isStaged: boolean, at: number): Pick<CellModel, "unit" | "align"> {
  const units: readonly (CellModel["unit"] | undefined)[] = isStaged
    ? [undefined, undefined, "percent", "graded", "step", "step", "rate", "money", "money"]
    : [undefined, undefined, "percent", "graded", "step", "rate", "money", "money"];
  const unit = units[at];
  return unit === undefined ? {} : { unit, align: "right" };
}
