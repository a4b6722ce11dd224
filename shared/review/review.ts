import { showNumber, shownShare } from "../base/show.ts";
import type { Ratio } from "../base/units.ts";
import { saysItsWater } from "../enrichment/enrichment.ts";
import { builtInNamed } from "../larder/built-in-larder.ts";
import { isFlour, isPreferment, type Kind } from "../larder/kinds.ts";
import { eachRow, findIngredient, type Larder } from "../larder/larder.ts";
import { bandOf, type StyleName, styleNamed } from "./bands.ts";
import {
  notesInto,
  ofKind,
  outside,
  type ReviewSetting,
  type Row,
  type RowNote,
  sentence,
  sideOf,
  sumOf,
  type Topic,
} from "./remark.ts";
import { reviewSalt } from "./salt.ts";
import type { Printed } from "./style.ts";
import { reviewWater } from "./water.ts";
import { reviewYeast } from "./yeast.ts";

/**
 * What is unusual for the style, row by row; what concerns the whole is said of the first flour row.
 * `shares` are of all flour. Each remark names the usual range; the bands' sources stand beside them in the code.
 */
export function review(
  names: readonly (string | null)[],
  kinds: readonly (Kind | null)[],
  shares: readonly (Ratio | null)[],
  styleName: StyleName,
  larder: Larder,
): RowNote[] {
  const style = styleNamed(styleName);
  const rows = rowsOf(names, kinds, shares, larder);
  const notes: RowNote[] = [];
  const whole = rows.find(({ kind }) => isFlour(kind))?.index ?? 0;
  const setting: ReviewSetting = { remark: notesInto(notes), whole, styleName, style };

  reviewWater(rows, setting);
  reviewSalt(rows, setting);
  reviewYeast(rows, setting);
  reviewEnrichment(rows, setting);
  reviewPrefermentedFlour(rows, setting);
  return notes;
}

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

/**
 * Flour inside preferments, of all flour. Above half little of it is left to be strong (from memory: Hamelman, Bread: 10 to 50 %);
 * below 5 % it hardly leavens: common practice, no source.
 */
const PREFERMENTED = { low: 0.05, high: 0.5 };

function reviewPrefermentedFlour(rows: readonly Row[], { remark }: ReviewSetting): void {
  const preferments = rows.filter(({ kind, share }) => isPreferment(kind) && share > 0);
  const flour = preferments.reduce((sum, { kind, share }) => sum + share * kind.flour, 0);
  const first = preferments[0];
  const side = sideOf(flour, { ...PREFERMENTED, usual: flour });
  if (first === undefined || side === null) return;
  remark(
    first.index,
    `Prefermented flour is ${shownShare(flour)} of all flour, ${side} the usual range (${showNumber(PREFERMENTED.low * 100)} to ${shownShare(PREFERMENTED.high)})`,
    outside(flour, side, { ...PREFERMENTED, usual: flour }, "enriching"),
    { side },
  );
}

/** Dry milk and dry egg have less water than this. */
const DRY = 0.1;

function reviewEnrichment(rows: readonly Row[], setting: ReviewSetting): void {
  const { style } = setting;
  const leavening = style.leavening;
  const solids = ofKind(rows, "dairy").filter(({ ingredient }) => (ingredient?.water ?? 1) < DRY);
  const groups: readonly Group[] = [
    { topic: "sugar", what: "Sugar", rows: ofKind(rows, "sugar"), printed: style.sugar },
    { topic: "fat", what: "Fat", rows: ofKind(rows, "fat"), printed: style.fat },
    { topic: "egg", what: "Egg", rows: ofKind(rows, "egg"), printed: style.egg },
    { topic: "milk solids", what: "Milk solids", rows: solids, printed: style.milkSolids },
    ...(leavening === undefined ? [] : [leaveningOf(rows, leavening)]),
  ];
  for (const { topic, what, rows: some, printed, isRaising } of groups) {
    const first = some.find(({ share }) => share > 0);
    const amount = topic === "egg" ? some.reduce((sum, row) => sum + asShellEgg(row), 0) : sumOf(some);
    const band = bandOf(printed);
    const side = sideOf(amount, band);
    if (first === undefined || side === null) continue;
    const as = isRaising === true ? "essential" : "enriching";
    setting.remark(first.index, sentence(what, amount, side, band, setting), outside(amount, side, band, as), {
      topic,
      side,
    });
  }
}

type Group = {
  readonly topic?: Topic;
  readonly what: string;
  readonly rows: readonly Row[];
  readonly printed: Printed;
  readonly isRaising?: true;
};

function leaveningOf(rows: readonly Row[], { of, band }: { readonly of: string; readonly band: Printed }): Group {
  const leaveners = rows.filter(({ names }) => names.some((name) => builtInNamed(name)?.name === of));
  const what = of === "baking soda" ? "Baking soda" : "Baking powder";
  return { what, rows: leaveners, printed: band, isRaising: true };
}

/** Solids of whole egg (USDA SR28 01123). */
const EGG_SOLIDS = 1 - 0.7615;

/** Dried egg counts as the egg it makes; the bands are printed for egg as it comes. */
function asShellEgg({ share, ingredient }: Row): number {
  const water = ingredient?.water ?? 1;
  return water < DRY ? (share * (1 - water)) / EGG_SOLIDS : share;
}
