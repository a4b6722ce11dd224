// Notes with orders: a row of the grid has several where its orders have, each with its day or its customer.
import { dayWords } from "../../../shared/production/clock.ts";
import type { OrderNow, ProductionNow } from "./production-now.ts";

const BETWEEN = "; ";
const NAMES = ", ";

/** Notes of one row, each with those that it is about; nobody where it is about all of them. */
export const rowNote = (notes: ReadonlyMap<string, readonly string[]>): string =>
  [...notes]
    .map(([note, about]) => (about.length === 0 ? note : `${[...new Set(about)].join(NAMES)}: ${note}`))
    .join(BETWEEN);

/** What of a row's note is about one order. */
export function noteOf({ note, customer, day }: OrderNow, { orders, days }: ProductionNow): string {
  const known = new Set([...orders.map((one) => one.customer), ...days.map(dayWords)]);
  return note
    .split(BETWEEN)
    .flatMap((part) => {
      const [, about = "", says = ""] = /^(.+?): (.+)$/.exec(part) ?? [];
      const names = about.split(NAMES);
      if (about === "" || !names.every((name) => known.has(name))) return [part];
      return names.includes(customer) || names.includes(dayWords(day)) ? [says] : [];
    })
    .join(BETWEEN);
}
