// Flour of another strength: vital wheat gluten on top of it, from a figure or from what its label lets one know.
import { isFault, refuse } from "../base/refusal.ts";
import { showNumber, shownShare } from "../base/show.ts";
import { grams, ratio, weight } from "../base/units.ts";
import { GLUTEN_PROTEIN, glutenFor, type LabelLaw, labelFigure, labelProtein } from "../enrichment/protein.ts";
import type { Change, Field } from "./change.ts";
import { editOf } from "./edit.ts";
import { type FieldInput, fieldReader } from "./field-input.ts";
import { allFlour, amountOf, ofKind } from "./formula.ts";
import { EDGES } from "./yeast-time.ts";

const FIGURE = "a figure of the mill";
const LABEL = "the packet's label";
const KNOWN = [FIGURE, LABEL] as const;
const LAWS = ["US", "EU", "UK"] as const;

/** Protein is nitrogen times a factor: 5.7 for wheat in the trade (Jones factors, Merrill and Watt 1973), 6.25 on EU labels (Regulation (EU) 1169/2011, annex I). */
const USUAL = "as its law or mill counts";
const FACTORS = { "N × 5.7 (mills, US labels)": 1, "N × 6.25 (EU and UK labels)": 5.7 / 6.25 } as const;
/** Mills give protein at 14 % of moisture (Baker's Dictionary, absorption); on dry matter it reads as so much more. */
const MOISTURES = { "as it is, about 14 % moisture": 1, "dry matter": 1 - 0.14 } as const;
const FACTOR_WORDS = [USUAL, ...(Object.keys(FACTORS) as (keyof typeof FACTORS)[])] as const;
const MOISTURE_WORDS = Object.keys(MOISTURES) as (keyof typeof MOISTURES)[];

/** Water for the gluten follows; a flour cannot be made weaker with gluten. */
export const protein: Change = {
  name: "protein",
  group: "Flour",
  label: "The flour is weaker: protein to … with vital gluten",
  words: "weak flour stronger strength gluten protein harvest mill vwg",
  fields: (): Field[] => [
    { name: "known", label: "The flour's protein is from", choices: KNOWN, start: FIGURE },
    { name: "now", label: "Protein of this flour (%)", start: "", when: ["known", FIGURE] },
    { name: "label", label: "Protein on the label (g)", start: "", isText: true, when: ["known", LABEL] },
    { name: "law", label: "Label of", choices: LAWS, start: "EU", when: ["known", LABEL] },
    {
      name: "serving",
      label: "In a serving of (g)",
      start: "",
      hint: "Only for US labels.",
      when: ["known", LABEL],
    },
    {
      name: "factor",
      label: "Counted as",
      choices: FACTOR_WORDS,
      start: USUAL,
      hint: "Mills and US labels count N × 5.7, EU and UK labels N × 6.25.",
    },
    { name: "moisture", label: "Stated on", choices: MOISTURE_WORDS, start: MOISTURE_WORDS[0] ?? "" },
    {
      name: "wanted",
      label: "Protein wanted (%)",
      start: "",
      hint: "On the mills' basis: N × 5.7, 14 % moisture.",
    },
    {
      name: "edge",
      label: "Which end of the label's range",
      choices: EDGES,
      start: "middle",
      when: ["known", LABEL],
    },
  ],
  apply: (formula, values) => {
    const input = fieldReader(protein.fields(formula), values);
    const [low, high] = proteinNow(input);
    const wanted = input.share("wanted", { above: 0, max: 0.6 });
    const edge = low === high ? "middle" : input.choice("edge", EDGES);
    const now = edge === "low" ? low : edge === "high" ? high : (low + high) / 2;
    const flours = ofKind(formula.rows, "flour");
    const flour = amountOf(flours);
    const adding = (from: number) =>
      input.named({ protein_wanted: "wanted" }, () =>
        glutenFor(weight(flour), ratio(from), ratio(wanted), GLUTEN_PROTEIN, "on top"),
      );
    const { gluten, water } = adding(now);
    const edit = editOf(formula);
    edit.add("Vital wheat gluten", "other", gluten);
    edit.water(water, "");
    const all = allFlour(formula.rows);
    const of = (from: number) => shownShare((from >= wanted ? 0 : adding(from).gluten) / all);
    return {
      formula: edit.done(formula),
      line: `Vital gluten ${shownShare(gluten / all)} of flour: protein ${shownShare(now, 1)} to ${shownShare(wanted, 1)}`,
      rows: edit.moved(),
      parts: [],
      notes: [
        "Vital gluten of 75.16 % protein goes on top of the flour, with 1.5 times its weight of water.",
        "The figure by table goes by the ingredient sheet, or by what such flours usually have: enter your mill's there.",
        ...(low === high
          ? []
          : [
              `The label allows ${shownShare(low)} to ${shownShare(high)} on the mills' basis: gluten from ${of(high)} to ${of(low)} of flour. Ask the mill for its figure.`,
            ]),
        ...(flours.length > 1 ? ["The figure counts for all flour rows together."] : []),
      ],
      cautions: ["Gluten is wheat: it stands in the ingredient list, and its dust is an allergen and can burn."],
    };
  },
};

/** From the least to the most that it can be, on the mills' basis. */
function proteinNow(input: FieldInput): readonly [low: number, high: number] {
  const isLabel = input.choice("known", KNOWN) === LABEL;
  const law: LabelLaw = isLabel ? input.choice("law", LAWS) : "US";
  const factor = input.choice("factor", FACTOR_WORDS);
  const usual = law === "US" ? "N × 5.7 (mills, US labels)" : "N × 6.25 (EU and UK labels)";
  const basis = FACTORS[factor === USUAL ? usual : factor] * MOISTURES[input.choice("moisture", MOISTURE_WORDS)];
  if (!isLabel) {
    const now = input.share("now", { above: 0, max: 0.4 }) * basis;
    return [now, now];
  }
  const text = input.text("label");
  if (text === "") refuse("Protein on the label (g) is blank. Enter it as it is printed, such as 11.");
  const figure = labelFigure().read(text);
  if (isFault(figure)) return refuse(`Protein on the label (g) ${figure.says}.`);
  const serving = input.numberOrBlank("serving", "the serving's grams, such as 30", { above: 0, max: 1000 });
  const { low, high } = input.named({ protein: "label" }, () =>
    labelProtein(figure, serving === null ? null : grams(serving), law),
  );
  if (!(high > 0))
    refuse(`A flour of ${showNumber(figure.grams)} g of protein makes no dough. Enter the label's figure.`);
  return [low * basis, high * basis];
}
