// The lines that were read, each with fields to correct it. A line is made once and kept as long as it is what it is.

import { shown } from "../../shared/base/show.ts";
import { KIND_CHOICES } from "../../shared/larder/kinds.ts";
import { element, say } from "../kit/element.ts";
import { type Form, forget, messageLine, newId, textField } from "../kit/fields.ts";
import type { ReadDraft } from "./draft.ts";
import type { Line } from "./lines.ts";
import type { ReadState } from "./order.ts";

export type Reading = {
  readonly draft: ReadDraft;
  readonly form: Form;
  readonly now: () => ReadState;
  /** Reads a line again, after its text or name was changed. */
  readonly again: (line: Line) => void;
};

type Field = "text" | "name" | "kind" | "grams";
const LABELS: Readonly<Record<Field, string>> = {
  text: "Text",
  name: "Name",
  kind: "Kind",
  grams: "Grams",
};

export function lineList(reading: Reading): HTMLElement {
  const { draft, form } = reading;
  const kinds = newId();
  const list = element("ol", { class: "lines" });
  const made = new Map<Line, { node: HTMLElement; is: Line["is"] }>();
  form.onChange(() => {
    for (const [line, { node, is }] of made) {
      if (draft.lines.includes(line) && line.is === is) continue;
      const had = node.contains(document.activeElement) ? [...list.children].indexOf(node) : -1;
      forget(form, node);
      // Taking out what has the focus is a change of its own, which must not find the line here.
      made.delete(line);
      node.remove();
      if (had >= 0) setTimeout(() => document.activeElement === document.body && focus(had));
    }
    draft.lines.forEach((line, at) => {
      const node = made.get(line)?.node ?? makeLine(line);
      if (list.children[at] !== node) list.insertBefore(node, list.children[at] ?? null);
    });
  });
  return element(
    "div",
    {},
    element(
      "div",
      { class: "row line-heads", "aria-hidden": "true" },
      ...["Name", "Kind", "Grams", "%", ""].map((head) => element("span", { class: "head" }, head)),
    ),
    list,
    element("datalist", { id: kinds }, ...KIND_CHOICES.map((one) => element("option", { value: one }))),
  );

  function makeLine(line: Line): HTMLElement {
    const message = messageLine();
    const says = element("p", { class: "hint" });
    const place = () => draft.lines.indexOf(line) + 1;
    const take = element("button", { type: "button", class: "remove", click: () => takeOut(line) }, "×");
    const parts = [
      textField(
        form,
        {
          at: () => `text/${draft.lines.indexOf(line)}`,
          label: () => `${LABELS.text}, line ${place()}`,
          quiet: true,
          message,
          done: () => reading.again(line),
        },
        {
          get: () => line.text,
          set: (text) => {
            line.text = text;
          },
        },
      ),
      ...(line.is === "ingredient"
        ? [element("div", { class: "row" }, ...(["name", "kind", "grams"] as const).map(cell), share(), take)]
        : [element("div", { class: "beside" }, says, countIt(), take)]),
    ];
    form.onChange(() => {
      take.setAttribute("aria-label", `Take out line ${place()}`);
      say(says, line.busy ? "Reading …" : remark(line));
    });
    const node = element(
      "li",
      { class: `line ${line.is}` },
      ...parts,
      ...(line.is === "ingredient" ? [says] : []),
      message,
    );
    made.set(line, { node, is: line.is });
    return node;

    function cell(name: "name" | "kind" | "grams"): HTMLElement {
      const field = textField(
        form,
        {
          at: () => `${name}/${draft.lines.indexOf(line)}`,
          label: () => `${LABELS[name]}, line ${place()}`,
          quiet: true,
          numeric: name === "grams",
          message,
          ...(name === "name" ? { done: () => reading.again(line) } : {}),
        },
        {
          get: () => line[name],
          set: (text) => {
            line[name] = text;
            line.own[name] = text.trim() !== "";
          },
        },
      );
      if (name === "kind") field.querySelector("input")?.setAttribute("list", kinds);
      return field;
    }

    function share(): HTMLElement {
      const figure = element("span", { class: "share" });
      form.onChange(() => {
        const one = reading.now().shares[draft.lines.indexOf(line)] ?? null;
        say(figure, one === null ? "" : `${shown(one * 100, one < 0.1 ? 2 : 1)}`);
        figure.title = one === null ? "" : "% of the flour";
      });
      return figure;
    }

    function countIt(): HTMLElement {
      const button = element(
        "button",
        {
          type: "button",
          class: "quiet-button",
          click: () => {
            line.is = "ingredient";
            line.says = "";
            line.asks = "";
            line.name = line.name || line.text.trim().slice(0, 100);
            form.changed();
            focus(draft.lines.indexOf(line), "grams");
          },
        },
        "Count it",
      );
      form.onChange(() => button.setAttribute("aria-label", `Count it: line ${place()}`));
      return button;
    }
  }

  function takeOut(line: Line): void {
    const at = draft.lines.indexOf(line);
    draft.lines.splice(at, 1);
    form.changed();
    focus(Math.min(at, draft.lines.length - 1));
  }

  function focus(at: number, field: Field = "text"): void {
    const line = draft.lines[at];
    const inputs = line === undefined ? undefined : made.get(line)?.node.querySelectorAll("input");
    inputs?.[["text", "name", "kind", "grams"].indexOf(field)]?.focus();
  }
}

function remark({ is, says }: Line): string {
  if (is === "heading") return `Kept as a heading. ${says}`.trim();
  return is === "aside" ? `Kept aside. ${says}`.trim() : says;
}
