// What a template's formulas may not do, so that they mean the same in every locale, in the local workbook and in LibreOffice.

import { a1 } from "../../shared/sheet/a1.ts";
import { layOut } from "../../shared/sheet/layout.ts";
import type { Options, SheetModel } from "../../shared/sheet/model.ts";
import { formulasOf, longestChain } from "./chains.ts";
import { nodesOf, parseFormula } from "./formula-parser.ts";
import { addingFaults, isAddingUp } from "./lint-adding.ts";
import { isSheetFunction, treeFaults } from "./lint-tree.ts";

/** The longest chain of calls reading calls that a formula sheet may have. */
const MAX_CHAIN = 3;

/** Everything a template's formulas do that they may not, each with the cell's name. */
export function lint(model: SheetModel, options: Options, mostCalls = 18): string[] {
  const formulas = formulasOf(model, options);
  const faults: string[] = [];
  let calls = 0;
  for (const [name, { formula }] of formulas.cells) {
    for (const fault of [...textFaults(formula), ...treeFaults(formula, formulas)]) faults.push(`${name}: ${fault}`);
    const tree = parseFormula(formula);
    if (typeof tree !== "string") for (const node of nodesOf(tree)) calls += isSheetFunction(node) ? 1 : 0;
  }
  if (calls > mostCalls) faults.push(`${model.name}: ${calls} calls of sheet functions, above ${mostCalls}`);
  const chain = longestChain(formulas);
  if ("circle" in chain) faults.push(`${model.name}: a circle: ${chain.circle.join(" → ")}`);
  else if (chain.length > (isAddingUp(model) ? 1 : MAX_CHAIN))
    faults.push(`${model.name}: a chain of ${chain.length} calls: ${chain.path.join(" → ")}`);
  return [...faults, ...(isAddingUp(model) ? addingFaults(model, options, formulas) : []), ...overlaps(model, options)];
}

/** Cells that two parts of a model claim: what a formula fills must find its cells empty. */
function overlaps(model: SheetModel, options: Options): string[] {
  const { cells, tables } = layOut(model, options);
  const owners = new Map<string, string>();
  const faults: string[] = [];
  const claim = (row: number, column: number, owner: string) => {
    const place = a1({ row, column });
    const other = owners.get(place);
    if (other !== undefined) faults.push(`${place}: both ${other} and ${owner} stand there`);
    owners.set(place, owner);
  };
  for (const { cell, row, column } of cells) {
    const width = 1 + (cell.spills?.length ?? 0);
    for (let at = 0; at < width; at++) claim(row, column + at, cell.name ?? cell.text ?? cell.role);
  }
  for (const { table, row, column } of tables) {
    // What stands under the columns of a table with a total is a line of cells.
    for (let down = 0; down < table.rows + (table.total === undefined ? 3 : 2); down++) {
      table.columns.forEach(({ name }, across) => {
        claim(row + down, column + across, `${table.table}/${name}`);
      });
    }
  }
  return faults;
}

const known = new Map<string, readonly string[]>();

function textFaults(formula: string): readonly string[] {
  const faults = known.get(formula) ?? faultsInText(formula);
  known.set(formula, faults);
  return faults;
}

function faultsInText(formula: string): string[] {
  const faults: string[] = [];
  if (/""[^";)]|[^;(=&]""/.test(formula.replace(/""(?=[;)&]|$)/g, "''")))
    faults.push("a doubled quote inside a text: use CHAR(34)");
  const outside = formula.replace(/"[^"]*"/g, '""');
  if (outside.includes(",")) faults.push("a comma: arguments are separated by ;");
  if (/\d\.\d|\d\.(?!\d)|(?<![\w)])\.\d/.test(outside))
    faults.push("a decimal literal: write a fraction such as 5/100");
  if (/[{][^}]*[,\\]/.test(outside)) faults.push("a horizontal array: only {a;b} means the same everywhere");
  if (/-\s*[@\w()]+\s*\^/.test(outside)) faults.push("a minus before a power: bracket it");
  if (/\b(TRUE|FALSE)\b(?!\()/.test(outside)) faults.push("a bare TRUE or FALSE: write TRUE()");
  if (/(?<![@\w])\$?[A-Z]{1,3}\$?\d+\b/.test(outside)) faults.push("a cell by its address: name it with @");
  return faults;
}
