// The words for what a row of a formula is.

export const KIND_WORDS = [
  "flour",
  "water",
  "salt",
  "yeast",
  "sugar",
  "fat",
  "egg",
  "dairy",
  "grain",
  "fruit",
  "ice",
  "other",
] as const;
export type KindWord = (typeof KIND_WORDS)[number];

export const PREFERMENT_WORDS = [
  "starter",
  "levain",
  "sourdough",
  "poolish",
  "biga",
  "sponge",
  "sour",
  "preferment",
] as const;
