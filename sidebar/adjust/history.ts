import { printedSays } from "../../shared/adjust/printed.ts";
import type { Comparison, Versions } from "../../shared/protocol/adjust.ts";
import { type Act, actionButton } from "../kit/action-button.ts";
import { element } from "../kit/element.ts";
import { choiceField, newForm, textField } from "../kit/fields.ts";
import { foldedSection, section } from "../new-formula/sections.ts";
import { besideNodes, saysOf } from "./comparison.ts";

/** Versions that are kept of the sheet: keep one more, compare two, bring one back; `again` reads the sheet once it is another. */
export function historySection(unit: () => "g" | "oz", again: (says: string) => void): HTMLElement {
  const body = element("div", {});
  const reading = actionButton(
    {
      question: "versions",
      label: "Show the versions",
      request: () => ({}),
      busy: () => "Reading the history …",
      done: (answer) => {
        body.replaceChildren(...versionNodes(answer, unit, again));
        const many = answer.versions.length;
        return many === 0
          ? "No version is kept of this sheet yet."
          : `${many} ${many === 1 ? "version is" : "versions are"} kept.`;
      },
      silent: "Show them again.",
      failed: () => body.replaceChildren(),
    },
    "quiet-button",
  );
  return foldedSection("Formula history", ...reading.nodes, body);
}

function versionNodes(answer: Versions, unit: () => "g" | "oz", again: (says: string) => void): HTMLElement[] {
  const { sheet, versions } = answer;
  return [
    keepNode(sheet, again),
    ...(versions.length === 0 ? [] : [listNode(answer)]),
    ...(versions.length + answer.others.length === 0 ? [] : [compareNode(answer, unit)]),
    ...(versions.some(({ isNow }) => !isNow) ? [bringNode(answer, again)] : []),
  ];
}

const listNode = ({ versions }: Versions): HTMLElement =>
  element(
    "ul",
    { class: "list" },
    ...versions.map(({ number, when, line, isNow }) =>
      element("li", {}, `${number}: ${line} (${when})${isNow ? ", as the sheet stands" : ""}`),
    ),
  );

function keepNode(sheet: string, again: (says: string) => void): HTMLElement {
  const form = newForm();
  let line = "";
  const field = textField(
    form,
    { at: () => "line", label: () => "About this version", hint: "Such as: for the market" },
    {
      get: () => line,
      set: (text) => {
        line = text;
      },
    },
  );
  const keeping = quiet({
    question: "keepVersion",
    label: "Keep this version",
    request: () => ({ sheet, line }),
    busy: () => "Keeping it …",
    done: ({ number, wasEdited }) => {
      const says = wasEdited ? `Kept as version ${number}.` : `It is kept already, as version ${number}.`;
      if (wasEdited) again(says);
      return says;
    },
    silent: "Show the versions before you press it again.",
  });
  return section("Keep", field, ...keeping);
}

const quiet = <Q extends Parameters<typeof actionButton>[0]["question"]>(act: Act<Q>): readonly HTMLElement[] =>
  actionButton(act, "quiet-button").nodes;

const named = ({ versions }: Versions) =>
  versions.map(({ number, line }) => ({ value: String(number), text: `${number}: ${line}` }));

function compareNode(answer: Versions, unit: () => "g" | "oz"): HTMLElement {
  const form = newForm();
  const options = [
    { value: "now", text: "The sheet as it stands" },
    ...named(answer),
    ...answer.others.map((name) => ({ value: `sheet:${name}`, text: `Sheet ${name}` })),
  ];
  const sides = { one: options[1]?.value ?? "now", other: "now" };
  const place = element("div", {});
  const choice = (side: "one" | "other", label: string) =>
    choiceField(form, { at: () => side, label: () => label }, options, {
      get: () => sides[side],
      set: (value) => {
        sides[side] = value;
      },
    });
  const comparing = quiet({
    question: "compare",
    label: "Compare",
    request: () => ({ sheet: answer.sheet, ...sides }),
    busy: () => "Comparing …",
    done: (comparison: Comparison) => {
      place.replaceChildren(
        ...besideNodes(comparison, unit(), comparison.names),
        ...saysOf(comparison, printedSays(comparison.labels, comparison.names)).map((one) => element("p", {}, one)),
      );
      const many = comparison.rows.filter(({ isChanged }) => isChanged).length;
      return many === 0 ? "All rows are the same." : `${many} ${many === 1 ? "row differs" : "rows differ"}.`;
    },
    silent: "Compare them again.",
    failed: () => place.replaceChildren(),
  });
  const node = section("Compare", choice("one", "This"), choice("other", "With"), ...comparing, place);
  form.changed();
  return node;
}

function bringNode(answer: Versions, again: (says: string) => void): HTMLElement {
  const form = newForm();
  const options = named(answer).filter((_, at) => answer.versions[at]?.isNow === false);
  let number = options[0]?.value ?? "";
  const field = choiceField(form, { at: () => "version", label: () => "Version" }, options, {
    get: () => number,
    set: (value) => {
      number = value;
    },
  });
  const { sheet, id, seen } = answer;
  const bringing = quiet({
    question: "bringBack",
    label: "Bring back",
    request: () => ({ sheet, id, seen, number: Number(number) }),
    busy: () => "Bringing it back …",
    done: ({ number: now }) => {
      const says = `Version ${number} is brought back, as version ${now}. Nothing that was kept is lost.`;
      again(says);
      return says;
    },
    silent: "Look at the sheet before you press it again.",
  });
  const node = section("Bring back", field, ...bringing);
  form.changed();
  return node;
}
