// What a row is called, and of which type it is.

import { foldText, singularName } from "../../base/words.ts";
import { kindOf, prefermentIn } from "../kinds.ts";
import { ingredientIn, nameIn, wordsOf } from "../name-in.ts";
import type { Kitchen } from "./description.ts";
import { prefermentWordIn } from "./headings.ts";
import { foreignName, weighsLike } from "./other-tongues.ts";
import { type Ask, open, type Reading } from "./row-context.ts";
import { type RowText, withGrades } from "./row-text.ts";
import { meantNames } from "./spelling.ts";
import { typeOf } from "./types.ts";

export type Named = {
  readonly name: string;
  readonly readName: string;
  readonly asked: string | null;
  readonly type: string;
  readonly isKnown: boolean;
  readonly asks: readonly Ask[];
};

/** "40 g ripe sour (80%)": beside a weight, the percentage of a preferment is its water. */
export function wetted(
  named: Named,
  amountPercent: number | null,
  isWeighed: boolean,
  percents: RowText["percents"],
): Named {
  const preferment = named.type === "" ? (prefermentIn(named.name) ?? olderDough(named.name)) : undefined;
  const [only] = percents;
  if (preferment === undefined || amountPercent !== null || !isWeighed) return named;
  if (only === undefined || percents.length > 1 || only.value < DRIEST || only.value > WETTEST) return named;
  const asks = named.asks.filter(({ reason }) => reason !== "hydration");
  return { ...named, type: `${preferment} ${only.value}%`, asks };
}

/** A preferment's water as a share of its flour, in hundredths. */
const DRIEST = 40;
const WETTEST = 200;

export const nameKeyOf = (name: string): string => foldText(name);

export function nameOf(body: string, { kitchen, corrections }: Reading): Named {
  const words = wordsOf(body);
  const ingredient = ingredientIn(words, kitchen);
  const plainName = nameIn(words, body, ingredient, kitchen).replace(
    /^(?:of|de|x|packed)\s+|\s+(?:packed|sifted)$/gi,
    "",
  );
  const readName = withGrades(withPercent(withoutArticle(plainName), body, kitchen));
  const taught = corrections.names[nameKeyOf(readName)];
  const name = taught?.name ?? readName;
  const known = taught?.name === undefined ? ingredient : ingredientIn(name.split(/\s+/), kitchen);
  const isKnown = known !== undefined;
  if (taught?.type !== undefined)
    return { name, readName, asked: taught.name ?? null, type: taught.type, isKnown, asks: [] };
  if (name === "") return { name, readName, asked: null, type: "", isKnown: false, asks: [open("which name", [body])] };
  const typeWords = taught?.name === undefined ? `${name} ${body}` : name;
  const type = known === undefined ? typeOf(name, typeWords) : kindOf(known, typeWords);
  const isNew = known === undefined && taught?.name === undefined && prefermentIn(name) === undefined;
  const meant = isNew ? meantNames(kitchen.larder, name) : [];
  const spelling =
    taught?.name ?? (name.includes("%") ? name : known === undefined ? weighsLike(name) : foreignName(name));
  const all = { name, readName, asked: spelling, type: type.word };
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

/** "La esponja", "le levain" */
function withoutArticle(name: string): string {
  const [, rest = ""] = /^(?:la|le|l['’]|il|lo|el|die|der|das|den|dem|het|de)\s*(?<=[\s'’])(.+)$/i.exec(name) ?? [];
  return rest !== "" && prefermentWordIn(singularName(rest)) !== "" ? rest : name;
}

/** "2% milk" is a milk of its own. */
function withPercent(name: string, body: string, kitchen: Kitchen): string {
  if (!body.includes("%") || name === "") return name;
  const percent = /(\d+(?:[.,]\d+)?)\s?%/.exec(body)?.[1];
  const full = `${percent}% ${name}`;
  return ingredientIn(full.split(" "), kitchen)?.name !== ingredientIn(name.split(" "), kitchen)?.name ? full : name;
}
