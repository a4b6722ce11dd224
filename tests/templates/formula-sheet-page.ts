// Reads a formula sheet as a person does, by what stands on its page, and holds it against the independent sum.
import type { Options } from "../../shared/sheet/model.ts";
import type { Book, Sheet } from "../../src/workbook/scripted.ts";
import { type Cell, type Page, type Row, sumOf } from "./formula-sheet-sum.ts";

export type Units = Pick<Options, "weight" | "temperature" | "length">;
export const METRIC: Units = { weight: "g", temperature: "C", length: "cm" };
export const US: Units = { weight: "oz", temperature: "F", length: "in" };

/** A sheet under test, and what was chosen when it was built. */
export type Tried = {
  readonly book: Book;
  readonly sheet: Sheet;
  readonly units: Units;
  readonly prices?: ReadonlyMap<string, number>;
  /** What it can be scaled to; without them, as a loaf in a tin. */
  readonly ways?: readonly string[];
};
const LOAF_WAYS = ["pieces", "tins", "dough", "flour"];

const LETTERS = /[A-Z]+/;

/** What a cell holds, dates and times as the numbers that they are. */
export function cellAt({ book, sheet }: Pick<Tried, "book" | "sheet">, a1: string): Cell {
  const [, letters = "A", digits = "1"] = /^([A-Z]+)(\d+)$/.exec(a1) ?? [];
  const col = [...letters].reduce((all, letter) => all * 26 + letter.charCodeAt(0) - 64, 0) - 1;
  const at = { sheetId: book.sheetId(sheet.sheet), col, row: Number(digits) - 1 };
  const { type, value } = book.engine.evaluated(at);
  if (type === "empty") return "";
  return type === "error" ? { error: String(value) } : (value as Cell);
}

const TYPED = {
  sizes: ["size_name", "size_pieces", "size_weight", "size_loss", "size_diameter", "size_price"],
  ingredients: ["ingredient", "kind", "percent", "price_typed"],
  steps: ["step", "step_minutes"],
} as const;
/** Columns that only show. */
export const SHOWN = {
  sizes: ["area_shown", "scaled_shown", "dough_shown", "now_shown", "cost_each", "margin_shown", "wanted_shown"],
  ingredients: ["weight", "grams", "per_mix", "pre_shown", "final_shown", "of_whole", "price_shown", "cost_shown"],
  steps: ["start_shown", "day_shown"],
} as const;
export const SINGLES = [
  "water_temp_shown water_final_shown ice_shown tap_water_shown held_all held_shown capacity_shown tin_dough_shown",
  "levain_shown feed_seed_shown feed_flour_shown feed_water_shown eggs_shown trays_shown tray_last_shown layers_shown",
  "roll_in_shown roll_in_of_flour_shown base_dough_shown block_dough_shown block_fat_shown roll_cost_shown",
  "pre_mix_shown pre_start pre_day loads_shown oven_minutes_shown cost_all_shown contribution_shown as_price_shown",
].flatMap((names) => names.split(" "));
const INPUTS = [
  "by amount held_share dough_target flour_temp room_temp preferment_temp tap_temp minutes friction_own tin_shape",
  "tin_size_1 tin_size_2 tin_size_3 tin_size_4 tin_size_5 tin_fill tin_own pre_share pre_hydration pre_yeast",
  "pre_from pre_hours pre_step ready oven_step oven_takes oven_reload mixer_limit mixer_least step_coarse step_fine",
  "per_area known_weight known_diameter seed_hydration seed_share seed_weight keep egg_weight effective_wanted",
  "roll_in_name roll_in_share roll_in_of roll_price_typed blocks fold_1 fold_2 fold_3 tray_pieces",
  "handling_loss margin_wanted tax packaging broken unsold reduced_sales labour_mix labour_pieces labour_rate",
  "overhead_labour overhead_oven other_costs boil_off left_over",
].flatMap((names) => names.split(" "));
export const TYPED_SINGLES: readonly string[] = INPUTS;
export const TYPED_COLUMNS: readonly string[] = Object.values(TYPED).flat();

type Table = keyof typeof TYPED;
type Rows = Readonly<Record<Table, { readonly first: number; readonly last: number }>>;

const rowOf = (sheet: Sheet, name: string): number | undefined =>
  sheet.names().includes(name) ? sheet.rowOf(name) : undefined;

/** First and last row of each table for a person: from below its headings to what follows, wherever its formulas stand. */
function rowsOf(sheet: Sheet): Rows | undefined {
  const [sizes, formula, held, steps] = [
    "sizes_table",
    "formula_table",
    sheet.names().includes("held_share") ? "held_share" : "egg_weight",
    "steps_table",
  ].map((name) => rowOf(sheet, name));
  const setup = rowOf(sheet, "mixer_limit");
  if (sizes === undefined || formula === undefined || held === undefined || setup === undefined) return undefined;
  return {
    sizes: { first: sizes + 1, last: formula - 1 },
    ingredients: { first: formula + 1, last: held - 1 },
    steps: steps === undefined ? { first: 1, last: 0 } : { first: steps + 1, last: setup - 2 },
  };
}

function tableOf(tried: Tried, table: Table, rows: Rows, except: number): Row[] {
  const { sheet } = tried;
  const names = new Set(sheet.names());
  const columns = TYPED[table].filter((name) => names.has(name)).map((name) => [name, sheet.at(name, 0)] as const);
  const { first, last } = rows[table];
  const found: Row[] = [];
  for (let row = first; row <= last; row++) {
    if (row === except) continue;
    const cells = Object.fromEntries(
      columns.map(([name, at]) => [name, cellAt(tried, `${LETTERS.exec(at)?.[0]}${row}`)]),
    );
    found.push({ row, cells });
  }
  return found;
}

/** The page, or what keeps a person from reading it. */
export function pageOf(tried: Tried): Page | string {
  const { sheet, units } = tried;
  const rows = rowsOf(sheet);
  const names = new Set(sheet.names());
  const totalRow = rowOf(sheet, "total_label");
  const isRound = names.has("per_area");
  const missing = [
    "size_pieces",
    ...(isRound ? ["size_diameter"] : ["size_weight", "size_loss"]),
    "ingredient",
    "kind",
    "percent",
  ].filter((name) => !names.has(name));
  if (rows === undefined || totalRow === undefined || missing.length > 0)
    return `no ${missing.join(", ") || "rows of a table"}`;
  return {
    isOunces: units.weight === "oz",
    isFahrenheit: units.temperature === "F",
    isInches: units.length === "in",
    isStaged: names.has("pre_share"),
    ways: tried.ways ?? LOAF_WAYS,
    isRound,
    isRolled: names.has("roll_in_share"),
    isSeeded: names.has("levain_shown"),
    ...(tried.prices ? { prices: tried.prices } : {}),
    inputs: Object.fromEntries(
      INPUTS.filter((name) => names.has(name)).map((name) => [name, cellAt(tried, sheet.at(name))]),
    ),
    sizes: tableOf(tried, "sizes", rows, 0),
    ingredients: tableOf(tried, "ingredients", rows, totalRow),
    totalRow,
    steps: tableOf(tried, "steps", rows, 0),
  };
}

/** All figures on the page, by name or "column@row". */
export function shownFigures(tried: Tried): Map<string, Cell> {
  const { sheet } = tried;
  const names = new Set(sheet.names());
  const rows = rowsOf(sheet);
  const shown = new Map<string, Cell>();
  for (const table of ["sizes", "ingredients", "steps"] as const) {
    for (const column of SHOWN[table].filter((name) => names.has(name))) {
      const letters = LETTERS.exec(sheet.at(column, 0))?.[0];
      for (let row = rows?.[table].first ?? 1; row <= (rows?.[table].last ?? 0); row++)
        shown.set(`${column}@${row}`, cellAt(tried, `${letters}${row}`));
    }
  }
  for (const name of SINGLES.filter((one) => names.has(one))) shown.set(name, cellAt(tried, sheet.at(name)));
  for (const [name, value] of fromResult(wordsOf(tried, "result"))) shown.set(name, value);
  const total = /^Total, ([\d.]+) %$/.exec(wordsOf(tried, "total_label"))?.[1];
  if (total !== undefined) shown.set("total %", Number(total));
  return shown;
}

const contentOf = (tried: Tried, name: string): Cell => {
  const { sheet } = tried;
  return sheet.names().includes(name) ? cellAt(tried, sheet.at(name)) : "";
};

/** A sentence with decimals as they stand in it: some sheets have a comma there. */
const wordsOf = (tried: Tried, name: string): string => String(contentOf(tried, name)).replace(/(\d),(\d)/g, "$1.$2");

const WEIGHT = "([\\d.]+) (kg|g|lb|oz)";
const WORDS: readonly (readonly [string, RegExp])[] = [
  ["result: pieces", /^([\d.]+) pieces? ·/],
  ["result: tins", /^([\d.]+) tins ·/],
  ["result: trays", /^([\d.]+) trays ·/],
  ["result: dough", new RegExp(`${WEIGHT} (?:dough|batter)`)],
  ["result: mixes", /([\d.]+) mixes of/],
  ["result: mix", new RegExp(`mixes of ${WEIGHT}`)],
  ["result: left", new RegExp(`${WEIGHT} left over`)],
  ["result: hydration", /(?:hydration|plain water) (-?[\d.]+) %/],
  ["result: water at", /water at (-?[\d.]+) °/],
  ["result: water", new RegExp(`°[CF], ${WEIGHT} a mix`)],
];
const IN_UNIT: Readonly<Record<string, number>> = { kg: 1000, g: 1, lb: 16, oz: 1 };
function fromResult(result: string): [string, number][] {
  return WORDS.flatMap(([name, pattern]): [string, number][] => {
    const [, number, unit] = pattern.exec(result) ?? [];
    return number === undefined ? [] : [[name, Number(number) * (IN_UNIT[unit ?? ""] ?? 1)]];
  });
}
/** Weights in words have two decimals of the larger unit. */
const WORDS_WITHIN: Readonly<Record<string, number>> = { g: 5, oz: 0.08 };

export type Verdict = {
  /** What the check line says. */
  readonly check: string;
  readonly figures: number;
  /** Wrong beside a blank check line. */
  readonly wrong: readonly string[];
  /** Not shown, though the sum has it. */
  readonly blank: readonly string[];
  /** Shown and wrong, whatever the check line says. */
  readonly off: readonly string[];
};

/** Holds what is shown against the sum of what is typed. */
export function verdict(tried: Tried): Verdict {
  const checked = contentOf(tried, "check");
  // With its column the line itself is gone, and all that stands beside it.
  const isThere = tried.sheet.names().includes("check");
  const check = !isThere ? "gone" : typeof checked === "object" ? checked.error : String(checked).trim();
  const page = pageOf(tried);
  const shown = shownFigures(tried);
  if (typeof page === "string")
    return { check, figures: shown.size, wrong: check === "" ? [page] : [], blank: [], off: [] };
  const { faults, figures } = sumOf(page);
  const off: string[] = [];
  for (const [name, value] of shown) {
    if (value === "") continue;
    const figure = figures.get(name);
    const words = name.startsWith("result:") ? (WORDS_WITHIN[tried.units.weight] ?? 0) : 0;
    const isRight =
      typeof value === "number" && figure !== undefined && Math.abs(value - figure.is) <= figure.within + words;
    if (!isRight) off.push(`${name} shows ${JSON.stringify(value)} for ${figure?.is ?? "nothing"}`);
  }
  const blank = [...figures.keys()].filter((name) => (shown.get(name) ?? "") === "" && !name.startsWith("result"));
  const wrong = check === "" ? [...faults.map((one) => `not named: ${one}`), ...off] : [];
  return { check, figures: shown.size, wrong, blank, off };
}
