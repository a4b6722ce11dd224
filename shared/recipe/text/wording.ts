// The sentences about a recipe that was read: questions, remarks, why a line was left aside.

import { quote } from "../../base/show.ts";
import type { IgnoredReason, Question, Remark } from "./description.ts";

/** A question as a person reads it; `about` holds what it is about. */
export function questionSays({ reason, about }: Pick<Question, "reason" | "about">): string {
  const [one = "", two = "", three = "", four = ""] = about;
  const sentences: Readonly<Record<Question["reason"], string>> = {
    "which unit": "Which unit are the numbers without a unit in?",
    "which column": `Several columns hold weights: ${one}. Choose the one to use.`,
    "thousands or decimals": `${quote(one)} may be thousands or decimals. Choose what the sign stands for.`,
    "grams or pieces": `Is this a weight, or ${one} pieces?`,
    "no amount": "There is no amount. Enter one, or leave the line out.",
    "unclear amount": `The amount is not clear: ${one}${/[.?!]$/.test(one) ? "" : "."}${/\benter\b/i.test(one) ? "" : " Enter grams."}`,
    "which name": "Which ingredient is it? Enter its name.",
    misspelt: `Is ${quote(one)} one of these?`,
    "which type": `What type is ${quote(one)}? Choose “other” for none of these.`,
    hydration: `How wet is ${quote(one)}? Enter its water as a share of its flour, such as ${two} 100%.`,
    "total differs": `The total says ${one}, the rows add up to ${two}.`,
    "percent and weight differ": `${one}: ${two} and ${three} do not agree. ${three} would be ${four}. The weight is used.`,
    "flour is not 100 %": `The flours add up to ${one}, not to 100 %. Correct a flour, or its type.`,
    "overall and stages differ": `${one}: the overall formula says ${two}, the stages add up to ${three}. The stages are used.`,
    "more than was made": `${one} takes ${two}, but ${quote(three)} makes ${four}. Correct one of them.`,
    "part of the dough": `Is ${quote(one)} part of the dough?`,
    "on top or included": `The dough does not name ${quote(one)}. Do its amounts come on top of the dough, or are they included?`,
    "share of the preferment": `How much of all flour is in ${quote(one)}? Enter a percentage.`,
    "mixed amounts": "Some rows have weights and others percentages. Enter the weight of the flour.",
    "several recipes": `There are several recipes: ${about.join(", ")}.`,
    "several doughs": `There are several doughs: ${about.join(", ")}.`,
    "yield differs":
      two === "" ? "It says a span of pieces. Enter how many." : `${one} is ${two}, and the dough is ${three}.`,
    "step time": `How long does this take: ${quote(one)}? Enter the minutes on the sheet.`,
    "no flour": "No row is flour, and every percentage is of the flour. Choose flour as the type of one.",
    "left out":
      two === "step"
        ? `No ingredient has the ${quote(one)} of this step. If it is missing, enter it on a line of its own.`
        : `No ingredient was read for ${quote(one)}. Enter it on a line of its own, or choose “Not an ingredient”.`,
    "no ingredient": "No ingredient was found in this text. Enter one on each line, such as 500 g flour.",
  };
  return sentences[reason];
}

export const IGNORED_SAYS: Readonly<Record<IgnoredReason, string>> = {
  heading: "Heading",
  title: "Name of the recipe",
  separator: "Divider",
  "web page": "Left out: from the web page",
  nutrition: "Left out: nutrition",
  equipment: "Left out: equipment",
  tin: "The tin",
  note: "Left out: note",
  total: "Total, checked against the rows",
  "column headings": "Headings of the columns",
  "goes on": "Read with the line above",
  "beside the dough": "Left out: used beside the dough",
  "no ingredient": "Left out: no ingredient and no amount found",
  "not an ingredient": "Left out by you",
  yield: "What it makes",
  unit: "Unit of the numbers",
  "other recipe": "Another recipe",
};

export function remarkSays({ reason, says }: Remark): string {
  const sentences: Readonly<Record<Remark["reason"], string>> = {
    temperature: `at ${says}`,
    "middle of a range": `${says}, the middle is used`,
    note: says,
    "used besides": "more of it is used beside the dough",
    divided: "goes in at several times",
    "unit of the text": `read as ${says}`,
    "of the total": "share of the total",
    "other column": says,
    "left over": `${says} is left over`,
    "seed as wet as its build": `taken as wet as its build (${says})`,
  };
  return sentences[reason];
}
