// The answer that a sheet is built: its name, and what a person should know of it.
import * as v from "valibot";
import { refuse } from "../base/refusal.ts";
import { messageReader, type Read } from "./message.ts";

export const readMakeAnswer = messageReader(
  () => refuse("The sheet is there, but its name could not be read. Look at the tabs before you build it again."),
  () =>
    v.object({
      sheet: v.string(),
      /** What could not be done beside it. */
      note: v.exactOptional(v.string()),
    }),
);
export type NewSheet = Read<typeof readMakeAnswer>;
