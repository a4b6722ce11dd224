import { attempt, Refusal, refuse } from "../../shared/base/refusal.ts";
import { oneOf, quote } from "../../shared/base/show.ts";
import { VERSION } from "../../shared/base/version.ts";
import { startIngredients } from "../../shared/larder/start-ingredients.ts";
import { ASK_READERS } from "../../shared/protocol/asks.ts";
import { type Read, readQuestion } from "../../shared/protocol/message.ts";
import type { ServerQuestion, ServerQuestions } from "../../shared/protocol/questions.ts";
import { LARDER_NAME } from "../../shared/sheet/workbook-names.ts";
import { calculate } from "../functions/calculate.ts";
import { mustBeWhole, wholeCode } from "./code-check.ts";
import { connect } from "./connect.ts";
import { goTo } from "./go-to.ts";
import { history, revise } from "./history.ts";
import { insert } from "./insert.ts";
import { look } from "./look.ts";
import { keepLots } from "./lots.ts";
import { make } from "./make.ts";
import { writePriceList } from "./price-list.ts";
import { comparePrices } from "./prices.ts";
import { markPrinted } from "./printed.ts";
import { remake } from "./remake.ts";
import { check } from "./self-check.ts";
import { stock } from "./stock.ts";
import { takeTyped } from "./typing.ts";
import { activeWorkbook } from "./workbook.ts";

/** A question as it was read. */
type Ask<Q extends ServerQuestion> = Read<(typeof ASK_READERS)[Q]>;
const WAIT_MS = 20_000;

/** Answers a question of the sidebar: a JSON string in, a JSON string out, never an exception. */
export function answerSidebar(json: unknown): string {
  let askedName = "";
  try {
    const { name, rest } = readQuestion(json);
    askedName = name;
    if (name !== "ping") mustBeWhole();
    const question = QUESTIONS.find((one) => one === name);
    if (question === undefined) return refuse(`The sidebar can ask ${oneOf(QUESTIONS)}, not ${quote(name)}.`);
    return JSON.stringify({ ok: true, answer: answerTo(question, rest) });
  } catch (error) {
    return JSON.stringify({ ok: false, ...errorReply(error, askedName) });
  }
}

/** What a person reads when a question fails; what was being written has been removed by then. */
function errorReply(error: unknown, question: string): { message: string; because?: string; reason?: string } {
  const because = error instanceof Error ? error.message : String(error);
  if (error instanceof Refusal)
    return { message: because, ...(error.reason === undefined ? {} : { reason: error.reason }) };
  return { message: `${UNDONE.get(question) ?? "That could not be done"}: ${because}`, because };
}

const UNDONE: ReadonlyMap<string, string> = new Map([
  ["look", "The workbook could not be read"],
  ["make", "The sheet could not be built, and nothing was changed"],
  ["prices", "The prices could not be compared"],
  ["priceList", "The prices could not all be written. Compare prices to see which were"],
  ["connect", "The formula sheets could not be linked"],
  ["stock", "The ingredients could not be added"],
  ["remake", "The sheet could not be changed, and stands as it was"],
  ["insert", "The formula could not be inserted"],
  ["goto", "The cell could not be shown"],
  ["check", "The check could not be finished"],
  ["take", "The typed weights could not be taken"],
  ["history", "The formula history could not be read"],
  ["printed", "The table could not be marked as printed"],
  ["lots", "The lots could not be kept"],
  ["revise", "The formula could not be changed, and stands as it was"],
]);

const ANSWERS: { readonly [Q in ServerQuestion]: (ask: Ask<Q>) => ServerQuestions[Q]["answer"] } = {
  ping: () => ({ version: VERSION, ...wholeCode() }),
  look,
  make: (ask) => locked(() => make(ask)),
  remake: (ask) => locked(() => remake(ask)),
  calculate: (ask) => calculate(ask, larderCells),
  ingredients: () => ({ ingredients: startIngredients() }),
  goto: goTo,
  stock: (ask) => locked(() => stock(ask)),
  connect: (ask) => locked(() => connect(ask)),
  prices: (ask) => locked(() => comparePrices(ask)),
  priceList: (ask) => locked(() => writePriceList(ask)),
  printed: () => locked(markPrinted),
  insert: (ask) => locked(() => insert(ask)),
  check: (ask) => locked(() => check(ask)),
  take: (ask) => locked(() => takeTyped(ask)),
  lots: (ask) => locked(() => keepLots(ask)),
  history,
  revise: (ask) => locked(() => revise(ask)),
};
const QUESTIONS = Object.keys(ANSWERS) as ServerQuestion[];

const answerTo = <Q extends ServerQuestion>(question: Q, raw: unknown): ServerQuestions[Q]["answer"] =>
  ANSWERS[question](ASK_READERS[question](raw) as Ask<Q>);

/** The shop's ingredient table with its headings, where the workbook has one. */
const larderCells = (): unknown[][] | undefined => activeWorkbook().getRangeByName(LARDER_NAME)?.getValues();

/** Two builds at once would fight over a name. */
function locked<T>(work: () => T): T {
  const lock = LockService.getDocumentLock();
  if (lock !== null && !lock.tryLock(WAIT_MS)) {
    refuse("Gramwright is still at work in this workbook. Wait until it is done, then try again.");
  }
  try {
    return work();
  } finally {
    // It is released at the end of the run anyway; what was done is done.
    attempt(() => lock?.releaseLock());
  }
}
