// What the table of ingredients is worked out from, beside the page.
import type { ColumnModel, Table } from "../../shared/sheet/model.ts";
import { gradeFormula, helper, numbers, onSteps, showWhere, typedOver } from "./column-kinds.ts";
import { HELPERS, MESSAGES } from "./columns.ts";
import { type NotedRow, notedColumns } from "./note-rows.ts";
import { longNotes } from "./notes.ts";
import { partText } from "./own-formulas.ts";
import { priceHelpers } from "./prices.ts";
import { stageHelpers } from "./stages.ts";
import { IS_STARTER, IS_TYPE } from "./words.ts";

/** What a formula sheet's table of ingredients shows. */
export type IngredientsSpec = {
  /** Usual for this product; decides what the notes call unusual. */
  readonly style: string;
  /** Two columns in the place of the weight of a mix. */
  readonly stage?: "preferment" | "levain";
  /** Prices come from the sheet of ingredients; otherwise they are typed. */
  readonly isPriced: boolean;
  /** What the notes see beside the rows. */
  readonly noted?: NotedRow;
  /** More of anything than so many times the flour is a slip. */
  readonly most: number;
};

/** As many rows as an order has, and two to spare. */
export const ROWS = 8;
export const SPARE = 2;

export const EACH = "@counts=1";

export const conditionOf = ({ stage, isPriced }: IngredientsSpec): string =>
  `${stage === undefined ? "!" : ""}preferment&${isPriced ? "" : "!"}cost`;

const SPACES = ["UNICHAR(160)", "UNICHAR(8239)", "UNICHAR(8201)", "UNICHAR(8203)"];
const without = (text: string, signs: readonly string[]) =>
  signs.reduce((inner, sign) => `SUBSTITUTE(${inner};${sign};"")`, text);

/** So many digits that end where the whole percents of a type end, or what else they are. */
const percentOfDigits = (digits: number, otherwise: string): string =>
  `IFERROR(VALUE(MID(@type_signs;@percent_ends-${digits};${digits}));${otherwise})`;

/** Types as they are compared: without spaces and brackets; a preferment's word apart from its hydration. */
const typeHelpers: readonly ColumnModel[] = [
  helper(
    "type_spaced",
    "Type without odd spaces",
    `=ARRAYFORMULA(IFERROR(${without("LOWER(@kind)", SPACES)};"error"))`,
  ),
  helper(
    "type_whole",
    "Type without brackets",
    `=ARRAYFORMULA(${without("@type_spaced", ['" "', "CHAR(9)", '"("', '")"', '"hydration"'])})`,
  ),
  // One digit after a point or a comma is a tenth in every country. It is read on its own, and so is what stands before the sign.
  helper(
    "type_signs",
    "Type without points and commas",
    '=ARRAYFORMULA(SUBSTITUTE(SUBSTITUTE(@type_whole;",";"_");".";"_"))',
  ),
  numbers(
    "percent_ends",
    "Where whole percents end",
    '=ARRAYFORMULA(IFERROR(FIND("%";@type_whole)-2*ISNUMBER(FIND(MID(@type_whole;FIND("%";@type_whole)-2;1);".,"))*ISNUMBER(VALUE(MID(@type_whole;FIND("%";@type_whole)-3;1)));0))',
  ),
  helper(
    "percent_tenth",
    "Sign and tenth after it",
    '=ARRAYFORMULA(IF(@percent_ends>0;IFERROR(MID(@type_whole;@percent_ends;FIND("%";@type_whole)-@percent_ends);"");""))',
  ),
  numbers(
    "type_percent",
    "Whole percents in the type",
    `=ARRAYFORMULA(${percentOfDigits(3, percentOfDigits(2, percentOfDigits(1, "0")))})`,
  ),
  numbers(
    "type_hydration",
    "Hydration in the type (%)",
    "=ARRAYFORMULA(@type_percent+IFERROR(VALUE(RIGHT(@percent_tenth;1))/10;0))",
  ),
  // No type ends in s: "yeasts" is yeast. A space that cannot be in it any more marks its end. A comma parts the word from its hydration.
  helper(
    "type_word",
    "Type alone",
    '=ARRAYFORMULA(SUBSTITUTE(SUBSTITUTE(SUBSTITUTE(SUBSTITUTE(@type_whole;@type_percent&@percent_tenth&"%";"");",";"")&UNICHAR(160);"s"&UNICHAR(160);"");UNICHAR(160);""))',
  ),
  numbers("is_type", "Is a type", IS_TYPE),
  numbers("is_starter", "Is a preferment", IS_STARTER),
  numbers(
    "flour_part",
    "Flour in it",
    '=ARRAYFORMULA(IF(@is_starter*(@type_hydration>0)*(@type_hydration<=500)=1;100/(100+@type_hydration);@is_type*(@type_word="flour")))',
  ),
];

/** What of the column is a number in a row between the headings and the total; then weights, exact and as the scales show them. */
const weightHelpers: readonly ColumnModel[] = [
  numbers("typed", "Number typed", "=ARRAYFORMULA(IF(ISNUMBER(@percent);@percent;0))"),
  numbers(
    "counts",
    "Row counts",
    "=ARRAYFORMULA(IF(ISNUMBER(@percent)*(ROW(@percent)>MIN(ROW(@percent)))*(ROW(@percent)<MAX(ROW(@percent)))*(@typed>=0)=1;1;0))",
  ),
  helper("name_counted", "Name, if the row counts", showWhere("@ingredient", EACH)),
  helper("kind_counted", "Type, if the row counts", showWhere("@kind", EACH)),
  numbers("share_typed", "Percentage that counts", "=ARRAYFORMULA(@counts*@typed)"),
  helper("share", "Of all flour", '=ARRAYFORMULA(IF(@counts*(@flour_all>0)=1;@share_typed/MAX(@flour_all;1/10^9);""))'),
  numbers("exact", "Weight, exact", "=ARRAYFORMULA(@share_typed*@per_percent)"),
  helper("grams", "Weight, for other sheets", '=ARRAYFORMULA(IF(@counts*@weighable=1;@exact;""))'),
  numbers("grams_shown", "Weight, as shown", gradeFormula("@exact")),
  numbers("whole_part", "Part of the whole", "=ARRAYFORMULA(@share_typed/MAX(SUM(@share_typed);1/10^9))"),
  numbers("mix_exact", "Per mix, exact", "=ARRAYFORMULA(@exact/@mixes_some)"),
  ...onSteps("mix", "Per mix", "@mix_exact"),
  partText,
  numbers("mix_told", "Per mix may be shown", "=ARRAYFORMULA(@counts*@weighable)"),
];

/** What is wrong in a row, where and what. */
const messageHelpers = (
  over: readonly [readonly string[], readonly string[]],
  most: number,
): readonly ColumnModel[] => [
  helper(
    "number_wrong",
    "No number",
    '=ARRAYFORMULA(IF(IFERROR(LEN(@percent);1)=0;IF(@named*(@type_length>0)=1;": no percentage. ";"");IFERROR(" “"&@percent&"”: enter a number from 0. ";": an error. ")))',
  ),
  helper(
    "number_says",
    "Number that is wrong",
    '=ARRAYFORMULA(IF((@counts=1)+(LEN(@number_wrong)=0)>0;"";@percent_cell&@number_wrong))',
  ),
  helper("percent_cell", "Its cell", "=ARRAYFORMULA(@percent_letter&ROW(@percent))"),
  numbers(
    "named",
    "Row has a name",
    "=ARRAYFORMULA((IFERROR(LEN(@ingredient);1)>0)*(ROW(@percent)<MAX(ROW(@percent))))",
  ),
  numbers("type_length", "Letters of the type", "=ARRAYFORMULA(LEN(@type_whole))"),
  helper(
    "type_says",
    "Type that is wrong",
    '=ARRAYFORMULA(IF((@counts=0)+@is_type+(@flour_part>0)>0;"";@type_letter&ROW(@kind)&IF(@type_length=0;": choose a type. ";IFERROR(": “"&@kind&"” is no type. ";": an error. "))))',
  ),
  helper(
    "high_says",
    "Far too much",
    `=ARRAYFORMULA(IF((@flour_part=0)*(@share_typed>${most}*@percent_base)=1;@percent_cell&": "&ROUND(100*@share_typed/@percent_base;1)&" % of the flour? ";""))`,
  ),
  helper(
    "low_says",
    "Far too little",
    '=ARRAYFORMULA(IF((@percent_base=100)*@counts*(@share_typed>0)*(@share_typed<@least_typed)=1;@percent_cell&": "&ROUND(@share_typed;4)&" beside flour of 100? ";""))',
  ),
  numbers(
    "least_typed",
    "Least beside 100",
    '=ARRAYFORMULA(IF(@type_word="water";5;IF(@is_type*(@type_word<>"flour")*(@type_word<>"salt")*(@type_word<>"yeast")*(@type_word<>"other")*(@type_word<>"ice")=1;1/5;0)))',
  ),
  numbers("over_left", "Typed over, left", typedOver(over[0])),
  numbers("over_right", "Typed over, right", typedOver(over[1])),
  helper(
    "over_says",
    "Typed over, in words",
    '=ARRAYFORMULA(IF(@over_left+@over_right>0;"clear what is typed over a formula in row "&ROW(@counts)&". ";""))',
  ),
  helper("row_says", "All of it", "=ARRAYFORMULA(@number_says&@type_says&@high_says&@low_says&@price_says&@over_says)"),
];

const MESSAGE: readonly ColumnModel[] = [
  helper(
    "message",
    "What is wrong",
    '=ARRAYFORMULA(IF(LEN(@row_says)=0;"";IF(@named=1;IFERROR(@ingredient&" ";"");"")&@row_says))',
  ),
  helper("message_row", "In row", '=ARRAYFORMULA(IF(LEN(@message)=0;"";ROW(@message)))'),
];

/** Beside the page: all that the columns show is worked out here, from what is typed. */
export function ingredientsHelpers(spec: IngredientsSpec): readonly Table[] {
  const when = conditionOf(spec);
  const staged = spec.stage !== undefined ? ["pre_shown", "final_shown"] : ["per_mix"];
  const rest = ["of_whole", ...(spec.isPriced ? ["price_shown"] : []), "cost_shown"];
  return [
    { table: "formula_messages", left: MESSAGES.left, when, rows: ROWS, spare: SPARE, hidden: true, columns: MESSAGE },
    {
      table: "formula_helpers",
      left: HELPERS,
      when,
      rows: ROWS,
      spare: SPARE,
      hidden: true,
      columns: [
        ...typeHelpers,
        ...weightHelpers,
        ...(spec.stage === undefined ? [] : stageHelpers),
        ...(spec.noted === undefined ? [] : notedColumns(spec.noted)),
        ...priceHelpers(spec.isPriced),
        ...messageHelpers([["weight", ...staged], rest], spec.most),
        helper("advice", "Notes", adviceFormula(spec)),
        longNotes(spec.stage !== undefined),
      ],
    },
  ];
}

/** One call for the whole column. It reads what was typed and weights worked out here, and no other call. */
function adviceFormula({ style, isPriced, noted }: IngredientsSpec): string {
  const larder = isPriced ? "gramwright_labels" : "";
  const rows = noted !== undefined ? "@noted_name;@noted_kind;@noted_share" : "@name_counted;@kind_counted;@share";
  return `=BAKE_REVIEW(${rows};"${style}";${larder};@mix_exact;{@coarse;@fine};"{weight}")`;
}
