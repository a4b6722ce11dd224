import type { CellModel, Formula } from "../../shared/sheet/model.ts";

// Weights on the steps of the scale in the sheet's own sums, as onSteps() of shared/base/scaling.ts rounds them.

/** A figure that is worked out on the side. */
export type Figure = { readonly says: string; readonly name: string; readonly formula: Formula } & Partial<CellModel>;

/** A binary number's dust: 1e-9, as everywhere. */
export const DUST = "(1+1/1000000000)";

/** The coarse and the fine step, whichever way round they are typed; one alone is both. */
export const STEP_FIGURES: readonly Figure[] = [1, 2].map(
  (place): Figure => ({
    says: `Step ${place}`,
    name: `step_${place}`,
    formula: `=IF(COUNT(@step_coarse;@step_fine)=0;"";IF(MIN(@step_coarse;@step_fine)<=0;"";${place === 1 ? "MAX" : "MIN"}(@step_coarse;@step_fine)))`,
  }),
);

/** A column's weights on the scale's steps: the coarsest that moves a weight by no more than 2 %; where neither does, the weight as it is. */
export function plainSteps(exact: string, filled: string): string {
  const rounded = (place: number) => `ROUND(ROUND(${exact}/@step_${place};9);0)*@step_${place}`;
  const step = (place: number, finer: string) =>
    `IF((${rounded(place)}>0)*(ABS(${rounded(place)}-${exact})<=${exact}/50*${DUST})=1;${rounded(place)};${finer})`;
  return `=ARRAYFORMULA(IF(${filled}*COUNT(@step_1)=0;"";IF(${exact}=0;0;${step(1, step(2, exact))})))`;
}
