import { isFault, refuse } from "../base/refusal.ts";
import type { Ratio } from "../base/units.ts";
import { type Reader, text } from "../cells/cell.ts";
import { isBlank } from "../cells/hint.ts";
import { priceCell } from "../cells/readers.ts";
import type { BuiltIn, Part } from "./built-in-larder.ts";
import type { KindWord } from "./kind-words.ts";
import {
  type Column,
  energyCell,
  extraWaterCell,
  kindCell,
  measuresCell,
  packCell,
  proteinFactorCell,
  shareOfWeight,
} from "./larder-columns.ts";
import type { Measures } from "./measures.ts";

/**
 * One ingredient as a formula meets it: the shop's own row, with the built-in table behind its blank composition and
 * measure cells. Shares are of the weight, energy is kcal per gram, null is not known. A cell is read when its property is
 * asked for; one that cannot be read refuses then (Refusal), so that a slip in a price does not stop a hydration.
 */
export type Ingredient = Readonly<Record<Part, Ratio | null>> & {
  readonly name: string;
  readonly kind: KindWord | null;
  readonly energy: number | null;
  /** Grams of its protein figure for a gram of its nitrogen; null beside a protein of the shop's own that does not say it. */
  readonly proteinFactor: number | null;
  /** Grams of water that a gram in dry form asks for on top; `extraWaterRough` marks a figure of low confidence. */
  readonly extraWater: number | null;
  readonly extraWaterRough: boolean;
  readonly measures: Measures | null;
  /** True when `measures` are the shop's, whose cup is the cup of the call; the built-in ones are US measures. */
  readonly ownMeasures: boolean;
  readonly alsoCalled: readonly string[];
  /** Price of a pack, and the pack as it was typed: a number of grams or text such as "5 lb". */
  readonly price: number | null;
  readonly pack: string | number | null;
  readonly usable: Ratio | null;
  readonly labelName: string | null;
  readonly madeOf: string | null;
  /** As typed; "none" means checked, null not known. Never filled from the built-in table. */
  readonly allergens: string | null;
  /** Row of the larder range, counted from its top; null for the built-in table's rows. */
  readonly row: number | null;
};

/** A column names the same few ingredients over and over. */
const built = new Map<BuiltIn, Ingredient>();

export function ofBuiltIn(builtIn: BuiltIn): Ingredient {
  const before = built.get(builtIn);
  if (before !== undefined) return before;
  const unknown = { price: null, pack: null, usable: null, labelName: null, madeOf: null, allergens: null, row: null };
  const ingredient = { ...builtIn, ...unknown, ownMeasures: false };
  built.set(builtIn, ingredient);
  return ingredient;
}

/** A row of the shop's larder: its name, its place, and its cells by column, the built-in row behind it. */
export type OwnRow = {
  readonly name: string;
  readonly alsoCalled: readonly string[];
  /** The keys of its name and of its other names, worked out once: a larder may be long. */
  readonly keys: readonly string[];
  readonly row: number;
  readonly cell: (column: Column) => unknown;
  readonly builtIn: BuiltIn | undefined;
};

const ingredientsOfRows = new WeakMap<OwnRow, Ingredient>();

export function ofRow(row: OwnRow): Ingredient {
  const before = ingredientsOfRows.get(row);
  if (before !== undefined) return before;
  const ingredient = ingredientOfRow(row);
  ingredientsOfRows.set(row, ingredient);
  return ingredient;
}

function ingredientOfRow({ name, alsoCalled, row, cell: raw, builtIn }: OwnRow): Ingredient {
  const known = new Map<Column, unknown>();
  const read = <T, D>(column: Column, reader: Reader<T>, otherwise: D): T | D => {
    if (known.has(column)) return known.get(column) as T | D;
    const value = isBlank(raw(column)) ? otherwise : reader.read(raw(column));
    if (isFault(value)) return refuse(`column "${column}" ${value.says}`, "larder", row);
    known.set(column, value);
    return value;
  };
  const part = (column: Part) => read(column, shareOfWeight(), builtIn?.[column] ?? null);
  return {
    name,
    row,
    alsoCalled,
    get kind() {
      return read("kind", kindCell, builtIn?.kind ?? null);
    },
    get water() {
      return part("water");
    },
    get protein() {
      return part("protein");
    },
    get fat() {
      return part("fat");
    },
    get saturates() {
      return part("saturates");
    },
    get carbohydrate() {
      return part("carbohydrate");
    },
    get sugar() {
      return part("sugar");
    },
    get fibre() {
      return part("fibre");
    },
    get salt() {
      return part("salt");
    },
    get energy() {
      return read("energy", energyCell(), builtIn?.energy ?? null);
    },
    get proteinFactor() {
      const isOwn = !isBlank(raw("protein"));
      return read("protein factor", proteinFactorCell(), isOwn ? null : (builtIn?.proteinFactor ?? null));
    },
    get extraWater() {
      return read("extra water", extraWaterCell(), builtIn?.extraWater ?? null);
    },
    get extraWaterRough() {
      return isBlank(raw("extra water")) && builtIn?.extraWaterRough === true;
    },
    get measures() {
      return read("measures", measuresCell, builtIn?.measures ?? null);
    },
    get ownMeasures() {
      return !isBlank(raw("measures"));
    },
    get price() {
      return read("price", priceCell(), null);
    },
    get pack() {
      return read("pack", packCell, null);
    },
    get usable() {
      return read("usable", shareOfWeight(), null);
    },
    get labelName() {
      return read("label name", text(), null);
    },
    get madeOf() {
      return read("made of", text(), null);
    },
    get allergens() {
      return read("allergens", text(), null);
    },
  };
}
