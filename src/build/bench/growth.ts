import { call } from "../../functions/call.ts";
import { FUNCTIONS } from "../../functions/index.ts";
import { fastest, longer } from "./measure.ts";

const MAX_GROWTH = 1.5;
const ROUNDS = 11;

/** Time per row at 10 000 rows against 1 000, and of a call on 10 rows against one on 1 000. */
export function growth(): void {
  const missed: string[] = [];
  const passed: string[] = [];
  const left: string[] = [];
  for (const sheetFunction of FUNCTIONS) {
    const [ten, few, many] = [longer(sheetFunction, 10), longer(sheetFunction, 1_000), longer(sheetFunction, 10_000)];
    if (ten === undefined || few === undefined || many === undefined) {
      left.push(sheetFunction.name);
      continue;
    }
    // Ten calls on 1 000 rows have the rows of one on 10 000, and a hundred on 10 rows those of one on 1 000.
    const again = (times: number, args: unknown[]) => () => {
      for (let time = 0; time < times; time++) call(sheetFunction, args);
    };
    const grown = (): number => {
      const [large = 0, middle = 0] = fastest([again(1, many), again(10, few)], ROUNDS);
      return large / middle;
    };
    const [whole = 0, small = 0] = fastest([again(10, few), again(1_000, ten)], 3);
    const first = grown();
    // What grows does so twice; what the computer did meanwhile does not.
    const ratio = first <= MAX_GROWTH ? first : Math.min(first, grown());
    (ratio <= MAX_GROWTH ? passed : missed).push(
      `${sheetFunction.name} ${ratio.toFixed(2)} (${(small / whole).toFixed(1)})`,
    );
  }
  console.log(
    `in brackets: the same rows in calls of 10 rows, × in calls of 1 000\nwithin ${MAX_GROWTH} ×: ${passed.join(", ")}`,
  );
  console.log(`above ${MAX_GROWTH} ×: ${missed.join(", ") || "none"}`);
  console.log(
    `not measured, because they take single cells, of which a sheet passes as many as there are arguments: ${left.join(", ")}`,
  );
}
