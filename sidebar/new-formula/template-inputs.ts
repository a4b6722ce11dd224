// What a template asks for, and what it has of its own, read as its sheet will read it.

import { isFault } from "../../shared/base/refusal.ts";
import { oneOf, quote } from "../../shared/base/show.ts";
import { inputNames } from "../../shared/protocol/order.ts";
import type { SheetModel, Value } from "../../shared/sheet/model.ts";
import {
  type InputTable,
  inputCell,
  inputGroups,
  makesBatter,
  type TemplateInput,
} from "../../shared/sheet/template-inputs.ts";
import { validationOf } from "../../shared/sheet/validation.ts";
import { type FieldFault, fieldFault } from "../kit/field-fault.ts";
import type { Draft, TableRow } from "./draft.ts";
import { type Quantity, quantityOfUnit, readQuantity, type Units } from "./quantity.ts";
import { sizeColumns, sizeKey } from "./start.ts";

/** An input with how it is typed, and what it may be in the units that were chosen. */
export type AskedInput = TemplateInput & {
  /** What a row of the panel calls it. */
  readonly key: string;
  /** Null for a text. */
  readonly quantity: Quantity | null;
  readonly limits: { readonly least: number; readonly most: number; readonly help: string } | null;
};
type AskedTable = Omit<InputTable, "columns"> & { readonly columns: readonly AskedInput[] };

/** What a template asks for, as its order is read by it. */
export type Asked = {
  readonly inputs: readonly AskedInput[];
  readonly tables: readonly AskedTable[];
  readonly sizes: readonly AskedInput[];
  /** All that its sheet has a place for. */
  readonly names: ReadonlySet<string>;
  readonly hasPrefermentTemp: boolean;
  /** Its water may follow from an effective hydration. */
  readonly hasHydration: boolean;
  readonly makesBatter: boolean;
};

const known = new WeakMap<SheetModel, Map<string, Asked>>();

/** Read off its model once for the units that a sheet may be built in. */
export function askedOf(model: SheetModel, units: Units): Asked {
  const ofModel = known.get(model) ?? new Map<string, Asked>();
  known.set(model, ofModel);
  const inUnits = `${units.weight} ${units.temperature} ${units.length}`;
  const asked = ofModel.get(inUnits) ?? readModel(model, units);
  ofModel.set(inUnits, asked);
  return asked;
}

function readModel(model: SheetModel, units: Units): Asked {
  const groups = inputGroups(model);
  const input = (one: TemplateInput): AskedInput => {
    const limits = validationOf(one, undefined, { ...units, parts: [] });
    return {
      ...one,
      key: one.name,
      quantity: one.unit === "text" ? null : quantityOfUnit(one.unit),
      limits: limits?.is === "between" ? limits : null,
    };
  };
  const table = (one: InputTable): AskedTable => ({ ...one, columns: one.columns.map(input) });
  return {
    inputs: groups.flatMap(({ inputs }) => inputs.map(input)),
    tables: groups.flatMap(({ tables }) => tables.map(table)),
    sizes: sizeColumns(model).map((one) => ({ ...input(one), key: sizeKey(one.name) })),
    names: inputNames(model),
    hasPrefermentTemp: inputCell(model, "preferment_temp") !== undefined,
    hasHydration: inputCell(model, "effective_wanted") !== undefined,
    makesBatter: makesBatter(model),
  };
}

export type TemplateInputs = {
  readonly number: (name: string) => number | null;
  readonly text: (name: string) => string;
  /** A column of one of its tables, row by row, blank rows left out. */
  readonly column: (name: string) => readonly Value[];
};

type Values = Map<string, Value | readonly Value[]>;

/** Reads all of it into `values`; what cannot be read is said, and counts as blank. */
export function readOwn(draft: Draft, asked: Asked, values: Values, faults: FieldFault[]): TemplateInputs {
  for (const input of asked.inputs) {
    const text = draft.inputs[input.name] ?? "";
    values.set(input.name, readInput(input, text, input.name, input.label, draft, faults));
  }
  for (const table of asked.tables) readTable(table, draft, values, faults);
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
  { table, columns, rows, grows }: AskedTable,
  draft: Draft,
  values: Values,
  faults: FieldFault[],
): void {
  const used = (draft.tables[table] ?? []).map((row, index) => ({ row, index })).filter(({ row }) => !isBlank(row));
  if (!grows && used.length > rows) {
    const [first] = columns;
    faults.push(fieldFault(`${first?.name}/${rows}`, `The sheet has room for ${rows} rows. Delete some.`));
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
  input: AskedInput,
  text: string,
  at: string,
  label: string,
  draft: Draft,
  faults: FieldFault[],
): Value {
  if (text.trim() === "") return null;
  const { quantity, limits } = input;
  if (quantity === null) {
    const unknown = notAmong(input, text.trim(), draft);
    if (unknown !== "") faults.push(fieldFault(at, `${label} is ${quote(text.trim())}${unknown}`));
    return text.trim();
  }
  const value = readQuantity(text, quantity, draft.units);
  if (isFault(value)) {
    faults.push(fieldFault(at, `${label} ${value.says}.`));
    return null;
  }
  if (value !== null && limits !== null && (value < limits.least || value > limits.most)) {
    faults.push(fieldFault(at, `${label} is ${quote(text.trim())}. ${limits.help}`));
    return null;
  }
  return value;
}

/** A name that stands nowhere else would be looked for in vain. */
function notAmong({ among }: TemplateInput, text: string, draft: Draft): string {
  if (among === undefined) return "";
  const names = entriesOf(draft, among);
  if (names.length === 0 || names.some((name) => name.toLowerCase() === text.toLowerCase())) return "";
  return `, and nothing has that name; enter ${oneOf(names)}.`;
}

/** What stands in a column of the panel, each entry once. */
export function entriesOf(draft: Draft, column: string): string[] {
  const rows: readonly TableRow[] = [draft.rows, ...Object.values(draft.tables)].flat();
  return [...new Set(rows.map((row) => (row[column] ?? "").trim()).filter((name) => name !== ""))];
}
