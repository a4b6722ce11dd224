// Reads what was typed into the fields of a change; every refusal names the field.

import { readNumber } from "../base/number.ts";
import { isFault, Refusal, refuse } from "../base/refusal.ts";
import { atMost } from "../base/scaling.ts";
import { oneOf, quote, shownShare } from "../base/show.ts";
import { number, type Reader } from "../cells/cell.ts";
import type { Field, Values } from "./change.ts";

/** As many as a cell keeps. */
const DIGITS = 15;

type Bounds = { readonly min?: number; readonly max?: number; readonly above?: number };

export type FieldInput = {
  /** A percentage as a share: 68, "68%" and "68 %" are 0.68. Null where it may be blank and is. */
  readonly share: (name: string, bounds: Bounds) => number;
  readonly shareOrBlank: (name: string, bounds: Bounds) => number | null;
  readonly number: (name: string, what: string, bounds: Bounds) => number;
  readonly numberOrBlank: (name: string, what: string, bounds: Bounds) => number | null;
  readonly choice: <T extends string>(name: string, choices: readonly T[]) => T;
  readonly text: (name: string) => string;
  /** Words of the arithmetic are those of its functions; a person reads the labels of the fields. */
  readonly named: <T>(words: Readonly<Record<string, string>>, work: () => T) => T;
};

export function fieldReader(fields: readonly Field[], values: Values): FieldInput {
  const typed = (name: string): string => (values[name] ?? fields.find((one) => one.name === name)?.start ?? "").trim();
  const label = (name: string): string => fields.find((one) => one.name === name)?.label ?? name;
  const read = <T>(name: string, reader: Reader<T>, text: string): T => {
    const value = reader.read(text);
    return isFault(value) ? refuse(`${label(name)} ${value.says}.`) : value;
  };
  const missing = (name: string, what: string): never => refuse(`${label(name)} is blank. Enter ${what}.`);
  const shareOrBlank = (name: string, bounds: Bounds): number | null => {
    const text = typed(name);
    if (text === "") return null;
    const plain = readNumber(text, { percent: true });
    const reader = number<number>("a percentage such as 68", {}, { percent: true });
    const share = read(name, reader, "says" in plain || plain.marked ? text : `${text}%`);
    mustLieWithin(share, bounds, label(name));
    // 33.3 ÷ 100 has a hair less than 0.333 in binary.
    return Number(share.toPrecision(DIGITS));
  };
  const numberOrBlank = (name: string, what: string, bounds: Bounds): number | null => {
    const text = typed(name);
    return text === "" ? null : read(name, number<number>(what, bounds), text);
  };
  return {
    share: (name, bounds) => shareOrBlank(name, bounds) ?? missing(name, "a percentage such as 68"),
    shareOrBlank,
    number: (name, what, bounds) => numberOrBlank(name, what, bounds) ?? missing(name, what),
    numberOrBlank,
    choice: (name, choices) => {
      const text = typed(name);
      return (
        choices.find((one) => one === text) ??
        refuse(`${label(name)} is ${text === "" ? "blank" : quote(text)}. Choose ${oneOf(choices)}.`)
      );
    },
    text: (name) => typed(name),
    named: (words, work) => {
      try {
        return work();
      } catch (error) {
        if (!(error instanceof Refusal)) throw error;
        const remarkOf = (text: string) =>
          Object.entries(words).reduce((all, [word, name]) => all.split(word).join(label(name).toLowerCase()), text);
        throw new Refusal(
          error.faults.map((one) => ({
            says: one.argument === undefined ? one.says : capital(remarkOf(`${one.argument} ${one.says}`)),
          })),
        );
      }
    },
  };
}

function mustLieWithin(
  share: number,
  { min = -Infinity, above = -Infinity, max = Infinity }: Bounds,
  label: string,
): void {
  const is = `${label} is ${shownShare(share, 4)}.`;
  if (share > max && !atMost(share, max)) refuse(`${is} Enter at most ${shownShare(max)}.`);
  if (share < min && !atMost(min, share)) refuse(`${is} Enter at least ${shownShare(min)}.`);
  if (share <= above) refuse(`${is} Enter more than ${shownShare(above)}.`);
}

const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);
