import { fromScript } from "../engine/dialect.ts";
import type { Zone } from "../engine/library.ts";
import { type Place, placeOf } from "../engine/places.ts";
import type { Command } from "../engine/plugins.ts";
import { strict } from "./guard.ts";
import type { Session } from "./session.ts";

/** Rules as a script builds them; the objects a script holds lead here. */
export type ValidationRule = {
  readonly type: string;
  readonly values: readonly string[];
  readonly blocks: boolean;
  readonly help: string;
};
export type ConditionalRule = {
  readonly rule: Readonly<Record<string, unknown>>;
  readonly style: Readonly<Record<string, unknown>>;
  readonly places: readonly Place[];
};

const validations = new WeakMap<object, ValidationRule>();
const conditionals = new WeakMap<object, ConditionalRule>();

export function colour(value: string | null, by: string): string {
  if (value === null) return "";
  if (!/^#[0-9a-f]{6}$/i.test(value)) throw new Error(`${by}: a colour is written #rrggbb, not ${value}`);
  return value.toLowerCase();
}

/** SpreadsheetApp.newDataValidation(). */
export function newValidation(session: Session): object {
  let draft: Omit<ValidationRule, "blocks" | "help"> | undefined;
  let blocks = true;
  let help = "";
  const number = (value: number, by: string) => {
    if (!Number.isFinite(value)) throw new Error(`${by}: ${value} is not a number`);
    return String(value);
  };
  const builder: object = strict("DataValidationBuilder", {
    requireValueInList(values: readonly string[], showDropdown = true) {
      if (!Array.isArray(values) || values.length === 0) throw new Error("requireValueInList takes a list of texts");
      if (!showDropdown) throw new Error("requireValueInList without its drop-down is not in the stand-in");
      draft = { type: "isValueInList", values: Array.from(values, String) };
      return builder;
    },
    requireNumberBetween(from: number, to: number) {
      if (from > to) throw new Error(`requireNumberBetween: ${from} is above ${to}`);
      draft = { type: "isBetween", values: [number(from, "requireNumberBetween"), number(to, "requireNumberBetween")] };
      return builder;
    },
    requireNumberGreaterThanOrEqualTo(least: number) {
      draft = { type: "isGreaterOrEqualTo", values: [number(least, "requireNumberGreaterThanOrEqualTo")] };
      return builder;
    },
    requireNumberGreaterThan(bound: number) {
      draft = { type: "isGreaterThan", values: [number(bound, "requireNumberGreaterThan")] };
      return builder;
    },
    requireFormulaSatisfied(formula: string) {
      draft = { type: "customFormula", values: [fromScript(session.engine.library, session.engine.locale, formula)] };
      return builder;
    },
    setAllowInvalid(allow: boolean) {
      blocks = !allow;
      return builder;
    },
    setHelpText(text: string) {
      help = String(text);
      return builder;
    },
    build() {
      if (draft === undefined) throw new Error("A data validation needs a condition before build()");
      const rule = strict("DataValidation", {});
      validations.set(rule, { ...draft, blocks, help });
      return rule;
    },
  });
  return builder;
}

export function validationOf(rule: object): ValidationRule {
  const validation = validations.get(rule);
  if (validation === undefined) throw new Error("setDataValidation takes what newDataValidation() built");
  return validation;
}

/** SpreadsheetApp.newConditionalFormatRule(). */
export function newConditional(session: Session): object {
  let rule: ConditionalRule["rule"] | undefined;
  const style: Record<string, unknown> = {};
  let places: readonly Place[] = [];
  const builder: object = strict("ConditionalFormatRuleBuilder", {
    whenFormulaSatisfied(formula: string) {
      const values = [fromScript(session.engine.library, session.engine.locale, formula)];
      rule = { type: "CellIsRule", operator: "customFormula", values };
      return builder;
    },
    whenTextContains(text: string) {
      rule = { type: "CellIsRule", operator: "containsText", values: [String(text)] };
      return builder;
    },
    setBackground(value: string | null) {
      style.fillColor = colour(value, "setBackground");
      return builder;
    },
    setFontColor(value: string | null) {
      style.textColor = colour(value, "setFontColor");
      return builder;
    },
    setBold(bold: boolean) {
      style.bold = bold;
      return builder;
    },
    setRanges(ranges: readonly object[]) {
      places = Array.from(ranges, placeOf);
      return builder;
    },
    build() {
      if (rule === undefined || places.length === 0)
        throw new Error("A conditional format needs a condition and ranges");
      const builder = strict("ConditionalFormatRule", {});
      conditionals.set(builder, { rule, style: { ...style }, places });
      return builder;
    },
  });
  return builder;
}

export function conditionalOf(rule: object): ConditionalRule {
  const format = conditionals.get(rule);
  if (format === undefined) throw new Error("setConditionalFormatRules takes what newConditionalFormatRule() built");
  return format;
}

let lastId = 0;
export const newId = (kind: string): string => `${kind}-${++lastId}-${Math.random().toString(36).slice(2, 8)}`;

export function addValidation(sheetId: string, zones: readonly Zone[], rule: ValidationRule): Command {
  const { type, values, blocks, help } = rule;
  const criterion = { type, values: [...values], ...(type === "isValueInList" ? { displayStyle: "arrow" } : {}) };
  const ranges = zones.map((zone) => ({ _sheetId: sheetId, _zone: zone }));
  const data = { id: newId("validation"), criterion, isBlocking: blocks, help };
  return { type: "ADD_DATA_VALIDATION_RULE", payload: { sheetId, ranges, rule: data } };
}

export function addConditional(sheetId: string, { rule, style, places }: ConditionalRule): Command {
  const other = places.find((place) => place.sheetId !== sheetId);
  if (other) throw new Error("A conditional format's ranges must lie on its own sheet");
  const ranges = places.map(({ zone }) => ({ _sheetId: sheetId, _zone: zone }));
  return {
    type: "ADD_CONDITIONAL_FORMAT",
    payload: { sheetId, ranges, cf: { id: newId("format"), rule: { ...rule, style } } },
  };
}
