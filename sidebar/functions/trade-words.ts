// Words of the trade that no function's own help uses, and the functions that answer them, the nearest first.

import { foldText, singularName } from "../../shared/base/words.ts";

const ANSWERED_BY: Readonly<Record<string, string>> = {
  ddt: "DOUGHTEMP WATERTEMP HEATBALANCE",
  "desired dough temperature": "WATERTEMP DOUGHTEMP",
  yield: "PIECES UNITCOST DOUGHFOR",
  quid: "LABELSHARE",
  waste: "UNITCOST DOUGHFOR",
  trim: "UNITCOST",
  shrinkage: "DOUGHFOR",
  "bake loss": "DOUGHFOR",
  "dough for piece": "DOUGHFOR PIECES",
  retard: "YEASTPLAN YEASTTIME",
  retarder: "YEASTPLAN YEASTTIME",
  nutrition: "CONTENT",
  calorie: "CONTENT",
  pullman: "TINDOUGH TINGUIDE TINCAPACITY",
  "pan factor": "TINGUIDE TINDOUGH TINMATCH",
  hexagon: "TINCAPACITY TINAREA",
  octagon: "TINCAPACITY TINAREA",
  vat: "SELLPRICE",
  "sales tax": "SELLPRICE",
  "food cost": "SELLPRICE COSTS",
  margin: "SELLPRICE",
  markup: "SELLPRICE",
  sesame: "ALLERGENS LABELLIST",
  gluten: "ALLERGENS GLUTENADD",
  purchasing: "RAWNEEDS COSTS",
  bag: "RAWNEEDS",
  sack: "RAWNEEDS",
  "dried egg": "SWAP",
  "egg powder": "SWAP",
  "milk powder": "SWAP",
  lamination: "ROLLIN",
  croissant: "ROLLIN",
  "not enough": "STOCKLIMIT RESCALE",
  "run out": "STOCKLIMIT RESCALE",
  "only have": "STOCKLIMIT RESCALE",
  "too high": "REVIEW",
  "too much": "REVIEW",
};

/** What each function is asked for in the shop, in the words of both Englishes. */
const ASKED_FOR: Readonly<Record<string, string>> = {
  FLOURPCT: "baker's percent percentages work out math weights into percentages ratio",
  TRUEPCT: "percent of total whole recipe percentage composition",
  WEIGHTS: "formula percentages into weights grams from percent batch size make",
  FILLIN: "missing gaps complete mixed percentages and weights",
  RESCALE: "scale up down double halve half triple bigger smaller batch resize multiply convert recipe size",
  SCALEROUND: "round rounding scale division precision small scales readable weigh out grams step",
  STOCKLIMIT: "short runs out not enough only have left limit stock ingredient first",
  STAGES: "poolish biga sponge pre-ferment levain split stages two-stage prefermented final dough",
  REVIEW: "check wrong too much high low salty unusual mistake warning sanity salt yeast sugar fat level",
  DOUGHFOR: "dough for pieces loaves rolls baguettes buns pizzas make bake loss people portions scaling weight divide",
  PIECES: "number of loaves rolls balls ball pieces pizzas yield leftover remaining over count divide scaling weight",
  MIXES: "batches bowls mixer capacity minimum size bowl loads split how many mixes batch",
  ROLLIN: "lamination laminated croissant danish puff butter block fat",
  WEIGHTLIMITS: "legal weight underweight short tolerance average pack law trading standards minimum check weigh",
  TINCAPACITY:
    "tin pan volume capacity litres holds size water brim heart hexagon bundt muffin cup loaf tin round square",
  TINAREA: "sheet tray pan area square round cake brownie half full size change",
  TINMATCH: "change tin pan size swap instead square round inch which tin fits sheet conversion other",
  TINGUIDE: "fill factor pan factor tin ratio how full batter muffin cup bundt",
  TINDOUGH: "dough batter per tin pan loaf how much pullman muffin cup bundt fill",
  TINNOTE: "overfull underfull fits tin overflow too much dough",
  WATERTEMP: "DDT desired dough temperature cold warm chilled water winter summer flour room too",
  DOUGHTEMP: "DDT final dough temperature came out too warm cold hot result flour room",
  FRICTION: "mixer heat friction rise warms measured came out too warm factor",
  FRICTIONFIT: "log mixer friction average records",
  FRICTIONGUIDE: "spiral planetary hand mixer friction typical usual table heat",
  HEATBALANCE: "soaker scald milk temperature heat every ingredient cold butter frozen blank row",
  ICE: "crushed flake ice summer chill cool cold water",
  WATERNOTE: "too hot for yeast kill scald chill ice warm advice",
  YEASTSWAP: "convert yeast IDY ADY compressed cake fresh active dry instant osmotolerant",
  YEASTTIME: "longer shorter rise proof prove ferment overnight slow faster time bulk retard less yeast hours",
  YEASTPLAN: "retard retarder fridge schedule overnight bulk bench proof temperatures ferment cold hours",
  PREFERMENT:
    "poolish biga sponge pre-ferment pâte fermentée old dough prefermented flour levain build inoculation seed",
  STARTERFEED: "feed refresh mother levain sourdough starter stiff liquid build inoculation ratio hydration",
  FEEDPLAN: "build up starter feeds days levain mother refresh weekend sourdough stiff",
  CONTENT:
    "water fat sugar protein salt calories composition sweetness richness percentage solids nutrition saturated fibre",
  HYDRATION: "effective true hydration wet eggs milk butter liquid slack stiff dough water",
  PLAINWATER: "how much water to add hydration wanted eggs milk",
  SWAP: "substitute replace instead of vegan butter margarine oil honey sugar milk powder egg powder dried fresh",
  EXTRAWATER: "bran seeds soaker absorbs thirsty milk powder dry additions takes more water",
  GLUTENADD: "vital wheat gluten strengthen weak flour protein raise stronger",
  FLOURBLEND: "mix two flours blend strong plain protein bread flour all-purpose cut",
  LABELPROTEIN: "flour packet label protein rounded bag nutrition panel",
  GRAMS:
    "convert cups spoons ounces oz lb tbsp tsp tablespoon teaspoon pinch pint eggs stick metric weigh g american recipe",
  GRAMSPAN: "range of grams cups uncertain least most",
  SPOONS: "grams to cups tablespoon teaspoon pounds ounces home baker measurements imperial american",
  UNITCOST: "price per kilo gram litre pound case pack yield trim peel waste usable",
  COSTS: "cost costing of a recipe loaf batch ingredient food cost",
  SELLPRICE: "charge price VAT tax margin markup food cost retail wholesale sell",
  RAWNEEDS:
    "shopping list order purchasing buy production plan sacks bags tomorrow week stock take requirements orders",
  LABELLIST: "ingredient declaration list label packaging descending order",
  ALLERGENS:
    "contains nuts gluten milk dairy eggs soya fish crustaceans sesame mustard celery lupin molluscs sulphites free-from allergy",
  LABELSHARE: "QUID percentage declared fruit wholemeal almonds on the label",
  NUTRITION: "nutrition facts label panel kcal kJ energy calories saturated fat salt fibre per 100 g serving",
};

export const tradeWordsOf = (name: string): string => ASKED_FOR[name.replace("BAKE_", "")] ?? "";

/** What people look for and no function works out, with where to turn instead. */
const NOT_HERE: Readonly<Record<string, string>> = {
  altitude: "No function here works out altitude. Use the table of your mill or local extension service.",
};

const wordsOf = (text: string): string[] =>
  foldText(text)
    .split(/[^\p{L}\d]+/u)
    .filter((word) => word !== "")
    .map(singularName);

function wordsIn<T>(table: Readonly<Record<string, T>>, question: string): T[] {
  const words = new Set(wordsOf(question));
  return Object.entries(table).flatMap(([phrase, one]) =>
    wordsOf(phrase).every((word) => words.has(word)) ? [one] : [],
  );
}

/** How much a function answers the trade's words in a question: most for the first named, 0 where none is meant. */
export function answersTradeWord(name: string, question: string): number {
  const places = wordsIn(ANSWERED_BY, question).map((names) => names.split(" ").indexOf(name.replace("BAKE_", "")));
  return Math.max(0, ...places.map((place) => (place < 0 ? 0 : 60 - 8 * place)));
}

/** A sentence where what is looked for is not here at all. */
export const notHere = (question: string): string | undefined => wordsIn(NOT_HERE, question)[0];
