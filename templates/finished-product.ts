// A product put together from parts: a formula's dough, a filling, toppings, decorations and what it is packed in.
import type { Block, CellModel, Line, SheetModel } from "../shared/sheet/model.ts";
import { labelBlock, labelCautions } from "./blocks/label.ts";
import type { Labelled } from "./blocks/label-needs.ts";
import { headingLine, label } from "./blocks/line.ts";
import { CAUTIONS, cautionsOf } from "./blocks/name.ts";
import { nutritionHeading, nutritionTable } from "./blocks/nutrition.ts";
import { message } from "./formula-sheet/checks.ts";
import { ASIDE_PLACES, FOLDED_FROM, MESSAGES, PAGE_WIDTHS } from "./formula-sheet/columns.ts";
import { CONTRIBUTION, marginWhere, SOLD, WORK, wantedWhere } from "./formula-sheet/costs.ts";
import { formulaChecks, remarksOf, topsOf } from "./formula-sheet/formula-check.ts";
import { withChecks } from "./formula-sheet/line-checks.ts";
import { ownTable } from "./formula-sheet/own-formulas.ts";
import { costsBlock } from "./formula-sheet/setup.ts";
import { LARDER_SINGLES, type Single, single, singlesBlock } from "./formula-sheet/singles.ts";
import { outsideSingles } from "./formula-sheet/stray-cells.ts";
import { partsHelpers, partsTable } from "./product/parts.ts";

const MARK = "Built as finished product";
const FEW = [
  { when: "oz", least: 0.2, most: 700 },
  { least: 1, most: 20_000 },
] as const;

/** Beside the result, apart from the figures that it counts. */
const FORMULAS_SAY: CellModel = {
  at: MESSAGES.left,
  role: "helper",
  name: "formulas_say",
  unit: "plain",
  formula:
    '=IF(COUNTIF(@singles_upper;"typed over")+COUNTIF(@singles_lower;"typed over")=0;"";"A formula was typed over: undo. ")&IF(@errors_many+@errors_tables=0;"";"A formula beside the page shows an error: undo. ")',
};

const top: Block = {
  block: "name",
  left: 0,
  lines: [
    {
      height: 30,
      cells: [
        { at: 0, role: "title", name: "title", text: "Finished product" },
        { at: 7, role: "label", text: "Version", align: "right" },
        { at: 8, role: "input", name: "version", unit: "text", value: "1" },
        { at: 9, role: "input", name: "date", unit: "date" },
        {
          at: MESSAGES.left,
          role: "helper",
          name: "errors_many",
          unit: "plain",
          formula: "=SUMPRODUCT(ISERROR(@singles_upper)*1)+SUMPRODUCT(ISERROR(@singles_lower)*1)",
        },
      ],
    },
    { cells: [{ at: 0, role: "result", name: "result", unit: "text", formula: "=@result_words" }, FORMULAS_SAY] },
    {
      cells: [
        {
          at: 0,
          role: "check",
          name: "check",
          unit: "text",
          formula:
            '=IFERROR(TRIM(@first_says&@second_says&@third_says&@more_says&@tops_say&@parts_say&@formulas_say);"A formula of this sheet is damaged: undo the last change.")',
        },
      ],
    },
  ],
};

/** What is made of it and what it is sold for, and beside that what follows. */
const pieceBlock: Block = withChecks({
  block: "piece",
  left: 0,
  lines: [
    headingLine("One piece", 11),
    typed("Pieces made", "pieces_made", "count", { bounds: [0, 1_000_000] }),
    typed("Finished weight, each ({weight})", "size_weight", "graded", {
      bounds: FEW,
      hint: "Weigh one: label, nutrition and quantities go by it.",
    }),
    typed("Size", "size_name", "text"),
    typed("Price", "size_price", "money", { bounds: [0, 1_000_000], onSheet: true }),
    figure("cost_each", "size_cost", '=@cost_words&", each"'),
    figure("margin_shown", "size_margin", "=@margin_words", "rate"),
    figure(
      "wanted_shown",
      "price_wanted",
      '=IF(@margin_part>0;"Price for "&ROUND(100*@margin_part;1)&" %"&IF(COUNT(@tax)=0;"";" incl. tax");"Price for the wanted margin")',
    ),
  ],
});

function typed(text: string, name: string, unit: CellModel["unit"], more: Partial<CellModel> = {}): Line {
  return { cells: [label(text), { at: 3, role: "input", name, ...(unit === undefined ? {} : { unit }), ...more }] };
}

function figure(name: string, of: string, head: string, unit: CellModel["unit"] = "money"): Line {
  return {
    cells: [
      { at: 0, role: "label", name: `${name}_head`, unit: "text", formula: head },
      { at: 3, role: "strong", name, unit, formula: `=IF(LEN(@${of})=0;"";@${of})` },
    ],
  };
}

/** Packaging stands among the parts. */
const withoutParts = new Set(["packaging", "as_price_shown"]);
const productCosts: Block = {
  ...costsBlock,
  left: 0,
  lines: costsBlock.lines.filter(
    ({ cells }) => !cells.some(({ name }) => name !== undefined && withoutParts.has(name)),
  ),
};

/** As formula sheets say it; what is counted has no weight and stands in no list. */
const AS_PARTS =
  '=IF(@weighable=0;"";@title&CHAR(9)&CHAR(9)&CHAR(9)&0&CHAR(9)&0&CHAR(10)&TEXTJOIN(CHAR(10);TRUE();@part_text)&IF(SUM(@own_rows)=0;"";CHAR(10)&TEXTJOIN(CHAR(10);TRUE();@own_parts)))';

const HOURS = single("Hours of the batch", "labour_hours", "=N(@labour_mix)/60*@mixes_some+@own_hours");

const figures: readonly Single[] = [
  single("Pieces", "pieces_now", "=IF(N(@pieces_made)>0;ROUND(@pieces_made;0);0)"),
  single("Price, as a number", "price_number", "=N(@size_price)"),
  single("Mixes, at least 1", "mixes_some", "=1"),
  single("Weight of the parts", "parts_weigh", "=SUM(@net_weight)"),
  single("Hours of parts with a sheet", "own_hours", [
    { when: "oz", formula: "=SUMPRODUCT(@own_time;@exact)*28349523125/10^12/60" },
    { formula: "=SUMPRODUCT(@own_time;@exact)/1000/60" },
  ]),
  single("Price of a sheet of its own, times", "own_factor", [
    { when: "oz", formula: "=45359237/10^8" },
    { formula: "=1" },
  ]),
  single("Rows with a price", "priced_rows", "=SUM(@cost_told)"),
  single("Rows that cannot be read", "bad_rows", "=SUMPRODUCT((LEN(@input_says)>0)*1)"),
  single("May be costed", "weighable", "=IF((@pieces_now>0)*(@bad_rows=0)*(@priced_rows>0)=1;1;0)"),
  single("Packaging, each", "packaging", "=SUMPRODUCT(@is_packaging;@cost_each_part)"),
  single(
    "Ingredients in all",
    "cost_ingredients",
    '=IF(@weighable=1;(SUM(@cost_each_part)-@packaging)*@pieces_now;"")',
  ),
  single("Rows without one", "unpriced_rows", "=SUM(@cost_missing)"),
  single(
    "Prices that are missing",
    "unpriced",
    '=IF((@unpriced_rows>0)*(@priced_rows>0)=1;"Without a price: "&@unpriced_rows;"")',
  ),
  ...LARDER_SINGLES,
  single("Price each, in column", "larder_each", '=MATCH("Price each";INDEX(gramwright_prices;1;0);0)'),
  ...WORK.map((one) => (one.name === HOURS.name ? HOURS : one)),
  ...SOLD,
  single("All costs", "cost_all", '=IF(COUNT(@cost_ingredients)=0;"";@cost_ingredients+@work_all+@packaging_all)'),
  single("Contribution", "contribution", CONTRIBUTION),
  single("Pieces, or blank", "pieces", '=IF(@pieces_now>0;@pieces_now;"")'),
  single("Weight of all, or blank", "dough", '=IF((@pieces_now>0)*(@bad_rows=0)=1;SUM(@exact);"")'),
  single("Mixes", "mixes", '=IF(@pieces_now>0;1;"")'),
  single("Size, for other sheets", "cost_of", '=@size_name&""'),
  single("Weight of a piece, or blank", "size_scaled", '=IF(@pieces_now>0;@parts_weigh;"")'),
  single(
    "Labour of a sold piece",
    "size_labour",
    '=IF(COUNT(@cost_ingredients)=0;"";(@labour_hours/@pieces_now+N(@labour_pieces)/100/60)*N(@labour_rate)/@sold_part)',
  ),
  single("Sold of a batch", "size_sold", '=IF(@pieces_now>0;@pieces_now*@sold_part;"")'),
  single("Contribution of a batch", "size_contribution", "=@contribution"),
  single("Parts, for other sheets", "as_parts", AS_PARTS),
  single(
    "Parts of a sold piece",
    "size_ingredients",
    '=IF(COUNT(@cost_ingredients)=0;"";(@cost_ingredients/@pieces_now+@packaging*@packed_part)/@sold_part)',
  ),
  single(
    "Counted parts and their cost",
    "as_counted",
    '=IF((COUNT(@size_ingredients)=0)+(SUM(@is_counted)=0)>0;"";ROUND(10^9*(@size_ingredients-SUMPRODUCT(@is_counted*@cost_each_part*(1-@is_packaging*(1-@packed_part)))/@sold_part);0)&CHAR(10)&TEXTJOIN(CHAR(10);TRUE();@count_cost))',
  ),
  single(
    "Cost of a sold piece",
    "size_cost",
    '=IF(COUNT(@cost_all)=0;"";(@cost_all-N(@reduced_sales))/@pieces_now/@sold_part)',
  ),
  single("Margin, for other sheets", "size_margin", `=${marginWhere("COUNT(@size_cost)=0")}`),
  single("Price for the margin", "price_wanted", `=${wantedWhere("COUNT(@size_cost)=0")}`),
  single(
    "Result in words",
    "result_words",
    '=IF(COUNT(@size_cost)=0;"";@pieces_now&" pieces · "&ROUND(@size_cost;{cost_decimals})&" each"&IF(COUNT(@size_margin)=0;"";" · "&LOWER(@margin_words)&" "&ROUND(100*@size_margin;1)&" %")&IF(LEN(@unpriced)=0;"";" · "&@unpriced))',
  ),
  single(MARK, "mark", '="product"'),
  single("First message", "first_says", message(1)),
  single("Second message", "second_says", message(2)),
  single("Third message", "third_says", message(3)),
  single("How many more", "more_says", '=IF(COUNT(@both_rows)>3;" · and "&COUNT(@both_rows)-3&" more. ";" ")'),
  single(
    "Errors in hidden rows",
    "errors_tables",
    "=SUMPRODUCT(ISERROR(@message_top:@message_row_top)*1)+SUMPRODUCT(ISERROR(@typed_top:@row_says_top)*1)",
  ),
  single(
    "Hidden rows stand first",
    "tops_say",
    '=IF(SUMPRODUCT(MIN(ROW(@counts)))=ROW(@counts_top);"";"A hidden row was moved: undo. ")',
  ),
  ...outsideSingles({
    table: "formula",
    says: "parts",
    what: "A part",
    many: "parts",
    typed: ["ingredient", "part_waste"],
    counted: "counts",
    // The label of the total, the heading of the costs and their first label.
    isClear: "COUNTA(@total_label:@margin_wanted)-COUNTA(@margin_wanted)=3",
    figures: "part_share",
    below: ["total_label", "says_margin_wanted"],
    ends: "ROW(@margin_wanted)-1",
  }),
];

const { when: _, ...linkedSheets } = ownTable;
const tables = [partsTable, ...partsHelpers];
const checked = [
  ...topsOf([[top], tables]),
  ...remarksOf([[top], [productCosts]]),
  ...figures.filter(({ formula }) => formula !== undefined),
  { name: "result" },
  { name: "total_label" },
];

/** What is wasted of a part is in no piece. */
const LABELLED: Labelled = {
  whole: "@parts_weigh",
  each: "@size_scaled",
  sold: true,
  rows: { names: "@name_counted", kinds: "@kind_counted" },
  weights: "@net_shown",
  finished: "@size_weight",
};
const end = cautionsOf(CAUTIONS.raw, CAUTIONS.guides);

const HELPER_COLUMNS = 100;

export const finishedProduct: SheetModel = {
  name: "finished-product",
  title: "Finished product",
  says: "A product of parts: dough, filling, topping, decoration and packaging, with its cost, margin and price.",
  widths: [...PAGE_WIDTHS, ...Array<number>(HELPER_COLUMNS).fill(76)],
  parts: ["label"],
  frozen: 3,
  fillsFirst: ["pieces_made", "ingredient"],
  foldedFrom: FOLDED_FROM,
  mark: MARK,
  gap: 9,
  places: ASIDE_PLACES,
  bands: [
    [top, singlesBlock([...figures, ...formulaChecks(checked)])],
    [pieceBlock],
    tables,
    [withChecks(productCosts), linkedSheets],
    [labelBlock(LABELLED)],
    [nutritionHeading],
    [nutritionTable(LABELLED)],
    [{ ...end, lines: [...end.lines, ...labelCautions] }],
  ],
  sample: {
    title: "Almond bun",
    version: "1",
    pieces_made: 240,
    size_weight: 92,
    size_price: 2.4,
    margin_wanted: 0.6,
    ingredient: ["Strong white flour", "Sugar"],
    kind: ["dough", "topping"],
    part_each: [70, 5],
    part_unit: ["g", "g"],
    part_waste: [0.02, null],
  },
  expects: { check: "", pieces: 240, dough: 18342.857143, "grams/1": 17142.857143, "grams/2": 1200 },
};
