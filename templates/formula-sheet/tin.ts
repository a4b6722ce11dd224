import type { Block, Bounds, CellModel, Formula } from "../../shared/sheet/model.ts";
import { TIN_SHAPES } from "../../shared/tins/tin.ts";
import { TIN_DOUGH_KINDS } from "../../shared/tins/tin-guide.ts";
import { headingLine, label } from "../blocks/line.ts";
import { type Single, single } from "./singles.ts";

/** A tin of a bakery, from a muffin's to a plank's. */
const SIZES: Bounds = [
  { when: "in", least: 0.4, most: 60 },
  { least: 1, most: 150 },
];

const AT = 3;
const size = (place: number, at: number): CellModel => ({
  at,
  role: "input",
  name: `tin_size_${place}`,
  unit: "length",
  bounds: SIZES,
});
const named = (words: string): CellModel => ({
  at: 0,
  role: "label",
  unit: "text",
  formula: `=SWITCH(@tin_shape;${words})`,
});

/** Inside sizes of a tin, what it holds, and the dough it gets. */
export const tinBlock = (kind: string, mix: "dough" | "batter", left: number): Block => ({
  block: "tin",
  left,
  when: "tin",
  lines: [
    headingLine("Tin", 6),
    {
      cells: [
        label("Shape, sizes in {length}"),
        { at: AT, role: "input", name: "tin_shape", unit: "text", value: "box", choices: Object.keys(TIN_SHAPES) },
      ],
    },
    {
      cells: [
        named(
          '"box";"Length, width, depth";"round";"Diameter, depth, base diameter";"oval";"Length, width, depth";"ring";"Diameter, tube, depth";"dome";"Diameter, depth";"Sizes, see Functions"',
        ),
        size(1, AT),
        size(2, AT + 1),
        size(3, AT + 2),
      ],
    },
    {
      cells: [
        named(
          '"box";"Base length and width, if it tapers";"oval";"Base length and width, if it tapers";"ring";"Base and tube diameter, if it tapers";"Further sizes, if any"',
        ),
        size(4, AT),
        size(5, AT + 1),
      ],
    },
    {
      cells: [
        label(`Type of ${mix}`),
        { at: AT, role: "input", name: "tin_kind", unit: "text", value: kind, choices: Object.keys(TIN_DOUGH_KINDS) },
      ],
    },
    {
      cells: [
        label("Fill (g/cm³)"),
        { at: AT, role: "input", name: "tin_fill", unit: "fill", bounds: [0.05, 2] },
        { at: AT + 1, role: "remark", text: "the guide's, or your own" },
      ],
    },
    {
      cells: [
        label("Capacity, if you know it (cm³)"),
        { at: AT, role: "input", name: "tin_own", unit: "capacity", onSheet: true, bounds: [10, 200_000] },
        { at: AT + 1, role: "remark", text: "needed for odd shapes" },
      ],
    },
    {
      cells: [
        label("Capacity (cm³)"),
        {
          at: AT,
          role: "computed",
          name: "capacity_shown",
          unit: "capacity",
          formula: '=IF(@capacity=0;"";@capacity)',
        },
        { at: AT + 1, role: "remark", name: "capacity_note", unit: "text", formula: CAPACITY_NOTE },
      ],
    },
    {
      cells: [
        label(mix === "dough" ? "Dough in a tin ({weight})" : "Batter in a tin ({weight})"),
        {
          at: AT,
          role: "strong",
          name: "tin_dough_shown",
          unit: "graded",
          formula: '=IF(LEN(@tin_dough)=0;"";ROUND(@tin_dough;IF(@tin_dough>=100;0;1)))',
        },
      ],
    },
  ],
});

const CAPACITY_NOTE =
  '=IF(ISERROR(@tin_says);IF(ERROR.TYPE(@tin_says)=5;"needs Gramwright";@tin_says);IF(COUNT(@tin_says)=0;"";IF(ABS(@tin_says-@capacity)<=@capacity/100;"";"by its sizes "&ROUND(@tin_says;0))))';

/** The volume between two rectangles or two circles: the prismoidal rule, and the frustum of a cone. */
const BOX =
  "@tin_size_3/6*(@tin_size_1*@tin_size_2+@box_length*@box_width+(@tin_size_1+@box_length)*(@tin_size_2+@box_width))";
const ROUND_TIN = "PI()*@tin_size_2/12*(@tin_size_1*@tin_size_1+@tin_size_1*@round_base+@round_base*@round_base)";

export const SCALED_FIRST = "=IF(SUM(@size_counts)=0;0;INDEX(@scaling;MATCH(1;@size_counts;0);1))";

export const TIN_SINGLES: readonly Single[] = [
  single("Base length", "box_length", "=IF(N(@tin_size_4)>0;@tin_size_4;N(@tin_size_1))"),
  single("Base width", "box_width", "=IF(N(@tin_size_5)>0;@tin_size_5;N(@tin_size_2))"),
  single("Base diameter", "round_base", "=IF(N(@tin_size_3)>0;@tin_size_3;N(@tin_size_1))"),
  single(
    "Capacity of a box",
    "box_holds",
    boxOrRound('@tin_shape="box"', "(COUNT(@tin_size_1:@tin_size_3)=3)*(COUNT(@tin_size_4:@tin_size_5)<>1)", BOX),
  ),
  single(
    "Capacity of a round tin",
    "round_holds",
    boxOrRound(
      '@tin_shape="round"',
      "(COUNT(@tin_size_1:@tin_size_2)=2)*(COUNT(@tin_size_4:@tin_size_5)=0)",
      ROUND_TIN,
    ),
  ),
  single("Capacity", "capacity", "=IF(N(@tin_own)>0;@tin_own;@box_holds+@round_holds)"),
  single("Capacity, or blank", "tin_capacity", '=IF(@capacity>0;@capacity;"")'),
  single("Dough that fills it", "tin_takes", [
    // 1 oz is 28.349523125 g (international yard and pound agreement, 1959).
    { when: "oz", formula: "=@capacity*N(@tin_fill)*10^9/28349523125" },
    { formula: "=@capacity*N(@tin_fill)" },
  ]),
  single("Scaling weight of the first size", "scaled_first", SCALED_FIRST),
  single(
    "Dough in a tin",
    "tin_dough",
    '=IF(@by="pieces";IF(@scaled_first>0;@scaled_first;"");IF(@tin_takes>0;@tin_takes;""))',
  ),
  single(
    "Note on the fill",
    "tin_advice",
    '=IF((LEN(@tin_dough)=0)+(@capacity=0)>0;"";INDEX(BAKE_TINNOTE(@tin_dough;@capacity;@tin_kind;"{weight}");1;1))',
  ),
  single(
    "Capacity by its sizes",
    "tin_says",
    '=IF((COUNT(@tin_size_1:@tin_size_5)=0)+(@tin_shape="box")+(@tin_shape="round")>0;"";BAKE_TINCAPACITY(@tin_shape;{@tin_size_1;@tin_size_2;@tin_size_3;@tin_size_4;@tin_size_5};"{length}"))',
  ),
];

/** An inch is 2.54 cm. */
function boxOrRound(isShape: string, sizesAreThere: string, volume: string): Formula {
  const formula = (times: string) => `=IF((${isShape})*(${sizesAreThere})=1;${volume}${times};0)`;
  return [{ when: "in", formula: formula("*16387064/10^6") }, { formula: formula("") }];
}

/** Where a sheet has no tin. */
export const NO_TIN: readonly Single[] = [single("Dough that fills a tin", "tin_takes", "=0")];
