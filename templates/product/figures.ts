// What a finished product works out beside its page, one figure a row: costs, margin, price and what other sheets ask of it.
import { message } from "../formula-sheet/checks.ts";
import { CONTRIBUTION, marginWhere, SOLD, WORK, wantedWhere } from "../formula-sheet/costs.ts";
import { LARDER_SINGLES, type Single, single } from "../formula-sheet/singles.ts";
import { outsideSingles } from "../formula-sheet/stray-cells.ts";

/** Stands on every finished product, and on no other sheet. */
export const MARK = "Built as finished product";

/** As formula sheets say it; what is counted has no weight and stands in no list. */
const AS_PARTS =
  '=IF(@weighable=0;"";@title&CHAR(9)&CHAR(9)&CHAR(9)&0&CHAR(9)&0&CHAR(10)&TEXTJOIN(CHAR(10);TRUE();@part_text)&IF(SUM(@own_rows)=0;"";CHAR(10)&TEXTJOIN(CHAR(10);TRUE();@own_parts)))';

const HOURS = single("Hours of the batch", "labour_hours", "=N(@labour_mix)/60*@mixes_some+@own_hours");

export const figures: readonly Single[] = [
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
