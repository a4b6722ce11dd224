// What a template has of its own, asked from its model: labels, units, choices and hints are the sheet's.
import type { InputGroup, TemplateInput } from "../../shared/sheet/template-inputs.ts";
import { element } from "../kit/element.ts";
import { choiceField, newId, textField } from "../kit/fields.ts";
import { quantityOfUnit } from "./quantity.ts";
import { ownTable } from "./rows.ts";
import { type FormContext, optional, same, section } from "./sections.ts";
import { entriesOf, isBlank } from "./template-inputs.ts";
import { unitSign } from "./unit-change.ts";

export function ownSection(context: FormContext, group: InputGroup): HTMLElement {
  return section(group.heading, ...ownFields(context, group));
}

/** The same folded, with the first of what stands in it beside its heading. */
export function ownFold(context: FormContext, group: InputGroup, ...pictures: HTMLElement[]): HTMLElement {
  return optional(context, group.heading, () => gistOf(context, group), ...ownFields(context, group), ...pictures);
}

function gistOf({ draft }: FormContext, { inputs, tables }: InputGroup): string {
  const [table] = tables;
  if (table !== undefined) {
    const rows = (draft.tables[table.table] ?? []).filter((row) => !isBlank(row)).length;
    return rows === 0 ? "" : `${rows} ${rows === 1 ? singular(table.table) : table.table}`;
  }
  const filled = inputs.find(({ name, choices }) => choices === undefined && (draft.inputs[name] ?? "").trim() !== "");
  if (filled === undefined) return "";
  const quantity = filled.unit === "text" ? null : quantityOfUnit(filled.unit);
  const unit = quantity === null ? "" : ` ${unitSign(quantity, draft.units)}`;
  return `${filled.label} ${draft.inputs[filled.name]}${unit}`.trim();
}

export function ownFields(context: FormContext, { inputs, tables }: InputGroup): Node[] {
  return [
    ...tables.map((table) => ownTable(context, table, singular(table.table))),
    ...inputs.map((input) => ownField(context, input)),
  ];
}

const singular = (table: string): string => table.replace(/s$/, "");

export function ownField({ draft, form }: FormContext, input: TemplateInput): HTMLElement {
  const { name, label, unit, hint, choices, among } = input;
  const binding = {
    get: () => draft.inputs[name] ?? "",
    set: (text: string) => {
      draft.inputs[name] = text;
    },
  };
  const shape = { at: () => name, label: () => label, inline: true };
  if (choices !== undefined) return choiceField(form, shape, same(choices), binding);
  const quantity = unit === "text" ? null : quantityOfUnit(unit);
  const field = textField(
    form,
    {
      ...shape,
      ...(quantity === null ? {} : { numeric: true, unit: () => unitSign(quantity, draft.units) }),
      ...(hint === undefined ? {} : { hint: `${hint.slice(0, 1).toUpperCase()}${hint.slice(1).replace(/\.$/, "")}.` }),
    },
    binding,
  );
  if (among === undefined) return field;
  const list = element("datalist", { id: newId() });
  field.querySelector("input")?.setAttribute("list", list.id);
  let shown = "";
  form.onChange(() => {
    const names = entriesOf(draft, among);
    if (names.join("\n") === shown) return;
    shown = names.join("\n");
    list.replaceChildren(...names.map((value) => element("option", { value })));
  });
  field.append(list);
  return field;
}
