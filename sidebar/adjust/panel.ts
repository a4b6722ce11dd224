import { savingsOf } from "../../shared/adjust/savings.ts";
import { showNumber } from "../../shared/base/show.ts";
import type { Adjustable } from "../../shared/protocol/adjust.ts";
import { actionButton } from "../kit/action-button.ts";
import { element, say } from "../kit/element.ts";
import { newForm } from "../kit/fields.ts";
import { type Panel, SHOWN_AGAIN } from "../kit/panel.ts";
import { pressButton } from "../kit/work-in-progress.ts";
import { foldedSection, section } from "../new-formula/sections.ts";
import { chooseSection } from "./change-search.ts";
import { barsSection, besideNodes, NOW_AND_THEN, saysOf } from "./comparison.ts";
import { historySection } from "./history.ts";
import { takeSection } from "./take-changes.ts";
import { addChosen, formulaNow, newWork, seenNow, type Work } from "./work.ts";

/** Changes the formula sheet in front the way a baker thinks; everything is seen before it is taken. */
export const adjust: Panel = {
  name: "Adjust",
  heading: "Adjust the open formula sheet",
  open: () => {
    const body = element("div", {});
    const took = element("p", { class: "note", role: "status", hidden: true });
    let work: Work | null = null;
    const reading = actionButton(
      {
        question: "adjusting",
        label: "Read this sheet again",
        request: () => ({}),
        busy: () => "Reading the sheet …",
        done: (data) => {
          // The same sheet as before: what was chosen stays.
          if (work === null || work.data.id !== data.id || work.data.seen !== data.seen) {
            work = newWork(data);
            body.replaceChildren(...workNodes(work, again));
          }
          const wrong = data.says === "" ? "" : ` The sheet says: ${data.says}`;
          return `“${data.title}”, version ${data.version || "1"}.${wrong}`;
        },
        silent: "Wait until the sheet is calculated, then read it again.",
        failed: () => {
          work = null;
          body.replaceChildren();
        },
      },
      "quiet-button",
    );
    const again = (says: string): void => {
      say(took, says);
      took.hidden = false;
      work = null;
      void reading.run();
    };
    void reading.run();
    return element("div", { [SHOWN_AGAIN]: () => void reading.run() }, ...reading.nodes, took, body);
  },
};

function workNodes(work: Work, again: (says: string) => void): HTMLElement[] {
  const form = newForm();
  const unit = work.data.formula.options.weight;
  const refusal = element("p", { class: "fault", role: "status", hidden: true });
  const add = pressButton("Add this change", "build", () => {
    if (!addChosen(work)) return;
    form.changed();
    nodes.added.querySelector<HTMLElement>("button")?.focus();
  });
  const nodes = {
    added: element("div", {}),
    beside: element("div", { class: "beside-part" }),
  };
  form.onChange(() => {
    const { compared, printed, changes, refusal: says } = seenNow(work);
    say(refusal, says);
    refusal.hidden = says === "";
    add.hidden = work.chosen === null;
    add.setAttribute("aria-disabled", String(says !== ""));
    nodes.added.replaceChildren(...addedNodes(work, form.changed));
    const last = changes[changes.length - 1];
    const bars = barsSection(compared, unit, NOW_AND_THEN);
    nodes.beside.replaceChildren(
      ...(last === undefined
        ? []
        : [
            section(
              "Before and after",
              ...last.cautions.map((one) => element("p", { class: "note" }, one)),
              ...last.notes.map((one) => element("p", {}, one)),
              ...besideNodes(compared, unit, NOW_AND_THEN),
              element("p", { class: "hint" }, "● marks what changes. Weights are of the dough that is ordered now."),
              ...saysOf(compared, printed).map((one) => element("p", {}, one)),
            ),
            ...(bars === null ? [] : [bars]),
          ]),
    );
  });
  const all = [
    chooseSection(work, form),
    refusal,
    add,
    nodes.added,
    takeSection(work, form, again),
    nodes.beside,
    cheaperSection(work),
    historySection(() => unit, again),
  ];
  form.changed();
  return all;
}

/** What was added, the last of it to be taken back first. */
function addedNodes(work: Work, changed: () => void): HTMLElement[] {
  if (work.added.length === 0) return [];
  const { changes } = seenNow({ ...work, chosen: null });
  const back = pressButton("Take back the last change", "quiet-button", () => {
    work.added.pop();
    changed();
  });
  return [section("Changes so far", element("ol", {}, ...changes.map(({ line }) => element("li", {}, line))), back)];
}

/** What changes would bring in money. */
function cheaperSection(work: Work): HTMLElement {
  const list = element("div", {});
  const node = foldedSection("What would be cheaper?", list);
  node.addEventListener("toggle", () => list.replaceChildren(...savingNodes(work.data, work)));
  return node;
}

function savingNodes({ money, larder }: Adjustable, work: Work): HTMLElement[] {
  const savings = savingsOf(formulaNow(work), money, larder);
  if (savings.length === 0)
    return [
      element(
        "p",
        { class: "hint" },
        "No price is known. Enter prices in the ingredient sheet, also of what you might use instead.",
      ),
    ];
  return [
    element(
      "ul",
      { class: "list" },
      ...savings.map(({ label, before, after }) =>
        element(
          "li",
          {},
          `${label}: ingredients ${showNumber(before)} to ${showNumber(after)}, ${after < before ? "cheaper" : "dearer"} by ${showNumber(Math.abs(after - before))}.`,
        ),
      ),
    ),
  ];
}
