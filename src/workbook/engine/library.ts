// The one place that knows the shape of @odoo/o-spreadsheet: only what the workbook uses, loosely typed where the
// library's own types follow its internals.

export type Position = { readonly sheetId: string; readonly col: number; readonly row: number };
export type Zone = { left: number; top: number; right: number; bottom: number };

/** A value on its way through a formula; `null` is a blank cell. */
export type Cell = { value: number | string | boolean | null; format?: string; message?: string };
/** Column first: `matrix[column][row]`. */
export type Matrix = Cell[][];
export type FormulaArgument = Cell | Matrix | undefined;

export type EvaluatedCell = Cell & {
  readonly formattedValue: string;
  readonly type: "number" | "text" | "boolean" | "error" | "empty";
};

type ArgumentDefinition = { readonly name: string; readonly type: readonly string[]; readonly acceptMatrix?: boolean };
export type FunctionContext = { readonly getters: object; readonly locale: Locale };
export type FunctionDescription = {
  description: string;
  category?: string;
  args: readonly ArgumentDefinition[];
  compute: (this: FunctionContext, ...args: FormulaArgument[]) => Cell | Matrix | number | string | boolean;
  [more: string]: unknown;
};

export type Locale = {
  readonly name: string;
  readonly code: string;
  readonly thousandsSeparator: string;
  readonly decimalSeparator: string;
  readonly weekStart: number;
  readonly dateFormat: string;
  readonly timeFormat: string;
  readonly formulaArgSeparator: string;
};

export type Token = { readonly type: string; readonly value: string };
export type FormulaNode = {
  readonly type: string;
  readonly value?: unknown;
  readonly left?: FormulaNode;
  readonly right?: FormulaNode;
  readonly operand?: FormulaNode;
  readonly args?: readonly FormulaNode[];
};

export type DispatchResult = { readonly isSuccessful: boolean; readonly reasons: readonly string[] };
// biome-ignore lint/suspicious/noExplicitAny: the getters are the library's whole reading side
export type Getters = Record<string, (...args: any[]) => any>;
export type Model = {
  readonly getters: Getters;
  dispatch: (type: string, payload?: object) => DispatchResult;
  readonly session: { commandSquisher: unknown };
  _exportData(squished: boolean): WorkbookData;
  on(event: string, owner: object, callback: (...args: never[]) => void): void;
};
export type WorkbookData = Record<string, unknown>;

type Registry<T> = {
  readonly content: Record<string, T>;
  contains(name: string): boolean;
  get(name: string): T;
  add(name: string, what: T): unknown;
  replace(name: string, what: T): unknown;
};

export type Library = {
  readonly Model: new (data?: object, config?: object) => Model;
  // biome-ignore lint/suspicious/noExplicitAny: base classes of the library's plugins
  readonly CorePlugin: any;
  // biome-ignore lint/suspicious/noExplicitAny: base classes of the library's plugins
  readonly UIPlugin: any;
  readonly Spreadsheet: unknown;
  readonly stores: { readonly CellComposerStore: unknown };
  readonly CellErrorType: Record<string, string>;
  readonly coreTypes: Set<string>;
  readonly invalidateEvaluationCommands: Set<string>;
  readonly helpers: {
    arg(definition: string, description?: string): ArgumentDefinition;
    toZone(a1: string): Zone;
    toXC(col: number, row: number): string;
    toCartesian(a1: string): { col: number; row: number };
    parseFormat(format: string): unknown;
    formatValue(value: unknown, how: { format?: string; locale: Locale }): string;
    isDateTimeFormat(format: string): boolean;
    isDateTime(text: string, locale: Locale): boolean;
    isNumber(text: string, locale: Locale): boolean;
  };
  readonly registries: {
    readonly functionRegistry: Registry<FunctionDescription>;
    readonly featurePluginRegistry: Registry<unknown>;
    readonly corePluginRegistry: Registry<unknown>;
    readonly coreViewsPluginRegistry: Registry<unknown>;
    readonly statefulUIPluginRegistry: Registry<unknown>;
    /** What takes a command back; asked for whenever something is done after an undo. */
    readonly inverseCommandRegistry: Registry<(command: object) => readonly object[]>;
    readonly errorTypes: Set<string>;
  };
  /** How the engine's own sentences are said; `%(name)s` in them stands for what they are about. */
  setTranslationMethod(translate: (sentence: string) => string): void;
  tokenize(formula: string, locale?: Locale): Token[];
  parse(formula: string): FormulaNode;
};

export const isMatrix = (argument: FormulaArgument): argument is Matrix => Array.isArray(argument);
