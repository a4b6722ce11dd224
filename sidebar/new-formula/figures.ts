import { showNumber } from "../../shared/base/show.ts";

/** A weight as it is read at a glance: whole grams, hundredths of an ounce, thousands set apart. */
export function inUnit(value: number, unit: "g" | "oz"): string {
  const [whole = "", part] = showNumber(value, unit === "g" ? 0 : 2).split(".");
  const apart = whole.replace(/\B(?=(\d{3})+$)/g, "\u202f");
  return `${apart}${part === undefined ? "" : `.${part}`}\u00a0${unit}`;
}
