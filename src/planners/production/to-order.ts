// The sheet of what to order for a production.

import type { NewSheet } from "../../../shared/protocol/plan-message.ts";
import type { Links } from "../../../shared/sheet/model.ts";
import { plan } from "../../../shared/sheet/plan.ts";
import { LARDER_NAME, SETTINGS_NAME } from "../../../shared/sheet/workbook-names.ts";
import { linkName, plainText } from "../../../templates/production/shape.ts";
import { toOrderSheet } from "../../../templates/production/to-order.ts";
import { type FormulaSheets, overAllSheets } from "../all-sheets.ts";
import type { Overview } from "../overview.ts";
import { moneyIn } from "../settings.ts";
import { make, type Steps } from "../steps.ts";
import { levainsOf, mixedLink, text } from "./formula.ts";
import { mustPlan, sheetOf } from "./night.ts";
import { doughsFor, isFinished, type OwnPart } from "./parts.ts";
import type { ProductionNow } from "./production-now.ts";
import { readProduction } from "./read.ts";
import { BUILT, cell, plainName, rank, type Stack, stackOf, supplierBy, type Wanted } from "./suppliers.ts";
import { nameOf } from "./tab-names.ts";

const SPARE_ROWS = 20;

export function* buildToOrder({ sheet }: Readonly<Record<string, unknown>>): Steps<NewSheet> {
  const production = yield* readProduction(typeof sheet === "string" ? sheet : "");
  return yield* overAllSheets({ cells: [LARDER_NAME, SETTINGS_NAME] }, (all) => over(all, production));
}

function* over(all: FormulaSheets, production: ProductionNow): Steps<NewSheet> {
  const { sheets, tabs, names: known } = all;
  const { doughs, finished, parts } = plannedSheets(all, production);
  const chained = new Set(production.levains.map(({ levain }) => levain.name));
  const wanted = [
    ...doughs.map(
      (sheet, at): Wanted => wantedDough(sheet, production.doughs[at]?.wholeRow ?? "0", parts, sheets, chained),
    ),
    ...finished.map((sheet): Wanted => wantedProduct(sheet, production, parts)),
  ].filter(({ sheet, made }) => boughtNames(sheet, made).length > 0);
  const feeds = production.levains;
  const suppliers = supplierBy(known.get(LARDER_NAME)?.values ?? []);
  const bySupplier = (names: readonly string[]) =>
    unique(names).sort((a, b) => rank(suppliers, a) - rank(suppliers, b) || (a < b ? -1 : 1));
  const weighed = bySupplier([
    ...wanted.flatMap(({ sheet, made }) => boughtNames(sheet, made)),
    ...feeds.map(({ flour }) => flour),
  ]);
  const counted = bySupplier(finished.flatMap((sheet) => sheet.column("count_name")));
  const stacks = wanted.map(stackOf);
  const shape = {
    ingredients: [...weighed, ...counted],
    counted: counted.length,
    suppliers: [...new Set(suppliers.values())].filter((one) => one !== "").sort(),
    products: wanted.length,
    feeds: feeds.length,
    stacked: stacks.reduce((sum, { rows }) => sum + rows, 0) + 2 * feeds.length + SPARE_ROWS,
  };
  const links = {
    ...linksOf(production, wanted, stacks, waterOf(doughs)),
    ...countLinks(production, finished, counted, weighed.length),
  };
  const options = {
    weight: production.unit,
    temperature: "C",
    length: "cm",
    parts: known.has(LARDER_NAME) ? ["larder"] : [],
    ...moneyIn(known.get(SETTINGS_NAME)?.values ?? []),
  } as const;
  const title = nameOf("To order", production);
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

/** Doughs in the order of the production sheet, and products that are put together from parts. */
function plannedSheets(all: FormulaSheets, production: ProductionNow) {
  const doughs = production.doughs.map(({ name }) => sheetOf(all, name));
  const products = production.items.map(({ product }) => sheetOf(all, product));
  const { doughs: needed, parts } = doughsFor(products, all.sheets);
  mustPlan(production, needed, parts, all.sheets);
  return { doughs, finished: [...new Set(products.filter(isFinished))], parts };
}

/** Without what comes out of a chain of feeds, and without what is mixed for it by a formula of its own. */
function wantedDough(
  sheet: Overview,
  row: string,
  parts: readonly OwnPart[],
  all: readonly Overview[],
  chained: ReadonlySet<string>,
): Wanted {
  const fed = levainsOf(sheet, all).filter(({ from }) => chained.has(from));
  const products = parts.filter(({ taker }) => taker === sheet);
  const ofMixed = [
    ...fed.map(({ link }) => link),
    ...products.filter(({ isRolledIn }) => !isRolledIn).map(({ weighedLink }) => weighedLink),
  ];
  const ofWhole = [
    ...(ofMixed.length === 0 ? [] : [`(${ofMixed.join("+")})*${mixedLink(sheet)}`]),
    ...products.filter(({ isRolledIn }) => isRolledIn).map(({ weighedLink }) => weighedLink),
  ];
  const built = fed.some(({ isBuilt }) => isBuilt) ? [BUILT] : [];
  return {
    sheet,
    row,
    bought: `(1${ofWhole.map((part) => `-${part}`).join("")})`,
    made: [...built, ...fed.map((one) => one.row), ...products.map((one) => one.row)].filter((one) => one !== ""),
  };
}

/** What is bought of the parts that a piece takes. */
function wantedProduct(sheet: Overview, production: ProductionNow, parts: readonly OwnPart[]): Wanted {
  const partsOfIt = parts.filter(({ taker }) => taker === sheet);
  const rows = production.items.filter(({ product }) => product === sheet.name).map(({ madeRow }) => madeRow);
  const [pieces, weights] = [cell(sheet, "pieces"), cell(sheet, "grams")];
  return {
    sheet,
    row: rows.length === 1 ? (rows[0] ?? "0") : `(${rows.join("+")})`,
    bought: `(IF(N(${pieces})>0;SUM(${weights})/${pieces};0)${partsOfIt.map(({ weighedLink }) => `-${weighedLink}`).join("")})`,
    made: partsOfIt.map((one) => one.row),
  };
}

/** Counted parts of products, such as bags: how many of a name, for what is made on the days. */
function countLinks(
  { items }: ProductionNow,
  finished: readonly Overview[],
  counted: readonly string[],
  before: number,
): Links {
  return Object.fromEntries(
    counted.map((name, at) => {
      const parts = finished.flatMap((sheet) => {
        if (!sheet.column("count_name").some((one) => plainName(one) === plainName(name))) return [];
        const each = `SUMPRODUCT((${plainText(cell(sheet, "count_name"))}=${text(plainName(name))})*1;${cell(sheet, "gross")})`;
        return items.flatMap(({ product, madeRow }) => (product === sheet.name ? [`${madeRow}*${each}`] : []));
      });
      return [linkName("count", before + at), parts.join("+")];
    }),
  );
}

const unique = (names: readonly string[]): string[] => {
  const byName = new Map<string, string>();
  for (const name of names) if (name !== "" && !byName.has(plainName(name))) byName.set(plainName(name), name);
  return [...byName.values()];
};

/** Values of cells that are counted from 1. */
const numbered = (name: string, values: readonly string[]): Record<string, string> =>
  Object.fromEntries(values.map((value, at) => [`${name}_${at + 1}`, value]));

/** Its ingredients, and what is rolled into its dough. */
function partsOf(sheet: Overview): { name: string }[] {
  const fat = sheet.text("roll_in_name");
  return [...sheet.parts, ...(fat !== "" && sheet.number("roll_in") !== null ? [{ name: fat }] : [])];
}

/** Its ingredients that are not made by themselves. */
function boughtNames(sheet: Overview, made: readonly string[]): string[] {
  const others = made.map(plainName);
  return partsOf(sheet).flatMap(({ name }) => (name === "" || others.includes(plainName(name)) ? [] : [name]));
}

/** What the doughs call their water. */
const waterOf = (doughs: readonly Overview[]): string =>
  doughs.flatMap(({ parts }) => parts).find(({ kind }) => /^water/i.test(kind))?.name || "Water";

function linksOf(
  { dayRow, levains }: ProductionNow,
  wanted: readonly Wanted[],
  stacks: readonly Stack[],
  water: string,
): Links {
  const links: Record<string, string> = { days: dayRow, first_day: `MIN(${dayRow})` };
  wanted.forEach(({ sheet, row, bought }, at) => {
    links[linkName("wanted", at)] = text(sheet.name);
    links[linkName("whole", at)] = row;
    links[linkName("bought", at)] = bought;
  });
  const feedName = (name: string) => text(`${name}: feeds`);
  levains.forEach(({ levain, flourAt, waterAt }, at) => {
    links[linkName("wanted", wanted.length + at)] = feedName(levain.name);
    links[linkName("fed", at)] = `${flourAt}+${waterAt}`;
  });
  const joinedArray = (parts: readonly string[]) => `ARRAYFORMULA({${parts.join(";")}})`;
  links.products = joinedArray([
    ...stacks.map(({ products }) => products),
    ...levains.map(({ levain }) => `${feedName(levain.name)};""`),
  ]);
  links.names = joinedArray([
    ...stacks.map(({ names }) => names),
    ...levains.map(({ flour }) => `${text(flour)};${text(water)}`),
  ]);
  links.weights = joinedArray([
    ...stacks.map(({ weights }) => weights),
    ...levains.map(({ flourAt, waterAt }) => `${flourAt};${waterAt}`),
  ]);
  return links;
}
