// The question that adds rows to the ingredient sheet.
import * as v from "valibot";
import { refuse, refuseUnread } from "../base/refusal.ts";
import { KIND_WORDS } from "../larder/kind-words.ts";
import { messageReader, type Read, type Sent } from "./message.ts";

const MAX_INGREDIENTS = 200;
const MAX_NAME_LENGTH = 100;

const name = () => v.pipe(v.string(), v.maxLength(MAX_NAME_LENGTH), v.trim(), v.nonEmpty());

export const readStockAsk = messageReader(refuseStock, () =>
  v.pipe(
    v.object({
      /** Names with their types, "" where a person has to choose one on the sheet. */
      ingredients: v.array(v.object({ name: name(), kind: v.picklist(["", ...KIND_WORDS]) })),
      /** Other names for ingredients that the sheet has. */
      also: v.optional(
        v.array(
          v.object({
            // A semicolon would part it from itself.
            name: v.pipe(
              name(),
              v.check((text) => !text.includes(";")),
            ),
            of: v.pipe(v.string(), v.maxLength(MAX_NAME_LENGTH), v.regex(/\S/)),
          }),
        ),
        [],
      ),
    }),
    v.check(({ ingredients, also }) => {
      const many = ingredients.length + also.length;
      return many > 0 && many <= MAX_INGREDIENTS;
    }),
  ),
);
export type StockAsk = Sent<typeof readStockAsk>;

function refuseStock({ type, path, input }: v.BaseIssue<unknown>): never {
  const [list, item] = (path ?? []).map(({ key }) => key);
  if (type === "check" && list === undefined) {
    const { ingredients, also } = input as { readonly ingredients: unknown[]; readonly also: unknown[] };
    return refuse(
      `Between 1 and ${MAX_INGREDIENTS} ingredients are added at a time, not ${ingredients.length + also.length}.`,
    );
  }
  if (list === "ingredients" && typeof item === "number")
    return refuse(`Ingredient ${item + 1} needs a name of at most ${MAX_NAME_LENGTH} characters, and a type.`);
  return refuseUnread(
    list === "also" && item !== undefined ? "The names from the sidebar" : "The ingredients from the sidebar",
  );
}

export const readStockAnswer = messageReader(
  () => refuse("The ingredients may be there, but the answer could not be read. Look at Ingredients."),
  () =>
    v.object({
      sheet: v.string(),
      /** What was added. Names that the sheet has already are left out. */
      added: v.array(v.string()),
    }),
);
export type StockAnswer = Read<typeof readStockAnswer>;
