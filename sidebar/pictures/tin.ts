import { inUnit, showNumber } from "../../shared/base/show.ts";
import { centimetres, cubicCentimetres, fromCentimetres, toGrams } from "../../shared/base/units.ts";
import { apart, below, levelOf, type Point, tinSection } from "../../shared/drawings/tin-drawing.ts";
import type { TinView } from "../../shared/drawings/tin-view.ts";
import { tinDough } from "../../shared/tins/tin-guide.ts";
import { svgElement } from "../kit/element.ts";
import { newId } from "../kit/fields.ts";
import type { Units } from "../new-formula/quantity.ts";

/** The units that a tin and its dough are told in. */
export type TinUnits = Pick<Units, "weight" | "length">;

const WIDTH = 262;
const LEFT = 6;
const TOP = 22;
const MAX_WIDTH = 150;
const MAX_DEPTH = 120;
const LABEL_GAP = 14;

/**
 * The tin to scale, its dough and the guide's doughs as levels. A gram of dough is drawn as a cubic centimetre, the guide's
 * grams as well, so that all levels compare.
 */
export function tinPicture(tin: TinView, units: TinUnits): Element {
  const { shape, sizes, capacity, guide, dough, note } = tin;
  const section = tinSection(shape, sizes);
  const scale = Math.min(MAX_WIDTH / section.width, MAX_DEPTH / section.depth);
  const [wide, deep] = [section.width * scale, section.depth * scale];
  const x = (cm: number) => LEFT + cm * scale;
  const y = (cm: number) => TOP + deep - cm * scale;
  const points = (list: readonly Point[]) => list.map(([px, py]) => `${px2(x(px))},${px2(y(py))}`).join(" ");
  const path = (list: readonly Point[]) =>
    list.map(([px, py], at) => `${at ? "L" : "M"}${px2(x(px))} ${px2(y(py))}`).join("");
  const level = (cm3: number) => levelOf(shape, sizes, cubicCentimetres(cm3));
  const right = LEFT + wide;
  const [low, usual, high] = [level(guide[0] * capacity), level(guide[1] * capacity), level(guide[2] * capacity)];
  const height = Math.max(TOP + deep + 20, TOP + 3.5 * LABEL_GAP);
  const grams = dough === null ? null : toGrams(dough, units.weight);
  const filled = grams === null ? null : level(grams);
  const weights = note ?? guideWeights(tin, units);

  const marks: { readonly at: number; readonly text: string; readonly edge: boolean }[] = [
    { at: y(high), text: `high ${inUnit(weights.high, units.weight)}`, edge: true },
    { at: y(usual), text: `usual ${inUnit(weights.usual, units.weight)}`, edge: false },
    { at: y(low), text: `low ${inUnit(weights.low, units.weight)}`, edge: true },
  ];
  const heights = apart(
    marks.map(({ at }) => at),
    LABEL_GAP,
    height - 8,
  );
  const labels = marks.flatMap(({ at, text, edge }, index) => {
    const to = heights[index] ?? at;
    const line = `M${px2(LEFT)} ${px2(at)}H${px2(right + 6)}L${px2(right + 18)} ${px2(to)}`;
    return [
      svgElement("path", { class: edge ? "guide edge" : "guide", d: line }),
      svgElement("text", { x: px2(right + 21), y: px2(to + 4) }, text),
    ];
  });
  const doughs =
    filled === null
      ? []
      : [
          ...section.hollows.map((hollow) =>
            svgElement("polygon", { class: "dough", points: points(below(hollow, filled)) }),
          ),
          ...section.hollows.map((hollow) => surface(hollow, filled, path)),
        ];
  const says = newId();
  const title = note?.sentence ?? `The tin holds ${showNumber(capacity, 0)} cm³.`;
  const inside = dough === null ? "" : `dough ${inUnit(dough, units.weight)}`;
  return svgElement(
    "svg",
    { viewBox: `0 0 ${WIDTH} ${px2(height)}`, role: "img", "aria-labelledby": says },
    svgElement("title", { id: says }, `Side view of the tin. ${title}`),
    ...doughs,
    ...section.hollows.map((hollow) =>
      svgElement("path", { class: section.toScale ? "wall" : "wall guess", d: path(hollow) }),
    ),
    ...labels,
    svgElement(
      "text",
      { x: px2(LEFT + wide / 2), y: 13, "text-anchor": "middle" },
      caption(tin, section.width, section.depth, units),
    ),
    svgElement(
      "text",
      { class: "strong", x: px2(LEFT + wide / 2), y: px2(TOP + deep + 15), "text-anchor": "middle" },
      inside,
    ),
  );
}

/** The dough's surface: a line where the level crosses the hollow. */
function surface(hollow: readonly Point[], filled: number, path: (list: readonly Point[]) => string): Element {
  const at = below(hollow, filled + 1e-9)
    .filter(([, y]) => Math.abs(y - filled) < 1e-6)
    .map(([x]) => x);
  const ends: Point[] =
    at.length < 2
      ? []
      : [
          [Math.min(...at), filled],
          [Math.max(...at), filled],
        ];
  return svgElement("path", { class: "surface", d: path(ends) });
}

function caption({ shape, capacity }: TinView, width: number, depth: number, { length }: TinUnits): string {
  const size = (cm: number) => showNumber(fromCentimetres(centimetres(cm), length), length === "cm" ? 1 : 2);
  const holds = `${showNumber(capacity, 0)} cm³`;
  return shape === "water" ? `holds ${holds}` : `${size(width)} × ${size(depth)} ${length}, ${holds}`;
}

function guideWeights({ guide, capacity }: TinView, { weight }: TinUnits) {
  const [low, usual, high] = guide;
  const of = (fill: number) => tinDough(capacity, fill, 1, weight);
  return { low: of(low), usual: of(usual), high: of(high) };
}

const px2 = (value: number) => Math.round(value * 100) / 100;
