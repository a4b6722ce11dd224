import { stepBars } from "../../shared/drawings/step-bars.ts";
import type { SheetReview } from "../../shared/protocol/sheet-review.ts";
import { actionButton } from "../kit/action-button.ts";
import { ask, failureSentence } from "../kit/ask.ts";
import { element, say } from "../kit/element.ts";
import { newId } from "../kit/fields.ts";
import { type Panel, SHOWN_AGAIN } from "../kit/panel.ts";
import { section } from "../new-formula/sections.ts";
import { formulaPicture } from "../pictures/formula.ts";
import { picturePlace } from "../pictures/place.ts";
import { LINE_WIDTH, timeLine } from "../pictures/time-line.ts";
import { tinPicture } from "../pictures/tin.ts";
import { partsSection } from "./parts.ts";
import { typedSection } from "./typed-weights.ts";

/** Reads the formula sheet in front: what is wrong and what is unusual, the worst first, and what its numbers mean. */
export const check: Panel = {
  name: "Check",
  heading: "Check the open formula sheet",
  open: () => {
    const body = element("div", {});
    let style = "";
    let sheet = "";
    const reading = actionButton(
      {
        question: "review",
        label: "Check this sheet",
        request: () => ({ style }),
        busy: () => "Reading the sheet …",
        done: (review) => {
          // The style chosen for one sheet is no choice for another.
          if (sheet !== "" && review.sheet !== sheet && style !== "") {
            style = "";
            sheet = review.sheet;
            void Promise.resolve().then(reading.run);
          }
          sheet = review.sheet;
          const wasOpen = body.querySelector("details")?.open === true;
          body.replaceChildren(
            ...(review.typed.length === 0 ? [] : [typedSection(review, () => void reading.run())]),
            ...headline(review),
            againstSection(review, (chosen) => {
              style = chosen;
              void reading.run().then(() => body.querySelector("select")?.focus());
            }),
            ...drawn(review.pictures),
            figures(review),
            blocks(review),
          );
          body.querySelector("details")?.toggleAttribute("open", wasOpen);
          const { length } = review.remarks;
          const many = length === 0 ? "nothing unusual" : length === 1 ? "1 note" : `${length} notes, the worst first,`;
          return `“${review.sheet}”: ${many} for ${review.style}.`;
        },
        silent: "Wait until the sheet is calculated, then check it again.",
        failed: () => body.replaceChildren(),
      },
      "build",
    );
    const blocks = (review: SheetReview): HTMLElement =>
      partsSection(review, (part) => {
        void reading.run().then(() => body.querySelector<HTMLElement>(`[data-part="${part}"]`)?.focus());
      });
    void reading.run();
    return element("div", { [SHOWN_AGAIN]: () => void reading.run() }, ...reading.nodes, body);
  },
};

/** What is worst stands out; all else follows in a list. */
function headline({ sheet, style, remarks }: SheetReview): Node[] {
  const fault = element("p", { class: "fault", role: "status", hidden: true });
  const lineOf = ({ cell, name, says }: SheetReview["remarks"][number]): Node[] => [
    element(
      "button",
      { type: "button", class: "jump", click: () => void jump(sheet, cell, fault) },
      `${name}, ${cell}`,
    ),
    element("p", {}, says),
  ];
  const [worst, ...others] = remarks;
  if (worst === undefined)
    return [
      section("Notes by ingredient", element("p", {}, `Every ingredient is within the usual range for ${style}.`)),
    ];
  return [
    section("Look at this first", element("div", { class: "remark worst" }, ...lineOf(worst)), fault),
    ...(others.length === 0
      ? []
      : [
          section(
            "Notes by ingredient",
            element(
              "ul",
              { class: "list" },
              ...others.map((one) => element("li", { class: "remark" }, ...lineOf(one))),
            ),
          ),
        ]),
  ];
}

function againstSection(review: SheetReview, choose: (style: string) => void): HTMLElement {
  const id = newId();
  const select = element(
    "select",
    { id, change: () => choose(select.value) },
    ...review.styles.map((style) => element("option", { value: style }, style)),
  );
  select.value = review.style;
  const label = element("label", { class: "label", for: id }, "Check against");
  return section(review.title, element("div", { class: "field inline" }, label, select));
}

const figures = ({ facts }: SheetReview): HTMLElement =>
  section(
    "Key figures",
    ...facts.flatMap(({ label, says }) => [element("h3", {}, label), element("p", {}, says)]),
    element(
      "p",
      { class: "hint" },
      "Ranges come from published formulas. They show what is usual, not what is right for your product.",
    ),
  );

/** What can be drawn of the sheet, each picture with its heading. */
function drawn({ unit, length, parts, steps, tin }: SheetReview["pictures"]): Node[] {
  const line = stepBars(steps, LINE_WIDTH);
  const pictures: readonly [string, string, Element | null][] = [
    ["Make-up by weight", "The formula as a bar", parts.length === 0 ? null : formulaPicture(parts, unit)],
    ["Tin", "The tin", tin === null ? null : tinPicture(tin, { weight: unit, length })],
    ["Schedule", "Schedule", line === null ? null : timeLine(line)],
  ];
  return pictures.flatMap(([heading, label, picture]) => {
    if (picture === null) return [];
    const place = picturePlace(label);
    place.append(picture);
    return [section(heading, place)];
  });
}

const PATIENCE_MS = 20_000;

async function jump(sheet: string, cell: string, fault: HTMLElement): Promise<void> {
  const outcome = await ask("goto", { sheet, cell }, PATIENCE_MS);
  fault.hidden = "answer" in outcome;
  say(fault, "answer" in outcome ? "" : failureSentence(outcome));
}
