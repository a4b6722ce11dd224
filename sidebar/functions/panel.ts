import type { FunctionHelp } from "../../shared/protocol/function-help.ts";
import { element, say } from "../kit/element.ts";
import { newId } from "../kit/fields.ts";
import type { Panel } from "../kit/panel.ts";
import { functionDetails } from "./explanation.ts";
import { findFunctions, functionHelp } from "./help.ts";
import { notHere } from "./trade-words.ts";

/** Finds a function by what somebody wants to know, explains it, and writes it at the cursor. */
export const functions: Panel = {
  name: "Functions",
  heading: "Find a function",
  open: () => element("div", {}, ...search(functionHelp())),
};

/** A list is read as far as this; better words find better. */
const MAX_SHOWN = 8;

function search(all: readonly FunctionHelp[]): Node[] {
  const [id, hint] = [newId(), newId()];
  const count = element("p", { class: "hint", role: "status" });
  const list = element("div", { class: "functions" });
  const nodes = new Map<FunctionHelp, HTMLElement>();
  const nodeOf = (help: FunctionHelp) => {
    const node = nodes.get(help) ?? functionDetails(help);
    nodes.set(help, node);
    return node;
  };
  const input = element("input", {
    id,
    type: "search",
    autocomplete: "off",
    maxlength: 100,
    "aria-describedby": hint,
    input: show,
  });
  show();
  return [
    element(
      "section",
      {},
      element("label", { class: "label", for: id }, "What do you want to work out?"),
      input,
      element("p", { class: "hint", id: hint }, "For example: overnight yeast, tin size, ice."),
      count,
    ),
    list,
  ];

  function show(): void {
    const question = input.value.trim();
    const hits = findFunctions(all, question);
    const shown = question === "" ? hits : hits.slice(0, MAX_SHOWN);
    say(count, counted(shown.length, all.length, question));
    const families = [...new Set(shown.map(({ family }) => family))];
    list.replaceChildren(
      ...(question === ""
        ? families.flatMap((family) => [
            element("h2", {}, family),
            ...shown.filter((help) => help.family === family).map(nodeOf),
          ])
        : shown.map(nodeOf)),
    );
  }
}

function counted(shown: number, all: number, question: string): string {
  if (question === "") return `All ${all}, by what they are about.`;
  if (shown === 0 && notHere(question) !== undefined) return notHere(question) ?? "";
  if (shown === 0) return "Nothing found. Try one word of it, such as tin, yeast, water or cost.";
  return shown === 1 ? "One fits." : `${shown} fit, the best first.`;
}
