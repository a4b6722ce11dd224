// Another tin at the same fill, or another weight of a piece.
import { refuse } from "../base/refusal.ts";
import { showNumber, shownShare } from "../base/show.ts";
import { TIN_SHAPES, TIN_SIZES, type TinShape, tinCapacity, tinSizes } from "../tins/tin.ts";
import type { Change, Field } from "./change.ts";
import { fieldReader } from "./field-input.ts";
import { type Formula, type Size, scaledOf, type Tin } from "./formula.ts";

const SHAPES = Object.keys(TIN_SHAPES) as TinShape[];
const MAX_SIZES = 5;

export const otherTin: Change = {
  name: "tin",
  group: "Tin, pieces and amount",
  label: "Another tin at the same fill",
  words: "smaller larger pan square round loaf pullman depth fill capacity",
  fields: ({ tin, options }): Field[] => {
    const { length } = options;
    const shape = tin?.shape ?? "box";
    return [
      { name: "shape", label: "Shape", choices: SHAPES, start: shape },
      {
        name: "sizes",
        label: `Inside sizes (${length})`,
        start: "",
        isText: true,
        hint: "In this order, with ; between: box and oval length; width; depth. Round diameter; depth. Then those of the base, if it tapers.",
      },
    ];
  },
  apply: (formula, values) => {
    const { tin, options } = formula;
    if (tin === null)
      return refuse(
        goesByArea(formula)
          ? "These rounds go by their diameter and have no tin. Choose “Another diameter, or another thickness of a round”."
          : "This formula has no tin yet. Enter its tin on the sheet first, so that its fill is known.",
      );
    const input = fieldReader(otherTin.fields(formula), values);
    const shape = input.choice("shape", SHAPES);
    const sizes = sizesIn(input.text("sizes"), shape);
    const capacity = input.named({ sizes: "sizes" }, () => tinCapacity(shape, tinSizes(shape, sizes, options.length)));
    const times = capacity / tin.capacity;
    const other: Tin = { shape, sizes, capacity };
    return {
      formula: {
        ...formula,
        tin: other,
        sizes: formula.sizes.map((size) => ({ ...size, baked: timesOf(size.baked, times) })),
        batch: follows(formula) ? { ...formula.batch, amount: formula.batch.amount * times } : formula.batch,
      },
      line: `Tin of ${showNumber(tin.capacity, 0)} to ${showNumber(capacity, 0)} cm³, same fill`,
      rows: new Set(),
      parts: follows(formula) ? ["tin", "sizes", "batch"] : ["tin", "sizes"],
      notes: [
        `The new tin holds ${shownShare(times, 1)} of the old one, and so does each piece.`,
        "The percentages stay. A smaller or shallower piece bakes sooner: look at it early.",
      ],
      cautions: ["Check the printed weight of what you sell: your local rules say what a loaf must weigh."],
    };
  },
};

function sizesIn(text: string, shape: TinShape): number[] {
  const { needed } = TIN_SIZES[shape];
  const parts = text.split(/[;x×]/).map((one) => one.trim());
  if (text === "") refuse(`Inside sizes are blank. Enter ${needed.join("; ")}, with ; between.`);
  if (parts.length > MAX_SIZES) refuse(`Inside sizes are ${parts.length} numbers. Enter at most ${MAX_SIZES}.`);
  return parts.map((one) => {
    const value = Number(one.replace(",", "."));
    if (one === "" || !Number.isFinite(value) || value <= 0)
      refuse(`Inside sizes hold “${one}”, which is no length. Enter numbers above 0 with ; between.`);
    return value;
  });
}

const timesOf = (value: number | null, times: number): number | null => (value === null ? null : value * times);

/** Whether the dough follows from pieces or tins. */
const follows = ({ by }: Formula): boolean => by === "pieces" || by === "tins";

/** Whether pieces weigh what their area says. */
export const goesByArea = ({ sizes }: Formula): boolean =>
  sizes.length > 0 && sizes.every(({ baked, diameter = null }) => baked === null && diameter !== null);

export const nameOf = (size: Size, at: number): string => size.name || `size ${at + 1}`;

export const pieceWeight: Change = {
  name: "piece",
  group: "Tin, pieces and amount",
  label: "Another weight of a piece",
  words: "smaller larger roll loaf bun scaling weight size heavier lighter",
  fields: ({ sizes, options }): Field[] => {
    const names = sizes.map(nameOf);
    return [
      { name: "size", label: "Size", choices: names, start: names[0] ?? "" },
      { name: "weight", label: `Baked weight (${options.weight})`, start: "" },
    ];
  },
  apply: (formula, values) => {
    const { sizes, options } = formula;
    if (goesByArea(formula))
      refuse("These rounds go by their diameter. Choose “Another diameter, or another thickness of a round”.");
    if (sizes.length === 0) refuse("This formula has no sizes yet. Enter pieces and weight on the sheet first.");
    const input = fieldReader(pieceWeight.fields(formula), values);
    const at = sizes.map(nameOf).indexOf(input.choice("size", sizes.map(nameOf)));
    const baked = input.number("weight", "a weight such as 90", {
      above: 0,
      max: options.weight === "oz" ? 700 : 20_000,
    });
    const after = sizes.map((size, one) => (one === at ? { ...size, baked } : size));
    const [was, now] = [formula, { ...formula, sizes: after }].map(orderedIn) as [number, number];
    const isFollowed = isOrdered(formula) && was > 0;
    const size = sizes[at];
    return {
      formula: {
        ...formula,
        sizes: after,
        batch: isFollowed ? { ...formula.batch, amount: (formula.batch.amount * now) / was } : formula.batch,
      },
      line: `${size === undefined ? "Piece" : nameOf(size, at)} ${showNumber(size?.baked ?? 0)} ${options.weight} to ${showNumber(baked)} ${options.weight} baked`,
      rows: new Set(),
      parts: isFollowed ? ["sizes", "batch"] : ["sizes"],
      notes: ["The percentages and the bake loss stay. A smaller piece loses a little more: weigh the first ones."],
      cautions: ["Check the printed weight of what you sell: your local rules say what a loaf must weigh."],
    };
  },
};

/** What the ordered pieces are scaled at, together. */
export const orderedIn = (formula: Formula): number =>
  formula.sizes.reduce((sum, size) => sum + (size.pieces ?? 0) * (scaledOf(size, formula) ?? 0), 0);

/** Whether the dough follows from pieces of each size. */
export const isOrdered = ({ by }: Formula): boolean => by === "pieces" || by === "trays";
