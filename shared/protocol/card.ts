// The question for a staff card.
import * as v from "valibot";
import { refuse, refuseUnread } from "../base/refusal.ts";
import { oneOf, quote } from "../base/show.ts";
import { CARD_AMOUNTS, CARD_KINDS } from "../card/data.ts";
import { messageReader, type Read, text } from "./message.ts";

const MAX_LENGTH = 200;
const MAX_AMOUNT = 1e9;

export const readCardAsk = messageReader(refuseCard, () =>
  v.object({
    sheet: v.nullish(text(MAX_LENGTH), ""),
    kind: v.nullish(v.picklist(CARD_KINDS), CARD_KINDS[0]),
    by: v.nullish(v.picklist(CARD_AMOUNTS), CARD_AMOUNTS[0]),
    /** In the formula sheet's unit, null for what stands there. */
    amount: v.nullish(v.pipe(v.number(), v.finite(), v.gtValue(0), v.ltValue(MAX_AMOUNT)), null),
    ingredient: v.nullish(text(MAX_LENGTH), ""),
  }),
);
export type CardAsk = Read<typeof readCardAsk>;

function refuseCard({ path, input }: v.BaseIssue<unknown>): never {
  const wrong = (what: string, choices: readonly string[]) =>
    refuse(`The ${what} is ${quote(String(input))}; it can be ${oneOf(choices)}.`);
  switch (path?.[0]?.key) {
    case "amount":
      return refuse("The amount of the card is no number above 0; enter one such as 60.");
    case "kind":
      return wrong("kind of card", CARD_KINDS);
    case "by":
      return wrong("amount of the card", CARD_AMOUNTS);
    default:
      return refuseUnread("The question for a card");
  }
}
