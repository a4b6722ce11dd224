import type { Cell, FunctionDescription, Library, Matrix } from "../library.ts";
import { isMatrix } from "../library.ts";
import { isError } from "./errors.ts";

/**
 * `range&" %"` joins cell by cell in a sheet. The engine reads `&` as CONCATENATE, which would join the whole range to one
 * text; with two arguments it is the operator.
 */
export function joinCellByCell(library: Library): void {
  const registry = library.registries.functionRegistry;
  const concatenate = registry.get("CONCATENATE");
  const compute: FunctionDescription["compute"] = function (...args) {
    const [left, right] = args;
    if (args.length !== 2 || (!isMatrix(left) && !isMatrix(right))) return concatenate.compute.apply(this, args);
    const whole = isMatrix(left) ? left : (right as Matrix);
    const at = (one: typeof left, column: number, row: number): Cell =>
      (isMatrix(one) ? (one[one.length === 1 ? 0 : column]?.[row] ?? one[0]?.[0]) : one) ?? { value: null };
    return whole.map((cells, column) =>
      cells.map((_, row): Cell => {
        const pair = [at(left, column, row), at(right, column, row)] as const;
        const text = pair.find(isError) ?? concatenate.compute.apply(this, [...pair]);
        return typeof text === "object" && text !== null && !Array.isArray(text)
          ? (text as Cell)
          : { value: text as string };
      }),
    );
  };
  registry.replace("CONCATENATE", { ...concatenate, compute });
}
