// Lines of a block at the right of the page: a label, and beside it what is typed or worked out.
import type { CellModel, Formula, Line, Unit } from "../../shared/sheet/model.ts";
import { label } from "../blocks/line.ts";

/** The column of the first figure, counted from the block's left edge. */
export const AT = 3;

type More = Partial<CellModel>;

export function input(text: string, name: string, unit: Unit, more: More = {}, remark?: string): Line {
  const beside: CellModel[] = remark === undefined ? [] : [{ at: AT + 1, role: "remark", text: remark }];
  return { cells: [label(text), { at: AT, role: "input", name, unit, ...more }, ...beside] };
}

export type Figure = { readonly name: string; readonly unit: Unit; readonly formula: Formula };

/** Up to three figures side by side. */
export const figures = (text: string, ...some: readonly Figure[]): Line => ({
  cells: [label(text), ...some.map((one, place): CellModel => ({ at: AT + place, role: "computed", ...one }))],
});

/** A weight beside the page as a person reads it; blank where it is. */
export const weightOf = (name: string): Figure => ({
  name: `${name}_shown`,
  unit: "graded",
  formula: `=IF(LEN(@${name})=0;"";ROUND(@${name};IF(@${name}>=100;0;1)))`,
});

export const figureOf = (name: string, unit: Unit): Figure => ({
  name: `${name}_shown`,
  unit,
  formula: `=IF(LEN(@${name})=0;"";@${name})`,
});

/** What a call says, that it is refused, or that the add-on is missing; nothing where nothing was asked. */
export const adviceOf = (call: string): string =>
  `=IF(ISERROR(@${call});IF(ERROR.TYPE(@${call})=5;"needs Gramwright";@${call});@${call}&"")`;

/** The same for a number. */
export const numberOf = (call: string): string =>
  `=IF(ISERROR(@${call});IF(ERROR.TYPE(@${call})=5;"needs Gramwright";@${call});IF(COUNT(@${call})=0;"";@${call}))`;
