// Parts that have a formula sheet of their own: dough and filling of a finished product, a soaker in a dough. They are mixed for it.
import { refuse } from "../../../shared/base/refusal.ts";
import { quote } from "../../../shared/base/show.ts";
import type { Formula, Use } from "../../../shared/production/formula.ts";
import { plainText } from "../../../templates/production/shape.ts";
import { type Overview, sizesOf } from "../overview.ts";
import { levainsOf, mixedOf, planned, text } from "./formula.ts";

/** Put together from parts; nothing of it is mixed. */
export const isFinished = (sheet: Overview): boolean => sheet.zone("part_each") !== undefined;

const plainName = (name: string): string => name.trim().toLowerCase();
const isCalled = (sheet: Overview, name: string): boolean =>
  plainName(sheet.name) === plainName(name) || plainName(sheet.title) === plainName(name);
const cell = (sheet: Overview, name: string): string => sheet.reference(name) ?? '""';

/** A part of a sheet that has one of its own: how much of it is mixed, for a piece or of what is mixed of the taker. */
export type OwnPart = {
  readonly taker: Overview;
  readonly part: Overview;
  /** As the row is called. */
  readonly row: string;
  readonly isRolledIn: boolean;
  /** What is weighed of it, and what is mixed for that: over what boils off and what is left in the pan. */
  readonly weighedLink: string;
  readonly link: string;
  readonly amount: number;
};

/** Parts with a sheet of their own, but for levains, which come out of a chain of feeds. */
function ownPartsOf(taker: Overview, all: readonly Overview[]): OwnPart[] {
  const names = new Map<string, string>();
  for (const { name } of taker.parts) if (name !== "" && !names.has(plainName(name))) names.set(plainName(name), name);
  const fed = levainsOf(taker, all).map(({ row }) => plainName(row));
  const parts = [...names.values()].flatMap((name): OwnPart[] => {
    const part = all.find((one) => one !== taker && isCalled(one, name) && !isFinished(one));
    if (part === undefined || fed.includes(plainName(name))) return [];
    const whole = isFinished(taker) ? "pieces" : "dough";
    const [of, grams] = [cell(taker, whole), cell(taker, "grams")];
    const rows = `SUMPRODUCT((${plainText(cell(taker, "ingredient"))}=${text(plainName(name))})*1;${grams})`;
    return [ownPart(taker, part, name, false, `IF(N(${of})>0;${rows}/${of};0)`, partNow(taker, name, whole))];
  });
  const fat = taker.text("roll_in_name");
  const [rolled, whole] = [taker.number("roll_in"), taker.number("dough_in_all")];
  const dough = fat === "" ? undefined : all.find((one) => one !== taker && isCalled(one, fat) && !isFinished(one));
  if (dough === undefined || rolled === null || whole === null || !(whole > 0)) return parts;
  const [of, weight] = [cell(taker, "dough_in_all"), cell(taker, "roll_in")];
  return [...parts, ownPart(taker, dough, fat, true, `IF(N(${of})>0;N(${weight})/${of};0)`, rolled / whole)];
}

function ownPart(
  taker: Overview,
  part: Overview,
  row: string,
  isRolledIn: boolean,
  weighedLink: string,
  weighed: number,
): OwnPart {
  const usable = cell(part, "yield_part");
  const now = part.number("yield_part") ?? 1;
  return {
    taker,
    part,
    row,
    isRolledIn,
    weighedLink,
    link: `${weighedLink}/IF(N(${usable})>0;${usable};1)`,
    amount: weighed / (now > 0 ? now : 1),
  };
}

/** As it is now, of a piece or of the dough. */
function partNow(taker: Overview, name: string, whole: string): number {
  const weights = taker.figures("grams");
  const of = taker.number(whole) ?? 0;
  const names = taker.column("ingredient");
  const all = names.reduce((sum, one, at) => sum + (plainName(one) === plainName(name) ? (weights[at] ?? 0) : 0), 0);
  return of > 0 ? all / of : 0;
}

/** Everything that is mixed for products, and what is a part of what. */
export function doughsFor(
  products: readonly Overview[],
  all: readonly Overview[],
): { readonly doughs: readonly Overview[]; readonly parts: readonly OwnPart[] } {
  const first = [...new Set(products)];
  const seen = [...first];
  const parts: OwnPart[] = [];
  for (let at = 0; at < seen.length; at++) {
    const some = ownPartsOf(seen[at] as Overview, all);
    parts.push(...some);
    for (const { part } of some) if (!seen.includes(part)) seen.push(part);
  }
  mustEnd(seen, parts);
  return { doughs: seen.filter((sheet) => !isFinished(sheet)), parts };
}

/** What takes of a sheet, for a sentence. */
export const takerOf = (sheet: Overview, parts: readonly OwnPart[]): string =>
  parts.find(({ part }) => part === sheet)?.taker.name ?? "";

function mustEnd(sheets: readonly Overview[], parts: readonly OwnPart[]): void {
  const isOpen = new Map<Overview, boolean>();
  const visit = (sheet: Overview): void => {
    if (isOpen.get(sheet) === true)
      refuse(`${quote(sheet.name)} is made of itself, through its ingredients. Take it out of one of them.`);
    if (isOpen.has(sheet)) return;
    isOpen.set(sheet, true);
    for (const one of parts) if (one.taker === sheet) visit(one.part);
    isOpen.set(sheet, false);
  };
  for (const sheet of sheets) visit(sheet);
}

/** The doughs as the plan works with them, each with what takes of it. */
export const plannedAll = (
  doughs: readonly Overview[],
  all: readonly Overview[],
  parts: readonly OwnPart[],
): Formula[] => doughs.map((sheet) => planned(sheet, all, usesOf(sheet, parts)));

/** Weights of what is mixed of it: fat that is rolled in comes later. */
const usesOf = (sheet: Overview, parts: readonly OwnPart[]): Use[] =>
  parts
    .filter(({ part }) => part === sheet)
    .map(({ taker, amount, isRolledIn }): Use => {
      const mixed = amount * mixedOf(sheet);
      if (!isFinished(taker)) return { dough: taker.name, part: isRolledIn ? mixed / mixedOf(taker) : mixed };
      return { product: taker.name, size: sizesOf(taker)[0]?.size ?? "", perPiece: mixed };
    });
