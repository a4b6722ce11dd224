// What a gram of each ingredient holds, through compounds and the shop's own formulas.
import { refuse } from "../base/refusal.ts";
import { builtInNamed, LABEL_PROTEIN_FACTOR, nameKey } from "../larder/built-in-larder.ts";
import { type Ingredient, ofBuiltIn } from "../larder/ingredient.ts";
import type { Kind } from "../larder/kinds.ts";
import { findIngredient, unknownName } from "../larder/larder.ts";
import { NUTRIENTS } from "./declared-figures.ts";
import { descend, type Inside, partsInside, type Sources } from "./own-formulas.ts";

/** Of a gram: grams of each nutrient as the tables print it, and of protein as a label counts it; a text names whose figure is not known. */
const FIGURES = [...NUTRIENTS, "label protein"] as const;
export type Figures = Readonly<Record<(typeof FIGURES)[number], number | string>>;

export const NOTHING = figuresOf(() => 0);

function figuresOf(of: (figure: keyof Figures) => number | string): Figures {
  return Object.fromEntries(FIGURES.map((figure) => [figure, of(figure)])) as Figures;
}

/** Sums of grams; one figure that is not known leaves the sum unknown. */
export function sumOf(all: readonly { readonly figures: Figures; readonly times: number }[]): Figures {
  return figuresOf((figure) => {
    let sum = 0;
    for (const { figures, times } of all) {
      const one = figures[figure];
      if (times === 0) continue;
      if (typeof one === "string") return one;
      sum += one * times;
    }
    return sum;
  });
}

/** Parts that make up the whole but for the rounding of their percentages. */
const isWhole = (parts: readonly Inside[]): boolean =>
  parts.every(({ share }) => share !== null) &&
  Math.abs(parts.reduce((sum, { share }) => sum + (share ?? 0), 0) - 1) <= 0.005;

/** A supplier's word for a part is looked up in the built-in table; a name of the shop's is the shop's. */
const partIngredient = (name: string): Ingredient | null => {
  const builtIn = builtInNamed(name);
  return builtIn === undefined ? null : ofBuiltIn(builtIn);
};

/** The figures of a gram of an ingredient: those of its row, else of what it is made of. */
export const figureSearch = (sources: Sources) =>
  descend<Figures>(sources, (name, inside) => {
    const ingredient = findIngredient(sources.larder, name) ?? null;
    const partsOfIt = partsInside(name, ingredient, sources);
    const typed = ingredient === null || partsOfIt?.formula != null ? null : ofIngredient(ingredient);
    const parts = partsOfIt?.parts ?? [];
    const isMixed = partsOfIt !== null && (partsOfIt.formula !== null || isWhole(parts));
    if (typed !== null && (!isMixed || FIGURES.every((figure) => typeof typed[figure] === "number"))) return typed;
    if (!isMixed) return typed ?? figuresOf(() => name);
    const mixed = sumOf(
      parts.map((part) => {
        const simple = part.isKnown ? null : partIngredient(part.name);
        const figures = part.isKnown
          ? inside(part.name)
          : simple === null
            ? figuresOf(() => part.name)
            : ofIngredient(simple);
        return { figures, times: part.share ?? 0 };
      }),
    );
    return figuresOf((figure) => (typeof typed?.[figure] === "number" ? typed[figure] : mixed[figure]));
  });

function ofIngredient(ingredient: Ingredient): Figures {
  const { name, protein, proteinFactor } = ingredient;
  return figuresOf((figure) => {
    if (figure !== "label protein") return ingredient[figure] ?? name;
    if (protein === null || protein === 0) return protein ?? name;
    return proteinFactor === null ? `${name} (protein factor)` : (protein * LABEL_PROTEIN_FACTOR) / proteinFactor;
  });
}

/** A kind speaks for a row whose name no table knows, and for the flour of a preferment. */
function ofKind({ word, flour }: Kind, search: (name: string) => Figures): Figures | null {
  if (word === "salt") return search("salt");
  if (word === "water" || word === "ice") return NOTHING;
  return flour > 0 ? sumOf([{ figures: search("flour"), times: flour }]) : null;
}

/** The figures of a row of a formula. */
export function figuresOfRow(
  name: string | null,
  kind: Kind | null,
  index: number,
  sources: Sources,
  search: (name: string) => Figures,
): Figures {
  const isFormula = name !== null && sources.formulas.has(nameKey(name));
  const ingredient = name === null ? undefined : findIngredient(sources.larder, name);
  if (name !== null && (isFormula || (ingredient !== undefined && ingredient.fat !== null))) return search(name);
  const byKind = kind === null ? null : ofKind(kind, search);
  if (byKind !== null) return byKind;
  if (name === null) return refuse("is blank though the row has an amount; enter its name", "ingredients", index + 1);
  if (ingredient === undefined) return refuse(unknownName(sources.larder, name), "ingredients", index + 1);
  return search(name);
}
