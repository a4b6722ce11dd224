import { weight } from "../base/units.ts";
import { swapYeast, type Yeast } from "../formula/yeast.ts";
import { builtInNamed, nameKey } from "../larder/built-in-larder.ts";
import { isPreferment } from "../larder/kinds.ts";
import { type Band, bandOf } from "./bands.ts";
import { ofKind, outside, type ReviewSetting, type Row, sentence, sideOf } from "./remark.ts";
import type { Style } from "./style.ts";

/** Which yeast a row holds; null where its names do not say. */
function yeastOf({ names }: Row): Yeast | null {
  const words = names.flatMap((name) => [nameKey(name), nameKey(builtInNamed(name)?.name ?? "")]).join(" | ");
  if (/\b(fresh|compressed)\b/.test(words)) return "fresh";
  if (/\b(instant|idy)\b/.test(words)) return "instant";
  return /\b(active|ady)\b/.test(words) ? "active dry" : null;
}

/** Yeast against the style's band; a starter excuses little or none. */
export function reviewYeast(rows: readonly Row[], setting: ReviewSetting): void {
  const { remark, whole, style } = setting;
  const yeasts = ofKind(rows, "yeast").map((row) => ({ row, yeast: yeastOf(row) }));
  const unsaid = yeasts.filter(({ yeast }) => yeast === null);
  for (const { row } of unsaid) remark(row.index, "say fresh, instant or active dry");
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
  remark(
    yeasts[0]?.row.index ?? whole,
    sentence(amount === 0 ? "Yeast" : measured.what, amount, side, measured.band, setting),
    outside(amount, side, measured.band, "essential"),
    { of: yeasts.length === 0 ? "yeast" : undefined, topic: "yeast", side },
  );
}

type YeastMeasure = {
  readonly what: string;
  readonly band: Band;
  readonly count: (share: number, yeast: Yeast) => number;
};

/** Dry yeast is held against the style's dry band where it has one, everything else as fresh; null where the style has none. */
function yeastMeasure(yeasts: readonly Yeast[], { freshYeast, dryYeast }: Style): YeastMeasure | null {
  const as = (wanted: Yeast) => (share: number, yeast: Yeast) => swapYeast(weight(share), yeast, wanted).yeast;
  const allDry = yeasts.length > 0 && !yeasts.includes("fresh");
  if (dryYeast !== undefined && (allDry || freshYeast === undefined)) {
    const band = bandOf(dryYeast.band);
    if (dryYeast.as === "either") return { what: "Dry yeast", band, count: (share) => share };
    return { what: `Yeast, counted as ${dryYeast.as},`, band, count: as(dryYeast.as) };
  }
  if (freshYeast === undefined) return null;
  return {
    what: yeasts.some((one) => one !== "fresh") ? "Yeast, counted as fresh," : "Fresh yeast",
    band: bandOf(freshYeast),
    count: as("fresh"),
  };
}
