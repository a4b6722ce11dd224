// How much of it a row says: a weight, a measure, pieces, or a number whose unit nobody said.

import { readNumber } from "../../base/number.ts";
import { showNumber } from "../../base/show.ts";
import { grams, gramsIn } from "../../base/units.ts";
import type { LineWeight } from "../grams.ts";
import { readRecipeLine } from "../line.ts";
import type { UnitOfColumn } from "./columns.ts";
import type { AmountOf } from "./description.ts";
import { type NumberStyle, withPlainNumbers } from "./numbers.ts";
import { type Ask, type Beside, open, type Reading, type RowRead } from "./row-context.ts";
import type { Named } from "./row-name.ts";

/** A count that a person may have meant as pieces, or as grams. */
const MAX_PIECES = 30;

export type AmountRead = Pick<RowRead, "amountOf" | "grams" | "bare" | "remarks" | "asks"> & {
  readonly count?: number;
};

const nothing = (asks: readonly Ask[] = []): AmountRead => ({
  amountOf: "nothing",
  grams: null,
  bare: null,
  remarks: [],
  asks,
});

export function amountIn(body: string, named: string | null, reading: Reading, { unit }: Beside): AmountRead {
  const line = readRecipeLine(body);
  const first = line.is === "read" && line.entries.length === 1 ? line.entries[0]?.choices[0]?.amount : undefined;
  const [low, high] = [first?.low[0], first?.high[0]];
  const isBare =
    first !== undefined &&
    first.low.length === 1 &&
    low?.unit.of === "count" &&
    low.unit.word === "" &&
    low.unit.size === undefined;
  const isOnly = line.is === "read" && (line.entries[0]?.choices.length ?? 0) === 1;
  if (isBare && isOnly && low !== undefined && high !== undefined) {
    const number = (low.count + high.count) / 2;
    const counted = reading.weigh(body, named);
    return bareAmount(number, counted, (unit as UnitOfColumn) || reading.unit);
  }
  return weighedAmount(reading.weigh(body, named), low?.unit.of, body);
}

/** A number without a unit: pieces of what is counted, else the unit that the text states. */
function bareAmount(number: number, counted: LineWeight, unit: UnitOfColumn): AmountRead {
  const isCounted = counted.is === "weighed" && counted.unsure === undefined;
  const mayBePieces = isCounted && number <= MAX_PIECES;
  if (unit === "") {
    if (mayBePieces && counted.is === "weighed") return { ...weighedAmount(counted, "count", ""), count: number };
    return { amountOf: "weight", grams: null, bare: number, remarks: [], asks: [] };
  }
  if (mayBePieces && Number.isInteger(number) && unit !== "kg") {
    const pieces = counted.is === "weighed" ? (counted.least + counted.most) / 2 : 0;
    const choices = [`${showNumber(number)} ${unit}`, `${showNumber(number)} pieces (${showNumber(pieces, 1)} g)`];
    return nothing([open("grams or pieces", [showNumber(number)], choices)]);
  }
  return {
    amountOf: "weight",
    grams: grams(number * gramsOf(unit)),
    bare: null,
    remarks: unit === "ml" || unit === "l" ? [{ reason: "unit of the text", says: unit }] : [],
    asks: [],
  };
}

/** Grams in a unit of a column; millilitres of a bare number count as grams of water would. */
export const gramsOf = (unit: UnitOfColumn): number =>
  unit === "ml" || unit === "" ? 1 : unit === "l" ? 1000 : gramsIn(unit);

function weighedAmount(weight: LineWeight, of: string | undefined, body: string): AmountRead {
  if (weight.is === "blank") return nothing([open("no amount", [])]);
  if (weight.is === "unclear")
    return { ...nothing([open("unclear amount", [weight.says, body])]), amountOf: amountOf(of) };
  if (weight.unsure !== undefined)
    return { ...nothing([open("unclear amount", [weight.unsure, body])]), amountOf: amountOf(of) };
  if (!(weight.most > 0)) return nothing([open("no amount", [])]);
  const isRange = weight.least !== weight.most;
  const range = `${showNumber(weight.least, 1)} to ${showNumber(weight.most, 1)} g`;
  return {
    amountOf: amountOf(of),
    grams: grams((weight.least + weight.most) / 2),
    bare: null,
    remarks: [...(isRange ? [{ reason: "middle of a range" as const, says: range }] : []), ...weight.remarks],
    asks: [],
  };
}

const amountOf = (of: string | undefined): AmountOf =>
  of === "weight"
    ? "weight"
    : of === "volume"
      ? "measure"
      : of === "count"
        ? "count"
        : of === undefined
          ? "weight"
          : "nothing";

/** A number as a cell of a table shows it: "13 794", "1'250". */
export function cellNumber(cell: string, style: NumberStyle): number | null {
  const plain = withPlainNumbers(cell.replace(/^[~≈]\s*/, ""), style).replace(
    /(\d)[\s\u00a0\u202f'’](?=\d{3}(?!\d))/g,
    "$1",
  );
  const amount = readNumber(plain.replace(/\s*(?:k?g|gr|lbs?|oz|ml|l|%)\.?$/i, ""), {
    threeDecimals: style !== "unclear",
  });
  return "says" in amount ? null : amount.value;
}

/** What a column of units says of things that are counted. */
const COUNTED = /^(?:each|ea|nos?|units?|pcs?|pieces?|count|ct|whole|st|stk|stück|uds?|szt|pz|pezzi|pièces?)\.?$/i;

export function amountBeside(beside: Beside, named: Named, reading: Reading): AmountRead {
  const cell = (beside.amount ?? "").trim();
  if (cell === "" || /^[-–—]+$/.test(cell)) return nothing(beside.percent == null ? [open("no amount", [])] : []);
  if (COUNTED.test(String(beside.unit ?? "")) && /^\d[\d.,]*$/.test(cell))
    return weighedAmount(reading.weigh(`${cell} ${named.name}`, named.asked), "count", cell);
  const unit = COUNTED.test(String(beside.unit ?? "")) ? "" : String(beside.unit ?? "");
  const isBare = !/\p{L}|#/u.test(cell);
  const number = isBare ? cellNumber(cell, reading.style) : null;
  if (isBare && number === null) return { ...nothing([open("thousands or decimals", [cell])]), amountOf: "weight" };
  if (!isBare || (unit !== "" && !/^(?:g|kg|oz|lb)$/.test(unit))) {
    const text = withPlainNumbers(`${cell} ${isBare ? unit : ""} ${named.name}`, reading.style);
    const of = readRecipeLine(text);
    const first = of.is === "read" ? of.entries[0]?.choices[0]?.amount.low[0]?.unit.of : undefined;
    return weighedAmount(reading.weigh(text, named.asked), first, cell);
  }
  if (number === 0) return nothing();
  const counted = reading.weigh(`${cell} ${named.name}`, named.asked);
  const unitOfText = (unit as UnitOfColumn) || reading.unit;
  // A column's unit goes for everything in it.
  return unit === ""
    ? bareAmount(number ?? 0, counted, unitOfText)
    : bareAmount(number ?? 0, { is: "blank", says: "" }, unitOfText);
}
