import { refuse } from "../../shared/base/refusal.ts";
import type { CupSystem } from "../../shared/base/volumes.ts";
import type { SeenName } from "../../shared/protocol/look.ts";
import type { Order } from "../../shared/protocol/order.ts";
import type { Links, SheetModel, Values } from "../../shared/sheet/model.ts";
import { plan } from "../../shared/sheet/plan.ts";
import { planZone, type SheetPlan } from "../../shared/sheet/sheet-plan.ts";
import {
  BAKELOG_NAME,
  LABELS_NAME,
  LARDER_NAME,
  MIXLOG_NAME,
  PRICES_NAME,
  REGULAR_NAME,
  SETTINGS_NAME,
} from "../../shared/sheet/workbook-names.ts";
import { finishedProduct } from "../../templates/finished-product.ts";
import { LISTED_SHEETS } from "../../templates/index.ts";
import { priceSheet, priceSheetFor } from "../../templates/price-sheet.ts";
import { formulaSheetCount } from "./all-sheets.ts";
import { startingLarder } from "./larder-start.ts";
import { listRow } from "./list-row.ts";
import { orderValues } from "./order-values.ts";
import { lawIn, moneyIn } from "./settings.ts";
import { ingredients, look, type Steps } from "./steps.ts";

type Ordered = Order & { readonly model: SheetModel };
/** `row` is that of the list of formula sheets; `listDue` says that with this one there are enough for a list. */
export type Prepared = {
  readonly sheetPlan: SheetPlan;
  readonly note?: string;
  readonly row?: readonly string[];
  readonly listDue?: boolean;
};

/** Parts that the workbook decides on: a larder makes them possible, and a label goes by a law. */
export const NEED_LARDER: readonly string[] = ["cost", "label"];

/** The plan of an order for this workbook: all looking is done here, before anything is written. */
export function* prepare({ model, options: chosen, values }: Ordered): Steps<Prepared> {
  const isFormula = LISTED_SHEETS.includes(model);
  const isLarder = model.defines?.name === LARDER_NAME;
  const readsSettings = isLarder || isFormula;
  const asked = { names: LARDER_NAMES, cells: [MIXLOG_NAME, ...(readsSettings ? [SETTINGS_NAME] : [])] };
  const { seen, count } = isFormula ? yield* formulaSheetCount(asked) : { seen: yield* look(asked), count: null };
  const settings = seen.names.find(({ name }) => name === SETTINGS_NAME)?.values ?? [];
  const options = { ...chosen, ...moneyIn(settings) };
  const there = seen.names.map(({ name }) => name);
  const hasMixLog = there.includes(MIXLOG_NAME);
  const hasLarder = LARDER_NAMES.every((name) => there.includes(name));
  const isLarderOld = !hasLarder && there.includes(LARDER_NAME);
  if (model.defines?.name === MIXLOG_NAME) return mixLogPlan(model, options, values, hasMixLog);
  if (model.defines?.name === SETTINGS_NAME) return yield* settingsPlan(model, options, values);
  if ((model.defines?.name ?? "") in READ_FIRST) return yield* firstPlan(model, options, values);
  if (isLarder) return yield* larderPlan(model, options, { country: lawIn(settings) || null, ...values }, hasLarder);
  const lawful = withLaw(model, values, settings);
  const isWithoutLaw = hasLarder && isLawOpen(model, lawful);
  const parts = [
    ...options.parts.filter((part) => !NEED_LARDER.includes(part)),
    ...(!hasLarder
      ? []
      : NEED_LARDER.filter((part) => model.parts.includes(part) && !(part === "label" && isWithoutLaw))),
  ];
  if (model === finishedProduct && !hasLarder)
    refuse(
      "Build the ingredient sheet first, under Plan: a finished product takes its prices from it and from formula sheets.",
    );
  const mixLog = seen.names.find(({ name }) => name === MIXLOG_NAME);
  const inputs = orderValues(model, lawful, options, { mixLog, country: countryOf(lawful) });
  const sheetPlan = plan(model, { ...options, parts }, inputs);
  if (!isFormula) return { sheetPlan };
  const note = isLarderOld ? { note: OLD_LARDER } : isWithoutLaw ? { note: withoutLabel(model) } : {};
  if (count === null) return { sheetPlan, ...note, row: listRow(planZone(sheetPlan), options.weight) };
  return { sheetPlan, ...note, listDue: count + 1 >= MANY };
}

/** Formulas read the ingredient sheet by three names; one of an older version has but the first. */
export const LARDER_NAMES: readonly string[] = [LARDER_NAME, LABELS_NAME, PRICES_NAME];
const OLD_LARDER =
  "No cost or label was built: the ingredient sheet comes from an older version. Duplicate that sheet and delete the first one. Build an ingredient sheet under Plan, copy your rows into it, then build this sheet again.";

/** Eggs are weighed as where the bakery is, as far as its labelling rules say. */
const countryOf = ({ law }: Values): CupSystem => (law === "EU" || law === "UK" ? law : "US");

/** Check puts parts into formula sheets alone. */
const withoutLabel = (model: SheetModel): string =>
  `It has no label yet. Choose EU, UK or US in Bakery settings, then ${model === finishedProduct ? "build this sheet again" : "add the label under Check"}.`;

/** Whether a sheet that can have a label is ordered without the law that it goes by. */
const isLawOpen = (model: SheetModel, values: Values): boolean =>
  model.parts.includes("label") && String(values.law ?? "").trim() === "";

/** A label goes by the bakery's law, where nothing else was ordered. */
const withLaw = (model: SheetModel, values: Values, settings: SeenName["values"]): Values =>
  isLawOpen(model, values) && lawIn(settings) !== "" ? { ...values, law: lawIn(settings) } : values;

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
  const sheetPlan = plan(model, options, { ...values, known_as: note });
  return isSecond ? { sheetPlan: { ...sheetPlan, defines: [] }, note } : { sheetPlan };
}

/** New formulas begin with one sheet of settings: the first. */
function* settingsPlan(model: SheetModel, options: Order["options"], values: Order["values"]): Steps<Prepared> {
  const sheetPlan = plan(model, options, values);
  const isSecond = (yield* look({ names: [SETTINGS_NAME] })).names.length > 0;
  if (!isSecond) return { sheetPlan };
  const note = `This workbook has settings already, and new formulas go on beginning with those (${SETTINGS_NAME}).`;
  return { sheetPlan: { ...sheetPlan, defines: [] }, note };
}

/** Of these the workbook reads the first alone, by its name. */
const READ_FIRST: Readonly<Record<string, string>> = {
  [REGULAR_NAME]: "This workbook has regular orders already, and production goes on reading those",
  [BAKELOG_NAME]: "This workbook has a bake log already, and Check goes on reading that one",
};

function* firstPlan(model: SheetModel, options: Order["options"], values: Order["values"]): Steps<Prepared> {
  const sheetPlan = plan(model, options, values);
  const name = model.defines?.name ?? "";
  const isSecond = (yield* look({ names: [name] })).names.length > 0;
  if (!isSecond) return { sheetPlan };
  return { sheetPlan: { ...sheetPlan, defines: [] }, note: `${READ_FIRST[name]} (${name}).` };
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
  const sheetPlan = plan(model, options, { ...start, known_as: note });
  return isSecond ? { sheetPlan: { ...sheetPlan, defines: [] }, note } : { sheetPlan };
}

const MAX_CHOICES = 500;

/** A few more come in by themselves. */
const SPARE_PLACES = 30;
const SPARE_SIZES = 3;

/** Rows for all products of the formula list, of which there are so many now; `cells` are those of the ingredient sheet, where there is one. */
export function pricePlan(
  { options, values }: Ordered,
  cells: SeenName["values"] | undefined,
  { all, most }: { readonly all: number; readonly most: number },
  isLogged: boolean,
): SheetPlan {
  if (cells === undefined) return plan(priceSheet, { ...options, parts: [] }, values);
  const places = Array.from({ length: Math.max(40, all + SPARE_PLACES) }, (_, at) => String(at + 1));
  const parts = isLogged ? ["products", "logged"] : ["products"];
  const [header = [], ...rows] = cells;
  const column = (wanted: string) => {
    const at = header.findIndex((head) => String(head).trim().toLowerCase() === wanted);
    return at < 0 ? [] : rows.map((row) => String(row[at] ?? "").trim());
  };
  const names = [...new Set([...column("supplier"), ...column("ingredient")])].filter((name) => name !== "");
  const links: Links = { place: places, "choices of tried": names.slice(0, MAX_CHOICES).join("\n") };
  return plan(priceSheetFor(places.length, most + SPARE_SIZES), { ...options, parts }, values, links);
}
