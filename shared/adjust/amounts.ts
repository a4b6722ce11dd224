// Salt, sugar or fat to a percentage of all flour.
import { shownShare } from "../base/show.ts";
import { fieldReader } from "./asked.ts";
import type { Change, Field } from "./change.ts";
import { editOf } from "./edit.ts";
import { allFlour, amountOf, ofKind, shareOf } from "./formula.ts";

type Spec = {
  readonly word: "salt" | "sugar" | "fat";
  readonly label: string;
  readonly words: string;
  /** What a formula without any gets. */
  readonly ingredient: string;
  readonly most: number;
  readonly cautions?: readonly string[];
};

const changeOf = ({ word, label, words, ingredient, most, cautions = [] }: Spec): Change => {
  const change: Change = {
    name: word,
    group: "Salt, sugar and fat",
    label: `${label} to …`,
    words,
    fields: ({ rows }): Field[] => [
      { name: "wanted", label: `${label} wanted (% of flour)`, start: "" },
      ...(ofKind(rows, word).length > 0
        ? []
        : [{ name: "ingredient", label: "Ingredient to add", start: ingredient, isText: true }]),
    ],
    apply: (formula, values) => {
      const asked = fieldReader(change.fields(formula), values);
      const wanted = asked.share("wanted", { min: 0, max: most });
      const now = shareOf(formula.rows, word);
      const edit = editOf(formula);
      const some = ofKind(formula.rows, word);
      const more = (wanted - now) * allFlour(formula.rows);
      const [only] = some;
      if (amountOf(some) > 0) edit.spread(some, more);
      else if (only !== undefined) edit.set(only.id, more);
      else edit.add(asked.text("ingredient") || ingredient, word, more);
      return {
        formula: edit.done(formula),
        line: `${label} ${shownShare(now)} to ${shownShare(wanted)}`,
        rows: edit.moved(),
        parts: [],
        notes: some.length > 1 ? [`All ${some.length} rows of ${word} change in proportion.`] : [],
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
