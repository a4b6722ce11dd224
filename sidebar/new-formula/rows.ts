// The tables of the panel: sizes, ingredients, and what a template has of its own.
import { KIND_CHOICES } from "../../shared/larder/kinds.ts";
import type { SheetModel } from "../../shared/sheet/model.ts";
import { type InputTable, inputTable } from "../../shared/sheet/template-inputs.ts";
import { element } from "../kit/element.ts";
import { newId } from "../kit/fields.ts";
import { type Column, table } from "../kit/row-table.ts";
import type { RowDraft, TableRow } from "./draft.ts";
import { splitPercents } from "./pasted-figures.ts";
import { quantityOfUnit } from "./quantity.ts";
import type { FormContext } from "./sections.ts";
import { emptyOf, emptyRow, emptySize, sizeKey } from "./start.ts";
import { unitSign } from "./unit-change.ts";

/** One that grows with what is typed takes as many as a sheet has rows to spare for. */
const MAX_GROWING_ROWS = 60;
const maxRows = (model: SheetModel, name: string): number => {
  const tableInput = inputTable(model, name);
  return tableInput === undefined ? 1 : tableInput.grows ? MAX_GROWING_ROWS : tableInput.rows;
};

export function sizeTable({ draft, form, model }: FormContext): HTMLElement {
  const columns = inputTable(model, "sizes")?.columns ?? [];
  return table<TableRow>({
    form,
    rows: draft.sizes,
    max: maxRows(model, "sizes"),
    empty: () => emptySize(model),
    looks: columns.some(({ name }) => name === "size_diameter") ? "sizes rounds" : "sizes",
    what: "size",
    columns: columns.map(({ name, label, unit }): Column<TableRow> => {
      const sign = unit === "text" ? "" : quantityOfUnit(unit);
      return {
        name: sizeKey(name),
        at: name,
        // Four columns side by side leave no room for the whole of it.
        head: label === "Bake loss" ? "Loss" : label,
        ...(sign === "" || sign === "count" ? {} : { unit: () => unitSign(sign, draft.units) }),
        ...(sign === "" ? {} : { numeric: true }),
        ...(name === "size_pieces" ? { hidden: () => draft.choices.by === "trays" } : {}),
      };
    }),
  });
}

export function ownTable(
  { draft, form }: FormContext,
  { table: name, rows, grows, columns }: InputTable,
  what: string,
): HTMLElement {
  const typedRows = draft.tables[name] ?? [];
  return table<TableRow>({
    form,
    rows: typedRows,
    max: grows ? MAX_GROWING_ROWS : rows,
    empty: () => emptyOf(columns),
    looks: "own",
    what,
    columns: columns.map(({ name, label, unit }): Column<TableRow> => {
      const quantity = unit === "text" ? null : quantityOfUnit(unit);
      return { name, at: name, head: label, ...(quantity === null ? {} : { numeric: true }) };
    }),
  });
}

export function ingredientTable({ draft, form, model }: FormContext): HTMLElement {
  const list = newId();
  const max = maxRows(model, "formula");
  const spread = (row: RowDraft) => {
    const parts = splitPercents(row.percent);
    if (parts === null) return;
    const from = draft.rows.indexOf(row);
    parts.forEach((part, index) => {
      const there = draft.rows[from + index];
      if (there !== undefined) there.percent = part;
      else if (draft.rows.length < max) draft.rows.push({ ...emptyRow(), percent: part });
    });
    form.changed();
  };
  const rows = table<RowDraft>({
    form,
    rows: draft.rows,
    max,
    empty: emptyRow,
    looks: "ingredients",
    what: "ingredient",
    columns: [
      { name: "ingredient", at: "ingredient", head: "Name" },
      { name: "kind", at: "kind", head: "Type", list },
      { name: "percent", at: "percent", head: "Baker's %", numeric: true, done: spread },
      {
        name: "weighed",
        at: "weighed",
        head: "or weight",
        unit: () => draft.units.weight,
        numeric: true,
        hidden: () => !draft.weighed,
      },
    ],
  });
  form.onChange(() => rows.classList.toggle("weighed", draft.weighed));
  rows.append(element("datalist", { id: list }, ...KIND_CHOICES.map((kind) => element("option", { value: kind }))));
  rows.prepend(weightTick({ draft, form }));
  return rows;
}

function weightTick({ draft, form }: Pick<FormContext, "draft" | "form">): HTMLElement {
  const box = element("input", {
    id: newId(),
    type: "checkbox",
    change: () => {
      draft.weighed = box.checked;
      form.changed();
    },
  });
  form.onChange(() => {
    box.checked = draft.weighed;
  });
  return element("label", { class: "tick" }, box, "Enter weights as well");
}
