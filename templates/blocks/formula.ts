import { KIND_WORDS } from "../../shared/kinds.ts";
import type { Block, Table } from "../../shared/model.ts";

const KINDS = [...KIND_WORDS, "levain 100%", "poolish 100%", "biga 55%"];

/** What the formula comes to, above its table. */
export const totalsBlock: Block = {
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
        },
        ...[2, 3, 4, 5, 6, 7, 8].map((at) => ({ at, role: "heading" as const })),
      ],
    },
    {
      cells: [
        { at: 0, role: "label", text: "All flour ({weight})", align: "right" },
        { at: 1, role: "label", text: "Water ({weight})", align: "right" },
        { at: 2, role: "label", text: "Hydration", align: "right" },
        { at: 3, role: "label", text: "Salt", align: "right" },
        { at: 4, role: "label", text: "Dough ({weight})", align: "right" },
        { at: 5, role: "label", text: "Pieces", align: "right" },
      ],
    },
    {
      cells: [
        total(0, "flour", "weight", "SUM(@grams)/SUM(@share)"),
        total(
          1,
          "water",
          "weight",
          'SUMIF(@kind;"water*";@grams)+SUMIF(@kind;"ice*";@grams)+SUMIF(@kind;"*%";@grams)+SUMIF(@kind;"flour*";@grams)-SUM(@grams)/SUM(@share)',
        ),
        total(2, "hydration", "share", "@water/@flour"),
        total(3, "salt", "share", 'SUMIF(@kind;"salt*";@share)'),
        {
          at: 4,
          role: "computed",
          name: "dough",
          unit: "weight",
          formula: '=IF(ISERROR(INDEX(@share;1;1));"";SUM(@grams))',
        },
        total(
          5,
          "pieces",
          "count",
          'IF(@by="pieces";SUM(@size_pieces);IF(SUM(INDEX(@size_scaled;2;1))=0;"";ROUNDDOWN(ROUND(@dough*(1-@handling_loss)/SUM(INDEX(@size_scaled;2;1));6);0)))',
        ),
      ],
    },
  ],
};

/** The ingredients: a percentage or a weight each, and what follows from it. */
export const formulaTable: Table = {
  table: "formula",
  left: 0,
  rows: 24,
  columns: [
    { name: "ingredient", head: "Ingredient", unit: "text", role: "input" },
    { name: "kind", head: "Kind", unit: "text", role: "input", choices: KINDS },
    { name: "percent", head: "% of flour", unit: "percent", role: "input" },
    { name: "weighed", head: "or weight ({weight})", unit: "weight", role: "input" },
    {
      name: "share",
      head: "Share of flour",
      unit: "share",
      role: "computed",
      formula: "=BAKE_FILLIN(@percent;@weighed;@kind;@amount;@of)",
      spills: ["grams"],
    },
    { name: "grams", head: "Weight ({weight})", unit: "weight", role: "computed" },
    {
      name: "whole",
      head: "Share of whole",
      unit: "share",
      role: "computed",
      formula: '=ARRAYFORMULA(IF(LEN(@grams)=0;"";@grams/SUM(@grams)))',
    },
    {
      name: "mix",
      head: "Per mix ({weight})",
      unit: "weight",
      role: "computed",
      formula:
        '=IF(COUNT(@mixes)=0;"";IF(@mixes=0;"";BAKE_SCALEROUND(ARRAYFORMULA(IF(LEN(@grams)=0;"";@grams/@mixes));@step_coarse:@step_fine)))',
    },
    {
      name: "remark",
      head: "Remark",
      unit: "text",
      role: "remark",
      formula:
        '=ARRAYFORMULA(IF(LEN(@share)=0;"";IF((@kind="water")*(@share<2/100)=1;ROUND(100*@share;2)&" %: "&ROUND(10000*@share;2)&" % meant?";"")))',
    },
  ],
};

/** A figure above the table; blank while the table cannot be read. */
function total(at: number, name: string, unit: "weight" | "share" | "count", formula: string) {
  return {
    at,
    role: "computed" as const,
    name,
    unit,
    formula: `=IF(ISERROR(INDEX(@share;1;1));"";IF(SUM(@share)=0;"";${formula}))`,
  };
}
