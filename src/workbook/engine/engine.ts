import { addCellNames } from "./cell-names.ts";
import { attachCustom, type CustomScript, knowCustom } from "./custom.ts";
import { fromTyped, toDialect } from "./dialect.ts";
import type { EvaluatedCell, FormulaArgument, Library, Locale, Model, Position, WorkbookData } from "./library.ts";
import { goWhereCellsAre } from "./patches/all-cells.ts";
import { failCircles } from "./patches/circles.ts";
import { joinCellByCell } from "./patches/concatenation.ts";
import { deleteWithoutCalculating } from "./patches/deleting.ts";
import { followDependents, noteOnce, separateDependents } from "./patches/dependents.ts";
import { refuseEmptyText, renameErrors, sayCounts } from "./patches/errors.ts";
import { writeWhatChanged } from "./patches/exporting.ts";
import { showGraded } from "./patches/graded-formats.ts";
import { askWhoListens } from "./patches/listeners.ts";
import { adaptNothingToNewSheets, gatherColoursWhenAsked, placeWhatIsSeen } from "./patches/many-sheets.ts";
import { addMissing } from "./patches/missing.ts";
import { nameWithoutCalculating } from "./patches/names.ts";
import { calculateLater, clearOnlyCells, openUncalculated, pacer } from "./patches/paced-edits.ts";
import { renameWithoutCalculating } from "./patches/renaming.ts";
import { roundAsRead } from "./patches/rounding.ts";
import { computeOnce } from "./patches/spreads.ts";
import { calculateWhatIsRead } from "./patches/unread-sheets.ts";
import { addPlugins, BATCH, type Command, refusals } from "./plugins.ts";
import type { Stub } from "./stubs.ts";

const written = { weekStart: 1, dateFormat: "yyyy-mm-dd", timeFormat: "hh:mm:ss", formulaArgSeparator: ";" };

/** Numbers are read and shown as the locale does; arguments are parted by `;`, as scripts write them. */
const LOCALES = {
  en_US: { name: "English", code: "en_US", thousandsSeparator: ",", decimalSeparator: ".", ...written },
  de_DE: { name: "Deutsch", code: "de_DE", thousandsSeparator: ".", decimalSeparator: ",", ...written },
} as const satisfies Record<string, Locale>;
export type LocaleCode = keyof typeof LOCALES;

/** A cell as the engine holds it. */
export type FormulaCell = {
  readonly isFormula: boolean;
  readonly format?: string;
  readonly compiledFormula: { toFormulaString(getters: object): string };
};

/** One workbook: the engine's model behind calls that never fail silently. */
export type Engine = {
  readonly library: Library;
  readonly model: Model;
  readonly locale: Locale;
  /** What custom functions did that they never may; empty in a sound workbook. */
  readonly defects: string[];
  /** Reads from the engine; a getter that it does not have is a defect of ours. */
  get<T>(getter: string, ...args: readonly unknown[]): T;
  run(type: string, payload?: object): void;
  /** Runs all commands with one calculation and as one undo step. */
  runAll(commands: readonly Command[]): void;
  /** Runs work that changes the workbook; cells calculate once at its end, or when it reads a value in between. */
  together<T>(work: () => T): T;
  /** Calculates what waits. */
  settle(): void;
  evaluated(position: Position): EvaluatedCell;
  /** The cell's formula in the dialect of scripts; `undefined` when it has none. */
  formula(position: Position): string | undefined;
  /** Writes what a person types: the locale decides what is a number. */
  type(position: Position, text: string): void;
  /** Gives the custom functions their script. The cells of a workbook are calculated when it gets its first one. */
  attach(script: CustomScript): void;
  /** The whole workbook as plain data, which `data` of openEngine takes back. */
  data(): WorkbookData;
  /** The same as JSON. */
  text(): string;
};

/** Getters that tell what was calculated. */
const CALCULATED = /Evaluated|Spread|Spill|isEmpty|Visible/;

const prepared = new WeakSet<object>();

/** Teaches the engine to calculate as a sheet does. Once for the whole process: the engine has one list of functions. */
export function prepare(library: Library): void {
  if (prepared.has(library)) return;
  prepared.add(library);
  const helpers = library.helpers as unknown as { toNumber(value: FormulaArgument, locale: Locale): number };
  const toNumber = (value: FormulaArgument) => helpers.toNumber(value, LOCALES.en_US);
  renameErrors(library);
  sayCounts(library);
  roundAsRead(library, toNumber);
  addMissing(library, toNumber);
  joinCellByCell(library);
  refuseEmptyText(library);
  addPlugins(library);
  addCellNames(library);
  calculateLater(library);
  deleteWithoutCalculating(library);
  nameWithoutCalculating(library);
  renameWithoutCalculating(library);
  clearOnlyCells(library);
  writeWhatChanged(library);
  gatherColoursWhenAsked(library);
  placeWhatIsSeen(library);
  showGraded(library);
  quietly(() => separateDependents(library));
  quietly(() => goWhereCellsAre(library));
  quietly(() => failCircles(library));
  quietly(() => computeOnce(library));
  quietly(() => noteOnce(library));
  quietly(() => followDependents(library));
  quietly(() => calculateWhatIsRead(library));
}

export function openEngine(
  library: Library,
  how: { locale?: LocaleCode; data?: WorkbookData; stubs?: readonly Stub[] } = {},
): Engine {
  prepare(library);
  knowCustom(library, how.stubs ?? []);
  const locale = LOCALES[how.locale ?? "en_US"];
  const empty = { sheets: [{ id: "sheet-1", name: "Sheet1", colNumber: 26, rowNumber: 1000 }], settings: { locale } };
  const model = quietly(() => openUncalculated(() => new library.Model(how.data ?? empty)));
  // The engine's packing of several changed cells fails on running sums (=SUM(B$1:B1) over =SUM(B$1:B2)).
  model.session.commandSquisher = {
    squish: (commands: unknown) => commands,
    unsquish: (commands: unknown) => commands,
  };
  adaptNothingToNewSheets(model);
  askWhoListens(library, model);
  const dispatch = model.dispatch;
  model.dispatch = (type, payload) => dispatch(type, withoutDoubledPercent(type, payload));
  const validate = model.getters.getValidationResultForCellValue;
  if (validate === undefined) throw new Error("The engine does not validate what is typed");
  model.getters.getValidationResultForCellValue = (value, ...rest) => validate(singlePercent(value), ...rest);

  const pacing = pacer(model.getters, () => run("EVALUATE_CELLS", { cellIds: [] }));
  const defects: string[] = [];
  let isCalculated = false;
  const run = (type: string, payload: object = {}) => {
    const { isSuccessful, reasons } = quietly(() => model.dispatch(type, payload));
    pacing.note();
    const real = reasons.filter((reason) => reason !== "NoChanges");
    if (!isSuccessful && real.length > 0) throw new Error(`The workbook refused ${type}: ${real.join(", ")}`);
  };
  const get = <T>(getter: string, ...args: readonly unknown[]): T => {
    const member = model.getters[getter];
    if (member === undefined) throw new Error(`The engine has no ${getter}`);
    if (CALCULATED.test(getter)) pacing.settle();
    return member(...args) as T;
  };
  return {
    library,
    model,
    get,
    locale,
    defects,
    run,
    runAll(commands) {
      refusals.length = 0;
      run(BATCH, { commands });
      const real = refusals.filter((refusal) => !refusal.endsWith("NoChanges"));
      if (real.length > 0) throw new Error(`The workbook refused ${real.join("; ")}`);
    },
    together: pacing.together,
    settle: pacing.settle,
    evaluated: (position) => get<EvaluatedCell>("getEvaluatedCell", position),
    formula(position) {
      const cell = get<FormulaCell | undefined>("getCell", position);
      return cell?.isFormula ? toDialect(library, cell.compiledFormula.toFormulaString(model.getters)) : undefined;
    },
    type(position, text) {
      const plus = /^\+(?=[A-Za-z(])/.test(text) ? `=${text.slice(1)}` : text;
      const content = plus.startsWith("=") ? fromTyped(library, locale, plus) : canonicalNumber(library, locale, plus);
      run("UPDATE_CELL", { ...position, content });
    },
    attach(script) {
      attachCustom(model.getters, { script, report: (defect) => defects.push(defect) });
      // Whoever was never calculated is calculated whole by any command.
      run("EVALUATE_CELLS", isCalculated ? {} : { cellIds: [] });
      isCalculated = true;
    },
    // The engine's own exportData() packs cells too, and fails on running sums.
    data: () => JSON.parse(JSON.stringify(model._exportData(false))) as WorkbookData,
    text: () => JSON.stringify(model._exportData(false)),
  };
}

function canonicalNumber(library: Library, locale: Locale, text: string): string {
  if (locale.decimalSeparator === "." || !library.helpers.isNumber(text, locale)) return text;
  return text.split(locale.thousandsSeparator).join("").replace(locale.decimalSeparator, ".");
}

/** In a percent cell the editor adds a % of its own to a typed "80%". */
function withoutDoubledPercent(type: string, payload: object | undefined): object | undefined {
  const { content } = (payload ?? {}) as { content?: string };
  if (type !== "UPDATE_CELL" || content?.endsWith("%%") !== true) return payload;
  return { ...payload, content: content.slice(0, -1) };
}

/** What is typed is validated before it is stored, with both signs. */
function singlePercent(value: unknown): unknown {
  if (typeof value !== "string" || !value.endsWith("%%")) return value;
  const number = Number(value.slice(0, -2).replace(",", "."));
  return Number.isNaN(number) ? value : number / 100;
}

/** The engine tells its times on the console. */
function quietly<T>(work: () => T): T {
  const { debug } = console;
  console.debug = () => {};
  try {
    return work();
  } finally {
    console.debug = debug;
  }
}
