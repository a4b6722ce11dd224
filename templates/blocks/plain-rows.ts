import { KIND_WORDS, PREFERMENT_WORDS } from "../../shared/kinds.ts";
import type { CellModel, ColumnModel, Formula } from "../../shared/model.ts";

// Share of flour and weight of every row in the sheet's own sums, as fillIn() of shared/fill-in.ts works them out.

/** What the rows of a table are told by: the column of percentages, and that of weights where there is one. */
export type Told = {
  readonly percent: string;
  readonly weighed?: string;
  /** Above 0 where a row has an amount, or will have. */
  readonly there: string;
};

/** A figure that is worked out on the side. */
export type Figure = { readonly says: string; readonly name: string; readonly formula: Formula } & Partial<CellModel>;

const quotedList = (words: readonly string[]) => `{${words.map((word) => `"${word}"`).join(";")}}`;

/** A binary number's dust: 1e-9, as everywhere. */
const DUST = "(1+1/1000000000)";
/** Flour rows may miss 100 % by half a point; see shared/percents.ts. */
const NEAR = `5/1000*${DUST}`;

/** The kind in small letters and without a plural s. */
const KIND_READ = '=ARRAYFORMULA(IF(LEN(@kind)=0;"";LOWER(TRIM(SUBSTITUTE(@kind&" ";"s ";" ")))))';

/** The hydration behind a starter's name, 1 for "levain 100%"; below 0 where none can be read. */
const HYDRATION_READ =
  '=ARRAYFORMULA(IF(LEN(@kind_read)=0;-1;IF(RIGHT(@kind_read;1)="%";IFERROR(VALUE("0"&MID(@kind_read;FIND(" ";@kind_read&" ")+1;20));-1);-1)))';

/** Flour as a share of the row's weight: "levain 100%" is half flour. Blank where the kind is not known. */
function flourIn(hasAmount: string): string {
  const isStarter = `ISNUMBER(MATCH(LEFT(@kind_read;FIND(" ";@kind_read&" ")-1);${quotedList(PREFERMENT_WORDS)};0))`;
  const starter = `IF(${isStarter}*(LEN(@hydration_read)>0)=0;"";IF((@hydration_read>=0)*(@hydration_read<=5)=1;1/(1+@hydration_read);""))`;
  const word = `IF(ISNUMBER(MATCH(@kind_read;${quotedList(KIND_WORDS)};0));(@kind_read="flour")*1;${starter})`;
  return `=ARRAYFORMULA(IF(${hasAmount}=0;"";IF(LEN(@kind_read)=0;"";IF(ISNUMBER(@kind);IF((@kind>=0)*(@kind<=1)=1;@kind;"");${word}))))`;
}

const lengthOf = ({ percent, weighed }: Told) => `LEN(${percent})${weighed === undefined ? "" : `+LEN(${weighed})`}`;
const countOf = ({ percent, weighed }: Told) => `COUNT(${percent})${weighed === undefined ? "" : `+COUNT(${weighed})`}`;
const lines = (...parts: (string | false)[]) => parts.filter((part) => part !== false).join("");

/** The most a row may be where the flour is 1, and the least salt where it is 100; see misfits() in shared/percents.ts. */
const MOST =
  'IF(@kind_read="salt";1/4;IF(@kind_read="yeast";15/100;IF((@kind_read="water")+(@kind_read="fat")>0;3;IF((@kind_read="sugar")+(@kind_read="egg")+(@kind_read="dairy")>0;5;40))))';

/** What is wrong with a row, in few words; the remark beside the row shows it. */
function rowSays(told: Told): string {
  const { percent, weighed } = told;
  const isNumber = `ISNUMBER(${percent})*1${weighed === undefined ? "" : `+ISNUMBER(${weighed})`}`;
  const isFilled = `(LEN(${percent})>0)*1${weighed === undefined ? "" : `+(LEN(${weighed})>0)`}`;
  const isBelow = `(${percent}<0)*1${weighed === undefined ? "" : `+(${weighed}<0)`}`;
  const gap =
    weighed === undefined
      ? '""'
      : `IF(LEN(@typed_share)*LEN(${percent})*LEN(${weighed})*COUNT(@flour_base)=0;"";IF(ABS(${weighed}-@typed_share*N(@flour_base))>IF(@typed_share>1/10;5/1000*@typed_share;5/10000)*N(@flour_base)*${DUST};"percentage and weight say two things: clear one";""))`;
  return lines(
    `=ARRAYFORMULA(IF(${lengthOf(told)}=0;"";IF(LEN(@kind_read)=0;"which kind is it?";IF(LEN(@flour_in)=0;"kind: choose from its list";`,
    `IF(${isNumber}<${isFilled};"write a number";IF(${isBelow}>0;"cannot be below 0";IF(COUNT(@percent_base)=0;"";`,
    `IF((@percent_base<50)*(@flour_in<1)*(${percent}>${MOST})=1;${percent}&" beside flour of 1: "&${percent}&" % meant?";`,
    `IF((@percent_base>50)*(@kind_read="salt")*(${percent}>0)*(${percent}<1/10)=1;${percent}&" beside flour of 100: "&100*${percent}&" meant?";${gap}))))))))`,
    ")",
  );
}

/** What the percentages are divided by: the flour they refer to is 1 or 100, with or without what is inside starters. */
function percentBase({ percent }: Told): string {
  const gap = (sum: string, whole: number) => `ABS(${sum}${whole === 1 ? "" : `/${whole}`}-1)`;
  const inside = "(@flour_typed+@flour_inside)";
  const fitted = (whole: number, otherwise: string) =>
    `IF(MIN(${gap("@flour_typed", whole)};${gap(inside, whole)})<=${NEAR};IF(${gap("@flour_typed", whole)}<=${gap(inside, whole)};@flour_typed;${inside});${otherwise})`;
  return lines(
    `=IF(COUNT(${percent})=0;1;IF(@flours_typed=0;IF(@flour_inside>0;"";1);`,
    `IF(@flours_weighed>0;IF(@flour_typed<=1005/1000;1;IF(@flour_typed<100;100;""));${fitted(1, fitted(100, '""'))})))`,
  );
}

/** The flour as the typed weights tell it; blank where none does. */
function anchor({ percent, weighed }: Told): string {
  if (weighed === undefined) return '=""';
  const known = "SUMIF(@flour_in;1;@typed_share)";
  const alone = `SUMIFS(${weighed};@flour_in;1)-SUMIFS(${weighed};@flour_in;1;${percent};">=0")`;
  const both = `SUMIFS(@typed_share;@flour_in;1;${weighed};">=0")`;
  const most = `MAXIFS(${weighed};@typed_share;">0")`;
  const place = `MATCH(${most};ARRAYFORMULA(IF(LEN(@typed_share)=0;"";IF(@typed_share>0;${weighed};"")));0)`;
  return lines(
    `=IF(COUNT(${weighed})*COUNT(@percent_base)=0;"";IF(@flours_weighed>0;IF(${known}>=1;"";(${alone})/(1-${known}));`,
    `IF(${both}>0;SUMIFS(${weighed};@flour_in;1;${percent};">=0")/${both};IF(${most}>0;${most}/INDEX(@typed_share;${place};1);""))))`,
  );
}

/** The flour the percentages refer to: the anchor, or what the amount leaves for the rows in percent. */
function flourBase({ weighed }: Told): string {
  const rest = weighed === undefined ? "" : `-SUMIFS(@typed_share;${weighed};">=0")`;
  const left = weighed === undefined ? "@amount" : `(@amount-SUM(${weighed}))`;
  const shares = `(SUM(@typed_share)${rest})`;
  return lines(
    '=IF(COUNT(@anchor)>0;@anchor;IF(COUNT(@amount)*COUNT(@percent_base)=0;"";IF(@amount<=0;"";IF(@of="flour";@amount;',
    `IF((${left}>0)*(${shares}>1/1000000000)=1;${left}/${shares};"")))))`,
  );
}

/** Everything is multiplied to the amount where weights have told the flour already. */
const TIMES = lines(
  '=IF(COUNT(@flour_base)=0;"";IF(LEN(@table_says)>0;"";IF(COUNT(@anchor)*COUNT(@amount)=0;1;',
  'IF(@amount_now>0;@amount/@amount_now;""))))',
);
const AMOUNT_NOW = lines(
  '=IF(@of="dough";SUM(@filled);IF(COUNT(@percent_base)*@flours_typed*(@flours_weighed=0)=0;SUMIF(@flour_in;1;@filled);',
  "IF(@percent_base>@flour_typed;SUMPRODUCT(@filled;@flour_in);SUMIF(@flour_in;1;@filled))))",
);

function tableSays(told: Told): string {
  const { percent } = told;
  const small = `(@percent_base>50)*(MAXIFS(${percent};@flour_in;"<1")<1)*(ARRAYFORMULA(SUM(IF(LEN(@flour_in)*LEN(@kind_read)=0;0;(@flour_in<1)*(@kind_read<>"yeast")*(${percent}>0))))>0)=1`;
  return lines(
    `=IF(ARRAYFORMULA(SUM(${lengthOf(told)}))=0;"";IF(ARRAYFORMULA(SUM(LEN(@row_says)))>0;"A row cannot be read: see Remark.";`,
    `IF(COUNT(@percent_base)=0;"The flour rows make "&ROUND(@flour_typed;4)&"; all flours together make 100 % (or 100).";`,
    `IF(${small};"The flour is typed as 100 and the rest as shares of 1: write all one way.";`,
    'IF(COUNT(@flour_base)=0;"Say how much: an amount above, larger than the weights that are typed.";',
    'IF(SUMPRODUCT(@filled;@flour_in)>0;"";"There is no flour to refer to."))))))',
  );
}

/** The formulas of the check cell, the dough, and the columns of share and weight. */
export const PLAIN_CHECK =
  '=IF(LEN(@table_says)>0;@table_says;IF((COUNT(@grams)>0)*(COUNT(@step_1)=0)=1;"Write the step your scale shows, such as 5.";""))';
export const PLAIN_DOUGH = '=IF(LEN(@table_says)>0;"";SUM(@grams))';
export const PLAIN_SHARE = '=ARRAYFORMULA(IF(LEN(@grams)*COUNT(@all_flour)=0;"";@grams/@all_flour))';
export const PLAIN_GRAMS = '=ARRAYFORMULA(IF(LEN(@filled)*COUNT(@times)=0;"";@filled*@times))';
export const plainRemark = (usual: string) => `=ARRAYFORMULA(IF(LEN(@row_says)>0;@row_says;${usual}))`;

/** A column's weights on the scale's steps: the coarsest that moves a weight by no more than 2 %, at worst one finest step. */
export function plainSteps(exact: string, isBlank = "LEN(@grams)=0"): string {
  const rounded = (place: number) => `ROUND(ROUND(${exact}/@step_${place};9);0)*@step_${place}`;
  const step = (place: number, finer: string) =>
    `IF((${rounded(place)}>0)*(ABS(${rounded(place)}-${exact})<=${exact}/50*${DUST})=1;${rounded(place)};${finer})`;
  const last = `IF(ROUND(${exact}/@step_4;9)<1;@step_4;${rounded(4)})`;
  return `=ARRAYFORMULA(IF(${isBlank};"";IF(LEN(${exact})*COUNT(@step_1)*(COUNTIF(@mixes;">0"))=0;"";IF(${exact}=0;0;${step(1, step(2, step(3, last)))}))))`;
}

/** Two steps as typed; of one alone a tenth, a hundredth and a thousandth follow. */
const steps = [1, 2, 3, 4].map((place): Figure => {
  const both = place === 1 ? "MAX(@step_coarse;@step_fine)" : "MIN(@step_coarse;@step_fine)";
  const finer = place === 1 ? both : `@step_1/${10 ** (place - 1)}`;
  return {
    says: `Step ${place}`,
    name: `step_${place}`,
    formula: `=IF(COUNT(@step_coarse;@step_fine)=0;"";IF(MIN(@step_coarse;@step_fine)<=0;"";IF(COUNT(@step_coarse;@step_fine)=2;${both};${finer})))`,
  };
});

export function rowFigures(told: Told): Figure[] {
  const { percent } = told;
  const some = (formula: string) => `=IF(${countOf(told)}=0;0;${formula})`;
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
    {
      says: "Flours by weight alone",
      name: "flours_weighed",
      formula: "=COUNTIF(@flour_in;1)-@flours_typed",
    },
    { says: "100 % of flour is typed as", name: "percent_base", formula: percentBase(told) },
    { says: "Flour by the weights", name: "anchor", formula: anchor(told) },
    { says: "Flour that is 100 %", name: "flour_base", formula: flourBase(told) },
    { says: "Amount before it is brought to", name: "amount_now", formula: AMOUNT_NOW },
    { says: "Times", name: "times", formula: TIMES },
    {
      says: "Flour, starters counted",
      name: "all_flour",
      formula: '=IF(SUMPRODUCT(@grams;@flour_in)>0;SUMPRODUCT(@grams;@flour_in);"")',
    },
    ...steps,
    { says: "What the table says", name: "table_says", formula: tableSays(told), unit: "text", align: "right" },
  ];
}

export function rowColumns(told: Told): ColumnModel[] {
  const { weighed } = told;
  const column = (name: string, head: string, unit: ColumnModel["unit"], formula: string): ColumnModel => ({
    name,
    head,
    unit,
    role: "computed",
    formula,
  });
  const share = `IF(LEN(@typed_share)*LEN(${told.percent})*COUNT(@flour_base)=0;"";@typed_share*@flour_base)`;
  return [
    column("kind_read", "Kind read", "text", KIND_READ),
    column("hydration_read", "Hydration read", "figure", HYDRATION_READ),
    column("flour_in", "Flour in it", "rate", flourIn(told.there)),
    column(
      "typed_share",
      "Share typed",
      "share",
      `=ARRAYFORMULA(IF(LEN(${told.percent})*COUNT(@percent_base)=0;0;${told.percent}/@percent_base))`,
    ),
    column(
      "filled",
      "Before times",
      "weight",
      `=ARRAYFORMULA(${weighed === undefined ? share : `IF(LEN(${weighed})>0;${weighed};${share})`})`,
    ),
    column("row_says", "Row says", "text", rowSays(told)),
  ];
}
