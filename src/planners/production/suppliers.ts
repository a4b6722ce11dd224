// Suppliers in the order of the list, and the links of what is counted.
import { plainText } from "../../../templates/production/shape.ts";
import type { Overview } from "../overview.ts";
import { text } from "./formula.ts";

/** What is wanted of a product: how much of it on each day in one row, and what of that is bought. */
export type Wanted = {
  readonly sheet: Overview;
  readonly row: string;
  readonly bought: string;
  readonly made: readonly string[];
};
/** Stands for the levain that a formula builds itself out of its own flour and water. */
export const BUILT = "\n";

export const plainName = (name: string): string => name.trim().toLowerCase();

const NO_SUPPLIER = 1e6;
export const rank = (suppliers: ReadonlyMap<string, string>, name: string): number => {
  const supplier = suppliers.get(plainName(name)) ?? "";
  return supplier === "" ? NO_SUPPLIER : [...new Set(suppliers.values())].sort().indexOf(supplier);
};

/** Suppliers by the names of what they bring, also called ones with them. */
export function supplierBy(rows: readonly (readonly unknown[])[]): Map<string, string> {
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

export type Stack = {
  readonly products: string;
  readonly names: string;
  readonly weights: string;
  readonly rows: number;
};
export const cell = (sheet: Overview, name: string): string => sheet.reference(name) ?? '""';

/** What is bought of its ingredients. */
export function stackOf({ sheet, made }: Wanted): Stack {
  const [names, weights] = [cell(sheet, "ingredient"), cell(sheet, "grams")];
  const left = made.includes(BUILT) ? `${weights}*(1-${cell(sheet, "pre_part")})` : weights;
  const others = made.filter((one) => one !== BUILT);
  const rows = others.map((row) => `(${plainText(names)}=${text(plainName(row))})`);
  const rest = rows.length === 0 ? left : `IF(1*${rows.join("+")}>0;0;${left})`;
  const fatName = sheet.text("roll_in_name");
  const fat =
    fatName !== "" && sheet.number("roll_in") !== null && !others.some((one) => plainName(one) === plainName(fatName));
  return {
    products: `IF(ROW(${names})=MIN(ROW(${names}));${text(sheet.name)};"")${fat ? ';""' : ""}`,
    names: `IF(LEN(${names})=0;"";${names})${fat ? `;${cell(sheet, "roll_in_name")}` : ""}`,
    weights: `IF(LEN(${weights})=0;"";${rest})${fat ? `;${cell(sheet, "roll_in")}` : ""}`,
    rows: (sheet.zone("ingredient")?.rows ?? 0) + (fat ? 1 : 0),
  };
}
