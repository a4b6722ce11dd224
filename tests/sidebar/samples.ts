import type { SheetModel, Value } from "../../shared/sheet/model.ts";
import { type Draft, FIELD_NAMES, quantityOf } from "../../sidebar/new-formula/draft.ts";
import { sizeColumns, sizeKey, startFrom } from "../../sidebar/new-formula/start.ts";
import { asTyped } from "../../sidebar/new-formula/unit-change.ts";
import { TEMPLATES } from "../../templates/index.ts";

export const templateOf = (name: string): SheetModel => {
  const found = TEMPLATES.find((one) => one.name === name);
  if (found === undefined) throw new Error(`no template ${name}`);
  return found;
};
export const listOf = (value: Value | readonly Value[] | undefined): readonly Value[] =>
  Array.isArray(value) ? (value as readonly Value[]) : [];

/** A template's whole sample, typed field by field as a person types it. */
export function sampleOf(model: SheetModel): Draft {
  const { sample } = model;
  const draft = startFrom(model);
  draft.title = String(sample.title);
  draft.shop = String(sample.shop);
  for (const name of FIELD_NAMES) {
    const value = sample[name];
    if (typeof value === "number") draft.fields[name] = asTyped(value, quantityOf(name, draft));
  }
  for (const name of ["mixing", "yeast"] as const) draft.choices[name] = String(sample[name] ?? draft.choices[name]);
  for (const [name, quantity] of Object.entries(draft.quantities)) {
    const value = sample[name];
    if (typeof value === "number") draft.inputs[name] = asTyped(value, quantity);
  }
  for (const name of Object.keys(draft.inputs)) {
    const value = sample[name];
    if (typeof value === "string") draft.inputs[name] = value;
  }
  const rows = Math.max(...sizeColumns(model).map(({ name }) => listOf(sample[name]).length));
  draft.sizes.splice(
    0,
    1,
    ...Array.from({ length: rows }, (_, row) =>
      Object.fromEntries(
        sizeColumns(model).map(({ name }) => {
          const value = listOf(sample[name])[row] ?? "";
          const quantity = draft.quantities[name];
          return [sizeKey(name), typeof value === "number" && quantity ? asTyped(value, quantity) : String(value)];
        }),
      ),
    ),
  );
  return draft;
}
