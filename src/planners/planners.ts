// The questions that the sidebar answers itself: it asks the add-on what is there, works out what to build, and has it written.

import { dayNumber } from "../../shared/base/days.ts";
import { Refusal } from "../../shared/base/refusal.ts";
import { quote } from "../../shared/base/show.ts";
import { readOrder } from "../../shared/protocol/order.ts";
import type { PlannedQuestion } from "../../shared/protocol/planned-questions.ts";
import type { Questions } from "../../shared/protocol/questions.ts";
import { BAKELOG_NAME, LARDER_NAME, SETTINGS_NAME } from "../../shared/sheet/workbook-names.ts";
import { SHEETS } from "../../templates/index.ts";
import { adjustable } from "./adjust.ts";
import { changePart } from "./change-parts.ts";
import { reviewSheet } from "./check-sheet.ts";
import { bringBack, compare, keepVersion, versionsNow } from "./history.ts";
import { buildLabelSheet, LABEL_SHEETS, readLabels } from "./label-sheets.ts";
import { linkSheets } from "./link.ts";
import { listAll } from "./list-all.ts";
import { isCurrent, sizesIn } from "./list-row.ts";
import { addMissing } from "./missing.ts";
import { type Prepared, prepare, pricePlan } from "./prepare.ts";
import { readPriceSheet, takePrices } from "./price-list.ts";
import { buildProduction } from "./production/build.ts";
import { buildByCustomer } from "./production/by-customer.ts";
import { buildCards, nightPages } from "./production/cards.ts";
import { keepLots } from "./production/lots.ts";
import { listProductions } from "./production/read.ts";
import { buildTimetable } from "./production/timetable.ts";
import { buildToOrder } from "./production/to-order.ts";
import { buildWeighUp } from "./production/weigh-up.ts";
import { lawIn, moneyIn, readSettings } from "./settings.ts";
import { formulas, handOut } from "./staff-card.ts";
import { look, make, type Steps, withNotes } from "./steps.ts";
import { takeChanges } from "./take-changes.ts";

type RawQuestion = Readonly<Record<string, unknown>>;
/** `now` is the clock of whoever asks: the day of a sheet is that of the person, not that of a server. */
type Planner<Q extends PlannedQuestion> = (question: RawQuestion, now: Date) => Steps<Questions[Q]["answer"]>;

const PLANNERS: { readonly [Q in PlannedQuestion]: Planner<Q> } = {
  build,
  formulas,
  card: handOut,
  review: reviewSheet,
  change: changePart,
  day: buildProduction,
  purchases: buildToOrder,
  productions: listProductions,
  weighUp: buildWeighUp,
  timetable: buildTimetable,
  customers: buildByCustomer,
  cards: buildCards,
  night: nightPages,
  keepLots,
  list: listAll,
  settings: readSettings,
  link: linkSheets,
  missing: addMissing,
  adjusting: adjustable,
  takeChanges,
  versions: versionsNow,
  keepVersion,
  compare,
  bringBack,
  labels: readLabels,
  priceSheet: readPriceSheet,
  takePrices,
};

export const PLANNED: ReadonlySet<string> = new Set(Object.keys(PLANNERS));
export const isPlanned = (question: string): question is PlannedQuestion => PLANNED.has(question);

/** The steps that answer a question. */
export const stepsFor = <Q extends PlannedQuestion>(
  question: Q,
  rest: RawQuestion,
  now: Date,
): Steps<Questions[Q]["answer"]> => PLANNERS[question](rest, now);

function* build(question: RawQuestion, now: Date): Steps<Questions["build"]["answer"]> {
  const order = readOrder(question, SHEETS);
  const dated = { ...order, values: { date: dayNumber(now), ...order.values } };
  const title = typeof order.values.title === "string" ? order.values.title : order.model.title;
  if (order.model.parts.includes("products")) return yield* buildPrices(dated, title);
  if (LABEL_SHEETS.includes(order.model)) return yield* buildLabelSheet(dated, title);
  const prepared = yield* prepare(dated);
  const answer = yield* built(prepared, title);
  return prepared.listDue === true ? { ...answer, listDue: true } : answer;
}

/** The table reads the formula list, which comes first. */
function* buildPrices(order: ReturnType<typeof readOrder>, title: string): Steps<Questions["build"]["answer"]> {
  const seen = yield* look({
    names: [LARDER_NAME, BAKELOG_NAME],
    cells: [LARDER_NAME, SETTINGS_NAME],
    list: true,
    words: [],
    unnamed: true,
  });
  const larder = seen.names.find(({ name }) => name === LARDER_NAME)?.values;
  const isLogged = seen.names.some(({ name }) => name === BAKELOG_NAME);
  const settings = seen.names.find(({ name }) => name === SETTINGS_NAME)?.values ?? [];
  const inMoney = {
    ...order,
    options: { ...order.options, ...moneyIn(settings) },
    values: { ...(larder === undefined ? {} : { country: lawIn(settings) || null }), ...order.values },
  };
  const planOf = (rows: typeof seen.list) => pricePlan(inMoney, larder, sizesIn(rows), isLogged);
  if (larder === undefined || isCurrent(seen.list)) return yield* make(planOf(seen.list), title);
  const list = yield* listAll();
  try {
    const { list: rows } = yield* look({ list: true, words: [], unnamed: true });
    return withNotes(yield* make(planOf(rows), title), list.note);
  } catch (error) {
    const because = error instanceof Error ? error.message : String(error);
    const says = `${because} The sheet ${quote(list.sheet)}, which it reads, is built and stays.`;
    throw new Refusal([{ ...(error instanceof Refusal && error.faults[0]), says }]);
  }
}

function* built({ sheetPlan, note, row }: Prepared, title: string): Steps<Questions["build"]["answer"]> {
  return withNotes(yield* make(sheetPlan, title, [], row === undefined ? {} : { row }), note);
}

const NOT_BUILT = "The sheet could not be built, and nothing was changed";
const NOT_CHANGED = "The sheet could not be changed, and stands as it was";
const NOT_READ = "The workbook could not be read";
const UNDONE: { readonly [Q in PlannedQuestion]: string } = {
  build: NOT_BUILT,
  card: NOT_BUILT,
  day: NOT_BUILT,
  purchases: NOT_BUILT,
  weighUp: NOT_BUILT,
  timetable: NOT_BUILT,
  customers: NOT_BUILT,
  cards: NOT_BUILT,
  night: NOT_READ,
  keepLots: "The lots could not be kept",
  list: NOT_BUILT,
  change: NOT_CHANGED,
  formulas: NOT_READ,
  productions: NOT_READ,
  review: NOT_READ,
  settings: NOT_READ,
  missing: "The ingredients could not be added",
  link: "The formula sheets could not be linked",
  adjusting: NOT_READ,
  versions: NOT_READ,
  compare: NOT_READ,
  takeChanges: NOT_CHANGED,
  keepVersion: "The version could not be kept",
  bringBack: NOT_CHANGED,
  labels: NOT_READ,
  priceSheet: NOT_READ,
  takePrices: "The prices could not all be written. Compare prices to see which were",
};

/** What a person reads when a planned question fails; what was being built has been removed by then. */
export function undone(question: PlannedQuestion, error: unknown): string {
  const message = error instanceof Error ? error.message : String(error);
  return error instanceof Refusal ? message : `${UNDONE[question]}: ${message}`;
}
