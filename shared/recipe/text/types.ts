// The type of an ingredient that no table knows, by a word of its name.

import { singularName } from "../../base/words.ts";
import type { KindWord } from "../../larder/kind-words.ts";
import { type KindRead, kindOf } from "../kinds.ts";
import { foreignName } from "./other-tongues.ts";

const MORE: readonly (readonly [KindWord, RegExp])[] = [
  ["salt", /\bsalt\b(?!ed)/],
  [
    "other",
    /\b(?:improver|conditioner|lecithin|zest|rosemary|thyme|oregano|basil|sage|dill|mustard|horseradish|coriander|cilantro|mint|cumin|parsley|chive|herb|spice|pepper|peppercorn|paprika|turmeric|saffron|meat|mince|beef|pork|chicken|lamb|turkey|sausage|salmon|tuna|prawn|aniseed|anise|clove|allspice|mace|essence|extract|flavou?r(?:ing)?|garlic|onion|olive|tomatoe?|ascorbic|vitamin c|enzyme|calcium propionate|propionate|preservative|emulsifier|lye|nut|mandel|mandeln|amande|haselnusse|walnusse|noix|nozes?|nueces|walnut|pecan|hazelnut|pistachio|cashew|macadamia|peanut|(?:desiccated|shredded|flaked|grated|dried) coconut|speck|zwiebeln?)\b/,
  ],
  [
    "other",
    /\b(?:almond|marzipan|chocolate|cacao|chip|starch|gum|xanthan|vinegar|coffee|espresso|ham|bacon|spinach|colou?r(?:ing)?|malt powder|beer|stout|ale|rum|brandy|wine|bicarbonate|ammonium|baker'?s ammonia|bitter)\b/,
  ],
  [
    "fruit",
    /\b(?:fruit|fruta|frutta|frutas|frucht|fruchte|\w*berry|\w*berrie|date|prune|peel|mixed peel|citron|lemon|orange|lime|banana|pear|plum|peach|mango|pineapple|currant|sultana|carrot|courgette|zucchini|pumpkin|potato|beetroot|puree|mincemeat|succade|citronat|orangeat|zitronat)\b/,
  ],
  [
    "grain",
    /\b(?:seed|quinoa|millet|bulgur|wheat berry|kernel|chop|cracked|flake|grit|polenta|bran|germ|muesli|oat)\b/,
  ],
  ["sugar", /\b(?:dextrose|glucose|fructose|invert|jaggery|panela|demerara|turbinado|syrup|trimoline|candi|fondant)\b/],
  ["fat", /\b(?:(?:baking|soft|vegetable|olive|sunflower) spread|butter|oil|fat|margarine|suet|dripping)\b/],
  [
    "dairy",
    /\b(?:milk|cream|yogh?urt|kefir|cheese|feta|ricotta|whey|skyr|schmand|quark|sahne|creme fraiche|creme fraiche)\b/,
  ],
  ["water", /\b(?:water)\b|\btea$/],
];

/** Bakers leave out "flour": "whole rye 25 %". */
const FLOUR_ALONE =
  /^(?:(?:whole|wholegrain|wholemeal|dark|light|medium|white|coarse|fine|stoneground|organic) )*(?:rye|wheat|spelt|einkorn|emmer|kamut|khorasan)$|^(?:\w+ )?(?:rye|wheat|spelt) meal$|^t ?\d{2,3}$/;

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
