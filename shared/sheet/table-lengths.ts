import { zoneA1 } from "./a1.ts";
import type { Layout } from "./layout.ts";
import type { Links, SheetModel, Table, Values } from "./model.ts";

/** A name that the whole workbook knows, and its range. */
export type DefinedName = { readonly name: string; readonly range: string };

const lengthOf = (value: unknown): number => (Array.isArray(value) ? value.length : 0);
/** Rows that have links of their own. */
export const linkedRows = (links: Links): number => Math.max(0, ...Object.values(links).map(lengthOf));

/** The model with tables that hold all that is typed into them. */
export function longEnough(model: SheetModel, typed: Values, links: Links): SheetModel {
  const rowsOf = ({ rows, spare, columns }: Table) => {
    if (spare === undefined) return rows;
    const filled = columns.map(({ name, role }) => (role === "linked" ? linkedRows(links) : lengthOf(typed[name])));
    return Math.max(rows, Math.max(...filled) + spare);
  };
  return {
    ...model,
    bands: model.bands.map((band) => {
      // Tables side by side are equally long.
      const longest = Math.max(0, ...band.map((item) => ("table" in item ? rowsOf(item) : 0)));
      return band.map((item) => ("table" in item && item.spare !== undefined ? { ...item, rows: longest } : item));
    }),
  };
}

export function definedNames(
  { defines, alsoDefines = [] }: SheetModel,
  names: Layout["names"],
): readonly DefinedName[] {
  return [...(defines === undefined ? [] : [defines]), ...alsoDefines].flatMap(({ name, from: first, to: tables }) => {
    const from = names.get(first);
    const to = [tables]
      .flat()
      .flatMap((table) => names.get(table) ?? [])
      .pop();
    if (from === undefined || to === undefined) return [];
    return [{ name, range: zoneA1({ ...from, columns: to.column + to.columns - from.column }) }];
  });
}
