import type { ColumnModel, Table } from "../../shared/sheet/model.ts";
import {
  asNumber,
  gradeFormula,
  helper,
  numbers,
  outOf,
  showFilled,
  shownColumn,
  showWhere,
  typedColumn,
  typedOver,
} from "./column-kinds.ts";
import { HELPERS, MESSAGES } from "./columns.ts";
import { marginWhere, wantedWhere } from "./costs.ts";
import { ROUND_COLUMNS, ROUND_HELPERS, ROUND_WRONG } from "./rounds.ts";
import type { FormulaSheetSpec } from "./spec.ts";

/** As many rows as the order has, and one to spare. */
const ROWS = 3;
const SPARE = 1;

const each = (column: string, when = "@size_counts=1") => showWhere(column, when);

const GRAMS = [
  { when: "oz", least: 0.2, most: 700 },
  { least: 5, most: 20_000 },
] as const;

/** One dough in several sizes: what is typed of each, what it is scaled at, what it costs and what is left of its price. */
export const sizesTable = (spec: FormulaSheetSpec): Table => ({
  table: "sizes",
  left: 0,
  rows: ROWS,
  spare: SPARE,
  hidden: true,
  tallHead: true,
  columns: [
    typedColumn("size_name", "Size", "text", {}),
    typedColumn("size_pieces", "Pieces", "count", { bounds: [0, 1_000_000] }),
    ...(spec.isRound ? ROUND_COLUMNS : BAKED_COLUMNS),
    shownColumn("scaled_shown", "Scaling ({weight})", "graded", each("@scaled_shows"), { role: "strong" }),
    shownColumn("dough_shown", "Dough ({weight})", "graded", each("@dough_shows", "@size_counts*(@sizes_times>0)=1")),
    shownColumn("now_shown", "", "count", each("@pieces_now", '@size_counts*(@by<>"pieces")*(@sizes_times>0)=1'), {
      headFormula: '=IF(@by="pieces";"";"Pieces now")',
      align: "right",
    }),
    shownColumn("cost_each", "", "money", showFilled("@size_cost"), {
      headFormula: "=@cost_words",
      align: "right",
    }),
    typedColumn("size_price", "", "money", {
      onSheet: true,
      bounds: [0, 1_000_000],
      headFormula: '=IF(COUNT(@tax)=0;"Price excl. tax";"Price incl. tax")',
      align: "right",
    }),
    shownColumn("margin_shown", "", "rate", showFilled("@size_margin"), {
      headFormula: "=@margin_words",
      align: "right",
    }),
    shownColumn("wanted_shown", "", "money", showFilled("@price_wanted"), {
      headFormula:
        '=IF(N(@margin_wanted)>0;"Price for "&ROUND(100*@margin_wanted;1)&" %"&IF(COUNT(@tax)=0;"";" incl. tax");"")',
      align: "right",
    }),
  ],
});

/** What a piece weighs when it is sold, and what it lost before. */
const BAKED_COLUMNS: readonly ColumnModel[] = [
  typedColumn("size_weight", "Baked ({weight})", "graded", { bounds: GRAMS }),
  typedColumn("size_loss", "Bake loss", "short rate", { bounds: [0, 0.5] }),
];

/** Typed pieces are how many; scaled otherwise they are shares of the dough, and a size without any is one of one. */
const sizeHelpers = ({ isRound }: FormulaSheetSpec): readonly ColumnModel[] => [
  numbers(
    "pieces_typed",
    "Pieces, as numbers",
    '=ARRAYFORMULA(IF(ISNUMBER(@size_pieces);@size_pieces;(@by<>"pieces")*(COUNT(@size_pieces)=0)*1))',
  ),
  ...(isRound ? ROUND_HELPERS : BAKED_HELPERS),
  helper("size_scaled", "Scaling weight, or blank", each("@scaling")),
  numbers("scaled_shows", "Scaling weight, as shown", gradeFormula("@scaling")),
  numbers("size_exact", "Dough as typed", "=ARRAYFORMULA(@scaling*@pieces_typed/(1-@handling))"),
  numbers("size_now", "Dough now", "=ARRAYFORMULA(@size_exact*@sizes_times)"),
  helper("size_dough", "Dough now, or blank", each("@size_now", "@size_counts*(@sizes_times>0)=1")),
  numbers("dough_shows", "Dough, as shown", gradeFormula("@size_now")),
  numbers(
    "pieces_now",
    "Pieces now",
    '=ARRAYFORMULA(@size_counts*IF(@by="pieces";@pieces_typed;ROUNDDOWN(ROUND(@pieces_typed*@sizes_times;6);0)))',
  ),
  helper("cost_of", "Size, for other sheets", '=ARRAYFORMULA(IF(@size_counts=1;@size_name&"";""))'),
  numbers("dough_each", "Dough of a piece, with losses", "=ARRAYFORMULA(@scaling/(1-@handling))"),
  helper(
    "size_ingredients",
    "Ingredients of a sold piece",
    '=ARRAYFORMULA(IF(@size_counts*(@priced_rows>0)*@weighable=1;@dough_each*@cost_per_weight/@sold_part;""))',
  ),
  numbers(
    "size_work",
    "Labour and the rest, a piece",
    "=ARRAYFORMULA(@dough_each*(@work_per_weight-@reduced_per_weight)+@work_piece)",
  ),
  helper(
    "size_cost",
    "Cost of a sold piece",
    '=ARRAYFORMULA(IF(LEN(@size_ingredients)=0;"";@size_ingredients+(@size_work+N(@packaging)*@packed_part)/@sold_part))',
  ),
  numbers("price_number", "Price, as numbers", asNumber("@size_price")),
  helper("size_margin", "Margin, for other sheets", `=ARRAYFORMULA(${marginWhere("LEN(@size_cost)=0")})`),
  helper("price_wanted", "Price for the margin", `=ARRAYFORMULA(${wantedWhere("LEN(@size_cost)=0")})`),
  numbers(
    "size_labour",
    "Labour of a sold piece",
    "=ARRAYFORMULA((@dough_each*@labour_per_weight+@labour_piece)/@sold_part)",
  ),
  numbers("size_sold", "Sold of a batch", "=ARRAYFORMULA(@pieces_now*@sold_part)"),
  numbers(
    "size_spent",
    "Ingredients and packaging, net",
    "=ARRAYFORMULA(@pieces_now*(@dough_each*(@cost_per_weight-@reduced_per_weight)+N(@packaging)*@packed_part))",
  ),
  helper(
    "size_contribution",
    "Contribution of a batch",
    '=ARRAYFORMULA(IF((LEN(@size_cost)=0)+(@price_number<=0)>0;"";@size_sold*@price_number/(1+@tax_part)-@size_spent))',
  ),
  outOf("price_wrong", "Price that is wrong", "size_price", "price", [0, 1_000_000]),
  numbers("size_over", "Dough typed over", typedOver(["scaled_shown", "dough_shown", "now_shown"])),
  numbers("money_over", "Money typed over", typedOver(["cost_each", "margin_shown", "wanted_shown"])),
  helper(
    "pieces_wrong",
    "Pieces that are wrong",
    '=ARRAYFORMULA(IF(@size_counts*((@pieces_typed<>ROUND(@pieces_typed;0))+(@pieces_typed>10^6)>0)=1;"row "&ROW(@size_pieces)&": whole pieces? ";""))',
  ),
  ...(isRound ? ROUND_WRONG : BAKED_WRONG),
  helper(
    "size_says",
    "All that is wrong",
    '=ARRAYFORMULA(@size_needs&@pieces_wrong&@weight_wrong&@price_wrong&IF(@size_over+@money_over>0;"clear what is typed over a formula in row "&ROW(@size_over)&". ";""))',
  ),
];

const BAKED_HELPERS: readonly ColumnModel[] = [
  numbers("weight_typed", "Baked weight, as numbers", asNumber("@size_weight")),
  numbers("loss_typed", "Bake loss, as numbers", asNumber("@size_loss")),
  numbers(
    "size_typed",
    "Is a size",
    '=ARRAYFORMULA((ISNUMBER(@size_pieces)+(@by<>"pieces")*(COUNT(@size_pieces)=0)*(IFERROR(LEN(@size_pieces);1)=0)>0)*ISNUMBER(@size_weight)*(ISNUMBER(@size_loss)+(IFERROR(LEN(@size_loss);1)=0)>0))',
  ),
  numbers(
    "size_counts",
    "Size counts",
    "=ARRAYFORMULA(@size_typed*(@pieces_typed>=0)*(@weight_typed>0)*(@loss_typed>=0)*(@loss_typed<=1/2)*(ROW(@size_typed)>MIN(ROW(@size_typed))))",
  ),
  numbers("scaling", "Scaling weight", "=ARRAYFORMULA(@size_counts*@weight_typed/(1-@size_counts*@loss_typed))"),
];

const BAKED_WRONG: readonly ColumnModel[] = [
  numbers(
    "size_filled",
    "Something is typed",
    "=ARRAYFORMULA((IFERROR(LEN(@size_pieces);1)+IFERROR(LEN(@size_weight);1)+IFERROR(LEN(@size_loss);1)>0)*1)",
  ),
  helper(
    "size_needs",
    "What is missing",
    '=ARRAYFORMULA(IF(@size_filled*(@size_counts=0)=0;"";"row "&ROW(@size_pieces)&": enter pieces, baked weight and bake loss up to 50 %. "))',
  ),
  helper(
    "weight_wrong",
    "Baked weight that is wrong",
    '=ARRAYFORMULA(IF(@size_counts*((@weight_typed<@size_least)+(@weight_typed>@size_most)>0)=1;"row "&ROW(@size_weight)&": baked weight? ";""))',
  ),
];

export const sizesHelpers = (spec: FormulaSheetSpec): readonly Table[] => [
  {
    table: "sizes_messages",
    left: MESSAGES.left,
    rows: ROWS,
    spare: SPARE,
    hidden: true,
    columns: [
      helper(
        "size_message",
        "What is wrong",
        '=ARRAYFORMULA(IF(LEN(@size_says)=0;"";IFERROR(@size_name&" ";"")&@size_says))',
      ),
      helper("size_message_row", "In row", '=ARRAYFORMULA(IF(LEN(@size_message)=0;"";ROW(@size_message)))'),
    ],
  },
  { table: "sizes_helpers", left: HELPERS, rows: ROWS, spare: SPARE, hidden: true, columns: sizeHelpers(spec) },
];
