// The fields that correct one row: name, type and amount. A name once corrected is known in every other line.

import { showNumber } from "../../shared/base/show.ts";
import { KIND_CHOICES } from "../../shared/larder/kinds.ts";
import type { Row } from "../../shared/recipe/text/description.ts";
import { element, say } from "../kit/element.ts";
import { type Form, messageLine, newId } from "../kit/fields.ts";
import { AMOUNT_WANTED, amountOfText } from "./amount-text.ts";
import type { Shown } from "./line-state.ts";
import { correctLine, type PasteState, teachName } from "./state.ts";
import { typeFault } from "./type-text.ts";

export function correctionFields({ line }: Shown, row: Row, state: PasteState, form: Form): HTMLElement {
  const place = `line ${line.at + 1}`;
  const amount =
    row.grams !== null
      ? `${showNumber(row.grams, 2)} g`
      : row.percent === null
        ? ""
        : `${showNumber(row.percent, 3)} %`;
  return element(
    "div",
    { class: "three" },
    field("Name", row.name, (text) => {
      if (text === "") return "Enter a name.";
      if (row.readName === "") correctLine(state, line.text, { name: text });
      else teachName(state, row.readName, { name: text });
      return "";
    }),
    field(
      "Type",
      row.type,
      (text) => {
        const says = typeFault(text);
        if (says !== "") return says;
        if (row.readName === "") correctLine(state, line.text, { type: text });
        else teachName(state, row.readName, { type: text });
        return "";
      },
      KIND_CHOICES,
    ),
    field("Amount", amount, (text) => {
      const typedAmount = amountOfText(text);
      if (typedAmount === undefined) return AMOUNT_WANTED;
      correctLine(state, line.text, typedAmount);
      return "";
    }),
  );

  function field(
    label: string,
    value: string,
    take: (text: string) => string,
    choices: readonly string[] = [],
  ): HTMLElement {
    const id = newId();
    const message = messageLine();
    const list = newId();
    const input = element("input", {
      id,
      type: "text",
      value,
      autocomplete: "off",
      spellcheck: "false",
      maxlength: 100,
      "aria-describedby": message.id,
      change: () => {
        const says = take(input.value.trim());
        say(message, says);
        message.hidden = says === "";
        input.setAttribute("aria-invalid", String(says !== ""));
        if (says === "") form.changed();
      },
    });
    if (choices.length > 0) input.setAttribute("list", list);
    const words = element("label", { for: id, class: "label" }, label);
    words.append(element("span", { class: "quiet" }, `, ${place}`));
    const offered =
      choices.length === 0
        ? []
        : [element("datalist", { id: list }, ...choices.map((one) => element("option", { value: one })))];
    return element("div", { class: "field" }, words, input, message, ...offered);
  }
}
