// The sidebar's questions to the add-on. What is planned here asks the add-on several times, and the panel does not notice.

import { Refusal } from "../../shared/base/refusal.ts";
import { ANSWER_READERS } from "../../shared/protocol/answers.ts";
import { readSnapshot } from "../../shared/protocol/look.ts";
import { readReply } from "../../shared/protocol/message.ts";
import type { PlannedQuestion } from "../../shared/protocol/planned-questions.ts";
import type { Question, Questions, ServerQuestion } from "../../shared/protocol/questions.ts";
import { isPlanned, stepsFor, undone } from "../../src/planners/planners.ts";
import { refusalError, type Step, waitingCells } from "../../src/planners/steps.ts";

/** `refused` comes from the add-on and says what to mend; `silent` is a time-out; `failed` is everything in between. */
export type Failure = {
  readonly how: "refused" | "failed" | "silent" | "nowhere";
  readonly message: string;
  /** What failed in the add-on, where it was no refusal. */
  readonly because?: string;
  /** Why it was refused, where something hangs on it. */
  readonly reason?: string;
};
export type Outcome<Q extends Question> = { readonly answer: Questions[Q]["answer"] } | Failure;

/** Asks the add-on; always answers, never throws. Whatever comes after the time-out goes to `late`. */
export function ask<Q extends Question>(
  question: Q,
  rest: Questions[Q]["ask"],
  patience: number,
  late: (outcome: Outcome<Q>) => void = () => {},
): Promise<Outcome<Q>> {
  return new Promise((resolve) => {
    if (typeof google === "undefined") return resolve({ how: "nowhere", message: "" });
    let waiting = true;
    const timer = setTimeout(() => end({ how: "silent", message: "" }), patience);
    const end = (outcome: Outcome<Q>) => {
      if (!waiting) return late(outcome);
      waiting = false;
      clearTimeout(timer);
      resolve(outcome);
    };
    void (isPlanned(question) ? planned(question, rest) : direct(question, rest)).then((outcome) =>
      end(outcome as Outcome<Q>),
    );
  });
}

type Sent = { readonly answer: unknown } | Failure;

/** One question, whose answer is read here. */
async function direct(question: ServerQuestion, rest: object): Promise<Sent> {
  const outcome = await send({ ...rest, ask: question });
  if (!("answer" in outcome)) return outcome;
  try {
    return { answer: ANSWER_READERS[question](outcome.answer) };
  } catch (error) {
    return { how: "refused", message: messageOf(error) };
  }
}

/** Step by step, each sent when the one before is answered. */
async function planned(question: PlannedQuestion, rest: object): Promise<Sent> {
  try {
    const steps = stepsFor(question, { ...rest }, new Date());
    let next = steps.next();
    while (next.done !== true) {
      const outcome = await sendPatiently(next.value);
      if ("answer" in outcome) next = steps.next(outcome.answer);
      else if (outcome.how === "refused") next = steps.throw(refusalError(outcome));
      else return outcome;
    }
    return { answer: next.value };
  } catch (error) {
    const reason = error instanceof Refusal ? error.reason : undefined;
    return { how: "refused", message: undone(question, error), ...(reason === undefined ? {} : { reason }) };
  }
}

/** How often a sheet that is still calculating is read again, and how long after. */
const MAX_AGAIN = 2;
const AGAIN_MS = 2000;

/** Cells that stayed as they were: a person's own #N/A, or a text that ends in dots. They are waited for once. */
const lasting = new Set<string>();

/** None where the answer is no snapshot, which the planner says. */
function waitingIn(answer: unknown): string[] {
  try {
    return waitingCells(readSnapshot(answer));
  } catch {
    return [];
  }
}

/** What was read while calls had no answer yet is read again. */
async function sendPatiently(step: Step): Promise<Sent> {
  let outcome = await send(step);
  if (step.ask !== "look") return outcome;
  for (let again = 0; "answer" in outcome; again++) {
    const waiting = waitingIn(outcome.answer).filter((cell) => !lasting.has(cell));
    if (waiting.length === 0) break;
    if (again === MAX_AGAIN) {
      for (const cell of waiting) lasting.add(cell);
      break;
    }
    await new Promise((resolve) => setTimeout(resolve, AGAIN_MS));
    outcome = await send(step);
  }
  return outcome;
}

function send(question: object): Promise<Sent> {
  return new Promise((resolve) => {
    const failed = (error: unknown) => resolve({ how: "failed", message: messageOf(error) });
    try {
      if (typeof google === "undefined") return resolve({ how: "nowhere", message: "" });
      google.script.run
        .withSuccessHandler((reply) => resolve(read(reply)))
        .withFailureHandler(failed)
        .answerSidebar(JSON.stringify(question));
    } catch (error) {
      failed(error);
    }
  });
}

function read(reply: unknown): Sent {
  try {
    const { ok, ...rest } = readReply(JSON.parse(String(reply)));
    return "answer" in rest ? rest : { how: "refused", ...rest };
  } catch {
    // No reply at all: the sentence says what can be done about it.
    return { how: "failed", message: "the answer could not be read" };
  }
}

function messageOf(error: unknown): string {
  const message = error instanceof Error ? error.message : String((error as { message?: unknown })?.message ?? error);
  return message.trim().replace(/[.\s]+$/, "");
}

export const ONE_ACCOUNT =
  "Open the spreadsheet in a window signed in to one account only, such as a private window. Then open Gramwright again.";

/** Two accounts in one browser show as a refused permission; a script nobody allowed yet shows the same way. */
const OTHER_ACCOUNT = /permission|authori[sz]|access denied|sign(ed)? in|log ?in/i;

/** A failed question as a sentence with a way on. */
export function failureSentence({ how, message }: Failure): string {
  if (how === "refused") return message;
  if (how === "nowhere") return "This page works beside a spreadsheet: open it from the spreadsheet's menu.";
  if (how === "silent") return `The add-on does not answer. ${ONE_ACCOUNT}`;
  if (OTHER_ACCOUNT.test(message)) return `Gramwright has no permission in this file (${message}). ${ONE_ACCOUNT}`;
  return `The add-on could not answer (${message}). Try once more; if that does not help, close Gramwright and open it again.`;
}
