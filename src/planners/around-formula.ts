// What a formula sheet knows beside its formula: how much of it is made, what it costs, and what its label goes by.
import type { formulaOf } from "../../shared/adjust/from-content.ts";
import type { Money } from "../../shared/adjust/money.ts";
import type { LabelFacts } from "../../shared/adjust/printed.ts";
import { type Fault, Refusal } from "../../shared/base/refusal.ts";
import { nameKey } from "../../shared/larder/built-in-larder.ts";
import { type Larder, larder, NO_LARDER } from "../../shared/larder/larder.ts";
import { type CellValue, MAX_TEXT_LENGTH } from "../../shared/protocol/look.ts";
import { usualStyle } from "./check-sheet.ts";
import type { SheetContent } from "./formula-content.ts";
import type { FormulaSheet } from "./formula-sheet.ts";

export function aroundOf({ sheet, has, rows }: SheetContent): Parameters<typeof formulaOf>[1] {
  const by = sheet.text("by").toLowerCase();
  const counted = sheet.rows.filter(({ weight, share }) => weight !== null && share !== null);
  const mixed = counted.reduce((sum, { weight }) => sum + (weight ?? 0), 0);
  const dough = (has("roll_in_share") ? sheet.number("dough_in_all") : null) ?? mixed;
  const sizes = rows("sizes");
  const top = sheet.zone("size_name")?.row ?? 0;
  const ofSizes = (name: string) =>
    Array.from({ length: sizes?.many ?? 0 }, (_, at) => sheet.number(name, (sizes?.first ?? 0) - top + at));
  return {
    style: usualStyle(sheet.model.name),
    has,
    batch: by === "flour" ? { of: "flour", amount: sheet.number("amount") ?? 0 } : { of: "dough", amount: dough },
    by,
    mixed: sheet.model.name === "cake" ? "batter" : "dough",
    perArea: has("per_area") ? sheet.number("per_area_some") || null : null,
    capacity: has("tin_shape") ? sheet.number("tin_capacity") : null,
    pieces: ofSizes("size_pieces"),
    prices: ofSizes("size_price"),
  };
}

/** Prices of the sheet itself: those of the ingredient sheet, or as they were typed. */
export function moneyOf(sheet: FormulaSheet): Money {
  const prices = sheet.rows.flatMap(({ name, weight, index }): [string, number][] => {
    const cost = sheet.number("row_cost", index);
    return name === "" || weight === null || !(weight > 0) || cost === null || !(cost > 0)
      ? []
      : [[nameKey(name), cost / weight]];
  });
  const [rolled, rollCost, rollName] = [sheet.number("roll_in"), sheet.number("roll_cost"), sheet.text("roll_in_name")];
  const isPriced = rollName !== "" && rolled !== null && rolled > 0 && rollCost !== null && rollCost > 0;
  const size = sheet.zone("size_cost");
  const [handling, unsold] = [sheet.number("handling_loss") ?? 0, sheet.number("unsold") ?? 0];
  return {
    prices: { ...(isPriced ? { [nameKey(rollName)]: rollCost / rolled } : {}), ...Object.fromEntries(prices) },
    pieces: Array.from({ length: size?.rows ?? 0 }, (_, at) => sheet.number("size_cost", at)).filter(
      (cost) => cost !== null,
    ),
    tax: sheet.number("tax") ?? 0,
    lost: 1 / (1 - handling) / (1 - unsold),
  };
}

export function larderOf(table: readonly (readonly unknown[])[] | undefined): Larder {
  if (table === undefined) return NO_LARDER;
  const faults: Fault[] = [];
  const ownLarder = larder(true).decode(table, "ingredient sheet", faults);
  if (faults.length > 0) throw new Refusal(faults);
  return ownLarder;
}

const LAWS = ["EU", "UK", "US"] as const;

/** The sheet's own label goes before the bakery's settings. */
export function labelFacts(sheet: FormulaSheet, settings: readonly (readonly CellValue[])[] | undefined): LabelFacts {
  const setting = settings?.find(([name]) => String(name).trim().toLowerCase() === "labelling rules")?.[1];
  const [typed, set] = [sheet.text("law"), String(setting ?? "")].map((text) => text.trim().toUpperCase());
  const labelled = sheet.number("piece_size");
  const parts = Array.from({ length: sheet.zone("own_parts")?.rows ?? 0 }, (_, at) => sheet.text("own_parts", at));
  return {
    law: LAWS.find((law) => law === (typed || set)) ?? null,
    loss: sheet.number("label_loss"),
    size: labelled === null ? null : sheet.text("size_name", labelled),
    ownFormulas: parts.some(({ length }) => length >= MAX_TEXT_LENGTH - 1) ? null : parts.filter((text) => text !== ""),
  };
}
