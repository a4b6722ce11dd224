// The formula history: what is kept of a formula, what two versions or two formulas differ in, and one of them brought back.
import { compareFormulas } from "../../shared/adjust/comparison.ts";
import { contentText, readContent } from "../../shared/adjust/content.ts";
import type { Formula } from "../../shared/adjust/formula.ts";
import { formulaOf } from "../../shared/adjust/from-content.ts";
import { inUnits } from "../../shared/adjust/in-units.ts";
import type { Money } from "../../shared/adjust/money.ts";
import { type LabelFacts, type Printed, printedList } from "../../shared/adjust/printed.ts";
import { refuse } from "../../shared/base/refusal.ts";
import { quote } from "../../shared/base/show.ts";
import type { Comparison, TakeChangesAnswer, Versions } from "../../shared/protocol/adjust.ts";
import { type HistoryAnswer, readHistoryAnswer } from "../../shared/protocol/history.ts";
import { keepAndWrite, mustBeSame, type Read, readAdjustable } from "./adjust.ts";
import { aroundOf } from "./around-formula.ts";
import { changesTo, inPlaces } from "./formula-content.ts";
import { formulas } from "./staff-card.ts";
import type { Steps } from "./steps.ts";

type Question = Readonly<Record<string, unknown>>;

export function* versionsNow(question: Question): Steps<Versions> {
  const adjustable = yield* readAdjustable(String(question.sheet ?? ""));
  const { versions } = yield* historyOf(adjustable.id);
  const now = contentText(adjustable.content.content);
  const sorted = [...versions].sort((one, other) => other.number - one.number);
  const { sheets } = yield* formulas();
  return {
    sheet: adjustable.sheet,
    id: adjustable.id,
    seen: adjustable.seen,
    others: sheets.flatMap(({ sheet }) => (sheet === adjustable.sheet ? [] : [sheet])),
    versions: sorted.map(({ number, when, line, content }) => ({ number, when, line, isNow: content === now })),
  };
}

function* historyOf(id: number): Steps<HistoryAnswer> {
  return readHistoryAnswer(yield { ask: "history", id } as const);
}

/** Keeps the sheet as it stands; nothing is kept twice. */
export function* keepVersion(question: Question, now: Date): Steps<TakeChangesAnswer> {
  const adjustable = yield* readAdjustable(String(question.sheet));
  const line = String(question.line ?? "").trim();
  return yield* keepAndWrite(adjustable, null, line === "" ? "Kept as it stands" : line, now);
}

/** A version's formula takes the place of the sheet's, as a version of its own: nothing that was kept goes. */
export function* bringBack(question: Question, now: Date): Steps<TakeChangesAnswer> {
  const adjustable = yield* readAdjustable(String(question.sheet));
  mustBeSame(adjustable, question);
  const number = Number(question.number);
  const content = yield* contentOf(adjustable, number);
  if (content.template !== adjustable.content.content.template)
    refuse(`Version ${number} is of another template. Build that formula as a sheet of its own.`);
  const { units } = adjustable.content.content;
  if (JSON.stringify(content.units) !== JSON.stringify(units))
    refuse(
      `Version ${number} counts in ${content.units.weight}, and the sheet in ${units.weight}. Build it as a sheet of its own.`,
    );
  const wanted = {
    ...content,
    tables: { ...content.tables, rows: inPlaces(adjustable.content.content.tables.rows, content.tables.rows) },
    // What that version had no value for is emptied.
    cells: {
      ...Object.fromEntries(Object.keys(adjustable.content.content.cells).map((name) => [name, null])),
      ...content.cells,
    },
  };
  return yield* keepAndWrite(adjustable, changesTo(adjustable.content, wanted), `Version ${number} brought back`, now);
}

function* contentOf(read: Read, number: number) {
  const { versions } = yield* historyOf(read.id);
  const version = versions.find((one) => one.number === number);
  return version === undefined
    ? refuse(`There is no version ${number} of ${quote(read.sheet)} in the formula history.`)
    : readContent(version.content);
}

/** The sheet in front beside one of its versions, two of its versions, or another formula sheet. */
export function* compare(question: Question): Steps<Comparison> {
  const adjustable = yield* readAdjustable(String(question.sheet));
  const one = yield* sideOf(adjustable, String(question.one));
  const other = yield* sideOf(adjustable, String(question.other));
  return {
    ...compareFormulas(one.formula, other.formula, one.money, adjustable.larder, "name", other.money),
    names: [one.name, other.name],
    // One law for both: what differs is the formula.
    labels: [one, other].map(({ formula, label }) =>
      printedList(formula, { ...label, law: adjustable.label.law }, adjustable.larder),
    ) as [Printed, Printed],
  };
}

type Side = { readonly name: string; readonly formula: Formula; readonly label: LabelFacts; readonly money: Money };

/** "now", a version's number, or the name of another formula sheet. */
function* sideOf(read: Read, side: string): Steps<Side> {
  if (side === "now") return { name: "Now", formula: read.formula, label: read.label, money: read.money };
  if (/^\d+$/.test(side)) {
    const content = yield* contentOf(read, Number(side));
    const around = aroundOf(read.content);
    return {
      name: `Version ${side}`,
      label: read.label,
      money: read.money,
      formula: formulaOf(content, { ...around, has: (name) => name in content.cells || around.has(name) }),
    };
  }
  const other = yield* readAdjustable(side.replace(/^sheet:/, ""));
  const { formula, money } = inUnits(other, read.formula.options);
  // As much of the other as of the one in front.
  return { name: other.title, formula: { ...formula, batch: read.formula.batch }, label: other.label, money };
}
