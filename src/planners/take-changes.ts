// Takes the changes of the panel Adjust: into the sheet as a new version, or into a new formula sheet beside it.
import { TABLE_NAMES, TABLES } from "../../shared/adjust/content.ts";
import { contentOf } from "../../shared/adjust/to-content.ts";
import { MINUTES_A_DAY, readTime } from "../../shared/base/clock.ts";
import { isFault } from "../../shared/base/refusal.ts";
import type { TakeChangesAnswer } from "../../shared/protocol/adjust.ts";
import { inputNames } from "../../shared/protocol/order.ts";
import type { Value, Values } from "../../shared/sheet/model.ts";
import { applyWishes, keepAndWrite, mustBeSame, type Read, readAdjustable, takeInPlace, wishesIn } from "./adjust.ts";
import { contentIn, type SheetContent } from "./formula-content.ts";
import { partsOn } from "./parts-on-sheet.ts";
import { prepare } from "./prepare.ts";
import { look, make, type Steps } from "./steps.ts";

type Question = Readonly<Record<string, unknown>>;

export function* takeChanges(question: Question, now: Date): Steps<TakeChangesAnswer> {
  const title = typeof question.title === "string" ? question.title.trim() : "";
  return title === "" ? yield* takeInPlace(question, now) : yield* takeAsSheet(question, title, now);
}

/** The old sheet stays as it is; the new one begins with everything that is typed there, and its first version says where it came from. */
function* takeAsSheet(question: Question, title: string, now: Date): Steps<TakeChangesAnswer> {
  const adjustable = yield* readAdjustable(String(question.sheet));
  mustBeSame(adjustable, question);
  const { after, line } = applyWishes(adjustable, wishesIn(question));
  const wanted = contentOf(adjustable.content.content, adjustable.formula, after);
  const { model, options } = adjustable.content.sheet;
  const [shown] = (yield* look({ sheet: adjustable.sheet, shown: true })).sheets;
  const typed = typedIn(shown === undefined ? adjustable.content : contentIn(shown));
  const tables = TABLE_NAMES.flatMap((table) =>
    TABLES[table].flatMap((name, at): [string, Value[]][] =>
      adjustable.content.has(name) ? [[name, wanted.tables[table].map((line) => line[at] ?? null)]] : [],
    ),
  );
  const values: Values = {
    ...typed,
    ...Object.fromEntries(tables),
    ...wanted.cells,
    ...scaledTo(adjustable, after),
    title,
    version: "1",
    change_1: line.slice(0, MAX_LINE),
    date: null,
  };
  const parts = partsOn(adjustable.content.seen.values, model, options);
  const { sheetPlan, row } = yield* prepare({ template: model.name, model, options: { ...options, parts }, values });
  const { sheet } = yield* make(sheetPlan, title, [], row === undefined ? {} : { row });
  const fresh = yield* readAdjustable(sheet);
  return yield* keepAndWrite(fresh, null, `From ${adjustable.title}: ${line}`, now);
}

const MAX_LINE = 400;

/** Scaled to pieces the sizes say how much it is. */
function scaledTo({ formula }: Read, after: Read["formula"]): Values {
  return after.by === formula.by ? {} : { by: after.by, amount: after.batch.amount };
}

/** All that is typed into a sheet, by the names of its template; a time of day is what it shows. */
function typedIn({ sheet, has, rows, seen }: SheetContent): Values {
  const tables = TABLE_NAMES.map(rows).filter((one) => one !== undefined);
  const value = (row: number, column: number): Value => {
    const cell = seen.values[row]?.[column] ?? null;
    if (typeof cell === "number" || (typeof cell === "string" && cell !== "")) return cell;
    const time = cell === null ? readTime(seen.shown?.[row]?.[column] ?? "") : null;
    return time === null || isFault(time) ? null : time / MINUTES_A_DAY;
  };
  return Object.fromEntries(
    [...inputNames(sheet.model)].filter(has).flatMap((name): [string, Value | Value[]][] => {
      const zone = sheet.zone(name);
      if (zone === undefined) return [];
      // The first typed row of a table is the one below its row of formulas.
      const table = zone.rows === 1 ? undefined : tables.find(({ first }) => first === zone.row + 1);
      if (table === undefined) return [[name, value(zone.row, zone.column)]];
      return [[name, Array.from({ length: table.many }, (_, at) => value(table.first + at, zone.column))]];
    }),
  );
}
