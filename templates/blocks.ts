// Blocks and tables that formula sheets share.
import { KIND_WORDS } from "../shared/kinds.ts";
import type { Block, Table } from "../shared/model.ts";
import { MIXINGS, YEAST_LIMITS } from "../shared/temperature.ts";
import { TIN_SHAPES } from "../shared/tin.ts";
import { TIN_DOUGH_KINDS } from "../shared/tin-guide.ts";

const KINDS = [...KIND_WORDS, "levain 100%", "poolish 100%", "biga 55%"];

/** Name, shop, version, date and the last two changes. */
export const nameBlock: Block = {
  block: "name",
  left: 0,
  lines: [
    { cells: [{ at: 0, role: "title", name: "title", text: "Pan loaf" }] },
    {
      cells: [
        { at: 0, role: "remark", name: "shop", text: "" },
        { at: 4, role: "label", text: "Version" },
        { at: 5, role: "input", name: "version", unit: "text", value: "1" },
        { at: 7, role: "label", text: "Date" },
        { at: 8, role: "input", name: "date", unit: "date" },
      ],
    },
    {
      cells: [
        { at: 0, role: "label", text: "Last changes" },
        { at: 1, role: "input", name: "change_1", unit: "text" },
      ],
    },
    { cells: [{ at: 1, role: "input", name: "change_2", unit: "text" }] },
  ],
};

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

/** Shape and inside sizes of a tin, its guide, and the dough it takes. */
export const tinBlock: Block = {
  block: "tin",
  left: 0,
  when: "tin",
  lines: [
    {
      cells: [
        { at: 0, role: "heading", text: "Tin" },
        { at: 1, role: "heading" },
        { at: 2, role: "heading" },
      ],
    },
    {
      cells: [
        { at: 0, role: "label", text: "Shape" },
        {
          at: 1,
          role: "input",
          name: "tin_shape",
          unit: "text",
          value: "box",
          choices: Object.keys(TIN_SHAPES),
        },
      ],
    },
    ...tinSize(
      1,
      '"box";"length";"oval";"length";"wreath";"outer diameter";"polygon";"sides";"water";"grams to the brim";"diameter"',
    ),
    ...tinSize(
      2,
      '"box";"width";"oval";"width";"round";"depth";"dome";"depth, if not half";"polygon";"side length";"water";"";"tube diameter"',
    ),
    ...tinSize(3, '"round";"base diameter, if narrower";"dome";"";"wreath";"";"water";"";"depth"'),
    ...tinSize(
      4,
      '"box";"base length, if shorter";"oval";"base length, if shorter";"ring";"base diameter, if narrower";""',
    ),
    ...tinSize(5, '"box";"base width";"oval";"base width";"ring";"tube diameter at the base";""'),
    {
      cells: [
        { at: 0, role: "label", text: "Kind of dough" },
        {
          at: 1,
          role: "input",
          name: "tin_kind",
          unit: "text",
          value: "white",
          choices: Object.keys(TIN_DOUGH_KINDS),
        },
      ],
    },
    {
      cells: [
        { at: 0, role: "label", text: "Your own fill, g/cm³" },
        { at: 1, role: "input", name: "tin_fill", unit: "fill" },
      ],
    },
    {
      when: "oz",
      cells: [
        { at: 0, role: "label", text: "Grams per ounce" },
        { at: 1, role: "input", name: "grams_per_unit", unit: "plain", value: 28.349523125 },
      ],
    },
    {
      cells: [
        { at: 0, role: "label", text: "Tins wanted" },
        { at: 1, role: "input", name: "tins", unit: "count" },
      ],
    },
    {
      cells: [
        { at: 0, role: "label", text: "Guide, g/cm³ (low to high)" },
        {
          at: 1,
          role: "computed",
          name: "guide_low",
          unit: "fill",
          spills: ["guide_usual", "guide_high"],
          formula: '=IF(LEN(@tin_kind)=0;"";BAKE_TINGUIDE(@tin_kind))',
        },
      ],
    },
    {
      cells: [
        { at: 0, role: "label", text: "Capacity (cm³)" },
        {
          at: 1,
          role: "computed",
          name: "tin_capacity",
          unit: "capacity",
          formula:
            '=IF(COUNTIF(@tin_size_1:@tin_size_5;"<>")=0;"";BAKE_TINCAPACITY(@tin_shape;@tin_size_1:@tin_size_5;"{length}"))',
        },
      ],
    },
    {
      cells: [
        { at: 0, role: "label", text: "Dough in one tin ({weight})" },
        {
          at: 1,
          role: "computed",
          name: "tin_dough",
          unit: "weight",
          formula: [
            {
              when: "oz",
              formula:
                '=IF(@by="pieces";INDEX(@size_scaled;2;1);IF(LEN(@tin_capacity)=0;"";IF(LEN(@tin_fill)>0;@tin_capacity*@tin_fill/@grams_per_unit;IF(LEN(@guide_usual)=0;"";@tin_capacity*@guide_usual/@grams_per_unit))))',
            },
            {
              formula:
                '=IF(@by="pieces";INDEX(@size_scaled;2;1);IF(LEN(@tin_capacity)=0;"";IF(LEN(@tin_fill)>0;@tin_capacity*@tin_fill;IF(LEN(@guide_usual)=0;"";@tin_capacity*@guide_usual))))',
            },
          ],
        },
      ],
    },
    {
      cells: [
        { at: 0, role: "label", text: "Dough for those tins ({weight})" },
        {
          at: 1,
          role: "computed",
          name: "tins_dough",
          unit: "weight",
          formula: '=IF(LEN(@tins)*LEN(@tin_dough)=0;"";@tins*@tin_dough/(1-@handling_loss))',
        },
      ],
    },
  ],
};

/** Water temperature by the factor method, and the ice in it. */
export const waterBlock: Block = {
  block: "water",
  left: 4,
  when: "water",
  lines: [
    {
      cells: [
        { at: 0, role: "heading", text: "Water" },
        ...[1, 2, 3, 4].map((at) => ({ at, role: "heading" as const })),
      ],
    },
    ...waterInput("Dough wanted at ({temperature})", "dough_target", "temperature"),
    ...waterInput("Flour is at ({temperature})", "flour_temp", "temperature"),
    ...waterInput("Room is at ({temperature})", "room_temp", "temperature"),
    ...waterInput("Preferment is at, if any", "preferment_temp", "temperature"),
    ...waterInput("Tap water is at ({temperature})", "tap_temp", "temperature"),
    {
      cells: [
        { at: 0, role: "label", text: "Mixing" },
        { at: 2, role: "input", name: "mixing", unit: "text", choices: Object.keys(MIXINGS) },
      ],
    },
    ...waterInput("Minutes of mixing", "minutes", "minutes"),
    ...waterInput("Your own friction factor", "friction_own", "factor"),
    {
      cells: [
        { at: 0, role: "label", text: "Yeast it touches" },
        {
          at: 2,
          role: "input",
          name: "yeast",
          unit: "text",
          value: "fresh",
          choices: Object.keys(YEAST_LIMITS),
        },
      ],
    },
    {
      cells: [
        { at: 0, role: "label", text: "Guide factor, low to high" },
        {
          at: 2,
          role: "computed",
          name: "friction_low",
          unit: "factor",
          spills: ["friction_usual", "friction_high"],
          formula: '=IF(LEN(@mixing)=0;"";BAKE_FRICTIONGUIDE(@mixing;@minutes;"{temperature}"))',
        },
      ],
    },
    {
      cells: [
        { at: 0, role: "label", text: "Factor used" },
        {
          at: 2,
          role: "computed",
          name: "friction",
          unit: "factor",
          formula:
            '=IF(LEN(@friction_own)>0;@friction_own;IF(LEN(@friction_usual)=0;"";@friction_usual*IF(COUNT(@preferment_temp)=0;1;4/3)))',
        },
      ],
    },
    {
      cells: [
        { at: 0, role: "label", text: "Water at ({temperature})" },
        {
          at: 2,
          role: "computed",
          name: "water_temp",
          unit: "temperature",
          formula:
            '=IF(LEN(@dough_target)*LEN(@flour_temp)*LEN(@room_temp)*LEN(@friction)=0;"";BAKE_WATERTEMP(@dough_target;@flour_temp:@preferment_temp;@friction))',
        },
      ],
    },
    {
      cells: [
        { at: 0, role: "label", text: "Water per mix ({weight})" },
        {
          at: 2,
          role: "computed",
          name: "water_mix",
          unit: "weight",
          formula: '=IF(COUNT(@mixes)=0;"";IF(@mixes=0;0;SUMIF(@kind;"water*";@grams)/@mixes))',
        },
      ],
    },
    {
      cells: [
        { at: 0, role: "label", text: "of it ice, and from the tap" },
        {
          at: 2,
          role: "computed",
          name: "ice",
          unit: "weight",
          spills: ["tap_water"],
          formula:
            '=IF(LEN(@water_temp)*LEN(@tap_temp)*LEN(@water_mix)=0;"";BAKE_ICE(@water_mix;@tap_temp;@water_temp;"{temperature}"))',
        },
      ],
    },
  ],
};

/** What tin and water mean, in sentences. */
export const notesBlock: Block = {
  block: "notes",
  left: 0,
  lines: [
    {
      when: "tin",
      cells: [
        {
          at: 0,
          role: "remark",
          name: "tin_note",
          unit: "text",
          formula:
            '=IF(LEN(@tin_dough)*LEN(@tin_capacity)*LEN(@tin_kind)=0;"";INDEX(BAKE_TINNOTE(@tin_dough;@tin_capacity;@tin_kind;"{weight}");1;1))',
        },
      ],
    },
    {
      when: "water",
      cells: [
        {
          at: 0,
          role: "remark",
          name: "water_note",
          unit: "text",
          formula:
            '=IF(LEN(@water_temp)*LEN(@tap_temp)=0;"";BAKE_WATERNOTE(@water_temp;@tap_temp;@yeast;"{temperature}"))',
        },
      ],
    },
  ],
};

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

/** Cautions, where the work can hurt somebody. */
export const cautionsBlock: Block = {
  block: "cautions",
  left: 0,
  lines: [
    "Raw flour, raw egg and raw dough are not for tasting. Keep hands and tools out of a running mixer. Hot water scalds; ice in dough is food.",
    "Fill and friction figures are guides from published tins and mixers: measure your own. Sold weights and allergens follow your local rules and your suppliers' labels.",
  ].map((text) => ({ cells: [{ at: 0, role: "caution" as const, text }] })),
};

function tinSize(place: number, labels: string) {
  return [
    {
      cells: [
        { at: 0, role: "label" as const, unit: "text" as const, formula: `=SWITCH(@tin_shape;${labels})` },
        { at: 1, role: "input" as const, name: `tin_size_${place}`, unit: "length" as const },
      ],
    },
  ];
}

function waterInput(text: string, name: string, unit: "temperature" | "minutes" | "factor") {
  return [
    {
      cells: [
        { at: 0, role: "label" as const, text },
        { at: 2, role: "input" as const, name, unit },
      ],
    },
  ];
}

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
