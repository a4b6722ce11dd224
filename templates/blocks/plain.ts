import type { Band, Block, CellModel, ColumnModel, SheetModel, Table } from "../../shared/sheet/model.ts";
import { WORKED_OUT } from "../../shared/sheet/model.ts";
import { headingLine } from "./line.ts";
import { LIQUID_COLUMNS, LIQUID_FIGURES } from "./plain-liquid.ts";
import { BY_PERCENT, BY_WEIGHT_TOO, rowColumns, rowFigures } from "./plain-rows.ts";
import { FEED_FIGURE, stageColumns, stageFigures } from "./plain-stages.ts";
import type { Figure } from "./plain-steps.ts";
import { TIN_FIGURES } from "./plain-tin.ts";
import { WATER_FIGURES } from "./plain-water.ts";

// The plain form of a formula sheet: its cells carry a second formula each, and this is what those formulas lean on.

/** Right of the table, and of what it costs where there is a larder; a column stays free between. */
const LEFT = 10;
const LEFT_OF_COSTS = 13;
/** The block of what is made has one line more. */
const LINES = 11;
/** A label over two columns, and its figure. */
const FIGURE_WIDTH = 3;

/** A formula sheet that can be built in the sheet's own formulas, for people without the add-on. */
export function withPlain(model: SheetModel): SheetModel {
  const tableOf = (band: Band) => band.find((item): item is Table => "table" in item && item.table === "formula");
  const formula = model.bands.map(tableOf).find((table) => table !== undefined);
  if (formula === undefined) return model;
  const wet = formula.columns.some(({ name }) => name === "used");
  const told = wet ? BY_PERCENT : BY_WEIGHT_TOO;
  const staged = formula.columns.some(({ name }) => name === "pre");
  const seed = model.bands
    .flat()
    .some((item) => "block" in item && item.lines.some(({ cells }) => cells.some(({ name }) => name === "seed_used")));
  const figures = [
    ...rowFigures(told),
    ...(staged ? stageFigures(seed) : []),
    ...(seed ? [FEED_FIGURE] : []),
    ...(wet ? LIQUID_FIGURES : []),
    ...(model.parts.includes("tin") ? TIN_FIGURES : []),
    ...(model.parts.includes("water") ? WATER_FIGURES : []),
  ];
  const columns = [...rowColumns(told), ...(staged ? stageColumns(seed) : []), ...(wet ? LIQUID_COLUMNS : [])];
  const width = LEFT_OF_COSTS + Math.max(widthOf(figures), columns.length);
  return {
    ...model,
    widths: [...model.widths, ...Array<number>(width - model.widths.length).fill(84)],
    bands: model.bands.map((band): Band => {
      if (tableOf(band) !== undefined) return [...band, ...placed((left) => workedTable(left, formula.rows, columns))];
      if (!band.some((item) => "block" in item && item.block === "make")) return band;
      return [...band, ...placed((left) => workedBlock(left, figures))];
    }),
  };
}

type Placed = (Block | Table) & { readonly when?: string };
const placed = (at: (left: number) => Placed): Placed[] => [
  { ...at(LEFT_OF_COSTS), when: "plain&cost" },
  { ...at(LEFT), when: "plain&!cost" },
];

const workedTable = (left: number, rows: number, columns: readonly ColumnModel[]): Table => ({
  table: "worked",
  left,
  rows,
  spare: 0,
  columns,
});

/** As high as the block beside it, so that the sheet is no longer for it. */
const workedBlock = (left: number, figures: readonly Figure[]): Block => ({
  block: "worked",
  left,
  lines: [
    headingLine(`${WORKED_OUT}: nothing to type`, widthOf(figures)),
    ...Array.from({ length: LINES }, (_, line) => ({
      cells: figures.flatMap((figure, place) => (place % LINES === line ? figureCells(figure, place) : [])),
    })),
  ],
});

function figureCells({ says, ...cell }: Figure, place: number): CellModel[] {
  const at = FIGURE_WIDTH * Math.floor(place / LINES);
  const when = cell.when === undefined ? {} : { when: cell.when };
  return [
    { at, role: "label", text: says, ...when },
    { role: "computed", unit: "plain", ...cell, at: at + FIGURE_WIDTH - 1 },
  ];
}

const widthOf = (figures: readonly Figure[]) => FIGURE_WIDTH * Math.ceil(figures.length / LINES);
