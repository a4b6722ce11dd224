// The sheet of what to order for a production.
import { refuse } from "../../../shared/base/refusal.ts";
import { LARDER_NAME, type Links } from "../../../shared/sheet/model.ts";
import { plan } from "../../../shared/sheet/plan.ts";
import { linkName } from "../../../templates/production/shape.ts";
import { toOrderSheet } from "../../../templates/production/to-order.ts";
import { type FormulaSheets, overAllSheets } from "../all-sheets.ts";
import type { Overview } from "../overview.ts";
import { type Made, make, type Steps } from "../steps.ts";
import { levainsOf, mixedLink, type TakenLevain, text } from "./formula.ts";
import { type LevainNow, type ProductionNow, readProduction } from "./read.ts";

const SPARE_ROWS = 20;

export function* buildToOrder({ sheet }: Readonly<Record<string, unknown>>): Steps<Made> {
  const production = yield* readProduction(typeof sheet === "string" ? sheet : "");
  return yield* overAllSheets({ cells: [LARDER_NAME] }, (found) => over(found, production));
}

function* over(found: FormulaSheets, production: ProductionNow): Steps<Made> {
  const { sheets, tabs, names: known } = found;
  const doughs = production.doughs.map(({ name }) => {
    const sheet = sheets.find((one) => one.name === name);
    return sheet ?? refuse(`There is no formula sheet “${name}” any more. Build the production again.`);
  });
  const taken = doughs.map((sheet) => levainsOf(sheet, sheets));
  const chained = new Set(production.levains.map(({ levain }) => levain.name));
  const nested = reachable(doughs, sheets, taken, chained);
  const feeds = production.levains;
  const raw = rawNames(nested, taken, doughs, sheets, feeds);
  const suppliers = supplierBy(known.get(LARDER_NAME)?.values ?? []);
  const sorted = [...raw].sort((a, b) => rank(suppliers, a) - rank(suppliers, b) || (a < b ? -1 : 1));
  const stacks = nested.map((sheet) => stackOf(sheet, taken[doughs.indexOf(sheet)] ?? [], chained));
  const shape = {
    ingredients: sorted,
    suppliers: [...new Set(suppliers.values())].filter((one) => one !== "").sort(),
    doughs: doughs.length,
    feeds: feeds.length,
    stacked: stacks.reduce((sum, { rows }) => sum + rows, 0) + 2 * feeds.length + SPARE_ROWS,
  };
  const parts = known.has(LARDER_NAME) ? ["larder"] : [];
  const links = linksOf(production, doughs, taken, chained, stacks, waterOf(doughs));
  const options = { weight: production.unit, temperature: "C", length: "cm", parts } as const;
  const title = `To order ${production.title.replace(/^Production /, "")}`;
  return yield* make(
    plan(
      toOrderSheet(shape),
      options,
      { title, ...numbered("ingredient", shape.ingredients), ...numbered("supplier_name", shape.suppliers) },
      links,
    ),
    title,
    [...tabs, production.tab],
  );
}

/** Values of cells that are counted from 1. */
const numbered = (name: string, values: readonly string[]): Record<string, string> =>
  Object.fromEntries(values.map((value, at) => [`${name}_${at + 1}`, value]));

const plainName = (name: string): string => name.trim().toLowerCase();

/** The doughs' sheets and those of their ingredients, to any depth. */
function reachable(
  doughs: readonly Overview[],
  all: readonly Overview[],
  taken: readonly (readonly TakenLevain[])[],
  chained: ReadonlySet<string>,
): Overview[] {
  const seen: Overview[] = [...doughs];
  for (let at = 0; at < seen.length; at++) {
    const sheet = seen[at] as Overview;
    const fed = (taken[doughs.indexOf(sheet)] ?? [])
      .filter(({ from }) => chained.has(from))
      .map(({ row }) => plainName(row));
    for (const { name } of partsOf(sheet)) {
      if (fed.includes(plainName(name))) continue;
      const own = all.find((one) => plainName(one.name) === plainName(name));
      if (own !== undefined && !seen.includes(own)) seen.push(own);
    }
  }
  return seen;
}

/** Its ingredients, and what is rolled into its dough. */
function partsOf(sheet: Overview): { name: string }[] {
  const fat = sheet.text("roll_in_name");
  return [...sheet.parts, ...(fat !== "" && sheet.number("roll_in") !== null ? [{ name: fat }] : [])];
}

/** What is bought: names that have no formula sheet among these, each once. */
function rawNames(
  nested: readonly Overview[],
  taken: readonly (readonly TakenLevain[])[],
  doughs: readonly Overview[],
  all: readonly Overview[],
  feeds: readonly LevainNow[],
): Set<string> {
  const names = new Map<string, string>();
  const add = (name: string) => {
    if (name !== "" && !names.has(plainName(name))) names.set(plainName(name), name);
  };
  for (const sheet of nested) {
    const fed = (taken[doughs.indexOf(sheet)] ?? []).map(({ row }) => plainName(row));
    for (const { name } of partsOf(sheet))
      if (!fed.includes(plainName(name)) && !all.some((one) => plainName(one.name) === plainName(name))) add(name);
  }
  for (const { flour } of feeds) add(flour);
  return new Set(names.values());
}

const NO_SUPPLIER = 1e6;
const rank = (suppliers: ReadonlyMap<string, string>, name: string): number => {
  const supplier = suppliers.get(plainName(name)) ?? "";
  return supplier === "" ? NO_SUPPLIER : [...new Set(suppliers.values())].sort().indexOf(supplier);
};

/** Suppliers by the names of what they bring, also called ones with them. */
function supplierBy(rows: readonly (readonly unknown[])[]): Map<string, string> {
  const [heads = [], ...others] = rows;
  const place = (head: string) => heads.findIndex((one) => String(one).trim().toLowerCase() === head);
  const [name, also, supplier] = [place("ingredient"), place("also called"), place("supplier")];
  if (supplier < 0) return new Map();
  return new Map(
    others.flatMap((row) => {
      const called = [row[name], ...String(row[also] ?? "").split(";")].map((one) => plainName(String(one ?? "")));
      const from = String(row[supplier] ?? "").trim();
      return called.flatMap((one): [string, string][] => (one === "" || from === "" ? [] : [[one, from]]));
    }),
  );
}

type Stack = { readonly products: string; readonly names: string; readonly weights: string; readonly rows: number };
const cell = (sheet: Overview, name: string): string => sheet.reference(name) ?? '""';

/** A formula's ingredients without what comes out of a chain of feeds. */
function stackOf(sheet: Overview, taken: readonly TakenLevain[], chained: ReadonlySet<string>): Stack {
  const [names, weights] = [cell(sheet, "ingredient"), cell(sheet, "grams")];
  const fed = taken.filter(({ from }) => chained.has(from));
  const isBuilt = fed.some((one) => one.isBuilt);
  const left = isBuilt ? `${weights}*(1-${cell(sheet, "pre_part")})` : weights;
  const rows = fed.filter((one) => !one.isBuilt).map(({ row }) => `(LOWER(${names})=${text(plainName(row))})`);
  const kept = rows.length === 0 ? left : `IF(1*${rows.join("+")}>0;0;${left})`;
  const fat = sheet.text("roll_in_name") !== "" && sheet.number("roll_in") !== null;
  return {
    products: `IF(ROW(${names})=MIN(ROW(${names}));${text(sheet.name)};"")${fat ? ';""' : ""}`,
    names: `IF(LEN(${names})=0;"";${names})${fat ? `;${cell(sheet, "roll_in_name")}` : ""}`,
    weights: `IF(LEN(${weights})=0;"";${kept})${fat ? `;${cell(sheet, "roll_in")}` : ""}`,
    rows: (sheet.zone("ingredient")?.rows ?? 0) + (fat ? 1 : 0),
  };
}

/** What the doughs call their water. */
const waterOf = (doughs: readonly Overview[]): string =>
  doughs.flatMap(({ parts }) => parts).find(({ kind }) => /^water/i.test(kind))?.name || "Water";

function linksOf(
  { days, dayRow, doughs: now, levains }: ProductionNow,
  doughs: readonly Overview[],
  taken: readonly (readonly TakenLevain[])[],
  chained: ReadonlySet<string>,
  stacks: readonly Stack[],
  water: string,
): Links {
  const links: Record<string, string> = { days: dayRow, first_day: String(days[0] ?? 0) };
  doughs.forEach((sheet, at) => {
    const parts = (taken[at] ?? []).filter(({ from }) => chained.has(from)).map(({ link }) => link);
    links[linkName("wanted", at)] = text(sheet.name);
    links[linkName("whole", at)] = now[at]?.wholeRow ?? "0";
    links[linkName("chained", at)] = parts.length === 0 ? "0" : `(${parts.join("+")})*${mixedLink(sheet)}`;
  });
  const feedName = (name: string) => text(`${name}: feeds`);
  levains.forEach(({ levain, flourAt, waterAt }, at) => {
    links[linkName("wanted", doughs.length + at)] = feedName(levain.name);
    links[linkName("fed", at)] = `${flourAt}+${waterAt}`;
  });
  const joined = (parts: readonly string[]) => `ARRAYFORMULA({${parts.join(";")}})`;
  links.products = joined([
    ...stacks.map(({ products }) => products),
    ...levains.map(({ levain }) => `${feedName(levain.name)};""`),
  ]);
  links.names = joined([
    ...stacks.map(({ names }) => names),
    ...levains.map(({ flour }) => `${text(flour)};${text(water)}`),
  ]);
  links.weights = joined([
    ...stacks.map(({ weights }) => weights),
    ...levains.map(({ flourAt, waterAt }) => `${flourAt};${waterAt}`),
  ]);
  return links;
}
