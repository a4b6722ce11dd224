// The ingredient list of a formula as a label prints it, or in words why it is not known.
import { type Fault, Refusal } from "../base/refusal.ts";
import { weight } from "../base/units.ts";
import type { LabelLaw } from "../enrichment/protein.ts";
import { labelList } from "../label/label.ts";
import { type OwnFormulas, ownFormulas } from "../label/own-formulas.ts";
import type { Larder } from "../larder/larder.ts";
import { allRows, type Formula, weightsOf } from "./formula.ts";
import { doughOf } from "./money.ts";

/** What a label goes by beside the formula. */
export type LabelFacts = {
  /** Of the sheet's own label, or of the bakery's settings. */
  readonly law: LabelLaw | null;
  /** What the oven takes, where no size says so. */
  readonly loss: number | null;
  /** The size that the sheet's own label is for; null where it has none. */
  readonly size: string | null;
  /** What goes into ingredients that have a sheet of their own, as their sheets say it; null where that was too long to read. */
  readonly ownFormulas: readonly string[] | null;
};
export const NO_FACTS: LabelFacts = { law: null, loss: null, size: null, ownFormulas: [] };

/** A list, or why there is none. */
export type Printed = { readonly list: string } | { readonly missing: string };

export function printedList(formula: Formula, { law, loss, size, ownFormulas }: LabelFacts, larder: Larder): Printed {
  if (law === null)
    return {
      missing: "No labelling rules are chosen. Choose EU, UK or US in Bakery settings to see the ingredient list.",
    };
  if (ownFormulas === null)
    return { missing: "The ingredient list is too long to be read here. Look at the sheet's label." };
  const weights = weightsOf(formula);
  const used = allRows(formula)
    .map(({ name, amount }, at) => ({ name, amount, weight: weights[at] ?? null }))
    .filter(({ amount }) => amount > 0);
  const yields = keptOf(formula, loss, size);
  try {
    const list = labelList(
      used.map(({ name }) => name || null),
      used.map((row) => row.weight),
      { larder, formulas: formulasIn(ownFormulas) },
      law,
      yields === null ? null : weight(doughOf(formula) * yields),
    );
    return { list };
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return { missing: `The ingredient list is not known${saidOf(error.faults[0])}` };
  }
}

/** What the oven leaves: of the label's size, of the sizes as they are ordered, of the first one, or as it is typed for the label. */
function keptOf({ sizes, by }: Formula, loss: number | null, size: string | null): number | null {
  const sold = sizes.filter(({ baked }) => baked !== null);
  const labelled = sold.find(({ name }) => name === size);
  if (labelled !== undefined) return 1 - labelled.loss;
  const sum = (of: (share: number) => number) =>
    sold.reduce((all, one) => all + (one.pieces ?? 0) * (one.baked ?? 0) * of(1 - one.loss), 0);
  const scaled = sum((share) => 1 / share);
  if (by === "pieces" && scaled > 0) return sum(() => 1) / scaled;
  const [first] = sold;
  if (first !== undefined) return 1 - first.loss;
  return loss === null ? null : 1 - loss;
}

function formulasIn(products: readonly string[]): OwnFormulas {
  const faults: Fault[] = [];
  const bakeryFormulas = ownFormulas.decode(
    products.map((text) => [text]),
    "formulas",
    faults,
  );
  if (faults.length > 0) throw new Refusal(faults);
  return bakeryFormulas ?? new Map();
}

/** Goes on behind "not known". */
function saidOf(fault: Fault | undefined): string {
  if (fault === undefined) return ".";
  const { argument, row, says } = fault;
  const end = /[.?]$/.test(says) ? "" : ".";
  if (argument === "finished_weight") return ". Enter the bake loss of a size, or of the label, on the sheet.";
  if (argument === "ingredients") return ` because of ${says.replace(/^is /, "")}${end}`;
  if (argument === "larder") return `: the ingredient sheet${row === undefined ? "" : `, row ${row},`} ${says}${end}`;
  return `: ${argument === undefined ? "" : `${argument} `}${says}${end}`;
}

/** Both lists, where they are another; once where they are the same; and why there is none. */
export function printedSays(both: readonly [Printed, Printed], sides: readonly [string, string]): string[] {
  const [was, now] = both;
  const printedText = (one: Printed) => ("list" in one ? one.list : one.missing);
  const isSame = printedText(was) === printedText(now);
  if ("missing" in was && isSame) return [was.missing];
  const caution = "Check every list against your suppliers' specifications before it is printed.";
  if (isSame) return [`The ingredient list is the same: ${printedText(now)}`, caution];
  return [
    ...both.map((one, at) =>
      "list" in one ? `Ingredient list, ${sides[at]}: ${one.list}` : `${sides[at]}: ${one.missing}`,
    ),
    caution,
  ];
}
