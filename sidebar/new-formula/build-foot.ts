// The foot of a panel that builds: what will come of it, what is still in the way, and the Build button.

import { inUnit, showNumber } from "../../shared/base/show.ts";
import { toGrams } from "../../shared/base/units.ts";
import type { TinView } from "../../shared/drawings/tin-view.ts";
import type { Order } from "../../shared/protocol/order.ts";
import type { Questions } from "../../shared/protocol/questions.ts";
import { ask, type Failure, failureSentence, ONE_ACCOUNT } from "../kit/ask.ts";
import { element, say } from "../kit/element.ts";
import type { FieldFault } from "../kit/field-fault.ts";
import { type Form, goTo, showFaults } from "../kit/fields.ts";
import { goToPanel } from "../kit/panel.ts";
import { pressButton, progressOf } from "../kit/work-in-progress.ts";
import { afterwards } from "./after-build.ts";
import type { Assessed } from "./order.ts";
import type { FormContext } from "./sections.ts";

/** A build takes seconds; a lock on the workbook may be waited for first. */
const PATIENCE_MS = 90_000;
/** The foot must leave room for the fields. */
const LISTED = 3;

export type Foot = {
  readonly node: HTMLElement;
  readonly showFigures: () => void;
  /** What is in the way, once the fields are there. */
  readonly update: () => void;
  /** What came of the last build says nothing of another formula. */
  readonly clear: () => void;
};

/** What a foot asks of its panel. */
type Building = {
  readonly form: Form;
  readonly title: () => string;
  readonly now: () => { readonly faults: readonly FieldFault[]; readonly order: Order };
  /** What the order comes to; `isListed` where the faults stand below it already. */
  readonly figures: (isListed: boolean) => Node[];
  /** A sentence behind the figures; "" for none. */
  readonly remark?: () => string;
};

export const buildFoot = ({ draft, form, now, unusual }: FormContext): Foot =>
  footOf({
    form,
    now,
    title: () => draft.title.trim(),
    figures: (isListed) => figuresOf(now(), draft.units.weight, isListed),
    remark: () => (isTold(now()) && unusual().length > 0 ? "Unusual: see below the ingredients." : ""),
  });

export function footOf({ form, title: titleNow, now, figures: figuresNow, remark: remarkNow }: Building): Foot {
  let wanted = false;
  const figures = element("p", { class: "figures" });
  const remark = element("span", {});
  const list = element("ul", { class: "list" });
  const more = element("p", { class: "hint", hidden: true });
  const lead = element("p", { class: "lead", role: "status" });
  const button = pressButton("Build the sheet", "build", () => void pressed());
  const progress = progressOf(() => button);
  const { bar, status } = progress;
  const next = nextSteps();
  const node = element("footer", {}, figures, lead, list, more, bar, status, next, button);
  // A field that gets the focus must not come to stand behind the foot.
  new ResizeObserver(() => {
    // That of a panel that is not shown has no height and no say.
    if (node.offsetHeight > 0) document.documentElement.style.scrollPaddingBottom = `${node.offsetHeight + 8}px`;
  }).observe(node);
  return { node, showFigures, update, clear };

  function clear(): void {
    if (progress.isBusy()) return;
    progress.clear();
    next.hidden = true;
  }

  function showFigures(): void {
    if (now().faults.length === 0) wanted = false;
    figures.replaceChildren(...figuresNow(wanted));
  }

  function update(): void {
    const assessed = now();
    showFaults(form, assessed.faults, wanted);
    say(remark, remarkNow?.() ?? "");
    if (remark.textContent === "") remark.remove();
    else figures.append(remark);
    const { length } = wanted ? assessed.faults : [];
    const things = length === 1 ? "One thing" : `${length} things`;
    say(lead, length === 0 ? "" : `${things} to enter or correct before the sheet can be built:`);
    showList(wanted ? assessed.faults : []);
  }

  function showList(all: readonly FieldFault[]): void {
    const faults = all.slice(0, LISTED);
    more.hidden = all.length <= LISTED;
    say(more, `and ${all.length - LISTED} more`);
    if (
      list.children.length === faults.length &&
      faults.every(({ says }, at) => list.children[at]?.textContent === says)
    )
      return;
    list.replaceChildren(
      ...faults.map(({ at, says }) =>
        element("li", {}, element("button", { type: "button", class: "jump", click: () => goTo(form, at) }, says)),
      ),
    );
  }

  async function pressed(): Promise<void> {
    if (progress.isBusy()) return;
    const { faults, order } = now();
    const [first] = faults;
    clear();
    if (first !== undefined) {
      wanted = true;
      form.changed();
      goTo(form, first.at);
      return;
    }
    const title = titleNow();
    const outcome = await progress.during(`Building “${title}” …`, () =>
      ask("build", order, PATIENCE_MS, (late) => {
        if ("answer" in late)
          progress.report(`${built(late.answer, title)} It took longer than Gramwright waited.`, false);
      }),
    );
    next.hidden = !("answer" in outcome);
    progress.report("answer" in outcome ? built(outcome.answer, title) : failed(outcome), !("answer" in outcome));
    if ("answer" in outcome) void afterwards(status, outcome.answer.listDue === true);
  }
}

/** What a new sheet is usually built for. */
function nextSteps(): HTMLElement {
  const to = (name: string, label: string) =>
    element("button", { type: "button", class: "quiet-button", click: () => goToPanel(node, name) }, label);
  const node = element("div", { hidden: true }, to("Check", "Check it"), to("Staff card", "Make a staff card"));
  return node;
}

function built({ sheet, note }: Questions["build"]["answer"], title: string): string {
  const other = sheet === title ? "" : " The name was taken, so a number was added.";
  return `Built “${sheet}”.${other} No other sheet was changed.${note === undefined ? "" : ` ${note}`}`;
}

function failed(failure: Failure): string {
  if (failure.how === "silent") {
    return `No answer for ${showNumber(PATIENCE_MS / 1000)} seconds. The sheet may still be on its way: look at the tabs under the grid before you build again. If nothing comes at all: ${ONE_ACCOUNT}`;
  }
  return `${failureSentence(failure)} What you typed is still here.`;
}

/** Whether the figures stand there, and not a sentence on what is not clear yet. */
const isTold = ({ batch, dough, faults }: Assessed): boolean =>
  dough !== null && (batch !== null || faults.every(({ missing }) => missing));

function figuresOf(
  { batch, dough, what, mixes, tin, faults, isOpen }: Assessed,
  unit: "g" | "oz",
  isListed: boolean,
): Node[] {
  const unread = faults.find(({ missing }) => !missing);
  if (unread !== undefined && batch === null && isListed) return [];
  if (unread !== undefined && batch === null) return [element("span", {}, `Check this: ${unread.says}`)];
  if (dough === null) return [element("span", {}, "Dough, flour and mixes show here as you type.")];
  const figure = (label: string, value: string) => element("span", {}, `${label} `, element("b", {}, value));
  return [
    figure(what, inUnit(dough, unit)),
    ...(batch === null ? [] : [figure("Flour", inUnit(batch.flour, unit))]),
    ...(mixes === null ? [] : "note" in mixes ? [element("span", {}, mixes.note)] : [mixed(mixes, unit)]),
    ...(batch === null && isOpen ? [element("span", {}, "The water row is worked out as the sheet is built.")] : []),
    ...(tin?.dough == null
      ? []
      : [figure("Fill", `${showNumber(toGrams(tin.dough, unit) / tin.capacity, 2)} g/cm³${fits(tin)}`)]),
  ];
}

function mixed({ mixes, each }: { mixes: number; each: number }, unit: "g" | "oz"): Node {
  const words = mixes === 1 ? "in one mix" : `in ${mixes} mixes of `;
  return element("span", {}, words, ...(mixes === 1 ? [] : [element("b", {}, inUnit(each, unit))]));
}

/** In words: colour says nothing here. */
function fits({ dough, note }: TinView): string {
  if (dough === null || note === null) return "";
  return `, ${note.fits} the usual range`;
}
