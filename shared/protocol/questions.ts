// Questions and replies: JSON strings each way.
import * as v from "valibot";
import { refuse, refuseUnread } from "../base/refusal.ts";
import type { ANSWER_READERS } from "./answers.ts";
import type { ASK_READERS } from "./asks.ts";
import { messageReader, type Read, type Sent } from "./message.ts";
import type { PlannedQuestions } from "./planned-questions.ts";

/** What the add-on answers itself. */
export type ServerQuestions = {
  readonly [Q in keyof typeof ASK_READERS]: {
    readonly ask: Sent<(typeof ASK_READERS)[Q]>;
    readonly answer: Read<(typeof ANSWER_READERS)[Q]>;
  };
};
/** All that a panel may ask. */
export type Questions = ServerQuestions & PlannedQuestions;
export type ServerQuestion = keyof ServerQuestions;
export type Question = keyof Questions;

/** A question as it arrived: its name and the rest, or a refusal. */
export function readQuestion(json: unknown): { readonly name: string; readonly rest: unknown } {
  let question: unknown;
  try {
    question = JSON.parse(String(json));
  } catch {
    return refuseUnread("The question from the sidebar");
  }
  return { name: readNamed(question).ask, rest: question };
}

const readNamed = messageReader(
  () => refuse("The question from the sidebar has no name. Close Gramwright and open it again."),
  () => v.object({ ask: v.string() }),
);

/** A reply of the add-on. `reason` is that of a refusal; `because` is what failed, and the sentence of a planned question is made by who asked it. */
export const readReply = messageReader("The answer of the add-on", () =>
  v.variant("ok", [
    v.object({ ok: v.literal(true), answer: v.unknown() }),
    v.object({
      ok: v.literal(false),
      message: v.string(),
      because: v.exactOptional(v.string()),
      reason: v.exactOptional(v.string()),
    }),
  ]),
);
export type Reply = Read<typeof readReply>;
