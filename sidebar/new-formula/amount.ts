import { isFault } from "../../shared/base/refusal.ts";
import { doughFor } from "../../shared/base/scaling.ts";
import { ratio, type Weight, weight } from "../../shared/base/units.ts";
import { type AmountOf, sum } from "../../shared/formula/formula.ts";
import type { Value } from "../../shared/sheet/model.ts";
import { type FieldFault, fieldFault } from "../kit/field-fault.ts";
import type { Draft, ReadField, TableRow } from "./draft.ts";
import { askPerArea, roundWeight } from "./per-area.ts";
import { readQuantity } from "./quantity.ts";
import { type AskedInput, isBlank, type TemplateInputs } from "./template-inputs.ts";

export type Amount = {
  readonly of: AmountOf;
  /** What is to be mixed, in the sheet's unit of weight; null while it cannot be told. */
  readonly whole: Weight | null;
  /** Tins wanted, where the sheet is made by tins; their fill makes the whole. */
  readonly tins: number | null;
  /** What a piece of the first size is scaled at: the dough that goes into the tin. */
  readonly scaled: Weight | null;
  /** Pieces of all sizes, where the sheet is made by pieces. */
  readonly pieces: number | null;
};

type Values = Map<string, Value | readonly Value[]>;

/** What the amount is read with. `needed` is false where weights in the rows tell how much it is. */
export type AmountInput = {
  readonly draft: Draft;
  /** The columns that the template has for sizes. */
  readonly sizes: readonly AskedInput[];
  readonly take: ReadField;
  readonly inputs: TemplateInputs;
  readonly values: Values;
  readonly faults: FieldFault[];
  readonly handling: number;
  readonly needed: boolean;
  /** Fat that is rolled in later, as a part of what is mixed. */
  readonly rolled: number;
};

/** How much to make, one way of those the template has; the fields of the other ways stay in the panel and are not sent. */
export function readAmount(input: AmountInput): Amount {
  const { draft, take, values, needed } = input;
  const none = { whole: null, tins: null, scaled: null, pieces: null };
  const by = draft.choices.by;
  values.set("by", by);
  const wanted = (says: string) => (needed ? says : undefined);
  switch (by) {
    case "tins":
      return { ...none, of: "dough", tins: take("tins", "Enter how many tins you want to fill.") };
    case "dough":
    case "batter": {
      const dough = take("dough_wanted", wanted(`Enter how much ${by} you want to make.`));
      askUnit("dough_wanted", dough, input);
      return { ...none, of: "dough", whole: mixed(dough, input) };
    }
    case "flour": {
      const flour = take("flour_wanted", wanted("Enter how much flour you want to use."));
      askUnit("flour_wanted", flour, input);
      return { ...none, of: "flour", whole: known(flour) };
    }
    case "trays":
      return { ...none, of: "dough", ...onTrays(input) };
    default:
      return { ...none, of: "dough", ...ofSizes(input) };
  }
}

/** Less than a small loaf is rarely an order: whoever thinks in kilos or pounds leaves the unit out. */
const MIN_BARE_AMOUNT = { g: 200, oz: 7 } as const;
const LARGER = { g: "kg", oz: "lb" } as const;

function askUnit(name: "dough_wanted" | "flour_wanted", value: number | null, { draft, faults }: AmountInput): void {
  const { weight: unit } = draft.units;
  const text = draft.fields[name].trim();
  if (value === null || value >= MIN_BARE_AMOUNT[unit] || /[a-z]/i.test(text)) return;
  const says = `Is it ${text} ${LARGER[unit]} or ${text} ${unit}? Enter the unit as well.`;
  faults.push(fieldFault(name, says));
}

const known = (value: number | null): Weight | null => (value === null ? null : weight(value));

/** Where something is rolled in later, less is mixed than is wanted. */
const mixed = (dough: number | null, { rolled }: AmountInput): Weight | null =>
  dough === null ? null : weight(dough / (1 + rolled));

type Size = { readonly pieces: number | null; readonly scaled: Weight | null };

function ofSizes(input: AmountInput) {
  const { faults, handling } = input;
  const before = faults.length;
  const sizes = readSizes(input, true);
  const pieces = sizes.reduce((sum, size) => sum + (size.pieces ?? 0), 0);
  const scaled = sizes[0]?.scaled ?? null;
  const isTold = sizes.length > 0 && sizes.every((size) => size.scaled !== null && size.pieces !== null);
  if (faults.length > before || !isTold) return { whole: null, scaled, pieces: null };
  const dough = sizes.map((size) => doughFor(size.pieces ?? 0, size.scaled ?? weight(0), ratio(0), ratio(handling)));
  return { whole: mixed(sum(dough), input), scaled, pieces };
}

/** Trays, the pieces on one, and what the first size weighs. */
function onTrays(input: AmountInput) {
  const { inputs, take, faults, handling } = input;
  const trays = take("trays", "Enter how many trays you want.");
  const on = inputs.number("tray_pieces");
  if (on === null && !faults.some(({ at }) => at === "tray_pieces"))
    faults.push(fieldFault("tray_pieces", "Enter how many pieces a tray takes.", true));
  const [size] = readSizes(input, false);
  const scaled = size?.scaled ?? null;
  const whole =
    trays === null || on === null || scaled === null ? null : weight((trays * on * scaled) / (1 - handling));
  return { whole, scaled };
}

const WORDS: Readonly<Record<string, { readonly label: string; readonly missing: string | null }>> = {
  size_pieces: { label: "The number of pieces", missing: "Enter how many pieces" },
  size_weight: { label: "The weight", missing: "Enter what one piece weighs when it is sold" },
  size_diameter: { label: "The diameter", missing: "Enter the diameter of a piece" },
  size_loss: { label: "The bake loss", missing: null },
};

/** The rows of sizes, blank ones passed over; without `counted` only what one piece is matters. */
function readSizes(input: AmountInput, counted: boolean): Size[] {
  const { draft, values, faults, needed } = input;
  const columns = input.sizes.filter(({ name }) => counted || name !== "size_pieces");
  const used = draft.sizes.map((size, index) => ({ size, index })).filter(({ size }) => !isBlank(size));
  if (used.length === 0 && (needed || !counted)) {
    for (const { name } of columns) {
      const { missing } = WORDS[name] ?? { missing: null };
      const says = name === "size_pieces" ? `${missing} you want.` : `${missing}.`;
      if (missing !== null) faults.push(fieldFault(`${name}/0`, says, true));
    }
  }
  const cells = used.map(({ size, index }) => columns.map((column) => readCell(column, size, index, input)));
  columns.forEach(({ name }, at) => {
    values.set(
      name,
      cells.map((row) => row[at] ?? null),
    );
  });
  if (used.length > 0 && columns.some(({ name }) => name === "size_diameter"))
    askPerArea(input.inputs, draft.units, faults);
  return cells.map((row) => {
    const of = (name: string) => {
      const value = row[columns.findIndex((column) => column.name === name)];
      return typeof value === "number" ? value : null;
    };
    return { pieces: of("size_pieces"), scaled: scaledAt(of, input) };
  });
}

function readCell(column: AskedInput, size: TableRow, index: number, { draft, faults }: AmountInput): Value {
  const { name, key, quantity, limits } = column;
  const text = (size[key] ?? "").trim();
  if (quantity === null) return text || null;
  const { label, missing } = WORDS[name] ?? { label: column.label, missing: null };
  const value = readQuantity(text, quantity, draft.units);
  const isOutside = typeof value === "number" && limits !== null && (value < limits.least || value > limits.most);
  if (isFault(value)) faults.push(fieldFault(`${name}/${index}`, `${label} of size ${index + 1} ${value.says}.`));
  else if (isOutside)
    faults.push(fieldFault(`${name}/${index}`, `${label} of size ${index + 1} is "${text}". ${limits.help}`));
  else if (value === null && missing !== null)
    faults.push(fieldFault(`${name}/${index}`, `${missing} (size ${index + 1}).`, true));
  return isFault(value) ? null : value;
}

/** What one piece is scaled at: what it is sold at before the oven's loss, or a round's area and the weight on it. */
function scaledAt(of: (name: string) => number | null, { inputs }: AmountInput): Weight | null {
  const sold = of("size_weight");
  if (sold !== null) return weight(sold / (1 - (of("size_loss") ?? 0)));
  return roundWeight(of("size_diameter"), inputs);
}
