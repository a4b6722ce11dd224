import type { Block, Table } from "../../shared/model.ts";

/** How much is made: by pieces, tins, dough or flour, in mixes that the mixer takes. */
export const makeBlock: Block = {
  block: "make",
  left: 0,
  lines: [
    {
      cells: [
        { at: 0, role: "heading", text: "Make" },
        { at: 1, role: "heading" },
      ],
    },
    {
      cells: [
        { at: 0, role: "label", text: "Make by" },
        {
          at: 1,
          role: "input",
          name: "by",
          unit: "text",
          value: "pieces",
          choices: ["pieces", "tins", "dough", "flour"],
          choicesNeed: { tins: "tin" },
        },
      ],
    },
    {
      cells: [
        { at: 0, role: "label", text: "Dough wanted ({weight})" },
        { at: 1, role: "input", name: "dough_wanted", unit: "weight" },
      ],
    },
    {
      cells: [
        { at: 0, role: "label", text: "Flour wanted ({weight})" },
        { at: 1, role: "input", name: "flour_wanted", unit: "weight" },
      ],
    },
    {
      cells: [
        { at: 0, role: "label", text: "Lost in bowl and on bench" },
        { at: 1, role: "input", name: "handling_loss", unit: "share" },
      ],
    },
    {
      cells: [
        { at: 0, role: "label", text: "Mixer takes at most ({weight})" },
        { at: 1, role: "input", name: "mixer_limit", unit: "weight" },
      ],
    },
    {
      cells: [
        { at: 0, role: "label", text: "Mixer needs at least ({weight})" },
        { at: 1, role: "input", name: "mixer_least", unit: "weight" },
      ],
    },
    {
      cells: [
        { at: 0, role: "label", text: "Scale steps, coarse ({weight})" },
        { at: 1, role: "input", name: "step_coarse", unit: "plain", value: 5 },
      ],
    },
    {
      cells: [
        { at: 0, role: "label", text: "Scale steps, fine ({weight})" },
        { at: 1, role: "input", name: "step_fine", unit: "plain" },
      ],
    },
    {
      cells: [
        { at: 0, role: "label", text: "Amount to make ({weight})" },
        {
          at: 1,
          role: "computed",
          name: "amount",
          unit: "weight",
          formula: [
            {
              when: "tin",
              formula:
                '=IF(@by="pieces";IF(SUM(@size_dough)>0;SUM(@size_dough);"");IF(@by="tins";@tins_dough;IF(@by="flour";IF(LEN(@flour_wanted)=0;"";@flour_wanted);IF(LEN(@dough_wanted)=0;"";@dough_wanted))))',
            },
            {
              formula:
                '=IF(@by="pieces";IF(SUM(@size_dough)>0;SUM(@size_dough);"");IF(@by="flour";IF(LEN(@flour_wanted)=0;"";@flour_wanted);IF(LEN(@dough_wanted)=0;"";@dough_wanted)))',
            },
          ],
        },
        { at: 2, role: "computed", name: "of", unit: "text", formula: '=IF(@by="flour";"flour";"dough")' },
      ],
    },
    {
      cells: [
        { at: 0, role: "label", text: "Mixes" },
        {
          at: 1,
          role: "computed",
          name: "mixes",
          unit: "count",
          formula:
            '=IF(COUNT(@dough)=0;"";IF(LEN(@mixer_limit)=0;1;IF(@dough=0;0;ROUNDUP(ROUND(@dough/@mixer_limit;9);0))))',
        },
        {
          at: 2,
          role: "remark",
          name: "mixes_note",
          unit: "text",
          formula: '=IF(COUNT(@mix_dough;@mixer_least)<2;"";IF(@mix_dough<@mixer_least;"below the least";""))',
        },
      ],
    },
    {
      cells: [
        { at: 0, role: "label", text: "Dough per mix ({weight})" },
        {
          at: 1,
          role: "computed",
          name: "mix_dough",
          unit: "weight",
          formula: '=IF(COUNT(@mixes)=0;"";IF(@mixes=0;0;@dough/@mixes))',
        },
      ],
    },
  ],
};

/** Up to five sizes from one dough, by what a piece is sold at. */
export const sizesTable: Table = {
  table: "sizes",
  left: 3,
  rows: 5,
  columns: [
    { name: "size_name", head: "Size", unit: "text", role: "input" },
    { name: "size_pieces", head: "Pieces", unit: "count", role: "input" },
    { name: "size_weight", head: "Sold at ({weight})", unit: "weight", role: "input" },
    { name: "size_loss", head: "Bake loss", unit: "share", role: "input" },
    {
      name: "size_scaled",
      head: "Scale at ({weight})",
      unit: "weight",
      role: "computed",
      formula: '=ARRAYFORMULA(IF(LEN(@size_weight)=0;"";@size_weight/(1-@size_loss)))',
    },
    {
      name: "size_dough",
      head: "Dough to mix ({weight})",
      unit: "weight",
      role: "computed",
      formula: "=BAKE_DOUGHFOR(@size_pieces;@size_weight;@size_loss;@handling_loss)",
    },
  ],
};
