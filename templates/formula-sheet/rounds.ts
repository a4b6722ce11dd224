// Sizes of flat rounds: by their diameter, and a weight per area.
import type { Block, Bounds, ColumnModel } from "../../shared/sheet/model.ts";
import { headingLine, label } from "../blocks/line.ts";
import { AT, figureOf, figures, input } from "./block-lines.ts";
import { helper, numbers, shownColumn, showWhere, typedColumn } from "./column-kinds.ts";
import { RIGHT } from "./columns.ts";
import { type Single, single } from "./singles.ts";

/** From a bite to the largest oven's round. */
const DIAMETERS: Bounds = [
  { when: "in", least: 1, most: 60 },
  { least: 3, most: 150 },
];

export const ROUND_COLUMNS: readonly ColumnModel[] = [
  typedColumn("size_diameter", "Across ({length})", "length", { bounds: DIAMETERS }),
  shownColumn("area_shown", "Area ({length}²)", "capacity", showWhere("ROUND(@size_area;0)", "@size_counts=1")),
];

export const ROUND_HELPERS: readonly ColumnModel[] = [
  numbers("diameter_typed", "Diameter, as numbers", "=ARRAYFORMULA(IF(ISNUMBER(@size_diameter);@size_diameter;0))"),
  numbers(
    "size_typed",
    "Is a size",
    '=ARRAYFORMULA((ISNUMBER(@size_pieces)+(@by<>"pieces")*(COUNT(@size_pieces)=0)*(IFERROR(LEN(@size_pieces);1)=0)>0)*ISNUMBER(@size_diameter))',
  ),
  numbers(
    "size_counts",
    "Size counts",
    "=ARRAYFORMULA(@size_typed*(@pieces_typed>=0)*(@diameter_typed>0)*(@per_area_some>0)*(ROW(@size_typed)>MIN(ROW(@size_typed))))",
  ),
  numbers("size_area", "Area", "=ARRAYFORMULA(PI()/4*@diameter_typed*@diameter_typed)"),
  numbers("scaling", "Scaling weight", "=ARRAYFORMULA(@size_counts*@size_area*@per_area_some)"),
];

export const ROUND_WRONG: readonly ColumnModel[] = [
  numbers(
    "size_filled",
    "Something is typed",
    "=ARRAYFORMULA((IFERROR(LEN(@size_pieces);1)+IFERROR(LEN(@size_diameter);1)>0)*1)",
  ),
  helper(
    "size_needs",
    "What is missing",
    '=ARRAYFORMULA(IF(@size_filled*(@size_counts=0)=0;"";"row "&ROW(@size_pieces)&": "&IF(@size_typed*(@diameter_typed>0)=1;"enter the weight per area. ";"enter pieces and the diameter. ")))',
  ),
  helper(
    "weight_wrong",
    "Diameter that is wrong",
    [
      { when: "in", least: 1, most: 60 },
      { least: 3, most: 150 },
    ].map(({ when, least, most }) => ({
      ...(when === undefined ? {} : { when }),
      formula: `=ARRAYFORMULA(IF(@size_counts*((@diameter_typed<${least})+(@diameter_typed>${most})>0)=1;"row "&ROW(@size_diameter)&": diameter? ";""))`,
    })),
  ),
];

/**
 * Bands of g/cm² and oz/in²: Pizza Napoletana as a traditional speciality (qualigeo.eu); Lehmann, Pizza Today 2012 and 2013, for thin and
 * regular; a Roman baker's rule (fragolosi) for the tray.
 */
const GUIDE_CM =
  '"thin and soft";"0.19 to 0.35 g/cm²";"thin";"0.35 to 0.44 g/cm²";"regular";"0.40 to 0.53 g/cm²";"thick";"0.50 to 0.65 g/cm²";""';
const GUIDE_IN =
  '"thin and soft";"0.043 to 0.080 oz/in²";"thin";"0.080 to 0.100 oz/in²";"regular";"0.091 to 0.121 oz/in²";"thick";"0.114 to 0.148 oz/in²";""';

const PER_AREA: Bounds = [
  { when: "oz&in", least: 0.01, most: 2 },
  { when: "oz", least: 0.001, most: 0.4 },
  { when: "in", least: 0.3, most: 60 },
  { least: 0.05, most: 10 },
];
const ROUND_WEIGHT: Bounds = [
  { when: "oz", least: 0.2, most: 700 },
  { least: 5, most: 20_000 },
];

/** How thick: a weight per area, typed or taken from a round that is known to be right. */
export const thicknessBlock: Block = {
  block: "thickness",
  left: RIGHT,
  lines: [
    headingLine("Thickness", 6),
    {
      cells: [
        label("Style"),
        {
          at: AT,
          role: "input",
          name: "style",
          unit: "text",
          value: "thin",
          choices: ["thin and soft", "thin", "regular", "thick"],
        },
        {
          at: AT + 1,
          role: "remark",
          name: "style_guide",
          unit: "text",
          formula: [
            { when: "oz&in", formula: `=SWITCH(@style;${GUIDE_IN})` },
            { formula: `=SWITCH(@style;${GUIDE_CM})` },
          ],
        },
      ],
    },
    input("Weight per area ({weight}/{length}²)", "per_area", "per area", { bounds: PER_AREA }),
    input("or a round: its weight ({weight})", "known_weight", "graded", {
      bounds: ROUND_WEIGHT,
      asks: "or a round: its weight",
    }),
    input("Known base: diameter ({length})", "known_diameter", "length", { bounds: DIAMETERS }),
    figures("Dough weight per area used", figureOf("per_area_used", "per area")),
  ],
};

export const ROUND_SINGLES: readonly Single[] = [
  single(
    "Weight per area of the round",
    "known_per_area",
    '=IF((N(@known_weight)>0)*(N(@known_diameter)>0)=1;@known_weight/(PI()/4*@known_diameter*@known_diameter);"")',
  ),
  single(
    "Weights per area that differ",
    "area_says",
    '=IF((N(@per_area)<=0)+(COUNT(@known_per_area)=0)>0;"";IF(ABS(@known_per_area/@per_area-1)<=1/100;"";"Weight per area and the round differ: clear one of the two. "))',
  ),
  single("Weight per area", "per_area_some", "=IF(N(@per_area)>0;@per_area;N(@known_per_area))"),
  single("Weight per area, or blank", "per_area_used", '=IF(@per_area_some>0;@per_area_some;"")'),
];
