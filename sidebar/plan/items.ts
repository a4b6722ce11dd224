import type { FormulaSummary } from "../../shared/protocol/sheet-review.ts";

/** A formula sheet and one of its sizes, as a field calls it. */
export type Item = { readonly sheet: string; readonly size: string; readonly label: string };
export const itemsOf = (sheets: readonly FormulaSummary[]): Item[] =>
  sheets.flatMap(({ sheet, sizes }) =>
    sizes.map((size) => ({ sheet, size, label: size === "" || sizes.length === 1 ? sheet : `${sheet}, ${size}` })),
  );
