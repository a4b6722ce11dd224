// Another flour for a part of one: by a share, or by the protein that two flours are to have together.
import { refuse } from "../base/refusal.ts";
import { quote, shownShare } from "../base/show.ts";
import { ratio, weight } from "../base/units.ts";
import { flourBlend } from "../enrichment/protein.ts";
import { nameKey } from "../larder/built-in-larder.ts";
import type { Change, Field } from "./change.ts";
import { editOf } from "./edit.ts";
import { fieldReader } from "./field-input.ts";
import { allFlour, type Formula, ofKind, type Row } from "./formula.ts";

const namesOf = ({ rows }: Formula): string[] => ofKind(rows, "flour").map(({ name }) => name);

/** Which flour gives way; a row without a name cannot be told from another. */
function flourNamed({ rows }: Formula, name: string): Row {
  const row = ofKind(rows, "flour").find((one) => one.name === name);
  return row ?? refuse(`There is no flour ${quote(name)} in the formula. Choose one of its flours.`);
}

const fromField = (formula: Formula): Field => ({
  name: "from",
  label: "Instead of",
  choices: namesOf(formula),
  start: namesOf(formula)[0] ?? "",
});
const EXTRA: Field = {
  name: "extra",
  label: "Extra water (% of the flour replaced)",
  start: "",
  hint: "Wholemeal and rye take more water. How much, your own dough tells.",
};

export const otherFlour: Change = {
  name: "flour",
  group: "Flour",
  label: "Another flour for a part",
  words: "wholemeal rye spelt replace mix substitute wholegrain healthier",
  fields: (formula): Field[] => [
    fromField(formula),
    { name: "to", label: "Other flour", start: "", isText: true },
    { name: "share", label: "How much (% of all flour)", start: "" },
    EXTRA,
  ],
  apply: (formula, values) => {
    const input = fieldReader(otherFlour.fields(formula), values);
    const from = flourNamed(formula, input.choice("from", namesOf(formula)));
    const share = input.share("share", { above: 0, max: 1 });
    const extra = input.shareOrBlank("extra", { min: -0.5, max: 1 }) ?? 0;
    return exchanged(formula, from, otherName(from, input.text("to")), share, extra);
  },
};

function otherName(from: Row, name: string): string {
  if (name === "") refuse("Other flour is blank. Enter its name as in your ingredient sheet.");
  if (nameKey(name) === nameKey(from.name)) refuse(`The other flour is ${quote(name)} as well. Enter another one.`);
  return name;
}

function exchanged(formula: Formula, from: Row, to: string, share: number, extra: number) {
  const all = allFlour(formula.rows);
  const amount = share * all;
  if (amount > from.amount * (1 + 1e-9))
    refuse(
      `Of ${from.name} there is ${shownShare(from.amount / all)} of flour, less than ${shownShare(share)}. Enter at most ${shownShare(from.amount / all)}.`,
    );
  const other = formula.rows.find((row) => nameKey(row.name) === nameKey(to));
  if (other !== undefined && other.kind.word !== "flour")
    refuse(`${quote(to)} is in the formula, and is no flour. Enter another name.`);
  const edit = editOf(formula);
  if (from.amount - amount > 1e-12) {
    edit.set(from.id, from.amount - amount);
    edit.add(to, "flour", amount);
  } else edit.replace(from.id, to, "flour", amount);
  edit.water(amount * extra, "That much less water");
  return {
    formula: edit.done(formula),
    line: `${shownShare(share, 1)} of the flour is ${to} instead of ${from.name}`,
    rows: edit.moved(),
    parts: [],
    notes: extra === 0 ? ["The water stays. Hold some back, and add it as the dough asks."] : [],
    cautions: [],
  };
}

export const blend: Change = {
  name: "blend",
  group: "Flour",
  label: "Two flours together: protein to …",
  words: "blend weak strong protein mix weaker flour strength",
  fields: (formula): Field[] => [
    fromField(formula),
    { name: "a", label: "Its protein (%)", start: "" },
    { name: "to", label: "Other flour", start: "", isText: true },
    { name: "b", label: "Protein of the other (%)", start: "" },
    {
      name: "wanted",
      label: "Protein wanted (%)",
      start: "",
      hint: "All three on one basis, such as N × 5.7 at 14 % moisture.",
    },
  ],
  apply: (formula, values) => {
    const input = fieldReader(blend.fields(formula), values);
    const from = flourNamed(formula, input.choice("from", namesOf(formula)));
    const to = otherName(from, input.text("to"));
    const of = (name: string) => ratio(input.share(name, { above: 0, max: 0.4 }));
    const words = { protein_a: "a", protein_b: "b", wanted: "wanted" };
    const { b } = input.named(words, () => flourBlend(of("a"), of("b"), of("wanted"), weight(from.amount)));
    if (b === 0) refuse(`${from.name} has that protein by itself. Nothing would change.`);
    const changed = exchanged(formula, from, to, b / allFlour(formula.rows), 0);
    return { ...changed, line: `${changed.line}, protein ${shownShare(of("wanted"), 1)}` };
  },
};
