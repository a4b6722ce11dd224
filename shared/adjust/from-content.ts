// A formula out of what is typed into its sheet.
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
export const isSize = ([, baked, , diameter]: Line): boolean => number(baked) !== null || number(diameter) !== null;

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

export const SIZE_CELLS = ["tin_size_1", "tin_size_2", "tin_size_3", "tin_size_4", "tin_size_5"] as const;

function tinOf({ cells }: Content, capacity: number | null): Formula["tin"] {
  const shape = text(cells.tin_shape);
  if (capacity === null || !(capacity > 0) || !Object.keys(TIN_SHAPES).includes(shape)) return null;
  return { shape: shape as TinShape, sizes: SIZE_CELLS.map((name) => number(cells[name])), capacity };
}
