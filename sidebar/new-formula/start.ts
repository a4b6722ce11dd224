// What the panel New formula begins with for a template.

import { showNumber } from "../../shared/base/show.ts";
import type { SheetModel, Value, Values } from "../../shared/sheet/model.ts";
import { inputGroups, inputTable, type TemplateInput } from "../../shared/sheet/template-inputs.ts";
import {
  type ChoiceName,
  type Draft,
  FIELD_NAMES,
  type FieldName,
  type RowDraft,
  type TableRow,
  USUAL_STEPS,
} from "./draft.ts";
import { type Quantity, quantityOfUnit } from "./quantity.ts";
import { asTyped } from "./unit-change.ts";

/** A new sheet: the template's ingredients, steps and shares, its tin's shape, and blanks where the shop's own figures go. */
export function startFrom(model: SheetModel): Draft {
  const { sample, parts } = model;
  const blank = Object.fromEntries(FIELD_NAMES.map((name) => [name, ""])) as Record<FieldName, string>;
  const chosen = (name: ChoiceName, otherwise: string) => String(sample[name] ?? otherwise);
  const groups = inputGroups(model);
  const tables = groups.flatMap((group) => group.tables);
  const sizes = sizeColumns(model);
  const columns = [...tables.flatMap((table) => table.columns), ...sizes];
  const inputs = groups.flatMap((group) => group.inputs);
  return {
    title: model.title,
    shop: "",
    law: "",
    fields: { ...blank, ...USUAL_STEPS.g },
    choices: {
      by: chosen("by", "pieces"),
      tin_shape: parts.includes("tin") ? chosen("tin_shape", "box") : "",
      tin_kind: chosen("tin_kind", "white"),
      mixing: "",
      yeast: chosen("yeast", "fresh"),
    },
    water: parts.includes("water"),
    units: { weight: "g", temperature: "C", length: "cm" },
    sizes: [emptySize(model)],
    rows: sampleRows(sample),
    weighed: false,
    inputs: Object.fromEntries(inputs.map((input) => [input.name, startOf(input, sample)])),
    tables: Object.fromEntries(tables.map(({ table, columns }) => [table, rowsOf(columns, sample)])),
    quantities: Object.fromEntries(
      [...inputs, ...columns].flatMap(({ name, unit }): [string, Quantity][] =>
        unit === "text" ? [] : [[name, quantityOfUnit(unit)]],
      ),
    ),
  };
}

export const sizeColumns = (model: SheetModel): readonly TemplateInput[] => inputTable(model, "sizes")?.columns ?? [];
export const sizeKey = (name: string): string => name.replace(/^size_/, "");
export const emptySize = (model: SheetModel): TableRow =>
  Object.fromEntries(sizeColumns(model).map(({ name }) => [sizeKey(name), ""]));
export const emptyRow = (): RowDraft => ({ ingredient: "", kind: "", percent: "", weighed: "" });
export const emptyOf = (columns: readonly TemplateInput[]): TableRow =>
  Object.fromEntries(columns.map(({ name }) => [name, ""]));

/** Shares, hours and words belong to the formula; weights, sizes, trays and times are a shop's own. */
const OF_THE_FORMULA: ReadonlySet<string> = new Set(["text", "share", "short rate", "percent", "plain", "per area"]);
/** Counts that belong to a formula: how often a dough is folded. */
const FOLD = /^fold_\d$/;

function startOf({ name, unit, value, choices }: TemplateInput, sample: Values): string {
  if (!OF_THE_FORMULA.has(unit) && !FOLD.test(name)) return "";
  const example = sample[name] ?? value ?? choices?.[0] ?? "";
  return typeof example === "number" ? asTyped(example, quantityOfUnit(unit)) : String(example);
}

function rowsOf(columns: readonly TemplateInput[], sample: Values): TableRow[] {
  const length = Math.max(1, ...columns.map(({ name }) => columnOf(sample, name).length));
  return Array.from({ length }, (_, row) =>
    Object.fromEntries(
      columns.map(({ name, unit }) => {
        const value = columnOf(sample, name)[row] ?? "";
        return [name, typeof value === "number" ? asTyped(value, quantityOfUnit(unit)) : value];
      }),
    ),
  );
}

function columnOf(sample: Values, name: string): readonly Value[] {
  const column = sample[name];
  return Array.isArray(column) ? column : [];
}

function sampleRows(sample: Values): RowDraft[] {
  const [kinds, percents] = [columnOf(sample, "kind"), columnOf(sample, "percent")];
  return columnOf(sample, "ingredient").map((ingredient, row) => {
    const percent = percents[row];
    return {
      ingredient: String(ingredient ?? ""),
      kind: String(kinds[row] ?? ""),
      percent: typeof percent === "number" ? showNumber(percent * 100, 3) : "",
      weighed: "",
    };
  });
}
