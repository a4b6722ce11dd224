// A formula out of what is typed into its sheet, and what is typed once the formula has changed.
import { isFault, refuse } from "../base/refusal.ts";
import { quote } from "../base/show.ts";
import { percent, readPercents, shareOf } from "../formula/percents.ts";
import { type Kind, kind } from "../larder/kinds.ts";
import type { StyleName } from "../review/bands.ts";
import type { Value } from "../sheet/model.ts";
import { TIN_SHAPES, type TinShape } from "../tins/tin.ts";
import { type CellName, type Content, isBlank, type Line } from "./content.ts";
import {
  type Formula,
  type MethodStep,
  ROLLED_OF,
  type RollIn,
  type Row,
  type Size,
  SORTS,
  type Sort,
} from "./formula.ts";

/** What a sheet knows beside what is typed. */
export type Around = Pick<Formula, "batch" | "by" | "mixed" | "perArea"> & {
  readonly style: StyleName;
  /** Cells that the sheet has, blank ones too. */
  readonly has: (cell: CellName) => boolean;
  /** What a tin holds, worked out by the sheet; null without one. */
  readonly capacity: number | null;
  /** Pieces and price of each size, in the rows of the table. */
  readonly pieces: readonly (number | null)[];
  readonly prices: readonly (number | null)[];
};

/** Rows with their place in the list as their id; `whole` is what 100 % is typed as, and `frame` what it refers to. */
type Read = Pick<Formula, "rows" | "frame"> & { readonly whole: number };

const text = (value: Value | undefined): string => (isBlank(value) ? "" : String(value).trim());
const number = (value: Value | undefined): number | null => (typeof value === "number" ? value : null);

export function formulaOf(content: Content, around: Around): Formula {
  const { cells, tables, units } = content;
  const { rows, frame } = rowsOf(tables.rows);
  const block = !around.has("pre_share") ? null : around.has("seed_hydration") ? "levain" : "preferment";
  return {
    style: around.style,
    options: units,
    rollIn: around.has("roll_in_share") ? rollInOf(content) : null,
    rows,
    frame,
    block,
    setApart: setApartOf(content, block),
    batch: around.batch,
    by: around.by,
    mixed: around.mixed,
    sizes: tables.sizes.flatMap((line, at): Size[] => {
      const [name, baked, loss, diameter] = line;
      const cells = {
        name: text(name),
        pieces: around.pieces[at] ?? null,
        baked: number(baked),
        loss: number(loss) ?? 0,
        price: around.prices[at] ?? null,
        ...(number(diameter) === null ? {} : { diameter: number(diameter) }),
      };
      return isSize(line) ? [cells] : [];
    }),
    perArea: around.perArea,
    tin: tinOf(content, around.capacity),
    steps: tables.steps.flatMap(([name, minutes, temp, how]): MethodStep[] =>
      text(name) === "" ? [] : [{ name: text(name), minutes: number(minutes), temp: number(temp), how: text(how) }],
    ),
    temp: number(cells.dough_target),
  };
}

/** A row of the table that has a baked weight or a diameter. */
const isSize = ([, baked, , diameter]: Line): boolean => number(baked) !== null || number(diameter) !== null;

function rollInOf({ cells }: Content): RollIn {
  const of = ROLLED_OF.find((one) => one === text(cells.roll_in_of));
  // The sheet counts no fat where it is not known what its share is of.
  return {
    name: text(cells.roll_in_name),
    share: of === undefined ? 0 : Math.max(0, number(cells.roll_in_share) ?? 0),
    of: of ?? "base",
  };
}

/** Rows of a table as a formula counts them: those with a percentage. Refuses what the sheet cannot count with either. */
export function rowsOf(lines: readonly Line[]): Read {
  const rowList = lines.map(([name, type, share], id) => {
    if (isBlank(share)) return null;
    const [ownKind, ownShare] = [kind().read(text(type)), percent().read(share)];
    const who = text(name) || `Row ${id + 1}`;
    if (typeof share !== "number" || isFault(ownShare))
      return refuse(
        `${who} has ${quote(String(share))} where its percentage stands. Enter a number on the sheet first.`,
      );
    if (isFault(ownKind) || "unread" in ownKind)
      return refuse(`${who} has no type that can be read. Choose one on the sheet first.`);
    return { id, name: text(name), type: text(type), kind: ownKind as Kind, share: ownShare };
  });
  const counted = rowList.filter((one) => one !== null);
  if (counted.length === 0) refuse("The formula has no percentages yet. Enter them on the sheet first.");
  const kinds = rowList.map((one) => one?.kind ?? null);
  const shares = rowList.map((one) => one?.share ?? null);
  const { frame, style, shares: over } = readPercents(shares, kinds);
  const first = counted.find(({ share }) => share.value > 0);
  const firstOver = first === undefined ? 1 : (over[first.id] ?? 1);
  return {
    frame,
    whole: first === undefined ? 1 : shareOf(first.share, style) / firstOver / (style === "plain" ? 0.01 : 1),
    rows: counted.map(({ id, name, type, kind }): Row => ({ id, name, type, kind, amount: over[id] ?? 0 })),
  };
}

function setApartOf({ cells }: Content, block: Formula["block"]): Formula["setApart"] {
  const [share, hydration] = [number(cells.pre_share) ?? 0, number(cells.pre_hydration)];
  if (block === null || !(share > 0) || hydration === null) return null;
  const sort: Sort = block === "levain" ? "levain" : (SORTS.find((one) => one === text(cells.pre_kind)) ?? "poolish");
  return { sort, share, hydration, yeast: block === "levain" ? 0 : (number(cells.pre_yeast) ?? 0) };
}

const SIZE_CELLS = ["tin_size_1", "tin_size_2", "tin_size_3", "tin_size_4", "tin_size_5"] as const;

function tinOf({ cells }: Content, capacity: number | null): Formula["tin"] {
  const shape = text(cells.tin_shape);
  if (capacity === null || !(capacity > 0) || !Object.keys(TIN_SHAPES).includes(shape)) return null;
  return { shape: shape as TinShape, sizes: SIZE_CELLS.map((name) => number(cells[name])), capacity };
}

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
