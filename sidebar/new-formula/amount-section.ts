// How much is made: the ways that the template has.
import { inputCell } from "../../shared/sheet/template-inputs.ts";
import { element, say } from "../kit/element.ts";
import { radioField } from "../kit/fields.ts";
import { sizeTable } from "./rows.ts";
import { type Bench, numberField, section } from "./sections.ts";

export function amountSection(bench: Bench): HTMLElement {
  const { draft, form, model } = bench;
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
  form.onChange(() => say(hint, draft.weighed ? "May stay blank: the rows' own weights are made then." : ""));
  return section(
    "How much",
    radioField(
      form,
      "Make by",
      ways.map((value) => ({ value, text: value.slice(0, 1).toUpperCase() + value.slice(1) })),
      {
        get: () => draft.choices.by,
        set: (value) => {
          draft.choices.by = value;
        },
      },
    ),
    hint,
    ...way(["trays"], numberField(bench, "trays", "Of the first size, each tray full.")),
    ...way(["pieces", "trays"], sizeTable(bench)),
    ...way(["tins"], numberField(bench, "tins", "Filled as the tin further down says.")),
    ...way(["dough", "batter"], numberField(bench, "dough_wanted", "As mixed, before anything is lost.", whole)),
    ...way(["flour"], numberField(bench, "flour_wanted")),
    numberField(bench, "handling_loss"),
  );

  function whole(): string {
    return ways.includes("batter") ? "Batter to make" : "Dough to make";
  }
}
