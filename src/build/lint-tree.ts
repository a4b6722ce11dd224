// What functions and operators of a formula may be used on, read off its tree.
import { ARITHMETIC_CALLS, OTHER_CALLS, RANGE_CALLS } from "../../shared/sheet/sheet-calls.ts";
import { FUNCTIONS } from "../functions/index.ts";
import type { Formulas, Named } from "./chains.ts";
import { type Node, nodesOf, parseFormula } from "./formula-parser.ts";

const TAKES_RANGES = new Set(RANGE_CALLS);
const ARITHMETIC = new Set(ARITHMETIC_CALLS);
const OTHERS = new Set(OTHER_CALLS);
const NEVER: Readonly<Record<string, string>> = {
  ISBLANK: 'a spilled "" is not blank: compare LEN() with 0',
  COUNTA: 'a spilled "" counts: use COUNT or COUNTIF',
  TEXT: "its patterns depend on the locale: use number formats",
};

/** Names that the whole workbook knows. */
const WORKBOOK_NAMES = new Set([
  "gramwright_larder",
  "gramwright_labels",
  "gramwright_prices",
  "gramwright_bakelog",
  "gramwright_mixlog",
  "gramwright_shop",
  "gramwright_formulas",
  "gramwright_regular",
]);

export const isSheetFunction = (node: Node): boolean => node.is === "call" && node.value.startsWith("BAKE_");

/** What is done to the operands of an operation. */
function howUsed({ value }: Extract<Node, { is: "operation" }>): string {
  if (value === "&") return "joined";
  return value === "=" || value === "<>" ? "compared" : "reckoned with";
}

type Context = { readonly array: boolean; readonly guarded: ReadonlySet<string> };

export function treeFaults(formula: string, formulas: Formulas): string[] {
  const tree = parseFormula(formula);
  if (typeof tree === "string") return [tree];
  const faults: string[] = [];
  visit(tree, { array: false, guarded: new Set() });
  return faults;

  function visit(node: Node, context: Context): void {
    if (node.is === "name" && !formulas.names.has(node.value)) faults.push(`no cell is called @${node.value}`);
    if (node.is === "operation") {
      for (const part of node.parts) checkOperand(part, context, howUsed(node));
      for (const part of node.parts) visit(part, context);
    } else if (node.is === "range") {
      visit(node.from, context);
      visit(node.to, context);
    } else if (node.is === "array") {
      for (const row of node.rows) visit(row, context);
    } else if (node.is === "call") visitCall(node.value, node.args, context);
    else if (node.is === "word" && !WORKBOOK_NAMES.has(node.value)) faults.push(`an unquoted word ${node.value}`);
  }

  function visitCall(name: string, args: readonly Node[], context: Context): void {
    checkFunction(name, args);
    if (name === "IF") {
      const [condition, then, otherwise] = args;
      if (condition) {
        checkOperand(condition, context, "tested", true);
        visit(condition, context);
      }
      if (then) visit(then, { ...context, guarded: union(context.guarded, condition, ">") });
      if (otherwise) visit(otherwise, { ...context, guarded: union(context.guarded, condition, "=") });
      return;
    }
    const inner = name === "ARRAYFORMULA" || name === "SUMPRODUCT" ? { ...context, array: true } : context;
    for (const arg of args) {
      if (ARITHMETIC.has(name)) checkOperand(arg, inner, "reckoned with");
      else if (!TAKES_RANGES.has(name) && !name.startsWith("BAKE_") && name !== "ARRAYFORMULA")
        checkOperand(arg, inner, "taken one by one", true);
      visit(arg, inner);
    }
  }

  function checkOperand(node: Node, { array, guarded }: Context, how: string, onlyRanges = false): void {
    if (node.is === "range" && !array) faults.push(`a range is ${how} outside ARRAYFORMULA`);
    if (node.is !== "name") return;
    const named: Named | undefined = formulas.names.get(node.value);
    if (named?.isRange && !array) faults.push(`the range @${node.value} is ${how} outside ARRAYFORMULA`);
    if (named?.isText && (how === "joined" || how === "compared")) return;
    if (named?.isSpilled && !onlyRanges && !guarded.has(node.value)) {
      faults.push(`@${node.value} is filled by a function and ${how}: put it after IF(LEN(@${node.value})=0;…)`);
    }
  }

  function checkFunction(name: string, args: readonly Node[]): void {
    const why = NEVER[name];
    const isTyped = (node: Node) => node.is !== "name" || formulas.names.get(node.value)?.isSpilled === false;
    if (why !== undefined && !(name === "COUNTA" && args.flatMap((arg) => [...nodesOf(arg)]).every(isTyped)))
      faults.push(`${name}: ${why}`);
    else if (name.startsWith("BAKE_")) {
      const sheetFunction = FUNCTIONS.find((one) => one.name === name);
      const most = sheetFunction === undefined ? 0 : Object.keys(sheetFunction.args).length;
      const least =
        sheetFunction === undefined ? 0 : Object.values(sheetFunction.args).filter(({ is }) => !is.optional).length;
      if (sheetFunction === undefined) faults.push(`${name} is no function`);
      else if (args.length > most || args.length < least)
        faults.push(`${name} takes ${least} to ${most} arguments, not ${args.length}`);
    } else if (!TAKES_RANGES.has(name) && !ARITHMETIC.has(name) && !OTHERS.has(name)) {
      faults.push(`${name} is not among the functions that work everywhere`);
    }
  }
}

/** Names that a condition has made sure of: LEN(@x)=0 for what comes otherwise, LEN(@x)>0 or ISNUMBER(@x) for what comes then. */
function union(guarded: ReadonlySet<string>, condition: Node | undefined, sign: "=" | ">"): ReadonlySet<string> {
  if (condition === undefined) return guarded;
  if (sign === ">") {
    const numbers = [...nodesOf(condition)].flatMap((node) =>
      node.is === "call" && node.value === "ISNUMBER"
        ? node.args.flatMap((arg) => (arg.is === "name" ? [arg.value] : []))
        : [],
    );
    if (numbers.length > 0) return new Set([...guarded, ...numbers]);
  }
  if (condition.is !== "operation") return guarded;
  const [left, right] = condition.parts;
  // (LEN(@x)=0)+(…)>0: neither holds in what comes otherwise.
  if (sign === "=" && condition.value === ">" && left?.is === "operation" && left.value === "+")
    return left.parts.reduce((all, part) => union(all, part, "="), guarded);
  const tests = condition.value === sign && right?.is === "number" && right.value === "0";
  if (!tests || left === undefined) return guarded;
  const names = [...nodesOf(left)].flatMap((node) =>
    node.is === "call" && (node.value === "LEN" || node.value === "COUNT")
      ? node.args.flatMap((arg) => (arg.is === "name" ? [arg.value] : []))
      : [],
  );
  return new Set([...guarded, ...names]);
}
