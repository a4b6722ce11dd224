import type { ConditionalFormattingRule, DataValidation, Workbook, Worksheet } from "exceljs";
import type { Engine } from "../engine/engine.ts";
import { type Appearance, argb } from "./appearance.ts";
import { portable } from "./formula.ts";

type Criterion = { readonly type: string; readonly values: readonly string[] };
type Rule = {
  readonly criterion: Criterion;
  readonly isBlocking?: boolean;
  readonly help?: string;
  readonly ranges: readonly unknown[];
};
type Conditional = {
  readonly ranges: readonly string[];
  readonly rule: {
    readonly type: string;
    readonly operator?: string;
    readonly values?: readonly string[];
    readonly style?: Appearance;
  };
};

const LISTS = "Lists";
/** The file format takes a list written into a rule up to this length. */
const MAX_LIST_LENGTH = 250;

/** Writes the data validations of one sheet. */
export function writeValidations(engine: Engine, book: Workbook, sheet: Worksheet, sheetId: string): void {
  const rules = engine.get<readonly Rule[]>("getDataValidationRules", sheetId);
  for (const { criterion, isBlocking, help, ranges } of rules) {
    const exported = validation(engine, book, criterion);
    if (exported === undefined) continue;
    const notice = { allowBlank: true, showErrorMessage: true, errorStyle: isBlocking ? "stop" : "warning" } as const;
    const prompt = help ? { showInputMessage: true, prompt: help.slice(0, 255) } : {};
    for (const range of ranges) {
      const a1 = engine.get<string>("getRangeString", range, sheetId);
      // exceljs types leave out the collection that its own cells use.
      const { dataValidations } = sheet as unknown as {
        dataValidations: { add(a1: string, rule: DataValidation): void };
      };
      dataValidations.add(a1, { ...exported, ...notice, ...prompt } as DataValidation);
    }
  }
}

function validation(engine: Engine, book: Workbook, { type, values }: Criterion): Partial<DataValidation> | undefined {
  const numbers = values.map(Number);
  switch (type) {
    case "isValueInList":
      return { type: "list", formulae: [listFormula(book, values)] };
    case "isBetween":
      return { type: "decimal", operator: "between", formulae: numbers };
    case "isGreaterThan":
      return { type: "decimal", operator: "greaterThan", formulae: numbers };
    case "isGreaterOrEqualTo":
      return { type: "decimal", operator: "greaterThanOrEqual", formulae: numbers };
    case "customFormula": {
      const formula = portable(engine.library, values[0] ?? "=TRUE()");
      return formula.kind === "value" ? undefined : { type: "custom", formulae: [formula.text] };
    }
    default:
      return undefined;
  }
}

/** A short list stands in the rule; a long one, or one with commas, in a column of a hidden sheet. */
function listFormula(book: Workbook, values: readonly string[]): string {
  const short = values.join(",");
  if (short.length <= MAX_LIST_LENGTH && !values.some((value) => /[",]/.test(value))) return `"${short}"`;
  const lists = book.getWorksheet(LISTS) ?? book.addWorksheet(LISTS, { state: "veryHidden" });
  const known = Array.from({ length: lists.columnCount }, (_, index) => lists.getColumn(index + 1)).find(
    ({ values: held }) => held.slice(1).join("\n") === values.join("\n"),
  );
  const column = known ?? lists.getColumn(lists.columnCount + 1);
  column.values = [...values];
  return `${LISTS}!$${column.letter}$1:$${column.letter}$${values.length}`;
}

/** Writes the conditional formats of one sheet; a rule that calls a function of this project has no like elsewhere. */
export function writeConditionals(engine: Engine, sheet: Worksheet, sheetId: string): void {
  const formats = engine.get<readonly Conditional[]>("getConditionalFormats", sheetId);
  formats.forEach(({ ranges, rule }, index) => {
    const exported = conditional(engine, rule, index + 1);
    if (exported) sheet.addConditionalFormatting({ ref: ranges.join(" "), rules: [exported] });
  });
}

function conditional(
  engine: Engine,
  { operator, values, style = {} }: Conditional["rule"],
  priority: number,
): ConditionalFormattingRule | undefined {
  const appearance = {
    ...(style.fillColor
      ? { fill: { type: "pattern", pattern: "solid", bgColor: argb(style.fillColor) } as const }
      : {}),
    font: { ...(style.textColor ? { color: argb(style.textColor) } : {}), ...(style.bold ? { bold: true } : {}) },
  };
  const value = values?.[0] ?? "";
  if (operator === "containsText")
    return { type: "containsText", operator: "containsText", text: value, style: appearance, priority };
  if (operator !== "customFormula") return undefined;
  const formula = portable(engine.library, value);
  return formula.kind === "value"
    ? undefined
    : { type: "expression", formulae: [formula.text], style: appearance, priority };
}
