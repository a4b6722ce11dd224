// What the sidebar's Functions panel shows: every function's words and one example.
import type { FunctionHelp } from "../../shared/protocol/function-help.ts";
import type { Argument, CellValue, Example, SheetFunction } from "../functions/define.ts";
import { FUNCTIONS } from "../functions/index.ts";
import { formulaText } from "./print.ts";

export const functionHelp = (): FunctionHelp[] => FUNCTIONS.map(helpOf);

function helpOf({ name, family, summary, args, returns, examples }: SheetFunction): FunctionHelp {
  const typable = examples.find(({ call }) => call.every((arg) => asTyped(arg) !== null));
  const [first] = examples;
  const example = typable ?? first;
  if (example === undefined) throw new Error(`${name} has no example`);
  return {
    name,
    family,
    summary,
    returns: returns.says,
    args: Object.entries(args).map(([arg, { is, says }]) => ({
      name: arg,
      says: says.replace(/^\(optional\) /, ""),
      needed: !is.optional,
    })),
    example: formulaText(name, example.call),
    gives: resultText(example),
    typed: typable === undefined ? null : typable.call.map((arg) => asTyped(arg) ?? ""),
  };
}

/** An argument as a person types it into one field; null for a block of several columns. */
function asTyped(arg: Argument): string | null {
  if (arg === undefined) return "";
  if (typeof arg !== "object") return typeof arg === "string" ? arg : plain(arg);
  if (arg.some((row) => row.length !== 1)) return null;
  // A blank row inside a column cannot be typed as a list.
  const cells = arg.map((row) => row[0] ?? "");
  if (cells.some((cell) => cell === "")) return null;
  return `{${cells.map((cell) => (typeof cell === "string" ? `"${cell}"` : plain(cell))).join("; ")}}`;
}

const plain = (cell: CellValue): string => (typeof cell === "boolean" ? String(cell).toUpperCase() : String(cell));

function resultText({ gives }: Example): string {
  const shown = (cell: CellValue) => (typeof cell === "number" ? String(Math.round(cell * 1e4) / 1e4) : String(cell));
  if (typeof gives !== "object") return shown(gives);
  return gives.map((row) => row.map(shown).join(", ")).join("; ");
}
