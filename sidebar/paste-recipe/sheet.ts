// What the sheet is to be: its name, its template, its columns, and how much it makes.
import { inputNames } from "../../shared/protocol/bench.ts";
import type { SheetModel } from "../../shared/sheet/model.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { element, say } from "../kit/element.ts";
import { choiceField, type Form, radioField, textField } from "../kit/fields.ts";
import { inUnit } from "../new-formula/figures.ts";
import { unitSign } from "../new-formula/unit-change.ts";
import type { ReadDraft } from "./draft.ts";
import { LABELS, takesPieces } from "./make.ts";
import type { ReadState } from "./order.ts";

type Sheet = { readonly draft: ReadDraft; readonly form: Form; readonly model: () => SheetModel | undefined };

const takesRows = (model: SheetModel): boolean => {
  const names = inputNames(model);
  return ["ingredient", "kind", "percent", "weighed"].every((name) => names.has(name));
};

export function sheetSection({ draft, form, model }: Sheet): HTMLElement {
  const says = element("p", { class: "hint" });
  const amounts = element(
    "div",
    {},
    makeField("recipe", "count", true),
    element(
      "p",
      { class: "hint" },
      "How much to make; left blank, as much as the recipe, and pieces as large as its own.",
    ),
    element(
      "div",
      { class: "three" },
      makeField("pieces", "count"),
      makeField("weight", "weight"),
      makeField("loss", "share"),
    ),
  );
  form.onChange(() => {
    const chosen = model();
    say(says, chosen?.says ?? "");
    amounts.hidden = chosen === undefined || !takesPieces(chosen);
  });
  return element(
    "section",
    {},
    element("h2", {}, "The sheet"),
    textField(
      form,
      { at: () => "title", label: () => "Name of the formula" },
      {
        get: () => draft.title,
        set: (text) => {
          draft.title = text;
        },
      },
    ),
    choiceField(
      form,
      { at: () => "template", label: () => "Template" },
      TEMPLATES.filter(takesRows).map(({ name, title, group }) => ({ value: name, text: title, group })),
      {
        get: () => draft.template,
        set: (name) => {
          draft.template = name;
        },
      },
    ),
    says,
    radioField(
      form,
      "Rows hold",
      [
        { value: "weighed", text: "the weights read" },
        { value: "percent", text: "percentages" },
      ],
      {
        get: () => draft.columns,
        set: (value) => {
          draft.columns = value === "percent" ? "percent" : "weighed";
        },
      },
    ),
    radioField(
      form,
      "Weights on the sheet",
      [
        { value: "g", text: "grams" },
        { value: "oz", text: "ounces" },
      ],
      {
        get: () => draft.units.weight,
        set: (value) => {
          draft.units = { ...draft.units, weight: value === "oz" ? "oz" : "g" };
        },
      },
    ),
    amounts,
  );

  function makeField(
    name: keyof ReadDraft["make"],
    quantity: "count" | "weight" | "share",
    inline = false,
  ): HTMLElement {
    return textField(
      form,
      {
        at: () => `make/${name}`,
        label: () => LABELS[name],
        unit: () => unitSign(quantity, draft.units),
        numeric: true,
        inline,
      },
      {
        get: () => draft.make[name],
        set: (text) => {
          draft.make[name] = text;
        },
      },
    );
  }
}

export function figures({ dough, flour }: ReadState): Node[] {
  if (dough === null || flour === null)
    return [element("span", {}, "Dough and flour are told once every line is clear.")];
  const figure = (label: string, value: number) =>
    element("span", {}, `${label} `, element("b", {}, inUnit(value, "g")));
  return [figure("Dough", dough), figure("Flour", flour)];
}
