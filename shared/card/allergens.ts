// The one line on a card about allergens. Staff may eat what is on it: what is not known is never said to be nothing.
import { NO_ALLERGENS } from "../label/allergens.ts";

const NOT_ASSESSED = "Cross-contact is not assessed.";
const CHECK = "Check every ingredient's label before anybody eats of it.";

/** Words that a person may have typed where the sheet works allergens out; they tell nothing of what was checked. */
const TYPED = /^(?:none|no|nil|nothing|free|without|n\/?a|[-–—.0]+)(?:\W|$)/i;

/**
 * `answer` is what the formula sheet shows: null or "" where it has no label or no law was chosen, an error where the ingredients are
 * not all known, or where it is still calculating.
 */
export function allergenLine(answer: string | null): string {
  const list = (answer ?? "").trim().replace(/\.$/, "");
  if (list === "") return `Allergens: not worked out. ${CHECK} ${NOT_ASSESSED}`;
  if (list.startsWith("#") || /^Loading/.test(list))
    return `Allergens: not worked out. The formula sheet was still calculating, or shows an error. ${CHECK} ${NOT_ASSESSED}`;
  const [first = "", ...others] = list.split(";").map((part) => part.trim());
  const besides = others.filter((part) => !/^cross-contact/i.test(part));
  if (first === NO_ALLERGENS.split(";")[0])
    return [`${capital(first)}.`, NOT_ASSESSED, ...besides.map((part) => `${capital(part)}.`)].join(" ");
  if (TYPED.test(first))
    return `Allergens: “${list}” was entered on the formula sheet and not worked out. ${CHECK} ${NOT_ASSESSED}`;
  return `Contains: ${[first, ...besides].join("; ")}. ${NOT_ASSESSED}`;
}

const capital = (text: string): string => `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;
