// What the bench asks and what the add-on answers: JSON strings each way, checked at both ends.

import { refuse, refuseUnread } from "../base/refusal.ts";
import { oneOf, quote } from "../base/show.ts";
import type { CardAsk } from "../card/data.ts";
import type { KindPart } from "../drawings/kind-bar.ts";
import type { TinView } from "../drawings/tin-view.ts";
import type { TimedStep } from "../formula/steps.ts";
import type { StartIngredient } from "../larder/start-ingredients.ts";
import type { PriceChange } from "../money/price-changes.ts";
import type { Options, SheetModel, Value, Values } from "../sheet/model.ts";
import type { AdjustQuestions } from "./adjust.ts";
import type { CalculateAnswer, CalculateAsk } from "./calculate.ts";
import type { ConnectAnswer, ConnectAsk } from "./connect.ts";
import type { HistoryAnswer, HistoryAsk, ReviseAnswer, ReviseAsk } from "./history.ts";
import type { InsertAnswer, InsertAsk } from "./insert.ts";
import type { LookAsk, Snapshot } from "./look.ts";
import type { LotRow, LotsAnswer } from "./lots.ts";
import type { MakeAsk } from "./make.ts";
import type { RemakeAsk } from "./remake.ts";
import type { CheckAnswer, CheckStep } from "./self-check.ts";
import type { StockAnswer, StockAsk } from "./stock.ts";
import type { Whole } from "./whole.ts";

export { VERSION } from "../base/version.ts";

export type Order = { readonly template: string; readonly options: Options; readonly values: Values };

/** What the bench knows of a formula sheet; weights in its own unit, null where they are not told or not calculated yet. */
export type FormulaSummary = {
  readonly sheet: string;
  readonly title: string;
  readonly unit: "g" | "oz";
  readonly dough: number | null;
  readonly mixes: number | null;
  readonly pieces: number | null;
  readonly ingredients: readonly string[];
  /** What of it can be ordered: its sizes, "" for the only one of a sheet without names. */
  readonly sizes: readonly string[];
  /** Where it shows an error instead of its weights, and what to do; left out where it shows none. */
  readonly trouble?: string;
};

/** What can be drawn of a formula sheet: nothing of what is not there. */
export type SheetPictures = {
  readonly unit: "g" | "oz";
  readonly length: "cm" | "in";
  readonly parts: readonly KindPart[];
  readonly steps: readonly TimedStep[];
  readonly tin: TinView | null;
};

/** A formula sheet as read: remarks, the worst first, cells whose weight was typed over the sheet's, and figures in sentences. */
export type SheetReview = {
  readonly sheet: string;
  readonly title: string;
  readonly style: string;
  readonly styles: readonly string[];
  readonly remarks: readonly { readonly cell: string; readonly name: string; readonly says: string }[];
  readonly typed: readonly string[];
  /** Parts that it may have, in the order of the sheet, whether it has them, and how many typed cells go where that is changed. */
  readonly parts: readonly { readonly part: string; readonly isThere: boolean; readonly clears: number }[];
  readonly facts: readonly { readonly label: string; readonly says: string }[];
  readonly pictures: SheetPictures;
};

/** Addresses of cells whose weight was taken, and what is said on others. */
export type TakeAnswer = {
  readonly taken: readonly string[];
  readonly notes: readonly { readonly cells: readonly string[]; readonly text: string }[];
};

/** What the add-on answers itself. */
export type ServerQuestions = {
  /** Is anybody there, as the right account? */
  ping: {
    readonly ask: Record<string, never>;
    /** Whether Code.js is as it was packed, and the sum of what stands there. */
    readonly answer: { readonly version: string; readonly whole: Whole; readonly sum: string };
  };
  /** Ingredients into free rows of the sheet that holds them. */
  stock: { readonly ask: StockAsk; readonly answer: StockAnswer };
  /** What formula sheets read of each other, written. */
  connect: { readonly ask: ConnectAsk; readonly answer: ConnectAnswer };
  /** Prices of the ingredient sheet, compared with those last seen; `day` is such as 2026-01-31. */
  prices: { readonly ask: { readonly day: string }; readonly answer: { readonly changes: readonly PriceChange[] } };
  /** One formula into the cell with the cursor. */
  insert: { readonly ask: InsertAsk; readonly answer: InsertAnswer };
  /** The ingredients that it can start with. */
  ingredients: {
    readonly ask: Record<string, never>;
    readonly answer: { readonly ingredients: readonly StartIngredient[] };
  };
  /** Shows a cell of a sheet. */
  goto: {
    readonly ask: { readonly sheet: string; readonly cell: string };
    readonly answer: { readonly sheet: string };
  };
  /** One step of the add-on's own check. */
  check: { readonly ask: CheckStep; readonly answer: CheckAnswer };
  /** Weights typed over those of a formula sheet, please taken. */
  take: { readonly ask: { readonly sheet: string }; readonly answer: TakeAnswer };
  /** What stands in the workbook. */
  look: { readonly ask: LookAsk; readonly answer: Snapshot };
  /** Rows into the lot log. */
  lots: { readonly ask: { readonly rows: readonly LotRow[] }; readonly answer: LotsAnswer };
  /** A planned sheet, written; `note` says what could not be done beside it. */
  make: { readonly ask: MakeAsk; readonly answer: { readonly sheet: string; readonly note?: string } };
  /** A formula sheet, built anew in the place of another, with all that was typed there. */
  remake: { readonly ask: RemakeAsk; readonly answer: { readonly sheet: string; readonly note?: string } };
  /** Versions that are kept, of one formula sheet or of all. */
  history: { readonly ask: HistoryAsk; readonly answer: HistoryAnswer };
  /** A formula sheet, kept as it is and written as a new version. */
  revise: { readonly ask: ReviseAsk; readonly answer: ReviseAnswer };
  /** What sheet functions give. */
  calculate: { readonly ask: CalculateAsk; readonly answer: CalculateAnswer };
};

/** What the bench works out itself from looks and calculations of the add-on, which then makes the sheet. */
export type PlannedQuestions = AdjustQuestions & {
  /** A sheet, please; `note` says what a person should know of it, `listDue` that a list of all formulas is to be built next. */
  build: {
    readonly ask: Order;
    readonly answer: { readonly sheet: string; readonly note?: string; readonly listDue?: boolean };
  };
  /** A list of all formula sheets, please; the sheet in front stays there. */
  list: {
    readonly ask: Record<string, never>;
    readonly answer: { readonly sheet: string; readonly note?: string };
  };
  /** The formula sheets of the workbook, and the name of the sheet in front. */
  formulas: {
    readonly ask: Record<string, never>;
    readonly answer: { readonly front: string; readonly sheets: readonly FormulaSummary[] };
  };
  /** A staff card from a formula sheet, please. */
  card: { readonly ask: CardAsk; readonly answer: { readonly sheet: string; readonly note?: string } };
  /** What can be said of the formula sheet in front, for a style ("" for the usual one). */
  review: { readonly ask: { readonly style: string }; readonly answer: SheetReview };
  /** A part, please put into the formula sheet in front, or taken out; all that was typed elsewhere stays. */
  change: {
    readonly ask: { readonly sheet: string; readonly part: string; readonly isWanted: boolean };
    readonly answer: { readonly sheet: string; readonly note?: string };
  };
  /** The shop's settings as they stand in their sheet, a name and a text each; null without such a sheet. */
  settings: {
    readonly ask: Record<string, never>;
    readonly answer: { readonly rows: readonly (readonly [name: string, value: string])[] | null };
  };
  /** Ingredients with a formula sheet of their own, please read there; the sheets that were changed. */
  link: {
    readonly ask: Record<string, never>;
    readonly answer: { readonly sheets: readonly string[]; readonly note?: string };
  };
  /** What formula sheets use and the ingredient sheet lacks, please into it. */
  missing: {
    readonly ask: Record<string, never>;
    readonly answer: {
      readonly sheet: string;
      readonly added: readonly string[];
      readonly also: readonly string[];
      readonly note?: string;
    };
  };
  /** The rows of the sheet of label texts, headings first; `without` is how many products have no list. */
  labels: {
    readonly ask: Record<string, never>;
    readonly answer: { readonly rows: readonly (readonly string[])[]; readonly without: number };
  };
  /** A production sheet, please; days are such as 2026-01-31. With one day its customers may stand across. */
  day: {
    readonly ask: {
      readonly day: string;
      readonly days?: readonly string[];
      readonly across?: "days" | "customers";
      readonly orders: readonly ProductionOrder[];
    };
    readonly answer: { readonly sheet: string; readonly note?: string };
  };
  /** The production sheets of the workbook with their days, the newest first. */
  productions: {
    readonly ask: Record<string, never>;
    readonly answer: { readonly sheets: readonly { readonly sheet: string; readonly days: readonly string[] }[] };
  };
  /** What a shift weighs, please, and the timetable of one or of all. */
  weighUp: { readonly ask: ShiftAsk; readonly answer: { readonly sheet: string; readonly note?: string } };
  timetable: { readonly ask: ShiftAsk; readonly answer: { readonly sheet: string; readonly note?: string } };
  /** A card for each dough that a shift mixes, please, as sheets or as pages to print. */
  cards: { readonly ask: ShiftAsk; readonly answer: { readonly sheet: string; readonly note?: string } };
  night: { readonly ask: ShiftAsk; readonly answer: { readonly pages: readonly NightPage[] } };
  /** Lots that were entered on weigh-ups, please into the lot log. */
  keepLots: { readonly ask: Record<string, never>; readonly answer: LotsAnswer };
  /** Delivery notes, please. */
  customers: {
    readonly ask: { readonly sheet: string };
    readonly answer: { readonly sheet: string; readonly note?: string };
  };
  /** What to order for a production sheet, please. */
  purchases: {
    readonly ask: { readonly sheet: string };
    readonly answer: { readonly sheet: string; readonly note?: string };
  };
};

/** A shift from one time to just before another, such as 2026-01-31T22:00; the whole production without them. */
export type ShiftAsk = { readonly sheet: string; readonly from?: string; readonly to?: string };

/** A page as rows of cells; widths are those of its columns on a sheet. */
export type NightPage = {
  readonly title: string;
  readonly widths: readonly number[];
  readonly rows: readonly (readonly NightCell[])[];
};
export type NightCell = {
  readonly text: string;
  readonly size: number;
  readonly isBold: boolean;
  readonly isRuled: boolean;
  readonly side: "left" | "right" | "center";
};

export type ProductionOrder = {
  readonly sheet: string;
  readonly size?: string;
  readonly customer?: string;
  readonly pieces: number;
  readonly day?: string;
};

/** All that a panel may ask. */
export type Questions = ServerQuestions & PlannedQuestions;
export type ServerQuestion = keyof ServerQuestions;
export type PlannedQuestion = keyof PlannedQuestions;
export type Question = keyof Questions;

/** `because` is what failed, where it was no refusal: the sentence of a planned question is made by who asked it. */
export type Reply<Q extends Question> =
  | { readonly ok: true; readonly answer: Questions[Q]["answer"] }
  | { readonly ok: false; readonly message: string; readonly because?: string };

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** A question as it arrived: its name and the rest, or a refusal. */
export function readQuestion(json: unknown): { name: string; rest: Record<string, unknown> } {
  let read: unknown;
  try {
    read = JSON.parse(String(json));
  } catch {
    return refuseUnread("The question from the sidebar");
  }
  if (!isRecord(read) || typeof read.ask !== "string") {
    return refuse("The question from the sidebar has no name. Close Gramwright and open it again.");
  }
  return { name: read.ask, rest: read };
}

const MAX_TEXT_LENGTH = 500;
const MAX_ROWS = 1000;

/** An order for a sheet, every part of it checked against the template it names. */
export function readOrder(
  rest: Record<string, unknown>,
  templates: readonly SheetModel[],
): Order & { model: SheetModel } {
  const model = templates.find(({ name }) => name === rest.template);
  if (model === undefined) {
    return refuse(
      `There is no template ${quote(String(rest.template))}; there is ${oneOf(templates.map(({ name }) => name))}.`,
    );
  }
  const options = readOptions(rest.options, model);
  const values = readValues(rest.values, model);
  return { template: model.name, options, values, model };
}

function readOptions(raw: unknown, model: SheetModel): Options {
  const given = isRecord(raw) ? raw : {};
  const parts = Array.isArray(given.parts)
    ? given.parts.filter((part) => model.parts.includes(String(part))).map(String)
    : model.parts;
  return {
    weight: choice(given.weight, ["g", "oz"] as const, "unit of weight"),
    temperature: choice(given.temperature, ["C", "F"] as const, "unit of temperature"),
    length: choice(given.length, ["cm", "in"] as const, "unit of length"),
    parts,
  };
}

function choice<T extends string>(raw: unknown, choices: readonly [T, ...T[]], what: string): T {
  if (raw === undefined) return choices[0];
  return (
    choices.find((one) => one === raw) ?? refuse(`The ${what} is ${quote(String(raw))}; it can be ${oneOf(choices)}.`)
  );
}

const AMOUNT_NAMES = ["dough_wanted", "flour_wanted", "tins", "trays", "weighed"] as const;

/** Names a person may fill in a template: its input cells, its title, and the input columns of its tables. */
export function inputNames(model: SheetModel): Set<string> {
  const names = new Set<string>();
  for (const item of model.bands.flat()) {
    if ("table" in item) {
      for (const { name, role } of item.columns) if (role === "input") names.add(name);
    } else {
      for (const cell of item.lines.flatMap(({ cells }) => cells)) {
        if (cell.name !== undefined && cell.formula === undefined && cell.role !== "helper") names.add(cell.name);
      }
    }
  }
  // One cell takes the amount, whatever it is an amount of; weights become percentages.
  if (names.has("amount")) for (const name of AMOUNT_NAMES) names.add(name);
  return names;
}

function readValues(raw: unknown, model: SheetModel): Values {
  if (raw === undefined) return {};
  if (!isRecord(raw)) return refuseUnread("The inputs from the sidebar");
  const known = inputNames(model);
  const values = new Map<string, Value | Value[]>();
  for (const [name, value] of Object.entries(raw)) {
    if (!known.has(name)) refuse(`The template has no input ${quote(name)}.`);
    values.set(
      name,
      Array.isArray(value) ? value.slice(0, MAX_ROWS).map((one) => readValue(one, name)) : readValue(value, name),
    );
  }
  return Object.fromEntries(values);
}

function readValue(raw: unknown, name: string): Value {
  if (raw === null || raw === undefined || raw === "") return null;
  if (typeof raw === "number" && Number.isFinite(raw)) return raw;
  if (typeof raw === "string" && raw.length <= MAX_TEXT_LENGTH) return raw;
  return refuse(`The input ${name} is neither a number nor a text of up to ${MAX_TEXT_LENGTH} characters.`);
}
