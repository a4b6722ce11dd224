import { MEANINGS } from "../../shared/money/price.ts";
import type { Block, ColumnModel, Formula, Table } from "../../shared/sheet/model.ts";
import type { CostedCells } from "./costed-cells.ts";
import { computedLine, headingLine, inputLine, label } from "./line.ts";

/** Nothing while the larder cannot be read: the cell at the top of its column says why. */
const priced = (formula: string) => `=IF(ISERROR(INDEX(@price_each;1;1));"";${formula})`;

/** 16 oz are a pound. */
const perKilogram = (formula: (weight: number, unit: string) => string) => [
  { when: "oz", formula: formula(16, "oz") },
  { formula: formula(1000, "g") },
];
const extraPrice = (name: string, weight: number, unit: string) =>
  `=IF(LEN(${name})=0;"";BAKE_COSTS(${name};${weight};gramwright_larder;"${unit}"))`;
const pricesOf = (weight: number, unit: string) =>
  `=BAKE_COSTS(@ingredient;ARRAYFORMULA(IF(LEN(@ingredient)=0;"";${weight}));gramwright_larder;"${unit}")`;

/** Beside the formula's rows: the price by the larder, and what the row costs. */
export const costColumns = (left: number, rows: number): Table => ({
  table: "costs",
  left,
  when: "cost",
  rows,
  spare: 0,
  columns: [
    {
      name: "price_each",
      head: "Price per {priced}",
      unit: "money",
      role: "computed",
      // Prices, not costs: so the weights are multiplied here, and no call waits for them.
      formula: [{ when: "oz", formula: pricesOf(16, "oz") }, { formula: pricesOf(1000, "g") }],
      spills: ["price_note"],
    },
    { name: "price_note", head: "", unit: "text", role: "remark" },
    {
      name: "cost",
      head: "Cost",
      unit: "money",
      role: "computed",
      formula: perKilogram((weight) =>
        priced(`ARRAYFORMULA(IF(LEN(@price_each)*LEN(@grams)=0;"";@grams*@price_each/${weight}))`),
      ),
    },
  ],
});

/** What an amount costs, and how its price is worked out. */
export function costBlock({ extra }: CostedCells): Block {
  const unpriced = '(LEN(@price_note)>0)*(LEFT(@kind;5)<>"water")';
  const missing = `SUM(${unpriced}${extra === undefined ? "" : ";LEN(@extra_note)>0"})`;
  return {
    block: "cost",
    left: 0,
    when: "cost",
    lines: [
      headingLine("Cost and price", 2),
      ...(extra === undefined
        ? []
        : [
            {
              cells: [
                label("Rolled-in fat, per {priced}"),
                {
                  at: 1,
                  role: "computed" as const,
                  name: "extra_price",
                  unit: "money" as const,
                  spills: ["extra_note"],
                  worded: ["extra_note"],
                  formula: perKilogram((weight, unit) => extraPrice(extra.name, weight, unit)),
                },
              ],
            },
          ]),
      {
        cells: [
          label("Ingredients of this amount"),
          {
            at: 1,
            role: "computed",
            name: "cost_ingredients",
            unit: "money",
            formula: perKilogram((weight) =>
              priced(
                `IF(COUNT(@cost)=0;"";SUM(@cost)${extra === undefined ? "" : `+IF(COUNT(@extra_price)*COUNT(${extra.weight})=0;0;@extra_price*${extra.weight}/${weight})`})`,
              ),
            ),
          },
          {
            at: 2,
            role: "remark",
            name: "unpriced",
            unit: "text",
            formula: `=IF(ISERROR(INDEX(@price_each;1;1));"see the red cell";ARRAYFORMULA(IF(${missing}=0;"";${missing}&" without")))`,
          },
        ],
      },
      computedLine(
        "Full cost of this amount",
        "cost_all",
        "money",
        '=IF(COUNT(@cost_ingredients)=0;"";@cost_ingredients+@labour_minutes/60*@labour_rate*(1+@overhead)+@other_costs)',
      ),
      inputLine("Labour, minutes for all of it", "labour_minutes", "minutes"),
      inputLine("Labour, an hour", "labour_rate", "money"),
      inputLine("Overhead, share of labour", "overhead", "rate"),
      inputLine("Other costs of this amount", "other_costs", "money"),
      inputLine("Packaging, each", "packaging", "unit_cost"),
      inputLine("Made but not sold", "unsold", "share"),
      inputLine("Price by", "price_by", "text", { choices: Object.keys(MEANINGS), value: "cost share" }),
      inputLine("of", "price_from", "text", { choices: ["full cost", "ingredients"], value: "full cost" }),
      inputLine("Share wanted", "price_share", "rate"),
      inputLine("Tax on top", "price_tax", "rate"),
      inputLine("Rounded up to", "price_step", "money"),
    ],
  };
}

const ROWS = 5;

/** Cost and price of a piece in every size; what is made but not sold is paid for by what is sold. */
export function sizeCosts(costed: CostedCells): Table | Block {
  const columns = columnsOf(costed);
  if (costed.needs === undefined) return { table: "size_costs", left: 3, when: "cost", rows: ROWS, columns };
  return {
    block: "size_costs",
    left: 3,
    when: `cost&${costed.needs}`,
    lines: [
      {
        cells: columns.map(({ head, unit }, at) => ({
          at,
          role: "label" as const,
          text: head,
          ...(unit === "text" ? {} : { align: "right" as const }),
        })),
      },
      {
        cells: columns.map(({ name, unit, formula = "", plain }, at) => ({
          at,
          role: "computed" as const,
          name,
          unit,
          formula,
          ...(plain === undefined ? {} : { plain }),
        })),
      },
    ],
  };
}

/** Selling price in the sheet's own sums, as shared/money/price.ts has it; blank where the share cannot be meant. */
const PLAIN_PRICE = (() => {
  const cost = 'IF(@price_from="ingredients";@size_ingredients;@size_cost)';
  const price = `${cost}*SWITCH(@price_by;"cost share";1/@price_share;"margin";1/(1-@price_share);1+@price_share)*(1+@price_tax)`;
  const fits =
    'SWITCH(@price_by;"cost share";(@price_share>0)*(@price_share<=1);"margin";@price_share<1;"markup";@price_share>=0;0)*1';
  return `=ARRAYFORMULA(IF(LEN(@price_by)*COUNT(@price_share)*LEN(@size_cost)*LEN(@size_ingredients)=0;"";IF(${fits}=0;"";IF(N(@price_step)>0;ROUNDUP(ROUND(${price}/@price_step;9);0)*@price_step;${price}))))`;
})();

function columnsOf({ each, names, tins, whole }: CostedCells): ColumnModel[] {
  const ofEach = (formula: (each: string, names: string) => string): Formula => [
    ...(tins === undefined ? [] : [{ when: "tin", formula: formula(tins.each, tins.names) }]),
    { formula: formula(each, names) },
  ];
  const perPiece = (each: string, cost: string) => `${each}/(1-@handling_loss)/(1-@unsold)*${cost}/${whole}`;
  const column = (
    name: string,
    head: string,
    unit: ColumnModel["unit"],
    formula: Formula,
    ...plain: string[]
  ): ColumnModel => ({ name, head, unit, role: "computed", formula, ...(plain.length === 0 ? {} : { plain }) });
  return [
    column(
      "cost_of",
      "One piece",
      "text",
      ofEach((each, names) => `=ARRAYFORMULA(IF(LEN(${each})=0;"";${names}))`),
    ),
    column(
      "size_ingredients",
      "Ingredients",
      "unit_cost",
      ofEach(
        (each) =>
          `=IF(COUNT(@cost_ingredients;${whole})<2;"";IF(${whole}=0;"";ARRAYFORMULA(IF(LEN(${each})=0;"";${perPiece(each, "@cost_ingredients")}))))`,
      ),
    ),
    column(
      "size_cost",
      "Full cost",
      "unit_cost",
      ofEach(
        (each) =>
          `=IF(COUNT(@cost_all;${whole})<2;"";IF(${whole}=0;"";ARRAYFORMULA(IF(LEN(${each})=0;"";${perPiece(each, "@cost_all")}+@packaging/(1-@unsold)))))`,
      ),
    ),
    column(
      "size_price",
      "Sells at",
      "money",
      '=IF(LEN(@price_by)*LEN(@price_share)*COUNT(@size_cost)=0;"";BAKE_SELLPRICE(ARRAYFORMULA(IF(@price_from="ingredients";@size_ingredients;@size_cost));@price_share;@price_by;@price_tax;@price_step))',
      PLAIN_PRICE,
    ),
    column(
      "size_untaxed",
      "before tax",
      "money",
      '=IF(ISERROR(INDEX(@size_price;1;1));"";ARRAYFORMULA(IF(LEN(@size_price)=0;"";@size_price/(1+@price_tax))))',
    ),
    column(
      "size_margin",
      "Margin",
      "rate",
      '=IF(ISERROR(INDEX(@size_price;1;1));"";ARRAYFORMULA(IF(LEN(@size_price)*LEN(@size_cost)=0;"";IF(@size_price=0;"";1-@size_cost*(1+@price_tax)/@size_price))))',
    ),
  ];
}
