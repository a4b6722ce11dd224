import { expect } from "vitest";
import { layOut } from "../../shared/sheet/layout.ts";
import type { Options, SheetModel, Values } from "../../shared/sheet/model.ts";
import { longEnough } from "../../shared/sheet/placing.ts";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { METRIC_UNITS } from "../kit/units.ts";
import { asValue } from "../workbook/support.ts";
import { type Built, buildSheet, workbook } from "./sheet-support.ts";

export const templateNamed = (name: string): SheetModel => {
  const found = TEMPLATES.find((one) => one.name === name);
  if (found === undefined) throw new Error(`no template ${name}`);
  return found;
};

/** Cost and label need a larder beside the sheet. */
export const ownParts = ({ parts }: SheetModel) => parts.filter((part) => part !== "cost" && part !== "label");

/** The same sheet in both forms, in one workbook. */
export type Pair = {
  readonly book: WorkbookHost;
  readonly added: Built;
  readonly plain: Built;
  readonly names: readonly Computed[];
};
/** A computed cell, or a column of so many rows, edge rows counted. */
type Computed = { readonly name: string; readonly rows: number };

export async function pairOf(
  model: SheetModel,
  values: Values,
  { book, ...units }: Partial<Options> & { book?: WorkbookHost } = {},
): Promise<Pair> {
  const open = book ?? (await workbook());
  const options: Options = { ...METRIC_UNITS, parts: ownParts(model), ...units };
  const added = await buildSheet(values, { model, book: open, options });
  const plain = await buildSheet(values, { model, book: open, options: { ...options, form: "plain" } });
  return { book: open, added, plain, names: computedNames(longEnough(model, values, {}), options) };
}

function computedNames(model: SheetModel, options: Options): Computed[] {
  const { cells, tables } = layOut(model, options);
  return [
    ...cells.flatMap(({ cell }) =>
      cell.formula === undefined
        ? []
        : [cell.name, ...(cell.spills ?? [])].map((name) => ({ name: name ?? "", rows: 1 })),
    ),
    ...tables.flatMap(({ table }) =>
      table.columns.filter(({ role }) => role !== "input").map(({ name }) => ({ name, rows: table.rows + 2 })),
    ),
  ].filter(({ name }) => name !== "");
}

/** Cells that say what is wrong: each form in its own words. */
const SAYS = ["check", "pre_from_note"];

/**
 * Every computed cell of both forms. Where the add-on refuses with a sentence, the plain form shows no number and no error. How
 * many cells hold a number.
 */
export function expectSame(
  { added, plain, names }: Pair,
  less: readonly string[] = [],
  after = "",
  extraRows = 0,
): number {
  let numbers = 0;
  const isRefused = names.some(({ name }) => isError(added.value(name, 0)));
  for (const { name, rows } of names) {
    if (less.includes(name)) continue;
    // A refused column is one red cell; the plain form blanks what cannot be told alone, and the amount with it.
    if (rows > 1 && isError(added.value(name, 0))) continue;
    const long = rows === 1 ? 1 : rows + extraRows;
    for (let row = 0; row < long; row++) {
      const [own, other] = [added.value(name, row), plain.value(name, row)];
      // Most agree, and nothing is said of those.
      if (isSame(own, other) && !SAYS.includes(name)) {
        numbers += typeof own === "number" ? 1 : 0;
        continue;
      }
      const place = `${after} ${name}/${row}: ${String(own)} against ${String(other)} in ${plain.at(name, row)}, ${plain.message(name, row) ?? ""}`;
      expect(isError(other), place).toBe(false);
      if (typeof own === "number") {
        numbers += 1;
        expect(typeof other, place).toBe("number");
        expect(Math.abs(Number(other) - own), place).toBeLessThanOrEqual(1e-9 * Math.max(1e-3, Math.abs(own)));
      } else if (isError(own)) expect(typeof other, place).toBe("string");
      else if (SAYS.includes(name)) expect(other === "", place).toBe(own === "");
      // A remark beside a row that cannot be read; the other form says it in the sentence of its red cell.
      else if (!isRefused || name !== "remark") expect(comparable(other), place).toEqual(comparable(own));
    }
  }
  return numbers;
}

/** To a billionth, and no errors. */
const isSame = (own: unknown, other: unknown): boolean =>
  typeof own === "number" && typeof other === "number"
    ? Math.abs(other - own) <= 1e-9 * Math.max(1e-3, Math.abs(own))
    : own === other && !isError(own);

const isError = (value: unknown): boolean => typeof value === "string" && /^#[A-Z/0]+[!?A]?$/.test(value);
const comparable = (value: unknown) => (value instanceof Date ? value.getTime() : value);

export function typeBoth({ added, plain }: Pair, name: string, text: string, row?: number): void {
  for (const { type } of [added, plain]) type(name, text, row);
}

/** Calls of the add-on's functions in a sheet, one for each. */
export function callsOn({ book, sheet }: Pick<Built, "book" | "sheet">): string[] {
  const formulas = book.formulas(sheet, book.usedRange(sheet)).flat();
  return formulas.flatMap((formula) => formula?.match(/BAKE_[A-Z]+(?=\()/g) ?? []);
}

type Office = Readonly<Record<string, readonly (readonly string[])[]>>;

/** What LibreOffice shows otherwise in the plain sheet of an .xlsx than the other form computes, and how many figures agree. */
export function officeDifferences({ added, plain, names }: Pair, office: Office): { differ: string[]; same: number } {
  const textIn = ({ sheet, at }: Built, name: string, row: number): string => {
    const [, letters = "", line = ""] = /^([A-Z]+)(\d+)$/.exec(at(name, row)) ?? [];
    const column = [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
    return office[sheet]?.[Number(line) - 1]?.[column] ?? "";
  };
  const differ: string[] = [];
  let same = 0;
  for (const { name, rows } of names) {
    for (let row = 0; row < rows; row++) {
      const own = added.value(name, row);
      const text = textIn(plain, name, row);
      const read = asValue(text);
      const agrees =
        typeof own === "number"
          ? typeof read === "number" && Math.abs(read - own) <= 1e-9 * Math.max(1, Math.abs(own))
          : !(own instanceof Date) || text === textIn(added, name, row);
      if (!agrees) differ.push(`${plain.sheet}!${plain.at(name, row)} ${name}/${row}: ${own} against ${text}`);
      else if (typeof own !== "string") same += 1;
    }
  }
  return { differ, same };
}
