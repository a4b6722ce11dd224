import { quote, showNumber } from "../base/show.ts";
import { grams } from "../base/units.ts";
import { type CupSystem, type EggSize, volumeOf } from "../base/volumes.ts";
import type { Ingredient } from "../larder/ingredient.ts";
import { countWeight, hasPreparation, volumeWeight } from "../larder/ingredient-measures.ts";
import type { Measure, Preparation } from "../larder/measures.ts";
import type { Amount, Term } from "./amount.ts";
import { looseSentence } from "./amount-faults.ts";
import type { Unit } from "./unit-words.ts";

/** `lacks` is a form that the line names and the larder has no measure of. */
export type Weight = {
  readonly least: number;
  readonly most: number;
  readonly unsure?: string;
  readonly lacks?: Preparation;
};
/** What a person should know of a weight. */
export type LineRemark = { readonly reason: "used besides" | "note"; readonly says: string };
export const noteOf = (says: string): LineRemark => ({ reason: "note", says });

export type Weighed = Weight | { readonly says: string };
export type Search = {
  /** The ingredient of the line, or why there is none. */
  readonly ingredient: () => Ingredient | string;
  /** The size that the line's words give: "eggs (medium)". */
  readonly size: () => EggSize | undefined;
  /** How the line's words say the ingredient is cut or its measure filled. */
  readonly preparations: () => readonly Preparation[];
  readonly system: CupSystem;
};

/** Grams of an amount, or what stands in the way. The ingredient is asked for only where a volume or a count needs it. */
export function weightOf({ low, high, fault }: Amount, search: Search): Weighed {
  if (fault !== undefined) return { says: fault.says };
  let unsure: string | undefined;
  let lacks: Preparation | undefined;
  const total = (terms: readonly Term[], end: "least" | "most"): number | string => {
    let sum = 0;
    for (const { count, unit } of terms) {
      const one = unitWeight(unit, search, count);
      if (typeof one === "string") return one;
      lacks = lacks ?? (unit.of === "volume" ? lackedPreparation(unit, search) : undefined);
      if (one.least < one.most) unsure = unsureOf(unit, one);
      // What is taken off at most makes the least.
      const isLow = (end === "least") === count >= 0;
      sum += count * (isLow ? one.least : one.most);
    }
    return sum;
  };
  const least = total(low, "least");
  if (typeof least === "string") return { says: least };
  if (high === low && unsure === undefined && lacks === undefined) return { least, most: least };
  const most = total(high, "most");
  if (typeof most === "string") return { says: most };
  return { least, most, ...(unsure === undefined ? {} : { unsure }), ...(lacks === undefined ? {} : { lacks }) };
}

type Volume = Extract<Unit, { of: "volume" }>;
const preparationsOf = (unit: Volume, { preparations }: Search): readonly Preparation[] =>
  unit.preparation === undefined ? preparations() : [unit.preparation, ...preparations()];

/** What changes the weight of a cup of anything that is no liquid. */
const TELLING: ReadonlySet<Preparation> = new Set([
  ...(["sifted", "packed", "sliced", "diced", "chopped", "shredded", "grated", "mashed"] as const),
]);

function lackedPreparation(unit: Volume, search: Search): Preparation | undefined {
  const of = search.ingredient();
  const preparations = preparationsOf(unit, search);
  if (
    typeof of === "string" ||
    of.kind === "water" ||
    preparations.some((preparation) => hasPreparation(of, preparation))
  )
    return undefined;
  const names = [of.name, ...of.alsoCalled].join(" ");
  return preparations.find((preparation) => TELLING.has(preparation) && !names.includes(preparation));
}

const unitWord = (unit: Unit): string => (unit.of === "volume" ? unit.unit : unit.of === "count" ? unit.word : "");

function unsureOf(unit: Unit, { least, most }: Measure): string {
  const span = `${showNumber(least)} g to ${showNumber(most)} g`;
  return `a ${unitWord(unit) || "piece"} of it weighs ${span} from one brand to the next. Weigh it, or say which`;
}

/** Grams of one unit, or what stands in the way. */
function unitWeight(unit: Unit, search: Search, count: number): Measure | string {
  const { ingredient, size, system } = search;
  if (unit.of === "weight") return { least: grams(unit.grams), most: grams(unit.grams) };
  if (unit.of === "vague") return `${quote(unit.word)} has no weight; enter grams, or a measure`;
  if (unit.loose !== undefined) return looseSentence(unit.loose);
  const here = unit.of === "volume" ? (unit.system ?? system) : system;
  if (unit.of === "volume" && volumeOf(unit.unit, here) === undefined) {
    return `a ${unit.unit} is no measure of the EU; say "US" or "UK" before it, or enter millilitres`;
  }
  const of = ingredient();
  if (typeof of === "string") return of;
  if (unit.of === "volume") {
    const preparation = preparationsOf(unit, search).find((one) => hasPreparation(of, one));
    return volumeWeight(of, unit.unit, here, { count, preparation }) ?? missing(unit.unit, of);
  }
  const egg = unit.size ?? size();
  if (unit.size !== undefined && size() !== undefined && size() !== unit.size)
    return `is it ${unit.size} or ${size()}? Enter one of them`;
  const weight = countWeight(of, unit.word, egg, system);
  if (weight !== undefined) return weight;
  if (unit.word === "" && egg === undefined) {
    return `a number without a unit, and the larder has no weight for a piece of ${quote(of.name)}; enter "500 g" or "2 cups"`;
  }
  return missing([egg, unit.word || "piece"].filter((word) => word).join(" "), of);
}

const missing = (measure: string, of: Ingredient): string =>
  `the larder has no weight for a ${measure} of ${quote(of.name)}; enter grams, or add the measure to the larder`;
