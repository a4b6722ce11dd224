// Who answers which question.
import type { ANSWER_READERS } from "./answers.ts";
import type { ASK_READERS } from "./asks.ts";
import type { Read, Sent } from "./message.ts";
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
