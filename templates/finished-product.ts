// A product put together from parts: a formula's dough, a filling, toppings, decorations and what it is packed in.
import type { Block, CellModel, Line, SheetModel } from "../shared/sheet/model.ts";
import { labelBlock, labelCautions } from "./blocks/label.ts";
import type { Labelled } from "./blocks/label-needs.ts";
import { headingLine, label } from "./blocks/line.ts";
import { CAUTIONS, cautionsOf } from "./blocks/name.ts";
import { nutritionHeading, nutritionTable } from "./blocks/nutrition.ts";
import { ASIDE_PLACES, FOLDED_FROM, MESSAGES, PAGE_WIDTHS } from "./formula-sheet/columns.ts";
import { formulaChecks, remarksOf, topsOf } from "./formula-sheet/formula-check.ts";
import { withChecks } from "./formula-sheet/line-checks.ts";
import { ownTable } from "./formula-sheet/own-formulas.ts";
import { costsBlock } from "./formula-sheet/setup.ts";
import { singlesBlock } from "./formula-sheet/singles.ts";
import { figures, MARK } from "./product/figures.ts";
import { partsHelpers, partsTable } from "./product/parts.ts";

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
