// Fields that show a state kept elsewhere: on every change all of them are brought up to date, none is made anew.

import { element, say } from "./element.ts";
import type { FieldFault } from "./field-fault.ts";

type Control = HTMLInputElement | HTMLSelectElement;
type Place = { readonly at: () => string; readonly control: Control; readonly message: HTMLElement };

export type Form = {
  /** Says that something was typed or chosen. */
  readonly changed: () => void;
  /** Runs on every change, and once at the start. */
  readonly onChange: (update: () => void) => void;
  /** All fields that are there. */
  readonly places: Set<Place>;
};

/** A form without fields yet; at each change `first` runs, and then what the fields bring along. */
export function newForm(first: () => void = () => {}): Form {
  const updates: (() => void)[] = [];
  return {
    changed: () => {
      first();
      // Rows made by an update add updates of their own, which this loop still reaches.
      for (const update of updates) update();
    },
    onChange: (update) => updates.push(update),
    places: new Set(),
  };
}

/** Longer than any name; a cell of the sheet takes more. */
const MAX_LENGTH = 200;

let ids = 0;
export const newId = (): string => `f${++ids}`;

type Binding = { readonly get: () => string; readonly set: (text: string) => void };
type Shape = {
  /** The field's name, by which faults find it; rows move, so it is asked for. */
  readonly at: () => string;
  readonly label: () => string;
  /** The label is there for screen readers alone: a heading above the column says it to the eye. */
  readonly quiet?: boolean;
  readonly unit?: () => string;
  readonly numeric?: boolean;
  readonly hint?: string;
  /** Label and field on one line. */
  readonly inline?: boolean;
  /** Where the field's fault is said, if not right below it. */
  readonly message?: HTMLElement;
  /** Runs when the text is complete: on leaving the field, or Enter. */
  readonly done?: () => void;
};

export const messageLine = (): HTMLElement => element("p", { class: "fault", id: newId(), hidden: true });

function label(form: Form, { label, quiet, unit }: Shape, id: string): HTMLElement {
  const sign = element("span", { class: "unit" });
  const words = element("span", {});
  form.onChange(() => {
    say(words, label());
    say(sign, unit?.() ?? "");
  });
  return element("label", { for: id, class: quiet === true ? "quiet" : "label" }, words, " ", sign);
}

export function textField(form: Form, shape: Shape, { get, set }: Binding): HTMLElement {
  const id = newId();
  const message = shape.message ?? messageLine();
  const hint = shape.hint === undefined ? [] : [element("p", { class: "hint", id: newId() }, shape.hint)];
  const input = element("input", {
    id,
    type: "text",
    autocomplete: "off",
    maxlength: MAX_LENGTH,
    spellcheck: "false",
    class: shape.numeric === true ? "number" : "words",
    inputmode: shape.numeric === true ? "decimal" : "text",
    "aria-describedby": [...hint, message].map((one) => one.id).join(" "),
    input: () => {
      set(input.value);
      form.changed();
    },
    change: () => shape.done?.(),
    // What a field still being typed in would say waits; which one that is changes here.
    focus: () => form.changed(),
    blur: () => form.changed(),
  });
  form.onChange(() => {
    if (input.value !== get()) input.value = get();
  });
  form.places.add({ at: shape.at, control: input, message });
  const below = shape.message === undefined ? [message] : [];
  const looks = shape.inline === true ? "field inline" : "field";
  return element("div", { class: looks }, label(form, shape, id), input, ...hint, ...below);
}

/** Choices with a group stand under its name, where a list shows names. */
type Option = { readonly value: string; readonly text: string; readonly group?: string | undefined };

function optionElements(options: readonly Option[]): HTMLElement[] {
  const groups = [...new Set(options.map(({ group }) => group))];
  return groups.flatMap((group) => {
    const mine = options.filter((one) => one.group === group);
    const nodes = mine.map(({ value, text }) => element("option", { value }, text));
    return group === undefined ? nodes : [element("optgroup", { label: group }, ...nodes)];
  });
}

export function choiceField(form: Form, shape: Shape, options: readonly Option[], { get, set }: Binding): HTMLElement {
  const id = newId();
  const message = shape.message ?? messageLine();
  const select = element(
    "select",
    {
      id,
      "aria-describedby": message.id,
      change: () => {
        set(select.value);
        form.changed();
      },
    },
    ...optionElements(options),
  );
  form.onChange(() => {
    if (select.value !== get()) select.value = get();
  });
  form.places.add({ at: shape.at, control: select, message });
  const below = shape.message === undefined ? [message] : [];
  const looks = shape.inline === true ? "field inline" : "field";
  return element("div", { class: looks }, label(form, shape, id), select, ...below);
}

/** Forgets the fields of a part that was taken out. */
export function forget(form: Form, part: Node): void {
  for (const place of form.places) if (part.contains(place.control)) form.places.delete(place);
}

/** Few choices side by side, all in sight. */
export function radioField(form: Form, legend: string, options: readonly Option[], { get, set }: Binding): HTMLElement {
  const name = newId();
  const choices = options.map(({ value, text }) => {
    const input = element("input", {
      type: "radio",
      name,
      value,
      change: () => {
        set(value);
        form.changed();
      },
    });
    form.onChange(() => {
      input.checked = get() === value;
    });
    return element("label", {}, input, element("span", {}, text));
  });
  return element("fieldset", { class: "choices" }, element("legend", {}, legend), ...choices);
}

/** What is typed wrong is said when the field is left; what is missing, once somebody wanted to build. */
export function showFaults(form: Form, faults: readonly FieldFault[], wanted: boolean): void {
  const texts = new Map<HTMLElement, string[]>();
  const active = document.activeElement;
  for (const place of form.places) {
    const { control, message, at } = place;
    const typing = (whole?: true) => (whole ? control.closest(".rows")?.contains(active) : control === active);
    const mine = faults.filter((one) => one.at === at() && (wanted || (!one.missing && !typing(one.whole))));
    control.setAttribute("aria-invalid", String(mine.length > 0));
    texts.set(message, [...(texts.get(message) ?? []), ...mine.map(({ says }) => says)]);
  }
  for (const [message, says] of texts) {
    say(message, says.join(" "));
    message.hidden = says.length === 0;
  }
}

/** Goes to a field, opening what it is folded in. */
export function goTo(form: Form, at: string): void {
  for (const place of form.places) {
    if (place.at() !== at) continue;
    const folded = place.control.closest("details");
    if (folded !== null) folded.open = true;
    place.control.focus();
    place.control.scrollIntoView({ block: "center" });
    return;
  }
}
