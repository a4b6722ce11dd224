// The question what a larder can start with.
import * as v from "valibot";
import { refuse } from "../base/refusal.ts";
import { messageReader, type Read } from "./message.ts";

export const readIngredientsAnswer = messageReader(
  () => refuse("The ingredients that it can start with could not be read. Reload the spreadsheet."),
  () =>
    v.object({
      ingredients: v.array(
        v.object({
          name: v.string(),
          kind: v.string(),
          also: v.array(v.string()),
          usual: v.string(),
          water: v.nullable(v.pipe(v.number(), v.finite())),
        }),
      ),
    }),
);
export type IngredientsAnswer = Read<typeof readIngredientsAnswer>;
