import { grams } from "../base/units.ts";
import { type CupSystem, type EggSize, SHELLED_EGGS, type VolumeUnit, volumeOf } from "../base/volumes.ts";
import { builtInNamed } from "./built-in-larder.ts";
import type { Ingredient } from "./ingredient.ts";
import { type Measure, measureWord } from "./measures.ts";

const by = ({ least, most }: Measure, factor: number): Measure => ({
  least: grams(least * factor),
  most: grams(most * factor),
});

/** The measures of a larder that are volumes; the others follow from the nearest of them. */
const VOLUMES = ["cup", "tbsp", "tsp", "dessertspoon", "fl oz", "pint", "quart", "gallon", "ml", "l"] as const;

/**
 * Grams in a kitchen volume of an ingredient: as the larder weighs it, by its nearest measure otherwise, and 1 g/mL for
 * water. Built-in measures are US ones, a shop's own those of the call. Undefined where the larder has no volume of it or
 * the country no such unit; a span where the ingredient differs from brand to brand.
 */
export function volumeWeight(ingredient: Ingredient, unit: VolumeUnit, system: CupSystem): Measure | undefined {
  const volume = volumeOf(unit, system);
  if (volume === undefined) return undefined;
  if (ingredient.kind === "water") return { least: grams(volume), most: grams(volume) };
  const measured = ingredient.ownMeasures ? system : "US";
  let nearest: { away: number; weight: Measure } | undefined;
  for (const one of VOLUMES) {
    const weight = ingredient.measures?.get(one);
    const held = volumeOf(one, measured);
    if (weight === undefined || held === undefined) continue;
    if (one === unit) return by(weight, volume / held);
    const away = Math.abs(Math.log(volume / held));
    if (nearest === undefined || away < nearest.away) nearest = { away, weight: by(weight, volume / held) };
  }
  return nearest?.weight;
}

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
    const own = measures.get(measureWord(word));
    // Yeast alone is dry by the spoon and the sachet, fresh by the cube.
    const isFresh = (word === "cube" || word === "cake") && own === undefined && ingredient.name === "yeast";
    const usual = isFresh ? builtInNamed("fresh yeast")?.measures?.get(word) : own;
    // A dry yeast's package is its sachet; only US shops sell a cake of yeast.
    if (word === "package") return own ?? (kind === "yeast" ? measures.get("sachet") : undefined);
    return word === "cake" && system !== "US" && !ingredient.ownMeasures ? undefined : usual;
  }
  if (kind === "egg" && !ingredient.ownMeasures) return eggWeight(measures.get("large"), size ?? "large", system);
  return size === undefined ? (measures.get("piece") ?? measures.get("medium")) : measures.get(size);
}

/** A white or a yolk has its part of the egg in every size. */
function eggWeight(ofLarge: Measure | undefined, size: EggSize, system: CupSystem): Measure | undefined {
  const usual = builtInNamed("whole egg")?.measures;
  const large = usual?.get("large")?.least;
  const sized = system === "US" ? usual?.get(size)?.least : SHELLED_EGGS[system][size];
  if (ofLarge === undefined || large === undefined || sized === undefined) return undefined;
  return by(ofLarge, sized / large);
}
