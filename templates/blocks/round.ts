import type { Block, Table } from "../../shared/sheet/model.ts";
import { computedLine, headingLine, inputLine } from "./line.ts";

/**
 * Bands of g/cm² and oz/in²: Pizza Napoletana as a traditional speciality (qualigeo.eu); Lehmann, Pizza Today 2012 and 2013, for thin and
 * regular; a Roman baker's rule (fragolosi) for the tray.
 */
const GUIDE_CM =
  '"thin and soft";"0.19 to 0.35 g/cm²";"thin";"0.35 to 0.44 g/cm²";"regular";"0.40 to 0.53 g/cm²";"thick";"0.50 to 0.65 g/cm²";""';
const GUIDE_IN =
  '"thin and soft";"0.043 to 0.080 oz/in²";"thin";"0.080 to 0.100 oz/in²";"regular";"0.091 to 0.121 oz/in²";"thick";"0.114 to 0.148 oz/in²";""';

/** How thick: a weight per area, typed or taken from a round that is known to be right. */
export const thicknessBlock: Block = {
  block: "thickness",
  left: 0,
  lines: [
    headingLine("Thickness", 3),
    {
      cells: [
        { at: 0, role: "label", text: "Style" },
        {
          at: 1,
          role: "input",
          name: "style",
          unit: "text",
          value: "thin",
          choices: ["thin and soft", "thin", "regular", "thick"],
        },
        {
          at: 2,
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
    inputLine("Weight per area ({weight}/{length}²)", "per_area", "per area"),
    inputLine("or a round: weight ({weight})", "known_weight", "weight"),
    inputLine("and its diameter ({length})", "known_diameter", "length"),
    computedLine("Circle over its square", "circle", "per area", '=BAKE_TINAREA("round";1;"cm")', {
      plain: ["=PI()/4"],
    }),
    computedLine(
      "Weight per area used",
      "per_area_used",
      "per area",
      '=IF(LEN(@per_area)>0;@per_area;IF(COUNT(@known_weight;@known_diameter)<2;"";IF(@known_diameter=0;"";@known_weight/(@circle*@known_diameter^2))))',
    ),
  ],
};

/** Rounds by their diameter: the weight follows from the area. */
export const roundsTable: Table = {
  table: "sizes",
  left: 3,
  rows: 5,
  columns: [
    { name: "size_name", head: "Size", unit: "text", role: "input" },
    { name: "size_pieces", head: "Pieces", unit: "count", role: "input" },
    { name: "size_diameter", head: "Diameter ({length})", unit: "length", role: "input" },
    {
      name: "size_area",
      head: "Area ({length}²)",
      unit: "figure",
      role: "computed",
      formula: '=ARRAYFORMULA(IF(LEN(@size_diameter)=0;"";@circle*@size_diameter^2))',
    },
    {
      name: "size_scaled",
      head: "Scale at ({weight})",
      unit: "weight",
      role: "computed",
      formula:
        '=IF(COUNT(@per_area_used)=0;"";ARRAYFORMULA(IF(LEN(@size_diameter)=0;"";@circle*@size_diameter^2*@per_area_used)))',
    },
    {
      name: "size_dough",
      head: "Dough to mix ({weight})",
      unit: "weight",
      role: "computed",
      formula:
        '=IF(COUNT(@per_area_used)=0;"";ARRAYFORMULA(IF(LEN(@size_pieces)*LEN(@size_scaled)=0;"";@size_pieces*@size_scaled/(1-@handling_loss))))',
    },
  ],
};
