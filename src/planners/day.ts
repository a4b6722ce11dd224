// A day sheet from the formula sheets of the workbook.

import { refuse } from "../../shared/base/refusal.ts";
import { quote } from "../../shared/base/show.ts";
import { LARDER_NAME, type Links, type Value } from "../../shared/sheet/model.ts";
import { plan } from "../../shared/sheet/plan.ts";
import { daySheet } from "../../templates/day-sheet.ts";
import { type FormulaSheets, overAllSheets } from "./all-sheets.ts";
import { leftOut } from "./left-out.ts";
import { type Overview, summary } from "./overview.ts";
import { make, type Steps, withNotes } from "./steps.ts";

type Wanted = { readonly sheet: string; readonly pieces: number; readonly day: number | null };

/** Builds a day sheet for the pieces of each formula sheet; all looking is done before anything is written. */
export function* buildDay(asked: Readonly<Record<string, unknown>>): Steps<{ sheet: string; note?: string }> {
  const chosen = readDay(asked.day);
  const wanted = readWanted(asked.orders, chosen);
  // The sheet shows the first day that is ordered for; typing another over it shows that one.
  const [first = null] = wanted.flatMap((order) => order.day ?? []).sort((a, b) => a - b);
  const day = chosen ?? first;
  return yield* overAllSheets({ names: [LARDER_NAME] }, (found) => dayOver(found, day, wanted));
}

function* dayOver(
  { sheets: found, tabs, names: known }: FormulaSheets,
  day: number | null,
  wanted: readonly Wanted[],
): Steps<{ sheet: string; note?: string }> {
  const all = found.filter(({ parts }) => parts.length > 0);
  const ordered = [...new Set(wanted.map(({ sheet }) => sheet))].map((name) => {
    const one = all.find((sheet) => sheet.name === name);
    if (one !== undefined) return one;
    return refuse(`There is no formula sheet ${quote(name)} with weights any more. Look again, and choose anew.`);
  });
  const { unit: weight } = ordered[0] as Overview;
  const other = ordered.find(({ unit }) => unit !== weight);
  if (other !== undefined) {
    refuse(`${quote(other.name)} counts in ${other.unit}, the others in ${weight}; make a day sheet for each unit.`);
  }
  const alike = all.filter(({ unit }) => unit === weight);
  // What is not ordered yet may be ordered on the sheet.
  const products = [
    ...ordered,
    ...alike.filter((sheet) => !ordered.includes(sheet) && sheet.number("pieces") !== null),
  ];
  const larder = known.get(LARDER_NAME)?.rows ?? 0;
  const stacked = alike.reduce((sum, sheet) => sum + stackOf(sheet).length, 0);
  const values = {
    day,
    order_date: wanted.map((order) => order.day),
    order_product: wanted.map(({ sheet }) => sheet),
    order_pieces: wanted.map(({ pieces }) => pieces),
    stock_name: namesOf(alike),
    stack_row: Array.from({ length: Math.max(stacked, larder) + SPARE_ROWS }, (_, at) => at + 1),
    ...levainOf(ordered),
  };
  const parts = larder > 0 ? ["larder"] : [];
  const sheetPlan = plan(daySheet, { weight, temperature: "C", length: "cm", parts }, values, linksOf(products, alike));
  const without = found.flatMap((sheet) =>
    alike.includes(sheet) || !all.includes(sheet)
      ? (leftOut(summary(sheet)) ?? [])
      : `“${sheet.name}” is left out: it counts in ${sheet.unit}. Make a day sheet of its own for it.`,
  );
  return withNotes(yield* make(sheetPlan, titled(day, wanted), tabs), ...without);
}

/** Named by its day, or by the first and the last that is ordered for; the same year is said once. */
function titled(day: number | null, wanted: readonly Wanted[]): string {
  const days = [day, ...wanted.map((order) => order.day)].flatMap((one) => one ?? []);
  if (days.length === 0) return "Day sheet";
  const [first, last] = [isoOf(Math.min(...days)), isoOf(Math.max(...days))];
  if (first === last) return `Day ${first}`;
  return `Day ${first} – ${first.slice(0, 5) === last.slice(0, 5) ? last.slice(5) : last}`;
}

const MAX_ORDERS = 300;
const SPARE_ROWS = 40;

function readWanted(raw: unknown, usual: number | null): readonly Wanted[] {
  const all = Array.isArray(raw) ? raw : [];
  if (all.length > MAX_ORDERS) refuse(`A day sheet begins with up to ${MAX_ORDERS} orders; type the others into it.`);
  const orders = all.flatMap((one): Wanted[] => {
    const { sheet, pieces, day } = (one ?? {}) as Record<string, unknown>;
    if (typeof sheet !== "string") return [];
    if (typeof pieces === "number" && Number.isFinite(pieces) && pieces > 0 && pieces < 1e7)
      return [{ sheet, pieces, day: readDay(day) ?? usual }];
    return refuse(`The pieces of ${quote(sheet)} are no number above 0.`);
  });
  return orders.length > 0 ? orders : refuse("Enter how many pieces of at least one product you want.");
}

const text = (words: string): string => `"${words.replace(/"/g, '""')}"`;
const cell = (sheet: Overview, name: string): string => sheet.reference(name) ?? '""';

/** The ingredients of a sheet, and what is rolled into its dough. */
function stackOf(sheet: Overview): { names: string[]; weights: string[]; rows: string; length: number } {
  const [names, weights] = [cell(sheet, "ingredient"), cell(sheet, "grams")];
  const length = sheet.zone("ingredient")?.rows ?? 0;
  const [name, weight] = [sheet.reference("roll_in_name"), sheet.reference("roll_in")];
  if (name === undefined || weight === undefined || sheet.number("roll_in") === null)
    return { names: [names], weights: [weights], rows: `ROWS(${names})`, length };
  return { names: [names, name], weights: [weights, weight], rows: `ROWS(${names})+1`, length: length + 1 };
}

/** A product's name stands in its first row, which is the blank edge row of its table. */
function linksOf(ordered: readonly Overview[], all: readonly Overview[]): Links {
  const stacks = all.map(stackOf);
  const products = all.map((sheet, at) => {
    const rows = cell(sheet, "ingredient");
    const rest = stacks[at]?.rows === `ROWS(${rows})` ? "" : ';""';
    return `IF(ROW(${rows})=MIN(ROW(${rows}));${text(sheet.name)};"")${rest}`;
  });
  return {
    name: ordered.map(({ name }) => text(name)),
    "choices of order_product": ordered.map(({ name }) => name).join("\n"),
    pieces: ordered.map((sheet) => cell(sheet, "pieces")),
    dough: ordered.map((sheet) => cell(sheet, "dough")),
    whole: ordered.map((sheet) =>
      sheet.number("dough_in_all") === null ? cell(sheet, "dough") : cell(sheet, "dough_in_all"),
    ),
    levain: ordered.map(levainIn),
    limit: ordered.map((sheet) => cell(sheet, "mixer_limit")),
    least: ordered.map((sheet) => cell(sheet, "mixer_least")),
    mixed_at: ordered.map(mixedAt),
    products: `ARRAYFORMULA({${products.join(";")}})`,
    names: stacked(stacks.flatMap(({ names }) => names)),
    weights: stacked(stacks.flatMap(({ weights }) => weights)),
  };
}

/** Levain that a sheet builds itself, and rows whose kind is levain: both come out of the day's one build. */
function levainIn(sheet: Overview): string {
  const built = sheet.zone("levain") === undefined ? [] : [cell(sheet, "pre_weight")];
  const hasRows = sheet.parts.some(({ kind }) => /^levain/i.test(kind));
  const rows = hasRows ? [`SUMIF(${cell(sheet, "kind")};"levain*";${cell(sheet, "grams")})`] : [];
  const parts = [...built, ...rows];
  if (parts.length < 2) return parts[0] ?? '""';
  return `IF(COUNT(${parts.join(";")})<2;"";${parts.join("+")})`;
}

/** When it is mixed, in days from the midnight before it is ready: the start of the step its preferment is for. */
function mixedAt(sheet: Overview): string {
  const [step, start, day] = ["step", "step_start", "step_day"].map((name) => sheet.reference(name));
  if (step === undefined || start === undefined || day === undefined) return '""';
  const place = `MATCH(${sheet.reference("pre_step") ?? text("Mix")};${step};0)`;
  return `IFERROR(INDEX(${day};${place};1)+INDEX(${start};${place};1);"")`;
}

/** Ranges below each other in one column; a blank cell would come over as 0. */
const stacked = (ranges: readonly string[]): string =>
  `ARRAYFORMULA({${ranges.map((range) => `IF(LEN(${range})=0;"";${range})`).join(";")}})`;

/** Every ingredient once, to type its stock beside. */
function namesOf(sheets: readonly Overview[]): string[] {
  const known = new Map<string, string>();
  for (const { name } of sheets.flatMap(({ parts }) => parts)) if (name !== "") known.set(name.toLowerCase(), name);
  return [...known.values()].sort();
}

/** How the first levain among the products is kept; each sheet keeps back the seed for its own. */
function levainOf(ordered: readonly Overview[]): Record<string, Value> {
  const built = ordered.filter((one) => one.zone("levain") !== undefined && one.number("levain") !== null);
  const levainAmounts = built.flatMap((sheet) => sheet.number("keep") ?? []);
  const [sheet] = built;
  return {
    levain_keep: levainAmounts.length === 0 ? null : levainAmounts.reduce((sum, one) => sum + one, 0),
    levain_hydration: sheet?.number("pre_hydration") ?? null,
    seed_hydration: sheet?.number("seed_hydration") ?? null,
    seed_share: sheet?.number("seed_share") ?? null,
    levain_hours: sheet?.number("pre_hours") ?? null,
  };
}

/** A date such as 2026-01-31 as the day number a sheet counts in; null where it is none. */
function readDay(raw: unknown): number | null {
  if (typeof raw !== "string" || !/^\d{4}-\d\d-\d\d$/.test(raw)) return null;
  const time = Date.parse(`${raw}T00:00:00Z`);
  return Number.isNaN(time) ? null : Math.round((time - DAY_0) / DAY);
}

const [DAY_0, DAY] = [Date.UTC(1899, 11, 30), 86_400_000];
const isoOf = (serial: number): string => new Date(DAY_0 + serial * DAY).toISOString().slice(0, 10);
