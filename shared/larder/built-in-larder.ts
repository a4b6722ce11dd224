import { type Ratio, ratio } from "../base/units.ts";
import { singularName } from "../base/words.ts";
import { partedEgg } from "./egg-sizes.ts";
import type { KindWord } from "./kind-words.ts";
import { larderLines } from "./larder-rows.ts";
import { type Measures, readMeasures } from "./measures.ts";

/** The form two spellings of one ingredient share; apostrophes do not count either ("baker's yeast"). */
export const nameKey = (name: string): string => singularName(/['’]/.test(name) ? name.replace(/['’]/g, "") : name);

/** The parts of an ingredient's weight that a larder knows. */
export const PARTS = ["water", "protein", "fat", "saturates", "carbohydrate", "sugar", "fibre", "salt"] as const;
export type Part = (typeof PARTS)[number];

/** An ingredient of the built-in table: shares of its weight, energy in kcal per gram; null is not known. */
export type BuiltIn = Readonly<Record<Part, Ratio | null>> & {
  readonly name: string;
  readonly kind: KindWord;
  /** USDA SR28 food number; null for rows from elsewhere. */
  readonly ndb: string | null;
  readonly ash: Ratio | null;
  readonly energy: number | null;
  /** Grams of water that a gram in dry form asks for on top. */
  readonly extraWater: number | null;
  readonly extraWaterRough: boolean;
  readonly measures: Measures | null;
  readonly alsoCalled: readonly string[];
  /**
   * Allergens such an ingredient has by its nature, as species ("wheat", "milk", "almonds"). Never a declaration: what a
   * delivery holds beyond them, only its supplier's specification says.
   */
  readonly allergensByNature: readonly string[];
  /** Grams of its protein figure for a gram of its nitrogen. */
  readonly proteinFactor: number | null;
};

/** What a label counts as protein for a gram of nitrogen (Regulation (EU) 1169/2011, annex I), and what most foods are analysed by. */
export const LABEL_PROTEIN_FACTOR = 6.25;

/** Salt is sodium × 2.5 (Regulation (EU) 1169/2011, annex I). */
const SALT_PER_SODIUM = 2.5;

const items = (text: string, between: string) => (text === "" ? [] : text.split(between));
const figure = (text: string) => (text === "" ? null : Number(text));
/** Moves the point in the text, so that 76.15 of 100 is 0.7615 to the last digit. */
const ofHundred = (text: string) => (text === "" ? null : Number(`${text}e-2`));
const shareOfHundred = (text: string) => {
  const share = ofHundred(text);
  return share === null ? null : ratio(share);
};

function decode(line: string): BuiltIn {
  const [name = "", kind = "", ndb = "", ...rest] = line.split("\t");
  const [water = "", protein = "", fat = "", saturates = "", carbohydrate = "", sugar = "", fibre = ""] = rest;
  const [sodium = "", energy = "", ash = "", extra = "", measures = "", also = "", allergens = "", factor = ""] =
    rest.slice(7);
  const milligrams = figure(sodium);
  const measureList = measures === "" ? null : readMeasures(measures);
  if (measureList !== null && "says" in measureList) throw new Error(`built-in ${name}: measures ${measureList.says}`);
  return {
    name,
    kind: kind as KindWord,
    ndb: ndb === "" ? null : ndb,
    water: shareOfHundred(water),
    protein: shareOfHundred(protein),
    fat: shareOfHundred(fat),
    saturates: shareOfHundred(saturates),
    carbohydrate: shareOfHundred(carbohydrate),
    sugar: shareOfHundred(sugar),
    fibre: shareOfHundred(fibre),
    salt: milligrams === null ? null : ratio((milligrams * SALT_PER_SODIUM) / 100_000),
    ash: shareOfHundred(ash),
    energy: ofHundred(energy),
    extraWater: figure(extra.replace("~", "")),
    extraWaterRough: extra.startsWith("~"),
    measures: measureList,
    alsoCalled: items(also, ";"),
    allergensByNature: items(allergens, ";"),
    proteinFactor: factor === "" ? LABEL_PROTEIN_FACTOR : Number(factor),
  };
}

let decoded: { rows: readonly BuiltIn[]; byName: ReadonlyMap<string, BuiltIn> } | undefined;

/** The table is decoded when it is first asked for, so that a formula that needs none of it does not wait. */
function table() {
  if (decoded === undefined) {
    const rows = larderLines().map(decode);
    const byName = new Map<string, BuiltIn>();
    for (const row of rows) for (const name of [row.name, ...row.alsoCalled]) byName.set(nameKey(name), row);
    decoded = { rows, byName };
  }
  return decoded;
}

export const builtInRows = (): readonly BuiltIn[] => table().rows;

/** The built-in ingredient of this name, or of one of its other names. */
export const builtInNamed = (name: string): BuiltIn | undefined => builtInOf(nameKey(name));
/** The same for a name whose key is known already; a large egg is an egg. */
export function builtInOf(key: string): BuiltIn | undefined {
  const { byName } = table();
  return byName.get(key) ?? byName.get(partedEgg(key)?.rest ?? "");
}
