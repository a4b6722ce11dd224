import { expect } from "vitest";
import { Refusal } from "../../shared/base/refusal.ts";
import type { Options, SheetModel } from "../../shared/sheet/model.ts";
import { call } from "../../src/functions/call.ts";
import type { Argument, SheetFunction } from "../../src/functions/define.ts";
import { FUNCTIONS } from "../../src/functions/index.ts";
import { METRIC_UNITS } from "../kit/units.ts";

/** Runs a sheet function by its name, as a formula cell does. */
export function run(name: string, ...args: unknown[]): unknown {
  return call(functionNamed(name), args);
}

export function functionNamed(name: string): SheetFunction {
  const found = FUNCTIONS.find((one) => one.name === name);
  if (!found) throw new Error(`no function is called ${name}`);
  return found;
}

/** The sentence a call is refused with; a call that is answered fails the test. */
export function refusal(name: string, ...args: unknown[]): string {
  try {
    const answer = run(name, ...args);
    throw new Error(`answered ${JSON.stringify(answer)}`);
  } catch (error) {
    expect(error).toBeInstanceOf(Refusal);
    return (error as Refusal).message;
  }
}

/** Compares cells with cells: texts exactly, numbers within `within`, or a billionth of themselves. */
export function expectCells(actual: unknown, expected: unknown, within?: number): void {
  if (Array.isArray(expected)) {
    expect(Array.isArray(actual), `a block was expected, ${JSON.stringify(actual)} came`).toBe(true);
    const rows = actual as unknown[];
    expect(rows.length).toBe(expected.length);
    expected.forEach((one, index) => {
      expectCells(rows[index], one, within);
    });
  } else if (typeof expected === "number") {
    expect(typeof actual).toBe("number");
    const limit = within ?? 1e-9 * Math.max(1, Math.abs(expected));
    expect(Math.abs((actual as number) - expected), `${actual} against ${expected}`).toBeLessThanOrEqual(limit);
  } else expect(actual).toBe(expected);
}

export const down = (...cells: unknown[]) => cells.map((cell) => [cell]);

/** A call as a person would type it. */
export function typed(name: string, args: readonly Argument[]): string {
  return `=${name}(${args.map(literal).join("; ")})`;
}

function literal(arg: Argument): string {
  if (arg === undefined || arg === "") return "";
  if (Array.isArray(arg)) return `{${arg.map((row) => row.map(literal).join(", ")).join("; ")}}`;
  return typeof arg === "string" ? `"${arg}"` : String(arg);
}

export const METRIC: Options = { ...METRIC_UNITS, parts: [] };

/** Every choice of units and parts of a template. */
export function optionsOf(model: SheetModel): Options[] {
  const parts = model.parts.reduce<string[][]>((sets, part) => sets.flatMap((set) => [set, [...set, part]]), [[]]);
  return parts.flatMap((set) =>
    (["g", "oz"] as const).flatMap((weight) => [
      { ...METRIC, weight, parts: set },
      { ...METRIC, weight, temperature: "F" as const, length: "in" as const, parts: set },
    ]),
  );
}
