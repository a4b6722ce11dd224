import { type Block, type ColumnModel, type Formula, type SheetModel, type Unit, WORKED_OUT } from "../shared/model.ts";
import { computedLine, headingLine, inputLine, label } from "./blocks/line.ts";
import { CAUTIONS, cautionsOf } from "./blocks/name.ts";

const linked = (name: string, head: string, unit: Unit, formula: Formula): ColumnModel => ({
  name,
  head,
  unit,
  role: "linked",
  formula,
});
const computed = (name: string, head: string, unit: Unit, formula: string): ColumnModel => ({
  name,
  head,
  unit,
  role: "computed",
  formula,
});
const input = (name: string, head: string, unit: Unit): ColumnModel => ({ name, head, unit, role: "input" });
/** A weight of the formula sheet for one of its pieces; nothing while the sheet shows none. */
const perPiece = (weight: string) => `=IF(COUNT(${weight};[pieces])<2;"";IF([pieces]=0;"";${weight}/[pieces]))`;
const forPieces = (each: string) => `=ARRAYFORMULA(IF(LEN(@day_pieces)*LEN(${each})=0;"";@day_pieces*${each}))`;

/** A call takes a table of products and weights and nothing more, so it is a table of its own. */
const wanted: readonly ColumnModel[] = [
  linked("day_product", "Product", "text", "=[name]"),
  computed("day_whole", "Dough in all ({weight})", "weight", forPieces("@day_each_whole")),
];
const doughs: readonly ColumnModel[] = [
  computed("day_mixed", "of it mixed ({weight})", "weight", forPieces("@day_each")),
  computed(
    "day_mixes",
    "Mixes",
    "count",
    '=ARRAYFORMULA(IF(LEN(@day_mixed)=0;"";IF(LEN(@day_limit)=0;1;IF(@day_limit=0;1;ROUNDUP(ROUND(@day_mixed/@day_limit;9);0)))))',
  ),
  computed(
    "day_mix",
    "Dough a mix ({weight})",
    "weight",
    '=ARRAYFORMULA(IF(LEN(@day_mixed)*LEN(@day_mixes)=0;"";IF(@day_mixes=0;0;@day_mixed/@day_mixes)))',
  ),
  computed(
    "day_note",
    "Remark",
    "text",
    '=ARRAYFORMULA(IF(LEN(@day_mix)*LEN(@day_least)=0;"";IF(@day_mix<@day_least;"below the mixer’s least";"")))',
  ),
  computed("day_levain", "Levain ({weight})", "weight", forPieces("@day_each_levain")),
  linked("day_each_whole", "All, a piece", "weight", perPiece("[whole]")),
  linked("day_each", "Mixed, a piece", "weight", perPiece("[dough]")),
  linked("day_each_levain", "Levain, a piece", "weight", perPiece("[levain]")),
  linked("day_limit", "Mixer, most", "weight", '=IF(COUNT([limit])=0;"";[limit])'),
  linked("day_least", "Mixer, least", "weight", '=IF(COUNT([least])=0;"";[least])'),
];

const LEVAIN = "COUNT(@levain_wanted;@levain_hydration;@seed_hydration;@seed_share)<4";

const levain: Block = {
  block: "levain",
  left: 0,
  lines: [
    headingLine("Levain for this day", 5),
    computedLine("In the doughs ({weight})", "levain_needed", "weight", "=SUM(@day_levain)", {}, 2),
    inputLine("Kept back as seed ({weight})", "levain_keep", "weight", {}, 2),
    computedLine("Levain to build ({weight})", "levain_wanted", "weight", "=@levain_needed+@levain_keep", {}, 2),
    inputLine("Its hydration", "levain_hydration", "percent", {}, 2),
    inputLine("Hydration of the seed", "seed_hydration", "percent", {}, 2),
    inputLine("Seed, of the flour fed", "seed_share", "percent", {}, 2),
    inputLine("Hours before mixing", "levain_hours", "plain", {}, 2),
    {
      cells: [
        label("Feed: seed, flour, water"),
        {
          at: 2,
          role: "computed",
          name: "feed_seed",
          unit: "weight",
          spills: ["feed_flour", "feed_water"],
          formula: `=IF(${LEVAIN};"";IF(@levain_wanted=0;"";BAKE_STARTERFEED(@levain_wanted;@levain_hydration;@seed_hydration;@levain_wanted/(1+@levain_hydration)*@seed_share/(1+@seed_share/(1+@seed_hydration)))))`,
        },
      ],
    },
  ],
};

const packs = "SUMIF(@stock_name;@need_name;@stock_pack)";
const needs: readonly ColumnModel[] = [
  {
    ...computed(
      "need_name",
      "To get",
      "text",
      '=IF(SUM(@day_whole)=0;"";BAKE_RAWNEEDS(@wanted_table;@stack_table;@stock_table))',
    ),
    spills: ["need_weight"],
  },
  { name: "need_weight", head: "Weight ({weight})", unit: "weight", role: "computed" },
  computed(
    "need_packs",
    "Packs to order",
    "count",
    `=ARRAYFORMULA(IF(LEN(@need_weight)=0;"";IF(${packs}=0;"";ROUNDUP(ROUND(@need_weight/${packs};9);0))))`,
  ),
];

/** A day's orders: doughs, mixes, levain, and what to get for them, in one call over all formula sheets. */
export const daySheet: SheetModel = {
  name: "day-sheet",
  title: "Day sheet",
  says: "A day's orders: dough and mixes, the levain to feed, and the raw ingredients to get, less what is in stock.",
  widths: [92, 166, 84, 84, 84, 132, 84, 84, 84, 132, 132, 84, 84],
  parts: [],
  bands: [
    [
      {
        block: "name",
        left: 0,
        lines: [
          { cells: [{ at: 0, role: "title", name: "title", text: "Day sheet" }] },
          {
            cells: [
              { at: 0, role: "label", text: "For" },
              { at: 1, role: "input", name: "day", unit: "date" },
            ],
          },
          {
            cells: [
              {
                at: 0,
                role: "remark",
                text: "Doughs follow their formula sheets. A formula sheet built later comes in with a new day sheet.",
              },
            ],
          },
        ],
      },
    ],
    [
      { table: "pieces", left: 0, rows: 1, spare: 0, columns: [input("day_pieces", "Pieces", "count")] },
      { table: "wanted", left: 1, rows: 1, spare: 0, columns: wanted },
      { table: "doughs", left: 3, rows: 1, spare: 0, columns: doughs },
    ],
    [levain],
    [
      { table: "needs", left: 1, rows: 40, spare: 0, list: true, columns: needs },
      {
        table: "stock",
        left: 5,
        rows: 40,
        spare: 8,
        columns: [input("stock_name", "In stock", "text"), input("stock_weight", "there is ({weight})", "weight")],
      },
      {
        table: "packs",
        left: 7,
        rows: 40,
        spare: 0,
        columns: [input("stock_pack", "a pack has ({weight})", "weight")],
      },
      {
        table: "stack",
        left: 9,
        rows: 40,
        spare: 0,
        columns: [
          computed("stack_product", WORKED_OUT, "text", "=[products]"),
          computed("stack_name", "Ingredient", "text", "=[names]"),
          computed("stack_weight", "Weight ({weight})", "weight", "=[weights]"),
        ],
      },
      {
        table: "rows",
        left: 12,
        rows: 40,
        spare: 0,
        columns: [{ name: "stack_row", head: "Row", unit: "plain", role: "remark" }],
      },
    ],
    [cautionsOf(CAUTIONS.raw, CAUTIONS.guides)],
  ],
  sample: {},
  expects: {},
};
