// The question that adds rows to the ingredient sheet, checked at both ends.
import { refuse, refuseUnread } from "../base/refusal.ts";
import { KIND_WORDS } from "../larder/kind-words.ts";

/** Names with their types, "" where a person has to choose one on the sheet. */
export type StockAsk = { readonly ingredients: readonly { readonly name: string; readonly kind: string }[] };
export type StockAnswer = {
  readonly sheet: string;
  /** What was added. Names that the sheet has already are left out. */
  readonly added: readonly string[];
};

const MAX_INGREDIENTS = 200;
const MAX_NAME_LENGTH = 100;
const KINDS: ReadonlySet<string> = new Set(["", ...KIND_WORDS]);

export function stockAsk({ ingredients }: Readonly<Record<string, unknown>>): StockAsk {
  if (!Array.isArray(ingredients)) return refuseUnread("The ingredients from the sidebar");
  if (ingredients.length === 0 || ingredients.length > MAX_INGREDIENTS)
    return refuse(`Between 1 and ${MAX_INGREDIENTS} ingredients are added at a time, not ${ingredients.length}.`);
  return {
    ingredients: ingredients.map((one: unknown, at) => {
      const { name, kind } = (typeof one === "object" && one !== null ? one : {}) as Record<string, unknown>;
      const isName = typeof name === "string" && name.trim() !== "" && name.length <= MAX_NAME_LENGTH;
      if (!isName || typeof kind !== "string" || !KINDS.has(kind))
        return refuse(`Ingredient ${at + 1} needs a name of at most ${MAX_NAME_LENGTH} characters, and a type.`);
      return { name: name.trim(), kind };
    }),
  };
}

export function stockAnswer(raw: unknown): StockAnswer | null {
  const { sheet, added } = (typeof raw === "object" && raw !== null ? raw : {}) as Record<string, unknown>;
  if (typeof sheet !== "string" || !Array.isArray(added) || !added.every((one) => typeof one === "string")) return null;
  return { sheet, added };
}
