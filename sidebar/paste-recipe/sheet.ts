// What the sheet is to be: its name, its template, and how much it makes. Each follows the text until it is typed.

import { inUnit, showNumber } from "../../shared/base/show.ts";
import { fromGrams, type Grams } from "../../shared/base/units.ts";
import { inputNames } from "../../shared/protocol/order.ts";
import { makesBatter } from "../../shared/sheet/template-inputs.ts";
import { element, say } from "../kit/element.ts";
import { type Form, messageLine, newId, radioField, textField } from "../kit/fields.ts";
import type { Units } from "../new-formula/quantity.ts";
import { inOtherUnits, unitSign } from "../new-formula/unit-change.ts";
import { takesPieces } from "./amount.ts";
import type { Assessed } from "./order.ts";
import { describedNow, ownOf, type PasteState } from "./state.ts";
import { tinSection } from "./tin.ts";

export function sheetSection(state: PasteState, form: Form, now: () => Assessed): HTMLElement {
  const amounts = element(
    "div",
    {},
    element(
      "div",
      { class: "three" },
      makeField("pieces", "Pieces", "count"),
      makeField("weight", "Scaling weight", "weight"),
      makeField("loss", "Bake loss", "share"),
    ),
  );
  const whole = makeField("dough", () => (makesBatter(now().model) ? "Batter to make" : "Dough to make"), "weight");
  form.onChange(() => {
    amounts.hidden = !takesPieces(now().model);
  });
  return element(
    "section",
    {},
    element("h2", {}, "The sheet"),
    textField(
      form,
      { at: () => "title", label: () => "Name of the formula" },
      {
        get: () => ownOf(state).title ?? describedNow(state).title,
        set: (text) => {
          ownOf(state).title = text;
        },
      },
    ),
    templateField(state, form, now),
    amounts,
    whole,
    element(
      "p",
      { class: "hint" },
      "Pieces and weights follow the text. If blank, the sheet makes as much as the recipe.",
    ),
    tinSection(state, form, now),
    partsNote(state, form, now),
    radioField(
      form,
      "Weights on the sheet",
      [
        { value: "g", text: "grams" },
        { value: "oz", text: "ounces" },
      ],
      {
        get: () => state.units.weight,
        set: (value) => {
          const to: Units = { ...state.units, weight: value === "oz" ? "oz" : "g" };
          for (const choices of state.choices.values()) {
            for (const name of ["weight", "dough"] as const) {
              const text = choices[name];
              if (text !== undefined) choices[name] = inOtherUnits(text, "weight", state.units, to) ?? text;
            }
          }
          state.units = to;
        },
      },
    ),
  );

  function makeField(
    name: "pieces" | "weight" | "dough" | "loss",
    label: string | (() => string),
    quantity: "count" | "weight" | "share",
  ): HTMLElement {
    const inUnits = (weight: Grams | null) =>
      weight === null ? "" : showNumber(fromGrams(weight, state.units.weight), 2);
    const sentence = (): string => {
      const { pieces, pieceWeight } = describedNow(state).yield;
      if (name === "pieces") return pieces === null ? "" : showNumber(pieces);
      return name === "weight" ? inUnits(pieceWeight) : "";
    };
    return textField(
      form,
      {
        at: () => `make/${name}`,
        label: () => (typeof label === "string" ? label : label()),
        unit: () => unitSign(quantity, state.units),
        numeric: true,
      },
      {
        get: () => ownOf(state)[name] ?? sentence(),
        set: (text) => {
          const choices = ownOf(state);
          if (text.trim() === "" && name === "dough") delete choices.dough;
          else choices[name] = text;
        },
      },
    );
  }
}

/** All templates, the likeliest first; the list is made anew where its order changes. */
function templateField(state: PasteState, form: Form, now: () => Assessed): HTMLElement {
  const id = newId();
  const message = messageLine();
  const says = element("p", { class: "hint", id: newId() });
  const select = element("select", {
    id,
    "aria-describedby": `${says.id} ${message.id}`,
    change: () => {
      ownOf(state).template = select.value;
      form.changed();
    },
  });
  let order = "";
  form.onChange(() => {
    const { models, model } = now();
    const names = models.map(({ name }) => name).join(" ");
    if (names !== order)
      select.replaceChildren(...models.map(({ name, title }) => element("option", { value: name }, title)));
    order = names;
    if (select.value !== model.name) select.value = model.name;
    say(says, model.says);
  });
  form.places.add({ at: () => "template", control: select, message });
  return element(
    "div",
    { class: "field" },
    element("label", { for: id, class: "label" }, "Template"),
    select,
    says,
    message,
  );
}

/** What is kept apart from the dough, and which preferments this template has no cells for. */
function partsNote(state: PasteState, form: Form, now: () => Assessed): HTMLElement {
  const apart = element("p", { class: "note" });
  const untied = element("p", { class: "note" });
  form.onChange(() => {
    const { formula, stages } = describedNow(state);
    const { untied: names, model } = now();
    const isRolled = inputNames(model).has("roll_in_share");
    const apartOnes = formula.parts.filter(({ stage }) => !isRolled || stages[stage]?.role !== "roll-in");
    const parts = apartOnes.map(
      ({ stage, name, grams }) => `${name || stages[stage]?.role}${grams === null ? "" : ` ${inUnit(grams, "g")}`}`,
    );
    say(
      apart,
      parts.length === 0 ? "" : `Kept apart from the dough: ${parts.join(", ")}. The method says what goes in.`,
    );
    apart.hidden = parts.length === 0;
    say(
      untied,
      names.length === 0
        ? ""
        : `“${model.title}” has no cells for ${names.join(" and ")}. The method says what to mix first.`,
    );
    untied.hidden = names.length === 0;
  });
  return element("div", {}, apart, untied);
}
