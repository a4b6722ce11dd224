// The question of the add-on's own check: one step, in one sheet of its own.
import * as v from "valibot";
import { integer, list, messageReader, type Read, rowsOf, type Sent } from "./message.ts";
import type { Cell, PlacedFormula } from "./self-check.ts";

const MAX_ROWS = 400;
const MAX_COLUMNS = 26;
const MAX_FORMULAS = 40;
const MAX_TEXT = 500;
/** No quotation mark and no !, so that nothing outside the sheet can be named; `;` alone parts arguments. */
const FORMULA = /^=[A-Z0-9_:;()*/]{1,300}$/;
const CALLED = /^(BAKE_[A-Z]+|GRAMWRIGHT_PROBE|GRAMWRIGHT_GIVE|ISBLANK|LEN|ISERROR|IF)$/;

const isCell = (raw: unknown): boolean =>
  typeof raw === "boolean" || Number.isFinite(raw) || (typeof raw === "string" && raw.length <= MAX_TEXT);

const isRectangle = (rows: readonly (readonly unknown[])[]): boolean => {
  const width = rows[0]?.length ?? 0;
  const isWithin = rows.length <= MAX_ROWS && width > 0 && width <= MAX_COLUMNS;
  return isWithin && rows.every((row) => row.length === width);
};

const isHarmless = (formula: string): boolean =>
  FORMULA.test(formula) && (formula.match(/[A-Z_]+(?=\()/g) ?? []).every((called) => CALLED.test(called));

const row = () => integer(0, MAX_ROWS - 1);
const placedFormula = () =>
  v.object({
    row: row(),
    column: integer(0, MAX_COLUMNS - 1),
    formula: v.pipe(v.string(), v.check(isHarmless)),
  } satisfies Readonly<Record<keyof PlacedFormula, v.GenericSchema>>);

/** Formulas are written in one step and read in the next, so that they can calculate between. */
export const readCheckAsk = messageReader("The step of the check", () =>
  v.variant("step", [
    v.object({
      step: v.literal("write"),
      /** "" for a new one. */
      sheet: v.string(),
      cells: v.pipe(
        rowsOf<Cell>(isCell),
        v.check((rows) => isRectangle(rows)),
      ),
      /** Number formats of cells that are no text; "" is the automatic one. */
      formats: rowsOf<string>(isCell),
      formulas: list(placedFormula(), MAX_FORMULAS),
    }),
    v.object({ step: v.picklist(["read", "remove", "service"]), sheet: v.string() }),
    v.object({ step: v.literal("insert"), sheet: v.string(), row: row() }),
    /** A weight, as a person would type it over another. */
    v.object({
      step: v.literal("type"),
      sheet: v.string(),
      row: row(),
      column: integer(0, MAX_COLUMNS - 1),
      value: v.pipe(v.number(), v.finite()),
    }),
  ]),
);
export type CheckStep = Sent<typeof readCheckAsk>;

export const readCheckAnswer = messageReader("What the add-on checked", () =>
  v.object({
    sheet: v.string(),
    locale: v.string(),
    values: rowsOf<unknown>(() => true),
    formulas: rowsOf<string>((cell) => typeof cell === "string"),
  }),
);
export type CheckAnswer = Read<typeof readCheckAnswer>;
