// Each line of the text beside what was understood of it. A line's node is made once and kept as long as it says the same.

import { showNumber } from "../../shared/base/show.ts";
import type { Described } from "../../shared/recipe/text/description.ts";
import { element, say } from "../kit/element.ts";
import { type Form, forget } from "../kit/fields.ts";
import { lineNode } from "./line.ts";
import type { Shown } from "./line-state.ts";
import { describedNow, type PasteState, shownPart } from "./state.ts";

/** More lines than this are not shown one by one. */
const MAX_SHOWN = 400;

function grouped<T extends { readonly line: number | null }>(list: readonly T[]): Map<number, T[]> {
  const groups = new Map<number, T[]>();
  for (const one of list) {
    if (one.line === null) continue;
    const group = groups.get(one.line);
    if (group === undefined) groups.set(one.line, [one]);
    else group.push(one);
  }
  return groups;
}

export function shownLines(state: PasteState): Shown[] {
  const described: Described = describedNow(state);
  const rows = grouped(described.rows);
  const steps = grouped(described.steps);
  const ignored = grouped(described.ignored);
  const stages = grouped(described.stages);
  const questions = grouped(described.questions.map((question, at) => ({ question, at, line: question.line })));
  const flour = described.formula.flour;
  return shownPart(state)
    .lines.filter(({ text }) => text !== "")
    .slice(0, MAX_SHOWN)
    .map((line): Shown => {
      const mine = rows.get(line.at) ?? [];
      return {
        line,
        rows: mine,
        steps: steps.get(line.at) ?? [],
        ignored: ignored.get(line.at)?.[0],
        stage: stages.get(line.at)?.[0],
        questions: questions.get(line.at) ?? [],
        isCorrected: line.text.trim().replace(/\s+/g, " ") in state.corrections.lines,
        percents: mine.map(
          (row) =>
            row.percent ?? (row.grams === null || flour === null || flour === 0 ? null : (row.grams / flour) * 100),
        ),
      };
    });
}

const signatureOf = ({ line, rows, steps, ignored, stage, questions, isCorrected, percents }: Shown): string =>
  JSON.stringify([
    line.raw,
    rows,
    steps,
    ignored?.reason,
    stage,
    questions,
    isCorrected,
    percents.map((one) => (one === null ? null : showNumber(one, 2))),
  ]);

/** The list, which changes only where what it says changes. */
export function lineList(state: PasteState, form: Form): HTMLElement {
  const list = element("ol", { class: "lines understood" });
  const more = element("p", { class: "hint", hidden: true });
  let rowsByLine = new Map<string, HTMLElement[]>();
  let before = "";
  form.onChange(() => {
    const lines = shownLines(state);
    const left = shownPart(state).lines.filter(({ text }) => text !== "").length - lines.length;
    more.hidden = left === 0;
    say(more, left === 0 ? "" : `${left} more lines are read and counted. They are not shown here.`);
    const signatures = lines.map(signatureOf);
    const all = signatures.join("\n");
    if (all === before) return;
    before = all;
    const had = list.contains(document.activeElement)
      ? [...list.children].findIndex((one) => one.contains(document.activeElement))
      : -1;
    const next = new Map<string, HTMLElement[]>();
    const nodes = lines.map((line, at) => {
      const key = signatures[at] ?? "";
      const node = rowsByLine.get(key)?.shift() ?? lineNode(line, state, form);
      next.set(key, [...(next.get(key) ?? []), node]);
      return node;
    });
    for (const left of [...rowsByLine.values()].flat()) {
      forget(form, left);
      left.remove();
    }
    rowsByLine = next;
    nodes.forEach((node, at) => {
      if (list.children[at] !== node) list.insertBefore(node, list.children[at] ?? null);
    });
    if (had >= 0 && !list.contains(document.activeElement)) setTimeout(() => focusAfter(list, had));
  });
  return element("div", {}, list, more);
}

/** After an answer the next open question has its turn, or the line itself. */
function focusAfter(list: HTMLElement, at: number): void {
  if (document.activeElement !== document.body) return;
  const open = [...list.querySelectorAll<HTMLElement>(".open-question")];
  const later = open.find((one) => [...list.children].findIndex((line) => line.contains(one)) >= at) ?? open[0];
  const target =
    later?.querySelector<HTMLElement>("button, input, select") ??
    list.children[at]?.querySelector<HTMLElement>("button");
  target?.focus();
}
