import type { Cell, FormulaArgument, Getters, Library, Matrix } from "./library.ts";
import { isMatrix } from "./library.ts";
import { failure } from "./patches/errors.ts";
import type { Stub } from "./stubs.ts";

/** The script's side of a custom function. `Date` is the script's own, so that it knows a date when it sees one. */
export type CustomScript = {
  readonly Date: DateConstructor;
  has(name: string): boolean;
  callCustom(name: string, args: unknown[]): unknown;
  /** What a cell holds in place of an answer that is still on its way; undefined where answers are there at once. */
  readonly waiting?: () => string | undefined;
};

/** What the check asks the live service is what no function of ours may give back. */
const ODD_ON_PURPOSE = "GRAMWRIGHT_GIVE";

type Home = { readonly script: CustomScript; readonly report: (defect: string) => void };

// The engine has one list of functions for the whole process; every workbook finds its own script here.
const homes = new WeakMap<object, Home>();
const MAX_TEXT_LENGTH = 50_000;
const DEFECT_NAMES = /^(TypeError|ReferenceError|RangeError|SyntaxError|EvalError|URIError|InternalError)$/;

/** Lets the workbook whose getters are given call its own script. */
export function attachCustom(getters: Getters, home: Home): void {
  homes.set(getters, home);
}

/** Makes custom functions known by name, with their help: a formula read before its function is known stays unreadable for good. */
export function knowCustom(library: Library, stubs: readonly Stub[]): void {
  const registry = library.registries.functionRegistry;
  for (const { name, summary, parameters } of stubs) {
    const args = parameters.map((one) => {
      const optional = /\(optional\)/.test(one.says) ? ", optional" : "";
      return library.helpers.arg(`${one.name} (any, range<any>${optional})`, one.says);
    });
    registry.replace(name, {
      description: summary,
      category: "Gramwright",
      args,
      compute(...args) {
        const homeSheet = homes.get(this.getters);
        if (!homeSheet?.script.has(name)) return failure("#NAME?", `Unknown function: "${name}"`);
        const waiting = homeSheet.script.waiting?.();
        if (waiting !== undefined) return failure(waiting, "");
        return compute(library, name, homeSheet, args);
      },
    });
    // A script's function is called with as few arguments as there are, and says itself what is missing.
    Object.assign(registry.get(name), { minArgRequired: 0 });
  }
}

function compute(
  library: Library,
  name: string,
  { script, report }: Home,
  args: readonly FormulaArgument[],
): Cell | Matrix {
  const defect = (says: string) => {
    if (name !== ODD_ON_PURPOSE) report(says);
    return failure("#ERROR!", says);
  };
  let answer: unknown;
  try {
    answer = script.callCustom(
      name,
      args.map((argument) => received(library, script.Date, argument)),
    );
  } catch (error) {
    const { name: kind, message } = error as Error;
    return DEFECT_NAMES.test(kind) ? defect(`${name} failed: ${kind}: ${message}`) : failure("#ERROR!", message);
  }
  if (!Array.isArray(answer)) {
    const wrong = unfit(answer);
    return wrong === undefined ? { value: answer as Cell["value"] } : defect(`${name} returned ${wrong}`);
  }
  const rows: unknown[] = answer;
  const width = Array.isArray(rows[0]) ? rows[0].length : 0;
  if (width === 0 || rows.some((row) => !Array.isArray(row) || row.length !== width)) {
    return defect(`${name} returned rows of different lengths, an empty list or a list that is not two-dimensional`);
  }
  const wrong = (rows as unknown[][])
    .flat()
    .map(unfit)
    .find((one) => one !== undefined);
  if (wrong !== undefined) return defect(`${name} returned ${wrong}`);
  return Array.from({ length: width }, (_, column) =>
    (rows as Cell["value"][][]).map((row) => ({ value: row[column] ?? "" })),
  );
}

/** What a sheet has no sure way to show, so that no function may return it. */
function unfit(value: unknown): string | undefined {
  if (typeof value === "string") return value.length > MAX_TEXT_LENGTH ? "a text longer than a cell takes" : undefined;
  if (typeof value === "boolean") return undefined;
  if (typeof value === "number") return Number.isFinite(value) ? undefined : String(value);
  return value === null || value === undefined ? String(value) : Object.prototype.toString.call(value);
}

/** An argument as Sheets passes it: one cell its value, several cells their rows, left out `undefined`. */
function received(library: Library, ScriptDate: DateConstructor, argument: FormulaArgument): unknown {
  if (argument === undefined) return undefined;
  if (!isMatrix(argument)) return cellValue(library, ScriptDate, argument);
  const height = argument[0]?.length ?? 0;
  if (argument.length === 1 && height === 1) return cellValue(library, ScriptDate, argument[0]?.[0] ?? { value: null });
  return Array.from({ length: height }, (_, row) =>
    argument.map((column) => cellValue(library, ScriptDate, column[row] ?? { value: null })),
  );
}

/** A blank cell is "", a date a Date of the script, an error its text; a percent or a currency is the plain number. */
export function cellValue(library: Library, ScriptDate: DateConstructor, { value, format }: Cell): unknown {
  if (value === null) return "";
  if (typeof value === "number" && format !== undefined && library.helpers.isDateTimeFormat(format)) {
    return new ScriptDate(1899, 11, 30, 0, 0, Math.round(value * 86_400));
  }
  return value;
}
