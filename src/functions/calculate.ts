// Sheet functions for the sidebar: the same call as in a cell.

import { Refusal, refuse } from "../../shared/base/refusal.ts";
import { quote } from "../../shared/base/show.ts";
import { type CalculateAnswer, type CalculateAsk, type Calculated, isLarder } from "../../shared/protocol/calculate.ts";
import { call } from "./call.ts";
import { FUNCTIONS } from "./index.ts";

/** `larder` gives the shop's ingredient table, undefined where the workbook has none. */
export function calculate({ calls }: CalculateAsk, larder: () => unknown[][] | undefined): CalculateAnswer {
  const cells = calls.some(({ args }) => args.some(isLarder)) ? larder() : undefined;
  return {
    answers: calls.map(({ name, args }): Calculated => {
      const sheetFunction = FUNCTIONS.find((one) => one.name === name);
      if (sheetFunction === undefined) return refuse(`There is no function ${quote(name)}.`);
      try {
        return {
          gives: call(
            sheetFunction,
            args.map((arg) => (isLarder(arg) ? cells : (arg ?? undefined))),
          ),
        };
      } catch (error) {
        if (!(error instanceof Refusal)) throw error;
        return { says: error.message };
      }
    }),
  };
}
