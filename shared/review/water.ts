import { atMost } from "../base/scaling.ts";
import { saysItsWater } from "../enrichment/enrichment.ts";
import { isPreferment } from "../larder/kinds.ts";
import { bandOf, hydrationBand } from "./bands.ts";
import { ofKind, outside, type ReviewSetting, type Row, type Side, sentence, sideOf } from "./remark.ts";
import type { Style } from "./style.ts";

/** Liquid dairy has more water than this. */
const LIQUID = 0.5;

/** Water of a row as the style's band counts it; null where the larder does not tell. */
function waterOf({ kind, share, ingredient }: Row, style: Style): number | null {
  if (saysItsWater(kind)) return share * kind.water;
  const water = ingredient?.water ?? null;
  if (water === null) return null;
  return style.liquidDairyByWeight && kind.word === "dairy" && water >= LIQUID ? share : share * water;
}

/** The water that is poured in against its band, and the water of everything against the band that follows for the whole. */
export function reviewWater(rows: readonly Row[], setting: ReviewSetting): void {
  const { remark, style, whole } = setting;
  const wet = rows.filter(({ kind }) => kind.word !== "yeast");
  const unknown = wet.filter((row) => waterOf(row, style) === null);
  for (const { index, ingredient } of unknown) {
    remark(
      index,
      ingredient === null
        ? "not in the larder: its water is not counted"
        : "its water is not in the larder and is not counted",
    );
  }
  const sum = (some: readonly Row[]) => some.reduce((total, row) => total + (waterOf(row, style) ?? 0), 0);
  const pouring = wet.filter(({ kind }) => ["water", "ice", "dairy", "preferment"].includes(kind.word));
  const poured = sum(pouring);
  const side = sideOf(poured, bandOf(style.water));
  // What is not counted can't be missed.
  const sure = (some: readonly Row[], side: Side) => side === "above" || !some.some((row) => unknown.includes(row));
  const pouringTold = side !== null && sure(pouring, side);
  if (pouringTold) {
    const [first] = poured === 0 ? [] : ofKind(rows, "water", "ice");
    const of = first === undefined ? "water" : undefined;
    const says = sentence(waterName(pouring), poured, side, bandOf(style.water), setting);
    remark(first?.index ?? whole, says, outside(poured, side, bandOf(style.water), "essential"), {
      of,
      topic: "water",
      side,
    });
  }
  const all = sum(wet);
  const band = hydrationBand(style);
  const wholeSide = sideOf(all, band);
  const sameFigure = pouringTold && atMost(all, poured);
  if (wholeSide !== null && !sameFigure && sure(wet, wholeSide)) {
    const says = sentence("Effective hydration", all, wholeSide, band, setting);
    remark(whole, says, outside(all, wholeSide, band, "essential"), { of: "whole dough", side: wholeSide });
  }
}

function waterName(pouring: readonly Row[]): string {
  const parts = [
    pouring.some(({ kind }) => kind.word === "dairy") ? "dairy" : "",
    pouring.some(({ kind }) => isPreferment(kind)) ? "starters" : "",
  ].filter((part) => part !== "");
  return parts.length === 0 ? "Water" : `Water, ${parts.join(" and ")} included,`;
}
