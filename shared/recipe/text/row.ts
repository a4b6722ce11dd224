// One row of a recipe: its name, its type and how much of it.

import { CellError } from "../../base/refusal.ts";
import { shown } from "../../base/show.ts";
import { type Grams, grams, gramsIn } from "../../base/units.ts";
import { folded, singularName } from "../../base/words.ts";
import { readNumber } from "../../cells/number.ts";
import { type LineWeight, lineWeigher } from "../grams.ts";
import { kindOf, prefermentIn } from "../kinds.ts";
import { readRecipeLine } from "../line.ts";
import { ingredientIn, nameIn, wordsOf } from "../name-in.ts";
import type { UnitOfColumn } from "./columns.ts";
import type { AmountOf, Corrections, Kitchen, Question, Remark } from "./described.ts";
import { prefermentWordIn } from "./headings.ts";
import { type NumberStyle, withPlainNumbers } from "./numbers.ts";
import { type RowText, rowText, withGrades } from "./row-text.ts";
import { meantNames } from "./spelling.ts";
import { foreignName, typeOf } from "./types.ts";

export type Reading = {
  readonly kitchen: Kitchen;
  readonly corrections: Corrections;
  readonly style: NumberStyle;
  /** The unit of bare numbers, where the text or a person says it. */
  readonly unit: UnitOfColumn;
  /** Whether percentages are amounts in this text. */
  readonly isPercents: boolean;
  /** Whether the text says that its bare numbers are percentages. */
  readonly saysPercents: boolean;
  readonly weigh: (line: string, named: string | null) => LineWeight;
  /** Rows of texts read before, the same way in the same kitchen. */
  readonly known: Map<string, RowRead>;
  /** Lines that are one row each, whatever stands around them among ingredients. */
  readonly plain: Set<string>;
};

export type Ask = Pick<Question, "reason" | "about" | "choices" | "isOpen">;
export type RowRead = {
  readonly text: string;
  readonly name: string;
  readonly readName: string;
  readonly type: string;
  readonly amountOf: AmountOf;
  readonly grams: Grams | null;
  readonly percent: number | null;
  /** A number whose unit nobody said. */
  readonly bare: number | null;
  /** A bare number that was taken for pieces. */
  readonly count: number | null;
  readonly isOptional: boolean;
  readonly isAll: boolean;
  /** Of all of it, what is kept back. */
  readonly keeps: Grams | null;
  readonly isKnown: boolean;
  readonly remarks: readonly Remark[];
  readonly asks: readonly Ask[];
};

/** What a table's other cells say of a row. */
export type Beside = {
  readonly amount?: string;
  readonly unit?: UnitOfColumn | string;
  readonly percent?: number | null;
};

export const weigherOf = ({ cups, larder }: Kitchen): Reading["weigh"] => {
  const weigh = lineWeigher(cups, larder);
  return (line, named) => {
    try {
      return weigh(line, named);
    } catch (error) {
      // Two rows of the bakery's own table that may be meant, or one that cannot be read.
      if (error instanceof CellError) return { is: "unclear", why: error.message };
      throw error;
    }
  };
};

const open = (reason: Ask["reason"], about: readonly string[], choices: readonly string[] = []): Ask => ({
  reason,
  about,
  choices,
  isOpen: true,
});

/** A count that a person may have meant as pieces, or as grams. */
const MOST_PIECES = 30;

type Kept = Pick<Reading, "known" | "plain">;
const kept = new WeakMap<Kitchen["larder"], Map<string, Kept>>();
const MOST_WAYS = 20;
const MOST_KEPT = 5000;

/** The rows that were read before in this way. */
export function rowsRead({
  kitchen,
  corrections,
  style,
  unit,
  isPercents,
}: Omit<Reading, "weigh" | "saysPercents" | keyof Kept>): Kept {
  const ways = kept.get(kitchen.larder) ?? new Map<string, Kept>();
  kept.set(kitchen.larder, ways);
  const way = [kitchen.cups, style, unit, isPercents, JSON.stringify(corrections.names)].join(" ");
  const before = ways.get(way);
  if (before !== undefined) return before;
  if (ways.size >= MOST_WAYS) ways.clear();
  const rows: Kept = { known: new Map(), plain: new Set() };
  ways.set(way, rows);
  return rows;
}

export function readRow(text: string, reading: Reading, beside: Beside = {}): RowRead {
  if (beside.amount !== undefined || beside.unit !== undefined || beside.percent != null)
    return readAfresh(text, reading, beside);
  const before = reading.known.get(text);
  if (before !== undefined) return before;
  const read = readAfresh(text, reading, beside);
  if (reading.known.size >= MOST_KEPT) {
    reading.known.clear();
    reading.plain.clear();
  }
  reading.known.set(text, read);
  return read;
}

function readAfresh(text: string, reading: Reading, beside: Beside): RowRead {
  const plainNumbers = withPlainNumbers(text, reading.style);
  const read = rowText(plainNumbers, beside.amount !== undefined);
  const { percent, body } = percentOf(read, reading);
  const unwet = nameOf(body, reading);
  const amount =
    beside.amount === undefined
      ? amountIn(read.bare, unwet.asked, reading, beside)
      : amountBeside(beside, unwet, reading);
  const named = wetted(unwet, percent, amount.grams !== null || beside.percent != null, read.percents);
  const isRowPercent = percent !== null || beside.percent != null;
  const isNothing =
    amount.grams === null && amount.bare === null && amount.asks.every(({ reason }) => reason === "no amount");
  return {
    text,
    name: named.name,
    readName: named.readName,
    type: named.type,
    amountOf: amount.grams !== null || amount.bare !== null || !isRowPercent ? amount.amountOf : "percentage",
    grams: amount.grams,
    percent: beside.percent ?? percent,
    bare: amount.bare,
    count: amount.count ?? null,
    isOptional: read.isOptional,
    isAll: read.isAll,
    keeps: read.keeps === "" ? null : weightOf(read.keeps, reading),
    isKnown: named.isKnown,
    remarks: [
      ...(read.temperature === null
        ? []
        : [{ reason: "temperature" as const, says: `${shown(read.temperature, 1)} °C` }]),
      ...amount.remarks,
    ],
    asks: [...named.asks, ...(isRowPercent && isNothing ? [] : amount.asks)],
  };
}

/** The percentage that is an amount, and the text without it. */
function percentOf(read: RowText, { isPercents }: Reading): { percent: number | null; body: string } {
  const sure = read.percents.filter(({ says }) => says === "amount");
  if (sure.length > 0) return { percent: isPercents ? (sure[0]?.value ?? null) : null, body: read.plain };
  const [only] = read.percents;
  if (only === undefined || !isPercents) return { percent: null, body: read.plain };
  // "100% rye flour" among percentages; "30% milk" where nothing else is an amount.
  const isAmount = only.says === "perhaps a name" || !/\d/.test(read.bare);
  return isAmount && read.percents.length === 1
    ? { percent: only.value, body: read.bare }
    : { percent: null, body: read.plain };
}

type Named = {
  readonly name: string;
  readonly readName: string;
  readonly asked: string | null;
  readonly type: string;
  readonly isKnown: boolean;
  readonly asks: readonly Ask[];
};

/** "40 g ripe sour (80%)": beside a weight, the percentage of a preferment is its water. */
function wetted(named: Named, amountPercent: number | null, isWeighed: boolean, percents: RowText["percents"]): Named {
  const preferment = named.type === "" ? prefermentIn(named.name) : undefined;
  const [only] = percents;
  if (preferment === undefined || amountPercent !== null || !isWeighed) return named;
  if (only === undefined || percents.length > 1 || only.value < DRIEST || only.value > WETTEST) return named;
  const asks = named.asks.filter(({ reason }) => reason !== "hydration");
  return { ...named, type: `${preferment} ${only.value}%`, asks };
}
/** A preferment's water as a share of its flour, in hundredths. */
const DRIEST = 40;
const WETTEST = 200;

export const nameKeyOf = (name: string): string => folded(name);

function nameOf(body: string, { kitchen, corrections }: Reading): Named {
  const words = wordsOf(body);
  const found = ingredientIn(words, kitchen);
  const plainName = nameIn(words, body, found, kitchen).replace(/^(?:of|de|x|packed)\s+/i, "");
  const readName = withGrades(withPercent(plainName, body, kitchen));
  const taught = corrections.names[nameKeyOf(readName)];
  const name = taught?.name ?? readName;
  const known = taught?.name === undefined ? found : ingredientIn(name.split(/\s+/), kitchen);
  const isKnown = known !== undefined;
  if (taught?.type !== undefined)
    return { name, readName, asked: taught.name ?? null, type: taught.type, isKnown, asks: [] };
  if (name === "") return { name, readName, asked: null, type: "", isKnown: false, asks: [open("which name", [body])] };
  const said = taught?.name === undefined ? `${name} ${body}` : name;
  const type = known === undefined ? typeOf(name, said) : kindOf(known, said);
  const isNew = known === undefined && taught?.name === undefined && prefermentIn(name) === undefined;
  const meant = isNew ? meantNames(kitchen.larder, name) : [];
  const asked = taught?.name ?? (name.includes("%") ? name : foreignName(name));
  const all = { name, readName, asked, type: type.word };
  if (meant.length > 0) return { ...all, isKnown: false, asks: [open("misspelt", [name], [...meant, name])] };
  if (type.word !== "") return { ...all, isKnown, asks: [] };
  if (/^hydration$/i.test(name)) return { ...all, type: "water", isKnown: true, asks: [] };
  const preferment = prefermentIn(name) ?? olderDough(name);
  const ask =
    preferment === undefined
      ? open("which type", [name])
      : open("hydration", [name, preferment], [`${preferment} 100%`, `${preferment} 50%`]);
  return { ...all, isKnown, asks: [ask] };
}

/** "Old dough", "mother": preferments that no type is called after. */
function olderDough(name: string): string | undefined {
  const plain = singularName(name);
  return NO_DOUGH.test(plain) ? undefined : prefermentWordIn(plain) || undefined;
}
const NO_DOUGH = /\b(?:flour|bread|cake|cream|milk|yeast)\b/;

/** "2% milk" is a milk of its own. */
function withPercent(name: string, body: string, kitchen: Kitchen): string {
  if (!body.includes("%") || name === "") return name;
  const percent = /(\d+(?:[.,]\d+)?)\s?%/.exec(body)?.[1];
  const full = `${percent}% ${name}`;
  return ingredientIn(full.split(" "), kitchen)?.name !== ingredientIn(name.split(" "), kitchen)?.name ? full : name;
}

function weightOf(amount: string, { weigh }: Reading): Grams | null {
  const read = weigh(`${amount} flour`, null);
  return read.is === "weighed" ? grams((read.least + read.most) / 2) : null;
}

type AmountRead = Pick<RowRead, "amountOf" | "grams" | "bare" | "remarks" | "asks"> & { readonly count?: number };
const nothing = (asks: readonly Ask[] = []): AmountRead => ({
  amountOf: "nothing",
  grams: null,
  bare: null,
  remarks: [],
  asks,
});

function amountIn(body: string, named: string | null, reading: Reading, { unit }: Beside): AmountRead {
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
  const mayBePieces = isCounted && number <= MOST_PIECES;
  if (unit === "") {
    if (mayBePieces && counted.is === "weighed") return { ...weighedAmount(counted, "count", ""), count: number };
    return { amountOf: "weight", grams: null, bare: number, remarks: [], asks: [] };
  }
  if (mayBePieces && Number.isInteger(number) && unit !== "kg") {
    const pieces = counted.is === "weighed" ? (counted.least + counted.most) / 2 : 0;
    const choices = [`${shown(number)} ${unit}`, `${shown(number)} pieces (${shown(pieces, 1)} g)`];
    return nothing([open("grams or pieces", [shown(number)], choices)]);
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
    return { ...nothing([open("unclear amount", [weight.why, body])]), amountOf: amountOf(of) };
  if (weight.unsure !== undefined)
    return { ...nothing([open("unclear amount", [weight.unsure, body])]), amountOf: amountOf(of) };
  if (!(weight.most > 0)) return nothing([open("no amount", [])]);
  const isRange = weight.least !== weight.most;
  const range = `${shown(weight.least, 1)} to ${shown(weight.most, 1)} g`;
  return {
    amountOf: amountOf(of),
    grams: grams((weight.least + weight.most) / 2),
    bare: null,
    remarks: [
      ...(isRange ? [{ reason: "middle of a range" as const, says: range }] : []),
      ...weight.remarks.map((says) => ({
        reason: says.startsWith("more than this") ? ("used besides" as const) : ("note" as const),
        says,
      })),
    ],
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
  const read = readNumber(plain.replace(/\s*(?:k?g|gr|lbs?|oz|ml|l|%)\.?$/i, ""), {
    threeDecimals: style !== "unclear",
  });
  return "problem" in read ? null : read.value;
}

function amountBeside(beside: Beside, named: Named, reading: Reading): AmountRead {
  const cell = (beside.amount ?? "").trim();
  if (cell === "" || /^[-–—]+$/.test(cell)) return nothing(beside.percent == null ? [open("no amount", [])] : []);
  const unit = String(beside.unit ?? "");
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
  const stated = (unit as UnitOfColumn) || reading.unit;
  // A column's unit goes for everything in it.
  return unit === ""
    ? bareAmount(number ?? 0, counted, stated)
    : bareAmount(number ?? 0, { is: "blank", why: "" }, stated);
}
