// An order for a sheet, every part of it checked against the template that it names.
import * as v from "valibot";
import { refuse, refuseUnread } from "../base/refusal.ts";
import { oneOf, quote } from "../base/show.ts";
import type { Options, SheetModel, Values } from "../sheet/model.ts";
import { messageReader, text } from "./message.ts";

export type Order = { readonly template: string; readonly options: Options; readonly values: Values };

const MAX_TEXT_LENGTH = 500;
const MAX_ROWS = 1000;
const UNITS = { weight: ["g", "oz"], temperature: ["C", "F"], length: ["cm", "in"] } as const;
const isUnit = (name: unknown): name is keyof typeof UNITS => Object.keys(UNITS).some((unit) => unit === name);

const value = () =>
  v.pipe(
    v.union([v.null(), v.pipe(v.number(), v.finite()), text(MAX_TEXT_LENGTH)]),
    v.transform((typed) => (typed === "" ? null : typed)),
  );

const column = () =>
  v.pipe(
    v.array(value()),
    v.transform((values) => values.slice(0, MAX_ROWS)),
  );

/** Names and what is said for each; a record by itself leaves "constructor" and its like out without a word. */
const namedValues = () =>
  v.custom<Readonly<Record<string, unknown>>>((raw) => typeof raw === "object" && raw !== null && !Array.isArray(raw));

const readTemplate = messageReader("The question from the sidebar", () =>
  v.object({ template: v.optional(v.string(), "") }),
);

const readNames = messageReader("The inputs from the sidebar", () =>
  v.object({ values: v.optional(v.pipe(namedValues(), v.transform(Object.keys)), {}) }),
);

const readInputs = messageReader(refuseInputs, () =>
  v.object({
    options: v.optional(
      v.object({
        weight: v.optional(v.picklist(UNITS.weight), "g"),
        temperature: v.optional(v.picklist(UNITS.temperature), "C"),
        length: v.optional(v.picklist(UNITS.length), "cm"),
        parts: v.optional(v.array(v.string())),
      }),
      {},
    ),
    values: v.optional(v.pipe(namedValues(), v.record(v.string(), v.union([value(), column()]))), {}),
  }),
);

function refuseInputs({ path, input }: v.BaseIssue<unknown>): never {
  const [part, name] = (path ?? []).map(({ key }) => key);
  if (part === "options" && isUnit(name))
    return refuse(`The unit of ${name} is ${quote(String(input))}; it can be ${oneOf(UNITS[name])}.`);
  if (part === "values" && name !== undefined)
    return refuse(`The input ${name} is neither a number nor a text of up to ${MAX_TEXT_LENGTH} characters.`);
  return refuseUnread("The inputs from the sidebar");
}

/** An order for a sheet, every part of it checked against the template it names. */
export function readOrder(raw: unknown, templates: readonly SheetModel[]): Order & { readonly model: SheetModel } {
  const { template } = readTemplate(raw);
  const model = templates.find(({ name }) => name === template);
  if (model === undefined)
    return refuse(`There is no template ${quote(template)}; there is ${oneOf(templates.map(({ name }) => name))}.`);
  const known = inputNames(model);
  const unknown = readNames(raw).values.find((name) => !known.has(name));
  if (unknown !== undefined) refuse(`The template has no input ${quote(unknown)}.`);
  const { options, values } = readInputs(raw);
  const parts = options.parts?.filter((part) => model.parts.includes(part)) ?? model.parts;
  return { template: model.name, options: { ...options, parts }, values, model };
}

const AMOUNT_NAMES = ["dough_wanted", "flour_wanted", "tins", "trays", "weighed"] as const;

/** Names a person may fill in a template: its input cells, its title, and the input columns of its tables. */
export function inputNames(model: SheetModel): Set<string> {
  const names = new Set<string>();
  for (const item of model.bands.flat()) {
    if ("table" in item) {
      for (const { name, role } of item.columns) if (role === "input") names.add(name);
    } else {
      for (const cell of item.lines.flatMap(({ cells }) => cells)) {
        if (cell.name !== undefined && cell.formula === undefined && cell.role !== "helper") names.add(cell.name);
      }
    }
  }
  // One cell takes the amount, whatever it is an amount of; weights become percentages.
  if (names.has("amount")) for (const name of AMOUNT_NAMES) names.add(name);
  return names;
}
