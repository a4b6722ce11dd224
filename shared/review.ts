import { builtInNamed, nameKey } from "./built-in-larder.ts";
import { saysItsWater } from "./enrichment.ts";
import type { Ingredient } from "./ingredient.ts";
import { isFlour, isPreferment, type Kind, type KindWord } from "./kinds.ts";
import { eachRow, findIngredient, type Larder } from "./larder.ts";
import { type Band, bandOf, hydrationBand, type Style, type StyleName, styleNamed } from "./review-bands.ts";
import { shown, shownShare } from "./show.ts";
import { type Ratio, weight } from "./units.ts";
import { swapped, type Yeast } from "./yeast.ts";

type Row = {
  readonly index: number;
  readonly names: readonly string[];
  readonly kind: Kind;
  readonly share: number;
  readonly ingredient: Ingredient | null;
};
type Side = "above" | "below" | null;
type Remark = (index: number, says: string) => void;

/**
 * One remark per row, null where nothing is unusual for the style; what concerns the whole stands in the first flour row.
 * `shares` are of all flour. Each remark names its band and the band's source.
 */
export function review(
  names: readonly (string | null)[],
  kinds: readonly (Kind | null)[],
  shares: readonly (Ratio | null)[],
  styleName: StyleName,
  larder: Larder,
): (string | null)[] {
  const style = styleNamed(styleName);
  const rows = rowsOf(names, kinds, shares, larder);
  const remarks = shares.map((): string[] => []);
  const remark: Remark = (index, says) => remarks[index]?.push(says);
  const whole = rows.find(({ kind }) => isFlour(kind))?.index ?? 0;
  const told: Told = { remark, whole, styleName, style };

  reviewWater(rows, told);
  reviewSalt(rows, told);
  reviewYeast(rows, told);
  reviewEnrichment(rows, told);
  return remarks.map((said) => (said.length === 0 ? null : said.join(" ")));
}

type Told = {
  readonly remark: Remark;
  readonly whole: number;
  readonly styleName: StyleName;
  readonly style: Style;
};

function rowsOf(
  names: readonly (string | null)[],
  kinds: readonly (Kind | null)[],
  shares: readonly (Ratio | null)[],
  larder: Larder,
): Row[] {
  return eachRow(shares, (share, index): Row[] => {
    const kind = kinds[index] ?? null;
    const name = names[index] ?? null;
    if (share === null || kind === null) return [];
    const ingredient = (name === null || saysItsWater(kind) ? undefined : findIngredient(larder, name)) ?? null;
    const called = [name ?? "", ingredient?.name ?? "", ...(ingredient?.alsoCalled ?? [])];
    return [{ index, names: called, kind, share, ingredient }];
  }).flat();
}

const sumOf = (rows: readonly Row[]) => rows.reduce((sum, { share }) => sum + share, 0);
const ofKind = (rows: readonly Row[], ...words: readonly KindWord[]) =>
  rows.filter(({ kind }) => words.some((word) => word === kind.word));

const SLACK = 1 + 1e-9;
function sideOf(value: number, { low, high }: Band): Side {
  if (value > high * SLACK) return "above";
  return value * SLACK < low ? "below" : null;
}

function sentence(what: string, value: number, side: Side, band: Band, { styleName, style }: Told): string {
  const range =
    band.high === 0
      ? "none"
      : `${shown(band.low * 100)} to ${shownShare(band.high)}, usually ${shownShare(band.usual)}`;
  const amount = value === 0 ? "missing" : `${shownShare(value)} of all flour`;
  return `${what} is ${amount}, ${side} the band for ${styleName} (${range}); source: ${style.source}.`;
}

/** Dry milk and dry egg have less water than this; liquid dairy has more than half. */
const DRY = 0.1;
const LIQUID = 0.5;

/** Water of a row as the style's band counts it; null where the larder does not tell. */
function waterOf({ kind, share, ingredient }: Row, style: Style): number | null {
  if (saysItsWater(kind)) return kind.word === "flour" ? 0 : share * kind.water;
  const water = ingredient?.water ?? null;
  if (water === null) return null;
  return style.liquidDairyByWeight && kind.word === "dairy" && water >= LIQUID ? share : share * water;
}

function reviewWater(rows: readonly Row[], told: Told): void {
  const { remark, style, whole } = told;
  const wet = rows.filter(({ kind }) => kind.word !== "yeast");
  const unknown = wet.filter((row) => waterOf(row, style) === null);
  for (const { index, ingredient } of unknown) {
    remark(
      index,
      ingredient === null
        ? "Not in the larder: its water is not counted."
        : "Its water is not in the larder and is not counted.",
    );
  }
  const sum = (some: readonly Row[]) => some.reduce((total, row) => total + (waterOf(row, style) ?? 0), 0);
  const pouring = wet.filter(({ kind }) => ["water", "ice", "dairy", "preferment"].includes(kind.word));
  const poured = sum(pouring);
  const side = sideOf(poured, bandOf(style.water));
  // What is not counted can't be missed.
  const sure = (some: readonly Row[], found: Side) => found === "above" || !some.some((row) => unknown.includes(row));
  const told1 = side !== null && sure(pouring, side);
  if (told1) {
    const at = poured === 0 ? whole : (ofKind(rows, "water", "ice")[0]?.index ?? whole);
    remark(at, sentence(waterName(pouring), poured, side, bandOf(style.water), told));
  }
  const all = sum(wet);
  const band = hydrationBand(style);
  const wholeSide = sideOf(all, band);
  const sameFigure = told1 && all <= poured * SLACK;
  if (wholeSide !== null && !sameFigure && sure(wet, wholeSide)) {
    remark(whole, sentence("Effective hydration", all, wholeSide, band, told));
  }
}

function waterName(pouring: readonly Row[]): string {
  const parts = [
    pouring.some(({ kind }) => kind.word === "dairy") ? "dairy's" : "",
    pouring.some(({ kind }) => isPreferment(kind)) ? "starters'" : "",
  ].filter((part) => part !== "");
  return parts.length === 0 ? "Water" : `Water, ${parts.join(" and ")} counted,`;
}

function reviewSalt(rows: readonly Row[], told: Told): void {
  const salt = ofKind(rows, "salt");
  const band = bandOf(told.style.salt);
  const side = sideOf(sumOf(salt), band);
  if (side !== null) told.remark(salt[0]?.index ?? told.whole, sentence("Salt", sumOf(salt), side, band, told));
}

/** Which yeast a row holds; null where its names do not say. */
function yeastOf({ names }: Row): Yeast | null {
  const words = names.flatMap((name) => [nameKey(name), nameKey(builtInNamed(name)?.name ?? "")]).join(" | ");
  if (/\b(fresh|compressed)\b/.test(words)) return "fresh";
  if (/\b(instant|idy)\b/.test(words)) return "instant";
  return /\b(active|ady)\b/.test(words) ? "active dry" : null;
}

function reviewYeast(rows: readonly Row[], told: Told): void {
  const { remark, whole, style } = told;
  const yeasts = ofKind(rows, "yeast").map((row) => ({ row, yeast: yeastOf(row) }));
  const unsaid = yeasts.filter(({ yeast }) => yeast === null);
  for (const { row } of unsaid)
    remark(row.index, "Say fresh, instant or active dry: they differ in strength and water.");
  if (unsaid.length > 0) return;
  const measured = yeastMeasure(
    yeasts.map(({ yeast }) => yeast ?? "fresh"),
    style,
  );
  if (measured === null) return;
  const amount = yeasts.reduce((sum, { row, yeast }) => sum + measured.count(row.share, yeast ?? "fresh"), 0);
  const side = sideOf(amount, measured.band);
  const excused = side === "below" && rows.some(({ kind, share }) => isPreferment(kind) && share > 0);
  if (side === null || excused) return;
  remark(yeasts[0]?.row.index ?? whole, sentence(measured.what, amount, side, measured.band, told));
}

type YeastMeasure = {
  readonly what: string;
  readonly band: Band;
  readonly count: (share: number, yeast: Yeast) => number;
};

/** Dry yeast is held against the style's dry band where it has one, everything else as fresh; null where the style has none. */
function yeastMeasure(yeasts: readonly Yeast[], { freshYeast, dryYeast }: Style): YeastMeasure | null {
  const as = (wanted: Yeast) => (share: number, yeast: Yeast) => swapped(weight(share), yeast, wanted).yeast;
  const allDry = yeasts.length > 0 && !yeasts.includes("fresh");
  if (dryYeast !== undefined && (allDry || freshYeast === undefined)) {
    const band = bandOf(dryYeast.band);
    if (dryYeast.as === "either") return { what: "Dry yeast", band, count: (share) => share };
    return { what: `Yeast, counted as ${dryYeast.as},`, band, count: as(dryYeast.as) };
  }
  if (freshYeast === undefined) return null;
  return { what: allDry ? "Yeast, counted as fresh," : "Fresh yeast", band: bandOf(freshYeast), count: as("fresh") };
}

function reviewEnrichment(rows: readonly Row[], told: Told): void {
  const { style } = told;
  const leavening = style.leavening;
  const leaveners = rows.filter(({ names }) => names.some((name) => builtInNamed(name)?.name === leavening?.of));
  const solids = ofKind(rows, "dairy").filter(({ ingredient }) => (ingredient?.water ?? 1) < DRY);
  const groups = [
    { what: "Sugar", rows: ofKind(rows, "sugar"), printed: style.sugar },
    { what: "Fat", rows: ofKind(rows, "fat"), printed: style.fat },
    { what: "Egg", rows: ofKind(rows, "egg"), printed: style.egg },
    { what: "Milk solids", rows: solids, printed: style.milkSolids },
    ...(leavening
      ? [
          {
            what: leavening.of === "baking soda" ? "Baking soda" : "Baking powder",
            rows: leaveners,
            printed: leavening.band,
          },
        ]
      : []),
  ];
  for (const { what, rows: some, printed } of groups) {
    const first = some.find(({ share }) => share > 0);
    const amount = what === "Egg" ? some.reduce((sum, row) => sum + asShellEgg(row), 0) : sumOf(some);
    const side = sideOf(amount, bandOf(printed));
    if (first !== undefined && side !== null)
      told.remark(first.index, sentence(what, amount, side, bandOf(printed), told));
  }
}

/** Solids of whole egg (USDA SR28 01123). */
const EGG_SOLIDS = 1 - 0.7615;

/** Dried egg counts as the egg it makes; the bands are printed for egg as it comes. */
function asShellEgg({ share, ingredient }: Row): number {
  const water = ingredient?.water ?? 1;
  return water < DRY ? (share * (1 - water)) / EGG_SOLIDS : share;
}
