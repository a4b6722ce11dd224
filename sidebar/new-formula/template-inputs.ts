// What a template has of its own, read as its sheet will read it.

import { isFault } from "../../shared/base/refusal.ts";
import { oneOf, quote } from "../../shared/base/show.ts";
import type { SheetModel, Value } from "../../shared/sheet/model.ts";
import { type InputTable, inputGroups, type TemplateInput } from "../../shared/sheet/template-inputs.ts";
import { validationOf } from "../../shared/sheet/validation.ts";
import { type FieldFault, fieldFault } from "../kit/field-fault.ts";
import type { Draft, TableRow } from "./draft.ts";
import { quantityOfUnit, readQuantity } from "./quantity.ts";

export type TemplateInputs = {
  readonly number: (name: string) => number | null;
  readonly text: (name: string) => string;
  /** A column of one of its tables, row by row, blank rows left out. */
  readonly column: (name: string) => readonly Value[];
};

type Values = Map<string, Value | readonly Value[]>;

/** Reads all of it into `values`; what cannot be read is said, and counts as blank. */
export function readOwn(draft: Draft, model: SheetModel, values: Values, faults: FieldFault[]): TemplateInputs {
  const groups = inputGroups(model);
  for (const input of groups.flatMap(({ inputs }) => inputs)) {
    const text = draft.inputs[input.name] ?? "";
    values.set(input.name, readInput(input, text, input.name, input.label, draft, faults));
  }
  for (const table of groups.flatMap(({ tables }) => tables)) readTable(table, draft, values, faults);
  if (typeof values.get("seed_share") === "number" && typeof values.get("seed_weight") === "number")
    faults.push(fieldFault("seed_weight", "The seed has a share and a weight; clear one of the two."));
  const column = (name: string) => {
    const typedValue = values.get(name);
    return Array.isArray(typedValue) ? (typedValue as readonly Value[]) : [];
  };
  return {
    number: (name) => {
      const value = values.get(name);
      return typeof value === "number" ? value : null;
    },
    text: (name) => {
      const value = values.get(name);
      return typeof value === "string" ? value : "";
    },
    column,
  };
}

function readTable(
  { table, columns, rows, grows }: InputTable,
  draft: Draft,
  values: Values,
  faults: FieldFault[],
): void {
  const used = (draft.tables[table] ?? []).map((row, index) => ({ row, index })).filter(({ row }) => !isBlank(row));
  if (!grows && used.length > rows) {
    const [first] = columns;
    faults.push(fieldFault(`${first?.name}/${rows}`, `The sheet has ${rows} rows for these; take some out.`));
  }
  for (const input of columns) {
    values.set(
      input.name,
      used.map(({ row, index }) => {
        const label = `${input.label} of row ${index + 1}`;
        return readInput(input, row[input.name] ?? "", `${input.name}/${index}`, label, draft, faults);
      }),
    );
  }
}

export const isBlank = (row: TableRow): boolean => Object.values(row).every((text) => text.trim() === "");

function readInput(
  input: TemplateInput,
  text: string,
  at: string,
  label: string,
  draft: Draft,
  faults: FieldFault[],
): Value {
  if (text.trim() === "") return null;
  if (input.unit === "text") {
    const unknown = notAmong(input, text.trim(), draft);
    if (unknown !== "") faults.push(fieldFault(at, `${label} is ${quote(text.trim())}${unknown}`));
    return text.trim();
  }
  const read = readQuantity(text, quantityOfUnit(input.unit), draft.units);
  if (isFault(read)) {
    faults.push(fieldFault(at, `${label} ${read.says}.`));
    return null;
  }
  const limits = validationOf(input, undefined, { ...draft.units, parts: [] });
  if (read !== null && limits?.is === "between" && (read < limits.least || read > limits.most)) {
    faults.push(fieldFault(at, `${label} is ${quote(text.trim())}. ${limits.help}`));
    return null;
  }
  return read;
}

/** A name that stands nowhere else would be looked for in vain. */
function notAmong({ among }: TemplateInput, text: string, draft: Draft): string {
  if (among === undefined) return "";
  const names = entriesOf(draft, among);
  if (names.length === 0 || names.some((name) => name.toLowerCase() === text.toLowerCase())) return "";
  return `, and nothing is called so; enter ${oneOf(names)}.`;
}

/** What stands in a column of the panel, each entry once. */
export function entriesOf(draft: Draft, column: string): string[] {
  const rows: readonly TableRow[] = [draft.rows, ...Object.values(draft.tables)].flat();
  return [...new Set(rows.map((row) => (row[column] ?? "").trim()).filter((name) => name !== ""))];
}
