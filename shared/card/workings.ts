// What a living card reckons with, beside its page: no formula reads what the page shows.
import type { CellModel, ColumnModel } from "../sheet/model.ts";
import type { CardData } from "./data.ts";
import { FINE } from "./parts.ts";

/** A cell beside the page. */
export const helperCell = (at: number, name: string, formula?: string): CellModel => ({
  at,
  role: "helper",
  name,
  unit: "plain",
  ...(formula === undefined ? {} : { formula: `=${formula}` }),
});

export const helperColumn = (name: string, head: string, formula?: string): ColumnModel => ({
  name,
  head,
  unit: "plain",
  role: "helper",
  ...(formula === undefined ? {} : { formula: `=ARRAYFORMULA(${formula})`, numbers: true as const }),
});

const places = ({ steps }: CardData): number[] => steps.map((_, at) => at + 1);
const stepped = (round: string, value: string, step: number) =>
  `${round}(ROUND(${value}/@step_${step};9);0)*@step_${step}`;

/** The coarsest step that moves a weight by at most 2 %, or the weight as it is: BAKE_SCALEROUND in the sheet's own words. */
const nearest = (data: CardData, name: string): string =>
  places(data).reduceRight(
    (other, step) => `IF(ABS(@${name}_n${step}-@${name})<=@${name}*@most;@${name}_n${step};${other})`,
    `@${name}`,
  );

/** Cells from one place on: a weight as it is, on each of the steps, and as the scales show it (`name_s`). */
export const weighedCells = (data: CardData, at: number, name: string, exact: string): CellModel[] => [
  helperCell(at, name, exact),
  ...places(data).map((step) => helperCell(at + step, `${name}_n${step}`, stepped("ROUND", `@${name}`, step))),
  helperCell(at + places(data).length + 1, `${name}_s`, nearest(data, name)),
];

/** The same upwards, on the coarsest step that is so small a part of the weight. */
export const upwardCells = (data: CardData, at: number, name: string, exact: string): CellModel[] => [
  helperCell(at, name, exact),
  ...places(data).map((step) => helperCell(at + step, `${name}_n${step}`, stepped("ROUNDUP", `@${name}`, step))),
  helperCell(
    at + places(data).length + 1,
    `${name}_s`,
    places(data).reduceRight(
      (finer, step) =>
        finer === "" ? `@${name}_n${step}` : `IF(@${name}>=${FINE}*@step_${step};@${name}_n${step};${finer})`,
      "",
    ),
  ),
];

/** The same for a column of weights. */
export const weighedColumns = (data: CardData, name: string, head: string, exact: string): ColumnModel[] => [
  helperColumn(name, `${head}, exact`, exact),
  ...places(data).map((step) =>
    helperColumn(`${name}_n${step}`, `${head}, on step ${step}`, stepped("ROUND", `@${name}`, step)),
  ),
  helperColumn(`${name}_s`, `${head}, on the scale`, nearest(data, name)),
];
