import { KIND_CHOICES } from "../../shared/larder/kinds.ts";
import type { Block, ColumnModel, Formula, Table, Unit } from "../../shared/sheet/model.ts";
import { AMOUNT_OF } from "./make.ts";
import { BY_WEIGHT_TOO, PLAIN_CHECK, PLAIN_DOUGH, plainRemark, plainRows } from "./plain-rows.ts";

/** One figure above the table, under its heading. */
export type Total = {
  readonly head: string;
  readonly name: string;
  readonly unit: Unit;
  readonly formula: Formula;
  readonly plain?: readonly Formula[];
};

const TINS_OF_IT =
  'IF(COUNT(@dough;@tin_dough)<2;"";IF(@tin_dough=0;"";ROUNDDOWN(ROUND(@dough*(1-@handling_loss)/@tin_dough;6);0)))';

export const TOTALS = {
  flour: total("All flour ({weight})", "flour", "weight", "SUM(@grams)/SUM(@share)"),
  water: total(
    "Water ({weight})",
    "water",
    "weight",
    'SUMIF(@kind;"water*";@grams)+SUMIF(@kind;"ice*";@grams)+SUMIF(@kind;"*%";@grams)+SUMIF(@kind;"flour*";@grams)-SUM(@grams)/SUM(@share)',
  ),
  hydration: total("Hydration", "hydration", "share", "@water/@flour"),
  salt: total("Salt", "salt", "share", 'SUMIF(@kind;"salt*";@share)'),
  sugar: total("Sugar", "sugar", "share", 'SUMIF(@kind;"sugar*";@share)'),
  fat: total("Fat", "fat", "share", 'SUMIF(@kind;"fat*";@share)'),
  egg: total("Egg", "egg", "share", 'SUMIF(@kind;"egg*";@share)'),
  dough: whole("Dough ({weight})"),
  baseDough: whole("Base ({weight})"),
  batter: whole("Batter ({weight})"),
  pieces: pieces("@dough"),
  /** Made by tins it is the tins that are counted. */
  piecesOrTins: {
    head: "Pieces",
    name: "pieces",
    unit: "count",
    formula: [
      { when: "tin", formula: `=IF(@by="tins";${TINS_OF_IT};${piecesOf("@dough").slice(1)})` },
      { formula: piecesOf("@dough") },
    ],
  },
  /** Of a dough that is divided with something rolled into it. */
  piecesOfAll: pieces("@dough_in_all"),
  tins: {
    head: "Tins",
    name: "pieces",
    unit: "count",
    formula: [
      {
        when: "tin",
        formula: `=${TINS_OF_IT}`,
      },
      { formula: '=""' },
    ],
  },
} as const satisfies Readonly<Record<string, Total>>;

/** What the formula comes to, above its table. */
export function totalsOf(...totals: readonly Total[]): Block {
  return {
    block: "totals",
    left: 0,
    lines: [
      {
        cells: [
          { at: 0, role: "heading", text: "Formula" },
          {
            at: 1,
            role: "heading",
            name: "check",
            unit: "text",
            formula:
              '=IF(ISERROR(INDEX(@share;1;1));"Something in the table cannot be read: point at the red cell under Share of flour, and it says what to write.";"")',
            plain: [PLAIN_CHECK],
          },
          ...[2, 3, 4, 5, 6, 7, 8].map((at) => ({ at, role: "heading" as const })),
        ],
      },
      { cells: totals.map(({ head }, at) => ({ at, role: "label", text: head, align: "right" })) },
      { cells: totals.map(({ head: _, ...total }, at) => ({ at, role: "computed", ...total })) },
    ],
  };
}

const USUAL = [TOTALS.flour, TOTALS.water, TOTALS.hydration, TOTALS.salt, TOTALS.dough] as const;
export const totalsBlock: Block = totalsOf(...USUAL, TOTALS.pieces);
export const tinTotalsBlock: Block = totalsOf(...USUAL, TOTALS.piecesOrTins);

/** A water row that was typed as a share of a share. */
const DRY =
  'IF(LEN(@share)=0;"";IF((@kind="water")*(@share<2/100)=1;ROUND(100*@share;2)&" %: "&ROUND(10000*@share;2)&" % meant?";""))';

const PLAIN_ROWS = plainRows(BY_WEIGHT_TOO);

/** The columns that tables of ingredients are put together from. */
export const COLUMNS = {
  ingredient: { name: "ingredient", head: "Ingredient", unit: "text", role: "input" },
  kind: { name: "kind", head: "Kind", unit: "text", role: "input", choices: KIND_CHOICES },
  percent: { name: "percent", head: "% of flour", unit: "percent", role: "input" },
  weighed: { name: "weighed", head: "or weight ({weight})", unit: "weight", role: "input" },
  share: {
    name: "share",
    head: "Share of flour",
    unit: "share",
    role: "computed",
    formula: `=BAKE_FILLIN(@percent;@weighed;@kind;@amount;${AMOUNT_OF})`,
    spills: ["grams"],
    plain: PLAIN_ROWS.share,
  },
  grams: { name: "grams", head: "Weight ({weight})", unit: "weight", role: "computed" },
  whole: {
    name: "whole",
    head: "Share of whole",
    unit: "share",
    role: "computed",
    formula: '=ARRAYFORMULA(IF(LEN(@grams)=0;"";@grams/SUM(@grams)))',
  },
  mix: {
    name: "mix",
    head: "Per mix ({weight})",
    unit: "weight",
    role: "computed",
    formula:
      '=IF(COUNT(@mixes)=0;"";IF(@mixes=0;"";BAKE_SCALEROUND(ARRAYFORMULA(IF(LEN(@grams)=0;"";@grams/@mixes));@step_coarse:@step_fine)))',
    plain: PLAIN_ROWS.mix,
  },
  remark: {
    name: "remark",
    head: "Remark",
    unit: "text",
    role: "remark",
    formula: `=ARRAYFORMULA(${DRY})`,
    plain: [plainRemark(DRY)],
  },
} as const satisfies Readonly<Record<string, ColumnModel>>;

/** The ingredients: a percentage or a weight each, and what follows from it. A longer recipe gets its rows, and some to spare. */
export function ingredientTable(...columns: readonly ColumnModel[]): Table {
  return { table: "formula", left: 0, rows: 16, spare: 4, columns };
}

const { ingredient, kind, percent, weighed, share, grams, whole: wholeShare, mix, remark } = COLUMNS;
export const formulaTable: Table = ingredientTable(
  ingredient,
  kind,
  percent,
  weighed,
  share,
  grams,
  wholeShare,
  mix,
  remark,
);
/** Blank while the table cannot be read. */
function readable(formula: string): string {
  return `=IF(ISERROR(INDEX(@share;1;1));"";IF(SUM(@share)=0;"";${formula}))`;
}

function total(head: string, name: string, unit: Unit, formula: string): Total {
  return { head, name, unit, formula: readable(formula) };
}

function whole(head: string): Total {
  return {
    head,
    name: "dough",
    unit: "weight",
    formula: '=IF(ISERROR(INDEX(@share;1;1));"";SUM(@grams))',
    plain: [PLAIN_DOUGH],
  };
}

function pieces(divided: string): Total {
  return { head: "Pieces", name: "pieces", unit: "count", formula: piecesOf(divided) };
}

function piecesOf(divided: string): string {
  const first = "INDEX(@size_scaled;2;1)";
  return readable(
    `IF(@by="pieces";SUM(@size_pieces);IF(LEN(${first})=0;"";IF(${first}=0;"";ROUNDDOWN(ROUND(${divided}*(1-@handling_loss)/${first};6);0))))`,
  );
}
