// What an ingredient that is short still makes.
import { refuse } from "../base/refusal.ts";
import { atMost } from "../base/scaling.ts";
import { showNumber, shownShare } from "../base/show.ts";
import type { Change, Field } from "./change.ts";
import { fieldReader } from "./field-input.ts";
import { allRows, type Formula, shownName, weightsOf } from "./formula.ts";

export const short: Change = {
  name: "short",
  group: "Tin, pieces and amount",
  label: "One ingredient is short",
  words: "run out not enough left only stock missing less",
  fields: (formula): Field[] => {
    const names = namedRows(formula);
    return [
      { name: "ingredient", label: "Ingredient", choices: names, start: names[0] ?? "" },
      { name: "there", label: `There is (${formula.options.weight})`, start: "" },
    ];
  },
  apply: (formula, values) => {
    const names = namedRows(formula);
    const input = fieldReader(short.fields(formula), values);
    const name = input.choice("ingredient", names);
    const there = input.number("there", "a weight such as 500", { above: 0, max: 1e8 });
    const at = allRows(formula).findIndex((row) => shownName(row) === name && row.amount > 0);
    const needed = weightsOf(formula)[at] ?? 0;
    const { weight: unit } = formula.options;
    if (atMost(needed, there))
      refuse(
        `${name} is enough: the dough takes ${showNumber(needed)} ${unit}, and there is ${showNumber(there)} ${unit}.`,
      );
    const factor = there / needed;
    const isFlour = formula.by === "flour";
    return {
      formula: {
        ...formula,
        by: isFlour ? formula.by : formula.mixed,
        batch: { ...formula.batch, amount: formula.batch.amount * factor },
      },
      line: `As much as ${showNumber(there)} ${unit} of ${name} makes: ${shownShare(factor, 1)} of the order`,
      rows: new Set(),
      parts: ["batch"],
      notes: [
        `It makes ${shownShare(factor, 1)} of the order. The percentages stay.`,
        ...(isFlour ? [] : [`The sheet is scaled to ${formula.mixed} then. Choose pieces again for the next order.`]),
      ],
      cautions: [],
    };
  },
};

const namedRows = (formula: Formula): string[] =>
  allRows(formula).flatMap((row) => (row.name !== "" && row.amount > 0 ? [shownName(row)] : []));
