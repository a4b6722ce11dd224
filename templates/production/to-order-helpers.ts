// What the lists of the sheet to order are worked out from, beside the page.
import type { CellModel, Line } from "../../shared/sheet/model.ts";
import { headingLine } from "../blocks/line.ts";
import { linkName, plainText, textFormula } from "./shape.ts";

export type ToOrderShape = {
  readonly ingredients: readonly string[];
  /** How many of them, the last, are counted and not weighed. */
  readonly counted: number;
  readonly suppliers: readonly string[];
  /** Doughs and products that are wanted, and levains that are fed. */
  readonly products: number;
  readonly feeds: number;
  /** Rows that the ingredients of all formulas take below each other. */
  readonly stacked: number;
};

export const COLUMNS = 12;
export const HELPERS = COLUMNS + 1;
export const WEEK = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"] as const;

export const label = (at: number, text: string, align?: "right"): CellModel => ({
  at,
  role: "label",
  text,
  ...(align === undefined ? {} : { align }),
});
export const typed = (at: number, name: string, unit: CellModel["unit"], most = 1e8): CellModel => ({
  at,
  role: "input",
  name,
  unit: unit ?? "plain",
  ...(unit === "date" || unit === "time" || unit === "text" ? {} : { bounds: [0, most] as const }),
});
export const shown = (
  at: number,
  unit: CellModel["unit"],
  formula: string,
  role: CellModel["role"] = "computed",
): CellModel => ({
  at,
  role,
  unit: unit ?? "plain",
  formula,
});

/** What is counted stands below what is weighed. */
export const COUNTED_LINE = headingLine("Counted (each)", COLUMNS);
export function withCounted({ ingredients, counted }: ToOrderShape, lines: readonly Line[], between: Line): Line[] {
  const weighed = ingredients.length - counted;
  return counted === 0 ? [...lines] : [...lines.slice(0, weighed), between, ...lines.slice(weighed)];
}

/** Columns of the Ingredients sheet, by their headings. */
export function singles(): Line[] {
  const column = (heads: readonly string[]): CellModel["formula"] => [
    {
      when: "larder",
      formula: `=${heads.map((head) => `IFERROR(MATCH("${head}";INDEX(gramwright_larder;1;0);0);`).join("")}0${")".repeat(heads.length)}`,
    },
    { formula: "=0" },
  ];
  const cells = [
    { says: "Supplier, in column", name: "supplier_column", heads: ["Supplier"] },
    { says: "Also called, in column", name: "also_column", heads: ["Also called", "also called"] },
    { says: "Price, in column", name: "price_column", heads: ["Price"] },
    { says: "Price by weight, in column", name: "each_column", heads: ["Price per kg", "Price per lb"] },
    { says: "Price each, in column", name: "piece_column", heads: ["Price each"] },
    { says: "Minimum stock, in column", name: "minimum_column", heads: ["Minimum stock (kg)", "Minimum stock (lb)"] },
  ];
  return [
    { cells: cells.map(({ says }, at) => ({ at, role: "helper", unit: "text", formula: textFormula(says) })) },
    {
      cells: [
        ...cells.map(
          ({ name, heads }, at): CellModel => ({
            at,
            role: "helper",
            name,
            unit: "plain",
            formula: column(heads) ?? "=0",
          }),
        ),
        {
          at: 6,
          role: "helper",
          name: "weight_of_priced",
          unit: "plain",
          // 1 lb is 0.45359237 kg (international yard and pound agreement, 1959).
          formula: [
            {
              when: "larder&oz",
              formula: '=IF(IFERROR(MATCH("Price per lb";INDEX(gramwright_larder;1;0);0);0)>0;16;16*10^8/45359237)',
            },
            {
              when: "larder",
              formula: '=IF(IFERROR(MATCH("Price per lb";INDEX(gramwright_larder;1;0);0);0)>0;45359237/10^5;1000)',
            },
            { formula: "=1000" },
          ],
        },
      ],
    },
    {
      cells: [
        {
          at: 0,
          role: "helper",
          name: "needs_say",
          unit: "text",
          formula:
            '=IF(ISERROR(INDEX(@need_name;1;1));"The needs are not worked out: they need Gramwright, and a name for every ingredient. ";"")',
        },
        {
          at: 1,
          role: "helper",
          name: "rows_say",
          unit: "text",
          formula:
            '=IF(ISERROR(INDEX(@need_name;1;1));"";IF(ABS(SUM(@need_weight)-@needed_here)>1/100;"An ingredient that is needed has no row here: build this sheet again. ";""))',
        },
        { at: 2, role: "helper", name: "packs_say", unit: "text", formula: '=""' },
      ],
    },
  ];
}

const listOf = (column: string, at: number) =>
  `IF(@larder_row_${at}*@${column}_column=0;0;N(INDEX(gramwright_larder;@larder_row_${at};@${column}_column)))`;

/** Days that are ordered for, and those from the count to just before them. */
export const NEEDED = "([days]>=N(@order_from))";
export const USED = "([days]>=@counted_on)*([days]<@order_from)";
const countOn = (index: number, when: string): string => {
  const all = `SUMPRODUCT(${when}*([${linkName("count", index)}]))`;
  return when === NEEDED ? `=${all}` : `=IF(N(@counted_on)*N(@order_from)=0;0;${all})`;
};

/** Beside an ingredient: everything that its row shows. */
export function listHelpers(shape: ToOrderShape): Line[] {
  const { ingredients, counted } = shape;
  const heads = [
    "Name",
    "Row in Ingredients",
    "Supplier",
    "Need",
    "Used since",
    "Minimum",
    "Stock",
    "Missing",
    "Pack",
    "Packs",
    "Cost",
  ];
  const weighed = ingredients.length - counted;
  return [
    {
      cells: [
        { at: 0, role: "helper", unit: "text", formula: textFormula("Needed in these rows") },
        { at: 1, role: "helper", name: "needed_here", unit: "plain", formula: `=SUM(@need_1:@need_${weighed})` },
      ],
    },
    { cells: heads.map((text, at) => ({ at, role: "helper", unit: "text", formula: textFormula(text) })) },
    ...withCounted(
      shape,
      ingredients.map((_, index): Line => {
        const at = index + 1;
        const isCounted = index >= weighed;
        const [times, each] = isCounted ? ["1", "piece"] : ["@weight_of_priced", "each"];
        const cell = (place: number, name: string, formula: NonNullable<CellModel["formula"]>): CellModel => ({
          at: place,
          role: "helper",
          name: `${name}_${at}`,
          unit: "plain",
          formula,
        });
        const ofList = (names: string, weights: string) =>
          `=IF(ISERROR(INDEX(@${names};1;1));0;SUMPRODUCT((${plainText(`@${names}`)}=@plain_${at})*1;@${weights}))`;
        const either = (larder: string, without: string) => [{ when: "larder", formula: larder }, { formula: without }];
        return {
          cells: [
            cell(0, "plain", `=${plainText(`@ingredient_${at}`)}`),
            cell(
              1,
              "larder_row",
              either(
                `=ARRAYFORMULA(IFERROR(MATCH(1;(${plainText("INDEX(gramwright_larder;0;1)")}=@plain_${at})+ISNUMBER(FIND(";"&@plain_${at}&";";";"&SUBSTITUTE(LOWER(INDEX(gramwright_larder;0;MAX(1;@also_column)));"; ";";")&";"));0);0))`,
                "=0",
              ),
            ),
            {
              ...cell(
                2,
                "supplier",
                either(
                  `=IF(@larder_row_${at}*@supplier_column=0;"";INDEX(gramwright_larder;@larder_row_${at};@supplier_column)&"")`,
                  '=""',
                ),
              ),
              unit: "text",
            },
            cell(3, "need", isCounted ? countOn(index, NEEDED) : ofList("need_name", "need_weight")),
            cell(4, "used", isCounted ? countOn(index, USED) : ofList("used_name", "used_weight")),
            // A minimum is entered by weight there, and as a number of what is counted.
            cell(5, "minimum", either(`=${listOf("minimum", at)}*${times}`, `=N(@minimum_typed_${at})`)),
            cell(6, "stock", `=MAX(0;N(@counted_${at})-@used_${at}+N(@delivered_${at}))`),
            cell(
              7,
              "missing",
              `=IF(@need_${at}+@minimum_${at}-@stock_${at}>MAX(1;@need_${at})/10^9;@need_${at}+@minimum_${at}-@stock_${at};0)`,
            ),
            cell(
              8,
              "pack",
              either(
                `=IF(${listOf(each, at)}=0;0;${listOf("price", at)}/${listOf(each, at)}*${times})`,
                `=N(@pack_typed_${at})`,
              ),
            ),
            cell(9, "packs", `=IF(@pack_${at}=0;0;ROUNDUP(@missing_${at}/@pack_${at}*(1-1/10^9);0))`),
            cell(10, "cost", either(`=@packs_${at}*${listOf("price", at)}`, "=0")),
          ],
        };
      }),
      { cells: [] },
    ),
  ];
}
