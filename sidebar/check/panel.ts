import { stepBars } from "../../shared/drawings/step-bars.ts";
import type { SheetReview } from "../../shared/protocol/bench.ts";
import { acting } from "../kit/action-button.ts";
import { ask, told } from "../kit/ask.ts";
import { element, say } from "../kit/element.ts";
import { newId } from "../kit/fields.ts";
import { type Panel, SHOWN_AGAIN } from "../kit/panel.ts";
import { section } from "../new-formula/sections.ts";
import { formulaPicture } from "../pictures/formula.ts";
import { picturePlace } from "../pictures/place.ts";
import { LINE_WIDTH, timeLine } from "../pictures/time-line.ts";
import { tinPicture } from "../pictures/tin.ts";

/** Reads the formula sheet in front: what is unusual, and what its numbers mean. */
export const check: Panel = {
  name: "Check",
  heading: "Check the sheet in front",
  open: () => {
    const body = element("div", {});
    let style = "";
    let sheet = "";
    const reading = acting(
      {
        question: "review",
        label: "Read the sheet in front",
        asked: () => ({ style }),
        busy: () => "Reading the sheet …",
        done: (review) => {
          // The style chosen for one sheet is no choice for another.
          if (sheet !== "" && review.sheet !== sheet && style !== "") {
            style = "";
            sheet = review.sheet;
            void Promise.resolve().then(reading.run);
          }
          sheet = review.sheet;
          body.replaceChildren(
            ...shownReview(review, (chosen) => {
              style = chosen;
              void reading.run().then(() => body.querySelector("select")?.focus());
            }),
          );
          const { length } = review.remarks;
          return `Read “${review.sheet}”: ${length === 0 ? "nothing unusual" : length === 1 ? "one remark" : `${length} remarks`} for ${review.style}.`;
        },
        silent: "Wait until the sheet is calculated, then read it again.",
        failed: () => body.replaceChildren(),
      },
      "build",
    );
    void reading.run();
    return element("div", { [SHOWN_AGAIN]: () => void reading.run() }, ...reading.nodes, body);
  },
};

function shownReview(review: SheetReview, choose: (style: string) => void): Node[] {
  const id = newId();
  const select = element(
    "select",
    { id, change: () => choose(select.value) },
    ...review.styles.map((style) => element("option", { value: style }, style)),
  );
  select.value = review.style;
  const trouble = element("p", { class: "trouble", role: "status", hidden: true });
  return [
    section(
      review.title,
      element("div", { class: "field inline" }, element("label", { class: "label", for: id }, "Checked as"), select),
      ...(review.meaning === "" ? [] : [element("p", { class: "note" }, review.meaning)]),
    ),
    section(
      "Remarks by row",
      ...(review.remarks.length === 0
        ? [element("p", {}, "Nothing is outside the usual for this style.")]
        : [
            element(
              "ul",
              { class: "list" },
              ...review.remarks.map(({ cell, name, says }) =>
                element(
                  "li",
                  { class: "remark" },
                  element(
                    "button",
                    { type: "button", class: "jump", click: () => void jump(review.sheet, cell, trouble) },
                    `${name}, ${cell}`,
                  ),
                  element("p", {}, says),
                ),
              ),
            ),
          ]),
      trouble,
    ),
    ...drawn(review.pictures),
    section(
      "Figures",
      ...review.facts.flatMap(({ label, says }) => [element("h3", {}, label), element("p", {}, says)]),
      element(
        "p",
        { class: "hint" },
        "Bands are guides from published formulas: they say what is usual, not what is right.",
      ),
    ),
  ];
}

/** What can be drawn of the sheet, each picture with its heading. */
function drawn({ unit, length, parts, steps, tin }: SheetReview["pictures"]): Node[] {
  const line = stepBars(steps, LINE_WIDTH);
  const pictures: readonly [string, string, Element | null][] = [
    ["What the dough is made of", "The formula as a bar", parts.length === 0 ? null : formulaPicture(parts, unit)],
    ["Tin", "The tin", tin === null ? null : tinPicture(tin, { weight: unit, length })],
    ["Steps", "The steps by time", line === null ? null : timeLine(line)],
  ];
  return pictures.flatMap(([heading, label, picture]) => {
    if (picture === null) return [];
    const place = picturePlace(label);
    place.append(picture);
    return [section(heading, place)];
  });
}

const PATIENCE_MS = 20_000;

async function jump(sheet: string, cell: string, trouble: HTMLElement): Promise<void> {
  const outcome = await ask("goto", { sheet, cell }, PATIENCE_MS);
  trouble.hidden = "answer" in outcome;
  say(trouble, "answer" in outcome ? "" : told(outcome));
}
