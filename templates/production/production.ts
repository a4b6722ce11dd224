// The manager's sheet of a production: orders of some days, what is made for them, doughs and mixes, levains and machines.
import type { Block, SheetModel } from "../../shared/sheet/model.ts";
import { CAUTIONS, cautionsOf } from "../blocks/name.ts";
import { doughHelpers } from "./dough-figures.ts";
import { doughsBlock, madeBlock, madeHelpers } from "./doughs.ts";
import { levainHelpers, levainsBlock, machinesBlock } from "./levains.ts";
import { daysBlock, ordersTable } from "./orders.ts";
import { dayHelpers, ordersHelpers } from "./orders-helpers.ts";
import { daysOf, helpersFrom, type ProductionShape } from "./shape.ts";
import { pageWidths } from "./widths.ts";

/** What stands on a production sheet, and on no other. */
export const PRODUCTION_MARK = "Production plan";

export function productionSheet(shape: ProductionShape): SheetModel {
  const left = helpersFrom(shape);
  const { page, usual } = pageWidths(shape);
  const beside = (block: string, lines: Block["lines"]): Block => ({ block, left: left + 1, lines });
  return {
    name: "production",
    title: "Production",
    says: "Orders of a day or several, what is made for them, doughs and mixes.",
    widths: [...page, ...Array<number>(95).fill(usual)],
    parts: ["regular"],
    frozen: 3,
    foldedFrom: left,
    bands: [
      [
        {
          block: "name",
          left: 0,
          lines: [
            { height: 30, cells: [{ at: 0, role: "title", name: "title", text: "Production" }] },
            { cells: [{ at: 0, role: "result", name: "result", unit: "text", formula: resultOf(shape) }] },
            { cells: [{ at: 0, role: "check", name: "check", unit: "text", formula: CHECK }] },
          ],
        },
        beside("single_helpers", [
          { cells: [{ at: 0, role: "helper", text: PRODUCTION_MARK }, ...dayHelpers(shape).heads] },
          { cells: dayHelpers(shape).figures },
          {
            cells: [
              { at: 0, role: "helper", name: "orders_say", unit: "text", formula: ORDERS_SAY },
              { at: 1, role: "helper", name: "regular_says", unit: "text", formula: regularSays(shape) },
              { at: 2, role: "helper", name: "lost_says", unit: "text", formula: lostSays(shape) },
              { at: 3, role: "helper", name: "formulas_say", unit: "text", formula: formulasSay(shape) },
              { at: 5, role: "helper", name: "mixer_most", unit: "plain", formula: mixerMost(shape) },
              { at: 4, role: "helper", name: "weighed_in", unit: "text", formula: '="{weight}"' },
            ],
          },
        ]),
      ],
      [daysBlock(shape)],
      [ordersTable(shape), ordersHelpers(shape)],
      [madeBlock(shape), beside("made_helpers", madeHelpers(shape))],
      [doughsBlock(shape), beside("dough_helpers", doughHelpers(shape))],
      ...(shape.levains.length === 0 ? [] : [[levainsBlock(shape), beside("levain_helpers", levainHelpers(shape))]]),
      [machinesBlock(shape)],
      [cautionsOf(CAUTIONS.raw)],
    ],
    sample: {},
    expects: {},
  };
}

/** What the largest mixer takes; 0 where one is there that takes anything. */
function mixerMost({ machines: n }: ProductionShape): string {
  const many = `@machine_number_1:@machine_number_${n}`;
  const mixers = `(@machine_kind_1:@machine_kind_${n}="mixer")*((LEN(${many})=0)+(${many}<>0)>0)`;
  const takes = `@machine_takes_1:@machine_takes_${n}`;
  return `=IF(SUMPRODUCT(${mixers}*(ISNUMBER(${takes})=FALSE()))>0;0;MAX(ARRAYFORMULA(IF(${mixers}>0;IF(ISNUMBER(${takes});${takes};0);0))))`;
}

function resultOf(shape: ProductionShape): string {
  const n = shape.days;
  const rows = shape.doughs.length;
  const items = shape.items.length;
  const pieces = `SUM(@m_1_1:@m_${items}_${n})`;
  const mixes = `SUM(@x_1_1:@x_${rows}_${n})`;
  const batches = `SUMPRODUCT((@x_1_1:@x_${rows}_${n}>0)*1)`;
  return `=IF(${mixes}=0;"Nothing is ordered yet.";${pieces}&" pieces · "&${mixes}&IF(${mixes}=1;" mix";" mixes")&" of "&${batches}&IF(${batches}=1;" batch";" batches")&" over ${n === 1 ? "one day" : `${n} days`}")`;
}

const CHECK =
  '=IFERROR(TRIM(@orders_say&@regular_says&@lost_says&@formulas_say);"A formula of this sheet is damaged: undo the last change.")';
/** The first row that is wrong, and how many more. */
const ORDERS_SAY =
  '=IF(SUMPRODUCT((LEN(@order_says)>0)*1)=0;"";INDEX(@order_says;MIN(ARRAYFORMULA(IF(LEN(@order_says)>0;ROW(@order_says);10^6)))-ROW(@order_says_top)+1;1)&IF(SUMPRODUCT((LEN(@order_says)>0)*1)>1;"And "&SUMPRODUCT((LEN(@order_says)>0)*1)-1&" more rows. ";""))';

/** Regular orders for these days that no row of the grid takes. */
function regularSays(shape: ProductionShape): string {
  if (!shape.hasRegular) return '=""';
  const all = daysOf(shape).map((day) => `SUM(INDEX(gramwright_regular;0;@weekday_${day}))`);
  const here = shape.columns.map((_, at) => `SUM(@reg_${at + 1})`);
  return `=IF(ABS(${all.join("+")}-(${here.join("+")}))<1/2;"";"Regular orders of "&ROUND(${all.join("+")}-(${here.join("+")});0)&" pieces have no row here: build the production again. ")`;
}

function lostSays({ items, doughs, days }: ProductionShape): string {
  const isOfDough = (item: number) => doughs.some(({ from, to }) => item >= from && item < to);
  const others = items.flatMap((_, item) =>
    isOfDough(item) ? [] : [`IF(COUNT(@each_${item + 1})=0;SUM(@m_${item + 1}_1:@m_${item + 1}_${days});0)`],
  );
  const lost = [`SUM(@lost_1:@lost_${doughs.length})`, ...others].join("+");
  return `=IF(${lost}>0;${lost}&" pieces have no weight on their formula sheets. ";"")`;
}

const formulasSay = ({ columns }: ProductionShape): string =>
  `=IF(COUNT(@e_1)+COUNT(@e_${columns.length})<ROWS(@e_1)+ROWS(@e_${columns.length});"The row of the orders' formulas is damaged: undo. ";"")`;
