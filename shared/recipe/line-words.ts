// Words and marks between the amounts of a recipe line: what joins two amounts, what leaves one open, what only fills.
import { readAmount } from "./amount.ts";
import { type Link, type Pieces, textOf, wordsOf } from "./line-parts.ts";
import { LOOSE } from "./measure-words.ts";
import { isMark, isWord, type Token } from "./tokens.ts";

/** What joins two amounts, as it is kept among the words; "same" is not. */
const JOINTS: ReadonlyMap<string, Link | "and"> = new Map(
  Object.entries({
    ...{ plus: "plus", und: "plus", et: "plus", "+": "plus", and: "and", "&": "and" },
    ...{ or: "or", oder: "or", ou: "or", with: "with", mit: "with", "/": "same", "=": "same", "|": "same" },
  } as const),
);
const FILLERS = new Set(
  "about approx approximately ca circa roughly around another additional between extra".split(" "),
);
const BOUNDS = new Set(["under", "over", "least", "up", "minimum", "maximum", "min", "max"]);

const MULTIPLES = new Set(["x", "times", "twice", "thrice", "double", "triple"]);
/** Every word that says more than a name. */
const READ: ReadonlySet<string> = new Set([
  ...JOINTS.keys(),
  ...FILLERS,
  ...BOUNDS,
  ...LOOSE,
  ...MULTIPLES,
  "more",
  "to",
]);

/** Takes the word or mark at a place of the line; gives the place behind it. */
export function readWord(state: Pieces, tokens: readonly Token[], at: number): number {
  const token = tokens[at];
  if (token === undefined) return at + 1;
  const words = wordsOf(state);
  const low = token.is === "word" ? token.low : "";
  if (token.is === "word" && !READ.has(low)) {
    state.link = undefined;
    state.loose = undefined;
    words.push(token.text);
    return at + 1;
  }
  const joint = JOINTS.get(low || token.text);
  if (isMultiple(tokens, at))
    state.fault = { reason: "times", says: `${textOf(token)}? Enter "2 x 100 g", or the whole amount` };
  if (joint !== undefined) {
    state.link = joint === "and" ? "plus" : joint;
    if (joint !== "same") words.push(joint);
  } else if (LOOSE.has(low) || BOUNDS.has(low)) {
    state.loose = low === "up" ? "up to" : low;
    words.push(token.text);
    if (low === "up" && isWord(tokens[at + 1], "to")) return at + 2;
  } else if (token.is === "word") {
    const isMore = low === "more" && state.entries.length > 0;
    if (isMore || ((low === "extra" || low === "additional") && state.link === "plus")) state.more = true;
    const isFiller = FILLERS.has(low);
    if (!isFiller) state.link = undefined;
    if (!isFiller && low !== "to") state.loose = undefined;
    if (!isFiller || (low === "extra" && state.link === undefined)) words.push(token.text);
  } else if (isMark(token, "<>≤≥")) state.loose = token.text;
  else if (isMark(token, ",;:") || (isMark(token, "-") && token.spaced)) words.push(",");
  return at + 1;
}

/** "twice 100 g", "flour 500 g, x 2": something is multiplied, and nobody reads it as one amount. */
function isMultiple(tokens: readonly Token[], at: number): boolean {
  if (isWord(tokens[at], "x", "times")) return tokens[at + 1]?.is === "number";
  return isWord(tokens[at], "twice", "thrice", "double", "triple") && readAmount(tokens, at + 1, false) !== undefined;
}
