import type { ColumnModel, Formula, Unit } from "../../shared/sheet/model.ts";

/** A column whose rows each point into a formula sheet. */
export const linkedColumn = (name: string, head: string, unit: Unit, formula: Formula): ColumnModel => ({
  name,
  head,
  unit,
  role: "linked",
  formula,
});
export const computedColumn = (name: string, head: string, unit: Unit, formula: Formula): ColumnModel => ({
  name,
  head,
  unit,
  role: "computed",
  formula,
});
export const input = (name: string, head: string, unit: Unit): ColumnModel => ({ name, head, unit, role: "input" });
/** Words that run on over the blank cells to their right. */
export const remark = (name: string, head: string, formula: Formula): ColumnModel => ({
  name,
  head,
  unit: "text",
  role: "remark",
  formula,
});
