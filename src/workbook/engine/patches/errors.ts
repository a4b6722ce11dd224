import type { Cell, FormulaArgument, FunctionDescription, Library } from "../library.ts";
import { isMatrix } from "../library.ts";

/** The texts of a sheet's errors, by the engine's names for them. */
const ERROR_TEXTS: Readonly<Record<string, string>> = {
  InvalidReference: "#REF!",
  SpilledBlocked: "#REF!",
  CircularDependency: "#REF!",
  BadExpression: "#ERROR!",
  // A built-in function that cannot use its argument says #VALUE!; what a custom function throws is #ERROR!.
  GenericError: "#VALUE!",
};

/** Makes errors read as they do in a sheet. Must run before the first model is made. */
export function renameErrors(library: Library): void {
  const { CellErrorType, registries } = library;
  for (const [kind, text] of Object.entries(ERROR_TEXTS)) {
    registries.errorTypes.delete(CellErrorType[kind] ?? "");
    CellErrorType[kind] = text;
  }
  for (const text of Object.values(CellErrorType)) registries.errorTypes.add(text);
}

/**
 * Empty text is no number and no truth value: `""*2`, `ROUND("";1)` and `IF("";1;2)` are #VALUE! in a sheet, while the
 * engine counts them as 0 and FALSE. A blank cell stays 0 and FALSE.
 */
export function refuseEmptyText(library: Library): void {
  const registry = library.registries.functionRegistry;
  for (const name of Object.keys(registry.content)) {
    const description = registry.get(name);
    const strict = description.args.map(
      ({ type }) => type.length > 0 && type.every((one) => /NUMBER|BOOLEAN/.test(one)),
    );
    if (!strict.includes(true) || description.args.length === 0) continue;
    registry.replace(name, { ...description, compute: refusing(name, strict, description.compute) });
  }
}

function refusing(
  name: string,
  strict: readonly boolean[],
  compute: FunctionDescription["compute"],
): FunctionDescription["compute"] {
  const last = strict.length - 1;
  return function (...args) {
    for (const [at, argument] of args.entries())
      if (strict[Math.min(at, last)] && isEmptyText(argument))
        return failure("#VALUE!", `Argument ${at + 1} of ${name} is an empty text, which is not a number.`);
    return compute.apply(this, args);
  };
}

function isEmptyText(argument: FormulaArgument): boolean {
  const only = isMatrix(argument) && argument.length === 1 && argument[0]?.length === 1 ? argument[0][0] : argument;
  return only !== undefined && !isMatrix(only as FormulaArgument) && (only as Cell).value === "";
}

const waitingTexts = new Set<string>();

/** In a sheet what a cell shows while its call runs is an error, and spreads like every error. Returns what takes that back. */
export function knowWaiting({ registries }: Library, text: string): () => void {
  if (registries.errorTypes.has(text)) return () => {};
  registries.errorTypes.add(text);
  waitingTexts.add(text);
  return () => {
    registries.errorTypes.delete(text);
    waitingTexts.delete(text);
  };
}

export const isError = ({ value }: Cell): boolean =>
  typeof value === "string" && (/^#(N\/A|[A-Z0-9/]+[!?])$/.test(value) || waitingTexts.has(value));

export const failure = (value: string, message: string): Cell => ({ value, message });

const COUNTED = "Invalid number of arguments for the %(functionName)s function. Expected ";
const SAID: ReadonlyMap<string, string> = new Map([
  [
    `${COUNTED}%(minArgRequired)s minimum, but got %(nbrArgSupplied)s instead.`,
    "%(functionName)s needs %(minArgRequired)s or more arguments, and %(nbrArgSupplied)s are entered.",
  ],
  [
    `${COUNTED}%(maxArgPossible)s maximum, but got %(nbrArgSupplied)s instead.`,
    "%(functionName)s takes at most %(maxArgPossible)s arguments, and %(nbrArgSupplied)s are entered. Where one takes several values, select a range of cells, or enter them as {20; 22}.",
  ],
]);

/** The engine's sentences about the number of arguments, in plain words and with what to do. */
export function sayCounts(library: Library): void {
  library.setTranslationMethod((sentence) => SAID.get(sentence) ?? sentence);
}
