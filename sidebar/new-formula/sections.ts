// The parts of the panel New formula that are fields and nothing else.

import type { SheetModel } from "../../shared/sheet/model.ts";
import { inputCell } from "../../shared/sheet/template-inputs.ts";
import { MIXINGS } from "../../shared/water/temperature.ts";
import { YEAST_LIMITS } from "../../shared/water/water-note.ts";
import { element, say } from "../kit/element.ts";
import { choiceField, type Form, textField } from "../kit/fields.ts";
import { changeUnits, type Draft, FIELDS, type FieldName, quantityOf, type Typed } from "./draft.ts";
import type { Assessed } from "./order.ts";
import type { Units } from "./quantity.ts";
import { unitSign } from "./unit-change.ts";
import { waterSays } from "./water.ts";

/** What every part of the panel works on. */
export type FormContext = {
  readonly draft: Draft;
  readonly form: Form;
  readonly model: SheetModel;
  readonly now: () => Assessed;
  /** What is unusual about its water and salt, a sentence each. */
  readonly unusual: () => readonly string[];
};

export const section = (title: string, ...children: (Node | string)[]) =>
  element("section", {}, element("h2", {}, title), ...children);

export const foldedSection = (title: string, ...children: Node[]) =>
  element("details", {}, element("summary", {}, element("h2", {}, title)), element("div", {}, ...children));

/** What may be left as it is: folded, and beside its heading what it holds. */
export function optional({ form }: Pick<FormContext, "form">, title: string, gist: () => string, ...children: Node[]) {
  const says = element("span", { class: "gist" });
  form.onChange(() => say(says, gist()));
  return element(
    "details",
    { class: "optional" },
    element("summary", {}, element("h2", {}, title), " ", says),
    element("div", {}, ...children),
  );
}

export function numberField(
  { draft, form }: FormContext,
  name: FieldName,
  hint?: string,
  label?: () => string,
): HTMLElement {
  return textField(
    form,
    {
      at: () => name,
      label: label ?? (() => FIELDS[name].label),
      unit: () => unitSign(quantityOf(name, draft), draft.units),
      numeric: true,
      inline: true,
      ...(hint === undefined ? {} : { hint }),
    },
    {
      get: () => draft.fields[name],
      set: (text) => {
        draft.fields[name] = text;
      },
    },
  );
}

export const same = (words: readonly string[]) => words.map((word) => ({ value: word, text: word }));

/** Grams or ounces, °C or °F, cm or inches: a change converts what was typed. */
export function unitChoices({ draft, form }: FormContext): HTMLElement {
  const memory: Typed = new Map();
  const choose = (label: string, key: keyof Units, options: { value: string; text: string }[]) =>
    choiceField(form, { at: () => `unit/${key}`, label: () => label }, options, {
      get: () => draft.units[key],
      set: (value) => changeUnits(draft, { ...draft.units, [key]: value }, memory),
    });
  return element(
    "div",
    { class: "three" },
    choose("Weights", "weight", [
      { value: "g", text: "grams" },
      { value: "oz", text: "ounces" },
    ]),
    choose("Temperature", "temperature", [
      { value: "C", text: "°C" },
      { value: "F", text: "°F" },
    ]),
    choose("Lengths", "length", [
      { value: "cm", text: "cm" },
      { value: "in", text: "inches" },
    ]),
  );
}

export function waterSection(context: FormContext): HTMLElement {
  const { draft, form, now } = context;
  const box = element("input", {
    type: "checkbox",
    change: () => {
      draft.water = box.checked;
      form.changed();
    },
  });
  const note = element("p", { class: "note" });
  const fields = element(
    "div",
    {},
    element("p", { class: "hint" }, "You can leave these blank and fill them in on the sheet, on the day."),
    ...(["dough_target", "flour_temp", "room_temp", "preferment_temp", "tap_temp"] as const)
      .filter((name) => inputCell(context.model, name) !== undefined)
      .map((name) => numberField(context, name)),
    choiceField(
      form,
      { at: () => "mixing", label: () => "Mixer", inline: true },
      [{ value: "", text: "not chosen" }, ...same(Object.keys(MIXINGS))],
      choice(draft, "mixing"),
    ),
    numberField(context, "minutes"),
    numberField(context, "friction_own", "From your mix log. If blank, a guide figure for the mixer is used."),
    choiceField(
      form,
      { at: () => "yeast", label: () => "Yeast in the water", inline: true },
      same(Object.keys(YEAST_LIMITS)),
      choice(draft, "yeast"),
    ),
    note,
  );
  form.onChange(() => {
    box.checked = draft.water;
    fields.hidden = !draft.water;
    say(note, draft.water ? waterSays(draft, now()) : "");
  });
  return foldedSection("Water temperature", element("label", { class: "tick" }, box, "Include in the sheet"), fields);
}

export function mixerSection(context: FormContext): HTMLElement {
  const fields = (["step_coarse", "step_fine", "mixer_limit", "mixer_least"] as const).map((name) =>
    numberField(context, name),
  );
  return foldedSection("Scales and mixer", ...fields);
}

export const choice = (draft: Draft, name: keyof Draft["choices"]) => ({
  get: () => draft.choices[name],
  set: (value: string) => {
    draft.choices[name] = value;
  },
});
