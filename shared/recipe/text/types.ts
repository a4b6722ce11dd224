// The type of an ingredient that no table knows, by a word of its name.

import { singularName } from "../../base/words.ts";
import type { KindWord } from "../../larder/kind-words.ts";
import { type KindRead, kindOf, prefermentIn } from "../kinds.ts";
import { foreignName } from "./other-tongues.ts";

const MORE: readonly (readonly [KindWord, RegExp])[] = [
  ["salt", /\bsalt\b(?!ed)/],
  [
    "other",
    /\b(?:backmittel|backpulver|natron|vanillin|zimt|kanel|cannella|cannelle|cynamon|canela|kardemumma|kardamom|cardamom|muskat|kummel|anis|mohn|bakpulver|levure chimique|lievito per dolci|impulsor|correcteur|ameliorant|migliorante|schoko\w*|schokolade|cioccolato|chocolat|kakao|cacao|carne|ternera|pollo|jamon|hackfleisch|hack|kott|kjott|viande|cebolla|cipolla|oignon|lok|ajo|aglio|ail|sosa|mandel|mandeln|amande|haselnusse|walnusse|noix|nozes?|nueces|speck|zwiebeln?)\b/,
  ],
  [
    "other",
    /\b(?:improver|conditioner|caustic soda|rusk|cayenne|lecithin|zest|rosemary|thyme|oregano|basil|sage|dill|mustard|horseradish|coriander|cilantro|mint|cumin|parsley|chive|herb|spice|pepper|peppercorn|paprika|turmeric|saffron|meat|mince|beef|pork|chicken|lamb|turkey|sausage|salmon|tuna|prawn|aniseed|anise|clove|allspice|mace|essence|extract|flavou?r(?:ing)?|garlic|onion|olive|tomatoe?|ascorbic|vitamin c|enzyme|calcium propionate|propionate|preservative|emulsifier|lye|nut|walnut|pecan|hazelnut|pistachio|cashew|macadamia|peanut|(?:desiccated|shredded|flaked|grated|dried) coconut)\b/,
  ],
  [
    "other",
    /\b(?:almond|marzipan|chocolate|cacao|chip|starch|gum|xanthan|vinegar|coffee|espresso|ham|bacon|spinach|colou?r(?:ing)?|malt powder|beer|stout|ale|rum|brandy|wine|bicarbonate|ammonium|baker'?s ammonia|bitter)\b/,
  ],
  [
    "fruit",
    /\b(?:fruit|fruta|frutta|frutas|frucht|fruchte|\w*berry|\w*berrie|date|prune|peel|mixed peel|citron|lemon|orange|lime|banana|pear|plum|peach|mango|pineapple|currant|sultana|carrot|courgette|zucchini|pumpkin|potato|beetroot|puree|mincemeat|rosine|rozijn|rosiner|russin|raisin|uvetta|pasa|rodzynki|apfel|apple|pomme|mela|kirsche|aprikose|zitrone\w*|limone|citron|succade|citronat|orangeat|zitronat)\b/,
  ],
  [
    "grain",
    /\b(?:seed|\w*korner|\w*kerne|leinsamen|sesam|sesamo|graine|semi|pipas|\w*flocken|havregryn|\w*kerner|\w*karnor|linfro|rugkerner|solsikkekerner|kruska|schrot|\w*schrot|quinoa|millet|bulgur|wheat berry|kernel|chop|cracked|flake|grit|polenta|bran|germ|muesli|oat)\b/,
  ],
  [
    "sugar",
    /\b(?:\w*zucker|\w*sirup|sirap|rorsocker|farin|melasse|melassa|miel|miele|honig|ahornsirup|cassonade|dextrose|glucose|fructose|invert|jaggery|panela|demerara|turbinado|syrup|trimoline|candi|fondant)\b/,
  ],
  [
    "fat",
    /\b(?:\w*butter|\w*margarine|\w*schmalz|strutto|saindoux|manteca|(?:baking|soft|vegetable|olive|sunflower) spread|butter|oil|fat|margarine|suet|dripping)\b/,
  ],
  [
    "dairy",
    /\b(?:\w*quark|joghurt|yaourt|\w*kase|rahm|obers|grädde|gradde|flote|flode|panna|nata|smetana|maslanka|twarog|creme|fromage|formaggio|milchpulver|milk|cream|yogh?urt|kefir|cheese|feta|ricotta|whey|skyr|schmand|quark|sahne|creme fraiche|creme fraiche)\b/,
  ],
  ["water", /\b(?:water|wody|woda|bassinage)\b|\btea$/],
];

/** Bakers leave out "flour": "whole rye 25 %". */
const FLOUR_ALONE =
  /^(?:(?:whole|wholegrain|wholemeal|dark|light|medium|white|coarse|fine|stoneground|organic) )*(?:rye|wheat|spelt|einkorn|emmer|kamut|khorasan)$|^(?:\w+ )?(?:rye|wheat|spelt) meal$|^t ?\d{2,3}$|^(?:(?:extra|very) )?(?:strong|soft)(?: (?:white|brown|wholemeal|bread))?$|^tipo (?:0{1,2}|1|2)$|^(?:seigle|froment|epeautre|dinkel|roggen|weizen)(?: integral| complet)?(?: t ?\d{2,3}| \d{3,4})?$/;

/** As the tables' own rule says it, else by words that only a recipe's names need. */
export function typeOf(name: string, text: string): KindRead {
  const usual = kindOf(undefined, text);
  const plain = singularName(name);
  const own = text === name ? usual : kindOf(undefined, name);
  if (/\bflour\b|mehl\b|^farin[ae]\b/.test(plain) && !/\bflour (?:tortilla|improver)/.test(plain)) return usual;
  if (FLOUR_ALONE.test(plain)) return { word: "flour", says: "", asks: "" };
  const type = MORE.find(([, words]) => words.test(plain))?.[0];
  if (type === "salt") return { word: type, says: "", asks: "" };
  if (own.word !== "" || prefermentIn(name) !== undefined) return usual;
  // "Cold tea (soak the fruit overnight)" is no fruit: its name says more than what stands beside it.
  if (type !== undefined) return { word: type, says: "", asks: "" };
  if (foreignName(name) === null && usual.word !== "") return usual;
  const foreign = foreignName(name);
  if (foreign !== null && type === undefined) return kindOf(undefined, foreign);
  return type === undefined ? usual : { word: type, says: "", asks: "" };
}
