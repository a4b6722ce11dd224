// A flat round of another diameter at the same weight per area, or thicker or thinner at the same diameter.
import { refuse } from "../base/refusal.ts";
import { inUnit, showNumber, shownShare } from "../base/show.ts";
import type { Change, Field } from "./change.ts";
import { fieldReader } from "./field-input.ts";
import { type Formula, scaledOf } from "./formula.ts";
import { goesByArea, isOrdered, nameOf, orderedIn } from "./sizes.ts";

const BOTH = "Leave it blank to keep it.";
/** As the sheet has it: from a bite to the largest oven's round. */
const DIAMETERS = { cm: { min: 3, max: 150 }, in: { min: 1, max: 60 } } as const;

export const otherRound: Change = {
  name: "round",
  group: "Tin, pieces and amount",
  label: "Another diameter, or another thickness of a round",
  words: "pizza flatbread smaller larger thinner thicker piece base disc across area",
  fields: ({ sizes, options: { weight, length } }): Field[] => {
    const names = sizes.map(nameOf);
    return [
      { name: "size", label: "Size", choices: names, start: names[0] ?? "" },
      { name: "diameter", label: `Diameter (${length})`, start: "", hint: BOTH },
      { name: "area", label: `Weight per area, all sizes (${weight}/${length}²)`, start: "", hint: BOTH },
    ];
  },
  apply: (formula, values) => {
    const { sizes, perArea, options } = formula;
    if (!goesByArea(formula))
      refuse("These pieces go by their weight, not by a diameter. Choose “Another weight of a piece”.");
    if (perArea === null)
      return refuse("The weight per area is not known yet. Enter it on the sheet first, or a round that is right.");
    const input = fieldReader(otherRound.fields(formula), values);
    const at = sizes.map(nameOf).indexOf(input.choice("size", sizes.map(nameOf)));
    const diameter = input.numberOrBlank("diameter", "a diameter such as 28", DIAMETERS[options.length]);
    const area = input.numberOrBlank("area", "a weight such as 0.4", { above: 0, max: perArea * MOST });
    if (diameter === null && area === null) refuse("Enter a diameter, a weight per area, or both.");
    const after: Formula = {
      ...formula,
      perArea: area ?? perArea,
      sizes: diameter === null ? sizes : sizes.map((size, one) => (one === at ? { ...size, diameter } : size)),
    };
    const [was, now] = [orderedIn(formula), orderedIn(after)];
    const isFollowed = isOrdered(formula) && was > 0;
    const size = sizes[at];
    const each = (one: Formula) => scaledOf(one.sizes[at], one) ?? 0;
    const { weight, length } = options;
    const name = size === undefined ? "Piece" : nameOf(size, at);
    const across =
      diameter === null
        ? []
        : [`${name} ${showNumber(size?.diameter ?? 0)} to ${showNumber(diameter)} ${length} across`];
    const thick = area === null ? [] : [`${showNumber(perArea, 3)} to ${showNumber(area, 3)} ${weight}/${length}²`];
    return {
      formula: isFollowed ? { ...after, batch: { ...after.batch, amount: (after.batch.amount * now) / was } } : after,
      line: [...across, ...thick].join(", "),
      rows: new Set(),
      parts: isFollowed ? ["sizes", "batch"] : ["sizes"],
      notes: [
        `Size ${size?.name || at + 1}: ${inUnit(each(formula), weight)} to ${inUnit(each(after), weight)}, ${shownShare(each(after) / each(formula), 1)} of before.`,
        ...(area === null ? ["The weight per area stays, so the round is as thick as before."] : []),
        "The percentages stay. A thinner round bakes sooner: look at it early.",
      ],
      cautions: [],
    };
  },
};

/** So many times as thick is a slip of the hand. */
const MOST = 20;
