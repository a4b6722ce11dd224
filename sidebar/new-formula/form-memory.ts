// What was typed stays when the template changes: what the new one has too is there at once, the rest when it comes back.
import type { SheetModel } from "../../shared/sheet/model.ts";
import { inputCell, inputGroups } from "../../shared/sheet/template-inputs.ts";
import { changeUnits, type Draft, FIELD_NAMES, type FieldName, quantityOf, type TableRow } from "./draft.ts";
import type { Quantity, Units } from "./quantity.ts";
import { inOtherUnits } from "./unit-change.ts";

type Text = { readonly text: string; readonly quantity: Quantity | undefined; readonly units: Units };
type Rows = {
  readonly rows: readonly TableRow[];
  readonly quantities: Readonly<Record<string, Quantity>>;
  readonly units: Units;
};

/** Everything typed or chosen so far, for whichever template. */
export type FormMemory = {
  readonly texts: Map<string, Text>;
  readonly lists: Map<string, Rows>;
  units: Units | null;
  /** What a row shown had in columns that its template lacks, in the units it began with. */
  readonly whole: WeakMap<TableRow, TableRow>;
};

export const nothingKept = (): FormMemory => ({
  texts: new Map(),
  lists: new Map(),
  units: null,
  whole: new WeakMap(),
});
export const isAnythingKept = ({ texts, lists, units }: FormMemory): boolean =>
  texts.size + lists.size > 0 || units !== null;

export const copyOf = (draft: Draft): Draft => JSON.parse(JSON.stringify(draft)) as Draft;

const TIN_SIZE = /^fields\/tin_size_\d$/;
/** The amount's fields tell the way of making, also where the template begins with that way. */
const AMOUNTS: Readonly<Record<string, string>> = {
  tins: "fields/tins",
  dough: "fields/dough_wanted",
  batter: "fields/dough_wanted",
  flour: "fields/flour_wanted",
  pieces: "sizes",
  trays: "fields/trays",
};

/** Adds what was changed since the form began. */
export function keep(memory: FormMemory, draft: Draft, start: Draft): void {
  const before = copyOf(start);
  changeUnits(before, draft.units, new Map());
  if (JSON.stringify(draft.units) !== JSON.stringify(start.units)) memory.units = draft.units;
  const [now, then] = [textsOf(draft), textsOf(before)];
  const changed = new Set([...now.keys()].filter((key) => now.get(key) !== then.get(key)));
  const [lists, listsThen] = [listsOf(draft), listsOf(before)];
  for (const [key, rows] of lists) {
    if (JSON.stringify(rows) === JSON.stringify(listsThen.get(key))) continue;
    changed.add(key);
    const quantities = { ...memory.lists.get(key)?.quantities, ...quantitiesOf(key, draft) };
    const whole = (row: TableRow) => converted(memory.whole.get(row) ?? {}, quantities, start.units, draft.units);
    memory.lists.set(key, { rows: rows.map((row) => ({ ...whole(row), ...row })), quantities, units: draft.units });
  }
  // A way or shape that was chosen is not given up for that of a template without it.
  const tell = (key: string, isTold: boolean) => isTold && !memory.texts.has(key) && changed.add(key);
  tell("choices/by", changed.has(AMOUNTS[draft.choices.by] ?? ""));
  tell(
    "choices/tin_shape",
    [...changed].some((key) => TIN_SIZE.test(key)),
  );
  for (const key of changed) {
    const text = now.get(key);
    if (text !== undefined) memory.texts.set(key, { text, quantity: quantityAt(key, draft), units: draft.units });
  }
}

/** A template's beginning with what was kept and it has too. */
export function withKept(memory: FormMemory, start: Draft, model: SheetModel): Draft {
  const draft = copyOf(start);
  const units = memory.units ?? draft.units;
  changeUnits(draft, units, new Map());
  for (const [key, { text, quantity, units: from }] of memory.texts) {
    const there = quantity === undefined ? text : (inOtherUnits(text, quantity, from, units) ?? text);
    put(draft, key, there, model, quantity);
  }
  for (const [key, { rows, quantities, units: from }] of memory.lists) {
    const list = listsOf(draft).get(key);
    const columns = Object.keys(list?.[0] ?? {});
    if (list === undefined || columns.length === 0) continue;
    const shown = rows.map((row) => {
      const whole = converted(row, quantities, from, units);
      const one: TableRow = Object.fromEntries(columns.map((name) => [name, whole[name] ?? ""]));
      memory.whole.set(one, whole);
      return one;
    });
    list.splice(0, list.length, ...shown);
  }
  return draft;
}

const SWITCHES = ["water", "weighed"] as const;

function textsOf(draft: Draft): Map<string, string> {
  const under = (folder: string, record: Readonly<Record<string, string>>) =>
    Object.entries(record).map(([name, text]): [string, string] => [`${folder}/${name}`, text]);
  return new Map([
    ["title", draft.title],
    ["shop", draft.shop],
    ["law", draft.law],
    ...SWITCHES.map((name): [string, string] => [name, String(draft[name])]),
    ...under("fields", draft.fields),
    ...under("choices", draft.choices),
    ...under("inputs", draft.inputs),
  ]);
}

function put(draft: Draft, key: string, text: string, model: SheetModel, quantity: Quantity | undefined): void {
  const [folder = "", name = ""] = key.split("/");
  if (key === "title" || key === "shop" || key === "law") draft[key] = text;
  else if (key === "water") draft.water = text === "true" && model.parts.includes("water");
  else if (key === "weighed") draft.weighed = text === "true";
  else if (folder === "fields") draft.fields[name as FieldName] = text;
  else if (folder === "inputs") putInput(draft, name, text, model, quantity);
  else if (name === "by") draft.choices.by = wayOf(text, model) ?? draft.choices.by;
  else if (name !== "tin_shape" || model.parts.includes("tin")) Object.assign(draft.choices, { [name]: text });
}

function putInput(draft: Draft, name: string, text: string, model: SheetModel, quantity: Quantity | undefined): void {
  const input = inputGroups(model)
    .flatMap(({ inputs }) => inputs)
    .find((one) => one.name === name);
  // The same name may hold another quantity, or stand for other choices.
  if (input === undefined || draft.quantities[name] !== quantity) return;
  if (input.choices === undefined || input.choices.includes(text)) draft.inputs[name] = text;
}

/** A cake's batter is what dough is to a bread. */
function wayOf(by: string, model: SheetModel): string | undefined {
  const ways = inputCell(model, "by")?.choices ?? [];
  const other = { dough: "batter", batter: "dough" }[by];
  return ways.find((way) => way === by) ?? ways.find((way) => way === other);
}

const listsOf = ({ rows, sizes, tables }: Draft): Map<string, TableRow[]> =>
  new Map([
    ["rows", rows],
    ["sizes", sizes],
    ...Object.entries(tables).map(([name, table]): [string, TableRow[]] => [`tables/${name}`, table]),
  ]);

function quantityAt(key: string, draft: Draft): Quantity | undefined {
  const [folder, name = ""] = key.split("/");
  if (folder === "inputs") return draft.quantities[name];
  return folder === "fields" ? quantityOf(FIELD_NAMES.find((one) => one === name) ?? "tins", draft) : undefined;
}

/** What a list's columns hold; texts are not among them. */
function quantitiesOf(key: string, draft: Draft): Readonly<Record<string, Quantity>> {
  if (key === "rows") return { weighed: "weight" };
  if (key !== "sizes") return draft.quantities;
  return Object.fromEntries(
    Object.entries(draft.quantities).map(([name, quantity]) => [name.replace(/^size_/, ""), quantity]),
  );
}

const converted = (row: TableRow, quantities: Rows["quantities"], from: Units, to: Units): TableRow =>
  Object.fromEntries(
    Object.entries(row).map(([name, text]) => {
      const quantity = quantities[name];
      return [name, quantity === undefined ? text : (inOtherUnits(text, quantity, from, to) ?? text)];
    }),
  );
