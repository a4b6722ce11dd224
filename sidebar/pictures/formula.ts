import { inUnit, showNumber } from "../../shared/base/show.ts";
import { barHeight, type KindPart, kindBar } from "../../shared/drawings/kind-bar.ts";
import { svgElement } from "../kit/element.ts";
import { newId } from "../kit/fields.ts";

const WIDTH = 262;
const [LEFT, WIDE] = [6, 54];
const TOP = 6;
const LABEL_GAP = 15;
const MIN_HEIGHT = 120;

/** The dough as one bar: what each kind of ingredient is of it, in words beside its part. */
export function formulaPicture(parts: readonly KindPart[], unit: "g" | "oz"): Element {
  const height = barHeight(parts, LABEL_GAP, MIN_HEIGHT);
  const bar = kindBar(parts, height, LABEL_GAP);
  const says = newId();
  const words = (part: KindPart) => `${part.word} ${percent(part.share)} %, ${inUnit(part.weight, unit)}`;
  return svgElement(
    "svg",
    { viewBox: `0 0 ${WIDTH} ${height + 2 * TOP}`, role: "img", "aria-labelledby": says },
    svgElement("title", { id: says }, `Of the whole dough: ${bar.map(words).join("; ")}.`),
    ...bar.map(({ from, to }, at) =>
      svgElement("rect", {
        class: at % 2 === 0 ? "part" : "part other",
        x: LEFT,
        y: round(TOP + from),
        width: WIDE,
        height: round(Math.max(0.5, to - from)),
      }),
    ),
    ...bar.flatMap((part) => {
      const [middle, label] = [TOP + (part.from + part.to) / 2, TOP + part.label];
      const right = LEFT + WIDE;
      return [
        svgElement("path", {
          class: "pointer",
          d: `M${right} ${round(middle)}H${right + 4}L${right + 16} ${round(label)}H${right + 20}`,
        }),
        svgElement("text", { x: right + 24, y: round(label + 4) }, words(part)),
      ];
    }),
  );
}

/** Salt and yeast are a few thousandths of the whole. */
const percent = (share: number): string => showNumber(share * 100, share < 0.1 ? 2 : 1);
const round = (value: number): number => Math.round(value * 100) / 100;
