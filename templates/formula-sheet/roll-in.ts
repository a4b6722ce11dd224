// Fat that is rolled into a dough: a share of the base dough, of the finished dough or of the flour, in blocks and layers.
import type { Block, Formula } from "../../shared/sheet/model.ts";
import { headingLine, label } from "../blocks/line.ts";
import { AT, figureOf, figures, input, weightOf } from "./block-lines.ts";
import { RIGHT } from "./columns.ts";
import { only, type Single, single } from "./singles.ts";

const FOLDS = ["fold_1", "fold_2", "fold_3"];

export const rollInBlock: Block = {
  block: "roll-in",
  left: RIGHT,
  lines: [
    headingLine("Roll-in", 6),
    input("Fat to roll in", "roll_in_name", "text", { wide: 3 }),
    // Published school and trade formulas: 32.8 % (eoibakery.com.au), 28 % (sweetnapa), 26.0 % (bakefromscratch).
    input(
      "Share",
      "roll_in_share",
      "short rate",
      { bounds: [0, 2], asks: "Share of fat to roll in" },
      "25 to 33 % of base dough",
    ),
    input(
      "Share of",
      "roll_in_of",
      "text",
      { value: "base", choices: ["base", "finished", "flour"] },
      "base or finished dough",
    ),
    {
      ...input("Its price per {priced}", "roll_price_typed", "money", { bounds: [0, 1_000_000], onSheet: true }),
      when: "!cost",
    },
    input("Number of dough blocks", "blocks", "count", { bounds: [1, 1000] }),
    {
      cells: [
        label("Folds (3 single, 4 double)"),
        ...FOLDS.map((name, place) => ({
          at: AT + place,
          role: "input" as const,
          name,
          unit: "count" as const,
          bounds: [1, 9] as const,
          asks: `Fold ${place + 1} (3 single, 4 double)`,
        })),
      ],
    },
    figures("Fat to roll in ({weight})", weightOf("roll_in")),
    figures("as a share of all flour", figureOf("roll_in_of_flour", "short rate")),
    figures("Base dough ({weight})", { ...weightOf("dough"), name: "base_dough_shown" }),
    figures("Per block: dough, fat ({weight})", weightOf("block_dough"), weightOf("block_fat")),
    figures("Fat layers", figureOf("layers", "count")),
    figures("Cost of the fat", figureOf("roll_cost_known", "money")),
  ],
};

const PART =
  '=IF(N(@roll_in_share)<=0;0;IF(@roll_in_of="flour";@roll_in_share*@flour_base/MAX(SUM(@share_typed);1/10^9);IF(@roll_in_of="finished";@roll_in_share/(1-MIN(@roll_in_share;9/10));@roll_in_share)))';

const perBlock = (weight: string) => `=IF((COUNT(${weight})=0)+(N(@blocks)<=0)>0;"";${weight}/@blocks)`;
/** 16 oz are a pound. */
const COST: Formula = [
  { when: "oz", formula: "=IF(@weighable=1;@roll_exact*N(@roll_price)/16;0)" },
  { formula: "=IF(@weighable=1;@roll_exact*N(@roll_price)/1000;0)" },
];

const CALLED =
  '(IFERROR(TRIM(LOWER(SUBSTITUTE(INDEX(gramwright_labels;0;@larder_names);UNICHAR(160);" ")));"")=@roll_plain)';
const ALSO =
  'ISNUMBER(FIND(";"&@roll_plain&";";";"&SUBSTITUTE(LOWER(INDEX(gramwright_labels;0;@larder_also));"; ";";")&";"))';
const ROWS = "ROW(INDEX(gramwright_labels;0;1))";
const PRICE =
  "=ARRAYFORMULA(SUM((ROW(INDEX(gramwright_prices;0;1))=@roll_row)*IFERROR(1*INDEX(gramwright_prices;0;@larder_price);0)))";

export const ROLL_SINGLES: readonly Single[] = [
  single("Fat, of the base dough", "roll_part", PART),
  single(
    "What its share is of, is known",
    "roll_known",
    '=IFERROR((@roll_in_of="base")+(@roll_in_of="finished")+(@roll_in_of="flour");0)',
  ),
  single(
    "Fat that does not fit",
    "roll_says",
    '=IF(N(@roll_in_share)=0;"";IF(@roll_known=0;"Roll-in: choose what its share is of. ";IF((@roll_in_of="finished")*(@roll_in_share>9/10)=1;"The fat is at most 90 % of the finished dough. ";"")))',
  ),
  single("Dough with its fat", "dough_all", "=@dough_exact*(1+@roll_part)"),
  single("Dough with its fat, or blank", "dough_in_all", '=IF(@weighable=1;@dough_all;"")'),
  single("Fat, exact", "roll_exact", "=@dough_exact*@roll_part"),
  single("Fat to roll in", "roll_in", '=IF((@weighable=1)*(@roll_part>0)=1;@roll_exact;"")'),
  single(
    "of all flour",
    "roll_in_of_flour",
    '=IF((COUNT(@roll_in)=0)+(@flour_all=0)>0;"";@roll_exact/(@flour_all*@per_percent))',
  ),
  single("Dough of a block", "block_dough", perBlock("@dough")),
  single("Fat of a block", "block_fat", perBlock("@roll_in")),
  single(
    "Fat layers",
    "layers",
    `=IF(COUNT(@fold_1:@fold_3)=0;"";${FOLDS.map((name) => `IF(N(@${name})>0;@${name};1)`).join("*")})`,
  ),
  single("Cost of the fat", "roll_cost", COST),
  single("Fat has no price", "roll_unpriced", "=(@roll_part>0)*(N(@roll_price)<=0)*1"),
  single(
    "Cost of the fat, or what is missing",
    "roll_cost_known",
    '=IF(@roll_part<=0;"";IF(@roll_unpriced=1;"no price";@roll_cost))',
  ),
  ...only("!cost", [single("Price of the fat", "roll_price", "=N(@roll_price_typed)")]),
  ...only("cost", [
    single(
      "Name of the fat, plain",
      "roll_plain",
      '=IFERROR(TRIM(LOWER(SUBSTITUTE(@roll_in_name;UNICHAR(160);" ")));"")',
    ),
    single("Rows of this name", "roll_rows", `=ARRAYFORMULA(SUM(${CALLED}*1))`),
    single("Row of this name", "roll_called", `=ARRAYFORMULA(SUM(${CALLED}*${ROWS}))`),
    single("Rows also called so", "roll_also", `=ARRAYFORMULA(SUM(${ALSO}*1))`),
    single("Row also called so", "roll_row_also", `=ARRAYFORMULA(SUM(${ALSO}*${ROWS}))`),
    single(
      "Row in Ingredients",
      "roll_row",
      "=IF(LEN(@roll_plain)=0;0;IF(@roll_rows=1;@roll_called;IF((@roll_rows=0)*(@roll_also=1)=1;@roll_row_also;0)))",
    ),
    single("Price in Ingredients", "roll_there", PRICE),
    single("Price of the fat", "roll_price", "=IF(@roll_row=0;0;@roll_there*@larder_factor)"),
  ]),
];
