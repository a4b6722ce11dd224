// A recipe as somebody found it, line by line: grams, names and kinds, or the question that each line leaves open.

import { CellError, type Fault } from "../base/refusal.ts";
import { shown } from "../base/show.ts";
import type { CupSystem } from "../base/volumes.ts";
import { isBlank } from "../cells/hint.ts";
import { type Larder, larder } from "../larder/larder.ts";
import { aboutLine, isMethodHeading } from "./asides.ts";
import { type LineWeight, lineWeigher } from "./grams.ts";
import { kindOf, prefermentIn } from "./kinds.ts";
import { ingredientIn, nameIn, wordsOf } from "./name-in.ts";
import type { ReadLine, ReadRecipe, WrittenLine, WrittenRecipe } from "./read-line.ts";
import { withoutSections } from "./sections.ts";

/** What reading needs to know; `cells` are those of the shop's larder, with its headings. */
type Kitchen = { readonly cups: CupSystem; readonly larder: Larder };

export function readRecipe({ cups, lines }: WrittenRecipe, cells: readonly (readonly unknown[])[]): ReadRecipe {
  const faults: Fault[] = [];
  const own = larder(true).decode(cells, "larder", faults);
  const builtIn = larder(true).decode([], "larder", []);
  const kitchen = { cups, larder: faults.length === 0 ? own : builtIn };
  const says =
    faults.length === 0
      ? ""
      : `The shop's larder was left aside, as it cannot be read: ${new CellError(faults).message}`;
  const read = readAll(lines, kitchen);
  const title = read.find(({ is, asks }) => is !== "heading" || asks !== "");
  const isTitle = title !== undefined && title.says === TITLE;
  return { title: isTitle ? title.text.replace(/[\s:.]+$/, "").slice(0, 80) : "", lines: withoutSections(read), says };
}

const TITLE = "Taken as the name of the recipe.";

function readAll(lines: readonly WrittenLine[], kitchen: Kitchen): ReadLine[] {
  let inMethod = false;
  let isFirst = lines.length > 1;
  return lines.flatMap(({ text, name }, from) => {
    if (isBlank(text)) return [];
    if (isMethodHeading(text)) inMethod = true;
    else if (/:\s*$/.test(text)) inMethod = false;
    const read = inMethod && name === "" ? [methodLine(text)] : readLine(text.trim(), name.trim(), kitchen);
    const [only] = read;
    const isTitle = isFirst && read.length === 1 && only?.is === "aside" && only.says === NOTHING && text.length <= 80;
    isFirst = false;
    return read.map((one) => ({ ...one, says: isTitle ? TITLE : one.says, from }));
  });
}

type Read = Omit<ReadLine, "from">;

const kept = (text: string, is: "heading" | "aside", says: string): Read => ({
  text,
  is,
  says,
  name: "",
  kind: "",
  grams: null,
  asks: "",
});

function methodLine(text: string): Read {
  if (isMethodHeading(text)) return kept(text, "heading", "What follows is read as the method.");
  return kept(text, "aside", "Part of the method.");
}

const NOTHING = "No amount, and no ingredient that the larder knows.";

/** One line as asked; several where it holds several ingredients, each with an amount of its own. */
function readLine(text: string, named: string, kitchen: Kitchen): Read[] {
  const weight = weighed(text, named, kitchen);
  if (weight.is === "unclear" && weight.why.startsWith("two ingredients")) {
    const parts = text.split(/[;,+]\s+|\s(?:and|&)\s/).map((part) => part.trim());
    const read = parts.map((part) => [part, weighed(part, "", kitchen)] as const);
    if (read.every(([, one]) => one.is === "weighed")) {
      return read.map(([part, one]) => ({
        ...ingredientLine(part, "", one, kitchen),
        says: sentences([...remarksOf(one), "stood in one line with others"]),
      }));
    }
  }
  if (weight.is !== "blank") {
    const step = named === "" ? aboutLine(text, true) : undefined;
    return [step === undefined ? ingredientLine(text, named, weight, kitchen) : kept(text, ...step)];
  }
  const about = named === "" ? aboutLine(text, false) : undefined;
  if (about !== undefined) return [kept(text, ...about)];
  if (weight.why !== "no amount") return [kept(text, weight.why === "a heading" ? "heading" : "aside", "")];
  const words = wordsOf(text);
  if (named === "" && ingredientIn(words, kitchen) === undefined && prefermentIn(text) === undefined)
    return [kept(text, "aside", NOTHING)];
  return [ingredientLine(text, named, weight, kitchen)];
}

function weighed(text: string, named: string, { cups, larder }: Kitchen): LineWeight {
  try {
    return lineWeigher(cups, larder)(text, named === "" ? null : named);
  } catch (error) {
    // Two rows of the shop's larder that may be meant, or one that cannot be read.
    if (error instanceof CellError) return { is: "unclear", why: error.message };
    throw error;
  }
}

function ingredientLine(text: string, named: string, weight: LineWeight, kitchen: Kitchen): Read {
  const words = wordsOf(text);
  const found = ingredientIn(named === "" ? words : named.split(/\s+/), kitchen);
  const name = named === "" ? nameIn(words, text, found, kitchen) : named;
  const kind = kindOf(found, `${name} ${named === "" ? text : ""}`);
  const isSure = weight.is === "weighed" && weight.unsure === undefined && weight.most > 0;
  const asks = [
    ...(name === "" ? ["which ingredient is it? Enter its name"] : []),
    ...(isSure ? [] : [question(weight)]),
    ...(kind.word === "" && name !== "" ? [kind.asks] : []),
  ];
  return {
    text,
    is: "ingredient",
    name,
    kind: kind.word,
    grams: isSure ? (weight.least + weight.most) / 2 : null,
    says: sentences([...remarksOf(weight), ...(kind.says === "" ? [] : [kind.says])]),
    asks: sentences(asks),
  };
}

function question(weight: LineWeight): string {
  if (weight.is === "blank") return "there is no amount. Enter its grams, or take the line out";
  if (weight.is === "unclear") return weight.why;
  return weight.unsure ?? "the amount is 0; enter its grams, or take the line out";
}

function remarksOf(weight: LineWeight): string[] {
  if (weight.is !== "weighed") return [];
  const { least, most, remarks, unsure } = weight;
  if (least === most || unsure !== undefined) return [...remarks];
  return [`${shown(least, 1)} to ${shown(most, 1)} g; the middle is taken`, ...remarks];
}

/** Clauses as sentences: "no amount" becomes "No amount." */
function sentences(clauses: readonly string[]): string {
  return clauses
    .map((clause) => `${clause.charAt(0).toUpperCase()}${clause.slice(1)}`.replace(/([^.?!…])$/, "$1."))
    .join(" ");
}
