import { refuse } from "../../shared/base/refusal.ts";
import type { Order } from "../../shared/protocol/bench.ts";
import { LARDER_NAME, type Links, MIXLOG_NAME, SETTINGS_NAME, type SheetModel } from "../../shared/sheet/model.ts";
import { plan, type SheetPlan } from "../../shared/sheet/plan.ts";
import { finishedProduct } from "../../templates/finished-product.ts";
import { LISTED_SHEETS } from "../../templates/index.ts";
import { type FormulaSheets, formulaSheetCount } from "./all-sheets.ts";
import { startingLarder } from "./larder-start.ts";
import { listRow } from "./listed.ts";
import { orderValues } from "./order-values.ts";
import type { Overview } from "./overview.ts";
import { ingredients, look, type Steps } from "./steps.ts";

type Ordered = Order & { readonly model: SheetModel };
/** `row` is that of the list of formula sheets; `listDue` says that with this one there are enough for a list. */
export type Prepared = {
  readonly made: SheetPlan;
  readonly note?: string;
  readonly row?: readonly string[];
  readonly listDue?: boolean;
};

/** Parts that the workbook decides on: a larder makes them possible. */
export const NEED_LARDER: readonly string[] = ["cost", "label"];

/** The plan of an order for this workbook: all looking is done here, before anything is written. */
export function* prepare({ model, options, values }: Ordered): Steps<Prepared> {
  const isFormula = LISTED_SHEETS.includes(model);
  const asked = { names: [LARDER_NAME], cells: [MIXLOG_NAME] };
  const { seen, count } = isFormula ? yield* formulaSheetCount(asked) : { seen: yield* look(asked), count: null };
  const there = seen.names.map(({ name }) => name);
  const [hasLarder, hasMixLog] = [there.includes(LARDER_NAME), there.includes(MIXLOG_NAME)];
  if (model.defines?.name === MIXLOG_NAME) return mixLogPlan(model, options, values, hasMixLog);
  if (model.defines?.name === SETTINGS_NAME) return yield* settingsPlan(model, options, values);
  if (model.defines !== undefined) return yield* larderPlan(model, options, values, hasLarder);
  const parts = [
    ...options.parts.filter((part) => !NEED_LARDER.includes(part)),
    ...(!hasLarder ? [] : NEED_LARDER.filter((part) => model.parts.includes(part))),
  ];
  if (model === finishedProduct && !hasLarder)
    refuse(
      "Build the ingredient sheet first, under Plan: a finished product takes its prices from it and from formula sheets.",
    );
  const mixLog = seen.names.find(({ name }) => name === MIXLOG_NAME);
  const inputs = orderValues(model, values, options, mixLog);
  const made = plan(model, { ...options, parts }, inputs);
  if (!isFormula) return { made };
  if (count === null) return { made, row: listRow((name) => made.names.get(name), options.weight) };
  return { made, listDue: count + 1 >= MANY };
}

/** Fewer are read one by one in as few calls of the service as a sheet may take. */
const MANY = 6;

/** Formula sheets read one mix log: the first. */
function mixLogPlan(
  model: SheetModel,
  options: Order["options"],
  values: Order["values"],
  isSecond: boolean,
): Prepared {
  const note = isSecond
    ? `This workbook has a mix log already, and formula sheets go on reading that one (${MIXLOG_NAME}).`
    : `Formula sheets built from now on read their friction factor here; its name is ${MIXLOG_NAME}.`;
  const made = plan(model, options, { ...values, known_as: note });
  return isSecond ? { made: { ...made, defines: [] }, note } : { made };
}

/** New formulas begin with one sheet of settings: the first. */
function* settingsPlan(model: SheetModel, options: Order["options"], values: Order["values"]): Steps<Prepared> {
  const made = plan(model, options, values);
  const isSecond = (yield* look({ names: [SETTINGS_NAME] })).names.length > 0;
  if (!isSecond) return { made };
  const note = `This workbook has settings already, and new formulas go on beginning with those (${SETTINGS_NAME}).`;
  return { made: { ...made, defines: [] }, note };
}

/** Formulas read one larder: the first. Another one says so. */
function* larderPlan(
  model: SheetModel,
  options: Order["options"],
  values: Order["values"],
  isSecond: boolean,
): Steps<Prepared> {
  const start = startingLarder(values, yield* ingredients());
  const note = isSecond
    ? `This workbook has an ingredient sheet already, and formulas go on reading that one (${LARDER_NAME}).`
    : `Every formula of this workbook reads this sheet; its name is ${LARDER_NAME}.`;
  const made = plan(model, options, { ...start, known_as: note });
  return isSecond ? { made: { ...made, defines: [] }, note } : { made };
}

const MAX_CHOICES = 500;

/** Every formula sheet with a cost, its cells told by their references, so that the table follows them. */
export function pricePlan({ model, options, values }: Ordered, { sheets: all, names: known }: FormulaSheets): Prepared {
  const larder = known.get(LARDER_NAME)?.values;
  const costed = larder === undefined ? [] : all.filter(({ reference }) => reference("cost_ingredients") !== undefined);
  const [header = [], ...rows] = larder ?? [];
  const at = header.findIndex((head) => String(head).trim().toLowerCase() === "ingredient");
  const names = rows.map((row) => String(row[at] ?? "").trim()).filter((name) => name !== "");
  const without = all.length - costed.length;
  const note =
    without === 0
      ? {}
      : {
          note: `Not in it, because they show no cost: ${named(all, costed)}. Build them again now that there is an ingredient sheet.`,
        };
  if (costed.length === 0) return { made: plan(model, { ...options, parts: [] }, values), ...note };
  const stacks = costed.map((sheet) => stackOf(sheet));
  const links: Links = {
    ...productLinks(costed, stacks),
    names: stacked(stacks.map(({ names }) => names)),
    weights: stacked(stacks.map(({ weights }) => weights)),
    all: stacks.map(({ rows }) => rows).join("+"),
    "choices of tried": names.slice(0, MAX_CHOICES).join("\n"),
  };
  // The larder's copy and the stack of rows stand side by side, with room for rows inserted later.
  const long =
    Math.max(
      larder?.length ?? 0,
      stacks.reduce((sum, { length }) => sum + length, 0),
    ) + SPARE_ROWS;
  const number = Array.from({ length: long }, (_, index) => index + 1);
  return { made: plan(model, { ...options, parts: ["products"] }, { ...values, number }, links), ...note };
}

const SPARE_ROWS = 40;
const named = (all: readonly Overview[], costed: readonly Overview[]) =>
  all.flatMap((sheet) => (costed.includes(sheet) ? [] : [sheet.name])).join(", ");

type Stack = { readonly names: string; readonly weights: string; readonly rows: string; readonly length: number };

/** The ingredients of a sheet, and what is rolled into its dough, as parts of one long column. */
function stackOf(sheet: Overview): Stack {
  const names = reference(sheet, "ingredient");
  const weights = reference(sheet, "grams");
  const length = sheet.zone("ingredient")?.rows ?? 0;
  const [name, weight] = [sheet.reference("roll_in_name"), sheet.reference("roll_in")];
  if (name === undefined || weight === undefined) return { names, weights, rows: `ROWS(${names})`, length };
  return { names: `${names};${name}`, weights: `${weights};${weight}`, rows: `ROWS(${names})+1`, length: length + 1 };
}

const stacked = (parts: readonly string[]) => `ARRAYFORMULA(IFERROR({${parts.join(";")}};""))`;
const reference = (sheet: Overview, name: string) => sheet.reference(name) ?? '""';

/** A row for every size that is made; a sheet without sizes yet has one row all the same. */
function productLinks(sheets: readonly Overview[], stacks: readonly Stack[]): Links {
  const products = sheets.flatMap((sheet, index) => {
    const before = stacks
      .slice(0, index)
      .map(({ rows }) => rows)
      .join("+");
    const rows = sheet.zone("size_cost")?.rows ?? 0;
    const made = sheet.numbered("size_cost");
    return (made.length > 0 ? made : [Math.min(1, rows - 1)]).map((at) => {
      const cell = (name: string) => sheet.row(name, at) ?? '""';
      return {
        title: reference(sheet, "title"),
        size: cell("cost_of"),
        ingredients: cell("size_ingredients"),
        cost: cell("size_cost"),
        price: cell("size_price"),
        margin: cell("size_margin"),
        total: reference(sheet, "cost_ingredients"),
        unpriced: reference(sheet, "unpriced"),
        before: before === "" ? "0" : before,
        rows: stacks[index]?.rows ?? "0",
        // All weights go into one call as grams; what an ounce sheet counts is so many times as much.
        factor: sheet.unit === "oz" ? "28349523125/1000000000" : "1",
      };
    });
  });
  const keys = Object.keys(products[0] ?? {}) as (keyof (typeof products)[number])[];
  return Object.fromEntries(keys.map((key) => [key, products.map((product) => product[key])]));
}
