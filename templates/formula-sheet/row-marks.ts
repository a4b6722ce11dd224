// A mark beside every row that has a place of its own, so that the sheet sees it where it was dragged into a table.
import type { Block, CellModel, Table } from "../../shared/sheet/model.ts";
import { helper } from "./column-kinds.ts";
import { MARKS, RIGHT } from "./columns.ts";
import { type Single, single } from "./singles.ts";

const MARK = '="."';

/** Every line of a block has a mark; a block without another beside it may have both. */
export function withMarks(block: Block, isAlone = false): Block {
  const sides = isAlone ? (["left", "right"] as const) : ([block.left < RIGHT ? "left" : "right"] as const);
  const marks = (at: number) =>
    sides.map((side): CellModel => {
      const name = `${block.block}_mark_${side}_${at + 1}`;
      return { at: MARKS[side] - block.left, role: "helper", name, unit: "plain", formula: MARK };
    });
  return { ...block, lines: block.lines.map((line, at) => ({ ...line, cells: [...line.cells, ...marks(at)] })) };
}

/** Of a table the headings and the hidden row have both marks and the total one; no other row has any, so that it may be inserted, moved and sorted. */
export function marksOf({ table, rows, spare, total, when }: Table): Table {
  return {
    table: `${table}_marks`,
    left: MARKS.left,
    rows,
    hidden: true,
    columns: (["left", "right"] as const).map((side) =>
      helper(`${table}_mark_${side}`, `Rows that stay, ${table}, ${side}`, MARK),
    ),
    ...(spare === undefined ? {} : { spare }),
    ...(when === undefined ? {} : { when }),
    ...(total === undefined
      ? {}
      : { total: [{ at: 0, role: "helper", name: `${table}_total_mark`, unit: "plain", formula: MARK }] }),
  };
}

/** Marks from a table's hidden row to what follows it: the hidden row's, then those of the next table, or of the total and the next line. */
const ALONE = {
  "@sizes_mark_left_top:@formula_mark_right_top": 6,
  "@formula_mark_left_top:@under_mark_right_1": 5,
};
const WITH_STEPS = { ...ALONE, "@steps_mark_left_top:@cost_mark_right_1": 4 };
const alone = (stretches: Readonly<Record<string, number>>): string => {
  const each = Object.entries(stretches).map(([range, marks]) => `(COUNTA(${range})=${marks})`);
  return `=IF(${each.join("*")}=1;"";"A row was moved into a table that it is no part of: undo. ")`;
};

export const MARK_SINGLES: readonly Single[] = [
  single("Tables stand alone", "alone_says", [
    { when: "steps", formula: alone(WITH_STEPS) },
    { formula: alone(ALONE) },
  ]),
];
