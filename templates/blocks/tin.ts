import type { Block } from "../../shared/sheet/model.ts";
import { TIN_SHAPES } from "../../shared/tins/tin.ts";
import { TIN_DOUGH_KINDS } from "../../shared/tins/tin-guide.ts";
import { PLAIN_CAPACITY, PLAIN_CAPACITY_NOTE, PLAIN_GUIDE } from "./plain-tin.ts";

export type TinSpec = {
  readonly what: "dough" | "batter";
  readonly kind: string;
  /** The dough of a tin is a piece's when making by pieces; without sizes, it is always the fill's. */
  readonly sizes: boolean;
};

/** Shape and inside sizes of a tin, its guide, and the dough it takes. */
export const tinBlockOf = ({ what, kind, sizes }: TinSpec): Block => ({
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
        { at: 0, role: "label", text: `Kind of ${what}` },
        {
          at: 1,
          role: "input",
          name: "tin_kind",
          unit: "text",
          value: kind,
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
          plain: PLAIN_GUIDE,
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
          plain: PLAIN_CAPACITY,
        },
        { at: 2, role: "remark", name: "tin_says", unit: "text", formula: PLAIN_CAPACITY_NOTE, when: "plain" },
      ],
    },
    {
      cells: [
        { at: 0, role: "label", text: `${made(what)} in one tin ({weight})` },
        {
          at: 1,
          role: "computed",
          name: "tin_dough",
          unit: "weight",
          formula: [
            {
              when: "oz",
              formula: orPiece(
                sizes,
                'IF(LEN(@tin_capacity)=0;"";IF(LEN(@tin_fill)>0;@tin_capacity*@tin_fill/@grams_per_unit;IF(LEN(@guide_usual)=0;"";@tin_capacity*@guide_usual/@grams_per_unit)))',
              ),
            },
            {
              formula: orPiece(
                sizes,
                'IF(LEN(@tin_capacity)=0;"";IF(LEN(@tin_fill)>0;@tin_capacity*@tin_fill;IF(LEN(@guide_usual)=0;"";@tin_capacity*@guide_usual)))',
              ),
            },
          ],
        },
      ],
    },
    {
      cells: [
        { at: 0, role: "label", text: `${made(what)} for those tins ({weight})` },
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
});

const made = (what: TinSpec["what"]) => (what === "dough" ? "Dough" : "Batter");
const orPiece = (sizes: boolean, filled: string) =>
  sizes ? `=IF(@by="pieces";INDEX(@size_scaled;2;1);${filled})` : `=${filled}`;

export const tinBlock: Block = tinBlockOf({ what: "dough", kind: "white", sizes: true });

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
