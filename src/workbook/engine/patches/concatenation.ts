import type { Cell, FormulaArgument, FunctionDescription, Library, Locale, Matrix } from "../library.ts";
import { isMatrix } from "../library.ts";
import { isError } from "./errors.ts";

/**
 * `range&" %"` joins cell by cell in a sheet. The engine reads `&` as CONCATENATE, which would join the whole range to one
 * text; with two arguments it is the operator. A number is joined with the decimal sign of the sheet's locale and its 15
 * digits, as a sheet shows it; the engine joins the point everywhere, and 0.1+0.2 with its tail.
 */
export function joinCellByCell(library: Library): void {
  const registry = library.registries.functionRegistry;
  const concatenate = registry.get("CONCATENATE");
  const compute: FunctionDescription["compute"] = function (...args) {
    const joined = args.map((one) => asJoined(one, this.locale));
    const [left, right] = joined;
    if (joined.length !== 2 || (!isMatrix(left) && !isMatrix(right))) return concatenate.compute.apply(this, joined);
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

/** A number with a part behind its decimal sign as the text that is joined; all else as it is. */
function asJoined(argument: FormulaArgument, locale: Locale): FormulaArgument {
  if (isMatrix(argument)) return argument.map((column) => column.map((cell) => joinedCell(cell, locale)));
  return argument === undefined ? argument : joinedCell(argument, locale);
}

function joinedCell(cell: Cell, locale: Locale): Cell {
  const value = cell?.value;
  if (typeof value !== "number" || Number.isInteger(value)) return cell;
  return { value: String(Number(value.toPrecision(15))).replace(".", locale.decimalSeparator) };
}
