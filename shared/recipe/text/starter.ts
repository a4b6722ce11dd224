// Rows that are preferments themselves: how much flour and water they hold.

import { isFault } from "../../base/refusal.ts";
import { type Kind, kind } from "../../larder/kinds.ts";
import { prefermentIn } from "../kinds.ts";
import type { Row } from "./description.ts";

const kinds = new Map<string, Kind | null>();

function kindRead(type: string): Kind | null {
  const before = kinds.get(type);
  if (before !== undefined) return before;
  const cell = type === "" ? null : kind().read(type);
  const known = cell === null || isFault(cell) || "unread" in cell ? null : cell;
  if (kinds.size < 200) kinds.set(type, known);
  return known;
}

export const flourOfRow = ({ type }: Row): number => kindRead(type)?.flour ?? 0;
export const waterOfRow = ({ type }: Row): number => kindRead(type)?.water ?? 0;
const STARTER =
  /\b(?:starter|levain|sourdough|mother|culture|chef|seed culture|leaven|sour|surdej|surdeg|zakwas|sauerteig|masa madre|pasta madre|lievito madre|desem)\b/i;
/** A ripe starter, whatever is known of its water. */
export const isStarter = (row: Row): boolean =>
  kindRead(row.type)?.word === "preferment" ||
  (row.type === "" &&
    (STARTER.test(row.name) ||
      prefermentIn(row.name) !== undefined ||
      /^anstellgut$|^discard$|^(?:ripe |mature )?seed$/i.test(row.name)));
