import type { ColumnModel, Formula, Table } from "../../shared/model.ts";
import type { Figure } from "./plain-rows.ts";

// Effective hydration in the sheet's own sums, as shared/enrichment.ts has it: what water is in an ingredient stands in a list.

/** Filled when the sheet is built; a new ingredient gets a row of its own. */
export const moistTable: Table = {
  table: "moist",
  left: 0,
  when: "plain",
  rows: 12,
  columns: [
    { name: "moist_name", head: "Water in (USDA SR28)", unit: "text", role: "input" },
    { name: "moist_water", head: "of its weight", unit: "share", role: "input" },
  ],
};

export const LIQUID_COLUMNS: readonly ColumnModel[] = [
  {
    name: "water_found",
    head: "Water listed",
    unit: "share",
    role: "computed",
    formula: '=ARRAYFORMULA(IF(LEN(@ingredient)=0;"";IFERROR(VLOOKUP(@ingredient;@moist_table;2;FALSE());"")))',
  },
  {
    name: "water_share",
    head: "Water in it",
    unit: "share",
    role: "computed",
    formula:
      '=ARRAYFORMULA(IF(LEN(@kind_read)*LEN(@flour_in)=0;0;IF((@kind_read="flour")+(@kind_read="salt")>0;0;IF((@kind_read="water")+(@kind_read="ice")>0;1;IF(@flour_in>0;1-@flour_in;IF(LEN(@water_found)=0;0;@water_found))))))',
  },
];

const BROUGHT =
  '(SUMPRODUCT(@percent;@water_share)-SUMIF(@kind_read;"water";@percent)-SUMIF(@kind_read;"ice";@percent))';
const FLOUR = "SUMPRODUCT(@percent;@flour_in)";

export const LIQUID_FIGURES: readonly Figure[] = [
  {
    says: "Rows without their water",
    name: "water_missing",
    formula:
      '=ARRAYFORMULA(SUM(IF(LEN(@kind_read)*LEN(@flour_in)*LEN(@percent)=0;0;(LEN(@water_found)=0)*(@flour_in=0)*(@kind_read<>"salt")*(@kind_read<>"water")*(@kind_read<>"ice"))))',
  },
  {
    says: "Water left for the tap, as typed",
    name: "water_left",
    formula: `=IF(COUNT(@effective_wanted)*COUNT(@percent)=0;"";IF(${FLOUR}=0;"";@effective_wanted*${FLOUR}-${BROUGHT}))`,
  },
];

/** Binary arithmetic leaves a dust of water where the others bring exactly what is wanted. */
const TOO_WET = `@water_left<-1/1000000000*${FLOUR}`;

export const PLAIN_PLAIN_WATER: readonly Formula[] = [
  `=IF(COUNT(@water_left)=0;"";IF(@water_missing>0;"";IF(${TOO_WET};"";MAX(0;@water_left))))`,
];
export const PLAIN_EFFECTIVE: readonly Formula[] = [
  '=IF(COUNT(@dough;@all_flour)<2;"";IF(@water_missing>0;"";SUMPRODUCT(@grams;@water_share)/@all_flour))',
];
export const LIQUID_NOTE = `=IF(@water_missing>0;"not in the list of water: "&@water_missing;IF(COUNT(@water_left)=0;"";IF(${TOO_WET};"too wet without plain water";"")))`;
