// What a note on a cell says; every one begins with the product's name, by which it is known again.
import { showNumber } from "../base/show.ts";
import type { Back } from "./typed-weights.ts";

const BY = "Gramwright ";
export const isOwnNote = (text: string): boolean => text.startsWith(BY);

const BACKS: Readonly<Record<Back, string>> = {
  "no order": "Enter the order first, then the weight.",
  "no flour": "The formula needs a flour row. Choose the types and enter the flour first.",
  "nothing left": "Nothing would be left for the other ingredients. Enter less, or change the order.",
  "flour below 0": "The other flours would fall below 0. Enter less.",
  "flour at 0": "The other flours stand at 0 %. Enter their percentages first.",
  "only flour": "Flour is 100 %. Change the order, or scale to flour.",
  mixes: "The mixer cannot take so much of it in a mix. Enter less, or the weight of the whole dough.",
  "too much": "A percentage or the amount would be too large or too small. Enter another weight.",
  "another flour": "Flour of 100 % would mean another flour than now. Enter percentages instead.",
};

const what = (value: unknown): string => {
  if (typeof value === "number") return showNumber(value, 4);
  const text = typeof value === "string" ? value : value instanceof Date ? "a date" : String(value).toUpperCase();
  const long = text.length > 40 ? `${text.slice(0, 40)} …` : text;
  return value instanceof Date ? long : `“${long}”`;
};

export const saysBack = (value: unknown, back: Back): string => `${BY}put back ${what(value)}. ${BACKS[back]}`;
export const saysNoWeight = (value: unknown, unit: string): string =>
  `${BY}cleared ${what(value)}. Enter a weight in ${unit}, as a number from 0.`;
export const saysFormula = (unit: string): string =>
  `${BY}cleared a formula, which may read the weights themselves. Enter a weight in ${unit}, as a number.`;
export const saysNoRow = (value: unknown): string =>
  `${BY}cleared ${what(value)}. Enter the ingredient and its type first, then the weight.`;
export const saysFilled = (value: unknown): string =>
  `${BY}cleared ${what(value)}. This cell is worked out: change what it follows from.`;
export const saysStages = (value: unknown): string =>
  `${BY}cleared ${what(value)}. Enter the weight under Weight: preferment and final mix follow.`;
export const saysOnSteps = (typed: number, onScale: number, unit: string): string =>
  `${BY}took ${showNumber(typed, 4)} ${unit} a mix. The scales show ${showNumber(onScale, 4)} ${unit}.`;
export const saysOrderKept = (): string =>
  `${BY}made the percentages from these weights. The order stays: change it to weigh as much.`;
