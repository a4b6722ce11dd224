import type { StepBars } from "../../shared/drawings/step-bars.ts";
import { svgElement } from "../kit/element.ts";
import { newId } from "../kit/fields.ts";

export const LINE_WIDTH = 256;
const LEFT = 3;
const ROW = 25;
const HEADING = 17;
const FOOT = 18;
/** A longer name would run into the duration; the whole of it is in the field and in the title. */
const MAX_LABEL_LENGTH = 27;

/** The steps below each other, each with its bar on one line of time; midnight is a dashed line. */
export function timeLine({ bars, midnights, ready, says }: StepBars): Element {
  const id = newId();
  const nodes: Element[] = [];
  let [down, day] = [0, ""];
  const heading = (text: string) => {
    nodes.push(svgElement("text", { class: "strong", x: LEFT, y: down + 12 }, text));
    down += HEADING;
  };
  for (const bar of bars) {
    if (bar.day !== day) heading(bar.day === "" ? "the day it is ready" : bar.day);
    day = bar.day;
    const right = LEFT + LINE_WIDTH;
    nodes.push(
      svgElement("text", { x: LEFT, y: down + 12 }, `${bar.time} ${cut(bar.name)}`),
      svgElement("text", { x: right, y: down + 12, "text-anchor": "end" }, bar.takes),
      svgElement("path", { class: "track", d: `M${LEFT} ${down + 19}H${right}` }),
      svgElement("rect", {
        class: "step",
        x: round(LEFT + bar.left),
        y: down + 16,
        width: round(bar.width),
        height: 6,
      }),
    );
    down += ROW;
  }
  const lines = midnights.map((at) =>
    svgElement(
      "path",
      { class: "guide edge", d: `M${round(LEFT + at)} 0V${down}` },
      svgElement("title", {}, "midnight"),
    ),
  );
  nodes.push(svgElement("text", { class: "strong", x: LEFT, y: down + 13 }, `ready at ${ready}`));
  if (midnights.length > 0) {
    nodes.push(svgElement("text", { x: LEFT + LINE_WIDTH, y: down + 13, "text-anchor": "end" }, "dashed: midnight"));
  }
  return svgElement(
    "svg",
    { viewBox: `0 0 ${LINE_WIDTH + 2 * LEFT} ${down + FOOT}`, role: "img", "aria-labelledby": id },
    svgElement("title", { id }, `Steps by time. ${says}`),
    ...lines,
    ...nodes,
  );
}

const cut = (name: string): string =>
  name.length > MAX_LABEL_LENGTH ? `${name.slice(0, MAX_LABEL_LENGTH - 1).trimEnd()}…` : name;
const round = (value: number): number => Math.round(value * 100) / 100;
