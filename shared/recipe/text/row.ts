// One row of a recipe: its name, its type and how much of it.

import { showNumber } from "../../base/show.ts";
import { type Grams, grams } from "../../base/units.ts";
import { withPlainNumbers } from "./numbers.ts";
import { amountBeside, amountIn } from "./row-amount.ts";
import { type Ask, type Beside, MAX_CACHED, open, type Reading, type RowRead } from "./row-context.ts";
import { nameOf, wetted } from "./row-name.ts";
import { type RowText, rowText } from "./row-text.ts";

export function readRow(text: string, reading: Reading, beside: Beside = {}): RowRead {
  if (beside.amount !== undefined || beside.unit !== undefined || beside.percent != null)
    return readAfresh(text, reading, beside);
  const before = reading.known.get(text);
  if (before !== undefined) return before;
  const row = readAfresh(text, reading, beside);
  if (reading.known.size >= MAX_CACHED) {
    reading.known.clear();
    reading.plain.clear();
  }
  reading.known.set(text, row);
  return row;
}

function readAfresh(text: string, reading: Reading, beside: Beside): RowRead {
  const other = text.includes("%") ? OF_OTHER.exec(text)?.[0] : undefined;
  const plainNumbers = withPlainNumbers(other === undefined ? text : text.replace(other, " "), reading.style);
  const parts = rowText(plainNumbers, beside.amount !== undefined);
  const { percent, body } = percentOf(parts, reading);
  const unwet = nameOf(body, reading);
  const amount =
    beside.amount === undefined
      ? amountIn(parts.bare, unwet.asked, reading, beside)
      : amountBeside(beside, unwet, reading);
  const named = wetted(unwet, percent, amount.grams !== null || beside.percent != null, parts.percents);
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
    isOptional: parts.isOptional,
    isAll: parts.isAll,
    keeps: parts.keeps === "" ? null : weightOf(parts.keeps, reading),
    isKnown: named.isKnown,
    remarks: [
      ...(parts.temperature === null
        ? []
        : [{ reason: "temperature" as const, says: `${showNumber(parts.temperature, 1)} °C` }]),
      ...amount.remarks,
    ],
    asks: [
      ...named.asks,
      ...(isNothing && (isRowPercent || other !== undefined) ? [] : amount.asks),
      ...severalPercents(parts, named.type, reading),
      ...(other === undefined || amount.grams !== null ? [] : [ofOther(other)]),
    ],
  };
}

/** "Butter 25% of dough": no share of the flour, which every other percentage is. */
const OF_OTHER =
  /(?<![\d.,])\d[\d.,]*\s?%\s*(?:of|on|vom|der|de la|della|du)\s+(?:the\s+|total\s+|final\s+)*(?:dough|batter|teig\w*|p[âa]te|impasto|masa|butter|water|filling|whole|mix)(?:\s+weight)?(?!\p{L})/iu;
const ofOther = (share: string): Ask => open("unclear amount", [`${share} is not measured against the flour`]);

/** "100% rye" names a flour; "10% rye" beside another percentage is one as well. */
const isOwn = ({ says, value }: RowText["percents"][number]): boolean =>
  says === "amount" || (says === "perhaps a name" && value !== 100);

/** "90% bread flour, 10% rye" is two rows; of one row nobody knows which percentage is its own. */
function severalPercents({ percents }: RowText, type: string, { isPercents }: Reading): Ask[] {
  const sure = [...new Set(percents.filter(isOwn).map(({ value }) => value))];
  if (!isPercents || sure.length < 2 || !percents.some(({ says }) => says === "amount") || /%$/.test(type)) return [];
  return [open("unclear amount", [`two percentages, ${sure[0]} % and ${sure[1]} %; enter the one that counts`])];
}

/** The percentage that is an amount, and the text without it. */
function percentOf(parts: RowText, { isPercents }: Reading): { percent: number | null; body: string } {
  const sure = parts.percents.filter(({ says }) => says === "amount");
  if (sure.length > 0) return { percent: isPercents ? (sure[0]?.value ?? null) : null, body: parts.plain };
  const [only] = parts.percents;
  if (only === undefined || !isPercents) return { percent: null, body: parts.plain };
  // "100% rye flour" among percentages; "30% milk" where nothing else is an amount.
  const isAmount = only.says === "perhaps a name" || !/\d/.test(parts.bare);
  return isAmount && parts.percents.length === 1
    ? { percent: only.value, body: parts.bare }
    : { percent: null, body: parts.plain };
}

function weightOf(amount: string, { weigh }: Reading): Grams | null {
  const weight = weigh(`${amount} flour`, null);
  return weight.is === "weighed" ? grams((weight.least + weight.most) / 2) : null;
}
