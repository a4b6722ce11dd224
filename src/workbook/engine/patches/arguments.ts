// What a function that is added to the engine is given: cells, texts and numbers of its arguments.
import type { Cell, FormulaArgument, FunctionDescription } from "../library.ts";
import { isMatrix } from "../library.ts";

type Compute = FunctionDescription["compute"];
export type ToNumber = (value: FormulaArgument) => number;
export type Missing = readonly [name: string, says: string, args: readonly string[], compute: Compute];

export const only = (argument: FormulaArgument): Cell => {
  const cell = isMatrix(argument) ? argument[0]?.[0] : argument;
  return cell ?? { value: null };
};
export const all = (args: readonly FormulaArgument[]): Cell[] =>
  args.flatMap((argument) => (argument === undefined ? [] : isMatrix(argument) ? argument.flat() : [argument]));
export const text = ({ value }: Cell) =>
  value === null ? "" : typeof value === "boolean" ? (value ? "TRUE" : "FALSE") : String(value);

export function numbersOf(args: readonly FormulaArgument[], toNumber: ToNumber): number[] {
  return args.flatMap((argument) =>
    isMatrix(argument)
      ? argument.flat().flatMap(({ value }) => (typeof value === "number" ? [value] : []))
      : argument === undefined
        ? []
        : [toNumber(argument)],
  );
}

export const wholeOf = (argument: FormulaArgument, toNumber: ToNumber): number => Math.trunc(toNumber(argument));
