import type { Field } from "../../shared/adjust/change.ts";
import { changesFor } from "../../shared/adjust/changes.ts";
import { element, say } from "../kit/element.ts";
import { choiceField, type Form, forget, textField } from "../kit/fields.ts";
import { section } from "../new-formula/sections.ts";
import { fieldsOf, isAsked, type Work } from "./work.ts";

/** What a person wants, found by plain words; below it the fields of what was chosen. */
export function chooseSection(work: Work, form: Form): HTMLElement {
  let search = "";
  const list = element("ul", { class: "list" });
  const fields = element("div", {});
  const none = element("p", { class: "hint" });
  const show = (): void => {
    const matches =
      work.chosen === null ? changesFor(search) : changesFor("").filter(({ name }) => name === work.chosen);
    const groups = [...new Set(matches.map(({ group }) => group))];
    list.replaceChildren(
      ...groups.flatMap((group) => [
        element("li", {}, element("h3", {}, group)),
        ...matches
          .filter((one) => one.group === group)
          .map(({ name, label }) => {
            const isChosen = work.chosen === name;
            const attributes = {
              type: "button",
              class: "jump",
              "aria-pressed": String(isChosen),
              click: () => choose(name),
            };
            return element("li", {}, element("button", attributes, label));
          }),
      ]),
    );
    say(none, matches.length > 0 ? "" : "Nothing is found by these words. Try one word, such as water, yeast or tin.");
    none.hidden = matches.length > 0;
  };
  const choose = (name: string): void => {
    work.chosen = work.chosen === name ? null : name;
    work.values = {};
    forget(form, fields);
    fields.replaceChildren(...fieldsOf(work).map((field) => fieldNode(work, form, field)));
    show();
    form.changed();
    const first = fields.querySelector<HTMLElement>("input, select") ?? list.querySelector("button");
    first?.focus();
  };
  form.onChange(() => {
    // What was added, or taken back, is chosen no more.
    if (work.chosen === null && fields.childElementCount > 0) {
      forget(form, fields);
      fields.replaceChildren();
      show();
    }
  });
  const searching = textField(
    form,
    { at: () => "search", label: () => "What do you want?", hint: "Such as: overnight, weaker flour, milk powder." },
    {
      get: () => search,
      set: (text) => {
        search = text;
        work.chosen = null;
        show();
      },
    },
  );
  show();
  return section("Change", searching, none, list, fields);
}

function fieldNode(work: Work, form: Form, field: Field): HTMLElement {
  const { name, label, choices, start, hint, isText } = field;
  const binding = {
    get: () => work.values[name] ?? start,
    set: (text: string) => {
      work.values[name] = text;
    },
  };
  const shape = { at: () => `change/${name}`, label: () => label };
  const node =
    choices === undefined
      ? textField(form, { ...shape, numeric: isText !== true, ...(hint === undefined ? {} : { hint }) }, binding)
      : choiceField(
          form,
          shape,
          choices.map((value) => ({ value, text: value })),
          binding,
        );
  form.onChange(() => {
    node.hidden = !isAsked(field, fieldsOf(work), work.values);
  });
  return node;
}
