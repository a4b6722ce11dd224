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
};

/** What people look for and no function works out, with where to turn instead. */
const NOT_HERE: Readonly<Record<string, string>> = {
  altitude: "No function here works out altitude. Use the table of your mill or local extension service.",
};

const wordsOf = (text: string): string[] =>
  foldText(text)
    .split(/[^\p{L}\d]+/u)
    .filter((word) => word !== "")
    .map(singularName);

function asked<T>(table: Readonly<Record<string, T>>, question: string): T[] {
  const words = new Set(wordsOf(question));
  return Object.entries(table).flatMap(([phrase, one]) =>
    wordsOf(phrase).every((word) => words.has(word)) ? [one] : [],
  );
}

/** How much a function answers the trade's words in a question: most for the first named, 0 where none is meant. */
export function answersTradeWord(name: string, question: string): number {
  const places = asked(ANSWERED_BY, question).map((names) => names.split(" ").indexOf(name.replace("BAKE_", "")));
  return Math.max(0, ...places.map((place) => (place < 0 ? 0 : 60 - 8 * place)));
}

/** A sentence where what is looked for is not here at all. */
export const notHere = (question: string): string | undefined => asked(NOT_HERE, question)[0];
