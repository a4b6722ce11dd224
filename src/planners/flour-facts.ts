// What the flour of a dough is made up of, and how much of it ripens before the mix.

import { isFault } from "../../shared/base/refusal.ts";
import { shownShare } from "../../shared/base/show.ts";
import { isPreferment, type Kind, kind } from "../../shared/larder/kinds.ts";
import type { SheetReview } from "../../shared/protocol/sheet-review.ts";
import type { FormulaRow, FormulaSheet } from "./formula-sheet.ts";

type Flour = { readonly name: string; readonly weight: number; readonly isStarter: boolean };

/** Every flour as a share of all flour, starters by what flour they bring; nothing of a sheet without weights. */
export function flourFacts(sheet: FormulaSheet, rows: readonly FormulaRow[]): SheetReview["facts"] {
  const flours = rows.flatMap(flourOf);
  const all = flours.reduce((sum, { weight }) => sum + weight, 0);
  if (all <= 0) return [];
  const shares = flours.map(
    ({ name, weight, isStarter }) => `${isStarter ? `flour in ${name}` : name} ${shownShare(weight / all, 1)}`,
  );
  const starters = flours.reduce((sum, { weight, isStarter }) => sum + (isStarter ? weight : 0), 0);
  const early = starters + (sheet.number("pre_flour") ?? 0);
  return [
    { label: "Flour", says: `${shares.join(", ")}.` },
    ...(early > 0 ? [{ label: "Prefermented flour", says: `${shownShare(early / all, 1)} of all flour.` }] : []),
  ];
}

function flourOf({ name, kind: cell, weight }: FormulaRow): Flour[] {
  const kindCell = kind().read(cell);
  if (weight === null || isFault(kindCell) || kindCell === null || "unread" in kindCell) return [];
  const isStarter = isPreferment(kindCell as Kind);
  return kindCell.flour > 0 ? [{ name: name || cell, weight: weight * kindCell.flour, isStarter }] : [];
}
