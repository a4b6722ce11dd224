// Whether all formulas still stand where they were built.
import type { Band, Block, Condition, Formula, Table } from "../../shared/sheet/model.ts";
import { type Single, single } from "./singles.ts";

/** As many as fit into one formula. */
const TOGETHER = 8;

type Named = { readonly name: string; readonly when?: Condition };

/** Whether cells still hold their formulas: each group has the part that its cells have. */
export function formulaChecks(cells: readonly Named[]): readonly Single[] {
  const conditions = [...new Set(cells.map(({ when = "" }) => when))];
  const groups = conditions.flatMap((when) => {
    const names = cells.flatMap((one) => ((one.when ?? "") === when ? [one.name] : []));
    return Array.from({ length: Math.ceil(names.length / TOGETHER) }, (_, at) => ({
      when,
      names: names.slice(at * TOGETHER, (at + 1) * TOGETHER),
    }));
  });
  const checks = groups.map(
    ({ when, names }, at): Single => ({
      ...single(
        "Formulas are there",
        `intact_${at + 1}`,
        `=IF(AND(${names.map((name) => `ISFORMULA(@${name})`).join(";")});"";"typed over")`,
      ),
      ...(when === "" ? {} : { when }),
    }),
  );
  return checks;
}

/** The cells that hold the formulas of hidden rows. */
export function topsOf(bands: readonly Band[]): Named[] {
  return bands
    .flat()
    .filter((item): item is Table => "table" in item && item.hidden === true)
    .flatMap(({ columns, when }) =>
      columns.flatMap(({ name, formula }) =>
        formula === undefined || isCall(formula)
          ? []
          : [{ name: `${name}_top`, ...(when === undefined ? {} : { when }) }],
      ),
    );
}

/** Remarks that a formula makes: whether it is there is seen with the others. */
export function remarksOf(bands: readonly Band[]): Named[] {
  const blocks = bands.flat().filter((item): item is Block => "block" in item);
  return blocks.flatMap(({ lines, when: ofBlock }) =>
    lines.flatMap(({ cells, when: ofLine }) =>
      cells.flatMap(({ name, role, formula, when: ofCell }) => {
        if (name === undefined || role !== "remark" || formula === undefined) return [];
        const when = [ofBlock, ofLine, ofCell].filter((one) => one !== undefined).join("&");
        return [{ name, ...(when === "" ? {} : { when }) }];
      }),
    ),
  );
}

/** A call gives advice that no weight waits for; where the functions are missing, as in another program, its cell may hold what it said last. */
export function isCall(formula: Formula): boolean {
  const texts = typeof formula === "string" ? [formula] : formula.map((one) => one.formula);
  return texts.some((text) => text.includes("BAKE_"));
}
