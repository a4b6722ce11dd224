// The question that adds rows to the ingredient sheet, checked at both ends.
import { refuse, refuseUnread } from "../base/refusal.ts";
import { KIND_WORDS } from "../larder/kind-words.ts";

/** Names with their types, "" where a person has to choose one on the sheet. */
export type StockAsk = {
  readonly ingredients: readonly { readonly name: string; readonly kind: string }[];
  /** Other names for ingredients that the sheet has. */
  readonly also?: readonly { readonly name: string; readonly of: string }[];
};
export type StockAnswer = {
  readonly sheet: string;
  /** What was added. Names that the sheet has already are left out. */
  readonly added: readonly string[];
};

const MAX_INGREDIENTS = 200;
const MAX_NAME_LENGTH = 100;
const KINDS: ReadonlySet<string> = new Set(["", ...KIND_WORDS]);

export function stockAsk({ ingredients, also = [] }: Readonly<Record<string, unknown>>): StockAsk {
  if (!Array.isArray(ingredients) || !Array.isArray(also)) return refuseUnread("The ingredients from the sidebar");
  const many = ingredients.length + also.length;
  if (many === 0 || many > MAX_INGREDIENTS)
    return refuse(`Between 1 and ${MAX_INGREDIENTS} ingredients are added at a time, not ${many}.`);
  return {
    ingredients: ingredients.map((one: unknown, at) => {
      const { name, kind } = record(one);
      if (!isName(name) || typeof kind !== "string" || !KINDS.has(kind))
        return refuse(`Ingredient ${at + 1} needs a name of at most ${MAX_NAME_LENGTH} characters, and a type.`);
      return { name: name.trim(), kind };
    }),
    also: also.map((one: unknown) => {
      const { name, of } = record(one);
      // A semicolon would part it from itself.
      if (!isName(name) || !isName(of) || name.includes(";")) return refuseUnread("The names from the sidebar");
      return { name: name.trim(), of };
    }),
  };
}

const record = (raw: unknown) => (typeof raw === "object" && raw !== null ? raw : {}) as Record<string, unknown>;
const isName = (raw: unknown): raw is string =>
  typeof raw === "string" && raw.trim() !== "" && raw.length <= MAX_NAME_LENGTH;

export function stockAnswer(raw: unknown): StockAnswer | null {
  const { sheet, added } = (typeof raw === "object" && raw !== null ? raw : {}) as Record<string, unknown>;
  if (typeof sheet !== "string" || !Array.isArray(added) || !added.every((one) => typeof one === "string")) return null;
  return { sheet, added };
}
