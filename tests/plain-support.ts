import { expect } from "vitest";
import { layOut } from "../shared/layout.ts";
import type { Options, SheetModel, Values } from "../shared/model.ts";
import type { WorkbookHost } from "../src/workbook/host.ts";
import { TEMPLATES } from "../templates/index.ts";
import { type Built, buildSheet, workbook } from "./sheet-support.ts";
import { asValue } from "./workbook-support.ts";

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
  const options: Options = { weight: "g", temperature: "C", length: "cm", parts: ownParts(model), ...units };
  const added = await buildSheet(values, { model, book: open, options });
  const plain = await buildSheet(values, { model, book: open, options: { ...options, form: "plain" } });
  return { book: open, added, plain, names: computedNames(model, options) };
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

/** Every computed cell of both forms, and how many of them hold a number; `less` names what is compared elsewhere. */
export function expectSame({ added, plain, names }: Pair, less: readonly string[] = [], extraRows = 0): number {
  let numbers = 0;
  for (const { name, rows } of names) {
    if (less.includes(name)) continue;
    const long = rows === 1 ? 1 : rows + extraRows;
    for (let row = 0; row < long; row++) {
      const [own, other] = [added.value(name, row), plain.value(name, row)];
      const place = `${name}/${row}: ${String(own)} against ${String(other)} in ${plain.at(name, row)}`;
      if (typeof own === "number") {
        numbers += 1;
        expect(typeof other, place).toBe("number");
        expect(Math.abs(Number(other) - own), place).toBeLessThanOrEqual(1e-9 * Math.max(1e-3, Math.abs(own)));
      } else
        expect(own instanceof Date ? own.getTime() : own, place).toEqual(
          other instanceof Date ? other.getTime() : other,
        );
    }
  }
  return numbers;
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
