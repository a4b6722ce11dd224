// Lines that stand beside the ingredients: headings, steps of the method, flour for the bench.

import { singularName } from "../base/words.ts";
import { PREFERMENT_WORDS } from "../larder/kind-words.ts";

const METHOD =
  /^(?:the )?(?:method|directions?|instructions?|preparation|procedure|steps|how to make\b.*|zubereitung)$/;
/** Whether what follows tells how, not what. */
export const isMethodHeading = (text: string): boolean => METHOD.test(bare(text));

const bare = (text: string) =>
  singularName(text)
    .replace(/^[^\p{L}\d]+|[^\p{L}\d)]+$/gu, "")
    .trim();

const PARTS =
  "dough|final dough|main dough|final mix|soaker|tangzhong|scald|filling|topping|glaze|icing|frosting|crumble|streusel|egg wash|batter|sauce|ingredient|for the dough|overnight|day 1|day 2|next day";
const HEADING = new RegExp(`^(?:the )?(?:${PARTS.replace(/s\b/g, "s?")}|${PREFERMENT_WORDS.join("|")})$`);

/** A step begins with what to do. */
const STEP =
  /^(?:mix|add|stir|knead|bake|preheat|combine|fold|let|leave|shape|place|cover|whisk|beat|sift|pour|roll|divide|dissolve|turn|transfer|remove|bring|heat|allow|pre-heat|in a|on a|when|once|after|meanwhile|next|melt|grease|dust|brush|sprinkle|weigh|scale|proof|prove|refrigerate|spoon|spread|punch|knock|tip|put|set|work|blend|gently|slowly|gradually)\b/;
/** Words that are ingredients as well ("warm water", "cream cheese") until one of these follows. */
const STEP_WITH =
  /^(?:warm|cool|chill|cream|rest|cut|line|boil|soak|toast|scald|steam|score|cook)\s+(?:the|your|it|them|together|up|on|in|into|for|gently|slowly|until|each|both|all)\b/;
const FEWEST_LETTERS_OF_A_STEP = 24;
const BESIDE =
  /\b(?:dusting|greasing|brushing|sprinkling|rolling out|to serve|for serving|for the (?:tin|pan|tray|bowl|bench|counter))\b/;

type About = readonly ["heading" | "aside", string];

/** What a line is, if it is no ingredient; `hasAmount` where an amount was read in it. */
export function aboutLine(text: string, hasAmount: boolean): About | undefined {
  const plain = bare(text);
  if ((STEP.test(plain) || STEP_WITH.test(plain)) && plain.length >= FEWEST_LETTERS_OF_A_STEP) {
    return ["aside", hasAmount ? "Read as a step, though it names an amount." : "Read as a step of the method."];
  }
  if (hasAmount) return undefined;
  if (HEADING.test(plain) || /^for (?:the )?\p{L}+(?: \p{L}+){0,2}$/u.test(plain)) return ["heading", ""];
  if (BESIDE.test(plain)) return ["aside", "Used beside the dough, so not counted."];
  if (/^(?:makes|make|serves|serve|yields?)\b/.test(plain)) return ["aside", "Says what the recipe makes."];
  return undefined;
}
