import type { Bounds, ColumnModel, Formula } from "../../shared/sheet/model.ts";
import { fraction, within } from "./bounds.ts";

/** A column beside the page. */
export const helper = (name: string, head: string, formula: Formula, more: Partial<ColumnModel> = {}): ColumnModel => ({
  name,
  head,
  unit: "plain",
  role: "helper",
  formula,
  ...more,
});

/** One that holds a number in every row, so that others may calculate with it. */
export const numbers = (name: string, head: string, formula: Formula): ColumnModel =>
  helper(name, head, formula, { numbers: true });

/** A column that is typed. */
export const typedColumn = (
  name: string,
  head: string,
  unit: ColumnModel["unit"],
  more: Partial<ColumnModel> = {},
): ColumnModel => ({ name, head, unit, role: "input", ...more });

/** A column of the page that only shows what is worked out beside it: typed over, it costs nothing but itself. */
export const shownColumn = (
  name: string,
  head: string,
  unit: ColumnModel["unit"],
  formula: Formula,
  more: Partial<ColumnModel> = {},
): ColumnModel => ({ name, head, unit, role: "computed", formula, ...more });

/** A typed column, whose blanks and texts count as 0. */
export const asNumber = (column: string): string => `=ARRAYFORMULA(IF(ISNUMBER(${column});${column};0))`;

export const showWhere = (helper: string, when: string) => `=ARRAYFORMULA(IF(${when};${helper};""))`;
/** What is not blank beside the page. */
export const showFilled = (helper: string) => `=ARRAYFORMULA(IF(LEN(${helper})=0;"";${helper}))`;

/** Decimals as a person reads weights: of grams none from 100 up, one from 10 up, else two; of ounces two. */
export const gradeFormula = (weight: string): Formula => [
  { when: "oz", formula: `=ARRAYFORMULA(ROUND(${weight};2))` },
  { formula: `=ARRAYFORMULA(ROUND(${weight};IF(${weight}>=100;0;IF(${weight}>=10;1;2))))` },
];

/** Above 0 where something was typed over one of these columns: its first row shows an error then, and that cell alone holds something. */
export function typedOver(columns: readonly string[]): string {
  return `=ARRAYFORMULA(${columns.map((name) => `ISERROR(@${name}_top)*IFERROR(LEN(@${name});0)`).join("+")})`;
}

/** The column whose heading is said, on the scales' steps: the coarse one where it moves a weight little enough, else the fine one. */
export function onSteps(name: string, says: string, exact: string): ColumnModel[] {
  const stepped = (step: string) => `=ARRAYFORMULA(ROUND(ROUND(${exact}/${step};9);0)*${step})`;
  const [coarse, fine] = [`@${name}_coarse`, `@${name}_fine`];
  const near = (column: string) => `ABS(${column}-${exact})<=${exact}*@shift`;
  return [
    numbers(`${name}_coarse`, `${says}, coarse step`, stepped("@coarse")),
    numbers(`${name}_fine`, `${says}, fine step`, stepped("@fine")),
    numbers(
      `${name}_scale`,
      `${says}, on the scale`,
      `=ARRAYFORMULA(@counts*IF(${near(coarse)};${coarse};IF(${near(fine)};${fine};${exact})))`,
    ),
  ];
}

/** What is compared with another cell's text: without spaces around it; "" where it is an error. */
export const cleanText = (text: string): string => `IFERROR(TRIM(SUBSTITUTE(${text};UNICHAR(160);" "));"")`;

/** Says where a typed column holds what is neither blank nor a number within its bounds. */
export function outOf(name: string, head: string, column: string, what: string, bounds: Bounds): ColumnModel {
  const formula = within(bounds).map(({ when, least, most }) => ({
    ...(when === undefined ? {} : { when }),
    formula: `=ARRAYFORMULA(IF(IFERROR((LEN(@${column})=0)+ISNUMBER(@${column})*(@${column}>=${fraction(least)})*(@${column}<=${fraction(most)});0)>0;"";"row "&ROW(@${column})&": ${what}? "))`,
  }));
  return helper(name, head, formula);
}
