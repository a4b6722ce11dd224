// Salt, sugar or fat to a percentage of all flour.
import { shownShare } from "../base/show.ts";
import type { Change, Field } from "./change.ts";
import { editOf } from "./edit.ts";
import { fieldReader } from "./field-input.ts";
import { allFlour, amountOf, type Formula, ofKind, rollPart, shareOf } from "./formula.ts";
import { rollInTo } from "./roll-in.ts";

type Spec = {
  readonly word: "salt" | "sugar" | "fat";
  readonly label: string;
  readonly words: string;
  /** What a formula without any gets. */
  readonly ingredient: string;
  readonly most: number;
  readonly cautions?: readonly string[];
};

/** Where fat is rolled in, which of the two changes is asked. */
const OWN_FAT = "fat in the dough: the roll-in is left out";
const ALL_FAT = "all fat: the roll-in is counted, and changes";
const WHICHES = [OWN_FAT, ALL_FAT] as const;
const WHICH: Field = { name: "which", label: "Which fat", choices: WHICHES, start: OWN_FAT };
const isRolled = (formula: Formula, word: Spec["word"]): boolean => word === "fat" && rollPart(formula) > 0;

const changeOf = ({ word, label, words, ingredient, most, cautions = [] }: Spec): Change => {
  const change: Change = {
    name: word,
    group: "Salt, sugar and fat",
    label: `${label} to …`,
    words,
    fields: (formula): Field[] => [
      ...(isRolled(formula, word) ? [WHICH] : []),
      { name: "wanted", label: `${label} wanted (% of flour)`, start: "" },
      ...(ofKind(formula.rows, word).length > 0
        ? []
        : [{ name: "ingredient", label: "Ingredient to add", start: ingredient, isText: true }]),
    ],
    apply: (formula, values, larder) => {
      const input = fieldReader(change.fields(formula), values);
      const wanted = input.share("wanted", { min: 0, max: most });
      const now = shareOf(formula.rows, word);
      const rolls = isRolled(formula, word);
      if (rolls && input.choice("which", WHICHES) === ALL_FAT) return rollInTo(formula, wanted, now, larder);
      const edit = editOf(formula);
      const some = ofKind(formula.rows, word);
      const more = (wanted - now) * allFlour(formula.rows);
      const [only] = some;
      if (amountOf(some) > 0) edit.spread(some, more);
      else if (only !== undefined) edit.set(only.id, more);
      else edit.add(input.text("ingredient") || ingredient, word, more);
      return {
        formula: edit.done(formula),
        line: `${label}${rolls ? " in the dough" : ""} ${shownShare(now)} to ${shownShare(wanted)}`,
        rows: edit.moved(),
        parts: [],
        notes: [
          ...(some.length > 1 ? [`All ${some.length} rows of ${word} change in proportion.`] : []),
          ...(rolls ? ["The roll-in fat is not counted in it."] : []),
        ],
        cautions,
      };
    },
  };
  return change;
};

export const salt = changeOf({
  word: "salt",
  label: "Salt",
  words: "saltier less salt sodium slower faster",
  ingredient: "Salt",
  most: 0.1,
});
export const sugar = changeOf({
  word: "sugar",
  label: "Sugar",
  words: "sweeter less sweet browning",
  ingredient: "Sugar",
  most: 3,
});
export const fat = changeOf({
  word: "fat",
  label: "Fat",
  words: "butter oil richer leaner softer crumb",
  ingredient: "Unsalted butter",
  most: 3,
});
