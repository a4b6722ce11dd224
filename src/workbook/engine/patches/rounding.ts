import type { Cell, FormulaArgument, FunctionDescription, Library } from "../library.ts";
import { failure } from "./errors.ts";

/**
 * Sheets show and compare numbers to 15 significant digits, so the rounding functions look at the number a person reads:
 * ROUND(1.005;2) is 1.01 and INT(0.3/0.1) is 3. The engine rounds the binary number behind it.
 */
const readable = (value: number) => Number(value.toPrecision(15));

/** Moves the decimal point exactly, through the number's text. */
function shifted(value: number, places: number): number {
  const [digits, exponent = "0"] = String(value).split("e");
  return Number(`${digits}e${Number(exponent) + places}`);
}

function toPlaces(value: number, places: number, whole: (size: number) => number): number {
  const size = readable(whole(readable(shifted(readable(Math.abs(value)), places))));
  return Math.sign(value) * shifted(size, -places) || 0;
}

function toStep(value: number, step: number, whole: (count: number) => number): number | Cell {
  if (step === 0) return 0;
  if (value > 0 && step < 0) return failure("#NUM!", "A positive number cannot be rounded to a negative step.");
  return readable(whole(readable(value / step)) * step) || 0;
}

function toMultiple(value: number, step: number): number | Cell {
  if (step === 0 || value === 0) return 0;
  if (value * step < 0) return failure("#NUM!", "The number and the step of MROUND must have the same sign.");
  return readable(Math.floor(readable(value / step) + 0.5) * step);
}

type Rounding = { readonly second: number | undefined; readonly of: (value: number, second: number) => number | Cell };

const ROUNDINGS: Readonly<Record<string, Rounding>> = {
  ROUND: { second: 0, of: (value, places) => toPlaces(value, Math.trunc(places), (size) => Math.floor(size + 0.5)) },
  ROUNDUP: { second: 0, of: (value, places) => toPlaces(value, Math.trunc(places), Math.ceil) },
  ROUNDDOWN: { second: 0, of: (value, places) => toPlaces(value, Math.trunc(places), Math.floor) },
  TRUNC: { second: 0, of: (value, places) => toPlaces(value, Math.trunc(places), Math.floor) },
  INT: { second: undefined, of: (value) => Math.floor(readable(value)) || 0 },
  CEILING: { second: 1, of: (value, step) => toStep(value, step, Math.ceil) },
  FLOOR: { second: 1, of: (value, step) => toStep(value, step, Math.floor) },
  MROUND: { second: undefined, of: toMultiple },
};

/** Replaces the engine's rounding functions. */
export function roundAsRead(library: Library, toNumber: (value: FormulaArgument) => number): void {
  const registry = library.registries.functionRegistry;
  for (const [name, { second, of }] of Object.entries(ROUNDINGS)) {
    const compute: FunctionDescription["compute"] = (value, step) => {
      const format = value && !Array.isArray(value) ? value.format : undefined;
      const result = of(toNumber(value), step === undefined ? (second ?? 0) : toNumber(step));
      return typeof result === "number" ? { value: result, ...(format ? { format } : {}) } : result;
    };
    const known = registry.contains(name) ? registry.get(name) : undefined;
    if (known) registry.replace(name, { ...known, compute });
    else {
      registry.add(name, {
        description: "Rounds a number to the nearest multiple of another.",
        category: "Math",
        args: [
          library.helpers.arg("value (number)", "The number to round."),
          library.helpers.arg("factor (number)", "The multiple to round to."),
        ],
        compute,
      });
    }
  }
}
