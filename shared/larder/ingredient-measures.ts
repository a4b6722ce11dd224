import { grams } from "../base/units.ts";
import { type CupSystem, type EggSize, SHELLED_EGGS, type VolumeUnit, volumeOf } from "../base/volumes.ts";
import { builtInNamed, nameKey } from "./built-in-larder.ts";
import { partedEgg } from "./egg-sizes.ts";
import type { Ingredient } from "./ingredient.ts";
import { type Measure, type Measures, measureWord, type Preparation } from "./measures.ts";

const by = ({ least, most }: Measure, factor: number): Measure => ({
  least: grams(least * factor),
  most: grams(most * factor),
});

/** The measures of a larder that are volumes; the others follow from them. */
const VOLUMES = ["gallon", "l", "quart", "pint", "cup", "fl oz", "tbsp", "dessertspoon", "tsp", "ml"] as const;
const SPOONS: ReadonlySet<VolumeUnit> = new Set(["tbsp", "dessertspoon", "tsp", "dash", "pinch"]);

/** How much of a unit a line says, and how the measure is filled. */
export type Filled = { readonly count?: number; readonly preparation?: Preparation | undefined };

/**
 * Grams in a kitchen volume of an ingredient, 1 g/mL for water. The larder's measure of that unit counts; other volumes follow
 * from its largest measure, so that a litre is a thousand millilitres, and spoons, whose printed grams are rounded, from the
 * nearest, as long as they make less than a cup. Built-in measures are US ones, a shop's own those of the call. Undefined
 * where the larder has no volume of it or the country no such unit; a span where the ingredient differs by brand.
 */
export function volumeWeight(
  ingredient: Ingredient,
  unit: VolumeUnit,
  system: CupSystem,
  { count = 1, preparation }: Filled = {},
): Measure | undefined {
  const volume = volumeOf(unit, system);
  if (volume === undefined) return undefined;
  if (ingredient.kind === "water") return { least: grams(volume), most: grams(volume) };
  const measured = ingredient.ownMeasures ? system : "US";
  const known = VOLUMES.flatMap((one) => {
    const weight = measureOf(ingredient.measures, one, preparation);
    const held = volumeOf(one, measured);
    return weight === undefined || held === undefined ? [] : [{ unit: one, held, weight: by(weight, volume / held) }];
  });
  const cup = volumeOf("cup", measured) ?? 0;
  const isSpoon = SPOONS.has(unit) && Math.abs(count) * volume < cup * (1 - 1e-9);
  const same = SPOONS.has(unit) && !isSpoon ? undefined : known.find((one) => one.unit === unit);
  const away = (held: number) => Math.abs(Math.log(volume / held));
  const chosen = isSpoon
    ? known.reduce<(typeof known)[number] | undefined>(
        (best, one) => (best === undefined || away(one.held) < away(best.held) ? one : best),
        undefined,
      )
    : known[0];
  return (same ?? chosen)?.weight;
}

/** The measure of a form, or the plain one where no form is asked for. */
const measureOf = (
  measures: Measures | null,
  unit: VolumeUnit,
  preparation: Preparation | undefined,
): Measure | undefined => measures?.get(preparation === undefined ? unit : `${unit} ${preparation}`);

/** Whether the larder weighs this form of an ingredient by itself. */
export const hasPreparation = ({ measures }: Ingredient, preparation: Preparation): boolean =>
  VOLUMES.some((unit) => measureOf(measures, unit, preparation) !== undefined);

/** Grams of a piece of an ingredient, or of a pack such as a stick or a sachet; undefined where nothing is known of it. */
export function countWeight(
  ingredient: Ingredient,
  word: string,
  size: EggSize | undefined,
  system: CupSystem,
): Measure | undefined {
  const { measures, kind } = ingredient;
  if (measures === null) return undefined;
  if (word !== "" && word !== "piece") {
    const measure = measures.get(measureWord(word));
    // Yeast alone is dry by the spoon and the sachet, fresh by the cube.
    const isFresh = (word === "cube" || word === "cake") && measure === undefined && ingredient.name === "yeast";
    const usual = isFresh ? builtInNamed("fresh yeast")?.measures?.get(word) : measure;
    // A dry yeast's package is its sachet; only US shops sell a cake of yeast.
    if (word === "package") return measure ?? (kind === "yeast" ? measures.get("sachet") : undefined);
    return word === "cake" && system !== "US" && !ingredient.ownMeasures ? undefined : usual;
  }
  // A shop's row "medium egg" is no large one.
  const eggSize = kind === "egg" ? partedEgg(nameKey(ingredient.name))?.size : undefined;
  if (eggSize !== undefined && size !== undefined && eggSize !== size) return undefined;
  const wantedSize = size ?? eggSize;
  if (kind === "egg" && !ingredient.ownMeasures) return eggWeight(measures.get("large"), wantedSize ?? "large", system);
  if (size === undefined) return measures.get("piece") ?? measures.get(eggSize ?? "medium") ?? measures.get("large");
  // A shop's own piece of egg is the one that it is named by, and else the large one that its recipes mean.
  return measures.get(size) ?? (kind === "egg" && size === (eggSize ?? "large") ? measures.get("piece") : undefined);
}

/** A white or a yolk has its part of the egg in every size. */
function eggWeight(ofLarge: Measure | undefined, size: EggSize, system: CupSystem): Measure | undefined {
  const usual = builtInNamed("whole egg")?.measures;
  const large = usual?.get("large")?.least;
  const weights = system === "US" ? usual?.get(size)?.least : SHELLED_EGGS[system][size];
  if (ofLarge === undefined || large === undefined || weights === undefined) return undefined;
  return by(ofLarge, weights / large);
}
