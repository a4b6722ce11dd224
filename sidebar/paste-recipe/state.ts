// What stands in the panel Paste recipe: the text, what a person said of it, and what the sheet is to be.

import type { CupSystem } from "../../shared/base/volumes.ts";
import { larder } from "../../shared/larder/larder.ts";
import {
  type Corrections,
  type LineCorrection,
  lineKey,
  type NameCorrection,
  NO_CORRECTIONS,
} from "../../shared/recipe/text/corrections.ts";
import type { Described, Kitchen } from "../../shared/recipe/text/description.ts";
import { type RecipePart, recipesIn } from "../../shared/recipe/text/recipes.ts";
import { nameKeyOf } from "../../shared/recipe/text/row-name.ts";
import type { Units } from "../new-formula/quantity.ts";
import type { Shop } from "../new-formula/shop.ts";
import { isTyping, keysOf, type RecipeKey } from "./recipe-keys.ts";

/** What a person chose for one recipe; what is left out follows the text. */
export type RecipeChoices = {
  title?: string;
  template?: string;
  pieces?: string;
  weight?: string;
  dough?: string;
  loss?: string;
  /** Of the tin, where the text leaves it out. */
  depth?: string;
  /** The name of the finished product. */
  product?: string;
};

export type PasteState = {
  text: string;
  /** Counts the texts that had nothing to do with the one before. */
  texts: number;
  cups: CupSystem;
  kitchen: Kitchen;
  corrections: Corrections;
  units: Units;
  shop: Shop | null;
  /** Names on the bakery's ingredient sheet; null without one. */
  stocked: ReadonlySet<string> | null;
  /** The recipes of the text, and which of them is in sight. */
  parts: readonly RecipePart[];
  shown: number;
  /** Which recipe of the text before each of them was, whatever it is called now. */
  keys: readonly RecipeKey[];
  /** By the recipe's key. */
  readonly choices: Map<string, RecipeChoices>;
  /** Recipes that are not to be built. */
  readonly left: Set<string>;
};

const builtIn = () => larder(true).decode([], "larder", []);

export function emptyState(): PasteState {
  const kitchen: Kitchen = { cups: "US", larder: builtIn() };
  return {
    text: "",
    texts: 0,
    cups: "US",
    kitchen,
    corrections: NO_CORRECTIONS,
    units: { weight: "g", temperature: "C", length: "cm" },
    shop: null,
    stocked: null,
    parts: recipesIn("", kitchen),
    shown: 0,
    keys: [{ key: "0", title: "" }],
    choices: new Map(),
    left: new Set(),
  };
}

export const partKey = ({ keys }: PasteState, at: number): string => keys[at]?.key ?? "";
export const shownPart = ({ parts, shown }: PasteState): RecipePart => parts[shown] ?? (parts[0] as RecipePart);
export const partAt = (state: PasteState, at: number): Described => (state.parts[at] ?? shownPart(state)).described;
export const describedNow = (state: PasteState): Described => shownPart(state).described;

export function ownOf(state: PasteState, at = state.shown): RecipeChoices {
  const key = partKey(state, at);
  const known = state.choices.get(key);
  if (known !== undefined) return known;
  const fresh: RecipeChoices = {};
  state.choices.set(key, fresh);
  return fresh;
}

/** Reads the text as it stands now. */
export function readAgain(state: PasteState, isTyped = false): void {
  if (state.shop === null) state.units = { ...state.units, temperature: degreesIn(state.text) };
  state.kitchen = { ...state.kitchen, cups: state.cups };
  const shown = partKey(state, state.shown);
  state.parts = recipesIn(state.text, state.kitchen, state.corrections);
  state.keys = keysOf(
    state.parts.map(({ described }) => described.title),
    state.keys,
    isTyped,
  );
  const at = state.keys.findIndex(({ key }) => key === shown);
  state.shown = at >= 0 ? at : state.shown < state.parts.length ? state.shown : 0;
}

/** A text with °F alone goes on in °F; a bakery with settings has chosen. A C without its sign may be cups. */
const degreesIn = (text: string): Units["temperature"] =>
  /\d\s*(?:°|º|degrees?|deg\.?)?\s*F\b/.test(text) && !/\d\s*(?:°|º|degrees?|deg\.?)\s*C\b/.test(text) ? "F" : "C";

/** Below this part of its lines kept, a text is another one. */
const SAME = 0.3;

function isOther(before: string, after: string): boolean {
  const linesOf = (text: string) =>
    text
      .split("\n")
      .map(lineKey)
      .filter((line) => line !== "");
  const [old, now] = [linesOf(before), linesOf(after)];
  if (old.length < 2 && now.length < 2) return false;
  const known = new Set(old);
  return now.length === 0 || now.filter((line) => known.has(line)).length < SAME * Math.min(old.length, now.length);
}

/** Another text begins afresh; an edited one keeps all that was said of it. */
export function takeText(state: PasteState, text: string): void {
  if (isOther(state.text, text)) {
    state.corrections = NO_CORRECTIONS;
    state.choices.clear();
    state.left.clear();
    state.keys = [];
    state.shown = 0;
    state.texts += 1;
  }
  const isTyped = isTyping(state.text, text);
  state.text = text;
  readAgain(state, isTyped);
}

export function correctLine(state: PasteState, text: string, correction: LineCorrection): void {
  const key = lineKey(text);
  const lines = { ...state.corrections.lines, [key]: { ...state.corrections.lines[key], ...correction } };
  state.corrections = { ...state.corrections, lines };
  readAgain(state);
}

/** Takes back what was said of a line. */
export function uncorrectLine(state: PasteState, text: string): void {
  const { [lineKey(text)]: _, ...lines } = state.corrections.lines;
  state.corrections = { ...state.corrections, lines };
  readAgain(state);
}

/** Teaches a name, for every line that has it. */
export function teachName(state: PasteState, readName: string, correction: NameCorrection): void {
  const key = nameKeyOf(readName);
  const names = { ...state.corrections.names, [key]: { ...state.corrections.names[key], ...correction } };
  state.corrections = { ...state.corrections, names };
  readAgain(state);
}

export function answerQuestion(state: PasteState, key: string, answer: string): void {
  state.corrections = { ...state.corrections, answers: { ...state.corrections.answers, [key]: answer } };
  readAgain(state);
}
