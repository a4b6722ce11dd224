// What is typed into a formula's sheet once the formula has changed.
import type { TinShape } from "../tins/tin.ts";
import type { Content, Line } from "./content.ts";
import type { Formula, Row } from "./formula.ts";
import { isSize, rowsOf, SIZE_CELLS } from "./from-content.ts";

/** What is to be typed for the formula as it is now; what did not change stays as it was typed. */
export function contentOf(content: Content, before: Formula, after: Formula): Content {
  return {
    ...content,
    tables: {
      rows: linesOf(content.tables.rows, before, after),
      sizes: content.tables.sizes.map((line, at, all) =>
        isSize(line) ? sizeLine(line, all.slice(0, at).filter(isSize).length, before, after) : line,
      ),
      steps:
        before.steps === after.steps
          ? content.tables.steps
          : after.steps.map(({ name, minutes, temp, how }) => [name, minutes, temp, how || null]),
    },
    cells: {
      ...content.cells,
      ...apartCells(before, after),
      ...rollInCells(before, after),
      ...areaCells(before, after),
      ...tinCells(before, after),
    },
  };
}

function linesOf(lines: readonly Line[], before: Formula, after: Formula): Line[] {
  const { whole } = rowsOf(lines);
  const was = new Map(before.rows.map((row) => [row.id, row]));
  const now = new Map(after.rows.map((row) => [row.id, row]));
  const line = (row: Row, old: Row | undefined): Line => {
    const isSame = old !== undefined && Math.abs(old.amount - row.amount) <= 1e-12 * Math.max(1, old.amount);
    const typed = isSame ? (lines[row.id]?.[2] ?? null) : row.amount * whole;
    return [row.name || null, row.type, typed];
  };
  return [
    // A row that went leaves a blank one, so that what stands beside the others stays beside them.
    ...lines.map((cells, id): Line => {
      const row = now.get(id);
      if (row !== undefined) return line(row, was.get(id));
      return was.has(id) ? [null, null, null] : cells;
    }),
    ...after.rows.filter(({ id }) => id >= lines.length).map((row) => line(row, undefined)),
  ];
}

function sizeLine(line: Line, at: number, before: Formula, after: Formula): Line {
  const [was, now] = [before.sizes[at], after.sizes[at]];
  if (was === undefined || now === undefined) return line;
  const [name = null, baked = null, loss = null, diameter = null] = line;
  return [
    name,
    was.baked === now.baked ? baked : now.baked,
    loss,
    was.diameter === now.diameter ? diameter : (now.diameter ?? null),
  ];
}

type Cells = Content["cells"];

function apartCells(before: Formula, after: Formula): Cells {
  const { setApart, block } = after;
  if (setApart === before.setApart || block === null) return {};
  if (setApart === null) return { pre_share: null };
  const { sort, share, hydration, yeast } = setApart;
  const extra = block === "levain" ? {} : { pre_kind: sort, pre_yeast: yeast };
  return { ...extra, pre_share: share, pre_hydration: hydration };
}

function rollInCells(before: Formula, after: Formula): Cells {
  const { rollIn } = after;
  if (rollIn === null || rollIn === before.rollIn) return {};
  return { roll_in_name: rollIn.name || null, roll_in_share: rollIn.share, roll_in_of: rollIn.of };
}

/** Typed as it is now: the round that it was taken from is another. */
const areaCells = (before: Formula, after: Formula): Cells =>
  after.perArea === before.perArea ? {} : { per_area: after.perArea, known_weight: null, known_diameter: null };

/** What a sheet has a formula for; the capacity of other shapes is typed. */
const BY_FORMULA: readonly TinShape[] = ["box", "round"];

function tinCells(before: Formula, after: Formula): Cells {
  const { tin } = after;
  if (tin === null || tin === before.tin) return {};
  return {
    tin_shape: tin.shape,
    ...Object.fromEntries(SIZE_CELLS.map((name, at) => [name, tin.sizes[at] ?? null])),
    tin_own: BY_FORMULA.includes(tin.shape) ? null : Math.round(tin.capacity),
  };
}
