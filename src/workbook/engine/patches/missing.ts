// The engine lacks some functions that a sheet has: they are added. Each is left alone, and can go, once the engine has it.
import type { Cell, Library, Matrix } from "../library.ts";
import { isMatrix } from "../library.ts";
import { type Missing, only, type ToNumber, text, wholeOf } from "./arguments.ts";
import { failure, isError } from "./errors.ts";
import { arithmetic, kinds } from "./missing-numbers.ts";

function matchPlace(key: Cell, list: Matrix, mode: number, backwards: boolean): number {
  const cells = list.length === 1 ? (list[0] ?? []) : list.map((column) => column[0] ?? { value: null });
  const same = (value: Cell["value"]) =>
    typeof value === "string" && typeof key.value === "string"
      ? value.toLowerCase() === key.value.toLowerCase()
      : value === key.value;
  const places = cells.map((_, index) => (backwards ? cells.length - 1 - index : index));
  const exact = places.find((index) => same(cells[index]?.value ?? null));
  if (exact !== undefined || mode === 0) return exact ?? -1;
  let best = -1;
  for (const index of places) {
    const value = cells[index]?.value ?? null;
    if (value === null || typeof value !== typeof key.value || key.value === null) continue;
    const isFit = mode < 0 ? value < key.value : value > key.value;
    const bestValue = best < 0 ? null : (cells[best]?.value ?? null);
    if (isFit && (bestValue === null || (mode < 0 ? value > bestValue : value < bestValue))) best = index;
  }
  return best;
}

const conversions: readonly Missing[] = [
  [
    "TO_PERCENT",
    "Shows a number as a percentage.",
    ["value (any)"],
    (value) => (typeof only(value).value === "number" ? { ...only(value), format: "0%" } : only(value)),
  ],
  ["TO_TEXT", "Turns a number into the text that is shown.", ["value (any)"], (value) => text(only(value))],
  [
    "N",
    "Returns the argument as a number.",
    ["value (any)"],
    (value) => {
      const cell = only(value);
      if (isError(cell)) return cell;
      return typeof cell.value === "number" ? cell.value : cell.value === true ? 1 : 0;
    },
  ],
  [
    "T",
    "Returns the argument if it is text.",
    ["value (any)"],
    (value) => (typeof only(value).value === "string" ? only(value) : ""),
  ],
];

const texts = (toNumber: ToNumber): readonly Missing[] => [
  [
    "REGEXMATCH",
    "Whether a text matches a regular expression.",
    ["text (any)", "regular_expression (string)"],
    (value, pattern) => {
      const cell = only(value);
      if (typeof cell.value === "number") return failure("#VALUE!", "REGEXMATCH takes text, and a number is given.");
      return new RegExp(text(only(pattern)), "u").test(text(cell));
    },
  ],
  [
    "REPT",
    "Repeats a text.",
    ["text (string)", "times (number)"],
    (value, times) =>
      wholeOf(times, toNumber) < 0
        ? failure("#VALUE!", "REPT cannot repeat a negative number of times.")
        : text(only(value)).repeat(wholeOf(times, toNumber)),
  ],
  [
    "UNICHAR",
    "The character of a Unicode number.",
    ["number (number)"],
    (code) => String.fromCodePoint(wholeOf(code, toNumber)),
  ],
  [
    "CODE",
    "The number of a text's first character.",
    ["string (string)"],
    (value) => text(only(value)).codePointAt(0) ?? failure("#VALUE!", "CODE takes a text."),
  ],
];

const arrays = (toNumber: ToNumber): readonly Missing[] => [
  [
    "ARRAYFORMULA",
    "Shows the results of an array formula over several cells.",
    ["array_formula (any, range<any>)"],
    (array) => array ?? { value: null },
  ],
  [
    "XMATCH",
    "The place of an item in a row or column.",
    [
      "search_key (any)",
      "lookup_range (any, range)",
      "match_mode (number, default=0)",
      "search_mode (number, default=1)",
    ],
    (key, list, mode, search) => {
      const cells = isMatrix(list) ? list : [[only(list)]];
      const at = matchPlace(
        only(key),
        cells,
        mode === undefined ? 0 : wholeOf(mode, toNumber),
        search !== undefined && wholeOf(search, toNumber) < 0,
      );
      return at < 0 ? failure("#N/A", `Did not find value '${text(only(key))}' in XMATCH evaluation.`) : at + 1;
    },
  ],
  [
    "ARRAY_CONSTRAIN",
    "Cuts an array to a size.",
    ["input_range (any, range)", "num_rows (number)", "num_cols (number)"],
    (array, rows, columns) =>
      (isMatrix(array) ? array : [[only(array)]])
        .slice(0, wholeOf(columns, toNumber))
        .map((cells) => cells.slice(0, wholeOf(rows, toNumber))),
  ],
];

const missingFunctions = (toNumber: ToNumber): readonly Missing[] => [
  ...conversions,
  ...texts(toNumber),
  ...arrays(toNumber),
  ...arithmetic(toNumber),
  ...kinds,
];

/** Adds the functions of a sheet that the engine lacks. */
export function addMissing(library: Library, toNumber: ToNumber): void {
  const registry = library.registries.functionRegistry;
  for (const [name, description, args, compute] of missingFunctions(toNumber)) {
    if (registry.contains(name)) continue;
    registry.add(name, { description, category: "Sheet", args: args.map((one) => library.helpers.arg(one)), compute });
  }
}
