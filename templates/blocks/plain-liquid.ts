import type { ColumnModel, Formula, Table } from "../../shared/sheet/model.ts";
import { isKind } from "./plain-rows.ts";
import type { Figure } from "./plain-steps.ts";

// Effective hydration in the sheet's own sums, as shared/enrichment/enrichment.ts has it: what water is in an ingredient stands in a list.

/** Filled when the sheet is built; a new ingredient gets a row of its own. */
export const moistTable: Table = {
  table: "moist",
  left: 0,
  when: "plain",
  rows: 12,
  spare: 4,
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
];

const TAP = `${isKind("water")}+(@kind="ice")`;
/** Water in a row as a share of it: told by the kind, or by the list. */
const SHARE = `IF(@flour_in>0;IF(@flour_in<1;1-@flour_in;0);IF(${isKind("salt")}>0;0;IF(LEN(@water_found)=0;0;@water_found)))`;
const BROUGHT = `ARRAYFORMULA(SUM(IF(LEN(@flour_in)*LEN(@percent)=0;0;IF(${TAP}>0;0;@percent*${SHARE}))))`;
const IN_ALL = `ARRAYFORMULA(SUM(IF(LEN(@flour_in)*LEN(@grams)=0;0;IF(${TAP}>0;@grams;@grams*${SHARE}))))`;
const FLOUR = "SUMPRODUCT(@percent;@flour_in)";

export const LIQUID_FIGURES: readonly Figure[] = [
  {
    says: "Rows without their water",
    name: "water_missing",
    formula: `=ARRAYFORMULA(SUM(IF(LEN(@flour_in)*LEN(@percent)=0;0;(LEN(@water_found)=0)*(@flour_in=0)*(${isKind("salt")}+${TAP}=0))))`,
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
  `=IF(COUNT(@times)=0;"";IF(@water_missing>0;"";IF(@flour_before*@times=0;"";${IN_ALL}/(@flour_before*@times))))`,
];
export const LIQUID_NOTE = `=IF(@water_missing>0;"not in the list of water: "&@water_missing;IF(COUNT(@water_left)=0;"";IF(${TOO_WET};"too wet without plain water";"")))`;
