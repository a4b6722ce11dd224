import { type Question, type Questions, readOrder, readQuestion, VERSION } from "../shared/bench.ts";
import { startIngredients } from "../shared/larder-start.ts";
import { LARDER_NAME } from "../shared/model.ts";
import { CellError, refuse } from "../shared/refusal.ts";
import { oneOf, quoted } from "../shared/show.ts";
import { SHEETS } from "../templates/index.ts";
import { reviewSheet } from "./check-sheet.ts";
import { buildDay } from "./day.ts";
import { prepare } from "./found.ts";
import { formulas, goTo, handOut } from "./hand-out.ts";
import { insert } from "./insert.ts";
import { readIn } from "./read-in.ts";
import { check } from "./self-check.ts";
import { writeSheet } from "./write.ts";

type Asked = Record<string, unknown>;
const WAIT_MS = 20_000;

/** Answers a question of the bench: a JSON string in, a JSON string out, never an exception. */
export function benchAsk(json: unknown): string {
  let asked = "";
  try {
    const { name, rest } = readQuestion(json);
    asked = name;
    const answer = ANSWERS.get(name);
    if (answer === undefined) return refuse(`The bench can ask ${oneOf([...ANSWERS.keys()])}, not ${quoted(name)}.`);
    return JSON.stringify({ ok: true, answer: answer(rest) });
  } catch (error) {
    return JSON.stringify({ ok: false, message: told(error, asked) });
  }
}

/** What a person reads when a question fails; what was being built has been removed by then. */
function told(error: unknown, asked: string): string {
  const message = error instanceof Error ? error.message : String(error);
  return error instanceof CellError ? message : `${UNDONE.get(asked) ?? "That could not be done"}: ${message}`;
}

const NOT_BUILT = "The sheet could not be built, and nothing was changed";
const NOT_READ = "The workbook could not be read";
const UNDONE: ReadonlyMap<string, string> = new Map([
  ["build", NOT_BUILT],
  ["card", NOT_BUILT],
  ["day", NOT_BUILT],
  ["formulas", NOT_READ],
  ["review", NOT_READ],
  ["read", "The recipe could not be read"],
  ["insert", "The formula could not be inserted"],
  ["goto", "The cell could not be shown"],
  ["check", "The check could not be finished"],
]);

function ping(): Questions["ping"]["answer"] {
  return { version: VERSION };
}

function build(asked: Asked): Questions["build"]["answer"] {
  const order = readOrder(asked, SHEETS);
  const { title } = order.values;
  return locked(() => {
    const workbook = SpreadsheetApp.getActiveSpreadsheet();
    const { made, note } = prepare(workbook, { ...order, values: { date: today(), ...order.values } });
    const sheet = writeSheet(workbook, made, typeof title === "string" ? title : order.model.title);
    return note === undefined ? { sheet } : { sheet, note };
  });
}

const answers: { readonly [Q in Question]: (asked: Asked) => Questions[Q]["answer"] } = {
  ping,
  build,
  formulas,
  ingredients: () => ({ ingredients: startIngredients() }),
  card: (asked) => locked(() => handOut(asked)),
  review: reviewSheet,
  day: (asked) => locked(() => buildDay(asked)),
  goto: goTo,
  read: (asked) => readIn(asked, larderCells()),
  insert: (asked) => locked(() => insert(asked)),
  check: (asked) => locked(() => check(asked)),
};
const ANSWERS: ReadonlyMap<string, (asked: Asked) => unknown> = new Map(Object.entries(answers));

/** The shop's ingredient table with its headings; empty where the workbook has none. */
const larderCells = (): unknown[][] =>
  SpreadsheetApp.getActiveSpreadsheet().getRangeByName(LARDER_NAME)?.getValues() ?? [];

/** Two builds at once would fight over a name. */
function locked<T>(work: () => T): T {
  const lock = LockService.getDocumentLock();
  if (lock !== null && !lock.tryLock(WAIT_MS)) {
    refuse("Another build is still running in this workbook; wait until it is done and build again.");
  }
  try {
    return work();
  } finally {
    lock?.releaseLock();
  }
}

/** Today as the day number a sheet counts in: 1 is 31 December 1899. */
function today(): number {
  const now = new Date();
  return Math.round((Date.UTC(now.getFullYear(), now.getMonth(), now.getDate()) - Date.UTC(1899, 11, 30)) / 86_400_000);
}
