// A small shop, everything that can be built in it, and what stands in its workbook.
import type { WorkbookData } from "../../src/workbook/engine/library.ts";
import { openWorkbook, type WorkbookHost } from "../../src/workbook/host.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { panLoaf } from "../../templates/pan-loaf.ts";
import { METRIC_UNITS } from "../kit/units.ts";
import { buildSheet, files, HANDOUT } from "../templates/sheet-support.ts";

export const OPTIONS = { ...METRIC_UNITS, parts: [] } as const;
export const LIST = "Formula list";

export const build = (template: string, values: object = {}, parts: readonly string[] = []) => ({
  ask: "build",
  template,
  options: { ...OPTIONS, parts },
  values,
});
const larder = build("larder", { ingredient: ["Flour", "Salt"], price: [20, 3], pack: ["25 kg", "1 kg"] });

/** A shop with formula sheets alone, with the list of them, or with the list and a production of two days. */
type Kind = "plain" | "listed" | "planned";
export const PRODUCTION = "Production 31 Jan to 1 Feb";

/**
 * Ingredients and formulas, and where wanted the list of them and a production. One formula counts in ounces, shows no cost and was renamed:
 * no sheet over all formulas reads it, and its tab is not called as its title.
 */
async function shop(kind: Kind): Promise<WorkbookData> {
  const book = openWorkbook(await files());
  await buildSheet({ ...HANDOUT, title: "Ounces" }, { book, options: { ...OPTIONS, weight: "oz" } });
  book.renameSheet("Ounces", "Renamed");
  book.answer(larder);
  for (const title of ["Loaf 1", "Loaf 2"]) await buildSheet({ ...HANDOUT, title }, { book, options: OPTIONS });
  if (kind !== "plain") book.answer({ ask: "list" });
  if (kind === "planned") {
    const { title } = panLoaf.sample as { title: string };
    book.answer(build("pan-loaf", panLoaf.sample, ["steps"]));
    const days = ["2026-01-31", "2026-02-01"];
    const orders = days.flatMap((day) => [
      { sheet: "Loaf 1", pieces: 40, day, customer: "Café" },
      { sheet: title, size: "large", pieces: 24, day, customer: "Market" },
    ]);
    const { sheet } = book.answer({ ask: "day", day: days[0], days, orders }) as { sheet: string };
    if (sheet !== PRODUCTION) throw new Error(`The production is called ${sheet}`);
  }
  return book.engine.data();
}

const shops = new Map<Kind, Promise<WorkbookData>>();

/** A copy of the shop for a test to change. */
export async function openShop(kind: Kind = "plain"): Promise<WorkbookHost> {
  const data = shops.get(kind) ?? shop(kind);
  shops.set(kind, data);
  return openWorkbook({ ...(await files()), data: await data });
}

export type Question = { readonly what: string; readonly asked: object; readonly kind?: Kind };

/** Every template, price, day, list and card, and the sheets around them. */
export const QUESTIONS: readonly Question[] = [
  ...TEMPLATES.map(({ name, parts, sample }) => ({ what: name, asked: build(name, sample, parts) })),
  { what: "a formula sheet with its row in the list", asked: build("pan-loaf", HANDOUT), kind: "listed" },
  { what: "prices by the list", asked: build("prices", {}, ["products"]), kind: "listed" },
  { what: "a day", asked: { ask: "day", day: "2026-01-31", orders: [{ sheet: "Loaf 1", pieces: 10 }] } },
  { what: "a list", asked: { ask: "list" } },
  { what: "a new list in the place of an older one", asked: { ask: "list" }, kind: "listed" },
  { what: "a second larder", asked: larder },
  { what: "a finished product", asked: build("finished-product"), kind: "listed" },
  { what: "an allergen table", asked: build("allergen-table"), kind: "listed" },
  { what: "label texts", asked: build("label-text"), kind: "listed" },
  { what: "regular orders", asked: build("regular-orders") },
  { what: "what a shift weighs", asked: { ask: "weighUp", sheet: PRODUCTION }, kind: "planned" },
  { what: "a timetable", asked: { ask: "timetable", sheet: PRODUCTION }, kind: "planned" },
  { what: "what to order", asked: { ask: "purchases", sheet: PRODUCTION }, kind: "planned" },
  { what: "delivery notes", asked: { ask: "customers", sheet: PRODUCTION }, kind: "planned" },
  { what: "a mix log", asked: build("mix-log") },
  { what: "a bake-off log", asked: build("bake-off-log") },
  {
    what: "a card of values",
    asked: { ask: "card", sheet: "Loaf 1", kind: "values", by: "pieces", amount: 48, ingredient: "" },
  },
  {
    what: "a card that recalculates",
    asked: { ask: "card", sheet: "Loaf 1", kind: "living", by: "pieces", amount: 48, ingredient: "" },
  },
];

export type State = { readonly sheets: ReadonlyMap<string, string>; readonly names: string };

type Cell = { readonly id: string; readonly isFormula: boolean; readonly content?: string };
type Name = { readonly name: string; readonly range: { readonly sheetId: string; readonly zone: object } };

/** What was typed and written into the cells of every sheet, and the names of ranges. */
export function stateOf(book: WorkbookHost): State {
  const { engine } = book;
  const textsOf = (sheetId: string) => {
    const cells = Object.values(engine.get<Record<string, Cell>>("getCells", sheetId));
    const texts = cells.flatMap(({ id, isFormula, content }) => {
      const { col, row } = engine.get<{ col: number; row: number }>("getCellPosition", id);
      const text = isFormula ? engine.formula({ sheetId, col, row }) : content;
      return text ? [[engine.library.helpers.toXC(col, row), text] as const] : [];
    });
    return JSON.stringify(Object.fromEntries(texts.sort(([one], [other]) => (one < other ? -1 : 1))));
  };
  const names = engine.get<readonly Name[]>("getNamedRanges");
  return {
    sheets: new Map(book.sheetNames().map((name) => [name, textsOf(book.sheetId(name))])),
    names: JSON.stringify(names.map(({ name, range: { sheetId, zone } }) => [name, sheetId, zone])),
  };
}

export const addedTo = (before: State, after: State): string[] =>
  [...after.sheets.keys()].filter((name) => !before.sheets.has(name));
