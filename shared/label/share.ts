// The quantity to declare of one ingredient, in compounds too, and what it is a share of.
import { fault, refuse, refuseAll } from "../base/refusal.ts";
import { atMost } from "../base/scaling.ts";
import { oneOf, quote, showNumber, shownShare } from "../base/show.ts";
import { type Ratio, ratio, type Weight } from "../base/units.ts";
import { nearest } from "../base/words.ts";
import { isUnweighed } from "../enrichment/enrichment.ts";
import { nameKey } from "../larder/built-in-larder.ts";
import { ofRow } from "../larder/ingredient.ts";
import { eachRow, findIngredient } from "../larder/larder.ts";
import { partsOf } from "./compound.ts";
import { addedUp, nearSum } from "./label.ts";
import { descend, type Inside, partsInside, type Sources } from "./own-formulas.ts";

type Names = readonly (string | null)[];
type Weights = readonly (Weight | null)[];

/** A share, and the weight that it is of, what was looked into and what was left out. */
export type LabelShare = { readonly share: Ratio; readonly says: string };

/**
 * The quantity to declare of one ingredient: its weight as it goes in, also inside compounds, over the finished weight, or over
 * all that goes in. A product that loses moisture may hold more than 100 % (Regulation (EU) 1169/2011, annex VIII). Null
 * before anything is weighed.
 */
export function labelShare(
  wantedName: string,
  names: Names,
  weights: Weights,
  finished: Weight | null,
  sources: Sources,
): LabelShare | null {
  if (isUnweighed(weights)) return null;
  const search = searchFor(wantedName, sources);
  const inside = eachRow(names, (name) => (name === null ? 0 : search.shareIn(name)));
  if (inside.every((share) => share === 0)) refuse(nowhere(wantedName, names), "ingredient");
  const faults = weights.flatMap((weight, row) => {
    const name = names[row] ?? null;
    if (name === null && weight !== null && weight > 0)
      return [fault("is blank though the row has an amount; enter its name", "ingredients", row + 1)];
    if (name !== null && weight === null && (inside[row] ?? 0) > 0)
      return [fault(`is blank beside ${quote(name)}; enter its weight, or 0 where none goes in`, "weights", row + 1)];
    return [];
  });
  refuseAll(faults);
  const sum = addedUp(weights);
  if (finished !== null) nearSum(finished, sum);
  if (sum === 0) refuse("add up to 0; a share of nothing cannot be declared", "weights");
  const held = inside.reduce((all, share, row) => all + share * (weights[row] ?? 0), 0);
  const share = ratio(held / (finished ?? sum));
  const isIn = (name: string) => names.some((one, row) => one === name && (weights[row] ?? 0) > 0);
  const compounds = names.flatMap((name, row) =>
    name !== null && names.indexOf(name) === row && isIn(name) && !search.isAsked(name) && (inside[row] ?? 0) > 0
      ? [`${shownShare(inside[row] ?? 0)} of ${quote(name)} counted`]
      : [],
  );
  const says = [
    finished === null
      ? `of the weight as mixed (${showNumber(sum)})`
      : `of the finished weight (${showNumber(finished)})`,
    ...(atMost(share, 1) ? [] : [`declare it as ${showNumber(share * 100, 1)} g per 100 g`]),
    ...compounds,
    ...search.likeIt(names.filter((name) => name !== null && isIn(name)) as string[]),
  ];
  return { share, says: says.join("; ") };
}

function nowhere(wantedName: string, names: Names): string {
  const near = nearest(
    wantedName,
    names.filter((one) => one !== null),
  );
  return `is ${quote(wantedName)}, which is none of the ingredients${near.length > 0 ? `; perhaps ${oneOf(near)}?` : ""}`;
}

type Search = {
  readonly isAsked: (name: string) => boolean;
  /** Grams of the ingredient in a gram of another: 1 in itself. */
  readonly shareIn: (name: string) => number;
  /** What has all of its words in its name and is another ingredient. */
  readonly likeIt: (names: readonly string[]) => string[];
};

function searchFor(wantedName: string, sources: Sources): Search {
  const { larder, formulas } = sources;
  const key = nameKey(wantedName);
  const row = larder.byName.get(key);
  // Other names and label names are the shop's own; the built-in table calls different foods by one name.
  const isAsked = (name: string): boolean => {
    if (nameKey(name) === key) return true;
    const other = larder.byName.get(nameKey(name));
    return other !== undefined && (other === row || nameKey(ofRow(other).labelName ?? "") === key);
  };
  const others = new Set<string>();
  const shareIn = descend<number>(sources, (name, inside) => {
    if (isAsked(name)) return 1;
    others.add(name);
    const ingredient = findIngredient(larder, name) ?? null;
    const parts = partsInside(name, ingredient, sources);
    const held = (one: string): number => {
      if (formulas.has(nameKey(one)) || larder.byName.has(nameKey(one))) return inside(one);
      if (isAsked(one)) return 1;
      others.add(one);
      return 0;
    };
    const shares = (parts?.parts ?? []).map((part) => shareOfPart(part, ingredient?.row ?? null, held));
    return shares.reduce((sum, share) => sum + share, 0);
  });
  const shareOfPart = ({ name, share, isKnown }: Inside, at: number | null, held: (one: string) => number): number => {
    const [, head = name, within = ""] = /^([^()]+?) ?\((.*)\)$/.exec(name) ?? [];
    const inner = within === "" || isKnown ? [] : partsOf(within, at);
    const named = inner.find((one) => isAsked(one.name));
    if (named !== undefined && named.share === null && inner.length > 1)
      refuse(
        `column "made of" has ${quote(wantedName)} in brackets beside others; give ${quote(head)} a row with its own "made of"`,
        "larder",
        at ?? undefined,
      );
    const part = named !== undefined ? (named.share ?? 1) : Math.max(held(name), head === name ? 0 : held(head));
    if (part > 0 && share === null)
      refuse(
        `column "made of" has ${quote(name)} without its share; enter it with one, such as "${name} 20%"`,
        "larder",
        at ?? undefined,
      );
    return part * (share ?? 0);
  };
  const words = key.split(" ");
  return {
    isAsked,
    shareIn,
    likeIt: (names) => {
      for (const name of names) shareIn(name);
      const alike = [...others].filter((name) => {
        const all = nameKey(name).split(/[ (),;]+/);
        return words.every((word) => all.includes(word)) && shareIn(name) === 0;
      });
      return alike.length === 0 ? [] : [`${alike.map(quote).join(", ")} not counted`];
    },
  };
}
