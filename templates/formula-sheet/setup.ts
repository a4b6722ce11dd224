import type { Block, CellModel, Formula, Line, Unit } from "../../shared/sheet/model.ts";
import { headingLine, label } from "../blocks/line.ts";
import { RIGHT } from "./columns.ts";

const line =
  (at: number) =>
  (text: string, name: string, unit: Unit, more: Partial<CellModel> = {}): Line => ({
    cells: [label(text), { at, role: "input", name, unit, ...more }],
  });
const left = line(2);
const right = line(3);

const WEIGHTS = [
  { when: "oz", least: 1, most: 100_000 },
  { least: 10, most: 2_000_000 },
] as const;

const MIX_NOTE =
  '=IF((COUNT(@dough)=0)+(N(@mixer_least)<=0)>0;"";IF(@dough/@mixes_some<@mixer_least*(1-1/10^9);"a mix is below it";""))';

/** The bakery's own: it begins with what stands in its settings. */
export const setupBlock: Block = {
  block: "setup",
  left: 0,
  lines: [
    headingLine("Set-up", 4),
    {
      cells: [
        { ...label("Mixer capacity ({weight})"), name: "limit_label" },
        { at: 2, role: "input", name: "mixer_limit", unit: "graded", bounds: WEIGHTS },
      ],
    },
    {
      cells: [
        label("Smallest mix ({weight})"),
        { at: 2, role: "input", name: "mixer_least", unit: "graded", bounds: WEIGHTS },
        { at: 3, role: "remark", name: "mixes_note", unit: "text", formula: MIX_NOTE },
      ],
    },
    left("Scale reads to ({weight})", "step_coarse", "plain", { value: 5, bounds: [0.001, 500] }),
    left("Fine scale reads to ({weight})", "step_fine", "plain", { bounds: [0.001, 100] }),
    left("Handling loss", "handling_loss", "short rate", {
      bounds: [0, 0.3],
      hint: "Dough left in the bowl and on the bench.",
    }),
    left("Boil-off, as an ingredient", "boil_off", "short rate", {
      onSheet: true,
      bounds: [0, 0.9],
      hint: "Water that boils off, where other formulas use this one. Enter 0 % for a filling or icing that is not cooked.",
    }),
    left("Left over, as an ingredient", "left_over", "short rate", {
      onSheet: true,
      bounds: [0, 0.9],
      hint: "What stays in the pan or the bowl, where other formulas use this one.",
    }),
    { cells: [label("Bakery"), { at: 2, role: "input", name: "shop", unit: "text", wide: 3 }] },
    { cells: [label("Last change"), { at: 2, role: "input", name: "change_1", unit: "text", wide: 3, onSheet: true }] },
  ],
};

const AS_PRICE_SHOWN: Formula = [
  { when: "oz", formula: '=IF(LEN(@as_price)=0;"";@as_price*45359237/10^8)' },
  { formula: '=IF(LEN(@as_price)=0;"";@as_price)' },
];

const figure = (text: string, name: string, of: string): Line => ({
  cells: [label(text), { at: 3, role: "strong", name, unit: "money", formula: `=IF(LEN(${of})=0;"";${of})` }],
});

/** What is added to the ingredients, and what the price is to leave. */
export const costsBlock: Block = {
  block: "cost",
  left: RIGHT,
  lines: [
    headingLine("Costs and price", 6),
    right("Margin wanted", "margin_wanted", "short rate", { onSheet: true, bounds: [0, 0.99] }),
    right("Tax in the price", "tax", "short rate", {
      onSheet: true,
      bounds: [0, 1],
      hint: "If blank, prices are without tax. Enter 0 % where the law says so.",
    }),
    right("Packaging per piece", "packaging", "unit_cost", { onSheet: true, bounds: [0, 10_000] }),
    right("Broken before packing", "broken", "short rate", { onSheet: true, bounds: [0, 0.9] }),
    right("Unsold, of what is packed", "unsold", "short rate", { onSheet: true, bounds: [0, 0.9] }),
    right("Reduced-price sales, no tax", "reduced_sales", "money", { onSheet: true, bounds: [0, 10_000_000] }),
    right("Labour, minutes a mix", "labour_mix", "minutes", { onSheet: true, bounds: [0, 100_000] }),
    right("Labour, minutes per 100 pieces", "labour_pieces", "minutes", { onSheet: true, bounds: [0, 100_000] }),
    right("Labour rate per hour", "labour_rate", "money", { onSheet: true, bounds: [0, 100_000] }),
    right("Overhead per labour hour", "overhead_labour", "money", { onSheet: true, bounds: [0, 100_000] }),
    {
      ...right("Overhead per oven hour", "overhead_oven", "money", { onSheet: true, bounds: [0, 100_000] }),
      when: "steps",
    },
    right("Other costs of the batch", "other_costs", "money", { onSheet: true, bounds: [0, 10_000_000] }),
    figure("Cost of the batch", "cost_all_shown", "@cost_all"),
    figure("Contribution of the batch", "contribution_shown", "@contribution"),
    {
      cells: [
        label("As an ingredient, per {priced}"),
        { at: 3, role: "strong", name: "as_price_shown", unit: "money", formula: AS_PRICE_SHOWN },
      ],
    },
  ],
};
