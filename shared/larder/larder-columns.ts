// The columns of an ingredient table, each with what reads its cells.
import type { Ratio } from "../base/units.ts";
import { foldText, singularName } from "../base/words.ts";
import { number, type Reader, unreadable, word } from "../cells/cell.ts";
import { KIND_WORDS, type KindWord, PREFERMENT_WORDS } from "./kind-words.ts";
import { type Measures, readMeasures } from "./measures.ts";

/** The headings of a larder, with what else they are called. */
export const COLUMNS = {
  ingredient: [],
  "also called": [],
  kind: ["type"],
  water: [],
  protein: [],
  fat: [],
  saturates: ["saturated fat"],
  carbohydrate: [],
  sugar: [],
  fibre: ["fiber"],
  salt: [],
  energy: [],
  "protein factor": ["nitrogen factor"],
  "extra water": [],
  measures: [],
  supplier: [],
  price: [],
  pack: [],
  usable: ["usable yield"],
  "label name": [],
  "made of": [],
  allergens: [],
} as const satisfies Readonly<Record<string, readonly string[]>>;
export type Column = keyof typeof COLUMNS;

export const shareOfWeight = () =>
  number<Ratio>("a share of the weight such as 16% (0.16)", { min: 0, max: 1 }, { percent: true });
export const energyCell = () => number<number>("kcal per gram such as 3.64", { min: 0, max: 10 });
export const proteinFactorCell = () => number<number>("a factor such as 5.7 or 6.25", { min: 5, max: 7 });
export const extraWaterCell = () => number<number>("grams of water per gram such as 1.5", { min: -5, max: 30 });
export const measuresCell: Reader<Measures> = { hint: { of: "text" }, read: readMeasures };
export const packCell: Reader<string | number> = {
  hint: { of: "any" },
  read: (raw) => unreadable(raw) ?? (typeof raw === "number" ? raw : String(raw).trim()),
};

const kindWord = word(
  Object.fromEntries(KIND_WORDS.map((one) => [one, []])) as unknown as Readonly<Record<KindWord, readonly string[]>>,
);
/** The kind of a preferment is the formula's business: its hydration changes from one to the next. */
export const kindCell: Reader<KindWord | null> = {
  hint: { of: "kind" },
  read: (raw) => {
    const first = typeof raw === "string" ? (foldText(raw).split(" ")[0] ?? "") : "";
    if (PREFERMENT_WORDS.some((one) => one === singularName(first))) return null;
    return kindWord.read(raw);
  },
};
