import { builtInRows } from "./built-in-larder.ts";

/** What a larder can start with: other names it goes by, and the allergens that it has by its nature. */
export type StartIngredient = {
  readonly name: string;
  readonly kind: string;
  readonly also: readonly string[];
  readonly usual: string;
  /** Its share of water, where the table has it. */
  readonly water: number | null;
};

/** What a larder can start with: the built-in table without water and ice, which nobody buys by the sack. */
export const startIngredients = (): StartIngredient[] =>
  builtInRows().flatMap(({ name, kind, alsoCalled, allergensByNature, water }) =>
    kind === "water" || kind === "ice"
      ? []
      : [{ name, kind, also: alsoCalled, usual: allergensByNature.join(", "), water }],
  );
