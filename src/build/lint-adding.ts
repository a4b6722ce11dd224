// What the formulas of a sheet that adds up by itself may not do: read what people may type over, or be longer than a reader follows.

import { formulaText, layOut } from "../../shared/sheet/layout.ts";
import type { Formula, Options, SheetModel } from "../../shared/sheet/model.ts";
import { longEnough } from "../../shared/sheet/table-lengths.ts";
import type { Formulas } from "./chains.ts";
import { type Node, nodesOf, parseFormula } from "./formula-parser.ts";

/** The longest formula, names replaced by addresses, in a sheet of sixty rows a table. */
const MAX_LENGTH = 200;
const MANY = 60;

/** A sheet whose page only shows what is worked out beside it. */
export const isAddingUp = (model: SheetModel): boolean => model.foldedFrom !== undefined;

/** Blocks that other templates share, whose sums nothing of the table reads. */
const SHARED = new Set(["label", "nutrition"]);

export function addingFaults(model: SheetModel, options: Options, formulas: Formulas): string[] {
  const shared = new Set(
    model.bands.flat().flatMap((item) => {
      if ("table" in item) return SHARED.has(item.table) ? item.columns.map(({ name }) => name) : [];
      return SHARED.has(item.block) ? item.lines.flatMap(({ cells }) => cells.flatMap(({ name }) => name ?? [])) : [];
    }),
  );
  const { visible, shownCells } = whatIsShown(model, options);
  const faults: string[] = [];
  for (const [name, { formula }] of formulas.cells) {
    const tree = parseFormula(formula);
    if (typeof tree === "string" || shared.has(name)) continue;
    for (const fault of [...reads(tree, new Set([...visible, ...shownCells])), ...criteria(tree)])
      faults.push(`${name}: ${fault}`);
  }
  return [...faults, ...tooLong(model, options, shared)];
}

/** Columns and cells of the page that hold what the sheet works out. */
function whatIsShown(model: SheetModel, options: Options) {
  const layout = layOut(model, options);
  const visible = layout.tables.flatMap(({ table }) =>
    table.columns.flatMap(({ name, role }) => (role === "input" || role === "helper" ? [] : [name])),
  );
  const shownCells = layout.cells.flatMap(({ cell: { name, role, formula } }) =>
    name !== undefined && formula !== undefined && role !== "helper" ? [name] : [],
  );
  return { visible, shownCells };
}

/** Only where a cell is, and whether it still shows its formula's answer, may be asked of what is shown. */
const HARMLESS = new Set(["ROW", "ROWS", "COLUMN", "ISERROR", "ISFORMULA", "LEN", "COUNTA"]);

function reads(tree: Node, shown: ReadonlySet<string>): string[] {
  const faults: string[] = [];
  const visit = (node: Node): void => {
    if (node.is === "name" && shown.has(node.value.replace(/_top$/, "")))
      faults.push(`reads @${node.value}, which is only shown`);
    if (node.is === "call" && HARMLESS.has(node.value)) return;
    for (const part of partsOf(node)) visit(part);
  };
  visit(tree);
  return faults;
}

/** Where each function takes what it looks for; there `*`, `?` and `>5` are patterns. */
const CRITERIA: Readonly<Record<string, (at: number) => boolean>> = {
  MATCH: (at) => at === 0,
  VLOOKUP: (at) => at === 0,
  SUMIF: (at) => at === 1,
  COUNTIF: (at) => at === 1,
  COUNTIFS: (at) => at % 2 === 1,
  SUMIFS: (at) => at > 0 && at % 2 === 0,
  MAXIFS: (at) => at > 0 && at % 2 === 0,
};
/** What these answer is a number. */
const NUMBERS = new Set(["SMALL", "MAX", "MIN", "COUNT", "SUM"]);

function criteria(tree: Node): string[] {
  return [...nodesOf(tree)].flatMap((node) => {
    const isCriterion = node.is === "call" ? CRITERIA[node.value] : undefined;
    if (node.is !== "call" || isCriterion === undefined) return [];
    return node.args.flatMap((arg, at) =>
      isCriterion(at) && namesOutside(arg).length > 0
        ? [`${node.value} looks for @${namesOutside(arg)[0]}, in which a sign may be a pattern: compare with = instead`]
        : [],
    );
  });
}

function namesOutside(node: Node): string[] {
  if (node.is === "name") return [node.value];
  return node.is === "call" && NUMBERS.has(node.value) ? [] : partsOf(node).flatMap(namesOutside);
}

function partsOf(node: Node): readonly Node[] {
  switch (node.is) {
    case "call":
      return node.args;
    case "operation":
      return node.parts;
    case "array":
      return node.rows;
    case "range":
      return [node.from, node.to];
    default:
      return [];
  }
}

function tooLong(model: SheetModel, options: Options, shared: ReadonlySet<string>): string[] {
  const typed = Array<string>(MANY).fill("x");
  const columns = model.bands.flat().flatMap((item) => ("table" in item ? item.columns.map(({ name }) => name) : []));
  const layout = layOut(longEnough(model, Object.fromEntries(columns.map((name) => [name, typed])), {}), options);
  const faults: string[] = [];
  const see = (name: string, formula: Formula | undefined): void => {
    if (formula === undefined || shared.has(name)) return;
    const { length } = formulaText(formula, options, layout.names);
    if (length > MAX_LENGTH)
      faults.push(`${name}: ${length} characters, above ${MAX_LENGTH}: work a part out in a column of its own`);
  };
  for (const { cell } of layout.cells) see(cell.name ?? cell.role, cell.formula);
  for (const { table } of layout.tables) {
    for (const { name, formula, headFormula } of table.columns) {
      see(name, formula);
      see(`heading of ${name}`, headFormula);
    }
  }
  return faults;
}
