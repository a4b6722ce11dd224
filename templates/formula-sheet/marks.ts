// A mark beside every row that belongs to one place, so that the sheet sees it where it was dragged into a table.
import type { Block, CellModel, ColumnModel, Table } from "../../shared/sheet/model.ts";
import { helper } from "./column-kinds.ts";
import { MARKS } from "./columns.ts";
import { type Single, single } from "./singles.ts";

const MARK = ".";

/** Every line of a block has a mark; rows of a table have none, so that they may be inserted, sorted and deleted. */
export function withMarks(block: Block): Block {
  const mark = (at: number): CellModel => ({
    at: MARKS - block.left,
    role: "helper",
    name: `${block.block}_mark_${at + 1}`,
    unit: "plain",
    text: MARK,
  });
  const lines = block.lines.map((line, at) => ({ ...line, cells: [...line.cells, mark(at)] }));
  return { ...block, lines };
}

/** A table's marks: its heading, one in the hidden row, and one beside its total. */
export function marksOf({ table, rows, spare, total, when }: Table): Table {
  const column: ColumnModel = helper(`${table}_marks`, `Rows that stay, ${table}`, `="${MARK}"`);
  return {
    table: `${table}_marks_table`,
    left: MARKS,
    rows,
    hidden: true,
    columns: [column],
    ...(spare === undefined ? {} : { spare }),
    ...(when === undefined ? {} : { when }),
    ...(total === undefined
      ? {}
      : { total: [{ at: 0, role: "helper", name: `${table}_total_mark`, unit: "plain", text: MARK }] }),
  };
}

/** Marks from a table's hidden row to what follows it: its own, and that of the next headings and their hidden row, its total or the next line. */
const ALONE = { "@sizes_marks_top:@formula_marks_top": 3, "@formula_marks_top:@held_mark_1": 3 };
const WITH_STEPS = { ...ALONE, "@steps_marks_top:@setup_mark_1": 2 };
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
