// Several recipes in one text: which is in sight, and which are built.

import { element } from "../kit/element.ts";
import { type Form, newId } from "../kit/fields.ts";
import { type PasteState, partKey, readAgain } from "./state.ts";

export function recipeList(state: PasteState, form: Form): HTMLElement {
  const list = element("div", {});
  const node = element(
    "section",
    { hidden: true },
    element("h2", {}, "Recipes in this text"),
    element("p", { class: "hint" }, "Tick the recipes to build. Show one to see how it was understood."),
    list,
    element("button", { type: "button", class: "quiet-button", click: () => joinAll() }, "It is all one recipe"),
  );
  let before = "";
  form.onChange(() => {
    node.hidden = state.parts.length < 2;
    const keys = state.parts.map(
      ({ described }, at) => `${described.title} ${partKey(state, at)}${state.left.has(partKey(state, at)) ? "" : "+"}`,
    );
    const now = `${state.shown} ${keys.join("\n")}`;
    if (now === before) return;
    before = now;
    const had = list.contains(document.activeElement) ? document.activeElement?.getAttribute("aria-label") : null;
    list.replaceChildren(...state.parts.map((_, at) => partEntry(at)));
    if (had !== null) list.querySelector<HTMLElement>(`[aria-label="${CSS.escape(had ?? "")}"]`)?.focus();
  });
  return node;

  function joinAll(): void {
    state.corrections = {
      ...state.corrections,
      answers: { ...state.corrections.answers, "several recipes": "one recipe" },
    };
    state.shown = 0;
    readAgain(state);
    form.changed();
  }

  function partEntry(at: number): HTMLElement {
    const part = state.parts[at];
    const key = partKey(state, at);
    const title = part?.described.title || `Recipe ${at + 1}`;
    const id = newId();
    const tick = element("input", {
      id,
      type: "checkbox",
      change: () => {
        if (tick.checked) state.left.delete(key);
        else state.left.add(key);
        form.changed();
      },
    });
    tick.checked = !state.left.has(key);
    tick.setAttribute("aria-label", `Build ${title}`);
    const show = element(
      "button",
      {
        type: "button",
        class: "quiet-button",
        "aria-pressed": String(state.shown === at),
        click: () => {
          state.shown = at;
          form.changed();
        },
      },
      "Show",
    );
    show.setAttribute("aria-label", `Show ${title}`);
    return element("div", { class: "pick" }, element("label", { class: "tick", for: id }, tick, title), show);
  }
}
