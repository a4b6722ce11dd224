import { type Zone, zoneA1 } from "./a1.ts";
import type { Options, Role, Table, Unit } from "./model.ts";

/** The look: one accent, pale grounds, and nothing that dies on a black-and-white printer. */
export type Appearance = {
  readonly ground: string;
  readonly ink: string;
  readonly weight: "bold" | "normal";
  readonly style: "italic" | "normal";
  readonly size: number;
  readonly border?: "box" | "under" | "rule" | "over";
};

export const ACCENT = "#1f5f5b";
const PAPER = "#ffffff";
const INK = "#22211f";
const SOFT_INK = "#55524c";

const plain: Appearance = { ground: PAPER, ink: INK, weight: "normal", style: "normal", size: 10 };

export const APPEARANCES: Readonly<Record<Role | "line" | "linked" | "head" | "edge" | "spilled", Appearance>> = {
  title: { ...plain, ink: ACCENT, weight: "bold", size: 16 },
  heading: { ...plain, ink: ACCENT, weight: "bold", size: 12, border: "under" },
  head: { ...plain, weight: "bold", size: 9, border: "under" },
  label: { ...plain, ink: SOFT_INK },
  input: { ...plain, ground: "#fbf5e6", border: "box" },
  /** A side line would keep a long text from running on. */
  line: { ...plain, ground: "#fbf5e6", border: "rule" },
  computed: plain,
  linked: plain,
  spilled: plain,
  remark: { ...plain, ink: SOFT_INK, style: "italic", size: 9 },
  caution: { ...plain, ink: INK, size: 9 },
  /** Lines of a card, ruled so that the eye finds the figure of its name. */
  ruled: { ...plain, border: "rule" },
  figure: { ...plain, weight: "bold", border: "rule" },
  edge: { ...plain, ground: "#f1f0ec", size: 8 },
  result: { ...plain, weight: "bold", size: 10 },
  check: { ...plain, ink: "#9a3412", size: 10 },
  strong: { ...plain, weight: "bold" },
  total: { ...plain, weight: "bold", border: "over" },
  helper: { ...plain, ink: SOFT_INK, size: 8 },
};

/** Decimals as a person reads weights: none from so many grams up, one from 10 g up, two below. */
const graded = (whole: number): string => `[>=${whole}]#,##0;[>=10]#,##0.0;#,##0.00`;

/** A weight that the coarse step moves by less than 2 % stands on it, so that one from 25 steps up has no more decimals than the step. */
function stepFormat({ weight }: Options, { coarse, decimals }: Steps): string {
  if (weight === "oz") return `#,##0.${"0".repeat(Math.max(2, decimals))}`;
  if (decimals === 0) return graded(100);
  return graded(Number.isInteger(coarse) && coarse > 0 ? 25 * coarse : 1000);
}

/** The scales: their coarse step, and the digits after the point that the finest needs. */
export type Steps = { readonly coarse: number; readonly decimals: number };

/** Number formats are always written the US way; the sheet shows them its own way. */
export function numberFormat(unit: Unit, options: Options, steps: Steps): string {
  const stepDecimals = steps.decimals;
  switch (unit) {
    case "text":
      return "@";
    case "weight": {
      const decimals = options.weight === "g" ? Math.max(1, stepDecimals) : Math.max(2, stepDecimals);
      return `#,##0.${"0".repeat(decimals)}`;
    }
    case "graded":
      return options.weight === "g" ? graded(100) : "#,##0.00";
    case "amount":
      // As it was typed: 14 trays are not 14.0.
      return "General";
    case "step":
      return stepFormat(options, steps);
    case "short rate":
      return "0.0#%";
    case "percent":
      return "0.0#%";
    case "share":
      return "0.00%";
    case "temperature":
    case "factor":
      return "0.0";
    case "length":
      return "0.0#";
    case "count":
    case "capacity":
      return "#,##0";
    case "minutes":
    case "day":
      return "0";
    case "fill":
      return "0.00";
    case "per area":
      return options.weight === "g" ? "0.000" : "0.0000";
    case "date":
      return "yyyy-mm-dd";
    case "time":
      return "hh:mm";
    case "money":
      return withDecimals(options.moneyDecimals ?? 2);
    case "unit_cost":
      return withDecimals((options.moneyDecimals ?? 2) + 2);
    case "rate":
      return "0.0%";
    case "figure":
      return "0.0";
    case "exact":
      return "#,##0";
    case "plain":
      return "General";
  }
}

const withDecimals = (many: number): string => (many === 0 ? "#,##0" : `#,##0.${"0".repeat(many)}`);

/** Finer than any step of a scale, 1/32 oz among them. */
const FINEST_DECIMALS = 5;

/** Of a figure that does not change: with the decimals it has, and three digits of one that stands on no step of a scale. */
export function exactFormat(value: number): string {
  const isOnStep = Math.abs(value - Number(value.toFixed(FINEST_DECIMALS))) <= 1e-9;
  const shown = isOnStep
    ? value
    : Number(value.toPrecision(Math.max(3, Math.trunc(Math.abs(value)).toString().length)));
  const [, decimals = ""] = shown
    .toFixed(6)
    .replace(/\.?0+$/, "")
    .split(".");
  return decimals === "" ? "#,##0" : `#,##0.${"0".repeat(decimals.length)}`;
}

/** Headings, and columns of long texts; what a sheet only works with has one line a row. */
export function wrappedRanges({ table, row, column }: { table: Table } & Pick<Zone, "row" | "column">): string[] {
  const texts = table.columns.flatMap(({ wraps }, at) =>
    wraps ? [zoneA1({ row: row + 1, column: column + at, rows: table.rows + 2, columns: 1 })] : [],
  );
  if (table.hidden) {
    const shown = table.columns.filter(({ role }) => role !== "helper").length;
    return table.tallHead ? [zoneA1({ row, column, rows: 1, columns: shown }), ...texts] : texts;
  }
  // Helpers beside a page have one line.
  return table.columns.every(({ role }) => role === "helper")
    ? texts
    : [zoneA1({ row, column, rows: 1, columns: table.columns.length }), ...texts];
}

/** Looks in a larger type; 1 is the size of a formula sheet. */
export function inType(appearances: readonly (readonly Appearance[])[], type = 1): readonly (readonly Appearance[])[] {
  if (type === 1) return appearances;
  return appearances.map((row) =>
    row.map((appearance) => ({ ...appearance, size: Math.round(appearance.size * type) })),
  );
}
