import { readNumber } from "../base/number.ts";
import { type Fault, fault, isFault, refuseAll } from "../base/refusal.ts";
import { oneOf, quote, showNumber } from "../base/show.ts";
import { type Ratio, ratio } from "../base/units.ts";
import { foldText, nearest, singularName } from "../base/words.ts";
import { type Reader, unreadable } from "../cells/cell.ts";
import { builtInNamed } from "./built-in-larder.ts";
import { KIND_WORDS, type KindWord, PREFERMENT_WORDS } from "./kind-words.ts";

/** Kinds that a person is offered: the plain ones, and preferments at usual hydrations. */
// Marked as free of effects, so that Code.js, which offers no choices, leaves it out.
export const KIND_CHOICES: readonly string[] = /* @__PURE__ */ (KIND_WORDS as readonly string[]).concat(
  "levain 100%",
  "poolish 100%",
  "biga 55%",
);

/** What a row of a formula is: one of the plain kinds, or a preferment with the flour and water it is made of. */
export type Kind = {
  readonly word: KindWord | "preferment";
  /** Flour as a share of the row's weight: 1 for flour, 1 ÷ (1 + hydration) for a preferment, otherwise 0. */
  readonly flour: Ratio;
  /** Plain water as a share of the row's weight: water, ice, and a preferment's water. */
  readonly water: Ratio;
};

const plain = (word: KindWord): Kind => ({
  word,
  flour: ratio(word === "flour" ? 1 : 0),
  water: ratio(word === "water" || word === "ice" ? 1 : 0),
});
const PLAIN: ReadonlyMap<string, Kind> = new Map(KIND_WORDS.map((word) => [word, plain(word)]));

/** What a row without a kind is where the answer does not depend on which rows are flour. */
export const OTHER = plain("other");

/** A preferment whose flour is this share of its weight; the rest is water. */
const preferment = (flour: number): Kind => ({ word: "preferment", flour: ratio(flour), water: ratio(1 - flour) });

const MAX_HYDRATION = 5;
/** No preferment is drier than this many percent: a lower number was meant in another way. */
const MIN_PERCENT = 20;
const PREFERMENT = new RegExp(`^(${PREFERMENT_WORDS.join("|")})s?(?![a-z])(.*)$`);
/** "100% levain" says its hydration first. */
const HYDRATION_FIRST = new RegExp(`^(\\d[\\d.,]* ?%) ?(${PREFERMENT_WORDS.join("|")})s?$`);

/** A kind as it was typed. The kind of a row without an amount is never read, so an unreadable one waits for its row. */
export type KindCell = Kind | { readonly unread: string };

export const kind = (): Reader<KindCell> => ({
  hint: { of: "kind" },
  read: (raw) => {
    const kindOrFault = readKind(raw);
    return isFault(kindOrFault) ? { unread: kindOrFault.says } : kindOrFault;
  },
});

function readKind(raw: unknown): Kind | Fault {
  const stuck = unreadable(raw);
  if (stuck) return stuck;
  if (typeof raw === "boolean") return plain(raw ? "flour" : "other");
  if (typeof raw === "number") return fromShare(raw);
  if (typeof raw !== "string") return { says: "is no type of ingredient" };
  const word = singularName(raw);
  const known = PLAIN.get(word);
  if (known) return known;
  const bareWords = withoutMarks(raw);
  const first = HYDRATION_FIRST.exec(bareWords);
  if (first) return fromHydration(first[2] ?? "", first[1] ?? "", raw);
  const named = PREFERMENT.exec(bareWords);
  if (named) return fromHydration(named[1] ?? "", (named[2] ?? "").trim(), raw);
  const bare = readNumber(raw, { percent: true });
  if (!("says" in bare) && !bare.marked) return fromShare(bare.value);
  const near = meant(raw);
  return {
    says: `is ${quote(raw)}; ${near.length > 0 ? `perhaps ${oneOf(near)}? Choose` : "choose"} ${KINDS_IN_WORDS}`,
  };
}

/** "levain (100%)", "levain, 100 %" and "levain at 100% hydration" say the same. */
const withoutMarks = (raw: string): string =>
  foldText(foldText(raw).replace(/[()[\]:;=@]|,(?!\d)|(?<!\d),|[-–—](?= )|\b(?:hydration|at)\b/g, " ")).replace(
    / %/g,
    "%",
  );

/** The kinds someone may have had in mind: "fresh yeast" holds one, "butter" has one in the larder, "flower" is near one. */
function meant(raw: string): readonly string[] {
  const words = singularName(raw).split(" ");
  const held = KIND_WORDS.filter((word) => words.includes(word));
  if (held.length > 0) return held;
  const builtIn = builtInNamed(raw);
  return builtIn === undefined ? nearest(raw, [...KIND_WORDS, ...PREFERMENT_WORDS]) : [builtIn.kind];
}

const KINDS_IN_WORDS = `one of ${KIND_WORDS.join(", ")}, or a preferment with its hydration such as "levain 100%"`;

function fromShare(flour: number): Kind | Fault {
  if (flour === 1) return plain("flour");
  if (flour === 0) return plain("other");
  if (flour > 0 && flour < 1) return preferment(flour);
  // 1.25 is a hydration as a share, 125 one in percent.
  const percent = flour > 1 && flour <= MAX_HYDRATION ? flour * 100 : flour;
  const isHydration = percent >= MIN_PERCENT && percent <= MAX_HYDRATION * 100;
  const meant = isHydration ? `; for a starter of that hydration enter "starter ${showNumber(percent)}%"` : "";
  return { says: `is ${showNumber(flour, 4)}${meant}; a number here is the flour's share, from 0 to 1` };
}

function fromHydration(name: string, amount: string, raw: string): Kind | Fault {
  const reading = amount.endsWith("%") ? readNumber(amount, { percent: true }) : undefined;
  if (reading !== undefined && !("says" in reading) && reading.value >= 0 && reading.value <= MAX_HYDRATION)
    return preferment(1 / (1 + reading.value));
  const [, typed = amount] = /(\d[\d.,]* ?%)/.exec(amount) ?? [];
  const bare = readNumber(typed, { percent: true });
  if ("says" in bare) return { says: `${lacking(raw)}, such as "${name} 100%"` };
  // "levain 0.8" is no 0.8 %.
  const percent = bare.marked || bare.value <= 1 ? bare.value * 100 : bare.value;
  if (percent > MAX_HYDRATION * 100 || (bare.marked && percent < MIN_PERCENT))
    return { says: `is ${quote(raw)}; a hydration lies between 0 % and ${MAX_HYDRATION * 100} %` };
  const example = `"${name} ${percent >= MIN_PERCENT ? showNumber(percent) : 100}%"`;
  return { says: bare.marked ? `is ${quote(raw)}; enter ${example}` : `${lacking(raw)}, such as ${example}` };
}

const lacking = (raw: string): string =>
  `is ${quote(raw)} without its hydration; add its water as a share of its flour`;

/** Whether a row has an amount; 0 is an amount. */
type Amounts = readonly (unknown | null)[];

/**
 * The kinds of the rows that have an amount, null for the rest. A row with an amount needs a kind; `names` lets a bare
 * "flour" beside a starter's name be refused; `blank` stands for a kind that is missing, where the answer does not depend on it.
 */
export function kindsOf(
  amounts: Amounts,
  kinds: readonly (KindCell | null)[],
  argument = "kinds",
  names?: readonly (string | null)[],
  blank?: Kind,
) {
  const faults: Fault[] = [];
  const ingredientKinds = amounts.map((amount, index): Kind | null => {
    if (amount === null) return null;
    const cell = kinds[index] ?? null;
    if (cell === null && blank !== undefined) return blank;
    if (cell === null) {
      faults.push(fault(`is blank though the row has an amount. Choose ${KINDS_IN_WORDS}`, argument, index + 1));
      return null;
    }
    const says = "unread" in cell ? cell.unread : misnamed(cell, names?.[index] ?? null);
    if (says !== undefined) faults.push(fault(says, argument, index + 1));
    return "unread" in cell ? null : cell;
  });
  refuseAll(faults);
  return ingredientKinds;
}

function misnamed(cell: Kind, name: string | null): string | undefined {
  if (name === null || cell.word !== "flour" || !/\b(starter|levain|sourdough)\b/.test(singularName(name)))
    return undefined;
  const words = singularName(name);
  if (/\bflour\b/.test(words)) return undefined;
  return `says that ${quote(name)} is all flour; enter "levain 100%" for equal flour and water`;
}

export const isFlour = (kind: Kind | null): boolean => kind?.word === "flour";
export const isPreferment = (kind: Kind | null): boolean => kind?.word === "preferment";
