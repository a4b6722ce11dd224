// The type of an ingredient that no table knows, by a word of its name.

import { singularName } from "../../base/words.ts";
import type { KindWord } from "../../larder/kind-words.ts";
import { type KindRead, kindOf } from "../kinds.ts";

/** What a few words of other languages are called in the tables, so that a cup of them can be weighed. */
const FOREIGN: ReadonlyMap<string, string> = new Map(
  Object.entries({
    ...{ wasser: "water", eau: "water", acqua: "water", agua: "water", vand: "water", vatten: "water" },
    ...{ salz: "salt", sel: "salt", sale: "salt", sal: "salt", zucker: "sugar", sucre: "sugar", zucchero: "sugar" },
    ...{ milch: "milk", lait: "milk", latte: "milk", leche: "milk", beurre: "butter", burro: "butter", honig: "honey" },
    ...{ miel: "honey", huile: "oil", ol: "oil", olio: "oil", hefe: "yeast", levure: "yeast", lievito: "yeast" },
    ...{
      mehl: "flour",
      farine: "flour",
      farina: "flour",
      harina: "flour",
      ei: "egg",
      eier: "egg",
      oeuf: "egg",
      œuf: "egg",
      uova: "egg",
    },
  }),
);
/** What the tables lack and what weighs the same by the spoon. From memory: golden syrup has 1.43 g/ml, and so has honey (SR28, 339 g a cup). */
const WEIGHS_AS: ReadonlyMap<string, string> = new Map([
  ["golden syrup", "honey"],
  ["light treacle", "honey"],
  ["glucose syrup", "corn syrup"],
]);
export const foreignName = (name: string): string | null => {
  const plain = singularName(name);
  const words = plain.split(" ");
  return WEIGHS_AS.get(plain) ?? words.map((word) => FOREIGN.get(word)).find((word) => word !== undefined) ?? null;
};

const MORE: readonly (readonly [KindWord, RegExp])[] = [
  ["salt", /\bsalt\b(?!ed)/],
  [
    "other",
    /\b(?:improver|conditioner|lecithin|zest|rosemary|thyme|oregano|basil|sage|dill|parsley|chive|herb|spice|pepper|peppercorn|paprika|turmeric|saffron|meat|mince|beef|pork|chicken|lamb|turkey|sausage|salmon|tuna|prawn|aniseed|anise|clove|allspice|mace|essence|extract|flavou?r(?:ing)?|garlic|onion|olive|tomatoe?|ascorbic|vitamin c|enzyme|calcium propionate|propionate|preservative|emulsifier|lye|nut|mandel|mandeln|amande|haselnusse|walnusse|noix|walnut|pecan|hazelnut|pistachio|cashew|macadamia|peanut)\b/,
  ],
  [
    "other",
    /\b(?:almond|marzipan|chocolate|cacao|chip|starch|gum|xanthan|vinegar|coffee|espresso|ham|bacon|spinach|colou?r(?:ing)?|malt powder|beer|stout|ale|rum|brandy|wine|bicarbonate|ammonium|baker'?s ammonia|bitter)\b/,
  ],
  [
    "fruit",
    /\b(?:\w*berry|\w*berrie|date|prune|peel|mixed peel|citron|lemon|orange|lime|banana|pear|plum|peach|mango|pineapple|currant|sultana|carrot|courgette|zucchini|pumpkin|potato|beetroot|puree|mincemeat)\b/,
  ],
  [
    "grain",
    /\b(?:seed|quinoa|millet|bulgur|wheat berry|kernel|chop|cracked|flake|grit|polenta|bran|germ|muesli|oat)\b/,
  ],
  ["sugar", /\b(?:dextrose|glucose|fructose|invert|jaggery|panela|demerara|turbinado|syrup|trimoline|candi|fondant)\b/],
  ["fat", /\b(?:butter|oil|fat|margarine|suet|dripping)\b/],
  ["dairy", /\b(?:milk|cream|yogh?urt|kefir|cheese|feta|ricotta|whey|skyr|creme fraiche)\b/],
  ["water", /\b(?:water)\b/],
];

/** Bakers leave out "flour": "whole rye 25 %". */
const FLOUR_ALONE =
  /^(?:(?:whole|wholegrain|wholemeal|dark|light|medium|white|coarse|fine|stoneground|organic) )+(?:rye|wheat|spelt|einkorn|emmer|kamut|khorasan)$/;

/** As the tables' own rule says it, else by words that only a recipe's names need. */
export function typeOf(name: string, text: string): KindRead {
  const usual = kindOf(undefined, text);
  const plain = singularName(name);
  if (/\bflour\b|mehl\b|^farin[ae]\b/.test(plain) && !/\bflour (?:tortilla|improver)/.test(plain)) return usual;
  if (FLOUR_ALONE.test(plain)) return { word: "flour", says: "", asks: "" };
  const type = MORE.find(([, words]) => words.test(plain))?.[0];
  if (type === "salt") return { word: type, says: "", asks: "" };
  if (usual.word !== "") return usual;
  const foreign = foreignName(name);
  if (foreign !== null && type === undefined) return kindOf(undefined, foreign);
  return type === undefined ? usual : { word: type, says: "", asks: "" };
}
