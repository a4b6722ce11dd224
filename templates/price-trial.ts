// What if: another price of one ingredient, of all that a supplier sells, or other wages.
import type { Block } from "../shared/sheet/model.ts";
import { computedLine, headingLine, inputLine } from "./blocks/line.ts";
import { LIST_COLUMNS, lettersOf, listColumn, sizedColumn } from "./formula-list.ts";

/** A column of the ingredient sheet, wherever it stands there. */
const larder = (head: string) => `INDEX(gramwright_larder;0;MATCH("${head}";INDEX(gramwright_larder;1;0);0))`;
/** A column of the formula list, by its place. */
export const placeOf = (name: string): number => LIST_COLUMNS.findIndex((column) => column.name === name) + 1;
export const list = (of: string) => `INDEX(gramwright_formulas;0;${placeOf(listColumn(of))})`;
export const plain = (text: string) => `IFERROR(TRIM(LOWER(SUBSTITUTE(${text};UNICHAR(160);" ")));"")`;
/** Compared whole: a sign such as * is no pattern. */
const isTried = (head: string) => `(${plain(larder(head))}=${plain("@tried")})`;
const INGREDIENTS = larder("ingredient");
const TRIED_ROW = `=IF(LEN(@tried)=0;0;IFERROR(ARRAYFORMULA(IF(SUM(${isTried("ingredient")}*1)=1;SUM(${isTried("ingredient")}*(ROW(${INGREDIENTS})-MIN(ROW(${INGREDIENTS}))+1));0));0))`;
const ofTried = (head: string) => `=IF(@tried_row=0;"";IFERROR(INDEX(${larder(head)};@tried_row;1);""))`;
export const texts = (of: string) => `INDEX(gramwright_formulas;0;${placeOf(sizedColumn(of))})`;

/** Columns of the page. */
export const WIDTH = 16;

/** A formula may have more sizes now than there is room for. */
export const trialBlock = (sizes: number): Block => ({
  block: "trial",
  left: 0,
  when: "products",
  lines: [
    headingLine("What if", WIDTH),
    inputLine("Ingredient or supplier", "tried", "text", {}, 2),
    computedLine("Its pack", "tried_pack", "text", ofTried("pack"), {}, 2),
    computedLine("Pack price now", "tried_now", "money", ofTried("price"), {}, 2),
    inputLine("New price of a pack", "tried_price", "money", {}, 2),
    inputLine("or change of all its prices", "tried_change", "short rate", {}, 2),
    inputLine("Change of wages", "labour_change", "short rate", {}, 2),
    {
      cells: [
        {
          at: 0,
          role: "check",
          name: "check",
          unit: "text",
          formula: `=IF(COUNT(@keys_table)>ROWS(@key)-2;"More products than rows: build this sheet again to see "&COUNT(@keys_table)-ROWS(@key)+2&" more. ";"")&IF(IFERROR(MAX(ARRAYFORMULA(LEN(${texts("size_scaled")})));0)>${lettersOf("size_scaled") * (sizes + 1)};"More sizes than there is room for: build this sheet again. ";"")&@tried_says&IF(ISERROR(INDEX(@changes;1;1));"Still calculating, or enter an ingredient or a supplier that stands in Ingredients. ";"")`,
        },
      ],
    },
  ],
});

const TRIED_FAULTS = [
  ["LEN(@tried)=0", "Enter an ingredient or a supplier."],
  ["COUNT(@tried_price)*COUNT(@tried_change)=1", "Enter a new price or a change, not both."],
  [
    "(LEN(@tried)>0)*COUNT(@tried_price)*(N(@tried_now)<=0)=1",
    "A new price needs an ingredient with a price now: enter its name as it stands in Ingredients.",
  ],
] as const;

/** What follows from it, beside the page. */
export const trialFigures = (left: number): Block => ({
  block: "figures",
  left,
  when: "products",
  lines: [
    { cells: [] },
    inputLine("Whose eggs packs count", "country", "text", { choices: ["US", "UK", "EU", "AU"] }),
    computedLine("Row of what is tried", "tried_row", "plain", TRIED_ROW),
    computedLine(
      "Times",
      "tried_times",
      "plain",
      '=IF(COUNT(@tried_price)=1;IF(N(@tried_now)>0;@tried_price/@tried_now;"");IF(COUNT(@tried_change)=1;1+@tried_change;""))',
    ),
    computedLine("Tried", "is_tried_price", "plain", "=IF((LEN(@tried)>0)*(COUNT(@tried_times)=1)=1;1;0)"),
    computedLine("Anything tried", "is_tried", "plain", "=IF(@is_tried_price+COUNT(@labour_change)>0;1;0)"),
    computedLine(
      "What is wrong with it",
      "tried_says",
      "text",
      `=IF(COUNT(@tried_price)+COUNT(@tried_change)=0;"";${TRIED_FAULTS.map(([when, says]) => `IF(${when};"${says} ";"")`).join("&")})`,
    ),
  ],
});
