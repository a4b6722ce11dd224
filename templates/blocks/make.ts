import type { Block, Line, Table, Unit } from "../../shared/sheet/model.ts";

/** Pieces that are not counted for want of a weight; without it there is no amount. */
const NO_WEIGHT = "no weight";

/** What the amount is of, in the words of the functions, which have no batter. */
export const AMOUNT_OF = 'IF(@by="flour";"flour";"dough")';

export type MakeSpec = {
  /** What comes out of the mixer. */
  readonly what: "dough" | "batter";
  /** What there is to choose from beside the dough and the flour. */
  readonly by: readonly ("pieces" | "tins" | "trays")[];
  /** The part that a count of tins or trays needs, and the cell that says what dough they take. */
  readonly counted?: { readonly by: "tins" | "trays"; readonly needs: string; readonly dough: string };
  /** What the dough wanted is divided by for what is mixed, where something is rolled in later. */
  readonly mixed?: string;
};

/** How much is made: by pieces, tins, dough or flour, in mixes that the mixer takes. */
export function makeBlockOf({ what, by, counted, mixed = "" }: MakeSpec): Block {
  const made = what === "dough" ? "Dough" : "Batter";
  const mixedWord = mixed === "" ? what : `base ${what}`;
  const otherwise = `IF(@by="flour";IF(LEN(@flour_wanted)=0;"";@flour_wanted);IF(LEN(@dough_wanted)=0;"";@dough_wanted${mixed}))`;
  const sized = `IF(SUM(@size_dough)>0;SUM(@size_dough)${mixed};"")`;
  const amount = (rest: string, ofSizes = sized) =>
    by.includes("pieces") ? `=IF(@by="pieces";${ofSizes};${rest})` : `=${rest}`;
  const amounts = (ofSizes?: string) => [
    ...(counted === undefined
      ? []
      : [{ when: counted.needs, formula: amount(`IF(@by="${counted.by}";${counted.dough};${otherwise})`, ofSizes) }]),
    { formula: amount(otherwise, ofSizes) },
  ];
  return {
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
            value: by[0] === counted?.by ? what : (by[0] ?? what),
            choices: [...by, what, "flour"],
            ...(counted === undefined ? {} : { choicesNeed: { [counted.by]: counted.needs } }),
          },
        ],
      },
      makeInput(
        mixed === "" ? `${made} wanted ({weight})` : `${made} with fat wanted ({weight})`,
        "dough_wanted",
        "weight",
      ),
      makeInput("Flour wanted ({weight})", "flour_wanted", "weight"),
      makeInput("Lost in bowl and on bench", "handling_loss", "share"),
      makeInput("Mixer takes at most ({weight})", "mixer_limit", "weight"),
      makeInput("Mixer needs at least ({weight})", "mixer_least", "weight"),
      makeInput("Scale steps, coarse ({weight})", "step_coarse", "plain", 5),
      makeInput("Scale steps, fine ({weight})", "step_fine", "plain"),
      {
        when: "oz",
        cells: [
          { at: 0, role: "label", text: "Grams per ounce" },
          { at: 1, role: "input", name: "grams_per_unit", unit: "plain", value: 28.349523125 },
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
            formula: amounts(),
            plain: [amounts(`IF(COUNTIF(@size_dough;"${NO_WEIGHT}")>0;"";${sized})`)],
          },
          { at: 2, role: "computed", name: "of", unit: "text", formula: `=IF(@by="flour";"flour";"${mixedWord}")` },
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
          { at: 0, role: "label", text: `${made} per mix ({weight})` },
          {
            at: 1,
            role: "computed",
            name: "mix_dough",
            unit: "weight",
            formula: '=IF(COUNT(@mixes)=0;"";IF(@mixes=0;0;@dough/@mixes))',
          },
          {
            at: 2,
            role: "remark",
            name: "mixer_full",
            unit: "text",
            formula:
              '=IF(COUNT(@mix_dough;@mixer_limit)<2;"";IF(@mixer_limit=0;"";ROUND(100*@mix_dough/@mixer_limit;0)&" % full"))',
          },
        ],
      },
    ],
  };
}

function makeInput(text: string, name: string, unit: Unit, value?: number): Line {
  return {
    cells: [
      { at: 0, role: "label", text },
      { at: 1, role: "input", name, unit, ...(value === undefined ? {} : { value }) },
    ],
  };
}

export const makeBlock: Block = makeBlockOf({
  what: "dough",
  by: ["pieces", "tins"],
  counted: { by: "tins", needs: "tin", dough: "@tins_dough" },
});

/** Losses divide, one after the other. */
const DOUGH_OF_SIZE =
  'IF(LEN(@size_pieces)*LEN(@size_weight)=0;"";@size_pieces*@size_weight/(1-@size_loss)/(1-@handling_loss))';

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
      plain: [`=ARRAYFORMULA(IF((LEN(@size_pieces)>0)*(LEN(@size_weight)=0)=1;"${NO_WEIGHT}";${DOUGH_OF_SIZE}))`],
    },
  ],
};

/** The same in the sheet's own sums, where calls of stages already wait for each other. */
export const plainSizesTable: Table = withColumn(sizesTable, "size_dough", {
  formula: `=ARRAYFORMULA(${DOUGH_OF_SIZE})`,
  plain: [`=ARRAYFORMULA(${DOUGH_OF_SIZE})`],
});

/** Of a dough that has something rolled in before it is divided. */
export const rolledSizesTable: Table = withColumn(sizesTable, "size_dough", { head: "Dough with fat ({weight})" });

function withColumn(table: Table, name: string, other: Partial<Table["columns"][number]>): Table {
  return { ...table, columns: table.columns.map((one) => (one.name === name ? { ...one, ...other } : one)) };
}
