// What a batch costs, and what is left of its price: ingredients, labour, overhead, packaging, and what is not sold.
import { only, type Single, single } from "./singles.ts";
import { type FormulaSheetSpec, wholeOf } from "./spec.ts";

const costOf = ({ isRolled }: FormulaSheetSpec): string => (isRolled ? "SUM(@row_cost)+@roll_cost" : "SUM(@row_cost)");

/** What the ingredients cost, and what is added to that. */
export const costSingles = (spec: FormulaSheetSpec): readonly Single[] => [
  single("Ingredients in all", "cost_ingredients", `=IF((@weighable=1)*(@priced_rows>0)=1;${costOf(spec)};"")`),
  single("Rows with a price", "priced_rows", "=SUM(@cost_told)"),
  single(
    "Rows without one",
    "unpriced_rows",
    spec.isRolled ? "=SUM(@cost_missing)+@roll_unpriced" : "=SUM(@cost_missing)",
  ),
  single(
    "Prices that are missing",
    "unpriced_says",
    '=IF((@unpriced_rows>0)*(@priced_rows>0)=1;"Without a price: "&@unpriced_rows;"")',
  ),
  ...only("cost", [single("The same, for other sheets", "unpriced", "=@unpriced_says")]),
  // What another price in the sheet of ingredients does cannot be told of prices that stand here alone.
  ...only("!cost", [
    single("The same, for other sheets", "unpriced", '=TRIM(@unpriced_says&IF(@priced_rows>0;" prices typed";""))'),
  ]),
  single("Ingredients, by weight", "cost_per_weight", `=(${costOf(spec)})/MAX(${wholeOf(spec)};1/10^9)`),
  ...WORK,
  single("The same, by weight", "work_per_weight", `=@work_cost/MAX(${wholeOf(spec)};1/10^9)`),
  single(
    "Sales at a reduced price, by weight",
    "reduced_per_weight",
    `=N(@reduced_sales)/MAX(${wholeOf(spec)};1/10^9)`,
  ),
  single("Wages of a piece", "labour_piece", "=N(@labour_pieces)/100/60*N(@labour_rate)"),
  single(
    "Wages of the mixes, by weight",
    "labour_per_weight",
    `=@labour_hours*N(@labour_rate)/MAX(${wholeOf(spec)};1/10^9)`,
  ),
  ...SOLD,
  single("All costs", "cost_all", '=IF(COUNT(@cost_ingredients)=0;"";@cost_ingredients+@work_all+@packaging_all)'),
  single("Contribution", "contribution", CONTRIBUTION),
];

/** Minutes a mix are shared out by weight, minutes per 100 pieces by the piece. */
export const WORK: readonly Single[] = [
  single("An hour, with its overhead", "labour_hour", "=N(@labour_rate)+N(@overhead_labour)"),
  single("Hours of the mixes", "labour_hours", [
    { when: "cost", formula: "=N(@labour_mix)/60*@mixes_some+@own_hours" },
    { formula: "=N(@labour_mix)/60*@mixes_some" },
  ]),
  single("Labour and overhead of a piece", "work_piece", "=N(@labour_pieces)/100/60*@labour_hour"),
  single("Other costs by weight", "work_cost", [
    { when: "steps", formula: "=@labour_hours*@labour_hour+@oven_minutes/60*N(@overhead_oven)+N(@other_costs)" },
    { formula: "=@labour_hours*@labour_hour+N(@other_costs)" },
  ]),
  single("Labour and other costs", "work_all", "=@work_cost+@work_piece*SUM(@pieces_now)"),
  single("Labour is counted", "has_labour", "=IF((@labour_hours+N(@labour_pieces))*N(@labour_rate)>0;1;0)"),
  single(
    "What the cost of a piece holds",
    "cost_words",
    '=IF(@has_labour=1;"Total cost";IF(@work_all>0;"Cost without labour";IF(N(@packaging)>0;"Cost of materials";"Cost of ingredients")))',
  ),
  single(
    "What is left of a price is after",
    "margin_words",
    '=IF((@has_labour=0)*(@work_all>0)=1;"Margin before labour";"Margin after "&SUBSTITUTE(LOWER(@cost_words);"cost of ";""))',
  ),
];

/** Broken is a share of what is made, unsold a share of what is packed. */
export const SOLD: readonly Single[] = [
  single("Packed", "packed_part", "=1-MIN(MAX(N(@broken);0);9/10)"),
  single("Sold of what is made", "sold_part", "=@packed_part*(1-MIN(MAX(N(@unsold);0);9/10))"),
  single("Tax", "tax_part", "=N(@tax)"),
  single("Margin wanted", "margin_part", "=IF((N(@margin_wanted)>0)*(N(@margin_wanted)<1)=1;@margin_wanted;0)"),
  single("Packaging of all that is packed", "packaging_all", "=N(@packaging)*SUM(@pieces_now)*@packed_part"),
  single("Sales without tax", "net_sales", "=SUMPRODUCT(@pieces_now;@price_number)*@sold_part/(1+@tax_part)"),
  single("Sizes without a price", "unpriced_sizes", "=SUMPRODUCT((@pieces_now>0)*(@price_number<=0))"),
];

/** Ingredients and packaging of everything that is made come off what is sold, at a reduced price too. */
export const CONTRIBUTION =
  '=IF((COUNT(@cost_ingredients)=0)+(@unpriced_sizes>0)+(SUM(@pieces_now)=0)>0;"";@net_sales+N(@reduced_sales)-@cost_ingredients-@packaging_all)';

/** What a price leaves of itself once the cost of a sold piece and its tax are paid; blank without a cost or a price. */
export const marginWhere = (isWithoutCost: string): string =>
  `IF((${isWithoutCost})+(@price_number<=0)>0;"";1-@size_cost*(1+@tax_part)/@price_number)`;

/** What to charge for the wanted margin, tax included; blank without a cost or a wish. */
export const wantedWhere = (isWithoutCost: string): string =>
  `IF((${isWithoutCost})+(@margin_part<=0)>0;"";@size_cost/(1-@margin_part)*(1+@tax_part))`;
