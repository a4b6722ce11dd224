import { KIND_WORDS, PREFERMENT_WORDS } from "../../shared/larder/kind-words.ts";
import type { ColumnModel } from "../../shared/sheet/model.ts";
import { DUST, type Figure, plainSteps, STEP_FIGURES } from "./plain-steps.ts";

// Share of flour and weight of every row in the sheet's own sums, as fillIn() of shared/formula/fill-in.ts works them out. What is
// worked out on the side is mostly single figures: of columns that wait for columns a spreadsheet calculates only so many.

/** What the rows of a table are told by: the column of percentages, and that of weights where there is one. */
export type Told = {
  readonly percent: string;
  readonly weighed?: string;
  /** Above 0 where a row has an amount, or will have. */
  readonly there: string;
};

const quotedList = (words: readonly string[]) => `{${words.map((word) => `"${word}"`).join(";")}}`;
/** A plural s is read past, as singularName() of shared/base/words.ts does. */
const withPlurals = (words: readonly string[]) => quotedList(words.flatMap((word) => [word, `${word}s`]));

/** Flour rows may miss 100 % by half a point; see shared/formula/percents.ts. */
const NEAR = `5/1000*${DUST}`;

export const isKind = (...words: readonly string[]) =>
  words.flatMap((word) => [`(@kind="${word}")`, `(@kind="${word}s")`]).join("+");

/** Flour as a share of the row's weight: "levain 100%" is half flour. Blank where the kind is not known. */
function flourIn({ there }: Told): string {
  const space = 'FIND(" ";@kind&" ")';
  const isStarter = `ISNUMBER(MATCH(LEFT(@kind;${space}-1);${withPlurals(PREFERMENT_WORDS)};0))*(RIGHT(@kind;1)="%")`;
  const hydration = `IFERROR(VALUE("0"&MID(@kind;${space}+1;20));9)`;
  const starter = `IF(${isStarter}*(${hydration}<=5)=1;1/(1+${hydration});"")`;
  const word = `IF(ISNUMBER(MATCH(@kind;${withPlurals(KIND_WORDS)};0));(${isKind("flour")}>0)*1;${starter})`;
  return `=ARRAYFORMULA(IF(${there}=0;"";IF(LEN(@kind)=0;"";IF(ISNUMBER(@kind);IF((@kind>=0)*(@kind<=1)=1;@kind;"");${word}))))`;
}

const weighedOnly = ({ weighed }: Told, of: (weighed: string) => string, otherwise = "") =>
  weighed === undefined ? otherwise : of(weighed);
const lengthOf = (told: Told) => `LEN(${told.percent})${weighedOnly(told, (weighed) => `+LEN(${weighed})`)}`;
const countOf = (told: Told) => `COUNT(${told.percent})${weighedOnly(told, (weighed) => `+COUNT(${weighed})`)}`;

/** A row's percentage as a number in every row: a computed one is "" where it is blank. */
const percentOf = ({ percent }: Told) => (percent === "@percent" ? percent : `IF(LEN(${percent})=0;0;${percent})`);
/** A row's weight before everything is multiplied to the amount: 0 where nothing is typed. */
const before = (told: Told) =>
  weighedOnly(
    told,
    (weighed) => `(${weighed}+(LEN(${weighed})=0)*${percentOf(told)}*@per_percent)`,
    `${percentOf(told)}*@per_percent`,
  );
const filledRows = (told: Told) => `(${lengthOf(told)}>0)*COUNT(@times)`;

/** The most a row may be where the flour is 1, and the least salt where it is 100; see misfits() in shared/formula/percents.ts. */
const MOST = `IF(${isKind("salt")}>0;1/4;IF(${isKind("yeast")}>0;15/100;IF(${isKind("water", "fat")}>0;3;IF(${isKind("sugar", "egg")}+(@kind="dairy")>0;5;40))))`;

/** What is wrong with a row, in few words; the remark beside the row shows it. */
function rowSays(told: Told): string {
  const { percent } = told;
  const both = (of: (column: string) => string) =>
    `${of(percent)}*1${weighedOnly(told, (weighed) => `+${of(weighed)}`)}`;
  const gap = weighedOnly(
    told,
    (weighed) =>
      `IF(LEN(${percent})*LEN(${weighed})*COUNT(@per_percent)=0;"";IF(ABS(${weighed}-${percent}*N(@per_percent))>IF(${percent}*N(@per_percent)>N(@flour_base)/10;5/1000*${percent}*N(@per_percent);5/10000*N(@flour_base))*${DUST};"percentage and weight say two things: clear one";""))`,
    '""',
  );
  return [
    `=ARRAYFORMULA(IF(${lengthOf(told)}=0;"";IF(LEN(@kind)=0;"which kind is it?";IF(LEN(@flour_in)=0;"kind: choose from its list";`,
    `IF(${both((column) => `ISNUMBER(${column})`)}<${both((column) => `(LEN(${column})>0)`)};"write a number";`,
    `IF(${both((column) => `(${column}<0)`)}>0;"cannot be below 0";IF(COUNT(@percent_base)=0;"";`,
    `IF((@percent_base<50)*(@flour_in<1)*(${percent}>${MOST})=1;${percent}&" beside flour of 1: "&${percent}&" % meant?";`,
    `IF((@percent_base>50)*(${isKind("salt")}>0)*(${percent}>0)*(${percent}<1/10)=1;${percent}&" beside flour of 100: "&100*${percent}&" meant?";${gap})))))))))`,
  ].join("");
}

/** What the percentages are divided by: the flour they refer to is 1 or 100, with or without what is inside starters. */
function percentBase({ percent }: Told): string {
  const gap = (sum: string, whole: number) => `ABS(${sum}${whole === 1 ? "" : `/${whole}`}-1)`;
  const inside = "(@flour_typed+@flour_inside)";
  const fitted = (whole: number, otherwise: string) =>
    `IF(MIN(${gap("@flour_typed", whole)};${gap(inside, whole)})<=${NEAR};IF(${gap("@flour_typed", whole)}<=${gap(inside, whole)};@flour_typed;${inside});${otherwise})`;
  return [
    `=IF(COUNT(${percent})=0;1;IF(@flours_typed=0;IF(@flour_inside>0;"";1);`,
    `IF(@flours_weighed>0;IF(@flour_typed<=1005/1000;1;IF(@flour_typed<100;100;""));${fitted(1, fitted(100, '""'))})))`,
  ].join("");
}

/** The flour as the typed weights tell it; blank where none does. */
function anchor(told: Told): string {
  const { percent } = told;
  return weighedOnly(
    told,
    (weighed) => {
      const flours = `SUMIFS(${weighed};@flour_in;1;${percent};">=0")`;
      const both = `SUMIFS(${percent};@flour_in;1;${weighed};">=0")`;
      const most = `MAXIFS(${weighed};${percent};">0")`;
      const place = `MATCH(${most};ARRAYFORMULA(IF(${percent}>0;${weighed};""));0)`;
      return [
        `=IF(COUNT(${weighed})*COUNT(@percent_base)=0;"";IF(@flours_weighed>0;`,
        `IF(@flour_typed>=@percent_base;"";(SUMIF(@flour_in;1;${weighed})-${flours})/(1-@flour_typed/@percent_base));`,
        `IF(${both}>0;${flours}/${both}*@percent_base;IF(${most}>0;${most}/INDEX(${percent};${place};1)*@percent_base;""))))`,
      ].join("");
    },
    '=""',
  );
}

/** The flour the percentages refer to: the anchor, or what the amount leaves for the rows in percent. */
function flourBase(told: Told): string {
  const left = weighedOnly(told, (weighed) => `(@amount-SUM(${weighed}))`, "@amount");
  return [
    '=IF(COUNT(@anchor)>0;@anchor;IF(COUNT(@amount)*COUNT(@percent_base)=0;"";IF(@amount<=0;"";IF(@of="flour";@amount;',
    `IF((${left}>0)*(@percent_alone>1/1000000000)=1;${left}/@percent_alone*@percent_base;"")))))`,
  ].join("");
}

function tableSays(told: Told): string {
  const { percent } = told;
  const small = `(@percent_base>50)*(MAXIFS(${percent};@flour_in;"<1")<1)*(ARRAYFORMULA(SUM(IF(LEN(@flour_in)*LEN(${percent})=0;0;(@flour_in<1)*(${isKind("yeast")}=0)*(${percent}>0))))>0)=1`;
  return [
    `=IF(ARRAYFORMULA(SUM(${lengthOf(told)}))=0;"";IF(ARRAYFORMULA(SUM(LEN(@row_says)))>0;"A row cannot be read: see Remark.";`,
    `IF(COUNT(@percent_base)=0;"The flour rows make "&ROUND(@flour_typed;4)&"; all flours together make 100 % (or 100).";`,
    `IF(${small};"The flour is typed as 100 and the rest as shares of 1: write all one way.";`,
    'IF(COUNT(@per_percent)=0;"Say how much: an amount above, larger than the weights that are typed.";',
    'IF(@flour_before>0;"";"There is no flour to refer to."))))))',
  ].join("");
}

export function rowFigures(told: Told): Figure[] {
  const { percent } = told;
  const some = (formula: string) => `=IF(${countOf(told)}=0;0;${formula})`;
  const known = (formula: string) => `=IF(COUNT(@per_percent)=0;"";${formula})`;
  const alone = weighedOnly(told, (weighed) => `-SUMIFS(${percent};${weighed};">=0")`);
  return [
    { says: "Flour rows, typed", name: "flour_typed", formula: `=SUMIF(@flour_in;1;${percent})` },
    {
      says: "Flour in starters, typed",
      name: "flour_inside",
      formula: some(`SUMPRODUCT(${percent};@flour_in)-@flour_typed`),
    },
    {
      says: "Flours in percent",
      name: "flours_typed",
      formula: `=ARRAYFORMULA(SUM(IF(LEN(@flour_in)=0;0;(@flour_in=1)*(LEN(${percent})>0))))`,
    },
    { says: "Flours by weight alone", name: "flours_weighed", formula: "=COUNTIF(@flour_in;1)-@flours_typed" },
    { says: "100 % of flour is typed as", name: "percent_base", formula: percentBase(told) },
    { says: "Rows in percent alone", name: "percent_alone", formula: `=SUM(${percent})${alone}` },
    { says: "Flour by the weights", name: "anchor", formula: anchor(told) },
    { says: "Flour that is 100 %", name: "flour_base", formula: flourBase(told) },
    {
      says: "Weight of a typed 1",
      name: "per_percent",
      formula: '=IF(COUNT(@flour_base;@percent_base)<2;"";@flour_base/@percent_base)',
    },
    {
      says: "All rows",
      name: "all_before",
      formula: known(`${weighedOnly(told, (weighed) => `SUM(${weighed})+`)}@percent_alone*@per_percent`),
    },
    {
      says: "All flour, starters counted",
      name: "flour_before",
      formula: known(`ARRAYFORMULA(SUM(IF(LEN(@flour_in)=0;0;${before(told)}*@flour_in)))`),
    },
    {
      says: "Flour that goes in by itself",
      name: "added_before",
      formula: known(`ARRAYFORMULA(SUM(IF(LEN(@flour_in)=0;0;${before(told)}*(@flour_in=1))))`),
    },
    {
      says: "What the amount is of",
      name: "amount_before",
      formula: known(
        'IF(@of<>"flour";@all_before;IF(@flours_typed*(@flours_weighed=0)*(@percent_base>@flour_typed)=0;@added_before;@flour_before))',
      ),
    },
    {
      says: "Times, to the amount",
      name: "times",
      formula:
        '=IF(COUNT(@per_percent)*(LEN(@table_says)=0)=0;"";IF(COUNT(@anchor)*COUNT(@amount)=0;1;IF(@amount_before>0;@amount/@amount_before;"")))',
    },
    ...STEP_FIGURES,
    { says: "What the table says", name: "table_says", formula: tableSays(told), unit: "text", align: "right" },
  ];
}

export function rowColumns(told: Told): ColumnModel[] {
  return [
    { name: "flour_in", head: "Flour in it", unit: "rate", role: "computed", formula: flourIn(told) },
    { name: "row_says", head: "Row says", unit: "text", role: "computed", formula: rowSays(told) },
  ];
}

/** The formulas of the check cell, the dough, and the columns of share, weight and weight per mix. */
export const PLAIN_CHECK =
  '=IF(LEN(@table_says)>0;@table_says;IF((COUNT(@times)>0)*(COUNT(@step_1)=0)=1;"Enter the step your scale shows, such as 5.";""))';
export const PLAIN_DOUGH = '=IF(COUNT(@times)=0;IF(LEN(@table_says)>0;"";0);@all_before*@times)';
export const plainRemark = (usual: string) => `=ARRAYFORMULA(IF(LEN(@row_says)>0;@row_says;${usual}))`;

export function plainRows(told: Told) {
  const column = (formula: string) => `=ARRAYFORMULA(IF(${filledRows(told)}=0;"";${formula}))`;
  return {
    share: [column(`${before(told)}/@flour_before`), column(`${before(told)}*@times`)],
    mix: [plainSteps(`(${before(told)}*N(@times)/@mixes)`, `${filledRows(told)}*COUNTIF(@mixes;">0")`)],
  };
}

export const BY_WEIGHT_TOO: Told = {
  percent: "@percent",
  weighed: "@weighed",
  there: "LEN(@percent)+LEN(@weighed)",
};
/** Where a blank water row gets its percentage from the rest. */
export const BY_PERCENT: Told = { percent: "@used", there: `LEN(@percent)+(@kind="water")` };
