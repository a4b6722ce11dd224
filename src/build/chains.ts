import { holds, layOut, withDecimals } from "../../shared/sheet/layout.ts";
import type { Formula, Options, SheetModel } from "../../shared/sheet/model.ts";
import { type Node, nodesOf, parseFormula } from "./formula-parser.ts";

export type Named = {
  /** The cell whose formula fills this one; its own name where it holds the formula. */
  readonly anchor: string;
  readonly isRange: boolean;
  /** Filled by a formula that answers with several cells, some of which may be blank or an error. */
  readonly isSpilled: boolean;
  /** It holds texts that are joined and compared with texts, never an error. */
  readonly isText?: true;
};

export type Formulas = {
  /** Formulas by the name of their cell, or by place where it has none. */
  readonly cells: ReadonlyMap<string, { readonly formula: string }>;
  readonly names: ReadonlyMap<string, Named>;
};

function chosen(formula: Formula, options: Options): string {
  const one = typeof formula === "string" ? formula : formula.find(({ when }) => holds(when, options))?.formula;
  if (one === undefined) throw new Error("no formula for these options");
  // What stands for cells of other sheets, found when the sheet is built.
  return withDecimals(one, options).replace(/\[[a-z_]+\]/g, "{1;2}");
}

/** The formulas of a model for these options, and what each name stands for. */
export function formulasOf(model: SheetModel, options: Options): Formulas {
  const layout = layOut(model, options);
  const cells = new Map<string, { formula: string }>();
  const names = new Map<string, Named>();
  for (const { cell, row, column } of layout.cells) {
    const name = cell.name ?? `row ${row + 1}, column ${column + 1}`;
    const spills = cell.spills ?? [];
    if (cell.formula !== undefined) cells.set(name, { formula: chosen(cell.formula, options) });
    names.set(name, { anchor: name, isRange: false, isSpilled: spills.length > 0 });
    for (const one of spills) if (one) names.set(one, { anchor: name, isRange: false, isSpilled: true });
  }
  for (const { table } of layout.tables) {
    names.set(`${table.table}_table`, { anchor: `${table.table}_table`, isRange: true, isSpilled: false });
    for (const { name, formula, spills = [], role, numbers } of table.columns) {
      if (formula !== undefined) cells.set(name, { formula: chosen(formula, options) });
      const known = names.get(name);
      const isText = role === "helper" && numbers !== true;
      names.set(
        name,
        known ?? {
          anchor: name,
          isRange: true,
          isSpilled: role !== "input" && numbers !== true,
          ...(isText ? { isText } : {}),
        },
      );
      for (const one of spills) if (one) names.set(one, { anchor: name, isRange: true, isSpilled: true });
    }
  }
  // Parts of tables and places of the sheet that a model names beside its cells.
  for (const [name, { rows, columns }] of layout.names) {
    const of = name.replace(/_top$/, "");
    if (!names.has(name))
      names.set(name, { anchor: names.has(of) ? of : name, isRange: rows * columns > 1, isSpilled: false });
  }
  return { cells, names };
}

type Chain = { readonly length: number; readonly path: readonly string[] } | { readonly circle: readonly string[] };

/** The most calls of sheet functions that wait for each other, or the circle in which cells wait for themselves. */
export function longestChain({ cells, names }: Formulas): Chain {
  const done = new Map<string, { length: number; path: readonly string[] }>();
  let circle: readonly string[] | undefined;
  let longest: { length: number; path: readonly string[] } = { length: 0, path: [] };
  for (const name of cells.keys()) {
    const chain = walk(name, []);
    if (chain.length > longest.length) longest = chain;
  }
  return circle === undefined ? longest : { circle };

  function walk(name: string, above: readonly string[]): { length: number; path: readonly string[] } {
    const known = done.get(name);
    if (known) return known;
    if (above.includes(name)) {
      circle ??= [...above.slice(above.indexOf(name)), name];
      return { length: 0, path: [] };
    }
    const formula = cells.get(name)?.formula;
    const tree = formula === undefined ? "" : parseFormula(formula);
    if (typeof tree === "string") return { length: 0, path: [] };
    let before: { length: number; path: readonly string[] } = { length: 0, path: [] };
    for (const node of nodesOf(tree)) {
      if (node.is !== "name") continue;
      const chain = walk(names.get(node.value)?.anchor ?? node.value, [...above, name]);
      if (chain.length > before.length) before = chain;
    }
    const levels = depth(tree);
    const result = { length: before.length + levels, path: levels > 0 ? [...before.path, name] : before.path };
    done.set(name, result);
    return result;
  }
}

/** Calls of sheet functions inside each other. */
function depth(node: Node): number {
  const below =
    node.is === "call" ? node.args : node.is === "operation" ? node.parts : node.is === "array" ? node.rows : [];
  const most = below.reduce((deepest, one) => Math.max(deepest, depth(one)), 0);
  return most + (node.is === "call" && node.value.startsWith("BAKE_") ? 1 : 0);
}
