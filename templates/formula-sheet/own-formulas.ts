// Ingredients with a formula sheet of their own: what this sheet reads of those sheets, and what other sheets read of this one.
import type { ColumnModel, Formula, Table } from "../../shared/sheet/model.ts";
import { helper, numbers, typedColumn } from "./column-kinds.ts";
import { HELPERS } from "./columns.ts";
import { only, type Single, single } from "./singles.ts";
import { type FormulaSheetSpec, wholeOf } from "./spec.ts";

/** As many ingredients of a sheet as may have sheets of their own. */
export const OWN_ROWS = 6;
export const OWN_HEAD = "Has a sheet of its own";

const linked = (name: string, head: string): ColumnModel => typedColumn(name, head, "plain", { onSheet: true });

/**
 * A row for each: its name, what a kilogram of it costs, its minutes, and what goes into it. Gramwright fills them with
 * references to single cells of that sheet, so that no range leads in a circle.
 */
export const ownTable: Table = {
  table: "own",
  left: HELPERS,
  when: "cost",
  rows: OWN_ROWS,
  columns: [
    linked("own_name", OWN_HEAD),
    linked("own_price", "Its price per kg"),
    linked("own_minutes", "Its minutes per kg"),
    linked("own_parts", "What goes into it"),
  ],
};

const CALLED = "(@name_plain=TRANSPOSE(IFERROR(@own_name;0)))";
const lookup = (column: string) => `=ARRAYFORMULA(MMULT(${CALLED}*1;IFERROR(1*@${column};0)))`;

/** Beside each ingredient, where there is a sheet of ingredients. */
export const ownHelpers: readonly ColumnModel[] = [
  numbers("own_rows", "Sheets of this name", `=ARRAYFORMULA((LEN(@name_plain)>0)*MMULT(${CALLED}*1;ROW(@own_name)^0))`),
  numbers("own_cost", "Price by its own sheet", lookup("own_price")),
  numbers("own_time", "Minutes by its own sheet", lookup("own_minutes")),
];

/** What a row says of itself to the sheets that use this one: its name, and its part of the whole in hundred millionths. */
export const partText: ColumnModel = helper(
  "part_text",
  "Part, for other sheets",
  '=ARRAYFORMULA(IF(@counts*(@exact>0)=1;CHAR(9)&IFERROR(TRIM(SUBSTITUTE(@ingredient;CHAR(10);" "));"")&CHAR(9)&ROUND(@exact/@parts_base;0);""))',
);

/** 1 oz is 28.349523125 g (international yard and pound agreement, 1959). */
const KILOGRAM_OF = { oz: "28349523125/10^12", g: "1/1000" } as const;

/** Water boils off and leaves the rest stronger; what is left in the pan takes its share of everything along. */
export const asIngredientSingles = (spec: FormulaSheetSpec): readonly Single[] => {
  const whole = wholeOf(spec);
  const kilos = (unit: string) => `=${whole}*@yield_part*${unit}`;
  const rolled = spec.isRolled
    ? '&IF(@roll_part>0;CHAR(10)&CHAR(9)&@roll_in_name&CHAR(9)&ROUND(@roll_exact/@parts_base;0);"")'
    : "";
  return [
    single("Boiled off", "boil_part", "=MIN(MAX(N(@boil_off);0);9/10)"),
    single("Left over", "left_part", "=MIN(MAX(N(@left_over);0);9/10)"),
    single("Usable, as an ingredient", "yield_part", "=(1-@boil_part)*(1-@left_part)"),
    single("Usable kilograms", "kilos", [
      { when: "oz", formula: kilos(KILOGRAM_OF.oz) },
      { formula: kilos(KILOGRAM_OF.g) },
    ]),
    single("A hundred millionth", "parts_base", `=MAX(${whole};1/10^9)/10^8`),
    single("Price per kg, for other sheets", "as_price", AS_PRICE),
    single(
      "Minutes per kg, for other sheets",
      "as_minutes",
      "=IF(@weighable=1;(@labour_hours*60+N(@labour_pieces)/100*SUM(@pieces_now))/MAX(@kilos;1/10^9);0)",
    ),
    single("Title and losses, for other sheets", "parts_head", PARTS_HEAD),
    single("Parts, for other sheets", "as_parts", asParts(rolled)),
    ...only("cost", [
      single(
        "Sheets inside",
        "own_texts",
        '=IF(SUMPRODUCT(@own_rows)=0;"";CHAR(10)&TEXTJOIN(CHAR(10);TRUE();@own_parts))',
      ),
      single("Price of a sheet of its own, times", "own_factor", [
        { when: "oz", formula: "=45359237/10^8" },
        { formula: "=1" },
      ]),
      single("Hours of ingredients with a sheet", "own_hours", [
        { when: "oz", formula: `=SUMPRODUCT(@own_time;@exact)*${KILOGRAM_OF.oz}/60` },
        { formula: `=SUMPRODUCT(@own_time;@exact)*${KILOGRAM_OF.g}/60` },
      ]),
    ]),
  ];
};

const PARTS_HEAD = "=@title&CHAR(9)&CHAR(9)&CHAR(9)&ROUND(@boil_part*10^8;0)&CHAR(9)&ROUND(@left_part*10^8;0)&CHAR(10)";

/** A price that lacks one is none. */
const AS_PRICE = '=IF((COUNT(@cost_ingredients)=0)+(@unpriced_rows>0)>0;"";@cost_ingredients/MAX(@kilos;1/10^9))';

/** Its title and losses, then its rows, what is rolled in, and the sheets inside. */
function asParts(rolled: string): Formula {
  const parts = `IF(@weighable=0;"";@parts_head&TEXTJOIN(CHAR(10);TRUE();@part_text)${rolled}`;
  return [{ when: "cost", formula: `=${parts}&@own_texts)` }, { formula: `=${parts})` }];
}
