// The question that writes one formula at the cursor.
import * as v from "valibot";
import { refuse } from "../base/refusal.ts";
import { messageReader, type Read, type Sent, text } from "./message.ts";

const MAX_ARGUMENTS = 20;
export const MAX_ARGUMENT_LENGTH = 500;

export const readInsertAsk = messageReader(
  () => refuse(`An argument takes up to ${MAX_ARGUMENT_LENGTH} characters; put the values into cells and name those.`),
  () =>
    v.object({
      name: v.string(),
      /** The arguments as they were typed, in order; "" for one left out. */
      args: v.pipe(
        v.array(text(MAX_ARGUMENT_LENGTH)),
        v.transform((args) => args.slice(0, MAX_ARGUMENTS)),
      ),
    }),
);
export type InsertAsk = Sent<typeof readInsertAsk>;

export const readInsertAnswer = messageReader(
  () => refuse("The answer could not be read: look at the cell with the cursor."),
  () =>
    v.object({
      sheet: v.string(),
      cell: v.string(),
      /** What the cell says now instead of an answer; "" where it answers. */
      says: v.string(),
    }),
);
export type InsertAnswer = Read<typeof readInsertAnswer>;
