// What is made for the orders: whole trays of pieces, and the doughs for them in equal mixes.
import type { Block, CellModel, Formula, Line } from "../../shared/sheet/model.ts";
import { headingLine } from "../blocks/line.ts";
import { doughSays, mixWords, shortMixWords } from "./dough-figures.ts";
import {
  afterDays,
  beforeDays,
  daysOf,
  hasManyDays,
  linkName,
  type ProductionShape,
  pageColumns,
  quoted,
} from "./shape.ts";

const headCell = (at: number, text: string, align?: "right"): CellModel => ({
  at,
  role: "label",
  text,
  ...(align === undefined ? {} : { align }),
});
/** Day columns of a table below the orders, by the first column of each day. */
const dayAt = (shape: ProductionShape, day: number): number =>
  beforeDays(shape) + shape.columns.findIndex((column) => column.day === day);
const COLUMNS = ["Spares", "In stock", "Tray of"] as const;

export function madeBlock(shape: ProductionShape): Block {
  const typedAt = afterDays(shape);
  const days = daysOf(shape);
  return {
    block: "made",
    left: 0,
    lines: [
      headingLine("To make (pieces)", pageColumns(shape)),
      {
        cells: [
          headCell(0, "Orders and spares, less finished and frozen stock, in whole trays"),
          ...COLUMNS.map((text, at) => headCell(typedAt + at, text, "right")),
        ],
      },
      ...shape.items.map(
        (_, at): Line => ({
          cells: [
            { at: 0, role: "label", name: `made_product_${at + 1}`, unit: "text" },
            { at: 1, role: "label", name: `made_size_${at + 1}`, unit: "text" },
            ...days.map(
              (day): CellModel => ({
                at: dayAt(shape, day),
                role: "strong",
                unit: "count",
                formula: `=IF(@m_${at + 1}_${day}=0;"";@m_${at + 1}_${day})`,
              }),
            ),
            ...(["spares", "stock", "tray"] as const).map(
              (name, which): CellModel => ({
                at: typedAt + which,
                role: "input",
                name: `${name}_${at + 1}`,
                unit: "count",
                bounds: [name === "tray" ? 1 : 0, 100_000],
              }),
            ),
          ],
        }),
      ),
    ],
  };
}

/** Beside an item: its key, what a piece takes of its dough, and for each day what is ordered, short, made, and its dough. */
export function madeHelpers(shape: ProductionShape): Line[] {
  const days = daysOf(shape);
  const heads = [
    "Key",
    "Dough of a piece",
    ...["Wanted", "Short", "Made", "Dough"].flatMap((says) => days.map((day) => `${says}, day ${day}`)),
    ...partDoughs(shape).map((dough) => `${shape.doughs[dough]?.name} in a piece`),
  ];
  return [
    { cells: [] },
    { cells: heads.map((text, at) => ({ at, role: "helper", unit: "text", formula: quoted(text) })) },
    ...shape.items.map((_, at): Line => ({ cells: itemHelpers(shape, at) })),
  ];
}

/** Doughs that are parts of other products. */
const partDoughs = ({ doughs }: ProductionShape): number[] =>
  doughs.flatMap(({ inItems }, dough) => (inItems.length === 0 ? [] : [dough]));

function itemHelpers(shape: ProductionShape, index: number): CellModel[] {
  const at = index + 1;
  const days = daysOf(shape);
  const n = days.length;
  const cell = (place: number, name: string, formula: Formula): CellModel => ({
    at: place,
    role: "helper",
    name,
    unit: "plain",
    formula,
  });
  const until = (day: number) => `SUM(@w_${at}_1:@w_${at}_${day})`;
  const stock = `MAX(0;N(@stock_${at}))`;
  const tray = `MAX(1;N(@tray_${at}))`;
  return [
    cell(0, `item_key_${at}`, `=LOWER(@made_product_${at}&"|"&@made_size_${at})`),
    cell(1, `each_${at}`, `=[${linkName("each", index)}]`),
    ...days.map((day, place) => {
      const columns = shape.columns.flatMap((column, which) => (column.day === day ? [`@e_${which + 1}`] : []));
      const ordered = `SUMPRODUCT((@order_item=@item_key_${at})*(${columns.join("+")}))`;
      return cell(2 + place, `w_${at}_${day}`, `=${ordered}+IF(${ordered}>0;MAX(0;N(@spares_${at}));0)`);
    }),
    ...days.map((day, place) =>
      cell(
        2 + n + place,
        `s_${at}_${day}`,
        `=@w_${at}_${day}-MIN(${stock};${until(day)})+MIN(${stock};${until(day)}-@w_${at}_${day})`,
      ),
    ),
    ...days.map((day, place) =>
      cell(
        2 + 2 * n + place,
        `m_${at}_${day}`,
        `=IF(@s_${at}_${day}>1/10^6;ROUNDUP(@s_${at}_${day}/${tray}*(1-1/10^9);0)*${tray};0)`,
      ),
    ),
    ...days.map((day, place) =>
      cell(2 + 3 * n + place, `d_${at}_${day}`, `=IF(COUNT(@each_${at})=0;0;@m_${at}_${day}*@each_${at})`),
    ),
    ...partDoughs(shape).map((dough, place) =>
      cell(
        2 + 4 * n + place,
        `per_${at}_${dough + 1}`,
        shape.doughs[dough]?.inItems.includes(index)
          ? `=N([${linkName("part_of", dough * shape.items.length + index)}])`
          : "=0",
      ),
    ),
  ];
}

export function doughsBlock(shape: ProductionShape): Block {
  const days = daysOf(shape);
  const last = afterDays(shape);
  const isShort = hasManyDays(shape);
  const words = isShort ? shortMixWords : mixWords;
  const says = `Equal mixes within the mixer's capacity${isShort ? (shape.isInOunces ? " (lb)" : " (kg)") : ""}`;
  return {
    block: "doughs",
    left: 0,
    lines: [
      headingLine("Doughs", pageColumns(shape)),
      {
        cells: [headCell(0, says), headCell(last + 2, "Earlier (min)", "right")],
      },
      ...shape.doughs.map((_, index): Line => {
        const at = index + 1;
        return {
          cells: [
            { at: 0, role: "label", name: `dough_${at}`, unit: "text" },
            ...days.map(
              (day): CellModel => ({
                at: dayAt(shape, day),
                role: "strong",
                unit: "text",
                align: "right",
                formula: words(`@x_${at}_${day}`, `@p_${at}_${day}`),
              }),
            ),
            { at: last, role: "remark", unit: "text", formula: doughSays(at) },
            { at: last + 2, role: "input", name: `earlier_${at}`, unit: "plain", bounds: [-720, 1440] },
          ],
        };
      }),
    ],
  };
}
