// One line: its own text, what was understood, its questions, and the fields that correct it.

import { inUnit, showNumber } from "../../shared/base/show.ts";
import { fromCelsius } from "../../shared/base/units.ts";
import { IN_DOUGH, type Row } from "../../shared/recipe/text/description.ts";
import { IGNORED_SAYS, remarkSays } from "../../shared/recipe/text/wording.ts";
import { element } from "../kit/element.ts";
import type { Form } from "../kit/fields.ts";
import { correctionFields } from "./correction.ts";
import type { Shown } from "./line-state.ts";
import { questionNode } from "./question.ts";
import { correctLine, describedNow, type PasteState, uncorrectLine } from "./state.ts";

export function lineNode(line: Shown, state: PasteState, form: Form): HTMLElement {
  const isOpen = line.questions.some(({ question }) => question.isOpen);
  const kind =
    line.rows.length > 0
      ? "ingredient"
      : line.stage !== undefined
        ? "heading"
        : line.steps.length > 0
          ? "step"
          : "aside";
  const node = element("li", { class: `line ${kind}${isOpen ? " asked" : ""}` });
  const [row] = line.rows;
  const fields = element("div", { class: "correct", hidden: true });
  node.append(element("p", { class: "own-text" }, line.line.raw.trim()));
  const got = element("div", { class: "got" }, ...understood(line, state));
  node.append(got);
  const place = `line ${line.line.at + 1}`;
  if (row !== undefined && line.rows.length === 1) {
    const toggle = element(
      "button",
      { type: "button", class: "quiet-button", "aria-expanded": "false", click: () => open() },
      "Correct",
    );
    toggle.setAttribute("aria-label", `Correct ${place}`);
    const open = (): void => {
      if (fields.children.length === 0)
        fields.append(correctionFields(line, row, state, form), leaveOut(line, state, form, place));
      fields.hidden = !fields.hidden;
      toggle.setAttribute("aria-expanded", String(!fields.hidden));
      if (!fields.hidden) fields.querySelector("input")?.focus();
    };
    got.append(toggle);
  }
  if (line.rows.length > 1 || isOpen) got.append(leaveOut(line, state, form, place));
  if (line.ignored?.reason === "not an ingredient") got.append(takeBack(line, state, form, place));
  else if (line.ignored?.reason === "no ingredient" || line.ignored?.reason === "note")
    got.append(countIt(line, state, form, place));
  node.append(
    ...line.questions.map(({ question, at }) => {
      // Of several rows in a line, the one that the question is about.
      const about = line.rows.find(({ text }) => text === question.part) ?? row;
      return questionNode(question, at, state, form, about, question.part ?? line.line.text);
    }),
    fields,
  );
  return node;
}

function understood({ rows, steps, ignored, stage, percents }: Shown, state: PasteState): Node[] {
  if (rows.length > 0)
    return rows.map((row, at) => element("p", { class: "what" }, ...rowSays(row, percents[at] ?? null, state)));
  if (stage !== undefined)
    return [element("p", { class: "what" }, element("b", {}, "Part: "), stageSays(stage.role, stage.preferment))];
  if (steps.length > 0) {
    return steps.map(({ minutes, temperature }) => {
      const { temperature: unit } = state.units;
      const heat = temperature === null ? [] : [`${showNumber(fromCelsius(temperature, unit), 0)} °${unit}`];
      const time = minutes === null ? [] : [minutesSay(minutes)];
      return element("p", { class: "what" }, element("b", {}, "Step"), ` ${[...time, ...heat].join(" · ")}`);
    });
  }
  return [element("p", { class: "what soft" }, ignored === undefined ? "" : IGNORED_SAYS[ignored.reason])];
}

const stageSays = (role: string, preferment: string): string =>
  role === "preferment"
    ? preferment || "preferment"
    : role === "part"
      ? "kept apart"
      : role === "overall"
        ? "overall formula, counted once"
        : role;

const minutesSay = (minutes: number): string =>
  minutes < 60
    ? `${showNumber(minutes, 1)} min`
    : `${Math.floor(minutes / 60)} h${minutes % 60 === 0 ? "" : ` ${showNumber(minutes % 60, 0)} min`}`;

function rowSays(row: Row, percent: number | null, state: PasteState): (Node | string)[] {
  const stage = describedNow(state).stages[row.stage];
  const name = element("b", {}, row.name || "?");
  if (row.takes !== null)
    return [
      name,
      ` · all of it, from above`.replace("all of it", row.grams === null ? "all of it" : inUnit(row.grams, "g")),
    ];
  const apart =
    stage !== undefined && !IN_DOUGH.has(stage.role) && stage.role !== "overall" ? [`kept apart: ${stage.role}`] : [];
  const amount =
    row.grams !== null
      ? inUnit(row.grams, "g")
      : row.percent === null
        ? "no amount"
        : `${showNumber(row.percent, 3)} %`;
  const share =
    row.grams !== null && percent !== null && apart.length === 0
      ? [`${showNumber(percent, percent < 10 ? 2 : 1)} %`]
      : [];
  const more = [
    row.type || "type?",
    amount,
    ...share,
    ...apart,
    ...(row.optional ? ["optional"] : []),
    ...row.remarks.map(remarkSays),
  ];
  return [name, ` · ${more.join(" · ")}`];
}

const button = (label: string, about: string, press: () => void): HTMLElement => {
  const node = element("button", { type: "button", class: "quiet-button", click: press }, label);
  node.setAttribute("aria-label", `${label}: ${about}`);
  return node;
};

const leaveOut = ({ line }: Shown, state: PasteState, form: Form, place: string) =>
  button("Not an ingredient", place, () => {
    correctLine(state, line.text, { is: "not an ingredient" });
    form.changed();
  });

const takeBack = ({ line }: Shown, state: PasteState, form: Form, place: string) =>
  button("Count it", place, () => {
    uncorrectLine(state, line.text);
    form.changed();
  });

const countIt = ({ line }: Shown, state: PasteState, form: Form, place: string) =>
  button("Count it", place, () => {
    correctLine(state, line.text, { is: "ingredient" });
    form.changed();
  });
