import { call } from "../../call.ts";
import { FUNCTIONS } from "../../functions/index.ts";
import { longer, timeOf } from "./measure.ts";

const MOST = 1.5;

/** Time per row at 10 000 rows against 1 000. */
export function growth(): void {
  const missed: string[] = [];
  const passed: string[] = [];
  const left: string[] = [];
  for (const made of FUNCTIONS) {
    const [few, many] = [longer(made, 1_000), longer(made, 10_000)];
    if (few === undefined || many === undefined) {
      left.push(made.name);
      continue;
    }
    const ratio = timeOf(() => call(made, many), 11) / 10 / timeOf(() => call(made, few), 31);
    (ratio <= MOST ? passed : missed).push(`${made.name} ${ratio.toFixed(2)}`);
    if (ratio > MOST) console.log(`${made.name}: ${ratio.toFixed(2)} ×`);
  }
  console.log(`within ${MOST} ×: ${passed.join(", ")}`);
  console.log(`above ${MOST} ×: ${missed.join(", ") || "none"}`);
  console.log(`not measured, because their first example has no column that can be repeated: ${left.join(", ")}`);
}
