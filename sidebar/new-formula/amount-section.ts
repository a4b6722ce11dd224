// How much is made: the ways that the template has.
import { inputCell } from "../../shared/sheet/template-inputs.ts";
import { element, say } from "../kit/element.ts";
import { radioField } from "../kit/fields.ts";
import { sizeTable } from "./rows.ts";
import { type FormContext, numberField, section } from "./sections.ts";

export function amountSection(context: FormContext): HTMLElement {
  const { draft, form, model } = context;
  const ways = inputCell(model, "by")?.choices ?? ["dough", "flour"];
  const way = (values: readonly string[], ...children: Node[]) => {
    if (!values.some((value) => ways.includes(value))) return [];
    const part = element("div", {}, ...children);
    form.onChange(() => {
      part.hidden = !values.includes(draft.choices.by);
    });
    return [part];
  };
  const hint = element("p", { class: "hint" });
  form.onChange(() => say(hint, draft.weighed ? "Leave it blank to make the weights typed in the rows." : ""));
  return section(
    "How much",
    radioField(
      form,
      "Scale to",
      ways.map((value) => ({ value, text: value.slice(0, 1).toUpperCase() + value.slice(1) })),
      {
        get: () => draft.choices.by,
        set: (value) => {
          draft.choices.by = value;
        },
      },
    ),
    hint,
    ...way(["trays"], numberField(context, "trays", "Full trays of the first size.")),
    ...way(["pieces", "trays"], sizeTable(context)),
    ...way(["tins"], numberField(context, "tins", "Each tin is filled as set under Tin, below.")),
    ...way(["dough", "batter"], numberField(context, "dough_wanted", "All of it in the bowl, before losses.", whole)),
    ...way(["flour"], numberField(context, "flour_wanted")),
    numberField(context, "handling_loss"),
  );

  function whole(): string {
    return ways.includes("batter") ? "Batter to make" : "Dough to make";
  }
}
