// What is swapped for what, and which part of it is kept.
import type { SwapGoal } from "../enrichment/enrichment.ts";

export type Swap = {
  /** Names of the built-in table, as the row may go by. */
  readonly from: string;
  readonly to: string;
  /** What the other ingredient is called in a formula, and its type. */
  readonly name: string;
  readonly type: string;
  readonly preserved: SwapGoal;
};

const both = (
  preserved: SwapGoal,
  one: readonly [string, string, string],
  other: readonly [string, string, string],
): Swap[] => [
  { from: one[0], to: other[0], name: other[1], type: other[2], preserved },
  { from: other[0], to: one[0], name: one[1], type: one[2], preserved },
];

const EGG = ["whole egg", "Whole egg", "egg"] as const;
const MILK = ["whole milk", "Whole milk", "dairy"] as const;
const SKIM = ["skim milk", "Skim milk", "dairy"] as const;
const BUTTER = ["unsalted butter", "Unsalted butter", "fat"] as const;

/** Both ways. Solids are kept where a powder is the same thing dried, otherwise what the dough needs of it. */
export const SWAPS: readonly Swap[] = [
  ...both("solids", EGG, ["dried whole egg", "Dried whole egg", "egg"]),
  ...both("solids", ["egg white", "Egg white", "egg"], ["dried egg white", "Dried egg white", "egg"]),
  ...both("solids", ["egg yolk", "Egg yolk", "egg"], ["dried egg yolk", "Dried egg yolk", "egg"]),
  ...both("fat", EGG, ["egg yolk", "Egg yolk", "egg"]),
  ...both("solids", EGG, ["egg white", "Egg white", "egg"]),
  ...both("solids", MILK, ["whole milk powder", "Whole milk powder", "dairy"]),
  ...both("solids", SKIM, ["nonfat dry milk", "Skim milk powder", "dairy"]),
  ...both("solids", MILK, SKIM),
  ...both("fat", BUTTER, ["sunflower oil", "Sunflower oil", "fat"]),
  ...both("fat", ["salted butter", "Salted butter", "fat"], ["sunflower oil", "Sunflower oil", "fat"]),
  ...both("fat", BUTTER, ["margarine", "Margarine", "fat"]),
  ...both("sugar", ["granulated sugar", "Sugar", "sugar"], ["honey", "Honey", "sugar"]),
];
